// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/faults/fault_actions.h"
#include "tests/core/store/kept_fixture.h"

namespace hearth::store {
namespace {

Result<void> signByHand(Store& store, reg::VisitId visit) {
    reg::HandSignature signature;
    signature.visit = visit;
    signature.recordKind = "tightness_and_purge";
    signature.signer = reg::Signer::Receiver;
    signature.way = reg::SignedWay::Drawn;
    signature.name = "Nell Harrow";
    signature.strokes = "1.0,2.0 3.0,4.0";
    const auto file = store.visitFile(visit);
    // Each time another line, so that signing again changes something.
    signature.strokes += file && !file->signatures.empty() ? ";5.0,6.0" : "";
    return file ? store.sign(signature) : withoutValue(file);
}

/// Another each time, in place of the one before.
Result<reg::GaugeTraceId> traceOf(Store& store, reg::VisitId visit) {
    const auto file = store.visitFile(visit);
    if (!file) {
        return tl::unexpected<Error>(file.error());
    }
    NewTrace trace;
    trace.test = file->tests.front().id;
    trace.source.name = "logger.csv";
    const double start = file->traces.empty() ? 20.6 : 20.5;
    if (!file->traces.empty()) {
        trace.replaces = file->traces.back().id;
    }
    for (int i = 0; i < 2000; ++i) {
        trace.trace.push_back({quantity::Duration(i * 0.1, quantity::kSecond),
                               quantity::GaugePressure(start - i % 7 * 0.01, quantity::kMillibar)});
    }
    return store.keepTrace(trace);
}

Result<void> traceOne(Store& store, reg::VisitId visit) {
    return withoutValue(traceOf(store, visit));
}

/// Another each time, in place of the one before.
Result<void> roomTraceOne(Store& store, reg::VisitId visit) {
    const auto file = store.visitFile(visit);
    if (!file) {
        return tl::unexpected<Error>(file.error());
    }
    NewRoomTrace trace;
    trace.visit = visit;
    trace.source.name = "room monitor";
    const double start = file->traces.empty() ? 3.0 : 4.0;
    if (!file->traces.empty()) {
        trace.replaces = file->traces.back().id;
    }
    for (int i = 0; i < 2000; ++i) {
        trace.readings.push_back(
            {quantity::Duration(i, quantity::kSecond), quantity::Share(start + i % 7, quantity::kPpm)});
    }
    return withoutValue(store.keepRoomTrace(trace));
}

Result<void> markOne(Store& store, const reg::VisitFile& file) {
    return store.markTrace(file.traces.back().id, {{reg::TraceEvent::Timing, 60000}});
}

}  // namespace

const std::vector<Action>& sheetActions() {
    static const std::vector<Action> kActions{
        {"hand", "sign", signByHand},
        {"hand_again", "sign", signByHand, signByHand},
        {"no_hand", "unsign",
         [](Store& store, reg::VisitId visit) {
             return store.unsign(visit, "tightness_and_purge", reg::Signer::Receiver);
         },
         signByHand},
        {"trace", "keepTrace", traceOne},
        {"trace_again", "keepTrace", traceOne, traceOne},
        {"room_trace", "keepRoomTrace", roomTraceOne},
        {"room_trace_again", "keepRoomTrace", roomTraceOne, roomTraceOne},
        {"mark", "markTrace", onFile(markOne), traceOne},
        {"no_trace", "removeTrace", onFile([](Store& store, const reg::VisitFile& file) {
             return store.removeTrace(file.traces.back().id);
         }),
         traceOne},
    };
    return kActions;
}

}  // namespace hearth::store
