// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/trace_seen.h"

#include "core/judging/installation.h"
#include "core/judging/readings.h"
#include "core/rulebook/rules_in_force.h"
#include "core/rulebook/standard.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace hearth::judging {

using quantity::Duration;
using quantity::kMillibar;
using quantity::kSecond;
using quantity::PressureChange;
using reg::Item;
using reg::TraceEvent;
using rulebook::Edition;
using rulebook::Rule;
using tightness::Span;
using tightness::Trace;

namespace {

/// Open to the air a gauge reads about nought; on a pipe that is tested it reads more than this.
constexpr double kOpenToAir = 2.0;  // mbar
constexpr std::size_t kFewestOpen = 3;
constexpr double kComesUp = 2.0;  // s, while the pressure rises to that
/// A reading further away in time is none of that moment.
constexpr double kNearInTime = 1.0;  // s
constexpr double kMilli = 1000.0;

rulebook::RulesInForce traceRules(const reg::VisitFile& file, const rulebook::RuleBook& book,
                                  reg::TestId test) {
    const Readings readings(file, reg::subject(test));
    const auto said = readings.choice<Edition>(
        Item::TestEdition, {{reg::choice::kEd3, Edition::Up1bEd3}, {reg::choice::kEd4, Edition::Up1bEd4}});
    const auto edition =
        said ? *said : rulebook::editionsAllowedOn(file.visit.date).only().value_or(Edition::Up1bEd4);
    return {book, edition, file.installation.gas, file.visit.date};
}

std::optional<Duration> stageTime(const rulebook::RulesInForce& rules, Rule rule) {
    const auto* entry = rules.known(rule);
    const auto figure = entry == nullptr ? std::nullopt : rulebook::figureOf(*entry);
    return figure ? std::optional(Duration(figure->value.toDouble(), quantity::timeUnit(figure->unit)))
                  : std::nullopt;
}

std::optional<rulebook::Range> stageBand(const rulebook::RulesInForce& rules, Rule rule) {
    const auto* entry = rules.known(rule);
    return entry == nullptr ? std::nullopt : rulebook::rangeOf(*entry);
}

quantity::GaugePressure pressureOf(const quantity::Decimal& value, quantity::UnitCode unit) {
    return {value.toDouble(), quantity::pressureUnit(unit)};
}

std::optional<tightness::StageBands> bandsOf(const rulebook::RulesInForce& rules) {
    const auto letBy = stageBand(rules, Rule::LetByPressure);
    const auto test = stageBand(rules, Rule::TestPressure);
    const auto letByTime = stageTime(rules, Rule::LetByTime);
    const auto settleTime = stageTime(rules, Rule::SettleTime);
    const auto testTime = stageTime(rules, Rule::TestTime);
    if (!letBy || !test || !letByTime || !settleTime || !testTime) {
        return std::nullopt;
    }
    return tightness::StageBands{pressureOf(letBy->least, letBy->unit),
                                 pressureOf(letBy->most, letBy->unit),
                                 pressureOf(test->least, test->unit),
                                 *letByTime,
                                 *settleTime,
                                 *testTime};
}

int millisecondsOf(Duration time) {
    return static_cast<int>(std::lround(time.in(kSecond)*kMilli));
}

std::optional<Duration> markedAt(const reg::TraceMarks& marks, TraceEvent event) {
    const auto when = reg::whenOf(marks, event);
    return when ? std::optional(Duration(*when / kMilli, kSecond)) : std::nullopt;
}

/// From `from` to the first of those ends that is there, or to the trace's.
std::optional<Span> stageFrom(const std::optional<Duration>& from, const std::optional<Duration>& marked,
                              const std::optional<Duration>& lasts, const Trace& trace) {
    if (!from || trace.empty()) {
        return std::nullopt;
    }
    Duration to = trace.back().at;
    if (marked && *marked > *from) {
        to = std::min(to, *marked);
    } else if (lasts) {
        to = std::min(to, *from + *lasts);
    }
    return to > *from ? std::optional(Span{*from, to}) : std::nullopt;
}

tightness::TraceStages stagesBy(const reg::TraceMarks& marks, const rulebook::RulesInForce& rules,
                                const Trace& trace) {
    const auto letBy = markedAt(marks, TraceEvent::LetBy);
    const auto settling = markedAt(marks, TraceEvent::Settling);
    const auto timing = markedAt(marks, TraceEvent::Timing);
    const auto letByTime = stageTime(rules, Rule::LetByTime);
    tightness::TraceStages stages;
    const bool isCut =
        letBy && settling && letByTime && *settling > *letBy && *settling < *letBy + *letByTime;
    stages.letBy = stageFrom(letBy, isCut ? settling : std::nullopt, letByTime, trace);
    stages.settling = stageFrom(settling, timing, stageTime(rules, Rule::SettleTime), trace);
    stages.timing =
        stageFrom(timing, markedAt(marks, TraceEvent::TestEnd), stageTime(rules, Rule::TestTime), trace);
    return stages;
}

/// The readings before the pressure first came up.
std::optional<tightness::ZeroCheck> zeroOf(const Trace& trace, const std::optional<PressureChange>& step) {
    const auto connected = std::find_if(trace.begin(), trace.end(), [](const tightness::TracePoint& point) {
        return std::abs(point.pressure.in(kMillibar)) >= kOpenToAir;
    });
    if (!step || connected == trace.end()) {
        return std::nullopt;
    }
    const auto open =
        tightness::stretchOf(trace, {trace.front().at, connected->at - Duration(kComesUp, kSecond)});
    return open.size() >= kFewestOpen ? tightness::zeroCheck(open, *step) : std::nullopt;
}

std::optional<PressureChange> thresholdOf(const reg::VisitFile& file, reg::TestId test,
                                          const rulebook::RulesInForce& rules) {
    const auto* instrument = file.gaugeOf(test);
    const auto gauge = instrument == nullptr ? std::nullopt : gaugeFrom(*instrument);
    const auto* entry = gauge ? tightness::movementThreshold(*gauge, rules) : nullptr;
    const auto figure = entry == nullptr ? std::nullopt : rulebook::figureOf(*entry);
    return figure
               ? std::optional(PressureChange(figure->value.toDouble(), quantity::pressureUnit(figure->unit)))
               : std::nullopt;
}

std::optional<PressureChange> stepOfSource(const reg::TraceSource& source, const Trace& trace) {
    const auto said = source.resolution.value();
    if (said && said->toDouble() > 0.0) {
        return PressureChange(said->toDouble(), quantity::pressureUnit(source.resolution.unit));
    }
    return tightness::stepOf(trace);
}

std::optional<tightness::GaugesOverTest> comparedIn(const TraceSeen& seen) {
    const auto& second = seen.given.second;
    const auto step = second ? stepOfSource(second->source, second->trace) : std::nullopt;
    return step && seen.asked.step ? tightness::compareOverTest({seen.given.trace, *seen.asked.step},
                                                                {second->trace, *step}, seen.stages)
                                   : std::nullopt;
}

std::optional<PressureChange> driftOf(const reg::VisitFile& file, reg::TestId test) {
    const auto* instrument = file.gaugeOf(test);
    const auto gauge = instrument == nullptr ? std::nullopt : gaugeFrom(*instrument);
    return gauge ? gauge->drift : std::nullopt;
}

const tightness::TracePoint* pointAt(const Trace& trace, Duration at) {
    const tightness::TracePoint* nearest = nullptr;
    double best = kNearInTime;
    for (const auto& point : trace) {
        const double away = std::abs((point.at - at).in(kSecond));
        if (away <= best && (nearest == nullptr || away < best)) {
            best = away;
            nearest = &point;
        }
    }
    return nearest;
}

/// As the gauge shows it: to its step, in its unit.
quantity::Typed readingOf(const TraceSeen& seen, quantity::GaugePressure pressure) {
    constexpr int kUsualDecimals = 2;
    constexpr int kMostDecimals = 4;
    constexpr double kSlack = 1e-6;
    const auto unit = seen.given.source.resolution.unit;
    int decimals = kUsualDecimals;
    if (seen.asked.step) {
        double step = seen.asked.step->in(quantity::pressureUnit(unit));
        for (decimals = 0; decimals < kMostDecimals && std::abs(step - std::round(step)) > kSlack;
             ++decimals) {
            step *= 10.0;
        }
    }
    return {quantity::Decimal::rounded(pressure.in(quantity::pressureUnit(unit)), decimals).text(), unit};
}

struct StageOfTrace {
    std::optional<Span> tightness::TraceStages::*span;
    Item start, end, startedAt, endedAt;
};
constexpr std::array kStagesOfTrace{StageOfTrace{&tightness::TraceStages::letBy, Item::LetByStart,
                                                 Item::LetByEnd, Item::LetByStartedAt, Item::LetByEndedAt},
                                    StageOfTrace{&tightness::TraceStages::settling, Item::SettleStart,
                                                 Item::SettleEnd, Item::SettleStartedAt, Item::SettleEndedAt},
                                    StageOfTrace{&tightness::TraceStages::timing, Item::TightStart,
                                                 Item::TightEnd, Item::TightStartedAt, Item::TightEndedAt}};

void propose(const TraceSeen& seen, Duration when, Item item, Item timeItem,
             std::vector<TraceProposal>& proposals) {
    const auto* point = pointAt(seen.given.trace, when);
    if (point == nullptr) {
        return;
    }
    TraceProposal one{item, readingOf(seen, point->pressure), timeItem, std::nullopt};
    if (const auto& began = seen.given.source.beganAt) {
        one.at = *began + std::chrono::milliseconds(millisecondsOf(when));
    }
    proposals.push_back(std::move(one));
}

}  // namespace

