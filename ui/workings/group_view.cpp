// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workings/group_view.h"

#include "ui/shell/kit.h"
#include "ui/words/question_words.h"
#include "ui/workings/work_editor.h"

#include <QApplication>
#include <QFontMetrics>
#include <QGridLayout>

#include <algorithm>

namespace hearth::ui::workings {

using judging::Group;

namespace {

constexpr std::size_t kMostColumns = 4;  // of a table: more would be too narrow on a small screen
constexpr int kNumberWidth = 22;

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
    }
    if (isTable()) {
        addHeads();
    }
    refill();
}

bool GroupView::isTable() const {
    return !isOnce() && m_group.items.size() <= kMostColumns;
}

void GroupView::addHeads() {
    m_table = new QGridLayout;
    m_table->setHorizontalSpacing(look::kGap + look::kGap / 2);
    m_table->setVerticalSpacing(look::kGap / 2);
    m_table->setColumnMinimumWidth(0, kNumberWidth);
    int column = 0;
    for (const reg::Item item : m_group.items) {
        auto* head =
            new shell::Text(m_context.words.item(item), look::TypeRole::Label, look::Role::SoftInk, this);
        head->setWordWrap(true);
        head->setToolTip(m_context.words.itemHelp(item));
        ++column;
        m_table->addWidget(head, 0, column, Qt::AlignBottom);
        m_table->setColumnStretch(column, stretchOf(item));
        m_heads.push_back(head);
    }
    m_lines->addLayout(m_table);
}

input::Editor* GroupView::addField(QWidget* parent, int row, reg::Item item) {
    const FieldAt at{m_group.group, row, item};
    auto* editor = makeWorkEditor(parent, item, m_context, isOnce() ? Room::Form : Room::Row);
    const QString label = m_context.words.item(item);
    const QString name = isOnce() ? QString() : words::rowName(m_context.words, m_group.group, row);
    if (isTable()) {
        editor->setLabel({}, name + QStringLiteral(", ") + label);
    } else {
        editor->setLabel(label, name);
    }
    editor->setToolTip(m_context.words.itemHelp(item));
    editor->setObjectName(fieldName(at));
    connect(editor, &input::Editor::committed, this, [this, at, editor] { keep(at, editor); });
    m_fields.push_back({at, editor});
    return editor;
}

void GroupView::addRow() {
    const int number = static_cast<int>(m_rows.size());
    Row row;
    if (isTable()) {
        row.name =
            new shell::Text(QString::number(number + 1), look::TypeRole::Body, look::Role::SoftInk, this);
        row.name->setContentsMargins(0, look::kGap / 2 + 2, 0, 0);
        m_table->addWidget(row.name, number + 1, 0, Qt::AlignTop | Qt::AlignRight);
    } else if (!isOnce()) {
        row.name = new shell::Text(words::rowName(m_context.words, m_group.group, number),
                                   look::TypeRole::Body, look::Role::Key, this);
        row.name->setFont(shell::strongFont());
        row.name->setContentsMargins(0, number == 0 ? 0 : look::kGap, 0, 0);
        m_lines->addWidget(row.name);
    }
    if (!isTable()) {
        row.form = new FlowGrid(this);
        m_lines->addWidget(row.form);
    }
    for (const reg::Item item : m_group.items) {
        auto* editor = addField(row.form != nullptr ? static_cast<QWidget*>(row.form) : this, number, item);
        row.editors.push_back(editor);
        if (row.form != nullptr) {
            row.form->add(editor, spanOf(item, m_context.words, isOnce() ? Room::Form : Room::Row));
        } else {
            m_table->addWidget(editor, number + 1, static_cast<int>(row.editors.size()), Qt::AlignTop);
        }
        if (number > 0 && editor->text().isEmpty()) {
            // Who reads one length in feet reads the next in feet too.
            editor->setUnit(m_rows.back().editors[row.editors.size() - 1]->unit());
        }
    }
    m_rows.push_back(row);
    for (auto* editor : row.editors) {
        editor->show();  // now: the focus may go there at once
    }
    if (row.form != nullptr) {
        row.form->show();
    }
    if (row.name != nullptr) {
        row.name->show();
    }
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
    for (QWidget* rest : {static_cast<QWidget*>(row.name), static_cast<QWidget*>(row.form)}) {
        if (rest != nullptr) {
            rest->hide();
            rest->deleteLater();
        }
    }
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
    return showAsked() || before != m_rows.size();
}

bool GroupView::showAsked() {
    bool changed = false;
    for (const WorkField& field : m_fields) {
        const bool isAsked = m_model.sheet().isAsked(field.at.group, field.at.row, field.at.item);
        changed = changed || field.editor->isHidden() == isAsked;
        field.editor->setVisible(isAsked);
    }
    for (std::size_t column = 0; column < m_heads.size(); ++column) {
        m_heads[column]->setVisible(std::any_of(m_rows.begin(), m_rows.end(), [column](const Row& row) {
            return !row.editors[column]->isHidden();
        }));
    }
    for (const Row& row : m_rows) {
        if (row.form != nullptr) {
            row.form->arrange();
        }
    }
    return changed;
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
