// SPDX-License-Identifier: GPL-3.0-or-later
// Photographs and plots on the sheet.
#include "tests/ui/support/keys.h"
#include "tests/ui/visit/sheet_bench.h"
#include "ui/shell/attachments_part.h"
#include "ui/shell/plot_view.h"

#include <QCheckBox>
#include <QClipboard>
#include <QImage>
#include <QMimeData>

#include <gtest/gtest.h>

namespace hearth::ui::visit {
namespace {

using reg::Item;
using testing::child;
using testing::editor;
using testing::need;
using testing::SheetBench;

class PicturesBench : public SheetBench {
  public:
    PicturesBench() {
        reg::Appliance appliance;
        appliance.id = {firm.store->newId()};
        appliance.installation = file().installation.id;
        appliance.kind = std::string(reg::choice::kCondensingBoiler);
        appliance.place = "kitchen";
        need(firm.store->save(appliance));
        boiler = appliance.id;
        need(model().reload());
        need(model().enter(reg::subject(visit), Item::VisitLandlordCheck, QStringLiteral("yes")));
        need(model().take(boiler));
        need(model().reload());
        settle();
    }
    [[nodiscard]] PartView* part() const {
        return sheet().paper()->part(partAt(PartKind::Appliance, reg::subject(boiler), file()));
    }
    [[nodiscard]] shell::AttachmentsPart* pictures() const {
        return part()->findChild<shell::AttachmentsPart*>();
    }
    [[nodiscard]] std::vector<reg::Attachment> kept() const {
        return need(firm.store->attachmentsOf(boiler.bytes));
    }
    void paste() const {
        QImage image(40, 30, QImage::Format_RGB32);
        image.fill(Qt::darkGreen);
        auto* data = new QMimeData;
        data->setImageData(image);
        QApplication::clipboard()->setMimeData(data);
        child<shell::LineList>(pictures(), "attachmentsList")->setFocus();
        press(Qt::Key_V, Qt::ControlModifier);
    }

    reg::ApplianceId boiler;
};

TEST(SheetPictures, arePastedCaptionedAndPutIntoTheRecordByKeys) {
    PicturesBench bench;
    ASSERT_NE(bench.pictures(), nullptr);
    bench.paste();
    ASSERT_EQ(bench.kept().size(), 1U);
    EXPECT_FALSE(bench.kept()[0].inRecordOf.has_value());
    editor(bench.pictures(), "attachmentNote")->focusTarget()->setFocus(Qt::TabFocusReason);
    SheetBench::line(QStringLiteral("the flue"));
    auto* box = child<QCheckBox>(bench.pictures(), "inRecord");
    ASSERT_FALSE(box->isHidden());
    box->setFocus();
    SheetBench::press(Qt::Key_Space);
    ASSERT_EQ(bench.kept().size(), 1U);
    EXPECT_EQ(bench.kept()[0].note, "the flue");
    EXPECT_EQ(bench.kept()[0].inRecordOf, bench.visit);
    EXPECT_TRUE(box->isChecked());
    box->setFocus();
    SheetBench::press(Qt::Key_Space);
    EXPECT_FALSE(bench.kept()[0].inRecordOf.has_value());
}

TEST(SheetPictures, areNamedByWhatTheyAreOf) {
    PicturesBench bench;
    bench.paste();
    const QString name = child<QCheckBox>(bench.pictures(), "inRecord")->accessibleName();
    EXPECT_TRUE(name.contains(QStringLiteral("kitchen"))) << name.toStdString();
}

TEST(SheetPlots, areDrawnOnceAStageWasRead) {
    SheetBench bench;
    auto* part = bench.sheet().paper()->part(partAt(PartKind::Tightness, bench.test(), bench.file()));
    auto* plots = child<QWidget>(part, "plots");
    EXPECT_TRUE(plots->isHidden());
    bench.fillIn();
    SheetBench::settle();
    EXPECT_FALSE(plots->isHidden());
    EXPECT_GT(plots->height(), 100);
    EXPECT_TRUE(plots->accessibleName().contains(QStringLiteral("Tightness")));
}

}  // namespace
}  // namespace hearth::ui::visit
