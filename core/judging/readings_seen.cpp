// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/readings.h"
#include "core/judging/typed_numbers.h"
#include "core/quantity/units.h"

namespace hearth::judging {

using quantity::UnitCode;
using quantity::UnitFamily;
using tightness::Given;

namespace {

template <class Amount, class UnitOf>
Given<Seen<Amount>> seenOf(const Given<Number>& number, UnitOf unitOf) {
    if (!number) {
        return number.unreadable ? Given<Seen<Amount>>::unusable() : Given<Seen<Amount>>();
    }
    const auto unit = unitOf(number->unit);
    return Seen<Amount>{Amount(number->value.toDouble(), unit), Amount(number->value.lastDigit(), unit)};
}

/// CO at 20 degrees C and 1013.25 mbar: 28.010 g/mol in 24.055 l/mol. Source: ideal gas, ISO 6976's molar
/// mass; the workplace limits are stated at 20 degrees C.
constexpr double kMilligramsPerPpm = 28.010 / 24.0553;

}  // namespace

Given<Seen<quantity::Volume>> Readings::volumeSeen(reg::Item item) const {
    return seenOf<quantity::Volume>(numberOf(find(item), UnitFamily::Volume), quantity::volumeUnit);
}
Given<Seen<quantity::Length>> Readings::length(reg::Item item) const {
    return seenOf<quantity::Length>(numberOf(find(item), UnitFamily::Length), quantity::lengthUnit);
}
Given<Seen<quantity::Duration>> Readings::duration(reg::Item item) const {
    return seenOf<quantity::Duration>(numberOf(find(item), reg::infoOf(item).units), quantity::timeUnit);
}
Given<Seen<quantity::Flow>> Readings::flow(reg::Item item) const {
    return seenOf<quantity::Flow>(numberOf(find(item), UnitFamily::Flow), quantity::flowUnit);
}
Given<Seen<quantity::Area>> Readings::area(reg::Item item) const {
    return seenOf<quantity::Area>(numberOf(find(item), UnitFamily::Area), quantity::areaUnit);
}

Given<Seen<quantity::Share>> Readings::share(reg::Item item) const {
    const auto number = numberOf(find(item), reg::infoOf(item).units);
    if (number && number->unit == UnitCode::MilligramPerCubicMetre) {
        return Given<Seen<quantity::Share>>::unusable();
    }
    return seenOf<quantity::Share>(number, quantity::shareUnit);
}

Given<Seen<quantity::Share>> Readings::trace(reg::Item item) const {
    const auto number = numberOf(find(item), reg::infoOf(item).units);
    if (!number || number->unit != UnitCode::MilligramPerCubicMetre) {
        return share(item);
    }
    return Seen<quantity::Share>{{number->value.toDouble() / kMilligramsPerPpm, quantity::kPpm},
                                 {number->value.lastDigit() / kMilligramsPerPpm, quantity::kPpm}};
}

Given<Seen<quantity::Temperature, quantity::TemperatureChange>> Readings::temperature(reg::Item item) const {
    using Result = Given<Seen<quantity::Temperature, quantity::TemperatureChange>>;
    const auto number = numberOf(find(item), UnitFamily::Temperature);
    if (!number) {
        return number.unreadable ? Result::unusable() : Result();
    }
    const auto unit = quantity::temperatureUnit(number->unit);
    return Seen<quantity::Temperature, quantity::TemperatureChange>{
        quantity::Temperature(number->value.toDouble(), unit),
        quantity::TemperatureChange(number->value.lastDigit(), unit)};
}

Given<Readings::Bases> Readings::powerBase(reg::Item item) const {
    const auto number = numberOf(find(item), UnitFamily::Power);
    if (!number) {
        return number.unreadable ? Given<Bases>::unusable() : Given<Bases>();
    }
    const double factor = quantity::powerUnit(number->unit).factor;
    return Bases{number->value.toDouble() * factor, number->value.lastDigit() * factor};
}

Given<Readings::Bases> Readings::heatValueBase(reg::Item item) const {
    const auto number = numberOf(find(item), UnitFamily::HeatValue);
    if (!number) {
        return number.unreadable ? Given<Bases>::unusable() : Given<Bases>();
    }
    const double factor = quantity::heatValueUnit(number->unit).factor;
    return Bases{number->value.toDouble() * factor, number->value.lastDigit() * factor};
}

Given<quantity::Decimal> Readings::number(reg::Item item) const {
    const auto number = numberOf(find(item), UnitFamily::None);
    if (!number) {
        return number.unreadable ? Given<quantity::Decimal>::unusable() : Given<quantity::Decimal>();
    }
    return number->value;
}

Given<int> Readings::count(reg::Item item) const {
    const auto value = number(item);
    if (!value) {
        return value.unreadable ? Given<int>::unusable() : Given<int>();
    }
    constexpr std::int64_t kMost = 100000;
    if (value->decimals() != 0 || value->mantissa() < 0 || value->mantissa() > kMost) {
        return Given<int>::unusable();
    }
    return static_cast<int>(value->mantissa());
}

Given<calendar::Date> Readings::date(reg::Item item) const {
    const auto* entry = find(item);
    if (entry == nullptr) {
        return {};
    }
    const auto day = calendar::fromIso(entry->canonical);
    return day ? Given<calendar::Date>(*day) : Given<calendar::Date>::unusable();
}

std::string_view Readings::text(reg::Item item) const {
    const auto* entry = find(item);
    return entry == nullptr ? std::string_view{} : std::string_view(entry->text);
}

std::optional<quantity::Figure> Readings::figure(reg::Item item) const {
    const auto number = numberOf(find(item), reg::infoOf(item).units);
    if (!number) {
        return std::nullopt;
    }
    return quantity::Figure{number->value, number->unit};
}

}  // namespace hearth::judging
