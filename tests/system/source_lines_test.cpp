// SPDX-License-Identifier: GPL-3.0-or-later
// Every function that computes says where its formula or its table was read, and is tested by name.
#include "tests/system/free_functions.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace hearth::testing {
namespace {

class ComputingFolder : public ::testing::TestWithParam<const char*> {
  protected:
    [[nodiscard]] static std::vector<SourceFile> headers() { return sourceFiles({GetParam()}, {".h"}); }
};

TEST_P(ComputingFolder, everyFreeFunctionNamesItsSource) {
    ASSERT_FALSE(headers().empty()) << "the fence looks in the wrong place";
    for (const auto& header : headers()) {
        for (const auto& slip : sourceSlips(header)) {
            ADD_FAILURE() << slip;
        }
    }
}

TEST_P(ComputingFolder, everyFreeFunctionIsTestedByName) {
    const auto tests = sourceFiles({std::string("tests/") + GetParam()}, {"_test.cpp"});
    ASSERT_FALSE(tests.empty()) << "the fence looks in the wrong place";
    for (const auto& header : headers()) {
        for (const auto& slip : untestedSlips(header, tests)) {
            ADD_FAILURE() << slip;
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Fence, ComputingFolder,
                         ::testing::Values("core/air", "core/burner", "core/calendar", "core/gas",
                                           "core/pipework", "core/tightness"));

// From here on: the fences hold back bad samples, and let good ones pass.

std::vector<std::string> namesOf(std::string_view header) {
    std::vector<std::string> names;
    for (const auto& function : freeFunctions(header)) {
        names.push_back(function.name);
    }
    return names;
}

TEST(FreeFunctions, areToldFromAllElse) {
    using Names = std::vector<std::string>;
    EXPECT_EQ(namesOf("int f();\nint g(int (*h)(int));\n"), (Names{"f", "g"}));
    EXPECT_EQ(namesOf("int f(A a = {}, B b = {1, 2});\nA operator-(A a = {});\n"), (Names{"f", "operator-"}));
    EXPECT_EQ(namesOf("#pragma once\n#include <a.h>\nnamespace a::b {\n[[nodiscard]] int f(int a = {},\n"
                      "      int b = 3);\n}\nnamespace { void g(); }\n"),
              (Names{"f", "g"}));
    EXPECT_EQ(namesOf("struct A { int m(); };\nclass B {\n void m() { x(); }\n};\nstruct C;\nenum class D { "
                      "e };\nint f();\n"),
              Names{"f"});
    EXPECT_EQ(namesOf("template <class T>\nstd::function<int(T)> f(T t);\nauto g(int) -> std::map<int, "
                      "int>;\nconstexpr double h(double x) noexcept { return x; }\nint i();\n"),
              (Names{"f", "g", "h", "i"}));
    EXPECT_EQ(namesOf("A operator+(const A& a, const A& b);\nbool operator<(A a, A b);\nint f();\n"),
              (Names{"operator+", "operator<", "f"}));
    EXPECT_EQ(namesOf("using F = int(int);\ninline constexpr double kA = f(2);\ninline constexpr B "
                      "kB(1);\ninline constexpr std::array kC{g(1)};\nstatic_assert(f(1) == 2);\n"),
              Names{});
    EXPECT_EQ(namesOf("// int f();\n/* int g(); */\nconst char* s = \"int h();\";\n"), Names{});
    EXPECT_EQ(
        namesOf("struct [[nodiscard]] A {\n int a = f(1);\n};\n[[nodiscard]] const A* find(std::string_view "
                "code);\n"),
        Names{"find"});
}

TEST(FenceSourceLine, holdsBackFunctionsWithoutIt) {
    for (const std::string_view text : {
             "int f();\n",
             "/// What f is.\nint f();\n",
             "// Source: a plain comment is no doc block.\nint f();\n",
             "/// Source: parted from it.\n\nint f();\n",
             "/// Source:\nint f();\n",
             "/// Resource: is another word.\nint f();\n",
             "/// Source: of f alone.\nint f();\n/// A block of its own.\nint g();\n",
             "/// Source: of f alone.\nint f();\n\nint g();\n",
             "/// Source: of the struct.\nstruct A {\n    int a;\n};\n\nint g(A a);\n",
             "struct A {\n    int a;  ///< Source: of a member.\n};\nint g(A a);\n",
             "/// Source: parted from the namespace.\n\nnamespace a {\nint f();\n}\n",
             "namespace a {\n/// Source: of f.\nint f() {\n    return 1;\n}\ntemplate <class T>\n\nint g();\n"
             "/// None.\nint h();\n}\n",
         }) {
        EXPECT_EQ(sourceSlips({"core/a/a.h", std::string(text)}).size(), 1U) << text;
    }
    EXPECT_EQ(sourceSlips({"core/a/a.h", "int f();\nint g();\n"}).size(), 2U) << "each is told";
    EXPECT_EQ(sourceSlips({"core/a/a.h", "\n\nint f();\n"}).at(0).substr(0, 15), "core/a/a.h:3: f");
}

TEST(FenceSourceLine, letsPassTheRest) {
    for (const std::string_view text : {
             "/// What f is. Source: EN 437, Table 2.\nint f();\n",
             "/// What f is.\n///\n/// Source:\n/// EN 437.\n/// Checked: f_test.cpp.\n[[nodiscard]] int "
             "f();\n",
             "/// Both. Source: textbook.\nint f();\nint g(int a,\n      int b);\nint h();\n",
             "/// Where it stands. Source: GUM.\nenum class A { b };\n[[nodiscard]] A f();\n",
             "/// All of the file. Source: GUM.\nnamespace a {\nint f();\n\nint g();\n}\n",
             "/// Source: textbook.\ninline int f() {\n    return 1;\n}\n",
             "/// Source: textbook.\ntemplate <class T>\nint f(T t);\n",
             "struct A {\n    int a;\n    bool operator==(const A&) const = default;\n};\n",
             "struct A {\n    int member();\n    int b() { return 1; }\n};\n",
         }) {
        EXPECT_EQ(sourceSlips({"core/a/a.h", std::string(text)}), std::vector<std::string>{}) << text;
    }
}

TEST(FenceTested, holdsBackFunctionsThatNoTestUses) {
    const SourceFile header{"core/a/a.h", "int f();\nint f(int);\nint g();\nA operator+(A a, A b);\n"};
    const auto slips = [&header](const std::string& test) {
        return untestedSlips(header, {{"tests/core/a/a_test.cpp", test}}).size();
    };
    EXPECT_EQ(slips("EXPECT_EQ(f(), a::g());\n"), 0U);
    EXPECT_EQ(slips("EXPECT_EQ(f(), 1);\n"), 1U);
    EXPECT_EQ(slips("// g()\nEXPECT_EQ(f(), \"g\");\nint gg = 1;\n"), 1U);
    EXPECT_EQ(slips(""), 2U);
    EXPECT_EQ(untestedSlips(header, {{"a_test.cpp", "f();"}, {"b_test.cpp", "g();"}}).size(), 0U);
}

}  // namespace
}  // namespace hearth::testing
