// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/trace_command.h"

#include "core/exchange/trace_file.h"
#include "core/quantity/typed.h"
#include "core/tightness/trace_meaning.h"

#include <QFile>

#include <algorithm>

namespace hearth::app {
namespace {

using exchange::TraceFault;
using quantity::Decimal;
using quantity::kLitre;
using quantity::kLitrePerHour;
using quantity::kMillibar;
using quantity::kSecond;
using tightness::TraceMeaning;

bool keepVolume(CommandLine& line, const QString& value) {
    const auto typed = Decimal::parse(value.toStdString());
    line.litres = typed ? typed->toDouble() : 0.0;
    return line.litres > 0.0 && line.litres <= 1e6;
}

bool keepDrift(CommandLine& line, const QString& value) {
    const auto typed = Decimal::parse(value.toStdString());
    line.drift = typed ? typed->toDouble() : -1.0;
    return line.drift >= 0.0 && line.drift <= 1e3;
}

bool keepVolumeOff(CommandLine& line, const QString& value) {
    const auto typed = Decimal::parse(value.toStdString());
    line.volumeOff = typed ? typed->toDouble() : -1.0;
    return line.volumeOff >= 0.0 && line.volumeOff < 100.0;
}

bool keepUnit(CommandLine& line, const QString& value) {
    const auto unit = exchange::headingUnit(value.toStdString(), quantity::UnitFamily::Pressure);
    line.pressureUnit = unit.value_or(quantity::UnitCode::None);
    return unit.has_value();
}

bool keepStretch(CommandLine& line, const QString& value) {
    const auto ends = value.split(QLatin1Char(':'));
    bool isFrom = false;
    bool isTo = false;
    if (ends.size() == 2) {
        line.stretch = {ends[0].toDouble(&isFrom), ends[1].toDouble(&isTo)};
    }
    return isFrom && isTo && line.stretch->first >= 0 && line.stretch->first < line.stretch->second;
}

QString faultText(const exchange::TraceRefusal& refusal) {
    switch (refusal.fault) {
        case TraceFault::NoTimes:
            return tr(
                "There is no column of times that can be read: seconds, minutes, clock times or dates "
                "with clock times.");
        case TraceFault::NoPressures:
            return tr("There is no column of pressures. Name it in its heading: pressure (mbar).");
        case TraceFault::NoUnit:
            return tr("Nothing says what the pressures are in (line %1). Name the unit in the heading, or "
                      "say --unit mbar.")
                .arg(refusal.line);
        case TraceFault::ClockGoesBack:
            return tr("The times go back in line %1, so what lies between can't be told. Cut the file there.")
                .arg(refusal.line);
        case TraceFault::TooLong:
            return tr("There are more lines than a day at ten a second. Cut out the test.");
        case TraceFault::TooFew:
            break;
    }
    return tr("There are fewer than two readings.");
}

QString meaningText(TraceMeaning meaning) {
    switch (meaning) {
        case TraceMeaning::CantTell:
            return tr("Can't tell: wait longer, or take a finer gauge.");
        case TraceMeaning::MostIsGone:
            return tr(
                "Half of the pressure or more is gone: a leak or an open end, until it is shown to be "
                "neither. Look for it.");
        case TraceMeaning::Leak:
            return tr("A steady fall that settling does not explain: look for a leak.");
        case TraceMeaning::GasComesIn:
            return tr("Rising steadily: gas lets by, or the pipe is still warming.");
        case TraceMeaning::Cooling:
            return tr("The fall is what cooling explains, as far as this trace can tell.");
        case TraceMeaning::Warming:
            return tr("Rising while it warms: no leak is seen, as far as this trace can tell.");
        case TraceMeaning::Still:
            break;
    }
    return tr("Nothing moves that this trace can tell.");
}

QString figure(double value, quantity::UnitCode unit, int decimals) {
    return QString::fromStdString(quantity::show({Decimal::rounded(value, decimals), unit}));
}

QString flow(quantity::Flow value) {
    return figure(value.in(kLitrePerHour), quantity::UnitCode::LitrePerHour, 3);
}

QString millibar(double value) {
    return figure(value, quantity::UnitCode::Millibar, 2);
}

void sayWhatWasRead(const exchange::TraceFile& file, const tightness::Trace& used, const Desk& desk) {
    desk.console.say(
        tr("%1 readings over %2, from %3 to %4.")
            .arg(used.size())
            .arg(figure((used.back().at - used.front().at).in(kSecond), quantity::UnitCode::Second, 1),
                 millibar(used.front().pressure.in(kMillibar)),
                 millibar(used.back().pressure.in(kMillibar))));
    if (!file.timesSaid) {
        desk.console.say(tr("Nothing says what the times are in: they are taken as seconds."));
    }
    if (file.leftOut > 0) {
        desk.console.say(tr("Lines left out because they can't be read: %1, the first in line %2.")
                             .arg(file.leftOut)
                             .arg(file.firstLeftOut));
    }
}

void sayWhatIsInIt(const tightness::FitInput& asked, const Desk& desk) {
    const double drift = asked.drift.in(kMillibar);
    desk.console.say(
        drift > 0.0
            ? tr("A drift of the gauge of %1 in a minute, either way, is in it.")
                  .arg(figure(drift, quantity::UnitCode::Millibar, 3))
            : tr("No drift of the gauge is in it: a gauge that drifts looks like a leak. Say how far it may "
                 "drift in a minute: --drift MBAR."));
    const double off = asked.volumeOff.in(quantity::kPercent);
    desk.console.say(off > 0.0 ? tr("That the volume may be off by %1, either way, is in it.")
                                     .arg(figure(off, quantity::UnitCode::Percent, 1))
                               : tr("The volume is taken as exact. Say how far it may be off: --volume-off "
                                    "PERCENT."));
}

void sayFit(const tightness::TraceFit& fit, const tightness::FitInput& asked, const Desk& desk) {
    const auto at = asked.at;
    const auto meaning = tightness::meaningOf(fit);
    desk.console.say(meaningText(meaning));
    if (fit.isIdentified) {
        desk.console.say(tr("Leak at %1: %2, between %3 and %4, 95 times in a hundred.")
                             .arg(millibar(at.in(kMillibar)), flow(fit.leak.best), flow(fit.leak.least),
                                  flow(fit.leak.most)));
        sayWhatIsInIt(asked, desk);
        const auto settling = fit.settlingSize();
        desk.console.say(tr("Settling: %1, between %2 and %3 (a fall is positive).")
                             .arg(millibar(settling.best.in(kMillibar)),
                                  millibar(settling.least.in(kMillibar)),
                                  millibar(settling.most.in(kMillibar))));
    }
    desk.console.say(tr("Smallest leak that this trace could have shown: %1.").arg(flow(fit.detectable)));
}

}  // namespace

std::vector<Option> traceOptions() {
    return {{QLatin1String("volume"), QLatin1String("LITRES"),
             QT_TRANSLATE_NOOP("CommandLine", "installation volume of what was tested"), keepVolume},
            {QLatin1String("drift"), QLatin1String("MBAR"),
             QT_TRANSLATE_NOOP("CommandLine", "how far the gauge itself may drift in a minute, in mbar"),
             keepDrift},
            {QLatin1String("volume-off"), QLatin1String("PERCENT"),
             QT_TRANSLATE_NOOP("CommandLine", "how far that volume may be off, either way, in percent"),
             keepVolumeOff},
            {QLatin1String("unit"), QLatin1String("UNIT"),
             QT_TRANSLATE_NOOP("CommandLine",
                               "unit of the pressures where the file doesn't say: mbar, Pa, "
                               "kPa, bar, inWG, mmWG"),
             keepUnit},
            {QLatin1String("stretch"), QLatin1String("FROM:TO"),
             QT_TRANSLATE_NOOP("CommandLine", "only these seconds of the trace, with the valve shut"),
             keepStretch}};
}

std::vector<Command> traceCommands() {
    return {{Verb::Trace,
             QLatin1String("trace"),
             QLatin1String("FILE --volume LITRES"),
             1,
             1,
             {QLatin1String("volume"), QLatin1String("volume-off"), QLatin1String("drift"),
              QLatin1String("unit"), QLatin1String("stretch")},
             QT_TRANSLATE_NOOP("CommandLine",
                               "says what a gauge's table of times and pressures (CSV), taken with the valve "
                               "shut, tells: leak or settling, with its uncertainty. Evidence beside the "
                               "standard's rule, never a verdict")}};
}

Exit runTrace(const CommandLine& line, const Desk& desk) {
    if (line.litres <= 0.0) {
        desk.console.complain(tr("Say the installation volume: --volume LITRES."));
        return Exit::Usage;
    }
    QFile source(line.words.front());
    if (!source.open(QIODevice::ReadOnly)) {
        return complain({ErrorCode::FileUnreadable,
                         {line.words.front().toStdString(), source.errorString().toStdString()}},
                        desk);
    }
    const auto file = exchange::readTrace(source.readAll().toStdString(), {line.pressureUnit});
    if (!file) {
        desk.console.complain(faultText(file.error()));
        return Exit::Trouble;
    }
    auto used = tightness::compensated(file->trace);
    if (line.stretch) {
        used = tightness::stretchOf(used, {quantity::Duration(line.stretch->first, kSecond),
                                           quantity::Duration(line.stretch->second, kSecond)});
    }
    tightness::FitInput input;
    input.volume = quantity::Volume(line.litres, kLitre);
    input.volumeOff = quantity::Share(line.volumeOff, quantity::kPercent);
    input.drift = quantity::PressureChange(line.drift, kMillibar);
    input.at = used.empty() ? quantity::GaugePressure{} : used.front().pressure;
    const auto fit = used.size() < 2 ? std::nullopt : tightness::fitTrace(used, input);
    if (!fit) {
        desk.console.complain(
            tr("Too little to go by: at least 20 readings over 20 seconds above nought are "
               "needed. Nothing was worked out."));
        return Exit::Refused;
    }
    sayWhatWasRead(*file, used, desk);
    sayFit(*fit, input, desk);
    desk.console.say(
        tr("The verdict of a test is by the standard's rule of its readings at start and end; "
           "this is evidence beside it."));
    return fit->isIdentified ? Exit::Done : Exit::Refused;
}

}  // namespace hearth::app