reg::TraceMarks guessedMarks(const reg::VisitFile& file, const rulebook::RuleBook& book, reg::TestId test,
                             const Trace& trace) {
    const auto bands = bandsOf(traceRules(file, book, test));
    if (!bands) {
        return {};
    }
    const auto stages = tightness::guessStages(trace, *bands);
    reg::TraceMarks marks;
    const auto mark = [&](const std::optional<Span>& span, TraceEvent event) {
        if (span) {
            marks = reg::withMark(marks, {event, millisecondsOf(span->from)});
        }
    };
    mark(stages.letBy, TraceEvent::LetBy);
    mark(stages.settling, TraceEvent::Settling);
    mark(stages.timing, TraceEvent::Timing);
    if (stages.timing) {
        marks = reg::withMark(marks, {TraceEvent::TestEnd, millisecondsOf(stages.timing->to)});
    }
    return marks;
}

TraceSeen stagedTrace(const reg::VisitFile& file, const rulebook::RuleBook& book, reg::TestId test,
                      TraceGiven given) {
    const auto rules = traceRules(file, book, test);
    TraceSeen seen;
    seen.test = test;
    seen.given = std::move(given);
    const Trace& trace = seen.given.trace;
    seen.stages = stagesBy(seen.given.marks, rules, trace);
    seen.gaps = tightness::gapsOf(trace);
    const auto testTime = stageTime(rules, Rule::TestTime);
    seen.asked.volume = volumesOf(file, Readings(file, reg::subject(test)), book).tested.total;
    seen.asked.step = stepOfSource(seen.given.source, trace);
    seen.asked.threshold = thresholdOf(file, test, rules);
    seen.asked.testTime = testTime.value_or(Duration{});
    seen.asked.volumeOff = volumeOffOf(Readings(file, reg::subject(test)));
    seen.asked.drift = driftOf(file, test);
    seen.zero = zeroOf(trace, seen.asked.step);
    seen.compared = comparedIn(seen);
    return seen;
}

TraceSeen seenTrace(const reg::VisitFile& file, const rulebook::RuleBook& book, reg::TestId test,
                    TraceGiven given) {
    auto seen = stagedTrace(file, book, test, std::move(given));
    seen.told = tightness::tellTrace(seen.given.trace, seen.stages, seen.asked);
    return seen;
}

std::vector<TraceProposal> proposalsOf(const TraceSeen& seen) {
    std::vector<TraceProposal> proposals;
    if (seen.given.source.isSimulated || seen.told.says == tightness::TraceSays::StuckGauge) {
        return proposals;
    }
    for (const auto& stage : kStagesOfTrace) {
        if (const auto& span = seen.stages.*stage.span) {
            propose(seen, span->from, stage.start, stage.startedAt, proposals);
            propose(seen, span->to, stage.end, stage.endedAt, proposals);
        }
    }
    return proposals;
}

}  // namespace hearth::judging
