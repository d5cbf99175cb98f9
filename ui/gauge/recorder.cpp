// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gauge/recorder.h"

#include "ui/gauge/journal.h"

#include <QFileInfo>

#include <algorithm>

namespace hearth::ui::gauge {

namespace {

using std::chrono::milliseconds;

constexpr milliseconds kFlushEvery{500};  // a machine that fails costs a second at most

quantity::Duration sinceBegin(milliseconds at) {
    return {static_cast<double>(at.count()) / 1000.0, quantity::kSecond};
}

}  // namespace

Recorder::Recorder(const Clock& clock) : m_clock(clock) {
    m_flush.setInterval(kFlushEvery);
    connect(&m_flush, &QTimer::timeout, this, &Recorder::flush);
}

Recorder::~Recorder() = default;

void Recorder::begin(const TraceOrigin& origin, const QString& folder) {
    begin(origin, folder, m_clock.elapsed(), {});
}

void Recorder::beginBeside(const Recorder& first, const TraceOrigin& origin, const QString& folder) {
    begin(origin, folder, first.m_began,
          first.m_journal == nullptr ? QString() : QFileInfo(first.m_journal->path()).fileName());
}

void Recorder::forget() {
    end();
    discardJournal();
    m_taken = {};
}

void Recorder::begin(const TraceOrigin& origin, const QString& folder, milliseconds began,
                     const QString& beside) {
    end();
    m_began = began;
    m_taken = {};
    m_taken.origin = origin;
    m_lostAt.reset();
    m_allowedAt = milliseconds(0);
    m_allowed = kBurst;
    m_thinned = 0;
    m_tooMany = 0;
    m_isWritten = true;
    m_journal = folder.isEmpty() ? nullptr : Journal::begin(folder, origin, beside);
    m_isRecording = true;
    if (m_journal != nullptr) {
        if (origin.unit == quantity::UnitCode::Ppm) {
            m_journal->place(milliseconds(0), m_place);
        }
        m_flush.start();
    }
}

void Recorder::end() {
    if (!m_isRecording) {
        return;
    }
    m_isRecording = false;
    m_flush.stop();
    if (m_journal != nullptr) {
        m_journal->end();
        flush();
    }
}

void Recorder::discardJournal() {
    if (m_journal != nullptr) {
        m_journal->discard();
        m_journal.reset();
    }
    m_flush.stop();
}

void Recorder::flush() {
    m_isWritten = m_journal != nullptr && m_journal->flush();
}

bool Recorder::mayKeep(milliseconds at) {
    const double passed = static_cast<double>((at - m_allowedAt).count()) / 1000.0;
    m_allowed = std::min<double>(kBurst, m_allowed + passed * kMostASecond);
    m_allowedAt = at;
    if (m_allowed < 1.0) {
        return false;
    }
    m_allowed -= 1.0;
    return true;
}

void Recorder::add(const GaugeReading& reading) {
    const auto pressure = pressureOf(reading.line.value, reading.line.unit);
    const auto level = coOf(reading.line.value, reading.line.unit);
    if (!m_isRecording || (!pressure && !level) || reading.at < m_began) {
        return;
    }
    if (isFull()) {
        ++m_tooMany;
        return;
    }
    const auto at = reading.at - m_began;
    if (!mayKeep(at)) {
        ++m_thinned;
        return;
    }
    if (m_lostAt) {
        m_taken.gaps.push_back({sinceBegin(*m_lostAt), sinceBegin(at)});
        m_lostAt.reset();
    }
    if (level) {
        m_taken.air.push_back({sinceBegin(at), *level, m_place});
        m_taken.decimals = std::max(m_taken.decimals, reading.line.value.decimals());
    } else {
        addPressure(at, *pressure, reading.line);
    }
    if (m_journal != nullptr) {
        m_journal->reading(at, reading.line);
    }
}

void Recorder::addPressure(milliseconds at, quantity::GaugePressure pressure,
                           const exchange::LineReading& line) {
    tightness::TracePoint point{sinceBegin(at), pressure};
    if (line.second) {
        const double second = line.second->toDouble();
        if (pressureOf(*line.second, line.secondUnit)) {
            point.barometer = quantity::AbsolutePressure(second, quantity::pressureUnit(line.secondUnit));
        } else {
            point.temperature = quantity::Temperature(second, quantity::temperatureUnit(line.secondUnit));
        }
    }
    m_taken.trace.push_back(point);
}

void Recorder::setPlace(air::CoPlace place) {
    m_place = place;
    if (m_isRecording && m_journal != nullptr) {
        m_journal->place(passed(), place);
    }
}

void Recorder::lose() {
    if (!m_isRecording || m_lostAt) {
        return;
    }
    m_lostAt = passed();
    if (m_journal != nullptr) {
        m_journal->gap(*m_lostAt);
    }
}

void Recorder::setZero(const reg::TraceZero& zero) {
    if (!m_isRecording) {
        return;
    }
    m_taken.origin.zero = zero;
    if (m_journal != nullptr) {
        m_journal->zero(zero);
        flush();
    }
}

void Recorder::mark(GaugeEvent event) {
    if (!m_isRecording) {
        return;
    }
    m_taken.marks.push_back({event, passed()});
    if (m_journal != nullptr) {
        m_journal->mark(m_taken.marks.back());
        flush();
    }
}

void Recorder::follow(Source& source) {
    connect(&source, &Source::read, this, &Recorder::add);
    connect(&source, &Source::lost, this, &Recorder::lose);
}

}  // namespace hearth::ui::gauge
