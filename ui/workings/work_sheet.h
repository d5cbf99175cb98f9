// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/workings/work_paper.h"

#include <QPointer>
#include <QScrollArea>

namespace hearth::ui::workings {

/// The paper of the question that is chosen, and the keys that go over it.
///
/// Enter goes to the next field, Ctrl+Enter to the next row or part, Ctrl+M into the margin and back, F1
/// opens the source of what is judged at the field, Shift+F1 its page in the rule book, Page Up and Page Down
/// move the paper, Escape goes back to the questions.
class WorkSheet : public QScrollArea {
    Q_OBJECT
    Q_DISABLE_COPY_MOVE(WorkSheet)
  public:
    WorkSheet(WorkingsModel& model, const shell::Context& context, QWidget* parent);
    ~WorkSheet() override;

    /// To the first empty field.
    void takeFocus();
    void takeFirst();
    [[nodiscard]] WorkPaper* paper() const { return m_paper; }

  Q_SIGNALS:
    /// Escape: back to the questions.
    void left();
    /// The field with the keyboard in it, and what helps with it; empty: nothing does.
    void helped(const QString& help);
    /// The order of the Tab key is to be set again.
    void stopsChanged();

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void rebuild();
    void refilled();
    void watchStops();
    void follow(QWidget* focus);
    void turn(int by);
    [[nodiscard]] bool isLast(const QObject* field) const;
    void endHere(const QObject* field);
    [[nodiscard]] std::vector<input::FindingNote*> notesOfFocus() const;
    void openSources(const std::vector<input::FindingNote*>& notes);
    void openRule(const rulebook::RuleKey& key);
    void openRuleOf(const std::vector<input::FindingNote*>& notes);
    void goToNextRow();
    void goToMargin();
    void stepInMargin(int by);
    bool answerKey(QKeyEvent* event);

    WorkingsModel& m_model;
    const shell::Context& m_context;
    WorkPaper* m_paper = nullptr;
    std::vector<QPointer<WorkPaper>> m_old;  // put aside, to be deleted soon
    judging::Question m_builtFor;
};

}  // namespace hearth::ui::workings
