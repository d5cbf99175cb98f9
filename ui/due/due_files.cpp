// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/due_files.h"

#include "core/exchange/csv.h"
#include "ui/due/due_text.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>

namespace hearth::ui::due {

using words::qstring;

namespace {

struct DueFiles {
    Q_DECLARE_TR_FUNCTIONS(DueFiles)
};

std::string utf8Of(const QString& text) {
    return text.toStdString();
}

record::Document pageOf(const reg::Firm& firm, const char* kind, const QString& title, calendar::Date today,
                        record::Paper paper, const words::Words& words) {
    record::Document page;
    page.kind = kind;
    page.language = words.language().left(2).toStdString();
    page.title = utf8Of(title);
    page.firm = firm.name;
    page.paper = paper;
    page.issued = utf8Of(words.date(today));
    page.pageWord = utf8Of(words.say("page %1 of %2"));
    if (firm.demonstration) {
        page.banner = utf8Of(DueFiles::tr("Demonstration: nothing here is real"));
    }
    return page;
}

QStringList summaryHeads() {
    return {DueFiles::tr("Premises"),   DueFiles::tr("State"),     DueFiles::tr("Deadline"),
            DueFiles::tr("Last check"), DueFiles::tr("Booked"),    DueFiles::tr("Record"),
            DueFiles::tr("Letters"),    DueFiles::tr("No access"), DueFiles::tr("What is next")};
}

QStringList summaryCells(const store::DueLine& line, const std::string& record, calendar::Date today,
                         const words::Words& words) {
    const auto date = [&words](const std::optional<calendar::Date>& day) {
        return day ? words.shortDate(*day) : QString();
    };
    QString deadline = date(line.deadline);
    if (line.latest) {
        deadline = DueFiles::tr("%1, perhaps %2").arg(deadline, date(line.latest));
    }
    return {oneLineOf(line.address),
            stateWord(line),
            deadline,
            date(line.lastCheck),
            line.booking ? bookingText(*line.booking, words) : QString(),
            qstring(record),
            QString::number(line.letters.size()),
            QString::number(line.attempts.size()),
            nextText(line, today, words)};
}

std::vector<std::string> rowOf(const QStringList& cells) {
    std::vector<std::string> row;
    for (const auto& cell : cells) {
        row.push_back(utf8Of(cell));
    }
    return row;
}

std::string csvRow(const QStringList& cells) {
    std::vector<exchange::CsvCell> row;
    for (const auto& cell : cells) {
        row.push_back({utf8Of(cell)});
    }
    return exchange::csvLine(row);
}

}  // namespace

Result<std::vector<store::DueLine>> allLines(const store::Due& due, const store::DueFilter& filter,
                                             store::DueSort sort, calendar::Date today) {
    constexpr int kAtOnce = 500;
    std::vector<store::DueLine> lines;
    while (true) {
        auto page = due.duePage(filter, sort, today, static_cast<int>(lines.size()), kAtOnce);
        if (!page) {
            return page;
        }
        std::move(page->begin(), page->end(), std::back_inserter(lines));
        if (static_cast<int>(page->size()) < kAtOnce) {
            return lines;
        }
    }
}

std::string summaryCsv(const std::vector<store::DueLine>& lines, const std::vector<std::string>& records,
                       calendar::Date today, const words::Words& words) {
    std::string text = csvRow(summaryHeads());
    for (std::size_t i = 0; i < lines.size(); ++i) {
        text += csvRow(summaryCells(lines[i], records[i], today, words));
    }
    return text;
}

record::Document dayDocument(const reg::Firm& firm, const QString& engineer, calendar::Date day,
                             const std::vector<store::DayStop>& stops, record::Paper paper,
                             const words::Words& words) {
    auto page = pageOf(firm, "day_sheet",
                       engineer.isEmpty() ? DueFiles::tr("Day sheet, %1").arg(words.date(day))
                                          : DueFiles::tr("Day sheet, %1: %2").arg(words.date(day), engineer),
                       day, paper, words);
    record::Table table;
    table.columns = {{utf8Of(DueFiles::tr("Time")), record::Align::Left, 1.0},
                     {utf8Of(DueFiles::tr("Premises")), record::Align::Left, 3.0},
                     {utf8Of(DueFiles::tr("Landlord, agent")), record::Align::Left, 1.8},
                     {utf8Of(DueFiles::tr("Deadline")), record::Align::Left, 1.2},
                     {utf8Of(DueFiles::tr("Note")), record::Align::Left, 2.0}};
    for (const auto& stop : stops) {
        QStringList people{qstring(stop.line.landlordName), qstring(stop.line.agentName)};
        people.removeAll(QString());
        QString time = qstring(stop.booking.from);
        if (!stop.booking.until.empty()) {
            time += QStringLiteral(" – ") + qstring(stop.booking.until);
        }
        table.rows.push_back(rowOf({time.isEmpty() ? DueFiles::tr("any time") : time,
                                    oneLineOf(stop.line.address), people.join(QStringLiteral(", ")),
                                    stop.line.deadline ? words.shortDate(*stop.line.deadline) : QString(),
                                    qstring(stop.booking.note)}));
    }
    table.toWrite = stops.empty() ? 0 : 2;
    page.blocks.emplace_back(std::move(table));
    return page;
}

QString monthName(const store::DueMonth& month, bool isOverdue) {
    if (isOverdue) {
        return DueFiles::tr("Overdue");
    }
    return QStringLiteral("%1 %2")
        .arg(QLocale(QLocale::English).monthName(static_cast<int>(month.month), QLocale::ShortFormat))
        .arg(month.year);
}

QString keptText(const store::DueKept& kept) {
    if (kept.checks == 0) {
        return DueFiles::tr("No check was held against a deadline in the last twelve months.");
    }
    return DueFiles::tr(
               "Checks held against a deadline in the last twelve months: %1. In time, with the date kept: "
               "%2. Early, so that the year began anew: %3. Late: %4. Let in at the first call: %5 of %6%7.")
        .arg(kept.checks)
        .arg(kept.inWindow)
        .arg(kept.early)
        .arg(kept.late)
        .arg(kept.firstTimeAccess)
        .arg(kept.rounds)
        .arg(kept.rounds == 0
                 ? QString()
                 : DueFiles::tr(" (%1 %)").arg(qRound(100.0 * kept.firstTimeAccess / kept.rounds)));
}

namespace {

quantity::Decimal chartNumber(int number) {
    return {number, 0};
}

/// Whole figures: half a check is none. From five on round steps are whole by themselves.
std::vector<record::PlotTick> wholeTicks(int most) {
    constexpr int kRoundAnyway = 5;
    std::vector<record::PlotTick> ticks;
    for (int at = 0; most < kRoundAnyway && at <= std::max(1, most); ++at) {
        ticks.push_back({chartNumber(at), std::to_string(at)});
    }
    return ticks;
}

record::PlotSeries chartBars(const QString& name, record::PlotShape shape, const std::vector<int>& figures,
                             bool labelled) {
    record::PlotSeries series{utf8Of(name), shape, false, false, {}};
    for (std::size_t i = 0; i < figures.size(); ++i) {
        series.points.push_back({chartNumber(static_cast<int>(i)),
                                 chartNumber(figures[i]),
                                 {},
                                 labelled && figures[i] > 0 ? std::to_string(figures[i]) : std::string()});
    }
    return series;
}

record::Plots barChart(const QString& title, const QStringList& names, std::vector<record::PlotSeries> series,
                       int most, const QString& counted) {
    record::Plot plot;
    plot.x.title = {};
    for (int i = 0; i < names.size(); ++i) {
        plot.x.ticks.push_back({chartNumber(i), utf8Of(names[i])});
    }
    plot.y = {utf8Of(counted), wholeTicks(most), true};
    plot.series = std::move(series);
    record::Plots chart;
    chart.title = utf8Of(title);
    chart.plots.push_back(std::move(plot));
    return chart;
}

record::Plots monthsChart(const store::DueOverview& overview) {
    QStringList names;
    std::vector<int> due;
    std::vector<int> booked;
    for (std::size_t i = 0; i < overview.months.size(); ++i) {
        const auto& month = overview.months[i];
        names << (i == 0 ? DueFiles::tr("late") : monthName(month, false).section(u' ', 0, 0));
        due.push_back(month.due);
        booked.push_back(month.booked);
    }
    const int most = due.empty() ? 0 : *std::max_element(due.begin(), due.end());
    return barChart(DueFiles::tr("Deadlines by month"), names,
                    {chartBars(DueFiles::tr("due"), record::PlotShape::OpenBar, due, true),
                     chartBars(DueFiles::tr("of these booked"), record::PlotShape::Bar, booked, false)},
                    most, DueFiles::tr("checks"));
}

record::Plots keptChart(const store::DueKept& kept) {
    const std::vector<int> figures{kept.inWindow, kept.early, kept.late};
    return barChart(
        DueFiles::tr("How deadlines were kept in the last twelve months"),
        {DueFiles::tr("in time, date kept"), DueFiles::tr("early, began anew"), DueFiles::tr("late")},
        {chartBars({}, record::PlotShape::OpenBar, figures, true)},
        *std::max_element(figures.begin(), figures.end()), DueFiles::tr("checks"));
}

/// As much of a name as stands below a bar.
QString barName(const std::string& name) {
    constexpr qsizetype kMost = 14;
    const QString whole = qstring(name);
    return whole.size() <= kMost ? whole : whole.left(kMost - 1).trimmed() + QStringLiteral("…");
}

/// Those with most overdue; a table behind it has them all, with their whole names.
record::Plots landlordsChart(const std::vector<store::DueOverview::OfLandlord>& landlords) {
    constexpr std::size_t kMostBars = 6;
    QStringList names;
    std::vector<int> premises;
    std::vector<int> overdue;
    for (std::size_t i = 0; i < std::min(kMostBars, landlords.size()); ++i) {
        names << barName(landlords[i].name);
        premises.push_back(landlords[i].premises);
        overdue.push_back(landlords[i].overdue);
    }
    return barChart(DueFiles::tr("By landlord"), names,
                    {chartBars(DueFiles::tr("premises"), record::PlotShape::OpenBar, premises, true),
                     chartBars(DueFiles::tr("of these overdue"), record::PlotShape::Bar, overdue, false)},
                    *std::max_element(premises.begin(), premises.end()), DueFiles::tr("premises"));
}

}  // namespace

record::Document overviewDocument(const reg::Firm& firm, const store::DueOverview& overview,
                                  calendar::Date today, record::Paper paper, const words::Words& words) {
    auto page = pageOf(firm, "due_overview", DueFiles::tr("Checks due: overview"), today, paper, words);
    page.blocks.emplace_back(monthsChart(overview));
    record::Table months;
    months.columns = {{utf8Of(DueFiles::tr("Month")), record::Align::Left, 2.0},
                      {utf8Of(DueFiles::tr("Due")), record::Align::Right, 1.0},
                      {utf8Of(DueFiles::tr("Of these booked")), record::Align::Right, 1.0}};
    for (std::size_t i = 0; i < overview.months.size(); ++i) {
        const auto& month = overview.months[i];
        months.rows.push_back(
            rowOf({monthName(month, i == 0), QString::number(month.due), QString::number(month.booked)}));
    }
    page.blocks.emplace_back(std::move(months));
    if (overview.kept.checks > 0) {
        page.blocks.emplace_back(keptChart(overview.kept));
    }
    const bool isDrawn = overview.kept.checks > 0;  // then the chart has the heading
    page.blocks.emplace_back(
        record::Paragraph{isDrawn ? std::string() : utf8Of(DueFiles::tr("How deadlines were kept")),
                          utf8Of(keptText(overview.kept)), false});
    const bool isCompared = overview.landlords.size() > 1;
    if (isCompared) {
        page.blocks.emplace_back(landlordsChart(overview.landlords));
    }
    record::Table landlords;
    landlords.title = isCompared ? std::string() : utf8Of(DueFiles::tr("By landlord"));
    landlords.columns = {{utf8Of(DueFiles::tr("Landlord")), record::Align::Left, 3.0},
                         {utf8Of(DueFiles::tr("Premises")), record::Align::Right, 1.0},
                         {utf8Of(DueFiles::tr("Overdue")), record::Align::Right, 1.0},
                         {utf8Of(DueFiles::tr("Open")), record::Align::Right, 1.0},
                         {utf8Of(DueFiles::tr("Booked")), record::Align::Right, 1.0}};
    for (const auto& one : overview.landlords) {
        landlords.rows.push_back(
            rowOf({qstring(one.name), QString::number(one.premises), QString::number(one.overdue),
                   QString::number(one.open), QString::number(one.booked)}));
    }
    page.blocks.emplace_back(std::move(landlords));
    return page;
}

}  // namespace hearth::ui::due
