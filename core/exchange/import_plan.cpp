// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/import_plan.h"

#include "core/exchange/folded.h"
#include "core/exchange/import_working.h"

#include <algorithm>
#include <utility>

namespace hearth::exchange {
namespace {

bool hasAddress(const ImportColumns& columns) {
    return std::any_of(columns.targets.begin(), columns.targets.end(), [](const ColumnTarget& target) {
        return target.field == ImportField::Address || target.field == ImportField::Line1 ||
               target.field == ImportField::HouseNumber;
    });
}

std::string headingOf(const CsvTable& table, const ImportColumns& columns, std::size_t column) {
    const auto& cells = table.rows[columns.headerRow].cells;
    return column < cells.size() ? tidied(cells[column]) : std::string();
}

/// Guesses the order of day and month by column, and says where it can't be told.
RowForm formWithOrders(const CsvTable& table, const ImportChoices& choices,
                       std::vector<ProblemAt>& problems) {
    RowForm form = choices.form;
    const auto& targets = choices.columns.targets;
    for (std::size_t column = 0; column < targets.size(); ++column) {
        if (targets[column].field != ImportField::LastCheck) {
            continue;
        }
        std::vector<std::string> cells;
        for (std::size_t row = choices.columns.headerRow + 1; row < table.rows.size(); ++row) {
            if (column < table.rows[row].cells.size()) {
                cells.push_back(table.rows[row].cells[column]);
            }
        }
        const auto guess = guessDateOrder(cells);
        form.dateOrders[column] = choices.dateOrder.value_or(guess.order);
        if (!guess.sure && !choices.dateOrder) {
            problems.push_back({0,
                                static_cast<int>(column),
                                ImportProblem::DateOrderUnclear,
                                {headingOf(table, choices.columns, column)}});
        }
    }
    return form;
}

void checkFile(const CsvTable& table, const ImportColumns& columns, std::vector<ProblemAt>& problems) {
    if (table.rows.size() <= columns.headerRow + 1) {
        problems.push_back({0, -1, ImportProblem::FileEmpty, {}});
        return;
    }
    if (table.openQuote) {
        problems.push_back({*table.openQuote, -1, ImportProblem::QuoteOpen, {}});
    }
    if (!hasAddress(columns)) {
        problems.push_back({0, -1, ImportProblem::NoAddressColumn, {}});
    }
    if (table.unreadable > 0) {
        problems.push_back({0, -1, ImportProblem::LettersUnreadable, {std::to_string(table.unreadable)}});
    }
}

ProblemWeight heaviest(const std::vector<ProblemAt>& problems) {
    ProblemWeight weight = ProblemWeight::Note;
    for (const auto& problem : problems) {
        weight = std::max(weight, weightOf(problem.problem));
    }
    return weight;
}

/// Plans row after row: each meets the store and the rows before it.
class ImportPlanner {
  public:
    ImportPlanner(const ImportChoices& choices, const KnownRegister& known,
                  const std::function<UuidBytes()>& newId)
        : m_choices(choices), m_register(known, choices.remark, newId) {}

    void plan(RowContent row) {
        PlannedRow planned;
        planned.line = row.line;
        planned.premises = row.premises;
        std::vector<ProblemAt> problems = std::move(row.problems);
        row.problems = {};
        planned.fate = fateOf(row, problems, planned.met);
        for (auto& problem : problems) {
            planned.problems.push_back(m_problems.size());
            m_problems.push_back(std::move(problem));
        }
        m_rows.push_back(std::move(planned));
    }

    void finish(ImportPlan& plan) {
        for (auto& row : m_rows) {
            for (auto& problem : row.problems) {
                problem += plan.problems.size();
            }
        }
        plan.problems.insert(plan.problems.end(), m_problems.begin(), m_problems.end());
        plan.rows = std::move(m_rows);
        m_register.finish(plan);
    }

  private:
    [[nodiscard]] RowChoice choiceFor(int line) const {
        const auto said = m_choices.rows.find(line);
        return said == m_choices.rows.end() ? RowChoice::SetAside : said->second;
    }

