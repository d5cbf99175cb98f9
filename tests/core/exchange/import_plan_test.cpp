// SPDX-License-Identifier: GPL-3.0-or-later
// Invented spreadsheets; what is expected of each row was written down by hand.
#include "core/exchange/import_plan.h"

#include "tests/core/exchange/counting_ids.h"

#include <gtest/gtest.h>
#include <set>

namespace hearth::exchange {
namespace {

using reg::RoleKind;

ImportPlan planOf(const std::string& csv, const KnownRegister& known = {}, ImportChoices choices = {}) {
    const auto table = readCsv(csv);
    choices.columns = guessColumns(table);
    choices.remark = "taken over";
    choices.form.today = *calendar::fromIso("2026-11-25");
    static const auto kNewId = testing::countingIds();
    return planImport(table, choices, known, kNewId);
}

std::vector<std::string> codesAt(const ImportPlan& plan, int line) {
    std::vector<std::string> codes;
    for (const auto& problem : plan.problems) {
        if (problem.line == line) {
            codes.emplace_back(codeOf(problem.problem));
        }
    }
    return codes;
}

using Codes = std::vector<std::string>;

const std::string kFull =
    "Address,Town,Postcode,UPRN,Country,Keys,Landlord,Landlord tel,Landlord email,Tenant,Tenant "
    "mobile,Gas,MPRN,Meter "
    "serial,Meter location,Boiler type,Boiler make,Boiler model,Boiler serial,Boiler GC No,Boiler "
    "location,Boiler flue,Appliance 1,Appliance 1 make,Last check,Notes\r\n"
    "\"14 Larch Row, Headingley\",Leeds,ls14ab,100023336956,England,key safe,Bo Ash,0113 496 "
    "0000,bo@example.org,Cy "
    "Elm,07700 900123,natural gas,3938424403,G4A0001,hall,condensing "
    "boiler,Invented,Thirty,S1,00-000-01,kitchen,room "
    "sealed,hob,Other,25/11/2025,dog\r\n";

TEST(ImportPlan, takesEveryFieldOfARow) {
    const auto plan = planOf(kFull);
    ASSERT_FALSE(plan.blocked);
    EXPECT_EQ(codesAt(plan, 2), Codes{});
    ASSERT_EQ(plan.premises.size(), 1U);
    const auto& premises = plan.premises[0];
    EXPECT_EQ(premises.address, (reg::Address{"14 Larch Row", "Headingley", "Leeds", "LS1 4AB"}));
    EXPECT_EQ(premises.uprn, "100023336956");
    EXPECT_EQ(premises.accessNotes, "key safe\ndog");
    ASSERT_EQ(plan.parties.size(), 2U);
    ASSERT_EQ(plan.roles.size(), 2U);
    EXPECT_EQ(plan.parties[0].name, "Bo Ash");
    EXPECT_EQ(plan.parties[0].email, "bo@example.org");
    EXPECT_EQ(plan.roles[0].kind, RoleKind::Landlord);
    EXPECT_EQ(plan.roles[0].party, plan.parties[0].id);
    EXPECT_EQ(plan.roles[1].kind, RoleKind::Tenant);
    ASSERT_EQ(plan.installations.size(), 1U);
    EXPECT_EQ(plan.installations[0].mprn, "3938424403");
    EXPECT_EQ(plan.installations[0].meterPlace, "hall");
    ASSERT_EQ(plan.appliances.size(), 2U);
    EXPECT_EQ(plan.appliances[0].kind, "hotplate");
    EXPECT_EQ(plan.appliances[1].kind, "condensing_boiler");
    EXPECT_EQ(plan.appliances[1].gcNumber, "00-000-01");
    EXPECT_EQ(plan.appliances[1].flue, reg::FlueType::RoomSealed);
    EXPECT_EQ(plan.appliances[1].installation, plan.installations[0].id);
    ASSERT_EQ(plan.checks.size(), 1U);
    EXPECT_EQ(calendar::isoText(plan.checks[0].visit.date), "2025-11-25");
    EXPECT_TRUE(plan.checks[0].visit.closed);
    EXPECT_EQ(plan.checks[0].remark.text, "taken over");
    EXPECT_EQ(plan.newPremises, 1);
    EXPECT_EQ(plan.newParties, 2);
    EXPECT_EQ(plan.newAppliances, 2);
    EXPECT_EQ(plan.writes(), 9);
}

TEST(ImportPlan, saysWhatIsWrongRowByRow) {
    const auto plan = planOf(
        "Address,Town,Postcode,UPRN,Customer,Tel,Email,MPRN,Gas,Type,Flue,Last check\r\n"  // 1
        ",Leeds,LS1 4AB,,,,,,,,,\r\n"                                                      // 2
        "1 A St,,QQ1 1QQ,x,Bo,496,bo at home,1234567890,,boiler,through wall,\r\n"         // 3
        "2 A St,Leeds,LS1 4AB,1.00023E+11,,,,,,,,\r\n"                                     // 4
        "3 A St,Leeds,LS1 4AB,,,,,,LPG,,,\r\n"                                             // 5
        "4 A St,Leeds,LS1 4AB,,,,,,,,,31/02/2025\r\n"                                      // 6
        "5 A St,Leeds,LS1 4AB,,,,,,,,,25/12/2026\r\n"                                      // 7
        "6 A St,Leeds,LS1 4AB,,Cy,7700900123,,,,,,45231\r\n"                               // 8
        "7 A St,Leeds,LS1 4AB,,,0113 496 0000,,,,,,25/11/25\r\n"                           // 9
        "8 A St,Leeds,LS1 4AB,,,,,,,,,,stray\r\n"                                          // 10
        ",,,,,,,,,,,\r\n"                                                                  // 11
        "\"9\" A St,Leeds,\"LS1 4AB\",,,,,,,,,\r\n");                                      // 12
    EXPECT_EQ(codesAt(plan, 2), Codes{"address_missing"});
    EXPECT_EQ(codesAt(plan, 3),
              (Codes{"postcode_strange", "uprn_strange", "telephone_strange", "email_strange", "mprn_strange",
                     "flue_unknown", "town_missing", "appliance_kind_unclear"}));
    EXPECT_EQ(codesAt(plan, 4), Codes{"number_shortened"});
    EXPECT_EQ(codesAt(plan, 5), Codes{"gas_unknown"});
    EXPECT_EQ(codesAt(plan, 6), Codes{"date_unreadable"});
    EXPECT_EQ(codesAt(plan, 7), Codes{"date_in_future"});
    EXPECT_EQ(codesAt(plan, 8), (Codes{"telephone_zero_added", "date_serial"}));
    EXPECT_EQ(codesAt(plan, 9), (Codes{"date_short_year", "party_without_name"}));
    EXPECT_EQ(codesAt(plan, 10), Codes{"row_too_long"});
    EXPECT_EQ(codesAt(plan, 12), (Codes{"strange_quote", "postcode_missing"}))
        << "the town is in the first cell";
    std::vector<RowFate> fates;
    for (const auto& row : plan.rows) {
        fates.push_back(row.fate);
    }
    EXPECT_EQ(fates, (std::vector{RowFate::Refused, RowFate::New, RowFate::SetAside, RowFate::SetAside,
                                  RowFate::SetAside, RowFate::SetAside, RowFate::New, RowFate::New,
                                  RowFate::SetAside, RowFate::SetAside}));
    ASSERT_EQ(plan.premises.size(), 3U);
    EXPECT_EQ(plan.premises[2].accessNotes, "0113 496 0000");
    EXPECT_EQ(plan.parties[1].telephone, "07700900123");
    EXPECT_EQ(plan.appliances[0].kind, "");
    EXPECT_EQ(plan.appliances[0].notes, "boiler\nthrough wall");
}

TEST(ImportPlan, takesDoubtfulRowsWhenTold) {
    ImportChoices choices;
    choices.rows = {{2, RowChoice::Take}, {3, RowChoice::LeaveOut}};
    const auto plan =
        planOf("Address,Postcode,Gas\r\n1 A St,LS1 4AB,LPG\r\n2 A St,LS1 4AB,mains\r\n", {}, choices);
    EXPECT_EQ(plan.rows[0].fate, RowFate::New);
    EXPECT_EQ(plan.rows[1].fate, RowFate::LeftOut);
    EXPECT_EQ(plan.premises.size(), 1U);
}

TEST(ImportPlan, asksAboutTheFileAsAWhole) {
    const auto codes = [](const ImportPlan& plan) { return codesAt(plan, 0); };
    EXPECT_EQ(codes(planOf("")), Codes{"file_empty"});
    EXPECT_TRUE(planOf("Address,Town\r\n").blocked);
    const auto noAddress = planOf("Name,Postcode\r\nBo,LS1 4AB\r\n");
    EXPECT_TRUE(noAddress.blocked);
    EXPECT_EQ(codes(noAddress), Codes{"no_address_column"});
    EXPECT_EQ(noAddress.writes(), 0);
    const auto open = planOf("Address,Town\r\n1 A St,Leeds\r\n2 A St,\"Leeds\r\n3 A St,Leeds\r\n");
    EXPECT_TRUE(open.blocked);
    EXPECT_EQ(codesAt(open, 3), (Codes{"quote_open", "postcode_missing"}));
    EXPECT_EQ(open.writes(), 0);
    EXPECT_EQ(codes(planOf("Address,Last check\r\n1 A St,03/04/2026\r\n")), Codes{"date_order_unclear"});
    ImportChoices monthFirst;
    monthFirst.dateOrder = DateOrder::MonthFirst;
    const auto told = planOf("Address,Last check\r\n1 A St,03/04/2026\r\n", {}, monthFirst);
    EXPECT_EQ(codes(told), Codes{});
    EXPECT_EQ(calendar::isoText(told.checks[0].visit.date), "2026-03-04");
}

/// One row for each appliance of the same premises, and the same landlord in each.
TEST(ImportPlan, mergesRowsOfTheSamePremises) {
    const auto plan = planOf(
        "Address,Town,Postcode,Landlord,Landlord tel,Make,Model,Serial\r\n"
        "1 A St,Leeds,LS1 4AB,Bo Ash,0113 496 0000,Invented,Thirty,S1\r\n"
        "\"1, A Street\",,LS14AB,Bo Ash,+44 113 496 0000,Invented,Forty,S2\r\n"
        "1 A St,York,LS1 4AB,Di Fir,0113 496 0001,Invented,Thirty,S1\r\n"
        "2 A St,Leeds,LS1 4AB,BO ASH,(0113) 4960000,,,\r\n");
    EXPECT_EQ(plan.rows[1].fate, RowFate::Merged);
    EXPECT_EQ(plan.rows[1].met->line, 2);
    EXPECT_EQ(plan.rows[2].fate, RowFate::Merged);
    EXPECT_EQ(codesAt(plan, 4), (Codes{"merge_differs", "role_held"}));
    EXPECT_EQ(plan.premises.size(), 2U);
    EXPECT_EQ(plan.premises[0].address.town, "Leeds");
    EXPECT_EQ(plan.appliances.size(), 2U);
    EXPECT_EQ(plan.parties.size(), 1U);
    EXPECT_EQ(plan.roles.size(), 2U);
    EXPECT_EQ(plan.installations.size(), 1U);
}

KnownRegister store() {
    const auto newId = testing::countingIds();
    KnownRegister known;
    reg::Premises premises;
    premises.id = reg::PremisesId{newId()};
    premises.address = {"1 A Street", "", "Leeds", "LS1 4AB"};
    known.premises.push_back(premises);
    reg::Premises uprn;
    uprn.id = reg::PremisesId{newId()};
    uprn.address = {"Old Barn", "", "Otley", ""};
    uprn.uprn = "000123456";
    known.premises.push_back(uprn);
    reg::Installation installation;
    installation.id = reg::InstallationId{newId()};
    installation.premises = uprn.id;
    installation.mprn = "3938424403";
    known.installations.push_back(installation);
    reg::Party party;
    party.id = reg::PartyId{newId()};
    party.name = "Bo Ash";
    party.telephone = "0113 496 0000";
    known.parties.push_back(party);
    known.roles.push_back({reg::RoleId{newId()}, premises.id, party.id, RoleKind::Landlord});
    known.visits.emplace_back(uprn.id, *calendar::fromIso("2025-11-25"));
    return known;
}

TEST(ImportPlan, meetsTheStore) {
    const auto known = store();
    const auto plan = planOf(
        "Address,Town,Postcode,UPRN,MPRN,Landlord,Landlord tel,Landlord email,Last check\r\n"
        "1 A St,York,LS1 4AB,77,,Bo Ash,,bo@example.org,\r\n"
        "Barn,Otley,LS21 1AA,123456,,,,,25/11/2025\r\n"
        "The Barn,Otley,,,3938424403,,,,26/11/2024\r\n"
        "9 B St,Otley,LS21 1AB,,,Bo Ash,0113 4960000,,\r\n",
        known);
    ASSERT_EQ(plan.rows.size(), 4U);
    EXPECT_EQ(plan.rows[0].met->by, MetBy::PostcodeAndNumber);
    EXPECT_EQ(plan.rows[0].met->line, 0);
    EXPECT_EQ(plan.rows[1].met->by, MetBy::Uprn);
    EXPECT_EQ(plan.rows[2].met->by, MetBy::Mprn);
    EXPECT_EQ(plan.rows[3].fate, RowFate::New);
    EXPECT_EQ(codesAt(plan, 2), Codes{"merge_differs"}) << "the town; the UPRN was empty";
    EXPECT_EQ(codesAt(plan, 3), (Codes{"merge_differs", "check_known"})) << "Barn against Old Barn";
    ASSERT_EQ(plan.premises.size(), 3U);
    EXPECT_EQ(plan.premises[0].id, known.premises[0].id);
    EXPECT_EQ(plan.premises[0].address.town, "Leeds") << "what is there is never written over";
    EXPECT_EQ(plan.premises[0].uprn, "77");
    EXPECT_EQ(plan.premises[1].address.postcode, "LS21 1AA");
    ASSERT_EQ(plan.parties.size(), 1U);
    EXPECT_EQ(plan.parties[0].id, known.parties[0].id);
    EXPECT_EQ(plan.parties[0].email, "bo@example.org");
    EXPECT_EQ(plan.parties[0].telephone, "0113 496 0000");
    ASSERT_EQ(plan.roles.size(), 1U);
    EXPECT_EQ(plan.roles[0].party, known.parties[0].id);
    ASSERT_EQ(plan.checks.size(), 1U);
    EXPECT_EQ(plan.checks[0].visit.installation, known.installations[0].id);
    EXPECT_EQ(plan.newPremises, 1);
    EXPECT_EQ(plan.changedPremises, 2);
}

TEST(ImportPlan, doesWithDuplicatesAsItIsTold) {
    const std::string csv = "Address,Postcode\r\n1 A St,LS1 4AB\r\n1 A St,LS1 4AB\r\n1 A St,LS1 4AB\r\n";
    ImportChoices choices;
    choices.duplicates = DuplicateChoice::KeepBoth;
    choices.duplicatesByLine = {{3, DuplicateChoice::Skip}, {4, DuplicateChoice::Merge}};
    const auto plan = planOf(csv, store(), choices);
    EXPECT_EQ(plan.rows[0].fate, RowFate::KeptBoth);
    EXPECT_EQ(plan.rows[1].fate, RowFate::Skipped);
    EXPECT_EQ(plan.rows[2].fate, RowFate::Merged);
    EXPECT_EQ(plan.newPremises, 1);
}

TEST(ImportPlan, setsAsideWhatCouldBelongToSeveralInstallations) {
    auto known = store();
    reg::Installation second = known.installations[0];
    second.id.bytes[0] = 9;
    second.mprn = "3226987202";
    known.installations.push_back(second);
    const auto plan = planOf(
        "Address,UPRN,MPRN,Meter "
        "location\r\nBarn,123456,,hall\r\nBarn,123456,3226987202,hall\r\nBarn,123456,,\r\n",
        known);
    EXPECT_EQ(plan.rows[0].fate, RowFate::SetAside);
    EXPECT_EQ(codesAt(plan, 2).back(), "installation_unclear");
    EXPECT_EQ(plan.rows[1].fate, RowFate::Merged);
    EXPECT_EQ(plan.rows[2].fate, RowFate::Merged);
    ASSERT_EQ(plan.installations.size(), 1U);
    EXPECT_EQ(plan.installations[0].id, second.id);
}

/// A tenant called as another one is somebody else; a landlord without a telephone is not.
TEST(ImportPlan, keepsPeopleApartWhoOnlyShareAName) {
    const auto plan = planOf(
        "Address,Landlord,Tenant,Tenant tel\r\n1 A St,Bo Ash,J Smith,\r\n2 A St,Bo Ash,J Smith,\r\n3 A "
        "St,Acme Homes Ltd,J "
        "Smith,07700 900123\r\n4 A St,Acme Homes Ltd,J Smith,07700 900456\r\n5 A St,,J Smith,07700 900 "
        "123\r\n");
    std::multiset<std::string> names;
    for (const auto& party : plan.parties) {
        names.insert(party.name);
    }
    EXPECT_EQ(names.count("Bo Ash"), 1U);
    EXPECT_EQ(names.count("Acme Homes Ltd"), 1U);
    EXPECT_EQ(names.count("J Smith"), 4U);
    EXPECT_EQ(plan.roles.size(), 9U);
}

/// Takes what is saved, and fails where it is told to.
struct Target : ImportTarget {
    Result<void> save(const reg::Party&) override { return next(); }
    Result<void> save(const reg::Premises&) override { return next(); }
    Result<void> save(const reg::Role&) override { return next(); }
    Result<void> save(const reg::Installation&) override { return next(); }
    Result<void> save(const reg::Appliance&) override { return next(); }
    Result<void> save(const PlannedCheck&) override { return next(); }
    Result<void> next() { return ++saved == failAt ? fail(ErrorCode::StoreFull, {"x"}) : Result<void>(); }
    int saved = 0;
    int failAt = 0;
};

TEST(ImportPlan, isWrittenWholeOrStopped) {
    const auto plan = planOf(kFull);
    Target all;
    std::vector<int> steps;
    EXPECT_TRUE(writeImport(plan, all, [&](int done, int of) {
                    EXPECT_EQ(of, 9);
                    steps.push_back(done);
                    return true;
                }).has_value());
    EXPECT_EQ(all.saved, 9);
    EXPECT_EQ(steps, (std::vector{0, 1, 2, 3, 4, 5, 6, 7, 8}));
    Target stopped;
    const auto result = writeImport(plan, stopped, [](int done, int) { return done < 4; });
    EXPECT_EQ(result.error().code, ErrorCode::ImportStopped);
    EXPECT_EQ(stopped.saved, 4);
    Target full;
    full.failAt = 6;
    EXPECT_EQ(writeImport(plan, full, {}).error().code, ErrorCode::StoreFull);
    EXPECT_EQ(full.saved, 6);
}

TEST(ImportPlan, hasACodeAndAWeightForEachProblem) {
    std::set<std::string_view> codes;
    for (const auto problem : allImportProblems()) {
        EXPECT_TRUE(codes.insert(codeOf(problem)).second);
    }
    EXPECT_EQ(codes.size(), 30U);
    EXPECT_EQ(weightOf(ImportProblem::CheckKnown), ProblemWeight::Note);
    EXPECT_EQ(codeOf(ImportProblem::CheckKnown), "check_known");
}

}  // namespace
}  // namespace hearth::exchange
