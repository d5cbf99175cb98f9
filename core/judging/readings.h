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

/// What was read and what the last digit typed is worth: 20.70 was read to a hundredth.
template <class Value, class Digit = Value>
struct Seen {
    Value value;
    Digit digit;
};

/// The entries of one subject.
class Readings {
  public:
    Readings(const reg::VisitFile& file, const reg::SubjectRef& subject) : Readings(file.entries, subject) {}
    Readings(std::span<const reg::Entry> entries, const reg::SubjectRef& subject);

    [[nodiscard]] tightness::Given<tightness::Reading> pressure(reg::Item item) const;
    [[nodiscard]] tightness::Given<quantity::Volume> volume(reg::Item item) const;
    [[nodiscard]] tightness::Given<quantity::TemperatureChange> temperatureChange(reg::Item item) const;
    [[nodiscard]] tightness::Given<Seen<quantity::Volume>> volumeSeen(reg::Item item) const;
    [[nodiscard]] tightness::Given<Seen<quantity::Length>> length(reg::Item item) const;
    [[nodiscard]] tightness::Given<Seen<quantity::Duration>> duration(reg::Item item) const;
    [[nodiscard]] tightness::Given<Seen<quantity::Flow>> flow(reg::Item item) const;
    [[nodiscard]] tightness::Given<Seen<quantity::Area>> area(reg::Item item) const;
    /// Parts of a mixture; a mass in a volume (mg/m3) is none and can't be used here: see trace().
    [[nodiscard]] tightness::Given<Seen<quantity::Share>> share(reg::Item item) const;
    /// The same, and a mass of CO in a volume of air (mg/m3) at 20 degrees C and 1013.25 mbar, where 1 ppm
    /// is 1.164 mg/m3.
    [[nodiscard]] tightness::Given<Seen<quantity::Share>> trace(reg::Item item) const;
    [[nodiscard]] tightness::Given<Seen<quantity::Temperature, quantity::TemperatureChange>> temperature(
        reg::Item item) const;
    /// A power or heat value of the kind that the caller knows it to be: gross, net, output.
    template <class Amount>
    [[nodiscard]] tightness::Given<Seen<Amount>> power(reg::Item item) const {
        return based<Amount>(powerBase(item));
    }
    template <class Amount>
    [[nodiscard]] tightness::Given<Seen<Amount>> heatValue(reg::Item item) const {
        return based<Amount>(heatValueBase(item));
    }
    /// A number without a unit.
    [[nodiscard]] tightness::Given<quantity::Decimal> number(reg::Item item) const;
    /// A whole number from nought; anything else can't be used.
    [[nodiscard]] tightness::Given<int> count(reg::Item item) const;
    [[nodiscard]] tightness::Given<calendar::Date> date(reg::Item item) const;
    /// The text as typed; empty when there is none.
    [[nodiscard]] std::string_view text(reg::Item item) const;
    /// As a figure of its own unit, for a maker's limit; nothing when absent or unreadable.
    [[nodiscard]] std::optional<quantity::Figure> figure(reg::Item item) const;
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
    struct Bases {
        double value;
        double digit;
    };
    [[nodiscard]] tightness::Given<Bases> powerBase(reg::Item item) const;
    [[nodiscard]] tightness::Given<Bases> heatValueBase(reg::Item item) const;
    template <class Amount>
    [[nodiscard]] static tightness::Given<Seen<Amount>> based(const tightness::Given<Bases>& bases) {
        if (!bases) {
            return bases.unreadable ? tightness::Given<Seen<Amount>>::unusable()
                                    : tightness::Given<Seen<Amount>>();
        }
        return Seen<Amount>{Amount::fromBase(bases->value), Amount::fromBase(bases->digit)};
    }

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
inline constexpr StageItems kLetBy{reg::Item::LetByStart, reg::Item::LetByEnd, reg::Item::LetByStartedAt,
                                   reg::Item::LetByEndedAt};
inline constexpr StageItems kSettle{reg::Item::SettleStart, reg::Item::SettleEnd, reg::Item::SettleStartedAt,
                                    reg::Item::SettleEndedAt};
inline constexpr StageItems kTight{reg::Item::TightStart, reg::Item::TightEnd, reg::Item::TightStartedAt,
                                   reg::Item::TightEndedAt};
inline constexpr StageItems kRetest{reg::Item::RetestStart, reg::Item::RetestEnd, reg::Item::RetestStartedAt,
                                    reg::Item::RetestEndedAt};
[[nodiscard]] tightness::Stage stageOf(const Readings& readings, const StageItems& items);

/// Register fields.
[[nodiscard]] tightness::Given<quantity::GaugePressure> gaugePressureOf(const quantity::Typed& typed);
[[nodiscard]] tightness::Given<quantity::PressureChange> pressureChangeOf(const quantity::Typed& typed);
[[nodiscard]] tightness::Given<quantity::Volume> volumeOf(const quantity::Typed& typed);
[[nodiscard]] tightness::Given<quantity::Length> lengthOf(const quantity::Typed& typed);

}  // namespace hearth::judging
