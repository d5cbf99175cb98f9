// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/base/id.h"
#include "core/calendar/civil_date.h"
#include "core/quantity/typed.h"
#include "core/register/item.h"
#include "core/rulebook/standard.h"

#include <optional>
#include <string>
#include <vector>

/// What the firm keeps, as plain values. Text is UTF-8. The register's fields are typed columns in the store;
/// numbers that were typed are kept as typed (quantity::Typed).
namespace hearth::reg {

using PartyId = Id<struct PartyTag>;
using PremisesId = Id<struct PremisesTag>;
using RoleId = Id<struct RoleTag>;
using InstallationId = Id<struct InstallationTag>;
using PipeSectionId = Id<struct PipeSectionTag>;
using EngineerId = Id<struct EngineerTag>;
using InstrumentId = Id<struct InstrumentTag>;
using VisitId = Id<struct VisitTag>;
using TestId = Id<struct TestTag>;
using EntryId = Id<struct EntryTag>;
using ApplianceId = Id<struct ApplianceTag>;
using AttachmentId = Id<struct AttachmentTag>;
/// A room is known by its entries alone (its name is one of them), so that no row has to be made before a
/// word can be said of it; the same id next year is the same room.
using RoomId = Id<struct RoomTag>;

/// The rules differ by country.
enum class Country { England, Wales, Scotland, NorthernIreland };

struct Address {
    std::string line1;
    std::string line2;
    std::string town;
    std::string postcode;
    bool operator==(const Address&) const = default;
};

/// The business. One a store.
struct Firm {
    std::string name;
    Address address;
    std::string registrationNumber;  // free text: no check digit is known
    std::string telephone;
    std::string email;
    Country country = Country::England;
    std::string language = "en";  // of its records
    bool demonstration = false;   // set when the store is made, never changed
    std::optional<AttachmentId> logo = {};
    std::string numberForm = {};  // how a record's number is shown; empty: the program's own
    std::string insurer = {};     // public liability
    std::string policy = {};
    std::optional<calendar::Date> insuredUntil = {};
    std::string insuredUntilText = {};  // what was typed where it is no date; else empty
    // The firm's own words of its letters; empty: the program's. Placeholders are listed beside the editor.
    std::string reminderText = {};
    std::string noAccessText = {};
    std::string coverText = {};
    bool operator==(const Firm&) const = default;
};

enum class PartyKind { Person, Organisation };
/// How records may be sent to somebody.
enum class SendBy { NotSaid, Post, Email, Handed };
/// On what ground somebody is reminded: the law's duty (a landlord of his checks), consent given, or a
/// customer's earlier work (facts: "Data protection"); withdrawn counts before all of them.
enum class ReminderBasis { NotSaid, Consent, EarlierWork, Contract };
struct Party {
    PartyId id;
    PartyKind kind = PartyKind::Person;
    std::string name;
    Address address;
    std::string telephone;  // as typed; telephoneE164() reads it
    std::string email;
    std::string language = {};  // of what is sent; empty: the firm's
    SendBy sendBy = SendBy::NotSaid;
    ReminderBasis reminderBasis = ReminderBasis::NotSaid;
    std::optional<calendar::Date> reminderSince = {};
    std::optional<calendar::Date> reminderWithdrawn = {};
    std::string notes = {};
    bool operator==(const Party&) const = default;
};

/// Landlord, tenant and so on are roles on premises, not kinds of people.
enum class RoleKind { Customer, Landlord, Agent, HomeOwner, Tenant, ResponsiblePerson };
struct Role {
    RoleId id;
    PremisesId premises;
    PartyId party;
    RoleKind kind = RoleKind::Customer;
    std::optional<calendar::Date> since = {};  // none: not known
    std::optional<calendar::Date> until = {};  // the last day; none: still
    bool operator==(const Role&) const = default;
};

enum class YesNo { NotSaid, Yes, No };

struct Premises {
    PremisesId id;
    Address address;
    Country country = Country::England;
    std::string accessNotes;  // shown only on purpose, never printed
    std::string uprn = {};    // up to 12 digits, kept as typed
    // A relevant gas appliance stands in a room that tenants occupy. No: all of them are elsewhere (a common
    // boiler room, say), and a copy on display with a statement will do.
    YesNo applianceInRooms = YesNo::NotSaid;
    bool operator==(const Premises&) const = default;
};

/// One gas installation of a premises. Meter and tubes are held by their codes in core/pipework.
struct Installation {
    InstallationId id;
    PremisesId premises;
    rulebook::Gas gas = rulebook::Gas::NaturalGas;
    std::string meterCode;        // pipework::Meter's code; empty: not said yet
    quantity::Typed meterVolume;  // typed volume for a meter that the table lacks
    std::string meterSerial;
    std::string meterPlace;
    quantity::Typed operatingPressure;  // at the meter or final regulator outlet
    quantity::Typed supplyPressure;     // maximum operating pressure at the emergency control valve's outlet
    std::string controlValvePlace;
    std::string name = {};  // "shop", "flat above": where there are several
    std::string mprn = {};  // meter point reference number, as typed
    std::string meterBadge = {};
    std::string regulator = {};
    YesNo controlValveAccessible = YesNo::NotSaid;
    YesNo bondingSeen = YesNo::NotSaid;
    std::string lineDiagram = {};  // where it hangs, what it lacks
    bool operator==(const Installation&) const = default;
};

/// One section of pipe. `after` is the section that feeds it (none: the meter), so the list is a tree.
struct PipeSection {
    PipeSectionId id;
    InstallationId installation;
    std::optional<PipeSectionId> after;
    int position = 0;      // order in the list
    std::string tubeCode;  // pipework::Tube's code; empty: not said yet
    quantity::Typed length;
    quantity::Typed volume;      // typed volume, for corrugated tube and what the table lacks
    std::string leadsTo;         // "boiler", "tee to hob": free text
    bool underTest = true;       // part of what is tested
    std::string afterText = {};  // what was typed for `after` where it names no section; else empty
    std::optional<ApplianceId> appliance = {};  // at its end, one of the premises
    bool capped = false;                        // its end is capped: nothing is drawn there
    // "3 elbows 1 tee", "1.5 m", "none"; empty: not said. pipework::readFittings() reads it.
    std::string fittings = {};
    bool operator==(const PipeSection&) const = default;
};

struct Engineer {
    EngineerId id;
    std::string name;
    std::string cardNumber;  // free text
    std::optional<calendar::Date> cardExpires;
    std::string cardExpiresText = {};  // what was typed for the date where it is none; else empty
    bool operator==(const Engineer&) const = default;
};

enum class InstrumentKind {
    ElectronicGauge,
    WaterGauge,
    CombustionAnalyser,
    LeakDetector,
    VoltageIndicator,
    Other
};
struct Instrument {
    InstrumentId id;
    InstrumentKind kind = InstrumentKind::ElectronicGauge;
    std::string name;  // the firm's own: "gauge no. 2"
    std::string serial;
    quantity::Typed resolution;     // one step of the display or scale
    quantity::Typed repeatability;  // absent: taken as one step
    quantity::Typed accuracy;
    quantity::Typed drift;  // in a minute, either way; absent: not known
    std::string certificate;
    std::optional<calendar::Date> calibratedOn;
    std::optional<calendar::Date> calibrationDue;
    // What was typed for a date where it is none; else empty.
    std::string calibratedOnText = {};
    std::string calibrationDueText = {};
    bool operator==(const Instrument&) const = default;
};

struct Visit {
    VisitId id;
    PremisesId premises;
    InstallationId installation;
    calendar::Date date{};  // the last that could be read
    std::optional<EngineerId> engineer;
    Instant startedAt{};
    bool closed = false;        // nothing more to do; kept, not edited
    std::string dateText = {};  // what was typed for `date` after it and is no date; else empty
    bool operator==(const Visit&) const = default;
};

/// One tightness test of a visit (before the work, after it).
struct Test {
    TestId id;
    VisitId visit;
    int position = 0;
    std::string label;  // "before work"; empty for the only one
    bool operator==(const Test&) const = default;
};

/// What an entry belongs to: the visit itself, or one of its subjects by that subject's id.
struct SubjectRef {
    SubjectKind kind = SubjectKind::Visit;
    UuidBytes id{};
    auto operator<=>(const SubjectRef&) const = default;
};
[[nodiscard]] inline SubjectRef subject(VisitId id) {
    return {SubjectKind::Visit, id.bytes};
}
[[nodiscard]] inline SubjectRef subject(InstallationId id) {
    return {SubjectKind::Installation, id.bytes};
}
[[nodiscard]] inline SubjectRef subject(TestId id) {
    return {SubjectKind::Test, id.bytes};
}
[[nodiscard]] inline SubjectRef subject(ApplianceId id) {
    return {SubjectKind::Appliance, id.bytes};
}
[[nodiscard]] inline SubjectRef subject(RoomId id) {
    return {SubjectKind::Room, id.bytes};
}

/// One item's value on one subject, as typed. At most one per subject and item; an emptied one is deleted
/// (the change log keeps it). `text` is what was typed, for a choice its code, for an instrument its id's
/// text.
struct Entry {
    EntryId id;
    VisitId visit;
    SubjectRef subject;
    Item item = Item::VisitReference;
    std::string text;
    quantity::UnitCode unit = quantity::UnitCode::None;
    /// Derived by canonicalOf(): canonical decimal, choice code, ISO date or instant; empty when the text
    /// can't be read.
    std::string canonical;
    std::optional<InstrumentId> instrument;
    Instant at{};
    std::string by;
    bool operator==(const Entry&) const = default;
};

/// The canonical form of a typed text for an item: a decimal as text, a choice's code, an ISO date; a time as
/// "HH:MM" or "HH:MM:SS". Errors: as the parser of the item's kind; ChoiceUnknown for a code that the item
/// lacks.
[[nodiscard]] Result<std::string> canonicalOf(Item item, const std::string& text);

/// Codes of the enumerations above in files: "england", "landlord", "electronic_gauge"…
[[nodiscard]] std::string_view codeOf(Country);
[[nodiscard]] std::string_view codeOf(PartyKind);
[[nodiscard]] std::string_view codeOf(RoleKind);
[[nodiscard]] std::string_view codeOf(InstrumentKind);
[[nodiscard]] std::string_view codeOf(SubjectKind);
[[nodiscard]] std::string_view codeOf(SendBy);
[[nodiscard]] std::string_view codeOf(ReminderBasis);
[[nodiscard]] std::string_view codeOf(YesNo);
[[nodiscard]] std::optional<Country> countryFromCode(std::string_view);
[[nodiscard]] std::optional<PartyKind> partyKindFromCode(std::string_view);
[[nodiscard]] std::optional<RoleKind> roleKindFromCode(std::string_view);
[[nodiscard]] std::optional<InstrumentKind> instrumentKindFromCode(std::string_view);
[[nodiscard]] std::optional<SubjectKind> subjectKindFromCode(std::string_view);
[[nodiscard]] std::optional<SendBy> sendByFromCode(std::string_view);
[[nodiscard]] std::optional<ReminderBasis> reminderBasisFromCode(std::string_view);
[[nodiscard]] std::optional<YesNo> yesNoFromCode(std::string_view);

}  // namespace hearth::reg
