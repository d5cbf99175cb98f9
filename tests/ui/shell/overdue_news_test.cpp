// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/overdue_news.h"

#include "tests/ui/support/firm_bench.h"
#include "tests/ui/support/keys.h"
#include "tests/ui/support/walker.h"
#include "ui/shell/news_bar.h"
#include "ui/shell/notifying.h"
#include "ui/shell/openers.h"

#include <QApplication>
#include <QSettings>
#include <QTest>
#include <QTimer>
#include <QTranslator>

#include <gtest/gtest.h>
#include <memory>

namespace hearth::ui::shell {
namespace {

using calendar::fromIso;
using hearth::testing::child;
using hearth::testing::FirmBench;
using hearth::testing::need;
using hearth::testing::press;

class NotedNotices : public Notifying {
  public:
    QStringList told;
    void notify(const QString& title, const QString& text) override {
        told << title + QStringLiteral(": ") + text;
    }
};

/// A place that can show what turned overdue.
class OverduePlace : public Place, public OverdueOpener {
  public:
    std::vector<reg::PremisesId> opened;
    [[nodiscard]] QString title() const override { return QStringLiteral("Overdue"); }
    int refreshed = 0;
    void refresh() override { ++refreshed; }
    void takeFocus() override { setFocus(); }
    void search(const QString&) override {}
    void openOverdue(const std::vector<reg::PremisesId>& premises) override { opened = premises; }
};

/// The clock stands at 26 November 2026.
class OverdueNewsTest : public ::testing::Test {
  protected:
    void SetUp() override {
        ASSERT_TRUE(m_english.load(QStringLiteral(":/i18n/hearthledger_en.qm")));
        QCoreApplication::installTranslator(&m_english);
    }
    void TearDown() override { QCoreApplication::removeTranslator(&m_english); }
    reg::PremisesId checked(const char* line1, const char* day) {
        const auto id = bench.addPremises(line1);
        need(
            bench.store->save(reg::Role{{bench.store->newId()}, id, landlord().id, reg::RoleKind::Landlord}));
        reg::EarlierCheck check;
        check.premises = id;
        check.date = fromIso(day).value();
        need(bench.store->save(check));
        return id;
    }
    const reg::Party& landlord() {
        if (m_landlord.name.empty()) {
            m_landlord.id = {bench.store->newId()};
            m_landlord.name = "Fenn Estate";
            need(bench.store->save(m_landlord));
        }
        return m_landlord;
    }
    /// The window comes up, as at a start of the program.
    void start() { start(*bench.store); }
    void start(store::Store& store, QSettings* settings = nullptr) {
        const auto parts = bench.parts();
        Parts these{store,          parts.clock, parts.words,  parts.dialogs,
                    parts.printing, parts.issue, parts.scheme, settings};
        these.notifying = &notices;
        window = std::make_unique<MainWindow>(these);
        first = new OverduePlace;
        first->setMinimumHeight(leastHeight);
        window->setPlaces({first});
        hearth::testing::activate(window.get());
        QApplication::processEvents();
    }
    [[nodiscard]] NewsBar* bar() const { return child<NewsBar>(window.get(), "newsBar"); }
    /// The day is asked for every minute: now.
    void askTheDay() {
        auto* timer = child<QTimer>(window.get(), "newsTimer");
        bool asked = false;
        QObject::connect(timer, &QTimer::timeout, window.get(), [&asked] { asked = true; });
        timer->start(1);
        EXPECT_TRUE(QTest::qWaitFor([&asked] { return asked; }, 10000));
        timer->stop();
    }
    [[nodiscard]] std::string seen() const { return need(bench.store->setting("due.news_seen")); }

    FirmBench bench{"2026-11-26"};
    NotedNotices notices;
    int leastHeight = 0;
    std::unique_ptr<MainWindow> window;
    OverduePlace* first = nullptr;

