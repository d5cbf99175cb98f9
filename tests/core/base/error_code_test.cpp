// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/error_code.h"

#include "tests/support/files.h"

#include <cctype>
#include <gtest/gtest.h>
#include <regex>
#include <set>
#include <string>
#include <vector>

namespace hearth {
namespace {

/// The enumerators as the header lists them: a code that is added there and forgotten in the table is found.
std::vector<std::string> enumerators() {
    const std::string header = testing::readFile(HEARTH_SOURCE_DIR "/core/base/error_code.h");
    const std::size_t start = header.find("enum class ErrorCode {");
    const std::string body = header.substr(start, header.find("};", start) - start);
    const std::regex line(R"(\n +([A-Z][A-Za-z]+),)");
    std::vector<std::string> names;
    for (auto it = std::sregex_iterator(body.begin(), body.end(), line); it != std::sregex_iterator(); ++it) {
        names.push_back((*it)[1]);
    }
    return names;
}

std::string snakeCase(const std::string& upperCamel) {
    std::string text;
    for (const char c : upperCamel) {
        if (std::isupper(static_cast<unsigned char>(c)) != 0 && !text.empty()) {
            text += '_';
        }
        text += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    }
    return text;
}

TEST(ErrorCode, everyCodeOfTheHeaderHasItsText) {
    const auto names = enumerators();
    const auto codes = allErrorCodes();
    ASSERT_GT(names.size(), 30U);
    ASSERT_EQ(codes.size(), names.size());
    for (std::size_t i = 0; i < names.size(); ++i) {
        EXPECT_EQ(codeText(codes[i]), snakeCase(names[i]));
    }
}

TEST(ErrorCode, noTwoTextsAreAlike) {
    std::set<std::string_view> texts;
    for (const ErrorCode code : allErrorCodes()) {
        EXPECT_TRUE(texts.insert(codeText(code)).second) << codeText(code);
    }
}

}  // namespace
}  // namespace hearth
