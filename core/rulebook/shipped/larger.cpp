// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/shipped/table.h"

#include <array>

namespace hearth::rulebook::shipped {

namespace {

using quantity::UnitCode;

constexpr std::string_view kLargerUp1a = "IGE/UP/1A Edition 2 +A:2005";
constexpr std::string_view kLargerUp1 = "IGE/UP/1 Edition 2 +A:2005";
constexpr std::string_view kLargerUp1Family = "IGE/UP/1 Edition 2 +A:2005 and IGE/UP/1A Edition 2 +A:2005";
constexpr std::string_view kLargerUp1Pages = "Institution's own pages on IGE/UP/1 and IGE/UP/1A";
constexpr std::string_view kLargerFirmPolicy =
    "A maintenance firm's policy page on strength, tightness and purging to IGE/UP/1A Edition 2";
constexpr std::string_view kLargerRecalled = "recalled from IGE/UP/1, not read";

constexpr Origin kLargerUp1aScope{
    Provenance::Published, kLargerUp1a, kLargerUp1Pages,
    "Natural gas only. A draft of Edition 3 (2013) says maximum operating pressure to 60 mbar and other "
    "gases; "
    "no published Edition 3 was found."};
constexpr Origin kLargerUp1aPipe{Provenance::Memory, kLargerUp1a, "recalled from IGE/UP/1A, not read", "The pages that were read do not give it."};
constexpr Origin kLargerUp1Scope{Provenance::Published, kLargerUp1, kLargerUp1Pages};
constexpr Origin kLargerReadable{
    Provenance::Secondary, kLargerUp1, "Trade-forum extract of a handbook's table after IGE/UP/1",
    "This is what can be read on the gauge in the larger standards' sense; the small-installation standard's "
    "no perceptible movement is another figure."};
constexpr Origin kLargerTimeRule{Provenance::Memory, kLargerUp1Family, kLargerRecalled,
                                 "Rounded up to whole minutes, never under 2."};
constexpr Origin kLargerTimeGas{
    Provenance::Memory, kLargerUp1, kLargerRecalled,
    "Agrees with the recalled permitted leak: 0.059 / 0.0014 is 42 for natural gas."};
constexpr Origin kLargerTimeAir{Provenance::Memory, kLargerUp1, kLargerRecalled,
                                "Its ratio to the fuel gas's factor is near that of the viscosities."};
constexpr Origin kLargerRoomFactor{
    Provenance::Memory, kLargerUp1, kLargerRecalled,
    "Fits the recalled permitted leaks (0.0014 / 0.0005 is 2.8); the limits of its "
    "use were not read."};
constexpr Origin kLargerLargeRoomFactor{
    Provenance::Memory, kLargerUp1, kLargerRecalled,
    "Fits the recalled permitted leaks (0.0014 / 0.03 is 0.047); the limits of "
    "its use were not read."};
constexpr Origin kLargerLeakGas{
    Provenance::Memory, kLargerUp1,
    "recalled from IGE/UP/1; that one value serves all gases stands in a trade-forum extract",
    "The textbook's 60 / 1013.25 is 0.0592."};
constexpr Origin kLargerLeakAir{Provenance::Memory, kLargerUp1, kLargerRecalled,
                                "0.059 times the ratio of air's flow to the gas's."};
constexpr Origin kLargerLeakNew{Provenance::Memory, kLargerUp1Family, kLargerRecalled,
                                "Agrees with the time factor 42."};
constexpr Origin kLargerLeakA{
    Provenance::Memory, kLargerUp1Family, kLargerRecalled,
    "With no smell of gas. IGE/UP/1A has a table of its own for existing pipework that "
    "was not read."};
constexpr Origin kLargerLeakB{
    Provenance::Memory, kLargerUp1Family,
    "recalled from IGE/UP/1; an uncited question-and-answer page has the same figure",
    "Up to which room volume it may be used was not read; the figure for a large room "
    "caps it, since the stricter decides."};
constexpr Origin kLargerLeakC{Provenance::Memory, kLargerUp1Family, kLargerRecalled,
                              "Which places count as a large room is remembered too faintly to be given."};
constexpr Origin kLargerLetByShare{Provenance::Memory, kLargerUp1Family, kLargerRecalled,
                                   "About half; no band is known."};
constexpr Origin kLargerTestShare{Provenance::Secondary, kLargerUp1a, kLargerFirmPolicy,
                                  "The operating pressure itself."};
constexpr Origin kLargerIncidental{Provenance::Secondary, kLargerUp1a, kLargerFirmPolicy,
                                   "IGE/UP/1 is recalled with the same factor."};
constexpr Origin kLargerOperatingLow{
    Provenance::Memory, kLargerUp1, kLargerRecalled,
    "IGE/UP/1: greater of 2.5 times the operating and 1.1 times the incidental pressure (from memory); the "
    "policy page on IGE/UP/1A has the second alone. The stricter, the greater of both, decides for both."};
constexpr Origin kLargerStrengthTimes{Provenance::Memory, kLargerUp1, kLargerRecalled, "To 100 mbar."};
constexpr Origin kLargerStrengthFall{
    Provenance::Secondary, kLargerUp1a, kLargerFirmPolicy,
    "The policy page on IGE/UP/1A allows no fall; memory of IGE/UP/1 allows 20 % of the test pressure. The "
    "stricter decides."};

struct LargerGaugeRow {
    Rule readable;
    Rule longest;
    std::int64_t mantissa;
    int decimals;
};

constexpr std::array kLargerGaugeRows{
    LargerGaugeRow{Rule::ReadableWater, Rule::LongestWater, 5, 1},
    LargerGaugeRow{Rule::ReadableDense, Rule::LongestDense, 1, 0},
    LargerGaugeRow{Rule::ReadableMercury, Rule::LongestMercury, 7, 0},
    LargerGaugeRow{Rule::ReadableOneDecimal, Rule::LongestOneDecimal, 5, 1},
    LargerGaugeRow{Rule::ReadableTwoDecimals, Rule::LongestTwoDecimals, 1, 1},
    LargerGaugeRow{Rule::ReadableOneDecimalWide, Rule::LongestOneDecimalWide, 5, 1},
    LargerGaugeRow{Rule::ReadableNoDecimal, Rule::LongestNoDecimal, 5, 0},
};

Entry largerEmpty(RuleKey key, Comparison comparison, std::string_view standard, std::string_view doubt) {
    return entry(key, std::monostate{}, comparison,
                 {Provenance::Memory, standard, "not read anywhere", doubt});
}

Value largerFactor(std::int64_t mantissa, int decimals) {
    return number(mantissa, decimals, UnitCode::None);
}

void addLargerScopes(std::vector<Entry>& entries) {
    const auto gas = Gas::NaturalGas;
    const auto most = Comparison::AtMost;
    entries.push_back(entry({Rule::Up1aVolume, Edition::General, gas}, number(1, 0, UnitCode::CubicMetre),
                            most, kLargerUp1aScope));
    entries.push_back(entry({Rule::Up1aPipe, Edition::General, gas}, number(150, 0, UnitCode::Millimetre),
                            most, kLargerUp1aPipe));
    entries.push_back(entry({Rule::Up1aOperatingPressure, Edition::General, gas},
                            number(40, 0, UnitCode::Millibar), most, kLargerUp1aScope));
    entries.push_back(entry({Rule::Up1SupplyPressure}, number(16, 0, UnitCode::Bar), most, kLargerUp1Scope));
}

void addLargerGauges(std::vector<Entry>& entries) {
    for (const auto& row : kLargerGaugeRows) {
        entries.push_back(entry({row.readable}, number(row.mantissa, row.decimals, UnitCode::Millibar),
                                Comparison::AsGiven, kLargerReadable));
    }
    for (const auto& row : kLargerGaugeRows) {
        entries.push_back(
            largerEmpty({row.longest}, Comparison::AtMost, kLargerUp1,
                        "The standard has a longest test for each gauge (beyond it the installation "
                        "is to be split); the minutes are remembered too faintly to be given."));
    }
}

void addLargerFactors(std::vector<Entry>& entries) {
    const auto given = Comparison::AsGiven;
    entries.push_back(
        entry({Rule::LargerLeastTime}, number(2, 0, UnitCode::Minute), Comparison::AtLeast, kLargerTimeRule));
    struct GasRow {
        Gas gas;
        std::int64_t onGas;
        std::int64_t onAir;
    };
    for (const auto& row :
         {GasRow{Gas::NaturalGas, 42, 67}, GasRow{Gas::Propane, 102, 221}, GasRow{Gas::Butane, 128, 305}}) {
        entries.push_back(entry({Rule::TimeFactorGas, Edition::General, row.gas}, largerFactor(row.onGas, 0),
                                given, kLargerTimeGas));
        entries.push_back(entry({Rule::TimeFactorAir, Edition::General, row.gas}, largerFactor(row.onAir, 0),
                                given, kLargerTimeAir));
    }
    for (const auto rule : {Rule::TimeFactorGas, Rule::TimeFactorAir}) {
        entries.push_back(largerEmpty({rule, Edition::General, Gas::LpgAir}, given, kLargerUp1,
                                      "No firm source gives the factor for LPG/air mixtures."));
    }
    entries.push_back(entry({Rule::TimeFactorRoom}, largerFactor(28, 1), given, kLargerRoomFactor));
    entries.push_back(entry({Rule::TimeFactorLargeRoom}, largerFactor(47, 3), given, kLargerLargeRoomFactor));
    entries.push_back(entry({Rule::LeakFactorGas}, largerFactor(59, 3), given, kLargerLeakGas));
    entries.push_back(entry({Rule::LeakFactorAir, Edition::General, Gas::NaturalGas}, largerFactor(94, 3),
                            given, kLargerLeakAir));
    for (const auto gas : {Gas::Propane, Gas::Butane, Gas::LpgAir}) {
        entries.push_back(largerEmpty({Rule::LeakFactorAir, Edition::General, gas}, given, kLargerUp1,
                                      "Only natural gas's factor on air is remembered."));
    }
}

void addLargerLeaks(std::vector<Entry>& entries) {
    const auto most = Comparison::AtMost;
    const auto gas = Gas::NaturalGas;
    const auto any = Edition::General;
    const auto flow = UnitCode::CubicMetrePerHour;
    entries.push_back(entry({Rule::LeakNew, any, gas}, number(14, 4, flow), most, kLargerLeakNew));
    entries.push_back(entry({Rule::LeakTypeA, any, gas}, number(14, 4, flow), most, kLargerLeakA));
    entries.push_back(entry({Rule::LeakTypeB, any, gas}, largerFactor(5, 4), most, kLargerLeakB));
    entries.push_back(entry({Rule::LeakTypeC, any, gas}, number(3, 2, flow), most, kLargerLeakC));
    for (const auto lpg : {Gas::Propane, Gas::Butane, Gas::LpgAir}) {
        for (const auto rule : {Rule::LeakNew, Rule::LeakTypeA, Rule::LeakTypeB, Rule::LeakTypeC}) {
            entries.push_back(largerEmpty({rule, any, lpg}, most, kLargerUp1,
                                          "For LPG no permitted leak has been read; arithmetic on the time "
                                          "factors is no limit."));
        }
    }
    entries.push_back(largerEmpty({Rule::LargeRoomLeast}, Comparison::AtLeast, kLargerUp1,
                                  "Which rooms count as large is remembered too faintly to be given (about "
                                  "60 m3 would fit 0.03 m3/h)."));
    for (const auto rule : {Rule::LeakOutside, Rule::LeakBuried}) {
        entries.push_back(largerEmpty({rule}, most, kLargerUp1,
                                      "For existing pipework in the open or buried no source was found."));
    }
}

void addLargerConduct(std::vector<Entry>& entries) {
    entries.push_back(
        entry({Rule::LargerLetByShare}, largerFactor(5, 1), Comparison::AsGiven, kLargerLetByShare));
    entries.push_back(largerEmpty({Rule::LargerLetByTime}, Comparison::AtLeast, kLargerUp1Family,
                                  "Goes by the time of the test; the rule itself was not read."));
    entries.push_back(largerEmpty({Rule::LargerSettleTime}, Comparison::AtLeast, kLargerUp1Family,
                                  "No source gives the settling time."));
    entries.push_back(
        entry({Rule::LargerTestShare}, largerFactor(10, 1), Comparison::AtLeast, kLargerTestShare));
}

void addLargerStrength(std::vector<Entry>& entries) {
    const auto least = Comparison::AtLeast;
    constexpr std::string_view kHigher =
        "Above 100 mbar the bands, factors, times and falls are remembered too faintly to be given.";
    entries.push_back(entry({Rule::StrengthIncidental}, largerFactor(11, 1), least, kLargerIncidental));
    entries.push_back(entry({Rule::StrengthLowBand}, number(100, 0, UnitCode::Millibar), Comparison::AtMost,
                            kLargerOperatingLow));
    entries.push_back(largerEmpty({Rule::StrengthMiddleBand}, Comparison::AtMost, kLargerUp1, kHigher));
    entries.push_back(entry({Rule::StrengthOperatingLow}, largerFactor(25, 1), least, kLargerOperatingLow));
    entries.push_back(
        entry({Rule::StrengthSettleLow}, number(5, 0, UnitCode::Minute), least, kLargerStrengthTimes));
    entries.push_back(
        entry({Rule::StrengthHoldLow}, number(5, 0, UnitCode::Minute), least, kLargerStrengthTimes));
    entries.push_back(
        entry({Rule::StrengthFallLow}, largerFactor(0, 0), Comparison::AtMost, kLargerStrengthFall));
    for (const auto rule :
         {Rule::StrengthOperatingMiddle, Rule::StrengthOperatingHigh, Rule::StrengthSettleMiddle,
          Rule::StrengthSettleHigh, Rule::StrengthHoldMiddle, Rule::StrengthHoldHigh}) {
        entries.push_back(largerEmpty({rule}, least, kLargerUp1, kHigher));
    }
    for (const auto rule : {Rule::StrengthFallMiddle, Rule::StrengthFallHigh}) {
        entries.push_back(largerEmpty({rule}, Comparison::AtMost, kLargerUp1, kHigher));
    }
}

}  // namespace

void addLarger(std::vector<Entry>& entries) {
    addLargerScopes(entries);
    addLargerGauges(entries);
    addLargerFactors(entries);
    addLargerLeaks(entries);
    addLargerConduct(entries);
    addLargerStrength(entries);
}

}  // namespace hearth::rulebook::shipped
