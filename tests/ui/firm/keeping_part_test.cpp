// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/keeping_part.h"

#include "tests/ui/support/firm_bench.h"
#include "tests/ui/support/keys.h"
#include "tests/ui/support/walker.h"
#include "ui/firm/firm_place.h"
#include "ui/shell/keeping_due.h"
#include "ui/shell/line_list.h"

#include <QLabel>
#include <QPushButton>

#include <gtest/gtest.h>

namespace hearth::ui::firm {
namespace {

using hearth::testing::child;
using hearth::testing::FirmBench;
using hearth::testing::need;
using hearth::testing::press;

constexpr std::chrono::hours kYear{24 * 366};

/// Two records and a letter of 25 November 2026, seen seven years later.
class KeepingPartTest : public ::testing::Test {
  protected:
    void SetUp() override {
        premises = bench.addPremises("14 Tallow Lane", "M. Harrow");
        const auto visit = bench.startVisit(premises);
        for (auto& id : records) {
            id = need(bench.issue()(visit, std::nullopt, {}));
            bench.clock.advance(std::chrono::minutes(1));
        }
        letter.id = {bench.store->newId()};
        letter.premises = premises;
        letter.party = need(bench.store->holders(premises)).front().party.id;
        letter.kind = "reminder";
        letter.text = "Dear M. Harrow";
        letter.at = bench.clock.now();
        need(bench.store->save(letter));
    }
    void start() {
        bench.clock.advance(7 * kYear);
        part = std::make_unique<KeepingPart>(bench.context(), nullptr);
        part->resize(900, 600);
        part->refresh();
        hearth::testing::activate(part.get());
        list()->setFocus();
    }
    [[nodiscard]] shell::LineList* list() const { return child<shell::LineList>(part.get(), "keepingList"); }
    [[nodiscard]] QPushButton* button(const char* name) const { return child<QPushButton>(part.get(), name); }
    [[nodiscard]] QString text(const char* name) const { return child<QLabel>(part.get(), name)->text(); }
    [[nodiscard]] bool isGone(store::RecordId id) {
        const auto record = bench.store->record(id);
        return !record && record.error().code == ErrorCode::RecordErased;
    }

