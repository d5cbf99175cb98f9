// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

namespace hearth::record {

/// One section of pipe as it stands in the sketch: sections after one another in columns from the meter,
/// branches in rows below.
struct DiagramSection {
    int column = 0;
    int row = 0;
    int fromRow = 0;   // the row that it leaves from
    int diameter = 0;  // mm, of the line that is drawn; 0: not known
    bool isTested = true;
    bool isOnWorst = false;        // on the route that loses most
    std::string number;            // in the list of pipes
    std::string above;             // "22 mm copper · 3.2 m"
    std::string below;             // "tee at the kitchen · 0.00104 m³"
    bool isEnd = false;            // nothing goes on from it
    std::vector<std::string> end;  // what hangs there, and what is lost on the way to it
    bool operator==(const DiagramSection&) const = default;
};

/// Pipework drawn to read, from the meter to what hangs at its ends; every word of it, and no measures.
struct Diagram {
    std::string title;
    std::string start;  // the meter
    std::vector<DiagramSection> sections;
    std::string goesOn;  // where a branch is too deep to be drawn and goes on in the list below
    std::string after;   // "after %1": in that list, what feeds it
    std::vector<std::string> notes;
    bool operator==(const Diagram&) const = default;
};

}  // namespace hearth::record
