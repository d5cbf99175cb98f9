// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/gauge/source.h"
#include "ui/gauge/taken.h"

#include <QObject>
#include <QTimer>

#include <cstdint>
#include <memory>

namespace hearth::ui::gauge {

class Journal;

/// Makes a trace of what a source reads. Times are the source's, from Clock::elapsed(). Its memory is
/// bounded: what comes faster than twenty a second over two seconds is thinned, and after a recording's most
/// points it takes no more. Both are counted, for whoever shows them.
class Recorder : public QObject {
    Q_OBJECT
    Q_DISABLE_COPY_MOVE(Recorder)
  public:
    /// Six hours at twenty a second.
    static constexpr std::size_t kMostPoints = 432000;
    static constexpr int kMostASecond = 20;
    /// Readings that came in one burst and are all kept.
    static constexpr int kBurst = 40;

    explicit Recorder(const Clock& clock);
    ~Recorder() override;

    /// Begins anew; what was recorded is forgotten. `folder` is where the journal is kept; without one, or
    /// when it can't be written, there is none (see hasJournal).
    void begin(const TraceOrigin& origin, const QString& folder = {});
    /// The same of a second gauge on the same pipe: times are those of `first`, which is recording, and its
    /// journal says so.
    void beginBeside(const Recorder& first, const TraceOrigin& origin, const QString& folder = {});
    /// Nothing was recorded.
    void forget();
    /// Takes no more. The journal stays until discardJournal().
    void end();
    [[nodiscard]] bool isRecording() const { return m_isRecording; }
    /// False: what is recorded is in this program's memory alone.
    [[nodiscard]] bool hasJournal() const { return m_journal != nullptr && m_isWritten; }
    void discardJournal();

    void add(const GaugeReading& reading);
    /// The connection was lost; the next reading ends the gap.
    void lose();
    void mark(GaugeEvent event);
    /// What it read open to the air.
    void setZero(const reg::TraceZero& zero);
    /// Where the probe is from now on, of carbon monoxide.
    void setPlace(air::CoPlace place);
    /// Feeds readings and losses of a source; both live in one thread.
    void follow(Source& source);

    [[nodiscard]] const TakenTrace& taken() const { return m_taken; }
    /// Since begin().
    [[nodiscard]] std::chrono::milliseconds passed() const { return m_clock.elapsed() - m_began; }
    [[nodiscard]] std::uint64_t thinned() const { return m_thinned; }
    [[nodiscard]] bool isFull() const { return m_taken.size() >= kMostPoints; }
    /// Readings that came after it was full.
    [[nodiscard]] std::uint64_t tooMany() const { return m_tooMany; }

  private:
    void begin(const TraceOrigin& origin, const QString& folder, std::chrono::milliseconds began,
               const QString& beside);
    void flush();
    void addPressure(std::chrono::milliseconds at, quantity::GaugePressure pressure,
                     const exchange::LineReading& line);
    [[nodiscard]] bool mayKeep(std::chrono::milliseconds at);

    const Clock& m_clock;
    bool m_isRecording = false;
    bool m_isWritten = true;
    std::chrono::milliseconds m_began{0};
    TakenTrace m_taken;
    air::CoPlace m_place = air::CoPlace::Room;
    std::optional<std::chrono::milliseconds> m_lostAt;
    std::chrono::milliseconds m_allowedAt{0};
    double m_allowed = kBurst;
    std::uint64_t m_thinned = 0;
    std::uint64_t m_tooMany = 0;
    std::unique_ptr<Journal> m_journal;
    QTimer m_flush;
};

}  // namespace hearth::ui::gauge
