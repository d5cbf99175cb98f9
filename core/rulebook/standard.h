// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/civil_date.h"

#include <chrono>
#include <optional>
#include <string_view>

namespace hearth::rulebook {

/// The gas that an installation carries, as far as rules differ by it.
enum class Gas { NaturalGas, Propane, Butane, LpgAir };

/// A standard in one of its editions, as far as a rule, a test or a record depends on which. `General` is for
/// entries that belong to no edition (a habit of the trade, an instrument's duty).
enum class Edition { General, Up1bEd3, Up1bEd4 };

/// Stable codes in files: "natural_gas", "up1b_ed4".
[[nodiscard]] std::string_view gasText(Gas gas);
[[nodiscard]] std::optional<Gas> gasFromText(std::string_view text);
[[nodiscard]] std::string_view editionText(Edition edition);
[[nodiscard]] std::optional<Edition> editionFromText(std::string_view text);

/// The last day on which Edition 3 may judge a test, and the first of the month in which Edition 4 was
/// published.
inline constexpr calendar::Date kEdition3Until{std::chrono::year(2026), std::chrono::September,
                                               std::chrono::day(30)};
inline constexpr calendar::Date kEdition4From{std::chrono::year(2026), std::chrono::March,
                                              std::chrono::day(1)};

/// Which editions of IGEM/UP/1B may judge a test on that day: Edition 3 up to 30 September 2026, Edition 4
/// from its publication in March 2026 (the day is not known here: taken from 1 March), and alone from 1
/// October 2026. Source: the GB gas register's bulletins on Communication 1903 (facts/tightness.md 1.1, P2,
/// P3).
struct EditionsAllowed {
    bool edition3 = false;
    bool edition4 = false;
    [[nodiscard]] bool permits(Edition edition) const {
        return (edition == Edition::Up1bEd3 && edition3) || (edition == Edition::Up1bEd4 && edition4);
    }
    /// The only one allowed; nothing while both are.
    [[nodiscard]] std::optional<Edition> only() const;
};
[[nodiscard]] EditionsAllowed editionsAllowedOn(calendar::Date date);

}  // namespace hearth::rulebook
