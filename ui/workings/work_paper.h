// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/input/finding_note.h"
#include "ui/workings/group_view.h"

#include <QWidget>

#include <vector>

class QVBoxLayout;

namespace hearth::ui::shell {
class Text;
}

namespace hearth::ui::workings {

class ResultView;

/// The paper of one question: the question, its fields, what was worked out; in the margin what is found,
/// each beside the field that it judges.
class WorkPaper : public QWidget {
    Q_OBJECT
  public:
    WorkPaper(WorkingsModel& model, const shell::Context& context, QWidget* parent);

    [[nodiscard]] const std::vector<input::FindingNote*>& notes() const { return m_notes; }
    /// The notes beside a field; where none are, those that look at it too.
    [[nodiscard]] std::vector<input::FindingNote*> notesAbout(const FieldAt& at) const;
    /// Fields that are in view, in the order of the sheet.
    [[nodiscard]] std::vector<WorkField> fields() const;
    /// The field that a finding stands beside; none: beside the question itself.
    [[nodiscard]] input::Editor* anchorOf(const judging::Judged& judged) const;

    /// How wide the whole paper may be.
    void setRoom(int width);
    void refill();
    /// After answering: rows, notes, figures.
    void refresh();
    /// Notes have another height (a source was opened).
    void rearrange();

  Q_SIGNALS:
    void noteChosen(const hearth::judging::Judged& judged);
    void ruleWanted(const hearth::rulebook::RuleKey& key);
    /// Fields came or went.
    void stopsChanged();

  protected:
    bool event(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

  private:
    void addHead();
    void showCaution();
    void showNotes();
    void showHint();
    void arrange();
    [[nodiscard]] int marginWidth() const { return marginOf(width()); }
    [[nodiscard]] static int marginOf(int width);
    [[nodiscard]] int anchorTop(const judging::Judged& judged) const;
    input::FindingNote* takeNote(std::vector<input::FindingNote*>& from, const judging::Judged& judged);

    WorkingsModel& m_model;
    const shell::Context& m_context;
    QVBoxLayout* m_lines;
    std::vector<GroupView*> m_groups;
    ResultView* m_result;
    shell::Text* m_caution;
    shell::Text* m_hint;  // in the margin while nothing is found yet
    std::vector<input::FindingNote*> m_notes;
    bool m_isArranging = false;
};

}  // namespace hearth::ui::workings
