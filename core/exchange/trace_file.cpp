// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/trace_file.h"

#include "core/exchange/csv.h"
#include "core/exchange/import_dates.h"
#include "core/quantity/typed.h"

#include <array>
#include <cctype>
#include <cmath>

namespace hearth::exchange {
namespace {

using quantity::Decimal;
using quantity::Duration;
using quantity::kSecond;
using quantity::UnitCode;
using quantity::UnitFamily;
using tightness::TracePoint;

constexpr std::size_t kMostLines = 864001;  // a day at ten a second, with its heading
constexpr double kHalfDay = 43200.0;
constexpr double kDay = 86400.0;

const std::string* cellAt(const CsvRow& row, const std::optional<TraceColumn>& column) {
    return column && column->at < row.cells.size() ? &row.cells[column->at] : nullptr;
}

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

struct TimeCell {
    double seconds = 0.0;
    enum class Kind { Figure, Clock, Dated } kind = Kind::Figure;
};

std::optional<TimeCell> timeOf(const std::string& cell, UnitCode unit) {
    using Kind = TimeCell::Kind;
    const auto colon = cell.find(':');
    if (colon == std::string::npos) {
        const auto figure = Decimal::parse(cell);
        return figure ? std::optional(
                            TimeCell{figure->toDouble() * Duration(1.0, quantity::timeUnit(unit)).in(kSecond),
                                     Kind::Figure})
                      : std::nullopt;
    }
    const auto parted = cell.find_last_of(" T", colon);
    const auto clock =
        secondsOfClock(std::string_view(cell).substr(parted == std::string::npos ? 0 : parted + 1));
    if (!clock) {
        return std::nullopt;
    }
    if (parted == std::string::npos) {
        return TimeCell{*clock, Kind::Clock};
    }
    const auto day = readImportedDate(std::string_view(cell).substr(0, parted), DateOrder::DayFirst);
    if (!day) {
        return std::nullopt;
    }
    const auto days = std::chrono::sys_days(day->date).time_since_epoch().count();
    return TimeCell{static_cast<double>(days) * kDay + *clock, Kind::Dated};
}

/// The figure in its column's unit, or in the one that it carries.
std::optional<std::pair<double, UnitCode>> figureOf(const std::string& cell, UnitFamily family,
                                                    std::optional<UnitCode> unit) {
    if (const auto plain = Decimal::parse(cell)) {
        return unit ? std::optional(std::pair(plain->toDouble(), *unit)) : std::nullopt;
    }
    const auto typed = quantity::parseTyped(cell, family);
    const auto value = typed ? typed->value() : tl::unexpected(typed.error());
    return value ? std::optional(std::pair(value->toDouble(), typed->unit)) : std::nullopt;
}

class Reader {
  public:
    Reader(const CsvTable& table, const TraceForm& form) : m_table(table) {
        m_file.columns = form.columns ? *form.columns : guessTraceColumns(table.rows.front().cells);
        const auto& columns = m_file.columns;
        m_unit = columns.pressure && columns.pressure->unit ? columns.pressure->unit : form.unit;
        const auto said = columns.time ? columns.time->unit : std::nullopt;
        m_timeUnit = said.value_or(UnitCode::Second);
        m_timesSaid = said.has_value();
    }

    tl::expected<TraceFile, TraceRefusal> read() {
        if (!m_file.columns.time) {
            return refuse(TraceFault::NoTimes);
        }
        if (!m_file.columns.pressure) {
            return refuse(TraceFault::NoPressures);
        }
        for (std::size_t i = m_file.columns.headed ? 1 : 0; i < m_table.rows.size(); ++i) {
            if (auto fault = take(m_table.rows[i])) {
                return tl::unexpected(*fault);
            }
        }
        if (m_file.trace.size() < 2) {
            return refuse(m_noTime > 0 ? TraceFault::NoTimes : TraceFault::TooFew);
        }
        m_file.unit = m_unit.value_or(m_cellUnit);
        return std::move(m_file);
    }

  private:
    static tl::unexpected<TraceRefusal> refuse(TraceFault fault) {
        return tl::unexpected(TraceRefusal{fault, 0});
    }

