// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/csv.h"
#include "core/record/register_rows.h"

#include <functional>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

/// The firm's lists as tables for spreadsheets. Dates are ISO, numbers as typed, choices in words.
namespace hearth::exchange {

enum class ListKind { Premises, People, Appliances, Engineers, Instruments, Visits, Records, Changes };
[[nodiscard]] std::span<const ListKind> allListKinds();
/// "premises", "people" …
[[nodiscard]] std::string_view codeOf(ListKind kind);
[[nodiscard]] std::optional<ListKind> listKindFromCode(std::string_view code);

/// A column by a code that ui/words has a heading for. `number` counts columns that come several times
/// ("appliance 2"); 0: once.
struct ListColumn {
    std::string code;
    int number = 0;
    bool operator==(const ListColumn&) const = default;
};
struct ListTable {
    std::vector<ListColumn> columns;
    std::vector<std::vector<CsvCell>> rows;
};

/// An issued record, as its list shows it.
struct RecordRow {
    std::string number;
    int revision = 1;
    std::string kind;  // a RecordKind's code
    std::string issuedAt;
    std::string address;
    std::string customer;
    std::string outcome;  // an Outcome's code
    std::string replacedBy;
};
/// A line of the change log.
struct ChangeRow {
    std::string at;
    std::string by;
    std::string table;
    std::string row;
    std::string field;
    std::string before;
    std::string after;
};

/// The word for a code of a vocabulary ("country", "role", "party_kind", "instrument_kind", "gas", "flue",
/// "owner", "appliance_kind", "yes_no", "visit_state", "record_kind", "outcome"), in the caller's language.
using ListWording = std::function<std::string(std::string_view vocabulary, std::string_view code)>;

/// A row for each premises and installation, with who holds its roles today and its appliances. Where the key
/// lies stays out. Its English headings are such that the import knows each of them again.
[[nodiscard]] ListTable premisesTable(const record::RegisterRows& rows, calendar::Date today,
                                      const ListWording& word);
[[nodiscard]] ListTable peopleTable(const record::RegisterRows& rows, const ListWording& word);
[[nodiscard]] ListTable appliancesTable(const record::RegisterRows& rows, const ListWording& word);
[[nodiscard]] ListTable engineersTable(const record::RegisterRows& rows);
[[nodiscard]] ListTable instrumentsTable(const record::RegisterRows& rows, const ListWording& word);
[[nodiscard]] ListTable visitsTable(const record::RegisterRows& rows, const ListWording& word);
[[nodiscard]] ListTable recordsTable(const std::vector<RecordRow>& rows, const ListWording& word);
/// What access notes say stays out here too.
[[nodiscard]] ListTable changesTable(const std::vector<ChangeRow>& rows);

/// The table as a file: marked UTF-8, a row of headings, RFC 4180.
[[nodiscard]] std::string csvOf(const ListTable& table,
                                const std::function<std::string(const ListColumn&)>& heading);

}  // namespace hearth::exchange
