// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/typed.h"
#include "core/register/model.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// What a gauge that was watched all the time saw of a tightness test, or an instrument of the carbon
/// monoxide in a room, as far as the register knows it: where it came from and what happened when. The
/// readings lie apart (see store::Traces).
namespace hearth::reg {

using GaugeTraceId = Id<struct GaugeTraceTag>;

/// Where the readings came from.
enum class TraceOrigin { File, Serial, Network, Simulator };

/// Something at a time of a trace. Where a stage of the test began stands with what else happened.
enum class TraceEvent { LetBy, Settling, Timing, TestEnd, ValveShut, PumpRemoved, DoorOpened };

struct TraceMark {
    TraceEvent event = TraceEvent::LetBy;
    int milliseconds = 0;  // from the trace's beginning
    bool operator==(const TraceMark&) const = default;
};
using TraceMarks = std::vector<TraceMark>;

/// What a gauge read while it was open to the air, before it was connected.
struct TraceZero {
    quantity::Typed reads = {};  // a mean; empty: it was not looked at
    quantity::Typed step = {};   // of the display
    std::optional<Instant> at = std::nullopt;
    bool isZero = false;  // within one step of nought
    [[nodiscard]] bool isThere() const { return !reads.text.empty(); }
    bool operator==(const TraceZero&) const = default;
};

/// What whoever hands a trace over says of it.
struct TraceSource {
    std::string name;  // the file's, or the profile's
    TraceOrigin origin = TraceOrigin::File;
    bool isSimulated = false;                       // practice: such a trace is in no record
    std::optional<Instant> beganAt = std::nullopt;  // nothing: the source told no clock time
    /// The gauge's step, empty where that is not known; in the unit that the gauge shows.
    quantity::Typed resolution{{}, quantity::UnitCode::Millibar};
    TraceZero zero = {};
    bool operator==(const TraceSource&) const = default;
};

struct GaugeTrace {
    GaugeTraceId id;
    VisitId visit;
    std::optional<TestId> test;  // nothing: of carbon monoxide in rooms
    TraceSource source;
    std::string channels;  // "pressure", and "barometer" and "temperature" where it has them; or "co"
    int points = 0;
    int milliseconds = 0;  // from the first point to the last
    int size = 0;          // of the readings' text, bytes
    std::string digest;    // SHA-256 of that text, hexadecimal
    std::string marks;     // see marksText
    Instant keptAt{};
    std::string keptBy;
    /// Of a second gauge on the same pipe: the trace that it was watched beside. Its times are that one's.
    std::optional<GaugeTraceId> beside = std::nullopt;
    bool operator==(const GaugeTrace&) const = default;
};

/// So many marks are more than anybody sets.
inline constexpr std::size_t kMostTraceMarks = 100;

/// "let_by@0 timing@128.5": seconds from the trace's beginning, in the order of time.
[[nodiscard]] std::string marksText(TraceMarks marks);
/// Nothing for what is not such a text or has too many marks; an empty one has none.
[[nodiscard]] std::optional<TraceMarks> marksFromText(std::string_view text);
/// When that happened: the last one of its kind, in milliseconds.
[[nodiscard]] std::optional<int> whenOf(const TraceMarks& marks, TraceEvent event);
/// With this one; one that begins or ends a stage takes the place of what there was of its kind.
[[nodiscard]] TraceMarks withMark(TraceMarks marks, const TraceMark& mark);

[[nodiscard]] std::string_view codeOf(TraceOrigin);
[[nodiscard]] std::string_view codeOf(TraceEvent);
[[nodiscard]] std::optional<TraceOrigin> traceOriginFromCode(std::string_view);
[[nodiscard]] std::optional<TraceEvent> traceEventFromCode(std::string_view);

}  // namespace hearth::reg
