// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace hearth::exchange {

/// What an import has to say of a file or a row. ui/words has the sentences; the comment gives the arguments.
enum class ImportProblem {
    // of the file: it can't be taken as it is
    FileEmpty,        // -
    QuoteOpen,        // -
    NoAddressColumn,  // -
    // of the file: told
    LettersUnreadable,  // how many
    DateOrderUnclear,   // heading
    // the row can't be taken
    AddressMissing,  // -
    // doubts: the row is set aside until somebody says that it is right
    RowTooLong,           // the first cell that has no heading
    StrangeQuote,         // -
    NumberShortened,      // heading, cell ("1.00023E+11": the spreadsheet has dropped digits)
    GasUnknown,           // cell
    DateUnreadable,       // heading, cell
    DateInFuture,         // heading, cell
    InstallationUnclear,  // - (the premises has several)
    // notes: the row is taken
    PostcodeMissing,       // -
    PostcodeStrange,       // cell
    TownMissing,           // -
    UprnStrange,           // cell
    MprnStrange,           // cell
    TelephoneStrange,      // cell
    TelephoneZeroAdded,    // cell
    EmailStrange,          // cell
    CountryUnknown,        // cell
    DateSerial,            // cell, the date that it means (ISO)
    DateShortYear,         // cell, the date that it means (ISO)
    ApplianceKindUnclear,  // cell (kept in its notes)
    FlueUnknown,           // cell (kept in its notes)
    PartyWithoutName,      // role's code, what was given (kept in the access notes)
    MergeDiffers,          // field's code, what is kept, what the file has
    RoleHeld,              // role's code, who holds it, whom the file names
    CheckKnown,            // date (ISO): a visit of that day is there already
};

/// What a problem means for its row, or for the file.
enum class ProblemWeight { Note, Doubt, Refusal };

[[nodiscard]] ProblemWeight weightOf(ImportProblem problem);
/// Stable code: "address_missing".
[[nodiscard]] std::string_view codeOf(ImportProblem problem);
[[nodiscard]] std::span<const ImportProblem> allImportProblems();

struct ProblemAt {
    int line = 0;     // of the file; 0: of the file as a whole
    int column = -1;  // from 0; -1: of the row as a whole
    ImportProblem problem = ImportProblem::FileEmpty;
    std::vector<std::string> arguments;
    bool operator==(const ProblemAt&) const = default;
};

}  // namespace hearth::exchange
