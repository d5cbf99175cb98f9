// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workings/group_view.h"

#include "ui/shell/kit.h"
#include "ui/words/question_words.h"
#include "ui/workings/work_editor.h"

#include <QApplication>
#include <QGridLayout>

#include <algorithm>

namespace hearth::ui::workings {

using judging::Group;

namespace {

constexpr std::size_t kMostColumns = 5;  // of a table
constexpr int kNumberWidth = 22;
constexpr int kBetween = look::kGap + look::kGap / 2;

QString groupHeading(Group group) {
    switch (group) {
        case Group::Once:
            break;
        case Group::Section:
            return GroupView::tr("Sections of pipe");
        case Group::Appliance:
            return GroupView::tr("Appliances");
        case Group::Vent:
            return GroupView::tr("Vents");
        case Group::Reading:
            return GroupView::tr("Readings");
    }
    return {};
}

}  // namespace

GroupView::GroupView(WorkingsModel& model, const shell::Context& context, const judging::AskedGroup& group,
                     QWidget* parent)
    : QWidget(parent), m_model(model), m_context(context), m_group(group), m_lines(new QVBoxLayout(this)) {
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_lines->setSpacing(look::kGap);
    if (!isOnce()) {
        m_lines->addSpacing(look::kGap);
        m_lines->addWidget(shell::headingText(groupHeading(group.group), this));
        addHeads();
    }
    refill();
}

void GroupView::addHeads() {
    m_table = new QGridLayout;
    m_table->setHorizontalSpacing(kBetween);
    m_table->setVerticalSpacing(look::kGap / 2);
    int column = 0;
    for (const reg::Item item : m_group.items) {
        auto* head =
            new shell::Text(m_context.words.item(item), look::TypeRole::Label, look::Role::SoftInk, this);
        head->setWordWrap(true);
        head->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Minimum);
        head->setToolTip(m_context.words.itemHelp(item));
        m_table->setColumnStretch(++column, columnWidth(item, m_context.words));
        m_heads.push_back(head);
    }
    m_lines->addLayout(m_table);
}

void GroupView::setRoom(int width) {
    int wanted = kNumberWidth;
    for (const reg::Item item : m_group.items) {
        wanted += kBetween + columnWidth(item, m_context.words);
    }
    const bool isTable = !isOnce() && m_group.items.size() <= kMostColumns && wanted <= width;
    if (isTable == m_isTable && (width == m_room || isTable)) {
        return;
    }
    m_room = width;
    if (isTable != m_isTable) {
        m_isTable = isTable;
        nameRows();
    }
    arrange();
}

/// In a table the heads name the fields and a number the row; in a form each field and row has its name.
void GroupView::nameRows() {
    for (const WorkField& field : m_fields) {
        nameField(field);
    }
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        m_rows[i].name->setText(rowName(static_cast<int>(i)));
    }
}

QString GroupView::rowName(int row) const {
    return m_isTable ? QString::number(row + 1) : words::rowName(m_context.words, m_group.group, row);
}

void GroupView::nameField(const WorkField& field) {
    const QString label = m_context.words.item(field.at.item);
    const QString row = isOnce() ? QString() : words::rowName(m_context.words, m_group.group, field.at.row);
    if (m_isTable) {
        field.editor->setLabel({}, row + QStringLiteral(", ") + label);
    } else {
        field.editor->setLabel(label, row);
    }
}

void GroupView::addField(Row& row, int number, reg::Item item) {
    const FieldAt at{m_group.group, number, item};
    auto* editor = makeWorkEditor(this, item, m_context, isOnce() ? Room::Form : Room::Row);
    editor->setToolTip(m_context.words.itemHelp(item));
    editor->setObjectName(fieldName(at));
    editor->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Minimum);  // as wide as its columns
    if (number > 0) {
        // Who reads one length in feet reads the next in feet too.
        editor->setUnit(m_rows.back().editors[row.editors.size()]->unit());
    }
    connect(editor, &input::Editor::committed, this, [this, at, editor] { keep(at, editor); });
    row.editors.push_back(editor);
    m_fields.push_back({at, editor});
    nameField(m_fields.back());
    editor->show();  // now: the focus may go there at once
}

void GroupView::addRow() {
    const int number = static_cast<int>(m_rows.size());
    Row row;
    if (!isOnce()) {
        row.name = new shell::Text(rowName(number), look::TypeRole::Body, look::Role::SoftInk, this);
        row.name->show();
    }
    row.form = new FlowGrid;
    m_lines->addLayout(row.form);
    for (const reg::Item item : m_group.items) {
        addField(row, number, item);
    }
    m_rows.push_back(row);
}

