// SPDX-License-Identifier: GPL-3.0-or-later
// A file has at most 500 lines and a function at most 60: what is longer is understood by nobody in one go.
#include "tests/system/function_length.h"
#include "tests/system/source_text.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <iostream>

namespace hearth::testing {
namespace {

constexpr std::size_t kMostFileLines = 500;
constexpr std::size_t kMostFunctionLines = 60;

std::vector<SourceFile> allCode() {
    return sourceFiles({"app", "core", "ui", "tests"}, {".h", ".cpp"});
}

std::vector<std::string> sizeSlips(const SourceFile& file) {
    std::vector<std::string> slips;
    if (const std::size_t lines = lineCount(file.text); lines > kMostFileLines) {
        slips.push_back(file.path + ": " + std::to_string(lines) + " lines");
    }
    for (const auto& function : functionLengths(file.text)) {
        if (function.lines > kMostFunctionLines) {
            slips.push_back(file.path + ':' + std::to_string(function.line) + ": " +
                            std::to_string(function.lines) + " lines: " + function.head);
        }
    }
    return slips;
}

TEST(Size, everyFileAndFunctionIsShortEnough) {
    const auto files = allCode();
    ASSERT_GT(files.size(), 20U);
    std::vector<std::size_t> lengths;
    for (const auto& file : files) {
        for (const auto& slip : sizeSlips(file)) {
            ADD_FAILURE() << slip;
        }
        for (const auto& function : functionLengths(file.text)) {
            lengths.push_back(function.lines);
        }
    }
    ASSERT_GT(lengths.size(), 50U);
    std::sort(lengths.begin(), lengths.end());
    std::cout << files.size() << " files, " << lengths.size() << " functions; lines of a function: median "
              << lengths[lengths.size() / 2] << ", nine in ten up to " << lengths[lengths.size() * 9 / 10]
              << ", longest " << lengths.back() << '\n';
}

std::string lines(std::size_t count) {
    std::string text;
    for (std::size_t i = 0; i < count; ++i) {
        text += "    x();\n";
    }
    return text;
}

TEST(Size, tooLongAFileIsFound) {
    EXPECT_TRUE(sizeSlips({"a.cpp", std::string(500, '\n')}).empty());
    EXPECT_EQ(sizeSlips({"a.cpp", std::string(501, '\n')}).size(), 1U);
    EXPECT_EQ(sizeSlips({"a.cpp", std::string(500, '\n') + "x"}).size(), 1U);
}

TEST(Size, tooLongAFunctionIsFound) {
    EXPECT_TRUE(sizeSlips({"a.cpp", "void f() {\n" + lines(58) + "}\n"}).empty());
    EXPECT_EQ(sizeSlips({"a.cpp", "void f() {\n" + lines(59) + "}\n"}).size(), 1U);
    EXPECT_EQ(
        sizeSlips({"a.cpp", "namespace a {\nclass B {\n    void f() {\n" + lines(59) + "}\n};\n}\n"}).size(),
        1U);
    EXPECT_EQ(sizeSlips({"a.cpp", "TEST(A, b) {\n" + lines(59) + "}\n"}).size(), 1U);
    EXPECT_EQ(sizeSlips({"a.cpp", "auto f = [](int x) {\n" + lines(59) + "};\n"}).size(), 1U);
    EXPECT_EQ(sizeSlips({"a.cpp", "A::A(int b) : m_b{b}, m_c(b) {\n" + lines(59) + "}\n"}).size(), 1U);
}

/// Each sample has the heads and lengths that a reader would tell.
TEST(FunctionLengths, findsFunctionsOnly) {
    struct Case {
        std::string_view text;
        std::vector<std::size_t> lines;
    };
    for (const auto& [text, expected] : {
             Case{"", {}},
             Case{"int f();\n", {}},
             Case{"int f() { return 1; }\n", {1}},
             Case{"template <class T>\nrequires Good<T>\nint f(T t) {\n    return 1;\n}\n", {5}},
             Case{"static int f(const std::vector<int>& a,\n             int b) noexcept {\n}\n", {3}},
             Case{"auto f() -> std::map<int, int> {\n}\n", {2}},
             Case{"constexpr std::array kRows{\n    Row{1, f(2)},\n    Row{2, f(3)},\n};\n", {}},
             Case{"const int kA = f({1, 2});\nint g() {\n}\n", {2}},
             Case{"enum class A : int {\n    B,\n    C,\n};\nstruct D {\n    int e{0};\n    int f() const "
                  "{\n    }\n};\n",
                  {2}},
             Case{"extern \"C\" {\nint f() {\n}\n}\n", {2}},
             Case{"A::A() : m_b{1}, m_c{2} {\n    x();\n}\nA::A() : B<int>{1} {}\n", {3, 1}},
             Case{"struct A : B {\n  public:\n    explicit A(int c) : B(c) {}\n    ~A() override {\n    "
                  "}\n};\n",
                  {1, 2}},
             Case{"template <>\nstruct std::hash<A> {\n    int operator()(A a) const {\n    }\n};\n", {2}},
             Case{"// int f() {\n/* int g() { */\nint h() {\n    // }\n    const char* s = \"}\";\n    char "
                  "c = '}';\n}\n",
                  {5}},
             Case{"int f() {\n    return R\"(\n}\n)\"\n;}\n", {5}},
             Case{"#define F(x) \\\n    void x() {\nint f() {\n}\n", {2}},
             Case{"int f() {\n    return 1'000'000;\n}\nint g() {\n}\n", {3, 2}},
             Case{"int f() {\n    auto g = [] {\n    };\n    for (int i : {1, 2}) {\n    }\n}\n", {6}},
             Case{"class A;\nclass [[nodiscard]] B {\n    void c() {\n    }\n};\n", {2}},
         }) {
        std::vector<std::size_t> found;
        for (const auto& function : functionLengths(text)) {
            found.push_back(function.lines);
        }
        EXPECT_EQ(found, expected) << text;
    }
}

}  // namespace
}  // namespace hearth::testing
