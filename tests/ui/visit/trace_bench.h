// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/ui/visit/sheet_bench.h"
#include "ui/visit/trace_area.h"
#include "ui/visit/trace_taker.h"

#include <QPushButton>

#include <cmath>
#include <string>

namespace hearth::testing {

/// What a gauge saw: four seconds open to the air, a minute and ten seconds at 8.5 mbar, raised by 80 s, and
/// there until 270 s while it falls by k a second and settles by `settles` mbar in the manner of 30 s. Two
/// readings a second.
inline double seenAt(double t, double k, double settles) {
    if (t >= 80.0) {
        return 20.6 * std::exp(-k * (t - 80.0)) + settles * (std::exp(-(t - 80.0) / 30.0) - 1.0);
    }
    if (t >= 76.0) {
        return 8.5 + (t - 76.0) * 3.025;
    }
    return t < 4.0 ? 0.0 : t < 6.0 ? (t - 4.0) * 4.25 : 8.5;
}

inline tightness::Trace watched(double k = 0.0, double settles = 0.0, double until = 270.0) {
    tightness::Trace trace;
    for (double t = 0.0; t <= until + 1e-9; t += 0.5) {
        trace.push_back(
            {quantity::Duration(t, quantity::kSecond),
             quantity::GaugePressure(std::round(seenAt(t, k, settles) * 100) / 100, quantity::kMillibar)});
    }
    return trace;
}

/// The same as a logger's table.
inline std::string loggersFile(const tightness::Trace& trace,
                               const char* heading = "time s,pressure mbar\n") {
    std::string text = heading;
    for (const auto& point : trace) {
        text += std::to_string(point.at.in(quantity::kSecond)) + "," +
                quantity::Decimal::rounded(point.pressure.in(quantity::kMillibar), 2).text() + "\n";
    }
    return text;
}

class TraceBench : public SheetBench {
  public:
    TraceBench() { fillInAllButReadings(); }

    /// What a test needs but for its readings; the meter's volume is enough.
    void fillInAllButReadings() const {
        enter(reg::Item::TestWork, "existing");
        enter(reg::Item::TestExtent, "whole");
        enter(reg::Item::TestGauge, firm.gauge.id.text());
        enter(reg::Item::TestVolumeTyped, "0.01");
    }
    [[nodiscard]] ui::visit::TraceArea& area() const { return *sheet().tightnessPart()->trace(); }
    [[nodiscard]] ui::visit::TraceTaker& taker() const { return *sheet().tightnessPart()->taker(); }
    [[nodiscard]] QPushButton* button(const char* name) const {
        auto* found = sheet().tightnessPart()->findChild<QPushButton*>(QString::fromLatin1(name));
        EXPECT_NE(found, nullptr) << name;
        return found;
    }
    [[nodiscard]] QString label(const char* name) const {
        const auto* found = sheet().tightnessPart()->findChild<QLabel*>(QString::fromLatin1(name));
        return found == nullptr ? QString() : found->text();
    }
    static reg::TraceSource source(const char* name = "logger.csv") {
        reg::TraceSource made;
        made.name = name;
        return made;
    }
    /// Takes a trace in and keeps it.
    void take(const tightness::Trace& trace, const char* name = "logger.csv") const {
        area().setTrace(trace, source(name));
        need(area().keep());
        settle();
    }
    [[nodiscard]] QString entered(reg::Item item) const { return model().textOf(test(), item); }
};

}  // namespace hearth::testing
