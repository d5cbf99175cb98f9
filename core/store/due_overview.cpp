// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/check_dates.h"
#include "core/store/due_facts.h"
#include "core/store/due_repository.h"

#include <algorithm>

/// The whole at a glance: by month, how checks were kept, by landlord.
namespace hearth::store {
namespace {

using calendar::CheckTiming;
using calendar::Date;

constexpr int kMonthsAhead = 12;
constexpr int kMostLandlords = 50;

Date firstOfMonth(Date date) {
    return Date{date.year() / date.month() / std::chrono::day(1)};
}

DueMonth countMonth(const Connection& db, std::optional<Date> from, Date before, Date today) {
    DueMonth month;
    if (from) {
        month.year = static_cast<int>(from->year());
        month.month = static_cast<unsigned>(from->month());
    }
    Cells values{dueDay(today)};
    std::string condition = "d.duty < 3 AND d.deadline < ?";
    values.emplace_back(dueDay(before));
    if (from) {
        condition += " AND d.deadline >= ?";
        values.emplace_back(dueDay(*from));
    }
    db.query(
        "SELECT count(*), coalesce(sum(d.booked >= ? AND d.booked <= d.deadline), 0) FROM due_premises AS "
        "d INDEXED BY due_by_deadline WHERE " +
            condition,
        values, [&](const Columns& row) {
            month.due = row.number(0);
            month.booked = row.number(1);
        });
    return month;
}

/// Overdue first; this month without what is overdue in it.
std::vector<DueMonth> monthsFrom(const Connection& db, Date today) {
    std::vector<DueMonth> months{countMonth(db, std::nullopt, today, today)};
    const Date begin = firstOfMonth(today);
    for (int i = 0; i < kMonthsAhead; ++i) {
        const Date from = calendar::addMonths(begin, i);
        auto month = countMonth(db, std::max(from, today), calendar::addMonths(begin, i + 1), today);
        months.push_back(month);
    }
    return months;
}

/// How each check of an item in the year was held against its deadline.
void takeItem(const ItemFacts& item, Date from, Date today, DueKept& kept) {
    auto before = item.history;
    before.checks.clear();
    for (const Date check : item.history.checks) {
        const auto deadline = calendar::deadlineOf(before);
        if (check >= from && check <= today && deadline) {
            const auto timing = calendar::checkTiming(deadline->date, check, item.history.law);
            ++kept.checks;
            kept.inWindow += timing == CheckTiming::InWindow || timing == CheckTiming::InTime ? 1 : 0;
            kept.early += timing == CheckTiming::BeforeWindow || timing == CheckTiming::Boundary ? 1 : 0;
            kept.late += timing == CheckTiming::Late ? 1 : 0;
        }
        before.checks.push_back(check);
    }
}

DueKept keptSince(const Connection& db, Date from, Date today) {
    DueKept kept;
    for (const auto& facts : readDueFactsAmong(db, {})) {
        const auto duty = dutyOf(facts);
        const bool hasAny = std::any_of(facts.checks.begin(), facts.checks.end(),
                                        [&](const CheckFacts& check) { return check.date >= from; });
        if (!hasAny || duty == calendar::CheckDuty::None || duty == calendar::CheckDuty::OwnInterval) {
            continue;
        }
        for (const auto& item : itemsOf(facts, 0)) {
            takeItem(item, from, today, kept);
        }
    }
    // A round that ended in a check of ours: whether anybody had stood before a closed door since the last.
    db.query(
        "SELECT count(*), coalesce(sum(NOT EXISTS (SELECT 1 FROM access_attempts AS t WHERE t.premises = "
        "c.premises AND t.channel = 'visit' AND t.at < c.date AND t.at > date(c.date, '-10 months'))), 0) "
        "FROM (SELECT DISTINCT premises, date FROM record_checks WHERE counts = 1 AND date >= ? AND date "
        "<= ?) AS c",
        {calendar::isoText(from), calendar::isoText(today)}, [&](const Columns& row) {
            kept.rounds = row.number(0);
            kept.firstTimeAccess = row.number(1);
        });
    return kept;
}

/// Booked are all that have a day to come, also where it comes too late.
std::vector<DueOverview::OfLandlord> landlordsOf(const Connection& db, Date today) {
    const auto day = dueDay(today);
    return db.all(
        "SELECT g.landlord, p.name, g.premises, g.overdue, g.opened, g.booked FROM (SELECT d.landlord AS "
        "landlord, count(*) AS premises, coalesce(sum(d.deadline < ?), 0) AS overdue, "
        "coalesce(sum(d.deadline "
        ">= ? AND d.opens <= ?), 0) AS opened, coalesce(sum(d.booked >= ?), 0) AS booked FROM due_premises "
        "AS d INDEXED BY due_by_deadline WHERE d.duty < 3 AND "
        "d.landlord IS NOT NULL GROUP BY d.landlord ORDER BY overdue DESC, premises DESC, d.landlord LIMIT "
        "?) "
        "AS g JOIN parties AS p ON p.id = g.landlord ORDER BY g.overdue DESC, g.premises DESC, g.landlord",
        {day, day, day, day, std::int64_t{kMostLandlords}}, [](const Columns& row) {
            return DueOverview::OfLandlord{reg::PartyId{row.uuid(0)},
                                           row.text(1),
                                           row.number(2),
                                           row.number(3),
                                           row.number(4),
                                           row.number(5)};
        });
}

}  // namespace

DueOverview readOverview(const Connection& db, Date today) {
    return {monthsFrom(db, today), keptSince(db, calendar::addMonths(today, -kMonthsAhead), today),
            landlordsOf(db, today)};
}

}  // namespace hearth::store
