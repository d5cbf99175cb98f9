// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/trace_words.h"

#include "core/base/clock.h"
#include "core/quantity/units.h"

#include <algorithm>
#include <cmath>

namespace hearth::ui::words {

namespace {

using quantity::Decimal;
using quantity::UnitCode;
using tightness::Settledness;
using tightness::TraceSays;

constexpr int kFewestFlowDecimals = 2;
constexpr int kMostFlowDecimals = 4;
constexpr int kPressureDecimals = 2;
/// A zero is told to the last digit that a fine gauge has.
constexpr int kZeroDecimals = 3;

/// As many as show the smallest leak that could be told: nought it never is.
int flowDecimals(const tightness::TraceFit& fit) {
    const double least = fit.detectable.in(quantity::kLitrePerHour);
    const int needed = least > 0.0 ? static_cast<int>(std::ceil(-std::log10(least))) : kFewestFlowDecimals;
    return std::clamp(needed, kFewestFlowDecimals, kMostFlowDecimals);
}

QString flowText(const Words& words, quantity::Flow flow, const tightness::TraceFit& fit) {
    return words.figure(
        {Decimal::rounded(flow.in(quantity::kLitrePerHour), flowDecimals(fit)), UnitCode::LitrePerHour});
}

QString millibarText(const Words& words, double millibar, int decimals = kPressureDecimals) {
    return words.figure({Decimal::rounded(millibar, decimals), UnitCode::Millibar});
}

QString secondsText(const Words& words, quantity::Duration time) {
    return words.figure({Decimal::rounded(time.in(quantity::kSecond), 0), UnitCode::Second});
}

QString nothingToGoBy(const judging::TraceSeen& seen, const Words& words) {
    const bool isStaged = seen.stages.letBy || seen.stages.settling || seen.stages.timing;
    return isStaged && !seen.asked.volume
               ? words.say(QT_TRANSLATE_NOOP("Words",
                                             "Nothing can be said of a leak without the volume of what was "
                                             "tested: enter meter and pipework."))
               : words.say(QT_TRANSLATE_NOOP("Words",
                                             "Too little to go by: say where the stages begin. A stage needs "
                                             "20 readings over 20 seconds, above nought."));
}

/// The most that settling can move, either way.
double mostLeft(const tightness::SettlingOutlook& outlook) {
    return std::max(std::abs(outlook.left.least.in(quantity::kMillibar)),
                    std::abs(outlook.left.most.in(quantity::kMillibar)));
}

QString settledSentence(const judging::TraceSeen& seen, const Words& words) {
    const auto& outlook = *seen.told.outlook;
    const QString most = millibarText(words, mostLeft(outlook));
    switch (outlook.state) {
        case Settledness::Settled:
            return words.say(QT_TRANSLATE_NOOP("Words",
                                               "Settled when the timing began: settling alone could move the "
                                               "pressure by at most %1 in the timed minutes."),
                             {most});
        case Settledness::NotYet: {
            const QString best = millibarText(words, std::abs(outlook.left.best.in(quantity::kMillibar)));
            return outlook.wait
                       ? words.say(
                             QT_TRANSLATE_NOOP("Words",
                                               "Not settled when the timing began: settling alone moves the "
                                               "pressure by about %1 in the timed minutes. Wait %2 more."),
                             {best, secondsText(words, *outlook.wait)})
                       : words.say(
                             QT_TRANSLATE_NOOP("Words",
                                               "Not settled when the timing began: settling alone moves the "
                                               "pressure by about %1 in the timed minutes, and half an hour "
                                               "more would not do."),
                             {best});
        }
        case Settledness::CantTell:
            break;
    }
    return outlook.wait ? words.say(QT_TRANSLATE_NOOP(
                                        "Words",
                                        "Whether it was settled when the timing began can't be told: wait "
                                        "%1 more to be sure."),
                                    {secondsText(words, *outlook.wait)})
                        : words.say(QT_TRANSLATE_NOOP(
                              "Words", "Whether it was settled when the timing began can't be told."));
}

/// The fit that the meaning is of.
const tightness::TraceFit* decidingFit(const judging::TraceSeen& seen) {
    const auto& told = seen.told;
    if (told.says == TraceSays::LetsBy || !told.test) {
        return told.letBy ? &*told.letBy : nullptr;
    }
    return &*told.test;
}

QString leakSentence(const judging::TraceSeen& seen, const tightness::TraceFit& fit, const Words& words) {
    const bool comesIn = seen.told.says == TraceSays::LetsBy || seen.told.says == TraceSays::GasComesIn;
    const QString at = millibarText(words, fit.pressureAt(fit.begin).best.in(quantity::kMillibar));
    if (comesIn) {
        return words.say(
            QT_TRANSLATE_NOOP("Words", "Gas coming in at %1: %2, between %3 and %4, 95 times in a hundred."),
            {at, flowText(words, -fit.leak.best, fit), flowText(words, -fit.leak.most, fit),
             flowText(words, -fit.leak.least, fit)});
    }
    return words.say(QT_TRANSLATE_NOOP("Words", "Leak at %1: %2, between %3 and %4, 95 times in a hundred."),
                     {at, flowText(words, fit.leak.best, fit), flowText(words, fit.leak.least, fit),
                      flowText(words, fit.leak.most, fit)});
}

/// What the figures of a leak take into account.
QString whatIsInThem(const tightness::TellInput& asked, const Words& words) {
    const QString volume =
        asked.volumeOff
            ? words.say(
                  QT_TRANSLATE_NOOP("Words", "In these figures the volume may be off by %1, either way."),
                  {words.figure(
                      {Decimal::rounded(asked.volumeOff->in(quantity::kPercent), 1), UnitCode::Percent})})
            : words.say(QT_TRANSLATE_NOOP("Words", "The volume is taken as exact."));
    const QString drift =
        asked.drift
            ? words.say(QT_TRANSLATE_NOOP("Words",
                                          "A drift of the gauge of %1 in a minute, either way, is in these "
                                          "figures."),
                        {millibarText(words, asked.drift->in(quantity::kMillibar), kZeroDecimals)})
            : words.say(QT_TRANSLATE_NOOP("Words", "No drift of the gauge is in these figures."));
    return volume + QLatin1Char(' ') + drift;
}

QString zeroSentence(const tightness::ZeroCheck& zero, const Words& words) {
    const QString reads = millibarText(words, zero.reads.in(quantity::kMillibar), kZeroDecimals);
    return zero.isZero
               ? words.say(
                     QT_TRANSLATE_NOOP("Words", "Before it was connected the gauge stood at zero (%1)."),
                     {reads})
               : words.say(
                     QT_TRANSLATE_NOOP("Words",
                                       "Before it was connected the gauge read %1, which is not zero: zero "
                                       "it, and begin again."),
                     {reads});
}

QString typedText(const Words& words, const quantity::Typed& typed) {
    const auto value = typed.value();
    return value ? words.figure({*value, typed.unit}) : qstring(typed.text);
}

/// What was read when somebody looked at the zero.
QString lookedAtZero(const reg::TraceZero& zero, const Words& words) {
    const QString at = zero.at ? qstring(wallTimeText(*zero.at)) : QStringLiteral("\u2014");
    const QString reads = typedText(words, zero.reads);
    const QString step = typedText(words, zero.step);
    return zero.isZero
               ? words.say(QT_TRANSLATE_NOOP("Words",
                                             "Zero check at %1, open to the air: the gauge read %2, which is "
                                             "zero within its step of %3."),
                           {at, reads, step})
               : words.say(QT_TRANSLATE_NOOP("Words",
                                             "Zero check at %1, open to the air: the gauge read %2, which is "
                                             "not zero within its step of %3."),
                           {at, reads, step});
}

/// What was looked at, and what the trace itself shows: the one for the other, unless they do not agree.
QStringList zeroSentences(const judging::TraceSeen& seen, const Words& words) {
    const auto& looked = seen.given.source.zero;
    QStringList sentences;
    if (looked.isThere()) {
        sentences << lookedAtZero(looked, words);
    }
    if (seen.zero && (!looked.isThere() || looked.isZero != seen.zero->isZero)) {
        sentences << zeroSentence(*seen.zero, words);
    }
    return sentences;
}

QString differenceText(const Words& words, quantity::PressureChange difference) {
    return millibarText(words, difference.in(quantity::kMillibar), kZeroDecimals);
}

QString howFarApart(const tightness::GaugesOverTest& compared, const Words& words) {
    const QStringList figures{differenceText(words, compared.atStart), differenceText(words, compared.atEnd),
                              differenceText(words, compared.greatest),
                              secondsText(words, compared.greatestAt)};
    return compared.isTimed
               ? words.say(QT_TRANSLATE_NOOP("Words",
                                             "The first less the second: %1 when the timing began, %2 at its "
                                             "end, %3 where they were furthest apart (after %4)."),
                           figures)
               : words.say(QT_TRANSLATE_NOOP("Words",
                                             "The first less the second: %1 at the beginning, %2 at the end, "
                                             "%3 where they were furthest apart (after %4)."),
                           figures);
}

QString whetherTheyAgree(const tightness::GaugesOverTest& compared, const Words& words) {
    const QString allowed = differenceText(words, compared.allowed);
    if (compared.allows(compared.greatest)) {
        return words.say(QT_TRANSLATE_NOOP("Words", "Their steps allow %1: the two gauges agree."),
                         {allowed});
    }
    return compared.allows(compared.atStart) && compared.allows(compared.atEnd)
               ? words.say(QT_TRANSLATE_NOOP("Words",
                                             "Their steps allow %1: at the beginning and at the end the two "
                                             "gauges agree, in between they do not."),
                           {allowed})
               : words.say(QT_TRANSLATE_NOOP("Words",
                                             "Their steps allow %1: the two gauges do not agree. Find out "
                                             "which of them is right."),
                           {allowed});
}

QStringList secondGauge(const judging::TraceSeen& seen, const Words& words) {
    const auto& second = seen.given.second;
    if (!second) {
        return {};
    }
    const QString readings = words.figure({Decimal(static_cast<std::int64_t>(second->trace.size()), 0)});
    QString beside = words.say(QT_TRANSLATE_NOOP("Words", "Watched beside it: %1, %2 readings."),
                               {qstring(second->source.name), readings});
    if (second->source.isSimulated) {
        beside = words.say(QT_TRANSLATE_NOOP("Words", "SIMULATION, for practice: %1"), {beside});
    }
    QStringList sentences{beside};
    if (seen.compared) {
        sentences << howFarApart(*seen.compared, words) << whetherTheyAgree(*seen.compared, words);
    } else {
        sentences << words.say(
            QT_TRANSLATE_NOOP("Words",
                              "The two can't be compared: of one no step is known, or they "
                              "never read at the same time."));
    }
    if (second->source.zero.isThere()) {
        sentences << words.say(QT_TRANSLATE_NOOP("Words", "The second gauge: %1"),
                               {lookedAtZero(second->source.zero, words)});
    }
    return sentences;
}

}  // namespace

QString traceMeaning(const judging::TraceSeen& seen, const Words& words) {
    switch (seen.told.says) {
        case TraceSays::NothingToGoBy:
            return nothingToGoBy(seen, words);
        case TraceSays::StuckGauge:
            return words.say(
                QT_TRANSLATE_NOOP("Words",
                                  "A stuck gauge: it stands still though the pressure was changed. "
                                  "Nothing can be read from it; check the gauge and its tube, and "
                                  "test again."));
        case TraceSays::LetsBy:
            return words.say(
                QT_TRANSLATE_NOOP("Words",
                                  "Rising while the valve was shut for let-by: the valve lets by, or "
                                  "the pipe warms. Stop, and find out which."));
        case TraceSays::Leak:
            return words.say(
                QT_TRANSLATE_NOOP("Words", "A steady fall that cooling does not explain: look for a leak."));
        case TraceSays::HiddenLeak:
            return words.say(
                QT_TRANSLATE_NOOP("Words",
                                  "A leak that warming hides: without the warming the pressure would "
                                  "have fallen further. Look for a leak."));
        case TraceSays::GasComesIn:
            return words.say(
                QT_TRANSLATE_NOOP("Words", "Rising steadily: gas lets by, or the pipe goes on warming."));
        case TraceSays::Cooling:
            return words.say(QT_TRANSLATE_NOOP(
                "Words", "The fall is what cooling explains, as far as this trace can tell."));
        case TraceSays::Warming:
            return words.say(QT_TRANSLATE_NOOP(
                "Words", "The rise is what warming explains, as far as this trace can tell."));
        case TraceSays::Still:
            return words.say(QT_TRANSLATE_NOOP("Words", "Nothing moves, as far as this trace can tell."));
        case TraceSays::MostIsGone:
            return words.say(
                QT_TRANSLATE_NOOP("Words",
                                  "Half of the pressure or more is gone: a leak or an open end, until it "
                                  "is shown to be neither. Look for it."));
        case TraceSays::CantTell:
            break;
    }
    return words.say(QT_TRANSLATE_NOOP("Words", "Can't tell: wait longer, or take a finer gauge."));
}

QStringList traceGrounds(const judging::TraceSeen& seen, const Words& words) {
    QStringList grounds;
    if (seen.told.says == TraceSays::LetsBy && seen.told.letByRise && seen.stages.letBy) {
        grounds << words.say(
            QT_TRANSLATE_NOOP("Words", "It moved by %1 in %2 of let-by."),
            {words.figure({Decimal::rounded(seen.told.letByRise->in(quantity::kMillibar), kPressureDecimals),
                           UnitCode::Millibar}),
             secondsText(words, seen.stages.letBy->to - seen.stages.letBy->from)});
    }
    if (const auto* fit = decidingFit(seen)) {
        if (fit->isIdentified) {
            grounds << leakSentence(seen, *fit, words);
        }
        if (fit == (seen.told.test ? &*seen.told.test : nullptr) && seen.told.outlook) {
            grounds << settledSentence(seen, words);
        }
        grounds << words.say(
            QT_TRANSLATE_NOOP("Words", "The smallest leak that this trace could have shown: %1."),
            {flowText(words, fit->detectable, *fit)});
        grounds << whatIsInThem(seen.asked, words);
    }
    grounds << zeroSentences(seen, words) << secondGauge(seen, words);
    if (!seen.gaps.empty()) {
        quantity::Duration silent{};
        for (const auto& gap : seen.gaps) {
            silent = silent + (gap.to - gap.from);
        }
        grounds << words.say(QT_TRANSLATE_NOOP("Words",
                                               "The gauge was silent for %1 in all; nothing is put "
                                               "in the place of what was not read."),
                             {secondsText(words, silent)});
    }
    return grounds;
}

QString traceSource(const judging::TraceSeen& seen, const Words& words) {
    const auto& trace = seen.given.trace;
    if (trace.empty()) {
        return qstring(seen.given.source.name);
    }
    const QString points = words.figure({Decimal(static_cast<std::int64_t>(trace.size()), 0)});
    const QString lasts = secondsText(words, trace.back().at - trace.front().at);
    const QString name = qstring(seen.given.source.name);
    QString text =
        seen.asked.step
            ? words.say(QT_TRANSLATE_NOOP("Words", "%1: %2 readings over %3, one step %4"),
                        {name, points, lasts,
                         millibarText(words, seen.asked.step->in(quantity::kMillibar), kZeroDecimals)})
            : words.say(QT_TRANSLATE_NOOP("Words", "%1: %2 readings over %3"), {name, points, lasts});
    if (seen.given.source.isSimulated) {
        text = words.say(QT_TRANSLATE_NOOP("Words", "SIMULATION, for practice: %1"), {text});
    }
    return text;
}

QString traceBesideVerdict(const Words& words) {
    return words.say(
        QT_TRANSLATE_NOOP("Words",
                          "The verdict is by the standard's rule of the readings at start and end; the "
                          "trace is evidence beside it."));
}

QString traceEvent(reg::TraceEvent event, const Words& words) {
    switch (event) {
        case reg::TraceEvent::LetBy:
            return words.say(QT_TRANSLATE_NOOP("Words", "let-by begins"));
        case reg::TraceEvent::Settling:
            return words.say(QT_TRANSLATE_NOOP("Words", "settling begins"));
        case reg::TraceEvent::Timing:
            return words.say(QT_TRANSLATE_NOOP("Words", "timing begins"));
        case reg::TraceEvent::TestEnd:
            return words.say(QT_TRANSLATE_NOOP("Words", "test ends"));
        case reg::TraceEvent::ValveShut:
            return words.say(QT_TRANSLATE_NOOP("Words", "valve shut"));
        case reg::TraceEvent::PumpRemoved:
            return words.say(QT_TRANSLATE_NOOP("Words", "pump removed"));
        case reg::TraceEvent::DoorOpened:
            break;
    }
    return words.say(QT_TRANSLATE_NOOP("Words", "door opened"));
}

}  // namespace hearth::ui::words
