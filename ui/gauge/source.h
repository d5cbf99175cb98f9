// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/exchange/line_pattern.h"
#include "core/exchange/line_splitter.h"

#include <QByteArray>
#include <QObject>
#include <QTimer>

#include <chrono>
#include <cstdint>

class QIODevice;

namespace hearth::ui::gauge {

/// A reading and when it came, by Clock::elapsed(): a wall clock that is set meanwhile changes nothing.
struct GaugeReading {
    exchange::LineReading line;
    std::chrono::milliseconds at{0};
};

enum class SourceState {
    Stopped,
    Opening,  // not there yet; it is tried again until it is stopped
    Live,
    Lost,  // was there; it is tried again until it is stopped
};

/// Why a source is not there.
enum class SourceFault { None, NotThere, NotAllowed, InUse, Unplugged, Refused, HostUnknown, Closed, Other };

/// Where readings come from, one a line, while the window goes on: nothing here waits. A lost connection is
/// taken up again by itself; what came meanwhile is a gap.
class Source : public QObject {
    Q_OBJECT
  public:
    Source(exchange::LineMatcher matcher, const Clock& clock);

    /// Sends that as often while it is there, to a gauge that answers only when it is asked; before start().
    /// Empty, as it is until this is called: nothing is ever sent.
    void setAsking(const QByteArray& line, std::chrono::milliseconds every);
    void start();
    void stop();
    [[nodiscard]] SourceState state() const { return m_state; }
    /// Of the last try.
    [[nodiscard]] SourceFault fault() const { return m_fault; }
    /// Practice: what it says is no reading of anything.
    [[nodiscard]] virtual bool isSimulated() const { return false; }
    /// Lines are read by this one from now on.
    void setMatcher(exchange::LineMatcher matcher) { m_matcher = std::move(matcher); }

    /// Lines that gave no reading since it was made: too long for a line, or not as the pattern says.
    [[nodiscard]] std::uint64_t tooLong() const { return m_splitter.thrownAway(); }
    [[nodiscard]] std::uint64_t refusals() const { return m_refusals; }

    /// How long until a source that is not there is tried again.
    static constexpr std::chrono::milliseconds kTryAgain{1000};

  Q_SIGNALS:
    /// Every line as it came, before it is read; for whoever shows them.
    void came(const QByteArray& line);
    void read(const hearth::ui::gauge::GaugeReading& reading);
    void refused(const QByteArray& line, const hearth::exchange::LineRefusal& why);
    void lost();
    void resumed();
    void stateChanged();

  protected:
    /// Begins to open, and calls opened() or failed() at once or later.
    virtual void open() = 0;
    virtual void close() = 0;
    /// What to read from; nothing: bytes are handed to take().
    [[nodiscard]] virtual QIODevice* device() { return nullptr; }

    void opened();
    void failed(SourceFault fault);
    /// Reads what the device has, not more than a slice at once: the window paints in between.
    void readSome();
    void take(const QByteArray& bytes);
    /// A stream that begins at the beginning of a line.
    virtual bool beginsWithALine() const { return false; }
    [[nodiscard]] const Clock& clock() const { return m_clock; }

    [[nodiscard]] bool isAsking() const { return !m_ask.isEmpty(); }

  private:
    void setState(SourceState state);
    void ask();

    exchange::LineMatcher m_matcher;
    const Clock& m_clock;
    exchange::LineSplitter m_splitter;
    SourceState m_state = SourceState::Stopped;
    SourceFault m_fault = SourceFault::None;
    std::uint64_t m_refusals = 0;
    bool m_wasLive = false;
    QTimer m_again;
    QTimer m_more;
    QByteArray m_ask;
    QTimer m_asking;
};

}  // namespace hearth::ui::gauge