  private:
    QTranslator m_english;  // "1 check", "2 checks"
    reg::Party m_landlord;
};

TEST_F(OverdueNewsTest, aFirstStartIsAskedSinceYesterday) {
    checked("9 Tanner's Row", "2025-11-20");  // has been overdue for days
    const auto yesterday = checked("21 Chapel Street", "2025-11-25");
    checked("8 Quarry Bank", "2025-11-26");  // due today: not overdue yet
    start();
    EXPECT_TRUE(bar()->isVisible());
    EXPECT_EQ(bar()->text(), QStringLiteral("1 check turned overdue since 25 November 2026."));
    EXPECT_EQ(notices.told, QStringList{QStringLiteral("Gas safety checks: ") + bar()->text()});
    press(Qt::Key_F8);
    EXPECT_EQ(first->opened, std::vector<reg::PremisesId>{yesterday});
    EXPECT_FALSE(bar()->isVisible());
    EXPECT_EQ(seen(), "2026-11-26");
}

TEST_F(OverdueNewsTest, whatTurnedOverdueOverAWeekendIsToldOnMonday) {
    need(bench.store->saveSetting("due.news_seen", "2026-11-20"));
    checked("1 Low Mill", "2025-11-19");  // was overdue when somebody looked
    const auto onThatDay = checked("2 Low Mill", "2025-11-20");
    const auto later = checked("3 Low Mill", "2025-11-22");
    start();
    EXPECT_EQ(bar()->text(), QStringLiteral("2 checks turned overdue since 20 November 2026."));
    press(Qt::Key_F8);
    EXPECT_EQ(first->opened, (std::vector<reg::PremisesId>{onThatDay, later}));
    start();
    EXPECT_FALSE(bar()->isVisible()) << "it was seen";
}

TEST_F(OverdueNewsTest, putAwayItIsNotToldAgain) {
    checked("21 Chapel Street", "2025-11-25");
    start();
    start();
    EXPECT_TRUE(bar()->isVisible()) << "nobody looked: it is told again";
    press(Qt::Key_F8, Qt::ShiftModifier);
    EXPECT_FALSE(bar()->isVisible());
    EXPECT_TRUE(first->opened.empty());
    start();
    EXPECT_FALSE(bar()->isVisible());
    EXPECT_EQ(notices.told.size(), 2);
}

TEST_F(OverdueNewsTest, withoutNewsTheFirstStartBeginsToCount) {
    start();
    EXPECT_FALSE(bar()->isVisible());
    EXPECT_EQ(seen(), "2026-11-26");
    EXPECT_TRUE(notices.told.isEmpty());
}

TEST_F(OverdueNewsTest, theFirmChoosesWhereItIsSaid) {
    checked("21 Chapel Street", "2025-11-25");
    EXPECT_EQ(newsWhere(*bench.store), NewsWhere::WindowAndDesktop);
    need(saveNewsWhere(*bench.store, codeOf(NewsWhere::Window)));
    start();
    EXPECT_TRUE(bar()->isVisible());
    EXPECT_TRUE(notices.told.isEmpty());
    need(saveNewsWhere(*bench.store, codeOf(NewsWhere::Nowhere)));
    start();
    EXPECT_FALSE(bar()->isVisible());
    EXPECT_EQ(seen(), "") << "switched off it counts nothing";
}

TEST_F(OverdueNewsTest, whatTurnsOverdueAtMidnightIsToldInTheMorning) {
    const auto then = checked("8 Quarry Bank", "2025-11-26");  // due today
    start();
    const int before = first->refreshed;
    askTheDay();
    EXPECT_FALSE(bar()->isVisible());
    EXPECT_EQ(first->refreshed, before) << "it is still the same day";
    bench.clock.advance(std::chrono::hours(24));
    askTheDay();
    EXPECT_TRUE(bar()->isVisible());
    EXPECT_EQ(bar()->text(), QStringLiteral("1 check turned overdue since 26 November 2026."));
    EXPECT_EQ(notices.told.size(), 1);
    EXPECT_GT(first->refreshed, before) << "its days count from another today";
    askTheDay();
    EXPECT_EQ(notices.told.size(), 1) << "once a day";
    press(Qt::Key_F8);
    EXPECT_EQ(first->opened, std::vector<reg::PremisesId>{then});
    EXPECT_EQ(seen(), "2026-11-27");
}

TEST_F(OverdueNewsTest, whoOnlyReadsIsToldOnceADay) {
    checked("21 Chapel Street", "2025-11-25");
    const auto reading = need(store::Store::open(bench.path(), store::Access::WriteOrRead, bench.clock));
    ASSERT_TRUE(reading->isReadOnly());
    start(*reading);
    EXPECT_FALSE(bar()->isVisible()) << "nothing can be noted: it would be told at every start";
    QSettings settings(QString::fromStdString((bench.folder() / "window.ini").string()),
                       QSettings::IniFormat);
    start(*reading, &settings);
    EXPECT_TRUE(bar()->isVisible());
    start(*reading, &settings);
    EXPECT_FALSE(bar()->isVisible());
    EXPECT_EQ(notices.told.size(), 1);
    EXPECT_EQ(seen(), "") << "those who can act are still to be told";
    checked("8 Quarry Bank", "2025-11-26");
    bench.clock.advance(std::chrono::hours(24));
    start(*reading, &settings);
    EXPECT_EQ(bar()->text(), QStringLiteral("1 check turned overdue since 26 November 2026."));
    window.reset();  // before the store that it reads
}

TEST_F(OverdueNewsTest, theBarNeverPushesTheWindowsFootAway) {
    leastHeight = 500;
    start();
    EXPECT_FALSE(bar()->isVisible());
    const auto least = window->minimumSizeHint();
    checked("21 Chapel Street", "2025-11-25");
    need(bench.store->saveSetting("due.news_seen", ""));
    start();
    ASSERT_TRUE(bar()->isVisible());
    EXPECT_EQ(window->minimumSizeHint().height(), least.height());
    window->resize(1024, least.height());
    ASSERT_TRUE(QTest::qWaitFor([&] { return window->height() == least.height(); }, 10000));
    auto* foot = child<QWidget>(window.get(), "undoButton")->parentWidget();
    EXPECT_EQ(foot->mapTo(window.get(), QPoint(0, foot->height())).y(), window->height());
    EXPECT_EQ(bar()->height(), bar()->sizeHint().height());
    press(Qt::Key_F8, Qt::ShiftModifier);
    EXPECT_EQ(window->minimumSizeHint().height(), least.height());
}

TEST_F(OverdueNewsTest, theWindowIsWalkableWithTheBar) {
    checked("21 Chapel Street", "2025-11-25");
    start();
    hearth::testing::expectWalkable(window.get(), [this] { return bench.state(); });
}

}  // namespace
}  // namespace hearth::ui::shell
