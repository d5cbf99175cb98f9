// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/document.h"

#include <QStringList>

#include <string>
#include <utility>
#include <vector>

/// Documents to lay out in tests and benchmarks: invented people, places and readings.
namespace hearth::testing {

/// A tightness record as it usually is: every kind of block, two pages or so.
[[nodiscard]] record::Document usualDocument();
/// One page: a headline, a grid, two findings, signatures.
[[nodiscard]] record::Document shortDocument();
/// The same blocks with the longest texts that people may type, words without blanks among them, and tables
/// over pages.
[[nodiscard]] record::Document longestDocument();

/// Plots of every kind: a gap, a trace without marks, bands, limits, events, names over several lines.
[[nodiscard]] record::Document plotDocument();

/// Sketches of pipework: one of a house, one too deep for a page's width, one too long for its height.
[[nodiscard]] record::Document diagramDocument();

/// A digest of the right length, of nothing.
[[nodiscard]] std::string sampleDigest();

/// Every text of a document that must stand on paper, in the order of reading down each block; of one in two
/// languages each for itself.
[[nodiscard]] QStringList textsOf(const record::Document& document);
/// Those in two languages: the first, and what stands below it.
[[nodiscard]] std::vector<std::pair<QString, QString>> pairsOf(const record::Document& document);

}  // namespace hearth::testing
