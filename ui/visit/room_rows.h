// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/visit/sheet_field.h"

#include <QWidget>

#include <functional>
#include <span>
#include <vector>

class QVBoxLayout;

namespace hearth::ui::shell {
class Fields;
class Text;
}  // namespace hearth::ui::shell

namespace hearth::ui::visit {

/// Rooms, or the readings taken in them, one block a subject; the last is empty and waits for another. What
/// is typed into it makes it one of them.
class RoomRows : public QWidget {
  public:
    struct Column {
        reg::Item item;
        int span = 1;
    };
    /// `make` makes a field on the part that the rows belong to, `drop` makes the part forget a subject.
    struct OfPart {
        std::function<SheetField*(shell::Fields* fields, const reg::SubjectRef& subject,
                                  const Column& column)>
            make;
        std::function<void(const reg::SubjectRef& subject)> drop;
    };
    RoomRows(const SheetContext& context, std::span<const Column> columns, OfPart part, QWidget* parent);

    /// Shows these subjects and an empty one; true when fields came or went.
    bool show(const std::vector<reg::SubjectRef>& there);
    /// The empty one that waits.
    [[nodiscard]] bool isWaiting(const reg::SubjectRef& subject) const { return subject == m_waiting; }

  private:
    struct Row {
        reg::SubjectRef subject;
        shell::Text* name = nullptr;
        shell::Fields* fields = nullptr;
    };
    void addRow(const reg::SubjectRef& subject);
    [[nodiscard]] QString nameOf(const reg::SubjectRef& subject) const;

    SheetContext m_context;
    std::span<const Column> m_columns;
    OfPart m_part;
    QVBoxLayout* m_lines;
    std::vector<Row> m_rows;
    reg::SubjectRef m_waiting;
};

}  // namespace hearth::ui::visit
