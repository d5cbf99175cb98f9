// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/readings.h"

#include "core/judging/typed_numbers.h"
#include "core/quantity/units.h"

#include <algorithm>
#include <string>

namespace hearth::judging {

using quantity::Decimal;
using quantity::Typed;
using quantity::UnitCode;
using quantity::UnitFamily;
using tightness::Given;
using tightness::Reading;

namespace {

/// The unit in which something was typed: the family's own when none was said; nothing for one of another
/// family.
std::optional<UnitCode> unitWithin(UnitFamily family, UnitCode unit) {
    const auto units = quantity::unitsOf(family);
    if (unit == UnitCode::None) {
        return units.front();
    }
    const bool fits = std::find(units.begin(), units.end(), unit) != units.end();
    return fits ? std::optional(unit) : std::nullopt;
}

template <class Amount, class UnitOf>
Given<Amount> amountOf(const Given<Number>& number, UnitOf unitOf) {
    if (!number) {
        return number.unreadable ? Given<Amount>::unusable() : Given<Amount>();
    }
    return Amount(number->value.toDouble(), unitOf(number->unit));
}

/// Seconds since midnight of a canonical "HH:MM" or "HH:MM:SS".
std::optional<int> secondsOfDay(std::string_view text) {
    if (text.size() != 5 && text.size() != 8) {
        return std::nullopt;
    }
    const auto two = [&](std::size_t at) { return (text[at] - '0') * 10 + (text[at + 1] - '0'); };
    return two(0) * 3600 + two(3) * 60 + (text.size() == 8 ? two(6) : 0);
}

}  // namespace

Given<Number> numberOf(std::string_view text, UnitCode typedUnit, UnitFamily family) {
    const auto value = Decimal::parse(text);
    if (!value && value.error().code == ErrorCode::NumberMissing) {
        return {};
    }
    const auto unit = unitWithin(family, typedUnit);
    return value && unit ? Given<Number>(Number{*value, *unit}) : Given<Number>::unusable();
}

Given<Number> numberOf(const reg::Entry* entry, UnitFamily family) {
    if (entry == nullptr) {
        return {};
    }
    const auto typed = numberOf(entry->text, entry->unit, family);
    if (!typed.isEntered()) {
        return {};
    }
    return entry->canonical.empty() ? Given<Number>::unusable()
                                    : numberOf(entry->canonical, entry->unit, family);
}

Readings::Readings(std::span<const reg::Entry> entries, const reg::SubjectRef& subject) {
    m_entries.reserve(entries.size());
    for (const auto& entry : entries) {
        if (entry.subject == subject) {
            m_entries.push_back(&entry);
        }
    }
}

const reg::Entry* Readings::find(reg::Item item) const {
    const auto found = std::find_if(m_entries.begin(), m_entries.end(),
                                    [&](const auto* entry) { return entry->item == item; });
    return found == m_entries.end() ? nullptr : *found;
}

Given<Reading> Readings::pressure(reg::Item item) const {
    const auto number = numberOf(find(item), UnitFamily::Pressure);
    if (!number) {
        return number.unreadable ? Given<Reading>::unusable() : Given<Reading>();
    }
    const auto unit = quantity::pressureUnit(number->unit);
    return Reading{quantity::GaugePressure(number->value.toDouble(), unit),
                   quantity::PressureChange(number->value.lastDigit(), unit)};
}

Given<quantity::Volume> Readings::volume(reg::Item item) const {
    return amountOf<quantity::Volume>(numberOf(find(item), UnitFamily::Volume), quantity::volumeUnit);
}

Given<quantity::TemperatureChange> Readings::temperatureChange(reg::Item item) const {
    return amountOf<quantity::TemperatureChange>(numberOf(find(item), UnitFamily::TemperatureChange),
                                                 quantity::temperatureUnit);
}

Given<quantity::Duration> Readings::between(reg::Item from, reg::Item to) const {
    const auto* first = find(from);
    const auto* last = find(to);
    if (first == nullptr || last == nullptr) {
        return {};
    }
    const auto start = secondsOfDay(first->canonical);
    const auto end = secondsOfDay(last->canonical);
    if (!start || !end) {
        return Given<quantity::Duration>::unusable();
    }
    constexpr int kDay = 24 * 3600;
    const int took = (*end - *start + kDay) % kDay;
    if (took > kDay / 2) {
        return Given<quantity::Duration>::unusable();
    }
    return quantity::Duration(took, quantity::kSecond);
}

std::string_view Readings::code(reg::Item item) const {
    const auto* entry = find(item);
    return entry == nullptr ? std::string_view{} : std::string_view(entry->canonical);
}

std::optional<bool> Readings::yesNo(reg::Item item) const {
    return choice<bool>(item, {{reg::choice::kYes, true}, {reg::choice::kNo, false}});
}

bool Readings::hasText(reg::Item item) const {
    const auto* entry = find(item);
    return entry != nullptr && entry->text.find_first_not_of(" \t\n\r") != std::string::npos;
}

tightness::Stage stageOf(const Readings& readings, const StageItems& items) {
    return {readings.pressure(items.start), readings.pressure(items.end),
            readings.between(items.startedAt, items.endedAt)};
}

Given<quantity::GaugePressure> gaugePressureOf(const Typed& typed) {
    return amountOf<quantity::GaugePressure>(numberOf(typed.text, typed.unit, UnitFamily::Pressure),
                                             quantity::pressureUnit);
}

Given<quantity::PressureChange> pressureChangeOf(const Typed& typed) {
    return amountOf<quantity::PressureChange>(numberOf(typed.text, typed.unit, UnitFamily::Pressure),
                                              quantity::pressureUnit);
}

Given<quantity::Volume> volumeOf(const Typed& typed) {
    return amountOf<quantity::Volume>(numberOf(typed.text, typed.unit, UnitFamily::Volume),
                                      quantity::volumeUnit);
}

Given<quantity::Length> lengthOf(const Typed& typed) {
    return amountOf<quantity::Length>(numberOf(typed.text, typed.unit, UnitFamily::Length),
                                      quantity::lengthUnit);
}

}  // namespace hearth::judging
