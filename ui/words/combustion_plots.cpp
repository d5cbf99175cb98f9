// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/readings.h"
#include "core/quantity/units.h"
#include "ui/words/plot_words.h"

#include <algorithm>
#include <array>
#include <optional>

namespace hearth::ui::words {

namespace {

using quantity::Decimal;
using quantity::Figure;
using quantity::UnitCode;
using record::Plot;
using record::PlotPoint;
using record::PlotSeries;
using record::PlotShape;
using reg::Item;
using rulebook::FindingKind;

/// A figure of the flue gas that is drawn: as typed at each rate, or as a finding measured it.
struct FlueFigure {
    const char* title;
    const char* unit;
    UnitCode unitCode;
    std::optional<Item> high;
    std::optional<Item> low;
    std::optional<Item> beforeHigh;
    std::optional<Item> beforeLow;
    FindingKind findingHigh;
    FindingKind findingLow;
};
constexpr std::array kFlueFigures{
    FlueFigure{QT_TRANSLATE_NOOP("Words", "Ratio CO/CO₂"), QT_TRANSLATE_NOOP("Words", "worked out"),
               UnitCode::None, std::nullopt, std::nullopt, std::nullopt, std::nullopt,
               FindingKind::CombustionRatioMaximum, FindingKind::CombustionRatioMinimum},
    FlueFigure{QT_TRANSLATE_NOOP("Words", "CO"), QT_TRANSLATE_NOOP("Words", "ppm"), UnitCode::Ppm,
               Item::FlueCoHigh, Item::FlueCoLow, Item::BeforeCoHigh, Item::BeforeCoLow,
               FindingKind::CarbonMonoxideMaximum, FindingKind::CarbonMonoxideMinimum},
    FlueFigure{QT_TRANSLATE_NOOP("Words", "CO₂"), QT_TRANSLATE_NOOP("Words", "%"), UnitCode::Percent,
               Item::FlueCo2High, Item::FlueCo2Low, Item::BeforeCo2High, Item::BeforeCo2Low,
               FindingKind::CarbonDioxideMaximum, FindingKind::CarbonDioxideMinimum},
};

const rulebook::Finding* flueFinding(const PlotSource& source, const reg::SubjectRef& on, FindingKind kind) {
    const auto found = std::find_if(
        source.findings.begin(), source.findings.end(),
        [&](const judging::Judged& judged) { return judged.subject == on && judged.finding.kind == kind; });
    return found == source.findings.end() ? nullptr : &found->finding;
}

/// In the plot's unit; nothing for what was typed in another, which the table beside it tells.
std::optional<Decimal> typedFigure(const judging::Readings& readings, const std::optional<Item>& item,
                                   UnitCode unit) {
    const auto figure = item ? readings.figure(*item) : std::nullopt;
    return figure && figure->unit == unit ? std::optional(figure->value) : std::nullopt;
}

std::optional<Decimal> measuredFigure(const rulebook::Finding* finding, UnitCode unit) {
    return finding != nullptr && finding->measured && finding->measured->unit == unit
               ? std::optional(finding->measured->value)
               : std::nullopt;
}

PlotSeries ratesSeries(const char* name, PlotShape shape, const Words& words,
                       const std::optional<Decimal>& high, const std::optional<Decimal>& low) {
    const auto point = [](int x, const std::optional<Decimal>& y) {
        return PlotPoint{Decimal(x, 0), y, std::nullopt, y ? y->text() : std::string()};
    };
    return {words.say(name).toStdString(),
            shape,
            /*isJoined=*/false,
            /*hasMarks=*/true,
            {point(0, high), point(1, low)}};
}

std::string entryName(const Words& words, const rulebook::Entry& entry) {
    return (words.rule(entry.key.rule) + QStringLiteral(": ") + words.ruleValue(entry)).toStdString();
}

void addFlueLimits(const PlotSource& source, const rulebook::Finding* finding, UnitCode unit, Plot& plot) {
    if (finding == nullptr) {
        return;
    }
    for (const auto& entry : finding->limits) {
        if (const auto figure = rulebook::figureOf(entry); figure && figure->unit == unit) {
            const record::PlotLimit limit{figure->value, entryName(source.words, entry), true};
            if (std::find(plot.limits.begin(), plot.limits.end(), limit) == plot.limits.end()) {
                plot.limits.push_back(limit);
            }
        } else if (const auto range = rulebook::rangeOf(entry); range && range->unit == unit) {
            const record::PlotBand band{range->least, range->most, entryName(source.words, entry)};
            if (std::find(plot.bands.begin(), plot.bands.end(), band) == plot.bands.end()) {
                plot.bands.push_back(band);
            }
        }
    }
}

Plot fluePlot(const PlotSource& source, const reg::SubjectRef& on, const FlueFigure& drawn) {
    const judging::Readings readings(source.file, on);
    const auto* high = flueFinding(source, on, drawn.findingHigh);
    const auto* low = flueFinding(source, on, drawn.findingLow);
    const auto read = [&](const std::optional<Item>& item, const rulebook::Finding* finding) {
        return item ? typedFigure(readings, item, drawn.unitCode) : measuredFigure(finding, drawn.unitCode);
    };
    Plot plot;
    plot.title = source.words.say(drawn.title).toStdString();
    plot.y.title = source.words.say(drawn.unit).toStdString();
    plot.y.fromNought = drawn.unitCode != UnitCode::Percent;  // none of it is less than none
    plot.x.ticks = {
        {Decimal(0, 0), source.words.say(QT_TRANSLATE_NOOP("Words", "highest rate")).toStdString()},
        {Decimal(1, 0), source.words.say(QT_TRANSLATE_NOOP("Words", "lowest rate")).toStdString()}};
    plot.series = {ratesSeries(QT_TRANSLATE_NOOP("Words", "as left"), PlotShape::Disc, source.words,
                               read(drawn.high, high), read(drawn.low, low))};
    auto before = ratesSeries(QT_TRANSLATE_NOOP("Words", "before it was adjusted"), PlotShape::Ring,
                              source.words, typedFigure(readings, drawn.beforeHigh, drawn.unitCode),
                              typedFigure(readings, drawn.beforeLow, drawn.unitCode));
    if (before.points[0].y || before.points[1].y) {
        plot.series.push_back(std::move(before));
    }
    addFlueLimits(source, high, drawn.unitCode, plot);
    addFlueLimits(source, low, drawn.unitCode, plot);
    return plot;
}

}  // namespace

record::Plots combustionPlots(const PlotSource& source, reg::ApplianceId appliance) {
    record::Plots plots;
    for (const auto& drawn : kFlueFigures) {
        Plot plot = fluePlot(source, reg::subject(appliance), drawn);
        if (!plot.isEmpty()) {
            plots.plots.push_back(std::move(plot));
        }
    }
    return plots;
}

}  // namespace hearth::ui::words
