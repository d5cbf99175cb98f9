// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gauge/journal.h"

#include "tests/support/files.h"
#include "tests/support/fixed_clock.h"
#include "ui/gauge/recorder.h"

#include <gtest/gtest.h>

namespace hearth::ui::gauge {
namespace {

using namespace std::chrono_literals;
using quantity::Decimal;
using quantity::UnitCode;

QString textOf(const std::filesystem::path& path) {
    return QString::fromStdString(path.string());
}

GaugeReading journalReading(const char* value, std::chrono::milliseconds at) {
    GaugeReading reading;
    reading.line.value = *Decimal::parse(value);
    reading.line.unit = UnitCode::Millibar;
    reading.at = at;
    return reading;
}

TEST(Journal, GivesBackWhatWasRecorded) {
    const testing::TempDir folder;
    FixedClock clock = testing::fixedClock("2026-11-25", "09:46");
    Recorder recorder(clock);
    TraceOrigin origin{
        "Blue\ngauge", SourceKind::Network, clock.now(), UnitCode::Millibar, {"0.01", UnitCode::Millibar}};
    recorder.begin(origin, textOf(folder / "journals"));
    ASSERT_TRUE(recorder.hasJournal());
    EXPECT_TRUE(leftJournals(textOf(folder / "journals")).empty()) << "one that is being written is not left";
    clock.advance(1500ms);
    auto first = journalReading("20.50", clock.elapsed());
    first.line.second = *Decimal::parse("18.4");
    first.line.secondUnit = UnitCode::Celsius;
    recorder.add(first);
    recorder.mark(GaugeEvent::Timing);
    clock.advance(1s);
    recorder.lose();
    clock.advance(1s);
    recorder.add(journalReading("\u22120.02", clock.elapsed()));
    const auto wanted = recorder.taken();
    recorder.end();
    recorder.begin(origin);  // lets the journal go

    const auto left = leftJournals(textOf(folder / "journals"));
    ASSERT_EQ(left.size(), 1U);
    const auto read = readJournal(left.front());
    ASSERT_TRUE(read);
    EXPECT_TRUE(read->isEnded);
    origin.name = "Blue gauge";
    EXPECT_EQ(read->taken.origin, origin);
    EXPECT_EQ(read->taken.marks, wanted.marks);
    ASSERT_EQ(read->taken.trace.size(), 2U);
    for (std::size_t i = 0; i < 2; ++i) {
        EXPECT_EQ(read->taken.trace[i].at, wanted.trace[i].at);
        EXPECT_EQ(read->taken.trace[i].pressure, wanted.trace[i].pressure);
        EXPECT_EQ(read->taken.trace[i].temperature, wanted.trace[i].temperature);
    }
    ASSERT_EQ(read->taken.gaps.size(), 1U);
    EXPECT_EQ(read->taken.gaps[0].from, wanted.gaps[0].from);
    EXPECT_EQ(read->taken.gaps[0].to, wanted.gaps[0].to);
    discardJournal(left.front());
    EXPECT_TRUE(leftJournals(textOf(folder / "journals")).empty());
}

const reg::TraceZero kJournalZero{
    {"\u22120.01", UnitCode::Millibar}, {"0.01", UnitCode::Millibar}, Instant{1s}, true};

// Two gauges on one pipe: two journals, of which the second says whose it is; left, they are one recording.
TEST(Journal, GivesBackWhatASecondGaugeSawAndWhatTheZeroWas) {
    const testing::TempDir folder;
    FixedClock clock = testing::fixedClock("2026-11-25", "09:46");
    auto first = std::make_unique<Recorder>(clock);
    auto second = std::make_unique<Recorder>(clock);
    first->begin({"Blue gauge", SourceKind::Network, clock.now()}, textOf(folder.path()));
    clock.advance(500ms);
    TraceOrigin red{"Red gauge", SourceKind::Serial, clock.now()};
    red.zero = kJournalZero;
    second->beginBeside(*first, red, textOf(folder.path()));
    auto zero = kJournalZero;
    zero.isZero = false;
    first->setZero(zero);
    clock.advance(500ms);
    first->add(journalReading("20.50", clock.elapsed()));
    second->add(journalReading("20.49", clock.elapsed()));
    EXPECT_TRUE(leftRecordings(textOf(folder.path()), false, 5).empty());
    first.reset();
    second.reset();
    const auto left = leftRecordings(textOf(folder.path()), false, 5);
    ASSERT_EQ(left.size(), 1U);
    ASSERT_EQ(left[0].paths.size(), 2U);
    EXPECT_EQ(left[0].taken.origin.name, "Blue gauge");
    EXPECT_EQ(left[0].taken.origin.zero, zero);
    ASSERT_EQ(left[0].taken.beside.size(), 1U);
    const auto& beside = left[0].taken.beside[0];
    EXPECT_EQ(beside.origin.name, "Red gauge");
    EXPECT_EQ(beside.origin.zero, kJournalZero);
    EXPECT_EQ(beside.trace.at(0).at, left[0].taken.trace.at(0).at) << "times are the first one's";
    discardJournal(left[0].paths[0]);
    const auto alone = leftRecordings(textOf(folder.path()), false, 5);
    ASSERT_EQ(alone.size(), 1U) << "without its first it stands by itself";
    EXPECT_EQ(alone[0].taken.origin.name, "Red gauge");
}

TEST(Journal, LeavesOutWhatIsBroken) {
    const testing::TempDir folder;
    const auto path = folder / "a.gauge";
    testing::writeFile(
        path,
        "hearthledger gauge journal 1\nname x\nkind from_tomorrow\nbegan never\nunit mbar\n"
        "r 100 20.50 mbar\nr x 20.49 mbar\nr 300 OVER mbar\nr 400 20.48 psi\nr 500 20.47 ppm\n"
        "z 0.01 mbar\nz x mbar 0.01 mbar 2026-11-25T09:46:00.000Z yes\nz 0.01 mbar 0.01 mbar never yes\n"
        "e 550 party\nr 50 99.99 mbar\n\n\xff\xfe\nr 600 20.46 mbar\nr 700 20.4");
    const auto read = readJournal(textOf(path));
    ASSERT_TRUE(read);
    EXPECT_FALSE(read->isEnded);
    EXPECT_TRUE(read->taken.origin.isSimulated()) << "an unknown kind is no evidence";
    EXPECT_FALSE(read->taken.origin.beganAt);
    EXPECT_FALSE(read->taken.origin.zero.isThere());
    ASSERT_EQ(read->taken.trace.size(), 2U);
    EXPECT_NEAR(read->taken.trace[1].pressure.in(quantity::kMillibar), 20.46, 1e-9);
}

TEST(Journal, IsNoneWithoutItsHeadOrAnyReading) {
    const testing::TempDir folder;
    const auto path = folder / "a.gauge";
    for (const char* text : {"", "\n", "r 100 20.50 mbar\n", "hearthledger gauge journal 2\nr 1 20.5 mbar\n",
                             "hearthledger gauge journal 1\nname x\n"}) {
        testing::writeFile(path, text);
        EXPECT_FALSE(readJournal(textOf(path))) << text;
    }
    EXPECT_FALSE(readJournal(textOf(folder / "none.gauge")));
}

TEST(Journal, IsNotThereWhereTheFolderCantBeMade) {
    const testing::TempDir folder;
    testing::writeFile(folder / "file", "x");
    const FixedClock clock = testing::fixedClock("2026-11-25", "09:46");
    Recorder recorder(clock);
    recorder.begin({"gauge"}, textOf(folder / "file" / "journals"));
    EXPECT_TRUE(recorder.isRecording());
    EXPECT_FALSE(recorder.hasJournal()) << "so that it can be said";
}

}  // namespace
}  // namespace hearth::ui::gauge
