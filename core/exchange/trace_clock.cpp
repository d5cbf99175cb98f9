// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/trace_clock.h"

#include "core/exchange/import_dates.h"
#include "core/quantity/typed.h"

#include <array>
#include <chrono>
#include <cmath>

namespace hearth::exchange {
namespace {

using quantity::Decimal;

constexpr double kHalfDay = 43200.0;
constexpr double kDay = 86400.0;

/// "9:40", "09:40:12", "09:40:12.5": seconds since midnight.
std::optional<double> secondsOfClock(std::string_view text) {
    std::array<double, 3> parts{};
    std::size_t count = 0;
    while (count < parts.size()) {
        const auto end = text.find(':');
        const auto part = Decimal::parse(text.substr(0, end));
        const bool isWhole = part && part->decimals() == 0;
        if (!part || part->mantissa() < 0 || (!isWhole && count < 2)) {
            return std::nullopt;
        }
        parts[count++] = part->toDouble();
        if (end == std::string_view::npos) {
            break;
        }
        text.remove_prefix(end + 1);
        if (count == parts.size()) {
            return std::nullopt;
        }
    }
    if (count < 2 || parts[0] >= 24 || parts[1] >= 60 || parts[2] >= 61) {
        return std::nullopt;
    }
    return parts[0] * 3600 + parts[1] * 60 + parts[2];
}

}  // namespace

const std::string* cellAt(const CsvRow& row, const std::optional<TraceColumn>& column) {
    return column && column->at < row.cells.size() ? &row.cells[column->at] : nullptr;
}

TraceClock::TraceClock(std::optional<quantity::UnitCode> unit) : m_isSaid(unit.has_value()) {
    if (unit) {
        m_secondsInOne = quantity::Duration(1.0, quantity::timeUnit(*unit)).in(quantity::kSecond);
    }
}

std::optional<TraceClock::Time> TraceClock::read(const std::string& cell) const {
    using Kind = Time::Kind;
    const auto colon = cell.find(':');
    if (colon == std::string::npos) {
        const auto figure = Decimal::parse(cell);
        return figure ? std::optional(Time{figure->toDouble() * m_secondsInOne, Kind::Figure}) : std::nullopt;
    }
    const auto parted = cell.find_last_of(" T", colon);
    const auto clock =
        secondsOfClock(std::string_view(cell).substr(parted == std::string::npos ? 0 : parted + 1));
    if (!clock) {
        return std::nullopt;
    }
    if (parted == std::string::npos) {
        return Time{*clock, Kind::Clock};
    }
    const auto day = readImportedDate(std::string_view(cell).substr(0, parted), DateOrder::DayFirst);
    if (!day) {
        return std::nullopt;
    }
    const auto days = std::chrono::sys_days(day->date).time_since_epoch().count();
    return Time{static_cast<double>(days) * kDay + *clock, Kind::Dated};
}

void TraceClock::noteBeginning(const Time& time) {
    const double days = std::floor(time.seconds / kDay);
    if (time.kind == Time::Kind::Dated) {
        m_beganOn = calendar::Date(std::chrono::sys_days(std::chrono::days(static_cast<int>(days))));
    }
    if (time.kind != Time::Kind::Figure) {
        m_beganAt = static_cast<int>(time.seconds - days * kDay);
    }
}

std::optional<double> TraceClock::sinceTheFirst(const Time& time) {
    if (!m_kind) {
        m_kind = time.kind;
        m_first = time.seconds;
        noteBeginning(time);
    }
    double since = time.seconds - m_first + m_midnights * kDay;
    if (time.kind == Time::Kind::Clock && since < m_last - kHalfDay) {
        ++m_midnights;
        since += kDay;
    }
    if (since < m_last) {
        return std::nullopt;
    }
    m_last = since;
    return since;
}

}  // namespace hearth::exchange
