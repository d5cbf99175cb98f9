// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/check_dates.h"
#include "core/store/due_facts.h"
#include "core/store/due_list.h"
#include "core/store/due_repository.h"
#include "core/store/duty_reader.h"
#include "core/store/kept_repository.h"
#include "core/store/services.h"
#include "core/store/tables.h"

#include <algorithm>
#include <set>

/// One premises: what each deadline comes from, and what runs beside them.
namespace hearth::store {
namespace {

using calendar::Date;

DueFacts factsOf(const Connection& db, reg::PremisesId id) {
    auto facts = readDueFacts(db, id.bytes);
    if (!facts) {
        throw Failure(ErrorCode::NotFound, {"premises", id.text()});
    }
    return std::move(*facts);
}

std::vector<KnownCheck> knownChecks(const Connection& db, reg::PremisesId id) {
    std::vector<KnownCheck> checks;
    db.query(
        "SELECT c.date, c.appliance, c.record, h.record, coalesce(e.name, '') FROM record_checks AS c JOIN "
        "record_headers AS h ON h.id = c.record LEFT JOIN record_snapshots AS s ON s.record = c.record "
        "LEFT JOIN visits AS v ON v.id = s.visit LEFT JOIN engineers AS e ON e.id = v.engineer "
        "WHERE c.premises = ? AND c.counts = 1",
        {id.bytes}, [&](const Columns& row) {
            const auto date = calendar::fromIso(row.text(0));
            if (!date) {
                row.notUnderstood("record_checks.date = " + row.text(0));
            }
            checks.push_back(
                {*date, reg::ApplianceId{row.uuid(1)}, RecordId{row.uuid(2)}, row.text(3), {}, row.text(4)});
        });
    for (const auto& earlier : readEarlierChecks(db, id)) {
        checks.push_back({earlier.date, earlier.appliance, {}, {}, earlier.id, earlier.by});
    }
    std::stable_sort(checks.begin(), checks.end(),
                     [](const KnownCheck& a, const KnownCheck& b) { return a.date > b.date; });
    return checks;
}

DueItem dueItem(const Connection& db, const ItemFacts& facts, calendar::CheckDuty duty) {
    DueItem item;
    item.history = facts.history;
    item.deadline = facts.deadline;
    item.reached = facts.reached;
    if (facts.deadline && duty != calendar::CheckDuty::OwnInterval) {
        item.window = calendar::checkWindow(facts.deadline->date, facts.history.law);
    }
    if (facts.appliance) {
        item.appliance = valueWithId<reg::Appliance>(db, *facts.appliance);
        if (const auto service =
                calendar::serviceDue(lastService(db, *facts.appliance), item.appliance->installedOn)) {
            item.duties.push_back(*service);
        }
    }
    return item;
}

reg::CheckPlan planOf(const Connection& db, reg::PremisesId id) {
    auto plans = valuesWhere<reg::CheckPlan>(db, "WHERE t.premises = ?", {id.bytes});
    return plans.empty() ? reg::CheckPlan{{}, id} : std::move(plans.front());
}

}  // namespace

std::vector<reg::EarlierCheck> readEarlierChecks(const Connection& db, reg::PremisesId id) {
    return valuesWhere<reg::EarlierCheck>(
        db, "WHERE t.premises = ? AND " + notInBin("t.id") + " ORDER BY t.date DESC, t.id DESC", {id.bytes});
}

DueFile readDueFile(const Connection& db, reg::PremisesId id, Date today) {
    const auto facts = factsOf(db, id);
    const int months = readOwnInterval(db);
    auto lines = readDueLines(db, {id}, today);
    if (lines.empty()) {
        throw Failure(ErrorCode::NotFound, {"premises", id.text()});
    }
    DueFile file;
    file.line = std::move(lines.front());
    file.plan = planOf(db, id);
    file.months = monthsOf(facts, months);
    std::vector<std::optional<calendar::Deadline>> deadlines;
    for (const auto& item : itemsOf(facts, months)) {
        file.items.push_back(dueItem(db, item, file.line.duty));
        deadlines.push_back(item.deadline);
    }
    file.first = calendar::firstDue(deadlines);
    file.checks = knownChecks(db, id);
    file.earlier = readEarlierChecks(db, id);
    file.duties = readDuties(db, today, id);
    file.step = calendar::nextStep(file.line.state, static_cast<int>(file.line.attempts.size()),
                                   file.line.booking.has_value());
    return file;
}

std::vector<record::CheckHistory> readChecksBefore(const Connection& db, reg::VisitId id) {
    const auto visit = valueWithId<reg::Visit>(db, id.bytes);
    auto found = readDueFacts(db, visit.premises.bytes);
    if (!found) {
        return {};  // it lies in the bin, and no list asks for it
    }
    DueFacts& facts = *found;
    std::set<std::pair<Date, std::optional<UuidBytes>>> own;
    db.query(
        "SELECT c.date, c.appliance FROM record_checks AS c JOIN record_snapshots AS s ON s.record = "
        "c.record "
        "WHERE s.visit = ? AND c.counts = 1",
        {id.bytes}, [&](const Columns& row) {
            if (const auto date = calendar::fromIso(row.text(0))) {
                own.emplace(*date, row.uuid(1));
            }
        });
    facts.checks.erase(
        std::remove_if(
            facts.checks.begin(), facts.checks.end(),
            [&](const CheckFacts& one) {
                return one.date >= visit.date || (one.isRecord && own.count({one.date, one.appliance}) > 0);
            }),
        facts.checks.end());
    std::vector<record::CheckHistory> histories;
    for (const auto& item : itemsOf(facts, readOwnInterval(db))) {
        if (item.appliance && item.reached && !item.history.checks.empty()) {
            histories.push_back({reg::ApplianceId{*item.appliance}, item.history});
        }
    }
    return histories;
}

std::vector<DueIfChecked> readIfChecked(const Connection& db, const std::vector<reg::PremisesId>& premises,
                                        Date day) {
    const int months = readOwnInterval(db);
    std::vector<DueIfChecked> all;
    for (const auto& id : premises) {
        const auto facts = factsOf(db, id);
        const auto duty = dutyOf(facts);
        DueIfChecked what;
        what.premises = id;
        for (const auto& item : itemsOf(facts, months)) {
            auto then = item.history;
            then.checks.push_back(day);
            const auto next =
                item.reached ? deadlineOfItem(duty, then, monthsOf(facts, months)) : std::nullopt;
            if (item.deadline && (!what.now || item.deadline->date < *what.now)) {
                what.now = item.deadline->date;
                what.timing = duty == calendar::CheckDuty::OwnInterval
                                  ? (day > item.deadline->date ? calendar::CheckTiming::Late
                                                               : calendar::CheckTiming::InTime)
                                  : calendar::checkTiming(item.deadline->date, day, item.history.law);
            }
            if (next && (!what.next || next->date < *what.next)) {
                what.next = next->date;
                what.nextLatest = next->latest;
                what.appliance =
                    item.appliance ? std::optional(reg::ApplianceId{*item.appliance}) : std::nullopt;
            }
        }
        all.push_back(what);
    }
    return all;
}

std::vector<std::string> readNewestRecords(const Connection& db,
                                           const std::vector<reg::PremisesId>& premises) {
    std::vector<std::string> numbers;
    for (const auto& id : premises) {
        numbers.push_back(
            db.text("SELECT h.record FROM record_checks AS c JOIN record_headers AS h ON h.id = c.record "
                    "WHERE c.premises = ? AND c.counts = 1 ORDER BY c.date DESC, h.number DESC LIMIT 1",
                    {id.bytes}));
    }
    return numbers;
}

}  // namespace hearth::store
