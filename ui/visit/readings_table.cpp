// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/readings_table.h"

#include "ui/look/look.h"
#include "ui/shell/kit.h"
#include "ui/visit/stage_strip.h"

#include <QGridLayout>

#include <algorithm>

namespace hearth::ui::visit {

namespace {

enum Column { Name, Start, End, Change, From, To, ColumnCount };

}  // namespace

ReadingsTable::ReadingsTable(const SheetContext& context, reg::SubjectRef test, const MakeField& make,
                             QWidget* parent)
    : QWidget(parent), m_context(context), m_test(test), m_grid(new QGridLayout(this)) {
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setHorizontalSpacing(look::kGap);
    m_grid->setVerticalSpacing(look::kGap / 2);
    constexpr int kStretch[] = {5, 6, 6, 5, 4, 4};
    for (int column = 0; column < ColumnCount; ++column) {
        m_grid->setColumnStretch(column, kStretch[column]);
    }
    addHeads();
    addRow(Stage::LetBy, stageName(Stage::LetBy), make);
    addRow(Stage::Settle, stageName(Stage::Settle), make);
    addRow(Stage::Tightness, stageName(Stage::Tightness), make);
    addRow(Stage::Retest, tr("Retest, appliances isolated"), make);
}

void ReadingsTable::addHeads() {
    const QStringList heads{{}, tr("start"), tr("end"), tr("change"), tr("from"), tr("to")};
    for (int column = Start; column < ColumnCount; ++column) {
        auto* head = new shell::Text(heads[column], look::TypeRole::Label, look::Role::SoftInk, this);
        m_grid->addWidget(head, 0, column, column == Change ? Qt::AlignRight : Qt::AlignLeft);
    }
}

void ReadingsTable::addRow(Stage stage, const QString& name, const MakeField& make) {
    const int line = static_cast<int>(m_rows.size()) + 1;
    const StageItems items = *itemsOf(stage);
    Row row;
    row.stage = stage;
    auto* title = new shell::Text(name, look::TypeRole::Body, look::Role::Ink, this);
    title->setWordWrap(true);
    title->setContentsMargins(0, look::kGap / 2, 0, 0);
    row.name = title;
    m_grid->addWidget(title, line, Name, Qt::AlignTop);
    const auto put = [&](reg::Item item, Column column) {
        input::Editor* editor = make(this, item)->editor();
        m_grid->addWidget(editor, line, column, Qt::AlignTop);
        row.editors.push_back(editor);
        return editor;
    };
    put(items.start, Start);
    connect(put(items.end, End), &input::Editor::edited, this, [this, stage] { Q_EMIT endBegun(stage); });
    row.change = new shell::Text({}, look::TypeRole::Body, look::Role::Ink, this);
    row.change->setContentsMargins(0, look::kGap / 2, 0, 0);
    m_grid->addWidget(row.change, line, Change, Qt::AlignTop | Qt::AlignRight);
    put(items.startedAt, From);
    put(items.endedAt, To);
    m_rows.push_back(row);
}

QString ReadingsTable::change(reg::Item start, reg::Item end) const {
    const auto& file = m_context.model.file();
    const reg::Entry* from = file.find(m_test, start);
    const reg::Entry* to = file.find(m_test, end);
    if (from == nullptr || to == nullptr) {
        return {};
    }
    const auto first = quantity::Decimal::parse(from->text);
    const auto last = quantity::Decimal::parse(to->text);
    if (!first || !last) {
        return {};
    }
    if (from->unit != to->unit) {
        return tr("units differ");
    }
    return m_context.window.words.figure({*last - *first, to->unit});
}

QString ReadingsTable::changeOf(Stage stage) const {
    const auto row =
        std::find_if(m_rows.begin(), m_rows.end(), [&](const Row& one) { return one.stage == stage; });
    return row == m_rows.end() ? QString() : row->change->text();
}

void ReadingsTable::refresh(bool retestWanted) {
    for (const Row& row : m_rows) {
        const StageItems items = *itemsOf(row.stage);
        row.change->setText(change(items.start, items.end));
        if (row.stage == Stage::Retest) {
            row.name->setVisible(retestWanted);
            row.change->setVisible(retestWanted);
        }
    }
}

}  // namespace hearth::ui::visit
