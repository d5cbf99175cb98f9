// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/attachments_part.h"

#include "tests/support/files.h"
#include "tests/ui/support/firm_bench.h"
#include "tests/ui/support/keys.h"
#include "tests/ui/support/walker.h"
#include "ui/shell/line_list.h"

#include <QApplication>
#include <QCheckBox>
#include <QClipboard>
#include <QDragEnterEvent>
#include <QDropEvent>
#include <QImage>
#include <QLabel>
#include <QMimeData>
#include <QPushButton>
#include <QUrl>

#include <gtest/gtest.h>

namespace hearth::ui::shell {
namespace {

using hearth::testing::child;
using hearth::testing::editor;
using hearth::testing::fillField;
using hearth::testing::FirmBench;
using hearth::testing::need;
using hearth::testing::press;

QString samplePicture(const char* name) {
    return QStringLiteral(HEARTH_SOURCE_DIR "/tests/core/exchange/data/") + QString::fromLatin1(name);
}

class AttachmentsPartTest : public ::testing::Test {
  protected:
    void SetUp() override {
        premises.id = {bench.store->newId()};
        premises.address.line1 = "14 Tallow Lane";
        need(bench.store->save(premises));
        const shell::Context context = bench.context();
        part = std::make_unique<AttachmentsPart>(context, QString(), nullptr);
        part->show("premises", premises.id.bytes);
        hearth::testing::activate(part.get());
    }
    [[nodiscard]] std::vector<reg::Attachment> kept() const {
        return need(bench.store->attachmentsOf(premises.id.bytes));
    }
    [[nodiscard]] LineList* list() const { return child<LineList>(part.get(), "attachmentsList"); }
    void add(const char* name) {
        bench.dialogs.chosen.push_back({samplePicture(name)});
        child<QPushButton>(part.get(), "addAttachmentButton")->click();
    }

    FirmBench bench;
    reg::Premises premises;
    std::unique_ptr<AttachmentsPart> part;
};

TEST_F(AttachmentsPartTest, keepsAPictureWithoutItsPlaceAndShowsIt) {
    add("with_place.jpg");
    ASSERT_EQ(kept().size(), 1U);
    EXPECT_EQ(kept()[0].name, "with_place.jpg");
    EXPECT_FALSE(kept()[0].placeKept);
    EXPECT_EQ(need(bench.store->attachmentBytes(kept()[0].id)).find("GPS"), std::string::npos);
    EXPECT_EQ(list()->count(), 1);
    EXPECT_FALSE(list()->line(0).picture.isNull());
    EXPECT_EQ(list()->currentRow(), 0);
    // held upright: 24 wide and 16 high on the sensor
    EXPECT_LT(list()->line(0).picture.width(), list()->line(0).picture.height());
}

TEST_F(AttachmentsPartTest, keepsThePlaceOnPurpose) {
    child<QCheckBox>(part.get(), "keepPlace")->setChecked(true);
    add("with_place.jpg");
    ASSERT_EQ(kept().size(), 1U);
    EXPECT_TRUE(kept()[0].placeKept);
    EXPECT_EQ(need(bench.store->attachmentBytes(kept()[0].id)),
              hearth::testing::readFile(samplePicture("with_place.jpg").toStdString()));
    EXPECT_TRUE(list()->line(0).rightDetail.contains(QStringLiteral("place kept")));
}

TEST_F(AttachmentsPartTest, tellsWhatItDidNotTakeAndKeepsTheRest) {
    const hearth::testing::TempDir folder;
    const auto notes = folder / "notes.jpg";
    hearth::testing::writeFile(notes, "no picture");
    part->addFiles({QString::fromStdString(notes.string()), samplePicture("without_place.jpg"),
                    QStringLiteral("/nowhere/gone.png")});
    ASSERT_EQ(kept().size(), 1U);
    EXPECT_EQ(kept()[0].name, "without_place.jpg");
    ASSERT_EQ(bench.dialogs.told.size(), 1);
    EXPECT_TRUE(bench.dialogs.told[0].contains(QStringLiteral("notes.jpg")));
    EXPECT_TRUE(bench.dialogs.told[0].contains(QStringLiteral("gone.png")));
}

TEST_F(AttachmentsPartTest, isDescribedOpenedAndTakenAwayByKeys) {
    add("with_place.png");
    fillField(editor(part.get(), "attachmentNote"), QStringLiteral("terminal from below"));
    EXPECT_EQ(kept()[0].note, "terminal from below");
    list()->setFocus();
    press(Qt::Key_Return);
    EXPECT_EQ(bench.dialogs.opened, QStringList{QStringLiteral("with_place.png")});
    press(Qt::Key_Delete);
    EXPECT_TRUE(kept().empty());
    EXPECT_EQ(list()->count(), 0);
    ASSERT_TRUE(need(bench.store->undo()).has_value());
    part->show("premises", premises.id.bytes);
    EXPECT_EQ(list()->count(), 1);
}

/// As when somebody drags files from the desktop and lets go of them on the part.
void drop(QWidget& onto, const QStringList& files) {
    QMimeData data;
    QList<QUrl> urls;
    for (const QString& file : files) {
        urls << QUrl::fromLocalFile(file);
    }
    data.setUrls(urls);
    QDragEnterEvent enter(QPoint(5, 5), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&onto, &enter);
    if (enter.isAccepted()) {
        QDropEvent let(QPointF(5, 5), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(&onto, &let);
    }
}

TEST_F(AttachmentsPartTest, takesPicturesThatAreDropped) {
    drop(*part, {samplePicture("with_place.jpg"), samplePicture("without_place.jpg")});
    ASSERT_EQ(kept().size(), 2U);
    EXPECT_FALSE(kept()[0].placeKept);
    EXPECT_EQ(list()->count(), 2);
}

TEST_F(AttachmentsPartTest, takesNothingThatIsDroppedWhereNothingMayChange) {
    part->setReadOnly(true);
    drop(*part, {samplePicture("with_place.jpg")});
    EXPECT_TRUE(kept().empty());
    part->setReadOnly(false);
    drop(*part, {samplePicture("with_place.jpg")});
    EXPECT_EQ(kept().size(), 1U);
}

TEST_F(AttachmentsPartTest, takesAPictureFromTheClipboard) {
    QImage image(40, 30, QImage::Format_RGB32);
    image.fill(Qt::gray);
    auto* data = new QMimeData;
    data->setImageData(image);
    QApplication::clipboard()->setMimeData(data);
    list()->setFocus();
    press(Qt::Key_V, Qt::ControlModifier);
    ASSERT_EQ(kept().size(), 1U);
    EXPECT_EQ(kept()[0].mediaType, "image/png");
}

}  // namespace
}  // namespace hearth::ui::shell
