// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/values.h"

#include <gtest/gtest.h>

namespace hearth::rulebook {
namespace {

using quantity::Decimal;
using quantity::Figure;
using quantity::UnitCode;

Entry with(Value value) {
    Entry entry;
    entry.value = std::move(value);
    return entry;
}

TEST(EntryQuantities, ComeOutWhateverTheUnit) {
    EXPECT_DOUBLE_EQ(
        pressureChangeOf(with(Figure{Decimal(25, 0), UnitCode::Pascal}))->in(quantity::kMillibar), 0.25);
    EXPECT_DOUBLE_EQ(gaugePressureOf(with(Figure{Decimal(2, 0), UnitCode::Bar}))->in(quantity::kMillibar),
                     2000);
    EXPECT_DOUBLE_EQ(durationOf(with(Figure{Decimal(2, 0), UnitCode::Minute}))->in(quantity::kSecond), 120);
    EXPECT_DOUBLE_EQ(volumeOf(with(Figure{Decimal(35, 0), UnitCode::Litre}))->in(quantity::kCubicMetre),
                     0.035);
    EXPECT_DOUBLE_EQ(lengthOf(with(Figure{Decimal(35, 0), UnitCode::Millimetre}))->in(quantity::kMetre),
                     0.035);
    EXPECT_DOUBLE_EQ(
        flowOf(with(Figure{Decimal(16, 0), UnitCode::CubicMetrePerHour}))->in(quantity::kLitrePerHour),
        16000);
    EXPECT_DOUBLE_EQ(
        temperatureChangeOf(with(Figure{Decimal(7, 2), UnitCode::Kelvin}))->in(quantity::kKelvin), 0.07);
    EXPECT_DOUBLE_EQ(*factorOf(with(Figure{Decimal(15, 1), UnitCode::None})), 1.5);
}

TEST(EntryQuantities, AreNothingWhenEmptyOrOfAnotherShape) {
    const Entry empty{};
    EXPECT_FALSE(pressureChangeOf(empty));
    EXPECT_FALSE(pressureRangeOf(empty));
    EXPECT_FALSE(factorOf(empty));
    EXPECT_EQ(bandsOf(empty), nullptr);
    const auto figure = with(Figure{Decimal(1, 0), UnitCode::Millibar});
    EXPECT_FALSE(pressureRangeOf(figure));
}

TEST(PressureRange, HoldsItsEnds) {
    const auto range = pressureRangeOf(with(Range{Decimal(20, 0), Decimal(21, 0), UnitCode::Millibar}));
    ASSERT_TRUE(range);
    const auto at = [&](double millibar) {
        return range->contains(quantity::GaugePressure(millibar, quantity::kMillibar));
    };
    EXPECT_TRUE(at(20.0));
    EXPECT_TRUE(at(20.5));
    EXPECT_TRUE(at(21.0));
    EXPECT_FALSE(at(19.99));
    EXPECT_FALSE(at(21.01));
}

// An empty field that offered metres for a pipe of 35 mm would make the scope a thousand times too wide.
TEST(UsualUnit, IsTheOneInWhichTheBookStatesTheRule) {
    const RuleBook book = RuleBook::shipped();
    int stated = 0;
    for (const Entry& entry : book.entries()) {
        if (const auto figure = figureOf(entry)) {
            EXPECT_EQ(figure->unit, usualUnitOf(entry.key.rule)) << ruleText(entry.key.rule);
            ++stated;
        } else if (const auto range = rangeOf(entry)) {
            EXPECT_EQ(range->unit, usualUnitOf(entry.key.rule)) << ruleText(entry.key.rule);
            ++stated;
        }
    }
    EXPECT_GT(stated, 40);
}

TEST(Bands, BoundBelongsToItsBand) {
    const std::vector<Band> bands{{Decimal(1, 2), Decimal(4, 0)}, {Decimal(35, 3), Decimal(1, 0)}};
    const auto of = [&](double cubicMetres) {
        return bandFor(bands, quantity::Volume(cubicMetres, quantity::kCubicMetre));
    };
    EXPECT_EQ(of(0.004), &bands[0]);
    EXPECT_EQ(of(0.01), &bands[0]);
    EXPECT_EQ(of(0.0101), &bands[1]);
    EXPECT_EQ(of(0.035), &bands[1]);
    EXPECT_EQ(of(0.036), nullptr);
    EXPECT_DOUBLE_EQ(allowedBy(bands[0]).in(quantity::kMillibar), 4.0);
}

}  // namespace
}  // namespace hearth::rulebook
