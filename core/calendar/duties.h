// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/notices.h"
#include "core/calendar/retention.h"

#include <array>
#include <optional>
#include <string_view>

/// Every date that the program shows says why: by which rule, read where, counted from what.
namespace hearth::calendar {

enum class DutyKind {
    SafetyCheck,           // regulation 36(3)(a)
    OwnInterval,           // regulation 35: the firm's own
    TenantCopy,            // 28 days after the check
    CopyBeforeMovingIn,    // a new tenant
    Display,               // a stay of 28 days or less
    DisplayWithStatement,  // no relevant appliance in any room that the tenant occupies
    BuildingNotice,        // 30 days after completion
    OperatingInformation,  // 5 days after completion
    FittingReport,         // 14 days after the business knew
    OpenNotice,            // an unsafe situation that nobody has put right yet: no law sets a day
    Calibration,
    Competence,
    Registration,  // the engineer's card
    Insurance,
    Service,  // by the maker
    Keeping,  // of a record
};
inline constexpr std::array kDutyKinds{DutyKind::SafetyCheck,    DutyKind::OwnInterval,
                                       DutyKind::TenantCopy,     DutyKind::CopyBeforeMovingIn,
                                       DutyKind::Display,        DutyKind::DisplayWithStatement,
                                       DutyKind::BuildingNotice, DutyKind::OperatingInformation,
                                       DutyKind::FittingReport,  DutyKind::OpenNotice,
                                       DutyKind::Calibration,    DutyKind::Competence,
                                       DutyKind::Registration,   DutyKind::Insurance,
                                       DutyKind::Service,        DutyKind::Keeping};

/// Proper names, untranslated: the rule and where it was read; "common practice" where there is none.
/// Source: each text names its own. Checked: tests/core/calendar/duties_test.cpp.
[[nodiscard]] std::string_view sourceOf(DutyKind kind);

/// "tenant_copy": never changes, for other programs. Source: none needed: the program's own. Checked:
/// tests/core/calendar/duties_test.cpp.
[[nodiscard]] std::string_view codeOf(DutyKind kind);

/// A day by which something is to be done or runs out, with why.
struct Duty {
    DutyKind kind{};
    Date by{};
    /// What it counts from: the check, the completion, the assessment. Nothing where the date itself was
    /// typed (an insurance's last day).
    std::optional<Date> from = {};
    bool operator==(const Duty&) const = default;
};

/// The maker's yearly service: 12 months after the last, or after the installation; the maker's own interval
/// in months goes before. Nothing when neither is known.
/// Source: common practice, no source (makers ask for it yearly). Checked:
/// tests/core/calendar/duties_test.cpp.
[[nodiscard]] std::optional<Duty> serviceDue(std::optional<Date> lastService, std::optional<Date> installed,
                                             std::optional<int> makersMonths = {});

/// The copy of a check's record to those who live there. One that hangs with a statement in its place is
/// there from when the copy would have been due (regulation 36(7), from memory). Source: as copyWay() and
/// copyBy(). Checked: tests/core/calendar/duties_test.cpp.
[[nodiscard]] std::optional<Duty> copyDue(const Occupation& occupation, Date actualCheck,
                                          std::optional<Date> movesIn);

/// Source: as buildingNoticeBy(). Checked: tests/core/calendar/duties_test.cpp.
[[nodiscard]] std::optional<Duty> noticeDue(Date completed, Nation nation);
/// Source: as operatingInformationBy(). Checked: tests/core/calendar/duties_test.cpp.
[[nodiscard]] std::optional<Duty> informationDue(Date completed, Nation nation);
/// Source: as dangerousFittingReportBy(). Checked: tests/core/calendar/duties_test.cpp.
[[nodiscard]] std::optional<Duty> reportDue(Date informed, Nation nation);

}  // namespace hearth::calendar
