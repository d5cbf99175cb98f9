// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/visit_file.h"
#include "core/tightness/gauge.h"

#include <optional>
#include <span>
#include <string_view>
#include <utility>
#include <vector>

/// Entries and register fields as typed inputs of the computing functions. What is blank is missing; what
/// can't be read is unusable, and never taken for something else.
namespace hearth::judging {

using Pressure = tightness::Given<quantity::GaugePressure>;

/// The entries of one subject.
class Readings {
  public:
    Readings(const reg::VisitFile& file, const reg::SubjectRef& subject) : Readings(file.entries, subject) {}
    Readings(std::span<const reg::Entry> entries, const reg::SubjectRef& subject);

    [[nodiscard]] tightness::Given<tightness::Reading> pressure(reg::Item item) const;
    [[nodiscard]] tightness::Given<quantity::Volume> volume(reg::Item item) const;
    [[nodiscard]] tightness::Given<quantity::TemperatureChange> temperatureChange(reg::Item item) const;
    /// From one time of day to another, across midnight if need be; more than half a day is a slip and can't
    /// be used. A time given to the minute is taken as it stands.
    [[nodiscard]] tightness::Given<quantity::Duration> between(reg::Item from, reg::Item to) const;
    /// The canonical code of a choice; empty when absent or unreadable.
    [[nodiscard]] std::string_view code(reg::Item item) const;
    [[nodiscard]] std::optional<bool> yesNo(reg::Item item) const;
    [[nodiscard]] bool hasText(reg::Item item) const;
    [[nodiscard]] bool isEntered(reg::Item item) const { return find(item) != nullptr; }

    /// The choice as the computing functions know it; nothing for a code that they do not.
    template <class E>
    [[nodiscard]] std::optional<E> choice(reg::Item item,
                                          std::initializer_list<std::pair<std::string_view, E>> known) const {
        const auto entered = code(item);
        for (const auto& [text, value] : known) {
            if (text == entered) {
                return value;
            }
        }
        return std::nullopt;
    }

  private:
    [[nodiscard]] const reg::Entry* find(reg::Item item) const;

    std::vector<const reg::Entry*> m_entries;
};

/// A stage's three inputs from its four items.
struct StageItems {
    reg::Item start;
    reg::Item end;
    reg::Item startedAt;
    reg::Item endedAt;
};
[[nodiscard]] tightness::Stage stageOf(const Readings& readings, const StageItems& items);

/// Register fields.
[[nodiscard]] tightness::Given<quantity::GaugePressure> gaugePressureOf(const quantity::Typed& typed);
[[nodiscard]] tightness::Given<quantity::PressureChange> pressureChangeOf(const quantity::Typed& typed);
[[nodiscard]] tightness::Given<quantity::Volume> volumeOf(const quantity::Typed& typed);
[[nodiscard]] tightness::Given<quantity::Length> lengthOf(const quantity::Typed& typed);

}  // namespace hearth::judging
