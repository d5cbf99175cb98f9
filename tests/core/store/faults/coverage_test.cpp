// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/faults/fault_actions.h"

#include <gmock/gmock.h>
#include <regex>
#include <set>

namespace hearth::store {
namespace {

/// The members of the store's interfaces that may write: "saveFirm"; with the type of what is given where
/// several have one name: "save reg::Party".
std::set<std::string> writingCalls() {
    const std::filesystem::path folder = std::filesystem::path(HEARTH_SOURCE_DIR) / "core" / "store";
    const std::regex member(R"(virtual ([^;{]*?)\b(\w+)\((?:const )?([\w:]*)[^;{]*?\)\s*(const)? = 0;)");
    std::set<std::string> calls;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        if (entry.path().extension() != ".h") {
            continue;
        }
        const std::string text = hearth::testing::readFile(entry.path());
        for (std::sregex_iterator at(text.begin(), text.end(), member), end; at != end; ++at) {
            const auto& match = *at;
            if (!match[4].matched && match[1].str().find("Result<") != std::string::npos) {
                const std::string name = match[2];
                calls.insert(name == "save" ? name + " " + match[3].str() : name);
            }
        }
    }
    return calls;
}

TEST(EveryWritingCall, isTriedWithAFailingDisk) {
    std::set<std::string> tried;
    for (const auto& action : actions()) {
        tried.insert(action.call);
    }
    EXPECT_GT(tried.size(), 15U);
    EXPECT_THAT(writingCalls(), ::testing::ContainerEq(tried));
}

}  // namespace
}  // namespace hearth::store
