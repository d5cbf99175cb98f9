// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gauge/watch.h"

#include <algorithm>

namespace hearth::ui::gauge {

namespace {

using std::chrono::milliseconds;

/// Readings nearer to each other are not remembered one by one: a minute is 1,200 of them at most.
constexpr milliseconds kBetweenRemembered{50};
constexpr milliseconds kSoonestStale{2000};

quantity::Duration secondsOf(milliseconds at) {
    return {static_cast<double>(at.count()) / 1000.0, quantity::kSecond};
}

}  // namespace

Watch::Watch(const Clock& clock) : m_clock(clock), m_recorder(clock) {}

tl::expected<void, exchange::PatternRefusal> Watch::begin(const GaugeProfile& profile) {
    end();
    auto source = makeSource(profile, m_clock);
    if (!source) {
        return tl::unexpected(source.error());
    }
    m_profile = profile;
    m_source = std::move(*source);
    connect(m_source.get(), &Source::read, this, &Watch::take);
    connect(m_source.get(), &Source::refused, this,
            [this](const QByteArray& line, const exchange::LineRefusal& why) {
                m_refused = Refused{line, why};
            });
    connect(m_source.get(), &Source::stateChanged, this, &Watch::changed);
    m_recorder.follow(*m_source);
    m_source->start();
    return {};
}

void Watch::end() {
    m_recorder.end();
    if (m_source != nullptr) {
        m_source->stop();
        m_source.reset();
    }
    m_last.reset();
    m_refused.reset();
    m_zero = {};
    m_recent.clear();
    Q_EMIT changed();
}

void Watch::take(const GaugeReading& reading) {
    m_last = reading;
    const auto pressure = pressureOf(reading.line.value, reading.line.unit);
    const auto level = coOf(reading.line.value, reading.line.unit);
    if (!pressure && !level) {
        return;
    }
    if (m_recent.empty() || reading.at - m_recent.back().at >= kBetweenRemembered) {
        m_recent.push_back({reading.at, pressure, level});
        while (reading.at - m_recent.front().at > kRemembered) {
            m_recent.pop_front();
        }
    }
    Q_EMIT heard();
}

std::optional<milliseconds> Watch::age() const {
    return m_last ? std::optional(m_clock.elapsed() - m_last->at) : std::nullopt;
}

bool Watch::isStale() const {
    const auto old = age();
    if (!old || m_recent.size() < 3) {
        return old && *old > kSoonestStale;
    }
    std::vector<milliseconds> steps;
    for (std::size_t i = 1; i < m_recent.size(); ++i) {
        steps.push_back(m_recent[i].at - m_recent[i - 1].at);
    }
    const auto middle = steps.begin() + static_cast<std::ptrdiff_t>(steps.size() / 2);
    std::nth_element(steps.begin(), middle, steps.end());
    return *old > std::max(kSoonestStale, 3 * *middle);
}

tightness::Trace Watch::recent(milliseconds length) const {
    tightness::Trace trace;
    for (const auto& one : m_recent) {
        if (one.pressure && m_clock.elapsed() - one.at <= length) {
            trace.push_back({secondsOf(one.at), *one.pressure});
        }
    }
    return trace;
}

std::vector<air::CoReading> Watch::recentAir(milliseconds length) const {
    std::vector<air::CoReading> readings;
    for (const auto& one : m_recent) {
        if (one.level && m_clock.elapsed() - one.at <= length) {
            readings.push_back({secondsOf(one.at), *one.level});
        }
    }
    return readings;
}

void Watch::setZero(const reg::TraceZero& zero) {
    m_zero = zero;
    m_recorder.setZero(zero);
}

TraceOrigin Watch::origin() const {
    auto origin = originOf(m_profile, m_clock.now());
    origin.zero = m_zero;
    if (m_last) {
        origin.unit = m_last->line.unit;
        if (origin.resolution.text.empty()) {
            origin.resolution = {quantity::Decimal(1, m_last->line.value.decimals()).text(), origin.unit};
        }
    }
    return origin;
}

std::optional<quantity::PressureChange> Watch::step() const {
    if (const auto said = m_profile.resolution.value();
        said && said->toDouble() > 0 && pressureOf(*said, m_profile.resolution.unit)) {
        return quantity::PressureChange(said->toDouble(), quantity::pressureUnit(m_profile.resolution.unit));
    }
    if (!m_last || !pressureOf(m_last->line.value, m_last->line.unit)) {
        return std::nullopt;
    }
    return quantity::PressureChange(m_last->line.value.lastDigit(),
                                    quantity::pressureUnit(m_last->line.unit));
}

}  // namespace hearth::ui::gauge
