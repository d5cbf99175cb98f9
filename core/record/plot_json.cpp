// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/json_parts.h"

#include <algorithm>
#include <array>
#include <stdexcept>
#include <string_view>
#include <utility>

namespace hearth::record {

bool Plot::isEmpty() const {
    return std::none_of(series.begin(), series.end(), [](const PlotSeries& one) {
        return std::any_of(one.points.begin(), one.points.end(),
                           [](const PlotPoint& point) { return point.y.has_value(); });
    });
}

namespace {

using quantity::Decimal;

constexpr std::array<std::pair<PlotShape, std::string_view>, 7> kShapes{{{PlotShape::Disc, "disc"},
                                                                         {PlotShape::Ring, "ring"},
                                                                         {PlotShape::Square, "square"},
                                                                         {PlotShape::Diamond, "diamond"},
                                                                         {PlotShape::Triangle, "triangle"},
                                                                         {PlotShape::Bar, "bar"},
                                                                         {PlotShape::OpenBar, "open_bar"}}};

std::string_view shapeText(PlotShape shape) {
    return std::find_if(kShapes.begin(), kShapes.end(),
                        [shape](const auto& one) { return one.first == shape; })
        ->second;
}

PlotShape plotShapeOf(const Json& json) {
    const auto text = json.get<std::string>();
    const auto known =
        std::find_if(kShapes.begin(), kShapes.end(), [&](const auto& one) { return one.second == text; });
    if (known == kShapes.end()) {
        throw std::invalid_argument("no shape of a mark");
    }
    return known->first;
}

Decimal plotNumber(const Json& json) {
    const auto number = Decimal::parse(json.get<std::string>());
    if (!number) {
        throw std::invalid_argument("no decimal");
    }
    return *number;
}

Json maybe(const std::optional<Decimal>& number) {
    return number ? Json(number->text()) : Json(nullptr);
}

std::optional<Decimal> maybeOf(const Json& json) {
    return json.is_null() ? std::nullopt : std::optional(plotNumber(json));
}

template <class Value, class Convert>
Json plotList(const std::vector<Value>& values, Convert convert) {
    Json list = Json::array();
    for (const auto& value : values) {
        list.push_back(convert(value));
    }
    return list;
}

template <class Value, class Convert>
std::vector<Value> plotValues(const Json& list, Convert convert) {
    std::vector<Value> values;
    for (const auto& value : list) {
        values.push_back(convert(value));
    }
    return values;
}

Json axisJson(const PlotAxis& axis) {
    return {{"title", axis.title},
            {"from_nought", axis.fromNought},
            {"ticks", plotList(axis.ticks, [](const PlotTick& tick) {
                 return Json{{"at", tick.at.text()}, {"text", tick.text}};
             })}};
}

PlotAxis plotAxisOf(const Json& json) {
    return {json.at("title"),
            plotValues<PlotTick>(json.at("ticks"),
                                 [](const Json& tick) {
                                     return PlotTick{plotNumber(tick.at("at")), tick.at("text")};
                                 }),
            json.at("from_nought")};
}

Json seriesJson(const PlotSeries& series) {
    return {{"name", series.name},
            {"shape", shapeText(series.shape)},
            {"joined", series.isJoined},
            {"marks", series.hasMarks},
            {"points", plotList(series.points, [](const PlotPoint& point) {
                 return Json{{"x", point.x.text()},
                             {"y", maybe(point.y)},
                             {"spread", maybe(point.spread)},
                             {"label", point.label}};
             })}};
}

PlotSeries plotSeriesOf(const Json& json) {
    return {json.at("name"), plotShapeOf(json.at("shape")), json.at("joined"), json.at("marks"),
            plotValues<PlotPoint>(json.at("points"), [](const Json& point) {
                return PlotPoint{plotNumber(point.at("x")), maybeOf(point.at("y")),
                                 maybeOf(point.at("spread")), point.at("label")};
            })};
}

Json plainPlotJson(const Plot& plot) {
    return {
        {"title", plot.title},
        {"x", axisJson(plot.x)},
        {"y", axisJson(plot.y)},
        {"series", plotList(plot.series, seriesJson)},
        {"limits",
         plotList(plot.limits,
                  [](const PlotLimit& limit) {
                      return Json{{"y", limit.y.text()}, {"name", limit.name}, {"hard", limit.isHard}};
                  })},
        {"bands",
         plotList(
             plot.bands,
             [](const PlotBand& band) {
                 return Json{{"least", band.least.text()}, {"most", band.most.text()}, {"name", band.name}};
             })},
        {"marks", plotList(plot.marks, [](const PlotMark& mark) {
             return Json{{"x", mark.x.text()}, {"name", mark.name}};
         })}};
}

/// Stretches only where there are some, so that a plot without them is the same to the byte as before there
/// were.
Json plotJson(const Plot& plot) {
    Json json = plainPlotJson(plot);
    if (!plot.stretches.empty()) {
        json["stretches"] = plotList(plot.stretches, [](const PlotStretch& stretch) {
            return Json{{"from", stretch.from.text()}, {"to", stretch.to.text()}, {"name", stretch.name}};
        });
    }
    return json;
}

Plot plotOf(const Json& json) {
    const auto stretches = json.find("stretches");
    return {
        json.at("title"),
        plotAxisOf(json.at("x")),
        plotAxisOf(json.at("y")),
        plotValues<PlotSeries>(json.at("series"), plotSeriesOf),
        plotValues<PlotLimit>(
            json.at("limits"),
            [](const Json& limit) {
                return PlotLimit{plotNumber(limit.at("y")), limit.at("name"), limit.at("hard")};
            }),
        plotValues<PlotBand>(
            json.at("bands"),
            [](const Json& band) {
                return PlotBand{plotNumber(band.at("least")), plotNumber(band.at("most")), band.at("name")};
            }),
        plotValues<PlotMark>(json.at("marks"),
                             [](const Json& mark) {
                                 return PlotMark{plotNumber(mark.at("x")), mark.at("name")};
                             }),
        stretches == json.end() ? std::vector<PlotStretch>()
                                : plotValues<PlotStretch>(*stretches, [](const Json& stretch) {
                                      return PlotStretch{plotNumber(stretch.at("from")),
                                                         plotNumber(stretch.at("to")), stretch.at("name")};
                                  })};
}

}  // namespace

Json jsonOf(const Plots& plots) {
    return {{"block", "plots"},
            {"title", plots.title},
            {"plots", plotList(plots.plots, plotJson)},
            {"note", plots.note}};
}

Plots plotsOf(const Json& json) {
    return {json.at("title"), plotValues<Plot>(json.at("plots"), plotOf), json.at("note")};
}

}  // namespace hearth::record
