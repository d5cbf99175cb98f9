// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/civil_date.h"
#include "core/exchange/csv.h"
#include "core/exchange/trace_columns.h"

#include <optional>
#include <string>

/// The times of a logger's table.
namespace hearth::exchange {

/// A day at ten a second, with its heading.
inline constexpr std::size_t kMostTraceLines = 864001;

/// The row's cell in that column; nothing where there is none. Source: none needed: a look into a table.
[[nodiscard]] const std::string* cellAt(const CsvRow& row, const std::optional<TraceColumn>& column);

/// Figures (seconds, or in the unit that is said), clock times, or dates with clock times. A clock without
/// dates that falls from evening to morning has passed midnight.
/// Source: common practice, no source. Checked: trace_file_test.cpp, co_file_test.cpp.
class TraceClock {
  public:
    TraceClock() = default;
    explicit TraceClock(std::optional<quantity::UnitCode> unit);

    struct Time {
        double seconds = 0.0;
        enum class Kind { Figure, Clock, Dated } kind = Kind::Figure;
    };
    /// Nothing for a cell that is no time.
    [[nodiscard]] std::optional<Time> read(const std::string& cell) const;
    /// Of the same kind as the first: else it can't be counted from there.
    [[nodiscard]] bool fits(const Time& time) const { return !m_kind || *m_kind == time.kind; }
    /// Seconds; the first call is the beginning. Nothing: the clock went back.
    [[nodiscard]] std::optional<double> sinceTheFirst(const Time& time);

    /// False: plain figures without a unit, taken as seconds.
    [[nodiscard]] bool isSaid() const {
        return m_isSaid || m_kind.value_or(Time::Kind::Clock) != Time::Kind::Figure;
    }
    /// Where the times have dates.
    [[nodiscard]] const std::optional<calendar::Date>& beganOn() const { return m_beganOn; }
    /// The second of the day, where they are clock times.
    [[nodiscard]] const std::optional<int>& beganAt() const { return m_beganAt; }

  private:
    void noteBeginning(const Time& time);

    double m_secondsInOne = 1.0;
    bool m_isSaid = false;
    std::optional<Time::Kind> m_kind;
    double m_first = 0.0;
    double m_last = 0.0;
    int m_midnights = 0;
    std::optional<calendar::Date> m_beganOn;
    std::optional<int> m_beganAt;
};

}  // namespace hearth::exchange
