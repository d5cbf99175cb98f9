// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/app/visit_driver.h"

namespace hearth::testing {

/// Premises with what whole visits need: a landlord or a home owner, an analyser, appliances.
class VisitBench : public ::testing::Test {
  protected:
    VisitBench() {
        firm.makeCompetent();
        premises = firm.addPremises("14 Kiln Lane");
        installation = need(firm.store->installations(premises)).front().id;
        analyser.id = {firm.store->newId()};
        analyser.kind = reg::InstrumentKind::CombustionAnalyser;
        analyser.name = "analyser no. 1";
        analyser.serial = "CA-7";
        analyser.calibrationDue = firm.gauge.calibrationDue;
        need(firm.store->save(analyser));
    }

    void addLandlord() { addParty("Ash Lettings", reg::RoleKind::Landlord); }
    void addParty(const std::string& name, reg::RoleKind role) {
        reg::Party party;
        party.id = {firm.store->newId()};
        party.name = name;
        party.address = {"1 Weir Street", "", "Thornmere", "TH1 1AA"};
        need(firm.store->save(party));
        need(firm.store->save(reg::Role{{firm.store->newId()}, premises, party.id, role}));
    }
    reg::ApplianceId addAppliance(std::string_view kind, const std::string& place, reg::FlueType flue,
                                  reg::Owner owner = reg::Owner::Landlord) {
        reg::Appliance appliance;
        appliance.id = {firm.store->newId()};
        appliance.installation = installation;
        appliance.kind = std::string(kind);
        appliance.make = "Invented";
        appliance.model = "Thirty";
        appliance.place = place;
        appliance.flue = flue;
        appliance.owner = owner;
        need(firm.store->save(appliance));
        return appliance.id;
    }
    /// Nine metres to the boiler, and the pressures of a house.
    void addPipe() {
        reg::PipeSection pipe;
        pipe.id = {firm.store->newId()};
        pipe.installation = installation;
        pipe.tubeCode = "copper_15";
        pipe.length = {"9", quantity::UnitCode::Metre};
        pipe.leadsTo = "boiler";
        need(firm.store->savePipes(installation, {pipe}));
        auto row = need(firm.store->installations(premises)).front();
        row.operatingPressure = {"21", quantity::UnitCode::Millibar};
        row.supplyPressure = {"75", quantity::UnitCode::Millibar};
        need(firm.store->save(row));
    }

    /// A test that holds; common practice, no source.
    [[nodiscard]] PartAnswers tightnessOf(const std::string& work) const {
        using reg::Item;
        return {{{Item::TestWork, work},
                 {Item::TestExtent, "whole"},
                 {Item::TestAppliances, "connected"},
                 {Item::TestIsolatedWhat, "off at their controls"},
                 {Item::TestPilots, "none_fitted"},
                 {Item::TestGauge, firm.gauge.id.text()},
                 {Item::TestGaugeZeroed, "yes"},
                 {Item::LetByStart, "9.02"},
                 {Item::LetByEnd, "9.01"},
                 {Item::LetByStartedAt, "941"},
                 {Item::LetByEndedAt, "942"},
                 {Item::SettleStart, "20.52"},
                 {Item::SettleEnd, "20.50"},
                 {Item::SettleStartedAt, "943"},
                 {Item::SettleEndedAt, "944"},
                 {Item::TightStart, "20.50"},
                 {Item::TightEnd, "20.50"},
                 {Item::TightStartedAt, "945"},
                 {Item::TightEndedAt, "947"},
                 {Item::TestSmell, "no"}}};
    }

    [[nodiscard]] static std::vector<std::string> issuedKinds(const VisitDriver& driver) {
        std::vector<std::string> kinds;
        for (const auto& record : driver.model().records()) {
            kinds.push_back(record.header.kind);
        }
        std::sort(kinds.begin(), kinds.end());
        return kinds;
    }

    FirmBench firm;
    reg::PremisesId premises;
    reg::InstallationId installation;
    reg::Instrument analyser;
    std::map<VisitDriver::Part, PartAnswers> answers;
};

}  // namespace hearth::testing
