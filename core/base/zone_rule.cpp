// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/zone_rule.h"

#include <cctype>

namespace hearth {
namespace {

using std::chrono::seconds;
using std::chrono::sys_days;
using std::chrono::sys_seconds;
using std::chrono::year;

/// Takes a rule's text apart from the left; `isGood` stays false after the first slip.
class Reader {
  public:
    explicit Reader(std::string_view text) : m_rest(text) {}

    [[nodiscard]] bool isGood() const { return m_good; }
    [[nodiscard]] bool isAtEnd() const { return m_rest.empty(); }
    [[nodiscard]] bool sees(char c) const { return !m_rest.empty() && m_rest.front() == c; }
    bool take(char c) {
        const bool here = sees(c);
        if (here) {
            m_rest.remove_prefix(1);
        }
        return here;
    }
    void need(char c) {
        if (!take(c)) {
            m_good = false;
        }
    }

    void name() {
        const bool isQuoted = take('<');
        std::size_t length = 0;
        while (length < m_rest.size() && isNameLetter(m_rest[length], isQuoted)) {
            ++length;
        }
        m_rest.remove_prefix(length);
        m_good = m_good && length >= 3;
        if (isQuoted) {
            need('>');
        }
    }

    int number(int least, int most) {
        int value = 0;
        int digits = 0;
        while (digits < 4 && !m_rest.empty() &&
               std::isdigit(static_cast<unsigned char>(m_rest.front())) != 0) {
            value = value * 10 + (m_rest.front() - '0');
            m_rest.remove_prefix(1);
            ++digits;
        }
        m_good = m_good && digits > 0 && value >= least && value <= most;
        return value;
    }

    /// [+-]hh[:mm[:ss]]
    seconds span() {
        const bool isNegative = take('-');
        if (!isNegative) {
            take('+');
        }
        int total = number(0, 167) * 3600;
        if (take(':')) {
            total += number(0, 59) * 60;
            if (take(':')) {
                total += number(0, 59);
            }
        }
        return seconds{isNegative ? -total : total};
    }

  private:
    static bool isNameLetter(char c, bool isQuoted) {
        const auto letter = static_cast<unsigned char>(c);
        return isQuoted ? (std::isalnum(letter) != 0 || c == '+' || c == '-') : std::isalpha(letter) != 0;
    }

    std::string_view m_rest;
    bool m_good = true;
};

ZoneChange readChange(Reader& reader) {
    ZoneChange change;
    reader.need(',');
    if (reader.take('M')) {
        change.month = reader.number(1, 12);
        reader.need('.');
        change.week = reader.number(1, 5);
        reader.need('.');
        change.day = reader.number(0, 6);
    } else if (reader.take('J')) {
        change.form = ZoneChange::Form::JulianWithoutLeapDay;
        change.day = reader.number(1, 365);
    } else {
        change.form = ZoneChange::Form::DayOfYear;
        change.day = reader.number(0, 365);
    }
    if (reader.take('/')) {
        change.time = reader.span();
    }
    return change;
}

sys_days dayOf(const ZoneChange& change, year inYear) {
    using std::chrono::days;
    const sys_days newYear{inYear / std::chrono::January / 1};
    switch (change.form) {
        case ZoneChange::Form::DayOfYear:
            return newYear + days{change.day};
        case ZoneChange::Form::JulianWithoutLeapDay: {
            const bool isAfterLeapDay = inYear.is_leap() && change.day >= 60;
            return newYear + days{change.day - (isAfterLeapDay ? 0 : 1)};
        }
        case ZoneChange::Form::MonthWeekDay:
            break;
    }
    const std::chrono::month month{static_cast<unsigned>(change.month)};
    const std::chrono::weekday weekday{static_cast<unsigned>(change.day)};
    if (change.week == 5) {
        return sys_days{inYear / month / weekday[std::chrono::last]};
    }
    return sys_days{inYear / month / weekday[static_cast<unsigned>(change.week)]};
}

/// The change's instant: its wall time is told by the offset that holds before it.
sys_seconds instantOf(const ZoneChange& change, year inYear, seconds offsetBefore) {
    return sys_seconds{dayOf(change, inYear)} + change.time - offsetBefore;
}

}  // namespace

seconds ZoneRule::offsetAt(sys_seconds instant) const {
    if (!toSummer || !toStandard) {
        return standardOffset;
    }
    const auto localDay = std::chrono::floor<std::chrono::days>(instant + standardOffset);
    const year inYear = std::chrono::year_month_day{localDay}.year();
    const auto start = instantOf(*toSummer, inYear, standardOffset);
    const auto end = instantOf(*toStandard, inYear, summerOffset);
    // South of the equator summer time spans the new year, so the two changes stand the other way round.
    const bool isSummer =
        start < end ? (instant >= start && instant < end) : (instant >= start || instant < end);
    return isSummer ? summerOffset : standardOffset;
}

std::optional<ZoneRule> parseZoneRule(std::string_view text) {
    Reader reader(text);
    ZoneRule rule;
    reader.name();
    rule.standardOffset = -reader.span();  // POSIX counts west of Greenwich as positive
    if (reader.isGood() && !reader.isAtEnd()) {
        reader.name();
        rule.summerOffset = rule.standardOffset + seconds{3600};
        if (!reader.sees(',')) {
            rule.summerOffset = -reader.span();
        }
        rule.toSummer = readChange(reader);
        rule.toStandard = readChange(reader);
    }
    if (!reader.isGood() || !reader.isAtEnd()) {
        return std::nullopt;
    }
    return rule;
}

}  // namespace hearth
