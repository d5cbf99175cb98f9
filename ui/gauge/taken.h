// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/quantity/typed.h"
#include "core/record/trace_text.h"
#include "core/tightness/trace.h"

#include <array>
#include <chrono>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// What was taken from a gauge, with all that is to be said of where it came from.
namespace hearth::ui::gauge {

enum class SourceKind { Serial, Network, Simulator };

/// Something that happened while the gauge was watched. The first four begin or end a stage of the test.
enum class GaugeEvent { LetBy, Settling, Timing, TestEnd, ValveShut, PumpRemoved, DoorOpened };
inline constexpr std::array kGaugeEvents{
    GaugeEvent::LetBy,     GaugeEvent::Settling,    GaugeEvent::Timing,    GaugeEvent::TestEnd,
    GaugeEvent::ValveShut, GaugeEvent::PumpRemoved, GaugeEvent::DoorOpened};

struct GaugeMark {
    GaugeEvent event = GaugeEvent::LetBy;
    std::chrono::milliseconds at{0};  // from the trace's beginning
    bool operator==(const GaugeMark&) const = default;
};

/// Where a trace came from.
struct TraceOrigin {
    std::string name;  // the profile's
    SourceKind kind = SourceKind::Serial;
    std::optional<Instant> beganAt = std::nullopt;           // by the wall clock; nothing: not known
    quantity::UnitCode unit = quantity::UnitCode::Millibar;  // that the gauge showed
    quantity::Typed resolution = {};                         // as the profile says it; empty: not said
    reg::TraceZero zero = {};                                // before it was connected
    bool operator==(const TraceOrigin&) const = default;
    /// Practice: such a trace is evidence of nothing.
    [[nodiscard]] bool isSimulated() const { return kind == SourceKind::Simulator; }
};

/// Of pressures or of carbon monoxide, as the source sends: one of both is empty.
struct TakenTrace {
    TraceOrigin origin;
    tightness::Trace trace;
    std::vector<air::CoReading> air;
    int decimals = 0;  // the most that a reading of carbon monoxide had
    std::vector<GaugeMark> marks;
    std::vector<tightness::Span> gaps;  // while the connection was lost
    /// What a second gauge saw at the same time, if there was one; its times are this one's.
    std::vector<TakenTrace> beside;
    [[nodiscard]] std::size_t size() const { return trace.size() + air.size(); }
    [[nodiscard]] bool isEmpty() const { return size() == 0; }
};

/// Stable codes for files.
[[nodiscard]] std::string_view codeOf(SourceKind kind);
[[nodiscard]] std::string_view codeOf(GaugeEvent event);
[[nodiscard]] std::optional<SourceKind> sourceKindFromCode(std::string_view code);
[[nodiscard]] std::optional<GaugeEvent> gaugeEventFromCode(std::string_view code);

/// The reading as a point of a trace; nothing for one that is no pressure.
[[nodiscard]] std::optional<quantity::GaugePressure> pressureOf(const quantity::Decimal& value,
                                                                quantity::UnitCode unit);
/// The reading as a level of carbon monoxide: of ppm alone. Another unit is nothing, never converted: how
/// much air a milligram is in depends on a temperature that nobody has said.
[[nodiscard]] std::optional<quantity::Share> coOf(const quantity::Decimal& value, quantity::UnitCode unit);

}  // namespace hearth::ui::gauge
