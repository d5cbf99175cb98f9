// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/gauge/profile.h"
#include "ui/gauge/recorder.h"
#include "ui/gauge/source.h"

#include <QByteArray>
#include <QObject>

#include <deque>
#include <memory>
#include <optional>

namespace hearth::ui::gauge {

/// One gauge that is looked at: its source, its last minute, and its recorder.
class Watch : public QObject {
    Q_OBJECT
  public:
    explicit Watch(const Clock& clock);

    /// Ends what was watched and begins with this one.
    [[nodiscard]] tl::expected<void, exchange::PatternRefusal> begin(const GaugeProfile& profile);
    void end();
    [[nodiscard]] const Source* source() const { return m_source.get(); }
    [[nodiscard]] const GaugeProfile& profile() const { return m_profile; }
    [[nodiscard]] Recorder& recorder() { return m_recorder; }
    [[nodiscard]] const Recorder& recorder() const { return m_recorder; }

    [[nodiscard]] const std::optional<GaugeReading>& last() const { return m_last; }
    /// Of the last reading, now.
    [[nodiscard]] std::optional<std::chrono::milliseconds> age() const;
    /// Older than three of its usual steps and than two seconds, as a gap of a trace is.
    [[nodiscard]] bool isStale() const;
    /// What was read in the last `length`, a minute at most; times are those of Clock::elapsed(), so that two
    /// gauges can be laid over each other.
    [[nodiscard]] tightness::Trace recent(std::chrono::milliseconds length) const;
    /// The same of carbon monoxide; where the probe is is not said.
    [[nodiscard]] std::vector<air::CoReading> recentAir(std::chrono::milliseconds length) const;
    /// What its display can't tell apart: as the profile says, else one in its last digit. Nothing before
    /// the first reading.
    [[nodiscard]] std::optional<quantity::PressureChange> step() const;

    /// What it read while it was open to the air; until another one is watched.
    void setZero(const reg::TraceZero& zero);
    [[nodiscard]] const reg::TraceZero& zero() const { return m_zero; }
    /// What a recording that begins now is said to be: with the unit that it shows, and its display's step.
    [[nodiscard]] TraceOrigin origin() const;

    struct Refused {
        QByteArray line;
        exchange::LineRefusal why;
    };
    /// The last line that gave no reading.
    [[nodiscard]] const std::optional<Refused>& refused() const { return m_refused; }

    static constexpr std::chrono::milliseconds kRemembered{60000};

  Q_SIGNALS:
    void changed();
    /// A reading came that it can use.
    void heard();

  private:
    void take(const GaugeReading& reading);

    const Clock& m_clock;
    GaugeProfile m_profile;
    std::unique_ptr<Source> m_source;
    Recorder m_recorder;
    std::optional<GaugeReading> m_last;
    std::optional<Refused> m_refused;
    reg::TraceZero m_zero;
    struct Remembered {
        std::chrono::milliseconds at;
        std::optional<quantity::GaugePressure> pressure;
        std::optional<quantity::Share> level;
    };
    std::deque<Remembered> m_recent;
};

}  // namespace hearth::ui::gauge
