// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/doings.h"

#include <gtest/gtest.h>
#include <set>
#include <string_view>
#include <vector>

namespace hearth::reg {
namespace {

template <class Enum, class Back>
void expectRoundTrip(const std::vector<Enum>& values, Back back) {
    std::set<std::string_view> codes;
    for (const Enum value : values) {
        EXPECT_TRUE(codes.insert(codeOf(value)).second) << codeOf(value);
        EXPECT_EQ(back(codeOf(value)), value);
    }
    EXPECT_EQ(back("nothing of ours"), std::nullopt);
    EXPECT_EQ(back(""), std::nullopt);
}

TEST(Codes, ComeBackAsTheSameValue) {
    expectRoundTrip<Country>({Country::England, Country::Wales, Country::Scotland, Country::NorthernIreland},
                             countryFromCode);
    expectRoundTrip<PartyKind>({PartyKind::Person, PartyKind::Organisation}, partyKindFromCode);
    expectRoundTrip<RoleKind>({RoleKind::Customer, RoleKind::Landlord, RoleKind::Agent, RoleKind::HomeOwner,
                               RoleKind::Tenant, RoleKind::ResponsiblePerson},
                              roleKindFromCode);
    expectRoundTrip<InstrumentKind>(
        {InstrumentKind::ElectronicGauge, InstrumentKind::WaterGauge, InstrumentKind::CombustionAnalyser,
         InstrumentKind::LeakDetector, InstrumentKind::VoltageIndicator, InstrumentKind::Other},
        instrumentKindFromCode);
    expectRoundTrip<SendBy>({SendBy::NotSaid, SendBy::Post, SendBy::Email, SendBy::Handed}, sendByFromCode);
    expectRoundTrip<ReminderBasis>(
        {ReminderBasis::NotSaid, ReminderBasis::Consent, ReminderBasis::EarlierWork, ReminderBasis::Contract},
        reminderBasisFromCode);
    expectRoundTrip<YesNo>({YesNo::NotSaid, YesNo::Yes, YesNo::No}, yesNoFromCode);
    expectRoundTrip<Owner>({Owner::NotSaid, Owner::Landlord, Owner::Tenant, Owner::HomeOwner}, ownerFromCode);
    expectRoundTrip<FlueType>(
        {FlueType::NotSaid, FlueType::RoomSealed, FlueType::OpenFlued, FlueType::Flueless}, flueTypeFromCode);
    expectRoundTrip<Channel>({Channel::Visit, Channel::Letter, Channel::Telephone, Channel::TextMessage,
                              Channel::Email, Channel::Other},
                             channelFromCode);
    expectRoundTrip<BookingState>({BookingState::Proposed, BookingState::Booked, BookingState::Done,
                                   BookingState::Cancelled, BookingState::NoAccess},
                                  bookingStateFromCode);
    expectRoundTrip<Danger>({Danger::NotSaid, Danger::ImmediatelyDangerous, Danger::AtRisk}, dangerFromCode);
    expectRoundTrip<SubjectKind>({SubjectKind::Visit, SubjectKind::Installation, SubjectKind::Test,
                                  SubjectKind::Appliance, SubjectKind::Room, SubjectKind::Situation},
                                 subjectKindFromCode);
}

// Files hold these: written out by hand.
TEST(Codes, AreTheOnesThatFilesHold) {
    EXPECT_EQ(codeOf(Country::NorthernIreland), "northern_ireland");
    EXPECT_EQ(codeOf(PartyKind::Organisation), "organisation");
    EXPECT_EQ(codeOf(RoleKind::HomeOwner), "home_owner");
    EXPECT_EQ(codeOf(RoleKind::ResponsiblePerson), "responsible_person");
    EXPECT_EQ(codeOf(InstrumentKind::WaterGauge), "water_gauge");
    EXPECT_EQ(codeOf(SubjectKind::Test), "test");
}

}  // namespace
}  // namespace hearth::reg
