// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/place.h"
#include "ui/workings/workings_model.h"

#include <QPointer>

class QStackedWidget;

namespace hearth::ui::shell {
class KeyButton;
class LineList;
class Text;
}  // namespace hearth::ui::shell

namespace hearth::ui::workings {

class VisitChooser;
class WorkSheet;

/// For working something out without a visit: a question, what is typed for it, what is found; copied as text
/// or taken over into a visit.
class WorkingsPlace : public shell::Place {
    Q_OBJECT
  public:
    explicit WorkingsPlace(const shell::Context& context, QWidget* parent = nullptr);

    [[nodiscard]] QString title() const override { return tr("Workings"); }
    [[nodiscard]] QString searchHint() const override { return tr("Find a question"); }
    [[nodiscard]] bool findsEverything() const override { return false; }
    void refresh() override;
    void commit() override;
    bool takeBack() override;
    void takeFocus() override;
    [[nodiscard]] rulebook::Gas gas() const override;
    void search(const QString& text) override;
    void takeFound() override;
    /// Shows a question's sheet, the keyboard in its first empty field.
    void openQuestion(judging::Question question);
    /// The keyboard goes to the first empty field.
    void takeField();

  private:
    void build();
    void addSide(QWidget* side);
    void fillList();
    void showQuestion(int row);
    void showState();
    void orderTabs();
    void copy();
    void chooseVisit();
    void takeOverInto(reg::VisitId visit, const QString& where);
    void showSheet();
    [[nodiscard]] bool isFound(const judging::QuestionInfo& info) const;

    shell::Context m_context;
    WorkingsModel* m_model = nullptr;
    QString m_search;
    shell::LineList* m_list = nullptr;
    shell::KeyButton* m_take = nullptr;
    shell::KeyButton* m_copy = nullptr;
    shell::KeyButton* m_clear = nullptr;
    shell::Text* m_whyNot = nullptr;
    shell::Text* m_help = nullptr;
    QPointer<QWidget> m_before;  // the field that another place was opened from
    QStackedWidget* m_pages = nullptr;
    WorkSheet* m_sheet = nullptr;
    VisitChooser* m_chooser = nullptr;
};

}  // namespace hearth::ui::workings
