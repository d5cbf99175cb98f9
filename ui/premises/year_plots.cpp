// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/premises/year_plots.h"

#include "core/judging/answer.h"
#include "core/judging/readings.h"
#include "core/judging/subjects.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

namespace hearth::ui::premises {

using words::qstring;

namespace {

using quantity::Decimal;
using quantity::Figure;
using reg::Item;
using rulebook::FindingKind;

/// For their texts alone.
struct YearTexts {
    Q_DECLARE_TR_FUNCTIONS(hearth::ui::premises::YearTexts)
};

/// What is drawn: as typed, or as a finding measured it; and what the maker says of it.
struct YearFigure {
    const char* title;
    std::optional<Item> item;
    quantity::Typed reg::Appliance::*makerLeast = nullptr;
    quantity::Typed reg::Appliance::*makerMost = nullptr;
};
constexpr std::array kYearFigures{
    YearFigure{QT_TRANSLATE_NOOP("hearth::ui::premises::YearTexts", "Ratio CO/CO₂, highest rate"),
               std::nullopt, nullptr, &reg::Appliance::makerRatio},
    YearFigure{QT_TRANSLATE_NOOP("hearth::ui::premises::YearTexts", "Gas rate"), Item::GasRateRead},
    YearFigure{QT_TRANSLATE_NOOP("hearth::ui::premises::YearTexts", "Heat input"), Item::HeatInputRead},
    YearFigure{QT_TRANSLATE_NOOP("hearth::ui::premises::YearTexts", "Inlet pressure, working"),
               Item::InletPressure, &reg::Appliance::makerInletLeast, &reg::Appliance::makerInletMost},
    YearFigure{QT_TRANSLATE_NOOP("hearth::ui::premises::YearTexts", "Burner pressure"), Item::BurnerPressure,
               &reg::Appliance::makerBurnerLeast, &reg::Appliance::makerBurnerMost},
};

struct DayReading {
    calendar::Date day;
    Figure figure;
};

std::optional<Figure> readOn(const reg::VisitFile& visit, const rulebook::RuleBook& book,
                             const reg::Appliance& appliance, const YearFigure& drawn) {
    const auto on = reg::subject(appliance.id);
    if (drawn.item) {
        return judging::Readings(visit, on).figure(*drawn.item);
    }
    // The appliance as it stood on that visit, else as it is kept.
    const auto stood = std::find_if(visit.appliances.begin(), visit.appliances.end(),
                                    [&](const reg::Appliance& one) { return one.id == appliance.id; });
    for (const auto& judged :
         judging::judgeAppliance(visit, stood == visit.appliances.end() ? appliance : *stood, book)) {
        if (judged.finding.kind == FindingKind::CombustionRatioMaximum) {
            return judged.finding.measured;
        }
    }
    return std::nullopt;
}

std::vector<DayReading> readingsOf(const std::vector<reg::VisitFile>& visits, const rulebook::RuleBook& book,
                                   const reg::Appliance& appliance, const YearFigure& drawn) {
    std::vector<DayReading> readings;
    for (const auto& visit : visits) {
        if (const auto figure = readOn(visit, book, appliance, drawn)) {
            readings.push_back({visit.visit.date, *figure});
        }
    }
    std::stable_sort(readings.begin(), readings.end(), [](const DayReading& left, const DayReading& right) {
        return calendar::daysBetween(left.day, right.day) > 0;
    });
    return readings;
}

/// Those in another unit than the last; how many they were.
std::size_t takeOthersOut(std::vector<DayReading>& readings) {
    if (readings.empty()) {
        return 0;
    }
    const auto unit = readings.back().figure.unit;
    return std::erase_if(readings, [&](const DayReading& one) { return one.figure.unit != unit; });
}

std::optional<Decimal> makersFigure(const reg::Appliance& appliance, quantity::Typed reg::Appliance::*typed,
                                    quantity::UnitCode unit) {
    if (typed == nullptr || (appliance.*typed).unit != unit) {
        return std::nullopt;
    }
    const auto value = (appliance.*typed).value();
    return value ? std::optional(*value) : std::nullopt;
}

void addMakers(const reg::Appliance& appliance, const YearFigure& drawn, quantity::UnitCode unit,
               const words::Words& words, record::Plot& plot) {
    const auto least = makersFigure(appliance, drawn.makerLeast, unit);
    const auto most = makersFigure(appliance, drawn.makerMost, unit);
    const auto text = [&](const Decimal& value) { return words.figure({value, unit}); };
    if (least && most) {
        plot.bands.push_back(
            {*least, *most,
             YearTexts::tr("Maker's range: %1 to %2").arg(text(*least), text(*most)).toStdString()});
    } else if (most) {
        plot.limits.push_back({*most, YearTexts::tr("Maker's most: %1").arg(text(*most)).toStdString()});
    } else if (least) {
        plot.limits.push_back({*least, YearTexts::tr("Maker's least: %1").arg(text(*least)).toStdString()});
    }
}

record::Plot plotOf(const std::vector<DayReading>& readings, const reg::Appliance& appliance,
                    const YearFigure& drawn, const words::Words& words) {
    record::Plot plot;
    const auto unit = readings.front().figure.unit;
    plot.title = YearTexts::tr(drawn.title).toStdString();
    plot.y.title = std::string(quantity::unitSymbol(unit));
    record::PlotSeries series;
    series.name = YearTexts::tr("as read on each visit").toStdString();
    std::string year;
    for (const auto& one : readings) {
        const Decimal day(calendar::daysBetween(readings.front().day, one.day), 0);
        series.points.push_back({day, one.figure.value, std::nullopt, one.figure.value.text()});
        // A year stands below its first reading.
        if (const auto of = calendar::isoText(one.day).substr(0, 4); of != year) {
            year = of;
            plot.x.ticks.push_back({day, year});
        }
    }
    plot.series.push_back(std::move(series));
    addMakers(appliance, drawn, unit, words, plot);
    return plot;
}

QString toldOf(const std::vector<DayReading>& readings, const YearFigure& drawn, const words::Words& words) {
    QStringList each;
    for (const auto& one : readings) {
        each << YearTexts::tr("%1 on %2").arg(words.figure(one.figure), words.shortDate(one.day));
    }
    const Decimal change = readings.back().figure.value - readings.front().figure.value;
    const QString by = words.figure({change, readings.back().figure.unit});
    return YearTexts::tr("%1: %2. From the first to the last: %3.")
        .arg(YearTexts::tr(drawn.title), each.join(QStringLiteral("; ")),
             change.mantissa() > 0 ? QStringLiteral("+") + by : by);
}

}  // namespace

YearPlots yearPlotsOf(const std::vector<reg::VisitFile>& visits, const rulebook::RuleBook& book,
                      const words::Words& words, const reg::Appliance& appliance) {
    YearPlots made;
    for (const auto& drawn : kYearFigures) {
        auto readings = readingsOf(visits, book, appliance, drawn);
        const auto others = takeOthersOut(readings);
        if (readings.size() >= 2) {
            made.plots.plots.push_back(plotOf(readings, appliance, drawn, words));
            made.told << toldOf(readings, drawn, words);
        }
        if (others > 0) {
            made.told << YearTexts::tr("%1: %n reading(s) in another unit are not compared.", nullptr,
                                       static_cast<int>(others))
                             .arg(YearTexts::tr(drawn.title));
        }
    }
    if (made.plots.plots.empty()) {
        made.told.prepend(YearTexts::tr(
            "Nothing was read of it on two visits yet: a change is seen from the second reading on."));
    }
    return made;
}

Result<YearPlots> yearPlotsOf(const store::Store& store, const words::Words& words,
                              const reg::Appliance& appliance, reg::PremisesId premises) {
    const auto lines = store.visitsOf(premises);
    const auto book = store.ruleBook();
    if (!lines || !book) {
        return tl::unexpected(!lines ? lines.error() : book.error());
    }
    std::vector<reg::VisitFile> visits;
    for (const auto& line : *lines) {
        auto file = store.visitFile(line.visit.id);
        if (!file) {
            return tl::unexpected(file.error());
        }
        if (file->hasEntries(reg::subject(appliance.id))) {
            visits.push_back(*std::move(file));
        }
    }
    return yearPlotsOf(visits, *book, words, appliance);
}

}  // namespace hearth::ui::premises