    FirmBench bench;
    reg::PremisesId premises;
    std::array<store::RecordId, 2> records;
    reg::Letter letter;
    std::unique_ptr<KeepingPart> part;
};

TEST_F(KeepingPartTest, isQuietWhileNothingIsOver) {
    bench.clock.advance(-7 * kYear);
    start();
    EXPECT_EQ(text("keepingState"), QStringLiteral("Nothing has been kept for longer than it must be."));
    EXPECT_FALSE(list()->isVisible());
    EXPECT_FALSE(button("letGoButton")->isVisible());
}

TEST_F(KeepingPartTest, saysWhatAndWhy) {
    start();
    ASSERT_EQ(list()->count(), 3);
    EXPECT_TRUE(list()->line(0).detail.contains(QStringLiteral("14 Tallow Lane")));
    EXPECT_TRUE(list()->line(0).detail.contains(QStringLiteral("issued 25 Nov 2026")));
    EXPECT_EQ(list()->line(0).right, QStringLiteral("kept until 25 Nov 2032"));
    EXPECT_EQ(list()->line(2).title, QStringLiteral("Letter to M. Harrow"));
    EXPECT_TRUE(text("keepingState").contains(QStringLiteral("records: 2, letters: 1")));
    EXPECT_TRUE(text("keepingAbout").contains(QStringLiteral("Limitation Act 1980")));
}

TEST_F(KeepingPartTest, marksOneByKeyAndLetsItGoOnlyWhenToldSo) {
    start();
    EXPECT_FALSE(button("letGoButton")->isEnabled()) << "nothing is marked";
    press(Qt::Key_Down);
    press(Qt::Key_Space);
    EXPECT_EQ(list()->line(1).rightDetail, QStringLiteral("marked to go"));
    EXPECT_EQ(list()->currentRow(), 1);
    press(Qt::Key_Space);
    EXPECT_EQ(list()->line(1).rightDetail, QString());
    press(Qt::Key_Space);
    bench.dialogs.answers = {0};
    button("letGoButton")->setFocus();
    press(Qt::Key_Return);
    EXPECT_TRUE(bench.dialogs.asked.last().contains(QStringLiteral("Records: 1 · letters: 0")));
    EXPECT_TRUE(bench.dialogs.asked.last().contains(QStringLiteral("Backups made before now keep copies")));
    EXPECT_FALSE(isGone(records[1]));
    bench.dialogs.answers = {1};
    press(Qt::Key_Return);
    EXPECT_TRUE(isGone(records[1]));
    EXPECT_FALSE(isGone(records[0]));
    EXPECT_EQ(list()->count(), 2);
    EXPECT_FALSE(button("letGoButton")->isEnabled());
}

TEST_F(KeepingPartTest, marksAllButWhatIsHeld) {
    start();
    press(Qt::Key_Home);
    bench.dialogs.texts = {QStringLiteral("claim 17")};
    button("keepingHoldButton")->click();
    EXPECT_EQ(list()->line(0).rightDetail, QStringLiteral("held"));
    EXPECT_TRUE(text("keepingAbout").contains(QStringLiteral("claim 17")));
    list()->setFocus();
    press(Qt::Key_Space);
    EXPECT_EQ(list()->line(0).rightDetail, QStringLiteral("held")) << "a held one can't be marked";
    button("keepingMarkAllButton")->click();
    EXPECT_EQ(list()->line(0).rightDetail, QStringLiteral("held"));
    EXPECT_EQ(list()->line(1).rightDetail, QStringLiteral("marked to go"));
    EXPECT_EQ(list()->line(2).rightDetail, QStringLiteral("marked to go"));
    EXPECT_EQ(button("keepingMarkAllButton")->text(), QStringLiteral("Mark none"));
    bench.dialogs.answers = {1};
    button("letGoButton")->click();
    EXPECT_TRUE(isGone(records[1]));
    EXPECT_FALSE(isGone(records[0]));
    EXPECT_EQ(need(bench.store->letters(premises)).front().text, "");
    ASSERT_EQ(list()->count(), 1);
    list()->setCurrentRow(0);
    button("keepingHoldButton")->click();  // lifts it
    EXPECT_EQ(list()->line(0).rightDetail, QString());
    EXPECT_EQ(button("keepingMarkAllButton")->text(), QStringLiteral("Mark all"));
}

TEST_F(KeepingPartTest, aHoldNeedsItsReason) {
    start();
    press(Qt::Key_Home);
    bench.dialogs.texts = {std::nullopt, QString()};
    button("keepingHoldButton")->click();  // cancelled
    EXPECT_TRUE(bench.dialogs.told.isEmpty());
    button("keepingHoldButton")->click();
    ASSERT_EQ(bench.dialogs.told.size(), 1);
    EXPECT_TRUE(bench.dialogs.told.front().contains(QStringLiteral("a hold needs its reason")));
    EXPECT_EQ(list()->line(0).rightDetail, QString());
}

TEST_F(KeepingPartTest, enterOpensWhatIsMeant) {
    start();
    press(Qt::Key_Home);
    press(Qt::Key_Return);
    press(Qt::Key_End);
    press(Qt::Key_Return);
    EXPECT_EQ(bench.navigator.went,
              (std::vector<std::string>{"record " + records[0].text(), "premises " + premises.text()}));
}

TEST_F(KeepingPartTest, asksForALookOnceAYear) {
    EXPECT_EQ(shell::keepingDueText(*bench.store, bench.clock), QString()) << "nothing is over";
    start();
    EXPECT_NE(shell::keepingDueText(*bench.store, bench.clock), QString());
    EXPECT_TRUE(text("keepingState").contains(QStringLiteral("once a year")));
    button("keepingLookedButton")->click();
    EXPECT_EQ(shell::keepingDueText(*bench.store, bench.clock), QString());
    EXPECT_FALSE(text("keepingState").contains(QStringLiteral("once a year")));
    EXPECT_TRUE(text("keepingState").contains(QStringLiteral("30 Nov 2033")))
        << text("keepingState").toStdString();
    bench.clock.advance(std::chrono::hours(24 * 364));
    EXPECT_EQ(shell::keepingDueText(*bench.store, bench.clock), QString());
    bench.clock.advance(std::chrono::hours(24));
    EXPECT_NE(shell::keepingDueText(*bench.store, bench.clock), QString());
    button("keepingMarkAllButton")->click();
    bench.dialogs.answers = {1};
    button("letGoButton")->click();
    EXPECT_EQ(need(bench.store->setting("keeping.looked_on")), "2034-11-30") << "letting go is a look";
}

TEST_F(KeepingPartTest, theWindowSaysItAtItsFootUntilItWasLookedThrough) {
    bench.clock.advance(7 * kYear);
    shell::MainWindow window(bench.parts());
    auto* firm = new FirmPlace(window.context());
    window.setPlaces({firm});
    hearth::testing::activate(&window);
    QTest::qWait(10);
    const auto foot = [&] { return child<QLabel>(&window, "standingText")->text(); };
    EXPECT_TRUE(foot().contains(QStringLiteral("kept for long enough"))) << foot().toStdString();
    hearth::testing::expectWalkable(&window, [this] { return bench.state(); });
    child<QPushButton>(&window, "keepingLookedButton")->click();
    window.showPlace(0);
    EXPECT_FALSE(foot().contains(QStringLiteral("kept for long enough")));
}

}  // namespace
}  // namespace hearth::ui::firm
