// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/import_problem.h"

#include <array>

namespace hearth::exchange {
namespace {

struct ProblemInfo {
    ImportProblem problem;
    std::string_view code;
    ProblemWeight weight;
};

constexpr auto kNote = ProblemWeight::Note;
constexpr auto kDoubt = ProblemWeight::Doubt;
constexpr auto kRefusal = ProblemWeight::Refusal;

constexpr std::array kProblems{
    ProblemInfo{ImportProblem::FileEmpty, "file_empty", kRefusal},
    ProblemInfo{ImportProblem::QuoteOpen, "quote_open", kRefusal},
    ProblemInfo{ImportProblem::NoAddressColumn, "no_address_column", kRefusal},
    ProblemInfo{ImportProblem::LettersUnreadable, "letters_unreadable", kNote},
    ProblemInfo{ImportProblem::DateOrderUnclear, "date_order_unclear", kNote},
    ProblemInfo{ImportProblem::AddressMissing, "address_missing", kRefusal},
    ProblemInfo{ImportProblem::RowTooLong, "row_too_long", kDoubt},
    ProblemInfo{ImportProblem::StrangeQuote, "strange_quote", kDoubt},
    ProblemInfo{ImportProblem::NumberShortened, "number_shortened", kDoubt},
    ProblemInfo{ImportProblem::GasUnknown, "gas_unknown", kDoubt},
    ProblemInfo{ImportProblem::DateUnreadable, "date_unreadable", kDoubt},
    ProblemInfo{ImportProblem::DateInFuture, "date_in_future", kDoubt},
    ProblemInfo{ImportProblem::InstallationUnclear, "installation_unclear", kDoubt},
    ProblemInfo{ImportProblem::PostcodeMissing, "postcode_missing", kNote},
    ProblemInfo{ImportProblem::PostcodeStrange, "postcode_strange", kNote},
    ProblemInfo{ImportProblem::TownMissing, "town_missing", kNote},
    ProblemInfo{ImportProblem::UprnStrange, "uprn_strange", kNote},
    ProblemInfo{ImportProblem::MprnStrange, "mprn_strange", kNote},
    ProblemInfo{ImportProblem::TelephoneStrange, "telephone_strange", kNote},
    ProblemInfo{ImportProblem::TelephoneZeroAdded, "telephone_zero_added", kNote},
    ProblemInfo{ImportProblem::EmailStrange, "email_strange", kNote},
    ProblemInfo{ImportProblem::CountryUnknown, "country_unknown", kNote},
    ProblemInfo{ImportProblem::DateSerial, "date_serial", kNote},
    ProblemInfo{ImportProblem::DateShortYear, "date_short_year", kNote},
    ProblemInfo{ImportProblem::ApplianceKindUnclear, "appliance_kind_unclear", kNote},
    ProblemInfo{ImportProblem::FlueUnknown, "flue_unknown", kNote},
    ProblemInfo{ImportProblem::PartyWithoutName, "party_without_name", kNote},
    ProblemInfo{ImportProblem::MergeDiffers, "merge_differs", kNote},
    ProblemInfo{ImportProblem::RoleHeld, "role_held", kNote},
    ProblemInfo{ImportProblem::CheckKnown, "check_known", kNote},
};

constexpr std::array kProblemList = [] {
    std::array<ImportProblem, kProblems.size()> all{};
    for (std::size_t i = 0; i < all.size(); ++i) {
        all[i] = kProblems[i].problem;
    }
    return all;
}();

const ProblemInfo& infoOfProblem(ImportProblem problem) {
    return kProblems.at(static_cast<std::size_t>(problem));
}

}  // namespace

ProblemWeight weightOf(ImportProblem problem) {
    return infoOfProblem(problem).weight;
}
std::string_view codeOf(ImportProblem problem) {
    return infoOfProblem(problem).code;
}
std::span<const ImportProblem> allImportProblems() {
    return kProblemList;
}

}  // namespace hearth::exchange
