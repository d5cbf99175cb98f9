// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/importing.h"

#include "ui/words/exchange_words.h"

#include <QCoreApplication>
#include <QStringList>

#include <array>

namespace hearth::ui::shell {
namespace {

using exchange::ImportPlan;
using exchange::RowFate;

QString said(const char* text, int count = -1) {
    return QCoreApplication::translate("Importing", text, nullptr, count);
}

/// The store as the import sees it.
class StoreTarget : public exchange::ImportTarget {
  public:
    explicit StoreTarget(store::Store& store) : m_store(store) {}

    Result<void> save(const reg::Party& party) override { return m_store.save(party); }
    Result<void> save(const reg::Premises& premises) override { return m_store.save(premises); }
    Result<void> save(const reg::Role& role) override { return m_store.save(role); }
    Result<void> save(const reg::Installation& installation) override { return m_store.save(installation); }
    Result<void> save(const reg::Appliance& appliance) override { return m_store.save(appliance); }
    Result<void> save(const exchange::PlannedCheck& check) override {
        const auto visit = m_store.startVisit(check.visit);
        if (!visit) {
            return tl::unexpected(visit.error());
        }
        if (!check.remark.text.empty()) {
            if (auto kept = m_store.saveEntry(check.remark); !kept) {
                return kept;
            }
        }
        // What the deadline counts from.
        return m_store.save(reg::EarlierCheck{
            {}, check.visit.premises, {}, check.visit.date, {}, check.remark.text, check.visit.id});
    }

  private:
    store::Store& m_store;
};

constexpr std::array kFates{std::pair{RowFate::New, "new"},
                            std::pair{RowFate::Merged, "merged"},
                            std::pair{RowFate::KeptBoth, "kept_both"},
                            std::pair{RowFate::Skipped, "skipped"},
                            std::pair{RowFate::SetAside, "set_aside"},
                            std::pair{RowFate::LeftOut, "left_out"},
                            std::pair{RowFate::Refused, "refused"}};

}  // namespace

QString importRemark(const QString& fileName) {
    return said(QT_TRANSLATE_NOOP("Importing", "Check done before; taken over from “%1”.")).arg(fileName);
}

Result<exchange::ImportChoices> firstChoices(const exchange::CsvTable& table, const store::Store& store,
                                             const Clock& clock, const QString& fileName) {
    const auto firm = store.firm();
    if (!firm) {
        return tl::unexpected(firm.error());
    }
    exchange::ImportChoices choices;
    choices.columns = exchange::guessColumns(table);
    choices.form.country = firm->country;
    choices.form.today = clock.today();
    choices.remark = importRemark(fileName).toStdString();
    return choices;
}

Result<ImportPlan> planFor(const exchange::CsvTable& table, const exchange::ImportChoices& choices,
                           store::Store& store, const Clock& clock) {
    const auto rows = store.registerRows();
    if (!rows) {
        return tl::unexpected(rows.error());
    }
    return exchange::planImport(table, choices, exchange::knownFrom(*rows, clock.today()),
                                [&store] { return store.newId(); });
}

Result<void> takeOver(const ImportPlan& plan, store::Store& store, const exchange::ImportProgress& progress) {
    StoreTarget target(store);
    return store.together([&] { return exchange::writeImport(plan, target, progress); },
                          store::Store::Steps::One);
}

QString planSummary(const ImportPlan& plan) {
    QStringList parts;
    const auto add = [&](const char* text, int count) {
        if (count > 0) {
            parts << said(text, count);
        }
    };
    add(QT_TRANSLATE_N_NOOP("Importing", "%n new premises"), plan.newPremises);
    add(QT_TRANSLATE_N_NOOP("Importing", "%n premises filled up"), plan.changedPremises);
    add(QT_TRANSLATE_N_NOOP("Importing", "%n new people"), plan.newParties);
    add(QT_TRANSLATE_N_NOOP("Importing", "%n new appliances"), plan.newAppliances);
    add(QT_TRANSLATE_N_NOOP("Importing", "%n earlier checks"), static_cast<int>(plan.checks.size()));
    add(QT_TRANSLATE_N_NOOP("Importing", "%n rows set aside"), plan.count(RowFate::SetAside));
    add(QT_TRANSLATE_N_NOOP("Importing", "%n rows left out"),
        plan.count(RowFate::LeftOut) + plan.count(RowFate::Skipped));
    add(QT_TRANSLATE_N_NOOP("Importing", "%n rows that can't be taken"), plan.count(RowFate::Refused));
    return parts.isEmpty() ? said(QT_TRANSLATE_NOOP("Importing", "nothing"))
                           : parts.join(QStringLiteral(" · "));
}

QString targetText(const exchange::ColumnTarget& target, const words::Words& words) {
    const QString field = words::importField(words, exchange::codeOf(target.field));
    if (exchange::isOfParty(target.field)) {
        return QStringLiteral("%1: %2").arg(words.role(target.role), field);
    }
    return exchange::isOfAppliance(target.field) ? said(QT_TRANSLATE_NOOP("Importing", "Appliance %1: %2"))
                                                       .arg(QString::number(target.group), field)
                                                 : field;
}

QString problemText(const exchange::ProblemAt& problem, const words::Words& words) {
    return words::importProblem(words, exchange::codeOf(problem.problem), problem.arguments);
}

QString fateText(RowFate fate, const words::Words& words) {
    for (const auto& [known, code] : kFates) {
        if (known == fate) {
            return words::importFate(words, code);
        }
    }
    return {};
}

}  // namespace hearth::ui::shell
