// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "ui/shell/kit.h"
#include "ui/shell/set_up.h"

#include <QDialog>
#include <QStackedWidget>

#include <vector>

namespace hearth::ui::shell {

class SetUpPage;

/// The first start: three doors, then the set-up of a firm page by page. By keyboard: Enter goes through the
/// fields, Ctrl+Enter to the next page, Escape back. accepted() once a door was gone through to its end;
/// rejected() when it was left.
///
///     FirstStart start(words, clock, rulebook::RuleBook::shipped());
///     if (start.exec() == QDialog::Accepted && start.door() == FirstStart::Door::OwnFirm) { …
///     writeSetUp(store, start.setUp()) }
class FirstStart : public QDialog {
    Q_OBJECT
  public:
    enum class Door { None, OwnFirm, Demonstration, Backup };

    FirstStart(const words::Words& words, const Clock& clock, const rulebook::RuleBook& book,
               QWidget* parent = nullptr);
    [[nodiscard]] Door door() const { return m_door; }
    [[nodiscard]] const SetUp& setUp() const { return m_setUp; }
    /// 0: the doors; then the pages of the set-up.
    [[nodiscard]] int page() const { return m_stack->currentIndex(); }
    void showPage(int page);

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    QWidget* makeDoors(const words::Words& words);
    void addPage(SetUpPage* page);
    void goOn();
    void goBack();

    Door m_door = Door::None;
    SetUp m_setUp;
    QStackedWidget* m_stack;
    std::vector<SetUpPage*> m_pages;
    KeyButton* m_ownFirm = nullptr;
};

}  // namespace hearth::ui::shell
