// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/input/finding_note.h"
#include "ui/visit/part_view.h"

#include <QWidget>

#include <vector>

class QVBoxLayout;

namespace hearth::ui::shell {
class Text;
}

namespace hearth::ui::visit {

/// The paper itself: the parts one below another, and beside them the margin with the findings, each at the
/// height of the reading that it judges and pushed down where two would meet. Both scroll together.
class SheetPaper : public QWidget {
    Q_OBJECT
  public:
    SheetPaper(const SheetContext& context, QWidget* parent);

    [[nodiscard]] const std::vector<PartView*>& parts() const { return m_parts; }
    [[nodiscard]] PartView* part(const PartRef& ref) const;
    /// Makes the parts that the visit needs now and lets the others go, but never the one with the keyboard.
    /// Gives those that are new.
    std::vector<PartView*> bringUpToDate();
    /// Notes in the order in which they stand in the margin.
    [[nodiscard]] const std::vector<input::FindingNote*>& notes() const { return m_notes; }
    /// The notes that stand beside a field; where none does, those that look at it too.
    [[nodiscard]] std::vector<input::FindingNote*> notesAbout(const FieldKey& key) const;
    /// The reading that a finding is put beside.
    [[nodiscard]] QWidget* anchorOf(const judging::Judged& judged) const;

    /// After judging: parts, notes, what is said of issued records.
    void refresh();
    void refill();
    void setReadOnly(bool readOnly);

  Q_SIGNALS:
    void noteChosen(const hearth::judging::Judged& judged);
    void ruleWanted(const hearth::rulebook::RuleKey& key);

  protected:
    bool event(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

  private:
    void showNotes();
    void showIssued();
    void arrange();
    void arrangePart(PartView* part);
    [[nodiscard]] int marginWidth() const;
    [[nodiscard]] PartView* partOf(const judging::Judged& judged) const;
    [[nodiscard]] std::vector<input::FindingNote*> notesOf(const PartView* part) const;
    [[nodiscard]] bool isSaid(const judging::Judged& judged) const;
    input::FindingNote* takeNote(std::vector<input::FindingNote*>& from, const judging::Judged& judged);

    SheetContext m_context;
    QVBoxLayout* m_lines;
    shell::Text* m_issued;
    std::vector<PartView*> m_parts;
    std::vector<input::FindingNote*> m_notes;
    bool m_isArranging = false;
};

}  // namespace hearth::ui::visit
