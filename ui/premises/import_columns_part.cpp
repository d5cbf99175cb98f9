// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/premises/import_columns_part.h"

#include "core/exchange/folded.h"
#include "core/exchange/import_address.h"
#include "ui/shell/importing.h"

#include <algorithm>

namespace hearth::ui::premises {
namespace {

using exchange::ColumnTarget;
using exchange::ImportField;
using words::qstring;

/// A target as the code of a choice: "party_name landlord", "appliance_make 2".
QString targetCode(const ColumnTarget& target) {
    const QString code = shell::coded(exchange::codeOf(target.field));
    if (exchange::isOfParty(target.field)) {
        return code + u' ' + shell::coded(reg::codeOf(target.role));
    }
    return exchange::isOfAppliance(target.field) ? code + u' ' + QString::number(target.group) : code;
}

ColumnTarget targetFrom(const QString& code, const ColumnTarget& before) {
    const QStringList words = code.split(u' ');
    ColumnTarget target;
    target.field = exchange::importFieldFromCode(words.first().toStdString()).value_or(ImportField::Ignored);
    if (words.size() > 1 && exchange::isOfParty(target.field)) {
        target.role = reg::roleKindFromCode(words[1].toStdString()).value_or(target.role);
    } else if (words.size() > 1) {
        target.group = words[1].toInt();
        target.noun = target.group == before.group ? before.noun : std::string();
    }
    return target;
}

constexpr std::array kRolesOffered{reg::RoleKind::Customer, reg::RoleKind::Landlord,
                                   reg::RoleKind::Agent,    reg::RoleKind::HomeOwner,
                                   reg::RoleKind::Tenant,   reg::RoleKind::ResponsiblePerson};

}  // namespace

ImportColumnsPart::ImportColumnsPart(const shell::Context& context, ImportWork& work, QWidget* parent)
    : QWidget(parent), m_context(context), m_work(work) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    addForm(lines);
    lines->addWidget(shell::hairline(this));
    lines->addWidget(
        shell::bodyText(tr("What does each column hold? What is guessed can be changed."), this));
    auto* fields = new shell::Fields(2, this);
    for (std::size_t column = 0; column < m_work.choices.columns.targets.size(); ++column) {
        addColumn(fields, column);
    }
    lines->addWidget(fields);
}

void ImportColumnsPart::addForm(QVBoxLayout* lines) {
    auto* fields = new shell::Fields(3, this);
    auto* encoding =
        input::makeListEditor(this, {{QStringLiteral("utf-8"), tr("UTF-8")},
                                     {QStringLiteral("windows-1252"), tr("Windows-1252 (Western European)")},
                                     {QStringLiteral("utf-16le"), tr("UTF-16, little-endian")},
                                     {QStringLiteral("utf-16be"), tr("UTF-16, big-endian")}});
    encoding->setObjectName(QStringLiteral("importEncoding"));
    encoding->setLabel(tr("Letters are written in"));
    encoding->setText(shell::coded(exchange::codeOf(m_work.table.encoding)));
    connect(encoding, &input::Editor::committed, this, [this](const QString& code) {
        m_work.form.encoding = exchange::encodingFromCode(code.toStdString());
        Q_EMIT formChanged();
    });
    auto* separator = input::makeListEditor(this, {{QStringLiteral(","), tr("comma")},
                                                   {QStringLiteral(";"), tr("semicolon")},
                                                   {QStringLiteral("\t"), tr("tab")},
                                                   {QStringLiteral("|"), tr("vertical bar")}});
    separator->setObjectName(QStringLiteral("importSeparator"));
    separator->setLabel(tr("Cells are parted by"));
    separator->setText(QString(QLatin1Char(m_work.table.separator)));
    connect(separator, &input::Editor::committed, this, [this](const QString& code) {
        m_work.form.separator = code.isEmpty() ? std::nullopt : std::optional(code.front().toLatin1());
        Q_EMIT formChanged();
    });
    auto* order = input::makeListEditor(this, {{QStringLiteral("guess"), tr("as the dates show")},
                                               {QStringLiteral("day"), tr("day first: 25/11/2026")},
                                               {QStringLiteral("month"), tr("month first: 11/25/2026")}});
    order->setObjectName(QStringLiteral("importDateOrder"));
    order->setLabel(tr("Dates are written"));
    const auto& chosen = m_work.choices.dateOrder;
    order->setText(!chosen                                    ? QStringLiteral("guess")
                   : *chosen == exchange::DateOrder::DayFirst ? QStringLiteral("day")
                                                              : QStringLiteral("month"));
    connect(order, &input::Editor::committed, this, [this](const QString& code) {
        m_work.choices.dateOrder = code == QLatin1String("day") ? std::optional(exchange::DateOrder::DayFirst)
                                   : code == QLatin1String("month")
                                       ? std::optional(exchange::DateOrder::MonthFirst)
                                       : std::nullopt;
    });
    for (auto* editor : {encoding, separator, order}) {
        fields->add(editor);
    }
    lines->addWidget(fields);
}

