// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/answer.h"
#include "core/rulebook/conclude.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <map>
#include <string>

namespace hearth::judging {
namespace {

using quantity::UnitCode;
using reg::Item;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Rule;
using rulebook::Say;
namespace choice = reg::choice;

struct TypedLarger {
    std::string text;
    UnitCode unit = UnitCode::None;
};
using LargerSheet = std::map<Item, TypedLarger>;

TypedLarger chosenLarger(std::string_view code) {
    return {std::string(code)};
}

/// 0.3 m3 of existing pipework to 80 mm in an area of type A, on a display of one decimal, at 21 mbar.
LargerSheet hall() {
    const auto mbar = UnitCode::Millibar;
    return {{Item::GasFamily, chosenLarger(choice::kNaturalGas)},
            {Item::PurgeVolumeKnown, {"0.3", UnitCode::CubicMetre}},
            {Item::PurgePipe, {"80", UnitCode::Millimetre}},
            {Item::PurgeMeter, {"u40_g25"}},
            {Item::LargerOperatingPressure, {"21", mbar}},
            {Item::LargerSupplyPressure, {"75", mbar}},
            {Item::LargerWork, chosenLarger(choice::kExisting)},
            {Item::LargerArea, chosenLarger(choice::kAreaA)},
            {Item::LargerGauge, chosenLarger(choice::kElectronic1)},
            {Item::LargerMedium, chosenLarger(choice::kFuelGas)},
            {Item::LargerLetByStart, {"10.5", mbar}},
            {Item::LargerLetByEnd, {"10.5", mbar}},
            {Item::LargerLetByTook, {"10", UnitCode::Minute}},
            {Item::LargerSettleStart, {"21.0", mbar}},
            {Item::LargerSettleEnd, {"21.0", mbar}},
            {Item::LargerSettleTook, {"10", UnitCode::Minute}},
            {Item::LargerStart, {"21.0", mbar}},
            {Item::LargerEnd, {"21.0", mbar}},
            {Item::LargerTook, {"7", UnitCode::Minute}},
            {Item::LargerSmell, chosenLarger(choice::kNo)}};
}

void addStrength(LargerSheet& sheet) {
    sheet[Item::StrengthMostOperating] = {"21", UnitCode::Millibar};
    sheet[Item::LargerIncidentalPressure] = {"75", UnitCode::Millibar};
    sheet[Item::StrengthMedium] = chosenLarger(choice::kAirOrNitrogen);
    sheet[Item::StrengthGauge] = chosenLarger(choice::kElectronic1);
    sheet[Item::StrengthPartsOff] = chosenLarger(choice::kYes);
    sheet[Item::StrengthSettled] = {"5", UnitCode::Minute};
    sheet[Item::StrengthStart] = {"85.0", UnitCode::Millibar};
    sheet[Item::StrengthEnd] = {"85.0", UnitCode::Millibar};
    sheet[Item::StrengthTook] = {"5", UnitCode::Minute};
}

/// Everything confirmed by the firm; what was not read is invented and of no standard.
rulebook::RuleBook confirmedLarger() {
    const auto shipped = rulebook::RuleBook::shipped();
    std::vector<rulebook::Entry> entries(shipped.entries().begin(), shipped.entries().end());
    for (auto& entry : entries) {
        const auto rule = entry.key.rule;
        if (rule == Rule::LargerLetByTime || rule == Rule::LargerSettleTime ||
            rule == Rule::LongestOneDecimal) {
            entry.value = quantity::Figure{quantity::Decimal(10, 0), UnitCode::Minute};
        }
        if (entry.isKnown()) {
            entry.provenance = rulebook::Provenance::Firm;
        }
    }
    return rulebook::RuleBook(std::move(entries));
}

Answer askedLarger(const LargerSheet& typed, const rulebook::RuleBook& book, const char* on = "2026-11-25") {
    Worksheet sheet(Question::Larger, calendar::fromIso(on).value());
    for (const auto& [item, text] : typed) {
        sheet.put(Group::Once, 0, item, text.text, text.unit);
    }
    return answer(sheet, book);
}

const rulebook::Finding* largerFinding(const Answer& found, FindingKind kind) {
    const auto at = std::find_if(found.findings.begin(), found.findings.end(),
                                 [&](const Judged& judged) { return judged.finding.kind == kind; });
    return at == found.findings.end() ? nullptr : &at->finding;
}

std::string largerFigure(const Answer& found, Derived what) {
    const auto at = std::find_if(found.figures.begin(), found.figures.end(),
                                 [&](const Worked& worked) { return worked.what == what; });
    return at == found.figures.end() ? std::string() : show(at->figure);
}

Outcome largerOutcome(const Answer& found, FindingKind kind = FindingKind::Tightness) {
    const auto* finding = largerFinding(found, kind);
    return finding == nullptr ? Outcome::NoVerdict : finding->outcome;
}

// Time by the factor 42 of IGE/UP/1 (from memory): 0.5 * 0.3 * 42 is 6.3 min, so 7.
TEST(AnswerLarger, PassesOnceTheFirmHasConfirmedEverything) {
    const auto book = confirmedLarger();
    const auto found = askedLarger(hall(), book);
    EXPECT_EQ(largerOutcome(found), Outcome::Pass);
    EXPECT_EQ(largerFigure(found, Derived::TestTimeNeeded), "7\u00A0min");
    EXPECT_EQ(largerFigure(found, Derived::LargerLeak), "0.00\u00A0l/h");
    EXPECT_EQ(largerFinding(found, FindingKind::Strength), nullptr) << "existing, and none was made";
    for (const auto kind : {FindingKind::PermittedLeak, FindingKind::TestTime, FindingKind::LongestTest,
                            FindingKind::TestPressure, FindingKind::LetBy, FindingKind::Settling,
                            FindingKind::ReadableMovement}) {
        EXPECT_EQ(largerOutcome(found, kind), Outcome::Pass) << rulebook::kindText(kind);
    }
}

TEST(AnswerLarger, ByTheShippedBookAsksForWhatWasNotRead) {
    const auto found = askedLarger(hall(), rulebook::RuleBook::shipped());
    EXPECT_EQ(largerOutcome(found), Outcome::NoVerdict);
    EXPECT_EQ(largerOutcome(found, FindingKind::PermittedLeak), Outcome::LookAgain);
    EXPECT_EQ(largerOutcome(found, FindingKind::ReadableMovement), Outcome::LookAgain);
    EXPECT_EQ(largerFinding(found, FindingKind::LetBy)->why.say, Say::LimitMissing);
    EXPECT_EQ(largerFinding(found, FindingKind::LongestTest)->why.say, Say::LongestUnknown);
    EXPECT_EQ(largerFigure(found, Derived::TestTimeNeeded), "7\u00A0min") << "told all the same";
}

struct LargerChange {
    const char* name;
    Item item;
    TypedLarger typed;
    Outcome outcome;
};

// 0.059 * 0.8 * 0.3 / 7 m3/h is 2.0 l/h of the 1.4 permitted (IGE/UP/1, from memory).
TEST(AnswerLarger, OneThingWrongOrMissing) {
    const auto mbar = UnitCode::Millibar;
    const LargerChange changes[] = {
        {"smell", Item::LargerSmell, chosenLarger(choice::kYes), Outcome::Fail},
        {"smell not said", Item::LargerSmell, {}, Outcome::NoVerdict},
        {"a fall", Item::LargerEnd, {"20.2", mbar}, Outcome::Fail},
        {"a fall near the limit", Item::LargerEnd, {"20.5", mbar}, Outcome::LookAgain},
        {"too short", Item::LargerTook, {"6.9", UnitCode::Minute}, Outcome::NoVerdict},
        {"volume unreadable", Item::PurgeVolumeKnown, {"0,3,0"}, Outcome::NoVerdict},
        {"gauge not said", Item::LargerGauge, {}, Outcome::NoVerdict},
        {"a gauge that the table lacks", Item::LargerGauge, chosenLarger(choice::kOther), Outcome::NoVerdict},
        {"on air it takes 11 min", Item::LargerMedium, chosenLarger(choice::kAirOrNitrogen),
         Outcome::NoVerdict},
        {"in the open", Item::LargerArea, chosenLarger(choice::kOutdoors), Outcome::NoVerdict},
        {"buried", Item::LargerArea, chosenLarger(choice::kBuried), Outcome::NoVerdict},
        {"a room without its size", Item::LargerArea, chosenLarger(choice::kAreaB), Outcome::NoVerdict},
        {"propane", Item::GasFamily, chosenLarger(choice::kPropane), Outcome::NoVerdict},
        {"let-by not read", Item::LargerLetByEnd, {}, Outcome::NoVerdict},
        {"settling not read", Item::LargerSettleTook, {}, Outcome::NoVerdict},
    };
    const auto book = confirmedLarger();
    for (const auto& change : changes) {
        auto sheet = hall();
        sheet[change.item] = change.typed;
        EXPECT_EQ(largerOutcome(askedLarger(sheet, book)), change.outcome) << change.name;
    }
}

TEST(AnswerLarger, TakesTheRoomIntoAccount) {
    auto sheet = hall();
    sheet[Item::LargerArea] = chosenLarger(choice::kAreaB);
    sheet[Item::LargerRoomVolume] = {"20", UnitCode::CubicMetre};
    sheet[Item::LargerVentilated] = chosenLarger(choice::kYes);
    const auto book = confirmedLarger();
    auto found = askedLarger(sheet, book);
    EXPECT_EQ(largerOutcome(found), Outcome::Pass);
    EXPECT_EQ(largerFinding(found, FindingKind::Tightness)->limit->value.text(), "10.00") << "0.0005 * 20";
    sheet[Item::LargerVentilated] = chosenLarger(choice::kNo);
    found = askedLarger(sheet, book);
    EXPECT_EQ(largerFinding(found, FindingKind::Tightness)->limit->value.text(), "1.40") << "as type A";
}

TEST(AnswerLarger, StrengthTestOfNewPipework) {
    auto sheet = hall();
    sheet[Item::LargerWork] = chosenLarger(choice::kNew);
    const auto book = confirmedLarger();
    EXPECT_EQ(largerOutcome(askedLarger(sheet, book), FindingKind::Strength), Outcome::NoVerdict);
    addStrength(sheet);
    auto found = askedLarger(sheet, book);
    EXPECT_EQ(largerOutcome(found, FindingKind::Strength), Outcome::Pass);
    EXPECT_EQ(largerOutcome(found, FindingKind::StrengthTimes), Outcome::Pass);
    EXPECT_EQ(largerOutcome(found, FindingKind::StrengthPressure), Outcome::Pass);
    EXPECT_EQ(largerFigure(found, Derived::StrengthPressureNeeded), "82.50\u00A0mbar");
    sheet[Item::StrengthEnd] = {"84.0", UnitCode::Millibar};
    EXPECT_EQ(largerOutcome(askedLarger(sheet, book), FindingKind::Strength), Outcome::Fail);
    sheet[Item::StrengthEnd] = {"85.0", UnitCode::Millibar};
    sheet[Item::StrengthMedium] = chosenLarger(choice::kFuelGas);
    EXPECT_EQ(largerOutcome(askedLarger(sheet, book), FindingKind::Strength), Outcome::Fail);
}

// Institution's own pages: the scope of IGEM/UP/1B Edition 3 and of IGE/UP/1A; Edition 4's was not read.
TEST(AnswerLarger, NamesTheStandard) {
    const auto book = confirmedLarger();
    const auto in2025 = askedLarger(hall(), book, "2025-06-01");
    EXPECT_EQ(largerFinding(in2025, FindingKind::StandardChoice)->why.say, Say::ScopeUseUp1a);
    const auto now = askedLarger(hall(), book);
    EXPECT_EQ(largerOutcome(now, FindingKind::StandardChoice), Outcome::NoVerdict);
    EXPECT_TRUE(says(*largerFinding(now, FindingKind::StandardChoice), Say::ScopeUseUp1a));

    auto home = hall();
    home[Item::PurgeVolumeKnown] = {"0.0115", UnitCode::CubicMetre};
    home[Item::PurgePipe] = {"28", UnitCode::Millimetre};
    home[Item::PurgeMeter] = {"u6_g4"};
    auto small = askedLarger(home, book, "2025-06-01");
    EXPECT_EQ(largerFinding(small, FindingKind::StandardChoice)->why.say, Say::StandardUp1b);
    EXPECT_EQ(small.findings.size(), 1U) << "the larger method judges nothing of it";
    home[Item::LargerSmell] = chosenLarger(choice::kYes);
    small = askedLarger(home, book, "2025-06-01");
    EXPECT_EQ(largerOutcome(small), Outcome::Fail) << "a smell fails under every standard";
}

TEST(AnswerLarger, AsksForTheRoomOnlyWhereItCounts) {
    Worksheet sheet(Question::Larger, calendar::fromIso("2026-11-25").value());
    EXPECT_TRUE(sheet.isAsked(Group::Once, 0, Item::LargerArea));
    for (const auto area : {choice::kAreaA, choice::kOutdoors, choice::kBuried}) {
        sheet.put(Group::Once, 0, Item::LargerArea, std::string(area));
        EXPECT_FALSE(sheet.isAsked(Group::Once, 0, Item::LargerRoomVolume)) << area;
    }
    sheet.put(Group::Once, 0, Item::LargerArea, std::string(choice::kAreaC));
    EXPECT_TRUE(sheet.isAsked(Group::Once, 0, Item::LargerRoomVolume));
    EXPECT_TRUE(sheet.isAsked(Group::Once, 0, Item::LargerVentilated));
    sheet.put(Group::Once, 0, Item::LargerWork, std::string(choice::kNew));
    EXPECT_FALSE(sheet.isAsked(Group::Once, 0, Item::LargerVentilated));
}

}  // namespace
}  // namespace hearth::judging
