// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rulebook/entry.h"

#include <string_view>
#include <vector>

/// What the tables of shipped entries are written with.
namespace hearth::rulebook::shipped {

/// Where a value stands and where it was read. Doubts are in our own words.
struct Origin {
    Provenance provenance;
    std::string_view standard;
    std::string_view source;
    std::string_view doubt = {};
    std::string_view clause = {};
};

/// Whether the set-up step asks the firm to confirm the entry.
enum class Daily { No, Yes };

inline constexpr std::string_view kUp1bEd3 = "IGEM/UP/1B Edition 3 +A:2012";
inline constexpr std::string_view kUp1bEd4 = "IGEM/UP/1B Edition 4";
inline constexpr std::string_view kBs6400 = "BS 6400-1";

// Pages that were read, named by what they are.
inline constexpr std::string_view kInstitutionPage = "Institution's own page on IGEM/UP/1B Edition 3 +A:2012";
inline constexpr std::string_view kPocketGuide =
    "Certification body's pocket guide Gas 2 (natural gas, to 0.035 m3), reproducing IGEM/UP/1B Edition 3";
inline constexpr std::string_view kRegisterArticle =
    "Gas register's magazine, 2026: the updated tightness testing standard (opening read)";

[[nodiscard]] Value number(std::int64_t mantissa, int decimals, quantity::UnitCode unit);
[[nodiscard]] Value range(std::int64_t least, std::int64_t most, quantity::UnitCode unit);

/// One entry. Editions' dates follow from the edition.
[[nodiscard]] Entry entry(RuleKey key, Value value, Comparison comparison, const Origin& origin,
                          Daily daily = Daily::No);
/// An entry that nobody has been able to read: for the firm to enter.
[[nodiscard]] Entry emptyEntry(RuleKey key, Comparison comparison, std::string_view doubt,
                               Daily daily = Daily::No);

void addStages(std::vector<Entry>& entries);
void addMovement(std::vector<Entry>& entries);
void addDrops(std::vector<Entry>& entries);
void addScope(std::vector<Entry>& entries);
void addPurge(std::vector<Entry>& entries);
void addPressures(std::vector<Entry>& entries);
void addGas(std::vector<Entry>& entries);
void addPipework(std::vector<Entry>& entries);
void addLarger(std::vector<Entry>& entries);
void addBurner(std::vector<Entry>& entries);
void addCombustion(std::vector<Entry>& entries);
void addAir(std::vector<Entry>& entries);
void addDeadlines(std::vector<Entry>& entries);

}  // namespace hearth::rulebook::shipped
