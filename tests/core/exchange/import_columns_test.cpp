// SPDX-License-Identifier: GPL-3.0-or-later
// Which headings spreadsheets of the trade have: common practice, no source.
#include "core/exchange/import_columns.h"

#include <gtest/gtest.h>
#include <set>

namespace hearth::exchange {
namespace {

using Field = ImportField;
using reg::RoleKind;

struct Heading {
    const char* text;
    ColumnTarget target;
};

ColumnTarget of(Field field, RoleKind role = RoleKind::Customer) {
    ColumnTarget target;
    target.field = field;
    target.role = role;
    return target;
}

ColumnTarget appliance(Field field, int group, const char* noun = "") {
    ColumnTarget target;
    target.field = field;
    target.group = group;
    target.noun = noun;
    return target;
}

void expectTargets(const std::vector<Heading>& headings) {
    for (const auto& heading : headings) {
        const auto found = targetOfHeading(heading.text);
        EXPECT_EQ(found, heading.target)
            << heading.text << ": " << codeOf(found.field) << ' ' << reg::codeOf(found.role) << ' '
            << found.group << ' ' << found.noun;
    }
}

TEST(ImportColumns, knowEnglishHeadings) {
    expectTargets({
        {"Address", of(Field::Address)},
        {"Property Address", of(Field::Address)},
        {"ADDRESS LINE 1", of(Field::Line1)},
        {"Address 2", of(Field::Line2)},
        {"House No.", of(Field::HouseNumber)},
        {"Post Code", of(Field::Postcode)},
        {"Town/City", of(Field::Town)},
        {"UPRN", of(Field::Uprn)},
        {"Keys", of(Field::AccessNotes)},
        {"Date of last check", of(Field::LastCheck)},
        {"Last gas safety check", of(Field::LastCheck)},
        {"Meter Serial No", of(Field::MeterSerial)},
        {"MPRN", of(Field::Mprn)},
        {"Tel.", of(Field::PartyTelephone)},
        {"E-mail", of(Field::PartyEmail)},
        {"Landlord", of(Field::PartyName, RoleKind::Landlord)},
        {"Landlord's name", of(Field::PartyName, RoleKind::Landlord)},
        {"Landlord Tel", of(Field::PartyTelephone, RoleKind::Landlord)},
        {"Landlord postcode", of(Field::PartyPostcode, RoleKind::Landlord)},
        {"Letting agent email", of(Field::PartyEmail, RoleKind::Agent)},
        {"Tenant First Name", of(Field::PartyFirstName, RoleKind::Tenant)},
        {"Contract-holder name", of(Field::PartyName, RoleKind::Tenant)},
        {"Home owner", of(Field::PartyName, RoleKind::HomeOwner)},
        {"Owner", of(Field::PartyName, RoleKind::Landlord)},
        {"Appliance 1 make", appliance(Field::ApplianceMake, 1)},
        {"Appliance 2 - Model", appliance(Field::ApplianceModel, 2)},
        {"Appliance2 serial number", appliance(Field::ApplianceSerial, 2)},
        {"Appliance 3", appliance(Field::ApplianceKind, 3)},
        {"Make 2", appliance(Field::ApplianceMake, 2)},
        {"GC No", appliance(Field::ApplianceGc, 1)},
        {"Boiler make", appliance(Field::ApplianceMake, 1, "boiler")},
        {"Boiler", appliance(Field::ApplianceModel, 1, "boiler")},
        {"Fire 2 model", appliance(Field::ApplianceModel, 2, "fire")},
    });
}

TEST(ImportColumns, knowWelshAndPolishHeadings) {
    expectTargets({
        {"Cyfeiriad", of(Field::Address)},
        {"Cod post", of(Field::Postcode)},
        {"Enw'r landlord", of(Field::Ignored)},
        {"Enw landlord", of(Field::PartyName, RoleKind::Landlord)},
        {"Rhif ffôn", of(Field::PartyTelephone)},
        {"Dyddiad gwiriad diwethaf", of(Field::LastCheck)},
        {"Gwneuthuriad boeler", appliance(Field::ApplianceMake, 1, "boeler")},
        {"Adres", of(Field::Address)},
        {"Kod pocztowy", of(Field::Postcode)},
        {"Imię i nazwisko najemcy", of(Field::PartyName, RoleKind::Tenant)},
        {"Nr telefonu właściciela", of(Field::PartyTelephone, RoleKind::Landlord)},
        {"Ostatni przegląd", of(Field::LastCheck)},
        {"Numer seryjny", appliance(Field::ApplianceSerial, 1)},
    });
}

TEST(ImportColumns, leaveWhatIsNoneOfOurs) {
    expectTargets({
        {"Invoice no", of(Field::Ignored)},
        {"Price", of(Field::Ignored)},
        {"Paid?", of(Field::Ignored)},
        {"", of(Field::Ignored)},
    });
}

TEST(ImportColumns, findTheRowOfHeadings) {
    const auto table =
        readCsv("Our properties,,\r\nas of May,,\r\nAddress,Postcode,Landlord\r\n1 A St,LS1 4AB,Bo\r\n");
    const auto columns = guessColumns(table);
    EXPECT_EQ(columns.headerRow, 2U);
    EXPECT_EQ(columns.targets, (std::vector{of(Field::Address), of(Field::Postcode),
                                            of(Field::PartyName, RoleKind::Landlord)}));
    EXPECT_TRUE(guessColumns(CsvTable{}).targets.empty());
    EXPECT_EQ(guessColumns(readCsv("1,2\r\n3,4,5\r\n")).targets, std::vector<ColumnTarget>(3));
}

TEST(ImportColumns, giveNoTargetTwiceButTelephonesAndNotes) {
    const auto columns = guessColumns(readCsv("Address,Property,Tel,Mobile,Notes,Comments\r\n"));
    EXPECT_EQ(columns.targets, (std::vector{of(Field::Address), of(Field::Ignored), of(Field::PartyTelephone),
                                            of(Field::PartyTelephone), of(Field::Notes), of(Field::Notes)}));
}

TEST(ImportColumns, giveEachNounItsGroup) {
    const auto columns = guessColumns(readCsv("Address,Make,Boiler make,Boiler model,Fire make\r\n"));
    EXPECT_EQ(columns.targets, (std::vector{of(Field::Address), appliance(Field::ApplianceMake, 1),
                                            appliance(Field::ApplianceMake, 2, "boiler"),
                                            appliance(Field::ApplianceModel, 2, "boiler"),
                                            appliance(Field::ApplianceMake, 3, "fire")}));
}

TEST(ImportColumns, haveCodesThatComeBack) {
    std::set<std::string_view> codes;
    for (const auto field : allImportFields()) {
        EXPECT_EQ(importFieldFromCode(codeOf(field)), field);
        EXPECT_TRUE(codes.insert(codeOf(field)).second);
    }
    EXPECT_EQ(importFieldFromCode("colour"), std::nullopt);
}

}  // namespace
}  // namespace hearth::exchange