bool GroupView::lastRowMayGo() const {
    const QWidget* focus = QApplication::focusWidget();
    const auto& editors = m_rows.back().editors;
    return std::none_of(editors.begin(), editors.end(), [focus](const input::Editor* editor) {
        return focus != nullptr && editor->isAncestorOf(focus);
    });
}

void GroupView::removeLastRow() {
    const Row row = m_rows.back();
    m_rows.pop_back();
    m_fields.resize(m_fields.size() - row.editors.size());
    // Later: what is going may be on its way to say that it was committed.
    for (auto* editor : row.editors) {
        editor->hide();
        editor->setObjectName({});
        editor->disconnect(this);
        editor->deleteLater();
    }
    if (row.name != nullptr) {
        row.name->hide();
        row.name->deleteLater();
    }
    emptyOut(row.form);
    m_lines->removeItem(row.form);
    delete row.form;
}

void GroupView::refill() {
    refresh();
    for (const WorkField& field : m_fields) {
        show(field);
    }
}

bool GroupView::refresh() {
    const auto wanted = static_cast<std::size_t>(rowsShown(m_model.sheet(), m_group));
    const std::size_t before = m_rows.size();
    while (m_rows.size() < wanted) {
        addRow();
    }
    while (m_rows.size() > wanted && lastRowMayGo()) {
        removeLastRow();
    }
    const bool changed = showAsked() || before != m_rows.size();
    if (changed) {
        arrange();
    }
    return changed;
}

bool GroupView::showAsked() {
    bool changed = false;
    for (const WorkField& field : m_fields) {
        const bool isAsked = m_model.sheet().isAsked(field.at.group, field.at.row, field.at.item);
        changed = changed || field.editor->isHidden() == isAsked;
        field.editor->setVisible(isAsked);
    }
    return changed;
}

void GroupView::arrange() {
    if (m_table != nullptr) {
        emptyOut(m_table);
    }
    for (const Row& row : m_rows) {
        emptyOut(row.form);
    }
    for (QLabel* head : m_heads) {
        head->setVisible(m_isTable);
    }
    if (m_isTable) {
        arrangeTable();
        return;
    }
    for (const Row& row : m_rows) {
        arrangeForm(row);
    }
}

void GroupView::arrangeTable() {
    m_table->setColumnMinimumWidth(0, kNumberWidth);
    for (std::size_t column = 0; column < m_heads.size(); ++column) {
        m_heads[column]->setVisible(std::any_of(m_rows.begin(), m_rows.end(), [column](const Row& row) {
            return !row.editors[column]->isHidden();
        }));
        m_table->addWidget(m_heads[column], 0, static_cast<int>(column) + 1, Qt::AlignBottom);
    }
    int line = 0;
    for (const Row& row : m_rows) {
        ++line;
        row.name->setContentsMargins(0, look::kGap - 1, 0, 0);
        m_table->addWidget(row.name, line, 0, Qt::AlignTop | Qt::AlignRight);
        int column = 0;
        for (auto* editor : row.editors) {
            m_table->addWidget(editor, line, ++column, Qt::AlignTop);
        }
    }
}

void GroupView::arrangeForm(const Row& row) {
    std::vector<FlowGrid::Cell> cells;
    if (row.name != nullptr) {
        row.name->setContentsMargins(0, row.name == m_rows.front().name ? 0 : look::kGap, 0, 0);
        cells.push_back({row.name, FlowGrid::kColumns});
    }
    std::size_t column = 0;
    for (auto* editor : row.editors) {
        const reg::Item item = m_group.items[column++];
        cells.push_back({editor, spanOf(item, m_context.words, isOnce() ? Room::Form : Room::Row, m_room),
                         startsLine(item)});
    }
    row.form->place(cells);
}

void GroupView::show(const WorkField& field) {
    const reg::Entry* entry = m_model.sheet().find(field.at.group, field.at.row, field.at.item);
    if (entry != nullptr && entry->unit != quantity::UnitCode::None) {
        field.editor->setUnit(entry->unit);
    }
    field.editor->setText(entry == nullptr ? QString() : words::qstring(entry->text));
    field.editor->setProblem(problemOf(field.at.item, field.editor->text(), m_context.words));
}

void GroupView::keep(const FieldAt& at, input::Editor* editor) {
    m_model.put(at, editor->text(), editor->unit());
    editor->setProblem(problemOf(at.item, editor->text(), m_context.words));
}

}  // namespace hearth::ui::workings
