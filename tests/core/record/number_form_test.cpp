// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/number_form.h"

#include "core/record/snapshot.h"

#include <gtest/gtest.h>
#include <set>

namespace hearth::record {
namespace {

TEST(NumberForm, WritesANumber) {
    struct Case {
        const char* text;
        int number;
        const char* written;
    };
    const Case kCases[] = {
        {"", 17, "BCD-000017"},
        {"{series}-{number:6}", 17, "BCD-000017"},
        {"HL-{series}-{number:5}", 17, "HL-BCD-00017"},
        {"2027.{series}-{number:4}", 17, "2027.BCD-0017"},
        {"{series}-{number:8}", 17, "BCD-00000017"},
        {"{series}-{number:4}", 123456, "BCD-123456"},  // a greater number takes more digits
        {"ABCDEFGH{series}-{number:6}", 1, "ABCDEFGHBCD-000001"},
    };
    for (const auto& [text, number, written] : kCases) {
        const auto form = numberFormFrom(text);
        ASSERT_TRUE(form.has_value()) << text;
        EXPECT_EQ(recordNumber(*form, "BCD", number), written);
        EXPECT_EQ(numberFormFrom(numberFormText(*form)), form);
    }
    EXPECT_EQ(recordNumber(NumberForm{}, "BCD", 17), recordNumber("BCD", 17));
    EXPECT_EQ(numberFormText(NumberForm{}), "");
}

TEST(NumberForm, RefusesWhatCouldBeMistaken) {
    for (const char* text :
         {"{number:6}", "{series}{number:6}", "{series}-{number}", "{series}-{number:3}",
          "{series}-{number:9}", "{series}-{number:6}x", "hl{series}-{number:6}", "H/L{series}-{number:6}",
          "H L{series}-{number:6}", "Ŵ{series}-{number:6}", "ABCDEFGHI{series}-{number:6}", "HL", " "}) {
        const auto form = numberFormFrom(text);
        ASSERT_FALSE(form.has_value()) << text;
        EXPECT_EQ(form.error().code, ErrorCode::NumberFormUnusable);
        EXPECT_EQ(form.error().details.at(0), text);
    }
}

// Whatever forms a firm takes one after the other: two numbers of a series, or two series, are never written
// alike.
TEST(NumberForm, NeverWritesTwoRecordsAlike) {
    std::set<std::string> written;
    std::size_t count = 0;
    const char* const prefixes[] = {"", "B", "BCD", "BCD-", "1", "10"};
    int number = 1;
    for (const char* series : {"BCD", "CDB", "DBC"}) {
        for (const char* prefix : prefixes) {
            for (int digits = NumberForm::kLeastDigits; digits <= NumberForm::kMostDigits; ++digits) {
                for (int i = 0; i < 12; ++i, ++number, ++count) {
                    written.insert(recordNumber({prefix, digits}, series, number));
                }
            }
        }
        number = 1;
    }
    EXPECT_EQ(written.size(), count);
}

}  // namespace
}  // namespace hearth::record
