// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rulebook/rule_book.h"
#include "ui/shell/kit.h"

#include <QCheckBox>

namespace hearth::ui::rules {

/// Bands typed from the firm's own copy: volumes up to, and the drop allowed. Each row says beside itself
/// what looks like a slip (rulebook::checkBands); what is only doubtful has to be ticked as really standing
/// in the copy. The table is saved as a whole.
class BandsForm : public QWidget {
    Q_OBJECT
  public:
    BandsForm(const words::Words& words, QWidget* parent);
    /// With the bands that the entry has; empty rows where it has none.
    void show(const rulebook::Entry& entry);
    /// The whole table. Nothing while a row has a slip, can't be read or is doubted without its tick: the
    /// focus is then there.
    [[nodiscard]] std::optional<rulebook::Value> value();

  private:
    struct Row {
        QWidget* line;
        input::Editor* volume;
        input::Editor* drop;
        shell::Text* slip;
        QCheckBox* meant;  // "this is what my copy says"
        bool refused = false;
        bool doubted = false;
    };
    struct Typed {
        std::vector<rulebook::Band> bands;
        std::vector<std::size_t> rows;  // of the bands
    };
    void addRow();
    /// While somebody types, a row with one figure is not yet wrong; when the table is saved it is.
    enum class HalfRows { Wait, Refuse };
    void check(HalfRows halfRows);
    [[nodiscard]] Typed typed(HalfRows halfRows);
    [[nodiscard]] std::optional<rulebook::Band> bandIn(Row& row);
    void say(Row& row, const QString& sentence, bool refused);

    const words::Words& m_words;
    QVBoxLayout* m_lines;
    std::vector<Row> m_rows;
    shell::KeyButton* m_add;
    shell::Text* m_missing;
};

}  // namespace hearth::ui::rules
