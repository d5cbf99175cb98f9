// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gauge/gauge_words.h"

namespace hearth::ui::gauge {

QString GaugeWords::kind(SourceKind kind) {
    switch (kind) {
        case SourceKind::Serial:
            return tr("serial port");
        case SourceKind::Network:
            return tr("network");
        case SourceKind::Simulator:
            break;
    }
    return tr("practice");
}

QString GaugeWords::event(GaugeEvent event) {
    switch (event) {
        case GaugeEvent::LetBy:
            return tr("Let-by begins");
        case GaugeEvent::Settling:
            return tr("Settling begins");
        case GaugeEvent::Timing:
            return tr("Timing begins");
        case GaugeEvent::TestEnd:
            return tr("Test ends");
        case GaugeEvent::ValveShut:
            return tr("Valve shut");
        case GaugeEvent::PumpRemoved:
            return tr("Pump removed");
        case GaugeEvent::DoorOpened:
            break;
    }
    return tr("Door opened");
}

QString GaugeWords::practice(PracticePipe pipe) {
    switch (pipe) {
        case PracticePipe::TightCooling:
            return tr("Practice: a tight pipe that cools");
        case PracticePipe::LeakUnderWarming:
            return tr("Practice: a leak that hides under warming");
        case PracticePipe::LetBy:
            return tr("Practice: a valve that lets by");
        case PracticePipe::StuckGauge:
            break;
    }
    return tr("Practice: a gauge that is stuck");
}

std::vector<GaugeProfile> GaugeWords::practiceProfiles() {
    std::vector<GaugeProfile> profiles;
    for (const auto pipe : kPracticePipes) {
        GaugeProfile profile;
        profile.name = practice(pipe).toStdString();
        profile.kind = SourceKind::Simulator;
        profile.practice = pipe;
        profile.resolution = {"0.01", quantity::UnitCode::Millibar};
        profiles.push_back(std::move(profile));
    }
    return profiles;
}

QString GaugeWords::practice(PracticeRoom room) {
    return room == PracticeRoom::Clear ? tr("Practice: a room that stays clear")
                                       : tr("Practice: a room where carbon monoxide rises");
}

std::vector<GaugeProfile> GaugeWords::practiceRooms() {
    std::vector<GaugeProfile> profiles;
    for (const auto room : kPracticeRooms) {
        GaugeProfile profile;
        profile.name = practice(room).toStdString();
        profile.kind = SourceKind::Simulator;
        profile.practiceRoom = room;
        profile.pattern.family = quantity::UnitFamily::Trace;
        profile.resolution = {"1", quantity::UnitCode::Ppm};
        profiles.push_back(std::move(profile));
    }
    return profiles;
}

QString GaugeWords::place(const GaugeProfile& profile) {
    switch (profile.kind) {
        case SourceKind::Serial:
            return tr("serial port %1").arg(QString::fromStdString(profile.port));
        case SourceKind::Network:
            return tr("%1, port %2").arg(QString::fromStdString(profile.host)).arg(profile.networkPort);
        case SourceKind::Simulator:
            break;
    }
    return tr("this program, for practice");
}

QString GaugeWords::fault(SourceFault fault) {
    switch (fault) {
        case SourceFault::None:
            return {};
        case SourceFault::NotThere:
            return tr("it is not there");
        case SourceFault::NotAllowed:
            return tr("this account may not use it");
        case SourceFault::InUse:
            return tr("another program uses it");
        case SourceFault::Unplugged:
            return tr("it was unplugged or switched off");
        case SourceFault::Refused:
            return tr("nothing answers there");
        case SourceFault::HostUnknown:
            return tr("nobody knows that name");
        case SourceFault::Closed:
            return tr("the other end closed it");
        case SourceFault::Other:
            break;
    }
    return tr("the system gives no reason");
}

QString GaugeWords::state(const Source& source, const GaugeProfile& profile) {
    switch (source.state()) {
        case SourceState::Stopped:
            return tr("Not connected.");
        case SourceState::Opening:
            return source.fault() == SourceFault::None
                       ? tr("Connecting to %1.").arg(place(profile))
                       : tr("Can't connect to %1: %2. It is tried again every second.")
                             .arg(place(profile), fault(source.fault()));
        case SourceState::Live:
            return profile.ask.empty() ? tr("Connected to %1.").arg(place(profile))
                                       : tr("Connected to %1, which is asked “%2” every %3 ms.")
                                             .arg(place(profile), QString::fromStdString(profile.ask))
                                             .arg(profile.askEvery);
        case SourceState::Lost:
            break;
    }
    return tr("The connection to %1 was lost: %2. It is tried again every second; what is missed stays a "
              "gap.")
        .arg(place(profile), fault(source.fault()));
}

QString GaugeWords::refusal(const exchange::PatternRefusal& refusal) {
    using exchange::PatternFault;
    const QString what = QString::fromStdString(refusal.what);
    switch (refusal.fault) {
        case PatternFault::Empty:
            return tr("The pattern is empty. It needs at least {value}.");
        case PatternFault::TooLong:
            return tr("The pattern is longer than %1 letters.").arg(exchange::kLongestPattern);
        case PatternFault::BraceOpen:
            return tr("A brace has no other half.");
        case PatternFault::FieldUnknown:
            return tr("There is no field {%1}. The fields are {value}, {unit}, {second}, {second unit}, "
                      "{time} and "
                      "{skip}.")
                .arg(what);
        case PatternFault::FieldTwice:
            return tr("{%1} stands twice.").arg(what);
        case PatternFault::FieldsTouch:
            return tr("Before {%1} something must stand that tells where the field before it ends.")
                .arg(what);
        case PatternFault::NoValue:
            return tr("The pattern has no {value}.");
        case PatternFault::NoUnit:
            return tr("The lines name no unit ({unit}): say which one it is.");
        case PatternFault::NoSecondUnit:
            return tr("The lines name no unit for {second}: say which one it is.");
        case PatternFault::SecondMissing:
            break;
    }
    return tr("{second unit} stands without {second}.");
}

QString GaugeWords::refusal(const exchange::LineRefusal& refusal) {
    using exchange::LineFault;
    const QString what = line(QByteArray::fromStdString(refusal.what));
    const auto at = static_cast<qulonglong>(refusal.at + 1);
    switch (refusal.fault) {
        case LineFault::TextDiffers:
            return what.trimmed().isEmpty() ? tr("a blank is missing at place %1").arg(at)
                                            : tr("“%2” is missing at place %1").arg(at).arg(what);
        case LineFault::NumberMissing:
            return tr("no number at place %1").arg(at);
        case LineFault::NumberUnreadable:
            return tr("“%1” can't be read as a number with this decimal mark").arg(what);
        case LineFault::TimeMissing:
            return tr("no time at place %1").arg(at);
        case LineFault::UnitMissing:
            return tr("no unit at place %1").arg(at);
        case LineFault::UnitUnknown:
            return tr("“%1” is no unit of what is read").arg(what);
        case LineFault::MoreText:
            break;
    }
    return tr("the line goes on at place %1, the pattern does not").arg(at);
}

QString GaugeWords::onlyPpm() {
    return tr(
        "Carbon monoxide is taken in ppm alone; another unit is never converted. Set the instrument to "
        "ppm.");
}

QString GaugeWords::line(const QByteArray& line) {
    QString text = QString::fromUtf8(line);
    for (QChar& c : text) {
        if (!c.isPrint() && c != u'\t') {
            c = QChar(0x25A1);
        }
    }
    return text;
}

QString GaugeWords::age(std::chrono::milliseconds age) {
    constexpr int kInMinute = 60;
    const auto tenths = std::max<qint64>(0, age.count() / 100);
    const auto seconds = tenths / 10;
    if (seconds < 10) {
        return tr("%1 s ago").arg(QStringLiteral("%1.%2").arg(seconds).arg(tenths % 10));
    }
    if (seconds < kInMinute) {
        return tr("%1 s ago").arg(seconds);
    }
    return tr("%1 min %2 s ago").arg(seconds / kInMinute).arg(seconds % kInMinute);
}

QString GaugeWords::simulated() {
    return tr("Simulated, for practice: this is no reading of anything, and goes into no record.");
}

}  // namespace hearth::ui::gauge
