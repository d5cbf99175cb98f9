// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gauge/simulated_source.h"

namespace hearth::ui::gauge {

namespace {

constexpr std::chrono::milliseconds kPipeBeat{100};
constexpr std::chrono::milliseconds kRoomBeat{1000};
constexpr double kMillisecondsInOne = 1000.0;

exchange::LineMatcher simulatedMatcher(quantity::UnitFamily family) {
    exchange::LinePattern pattern;
    pattern.family = family;
    return *exchange::LineMatcher::of(pattern);
}

}  // namespace

SimulatedSource::SimulatedSource(PracticePipe pipe, const Clock& clock)
    : SimulatedSource(
          [pipe](double seconds, std::uint32_t count) {
              return QByteArray::number(practiceReading(pipe, seconds, count), 'f', 2) + " mbar\r\n";
          },
          kPipeBeat, quantity::UnitFamily::Pressure, clock) {}

SimulatedSource::SimulatedSource(PracticeRoom room, const Clock& clock)
    : SimulatedSource(
          [room](double seconds, std::uint32_t count) {
              return QByteArray::number(practicePpm(room, seconds, count)) + " ppm\r\n";
          },
          kRoomBeat, quantity::UnitFamily::Trace, clock) {}

SimulatedSource::SimulatedSource(Line line, std::chrono::milliseconds beat, quantity::UnitFamily family,
                                 const Clock& clock)
    : Source(simulatedMatcher(family), clock), m_line(std::move(line)) {
    m_ticks.setInterval(beat);
    m_ticks.setTimerType(Qt::PreciseTimer);
    connect(&m_ticks, &QTimer::timeout, this, &SimulatedSource::send);
}

void SimulatedSource::open() {
    m_began = clock().elapsed();
    m_count = 0;
    m_ticks.start();
    opened();
}

void SimulatedSource::close() {
    m_ticks.stop();
}

void SimulatedSource::send() {
    const double seconds = static_cast<double>((clock().elapsed() - m_began).count()) / kMillisecondsInOne;
    take(m_line(seconds, m_count++));
}

}  // namespace hearth::ui::gauge
