// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/logo_part.h"

#include "core/store/firm_logo.h"
#include "tests/support/files.h"
#include "tests/ui/support/firm_bench.h"
#include "tests/ui/support/keys.h"
#include "tests/ui/support/walker.h"

#include <QFile>
#include <QImage>
#include <QPushButton>

#include <gtest/gtest.h>

namespace hearth::ui::firm {
namespace {

using hearth::testing::child;
using hearth::testing::FirmBench;
using hearth::testing::need;
using hearth::testing::press;

class LogoPartTest : public ::testing::Test {
  protected:
    void SetUp() override {
        part = std::make_unique<LogoPart>(bench.context(), nullptr);
        part->refresh();
        hearth::testing::activate(part.get());
    }
    QString pictureFile(const QString& name, const QSize& size) {
        QImage image(size, QImage::Format_ARGB32);
        image.fill(QColor(0, 90, 160));
        const QString path = QString::fromStdString((bench.folder() / name.toStdString()).string());
        EXPECT_TRUE(image.save(path));
        return path;
    }
    QString otherFile(const QString& name, const QByteArray& bytes) {
        const QString path = QString::fromStdString((bench.folder() / name.toStdString()).string());
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        EXPECT_EQ(file.write(bytes), bytes.size());
        return path;
    }
    void choose(const QString& path) {
        bench.dialogs.chosen.push_back({path});
        child<QPushButton>(part.get(), "chooseLogoButton")->setFocus();
        press(Qt::Key_Return);
    }
    [[nodiscard]] std::optional<record::Logo> logo() const {
        return need(store::logoOf(*bench.store, need(bench.store->firm())));
    }
    [[nodiscard]] bool isShown() const { return child<QLabel>(part.get(), "logoPicture")->isVisible(); }

    FirmBench bench;
    std::unique_ptr<LogoPart> part;
};

TEST_F(LogoPartTest, keepsAPictureShowsItAndTakesItAway) {
    EXPECT_FALSE(isShown());
    EXPECT_FALSE(child<QPushButton>(part.get(), "removeLogoButton")->isVisible());
    choose(pictureFile(QStringLiteral("logo.png"), {300, 100}));
    ASSERT_TRUE(logo().has_value());
    EXPECT_EQ(logo()->mediaType, "image/png");
    EXPECT_TRUE(isShown());
    EXPECT_TRUE(bench.dialogs.told.isEmpty());

    child<QPushButton>(part.get(), "removeLogoButton")->setFocus();
    press(Qt::Key_Space);
    EXPECT_FALSE(logo().has_value());
    EXPECT_FALSE(isShown());
    ASSERT_TRUE(need(bench.store->undo()).has_value());
    part->refresh();
    EXPECT_TRUE(isShown());
    ASSERT_TRUE(need(bench.store->undo()).has_value());
    EXPECT_FALSE(logo().has_value()) << "choosing it is one step";
}

TEST_F(LogoPartTest, keepsOneThatIsFinerThanPaperSmaller) {
    choose(pictureFile(QStringLiteral("large.jpg"), {3000, 1000}));
    ASSERT_TRUE(logo().has_value());
    QImage kept;
    ASSERT_TRUE(kept.loadFromData(QByteArray::fromStdString(logo()->bytes)));
    EXPECT_EQ(kept.size(), QSize(1200, 400));
    EXPECT_EQ(logo()->mediaType, "image/png");
}

TEST_F(LogoPartTest, saysWhyOthersAreNotKept) {
    choose(pictureFile(QStringLiteral("logo.jpg"), {300, 100}));
    const auto before = logo();
    const std::pair<QString, const char*> cases[] = {
        {otherFile(QStringLiteral("logo.svg"), "<svg xmlns='http://www.w3.org/2000/svg'/>"),
         "neither a PNG nor a JPEG"},
        {otherFile(QStringLiteral("logo.pdf"), "%PDF-1.4\n%%EOF\n"), "neither a PNG nor a JPEG"},
        {otherFile(QStringLiteral("cut.png"), QByteArray("\x89PNG\r\n\x1a\n")), "cut.png"},
        {otherFile(QStringLiteral("huge.png"), QByteArray(5 * 1024 * 1024 + 1, 'x')), "5 MB"},
        {QStringLiteral("/nowhere/logo.png"), "/nowhere/logo.png"},
    };
    for (const auto& [path, said] : cases) {
        bench.dialogs.told.clear();
        choose(path);
        ASSERT_EQ(bench.dialogs.told.size(), 1) << path.toStdString();
        EXPECT_TRUE(bench.dialogs.told[0].contains(QString::fromLatin1(said)))
            << bench.dialogs.told[0].toStdString();
        EXPECT_EQ(logo(), before);
    }
    bench.dialogs.told.clear();
    bench.dialogs.chosen.push_back({});  // cancelled
    child<QPushButton>(part.get(), "chooseLogoButton")->click();
    EXPECT_TRUE(bench.dialogs.told.isEmpty());
    EXPECT_EQ(logo(), before);
}

TEST_F(LogoPartTest, hasUniqueNames) {
    choose(pictureFile(QStringLiteral("logo.png"), {300, 100}));
    hearth::testing::expectUniqueNames(part.get());
    hearth::testing::expectEveryStopOnce(part.get());
}

}  // namespace
}  // namespace hearth::ui::firm
