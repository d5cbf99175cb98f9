// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/rulebook/entry.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace hearth::rulebook {

/// What the firm says of one entry from its own copy of the standard: the shipped value confirmed, or
/// another.
struct FirmEntry {
    RuleKey key;
    Value value;
    std::string confirmedBy;  // name
    calendar::Date confirmedOn;
    std::string fromCopy;  // "own copy, table 5": free text
    bool operator==(const FirmEntry&) const = default;
};

/// The rule book as a value: the shipped entries with the firm's laid over them. Judging takes it by const
/// reference.
class RuleBook {
  public:
    /// The entries that the program ships with (tables in code, each with its citation). No firm entries.
    [[nodiscard]] static RuleBook shipped();
    explicit RuleBook(std::vector<Entry> entries) : m_entries(std::move(entries)) {}

    /// The firm's word replaces value and provenance; standard, edition, dates and the shipped source stay
    /// readable. Where a key has several entries, each for its own time, the word is of the one in force on
    /// the day of the word. Errors: RuleUnknown when there is no such shipped entry (same rule, edition and
    /// gas); RuleValueUnusable with what is wrong: "missing", "shape", "unit", "not_positive",
    /// "range_reversed", or a band's slip that is no mere doubt.
    [[nodiscard]] Result<void> lay(const FirmEntry& firm);

    /// The entry of a key: one for exactly that gas before one for any gas; of several for their own times
    /// the newest. Nothing if the book has none.
    [[nodiscard]] const Entry* find(const RuleKey& key) const;
    /// The same, and only one that may judge on that day.
    [[nodiscard]] const Entry* find(const RuleKey& key, calendar::Date on) const;
    /// The entry of exactly that key that a firm's word of that day is about: the one in force, else the
    /// newest.
    [[nodiscard]] const Entry* meantOn(const RuleKey& key, calendar::Date on) const;

    [[nodiscard]] std::span<const Entry> entries() const& { return m_entries; }
    std::span<const Entry> entries() const&& =
        delete;  // a loop over a temporary book would read freed memory

  private:
    std::vector<Entry> m_entries;
};

/// A slip in a table of bands as typed from the firm's own copy; each names the band (from 0).
enum class BandSlip { NoBands, VolumeNotRising, DropNotShrinking, NotPositive, LeakRateOutOfOrder };
/// "no_bands", "volume_not_rising"…
[[nodiscard]] std::string_view slipText(BandSlip slip);
struct BandDoubt {
    BandSlip slip;
    std::size_t band;
    bool operator==(const BandDoubt&) const = default;
};
/// Volumes rise, allowed drops shrink (or stay), all positive; each band's implied leak rate (volume x drop
/// over the test time) is within a factor of three of the middle one. The last is a doubt to be confirmed,
/// the others are slips.
[[nodiscard]] std::vector<BandDoubt> checkBands(std::span<const Band> bands);

}  // namespace hearth::rulebook
