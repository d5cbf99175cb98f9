// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/plot_words.h"

#include "core/judging/installation.h"
#include "core/judging/readings.h"
#include "core/quantity/units.h"
#include "core/tightness/figures.h"

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

namespace hearth::ui::words {

namespace {

using quantity::Decimal;
using quantity::UnitCode;
using record::Plot;
using record::PlotPoint;
using record::PlotSeries;
using record::PlotShape;
using reg::Item;
using rulebook::FindingKind;
using rulebook::Rule;
namespace choice = reg::choice;

std::string said(const Words& words, const char* english, const QStringList& arguments = {}) {
    return words.say(english, arguments).toStdString();
}

Decimal sum(const Decimal& a, const Decimal& b) {
    return a - (Decimal() - b);
}

/// "Drop permitted: 1.00 mbar".
std::string limitName(const Words& words, const rulebook::Entry& entry, const quantity::Figure& figure) {
    return (words.rule(entry.key.rule) + QStringLiteral(": ") + words.figure(figure)).toStdString();
}

/// A stage of a test that is drawn, and which way its limit lies.
struct DrawnStage {
    const char* title;
    judging::StageItems items;
    FindingKind finding;
    bool rises;  // a rise is held against the limit, not a fall
};
constexpr std::array kDrawnStages{
    DrawnStage{QT_TRANSLATE_NOOP("Words", "Let-by"),
               {Item::LetByStart, Item::LetByEnd, Item::LetByStartedAt, Item::LetByEndedAt},
               FindingKind::LetBy,
               true},
    DrawnStage{QT_TRANSLATE_NOOP("Words", "Tightness"),
               {Item::TightStart, Item::TightEnd, Item::TightStartedAt, Item::TightEndedAt},
               FindingKind::Tightness,
               false},
    DrawnStage{QT_TRANSLATE_NOOP("Words", "Retest, appliances isolated"),
               {Item::RetestStart, Item::RetestEnd, Item::RetestStartedAt, Item::RetestEndedAt},
               FindingKind::IsolatedRetest,
               false},
};

/// What bounds a movement of the gauge: not a test pressure, nor a time.
bool boundsMovement(Rule rule) {
    switch (rule) {
        case Rule::NoMovementWater:
        case Rule::NoMovementElectronic:
        case Rule::DropNoMeter28:
        case Rule::DropUltrasonic28:
        case Rule::DropDiaphragm6At28:
        case Rule::DropDiaphragm16At28:
        case Rule::DropNoMeter35:
        case Rule::DropUltrasonic35:
        case Rule::DropDiaphragm6At35:
        case Rule::DropDiaphragm16At35:
        case Rule::DropByVolume:
        case Rule::DropShortCut:
            return true;
        default:
            return false;
    }
}

/// Movements below it can't be told from none.
bool isThreshold(Rule rule) {
    return rule == Rule::NoMovementWater || rule == Rule::NoMovementElectronic;
}

/// The figure that an entry gives here: of bands, the one that the finding was held against.
std::optional<quantity::Figure> allowedBy(const rulebook::Entry& entry, const rulebook::Finding& finding) {
    if (const auto figure = rulebook::figureOf(entry)) {
        return figure;
    }
    const bool isBanded =
        entry.key.rule == Rule::DropByVolume && finding.limit && finding.limit->unit == UnitCode::Millibar;
    return isBanded ? finding.limit : std::nullopt;
}

/// "start" or "start, 09:44".
std::string momentText(const PlotSource& source, const char* name, const reg::SubjectRef& on, Item at) {
    const reg::Entry* time = source.file.find(on, at);
    return time == nullptr || time->canonical.empty() ? said(source.words, name)
                                                      : said(source.words, name) + ", " + time->canonical;
}

std::optional<Plot> stagePlot(const PlotSource& source, reg::TestId test, const DrawnStage& drawn) {
    const auto on = reg::subject(test);
    const auto stage = judging::stageOf(judging::Readings(source.file, on), drawn.items);
    if (!stage.start || !stage.end) {
        return std::nullopt;
    }
    const auto start = tightness::figureOf(*stage.start);
    const auto end = tightness::figureOf(*stage.end);
    Plot plot;
    plot.title = said(source.words, drawn.title);
    plot.y.title = said(source.words, QT_TRANSLATE_NOOP("Words", "pressure, mbar"));
    plot.x.ticks = {
        {Decimal(0, 0), momentText(source, QT_TRANSLATE_NOOP("Words", "start"), on, drawn.items.startedAt)},
        {Decimal(1, 0), momentText(source, QT_TRANSLATE_NOOP("Words", "end"), on, drawn.items.endedAt)}};
    PlotSeries series;
    series.points = {{Decimal(0, 0), start.value, std::nullopt, start.value.text()},
                     {Decimal(1, 0), end.value, std::nullopt, end.value.text()}};
    const reg::Instrument* instrument = source.file.gaugeOf(test);
    const auto gauge = instrument != nullptr ? judging::gaugeFrom(*instrument) : std::nullopt;
    if (gauge) {
        const auto uncertain =
            tightness::uncertaintyOf(tightness::changeBetween(*gauge, *stage.start, *stage.end));
        series.points[1].spread = uncertain.value;
        series.name = said(source.words,
                           QT_TRANSLATE_NOOP("Words", "read; the bar is the uncertainty of the change, ±%1"),
                           {source.words.figure(uncertain)});
    }
    plot.series.push_back(std::move(series));
    for (const auto& judged : source.findings) {
        if (judged.subject == on && judged.finding.kind == drawn.finding) {
            addMovementLimits(source, judged.finding, start.value, drawn.rises, plot);
        }
    }
    return plot;
}

/// Places in the order in which they are drawn, each with its shape.
struct DrawnPlace {
    std::string_view code;
    PlotShape shape;
};
constexpr std::array kDrawnPlaces{
    DrawnPlace{choice::kOutdoors, PlotShape::Ring}, DrawnPlace{choice::kRoom, PlotShape::Disc},
    DrawnPlace{choice::kAppliance, PlotShape::Square}, DrawnPlace{choice::kElsewhere, PlotShape::Triangle}};

constexpr int kMinuteDecimals = 2;
constexpr int kPpmDecimals = 1;

/// The series of one place. A reading without its figure is a gap; one without its time stands nowhere,
/// except that the very first counts from nought.
PlotSeries placeSeries(const PlotSource& source, const DrawnPlace& place) {
    PlotSeries series;
    series.shape = place.shape;
    bool isFirst = true;
    for (const auto& reading : source.file.roomReadings()) {
        const judging::Readings row(source.file, reading);
        const auto at = row.duration(Item::RoomCoAt);
        const bool fromNought = isFirst && !at.isEntered();
        isFirst = false;
        if (row.code(Item::RoomCoPlace) != place.code || (!at && !fromNought)) {
            continue;
        }
        if (series.name.empty()) {
            series.name = source.words.choice(Item::RoomCoPlace, std::string(place.code)).toStdString();
        }
        PlotPoint point;
        if (at) {
            point.x = Decimal::rounded(at->value.in(quantity::kMinute), kMinuteDecimals);
        }
        if (const auto level = row.trace(Item::RoomCo)) {
            const auto typed = row.figure(Item::RoomCo);
            const bool isPpm = typed && typed->unit == UnitCode::Ppm;
            point.y = isPpm ? typed->value : Decimal::rounded(level->value.in(quantity::kPpm), kPpmDecimals);
        }
        series.points.push_back(std::move(point));
    }
    // In the order of time, as a line is read; of two at one instant the one entered first.
    std::stable_sort(series.points.begin(), series.points.end(),
                     [](const PlotPoint& a, const PlotPoint& b) { return a.x < b.x; });
    return series;
}

bool isRoomFinding(FindingKind kind) {
    return kind == FindingKind::RoomCoLevel || kind == FindingKind::RoomCoShortMean ||
           kind == FindingKind::RoomCoLongMean;
}

void addRoomLimits(const PlotSource& source, Plot& plot) {
    for (const auto& judged : source.findings) {
        if (!isRoomFinding(judged.finding.kind)) {
            continue;
        }
        for (auto& limit : roomLimits(judged.finding.limits, source.words)) {
            if (std::find(plot.limits.begin(), plot.limits.end(), limit) == plot.limits.end()) {
                plot.limits.push_back(std::move(limit));
            }
        }
    }
}

}  // namespace

void addMovementLimits(const PlotSource& source, const rulebook::Finding& finding, const Decimal& start,
                       bool rises, Plot& plot) {
    for (const auto& entry : finding.limits) {
        const auto allowed = boundsMovement(entry.key.rule) ? allowedBy(entry, finding) : std::nullopt;
        if (allowed && allowed->unit == UnitCode::Millibar) {
            plot.limits.push_back({rises ? sum(start, allowed->value) : start - allowed->value,
                                   limitName(source.words, entry, *allowed), !isThreshold(entry.key.rule)});
        }
    }
}

record::Plots testPlots(const PlotSource& source, reg::TestId test) {
    record::Plots plots;
    for (const auto& drawn : kDrawnStages) {
        if (auto plot = stagePlot(source, test, drawn)) {
            plots.plots.push_back(std::move(*plot));
        }
    }
    return plots;
}

std::vector<record::PlotLimit> roomLimits(const std::vector<rulebook::Entry>& entries, const Words& words) {
    std::vector<record::PlotLimit> limits;
    for (const auto& entry : entries) {
        const auto figure = rulebook::figureOf(entry);
        if (figure && figure->unit == UnitCode::Ppm) {
            limits.push_back({figure->value, limitName(words, entry, *figure), true});
        }
    }
    return limits;
}

record::Plots roomPlots(const PlotSource& source) {
    Plot plot;
    plot.title = said(source.words, QT_TRANSLATE_NOOP("Words", "Carbon monoxide over time"));
    plot.x.title = said(source.words, QT_TRANSLATE_NOOP("Words", "minutes since the first reading"));
    plot.y.title = said(source.words, QT_TRANSLATE_NOOP("Words", "ppm"));
    plot.x.fromNought = true;
    plot.y.fromNought = true;
    for (const auto& place : kDrawnPlaces) {
        auto series = placeSeries(source, place);
        if (!series.points.empty()) {
            plot.series.push_back(std::move(series));
        }
    }
    record::Plots plots;
    if (!plot.isEmpty()) {
        addRoomLimits(source, plot);
        plots.plots.push_back(std::move(plot));
    }
    return plots;
}

}  // namespace hearth::ui::words
