// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/due.h"
#include "ui/due/due_list.h"
#include "ui/shell/place.h"

class QStackedLayout;

namespace hearth::ui::due {

class DueHead;

/// Which safety checks are due, and what is done about them: a list in which every premises has a strip of
/// time, sorted by what needs doing next; the story of one; and what the office does with one or many.
class DuePlace : public shell::Place {
    Q_OBJECT
  public:
    DuePlace(const shell::Context& context, store::Due& due, QWidget* parent = nullptr);

    [[nodiscard]] QString title() const override { return tr("Checks due"); }
    [[nodiscard]] QString searchHint() const override { return tr("Narrow the list"); }
    [[nodiscard]] bool findsEverything() const override { return false; }
    void refresh() override;
    void takeFocus() override;
    void takeFound() override;
    void search(const QString& text) override;

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void build();
    void addList(QWidget* browse);
    void fill();
    void sayChosen();
    void chooseView(const QString& name);
    void saveViewAs();
    void forgetShownView();
    void failed(const Error& error);
    [[nodiscard]] calendar::Date today() const { return m_context.clock.today("Europe/London"); }

    shell::Context m_context;
    store::Due& m_due;
    QStackedLayout* m_views = nullptr;
    DueHead* m_head = nullptr;
    DueList* m_list = nullptr;
    QWidget* m_chosenText = nullptr;
};

}  // namespace hearth::ui::due
