// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/due.h"
#include "ui/due/action_bar.h"
#include "ui/due/due_list.h"
#include "ui/shell/openers.h"
#include "ui/shell/place.h"

class QStackedLayout;

namespace hearth::ui::due {

class ActionPage;
class BookPage;
class CallPage;
class CopyPage;
class DayPage;
class DueHead;
class DutiesPage;
class DutyCounter;
class EarlierPage;
class NoAccessPage;
class OverviewPage;
class RemindPage;
class StoryPage;
struct DueContext;

/// Which safety checks are due, and what is done about them: a list in which every premises has a strip of
/// time, sorted by what needs doing next; the story of one; and what the office does with one or many.
class DuePlace : public shell::Place, public shell::OverdueOpener {
    Q_OBJECT
  public:
    DuePlace(const shell::Context& context, store::Due& due, QWidget* parent = nullptr);

    [[nodiscard]] QString title() const override { return tr("Checks due"); }
    [[nodiscard]] QString searchHint() const override { return tr("Narrow the list"); }
    [[nodiscard]] bool findsEverything() const override { return false; }
    void refresh() override;
    void commit() override;
    /// The story of these premises, over the list.
    void openStory(reg::PremisesId premises);
    void openOverdue(const std::vector<reg::PremisesId>& premises) override;
    /// The list itself, whatever page lies over it.
    void showList();
    /// As the button of that action does.
    void act(Action action);
    void takeFocus() override;
    void takeFound() override;
    void search(const QString& text) override;

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void build();
    void addList(QWidget* browse);
    void fill();
    [[nodiscard]] std::vector<store::DueChoice> choicesBy(store::DueBy by);
    void sayChosen();
    template <class Page>
    [[nodiscard]] Page* page(Page*& kept);
    void bring(ActionPage* page);
    void backToList(const QString& done);
    [[nodiscard]] std::vector<reg::PremisesId> meant() const;
    [[nodiscard]] bool actOnAll(Action action);
    void writeSummary();
    void writeEvidence(reg::PremisesId premises);
    [[nodiscard]] bool actOnMany(Action action, const std::vector<reg::PremisesId>& premises);
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
    DutyCounter* m_counter = nullptr;
    QWidget* m_chosenText = nullptr;
    StoryPage* m_story = nullptr;
    BookPage* m_book = nullptr;
    CallPage* m_call = nullptr;
    NoAccessPage* m_noAccess = nullptr;
    RemindPage* m_remind = nullptr;
    EarlierPage* m_earlier = nullptr;
    CopyPage* m_copy = nullptr;
    OverviewPage* m_overview = nullptr;
    DayPage* m_day = nullptr;
    DutiesPage* m_duties = nullptr;
    bool m_fromStory = false;  // a page that was opened there leads back there
};

}  // namespace hearth::ui::due
