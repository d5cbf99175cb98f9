// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/lists.h"

#include "tests/core/exchange/counting_ids.h"

#include <gtest/gtest.h>

namespace hearth::exchange {
namespace {

std::string asCode(std::string_view vocabulary, std::string_view code) {
    return std::string(vocabulary) + ":" + std::string(code);
}

/// The cell of a row by its column.
std::string cellOf(const ListTable& table, std::size_t row, const ListColumn& column) {
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        if (table.columns[i] == column) {
            return table.rows.at(row).at(i).text;
        }
    }
    return "no column " + column.code;
}

struct Lists : ::testing::Test {
    void SetUp() override {
        const auto newId = testing::countingIds();
        rows.parties = {{}, {}};
        rows.parties[0].id = reg::PartyId{newId()};
        rows.parties[0].name = "Bo Ash";
        rows.parties[0].telephone = "+44 113 496 0000";
        rows.parties[0].notes = "secret";
        rows.parties[1].id = reg::PartyId{newId()};
        rows.parties[1].name = "=Cy Elm";
        rows.premises = {{}, {}};
        rows.premises[0].id = reg::PremisesId{newId()};
        rows.premises[0].address = {"14 Larch Row", "", "Leeds", "LS1 4AB"};
        rows.premises[0].accessNotes = "secret";
        rows.premises[1].id = reg::PremisesId{newId()};
        rows.premises[1].address.line1 = "Old Barn";
        rows.roles.push_back(
            {reg::RoleId{newId()}, rows.premises[0].id, rows.parties[0].id, reg::RoleKind::Landlord});
        rows.roles.push_back({reg::RoleId{newId()},
                              rows.premises[0].id,
                              rows.parties[1].id,
                              reg::RoleKind::Tenant,
                              {},
                              date("2026-01-31")});
        for (int i = 0; i < 2; ++i) {
            reg::Installation installation;
            installation.id = reg::InstallationId{newId()};
            installation.premises = rows.premises[0].id;
            installation.name = i == 0 ? "shop" : "flat";
            rows.installations.push_back(installation);
        }
        for (int i = 0; i < 3; ++i) {
            reg::Appliance appliance;
            appliance.id = reg::ApplianceId{newId()};
            appliance.installation = rows.installations[0].id;
            appliance.make = std::string("Make ") + static_cast<char>('A' + i);
            appliance.netInput = *quantity::parseTyped("24.5 kW", quantity::UnitFamily::Power);
            if (i == 1) {
                appliance.removedOn = date("2025-01-01");
            }
            rows.appliances.push_back(appliance);
        }
        rows.visits = {{}, {}};
        rows.visits[0].premises = rows.premises[0].id;
        rows.visits[0].date = date("2025-11-25");
        rows.visits[1].premises = rows.premises[0].id;
        rows.visits[1].date = date("2024-11-25");
    }
    static calendar::Date date(const char* iso) { return *calendar::fromIso(iso); }
    record::RegisterRows rows;
};

TEST_F(Lists, ofPremisesHaveARowForEachInstallation) {
    const auto table = premisesTable(rows, date("2026-11-25"), asCode);
    ASSERT_EQ(table.rows.size(), 3U);
    for (const auto& row : table.rows) {
        EXPECT_EQ(row.size(), table.columns.size());
    }
    EXPECT_EQ(cellOf(table, 0, {"line1"}), "14 Larch Row");
    EXPECT_EQ(cellOf(table, 0, {"landlord_telephone"}), "+44 113 496 0000");
    EXPECT_EQ(cellOf(table, 0, {"tenant_name"}), "") << "moved out";
    EXPECT_EQ(cellOf(premisesTable(rows, date("2026-01-31"), asCode), 0, {"tenant_name"}), "=Cy Elm");
    EXPECT_EQ(cellOf(table, 0, {"last_visit"}), "2025-11-25");
    EXPECT_EQ(cellOf(table, 0, {"appliance_make", 1}), "Make A");
    EXPECT_EQ(cellOf(table, 0, {"appliance_make", 2}), "Make C") << "the one between was removed";
    EXPECT_EQ(cellOf(table, 1, {"installation_name"}), "flat");
    EXPECT_EQ(cellOf(table, 1, {"appliance_make", 1}), "");
    EXPECT_EQ(cellOf(table, 2, {"line1"}), "Old Barn");
    EXPECT_EQ(cellOf(table, 2, {"gas"}), "");
    EXPECT_EQ(cellOf(table, 0, {"country"}), "country:england");
}

TEST_F(Lists, keepWhatIsPrivateAndMakeFormulasHarmless) {
    const auto heading = [](const ListColumn& column) { return column.code; };
    for (const auto& table : {premisesTable(rows, date("2026-01-01"), asCode), peopleTable(rows, asCode),
                              changesTable({{"", "", "premises", "", "access_notes", "secret", "secret"}})}) {
        const std::string csv = csvOf(table, heading);
        EXPECT_EQ(csv.substr(0, 3), kUtf8Mark);
        EXPECT_EQ(csv.find("secret"), std::string::npos);
        EXPECT_EQ(csv.find(",=Cy"), std::string::npos);
        const auto read = readCsv(csv);
        ASSERT_EQ(read.rows.size(), table.rows.size() + 1);
        EXPECT_EQ(read.rows[0].cells.size(), table.columns.size());
    }
    EXPECT_NE(csvOf(peopleTable(rows, asCode), heading).find("\r\n'=Cy Elm,"), std::string::npos);
    EXPECT_NE(csvOf(peopleTable(rows, asCode), heading).find("'+44 113 496 0000"), std::string::npos);
}

TEST_F(Lists, haveHeadingsWithoutRows) {
    const record::RegisterRows none;
    for (const auto& table :
         {premisesTable(none, date("2026-01-01"), asCode), peopleTable(none, asCode),
          appliancesTable(none, asCode), engineersTable(none), instrumentsTable(none, asCode),
          visitsTable(none, asCode), recordsTable({}, asCode), changesTable({})}) {
        EXPECT_GT(table.columns.size(), 3U);
        EXPECT_TRUE(table.rows.empty());
    }
}

TEST_F(Lists, showAppliancesWhereTheyStand) {
    const auto table = appliancesTable(rows, asCode);
    ASSERT_EQ(table.rows.size(), 3U);
    EXPECT_EQ(cellOf(table, 1, {"removed_on"}), "2025-01-01");
    EXPECT_EQ(cellOf(table, 0, {"postcode"}), "LS1 4AB");
    EXPECT_EQ(cellOf(table, 0, {"net_input"}), "24.5");
    EXPECT_EQ(cellOf(table, 0, {"net_input_unit"}), "kW");
    EXPECT_EQ(cellOf(table, 0, {"gross_input_unit"}), "");
}

TEST_F(Lists, showTheFirmAndItsWork) {
    reg::Engineer engineer;
    engineer.id.bytes[0] = 1;
    engineer.name = "E. Fitter";
    rows.engineers.push_back(engineer);
    rows.competences.push_back({{}, engineer.id, "CCN1", date("2027-01-01"), {}});
    rows.competences.push_back({{}, engineer.id, "CKR1", {}, "soon"});
    EXPECT_EQ(cellOf(engineersTable(rows), 0, {"competences"}), "CCN1 (2027-01-01); CKR1 (soon)");
    reg::Instrument instrument;
    instrument.resolution = *quantity::parseTyped("-0.01 mbar", quantity::UnitFamily::Pressure);
    rows.instruments.push_back(instrument);
    const auto instruments = instrumentsTable(rows, asCode);
    EXPECT_NE(csvOf(instruments, [](const ListColumn& c) { return c.code; }).find(",-0.01,mbar,"),
              std::string::npos)
        << "a negative number stays one";
    rows.visits[0].engineer = engineer.id;
    rows.visits[0].closed = true;
    const auto visits = visitsTable(rows, asCode);
    EXPECT_EQ(cellOf(visits, 0, {"engineer"}), "E. Fitter");
    EXPECT_EQ(cellOf(visits, 0, {"visit_state"}), "visit_state:closed");
    const auto records = recordsTable(
        {{"BCD-000001", 2, "k", "2026-11-25T10:00:00Z", "14 Larch Row", "Bo", "pass", ""}}, asCode);
    EXPECT_EQ(cellOf(records, 0, {"revision"}), "2");
    EXPECT_EQ(cellOf(records, 0, {"outcome"}), "outcome:pass");
}

TEST(ListKinds, haveCodesThatComeBack) {
    for (const auto kind : allListKinds()) {
        EXPECT_EQ(listKindFromCode(codeOf(kind)), kind);
    }
    EXPECT_EQ(listKindFromCode("everything"), std::nullopt);
}

}  // namespace
}  // namespace hearth::exchange
