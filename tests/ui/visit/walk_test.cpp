// SPDX-License-Identifier: GPL-3.0-or-later
// A sheet with everything on it, walked by the Tab key forwards and back in the longest language, with
// large letters on a small screen.
#include "tests/ui/visit/piped_bench.h"
#include "tests/ui/visit/sheet_bench.h"
#include "ui/visit/sheet_paper.h"
#include "ui/words/pseudo_translator.h"

#include <QPushButton>
#include <QScrollArea>

#include <gtest/gtest.h>

namespace hearth::ui::visit {
namespace {

using reg::Item;
using testing::need;
using testing::SheetBench;

class WholeSheet : public ::testing::TestWithParam<bool> {
  protected:
    void SetUp() override {
        if (GetParam()) {
            QCoreApplication::installTranslator(&m_pseudo);
            constexpr double kLarge = 1.3;
            qApp->setProperty("hearthFontScale", kLarge);
        }
    }
    void TearDown() override {
        QCoreApplication::removeTranslator(&m_pseudo);
        qApp->setProperty("hearthFontScale", QVariant());
    }

    /// Every kind of visit, two appliances, a room, a reading and an unsafe situation.
    static void fill(SheetBench& bench) {
        testing::layPipes(bench);
        const auto visit = reg::subject(bench.file().visit.id);
        for (const Item kind : {Item::VisitLandlordCheck, Item::VisitInstallation, Item::VisitService,
                                Item::VisitPipework, Item::VisitRoomCo}) {
            need(bench.model().enter(visit, kind, QStringLiteral("yes")));
        }
        for (int count = 0; count < 2; ++count) {
            const auto appliance = reg::subject(need(bench.model().addAppliance()));
            need(bench.model().enter(appliance, Item::ApplianceInspected, QStringLiteral("inspected")));
            need(bench.model().enter(appliance, Item::NewOrReplacement, QStringLiteral("new")));
        }
        const reg::SubjectRef room{reg::SubjectKind::Room, bench.firm.store->newId()};
        need(bench.model().enter(room, Item::RoomName, QStringLiteral("Kitchen")));
        const reg::SubjectRef reading{reg::SubjectKind::Room, bench.firm.store->newId()};
        need(bench.model().enter(reading, Item::RoomCo, QStringLiteral("12")));
        need(bench.model().addSituation(std::nullopt, bench.firm.clock.now()));
        SheetBench::settle();
    }

    /// Opens what a button opens, and expects it there.
    static void open(SheetBench& bench, const char* button, const char* opened) {
        auto* pressed = bench.sheet().findChild<QPushButton*>(QString::fromLatin1(button));
        ASSERT_NE(pressed, nullptr) << button;
        pressed->click();
        SheetBench::settle();
        ASSERT_NE(bench.sheet().findChild<QWidget*>(QString::fromLatin1(opened)), nullptr) << opened;
    }
    /// What asks for more room than there is.
    static std::string tooWide(SheetBench& bench, int width) {
        std::string told;
        for (auto* widget : bench.sheet().paper()->findChildren<QWidget*>()) {
            if (widget->isVisible() && widget->minimumSizeHint().width() > width) {
                told += testing::described(widget) + ": " +
                        std::to_string(widget->minimumSizeHint().width()) + "\n";
            }
        }
        return told;
    }
    static void walk(SheetBench& bench) {
        bench.place->resize(1024, 600);
        SheetBench::settle();
        testing::expectEveryStopOnce(bench.place.get());
        testing::expectUniqueNames(bench.place.get());
        const auto* scroll = bench.sheet().scroll();
        EXPECT_LE(bench.sheet().paper()->minimumSizeHint().width(), scroll->viewport()->width())
            << "nothing is cut off at the right\n"
            << tooWide(bench, scroll->viewport()->width() / 2);
    }

    words::PseudoTranslator m_pseudo;
};

TEST_P(WholeSheet, IsWalkedForwardsAndBackWithNamesThatDiffer) {
    SheetBench bench;
    fill(bench);
    walk(bench);
}

// Both live panels, and where a gauge is set up.
TEST_P(WholeSheet, IsWalkedWithTheLivePanelsOpen) {
    SheetBench bench;
    fill(bench);
    open(bench, "watchGaugeButton", "livePanel");
    open(bench, "setUpGaugeButton", "profilesPanel");
    open(bench, "watchRoomButton", "airPanel");
    open(bench, "setUpRoomButton", "airProfilesPanel");
    walk(bench);
}

INSTANTIATE_TEST_SUITE_P(InBothLanguages, WholeSheet, ::testing::Bool());

}  // namespace
}  // namespace hearth::ui::visit
