// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/holidays_part.h"

#include "tests/support/files.h"
#include "tests/ui/support/firm_bench.h"
#include "tests/ui/support/keys.h"
#include "tests/ui/support/walker.h"
#include "ui/firm/firm_place.h"

#include <QLabel>

#include <gtest/gtest.h>

namespace hearth::ui::firm {
namespace {

using hearth::testing::child;
using hearth::testing::need;
using hearth::testing::press;

class HolidaysPartTest : public ::testing::Test {
  protected:
    void SetUp() override { start(); }
    void start() {
        window = std::make_unique<shell::MainWindow>(bench->parts());
        place = new FirmPlace(window->context());
        window->setPlaces({place});
        window->resize(1280, 800);
        hearth::testing::activate(window.get());
    }
    void take(const std::string& name, const std::string& text) {
        hearth::testing::writeFile(bench->folder() / name, text);
        bench->dialogs.chosen.push_back({QString::fromStdString((bench->folder() / name).string())});
        child<QPushButton>(place, "takeHolidaysButton")->setFocus();
        press(Qt::Key_Space);
    }
    [[nodiscard]] QString state() const { return child<QLabel>(place, "holidaysState")->text(); }
    [[nodiscard]] static std::string newer() {
        auto table = calendar::shippedBankHolidays();
        table.source = "a list of 2027";
        return calendar::bankHolidaysText(table);
    }

    std::unique_ptr<hearth::testing::FirmBench> bench = std::make_unique<hearth::testing::FirmBench>();
    std::unique_ptr<shell::MainWindow> window;
    FirmPlace* place = nullptr;
};

TEST_F(HolidaysPartTest, aFileIsTakenInAndSaysWhereItCameFrom) {
    EXPECT_TRUE(state().startsWith(QStringLiteral("Known until the end of 2028. Those that we ship")))
        << state().toStdString();
    EXPECT_FALSE(child<QPushButton>(place, "shippedHolidaysButton")->isEnabled());
    take("list.txt", newer());
    EXPECT_EQ(state(), QStringLiteral("Known until the end of 2028. From a list of 2027, taken in on 25 "
                                      "November 2026."));
    EXPECT_EQ(need(bench->store->bankHolidays()).source, "a list of 2027");
    child<QPushButton>(place, "shippedHolidaysButton")->setFocus();
    press(Qt::Key_Space);
    EXPECT_FALSE(need(bench->store->bankHolidays()).taken);
}

TEST_F(HolidaysPartTest, whatIsDoubtfulIsRefusedInWordsAndNothingChanges) {
    take("list.txt", newer());
    take("other.json", R"({"england-and-wales": {"events": []}})");
    ASSERT_FALSE(bench->dialogs.told.empty());
    EXPECT_EQ(bench->dialogs.told.back(),
              QStringLiteral("It has nothing for Scotland. Those in force stay as they were."));
    EXPECT_EQ(need(bench->store->bankHolidays()).source, "a list of 2027");
}

TEST_F(HolidaysPartTest, theyAreAskedForOnceTheyRunOut) {
    EXPECT_TRUE(child<QLabel>(place, "holidaysAsking")->isHidden());
    window.reset();
    bench = std::make_unique<hearth::testing::FirmBench>("2028-02-01");
    start();
    const auto* asking = child<QLabel>(place, "holidaysAsking");
    EXPECT_FALSE(asking->isHidden());
    EXPECT_TRUE(asking->text().contains(QStringLiteral("bookings after 2028")))
        << asking->text().toStdString();
}

}  // namespace
}  // namespace hearth::ui::firm
