// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/check_dates.h"

#include "core/calendar/retention.h"
#include "core/register/appliance_kinds.h"

#include <algorithm>

namespace hearth::record {
namespace {

using reg::Item;
namespace choice = reg::choice;

std::optional<calendar::Date> dateTyped(const reg::VisitFile& file, const reg::SubjectRef& on, Item item) {
    const reg::Entry* entry = file.find(on, item);
    return entry != nullptr ? calendar::fromIso(entry->canonical) : std::nullopt;
}

/// From the last check or the deadline it counted for, else from the installation.
std::optional<calendar::Deadline> deadlineBefore(const reg::VisitFile& file,
                                                 const reg::Appliance& appliance) {
    const auto last = dateTyped(file, reg::subject(appliance.id), Item::LastCheckCounted);
    return calendar::firstDeadline(last ? last : appliance.installedOn, std::nullopt);
}

calendar::Deadline nextAfter(const std::optional<calendar::Deadline>& before, calendar::Date checked,
                             calendar::CheckLaw law) {
    if (before) {
        return calendar::deadlineAfter(before->date, checked, law);
    }
    calendar::CheckedItem item;
    item.checks = {checked};
    item.law = law;
    return *calendar::deadlineOf(item);
}

}  // namespace

calendar::CheckLaw checkLawOf(reg::Country country) {
    return country == reg::Country::NorthernIreland ? calendar::CheckLaw::NorthernIreland
                                                    : calendar::CheckLaw::GreatBritain;
}

CheckDates checkDatesOf(const reg::VisitFile& file, const reg::Appliance& appliance,
                        const std::vector<CheckHistory>& kept) {
    const auto on = reg::subject(appliance.id);
    const auto seen = file.choiceOf(on, Item::ApplianceInspected);
    const auto law = checkLawOf(file.premises.country);
    CheckDates dates;
    if (!reg::isGasAppliance(appliance.kind)) {
        return dates;
    }
    if (seen == choice::kInspected || seen == choice::kVisualOnly) {
        const auto own = dateTyped(file, on, Item::CheckedOn);
        dates.checked = own ? own : file.visit.date;
        dates.copyBy = calendar::tenantCopyBy(*dates.checked);
    }
    if (appliance.owner == reg::Owner::Tenant) {
        return dates;
    }
    const bool isChecked = seen == choice::kInspected;
    const auto byEntry = deadlineBefore(file, appliance);
    const auto history = std::find_if(kept.begin(), kept.end(), [&](const CheckHistory& one) {
        return one.appliance == appliance.id && !one.item.checks.empty();
    });
    const auto byHistory = history == kept.end() ? std::nullopt : calendar::deadlineOf(history->item);
    const auto before = byHistory ? byHistory : byEntry;
    if (before) {
        dates.before = before->date;
    }
    dates.next = isChecked ? nextAfter(before, *dates.checked, law) : before;
    if (!isChecked) {
        dates.nextByEntry = byEntry;
    } else {
        dates.keepsDeadline = before && calendar::checkTiming(before->date, *dates.checked, law) ==
                                            calendar::CheckTiming::InWindow;
        dates.nextByEntry = nextAfter(byEntry, *dates.checked, law);
        if (byHistory) {  // where a check stood at a window's edge every reading is followed
            auto item = history->item;
            item.checks.push_back(*dates.checked);
            dates.next = calendar::deadlineOf(item);
        }
    }
    const bool wasEntered = dateTyped(file, on, Item::LastCheckCounted).has_value();
    if (!byHistory || !wasEntered || byEntry->date == byHistory->date) {
        dates.nextByEntry.reset();
    }
    return dates;
}

std::vector<MadeCheck> checksStatedBy(RecordKind kind, const reg::VisitFile& file) {
    std::vector<MadeCheck> checks;
    if (kind != RecordKind::LandlordSafety && kind != RecordKind::OwnerSafety) {
        return checks;
    }
    for (const auto& appliance : appliancesFor(kind, file)) {
        const auto on = reg::subject(appliance.id);
        if (reg::isGasAppliance(appliance.kind) &&
            file.choiceOf(on, Item::ApplianceInspected) == choice::kInspected) {
            checks.push_back({appliance.id, *checkDatesOf(file, appliance).checked,
                              dateTyped(file, on, Item::LastCheckCounted)});
        }
    }
    return checks;
}

}  // namespace hearth::record
