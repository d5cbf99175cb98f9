// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/record_repository.h"

#include "core/base/blanks.h"
#include "core/store/attachment_repository.h"
#include "core/store/letting_go.h"
#include "core/store/search_query.h"
#include "core/store/verification.h"

#include <algorithm>
#include <cctype>
#include <limits>

namespace hearth::store {
namespace {

std::optional<RecordId> optionalRecord(const Columns& columns, int column) {
    return columns.isNull(column) ? std::nullopt : std::optional<RecordId>(RecordId{columns.uuid(column)});
}

RecordLine lineOf(const Columns& columns) {
    const int after = kHeaderColumnCount;
    RecordLine line;
    line.header = headerOf(columns);
    line.id = RecordId{columns.uuid(after)};
    line.visit = reg::VisitId{columns.uuid(after + 1)};
    line.premises = reg::PremisesId{columns.uuid(after + 2)};
    line.address = columns.text(after + 3);
    line.customer = columns.text(after + 4);
    const auto outcome = rulebook::outcomeFromText(columns.text(after + 5));
    if (!outcome) {
        columns.notUnderstood("record_snapshots.outcome = " + columns.text(after + 5));
    }
    line.outcome = *outcome;
    line.supersedes = optionalRecord(columns, after + 6);
    line.reason = columns.text(after + 7);
    line.supersededBy = optionalRecord(columns, after + 8);
    if (!columns.isNull(after + 9)) {
        line.letGo = LetGo{{}, columns.text(after + 10), {}, {}};
        if (!parseInstant(columns.text(after + 9), line.letGo->at) ||
            !readErasedDetail(columns.text(after + 11), *line.letGo)) {
            columns.notUnderstood("record_events.detail = " + columns.text(after + 11));
        }
    }
    if (!columns.isNull(after + 12)) {
        line.voided =
            record::VoidMark{columns.text(after + 12), columns.text(after + 13), columns.text(after + 14)};
    }
    return line;
}

std::vector<RecordLine> recordLines(const Connection& db, const std::string& where, const Cells& values) {
    const std::string sql =
        "SELECT " + std::string(kHeaderColumns) +
        ", h.id, s.visit, s.premises, s.address, s.customer, s.outcome, s.supersedes, s.reason"
        ", (SELECT n.record FROM record_snapshots AS n WHERE n.supersedes = h.id), e.at, e.by, e.detail"
        ", v.by, v.at, v.detail"
        " FROM record_headers AS h JOIN record_snapshots AS s ON s.record = h.id"
        " LEFT JOIN record_events AS e ON e.record = h.id AND e.event = 'payload erased'"
        " LEFT JOIN record_events AS v ON v.id = (SELECT o.id FROM record_events AS o WHERE o.record = h.id "
        "AND o.event = 'void' ORDER BY o.position LIMIT 1) WHERE " +
        where;
    return db.all(sql, values, lineOf);
}

void addEvent(Session& session, RecordId id, const std::string& event, const std::string& detail,
              const std::string& sentTo = {}) {
    session.db.run(
        "INSERT INTO record_events (id, position, record, event, detail, sent_to, by, at) "
        "VALUES (?, (SELECT coalesce(max(position), 0) + 1 FROM record_events), ?, ?, ?, ?, ?, ?)",
        {session.newId(), id.bytes, event, detail, sentTo, session.actor, instantText(session.clock.now())});
}

std::string asPrinted(std::string number) {
    std::transform(number.begin(), number.end(), number.begin(),
                   [](unsigned char c) { return static_cast<char>(std::toupper(c)); });
    return number;
}

}  // namespace

void refuseSuperseded(const Connection& db, const RecordLine& line) {
    if (!line.supersededBy) {
        return;
    }
    const auto newer = findRecord(db, *line.supersededBy);
    throw Failure(ErrorCode::RecordSuperseded,
                  {line.header.record, newer->header.record + "/" + std::to_string(newer->header.revision)});
}

record::ChainHeader headerOf(const Columns& columns, int first) {
    return {columns.text(first),       columns.number(first + 1), columns.text(first + 2),
            columns.number(first + 3), columns.text(first + 4),   columns.text(first + 5),
            columns.text(first + 6),   columns.text(first + 7),   columns.text(first + 8)};
}

std::vector<RecordLine> findRecords(const Connection& db, const std::string& search, int limit) {
    Cells values;
    const std::string condition = matching(Indexed::Record, search, "h.id", limit, values);
    values.emplace_back(std::int64_t{limit});
    return recordLines(db, condition + " ORDER BY h.issued_at DESC, h.id DESC LIMIT ?", values);
}

std::vector<RecordLine> chosenRecords(const Connection& db, const RecordChoice& choice) {
    Cells values;
    std::string condition =
        matching(Indexed::Record, choice.search, "h.id", std::numeric_limits<int>::max(), values);
    if (choice.of) {
        // The day by UTC; roles change by days, and an hour of one counts for both who meet in it.
        condition +=
            " AND s.premises IN (SELECT r.premises FROM roles AS r WHERE r.party = ?"
            " AND (r.since IS NULL OR r.since <= substr(h.issued_at, 1, 10))"
            " AND (r.until IS NULL OR r.until >= substr(h.issued_at, 1, 10)))";
        values.emplace_back(choice.of->bytes);
    }
    auto lines = recordLines(db, condition + " ORDER BY h.issued_at, h.id", values);
    const auto isOut = [&](const RecordLine& line) {
        Instant at{};
        if (!parseInstant(line.header.issuedAt, at)) {
            throw Failure(ErrorCode::RecordAltered, {line.header.record, "snapshot"});
        }
        const auto day = FixedClock(at).today("Europe/London");
        return line.letGo || (choice.from && day < *choice.from) || (choice.until && *choice.until < day) ||
               (choice.onlyThatCount && (line.supersededBy || line.voided));
    };
    lines.erase(std::remove_if(lines.begin(), lines.end(), isOut), lines.end());
    return lines;
}

std::vector<RecordLine> recordsOf(const Connection& db, reg::VisitId visit) {
    return recordLines(db, "s.visit = ? ORDER BY h.issued_at DESC, h.id DESC", {visit.bytes});
}

std::optional<RecordLine> findRecord(const Connection& db, RecordId id) {
    auto lines = recordLines(db, "h.id = ?", {id.bytes});
    return lines.empty() ? std::nullopt : std::optional<RecordLine>(std::move(lines.front()));
}

std::optional<RecordId> newestOfNumber(const Connection& db, const std::string& number) {
    return db.first("SELECT id FROM record_headers WHERE record = ? ORDER BY revision DESC",
                    {asPrinted(number)}, [](const Columns& columns) { return RecordId{columns.uuid(0)}; });
}

IssuedRecord readRecord(Connection& db, RecordId id) {
    const ReadScope oneState(db);
    auto line = findRecord(db, id);
    if (!line) {
        throw Failure(ErrorCode::NotFound, {"record", id.text()});
    }
    verifyLink(db, *line);
    if (line->letGo) {
        verifyLetGo(db, *line);
        refuseLetGo(*line);
    }
    IssuedRecord record;
    record.line = std::move(*line);
    record.snapshotJson = verifiedSnapshot(db, record.line);
    record.pdf = verifiedPdf(db, record.line);
    auto document = record::documentFromJson(record.snapshotJson);
    if (!document) {
        throw Failure(ErrorCode::RecordAltered, {record.line.header.record, "snapshot"});
    }
    record.document = std::move(*document);
    if (auto& logo = record.document.logo) {
        logo->bytes = bytesOfDigest(db, logo->digest);
    }
    for (auto& block : record.document.blocks) {
        if (auto* pictures = std::get_if<record::Pictures>(&block)) {
            for (auto& picture : pictures->pictures) {
                picture.bytes = bytesOfDigest(db, picture.digest);
            }
        }
    }
    return record;
}

std::vector<RecordEvent> eventsOfRecord(const Connection& db, RecordId id) {
    return db.all(
        "SELECT event, detail, by, at, sent_to FROM record_events WHERE record = ? ORDER BY position",
        {id.bytes}, [](const Columns& columns) {
            RecordEvent event{columns.text(0), columns.text(1), columns.text(2), {}, columns.text(4)};
            if (!parseInstant(columns.text(3), event.at)) {
                columns.notUnderstood("record_events.at = " + columns.text(3));
            }
            return event;
        });
}

std::vector<record::Sending> sendingsOf(const Connection& db, RecordId id) {
    std::vector<record::Sending> sendings;
    for (const auto& event : eventsOfRecord(db, id)) {
        if (const auto how = record::sentByFromCode(event.event)) {
            sendings.push_back({*how, event.sentTo, event.detail, event.by, event.at});
        }
    }
    return sendings;
}

void noteSending(Session& session, RecordId id, const record::Sending& sending) {
    Transaction transaction(session.db);
    if (!findRecord(session.db, id)) {
        throw Failure(ErrorCode::NotFound, {"record", id.text()});
    }
    addEvent(session, id, std::string(record::sentByCode(sending.how)), sending.detail, sending.to);
    transaction.commit();
}

std::vector<record::CopyHolder> holdersOfEarlier(const Connection& db, RecordId id) {
    const auto line = findRecord(db, id);
    if (!line) {
        throw Failure(ErrorCode::NotFound, {"record", id.text()});
    }
    const auto earlier =
        db.all("SELECT id FROM record_headers WHERE record = ? AND revision < ? ORDER BY revision",
               {line->header.record, std::int64_t{line->header.revision}},
               [](const Columns& columns) { return RecordId{columns.uuid(0)}; });
    std::vector<record::Sending> sent;
    for (const auto& one : earlier) {
        const auto more = sendingsOf(db, one);
        sent.insert(sent.end(), more.begin(), more.end());
    }
    return record::holdersToTell(sent, sendingsOf(db, id));
}

void appendEvent(Session& session, RecordId id, const std::string& event, const std::string& detail) {
    addEvent(session, id, event, detail);
}

void noteEvent(Session& session, RecordId id, const std::string& event, const std::string& detail) {
    if (isReservedEvent(event) || event == kVoidEvent) {
        throw Failure(ErrorCode::StoreFailed, {session.db.path(), "event: " + event});
    }
    Transaction transaction(session.db);
    if (!findRecord(session.db, id)) {
        throw Failure(ErrorCode::NotFound, {"record", id.text()});
    }
    addEvent(session, id, event, detail);
    transaction.commit();
}

void voidRecord(Session& session, RecordId id, const std::string& why) {
    if (withoutOuterBlanks(why).empty()) {
        throw Failure(ErrorCode::ReasonMissing, {});
    }
    Transaction transaction(session.db);
    const auto line = findRecord(session.db, id);
    if (!line) {
        throw Failure(ErrorCode::NotFound, {"record", id.text()});
    }
    if (line->voided) {
        throw Failure(ErrorCode::RecordVoid, {line->header.record});
    }
    refuseLetGo(*line);
    refuseSuperseded(session.db, *line);
    verifyLink(session.db, *line);
    addEvent(session, id, std::string(kVoidEvent), why);
    dropRecordChecks(session.db, id, line->premises.bytes);
    transaction.commit();
}

}  // namespace hearth::store
