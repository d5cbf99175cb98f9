// SPDX-License-Identifier: GPL-3.0-or-later
// The readings are invented; what they mean is worked in tests/core/tightness/leak_places_test.cpp.
#include "ui/visit/leak_hunt_area.h"

#include "tests/ui/visit/trace_bench.h"

#include <QLabel>

#include <gtest/gtest.h>

namespace hearth::ui::visit {
namespace {

using hearth::testing::need;
using hearth::testing::SheetBench;
using hearth::testing::TraceBench;
using reg::Item;

class LeakHuntAreaTest : public ::testing::Test {
  protected:
    LeakHuntAreaTest() {
        const reg::SubjectRef first = reg::subject(m_bench.file().tests.front().id);
        fill(first, "connected", "20.50", "19.50");
    }
    void enter(const reg::SubjectRef& on, Item item, const char* text) {
        need(m_bench.model().enter(on, item, QString::fromUtf8(text)));
    }
    void fill(const reg::SubjectRef& on, const char* appliances, const char* start, const char* end) {
        enter(on, Item::TestAppliances, appliances);
        enter(on, Item::AssumedTemperatureChange, "0");
        enter(on, Item::TightStart, start);
        enter(on, Item::TightEnd, end);
        enter(on, Item::TightStartedAt, "10:00:00");
        enter(on, Item::TightEndedAt, "10:02:00");
        SheetBench::settle();
    }
    [[nodiscard]] const LeakHuntArea& area() const {
        return *hearth::testing::child<LeakHuntArea>(m_bench.sheet().tightnessPart(), "leakHunt");
    }
    [[nodiscard]] QString said(const char* name) const {
        return area().findChild<QLabel*>(QLatin1String(name))->text();
    }

    TraceBench m_bench;
};

TEST_F(LeakHuntAreaTest, IsNotThereWhileThereIsNothingToCompare) {
    EXPECT_TRUE(area().isHidden());
    EXPECT_TRUE(area().meaning().isEmpty());
}

TEST_F(LeakHuntAreaTest, ComparesTheRepeatWithAppliancesIsolated) {
    const reg::SubjectRef first = reg::subject(m_bench.file().tests.front().id);
    enter(first, Item::RetestStart, "20.50");
    enter(first, Item::RetestEnd, "20.50");
    enter(first, Item::RetestStartedAt, "10:10:00");
    enter(first, Item::RetestEndedAt, "10:12:00");
    SheetBench::settle();
    ASSERT_FALSE(area().isHidden());
    EXPECT_TRUE(area().meaning().startsWith(QStringLiteral("There must be a leak here: ")))
        << area().meaning().toStdString();
    EXPECT_TRUE(area().meaning().contains(QStringLiteral("appliances")) ||
                area().meaning().contains(QStringLiteral("connected at")));
    EXPECT_TRUE(said("leakHuntPlaces").contains(QStringLiteral("no leak shown")));
    EXPECT_TRUE(said("leakHuntTests").contains(QStringLiteral("repeated with appliances isolated")));
    EXPECT_TRUE(said("leakHuntBeside").contains(QStringLiteral("verdict is by the standard's rule")));
}

TEST_F(LeakHuntAreaTest, SaysWhichWordNamesNoPipe) {
    need(m_bench.model().addTest(QStringLiteral("kitchen shut")));
    SheetBench::settle();
    const reg::SubjectRef second = reg::subject(m_bench.file().tests.back().id);
    enter(second, Item::TestPipesShut, "scullery");
    SheetBench::settle();
    ASSERT_FALSE(area().isHidden());
    EXPECT_TRUE(said("leakHuntTests").contains(QStringLiteral("the list has no pipe \u201Cscullery\u201D")))
        << said("leakHuntTests").toStdString();
}

}  // namespace
}  // namespace hearth::ui::visit
