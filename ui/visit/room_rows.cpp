// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/room_rows.h"

#include "ui/look/look.h"
#include "ui/shell/kit.h"
#include "ui/visit/subject_name.h"

#include <QApplication>

#include <algorithm>

namespace hearth::ui::visit {

namespace {

constexpr int kColumnsOfRow = 6;

}  // namespace

RoomRows::RoomRows(const SheetContext& context, std::span<const Column> columns, OfPart part, QWidget* parent)
    : QWidget(parent),
      m_context(context),
      m_columns(columns),
      m_part(std::move(part)),
      m_lines(new QVBoxLayout(this)) {
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_lines->setSpacing(look::kGap / 2);
}

void RoomRows::addRow(const reg::SubjectRef& subject) {
    Row row{subject, shell::headingText(nameOf(subject), this), new shell::Fields(kColumnsOfRow, this)};
    m_lines->addWidget(row.name);
    m_lines->addWidget(row.fields);
    for (const Column& column : m_columns) {
        m_part.make(row.fields, subject, column);
    }
    m_rows.push_back(row);
}

QString RoomRows::nameOf(const reg::SubjectRef& subject) const {
    return subjectName(subject, m_context.model.file(), m_context.window.words);
}

bool RoomRows::show(const std::vector<reg::SubjectRef>& there) {
    bool changed = false;
    const auto isThere = [&](const reg::SubjectRef& subject) {
        return std::find(there.begin(), there.end(), subject) != there.end();
    };
    for (auto row = m_rows.begin(); row != m_rows.end();) {
        const QWidget* focus = QApplication::focusWidget();
        const bool stays = isThere(row->subject) || row->subject == m_waiting ||
                           (focus != nullptr && row->fields->isAncestorOf(focus));
        if (stays) {
            row->name->setText(nameOf(row->subject));
            ++row;
            continue;
        }
        m_part.drop(row->subject);
        row->name->deleteLater();
        row->fields->hide();
        row->fields->deleteLater();
        row = m_rows.erase(row);
        changed = true;
    }
    const auto add = [&](const reg::SubjectRef& subject) {
        const bool known =
            std::any_of(m_rows.begin(), m_rows.end(), [&](const Row& row) { return row.subject == subject; });
        if (!known) {
            addRow(subject);
            changed = true;
        }
    };
    std::for_each(there.begin(), there.end(), add);
    if (m_waiting.kind != reg::SubjectKind::Room || isThere(m_waiting)) {
        m_waiting = {reg::SubjectKind::Room, m_context.model.store().newId()};
    }
    add(m_waiting);
    return changed;
}

}  // namespace hearth::ui::visit
