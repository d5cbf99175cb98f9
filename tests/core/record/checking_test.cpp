// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/record/sample_kinds.h"

#include <algorithm>
#include <functional>
#include <gmock/gmock.h>
#include <map>
#include <set>

namespace hearth::record {
namespace {

using reg::Item;
using ::testing::IsEmpty;

using Clearing = std::map<Field, std::function<void()>>;

/// The firm, people, the site, the test.
Clearing clearingOfSite(reg::VisitFile& file) {
    return {
        {Field::FirmName, [&] { file.firm.name.clear(); }},
        {Field::FirmAddress, [&] { file.firm.address = {}; }},
        {Field::FirmRegistration, [&] { file.firm.registrationNumber = " "; }},
        {Field::PremisesAddress, [&] { file.premises.address.line1.clear(); }},
        {Field::PremisesPostcode, [&] { file.premises.address.postcode.clear(); }},
        {Field::CustomerName,
         [&] {
             for (auto& holder : file.people) {
                 holder.party.name.clear();
             }
         }},
        {Field::EngineerName, [&] { file.engineers[0].name.clear(); }},
        {Field::EngineerCard, [&] { file.engineers[0].cardNumber.clear(); }},
        {Field::InstallationMeter, [&] { file.installation.meterCode.clear(); }},
        {Field::InstrumentSerial, [&] { file.instruments[0].serial.clear(); }},
        {Field::InstrumentCalibration, [&] { file.instruments[0].calibrationDue.reset(); }},
        {Field::PipeOrVolume,
         [&] {
             file.pipes.clear();
             testing::takeOut(file, reg::subject(file.tests[0].id), Item::TestVolumeTyped);
         }},
        {Field::PipeOrder, [&] { file.pipes[0].afterText = "the big one"; }},
        {Field::VisitDate, [&] { file.visit.dateText = "last Tuesday"; }},
        {Field::LandlordName, [&] { file.people[1].party.name.clear(); }},
        {Field::LandlordAddress, [&] { file.people[1].party.address = {}; }},
        {Field::OwnerName,
         [&] {
             file.people[0].party.name.clear();
             file.people[2].party.name.clear();
         }},
    };
}

/// Appliances, situations, instruments.
Clearing clearingOfSubjects(reg::VisitFile& file) {
    auto& appliance = file.appliances.front();
    auto& situation = file.situations.front();
    return {
        {Field::ApplianceChecked,
         [&] {
             testing::enter(file, reg::subject(appliance.id), Item::ApplianceInspected, "not_inspected");
         }},
        {Field::ApplianceKind, [&] { appliance.kind.clear(); }},
        {Field::ApplianceMake, [&] { appliance.make.clear(); }},
        {Field::ApplianceModel, [&] { appliance.model.clear(); }},
        {Field::ApplianceSerial, [&] { appliance.serial.clear(); }},
        {Field::AppliancePlace, [&] { appliance.place.clear(); }},
        {Field::ApplianceFlue, [&] { appliance.flue = reg::FlueType::NotSaid; }},
        {Field::AnalyserSerial, [&] { file.instruments[1].serial.clear(); }},
        {Field::AnalyserCalibration, [&] { file.instruments[1].calibrationDue.reset(); }},
        {Field::RoomNamed,
         [&] {
             std::erase_if(file.entries, [](const reg::Entry& entry) {
                 return entry.subject == reg::subject(testing::sampleRoom(Item::RoomName));
             });
         }},
        {Field::SituationDanger, [&] { situation.danger = reg::Danger::NotSaid; }},
        {Field::SituationWhat, [&] { situation.what.clear(); }},
        {Field::SituationWhere, [&] { situation.where.clear(); }},
        {Field::InstrumentSerials, [&] { file.instruments[1].serial.clear(); }},
        {Field::InstrumentDates, [&] { file.instruments[1].calibrationDue.reset(); }},
        {Field::RecipientAddress,
         [&] {
             for (auto& holder : file.people) {
                 holder.party.address = {};
             }
             file.premises.address.town.clear();  // where an owner or a tenant lives
         }},
    };
}

/// Takes a field of the register away.
void clear(reg::VisitFile& file, Field field) {
    auto clearing = clearingOfSite(file);
    clearing.merge(clearingOfSubjects(file));
    clearing.at(field)();
}

/// What else may be the case at a visit, beside the first answer to everything.
struct Case {
    const char* name;
    std::vector<std::pair<Item, const char*>> answers;
};
const std::vector<Case>& cases() {
    static const std::vector<Case> kCases{
        {"the first answer to everything", {}},
        {"a defect was found", {{Item::DefectsFound, "found"}}},
        {"only looked at", {{Item::ApplianceInspected, "visual_only"}}},
        {"nothing inspected", {{Item::ApplianceInspected, "not_inspected"}}},
        {"neither pressure nor heat input",
         {{Item::ExaminedPressure, "not_taken"},
          {Item::ExaminedHeatInput, "not_taken"},
          {Item::WhyNeither, "other"}}},
        {"a breakdown", {{Item::ServiceKind, "breakdown"}}},
        {"refused, copy left",
         {{Item::SituationPermission, "refused"}, {Item::SituationReceipt, "copy_left"}}},
        {"a part, isolated, purged",
         {{Item::TestExtent, "part"}, {Item::TestAppliances, "isolated"}, {Item::PurgeDone, "yes"}}},
    };
    return kCases;
}

reg::VisitFile fileOf(RecordKind kind, const Case& one) {
    auto file = testing::visitOfKind(kind);
    for (const auto& [item, answer] : one.answers) {
        for (const auto& entry : std::vector(file.entries)) {
            if (entry.item == item) {
                testing::enter(file, entry.subject, item, answer);
            }
        }
    }
    return file;
}

void drop(reg::VisitFile& file, const Requirement& wanted) {
    if (wanted.field) {
        clear(file, *wanted.field);
    } else {
        std::erase_if(file.entries, [&](const reg::Entry& entry) { return entry.item == *wanted.item; });
    }
}

std::string nameOf(const Requirement& wanted) {
    return std::string(wanted.item ? reg::infoOf(*wanted.item).code : fieldCode(*wanted.field));
}
std::vector<std::string> namesOf(const std::vector<Missing>& missing) {
    std::vector<std::string> names;
    for (const auto& one : missing) {
        names.push_back(nameOf({one.item, one.field, {}}));
    }
    return names;
}

/// Without what the tightness record alone judges by its findings.
bool hangsOnAFinding(const Requirement& wanted) {
    return wanted.when == When::LowUnexplained;  // held in kind_test.cpp
}

class EachKind : public ::testing::TestWithParam<RecordKind> {};

// For each thing that a kind asks for there is a case in which everything is there; without that one thing
// the record is refused, and the thing is named with who wants it.
TEST_P(EachKind, RefusesWithoutEachThingThatItAsksForAndNamesIt) {
    const std::vector<judging::Judged> none;
    for (const auto& wanted : requirementsOf(GetParam())) {
        if (wanted.when == When::WhenTyped || wanted.field == Field::InstallationGas ||
            hangsOnAFinding(wanted)) {
            continue;
        }
        bool named = false;
        for (const auto& one : cases()) {
            auto file = fileOf(GetParam(), one);
            const auto before = namesOf(missingFor(GetParam(), file, none));
            drop(file, wanted);
            const auto missing = missingFor(GetParam(), file, none);
            const auto names = namesOf(missing);
            named = named || (std::count(before.begin(), before.end(), nameOf(wanted)) == 0 &&
                              std::count(names.begin(), names.end(), nameOf(wanted)) > 0);
            for (const auto& lack : missing) {
                EXPECT_FALSE(lack.source.empty());
            }
        }
        EXPECT_TRUE(named) << nameOf(wanted) << " is never missed";
    }
}

TEST_P(EachKind, IssuesACompleteOne) {
    const std::vector<judging::Judged> none;
    const auto file = fileOf(GetParam(), cases().front());
    EXPECT_THAT(namesOf(missingFor(GetParam(), file, none)), IsEmpty());
}

TEST_P(EachKind, NamesOneThingEachOnceWithItsSource) {
    std::set<std::string> seen;
    for (const auto& wanted : requirementsOf(GetParam())) {
        EXPECT_NE(wanted.item.has_value(), wanted.field.has_value());
        EXPECT_FALSE(wanted.source.empty());
        EXPECT_TRUE(seen.insert(nameOf(wanted)).second) << nameOf(wanted) << " is asked for twice";
    }
    EXPECT_FALSE(seen.empty());
}

TEST_P(EachKind, WantsWhatWasTypedToBeReadable) {
    const std::vector<judging::Judged> none;
    for (const auto& wanted : requirementsOf(GetParam())) {
        if (!wanted.item) {
            continue;
        }
        const auto kind = reg::infoOf(*wanted.item).kind;
        if (kind == reg::ItemKind::Text || kind == reg::ItemKind::LongText) {
            continue;
        }
        auto file = testing::visitOfKind(GetParam());
        for (const auto& entry : std::vector(file.entries)) {
            if (entry.item == *wanted.item) {
                testing::enter(file, entry.subject, entry.item, "what's this");
            }
        }
        const auto missing = missingFor(GetParam(), file, none);
        const auto found = std::find_if(missing.begin(), missing.end(),
                                        [&](const Missing& one) { return one.item == wanted.item; });
        ASSERT_NE(found, missing.end()) << nameOf(wanted);
        EXPECT_TRUE(found->unreadable) << nameOf(wanted);
    }
}

INSTANTIATE_TEST_SUITE_P(Records, EachKind, ::testing::ValuesIn(allKinds().begin(), allKinds().end()),
                         [](const auto& kind) { return std::string(kindCode(kind.param)); });

struct LandlordRecord : ::testing::Test {
    reg::VisitFile file = testing::visitOfKind(RecordKind::LandlordSafety);
    reg::SubjectRef boiler = reg::subject(file.appliances[0].id);
    std::vector<judging::Judged> none;

