// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/letting_go.h"

#include "core/store/bin_repository.h"
#include "core/store/edit.h"
#include "core/store/privacy_repository.h"
#include "core/store/record_repository.h"
#include "core/store/sealing.h"
#include "core/store/search_index.h"
#include "core/store/tables.h"
#include "core/store/verification.h"

#include <algorithm>

namespace hearth::store {
namespace {

/// What is said of premises while something unsafe is open there is never let go.
constexpr std::string_view kOpenAt =
    "EXISTS (SELECT 1 FROM situations AS o WHERE o.closed_at IS NULL AND o.premises = ";

std::string openAt(const std::string& premises) {
    return std::string(kOpenAt) + premises + ")";
}

bool isOpenAt(const Connection& db, reg::PremisesId premises) {
    return db.number("SELECT " + openAt("?"), {premises.bytes}) != 0;
}

/// One that this program does not know is taken for one of those that are kept the longest.
record::RecordKind kindOf(const record::ChainHeader& header) {
    return record::kindFromCode(header.kind).value_or(record::RecordKind::Commissioning);
}

RecordLine lineOfRecord(const Connection& db, RecordId id) {
    auto line = findRecord(db, id);
    if (!line) {
        throw Failure(ErrorCode::NotFound, {"record", id.text()});
    }
    return std::move(*line);
}

void refuseKept(const Session& session, const RecordLine& line) {
    const std::string& number = line.header.record;
    if (const auto until = keptUntil(line.header); until >= civilDay(session.clock.now())) {
        throw Failure(ErrorCode::KeepingNotOver, {number, calendar::isoText(until)});
    }
    if (isOpenAt(session.db, line.premises)) {
        throw Failure(ErrorCode::KeptForSituation, {number});
    }
    if (const auto hold = holdOn(session.db, number)) {
        throw Failure(ErrorCode::KeptOnHold, {number, hold->reason});
    }
}

struct OldHeader {
    record::ChainHeader header;
    RecordId id;
};

/// The next headers of records that are still there, issued before that day; a page at a time and without
/// their snapshots, which lie far apart: a firm has hundreds of thousands, and looks at the oldest few
/// hundred.
std::vector<OldHeader> oldHeaders(const Connection& db, const std::string& before,
                                  const std::optional<OldHeader>& after) {
    constexpr std::int64_t kPage = 500;
    return db.all(
        "SELECT " + std::string(kHeaderColumns) +
            ", h.id FROM record_headers AS h WHERE h.issued_at < ? AND (h.issued_at, h.id) > (?, ?) "
            "AND NOT EXISTS (SELECT 1 FROM record_events AS e WHERE e.record = h.id AND e.event = "
            "'payload erased') ORDER BY h.issued_at, h.id LIMIT ?",
        {before, after ? after->header.issuedAt : std::string(), after ? after->id.bytes : UuidBytes{},
         kPage},
        [](const Columns& columns) {
            return OldHeader{headerOf(columns), RecordId{columns.uuid(kHeaderColumnCount)}};
        });
}

void letRecordGo(Edit& edit, RecordId id) {
    Session& session = edit.session();
    const RecordLine line = lineOfRecord(session.db, id);
    refuseLetGo(line);
    refuseKept(session, line);
    verifyLink(session.db, line);
    static_cast<void>(verifiedSnapshot(session.db, line));
    static_cast<void>(verifiedPdf(session.db, line));
    const std::string detail = erasedDetail(keptUntil(line.header), record::keepRuleOf(kindOf(line.header)));
    appendEvent(session, id, std::string(kErasedEvent), detail);
    edit.log({std::string(kErasedTable), id.text(), std::string(kErasedField), std::nullopt, detail,
              line.visit.bytes});
    refreshSearch(session.db, Indexed::Record, id.bytes);
}

void letLetterGo(Edit& edit, reg::LetterId id, std::vector<std::string>& labels) {
    Session& session = edit.session();
    const auto letter = valueWithId<reg::Letter>(session.db, id.bytes);
    if (!isOver(session, letter)) {
        throw Failure(ErrorCode::KeepingNotOver, {letter.kind, calendar::isoText(keptUntil(letter))});
    }
    if (isOpenAt(session.db, letter.premises)) {
        throw Failure(ErrorCode::KeptForSituation, {letter.kind});
    }
    edit.put(withoutTexts(letter));
    eraseLabels(edit, id.bytes, labels);
}

}  // namespace

void refuseLetGo(const RecordLine& line) {
    if (line.letGo) {
        throw Failure(ErrorCode::RecordErased,
                      {line.header.record, calendar::isoText(civilDay(line.letGo->at)),
                       calendar::isoText(line.letGo->keptUntil)});
    }
}

bool isReservedEvent(std::string_view event) {
    return event == kErasedEvent || event == kHeldEvent || event == kLiftedEvent;
}

std::string erasedDetail(calendar::Date keptUntil, record::KeepRule rule) {
    return calendar::isoText(keptUntil) + " " + std::string(record::keepRuleCode(rule));
}

bool readErasedDetail(std::string_view detail, LetGo& out) {
    const std::size_t blank = std::min(detail.find(' '), detail.size());
    const auto until = calendar::fromIso(std::string(detail.substr(0, blank)));
    const auto rule = record::keepRuleFromCode(detail.substr(std::min(blank + 1, detail.size())));
    if (!until || !rule) {
        return false;
    }
    out.keptUntil = *until;
    out.rule = *rule;
    return true;
}

calendar::Date civilDay(Instant at) {
    return FixedClock(at).today("Europe/London");
}

calendar::Date keptUntil(const record::ChainHeader& header) {
    Instant at{};
    if (!parseInstant(header.issuedAt, at)) {
        throw Failure(ErrorCode::RecordChainBroken, {header.record});
    }
    return record::keepUntil(kindOf(header), civilDay(at));
}

calendar::Date keptUntil(const reg::Letter& letter) {
    return record::keepLetterUntil(civilDay(letter.at));
}

bool isOver(const Session& session, const reg::Letter& letter) {
    return keptUntil(letter) < civilDay(session.clock.now());
}

reg::Letter withoutTexts(reg::Letter letter) {
    letter.text.clear();
    letter.sentTo.clear();
    letter.result.clear();
    return letter;
}

std::vector<MayGo> recordsPastKeeping(const Connection& db, calendar::Date today, int limit) {
    const std::string before = calendar::isoText(calendar::addMonths(today, -record::kShortestKeepingMonths));
    std::vector<MayGo> over;
    std::optional<OldHeader> last;
    for (auto old = oldHeaders(db, before, last); !old.empty(); old = oldHeaders(db, before, last)) {
        last = old.back();
        for (const auto& [header, id] : old) {
            if (static_cast<int>(over.size()) == limit) {
                return over;
            }
            if (const auto until = keptUntil(header); until < today) {
                auto line = lineOfRecord(db, id);
                if (!isOpenAt(db, line.premises)) {
                    over.push_back({std::move(line), until, record::keepRuleOf(kindOf(header)),
                                    holdOn(db, header.record)});
                }
            }
        }
    }
    return over;
}

std::vector<LetterMayGo> lettersPastKeeping(const Connection& db, calendar::Date today, int limit) {
    const auto old = valuesWhere<reg::Letter>(
        db,
        "WHERE t.at < ? AND (t.text <> '' OR t.sent_to <> '' OR t.result <> '') AND NOT " +
            openAt("t.premises") + " ORDER BY t.at, t.id",
        {calendar::isoText(calendar::addMonths(today, -record::kShortestKeepingMonths))});
    std::vector<LetterMayGo> over;
    for (const auto& letter : old) {
        if (static_cast<int>(over.size()) == limit) {
            break;
        }
        if (keptUntil(letter) < today) {
            const auto premises = valueWithId<reg::Premises>(db, letter.premises.bytes);
            over.push_back({letter, valueWithId<reg::Party>(db, letter.party.bytes).name, premises.address,
                            keptUntil(letter)});
        }
    }
    return over;
}

void letGo(Session& session, const LettingGo& what) {
    // Otherwise what was erased would stand in the file's free pages.
    session.db.script("PRAGMA secure_delete = ON");
    Transaction whole(session.db);
    Edit edit(session, Edit::Binned::MayChange);
    for (const auto& id : what.records) {
        letRecordGo(edit, id);
    }
    std::vector<std::string> labels;
    for (const auto& id : what.letters) {
        letLetterGo(edit, id, labels);
    }
    edit.commit(Edit::Undoable::No);
    for (const auto& id : what.letters) {
        eraseTexts(session, "letters", id.text());
    }
    for (const auto& label : labels) {
        eraseTexts(session, "bin", label);
    }
    tightenSearch(session.db);
    whole.commit();
    session.undoable.clear();
}

std::optional<Hold> holdOn(const Connection& db, const std::string& number) {
    struct Newest {
        bool isHeld = false;
        Hold hold;
    };
    const auto newest = db.first(
        "SELECT e.event, e.detail, e.by, e.at FROM record_headers AS h JOIN record_events AS e ON e.record = "
        "h.id WHERE h.record = ? AND e.event IN (?, ?) ORDER BY e.position DESC LIMIT 1",
        {number, std::string(kHeldEvent), std::string(kLiftedEvent)}, [](const Columns& columns) {
            Newest read{columns.text(0) == kHeldEvent, {columns.text(1), columns.text(2), {}}};
            if (!parseInstant(columns.text(3), read.hold.at)) {
                columns.notUnderstood("record_events.at = " + columns.text(3));
            }
            return read;
        });
    return newest && newest->isHeld ? std::optional(newest->hold) : std::nullopt;
}

void holdRecord(Session& session, RecordId id, const std::string& reason) {
    Transaction transaction(session.db);
    const RecordLine line = lineOfRecord(session.db, id);
    refuseLetGo(line);
    if (reason.find_first_not_of(" \t\r\n") == std::string::npos) {
        throw Failure(ErrorCode::HoldWithoutReason, {line.header.record});
    }
    appendEvent(session, id, std::string(kHeldEvent), reason);
    transaction.commit();
}

void liftHold(Session& session, RecordId id) {
    Transaction transaction(session.db);
    const RecordLine line = lineOfRecord(session.db, id);
    if (holdOn(session.db, line.header.record)) {
        appendEvent(session, id, std::string(kLiftedEvent), {});
    }
    transaction.commit();
}

}  // namespace hearth::store
