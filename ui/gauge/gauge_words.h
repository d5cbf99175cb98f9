// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/line_pattern.h"
#include "ui/gauge/profile.h"
#include "ui/gauge/source.h"
#include "ui/gauge/taken.h"

#include <QByteArray>
#include <QCoreApplication>
#include <QString>

#include <chrono>
#include <vector>

namespace hearth::ui::gauge {

/// What gauges, their lines and their connections are called on the screen.
class GaugeWords {
    Q_DECLARE_TR_FUNCTIONS(hearth::ui::gauge::GaugeWords)
  public:
    GaugeWords() = delete;

    [[nodiscard]] static QString kind(SourceKind kind);
    [[nodiscard]] static QString event(GaugeEvent event);
    [[nodiscard]] static QString practice(PracticePipe pipe);
    [[nodiscard]] static QString practice(PracticeRoom room);
    /// One profile for each practice pipe; they need no setting up.
    [[nodiscard]] static std::vector<GaugeProfile> practiceProfiles();
    /// The same of practice rooms.
    [[nodiscard]] static std::vector<GaugeProfile> practiceRooms();
    /// Where its readings come from: "serial port /dev/ttyUSB0".
    [[nodiscard]] static QString place(const GaugeProfile& profile);
    /// Of the connection, with why it is not there and what happens next.
    [[nodiscard]] static QString state(const Source& source, const GaugeProfile& profile);
    [[nodiscard]] static QString fault(SourceFault fault);
    [[nodiscard]] static QString refusal(const exchange::PatternRefusal& refusal);
    [[nodiscard]] static QString refusal(const exchange::LineRefusal& refusal);
    /// Of carbon monoxide in another unit: what to do about it.
    [[nodiscard]] static QString onlyPpm();
    /// A line as it came; what is no text is shown as a box.
    [[nodiscard]] static QString line(const QByteArray& line);
    /// "0.4 s ago", "2 min 5 s ago".
    [[nodiscard]] static QString age(std::chrono::milliseconds age);
    /// Said wherever a simulated reading is shown.
    [[nodiscard]] static QString simulated();
};

}  // namespace hearth::ui::gauge
