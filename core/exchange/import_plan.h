// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/exchange/import_columns.h"
#include "core/exchange/import_problem.h"
#include "core/exchange/import_row.h"
#include "core/record/register_rows.h"
#include "core/register/appliance.h"

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

/// What taking over somebody's spreadsheet would do: worked out whole before a byte is written, from the
/// table and from what the firm keeps already. Pure.
namespace hearth::exchange {

/// What the firm keeps already, as far as an import can meet it.
struct KnownRegister {
    std::vector<reg::Party> parties;
    std::vector<reg::Premises> premises;
    std::vector<reg::Role> roles;  // those that stand today
    std::vector<reg::Installation> installations;
    std::vector<reg::Appliance> appliances;
    std::vector<std::pair<reg::PremisesId, calendar::Date>> visits;
};

/// `today` decides which roles stand.
[[nodiscard]] KnownRegister knownFrom(const record::RegisterRows& rows, calendar::Date today);

/// What happens to a row whose premises is there already, in the store or in an earlier row.
enum class DuplicateChoice {
    Merge,  // fills fields that are empty; adds appliances and people that are not there
    KeepBoth,
    Skip,
};
/// What is done with a row that has doubts.
enum class RowChoice { SetAside, Take, LeaveOut };

struct ImportChoices {
    ImportColumns columns;
    RowForm form;  // its orders of dates are guessed where `dateOrder` does not say them
    std::optional<DateOrder> dateOrder;
    DuplicateChoice duplicates = DuplicateChoice::Merge;
    std::map<int, DuplicateChoice> duplicatesByLine;
    std::map<int, RowChoice> rows;  // by line
    std::string remark;             // of the visits that stand for earlier checks: "taken over from …"
};

enum class MetBy { PostcodeAndNumber, Uprn, Mprn };
/// A premises that a row met.
struct Met {
    reg::PremisesId premises;
    MetBy by = MetBy::PostcodeAndNumber;
    int line = 0;  // the earlier row; 0: it is in the store
};

enum class RowFate { New, Merged, KeptBoth, Skipped, SetAside, LeftOut, Refused };

struct PlannedRow {
    int line = 0;
    RowFate fate = RowFate::New;
    reg::Premises premises;  // as the row reads it
    std::optional<Met> met;
    std::vector<std::size_t> problems;  // in ImportPlan::problems
};

/// A check done before the firm used this program: a closed visit with that date, and a remark that says
/// where it comes from.
struct PlannedCheck {
    reg::Visit visit;
    reg::Entry remark;
};

struct ImportPlan {
    bool blocked = false;  // the file can't be taken; problems say why
    std::vector<ProblemAt> problems;
    std::vector<PlannedRow> rows;  // without empty ones

    // What is written: values whole, new ones with new ids, changed ones with their own.
    std::vector<reg::Party> parties;
    std::vector<reg::Premises> premises;
    std::vector<reg::Role> roles;
    std::vector<reg::Installation> installations;
    std::vector<reg::Appliance> appliances;
    std::vector<PlannedCheck> checks;

    int newPremises = 0;
    int changedPremises = 0;  // with what belongs to them
    int newParties = 0;
    int newAppliances = 0;

    [[nodiscard]] int count(RowFate fate) const;
    /// How many writes it takes, for progress.
    [[nodiscard]] int writes() const;
};

/// Plans the import. The same premises: the same UPRN, the same MPRN, or the same postcode and number. The
/// same person: the same name and telephone or e-mail, or, where one of them has neither, the same name as an
/// organisation, landlord or agent; such a one is kept once. `newId` makes ids. Checked:
/// import_plan_test.cpp.
[[nodiscard]] ImportPlan planImport(const CsvTable& table, const ImportChoices& choices,
                                    const KnownRegister& known, const std::function<UuidBytes()>& newId);

/// Where a plan is written: the store, behind an interface that this folder may know.
class ImportTarget {
  public:
    ImportTarget() = default;
    ImportTarget(const ImportTarget&) = delete;
    ImportTarget& operator=(const ImportTarget&) = delete;
    virtual ~ImportTarget() = default;

    [[nodiscard]] virtual Result<void> save(const reg::Party& party) = 0;
    [[nodiscard]] virtual Result<void> save(const reg::Premises& premises) = 0;
    [[nodiscard]] virtual Result<void> save(const reg::Role& role) = 0;
    [[nodiscard]] virtual Result<void> save(const reg::Installation& installation) = 0;
    [[nodiscard]] virtual Result<void> save(const reg::Appliance& appliance) = 0;
    [[nodiscard]] virtual Result<void> save(const PlannedCheck& check) = 0;
};

/// Says how far it is; false stops it.
using ImportProgress = std::function<bool(int done, int of)>;

/// Writes a plan, within a transaction of the caller's. Errors: the target's; ImportStopped when the progress
/// says so.
[[nodiscard]] Result<void> writeImport(const ImportPlan& plan, ImportTarget& target,
                                       const ImportProgress& progress);

}  // namespace hearth::exchange
