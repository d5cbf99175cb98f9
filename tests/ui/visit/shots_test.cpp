// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures of the sheet in the build folder, to be looked at; what a machine can check of them is checked.
#include "tests/ui/visit/piped_bench.h"
#include "ui/visit/pipe_sketch.h"
#include "ui/visit/test_clock.h"

#include <QDir>
#include <QScrollBar>

#include <gtest/gtest.h>

namespace hearth::ui::visit {
namespace {

using reg::Item;
using testing::SheetBench;

class Shots : public ::testing::TestWithParam<look::Scheme> {
  protected:
    Shots() {
        QApplication::setPalette(look::palette(GetParam()));
        qApp->setStyleSheet(look::styleSheet(GetParam()));
    }
    ~Shots() override {
        QApplication::setPalette(look::palette(look::Scheme::Light));
        qApp->setStyleSheet(look::styleSheet(look::Scheme::Light));
    }
    static QString schemeName() {
        return GetParam() == look::Scheme::Light ? QStringLiteral("light") : QStringLiteral("dark");
    }
    /// Saves the widget and looks whether anything is on it.
    static void shoot(QWidget* widget, const QString& name) {
        const QDir folder(QStringLiteral(HEARTH_BINARY_DIR "/shots/visit"));
        ASSERT_TRUE(folder.mkpath(QStringLiteral(".")));
        const QImage image = widget->grab().toImage();
        ASSERT_TRUE(image.save(folder.filePath(name + u'-' + schemeName() + QStringLiteral(".png"))));
        std::set<QRgb> colours;
        for (int x = 0; x < image.width(); x += 7) {
            for (int y = 0; y < image.height(); y += 7) {
                colours.insert(image.pixel(x, y));
            }
        }
        EXPECT_GT(colours.size(), 8U) << name.toStdString() << " is blank";
    }
};

TEST_P(Shots, EveryPartOfTheFilledSheet) {
    SheetBench bench;
    bench.fillIn();
    const auto& parts = bench.sheet().paper()->parts();
    for (std::size_t index = 0; index < parts.size(); ++index) {
        bench.sheet().goTo(parts[index]->ref());
        SheetBench::settle();
        shoot(bench.place.get(), QStringLiteral("part%1").arg(index));
    }
    shoot(bench.sheet().paper(), QStringLiteral("paper"));
}

TEST_P(Shots, ThePipeworkWithItsDrops) {
    SheetBench bench;
    testing::layPipes(bench);
    bench.sheet().goTo({PartKind::Pipework});
    SheetBench::settle();
    auto* sketch = bench.sheet().findChild<PipeSketch*>();
    sketch->setFocus(Qt::TabFocusReason);
    SheetBench::settle();
    shoot(bench.place.get(), QStringLiteral("pipes"));
    SheetBench::press(Qt::Key_Plus);
    SheetBench::press(Qt::Key_Plus);
    shoot(bench.place.get(), QStringLiteral("pipes-zoomed"));
    bench.place->resize(1024, 520);  // what a window of 1024 x 600 leaves
    SheetBench::press(Qt::Key_0);
    bench.sheet().goTo({PartKind::WhoAndWhere});
    bench.sheet().goTo({PartKind::Pipework});
    SheetBench::settle();
    for (const auto* area : bench.place->findChildren<QAbstractScrollArea*>()) {
        EXPECT_EQ(area->horizontalScrollBar()->maximum(), 0) << area->metaObject()->className();
    }
    shoot(bench.place.get(), QStringLiteral("pipes-small"));
}

TEST_P(Shots, TheTimedTestRunningAndOver) {
    SheetBench bench;
    bench.fillIn();
    for (const Item item : {Item::TightEnd, Item::TightEndedAt, Item::TightStartedAt}) {
        bench.enter(item, "");
    }
    bench.at(Item::TightStart);
    bench.sheet().tightnessPart()->clock()->setBell([] {});
    SheetBench::press(Qt::Key_Return, Qt::ControlModifier);
    bench.firm.clock.advance(std::chrono::seconds(74));
    bench.sheet().tightnessPart()->clock()->tick();
    SheetBench::settle();
    shoot(bench.place.get(), QStringLiteral("running"));
    bench.firm.clock.advance(std::chrono::seconds(49));
    bench.sheet().tightnessPart()->clock()->tick();
    SheetBench::settle();
    shoot(bench.place.get(), QStringLiteral("over"));
}

TEST_P(Shots, AFreshSheetASmellAndAFailure) {
    SheetBench bench;
    shoot(bench.place.get(), QStringLiteral("fresh"));
    bench.type(Item::SmellOnArrival, QStringLiteral("y"));
    shoot(bench.place.get(), QStringLiteral("smell"));
    bench.fillIn();
    bench.enter(Item::TightEnd, "18.90");
    bench.sheet().goTo(PartRef{PartKind::Tightness});
    SheetBench::settle();
    shoot(bench.sheet().paper(), QStringLiteral("moved"));
    bench.enter(Item::TestSmell, "yes");
    shoot(bench.place.get(), QStringLiteral("failed"));
    bench.place->resize(1024, 600);
    SheetBench::settle();
    shoot(bench.place.get(), QStringLiteral("small"));
}

TEST_P(Shots, APipeworkTree) {
    SheetBench bench;
    bench.fillIn();
    const char* const rows[][3] = {
        {"28", "4.5", "tee in the hall"}, {"22", "3", "boiler"}, {"15", "2.4", "hob"}, {"15", "6", "fire"}};
    auto* table = bench.sheet().findChild<PipeTable*>();
    testing::need(bench.model().save(std::vector<reg::PipeSection>{}));
    for (std::size_t row = 0; row < 4; ++row) {
        table->editorAt(row, 0)->focusTarget()->setFocus();
        for (const char* text : rows[row]) {
            SheetBench::line(QString::fromUtf8(text));
        }
    }
    auto pipes = bench.file().pipes;
    pipes[2].after = pipes[3].after = pipes[0].id;
    testing::need(bench.model().save(pipes));
    table->refill();
    bench.sheet().goTo(PartRef{PartKind::Pipework});
    SheetBench::settle();
    shoot(bench.place.get(), QStringLiteral("tree"));
}

TEST_P(Shots, TheListAndTheRecords) {
    SheetBench bench;
    bench.fillIn();
    bench.sheet().recordsPart()->issue();
    SheetBench::settle();
    bench.sheet().findChild<QPushButton*>(QStringLiteral("draftButton"))->click();
    SheetBench::settle();
    shoot(bench.sheet().paper(), QStringLiteral("issued"));
    bench.firm.startVisit(bench.firm.addPremises("2 Second Street", "L. Varga"));
    SheetBench::press(Qt::Key_Escape);
    shoot(bench.place.get(), QStringLiteral("list"));
}

INSTANTIATE_TEST_SUITE_P(InBothSchemes, Shots, ::testing::Values(look::Scheme::Light, look::Scheme::Dark));

}  // namespace
}  // namespace hearth::ui::visit
