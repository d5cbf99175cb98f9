// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/entry_units.h"

#include "core/quantity/units.h"

#include <gtest/gtest.h>

namespace hearth::burner {
namespace {

using quantity::Decimal;
using quantity::UnitCode;

rulebook::Entry entryWith(rulebook::Value value) {
    rulebook::Entry entry;
    entry.value = std::move(value);
    return entry;
}

TEST(EntryUnits, AShareComesOutWhateverItsUnit) {
    const auto percent = entryWith(quantity::Figure{Decimal(2, 0), UnitCode::Percent});
    const auto ppm = entryWith(quantity::Figure{Decimal(20000, 0), UnitCode::Ppm});
    EXPECT_DOUBLE_EQ(shareOf(percent)->in(quantity::kOne), 0.02);
    EXPECT_DOUBLE_EQ(shareOf(ppm)->in(quantity::kOne), 0.02);
    EXPECT_FALSE(shareOf(entryWith({})));
    EXPECT_FALSE(shareOf(entryWith(quantity::Figure{Decimal(2, 0), UnitCode::Millibar})));
}

TEST(EntryUnits, AMeasuredValueIsHeldInTheEntrysUnit) {
    const Measured<quantity::Share> share{{2.5, quantity::kPercent}, {0.1, quantity::kPercent}};
    const auto inPpm = inUnitOf(entryWith(quantity::Figure{Decimal(1, 0), UnitCode::Ppm}), share);
    EXPECT_NEAR(inPpm.value, 25000, 1e-6);
    EXPECT_NEAR(inPpm.u, 1000, 1e-6);
    const auto pressure =
        measuredIn<quantity::PressureChange>(quantity::Uncertain{20, 0.1}, quantity::kMillibar);
    const auto range = entryWith(rulebook::Range{Decimal(1700, 0), Decimal(2500, 0), UnitCode::Pascal});
    EXPECT_NEAR(inUnitOf(range, pressure).value, 2000, 1e-9);
    EXPECT_NEAR(inUnitOf(entryWith({}), pressure).value, 20, 1e-12) << "mbar where the entry has no unit";
}

}  // namespace
}  // namespace hearth::burner
