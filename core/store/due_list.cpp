// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/due_list.h"

#include "core/store/bin_repository.h"
#include "core/store/due_conditions.h"
#include "core/store/due_facts.h"

#include <algorithm>
#include <limits>
#include <numeric>
#include <sstream>

namespace hearth::store {
namespace {

using calendar::Date;
using calendar::DueState;

/// What a line shows, of `d`; values for its marks: none.
std::string lineColumns() {
    const std::string since = "coalesce(date(d.last_check * 86400, 'unixepoch'), '')";
    return "SELECT d.premises, p.line1, p.line2, p.town, p.postcode, p.country, d.duty, d.deadline, "
           "d.latest, "
           "d.reason, d.base, d.opens, d.appliance, a.kind, a.place, d.items, d.unknown, d.last_check, "
           "b.id, d.booked, b.from_time, b.until_time, d.engineer, e.name, d.landlord, d.landlord_name, "
           "d.agent, q.name, "
           "(SELECT group_concat(substr(l.at, 1, 10), ' ') FROM letters AS l WHERE l.premises = d.premises "
           "AND l.kind NOT IN ('tenant_copy', 'operating_information') AND l.at > " +
           since + " AND " + notInBin("l.id") +
           "), (SELECT group_concat(substr(t.at, 1, 10), ' ') FROM access_attempts AS t WHERE t.premises = "
           "d.premises AND t.at > " +
           since + " AND " + notInBin("t.id") + ")";
}
constexpr std::string_view kLineJoins =
    " JOIN premises AS p ON p.id = d.premises LEFT JOIN appliances AS a ON a.id = d.appliance"
    " LEFT JOIN bookings AS b ON b.id = d.booking LEFT JOIN engineers AS e ON e.id = d.engineer"
    " LEFT JOIN parties AS q ON q.id = d.agent";

template <class Key>
std::optional<Key> idAt(const Columns& row, int column) {
    return row.isNull(column) ? std::nullopt : std::optional(Key{row.uuid(column)});
}
std::string textAt(const Columns& row, int column) {
    return row.isNull(column) ? std::string() : row.text(column);
}
std::optional<Date> dayAt(const Columns& row, int column) {
    return row.isNull(column) ? std::nullopt : std::optional(dateOfDueDay(row.integer(column)));
}

std::vector<Date> daysIn(const std::string& texts) {
    std::vector<Date> dates;
    std::istringstream in(texts);
    for (std::string text; in >> text;) {
        if (const auto date = calendar::fromIso(text)) {
            dates.push_back(*date);
        }
    }
    std::sort(dates.begin(), dates.end());
    return dates;
}

std::optional<DueBooking> bookingAt(const Columns& row, const std::optional<Date>& deadline, Date today) {
    const auto date = dayAt(row, 19);
    if (!date || *date < today || row.isNull(18)) {
        return std::nullopt;
    }
    DueBooking booking;
    booking.id = {row.uuid(18)};
    booking.date = *date;
    booking.from = textAt(row, 20);
    booking.until = textAt(row, 21);
    booking.engineer = idAt<reg::EngineerId>(row, 22);
    booking.engineerName = textAt(row, 23);
    booking.afterDeadline = deadline && *date > *deadline;
    return booking;
}

DueLine dueLineOf(const Columns& row, Date today) {
    DueLine line;
    line.premises = {row.uuid(0)};
    line.address = {row.text(1), row.text(2), row.text(3), row.text(4)};
    line.country = reg::countryFromCode(row.text(5)).value_or(line.country);
    line.duty = static_cast<calendar::CheckDuty>(row.integer(6));
    line.deadline = dayAt(row, 7);
    line.latest = dayAt(row, 8);
    line.reason = static_cast<calendar::DeadlineReason>(row.integer(9));
    line.base = dayAt(row, 10);
    line.opens = dayAt(row, 11);
    line.appliance = idAt<reg::ApplianceId>(row, 12);
    line.applianceKind = textAt(row, 13);
    line.appliancePlace = textAt(row, 14);
    line.items = row.number(15);
    line.unknown = row.number(16);
    line.lastCheck = dayAt(row, 17);
    line.booking = bookingAt(row, line.deadline, today);
    line.landlord = idAt<reg::PartyId>(row, 24);
    line.landlordName = row.text(25);
    line.agent = idAt<reg::PartyId>(row, 26);
    line.agentName = textAt(row, 27);
    line.letters = daysIn(textAt(row, 28));
    line.attempts = daysIn(textAt(row, 29));
    const auto booked = line.booking ? std::optional(line.booking->date) : std::nullopt;
    line.state = calendar::dueState({line.duty, line.deadline, line.opens, booked}, today);
    return line;
}

std::string fromSection(const Section& section, std::string_view index = {}) {
    return " FROM due_premises AS d INDEXED BY " + std::string(index.empty() ? section.index : index) +
           " WHERE " + section.condition.sql;
}

std::string backwards(std::string_view order) {
    std::string reversed;
    for (const char letter : order) {
        reversed.append(letter == ',' ? " DESC," : std::string(1, letter));
    }
    return reversed + " DESC";
}

/// `size`: of the whole section, where it is known. SQLite steps over all that comes before, so the second
/// half is found from the end.
std::vector<DueLine> readSection(const Connection& db, const Section& section, Date today, int first,
                                 int count, std::optional<int> size = {}) {
    const std::string order = " ORDER BY " + std::string(section.order);
    const int last = size ? std::min(first + count, *size) : 0;
    const bool fromEnd = size && first > *size / 2;
    const std::string walked = fromEnd ? " ORDER BY " + backwards(section.order) : order;
    Cells values = section.condition.values;
    values.emplace_back(std::int64_t{fromEnd ? last - first : count});
    values.emplace_back(std::int64_t{fromEnd ? *size - last : first});
    const std::string keys = "SELECT d.premises" + fromSection(section) + walked + " LIMIT ? OFFSET ?";
    return db.all(lineColumns() + " FROM (" + keys +
                      ") AS k CROSS JOIN due_premises AS d ON d.premises = k.premises" +
                      std::string(kLineJoins) + order,
                  values, [&](const Columns& row) { return dueLineOf(row, today); });
}

/// In whatever order: those without a deadline stand together by deadline alone.
int countSection(const Connection& db, const Section& section) {
    const bool isUnknown = section.index == "due_by_place" && section.states.size() == 1 &&
                           section.states.front() == DueState::NotKnown;
    const std::string_view index = isUnknown ? std::string_view("due_by_deadline") : std::string_view();
    return static_cast<int>(
        db.number("SELECT count(*)" + fromSection(section, index), section.condition.values));
}

/// Premises with a duty by what stands in a column, with the name that belongs to it.
std::vector<DueChoice> choicesBy(const Connection& db, const std::string& column, const std::string& table,
                                 const std::string& condition, const Cells& values) {
    const std::string index = column == "engineer" ? "due_by_deadline" : "due_by_" + column;
    return db.all("SELECT g.id, n.name, g.premises FROM (SELECT d." + column +
                      " AS id, count(*) AS premises FROM due_premises AS d INDEXED BY " + index +
                      " WHERE d.duty < 3 AND d." + column + " IS NOT NULL AND " + condition + " GROUP BY d." +
                      column + ") AS g JOIN " + table +
                      " AS n ON n.id = g.id ORDER BY n.name COLLATE NOCASE, g.id",
                  values, [](const Columns& row) {
                      return DueChoice{row.uuid(0), row.text(1), row.number(2)};
                  });
}

}  // namespace

namespace {

/// With words to find, all states in one walk: finding them costs more than the walk.
DueCounts countFound(const Connection& db, const DueFilter& filter, Date today) {
    DueCounts counts;
    const auto met = meets(filter);
    db.query("SELECT d.duty, d.deadline, d.opens, d.booked FROM due_premises AS d WHERE " + met.sql,
             met.values, [&](const Columns& row) {
                 const auto booked = dayAt(row, 3);
                 const calendar::DueDates dates{static_cast<calendar::CheckDuty>(row.integer(0)),
                                                dayAt(row, 1), dayAt(row, 2),
                                                booked && *booked >= today ? booked : std::nullopt};
                 const auto state = calendar::dueState(dates, today);
                 ++counts.of.at(static_cast<std::size_t>(state));
                 counts.overdueBooked += state == DueState::Overdue && dates.booked ? 1 : 0;
             });
    return counts;
}

}  // namespace

DueCounts countDue(const Connection& db, const DueFilter& filter, Date today) {
    if (filter.text.size() > 1) {
        return countFound(db, filter, today);
    }
    DueCounts counts;
    DueFilter all = filter;
    all.states.assign(calendar::kDueStates.begin(), calendar::kDueStates.end());
    const auto sections = sectionsOf(all, DueSort::Need, dueDay(today));
    for (const auto& section : sections) {
        const auto state = section.states.front();
        auto& of = counts.of.at(static_cast<std::size_t>(state));
        if (state == DueState::Overdue) {
            Cells values{dueDay(today)};
            values.insert(values.end(), section.condition.values.begin(), section.condition.values.end());
            db.query("SELECT count(*), sum(d.booked >= ?)" + fromSection(section), values,
                     [&](const Columns& row) {
                         of = row.number(0);
                         counts.overdueBooked = row.isNull(1) ? 0 : row.number(1);
                     });
        } else {
            of = countSection(db, section);
        }
    }
    return counts;
}

namespace {

/// As it was counted, or counted now.
int sizeOf(const Connection& db, const Section& section, const std::optional<DueCounts>& counts) {
    if (!counts) {
        return countSection(db, section);
    }
    return std::accumulate(section.states.begin(), section.states.end(), 0,
                           [&](int all, DueState state) { return all + counts->at(state); });
}

}  // namespace

std::vector<DueLine> readDuePage(const Connection& db, const DueAsking& asked, int first, int count) {
    std::vector<DueLine> lines;
    int skip = std::max(first, 0);
    for (const auto& section : sectionsOf(asked.filter, asked.sort, dueDay(asked.today))) {
        const int left = count - static_cast<int>(lines.size());
        if (left <= 0) {
            break;
        }
        const auto all = skip > 0 ? std::optional(sizeOf(db, section, asked.counts)) : std::nullopt;
        if (all && skip >= *all) {
            skip -= *all;
            continue;
        }
        auto part = readSection(db, section, asked.today, skip, left, all);
        skip = 0;
        std::move(part.begin(), part.end(), std::back_inserter(lines));
    }
    return lines;
}

std::vector<DueChoice> readDueChoices(const Connection& db, DueBy by, Date today) {
    switch (by) {
        case DueBy::Landlord:
            return choicesBy(db, "landlord", "parties", "TRUE", {});
        case DueBy::Agent:
            return choicesBy(db, "agent", "parties", "TRUE", {});
        case DueBy::Engineer:
            return choicesBy(db, "engineer", "engineers", "d.booked >= ?", {dueDay(today)});
        case DueBy::Area:
            break;
    }
    return db.all(
        "SELECT d.outward, count(*) FROM due_premises AS d INDEXED BY due_by_deadline "
        "WHERE d.duty < 3 AND d.outward <> '' GROUP BY d.outward ORDER BY d.outward",
        {}, [](const Columns& row) {
            return DueChoice{{}, row.text(0), row.number(1)};
        });
}

std::vector<DueLine> readOverdueSince(const Connection& db, Date since, Date today) {
    Section section{{"d.duty < 3 AND d.deadline >= ? AND d.deadline < ?", {dueDay(since), dueDay(today)}},
                    "due_by_deadline",
                    "d.deadline, d.premises"};
    return readSection(db, section, today, 0, std::numeric_limits<int>::max());
}

std::vector<DueLine> readDueUntil(const Connection& db, const DueFilter& filter, Date today, Date last) {
    const Section section{both({"d.duty < 3 AND d.deadline <= ?", {dueDay(last)}}, meets(filter)),
                          "due_by_deadline", "d.deadline, d.premises"};
    return readSection(db, section, today, 0, std::numeric_limits<int>::max());
}

std::vector<DueLine> readDueLines(const Connection& db, const std::vector<reg::PremisesId>& premises,
                                  Date today) {
    const std::string sql =
        lineColumns() + " FROM due_premises AS d" + std::string(kLineJoins) + " WHERE d.premises = ?";
    std::vector<DueLine> lines;
    for (const auto& id : premises) {
        if (auto line =
                db.first(sql, {id.bytes}, [&](const Columns& row) { return dueLineOf(row, today); })) {
            lines.push_back(std::move(*line));
        }
    }
    return lines;
}

}  // namespace hearth::store