    void leaveOut(const CsvRow& row) {
        m_file.firstLeftOut = m_file.leftOut == 0 ? row.line : m_file.firstLeftOut;
        ++m_file.leftOut;
    }

    std::optional<TraceRefusal> take(const CsvRow& row) {
        const auto* timeCell = cellAt(row, m_file.columns.time);
        const auto* cell = cellAt(row, m_file.columns.pressure);
        const auto time = timeCell != nullptr ? timeOf(*timeCell, m_timeUnit) : std::nullopt;
        m_noTime += time ? 0 : 1;
        if (cell != nullptr && !m_unit && Decimal::parse(*cell)) {
            return TraceRefusal{TraceFault::NoUnit, row.line};
        }
        const auto pressure = cell != nullptr ? figureOf(*cell, UnitFamily::Pressure, m_unit) : std::nullopt;
        if (!time || !pressure || (m_kind && *m_kind != time->kind)) {
            leaveOut(row);
            return std::nullopt;
        }
        const auto seconds = sinceTheFirst(*time);
        if (!seconds) {
            return TraceRefusal{TraceFault::ClockGoesBack, row.line};
        }
        m_cellUnit = pressure->second;
        addPoint(row, *seconds, *pressure);
        return std::nullopt;
    }

    void noteBeginning(const TimeCell& time) {
        const double days = std::floor(time.seconds / kDay);
        if (time.kind == TimeCell::Kind::Dated) {
            m_file.beganOn = calendar::Date(std::chrono::sys_days(std::chrono::days(static_cast<int>(days))));
        }
        if (time.kind != TimeCell::Kind::Figure) {
            m_file.beganAt = static_cast<int>(time.seconds - days * kDay);
        }
    }

    /// Nothing: the clock went back.
    std::optional<double> sinceTheFirst(const TimeCell& time) {
        if (!m_kind) {
            m_kind = time.kind;
            m_first = time.seconds;
            m_file.timesSaid = m_timesSaid || time.kind != TimeCell::Kind::Figure;
            noteBeginning(time);
        }
        double since = time.seconds - m_first + m_midnights * kDay;
        if (time.kind == TimeCell::Kind::Clock && since < m_last - kHalfDay) {
            ++m_midnights;
            since += kDay;
        }
        if (since < m_last) {
            return std::nullopt;
        }
        m_last = since;
        return since;
    }

    void addPoint(const CsvRow& row, double seconds, const std::pair<double, UnitCode>& pressure) {
        TracePoint point{Duration(seconds, kSecond),
                         quantity::GaugePressure(pressure.first, quantity::pressureUnit(pressure.second))};
        const auto& columns = m_file.columns;
        if (const auto* cell = cellAt(row, columns.barometer)) {
            if (const auto found = figureOf(*cell, UnitFamily::Pressure, columns.barometer->unit)) {
                point.barometer =
                    quantity::AbsolutePressure(found->first, quantity::pressureUnit(found->second));
            }
        }
        if (const auto* cell = cellAt(row, columns.temperature)) {
            if (const auto found = figureOf(*cell, UnitFamily::Temperature, columns.temperature->unit)) {
                point.temperature =
                    quantity::Temperature(found->first, quantity::temperatureUnit(found->second));
            }
        }
        m_file.trace.push_back(point);
    }

    const CsvTable& m_table;
    TraceFile m_file;
    std::optional<UnitCode> m_unit;
    UnitCode m_timeUnit = UnitCode::Second;
    UnitCode m_cellUnit = UnitCode::Millibar;
    bool m_timesSaid = false;
    std::optional<TimeCell::Kind> m_kind;
    double m_first = 0.0;
    double m_last = 0.0;
    int m_midnights = 0;
    int m_noTime = 0;
};

}  // namespace

tl::expected<TraceFile, TraceRefusal> readTrace(std::string_view bytes, const TraceForm& form) {
    const CsvTable table = readCsv(bytes);
    if (table.rows.empty()) {
        return tl::unexpected(TraceRefusal{TraceFault::TooFew, 0});
    }
    if (table.rows.size() > kMostLines) {
        return tl::unexpected(TraceRefusal{TraceFault::TooLong, 0});
    }
    return Reader(table, form).read();
}

}  // namespace hearth::exchange
