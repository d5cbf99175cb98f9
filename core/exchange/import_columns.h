// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/csv.h"
#include "core/register/model.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

/// Which column of somebody's spreadsheet holds what.
namespace hearth::exchange {

enum class ImportField {
    Ignored,
    // the premises
    Address,  // all of it in one cell: it is split
    HouseNumber,
    Line1,
    Line2,
    Line3,
    Town,
    Postcode,
    Uprn,
    Country,
    AccessNotes,
    Notes,
    LastCheck,
    // its installation
    Gas,
    Mprn,
    MeterSerial,
    MeterPlace,
    // somebody in the column's role
    PartyName,
    PartyTitle,
    PartyFirstName,
    PartySurname,
    PartyTelephone,
    PartyEmail,
    PartyAddress,
    PartyTown,
    PartyPostcode,
    // an appliance of the column's group
    ApplianceKind,
    ApplianceMake,
    ApplianceModel,
    ApplianceSerial,
    ApplianceGc,
    AppliancePlace,
    ApplianceFlue,
};

[[nodiscard]] bool isOfParty(ImportField field);
[[nodiscard]] bool isOfAppliance(ImportField field);
/// All of them, in order.
[[nodiscard]] std::span<const ImportField> allImportFields();
/// Stable code: "party_name".
[[nodiscard]] std::string_view codeOf(ImportField field);
[[nodiscard]] std::optional<ImportField> importFieldFromCode(std::string_view code);

/// What a column is for.
struct ColumnTarget {
    ImportField field = ImportField::Ignored;
    reg::RoleKind role = reg::RoleKind::Customer;  // for those of a party
    int group = 1;                                 // for those of an appliance, from 1
    std::string noun = {};  // "boiler" where the heading names the appliance so; else empty
    bool operator==(const ColumnTarget&) const = default;
};

struct ImportColumns {
    std::size_t headerRow = 0;          // which of the table's rows holds the headings; data begin after it
    std::vector<ColumnTarget> targets;  // one a column
    bool operator==(const ImportColumns&) const = default;
};

/// Guesses by the headings, in English, Welsh and Polish: the row of headings is the one of the first rows
/// with most headings that are known. No two columns get the same target; what is not known is ignored.
/// Checked: import_columns_test.cpp.
[[nodiscard]] ImportColumns guessColumns(const CsvTable& table);
/// One heading by itself.
[[nodiscard]] ColumnTarget targetOfHeading(std::string_view heading);

}  // namespace hearth::exchange
