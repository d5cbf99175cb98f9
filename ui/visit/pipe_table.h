// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/visit/sheet_field.h"

#include <QWidget>

#include <memory>
#include <vector>

class QGridLayout;
class QToolButton;

namespace hearth::ui::shell {
class Text;
}

namespace hearth::ui::visit {

/// The sections of pipe as a table for the keyboard: tube, length, where it leads, what it goes on from,
/// whether it is under test, and the volume that follows; where there are appliances also its fittings and
/// what hangs at its end. The last row is empty: typing in it adds a section.
/// Ctrl+Delete removes a row, Alt+Down in the tube lists the tubes.
class PipeTable : public QWidget {
    Q_OBJECT
    Q_DISABLE_COPY_MOVE(PipeTable)
  public:
    PipeTable(const SheetContext& context, QWidget* parent);
    ~PipeTable() override;

    /// What the model holds, row by row.
    void refill();
    /// Live volumes, and the column of what is under test where only a part is tested.
    void refresh();
    void setReadOnly(bool readOnly);
    /// The tube of the first row: where a record that misses the pipes sends to.
    [[nodiscard]] input::Editor* firstTube() const;
    /// Where what was typed names no section to go on from; null: nowhere.
    [[nodiscard]] input::Editor* firstOutOfOrder() const;
    [[nodiscard]] std::size_t rowCount() const { return m_rows.size(); }
    /// Whether fittings and what hangs at the ends are asked for: there are appliances, or it was said.
    [[nodiscard]] bool asksForEnds() const;
    /// An editor of a row: 0 tube, 1 length, 2 volume by hand, 3 leads to, 4 goes on from, 5 under test,
    /// 6 fittings, 7 at its end.
    [[nodiscard]] input::Editor* editorAt(std::size_t row, int column) const;

  Q_SIGNALS:
    /// A row came or went: the order of the Tab key is to be set again.
    void rowsChanged();
    /// Enter in the tube of the empty row: on to what follows the table.
    void left();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    struct Row;
    enum Column { Tube, Length, TypedVolume, LeadsTo, After, UnderTest, Fittings, End, ColumnCount };
    /// Of the grid, after those of the first line.
    static constexpr int kVolumeColumn = UnderTest + 1;
    struct Place;
    [[nodiscard]] static Place placeOf(int line, int column);

    void addHeads();
    void addRow();
    void dropRows(std::size_t keep);
    static void giveRoom(input::Editor* editor, Column column);
    void addEditor(Row& row, Column column, input::Editor* editor, FieldBinding binding, const QString& name);
    void fitRows();
    void remove(std::size_t row);
    void refillAt(std::size_t row, Column column);
    void offerTubes(std::size_t row);
    void showColumns();
    void placeVolumes(bool below);
    [[nodiscard]] std::size_t rowOf(const QObject* focusTarget) const;

    [[nodiscard]] QString whichOf(const std::vector<const pipework::Tube*>& candidates) const;
    [[nodiscard]] FieldBinding tubeBinding(std::size_t row);
    [[nodiscard]] FieldBinding figureBinding(std::size_t row, quantity::Typed reg::PipeSection::*column);
    [[nodiscard]] FieldBinding leadsToBinding(std::size_t row);
    [[nodiscard]] FieldBinding afterBinding(std::size_t row);
    [[nodiscard]] FieldBinding underTestBinding(std::size_t row);
    /// What may hang at an end: nothing said, capped, an appliance of the visit.
    [[nodiscard]] std::vector<input::ChoiceItem> endChoices() const;
    [[nodiscard]] FieldBinding fittingsBinding(std::size_t row);
    [[nodiscard]] FieldBinding endBinding(std::size_t row);
    [[nodiscard]] Result<void> change(std::size_t row, const std::function<void(reg::PipeSection&)>& how);

    SheetContext m_context;
    QGridLayout* m_grid;
    std::vector<shell::Text*> m_heads;
    std::vector<std::unique_ptr<Row>> m_rows;
    std::vector<input::ChoiceItem> m_ends;  // those that the rows offer
    bool m_isReadOnly;
};

}  // namespace hearth::ui::visit
