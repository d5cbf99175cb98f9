// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/firm_value.h"

#include "core/rulebook/rule_book.h"

#include <gtest/gtest.h>

namespace hearth::rulebook {
namespace {

using quantity::Decimal;
using quantity::Figure;
using quantity::UnitCode;

struct FaultCase {
    const char* name;
    Rule rule;
    Value value;
    std::optional<std::string_view> fault;
};

TEST(FirmValue, IsTakenOrRefusedWithTheReason) {
    const Figure millibar{Decimal(2, 1), UnitCode::Millibar};
    const FaultCase cases[] = {
        {"fits", Rule::NoMovementElectronic, millibar, std::nullopt},
        {"another unit of the family",
         Rule::NoMovementElectronic,
         Figure{Decimal(20, 0), UnitCode::Pascal},
         {}},
        {"nothing", Rule::NoMovementElectronic, std::monostate{}, "missing"},
        {"wrong unit", Rule::NoMovementElectronic, Figure{Decimal(2, 1), UnitCode::Second}, "unit"},
        {"a factor has none", Rule::PurgeVolumeFactor, millibar, "unit"},
        {"nought", Rule::DropShortCut, Figure{Decimal(0, 0), UnitCode::Millibar}, "not_positive"},
        {"negative", Rule::DropShortCut, Figure{Decimal(-1, 0), UnitCode::Millibar}, "not_positive"},
        {"no fittings", Rule::FittingsShare, Figure{Decimal(0, 0), UnitCode::None}, std::nullopt},
        {"range for figure", Rule::TestTime, Range{{}, {}, UnitCode::Second}, "shape"},
        {"figure for range", Rule::TestPressure, millibar, "shape"},
        {"figure for bands", Rule::DropByVolume, millibar, "shape"},
        {"range", Rule::TestPressure, Range{Decimal(20, 0), Decimal(21, 0), UnitCode::Millibar},
         std::nullopt},
        {"reversed", Rule::TestPressure, Range{Decimal(21, 0), Decimal(20, 0), UnitCode::Millibar},
         "range_reversed"},
        {"range's unit", Rule::TestPressure, Range{Decimal(1, 0), Decimal(2, 0), UnitCode::Litre}, "unit"},
        {"bands", Rule::DropByVolume, std::vector<Band>{{Decimal(1, 2), Decimal(4, 0)}}, std::nullopt},
        {"no bands", Rule::DropByVolume, std::vector<Band>{}, "no_bands"},
        {"bands with a slip", Rule::DropByVolume,
         std::vector<Band>{{Decimal(2, 2), Decimal(2, 0)}, {Decimal(1, 2), Decimal(1, 0)}},
         "volume_not_rising"},
        {"bands with a mere doubt", Rule::DropByVolume,
         std::vector<Band>{{Decimal(1, 2), Decimal(4, 0)}, {Decimal(9, 1), Decimal(4, 0)}}, std::nullopt},
    };
    for (const auto& c : cases) {
        EXPECT_EQ(faultOf(c.rule, c.value), c.fault) << c.name;
    }
}

TEST(FirmValue, EveryShippedValueWouldBeTakenAgain) {
    const auto book = RuleBook::shipped();
    for (const auto& entry : book.entries()) {
        if (entry.isKnown()) {
            EXPECT_EQ(faultOf(entry.key.rule, entry.value), std::nullopt) << ruleText(entry.key.rule);
        }
    }
}

}  // namespace
}  // namespace hearth::rulebook
