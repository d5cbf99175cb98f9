// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gauge/serial_source.h"

#include "tests/ui/gauge/pseudo_terminal.h"
#include "tests/ui/gauge/source_bench.h"

#include <filesystem>
#include <gtest/gtest.h>

namespace hearth::ui::gauge {
namespace {

using testing::Heard;
using testing::PseudoTerminal;
using Texts = std::vector<std::string>;

constexpr int kSerialWait = 20000;

TEST(SerialSource, ReadsLinesHoweverTheyCome) {
    const SystemClock clock;
    const PseudoTerminal wire;
    SerialSource source(wire.port(), 9600, testing::matcherOf(), clock);
    Heard heard(source);
    source.start();
    ASSERT_EQ(source.state(), SourceState::Live);
    ASSERT_TRUE(wire.write("0.51 mbar\r\n20.5"));  // the first is the tail of a line
    QTest::qWait(20);
    ASSERT_TRUE(wire.write("0 mb"));
    QTest::qWait(20);
    ASSERT_TRUE(wire.write("ar\r\n20.49 mbar\n20.48 mbar\r20.47 mbar\r\n"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return heard.values.size() == 4; }, kSerialWait));
    EXPECT_EQ(heard.values, (Texts{"20.50", "20.49", "20.48", "20.47"}));
    EXPECT_EQ(source.refusals(), 0U);
}

TEST(SerialSource, SaysWhatIsNoReading) {
    const SystemClock clock;
    const PseudoTerminal wire;
    SerialSource source(wire.port(), 9600, testing::matcherOf(), clock);
    Heard heard(source);
    source.start();
    ASSERT_TRUE(wire.write("\n\x01\xff\xfe garbage\n20.50 psi\n20,50 mbar\n20.50 mbar\n" +
                           std::string(3000, 'x') + "\n20.49 mbar\n"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return heard.values.size() == 2; }, kSerialWait));
    EXPECT_EQ(heard.values, (Texts{"20.50", "20.49"}));
    EXPECT_EQ(heard.refused, (Texts{"\x01\xff\xfe garbage", "20.50 psi", "20,50 mbar"}));
    EXPECT_EQ(source.tooLong(), 1U);
}

TEST(SerialSource, TakesUpAPortThatWasUnpluggedAndComesBack) {
    const SystemClock clock;
    const auto link = std::filesystem::temp_directory_path() / ("gauge-port-" + std::to_string(getpid()));
    auto wire = std::make_unique<PseudoTerminal>();
    std::filesystem::remove(link);
    std::filesystem::create_symlink(wire->port().toStdString(), link);
    SerialSource source(QString::fromStdString(link.string()), 9600, testing::matcherOf(), clock);
    Heard heard(source);
    source.start();
    ASSERT_TRUE(wire->write("\n20.50 mbar\n20.4"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return heard.values.size() == 1; }, kSerialWait));
    wire->unplug();
    std::filesystem::remove(link);
    ASSERT_TRUE(QTest::qWaitFor([&] { return heard.losses == 1; }, kSerialWait));
    EXPECT_EQ(source.state(), SourceState::Lost);
    EXPECT_EQ(source.fault(), SourceFault::Unplugged);
    ASSERT_TRUE(QTest::qWaitFor([&] { return source.fault() == SourceFault::NotThere; }, kSerialWait));

    wire = std::make_unique<PseudoTerminal>();
    std::filesystem::create_symlink(wire->port().toStdString(), link);
    ASSERT_TRUE(QTest::qWaitFor([&] { return heard.resumes == 1; }, kSerialWait));
    EXPECT_EQ(source.state(), SourceState::Live);
    ASSERT_TRUE(wire->write("7 mbar\n20.48 mbar\n"));  // the half lines before and after are not put together
    ASSERT_TRUE(QTest::qWaitFor([&] { return heard.values.size() == 2; }, kSerialWait));
    EXPECT_EQ(heard.values, (Texts{"20.50", "20.48"}));
    EXPECT_EQ(heard.losses, 1);
    source.stop();
    EXPECT_EQ(source.state(), SourceState::Stopped);
    std::filesystem::remove(link);
}

TEST(SerialSource, SaysWhyAPortCantBeOpened) {
    const SystemClock clock;
    SerialSource source(QStringLiteral("/dev/no-such-port"), 9600, testing::matcherOf(), clock);
    Heard heard(source);
    source.start();
    EXPECT_EQ(source.state(), SourceState::Opening);
    EXPECT_EQ(source.fault(), SourceFault::NotThere);
    EXPECT_EQ(heard.losses, 0) << "what never was there is not lost";
    source.stop();
    EXPECT_EQ(source.state(), SourceState::Stopped);
}

// A gauge that answers only when it is asked: it is asked at once, again and again, and anew when it comes
// back.
TEST(SerialSource, AsksAGaugeThatAnswersOnlyThen) {
    const SystemClock clock;
    const PseudoTerminal wire;
    SerialSource source(wire.port(), 9600, testing::matcherOf(), clock);
    source.setAsking("READ?\r\n", std::chrono::milliseconds(50));
    Heard heard(source);
    source.start();
    std::string asked;
    int answers = 0;
    ASSERT_TRUE(wire.write("\n"));
    ASSERT_TRUE(QTest::qWaitFor(
        [&] {
            asked += wire.read();
            while (asked.rfind("READ?\r\n", 0) == 0) {
                asked.erase(0, 7);
                static_cast<void>(wire.write("20.5" + std::to_string(answers++ % 10) + " mbar\r\n"));
            }
            return heard.values.size() >= 4;
        },
        kSerialWait));
    EXPECT_EQ(asked, "") << "nothing but the question is sent";
    EXPECT_EQ(heard.values[0], "20.50");
    EXPECT_EQ(heard.values[3], "20.53");
    source.stop();
    static_cast<void>(wire.read());
    QTest::qWait(200);
    EXPECT_EQ(wire.read(), "") << "nobody is asked once it is stopped";
}

TEST(SerialSource, SendsNothingUnlessItIsToldTo) {
    const SystemClock clock;
    const PseudoTerminal wire;
    SerialSource source(wire.port(), 9600, testing::matcherOf(), clock);
    Heard heard(source);
    source.start();
    ASSERT_TRUE(wire.write("\n20.50 mbar\n"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return heard.values.size() == 1; }, kSerialWait));
    EXPECT_EQ(wire.read(), "");
}

// One that never reads what it is sent: it is sent no more than fits, and what it says is read all the same.
TEST(SerialSource, IsNotHeldUpByAGaugeThatReadsNothing) {
    const SystemClock clock;
    const PseudoTerminal wire;
    SerialSource source(wire.port(), 9600, testing::matcherOf(), clock);
    source.setAsking(QByteArray(200, 'x'), std::chrono::milliseconds(1));
    Heard heard(source);
    testing::LongestWait wait;
    source.start();
    QTest::qWait(500);
    ASSERT_TRUE(wire.write("\n20.50 mbar\n"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return heard.values.size() == 1; }, kSerialWait));
    EXPECT_LT(wait.milliseconds(), 1500);
}

}  // namespace
}  // namespace hearth::ui::gauge
