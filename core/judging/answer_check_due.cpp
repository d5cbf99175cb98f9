// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/deadlines.h"
#include "core/calendar/retention.h"
#include "core/judging/asking.h"
#include "core/rulebook/conclude.h"

#include <array>
#include <utility>

namespace hearth::judging {

namespace {

using calendar::CheckLaw;
using calendar::CheckTiming;
using calendar::Date;
using calendar::Deadline;
using calendar::DeadlineReason;
using reg::Item;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Say;
using rulebook::Sentence;

/// What the sheet says of one appliance or flue and its tenant.
struct CheckSheet {
    CheckLaw law = CheckLaw::GreatBritain;
    std::optional<Date> installed;
    std::optional<Date> lease;
    std::optional<Date> last;
    std::optional<Date> done;
    std::optional<Date> othersDue;

    [[nodiscard]] calendar::CheckedItem item(bool withCheck) const {
        calendar::CheckedItem item;
        item.installed = installed;
        item.leaseBegins = lease;
        item.extendedTo = othersDue;
        item.law = law;
        if (withCheck && done) {
            item.checks.push_back(*done);
        }
        return item;
    }
};

/// What can't be used, or is not said.
std::optional<Sentence> checkLack(const Readings& once) {
    for (const auto item :
         {Item::CheckInstalled, Item::CheckLease, Item::CheckLast, Item::CheckDone, Item::CheckOthersDue}) {
        if (once.date(item).unreadable) {
            return Sentence{Say::ReadingUnusable};
        }
    }
    return once.code(Item::CheckCountry).empty() ? std::optional(Sentence{Say::CheckCountryMissing})
                                                 : std::nullopt;
}

CheckSheet checkSheet(const Readings& once) {
    const bool ireland = once.code(Item::CheckCountry) == reg::choice::kNorthernIreland;
    return {ireland ? CheckLaw::NorthernIreland : CheckLaw::GreatBritain,
            once.date(Item::CheckInstalled).value,
            once.date(Item::CheckLease).value,
            once.date(Item::CheckLast).value,
            once.date(Item::CheckDone).value,
            once.date(Item::CheckOthersDue).value};
}

/// A check before the date that it follows is a slip.
std::optional<Sentence> crossedDates(const CheckSheet& known) {
    for (const auto& earlier : {known.last, known.installed}) {
        if (known.done && earlier && *known.done < *earlier) {
            return Sentence{Say::CheckDatesCrossed, {*known.done, *earlier}};
        }
    }
    return std::nullopt;
}

/// The deadline that stood before the check; nothing when nothing is known of that time.
std::optional<Deadline> deadlineBefore(const CheckSheet& known) {
    if (known.last) {
        return Deadline{calendar::addMonths(*known.last, calendar::kCheckMonths),
                        DeadlineReason::FirstKnownCheck, *known.last, std::nullopt, std::nullopt};
    }
    return calendar::deadlineOf(known.item(false));
}

std::optional<Deadline> deadlineNow(const CheckSheet& known) {
    if (!known.last) {
        return calendar::deadlineOf(known.item(true));
    }
    const auto before = deadlineBefore(known);
    return known.done ? calendar::deadlineAfter(before->date, *known.done, known.law) : *before;
}

Sentence whyDeadline(const Deadline& deadline) {
    const auto before = deadline.before.value_or(deadline.base);
    switch (deadline.reason) {
        case DeadlineReason::Installed:
            return {Say::CheckFromInstalled, {deadline.base}};
        case DeadlineReason::LeaseBegins:
            return {Say::CheckFromLease, {deadline.base}};
        case DeadlineReason::CheckedInWindow:
            return {Say::CheckFromKept, {before}};
        case DeadlineReason::CheckedAtWindowsEdge:
            return {Say::CheckFromEdge, {deadline.base, before}};
        case DeadlineReason::CheckedBeforeLease:
            return {Say::CheckFromLeaseCheck, {deadline.base, before}};
        case DeadlineReason::Extended:
            return {Say::CheckPutOff, {before, deadline.date}};
        case DeadlineReason::CheckedExtended:
            return {Say::CheckAfterPutOff};
        case DeadlineReason::FirstKnownCheck:
        case DeadlineReason::CheckedEarly:
        case DeadlineReason::CheckedInTime:
        case DeadlineReason::CheckedLate:
        case DeadlineReason::OwnInterval:
            break;
    }
    return {Say::CheckFromDate, {deadline.base}};
}

/// What Northern Ireland's law says is from memory, and so is never the last word.
void markLaw(Finding& finding, CheckLaw law) {
    if (law != CheckLaw::NorthernIreland) {
        return;
    }
    finding.notes.push_back({Say::CheckLawFromMemory});
    if (finding.outcome == Outcome::Pass) {
        finding.outcome = Outcome::LookAgain;
    }
}

Finding dueFinding(const Deadline& deadline, CheckLaw law, Date today) {
    Finding finding{FindingKind::CheckDue};
    if (today > deadline.latest.value_or(deadline.date)) {
        finding.outcome = Outcome::Fail;
        finding.why = {Say::CheckOverdue, {deadline.date}};
    } else if (deadline.isUndecided()) {
        finding.outcome = Outcome::LookAgain;
        finding.why = {Say::CheckDueEither, {deadline.date, *deadline.latest}};
    } else {
        finding.outcome = Outcome::Pass;
        finding.why = {Say::CheckDueBy, {deadline.date}};
    }
    finding.notes.push_back(whyDeadline(deadline));
    const auto window = calendar::checkWindow(deadline.date, law);
    const bool hasWindow = deadline.reason != DeadlineReason::LeaseBegins && !deadline.isUndecided();
    if (window && hasWindow && today <= deadline.date) {
        finding.notes.push_back({Say::CheckWindowOpens, {window->certain, deadline.date}});
    }
    markLaw(finding, law);
    return finding;
}

struct CheckCounted {
    CheckTiming timing;
    Outcome outcome;
    Say say;
};
constexpr std::array kCheckCounted{
    CheckCounted{CheckTiming::InWindow, Outcome::Pass, Say::CheckCountsInWindow},
    CheckCounted{CheckTiming::BeforeWindow, Outcome::Pass, Say::CheckCountsEarly},
    CheckCounted{CheckTiming::Boundary, Outcome::LookAgain, Say::CheckCountsEdge},
    CheckCounted{CheckTiming::InTime, Outcome::Pass, Say::CheckCountsInTime},
    CheckCounted{CheckTiming::Late, Outcome::Fail, Say::CheckCountsLate},
};

Finding madeFinding(const Deadline& before, Date done, CheckLaw law) {
    Finding finding{FindingKind::CheckMade};
    const auto say = [&](Outcome outcome, Say why, Date deadline) {
        finding.outcome = outcome;
        finding.why = {why, {done, deadline}};
    };
    const bool putOff = before.reason == DeadlineReason::Extended;
    // A first check that was not put off stands to its ordinary date.
    const auto deadline = putOff && done <= *before.before ? *before.before : before.date;
    const auto timing = calendar::checkTiming(deadline, done, law);
    if (putOff && done > *before.before && timing != CheckTiming::Late) {
        say(Outcome::Pass, Say::CheckCountsPutOff, deadline);
    } else if (before.reason == DeadlineReason::LeaseBegins && timing != CheckTiming::Late) {
        say(Outcome::Pass, Say::CheckCountsInTime, deadline);
    } else {
        for (const auto& counted : kCheckCounted) {
            if (counted.timing == timing) {
                say(counted.outcome, counted.say, deadline);
            }
        }
    }
    markLaw(finding, law);
    return finding;
}

/// By when whom a copy reaches, and how long the record is kept.
void noteCopies(Asking& asking, Date done, CheckLaw law) {
    auto& notes = asking.answer.notes;
    const auto& once = asking.once;
    const auto kept = calendar::keepRecord(done, std::array{done}, std::nullopt, law);
    if (kept.until) {
        notes.push_back({Say::RecordKeptUntil, {*kept.until}});
    } else {
        notes.push_back({Say::RecordKeptOn, {calendar::addMonths(done, calendar::kRecordMonths)}});
    }
    if (law == CheckLaw::NorthernIreland) {
        notes.push_back({Say::CheckLawFromMemory});
        return;  // who gets a copy by when was not read for it
    }
    calendar::Occupation occupation;
    occupation.newTenant =
        once.choice<bool>(Item::CheckTenant, {{reg::choice::kNew, true}, {reg::choice::kExisting, false}});
    if (occupation.newTenant != true) {
        notes.push_back({Say::TenantCopyBy, {calendar::tenantCopyBy(done)}});
    }
    if (occupation.newTenant == false) {
        return;
    }
    notes.push_back({Say::RecordCurrentUntil, {calendar::recordCurrentUntil(done)}});
    const auto way = calendar::copyWay(occupation);
    const auto by = way ? calendar::copyBy(*way, done, once.date(Item::CheckMovesIn).value) : std::nullopt;
    notes.push_back(by ? Sentence{Say::TenantCopyBefore, {*by}} : Sentence{Say::TenantCopyNoDay});
}

}  // namespace

void answerCheckDue(Asking& asking) {
    const auto about = {Item::CheckLast, Item::CheckInstalled, Item::CheckLease, Item::CheckDone};
    if (auto lack = checkLack(asking.once)) {
        asking.find(rulebook::noVerdict(FindingKind::CheckDue, *std::move(lack)), about);
        return;
    }
    const auto known = checkSheet(asking.once);
    if (auto crossed = crossedDates(known)) {
        asking.find(rulebook::noVerdict(FindingKind::CheckDue, *std::move(crossed)), about);
        return;
    }
    const auto next = deadlineNow(known);
    if (!next) {
        asking.find(rulebook::noVerdict(FindingKind::CheckDue, {Say::CheckBasisMissing}), about);
        return;
    }
    asking.find(dueFinding(*next, known.law, asking.sheet.on()), about);
    if (!known.done) {
        return;
    }
    if (const auto before = deadlineBefore(known)) {
        asking.find(madeFinding(*before, *known.done, known.law), {Item::CheckDone});
    }
    noteCopies(asking, *known.done, known.law);
}

}  // namespace hearth::judging
