// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/duties_page.h"

#include "tests/ui/due/due_window.h"
#include "ui/due/due_head.h"
#include "ui/shell/line_list.h"

#include <QTest>

namespace hearth::ui::due {
namespace {

using calendar::DutyKind;
using hearth::testing::child;
using hearth::testing::editor;
using hearth::testing::fillField;
using hearth::testing::focus;
using hearth::testing::need;
using hearth::testing::press;

/// Three duties: an engineer's card that ran out yesterday, information on work that was completed on 23
/// November (by the 28th), its notice (by 23 December).
class DutiesPageTest : public DueWindowTest {
  protected:
    void SetUp() override {
        DueWindowTest::SetUp();
        bench.engineer.cardExpires = on("2026-11-24");
        need(bench.store->save(bench.engineer));
        visit = bench.startVisit(overdue);
        reg::Entry completed;
        completed.visit = visit;
        completed.subject = reg::subject(visit);
        completed.item = reg::Item::WorkCompleted;
        completed.text = "2026-11-23";
        need(bench.store->saveEntry(completed));
        list()->setFocus();
        press(Qt::Key_U, Qt::ControlModifier);
        shown(3);
    }
    /// They are read beside the work.
    void shown(int count) {
        ASSERT_TRUE(QTest::qWaitFor([&] { return duties()->count() == count && !isReading(); }, 10000))
            << duties()->count();
    }
    [[nodiscard]] bool isReading() const { return child<DutiesPage>(place, "dutiesPage")->isReading(); }
    [[nodiscard]] shell::LineList* duties() const { return child<shell::LineList>(place, "dutiesList"); }

    reg::VisitId visit;
};

TEST_F(DutiesPageTest, eachSaysItsDayAndWhy) {
    EXPECT_EQ(focus(), duties());
    ASSERT_EQ(duties()->count(), 3);
    EXPECT_EQ(duties()->line(0).title, QStringLiteral("Card and registration"));
    EXPECT_EQ(duties()->line(0).right, QStringLiteral("ran out on 24 Nov 2026"));
    EXPECT_EQ(duties()->line(0).outcome, rulebook::Outcome::Fail);
    EXPECT_FALSE(child<QPushButton>(place, "keepHandedButton")->isEnabled()) << "nothing is handed over";
    press(Qt::Key_Down);
    EXPECT_EQ(duties()->line(1).right, QStringLiteral("by 28 Nov 2026"));
    EXPECT_EQ(text("dutyWhy"),
              QStringLiteral("5 days after completion on 23 November 2026, to the owner. Source: Building "
                             "Regulations 2010, regulation 40"));
    press(Qt::Key_Down);
    EXPECT_TRUE(text("dutyWhy").contains(QStringLiteral("30 days"))) << text("dutyWhy").toStdString();
    EXPECT_FALSE(child<QPushButton>(place, "keepHandedButton")->isEnabled())
        << "entered on the visit's sheet";
}

TEST_F(DutiesPageTest, whatWasHandedOverIsLoggedByOneKey) {
    press(Qt::Key_Down);
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(duties()->count(), 2) << "at once";
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(need(bench.store->letters(overdue)).size(), 1U) << "nothing is logged while they are read";
    shown(2);
    EXPECT_EQ(focus(), duties());
    const auto letters = need(bench.store->letters(overdue));
    ASSERT_EQ(letters.size(), 1U);
    EXPECT_EQ(letters[0].kind, "operating_information");
    EXPECT_EQ(letters[0].party, landlord.id);
    EXPECT_EQ(letters[0].channel, reg::Channel::Visit);
    place->openStory(overdue);
    EXPECT_EQ(child<shell::LineList>(place, "storyList")->line(0).title,
              QStringLiteral("Operating information handed over"));
    EXPECT_TRUE(text("reasonsText").contains(QStringLiteral("certificate and notice · by 23 Dec 2026")))
        << text("reasonsText").toStdString();
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(need(bench.store->letters(overdue)).empty());
}

TEST_F(DutiesPageTest, toWhomWhenAndHowAreKept) {
    press(Qt::Key_Down);
    fillField(editor(place, "handedHow"), QStringLiteral("by post"));
    fillField(editor(place, "handedOn"), QStringLiteral("26/11"));
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(duties()->count(), 3) << "a day that is still to come";
    fillField(editor(place, "handedOn"), QStringLiteral("24/11"));
    fillField(editor(place, "handedNote"), QStringLiteral("with the manual"));
    press(Qt::Key_Return, Qt::ControlModifier);
    const auto letters = need(bench.store->letters(overdue));
    ASSERT_EQ(letters.size(), 1U);
    EXPECT_EQ(letters[0].channel, reg::Channel::Letter);
    EXPECT_EQ(instantText(letters[0].at).substr(0, 10), "2026-11-24");
    EXPECT_NE(letters[0].text.find("with the manual"), std::string::npos) << letters[0].text;
    press(Qt::Key_Escape);
    EXPECT_EQ(focus(), list());
}

TEST_F(DutiesPageTest, theListsHeadCountsThemAndLeadsThere) {
    press(Qt::Key_Escape);
    auto* chip = child<CountChip>(place, "count_duties");
    EXPECT_TRUE(QTest::qWaitFor([chip] { return chip->count() == 3; }, 10000)) << chip->count().value_or(-1);
    EXPECT_EQ(chip->accessibleName(), QStringLiteral("other duties, 1 overdue: 3"));
    bench.engineer.cardExpires.reset();
    need(bench.store->save(bench.engineer));
    place->refresh();
    EXPECT_TRUE(QTest::qWaitFor([chip] { return chip->count() == 2; }, 10000)) << chip->count().value_or(-1);
    EXPECT_EQ(chip->accessibleName(), QStringLiteral("other duties: 2"));
    chip->setFocus();
    press(Qt::Key_Return);
    EXPECT_EQ(focus(), duties());
    shown(2);
}

/// Yearly: common practice, no source (makers ask for it).
TEST_F(DutiesPageTest, theMakersServiceSaysWhyAndLeadsToThePremises) {
    const auto installation = need(bench.store->installations(soon)).front().id;
    reg::Appliance boiler;
    boiler.id = {bench.store->newId()};
    boiler.installation = installation;
    boiler.make = "Invented";
    boiler.model = "Thirty";
    boiler.place = "kitchen";
    boiler.installedOn = on("2025-12-10");
    need(bench.store->save(boiler));
    place->act(Action::Duties);
    shown(4);
    press(Qt::Key_Down);
    press(Qt::Key_Down);
    EXPECT_EQ(duties()->line(2).title, QStringLiteral("Yearly service by the maker's instructions"));
    EXPECT_EQ(duties()->line(2).right, QStringLiteral("by 10 Dec 2026"));
    EXPECT_TRUE(duties()->line(2).detail.endsWith(QStringLiteral("Invented Thirty, kitchen")))
        << duties()->line(2).detail.toStdString();
    EXPECT_EQ(text("dutyWhy"),
              QStringLiteral("12 months after its last service by our records, or after it was installed: 10 "
                             "December 2025. The maker's own interval goes before. Source: maker's "
                             "instructions; yearly: common practice"));
    EXPECT_FALSE(child<QPushButton>(place, "keepHandedButton")->isEnabled());
}

TEST_F(DutiesPageTest, thePageIsWalkable) {
    press(Qt::Key_Down);
    hearth::testing::expectWalkable(window.get(), [this] { return bench.state(); });
}

}  // namespace
}  // namespace hearth::ui::due
