// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/trace_file.h"

#include "core/exchange/csv.h"
#include "core/exchange/trace_clock.h"
#include "core/quantity/typed.h"

namespace hearth::exchange {
namespace {

using quantity::Decimal;
using quantity::Duration;
using quantity::kSecond;
using quantity::UnitCode;
using quantity::UnitFamily;
using tightness::TracePoint;

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
        m_clock = TraceClock(columns.time ? columns.time->unit : std::nullopt);
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
        m_file.timesSaid = m_clock.isSaid();
        m_file.beganOn = m_clock.beganOn();
        m_file.beganAt = m_clock.beganAt();
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
        if (cell != nullptr && !m_unit && Decimal::parse(*cell)) {
            return TraceRefusal{TraceFault::NoUnit, row.line};
        }
        const auto pressure = cell != nullptr ? figureOf(*cell, UnitFamily::Pressure, m_unit) : std::nullopt;
        const auto time = timeCell != nullptr ? m_clock.read(*timeCell) : std::nullopt;
        m_noTime += time ? 0 : 1;
        if (!time || !pressure || !m_clock.fits(*time)) {
            leaveOut(row);
            return std::nullopt;
        }
        const auto seconds = m_clock.sinceTheFirst(*time);
        if (!seconds) {
            return TraceRefusal{TraceFault::ClockGoesBack, row.line};
        }
        m_cellUnit = pressure->second;
        addPoint(row, *seconds, *pressure);
        return std::nullopt;
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
    TraceClock m_clock;
    UnitCode m_cellUnit = UnitCode::Millibar;
    int m_noTime = 0;
};

}  // namespace

tl::expected<TraceFile, TraceRefusal> readTrace(std::string_view bytes, const TraceForm& form) {
    const CsvTable table = readCsv(bytes);
    if (table.rows.empty()) {
        return tl::unexpected(TraceRefusal{TraceFault::TooFew, 0});
    }
    if (table.rows.size() > kMostTraceLines) {
        return tl::unexpected(TraceRefusal{TraceFault::TooLong, 0});
    }
    return Reader(table, form).read();
}

}  // namespace hearth::exchange
