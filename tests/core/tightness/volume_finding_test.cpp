// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/volume_finding.h"

#include "core/quantity/units.h"
#include "core/rulebook/conclude.h"
#include "tests/core/tightness/samples.h"

#include <gtest/gtest.h>

namespace hearth::tightness {
namespace {

using namespace samples;
using rulebook::Outcome;
using rulebook::Say;

pipework::SectionInput pipe(const char* tube, double metres) {
    pipework::SectionInput section;
    section.tube = pipework::tubeByCode(tube);
    section.length = quantity::Length(metres, quantity::kMetre);
    return section;
}

pipework::VolumeInput guidesExample() {
    pipework::VolumeInput input;
    input.meter = pipework::meterByCode("u6_g4");
    input.sections = {pipe("copper_15", 9)};
    return input;
}

// Certification body's pocket guide Gas 2: G4 meter and 9 m of 15 mm copper.
TEST(VolumeFinding, SaysHowItIsMadeUp) {
    const auto finding = volumeFinding(pipework::volume(guidesExample()), rulebook::RuleBook::shipped());
    EXPECT_EQ(finding.outcome, Outcome::Pass);
    EXPECT_EQ(finding.measured->value.text(), "0.009386");
    EXPECT_EQ(finding.why.say, Say::VolumeWorkedOut);
    EXPECT_EQ(finding.why.arguments.size(), 4U);
    EXPECT_TRUE(says(finding, Say::VolumeTableUsed));
    EXPECT_FALSE(says(finding, Say::VolumeGeometryUsed));
    ASSERT_EQ(finding.limits.size(), 1U);
    EXPECT_EQ(finding.limits.front().key.rule, rulebook::Rule::FittingsShare);
}

TEST(VolumeFinding, NamesEveryBasisThatWasUsed) {
    auto input = guidesExample();
    input.sections.push_back(pipe("copper_42", 1));
    auto typed = pipe("corrugated", 1);
    typed.typedVolume = cubicMetres(0.001);
    input.sections.push_back(typed);
    const auto finding = volumeFinding(pipework::volume(input), rulebook::RuleBook::shipped());
    EXPECT_TRUE(says(finding, Say::VolumeTableUsed));
    EXPECT_TRUE(says(finding, Say::VolumeGeometryUsed));
    EXPECT_TRUE(says(finding, Say::VolumeTypedUsed));
}

TEST(VolumeFinding, TypedAndUnknown) {
    auto input = guidesExample();
    input.typedTotal = cubicMetres(0.02);
    EXPECT_EQ(volumeFinding(pipework::volume(input), rulebook::RuleBook::shipped()).why.say,
              Say::VolumeTypedUsed);
    input.typedTotal.reset();
    input.meter = nullptr;
    const auto unknown = volumeFinding(pipework::volume(input), rulebook::RuleBook::shipped());
    EXPECT_EQ(unknown.outcome, Outcome::NoVerdict);
    EXPECT_EQ(unknown.why.say, Say::VolumeUnknown);
}

}  // namespace
}  // namespace hearth::tightness
