// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/civil_date.h"

#include <optional>

/// The other clocks that a job starts: notices, reports, and what runs out.
namespace hearth::calendar {

enum class Nation { England, Wales, Scotland, NorthernIreland };

/// Building Regulations 2010 reg 20: not more than 30 days after completion.
inline constexpr int kNoticeDays = 30;
/// Building Regulations 2010 reg 40: not later than 5 days after completion.
inline constexpr int kInformationDays = 5;
/// RIDDOR 2013 reg 11(2): within 14 days of acquiring the information.
inline constexpr int kReportDays = 14;
/// Gauges are calibrated yearly (exam-revision page on IGE/UP/1B Edition 2); the register renews yearly
/// (trainees' page on qualifications); competence is assessed anew every five years (common practice, no
/// source).
inline constexpr int kCalibrationMonths = 12;
inline constexpr int kRegistrationMonths = 12;
inline constexpr int kCompetenceMonths = 60;
/// Common practice, no source: how long before it runs out something is called soon due.
inline constexpr int kSoonDays = 30;

/// The last day for the certificate to the occupier and the notice to the local authority. Nothing outside
/// England and Wales: Scotland has warrants, Northern Ireland its district councils (from memory).
/// Source: Building Regulations 2010 reg 20. Checked: tests/core/calendar/notices_test.cpp.
[[nodiscard]] std::optional<Date> buildingNoticeBy(Date completed, Nation nation);

/// The last day for information on operating and maintaining the services to the owner; nothing outside
/// England and Wales. Source: Building Regulations 2010 reg 40, as the page "Regulation 40" has it. Checked:
/// tests/core/calendar/notices_test.cpp.
[[nodiscard]] std::optional<Date> operatingInformationBy(Date completed, Nation nation);

/// The last day for a report of a dangerous gas fitting, from the day on which the business had enough
/// information to decide. Nothing for Northern Ireland, which has its own regulations of 1997 (from memory).
/// Source: Reporting of Injuries, Diseases and Dangerous Occurrences Regulations 2013 reg 11(2). Checked:
/// tests/core/calendar/notices_test.cpp.
[[nodiscard]] std::optional<Date> dangerousFittingReportBy(Date informed, Nation nation);

/// The day by which a gauge is to be calibrated again; the maker's or the certificate's own interval in
/// months goes before. Source: exam-revision page on IGE/UP/1B Edition 2 (yearly). Checked:
/// tests/core/calendar/notices_test.cpp.
[[nodiscard]] Date calibrationDue(Date calibrated, std::optional<int> statedMonths = {});

/// The day on which a registration granted on `from` ends.
/// Source: a training page, "How long does a ... qualification last" (yearly). Checked:
/// tests/core/calendar/notices_test.cpp.
[[nodiscard]] Date registrationEnds(Date from);

/// The day by which a competence assessed on `assessed` is to be assessed again.
/// Source: common practice, no source (five years). Checked: tests/core/calendar/notices_test.cpp.
[[nodiscard]] Date competenceEnds(Date assessed);

enum class Expiry { Valid, Soon, Expired };

/// On the day itself it still holds.
/// Source: common practice, no source. Checked: tests/core/calendar/notices_test.cpp.
[[nodiscard]] Expiry expiryOn(Date due, Date on, int soonDays = kSoonDays);

}  // namespace hearth::calendar
