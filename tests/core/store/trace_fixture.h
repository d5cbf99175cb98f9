// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/trace_text.h"
#include "core/store/record_traces.h"
#include "tests/core/store/kept_fixture.h"

#include <string>
#include <vector>

/// Traces of gauges and of rooms, with a visit to keep them with.
namespace hearth::store {

class TracesTest : public KeptTest {
  protected:
    void SetUp() override {
        KeptTest::SetUp();
        visit = valueOf(store->startVisit(sampleVisit(sample)));
    }
    [[nodiscard]] NewTrace falling(double from = 20.6) const {
        NewTrace trace;
        trace.test = valueOf(store->visitFile(visit)).tests.front().id;
        trace.source.name = "logger.csv";
        trace.source.beganAt = clock.now();
        trace.source.resolution = {"0.01", quantity::UnitCode::Millibar};
        trace.marks = {{reg::TraceEvent::Timing, 60000}};
        for (int i = 0; i < 1200; ++i) {
            trace.trace.push_back({quantity::Duration(i * 0.1, quantity::kSecond),
                                   quantity::GaugePressure(from - i / 100 * 0.01, quantity::kMillibar)});
        }
        return trace;
    }
    [[nodiscard]] std::vector<reg::GaugeTrace> kept() const {
        return valueOf(store->visitFile(visit)).traces;
    }
    [[nodiscard]] std::string texts() const { return askSql(path(), "SELECT count(*) FROM trace_readings"); }

    reg::VisitId visit;
};

inline reg::TraceZero zeroed(const Clock& clock) {
    return {{"0.01", quantity::UnitCode::Millibar},
            {"0.01", quantity::UnitCode::Millibar},
            clock.now() - std::chrono::minutes(2),
            true};
}

class RoomTracesTest : public TracesTest {
  protected:
    [[nodiscard]] NewRoomTrace rising(double from = 0.0) const {
        NewRoomTrace trace;
        trace.visit = visit;
        trace.source.name = "room monitor";
        trace.source.origin = reg::TraceOrigin::Network;
        trace.source.beganAt = clock.now();
        trace.source.resolution = {"1", quantity::UnitCode::Ppm};
        for (int i = 0; i < 600; ++i) {
            trace.readings.push_back({quantity::Duration(i, quantity::kSecond),
                                      quantity::Share(from + i / 60, quantity::kPpm),
                                      i < 60 ? air::CoPlace::Outside : air::CoPlace::Room});
        }
        return trace;
    }
};

}  // namespace hearth::store
