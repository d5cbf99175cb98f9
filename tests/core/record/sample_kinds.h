// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/kind.h"
#include "tests/core/record/sample_visit.h"

#include <string>
#include <vector>

/// A visit of each kind with everything in it that its record can ask for. All invented.
namespace hearth::testing {

[[nodiscard]] inline std::string sampleAnswer(const reg::VisitFile& file, const reg::ItemInfo& info) {
    switch (info.kind) {
        case reg::ItemKind::Number:
            return "5";
        case reg::ItemKind::Choice:
        case reg::ItemKind::YesNo:
            return std::string(info.choices.front().code);
        case reg::ItemKind::Time:
            return "10:00";
        case reg::ItemKind::Date:
            return "2026-11-20";
        case reg::ItemKind::Instrument:
            return file.instruments.at(info.item == reg::Item::TestGauge ? 0 : 1).id.text();
        case reg::ItemKind::Text:
        case reg::ItemKind::LongText:
            break;
    }
    return "as seen";
}

inline void addSamplePeople(reg::VisitFile& file) {
    const auto add = [&](reg::RoleKind role, const char* name, std::uint8_t id) {
        reg::VisitFile::Holder holder{role, {}};
        holder.party.id = reg::PartyId{sampleBytes(id)};
        holder.party.name = name;
        holder.party.address = {"3 Larch End", "", "Nowhere Cross", "QX1 1AC"};
        file.people.push_back(holder);
    };
    add(reg::RoleKind::Landlord, "C. Lettingham", 20);
    add(reg::RoleKind::HomeOwner, "D. Ownerby", 21);
}

[[nodiscard]] inline reg::Appliance sampleAppliance(const reg::VisitFile& file) {
    reg::Appliance appliance;
    appliance.id = reg::ApplianceId{sampleBytes(30)};
    appliance.installation = file.installation.id;
    appliance.kind = "condensing_boiler";
    appliance.make = "Emberline";
    appliance.model = "Quiet 24";
    appliance.serial = "EQ-000123";
    appliance.place = "kitchen cupboard";
    appliance.flue = reg::FlueType::RoomSealed;
    appliance.owner = reg::Owner::Landlord;
    return appliance;
}

[[nodiscard]] inline reg::Situation sampleSituation(const reg::VisitFile& file) {
    reg::Situation situation;
    situation.id = reg::SituationId{sampleBytes(31)};
    situation.premises = file.premises.id;
    situation.visit = file.visit.id;
    situation.appliance = reg::ApplianceId{sampleBytes(30)};
    situation.danger = reg::Danger::AtRisk;
    situation.what = "flue in a void without hatches";
    situation.where = "above the hall ceiling";
    return situation;
}

/// The room, or the reading taken in it.
[[nodiscard]] inline reg::RoomId sampleRoom(reg::Item item) {
    const bool reading =
        item == reg::Item::RoomCo || item == reg::Item::RoomCoAt || item == reg::Item::RoomCoPlace;
    return reg::RoomId{sampleBytes(reading ? 34 : 32)};
}

/// Everything of the register, and every item that a record of the kind speaks of.
[[nodiscard]] inline reg::VisitFile visitOfKind(record::RecordKind kind) {
    reg::VisitFile file = sampleVisit();
    addSamplePeople(file);
    reg::Instrument analyser = file.instruments.front();
    analyser.id = reg::InstrumentId{sampleBytes(33)};
    analyser.kind = reg::InstrumentKind::CombustionAnalyser;
    analyser.name = "analyser no. 1";
    file.instruments.push_back(analyser);
    file.appliances = {sampleAppliance(file)};
    file.situations = {sampleSituation(file)};
    for (const auto& wanted : record::requirementsOf(kind)) {
        if (!wanted.item) {
            continue;
        }
        const auto& info = reg::infoOf(*wanted.item);
        const auto on = info.subject == reg::SubjectKind::Appliance      ? reg::subject(file.appliances[0].id)
                        : info.subject == reg::SubjectKind::Situation    ? reg::subject(file.situations[0].id)
                        : info.subject == reg::SubjectKind::Room         ? reg::subject(sampleRoom(info.item))
                        : info.subject == reg::SubjectKind::Test         ? reg::subject(file.tests[0].id)
                        : info.subject == reg::SubjectKind::Installation ? reg::subject(file.installation.id)
                                                                         : reg::subject(file.visit.id);
        if (file.find(on, info.item) == nullptr) {
            enter(file, on, info.item, sampleAnswer(file, info));
        }
    }
    return file;
}

}  // namespace hearth::testing
