// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/checks_kept.h"
#include "core/register/doings.h"

#include <array>
#include <cstddef>

namespace hearth::reg {

namespace {

// Each table stands in the order of its enumeration; a test holds the round trip of every value.
constexpr std::array<std::string_view, 4> kCountries{"england", "wales", "scotland", "northern_ireland"};
constexpr std::array<std::string_view, 2> kPartyKinds{"person", "organisation"};
constexpr std::array<std::string_view, 6> kRoleKinds{"customer",   "landlord", "agent",
                                                     "home_owner", "tenant",   "responsible_person"};
constexpr std::array<std::string_view, 6> kInstrumentKinds{
    "electronic_gauge", "water_gauge", "combustion_analyser", "leak_detector", "voltage_indicator", "other"};
constexpr std::array<std::string_view, 6> kSubjectKinds{"visit",     "installation", "test",
                                                        "appliance", "room",         "situation"};
constexpr std::array<std::string_view, 4> kSendBys{"not_said", "post", "email", "handed"};
constexpr std::array<std::string_view, 4> kReminderBasiss{"not_said", "consent", "earlier_work", "contract"};
constexpr std::array<std::string_view, 3> kYesNos{"not_said", "yes", "no"};
constexpr std::array<std::string_view, 4> kOwners{"not_said", "landlord", "tenant", "home_owner"};
constexpr std::array<std::string_view, 4> kFlueTypes{"not_said", "room_sealed", "open_flued", "flueless"};
constexpr std::array<std::string_view, 6> kChannels{"visit",        "letter", "telephone",
                                                    "text_message", "email",  "other"};
constexpr std::array<std::string_view, 5> kBookingStates{"proposed", "booked", "done", "cancelled",
                                                         "no_access"};
constexpr std::array<std::string_view, 4> kCheckDuties{"not_known", "let", "own_interval", "none"};
constexpr std::array<std::string_view, 3> kDangers{"not_said", "immediately_dangerous", "at_risk"};

template <class Enum, std::size_t N>
std::optional<Enum> fromCode(const std::array<std::string_view, N>& codes, std::string_view code) {
    for (std::size_t i = 0; i < N; ++i) {
        if (codes[i] == code) {
            return static_cast<Enum>(i);
        }
    }
    return std::nullopt;
}

}  // namespace

std::string_view codeOf(Country value) {
    return kCountries.at(static_cast<std::size_t>(value));
}
std::string_view codeOf(PartyKind value) {
    return kPartyKinds.at(static_cast<std::size_t>(value));
}
std::string_view codeOf(RoleKind value) {
    return kRoleKinds.at(static_cast<std::size_t>(value));
}
std::string_view codeOf(InstrumentKind value) {
    return kInstrumentKinds.at(static_cast<std::size_t>(value));
}
std::string_view codeOf(SubjectKind value) {
    return kSubjectKinds.at(static_cast<std::size_t>(value));
}

std::optional<Country> countryFromCode(std::string_view code) {
    return fromCode<Country>(kCountries, code);
}
std::optional<PartyKind> partyKindFromCode(std::string_view code) {
    return fromCode<PartyKind>(kPartyKinds, code);
}
std::optional<RoleKind> roleKindFromCode(std::string_view code) {
    return fromCode<RoleKind>(kRoleKinds, code);
}
std::optional<InstrumentKind> instrumentKindFromCode(std::string_view code) {
    return fromCode<InstrumentKind>(kInstrumentKinds, code);
}
std::optional<SubjectKind> subjectKindFromCode(std::string_view code) {
    return fromCode<SubjectKind>(kSubjectKinds, code);
}

std::string_view codeOf(SendBy value) {
    return kSendBys.at(static_cast<std::size_t>(value));
}
std::optional<SendBy> sendByFromCode(std::string_view code) {
    return fromCode<SendBy>(kSendBys, code);
}
std::string_view codeOf(ReminderBasis value) {
    return kReminderBasiss.at(static_cast<std::size_t>(value));
}
std::optional<ReminderBasis> reminderBasisFromCode(std::string_view code) {
    return fromCode<ReminderBasis>(kReminderBasiss, code);
}
std::string_view codeOf(YesNo value) {
    return kYesNos.at(static_cast<std::size_t>(value));
}
std::optional<YesNo> yesNoFromCode(std::string_view code) {
    return fromCode<YesNo>(kYesNos, code);
}
std::string_view codeOf(Owner value) {
    return kOwners.at(static_cast<std::size_t>(value));
}
std::optional<Owner> ownerFromCode(std::string_view code) {
    return fromCode<Owner>(kOwners, code);
}
std::string_view codeOf(FlueType value) {
    return kFlueTypes.at(static_cast<std::size_t>(value));
}
std::optional<FlueType> flueTypeFromCode(std::string_view code) {
    return fromCode<FlueType>(kFlueTypes, code);
}
std::string_view codeOf(Channel value) {
    return kChannels.at(static_cast<std::size_t>(value));
}
std::optional<Channel> channelFromCode(std::string_view code) {
    return fromCode<Channel>(kChannels, code);
}
std::string_view codeOf(calendar::CheckDuty value) {
    return kCheckDuties.at(static_cast<std::size_t>(value));
}
std::optional<calendar::CheckDuty> checkDutyFromCode(std::string_view code) {
    return fromCode<calendar::CheckDuty>(kCheckDuties, code);
}
std::string_view codeOf(BookingState value) {
    return kBookingStates.at(static_cast<std::size_t>(value));
}
std::optional<BookingState> bookingStateFromCode(std::string_view code) {
    return fromCode<BookingState>(kBookingStates, code);
}
std::string_view codeOf(Danger value) {
    return kDangers.at(static_cast<std::size_t>(value));
}
std::optional<Danger> dangerFromCode(std::string_view code) {
    return fromCode<Danger>(kDangers, code);
}

}  // namespace hearth::reg
