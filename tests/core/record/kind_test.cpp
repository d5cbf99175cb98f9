// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/kind.h"

#include "tests/core/record/sample_visit.h"

#include <algorithm>
#include <gmock/gmock.h>
#include <set>

namespace hearth::record {
namespace {

using reg::Item;
using rulebook::FindingKind;
using rulebook::Outcome;
using ::testing::IsEmpty;

constexpr auto kKind = RecordKind::TightnessAndPurge;

struct KindTest : ::testing::Test {
    reg::VisitFile file = hearth::testing::sampleVisit();
    reg::SubjectRef visit = reg::subject(file.visit.id);
    reg::SubjectRef test = reg::subject(file.tests[0].id);
    std::vector<judging::Judged> findings;

    std::vector<Item> missingItems() const {
        std::vector<Item> items;
        for (const auto& one : missingFor(kKind, file, findings)) {
            if (one.item) {
                items.push_back(*one.item);
            }
        }
        return items;
    }
    std::vector<Field> missingFields() const {
        std::vector<Field> fields;
        for (const auto& one : missingFor(kKind, file, findings)) {
            if (one.field) {
                fields.push_back(*one.field);
            }
        }
        return fields;
    }
    void put(const reg::SubjectRef& on, Item item, const std::string& text) {
        hearth::testing::enter(file, on, item, text);
    }
    void drop(const reg::SubjectRef& on, Item item) { hearth::testing::takeOut(file, on, item); }
    void find(FindingKind kind, Outcome outcome, rulebook::Say why = rulebook::Say::ReadingMissing) {
        judging::Judged judged;
        judged.finding.kind = kind;
        judged.finding.outcome = outcome;
        judged.finding.why.say = why;
        judged.subject = test;
        findings.push_back(judged);
    }
    void clearTest() {
        std::erase_if(file.entries, [&](const reg::Entry& e) { return e.subject == test; });
    }
};

TEST(RecordKind, HasACodeThatComesBack) {
    EXPECT_EQ(kindCode(kKind), "tightness_and_purge");
    EXPECT_EQ(kindFromCode("tightness_and_purge"), kKind);
    EXPECT_EQ(kindFromCode("something else"), std::nullopt);
    std::set<std::string_view> codes;
    for (const auto kind : allKinds()) {
        EXPECT_EQ(kindFromCode(kindCode(kind)), kind);
        EXPECT_TRUE(codes.insert(kindCode(kind)).second);
    }
    EXPECT_EQ(codes.size(), 14U);
    EXPECT_EQ(kindCode(RecordKind::LandlordSafety), "landlord_safety");
    EXPECT_EQ(kindCode(RecordKind::WarningNotice), "warning_notice");
    EXPECT_EQ(kindCode(RecordKind::CoveringLetter), "covering_letter");
}

TEST(RecordKind, NamesEachFieldOnce) {
    std::set<std::string_view> codes;
    for (int i = 0; i <= static_cast<int>(Field::RecipientAddress); ++i) {
        const auto code = fieldCode(static_cast<Field>(i));
        EXPECT_FALSE(code.empty());
        EXPECT_TRUE(codes.insert(code).second) << code;
    }
}

TEST(Requirements, NameOneThingEachWithItsSource) {
    for (const auto& wanted : requirementsOf(kKind)) {
        EXPECT_NE(wanted.item.has_value(), wanted.field.has_value());
        EXPECT_FALSE(wanted.source.empty());
    }
}

// Every item of the catalogue stands in the requirements once, if only so that what was typed must be
// readable.
TEST(Requirements, SpeakOfEveryItemOnceInTheOrderOfTheSheet) {
    std::set<Item> seen;
    for (const auto& wanted : requirementsOf(kKind)) {
        if (wanted.item) {
            EXPECT_TRUE(seen.insert(*wanted.item).second) << reg::infoOf(*wanted.item).code;
        }
    }
    for (const auto& info : reg::sheetItems()) {
        EXPECT_EQ(seen.count(info.item), 1U) << info.code;
    }
}

TEST_F(KindTest, ACompleteVisitMayBeIssued) {
    find(FindingKind::LetBy, Outcome::Pass);
    find(FindingKind::Tightness, Outcome::Pass);
    EXPECT_THAT(missingFor(kKind, file, findings), IsEmpty());
}

TEST_F(KindTest, EachItemOfTheCompleteVisitIsWanted) {
    const auto complete = file;
    for (const auto& entry : complete.entries) {
        file = complete;
        drop(entry.subject, entry.item);
        ASSERT_EQ(missingItems(), std::vector{entry.item}) << reg::infoOf(entry.item).code;
        const auto missing = missingFor(kKind, file, findings);
        EXPECT_EQ(missing[0].subject, entry.subject);
        EXPECT_FALSE(missing[0].source.empty());
    }
}

TEST_F(KindTest, WhatCannotBeReadIsMissingToo) {
    put(test, Item::TightEnd, "twenty and a bit");
    put(test, Item::StandingPressure, "high");  // may be left out, but not be nonsense
    put(test, Item::TestGauge, "01890a5d-ac96-774b-bcce-b302099a8057");  // no such gauge
    EXPECT_EQ(missingItems(), (std::vector{Item::TestGauge, Item::TightEnd, Item::StandingPressure}));
}

TEST_F(KindTest, ADateOrAPipesPlaceThatCannotBeReadIsWanted) {
    file.visit.dateText = "last Tuesday";
    file.pipes.back().afterText = "the big one";
    EXPECT_EQ(missingFields(), (std::vector{Field::VisitDate, Field::PipeOrder}));
    for (const auto& one : missingFor(kKind, file, findings)) {
        EXPECT_TRUE(one.unreadable);
    }
}

TEST_F(KindTest, WhatIsOptionalMayBeAbsent) {
    for (const Item item : {Item::VisitReference, Item::VisitRemarks, Item::ReceivedBy}) {
        put(visit, item, "said");
        EXPECT_THAT(missingItems(), IsEmpty());
    }
    put(visit, Item::VisitRemarks, "   ");
    EXPECT_THAT(missingItems(), IsEmpty());
}

TEST_F(KindTest, LetByFoundStopsTheTest) {
    for (const auto item :
         {Item::SettleStart, Item::SettleEnd, Item::SettleStartedAt, Item::SettleEndedAt, Item::TightStart,
          Item::TightEnd, Item::TightStartedAt, Item::TightEndedAt, Item::PurgeDone}) {
        drop(test, item);
    }
    EXPECT_EQ(missingItems().size(), 9U);
    find(FindingKind::LetBy, Outcome::Fail);
    EXPECT_THAT(missingItems(), IsEmpty());
    drop(test, Item::LetByEnd);         // what shows the let-by is wanted
    drop(test, Item::TestPointProved);  // and the test point was opened
    EXPECT_EQ(missingItems(), (std::vector{Item::LetByEnd, Item::TestPointProved}));
}

TEST_F(KindTest, NoPurgeIsAskedForAfterAFailure) {
    drop(test, Item::PurgeDone);
    EXPECT_EQ(missingItems(), std::vector{Item::PurgeDone});
    find(FindingKind::Tightness, Outcome::Fail);
    EXPECT_THAT(missingItems(), IsEmpty());
}

TEST_F(KindTest, APurgeIsToldInFull) {
    put(test, Item::PurgeDone, "yes");
    EXPECT_EQ(missingItems(),
              (std::vector{Item::PurgeMethod, Item::PurgeVolumePassed, Item::PurgeSteadyFlame}));
    file.installation.meterCode = "none";  // nothing to read the volume from
    EXPECT_EQ(missingItems(), (std::vector{Item::PurgeMethod, Item::PurgeSteadyFlame}));
    put(test, Item::TestAppliances, "none_connected");  // and nothing to burn it
    EXPECT_EQ(missingItems(), std::vector{Item::PurgeMethod});
}

TEST_F(KindTest, APartAndAnIsolationAreDescribed) {
    put(test, Item::TestExtent, "part");
    put(test, Item::TestAppliances, "isolated");
    EXPECT_EQ(missingItems(), (std::vector{Item::TestPartDescription, Item::TestIsolatedWhat}));
}

TEST_F(KindTest, PilotsAreAskedForWhereAppliancesWereConnected) {
    drop(test, Item::TestPilots);
    EXPECT_EQ(missingItems(), std::vector{Item::TestPilots});
    put(test, Item::TestAppliances, "none_connected");
    EXPECT_THAT(missingItems(), IsEmpty());
}

TEST_F(KindTest, ARetestIsWholeOrNotThere) {
    put(test, Item::RetestStart, "20.50");
    EXPECT_EQ(missingItems(), (std::vector{Item::RetestEnd, Item::RetestStartedAt, Item::RetestEndedAt}));
}

TEST_F(KindTest, ALowTestPressureWantsItsReason) {
    find(FindingKind::TestPressure, Outcome::NoVerdict, rulebook::Say::TestPressureLowUnexplained);
    EXPECT_EQ(missingItems(), std::vector{Item::LowPressureReason});
}

TEST_F(KindTest, TheVolumeMayComeFromPipesOrBeTyped) {
    file.pipes[0].length.text = "nine";
    EXPECT_EQ(missingFields(), std::vector{Field::PipeOrVolume});
    file.pipes[0].underTest = false;
    EXPECT_THAT(missingFields(), IsEmpty());
    file.pipes.clear();
    EXPECT_EQ(missingFields(), std::vector{Field::PipeOrVolume});
    put(test, Item::TestVolumeTyped, "0.0094");
    EXPECT_THAT(missingFields(), IsEmpty());
}

TEST_F(KindTest, AWaterGaugeNeedsNoSerialAndNoCertificate) {
    file.instruments[0].serial.clear();
    file.instruments[0].calibrationDue.reset();
    EXPECT_EQ(missingFields(), (std::vector{Field::InstrumentSerial, Field::InstrumentCalibration}));
    file.instruments[0].kind = reg::InstrumentKind::WaterGauge;
    EXPECT_THAT(missingFields(), IsEmpty());
}

TEST_F(KindTest, TheRegisterIsCheckedInTheOrderOfTheSheet) {
    file.firm = {};
    file.premises.address = {};
    file.people.clear();
    file.visit.engineer.reset();
    file.installation.meterCode.clear();
    drop(visit, Item::SmellOnArrival);
    EXPECT_EQ(missingFields(),
              (std::vector{Field::FirmName, Field::FirmAddress, Field::FirmRegistration,
                           Field::PremisesAddress, Field::PremisesPostcode, Field::CustomerName,
                           Field::EngineerName, Field::EngineerCard, Field::InstallationMeter}));
    const auto missing = missingFor(kKind, file, findings);
    EXPECT_EQ(missing[8].item, Item::SmellOnArrival);  // before the meter
    EXPECT_EQ(missing[9].field, Field::InstallationMeter);
    EXPECT_EQ(missing[9].subject, reg::subject(file.installation.id));
}

TEST_F(KindTest, ASecondTestIsCheckedUnlessItIsEmpty) {
    reg::Test second;
    second.id = reg::TestId{hearth::testing::sampleBytes(9)};
    file.tests.push_back(second);
    EXPECT_THAT(missingItems(), IsEmpty());
    put(reg::subject(second.id), Item::TestWork, "new");
    const auto missing = missingFor(kKind, file, findings);
    EXPECT_FALSE(missing.empty());
    for (const auto& one : missing) {
        EXPECT_EQ(one.subject, reg::subject(second.id));
    }
}

// A pressure drop that is small enough is no pass of a strength or tightness test that nobody did.
TEST_F(KindTest, ADropAloneIsNoVerdictOnLargerPipework) {
    const auto on = reg::subject(file.installation.id);
    judging::Judged judged{rulebook::Finding{FindingKind::PressureDropDesign}, on, {}};
    judged.finding.outcome = Outcome::Pass;
    EXPECT_EQ(outcomeOf(RecordKind::LargerPipework, file, {judged}), Outcome::NoVerdict);
    auto tight = judged;
    tight.finding.kind = FindingKind::Tightness;
    EXPECT_EQ(outcomeOf(RecordKind::LargerPipework, file, {tight}), Outcome::Pass);
    judged.finding.outcome = Outcome::Fail;
    EXPECT_EQ(outcomeOf(RecordKind::LargerPipework, file, {judged, tight}), Outcome::Pass);
}

TEST_F(KindTest, AVisitWithoutATestIsNotARecordOfOne) {
    clearTest();
    const auto items = missingItems();
    EXPECT_THAT(items, ::testing::Contains(Item::TightEnd));
    EXPECT_THAT(items, ::testing::Contains(Item::LetByStart));
}

}  // namespace
}  // namespace hearth::record