    std::vector<std::string> missing() const {
        return namesOf(missingFor(RecordKind::LandlordSafety, file, none));
    }
};

// Regulation 36(3)(c) in its own order. Source: HSE "Gas safety check records and what to keep"; "Work
// records: a reminder" (2023), which lists the nine.
TEST_F(LandlordRecord, AsksForTheNineThingsInTheOrderOfTheRegulation) {
    std::vector<std::string> order;
    for (const auto& wanted : requirementsOf(RecordKind::LandlordSafety)) {
        const std::string source(wanted.source);
        const auto at = source.find("36(3)(c)(");
        if (at != std::string::npos && (order.empty() || order.back() != source.substr(at + 8))) {
            order.push_back(source.substr(at + 8));
        }
    }
    // The date of one appliance stands with that appliance, since each has its own.
    EXPECT_EQ(order, (std::vector<std::string>{"(i)", "(ii)", "(iii)", "(iv)", "(i)", "(v)", "(vi)", "(vii)",
                                               "(viii)", "(ix)"}));
}

// What a requirement depends on, said by itself; common practice, no source.
TEST_F(LandlordRecord, ARequirementIsAskedWhereWhatItDependsOnHolds) {
    const Requirement ofInspected{Item::FlueSeen, std::nullopt, "", When::Inspected};
    const Requirement leftOut{Item::GasRateRead, std::nullopt, "", When::WhenTyped};
    testing::enter(file, boiler, Item::ApplianceInspected, "inspected");
    EXPECT_TRUE(isAsked(ofInspected, boiler, file, none));
    EXPECT_FALSE(isAsked(leftOut, boiler, file, none));
    testing::enter(file, boiler, Item::ApplianceInspected, "visual_only");
    EXPECT_FALSE(isAsked(ofInspected, boiler, file, none));
}

TEST_F(LandlordRecord, ATenantsApplianceThatWasOnlyLookedAtForcesNoAnswer) {
    testing::enter(file, boiler, Item::ApplianceInspected, "visual_only");
    for (const auto item : {Item::CheckCovered, Item::ExaminedFlue, Item::ExaminedAir,
                            Item::ExaminedOperation, Item::FlameSeen, Item::FlueFlowTest}) {
        testing::takeOut(file, boiler, item);
    }
    EXPECT_THAT(missing(), IsEmpty());
    testing::takeOut(file, boiler, Item::SafeToUse);
    EXPECT_EQ(missing(), std::vector<std::string>{"appliance.safe_to_use"});
}

TEST_F(LandlordRecord, EveryApplianceThatStandsThereIsAccountedFor) {
    auto fire = file.appliances[0];
    fire.id = reg::ApplianceId{testing::sampleBytes(40)};
    file.appliances.push_back(fire);
    EXPECT_EQ(missing(), std::vector<std::string>{"appliance.inspected"});
    testing::enter(file, reg::subject(fire.id), Item::ApplianceInspected, "not_inspected");
    EXPECT_EQ(missing(), std::vector<std::string>{"appliance.not_inspected_why"});
    testing::enter(file, reg::subject(fire.id), Item::NotInspectedWhy, "tenant's furniture before it");
    EXPECT_THAT(missing(), IsEmpty());
}

TEST_F(LandlordRecord, SafeToUseIsDeclaredAndNeverWorkedOut) {
    EXPECT_EQ(missing(), std::vector<std::string>{});
    testing::takeOut(file, boiler, Item::SafeToUse);
    EXPECT_EQ(missing(), std::vector<std::string>{"appliance.safe_to_use"});
    file.situations.clear();
    const auto outcome = [&] { return outcomeOf(RecordKind::LandlordSafety, file, none); };
    EXPECT_EQ(outcome(), rulebook::Outcome::LookAgain);
    testing::enter(file, boiler, Item::SafeToUse, "no");
    EXPECT_EQ(outcome(), rulebook::Outcome::Fail);
    testing::enter(file, boiler, Item::SafeToUse, "yes");
    EXPECT_EQ(outcome(), rulebook::Outcome::Pass);
    testing::enter(file, boiler, Item::DefectsFound, "found");
    EXPECT_EQ(outcome(), rulebook::Outcome::LookAgain);
    testing::enter(file, boiler, Item::DefectsFound, "none_found");
    judging::Judged ratio;
    ratio.subject = boiler;
    ratio.finding.outcome = rulebook::Outcome::Fail;
    none.push_back(ratio);
    EXPECT_EQ(outcome(), rulebook::Outcome::Fail) << "a reading beyond its limit fails whatever was declared";
}

TEST_F(LandlordRecord, TheAgentStandsForTheLandlord) {
    file.people[1].role = reg::RoleKind::Agent;
    EXPECT_THAT(missing(), IsEmpty());
    file.people[1].role = reg::RoleKind::Tenant;
    EXPECT_EQ(missing(), (std::vector<std::string>{"landlord.name", "landlord.address"}));
}

TEST(KindsOfAVisit, FollowWhatTheVisitIs) {
    auto file = testing::sampleVisit();
    EXPECT_EQ(kindsOf(file), std::vector{RecordKind::TightnessAndPurge});
    testing::enter(file, reg::subject(file.visit.id), Item::VisitLandlordCheck, "yes");
    testing::enter(file, reg::subject(file.visit.id), Item::VisitService, "yes");
    EXPECT_EQ(kindsOf(file), (std::vector{RecordKind::LandlordSafety, RecordKind::Service}));
    file.situations = {testing::sampleSituation(file)};
    EXPECT_EQ(kindsOf(file).back(), RecordKind::WarningNotice);
    testing::enter(file, reg::subject(file.situations[0].id), Item::SituationReportable, "yes");
    EXPECT_EQ(kindsOf(file).back(), RecordKind::ReportableEntry);
}

TEST(WarningNoticeOutcome, IsAFailureUntilAllIsPutRight) {
    auto file = testing::visitOfKind(RecordKind::WarningNotice);
    const auto second = [&file] { return reg::subject(file.situations[1].id); };
    file.situations.push_back(file.situations[0]);
    file.situations[1].id = reg::SituationId{testing::sampleBytes(73)};
    const auto outcome = [&file] { return outcomeOf(RecordKind::WarningNotice, file, {}); };
    testing::enter(file, reg::subject(file.situations[0].id), Item::SituationMadeSafe, "put_right");
    testing::enter(file, second(), Item::SituationMadeSafe, "disconnected");
    EXPECT_EQ(outcome(), rulebook::Outcome::Fail);
    testing::enter(file, second(), Item::SituationMadeSafe, "put_right");
    EXPECT_EQ(outcome(), rulebook::Outcome::LookAgain);
    file.situations.clear();
    EXPECT_EQ(outcome(), rulebook::Outcome::Fail);
}

TEST(KindsOfAVisit, AServiceRecordSpeaksOfWhatWasServiced) {
    auto file = testing::visitOfKind(RecordKind::LandlordSafety);
    EXPECT_THAT(appliancesFor(RecordKind::Service, file), IsEmpty());
    testing::enter(file, reg::subject(file.appliances[0].id), Item::ServiceKind, "annual");
    EXPECT_EQ(appliancesFor(RecordKind::Service, file), file.appliances);
    EXPECT_THAT(appliancesFor(RecordKind::Commissioning, file), IsEmpty());
}

}  // namespace
}  // namespace hearth::record
