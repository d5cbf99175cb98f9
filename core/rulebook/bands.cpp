// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/code_table.h"
#include "core/rulebook/rule_book.h"

#include <algorithm>
#include <array>

namespace hearth::rulebook {

namespace {

constexpr auto kSlips = std::to_array<Code<BandSlip>>({
    {BandSlip::NoBands, "no_bands"},
    {BandSlip::VolumeNotRising, "volume_not_rising"},
    {BandSlip::DropNotShrinking, "drop_not_shrinking"},
    {BandSlip::NotPositive, "not_positive"},
    {BandSlip::LeakRateOutOfOrder, "leak_rate_out_of_order"},
});
static_assert(inOrder(kSlips));

/// How far a band's leak rate may lie from the middle one before it is doubted.
constexpr double kSameOrder = 3.0;

/// Volume times drop over one and the same time: in proportion to the leak that the band lets by.
double impliedLeak(const Band& band) {
    return band.upTo.toDouble() * band.allowed.toDouble();
}

double middleLeak(std::span<const Band> bands) {
    std::vector<double> leaks(bands.size());
    std::transform(bands.begin(), bands.end(), leaks.begin(), impliedLeak);
    const auto middle = leaks.begin() + static_cast<std::ptrdiff_t>(leaks.size() / 2);
    std::nth_element(leaks.begin(), middle, leaks.end());
    return *middle;
}

bool isPositive(const Band& band) {
    return band.upTo.mantissa() > 0 && band.allowed.mantissa() > 0;
}

}  // namespace

std::string_view slipText(BandSlip slip) {
    return textIn(kSlips, slip);
}

std::vector<BandDoubt> checkBands(std::span<const Band> bands) {
    if (bands.empty()) {
        return {{BandSlip::NoBands, 0}};
    }
    std::vector<BandDoubt> doubts;
    const double middle = middleLeak(bands);
    for (std::size_t i = 0; i < bands.size(); ++i) {
        if (!isPositive(bands[i])) {
            doubts.push_back({BandSlip::NotPositive, i});
            continue;
        }
        if (i > 0 && bands[i].upTo <= bands[i - 1].upTo) {
            doubts.push_back({BandSlip::VolumeNotRising, i});
        }
        if (i > 0 && bands[i].allowed > bands[i - 1].allowed) {
            doubts.push_back({BandSlip::DropNotShrinking, i});
        }
        const double leak = impliedLeak(bands[i]);
        if (leak > middle * kSameOrder || leak * kSameOrder < middle) {
            doubts.push_back({BandSlip::LeakRateOutOfOrder, i});
        }
    }
    return doubts;
}

}  // namespace hearth::rulebook
