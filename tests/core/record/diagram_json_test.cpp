// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/diagram.h"
#include "core/record/snapshot.h"

#include <gtest/gtest.h>

namespace hearth::record {
namespace {

Diagram fullDiagram() {
    Diagram diagram{"Pipework", "G4", {}, "goes on below", "after %1", {"one note", "another"}};
    diagram.sections = {{0, 0, 0, 22, true, true, "1", "22 mm", "tee", false, {}},
                        {1, 2, 0, 15, false, false, "2", "15 mm", "hob", true, {"hob", "0.40 mbar lost"}}};
    return diagram;
}

std::string inSnapshot(const Document& document) {
    return "{\"document\":" + documentJson(document) + "}";
}

TEST(DiagramJson, isReadBackAsItWas) {
    Document document;
    document.blocks = {fullDiagram(), Diagram{}};
    EXPECT_EQ(documentFromJson(inSnapshot(document)), document);
}

TEST(DiagramJson, refusesWhatIsNoDiagram) {
    Document document;
    document.blocks = {fullDiagram()};
    const std::string json = inSnapshot(document);
    for (const auto& [good, bad] :
         std::vector<std::pair<std::string, std::string>>{{"\"diameter\":22", "\"diameter\":\"wide\""},
                                                          {"\"tested\":true", "\"tested\":1"},
                                                          {"\"start\":\"G4\"", "\"start\":4"}}) {
        std::string broken = json;
        const auto at = broken.find(good);
        ASSERT_NE(at, std::string::npos) << good;
        broken.replace(at, good.size(), bad);
        EXPECT_FALSE(documentFromJson(broken).has_value()) << bad;
    }
}

}  // namespace
}  // namespace hearth::record
