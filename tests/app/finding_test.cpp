// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window.h"
#include "tests/ui/support/firm_bench.h"
#include "tests/ui/support/keys.h"
#include "tests/ui/support/walker.h"
#include "ui/shell/hits_panel.h"
#include "ui/shell/line_list.h"

#include <QLineEdit>

#include <gtest/gtest.h>
#include <memory>

namespace hearth::ui::shell {
namespace {

using hearth::testing::child;
using hearth::testing::FirmBench;
using hearth::testing::focus;
using hearth::testing::need;
using hearth::testing::press;
using hearth::testing::type;

/// The real window with the places that things are opened in.
class HitsPanelTest : public ::testing::Test {
  protected:
    void SetUp() override {
        tallow = bench.addPremises("14 Tallow Lane", "Tamsin Kettle");
        kiln = bench.addPremises("9 Kiln Yard");
        reg::Appliance boiler;
        boiler.id = {bench.store->newId()};
        boiler.installation = need(bench.store->installations(kiln)).front().id;
        boiler.make = "Emberline";
        boiler.model = "Combi 24";
        boiler.serial = "EFG-12345";
        need(bench.store->save(boiler));
        visit = bench.startVisit(tallow);
        window = app::makeMainWindow(*bench.store, {bench.clock, bench.words, bench.dialogs, bench.printing});
        hearth::testing::activate(window.get());
    }
    void find(const QString& text) {
        press(Qt::Key_F, Qt::ControlModifier);
        type(text);
    }
    [[nodiscard]] HitsPanel* panel() const {
        return window->findChild<HitsPanel*>(QStringLiteral("hitsPanel"));
    }
    [[nodiscard]] bool isShown() const { return panel() != nullptr && panel()->isVisible(); }
    [[nodiscard]] QStringList shown() const {
        QStringList lines;
        auto* list = child<LineList>(window.get(), "hitsList");
        for (int row = 0; row < list->count(); ++row) {
            lines << (list->line(row).heading ? QStringLiteral("== ") : QString()) + list->line(row).title;
        }
        return lines;
    }
    [[nodiscard]] QString place() const { return window->placeInView()->objectName(); }
    [[nodiscard]] QString street() const {
        return hearth::testing::editor(window->placeInView(), "line1")->text();
    }

    FirmBench bench;
    std::unique_ptr<MainWindow> window;
    reg::PremisesId tallow;
    reg::PremisesId kiln;
    reg::VisitId visit;
};

TEST_F(HitsPanelTest, showsWhatIsFoundAtEveryLetterByKind) {
    find(QStringLiteral("ta"));
    EXPECT_TRUE(isShown());
    EXPECT_EQ(shown(), QStringList({QStringLiteral("== Premises"), QStringLiteral("14 Tallow Lane"),
                                    QStringLiteral("== People"), QStringLiteral("Tamsin Kettle")}));
    type(QStringLiteral("m"));
    EXPECT_EQ(shown().size(), 4);  // her home and herself
    type(QStringLiteral("x"));
    EXPECT_FALSE(isShown());
    press(Qt::Key_Backspace);
    EXPECT_TRUE(isShown());
    press(Qt::Key_Escape);
    EXPECT_FALSE(isShown());
}

TEST_F(HitsPanelTest, enterOpensTheBest) {
    find(QStringLiteral("efg 123"));
    ASSERT_TRUE(isShown());
    const Line line = child<LineList>(window.get(), "hitsList")->line(1);
    EXPECT_EQ(line.title, QStringLiteral("9 Kiln Yard"));
    EXPECT_TRUE(line.detail.startsWith(QStringLiteral("Emberline Combi 24, serial number EFG-12345")))
        << line.detail.toStdString();
    press(Qt::Key_Return);
    EXPECT_FALSE(isShown());
    EXPECT_EQ(place(), QStringLiteral("premisesPlace"));
    EXPECT_EQ(street(), QStringLiteral("9 Kiln Yard"));
    EXPECT_EQ(child<QLineEdit>(window.get(), "searchField")->text(), QString());
}

TEST_F(HitsPanelTest, arrowsGoThroughItAndBackToTheField) {
    auto* field = child<QLineEdit>(window.get(), "searchField");
    find(QStringLiteral("tam"));
    press(Qt::Key_Down);
    auto* list = child<LineList>(window.get(), "hitsList");
    EXPECT_EQ(focus(), list);
    EXPECT_EQ(list->currentRow(), 1) << "past the heading";
    press(Qt::Key_Down);
    EXPECT_EQ(list->currentRow(), 3) << "past the other heading";
    press(Qt::Key_Up);
    press(Qt::Key_Up);
    EXPECT_EQ(focus(), field);
    EXPECT_TRUE(isShown());
    press(Qt::Key_Down);
    type(QStringLiteral("s"));
    EXPECT_EQ(focus(), field);
    EXPECT_EQ(field->text(), QStringLiteral("tams"));
    press(Qt::Key_Down);
    press(Qt::Key_Down);
    press(Qt::Key_Return);  // a person: where she holds a role
    EXPECT_EQ(place(), QStringLiteral("premisesPlace"));
    EXPECT_EQ(street(), QStringLiteral("14 Tallow Lane"));
}

TEST_F(HitsPanelTest, opensVisitsAndRecordsByTheirNumbers) {
    reg::Entry reference;
    reference.visit = visit;
    reference.subject = reg::subject(visit);
    reference.item = reg::Item::VisitReference;
    reference.text = "PO/4711";
    need(bench.store->saveEntry(reference));
    const auto id = need(bench.issue()(visit, {}, {}));
    const auto number = need(bench.store->record(id)).line.header.record;
    press(Qt::Key_2, Qt::ControlModifier);
    find(QStringLiteral("po4711"));
    EXPECT_EQ(shown().front(), QStringLiteral("== Visits"));
    press(Qt::Key_Return);
    EXPECT_EQ(window->placeInView()->title(), QStringLiteral("Visits"));
    find(QString::fromStdString(number));
    EXPECT_EQ(shown(), QStringList({QStringLiteral("== Records"), QString::fromStdString(number)}));
    press(Qt::Key_Return);
    EXPECT_EQ(place(), QStringLiteral("recordsPlace"));
}

TEST_F(HitsPanelTest, staysAwayWhereTheFieldHasAnotherMeaning) {
    press(Qt::Key_5, Qt::ControlModifier);
    find(QStringLiteral("tallow"));
    EXPECT_FALSE(isShown());
    press(Qt::Key_2, Qt::ControlModifier);
    find(QStringLiteral("tallow"));
    EXPECT_TRUE(isShown());
    press(Qt::Key_4, Qt::ControlModifier);
    EXPECT_FALSE(isShown());
}

}  // namespace
}  // namespace hearth::ui::shell
