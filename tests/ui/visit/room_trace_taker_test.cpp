// SPDX-License-Identifier: GPL-3.0-or-later
// The tables are invented.
#include "ui/visit/room_trace_taker.h"

#include "tests/support/files.h"
#include "tests/ui/visit/sheet_bench.h"
#include "ui/visit/room_trace_area.h"
#include "ui/visit/room_watch.h"

#include <QLabel>
#include <QPushButton>

#include <gtest/gtest.h>

namespace hearth::ui::visit {
namespace {

using hearth::testing::need;
using hearth::testing::SheetBench;
using reg::Item;

class RoomTraceTakerTest : public ::testing::Test {
  protected:
    RoomTraceTakerTest() {
        need(m_bench.model().enter(reg::subject(m_bench.file().visit.id), Item::VisitRoomCo,
                                   QStringLiteral("yes")));
        SheetBench::settle();
    }
    [[nodiscard]] RoomTraceTaker& taker() const { return *m_bench.sheet().findChild<RoomWatch*>()->taker(); }
    [[nodiscard]] RoomTraceArea& area() const { return *m_bench.sheet().findChild<RoomTraceArea*>(); }
    [[nodiscard]] QPushButton* button(const char* name) const {
        return m_bench.sheet().findChild<QPushButton*>(QLatin1String(name));
    }
    void choose(const char* name, const char* code) const {
        auto* editor = taker().editor(QString::fromLatin1(name));
        editor->setText(QString::fromLatin1(code));
        Q_EMIT editor->committed(editor->text());
    }
    [[nodiscard]] QString said() const {
        return taker().findChild<QLabel*>(QStringLiteral("roomFileSaid"))->text();
    }
    [[nodiscard]] bool canTake() const { return button("takeRoomTraceButton")->isEnabled(); }

    SheetBench m_bench;
};

TEST_F(RoomTraceTakerTest, ReadsAChosenFileAndOffersItsReadings) {
    const testing::TempDir folder;
    const auto path = folder / "landing.csv";
    testing::writeFile(path,
                       "Date time,CO (ppm)\n2026-11-25 09:40:00,2.5\n2026-11-25 09:41:30,11\n"
                       "2026-11-25 09:46:00,4\n");
    m_bench.firm.dialogs.chosen.push_back({QString::fromStdString(path.string())});
    button("takeRoomFile")->click();
    SheetBench::settle();
    ASSERT_TRUE(taker().file());
    EXPECT_TRUE(said().contains(QStringLiteral("3 readings over 6.0")));
    EXPECT_FALSE(canTake()) << "where its probe was is not in the file";
    choose("roomPlace", "elsewhere");
    ASSERT_TRUE(canTake());
    button("takeRoomTraceButton")->click();
    SheetBench::settle();
    ASSERT_EQ(m_bench.file().traces.size(), 1U);
    EXPECT_EQ(m_bench.file().traces[0].source.name, "landing.csv");
    EXPECT_FALSE(m_bench.file().traces[0].source.isSimulated);
    EXPECT_TRUE(m_bench.file().roomReadings().empty()) << "offered, not entered";
    ASSERT_EQ(area().offers().size(), 3U);
    EXPECT_EQ(area().offers()[1].reading.ppm, QStringLiteral("11.0")) << "in the digits of the file";
    area().confirmAll();
    SheetBench::settle();
    const auto rows = m_bench.file().roomReadings();
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_EQ(m_bench.model().textOf(rows[1], Item::RoomCoAt), QStringLiteral("1.5"));
    EXPECT_EQ(m_bench.model().textOf(rows[1], Item::RoomCoPlace), QStringLiteral("elsewhere"));
}

TEST_F(RoomTraceTakerTest, ConvertsNoOtherUnit) {
    taker().show(QStringLiteral("a.csv"), "time,CO mg/m3\n9:40:00,2\n9:41:00,3\n");
    choose("roomPlace", "room");
    EXPECT_FALSE(canTake());
    EXPECT_TRUE(said().contains(QStringLiteral("Carbon monoxide is taken in ppm alone")));
    choose("roomUnit", "ppm");
    EXPECT_FALSE(canTake()) << "its heading says otherwise";
    taker().show(QStringLiteral("b.csv"), "time,CO\n9:40:00,2\n9:41:00,3\n");
    choose("roomPlace", "room");
    EXPECT_FALSE(canTake()) << "no unit is said";
    choose("roomUnit", "ppm");
    EXPECT_TRUE(canTake());
    button("leaveRoomTraceButton")->click();
    SheetBench::settle();
    EXPECT_TRUE(m_bench.file().traces.empty());
    EXPECT_FALSE(taker().isVisible());
}

TEST_F(RoomTraceTakerTest, AsksWhenItBeganWhereTheFileDoesNotTell) {
    taker().show(QStringLiteral("a.csv"), "time s,CO ppm\n0,2\n60,3\n");
    choose("roomPlace", "room");
    EXPECT_FALSE(canTake());
    EXPECT_TRUE(said().contains(QStringLiteral("say when its first reading was taken")));
    choose("roomBegan", "09:15");
    ASSERT_TRUE(canTake());
    button("takeRoomTraceButton")->click();
    ASSERT_EQ(m_bench.file().traces.size(), 1U);
    EXPECT_EQ(wallTimeText(*m_bench.file().traces[0].source.beganAt), "09:15");
}

}  // namespace
}  // namespace hearth::ui::visit
