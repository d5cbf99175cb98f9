// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/pipework/tree.h"
#include "core/rulebook/rules_in_force.h"

#include <array>
#include <optional>
#include <string_view>

namespace hearth::pipework {

enum class FittingKind { Elbow, Bend, Bend45, Tee };
inline constexpr std::size_t kFittingKinds = 4;

/// Whose equivalent lengths are used. The two are never mixed.
enum class FittingsEdition { Before2015, From2015 };

/// Name of the standard for sentences: "BS 6891:2015". Source: facts/combustion.md 5.1.
/// Checked: fittings_test.cpp.
[[nodiscard]] std::string_view fittingsStandard(FittingsEdition edition);

/// The rule that holds what one fitting of that kind is worth in that tube: copper to 28 mm before 2015; 15,
/// 22, 28 and 35 mm copper from 2015. Nothing for other tubes. Source: BS 6891, as in core/rulebook/shipped.
/// Checked: fittings_test.cpp.
[[nodiscard]] std::optional<rulebook::Rule> fittingRule(const Tube& tube, FittingKind kind,
                                                        FittingsEdition edition);

using FittingEntries = std::array<const rulebook::Entry*, kFittingKinds>;

/// An edition's equivalent lengths out of the rule book, looked up once for a whole tree. Points into the
/// book.
class FittingTable {
  public:
    FittingTable(FittingsEdition edition, const rulebook::RulesInForce& rules);
    [[nodiscard]] FittingsEdition edition() const { return m_edition; }
    /// One entry a kind, null where the book has none; nothing at all for a tube that the edition lacks.
    [[nodiscard]] const FittingEntries* of(const Tube& tube) const;

  private:
    FittingsEdition m_edition;
    std::array<FittingEntries, 4> m_sizes{};
};

/// What the fittings of a section are worth in metres of its pipe.
struct FittingsLength {
    std::optional<quantity::Length> length;  // nothing: a fitting is there whose length is not known
    bool typed = false;
    bool said = true;       // not: `length` is a least, without any fittings
    FittingEntries used{};  // the entries that gave it
};

/// Sum over the fittings of number x equivalent length; a typed length stands before it; 0 without fittings,
/// and as a least where nobody said whether there are any.
/// A fitting whose equivalent length is not known, or a negative number of them, makes the whole unknown:
/// it is never taken as 0. Source: BS 6891 (the method), as in facts/combustion.md 5.1.
/// Checked: fittings_test.cpp.
[[nodiscard]] FittingsLength fittingsLength(const TreeSection& section, const FittingTable& table);

/// The section with another tube. Fittings' typed length grows with the bore, since a fitting is worth much
/// the same number of its own bores in any size. Source: textbook (method of equivalent lengths, L/D).
/// Checked: fittings_test.cpp.
[[nodiscard]] TreeSection resized(const TreeSection& section, const Tube& tube);

}  // namespace hearth::pipework
