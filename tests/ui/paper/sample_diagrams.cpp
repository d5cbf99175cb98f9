// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/paper/sample_documents.h"

namespace hearth::testing {

using record::Diagram;
using record::DiagramSection;

namespace {

/// A run of pipe with a branch at each step.
Diagram combDiagram(int steps) {
    Diagram diagram{"", "G4", {}, "goes on in the list below", "after %1", {}};
    for (int i = 0; i < steps; ++i) {
        diagram.sections.push_back({i,
                                    0,
                                    0,
                                    22,
                                    true,
                                    false,
                                    std::to_string(2 * i + 1),
                                    "run " + std::to_string(i),
                                    "",
                                    i + 1 == steps,
                                    {}});
    }
    for (int i = steps - 1; i > 0; --i) {
        diagram.sections.push_back({i,
                                    steps - i,
                                    0,
                                    15,
                                    true,
                                    false,
                                    std::to_string(2 * i),
                                    "branch " + std::to_string(i),
                                    "",
                                    true,
                                    {"fire " + std::to_string(i)}});
    }
    return diagram;
}

Diagram houseDiagram() {
    Diagram diagram{"Pipework", "U6 / G4 diaphragm", {}, "goes on", "after %1", {"Dashed: not under test."}};
    diagram.sections = {
        {0, 0, 0, 22, true, true, "1", "Copper 22 mm · 3.2 m", "tee at the kitchen · 0.001120 m³", false, {}},
        {1,
         0,
         0,
         22,
         true,
         true,
         "2",
         "Copper 22 mm · 4.5 m",
         "0.001575 m³",
         true,
         {"combi boiler (kitchen cupboard)", "0.62 mbar lost at full load – the most",
          "0.55 mbar lost as timed"}},
        {1,
         1,
         0,
         15,
         false,
         false,
         "3",
         "Copper 15 mm · 1.8 m",
         "hob · 0.000252 m³",
         true,
         {"hob (kitchen)", "at least 0.21 mbar lost at full load, fittings not said"}}};
    return diagram;
}

}  // namespace

record::Document diagramDocument() {
    record::Document document = plotDocument();  // for its frame
    Diagram tall = combDiagram(3);
    for (int row = 3; row < 60; ++row) {
        tall.sections.push_back({0,
                                 row,
                                 0,
                                 28,
                                 true,
                                 false,
                                 std::to_string(row),
                                 "from the meter",
                                 "",
                                 true,
                                 {"unit " + std::to_string(row)}});
    }
    document.blocks = {record::Headline{rulebook::Outcome::Pass, "Sketches.", {}},
                       houseDiagram(),
                       combDiagram(14),
                       tall,
                       Diagram{},
                       document.blocks.back()};
    return document;
}

}  // namespace hearth::testing
