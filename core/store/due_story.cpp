// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/doings_repository.h"
#include "core/store/due_list.h"
#include "core/store/due_repository.h"
#include "core/store/tables.h"

#include <algorithm>

/// Everything that happened at premises, on one line of time.
namespace hearth::store {
namespace {

using calendar::Date;

template <class Value>
std::vector<Value> oldestFirst(std::vector<Value> values) {
    std::reverse(values.begin(), values.end());
    return values;
}

class Story {
  public:
    Story(const Connection& db, reg::PremisesId id) : m_db(db), m_id(id) {}

    std::vector<StoryEvent> told(Date today) {
        addRecords();
        addRecordEvents();
        addChecks();
        addVisits();
        addLetters();
        addAttempts();
        addBookings();
        addSituations();
        addDeadlines(today);
        std::stable_sort(m_events.begin(), m_events.end(), [](const StoryEvent& a, const StoryEvent& b) {
            return a.date != b.date ? a.date < b.date : a.at.value_or(Instant{}) < b.at.value_or(Instant{});
        });
        return std::move(m_events);
    }

  private:
    StoryEvent& add(StoryKind kind, Date date, const UuidBytes& row) {
        StoryEvent event;
        event.kind = kind;
        event.date = date;
        event.row = row;
        m_events.push_back(std::move(event));
        return m_events.back();
    }
    /// The day by UTC: a letter at midnight stands a day early in summer at worst.
    StoryEvent& add(StoryKind kind, Instant at, const UuidBytes& row) {
        auto& event = add(kind, Date(std::chrono::floor<std::chrono::days>(at)), row);
        event.at = at;
        return event;
    }
    Instant instantAtColumn(const Columns& row, int column) {
        Instant at{};
        if (!parseInstant(row.text(column), at)) {
            row.notUnderstood(row.text(column));
        }
        return at;
    }
    Date dateAtColumn(const Columns& row, int column) {
        const auto date = calendar::fromIso(row.text(column));
        if (!date) {
            row.notUnderstood(row.text(column));
        }
        return *date;
    }

    void addRecords() {
        m_db.query(
            "SELECT h.id, h.issued_at, h.record, h.revision, h.kind FROM record_snapshots AS s JOIN "
            "record_headers AS h ON h.id = s.record WHERE s.premises = ?",
            {m_id.bytes}, [&](const Columns& row) {
                auto& event = add(StoryKind::Record, instantAtColumn(row, 1), row.uuid(0));
                event.title = row.text(2);
                event.detail = row.number(3) > 1 ? std::to_string(row.number(3)) : std::string();
                event.code = row.text(4);
            });
    }
    void addRecordEvents() {
        m_db.query(
            "SELECT o.record, o.at, h.record, o.event, o.detail, o.sent_to, o.by FROM record_events AS o "
            "JOIN record_snapshots AS s ON s.record = o.record JOIN record_headers AS h ON h.id = "
            "o.record WHERE s.premises = ? AND (o.event = 'void' OR o.sent_to <> '')",
            {m_id.bytes}, [&](const Columns& row) {
                const bool isVoid = row.text(3) == "void";
                auto& event = add(isVoid ? StoryKind::RecordVoided : StoryKind::RecordSent,
                                  instantAtColumn(row, 1), row.uuid(0));
                event.title = row.text(2);
                event.detail = isVoid ? row.text(4) : row.text(5);
                event.by = row.text(6);
                event.code = row.text(3);
            });
    }
    void addChecks() {
        m_db.query(
            "SELECT c.record, c.date, h.record, h.kind FROM record_checks AS c JOIN record_headers AS h "
            "ON h.id = c.record WHERE c.premises = ? AND c.counts = 1 GROUP BY c.record, c.date",
            {m_id.bytes}, [&](const Columns& row) {
                auto& event = add(StoryKind::Check, dateAtColumn(row, 1), row.uuid(0));
                event.title = row.text(2);
                event.code = row.text(3);
            });
        for (const auto& check : readEarlierChecks(m_db, m_id)) {
            auto& event = add(StoryKind::EarlierCheck, check.date, check.id.bytes);
            event.by = check.by;
            event.detail = check.note;
        }
    }
    void addVisits() {
        m_db.query(
            "SELECT v.id, v.date, coalesce(e.name, '') FROM visits AS v LEFT JOIN engineers AS e ON e.id = "
            "v.engineer WHERE v.premises = ? AND " +
                notInBin("v.id") +
                " AND NOT EXISTS (SELECT 1 FROM record_snapshots AS s WHERE s.visit = v.id) AND NOT "
                "EXISTS (SELECT 1 FROM earlier_checks AS c WHERE c.visit = v.id)",
            {m_id.bytes}, [&](const Columns& row) {
                add(StoryKind::Visit, dateAtColumn(row, 1), row.uuid(0)).by = row.text(2);
            });
    }
    void addLetters() {
        for (const auto& letter : oldestFirst(readLetters(m_db, m_id))) {
            const bool isCall = letter.channel == reg::Channel::Telephone;
            auto& event = add(isCall ? StoryKind::Call : StoryKind::Letter, letter.at, letter.id.bytes);
            event.title = letter.kind;
            event.detail = letter.text;
            event.by = letter.sentTo;
            event.code = reg::codeOf(letter.channel);
        }
    }
    void addAttempts() {
        for (const auto& attempt : oldestFirst(readAttempts(m_db, m_id))) {
            auto& event = add(StoryKind::NoAccess, attempt.at, attempt.id.bytes);
            event.title = attempt.left;
            event.detail = attempt.response;
            event.by = attempt.who;
            event.code = reg::codeOf(attempt.channel);
        }
    }
    void addBookings() {
        for (const auto& booking : oldestFirst(readBookings(m_db, m_id))) {
            auto& event = add(StoryKind::Booking, booking.date, booking.id.bytes);
            event.title = booking.from + (booking.until.empty() ? "" : "-" + booking.until);
            event.detail = booking.note;
            event.code = reg::codeOf(booking.state);
            if (booking.engineer) {
                event.by = m_db.text("SELECT name FROM engineers WHERE id = ?", {booking.engineer->bytes});
            }
        }
    }
    void addSituations() {
        for (const auto& situation : oldestFirst(readSituations(m_db, m_id))) {
            auto& event = add(StoryKind::Situation, situation.foundAt, situation.id.bytes);
            event.title = situation.what;
            event.detail = situation.where;
            event.code = reg::codeOf(situation.danger);
            for (const auto& step : readEvents(m_db, situation.id)) {
                auto& next = add(StoryKind::SituationStep, step.at, situation.id.bytes);
                next.title = situation.what;
                next.detail = step.text;
                next.by = step.by;
                next.code = step.kind;
            }
        }
    }
    void addDeadlines(Date today) {
        for (const auto& line : readDueLines(m_db, {m_id}, today)) {
            const auto key = line.appliance ? line.appliance->bytes : UuidBytes{};
            if (line.opens) {
                add(StoryKind::WindowOpens, *line.opens, key);
            }
            if (line.deadline) {
                add(StoryKind::Deadline, *line.deadline, key).detail =
                    line.latest ? calendar::isoText(*line.latest) : std::string();
            }
        }
    }

    const Connection& m_db;
    reg::PremisesId m_id;
    std::vector<StoryEvent> m_events;
};

}  // namespace

std::vector<StoryEvent> readStory(const Connection& db, reg::PremisesId id, Date today) {
    static_cast<void>(valueWithId<reg::Premises>(db, id.bytes));
    return Story(db, id).told(today);
}

}  // namespace hearth::store
