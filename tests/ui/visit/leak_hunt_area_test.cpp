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

// Three parts show the comparison; each trace is read and fitted once for all of them, and again only when
// what it is asked has changed.
TEST_F(LeakHuntAreaTest, IsWorkedOutOnceForTheWholeSheet) {
    auto& model = m_bench.model();
    for (int more = 0; more < 2; ++more) {
        need(model.addTest(QStringLiteral("again")));
        SheetBench::settle();
    }
    for (const auto& test : m_bench.file().tests) {
        need(model.keepTrace({test.id, TraceBench::source(), {}, testing::watched(0.0004), std::nullopt}));
    }
    enter(reg::subject(m_bench.file().tests.back().id), Item::TestPipesShut, "scullery");
    SheetBench::settle();
    ASSERT_EQ(m_bench.sheet().findChildren<LeakHuntArea*>().size(), 3);
    ASSERT_FALSE(m_bench.sheet().findChildren<LeakHuntArea*>().front()->isHidden());
    const int reads = model.traces().reads();
    const int fits = model.traces().fits();
    EXPECT_EQ(reads, 3);
    EXPECT_GE(fits, 3);
    enter(reg::subject(m_bench.file().visit.id), Item::VisitReference, "another word");
    SheetBench::settle();
    EXPECT_EQ(model.traces().reads(), reads);
    EXPECT_EQ(model.traces().fits(), fits) << "nothing was changed that a trace is asked";
    enter(reg::subject(m_bench.file().tests.back().id), Item::TestVolumeTyped, "0.02");
    SheetBench::settle();
    EXPECT_EQ(model.traces().reads(), reads);
    EXPECT_EQ(model.traces().fits(), fits + 1) << "the volume of one test";
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
