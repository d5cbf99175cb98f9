// SPDX-License-Identifier: GPL-3.0-or-later
// What the fuzzers of tests/fuzz found worth keeping, replayed by whatever compiler builds the tests.
#include "tests/core/exchange/fuzz_whole.h"
#include "tests/support/files.h"

#include <filesystem>
#include <gtest/gtest.h>

namespace hearth::testing {
namespace {

int replay(const std::string& folder, void (*take)(std::string_view)) {
    int inputs = 0;
    for (const auto& entry :
         std::filesystem::directory_iterator(std::string(HEARTH_SOURCE_DIR) + "/tests/data/fuzz/" + folder)) {
        SCOPED_TRACE(entry.path().filename().string());
        take(readFile(entry.path().string()));
        ++inputs;
    }
    return inputs;
}

TEST(Corpus, ofSpreadsheetsHolds) {
    EXPECT_GT(replay("import", importOneInput), 3);
    importOneInput({});
}

TEST(Corpus, ofWholeStoresHolds) {
    EXPECT_GT(replay("whole", wholeOneInput), 3);
    wholeOneInput({});
}

}  // namespace
}  // namespace hearth::testing
