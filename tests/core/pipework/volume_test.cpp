// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipework/volume.h"

#include "core/quantity/units.h"

#include <gtest/gtest.h>
#include <random>

namespace hearth::pipework {
namespace {

using quantity::kCubicMetre;
using quantity::kMetre;
using quantity::Length;
using quantity::Volume;

SectionInput pipe(std::string_view code, double metres) {
    SectionInput section;
    section.tube = tubeByCode(code);
    section.length = Length(metres, kMetre);
    return section;
}

VolumeInput with(std::string_view meter, std::vector<SectionInput> sections) {
    VolumeInput input;
    input.meter = meterByCode(meter);
    input.sections = std::move(sections);
    return input;
}

double total(const VolumeInput& input) {
    return volume(input).total.value().in(kCubicMetre);
}

// Certification body's pocket guide Gas 2, reproducing IGEM/UP/1B Ed 3: G4 meter and 9 m of 15 mm copper.
TEST(InstallationVolume, PocketGuidesWorkedExample) {
    const auto report = volume(with("u6_g4", {pipe("copper_15", 9)}));
    EXPECT_NEAR(report.total->in(kCubicMetre), 0.009386, 1e-9);
    EXPECT_NEAR(report.meter->in(kCubicMetre), 0.008, 1e-12);
    EXPECT_NEAR(report.pipes->in(kCubicMetre), 0.00126, 1e-12);
    EXPECT_NEAR(report.fittings->in(kCubicMetre), 0.000126, 1e-12);
    EXPECT_EQ(report.sections.front().basis, VolumeBasis::TradeTable);
    EXPECT_EQ(report.sections.front().provenance, rulebook::Provenance::Published);
}

// The same rule on the revision page's figures: 0.0024 + 20 x 0.00032 x 1.1.
TEST(InstallationVolume, UltrasonicMeterWithTwentyMetresOf22) {
    EXPECT_NEAR(total(with("e6", {pipe("copper_22", 20)})), 0.00944, 1e-9);
}

TEST(InstallationVolume, SaysWhichFigureItUsed) {
    auto typed = pipe("corrugated_25", 4);
    typed.typedVolume = Volume(0.003, kCubicMetre);
    const auto report =
        volume(with("u6_g4", {pipe("steel_heavy_25", 1), pipe("copper_42", 1), pipe("pe176_63", 1), typed}));
    EXPECT_EQ(report.sections[0].basis, VolumeBasis::TradeTable);
    EXPECT_NEAR(report.sections[0].volume->in(kCubicMetre), 0.00064, 1e-12);
    EXPECT_EQ(report.sections[1].basis, VolumeBasis::Geometry) << "its table figure is only from memory";
    EXPECT_NEAR(report.sections[1].volume->in(kCubicMetre), 0.001232, 1e-6);
    EXPECT_EQ(report.sections[2].basis, VolumeBasis::Geometry);
    EXPECT_EQ(report.sections[3].basis, VolumeBasis::Typed);
    EXPECT_NEAR(report.sections[3].volume->in(kCubicMetre), 0.003, 1e-12);
}

TEST(InstallationVolume, IsNotKnownWhileAPartOfItIsNot) {
    auto unsaid = pipe("copper_15", 3);
    unsaid.tube = nullptr;
    auto unmeasured = pipe("copper_15", 3);
    unmeasured.length.reset();
    const SectionInput bad[] = {unsaid, unmeasured, pipe("corrugated", 2), pipe("copper_15", -1)};
    for (const auto& section : bad) {
        const auto report = volume(with("u6_g4", {pipe("copper_22", 5), section}));
        EXPECT_FALSE(report.total);
        EXPECT_FALSE(report.pipes);
        EXPECT_TRUE(report.sections.front().volume) << "what is known stays";
    }
    EXPECT_FALSE(volume(with("other", {pipe("copper_15", 3)})).total);
    EXPECT_FALSE(volume(with("", {pipe("copper_15", 3)})).total) << "meter not said";
    EXPECT_FALSE(volume(with("u6_g4", {})).total) << "no pipes";
}

TEST(InstallationVolume, TakesTypedVolumesFirst) {
    auto input = with("other", {pipe("copper_15", 10)});
    input.meterTyped = Volume(0.005, kCubicMetre);
    EXPECT_NEAR(total(input), 0.005 + 10 * 0.00014 * 1.1, 1e-12);
    input.typedTotal = Volume(0.02, kCubicMetre);
    const auto report = volume(input);
    EXPECT_TRUE(report.typedTotal);
    EXPECT_NEAR(report.total->in(kCubicMetre), 0.02, 1e-12);
    input.typedTotal = Volume(-0.02, kCubicMetre);
    EXPECT_FALSE(volume(input).typedTotal) << "a negative volume is no volume";
}

TEST(InstallationVolume, CountsOnlyThePartUnderTest) {
    auto other = pipe("copper_35", 10);
    other.underTest = false;
    auto input = with("u6_g4", {pipe("copper_15", 9), other});
    EXPECT_NEAR(total(input), 0.009386, 1e-9);
    EXPECT_EQ(volume(input).largestNominal, 15);
    input.meterUnderTest = false;
    EXPECT_NEAR(total(input), 0.001386, 1e-9);
}

TEST(InstallationVolume, KnowsItsLargestPipe) {
    const auto report = volume(with("u6_g4", {pipe("copper_22", 5), pipe("steel_medium_25", 5)}));
    EXPECT_EQ(report.largestNominal, 25);
    EXPECT_TRUE(report.nominalKnown);
    EXPECT_FALSE(volume(with("u6_g4", {})).nominalKnown);
    EXPECT_FALSE(volume(with("u6_g4", {pipe("copper_22", 5), pipe("corrugated", 1)})).nominalKnown);
}

// Law: the volume of a list is the sum of the volumes of its parts, however it is cut.
TEST(InstallationVolumeProperty, IsAdditiveOverSections) {
    std::mt19937 random(20261001);
    std::vector<const Tube*> sized;
    for (const auto& tube : tubes()) {
        if (tube.hasDimensions()) {
            sized.push_back(&tube);
        }
    }
    std::uniform_int_distribution<std::size_t> which(0, sized.size() - 1);
    std::uniform_real_distribution<double> metres(0.0, 40.0);
    for (int round = 0; round < 200; ++round) {
        VolumeInput whole = with("none", {});
        double sum = 0;
        for (int i = 0; i < 6; ++i) {
            const auto section = pipe(sized[which(random)]->code, metres(random));
            whole.sections.push_back(section);
            const double cut = section.length->in(kMetre) / 3;
            sum += total(with("none", {pipe(section.tube->code, cut), pipe(section.tube->code, 2 * cut)}));
        }
        EXPECT_NEAR(total(whole), sum, 1e-12 + 1e-9 * sum);
        EXPECT_NEAR(total(whole), volume(whole).pipes->in(kCubicMetre)*1.1, 1e-9 * sum);
    }
}

}  // namespace
}  // namespace hearth::pipework
