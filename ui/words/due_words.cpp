// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/due_words.h"

#include "ui/words/text_table.h"

#include <algorithm>

namespace hearth::ui::words {

namespace {

using calendar::DueState;

constexpr std::array kDueStateTexts{
    Text<DueState>{DueState::Overdue, QT_TRANSLATE_NOOP("Words", "overdue")},
    Text<DueState>{DueState::LastTwoWeeks, QT_TRANSLATE_NOOP("Words", "last two weeks")},
    Text<DueState>{DueState::WindowOpen, QT_TRANSLATE_NOOP("Words", "window open")},
    Text<DueState>{DueState::Booked, QT_TRANSLATE_NOOP("Words", "booked")},
    Text<DueState>{DueState::OpeningSoon, QT_TRANSLATE_NOOP("Words", "opening soon")},
    Text<DueState>{DueState::Later, QT_TRANSLATE_NOOP("Words", "later")},
    Text<DueState>{DueState::NotKnown, QT_TRANSLATE_NOOP("Words", "no check known")},
    Text<DueState>{DueState::NoDuty, QT_TRANSLATE_NOOP("Words", "no check asked for")},
};

std::string summaryText(const Words& words, const char* english) {
    return words.say(english).toStdString();
}

std::string dayOrDash(const Words& words, const std::optional<calendar::Date>& date) {
    return date ? words.shortDate(*date).toStdString() : std::string("–");
}

std::string textOrDash(const std::string& text) {
    return text.empty() ? std::string("–") : text;
}

std::string deadlineText(const Words& words, const SummaryLine& line) {
    if (!line.latest) {
        return dayOrDash(words, line.deadline);
    }
    return words
        .say(QT_TRANSLATE_NOOP("Words", "%1 (at the latest %2: by the reading of the law)"),
             {words.shortDate(*line.deadline), words.shortDate(*line.latest)})
        .toStdString();
}

std::string placeText(const reg::Address& address) {
    std::string text;
    for (const auto* part : {&address.line1, &address.line2, &address.town, &address.postcode}) {
        if (!part->empty()) {
            text.append(text.empty() ? "" : ", ").append(*part);
        }
    }
    return text;
}

bool isOverdueBooked(const SummaryLine& line) {
    return line.state == DueState::Overdue && !line.booked.empty();
}

/// Those overdue that are booked are counted with the overdue, and by themselves.
record::FieldGrid stateGrid(const Words& words, const Summary& summary) {
    record::FieldGrid grid;
    grid.title = summaryText(words, QT_TRANSLATE_NOOP("Words", "How many stand where"));
    for (const auto state : calendar::kDueStates) {
        const auto count = std::count_if(summary.lines.begin(), summary.lines.end(),
                                         [&](const SummaryLine& line) { return line.state == state; });
        if (count > 0) {
            grid.fields.push_back({dueState(words, state).toStdString(), {std::to_string(count)}});
        }
        const auto booked = std::count_if(summary.lines.begin(), summary.lines.end(), isOverdueBooked);
        if (state == DueState::Overdue && booked > 0) {
            grid.fields.push_back({summaryText(words, QT_TRANSLATE_NOOP("Words", "overdue, of them booked")),
                                   {std::to_string(booked)}});
        }
    }
    return grid;
}

record::Table premisesSummary(const Words& words, const Summary& summary) {
    record::Table table;
    table.title = summaryText(words, QT_TRANSLATE_NOOP("Words", "Premises"));
    const auto column = [&](const char* title, double weight) {
        table.columns.push_back({summaryText(words, title), record::Align::Left, weight});
    };
    column(QT_TRANSLATE_NOOP("Words", "Address"), 2.6);
    column(QT_TRANSLATE_NOOP("Words", "State"), 1.5);
    column(QT_TRANSLATE_NOOP("Words", "Last check"), 1.4);
    column(QT_TRANSLATE_NOOP("Words", "Due by"), 1.4);
    column(QT_TRANSLATE_NOOP("Words", "Booked for"), 1.4);
    column(QT_TRANSLATE_NOOP("Words", "Record"), 1.2);
    column(QT_TRANSLATE_NOOP("Words", "Letters"), 0.8);
    column(QT_TRANSLATE_NOOP("Words", "No access"), 0.9);
    for (const auto& line : summary.lines) {
        table.rows.push_back(
            {placeText(line.address), dueState(words, line.state, isOverdueBooked(line)).toStdString(),
             dayOrDash(words, line.lastCheck), deadlineText(words, line), textOrDash(line.booked),
             textOrDash(line.record), std::to_string(line.letters), std::to_string(line.attempts)});
    }
    return table;
}

}  // namespace

QString dueState(const Words& words, DueState state, bool isBooked) {
    if (state == DueState::Overdue && isBooked) {
        return words.say(QT_TRANSLATE_NOOP("Words", "overdue, booked"));
    }
    return words.say(textOf(kDueStateTexts, state));
}

record::Document summaryDocument(const Words& words, const Summary& summary) {
    record::Document page;
    page.kind = "checks_due";
    page.language = words.language().left(2).toStdString();
    page.title = summaryText(words, QT_TRANSLATE_NOOP("Words", "Gas safety checks: summary"));
    page.subtitle = summary.whose;
    page.firm = summary.firm.name;
    page.paper = summary.paper;
    page.issued = words.date(summary.today).toStdString();
    page.pageWord = summaryText(words, QT_TRANSLATE_NOOP("Words", "page %1 of %2"));
    if (summary.firm.demonstration) {
        page.banner = summaryText(words, QT_TRANSLATE_NOOP("Words", "Demonstration: not a real record"));
    }
    page.blocks.emplace_back(stateGrid(words, summary));
    page.blocks.emplace_back(premisesSummary(words, summary));
    page.blocks.emplace_back(record::Paragraph{
        {},
        summaryText(
            words,
            QT_TRANSLATE_NOOP(
                "Words", "A list of what our records say on the day above; the records themselves count.")),
        false});
    return page;
}

}  // namespace hearth::ui::words
