// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <string>

namespace hearth {

/// An instant in UTC, milliseconds since 1970.
using Instant = std::chrono::time_point<std::chrono::system_clock, std::chrono::milliseconds>;

/// Time comes in from outside, so that tests choose it.
class Clock {
  public:
    virtual ~Clock() = default;
    /// Now, in UTC.
    [[nodiscard]] virtual Instant now() const = 0;
    /// Today's civil date where the firm works (`zone` is an IANA name, "Europe/London"; by UTC if nobody
    /// knows it).
    [[nodiscard]] virtual std::chrono::year_month_day today(
        const std::string& zone = "Europe/London") const = 0;
    /// Time since some fixed moment that runs on while the machine sleeps (CLOCK_BOOTTIME): for timed stages.
    [[nodiscard]] virtual std::chrono::milliseconds elapsed() const = 0;
};

/// The machine's own clock.
class SystemClock final : public Clock {
  public:
    [[nodiscard]] Instant now() const override;
    [[nodiscard]] std::chrono::year_month_day today(const std::string& zone) const override;
    [[nodiscard]] std::chrono::milliseconds elapsed() const override;
};

/// A clock that stands until it is moved; for tests, the demonstration scenario and the gallery.
class FixedClock final : public Clock {
  public:
    explicit FixedClock(Instant start) : m_now(start) {}
    void advance(std::chrono::milliseconds step) {
        m_now += step;
        m_elapsed += step;
    }
    void set(Instant now) { m_now = now; }
    [[nodiscard]] Instant now() const override { return m_now; }
    [[nodiscard]] std::chrono::year_month_day today(const std::string& zone) const override;
    [[nodiscard]] std::chrono::milliseconds elapsed() const override { return m_elapsed; }

  private:
    Instant m_now;
    std::chrono::milliseconds m_elapsed{0};
};

/// "2026-11-25T09:46:10.000Z" (years 0 to 9999), and back. The only form of instants in files.
[[nodiscard]] std::string instantText(Instant instant);
[[nodiscard]] bool parseInstant(const std::string& text, Instant& out);

/// Wall-clock hour and minute of an instant in a zone: "09:46". For a zone that nobody knows it is UTC and
/// says so: "09:46Z".
[[nodiscard]] std::string wallTimeText(Instant instant, const std::string& zone = "Europe/London");
/// The instant at a wall-clock time ("09:46" or "09:46:10") of a civil date in a zone. A time that comes
/// twice, when the clocks go back, is the first of the two. False, and `out` as it was, for a text that can't
/// be read, a zone that nobody knows and a time that the clocks leave out when they go forward.
[[nodiscard]] bool instantAt(std::chrono::year_month_day date, const std::string& hhmm, Instant& out,
                             const std::string& zone = "Europe/London");

}  // namespace hearth
