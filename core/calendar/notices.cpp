// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/notices.h"

namespace hearth::calendar {

namespace {

bool hasBuildingNotices(Nation nation) {
    return nation == Nation::England || nation == Nation::Wales;
}

}  // namespace

std::optional<Date> buildingNoticeBy(Date completed, Nation nation) {
    return hasBuildingNotices(nation) ? std::optional(addDays(completed, kNoticeDays)) : std::nullopt;
}

std::optional<Date> operatingInformationBy(Date completed, Nation nation) {
    return hasBuildingNotices(nation) ? std::optional(addDays(completed, kInformationDays)) : std::nullopt;
}

std::optional<Date> dangerousFittingReportBy(Date informed, Nation nation) {
    return nation == Nation::NorthernIreland ? std::nullopt : std::optional(addDays(informed, kReportDays));
}

Date calibrationDue(Date calibrated, std::optional<int> statedMonths) {
    return addMonths(calibrated, statedMonths.value_or(kCalibrationMonths));
}

Date registrationEnds(Date from) {
    return addMonths(from, kRegistrationMonths);
}

Date competenceEnds(Date assessed) {
    return addMonths(assessed, kCompetenceMonths);
}

Expiry expiryOn(Date due, Date on, int soonDays) {
    const int left = daysBetween(on, due);
    if (left < 0) {
        return Expiry::Expired;
    }
    return left <= soonDays ? Expiry::Soon : Expiry::Valid;
}

}  // namespace hearth::calendar