std::vector<input::ChoiceItem> ImportColumnsPart::targets() const {
    std::vector<ColumnTarget> all;
    int groups = 3;
    for (const auto& target : m_work.choices.columns.targets) {
        groups = std::max(groups, exchange::isOfAppliance(target.field) ? target.group + 1 : 0);
    }
    const auto add = [&](bool (*wanted)(ImportField), auto&& change) {
        for (const auto field : exchange::allImportFields()) {
            if (wanted(field)) {
                ColumnTarget target;
                target.field = field;
                change(target);
                all.push_back(target);
            }
        }
    };
    add([](ImportField field) { return !exchange::isOfParty(field) && !exchange::isOfAppliance(field); },
        [](ColumnTarget&) {});
    for (const auto role : kRolesOffered) {
        add(&exchange::isOfParty, [&](ColumnTarget& target) { target.role = role; });
    }
    for (int group = 1; group <= groups; ++group) {
        add(&exchange::isOfAppliance, [&](ColumnTarget& target) { target.group = group; });
    }
    std::vector<input::ChoiceItem> choices;
    for (const auto& target : all) {
        choices.push_back({targetCode(target), shell::targetText(target, m_context.words)});
    }
    return choices;
}

QString ImportColumnsPart::samplesOf(std::size_t column) const {
    constexpr int kMost = 3;
    QStringList samples;
    const auto& rows = m_work.table.rows;
    for (std::size_t row = m_work.choices.columns.headerRow + 1; row < rows.size() && samples.size() < kMost;
         ++row) {
        const std::string cell =
            column < rows[row].cells.size() ? exchange::tidied(rows[row].cells[column]) : std::string();
        if (cell.empty()) {
            continue;
        }
        if (m_work.choices.columns.targets[column].field == ImportField::Address) {
            const auto split = exchange::splitAddress(rows[row].cells[column]).address;
            QStringList parts{qstring(split.line1), qstring(split.line2), qstring(split.town),
                              qstring(split.postcode)};
            parts.removeAll(QString());
            samples << parts.join(QStringLiteral(" | "));
        } else {
            samples << qstring(cell);
        }
    }
    return samples.isEmpty() ? tr("(empty)") : samples.join(QStringLiteral("\n"));
}

void ImportColumnsPart::addColumn(shell::Fields* fields, std::size_t column) {
    const auto& headings = m_work.table.rows[m_work.choices.columns.headerRow].cells;
    const QString heading = column < headings.size() && !exchange::tidied(headings[column]).empty()
                                ? qstring(exchange::tidied(headings[column]))
                                : tr("Column %1").arg(column + 1);
    auto* editor = input::makeListEditor(this, targets());
    editor->setObjectName(QStringLiteral("importColumn%1").arg(column));
    editor->setLabel(heading);
    editor->setText(targetCode(m_work.choices.columns.targets[column]));
    m_columns.push_back(editor);
    auto* samples = shell::softText(samplesOf(column), this);
    samples->setObjectName(QStringLiteral("importSamples%1").arg(column));
    samples->setTextFormat(Qt::PlainText);
    connect(editor, &input::Editor::committed, this, [this, column, samples](const QString& code) {
        auto& target = m_work.choices.columns.targets[column];
        target = targetFrom(code, target);
        samples->setText(samplesOf(column));
    });
    fields->add(editor);
    fields->add(samples);
}

void ImportColumnsPart::takeFocus() {
    if (!m_columns.empty()) {
        shell::focusOn(m_columns.front());
    }
}

}  // namespace hearth::ui::premises
