// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/rules_text.h"

#include "app/console.h"

#include <algorithm>
#include <array>
#include <vector>

namespace hearth::app {
namespace {

using rulebook::Entry;
using rulebook::Provenance;
using ui::words::qstring;
using ui::words::Words;

using RuleRow = std::array<QString, 6>;

/// Where it was read, or who of the firm says so; then the doubt. An empty entry has the doubt alone: why it
/// is empty.
QString originOf(const Entry& entry, const Words& words) {
    QStringList parts;
    if (entry.isKnown() && entry.provenance == Provenance::Firm) {
        parts << words.source(entry) << qstring(entry.fromCopy);
    } else {
        parts << qstring(entry.standard) << qstring(entry.clause) << qstring(entry.source);
    }
    parts << qstring(entry.doubt);
    parts.removeAll(QString());
    parts.removeDuplicates();
    return parts.join(QStringLiteral(" · "));
}

RuleRow ruleRow(const Entry& entry, const Words& words) {
    return {words.rule(entry.key.rule),
            words.edition(entry.key.edition),
            entry.key.gas ? words.gas(*entry.key.gas) : tr("any gas"),
            words.ruleValue(entry),
            entry.isKnown() ? words.provenance(entry.provenance) : tr("to be entered"),
            originOf(entry, words)};
}

bool isWanted(const RuleRow& row, const QStringList& narrowing) {
    return std::all_of(narrowing.begin(), narrowing.end(), [&row](const QString& word) {
        return std::any_of(row.begin(), row.end(),
                           [&word](const QString& cell) { return cell.contains(word, Qt::CaseInsensitive); });
    });
}

QString aligned(const std::vector<RuleRow>& rows) {
    std::array<qsizetype, 6> widths{};
    for (const auto& row : rows) {
        for (std::size_t column = 0; column + 1 < row.size(); ++column) {
            widths[column] = std::max(widths[column], row[column].size());
        }
    }
    QString text;
    for (const auto& row : rows) {
        text += text.isEmpty() ? QString() : QStringLiteral("\n");
        for (std::size_t column = 0; column < row.size(); ++column) {
            text +=
                (column > 0 ? QStringLiteral("  ") : QString()) + row[column].leftJustified(widths[column]);
        }
    }
    return text;
}

}  // namespace

bool isUnconfirmed(const Entry& entry) {
    switch (entry.provenance) {
        case Provenance::Published:
        case Provenance::Firm:
        case Provenance::Maker:
            return !entry.isKnown();
        case Provenance::Secondary:
        case Provenance::Memory:
        case Provenance::CommonPractice:
            break;
    }
    return true;
}

QString rulesText(const rulebook::RuleBook& book, RulesShown shown, const QStringList& narrowing,
                  const Words& words) {
    std::vector<RuleRow> rows;
    for (const auto& entry : book.entries()) {
        if (shown == RulesShown::Unconfirmed && !isUnconfirmed(entry)) {
            continue;
        }
        if (auto row = ruleRow(entry, words); isWanted(row, narrowing)) {
            rows.push_back(std::move(row));
        }
    }
    if (rows.empty()) {
        return {};
    }
    rows.insert(rows.begin(), {tr("Rule"), tr("Edition"), tr("Gas"), tr("Value"), tr("Provenance"),
                               tr("Source and doubt")});
    return aligned(rows);
}

}  // namespace hearth::app
