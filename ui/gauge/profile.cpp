// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gauge/profile.h"

#include "core/exchange/json_node.h"
#include "ui/gauge/ask_line.h"
#include "ui/gauge/network_source.h"
#include "ui/gauge/serial_source.h"
#include "ui/gauge/simulated_source.h"

#include <algorithm>
#include <limits>

namespace hearth::ui::gauge {

namespace {

using exchange::JsonNode;
using quantity::UnitCode;
using quantity::UnitFamily;

std::string_view codeOfFamily(UnitFamily family) {
    return family == UnitFamily::Trace         ? "co"
           : family == UnitFamily::Temperature ? "temperature"
                                               : "pressure";
}

UnitFamily familyFromCode(std::string_view code) {
    return code == "co"            ? UnitFamily::Trace
           : code == "temperature" ? UnitFamily::Temperature
                                   : UnitFamily::Pressure;
}

std::string unitTextOf(const std::optional<UnitCode>& unit) {
    return unit ? std::string(quantity::unitText(*unit)) : std::string();
}

nlohmann::json jsonOf(const GaugeProfile& profile) {
    const auto& pattern = profile.pattern;
    return {
        {"name", profile.name},
        {"kind", codeOf(profile.kind)},
        {"port", profile.port},
        {"speed", profile.speed},
        {"host", profile.host},
        {"network_port", profile.networkPort},
        {"practice", codeOf(profile.practice)},
        {"pattern", pattern.text},
        {"mark", pattern.mark == quantity::DecimalMark::Comma ? "comma" : "point"},
        {"reads", codeOfFamily(pattern.family)},
        {"unit", unitTextOf(pattern.unit)},
        {"second", codeOfFamily(pattern.secondFamily)},
        {"second_unit", unitTextOf(pattern.secondUnit)},
        {"resolution", profile.resolution.text},
        {"resolution_unit", quantity::unitText(profile.resolution.unit)},
        {"ask", profile.ask},
        {"ask_every", profile.askEvery},
    };
}

/// A unit of that family by its text; none for an empty or another one.
std::optional<UnitCode> unitIn(const std::string& text, UnitFamily family) {
    const auto unit = quantity::unitFromText(text);
    const auto units = quantity::unitsOf(family);
    return unit && std::find(units.begin(), units.end(), *unit) != units.end() ? unit : std::nullopt;
}

GaugeProfile profileOf(const JsonNode& node) {
    GaugeProfile profile;
    profile.name = node.at("name").text();
    const auto kind = sourceKindFromCode(node.at("kind").text());
    if (!kind) {
        node.refuse("unknown_kind");
    }
    profile.kind = *kind;
    profile.port = node.textOr("port");
    profile.speed = node.at("speed").integer();
    profile.host = node.textOr("host");
    profile.networkPort = node.at("network_port").integer();
    const auto practice = node.textOr("practice");
    const auto* pipe = std::find_if(kPracticePipes.begin(), kPracticePipes.end(),
                                    [&](PracticePipe one) { return codeOf(one) == practice; });
    profile.practice = pipe == kPracticePipes.end() ? PracticePipe::TightCooling : *pipe;
    auto& pattern = profile.pattern;
    pattern.text = node.at("pattern").text();
    pattern.mark =
        node.textOr("mark") == "comma" ? quantity::DecimalMark::Comma : quantity::DecimalMark::Point;
    pattern.family = familyFromCode(node.textOr("reads"));
    pattern.unit = unitIn(node.textOr("unit"), pattern.family);
    pattern.secondFamily = familyFromCode(node.textOr("second"));
    pattern.secondUnit = unitIn(node.textOr("second_unit"), pattern.secondFamily);
    profile.resolution.text = node.textOr("resolution");
    profile.resolution.unit = unitIn(node.textOr("resolution_unit"), pattern.family).value_or(UnitCode::None);
    profile.ask = node.textOr("ask");
    if (const auto every = node.find("ask_every")) {
        profile.askEvery = std::clamp(every->integer(), kSoonestAsk, kLatestAsk);
    }
    return profile;
}

/// One that can't be read is not sent: better no answer than another question.
std::unique_ptr<Source> withAsking(std::unique_ptr<Source> source, const GaugeProfile& profile) {
    if (const auto ask = askBytes(QString::fromStdString(profile.ask)); ask && !ask->isEmpty()) {
        source->setAsking(*ask, std::chrono::milliseconds(profile.askEvery));
    }
    return source;
}

}  // namespace

std::string profilesText(const std::vector<GaugeProfile>& profiles) {
    auto list = nlohmann::json::array();
    for (const auto& profile : profiles) {
        list.push_back(jsonOf(profile));
    }
    return list.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

std::vector<GaugeProfile> profilesFromText(std::string_view text) {
    std::vector<GaugeProfile> profiles;
    const auto json = nlohmann::json::parse(text, nullptr, false);
    if (!json.is_array()) {
        return profiles;
    }
    for (const auto& one : json) {
        try {
            profiles.push_back(profileOf(JsonNode(one, "profile")));
        } catch (const exchange::NodeFault&) {
            continue;
        }
    }
    return profiles;
}

tl::expected<std::unique_ptr<Source>, exchange::PatternRefusal> makeSource(const GaugeProfile& profile,
                                                                           const Clock& clock) {
    if (profile.kind == SourceKind::Simulator) {
        return profile.practiceRoom ? std::make_unique<SimulatedSource>(*profile.practiceRoom, clock)
                                    : std::make_unique<SimulatedSource>(profile.practice, clock);
    }
    auto matcher = exchange::LineMatcher::of(profile.pattern);
    if (!matcher) {
        return tl::unexpected(matcher.error());
    }
    if (profile.kind == SourceKind::Serial) {
        return withAsking(std::make_unique<SerialSource>(QString::fromStdString(profile.port), profile.speed,
                                                         std::move(*matcher), clock),
                          profile);
    }
    const int port = std::clamp<int>(profile.networkPort, 0, std::numeric_limits<quint16>::max());
    return withAsking(std::make_unique<NetworkSource>(QString::fromStdString(profile.host),
                                                      static_cast<quint16>(port), std::move(*matcher), clock),
                      profile);
}

TraceOrigin originOf(const GaugeProfile& profile, Instant now) {
    TraceOrigin origin{profile.name, profile.kind, now};
    origin.unit = profile.pattern.unit.value_or(
        profile.pattern.family == UnitFamily::Trace ? UnitCode::Ppm : UnitCode::Millibar);
    origin.resolution = profile.resolution;
    return origin;
}

}  // namespace hearth::ui::gauge
