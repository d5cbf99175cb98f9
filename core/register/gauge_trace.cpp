// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/gauge_trace.h"

#include <algorithm>
#include <array>

namespace hearth::reg {

namespace {

// In the order of their enumerations.
constexpr std::array<std::string_view, 4> kTraceOrigins{"file", "serial", "network", "simulator"};
constexpr std::array<std::string_view, 7> kTraceEvents{"let_by",     "settling",     "timing",     "test_end",
                                                       "valve_shut", "pump_removed", "door_opened"};
/// A day.
constexpr int kMostMilliseconds = 86'400'000;

template <class Enum, std::size_t N>
std::optional<Enum> traceCode(const std::array<std::string_view, N>& codes, std::string_view code) {
    const auto found = std::find(codes.begin(), codes.end(), code);
    return found == codes.end() ? std::nullopt : std::optional(static_cast<Enum>(found - codes.begin()));
}

bool isStage(TraceEvent event) {
    return event == TraceEvent::LetBy || event == TraceEvent::Settling || event == TraceEvent::Timing ||
           event == TraceEvent::TestEnd;
}

void inOrder(TraceMarks& marks) {
    std::stable_sort(marks.begin(), marks.end(),
                     [](const TraceMark& a, const TraceMark& b) { return a.milliseconds < b.milliseconds; });
}

std::string secondsText(int milliseconds) {
    std::string text = quantity::Decimal(milliseconds, 3).text();
    text.erase(text.find_last_not_of('0') + 1);
    return text.back() == '.' ? text.substr(0, text.size() - 1) : text;
}

std::optional<TraceMark> markFrom(std::string_view text) {
    const auto at = text.find('@');
    const auto event = traceEventFromCode(text.substr(0, at));
    if (at == std::string_view::npos || !event) {
        return std::nullopt;
    }
    const auto seconds = quantity::Decimal::parse(text.substr(at + 1));
    if (!seconds || seconds->decimals() > 3) {
        return std::nullopt;
    }
    const auto milliseconds = quantity::Decimal::rounded(seconds->toDouble() * 1000.0, 0).mantissa();
    return milliseconds >= 0 && milliseconds <= kMostMilliseconds
               ? std::optional(TraceMark{*event, static_cast<int>(milliseconds)})
               : std::nullopt;
}

}  // namespace

std::string marksText(TraceMarks marks) {
    inOrder(marks);
    std::string text;
    for (const auto& mark : marks) {
        text.append(text.empty() ? "" : " ").append(codeOf(mark.event)).append("@");
        text += secondsText(mark.milliseconds);
    }
    return text;
}

std::optional<TraceMarks> marksFromText(std::string_view text) {
    TraceMarks marks;
    while (!text.empty()) {
        const auto blank = text.find(' ');
        const auto mark = markFrom(text.substr(0, blank));
        if (!mark || marks.size() == kMostTraceMarks || blank == text.size() - 1) {
            return std::nullopt;
        }
        marks.push_back(*mark);
        text = blank == std::string_view::npos ? std::string_view() : text.substr(blank + 1);
    }
    inOrder(marks);
    return marks;
}

std::optional<int> whenOf(const TraceMarks& marks, TraceEvent event) {
    std::optional<int> when;
    for (const auto& mark : marks) {
        if (mark.event == event && (!when || mark.milliseconds > *when)) {
            when = mark.milliseconds;
        }
    }
    return when;
}

TraceMarks withMark(TraceMarks marks, const TraceMark& mark) {
    if (isStage(mark.event)) {
        std::erase_if(marks, [&](const TraceMark& known) { return known.event == mark.event; });
    }
    marks.push_back(mark);
    inOrder(marks);
    return marks;
}

std::string_view codeOf(TraceOrigin value) {
    return kTraceOrigins.at(static_cast<std::size_t>(value));
}
std::string_view codeOf(TraceEvent value) {
    return kTraceEvents.at(static_cast<std::size_t>(value));
}
std::optional<TraceOrigin> traceOriginFromCode(std::string_view code) {
    return traceCode<TraceOrigin>(kTraceOrigins, code);
}
std::optional<TraceEvent> traceEventFromCode(std::string_view code) {
    return traceCode<TraceEvent>(kTraceEvents, code);
}

}  // namespace hearth::reg
