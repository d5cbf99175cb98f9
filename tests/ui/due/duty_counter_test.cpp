// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/duty_counter.h"

#include "tests/ui/due/due_window.h"

#include <QTest>

namespace hearth::ui::due {
namespace {

constexpr int kWait = 20000;

class DutyCounterTest : public ::testing::Test {
  protected:
    void SetUp() override {
        bench.gauge.calibrationDue = on("2026-11-24");
        hearth::testing::need(bench.store->save(bench.gauge));
        QObject::connect(&counter, &DutyCounter::counted,
                         [this](const store::DutyCount& count) { counts.push_back(count); });
        QObject::connect(&counter, &DutyCounter::failed,
                         [this](const Error& error) { errors.push_back(error); });
    }
    hearth::testing::FirmBench bench;
    DutyCounter counter{bench.path()};
    std::vector<store::DutyCount> counts;
    std::vector<Error> errors;
    calendar::Date today = on("2026-11-25");
};

TEST_F(DutyCounterTest, countsBesideTheWorkAndOnceMoreForWhatChangedMeanwhile) {
    counter.count(today);
    EXPECT_TRUE(counter.isBusy());
    EXPECT_TRUE(counts.empty()) << "nothing waits for it";
    bench.gauge.calibrationDue = on("2026-12-25");
    hearth::testing::need(bench.store->save(bench.gauge));
    counter.count(today);
    counter.count(today);
    ASSERT_TRUE(QTest::qWaitFor([this] { return !counter.isBusy(); }, kWait));
    ASSERT_EQ(counts.size(), 1U) << "what may be of before is not said";
    EXPECT_EQ(counts[0], (store::DutyCount{1, 0}));
}

TEST_F(DutyCounterTest, saysWhatFailed) {
    DutyCounter none(bench.path().parent_path() / "none.hearth");
    QObject::connect(&none, &DutyCounter::failed, [this](const Error& error) { errors.push_back(error); });
    none.count(today);
    ASSERT_TRUE(QTest::qWaitFor([this] { return !errors.empty(); }, kWait));
}

TEST_F(DutyCounterTest, waitsForACountWhenItGoes) {
    auto gone = std::make_unique<DutyCounter>(bench.path());
    gone->count(today);
    gone.reset();
    EXPECT_TRUE(counts.empty());
}

}  // namespace
}  // namespace hearth::ui::due
