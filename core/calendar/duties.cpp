// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/duties.h"

namespace hearth::calendar {
namespace {

constexpr int kServiceMonths = 12;

std::optional<Duty> dutyBy(DutyKind kind, std::optional<Date> by, std::optional<Date> from) {
    return by ? std::optional(Duty{kind, *by, from}) : std::nullopt;
}

}  // namespace

std::string_view sourceOf(DutyKind kind) {
    switch (kind) {
        case DutyKind::SafetyCheck:
            return "Gas Safety (Installation and Use) Regulations 1998, regulations 36(3)(a) and 36A";
        case DutyKind::OwnInterval:
            return "Gas Safety (Installation and Use) Regulations 1998, regulation 35; the firm's own "
                   "interval";
        case DutyKind::TenantCopy:
        case DutyKind::CopyBeforeMovingIn:
            return "Gas Safety (Installation and Use) Regulations 1998, regulation 36(6); HSE, \"Record "
                   "keeping\"";
        case DutyKind::DisplayWithStatement:
            return "Gas Safety (Installation and Use) Regulations 1998, regulation 36(7), from memory; a "
                   "landlord "
                   "guild's page";
        case DutyKind::Display:
            // Which of the two paragraphs holds the short stay was not read in the statute itself.
            return "Gas Safety (Installation and Use) Regulations 1998, regulation 36(6) and (7); HSE, "
                   "\"Record keeping\"";
        case DutyKind::BuildingNotice:
            return "Building Regulations 2010, regulation 20";
        case DutyKind::OperatingInformation:
            return "Building Regulations 2010, regulation 40";
        case DutyKind::FittingReport:
            return "RIDDOR 2013, regulation 11(2)";
        case DutyKind::OpenNotice:
            return "IGEM/G/11 (unsafe situations); that it is followed up: common practice, no source";
        case DutyKind::Calibration:
            return "certificate; yearly: IGE/UP/1B Edition 2, from an exam-revision page";
        case DutyKind::Competence:
            return "certificate; five years: common practice";
        case DutyKind::Registration:
            return "card; yearly: a training page on qualifications";
        case DutyKind::Insurance:
            return "policy";
        case DutyKind::Service:
            return "maker's instructions; yearly: common practice";
        case DutyKind::Keeping:
            return "SI 2018/139; HSE, \"Gas safety check records and what to keep\"";
    }
    return {};
}

std::string_view codeOf(DutyKind kind) {
    switch (kind) {
        case DutyKind::SafetyCheck:
            return "safety_check";
        case DutyKind::OwnInterval:
            return "own_interval";
        case DutyKind::TenantCopy:
            return "tenant_copy";
        case DutyKind::CopyBeforeMovingIn:
            return "copy_before_moving_in";
        case DutyKind::Display:
            return "display";
        case DutyKind::DisplayWithStatement:
            return "display_with_statement";
        case DutyKind::BuildingNotice:
            return "building_notice";
        case DutyKind::OperatingInformation:
            return "operating_information";
        case DutyKind::FittingReport:
            return "fitting_report";
        case DutyKind::OpenNotice:
            return "open_notice";
        case DutyKind::Calibration:
            return "calibration";
        case DutyKind::Competence:
            return "competence";
        case DutyKind::Registration:
            return "registration";
        case DutyKind::Insurance:
            return "insurance";
        case DutyKind::Service:
            return "service";
        case DutyKind::Keeping:
            break;
    }
    return "keeping";
}

std::optional<Duty> serviceDue(std::optional<Date> lastService, std::optional<Date> installed,
                               std::optional<int> makersMonths) {
    const auto from = lastService ? lastService : installed;
    if (!from) {
        return std::nullopt;
    }
    return Duty{DutyKind::Service, addMonths(*from, makersMonths.value_or(kServiceMonths)), from};
}

std::optional<Duty> copyDue(const Occupation& occupation, Date actualCheck, std::optional<Date> movesIn) {
    const auto way = copyWay(occupation);
    if (!way) {
        return std::nullopt;
    }
    switch (*way) {
        case CopyWay::WithinDays:
            return dutyBy(DutyKind::TenantCopy, copyBy(*way, actualCheck, movesIn), actualCheck);
        case CopyWay::BeforeMovingIn:
            return dutyBy(DutyKind::CopyBeforeMovingIn, copyBy(*way, actualCheck, movesIn), movesIn);
        case CopyWay::MayDisplayWithStatement: {
            const auto inPlaceOf = copyWay({occupation.newTenant, occupation.days, true});
            return inPlaceOf ? dutyBy(DutyKind::DisplayWithStatement,
                                      copyBy(*inPlaceOf, actualCheck, movesIn), actualCheck)
                             : std::nullopt;
        }
        case CopyWay::MayDisplay:
            break;
    }
    return Duty{DutyKind::Display, actualCheck, actualCheck};  // it hangs there from the first day
}

std::optional<Duty> noticeDue(Date completed, Nation nation) {
    return dutyBy(DutyKind::BuildingNotice, buildingNoticeBy(completed, nation), completed);
}

std::optional<Duty> informationDue(Date completed, Nation nation) {
    return dutyBy(DutyKind::OperatingInformation, operatingInformationBy(completed, nation), completed);
}

std::optional<Duty> reportDue(Date informed, Nation nation) {
    return dutyBy(DutyKind::FittingReport, dangerousFittingReportBy(informed, nation), informed);
}

}  // namespace hearth::calendar
