// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/exchange/line_pattern.h"
#include "ui/gauge/simulated_pipe.h"
#include "ui/gauge/simulated_room.h"
#include "ui/gauge/taken.h"

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace hearth::ui::gauge {

class Source;

/// A gauge that sends its readings, as its owner described it.
struct GaugeProfile {
    std::string name;
    SourceKind kind = SourceKind::Serial;
    std::string port = {};  // serial: "/dev/ttyUSB0"
    int speed = 9600;       // serial: bits a second
    std::string host = {};  // network
    int networkPort = 0;
    PracticePipe practice = PracticePipe::TightCooling;
    std::optional<PracticeRoom> practiceRoom = std::nullopt;  // in place of a pipe; needs no keeping
    exchange::LinePattern pattern = {};
    quantity::Typed resolution = {};  // empty: the last digit of what it sends
    std::string ask = {};             // as typed, see askBytes(): what is sent to it; empty: nothing ever is
    int askEvery = 1000;              // ms
    bool operator==(const GaugeProfile&) const = default;
};

/// JSON, as a setting of the store.
[[nodiscard]] std::string profilesText(const std::vector<GaugeProfile>& profiles);
/// Profiles that can't be read are left out; so is everything of a text that is none.
[[nodiscard]] std::vector<GaugeProfile> profilesFromText(std::string_view text);

/// The name of the setting that holds the firm's profiles.
inline constexpr const char* kProfilesSetting = "gauge_profiles";

/// The source that it describes, stopped; or what is wrong with its pattern.
[[nodiscard]] tl::expected<std::unique_ptr<Source>, exchange::PatternRefusal> makeSource(
    const GaugeProfile& profile, const Clock& clock);

/// What a trace from it is said to be, begun at `now`.
[[nodiscard]] TraceOrigin originOf(const GaugeProfile& profile, Instant now);

}  // namespace hearth::ui::gauge
