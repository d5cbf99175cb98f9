// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/decimal.h"

#include <optional>
#include <string>
#include <vector>

/// A plot as data: what was read, against what it is held. Worded, in order, with no geometry; figures are
/// decimals, as everywhere in a document. ui/words makes plots, ui/paper draws them on paper and on the
/// screen.
namespace hearth::record {

/// Series are told apart by the shape of their marks, so that they stay so without colour. Bars stand on
/// nought, one x apart; a filled one may stand in an open one, as its part.
enum class PlotShape { Disc, Ring, Square, Diamond, Triangle, Bar, OpenBar };

struct PlotPoint {
    quantity::Decimal x;
    std::optional<quantity::Decimal> y;       // none: nothing was read here, and the line has a gap
    std::optional<quantity::Decimal> spread;  // half-width of a bar: the uncertainty
    std::string label;                        // its figure beside it, where there is room; empty: none
    bool operator==(const PlotPoint&) const = default;
};

struct PlotSeries {
    std::string name;  // in the key; empty: not in it
    PlotShape shape = PlotShape::Disc;
    bool isJoined = true;  // by straight lines
    bool hasMarks = true;  // a trace of many points has none
    std::vector<PlotPoint> points;
    bool operator==(const PlotSeries&) const = default;
};

/// A limit: a level that what was read is held against.
struct PlotLimit {
    quantity::Decimal y;
    std::string name;    // with its figure, in the key
    bool isHard = true;  // dashed; otherwise dotted: advice, or what can't be told from nothing
    bool operator==(const PlotLimit&) const = default;
};

/// A range that what was read should lie in, drawn as a ground between two lines.
struct PlotBand {
    quantity::Decimal least;
    quantity::Decimal most;
    std::string name;
    bool operator==(const PlotBand&) const = default;
};

/// Something that happened at an x: an upright line with a number, which the key explains.
struct PlotMark {
    quantity::Decimal x;
    std::string name;
    bool operator==(const PlotMark&) const = default;
};

/// A stage: from one x to another, drawn as an upright ground with a number, which the key explains.
struct PlotStretch {
    quantity::Decimal from;
    quantity::Decimal to;
    std::string name;
    bool operator==(const PlotStretch&) const = default;
};

struct PlotTick {
    quantity::Decimal at;
    std::string text;
    bool operator==(const PlotTick&) const = default;
};

struct PlotAxis {
    std::string title;            // with the unit
    std::vector<PlotTick> ticks;  // none: round numbers
    bool fromNought = false;
    bool operator==(const PlotAxis&) const = default;
};

struct Plot {
    std::string title;
    PlotAxis x;
    PlotAxis y;
    std::vector<PlotSeries> series;
    std::vector<PlotLimit> limits;
    std::vector<PlotBand> bands;
    std::vector<PlotMark> marks;
    std::vector<PlotStretch> stretches = {};  // numbered before the marks
    bool operator==(const Plot&) const = default;

    /// Nothing was read: there is nothing to draw.
    [[nodiscard]] bool isEmpty() const;
};

/// Plots beside each other, of one matter.
struct Plots {
    std::string title;
    std::vector<Plot> plots;
    std::string note;
    bool operator==(const Plots&) const = default;
};

}  // namespace hearth::record
