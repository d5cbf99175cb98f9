// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/visit_file.h"

#include <cstdint>
#include <gtest/gtest.h>

namespace hearth::reg {
namespace {

UuidBytes bytes(std::uint8_t last) {
    UuidBytes b{};
    b[15] = last;
    return b;
}

Entry entry(const SubjectRef& subject, Item item, const std::string& text) {
    Entry e;
    e.subject = subject;
    e.item = item;
    e.text = text;
    e.canonical = canonicalOf(item, text).value_or(std::string());
    return e;
}

Instrument instrument(InstrumentId id, const std::string& name) {
    Instrument made;
    made.id = id;
    made.name = name;
    return made;
}

VisitFile::Holder holder(RoleKind role, const std::string& name) {
    VisitFile::Holder made{role, Party{}};
    made.party.name = name;
    return made;
}

struct TwoTests : ::testing::Test {
    TestId first{bytes(1)};
    TestId second{bytes(2)};
    InstrumentId gauge{bytes(9)};
    VisitFile file;

    void SetUp() override {
        file.instruments.push_back(instrument(InstrumentId{bytes(8)}, "gauge no. 1"));
        file.instruments.push_back(instrument(gauge, "gauge no. 2"));
        file.entries.push_back(entry(subject(first), Item::TightStart, "20.70"));
        file.entries.push_back(entry(subject(second), Item::TightStart, "20.50"));
        file.entries.push_back(entry(subject(second), Item::TestGauge, gauge.text()));
        file.entries.push_back(entry(subject(second), Item::TestWork, "existing"));
    }
};

TEST_F(TwoTests, FindKeepsTheSubjectsApart) {
    ASSERT_NE(file.find(subject(first), Item::TightStart), nullptr);
    EXPECT_EQ(file.find(subject(first), Item::TightStart)->text, "20.70");
    EXPECT_EQ(file.find(subject(second), Item::TightStart)->text, "20.50");
    EXPECT_EQ(file.find(subject(first), Item::TightEnd), nullptr);
    EXPECT_EQ(file.find({SubjectKind::Visit, first.bytes}, Item::TightStart), nullptr);
}

TEST_F(TwoTests, ChoiceOfIsEmptyWhenAbsentOrUnknown) {
    EXPECT_EQ(file.choiceOf(subject(second), Item::TestWork), choice::kExisting);
    EXPECT_EQ(file.choiceOf(subject(first), Item::TestWork), "");
    Entry foreign = entry(subject(first), Item::TestWork, "existing");
    foreign.canonical = "code_of_a_newer_program";
    file.entries.push_back(foreign);
    EXPECT_EQ(file.choiceOf(subject(first), Item::TestWork), "");
}

TEST_F(TwoTests, GaugeIsTheOneThatTheTestNames) {
    EXPECT_EQ(file.gaugeOf(first), nullptr);
    ASSERT_NE(file.gaugeOf(second), nullptr);
    EXPECT_EQ(file.gaugeOf(second)->name, "gauge no. 2");
    file.instruments.pop_back();  // sold since
    EXPECT_EQ(file.gaugeOf(second), nullptr);
}

TEST_F(TwoTests, EngineerIsTheVisits) {
    Engineer fitter;
    fitter.id = EngineerId{bytes(5)};
    fitter.name = "A. Nother";
    file.engineers.push_back(fitter);
    EXPECT_EQ(file.engineer(), nullptr);
    file.visit.engineer = EngineerId{bytes(5)};
    ASSERT_NE(file.engineer(), nullptr);
    EXPECT_EQ(file.engineer()->name, "A. Nother");
    file.visit.engineer = EngineerId{bytes(6)};
    EXPECT_EQ(file.engineer(), nullptr);
}

TEST_F(TwoTests, HolderIsFoundByRole) {
    file.people.push_back(holder(RoleKind::Landlord, "Owner"));
    file.people.push_back(holder(RoleKind::Tenant, "Lodger"));
    ASSERT_NE(file.holder(RoleKind::Tenant), nullptr);
    EXPECT_EQ(file.holder(RoleKind::Tenant)->name, "Lodger");
    EXPECT_EQ(file.holder(RoleKind::Agent), nullptr);
}

TEST(VisitFile, RoomsAndTheReadingsTakenInThemAreKnownByTheirEntries) {
    const auto kitchen = subject(RoomId{bytes(1)});
    const auto lounge = subject(RoomId{bytes(2)});
    const auto reading = subject(RoomId{bytes(3)});
    VisitFile file;
    file.entries.push_back(entry(lounge, Item::RoomName, "lounge"));
    file.entries.push_back(entry(reading, Item::RoomCo, "12"));
    file.entries.push_back(entry(kitchen, Item::RoomCoAlarm, "alarm_works"));
    file.entries.push_back(entry(subject(ApplianceId{bytes(4)}), Item::SafeToUse, "yes"));
    EXPECT_EQ(file.rooms(), (std::vector{kitchen, lounge}));
    EXPECT_EQ(file.roomReadings(), std::vector{reading});
    EXPECT_TRUE(file.hasEntries(kitchen));
    EXPECT_FALSE(file.hasEntries(subject(RoomId{bytes(9)})));
}

TEST_F(TwoTests, AnInstrumentIsNamedByAnyItemOfItsKind) {
    const auto visit = subject(VisitId{bytes(3)});
    EXPECT_EQ(file.instrumentOf(visit, Item::VisitAnalyser), nullptr);
    file.entries.push_back(entry(visit, Item::VisitAnalyser, gauge.text()));
    ASSERT_NE(file.instrumentOf(visit, Item::VisitAnalyser), nullptr);
    EXPECT_EQ(file.instrumentOf(visit, Item::VisitAnalyser)->name, "gauge no. 2");
}

}  // namespace
}  // namespace hearth::reg
