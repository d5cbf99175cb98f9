// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/against.h"

#include <gtest/gtest.h>

namespace hearth::rulebook {
namespace {

using quantity::Decimal;
using quantity::Figure;
using quantity::UnitCode;

Entry limit(Provenance provenance, Value value = Figure{Decimal(350, 0), UnitCode::Ppm}) {
    Entry entry;
    entry.key = {Rule::SettleMovement};
    entry.value = std::move(value);
    entry.comparison = Comparison::AtMost;
    entry.provenance = provenance;
    return entry;
}

Finding judged(const Entry& entry, quantity::Uncertain measured) {
    Finding finding{FindingKind::Settling};
    judgeAgainst(finding, entry, measured, {Say::Settled, Say::AtLimit, Say::NotSettled, {}});
    return finding;
}

// Invented limits: what is held here is the method (design: "Limits: the rule book").
TEST(Against, theUncertaintyMakesAGuardBandOnBothSides) {
    const auto entry = limit(Provenance::Published);
    EXPECT_EQ(judged(entry, {339.0, 5.0}).outcome, Outcome::Pass);
    EXPECT_EQ(judged(entry, {341.0, 5.0}).outcome, Outcome::LookAgain);
    EXPECT_EQ(judged(entry, {359.0, 5.0}).outcome, Outcome::LookAgain);
    EXPECT_EQ(judged(entry, {361.0, 5.0}).outcome, Outcome::Fail);
}

TEST(Against, exactlyAtTheLimitIsNeverASilentPass) {
    const auto finding = judged(limit(Provenance::Published), {350.0, 0.0});
    EXPECT_EQ(finding.outcome, Outcome::LookAgain);
    EXPECT_EQ(finding.why.say, Say::AtLimit);
    EXPECT_EQ(finding.limit, std::optional(Figure{Decimal(350, 0), UnitCode::Ppm}));
}

TEST(Against, whatProvenanceMayDecideIsKept) {
    EXPECT_EQ(judged(limit(Provenance::Memory), {100.0, 0.0}).outcome, Outcome::LookAgain);
    EXPECT_EQ(judged(limit(Provenance::Memory), {900.0, 0.0}).outcome, Outcome::Fail);
    EXPECT_EQ(judged(limit(Provenance::CommonPractice), {100.0, 0.0}).outcome, Outcome::LookAgain);
    EXPECT_EQ(judged(limit(Provenance::CommonPractice), {900.0, 0.0}).outcome, Outcome::LookAgain);
    EXPECT_EQ(judged(limit(Provenance::Maker), {900.0, 0.0}).outcome, Outcome::Fail);
    EXPECT_EQ(judged(limit(Provenance::Published, std::monostate{}), {900.0, 0.0}).outcome,
              Outcome::NoVerdict);
}

TEST(Against, aRangeHasTwoLimits) {
    const auto entry =
        limit(Provenance::Published, Range{Decimal(19, 0), Decimal(23, 0), UnitCode::Millibar});
    EXPECT_EQ(judged(entry, {21.0, 0.1}).outcome, Outcome::Pass);
    EXPECT_EQ(judged(entry, {19.1, 0.1}).outcome, Outcome::LookAgain);
    EXPECT_EQ(judged(entry, {23.1, 0.1}).outcome, Outcome::LookAgain);
    EXPECT_EQ(judged(entry, {18.0, 0.1}).outcome, Outcome::Fail);
    EXPECT_EQ(judged(entry, {24.0, 0.1}).outcome, Outcome::Fail);
}

TEST(Against, noEntryIsNoVerdict) {
    Finding finding{FindingKind::Settling};
    judgeAgainst(finding, nullptr, {1.0, 0.0}, {Say::Settled, Say::AtLimit, Say::NotSettled, {}});
    EXPECT_EQ(finding.outcome, Outcome::NoVerdict);
}

TEST(Against, theMakersFigureIsNamedAsSuch) {
    const auto entry = makersEntry({Rule::SettleMovement}, Figure{Decimal(3, 0), UnitCode::Ppm},
                                   Comparison::AtMost, "instructions, page 12");
    EXPECT_EQ(entry.provenance, Provenance::Maker);
    EXPECT_EQ(entry.source, "instructions, page 12");
}

}  // namespace
}  // namespace hearth::rulebook
