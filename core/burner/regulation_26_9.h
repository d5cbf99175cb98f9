// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rulebook/finding.h"

#include <optional>
#include <string>
#include <vector>

/// Regulation 26(9) of the Gas Safety (Installation and Use) Regulations 1998: what is to be examined at once
/// after work on an appliance.
namespace hearth::burner {

/// Where 26(9) does not ask for an examination (26(10), from memory).
enum class NotAsked { DirectDisconnection, HarmlessPurging };

/// An examination's answer; absent is "not examined". `NotFitted`: a flueless appliance has no flue.
enum class Examined { Good, Wrong, NotFitted };

/// Why neither operating pressure nor heat input could reasonably be read, which alone opens (ca).
enum class NotPracticable {
    NoMeterNoTestPoint,  // no meter, and the pressure can't be measured
    MeterNotAccessible,  // and the pressure can't be measured
    MeterDisplayDead,    // and the pressure can't be measured
    Other,               // said in words by the engineer
};

/// What was examined on one appliance, and how its readings were judged (absent: not read).
struct AppliancesExamination {
    std::optional<NotAsked> notAsked = {};
    std::optional<Examined> flue = {};                        // (a)
    std::optional<Examined> combustionAir = {};               // (b)
    std::optional<rulebook::Outcome> operatingPressure = {};  // (c)
    std::optional<rulebook::Outcome> heatInput = {};          // (c)
    bool bothNecessary = false;                               // (c): the maker, or the case, asks for both
    std::optional<rulebook::Outcome> combustion = {};         // (ca)
    std::optional<NotPracticable> whyNotPracticable = {};     // (ca)
    std::string whyInWords = {};                              // for NotPracticable::Other
    std::optional<Examined> operation = {};                   // (d)
};

enum class Asked { Satisfied, NotSatisfied, NotYet, DoesNotApply };

struct Regulation26 {
    Asked state = Asked::NotYet;
    /// The gravest matter in one sentence: the first that is wrong, else the first that is missing.
    rulebook::Sentence why = {};
    /// Each matter that is missing or wrong, in the order of the regulation; then what else to say.
    std::vector<rulebook::Sentence> matters = {};
};

/// Nothing passes by default: what was not examined is "not yet", and so is combustion in the place of (c)
/// without a reason. A defect is "not satisfied".
/// Source: Gas Safety (Installation and Use) Regulations 1998 reg 26(9)(a)-(c) and (ca) (2018), read; (d) in
/// part and 26(10) from memory.
[[nodiscard]] Regulation26 examinedUnder26(const AppliancesExamination& appliance);
/// The same as a finding: pass, fail, no verdict while something is missing; "look again" where a reading
/// asks for it, or where the regulation does not apply.
/// Source: as above.
[[nodiscard]] rulebook::Finding regulation26Finding(const AppliancesExamination& appliance);

}  // namespace hearth::burner
