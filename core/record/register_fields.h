// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/doings.h"

#include <concepts>
#include <optional>
#include <string_view>
#include <type_traits>

/// The fields of each register value, named once: the names are the store's columns and the keys of a
/// snapshot's JSON. An archive is anything that has the operations used here:
///     id(name, Id)         the value's own key
///     link(name, Id or optional Id)
///     text(name, string)   secret(name, string): never leaves the store
///     number(name, int)    flag(name, bool)
///     code(name, enumeration)
///     typed(name, Typed)   two names: `name` and `name`_unit
///     date(name, Date or optional Date)    instant(name, Instant)
/// and says by `kStaysInside` whether what it takes stays in the store.
/// Order matters to archives that read in order: add a field at the end, and with a migration.
namespace hearth::record {

/// Text of an enumeration in files, and back.
template <class Enumeration>
struct CodeOf;

#define HEARTH_CODE(Type, toText, fromText)                                                \
    template <>                                                                            \
    struct CodeOf<Type> {                                                                  \
        static std::string_view text(Type value) { return toText(value); }                 \
        static std::optional<Type> value(std::string_view code) { return fromText(code); } \
    }
HEARTH_CODE(reg::Country, reg::codeOf, reg::countryFromCode);
HEARTH_CODE(reg::PartyKind, reg::codeOf, reg::partyKindFromCode);
HEARTH_CODE(reg::RoleKind, reg::codeOf, reg::roleKindFromCode);
HEARTH_CODE(reg::InstrumentKind, reg::codeOf, reg::instrumentKindFromCode);
HEARTH_CODE(reg::SendBy, reg::codeOf, reg::sendByFromCode);
HEARTH_CODE(reg::ReminderBasis, reg::codeOf, reg::reminderBasisFromCode);
HEARTH_CODE(reg::YesNo, reg::codeOf, reg::yesNoFromCode);
HEARTH_CODE(rulebook::Gas, rulebook::gasText, rulebook::gasFromText);
#undef HEARTH_CODE

template <class Value, class Type>
concept Is = std::same_as<std::remove_const_t<Value>, Type>;

template <class Archive, Is<reg::Address> Value>
void describe(Archive& archive, Value& address) {
    archive.text("line1", address.line1);
    archive.text("line2", address.line2);
    archive.text("town", address.town);
    archive.text("postcode", address.postcode);
}

template <class Archive, Is<reg::Firm> Value>
void describe(Archive& archive, Value& firm) {
    archive.text("name", firm.name);
    describe(archive, firm.address);
    archive.text("registration_number", firm.registrationNumber);
    archive.text("telephone", firm.telephone);
    archive.text("email", firm.email);
    archive.code("country", firm.country);
    archive.text("language", firm.language);
    archive.flag("demonstration", firm.demonstration);
    archive.link("logo", firm.logo);
    archive.text("number_form", firm.numberForm);
    archive.text("insurer", firm.insurer);
    archive.text("policy", firm.policy);
    archive.date("insured_until", firm.insuredUntil);
    archive.text("insured_until_text", firm.insuredUntilText);
    archive.secret("reminder_text", firm.reminderText);
    archive.secret("no_access_text", firm.noAccessText);
    archive.secret("cover_text", firm.coverText);
}

template <class Archive, Is<reg::Party> Value>
void describe(Archive& archive, Value& party) {
    archive.id("id", party.id);
    archive.code("kind", party.kind);
    archive.text("name", party.name);
    describe(archive, party.address);
    archive.text("telephone", party.telephone);
    archive.text("email", party.email);
    if constexpr (Archive::kStaysInside) {  // how somebody may be written to is no business of a record
        archive.text("language", party.language);
        archive.code("send_by", party.sendBy);
        archive.code("reminder_basis", party.reminderBasis);
        archive.date("reminder_since", party.reminderSince);
        archive.date("reminder_withdrawn", party.reminderWithdrawn);
        archive.secret("notes", party.notes);
    }
}

template <class Archive, Is<reg::Premises> Value>
void describe(Archive& archive, Value& premises) {
    archive.id("id", premises.id);
    describe(archive, premises.address);
    archive.code("country", premises.country);
    archive.secret("access_notes", premises.accessNotes);
    archive.text("uprn", premises.uprn);
    archive.code("appliance_in_rooms", premises.applianceInRooms);
}

template <class Archive, Is<reg::Role> Value>
void describe(Archive& archive, Value& role) {
    archive.id("id", role.id);
    archive.link("premises", role.premises);
    archive.link("party", role.party);
    archive.code("kind", role.kind);
    archive.date("since", role.since);
    archive.date("until", role.until);
}

template <class Archive, Is<reg::Installation> Value>
void describe(Archive& archive, Value& installation) {
    archive.id("id", installation.id);
    archive.link("premises", installation.premises);
    archive.code("gas", installation.gas);
    archive.text("meter_code", installation.meterCode);
    archive.typed("meter_volume", installation.meterVolume);
    archive.text("meter_serial", installation.meterSerial);
    archive.text("meter_place", installation.meterPlace);
    archive.typed("operating_pressure", installation.operatingPressure);
    archive.typed("supply_pressure", installation.supplyPressure);
    archive.text("control_valve_place", installation.controlValvePlace);
    archive.text("name", installation.name);
    archive.text("mprn", installation.mprn);
    archive.text("meter_badge", installation.meterBadge);
    archive.text("regulator", installation.regulator);
    archive.code("control_valve_accessible", installation.controlValveAccessible);
    archive.code("bonding_seen", installation.bondingSeen);
    archive.text("line_diagram", installation.lineDiagram);
}

template <class Archive, Is<reg::PipeSection> Value>
void describe(Archive& archive, Value& section) {
    archive.id("id", section.id);
    archive.link("installation", section.installation);
    archive.link("after", section.after);
    archive.text("after_text", section.afterText);
    archive.number("position", section.position);
    archive.text("tube_code", section.tubeCode);
    archive.typed("length", section.length);
    archive.typed("volume", section.volume);
    archive.text("leads_to", section.leadsTo);
    archive.flag("under_test", section.underTest);
    archive.link("appliance", section.appliance);
    archive.flag("capped", section.capped);
    archive.text("fittings", section.fittings);
}

template <class Archive, Is<reg::Engineer> Value>
void describe(Archive& archive, Value& engineer) {
    archive.id("id", engineer.id);
    archive.text("name", engineer.name);
    archive.text("card_number", engineer.cardNumber);
    archive.date("card_expires", engineer.cardExpires);
    archive.text("card_expires_text", engineer.cardExpiresText);
}

template <class Archive, Is<reg::Instrument> Value>
void describe(Archive& archive, Value& instrument) {
    archive.id("id", instrument.id);
    archive.code("kind", instrument.kind);
    archive.text("name", instrument.name);
    archive.text("serial", instrument.serial);
    archive.typed("resolution", instrument.resolution);
    archive.typed("repeatability", instrument.repeatability);
    archive.typed("accuracy", instrument.accuracy);
    archive.typed("drift", instrument.drift);
    archive.text("certificate", instrument.certificate);
    archive.date("calibrated_on", instrument.calibratedOn);
    archive.text("calibrated_on_text", instrument.calibratedOnText);
    archive.date("calibration_due", instrument.calibrationDue);
    archive.text("calibration_due_text", instrument.calibrationDueText);
}

template <class Archive, Is<reg::Visit> Value>
void describe(Archive& archive, Value& visit) {
    archive.id("id", visit.id);
    archive.link("premises", visit.premises);
    archive.link("installation", visit.installation);
    archive.date("date", visit.date);
    archive.text("date_text", visit.dateText);
    archive.link("engineer", visit.engineer);
    archive.instant("started_at", visit.startedAt);
    archive.flag("closed", visit.closed);
}

template <class Archive, Is<reg::Test> Value>
void describe(Archive& archive, Value& test) {
    archive.id("id", test.id);
    archive.link("visit", test.visit);
    archive.number("position", test.position);
    archive.text("label", test.label);
}

}  // namespace hearth::record
