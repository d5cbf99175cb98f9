// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/pipework/volume.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

/// One description of the pipes, from which volume, pressure drop and purge all follow.
namespace hearth::pipework {

/// How many of each are in a section.
struct Fittings {
    int elbows = 0;
    int bends = 0;
    int bends45 = 0;
    int tees = 0;
    [[nodiscard]] bool none() const { return elbows == 0 && bends == 0 && bends45 == 0 && tees == 0; }
};

/// What an appliance draws at the end of a section: at its largest heat input, and as measured. Each with its
/// standard uncertainty, where known. A capped end draws 0: said, not left out.
struct Demand {
    std::optional<quantity::Flow> design;
    std::optional<quantity::Flow> measured;
    quantity::Flow designUncertainty;
    quantity::Flow measuredUncertainty;
};

struct TreeSection {
    std::string name;                  // "boiler", "tee to hob": for sentences; may be empty
    std::optional<std::size_t> after;  // the section of the list that feeds it; none: the meter
    const Tube* tube = nullptr;        // none: not said yet
    std::optional<quantity::Length> length;
    quantity::Length lengthUncertainty;  // standard uncertainty
    std::optional<quantity::Volume> typedVolume;
    bool underTest = true;
    Fittings fittings;
    bool fittingsSaid = true;  // not: there may be more than none, and what is lost is a least
    std::optional<quantity::Length> typedFittings;  // what its fittings are worth in metres of this pipe
    std::optional<Demand> demand;                   // an appliance at its end
};

/// A list of sections that is known to be a tree from the meter, in any order.
class Tree {
  public:
    /// Errors: PipeFeederMissing (a section after one that is not in the list), PipeLoop (one that would feed
    /// itself); both with the section's number from 1. An empty list is an empty tree.
    [[nodiscard]] static Result<Tree> make(std::vector<TreeSection> sections);

    [[nodiscard]] std::span<const TreeSection> sections() const { return m_sections; }
    /// Indices such that what feeds a section comes before it.
    [[nodiscard]] std::span<const std::size_t> feedersFirst() const { return m_order; }
    /// Whether nothing goes on from it.
    [[nodiscard]] bool isEnd(std::size_t section) const { return m_ends[section]; }
    /// From the meter to that section, both ends included.
    [[nodiscard]] std::vector<std::size_t> route(std::size_t section) const;
    /// The section's name, or its number from 1.
    [[nodiscard]] std::string nameOf(std::size_t section) const;
    /// The same tree with another tube in one section; see resized() in fittings.h for what its fittings are
    /// then worth.
    void replace(std::size_t section, TreeSection by);

  private:
    std::vector<TreeSection> m_sections;
    std::vector<std::size_t> m_order;
    std::vector<bool> m_ends;
};

/// Installation volume of the part of the tree that is under test, with the meter and the rest of `around`
/// (whose own sections are ignored). Source: volume() in volume.h, which does it. Checked: tree_test.cpp.
[[nodiscard]] VolumeReport volumeUnderTest(const Tree& tree, VolumeInput around);
/// The same of all pipes, under test or not. Source: as volumeUnderTest(). Checked: tree_test.cpp.
[[nodiscard]] VolumeReport volumeOfAll(const Tree& tree, VolumeInput around);

}  // namespace hearth::pipework
