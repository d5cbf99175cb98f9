// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gauge/simulated_source.h"

namespace hearth::ui::gauge {

namespace {

constexpr std::chrono::milliseconds kPracticeBeat{100};
constexpr double kMillisecondsInOne = 1000.0;

}  // namespace

SimulatedSource::SimulatedSource(PracticePipe pipe, const Clock& clock)
    : Source(*exchange::LineMatcher::of({}), clock), m_pipe(pipe) {
    m_ticks.setInterval(kPracticeBeat);
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
    const double reading = practiceReading(m_pipe, seconds, m_count++);
    take(QByteArray::number(reading, 'f', 2) + " mbar\r\n");
}

}  // namespace hearth::ui::gauge
