// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/json_parts.h"

#include <algorithm>
#include <iterator>

namespace hearth::record {

namespace {

Json diagramSectionJson(const DiagramSection& section) {
    return {{"column", section.column},     {"row", section.row},         {"from_row", section.fromRow},
            {"diameter", section.diameter}, {"tested", section.isTested}, {"worst", section.isOnWorst},
            {"number", section.number},     {"above", section.above},     {"below", section.below},
            {"is_end", section.isEnd},      {"end", section.end}};
}

DiagramSection diagramSectionOf(const Json& json) {
    DiagramSection section;
    section.column = json.at("column");
    section.row = json.at("row");
    section.fromRow = json.at("from_row");
    section.diameter = json.at("diameter");
    section.isTested = json.at("tested");
    section.isOnWorst = json.at("worst");
    section.number = json.at("number");
    section.above = json.at("above");
    section.below = json.at("below");
    section.isEnd = json.at("is_end");
    section.end = json.at("end").get<std::vector<std::string>>();
    return section;
}

}  // namespace

Json jsonOf(const Diagram& diagram) {
    Json sections = Json::array();
    for (const auto& section : diagram.sections) {
        sections.push_back(diagramSectionJson(section));
    }
    return {{"block", "diagram"},        {"title", diagram.title},
            {"start", diagram.start},    {"sections", std::move(sections)},
            {"goes_on", diagram.goesOn}, {"after", diagram.after},
            {"notes", diagram.notes}};
}

Diagram diagramOf(const Json& json) {
    Diagram diagram;
    diagram.title = json.at("title");
    diagram.start = json.at("start");
    for (const auto& section : json.at("sections")) {
        diagram.sections.push_back(diagramSectionOf(section));
    }
    diagram.goesOn = json.at("goes_on");
    diagram.after = json.at("after");
    diagram.notes = json.at("notes").get<std::vector<std::string>>();
    return diagram;
}

}  // namespace hearth::record
