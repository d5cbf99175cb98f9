// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/judging/trace_seen.h"
#include "core/tightness/leak_places.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

/// Looking for a leak by shutting off one branch after another: the tests of a visit compared by the volume
/// that each reached and the leak that it found. Evidence, never a verdict; none is made of it.
namespace hearth::judging {

/// Why a test can't be compared.
enum class HuntLacks {
    Nothing,
    Appliances,  // whether they were open to the test is not said
    PipesShut,   // what was typed as shut names no pipe of the list
    PipeOrder,   // pipes were shut, and the list is no tree from the meter
    Volume,      // of what the test reached
    Readings,    // start, end or times, or none that can be read
    Gauge,       // none is chosen, so that nothing is known of its steps
    Changed,     // something was mended or changed between it and those compared
};

/// One test, or the repeat with the appliances isolated.
struct HuntedTest {
    reg::TestId test;
    bool isRetest = false;
    bool reachedAppliances = false;
    std::vector<std::size_t> shut;  // sections of the list
    HuntLacks lacks = HuntLacks::Nothing;
    std::string unread;  // with PipesShut: the word
    std::optional<quantity::Volume> volume;
    std::optional<tightness::Within95<quantity::Flow>> leak;  // at the first compared test's pressure
    bool isByTrace = false;
    bool isVolumeExact = true;  // nothing is said of how far it may be off
};

/// A place where a leak can be.
struct HuntPlace {
    enum class Kind {
        Meter,      // with what no valve of the list shuts
        Pipe,       // a section of the list
        Appliance,  // beyond the valve at a section's end; without a list, all of them
    };
    Kind kind = Kind::Meter;
    std::optional<std::size_t> section;
    bool operator==(const HuntPlace&) const = default;
};

struct LeakHunt {
    std::vector<HuntedTest> tests;
    std::vector<HuntPlace> places;  // those of `told`
    tightness::LeakPlaces told;
    /// Whether there is anything to show: two tests or more that differ in what they reached.
    [[nodiscard]] bool isOne() const { return told.says != tightness::LeakPlacesSay::NothingToCompare; }
};

/// A section is reached while neither it nor one that feeds it is shut; in a test of a part, only where it is
/// marked as under test. An appliance is reached with its section, in a test with appliances connected. The
/// leak is the trace's where the visit has one that tells it, else that of the two readings; the interval is
/// 95 % of the one, U (k = 2) of the other; how far the volume may
/// be off and the gauge's drift are in both where they are said. Told at another pressure a leak is
/// proportional to it (laminar, as in settle_leak.h).
[[nodiscard]] LeakHunt huntLeak(const reg::VisitFile& file, const rulebook::RuleBook& book,
                                std::span<const TraceSeen> traces);

}  // namespace hearth::judging
