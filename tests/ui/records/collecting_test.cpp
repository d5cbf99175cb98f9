// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/records/collecting.h"

#include "tests/ui/support/firm_bench.h"
#include "tests/ui/support/keys.h"
#include "tests/ui/support/walker.h"
#include "ui/records/records_place.h"
#include "ui/shell/line_list.h"

#include <QProgressDialog>

#include <gtest/gtest.h>

namespace hearth::ui::records {
namespace {

using hearth::testing::FirmBench;
using hearth::testing::need;
using hearth::testing::press;

constexpr int kThoseShown = 0;
constexpr int kOfAPerson = 1;
constexpr int kOnPaper = 2;

/// Three records in two houses.
class CollectingTest : public ::testing::Test {
  protected:
    void SetUp() override {
        for (const char* road : {"14 Tallow Lane", "3 Fell Row"}) {
            const auto visit = bench.startVisit(bench.addPremises(road, "M. Harrow"));
            records.push_back(need(bench.issue()(visit, std::nullopt, {})));
        }
        const auto visit = bench.startVisit(bench.addPremises("9 Tallow Lane", "K. Other"));
        records.push_back(need(bench.issue()(visit, std::nullopt, {})));
        place = std::make_unique<RecordsPlace>(bench.context());
        place->resize(1000, 700);
        place->refresh();
        hearth::testing::activate(place.get());
        place->takeFocus();
    }
    void collect() const { press(Qt::Key_S, Qt::ControlModifier | Qt::ShiftModifier); }
    [[nodiscard]] std::vector<record::Sending> sent(std::size_t i) const {
        return need(bench.store->sendings(records[i]));
    }

    FirmBench bench;
    std::vector<store::RecordId> records;
    std::unique_ptr<RecordsPlace> place;
};

TEST_F(CollectingTest, printsThoseOfTheListAsOneJob) {
    place->search(QStringLiteral("Tallow"));
    bench.dialogs.answers = {kThoseShown, kOnPaper};
    collect();
    EXPECT_EQ(bench.printing.manys, 1);
    ASSERT_EQ(bench.printing.jobs.size(), 2U);
    EXPECT_EQ(bench.printing.jobs[0].options.stamp, paper::Stamp::None);
    EXPECT_TRUE(bench.dialogs.asked.last().contains(QStringLiteral("How?")));
    ASSERT_FALSE(bench.navigator.said.isEmpty());
    EXPECT_EQ(bench.navigator.said.last(),
              QCoreApplication::translate("Collecting", "%n record(s) sent to the printer.", nullptr, 2));
    EXPECT_EQ(sent(0).size(), 1U);
    EXPECT_EQ(sent(1).size(), 0U) << "the other road";
    ASSERT_EQ(sent(2).size(), 1U);
    EXPECT_EQ(sent(2)[0].how, record::SentBy::Printed);
}

TEST_F(CollectingTest, printsThoseOfALandlordOrOfAPeriod) {
    bench.dialogs.answers = {kOfAPerson, 1, kOnPaper};  // two have that name
    bench.dialogs.texts = {QStringLiteral("Harrow")};
    collect();
    EXPECT_EQ(bench.printing.jobs.size(), 1U);
    bench.dialogs.answers = {2, kOnPaper};
    bench.dialogs.texts = {QStringLiteral("1/1/2020"), QString()};
    collect();
    EXPECT_EQ(bench.printing.jobs.size(), 4U);
}

TEST_F(CollectingTest, stoppedItSaysHowManyWentOut) {
    bench.dialogs.answers = {kThoseShown, kOnPaper};
    bench.printing.afterPart = [this](int parts) {
        auto* progress = place->findChild<QProgressDialog*>(QStringLiteral("collectingProgress"));
        ASSERT_NE(progress, nullptr);
        EXPECT_FALSE(progress->accessibleName().isEmpty());
        if (parts == 2) {
            progress->show();  // as it is by itself when it takes longer
            hearth::testing::activate(progress);
            QTest::keyClick(progress, Qt::Key_Escape);
            QApplication::processEvents();
            EXPECT_TRUE(progress->wasCanceled()) << QApplication::focusWidget();
        }
    };
    collect();
    EXPECT_EQ(bench.printing.jobs.size(), 2U);
    EXPECT_TRUE(bench.navigator.said.last().startsWith(QStringLiteral("Stopped. ")));
    EXPECT_TRUE(bench.navigator.said.last().contains(u'2'));
    EXPECT_EQ(sent(0).size() + sent(1).size() + sent(2).size(), 2U);
    EXPECT_TRUE(bench.dialogs.told.isEmpty());
    EXPECT_EQ(place->findChild<QProgressDialog*>(QStringLiteral("collectingProgress")), nullptr);
}

TEST_F(CollectingTest, aPrinterThatFailsIsSaidWithHowManyWentOut) {
    bench.dialogs.answers = {kThoseShown, kOnPaper};
    bench.printing.failure = Error{ErrorCode::PrinterFailed, {"Office", "error"}};
    bench.printing.failsAt = 1;
    collect();
    ASSERT_EQ(bench.dialogs.told.size(), 1);
    EXPECT_TRUE(bench.dialogs.told[0].contains(bench.words.error(*bench.printing.failure)));
    EXPECT_TRUE(bench.dialogs.told[0].startsWith(u'1'));
}

TEST_F(CollectingTest, whoeverStepsBackHasPrintedNothing) {
    for (const std::deque<int>& answers : {std::deque<int>{-1}, std::deque<int>{kThoseShown, -1}}) {
        bench.dialogs.answers = answers;
        collect();
    }
    bench.dialogs.answers = {kThoseShown, kOnPaper};
    bench.printing.cancelled = true;
    collect();
    EXPECT_TRUE(bench.printing.jobs.empty());
    EXPECT_TRUE(bench.dialogs.told.isEmpty());
    EXPECT_EQ(sent(0).size(), 0U);
}

}  // namespace
}  // namespace hearth::ui::records
