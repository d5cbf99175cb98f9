// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/gauge/source.h"

#include <QElapsedTimer>
#include <QTest>
#include <QTimer>

#include <string>
#include <vector>

namespace hearth::testing {

inline exchange::LineMatcher matcherOf(const std::string& text = "{value} {unit}") {
    exchange::LinePattern pattern;
    pattern.text = text;
    return *exchange::LineMatcher::of(pattern);
}

/// What a source said.
class Heard {
  public:
    explicit Heard(ui::gauge::Source& source) {
        QObject::connect(
            &source, &ui::gauge::Source::read, &source,
            [this](const ui::gauge::GaugeReading& reading) { values.push_back(reading.line.value.text()); });
        QObject::connect(&source, &ui::gauge::Source::refused, &source,
                         [this](const QByteArray& line) { refused.push_back(line.toStdString()); });
        QObject::connect(&source, &ui::gauge::Source::lost, &source, [this] { ++losses; });
        QObject::connect(&source, &ui::gauge::Source::resumed, &source, [this] { ++resumes; });
    }
    std::vector<std::string> values;
    std::vector<std::string> refused;
    int losses = 0;
    int resumes = 0;
};

/// The longest time that a timer of 10 ms had to wait: how long the window could not have answered.
class LongestWait {
  public:
    LongestWait() {
        m_beat.setTimerType(Qt::PreciseTimer);
        QObject::connect(&m_beat, &QTimer::timeout, &m_beat, [this] {
            m_longest = std::max(m_longest, m_since.restart());
            ++m_beats;
        });
        m_since.start();
        m_beat.start(10);
    }
    [[nodiscard]] qint64 milliseconds() const { return m_longest; }
    [[nodiscard]] int beats() const { return m_beats; }

  private:
    QTimer m_beat;
    QElapsedTimer m_since;
    qint64 m_longest = 0;
    int m_beats = 0;
};

}  // namespace hearth::testing
