// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/civil_date.h"
#include "core/rulebook/finding.h"
#include "core/rulebook/rules_in_force.h"
#include "core/tightness/gauge.h"

#include <optional>

/// What is looked at before the gauge is read: the place, the edition, the gauge itself.
namespace hearth::tightness {

enum class SafeToTouch { Safe, VoltageFound, NotDone };
enum class OpenEnds { NoneSeen, FoundSealed, FoundOpen, NotLooked };
enum class Visual { Sound, Defects, NotDone };

/// Sweep of exposed metal pipe with a no-contact voltage detector before let-by.
/// Source: gas register's magazine on IGEM/UP/1B Edition 4. Checked: preparation_test.cpp.
[[nodiscard]] rulebook::Finding safeToTouch(std::optional<SafeToTouch> answer);
/// What is open passes no test.
/// Source: gas register's magazine on IGEM/UP/1B Edition 4 (visual inspection); else common practice, no
/// source. Checked: preparation_test.cpp.
[[nodiscard]] rulebook::Finding openEnds(std::optional<OpenEnds> answer);
/// Any smell of gas fails.
/// Source: two sets of trainees' revision cards on IGEM/UP/1B Edition 3 (no smell of gas allowed). Checked:
/// preparation_test.cpp.
[[nodiscard]] rulebook::Finding smellOnArrival(std::optional<bool> smelled);
/// Defects are for the engineer to judge, so they neither pass nor fail: "look again".
/// Source: common practice, no source. Checked: preparation_test.cpp.
[[nodiscard]] rulebook::Finding visualInspection(std::optional<Visual> answer);

/// Which edition judges: the one said, if it may judge on that day; the only one that may, if none was said.
/// The days are those of rulebook::editionsAllowedOn().
struct EditionChosen {
    std::optional<rulebook::Edition> edition;
    rulebook::Finding finding;
};
/// Source: gas register's magazine, 2026 (Edition 3 is withdrawn on the day that the rule book has). Checked:
/// preparation_test.cpp.
[[nodiscard]] EditionChosen editionFor(std::optional<rulebook::Edition> said, calendar::Date on);

/// A gauge not zeroed still reads a change; the pressures that are set by it are in doubt: "look again".
/// Source: an exam revision page for a U-gauge; for an electronic one common practice, no source. Checked:
/// preparation_test.cpp.
[[nodiscard]] rulebook::Finding gaugeZero(std::optional<bool> zeroed);
/// Held against the date that the firm keeps for the instrument. Within 30 days of it the pass says so, which
/// is a reminder and no limit. Source: an exam revision page (calibrated and certificated yearly); the
/// reminder common practice, no source. Checked: preparation_test.cpp.
[[nodiscard]] rulebook::Finding gaugeCalibration(std::optional<calendar::Date> due, calendar::Date on);
/// Electronic gauges only.
/// Source: the entry's own (Rule::GaugeAccuracy). Checked: preparation_test.cpp.
[[nodiscard]] rulebook::Finding gaugeAccuracy(const Given<quantity::PressureChange>& accuracy,
                                              const rulebook::RuleBook& book);

/// Two displays of one gauge, the second read at the start, at the end or at both: within one digit of each
/// other is agreement.
struct Displays {
    Given<Reading> firstStart;
    Given<Reading> firstEnd;
    Given<Reading> secondStart;
    Given<Reading> secondEnd;
};
/// Source: common practice, no source. Checked: preparation_test.cpp.
[[nodiscard]] rulebook::Finding displaysAgree(const Displays& displays, const std::optional<Gauge>& gauge);

}  // namespace hearth::tightness
