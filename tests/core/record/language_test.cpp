// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/language.h"

#include "tests/core/record/sample_visit.h"

#include <gtest/gtest.h>

namespace hearth::record {
namespace {

using reg::RoleKind;

struct LanguageTest : ::testing::Test {
    reg::VisitFile file = hearth::testing::sampleVisit();

    void SetUp() override {
        file.people.clear();
        file.firm.language = "en";
    }
    void add(RoleKind role, const char* name, const char* language, const char* line1 = "1 Row") {
        reg::VisitFile::Holder holder{role, {}};
        holder.party.name = name;
        holder.party.language = language;
        if (*line1 != 0) {
            holder.party.address = {line1, "", "Nowhere Cross", "QX1 1AC"};
        }
        file.people.push_back(holder);
    }
};

TEST(RecordLanguages, AreOneOrEnglishWithASecond) {
    ASSERT_EQ(recordLanguages().size(), 5U);
    for (const auto code : recordLanguages()) {
        EXPECT_TRUE(isRecordLanguage(code));
        EXPECT_TRUE(languageBeside(code).empty() || mainLanguage(code) == "en") << code;
    }
    EXPECT_FALSE(isRecordLanguage(""));
    EXPECT_FALSE(isRecordLanguage("fr"));
    EXPECT_FALSE(isRecordLanguage("cy+en"));
    EXPECT_EQ(mainLanguage("en+cy"), "en");
    EXPECT_EQ(languageBeside("en+cy"), "cy");
    EXPECT_EQ(mainLanguage("pl"), "pl");
    EXPECT_EQ(languageBeside("pl"), "");
}

TEST_F(LanguageTest, IsWhatTheCustomerPrefersBeforeTheFirms) {
    EXPECT_EQ(languageFor(RecordKind::LandlordSafety, file), "en");
    add(RoleKind::Landlord, "landlord", "pl");
    EXPECT_EQ(languageFor(RecordKind::LandlordSafety, file), "pl");
    add(RoleKind::Customer, "customer", "en+cy");
    EXPECT_EQ(languageFor(RecordKind::LandlordSafety, file), "en+cy");
}

TEST_F(LanguageTest, IsTheFirmsWhereTheCustomerSaidNothing) {
    add(RoleKind::Customer, "customer", "");
    add(RoleKind::Landlord, "landlord", "pl");
    file.firm.language = "cy";
    EXPECT_EQ(languageFor(RecordKind::Service, file), "cy");
}

TEST_F(LanguageTest, OfALetterIsItsRecipients) {
    add(RoleKind::Customer, "customer", "en");
    add(RoleKind::Tenant, "tenant", "pl");
    EXPECT_EQ(languageFor(RecordKind::NoAccessLetter, file), "pl");
    EXPECT_EQ(languageFor(RecordKind::CoveringLetter, file), "en");
}

TEST_F(LanguageTest, OfTheFirmsOwnEntriesIsTheFirms) {
    add(RoleKind::Customer, "customer", "pl");
    for (const auto kind :
         {RecordKind::ReportableEntry, RecordKind::CalibrationLog, RecordKind::BuildingNotice}) {
        EXPECT_EQ(languageFor(kind, file), "en");
    }
}

TEST_F(LanguageTest, OneThatNoRecordHasDoesNotCount) {
    add(RoleKind::Customer, "customer", "fr");
    file.firm.language = "xx";
    EXPECT_EQ(languageFor(RecordKind::Service, file), "en");
}

}  // namespace
}  // namespace hearth::record
