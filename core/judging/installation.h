// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/judging/readings.h"
#include "core/pipework/volume.h"
#include "core/register/visit_file.h"
#include "core/rulebook/rule_book.h"
#include "core/tightness/scope.h"
#include "core/tightness/verdict.h"

#include <optional>
#include <vector>

/// The installation and the gauge of a visit as the computing functions take them.
namespace hearth::judging {

/// Volumes of a test: of the part under test, and of the whole that the scope goes by. A test of the whole
/// counts every section; otherwise the sections' own marks say what was under test.
struct Volumes {
    pipework::VolumeReport tested;
    pipework::VolumeReport whole;
    bool typedUnreadable = false;  // a volume was typed that can't be read: no volume is known then
};
[[nodiscard]] Volumes volumesOf(const reg::VisitFile& file, const Readings& test,
                                const rulebook::RuleBook& book);

/// Of what one test reached: the meter and those sections of the list. The volume typed for the test goes
/// before; nothing where that can't be read.
[[nodiscard]] std::optional<quantity::Volume> volumeReached(const reg::VisitFile& file, const Readings& test,
                                                            const rulebook::RuleBook& book,
                                                            const std::vector<bool>& sections);
/// The change of temperature that may have happened in the timed minutes, either way: as typed, else the rule
/// book's.
[[nodiscard]] quantity::TemperatureChange assumedChange(const Readings& test, const rulebook::RuleBook& book);

/// How far the volume may be off, either way, as a part of it: as typed. Nothing where it is not typed, or is
/// no part from nought to below one: then the volume is taken as exact.
[[nodiscard]] std::optional<quantity::Share> volumeOffOf(const Readings& test);

[[nodiscard]] tightness::TestedPart testedPart(const reg::VisitFile& file,
                                               const pipework::VolumeReport& report);
[[nodiscard]] tightness::ScopeInput scopeInput(const reg::VisitFile& file,
                                               const pipework::VolumeReport& whole);
[[nodiscard]] std::optional<tightness::Extent> extentOf(const Readings& test);
[[nodiscard]] tightness::Conduct conductOf(const Readings& test);

/// The instrument as a gauge; nothing for one that reads no pressure.
[[nodiscard]] std::optional<tightness::Gauge> gaugeFrom(const reg::Instrument& instrument);

}  // namespace hearth::judging
