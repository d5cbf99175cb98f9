// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/letter_text.h"

#include <gtest/gtest.h>
#include <set>

namespace hearth::reg {
namespace {

const LetterValues kAllValues{
    {Placeholder::Customer, "R. Sallowby"},    {Placeholder::Premises, "Flat 1, Wrenlow"},
    {Placeholder::DateDue, "3 March 2027"},    {Placeholder::Attempted, "1 March 2027"},
    {Placeholder::Worked, "28 February 2027"}, {Placeholder::Today, "2 January 2027"},
    {Placeholder::Firm, "Pellow {and} Dray"},  {Placeholder::Telephone, "01632 960417"},
    {Placeholder::Email, "o@x.example"},       {Placeholder::Registration, "000417"}};

TEST(LetterText, IsFilled) {
    struct Case {
        LetterKind kind;
        const char* text;
        const char* filled;
    };
    const Case kCases[] = {
        {LetterKind::Reminder, "", ""},
        {LetterKind::Reminder, "no placeholder", "no placeholder"},
        {LetterKind::Reminder, "Dear {customer},\n{premises} by {due}",
         "Dear R. Sallowby,\nFlat 1, Wrenlow by 3 March 2027"},
        {LetterKind::Reminder, "{customer}{customer}", "R. SallowbyR. Sallowby"},
        {LetterKind::Reminder, "{ customer }", "R. Sallowby"},
        {LetterKind::Reminder, "ŵ {firm} – ŷ", "ŵ Pellow {and} Dray – ŷ"},  // a value may hold braces
        {LetterKind::NoAccess, "{attempted}/{due}", "1 March 2027/3 March 2027"},
        {LetterKind::Covering, "{worked} {today} {telephone} {email} {registration}",
         "28 February 2027 2 January 2027 01632 960417 o@x.example 000417"},
    };
    for (const auto& [kind, text, filled] : kCases) {
        const auto letter = fillLetter(kind, text, kAllValues);
        ASSERT_TRUE(letter.has_value()) << text;
        EXPECT_EQ(*letter, filled);
        EXPECT_TRUE(checkLetter(kind, text).has_value()) << text;
    }
}

TEST(LetterText, SaysByNameWhatItCannotUse) {
    struct Case {
        LetterKind kind;
        const char* text;
        ErrorCode code;
        const char* detail;
    };
    const Case kCases[] = {
        {LetterKind::Reminder, "Dear {custmer},", ErrorCode::PlaceholderUnknown, "custmer"},
        {LetterKind::Reminder, "{}", ErrorCode::PlaceholderUnknown, ""},
        {LetterKind::Reminder, "{Customer}", ErrorCode::PlaceholderUnknown, "Customer"},
        {LetterKind::Reminder, "{worked}", ErrorCode::PlaceholderUnknown, "worked"},
        {LetterKind::Reminder, "{attempted}", ErrorCode::PlaceholderUnknown, "attempted"},
        {LetterKind::Covering, "{due}", ErrorCode::PlaceholderUnknown, "due"},
        {LetterKind::Covering, "{attempted}", ErrorCode::PlaceholderUnknown, "attempted"},
        {LetterKind::NoAccess, "{worked}", ErrorCode::PlaceholderUnknown, "worked"},
        {LetterKind::Reminder, "a { b", ErrorCode::PlaceholderOpen, "{ b"},
        {LetterKind::Reminder, "a } b", ErrorCode::PlaceholderOpen, "} b"},
        {LetterKind::Reminder, "{firm\n}", ErrorCode::PlaceholderOpen, "{firm"},
        {LetterKind::Reminder, "{{firm}}", ErrorCode::PlaceholderOpen, "{{firm}}"},
        {LetterKind::Reminder, "{ŵŵŵŵŵŵŵŵŵŵŵŵŵŵŵŵŵŵŵŵ", ErrorCode::PlaceholderOpen, "{ŵŵŵŵŵŵŵŵŵŵ"},
    };
    for (const auto& [kind, text, code, detail] : kCases) {
        const auto checked = checkLetter(kind, text);
        ASSERT_FALSE(checked.has_value()) << text;
        EXPECT_EQ(checked.error().code, code) << text;
        ASSERT_EQ(checked.error().details.size(), 1U);
        EXPECT_EQ(checked.error().details[0], detail);
        const auto filled = fillLetter(kind, text, kAllValues);
        ASSERT_FALSE(filled.has_value());
        EXPECT_EQ(filled.error(), checked.error());
    }
}

TEST(LetterText, IsNeverSentWithAHole) {
    for (const auto kind : kLetterKinds) {
        for (const auto placeholder : placeholdersOf(kind)) {
            const std::string text = "x {" + std::string(codeOf(placeholder)) + "} y";
            for (const bool isEmpty : {true, false}) {
                LetterValues values = kAllValues;
                values.erase(placeholder);
                if (isEmpty) {
                    values[placeholder] = "  ";
                }
                const auto letter = fillLetter(kind, text, values);
                ASSERT_FALSE(letter.has_value()) << text;
                EXPECT_EQ(letter.error().code, ErrorCode::LetterLacks);
                EXPECT_EQ(letter.error().details.at(0), codeOf(placeholder));
            }
        }
    }
}

TEST(LetterText, HasACodeForEachKindAndPlaceholder) {
    std::set<std::string_view> codes;
    for (const auto kind : kLetterKinds) {
        EXPECT_EQ(letterKindFromCode(codeOf(kind)), kind);
        EXPECT_GE(placeholdersOf(kind).size(), 8U);
        for (const auto placeholder : placeholdersOf(kind)) {
            codes.insert(codeOf(placeholder));
        }
    }
    EXPECT_EQ(codes.size(), 10U);
    EXPECT_FALSE(letterKindFromCode("invoice").has_value());
}

}  // namespace
}  // namespace hearth::reg
