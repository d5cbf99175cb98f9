// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/judging/asking.h"

#include <initializer_list>
#include <optional>

/// What keeps a finding from being concluded although its readings are there.
namespace hearth::judging {

[[nodiscard]] bool isGasSaid(const Asking& asking);
/// A finding by figures of the gas. While none has been said they are natural gas's: it neither passes nor
/// fails by them.
[[nodiscard]] rulebook::Finding byTheGas(const Asking& asking, rulebook::Finding finding);

/// A number that was typed and can't be read, or one below nought where there is no such thing.
[[nodiscard]] bool isUnclear(const Readings& readings, reg::Item item);

/// Two ends of a maker's range as typed. `isUnclear`: something is there, and it is no range: one end is
/// missing, unreadable or in another unit, or the least is above the most.
struct TypedRange {
    std::optional<rulebook::Range> range;
    bool isUnclear = false;
};
[[nodiscard]] TypedRange rangeTyped(const Readings& readings, reg::Item least, reg::Item most);

/// A finding that was to rest on a maker's figure, where what was typed is none: the rule book's limit, which
/// may be laxer, does not stand in for it. A failure stays.
[[nodiscard]] rulebook::Finding withoutMakers(rulebook::Finding finding);

/// Says of each of these that was typed and can't be used that it was not taken, beside what was judged
/// without it.
void sayUnclear(Asking& asking, rulebook::FindingKind kind, std::initializer_list<reg::Item> items);

}  // namespace hearth::judging