    RowFate fateOf(const RowContent& row, std::vector<ProblemAt>& problems, std::optional<Met>& met) {
        const RowChoice choice = choiceFor(row.line);
        const ProblemWeight weight = heaviest(problems);
        if (weight == ProblemWeight::Refusal) {
            return RowFate::Refused;
        }
        if (choice == RowChoice::LeaveOut) {
            return RowFate::LeftOut;
        }
        met = m_register.met(row);
        if (weight == ProblemWeight::Doubt && choice != RowChoice::Take) {
            return RowFate::SetAside;
        }
        if (!met) {
            m_register.add(row, problems);
            return RowFate::New;
        }
        return duplicateFate(row, problems, *met);
    }

    RowFate duplicateFate(const RowContent& row, std::vector<ProblemAt>& problems, const Met& met) {
        const auto said = m_choices.duplicatesByLine.find(row.line);
        switch (said == m_choices.duplicatesByLine.end() ? m_choices.duplicates : said->second) {
            case DuplicateChoice::KeepBoth:
                m_register.add(row, problems);
                return RowFate::KeptBoth;
            case DuplicateChoice::Skip:
                return RowFate::Skipped;
            case DuplicateChoice::Merge:
                break;
        }
        if (m_register.merge(row, met.premises, problems)) {
            return RowFate::Merged;
        }
        problems.push_back({row.line, -1, ImportProblem::InstallationUnclear, {}});
        return RowFate::SetAside;
    }

    const ImportChoices& m_choices;
    WorkingRegister m_register;
    std::vector<ProblemAt> m_problems;
    std::vector<PlannedRow> m_rows;
};

/// Saves all of a list; says how far it is before each.
template <class List>
Result<void> saveEach(const List& list, ImportTarget& target, const ImportProgress& progress, int& done,
                      int all) {
    for (const auto& one : list) {
        if (progress && !progress(done, all)) {
            return fail(ErrorCode::ImportStopped);
        }
        if (auto saved = target.save(one); !saved) {
            return saved;
        }
        ++done;
    }
    return {};
}

}  // namespace

int ImportPlan::count(RowFate fate) const {
    return static_cast<int>(
        std::count_if(rows.begin(), rows.end(), [&](const PlannedRow& row) { return row.fate == fate; }));
}

int ImportPlan::writes() const {
    return static_cast<int>(parties.size() + premises.size() + roles.size() + installations.size() +
                            appliances.size() + checks.size());
}

KnownRegister knownFrom(const record::RegisterRows& rows, calendar::Date today) {
    KnownRegister known{rows.parties, rows.premises, {}, rows.installations, {}, {}};
    for (const auto& role : rows.roles) {
        if (!role.until || *role.until >= today) {
            known.roles.push_back(role);
        }
    }
    for (const auto& appliance : rows.appliances) {
        if (!appliance.removedOn) {
            known.appliances.push_back(appliance);
        }
    }
    for (const auto& visit : rows.visits) {
        known.visits.emplace_back(visit.premises, visit.date);
    }
    return known;
}

ImportPlan planImport(const CsvTable& table, const ImportChoices& choices, const KnownRegister& known,
                      const std::function<UuidBytes()>& newId) {
    ImportPlan plan;
    checkFile(table, choices.columns, plan.problems);
    plan.blocked = heaviest(plan.problems) == ProblemWeight::Refusal;
    if (table.rows.size() <= choices.columns.headerRow) {
        return plan;
    }
    const RowForm form = formWithOrders(table, choices, plan.problems);
    const CsvRow& headings = table.rows[choices.columns.headerRow];
    ImportPlanner planner(choices, known, newId);
    for (std::size_t row = choices.columns.headerRow + 1; row < table.rows.size(); ++row) {
        if (auto content = readImportRow(table.rows[row], headings, choices.columns, form)) {
            planner.plan(std::move(*content));
        }
    }
    planner.finish(plan);
    if (plan.blocked) {
        plan.parties.clear();
        plan.premises.clear();
        plan.roles.clear();
        plan.installations.clear();
        plan.appliances.clear();
        plan.checks.clear();
        plan.newPremises = plan.changedPremises = plan.newParties = plan.newAppliances = 0;
    }
    return plan;
}

Result<void> writeImport(const ImportPlan& plan, ImportTarget& target, const ImportProgress& progress) {
    int done = 0;
    const int all = plan.writes();
    Result<void> result = saveEach(plan.parties, target, progress, done, all);
    const auto then = [&](const auto& list) {
        if (result) {
            result = saveEach(list, target, progress, done, all);
        }
    };
    then(plan.premises);
    then(plan.roles);
    then(plan.installations);
    then(plan.appliances);
    then(plan.checks);
    return result;
}

}  // namespace hearth::exchange
