// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/co_file.h"

#include "core/exchange/folded.h"
#include "core/quantity/typed.h"
#include "core/quantity/units.h"

#include <algorithm>
#include <array>
#include <cctype>

namespace hearth::exchange {
namespace {

using quantity::Decimal;
using quantity::UnitCode;
using quantity::UnitFamily;

using HeadingWords = std::vector<std::string>;

bool hasWord(const HeadingWords& words, std::initializer_list<std::string_view> wanted) {
    return std::any_of(words.begin(), words.end(), [&](const std::string& word) {
        return std::find(wanted.begin(), wanted.end(), word) != wanted.end();
    });
}

/// Carbon dioxide is often logged beside it, in ppm too.
bool isOtherGas(const HeadingWords& words) {
    return hasWord(words, {"co2", "dioxide", "no", "no2", "nox", "ch4", "methane", "h2"});
}

bool isCoHeading(const HeadingWords& words) {
    return !isOtherGas(words) && hasWord(words, {"co", "monoxide", "ppm"});
}

/// The heading names a unit of amount that is not ppm. Folding leaves no % sign and parts "mg/m3".
bool isOtherUnit(std::string_view heading, const HeadingWords& words) {
    return heading.find('%') != std::string_view::npos ||
           hasWord(words, {"g", "mg", "ug", "m3", "mgm3", "ugm3", "ppb", "vol", "percent"});
}

bool beginsWithFigure(const std::string& cell) {
    const auto first = cell.find_first_not_of(" +-\t");
    return first != std::string::npos && std::isdigit(static_cast<unsigned char>(cell[first])) != 0;
}

class CoReader {
  public:
    CoReader(const CsvTable& table, const std::optional<CoColumns>& said) : m_table(table) {
        m_file.columns = said ? *said : guessCoColumns(table.rows.front().cells);
        const auto& time = m_file.columns.time;
        m_clock = TraceClock(time ? time->unit : std::nullopt);
        m_file.readings.reserve(table.rows.size());
    }

    tl::expected<CoFile, CoRefusal> read() {
        const auto& columns = m_file.columns;
        if (!columns.time || !columns.level) {
            return refuse(columns.time ? CoFault::NoLevels : CoFault::NoTimes);
        }
        if (columns.isOtherwise || columns.level->unit.value_or(UnitCode::Ppm) != UnitCode::Ppm) {
            return refuse(CoFault::OtherUnit);
        }
        for (std::size_t i = columns.headed ? 1 : 0; i < m_table.rows.size(); ++i) {
            if (const auto fault = take(m_table.rows[i])) {
                return tl::unexpected(*fault);
            }
        }
        if (m_file.readings.size() < 2) {
            return refuse(m_noTime > 0 ? CoFault::NoTimes : CoFault::TooFew);
        }
        m_file.timesSaid = m_clock.isSaid();
        m_file.beganOn = m_clock.beganOn();
        m_file.beganAt = m_clock.beganAt();
        return std::move(m_file);
    }

  private:
    static tl::unexpected<CoRefusal> refuse(CoFault fault) { return tl::unexpected(CoRefusal{fault, 0}); }

    /// The level that a cell says; a fault of the whole file where its unit is not said, or another.
    tl::expected<std::optional<Decimal>, CoFault> levelIn(const std::string& cell) const {
        if (const auto plain = Decimal::parse(cell)) {
            if (!m_file.columns.level->unit) {
                return tl::unexpected(CoFault::NoUnit);
            }
            return *plain;
        }
        const auto typed = quantity::parseTyped(cell, UnitFamily::Trace);
        const auto value = typed ? typed->value() : tl::unexpected(typed.error());
        if (!value) {
            return std::nullopt;
        }
        if (typed->unit != UnitCode::Ppm) {
            return tl::unexpected(CoFault::OtherUnit);
        }
        return *value;
    }

    std::optional<CoRefusal> take(const CsvRow& row) {
        const auto* timeCell = cellAt(row, m_file.columns.time);
        const auto* cell = cellAt(row, m_file.columns.level);
        const auto level = levelIn(cell != nullptr ? *cell : std::string());
        if (!level) {
            return CoRefusal{level.error(), row.line};
        }
        const auto time = timeCell != nullptr ? m_clock.read(*timeCell) : std::nullopt;
        m_noTime += time ? 0 : 1;
        if (!time || !*level || !m_clock.fits(*time)) {
            m_file.firstLeftOut = m_file.leftOut == 0 ? row.line : m_file.firstLeftOut;
            ++m_file.leftOut;
            return std::nullopt;
        }
        const auto seconds = m_clock.sinceTheFirst(*time);
        if (!seconds) {
            return CoRefusal{CoFault::ClockGoesBack, row.line};
        }
        m_file.decimals = std::max(m_file.decimals, (*level)->decimals());
        m_file.readings.push_back({quantity::Duration(*seconds, quantity::kSecond),
                                   quantity::Share((*level)->toDouble(), quantity::kPpm)});
        return std::nullopt;
    }

    const CsvTable& m_table;
    CoFile m_file;
    TraceClock m_clock;
    int m_noTime = 0;
};

}  // namespace

bool saysOtherwise(std::string_view heading) {
    const auto words = foldedWords(heading);
    return isOtherGas(words) || isOtherUnit(heading, words);
}

CoColumns guessCoColumns(const std::vector<std::string>& firstRow) {
    CoColumns columns;
    columns.headed = std::none_of(firstRow.begin(), firstRow.end(), beginsWithFigure);
    if (!columns.headed) {
        if (firstRow.size() > 1) {
            columns.time = TraceColumn{0, {}, {}};
            columns.level = TraceColumn{1, {}, {}};
        }
        return columns;
    }
    std::optional<TraceColumn> day;
    for (std::size_t at = 0; at < firstRow.size(); ++at) {
        const auto& heading = firstRow[at];
        const auto words = foldedWords(heading);
        if (isCoHeading(words)) {
            if (!columns.level) {
                columns.level = TraceColumn{at, heading, headingUnit(heading, UnitFamily::Trace)};
                columns.isOtherwise = isOtherUnit(heading, words);
            }
        } else if (hasWord(words, {"time", "elapsed", "clock", "timestamp"}) ||
                   headingUnit(heading, UnitFamily::Time)) {
            if (!columns.time) {
                columns.time = TraceColumn{at, heading, headingUnit(heading, UnitFamily::Time)};
            }
        } else if (hasWord(words, {"date", "datetime"}) && !day) {
            day = TraceColumn{at, heading, {}};
        }
    }
    columns.time = columns.time ? columns.time : day;
    return columns;
}

tl::expected<CoFile, CoRefusal> readCoFile(std::string_view bytes, const std::optional<CoColumns>& said) {
    const CsvTable table = readCsv(bytes);
    if (table.rows.empty()) {
        return tl::unexpected(CoRefusal{CoFault::TooFew, 0});
    }
    if (table.rows.size() > kMostTraceLines) {
        return tl::unexpected(CoRefusal{CoFault::TooLong, 0});
    }
    return CoReader(table, said).read();
}

}  // namespace hearth::exchange
