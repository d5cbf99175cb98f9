// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/model.h"

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

}  // namespace hearth::reg
