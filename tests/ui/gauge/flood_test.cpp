// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/gauge/pseudo_terminal.h"
#include "tests/ui/gauge/source_bench.h"
#include "ui/gauge/network_source.h"
#include "ui/gauge/recorder.h"
#include "ui/gauge/serial_source.h"

#include <QTcpServer>

#include <atomic>
#include <cstdio>
#include <gtest/gtest.h>
#include <thread>

namespace hearth::ui::gauge {
namespace {

using namespace std::chrono_literals;
using testing::Heard;
using testing::LongestWait;

constexpr int kFloodLines = 30000;  // three seconds of 10,000 a second
constexpr int kFloodWait = 20000;
/// What anybody calls a frozen window; common practice, no source. The waits are printed: some ten
/// milliseconds are usual, but a machine that does other work may hold a test for longer than the program
/// does.
constexpr qint64 kFrozen = 1500;

/// The lines of each hundredth of a second.
std::string hundredth(int from) {
    std::string lines;
    for (int i = 0; i < 100; ++i) {
        lines += std::to_string(10000 + from + i) + " Pa\r\n";
    }
    return lines;
}

struct Flooded {
    std::size_t read = 0;
    std::size_t kept = 0;
    std::uint64_t thinned = 0;
    qint64 longestWait = 0;
};

Flooded flood(Source& source, Recorder& recorder) {
    Heard heard(source);
    recorder.begin({"flood"});
    recorder.follow(source);
    const LongestWait wait;
    QElapsedTimer taken;
    taken.start();
    EXPECT_TRUE(QTest::qWaitFor([&] { return heard.values.size() == std::size_t{kFloodLines}; }, kFloodWait));
    EXPECT_GT(wait.beats(), 3);
    EXPECT_EQ(heard.refused.size(), 0U);
    for (std::size_t i = 0; i < heard.values.size(); ++i) {
        EXPECT_EQ(heard.values[i], std::to_string(10000 + i)) << "in the order in which they came";
    }
    std::printf("%zu lines in %lld ms: longest wait of a 10 ms timer %lld ms, kept %zu, thinned %llu\n",
                heard.values.size(), static_cast<long long>(taken.elapsed()),
                static_cast<long long>(wait.milliseconds()), recorder.taken().trace.size(),
                static_cast<unsigned long long>(recorder.thinned()));
    return {heard.values.size(), recorder.taken().trace.size(), recorder.thinned(), wait.milliseconds()};
}

void expectNothingLostUnsaid(const Flooded& flooded) {
    EXPECT_EQ(flooded.kept + flooded.thinned, flooded.read) << "what is not kept is counted";
    EXPECT_GE(flooded.kept, 40U);
    EXPECT_LT(flooded.longestWait, kFrozen);
}

TEST(Flood, OfASerialPortLosesNothingUnsaidAndTheWindowGoesOn) {
    const SystemClock clock;
    const testing::PseudoTerminal wire;
    SerialSource source(wire.port(), 115200, testing::matcherOf(), clock);
    source.start();
    std::thread writer([&wire] {
        EXPECT_TRUE(wire.write("\n"));
        for (int i = 0; i < kFloodLines; i += 100) {
            EXPECT_TRUE(wire.write(hundredth(i)));
            std::this_thread::sleep_for(10ms);
        }
    });
    Recorder recorder(clock);
    const auto flooded = flood(source, recorder);
    writer.join();
    expectNothingLostUnsaid(flooded);
}

TEST(Flood, OfTheNetworkLosesNothingUnsaidAndTheWindowGoesOn) {
    const SystemClock clock;
    QTcpServer server;
    ASSERT_TRUE(server.listen(QHostAddress::LocalHost));
    NetworkSource source(QStringLiteral("127.0.0.1"), server.serverPort(), testing::matcherOf(), clock);
    source.start();
    ASSERT_TRUE(QTest::qWaitFor([&] { return server.hasPendingConnections(); }, kFloodWait));
    // All at once: as fast as the machine can, held back by what is read.
    auto* peer = server.nextPendingConnection();
    ASSERT_TRUE(QTest::qWaitFor([&] { return source.state() == SourceState::Live; }, kFloodWait));
    peer->write("\n");
    for (int i = 0; i < kFloodLines; i += 100) {
        peer->write(QByteArray::fromStdString(hundredth(i)));
    }
    Recorder recorder(clock);
    expectNothingLostUnsaid(flood(source, recorder));
}

TEST(Flood, WithoutAnEndOfLineHoldsNoMoreThanALine) {
    const SystemClock clock;
    const testing::PseudoTerminal wire;
    SerialSource source(wire.port(), 115200, testing::matcherOf(), clock);
    Heard heard(source);
    source.start();
    std::atomic<bool> isDone = false;
    std::thread writer([&] {
        EXPECT_TRUE(wire.write("\n"));
        const std::string chunk(4096, '1');
        for (int i = 0; i < 100; ++i) {
            EXPECT_TRUE(wire.write(chunk));
        }
        EXPECT_TRUE(wire.write("\n20.50 mbar\n"));
        isDone = true;
    });
    const LongestWait wait;
    EXPECT_TRUE(QTest::qWaitFor([&] { return isDone && heard.values.size() == 1; }, kFloodWait));
    writer.join();
    EXPECT_EQ(heard.values, std::vector<std::string>{"20.50"});
    EXPECT_EQ(source.tooLong(), 1U);
    EXPECT_LT(wait.milliseconds(), kFrozen);
}

}  // namespace
}  // namespace hearth::ui::gauge
