// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/scenario_reader.h"

namespace hearth::exchange {

namespace {

using quantity::UnitFamily;

reg::Address addressIn(const JsonNode& node) {
    node.allowOnly({"line1", "line2", "town", "postcode"});
    return {node.at("line1").text(), node.textOr("line2"), node.at("town").text(), node.textOr("postcode")};
}

std::optional<calendar::Date> dateIfThere(const JsonNode& node, const char* key) {
    const auto found = node.find(key);
    return found ? std::optional(dateIn(*found)) : std::nullopt;
}

quantity::Typed typedIfThere(const JsonNode& node, const char* key, UnitFamily family) {
    const auto found = node.find(key);
    return found ? typedIn(*found, family) : quantity::Typed{};
}

}  // namespace

calendar::Date dateIn(const JsonNode& node) {
    return valueOf(calendar::fromIso(node.text()), node);
}

quantity::Typed typedIn(const JsonNode& node, UnitFamily family) {
    const auto typed = quantity::parseTyped(node.text(), family);
    if (!typed) {
        node.refuse("unreadable");
    }
    return *typed;
}

UuidBytes ScenarioReader::named(const char* kind, const JsonNode& key) {
    const auto [at, isNew] = m_ids.emplace(std::string(kind) + '/' + key.text(), m_newId());
    if (!isNew) {
        key.refuse("twice");
    }
    return at->second;
}

UuidBytes ScenarioReader::known(const char* kind, const JsonNode& key) const {
    const auto found = m_ids.find(std::string(kind) + '/' + key.text());
    if (found == m_ids.end()) {
        key.refuse("not_found");
    }
    return found->second;
}

void ScenarioReader::readFirm(const JsonNode& node) {
    node.allowOnly(
        {"name", "address", "registration", "telephone", "email", "country", "language", "demonstration"});
    reg::Firm& firm = m_scenario.firm;
    firm.name = node.at("name").text();
    firm.address = addressIn(node.at("address"));
    firm.registrationNumber = node.at("registration").text();
    firm.telephone = node.textOr("telephone");
    firm.email = node.textOr("email");
    firm.country = valueOf(reg::countryFromCode(node.at("country").text()), node.at("country"));
    firm.language = node.textOr("language", "en");
    firm.demonstration = node.at("demonstration").truth();
}

void ScenarioReader::readEngineer(const JsonNode& node) {
    node.allowOnly({"key", "name", "card", "card_expires"});
    m_scenario.engineers.push_back({reg::EngineerId{named("engineer", node.at("key"))},
                                    node.at("name").text(), node.at("card").text(),
                                    dateIfThere(node, "card_expires")});
}

void ScenarioReader::readInstrument(const JsonNode& node) {
    node.allowOnly({"key", "kind", "name", "serial", "resolution", "repeatability", "accuracy", "drift",
                    "certificate", "calibrated_on", "calibration_due"});
    reg::Instrument instrument;
    instrument.id = reg::InstrumentId{named("instrument", node.at("key"))};
    instrument.kind = valueOf(reg::instrumentKindFromCode(node.at("kind").text()), node.at("kind"));
    instrument.name = node.at("name").text();
    instrument.serial = node.textOr("serial");
    instrument.resolution = typedIfThere(node, "resolution", UnitFamily::Pressure);
    instrument.repeatability = typedIfThere(node, "repeatability", UnitFamily::Pressure);
    instrument.accuracy = typedIfThere(node, "accuracy", UnitFamily::Pressure);
    instrument.drift = typedIfThere(node, "drift", UnitFamily::Pressure);
    instrument.certificate = node.textOr("certificate");
    instrument.calibratedOn = dateIfThere(node, "calibrated_on");
    instrument.calibrationDue = dateIfThere(node, "calibration_due");
    m_scenario.instruments.push_back(instrument);
}

void ScenarioReader::readParty(const JsonNode& node) {
    node.allowOnly({"key", "kind", "name", "address", "telephone", "email"});
    reg::Party party;
    party.id = reg::PartyId{named("party", node.at("key"))};
    party.kind = valueOf(reg::partyKindFromCode(node.at("kind").text()), node.at("kind"));
    party.name = node.at("name").text();
    if (const auto address = node.find("address")) {
        party.address = addressIn(*address);
    }
    party.telephone = node.textOr("telephone");
    party.email = node.textOr("email");
    m_scenario.parties.push_back(party);
}

void ScenarioReader::readPremises(const JsonNode& node) {
    node.allowOnly({"key", "address", "country", "access_notes", "people", "installations"});
    reg::Premises premises;
    premises.id = reg::PremisesId{named("premises", node.at("key"))};
    premises.address = addressIn(node.at("address"));
    premises.country = valueOf(reg::countryFromCode(node.at("country").text()), node.at("country"));
    premises.accessNotes = node.textOr("access_notes");
    m_scenario.premises.push_back(premises);
    for (const auto& person : node.list("people")) {
        person.allowOnly({"role", "party"});
        m_scenario.roles.push_back(
            {reg::RoleId{m_newId()}, premises.id, reg::PartyId{known("party", person.at("party"))},
             valueOf(reg::roleKindFromCode(person.at("role").text()), person.at("role"))});
    }
    for (const auto& installation : node.list("installations")) {
        readInstallation(installation, premises.id);
    }
}

void ScenarioReader::readInstallation(const JsonNode& node, reg::PremisesId premises) {
    node.allowOnly({"key", "gas", "meter", "meter_volume", "meter_serial", "meter_place",
                    "operating_pressure", "supply_pressure", "control_valve_place", "pipes", "appliances"});
    reg::Installation installation;
    installation.id = reg::InstallationId{named("installation", node.at("key"))};
    installation.premises = premises;
    installation.gas = valueOf(rulebook::gasFromText(node.at("gas").text()), node.at("gas"));
    installation.meterCode = node.textOr("meter");
    installation.meterVolume = typedIfThere(node, "meter_volume", UnitFamily::Volume);
    installation.meterSerial = node.textOr("meter_serial");
    installation.meterPlace = node.textOr("meter_place");
    installation.operatingPressure = typedIfThere(node, "operating_pressure", UnitFamily::Pressure);
    installation.supplyPressure = typedIfThere(node, "supply_pressure", UnitFamily::Pressure);
    installation.controlValvePlace = node.textOr("control_valve_place");
    m_scenario.installations.push_back(installation);
    int position = 0;
    for (const auto& appliance : node.list("appliances")) {
        readAppliance(appliance, installation.id, position++);
    }
    position = 0;
    for (const auto& pipe : node.list("pipes")) {  // they name appliances
        readPipe(pipe, installation.id, position++);
    }
}

void ScenarioReader::readPipe(const JsonNode& node, reg::InstallationId installation, int position) {
    node.allowOnly({"key", "after", "tube", "length", "volume", "leads_to", "under_test", "appliance",
                    "capped", "fittings"});
    reg::PipeSection pipe;
    pipe.id = reg::PipeSectionId{named("pipe", node.at("key"))};
    pipe.installation = installation;
    if (const auto after = node.find("after")) {
        pipe.after = reg::PipeSectionId{known("pipe", *after)};
    }
    pipe.position = position;
    pipe.tubeCode = node.textOr("tube");
    pipe.length = typedIfThere(node, "length", UnitFamily::Length);
    pipe.volume = typedIfThere(node, "volume", UnitFamily::Volume);
    pipe.leadsTo = node.textOr("leads_to");
    if (const auto tested = node.find("under_test")) {
        pipe.underTest = tested->truth();
    }
    if (const auto appliance = node.find("appliance")) {
        pipe.appliance = reg::ApplianceId{known("appliance", *appliance)};
    }
    if (const auto capped = node.find("capped")) {
        pipe.capped = capped->truth();
    }
    pipe.fittings = node.textOr("fittings");
    m_scenario.pipes.push_back(pipe);
}

void ScenarioReader::readAppliance(const JsonNode& node, reg::InstallationId installation, int position) {
    node.allowOnly({"key",
                    "kind",
                    "make",
                    "model",
                    "serial",
                    "gc_number",
                    "place",
                    "flue",
                    "gas",
                    "net_input",
                    "gross_input",
                    "installed_on",
                    "owner",
                    "maker_ratio",
                    "maker_co",
                    "maker_inlet_least",
                    "maker_inlet_most",
                    "maker_burner_least",
                    "maker_burner_most",
                    "maker_tolerance",
                    "maker_source"});
    reg::Appliance appliance;
    appliance.id = reg::ApplianceId{named("appliance", node.at("key"))};
    appliance.installation = installation;
    appliance.position = position;
    appliance.kind = node.at("kind").text();
    if (!reg::canonicalOf(reg::Item::ApplianceKind, appliance.kind)) {
        node.at("kind").refuse("unknown");
    }
    appliance.make = node.textOr("make");
    appliance.model = node.textOr("model");
    appliance.serial = node.textOr("serial");
    appliance.gcNumber = node.textOr("gc_number");
    appliance.place = node.textOr("place");
    appliance.flue = valueOf(reg::flueTypeFromCode(node.at("flue").text()), node.at("flue"));
    appliance.gas = m_scenario.installations.back().gas;
    appliance.netInput = typedIfThere(node, "net_input", UnitFamily::Power);
    appliance.grossInput = typedIfThere(node, "gross_input", UnitFamily::Power);
    appliance.installedOn = dateIfThere(node, "installed_on");
    appliance.owner = valueOf(reg::ownerFromCode(node.at("owner").text()), node.at("owner"));
    appliance.makerRatio = typedIfThere(node, "maker_ratio", UnitFamily::None);
    appliance.makerCo = typedIfThere(node, "maker_co", UnitFamily::Trace);
    appliance.makerInletLeast = typedIfThere(node, "maker_inlet_least", UnitFamily::Pressure);
    appliance.makerInletMost = typedIfThere(node, "maker_inlet_most", UnitFamily::Pressure);
    appliance.makerBurnerLeast = typedIfThere(node, "maker_burner_least", UnitFamily::Pressure);
    appliance.makerBurnerMost = typedIfThere(node, "maker_burner_most", UnitFamily::Pressure);
    appliance.makerTolerance = typedIfThere(node, "maker_tolerance", UnitFamily::Share);
    appliance.makerSource = node.textOr("maker_source");
    m_scenario.appliances.push_back(appliance);
}

Scenario ScenarioReader::read(const JsonNode& root) {
    root.allowOnly({"format", "version", "about", "firm", "engineers", "instruments", "rules", "parties",
                    "premises", "visits"});
    if (root.at("format").text() != "hearthledger scenario") {
        root.at("format").refuse("unknown");
    }
    if (root.at("version").integer() != 1) {
        root.at("version").refuse("unknown");
    }
    readFirm(root.at("firm"));
    for (const auto& node : root.list("engineers")) {
        readEngineer(node);
    }
    for (const auto& node : root.list("instruments")) {
        readInstrument(node);
    }
    for (const auto& node : root.list("rules")) {
        readRule(node);
    }
    for (const auto& node : root.list("parties")) {
        readParty(node);
    }
    for (const auto& node : root.list("premises")) {
        readPremises(node);
    }
    for (const auto& node : root.list("visits")) {
        readVisit(node);
    }
    return std::move(m_scenario);
}

}  // namespace hearth::exchange
