// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/check_dates.h"

#include "core/calendar/retention.h"

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

}  // namespace

calendar::CheckLaw checkLawOf(reg::Country country) {
    return country == reg::Country::NorthernIreland ? calendar::CheckLaw::NorthernIreland
                                                    : calendar::CheckLaw::GreatBritain;
}

CheckDates checkDatesOf(const reg::VisitFile& file, const reg::Appliance& appliance) {
    const auto on = reg::subject(appliance.id);
    const auto seen = file.choiceOf(on, Item::ApplianceInspected);
    const auto law = checkLawOf(file.premises.country);
    CheckDates dates;
    if (seen == choice::kInspected || seen == choice::kVisualOnly) {
        const auto own = dateTyped(file, on, Item::CheckedOn);
        dates.checked = own ? own : file.visit.date;
        dates.copyBy = calendar::tenantCopyBy(*dates.checked);
    }
    if (appliance.owner == reg::Owner::Tenant) {
        return dates;
    }
    const auto before = deadlineBefore(file, appliance);
    if (before) {
        dates.before = before->date;
    }
    if (seen != choice::kInspected) {
        dates.next = before;
        return dates;
    }
    if (before) {
        dates.keepsDeadline =
            calendar::checkTiming(before->date, *dates.checked, law) == calendar::CheckTiming::InWindow;
        dates.next = calendar::deadlineAfter(before->date, *dates.checked, law);
    } else {
        calendar::CheckedItem item;
        item.checks = {*dates.checked};
        item.law = law;
        dates.next = calendar::deadlineOf(item);
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
        if (file.choiceOf(on, Item::ApplianceInspected) == choice::kInspected) {
            checks.push_back({appliance.id, *checkDatesOf(file, appliance).checked,
                              dateTyped(file, on, Item::LastCheckCounted)});
        }
    }
    return checks;
}

}  // namespace hearth::record
