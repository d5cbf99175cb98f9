// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipework/tube.h"

#include <gtest/gtest.h>
#include <set>

namespace hearth::pipework {
namespace {

using rulebook::Provenance;

struct MeterCase {
    const char* code;
    MeterKind kind;
    double badge;
    double volume;
    Provenance provenance;
};

// G4: certification body's pocket guide Gas 2. E6, G10: an exam revision page. The larger ones from memory.
TEST(Meters, VolumesAsPublished) {
    const MeterCase cases[] = {
        {"none", MeterKind::None, 0, 0, Provenance::Published},
        {"e6", MeterKind::Ultrasonic, 6, 0.0024, Provenance::Secondary},
        {"u6_g4", MeterKind::Diaphragm, 6, 0.008, Provenance::Published},
        {"u16_g10", MeterKind::Diaphragm, 16, 0.025, Provenance::Secondary},
        {"u25_g16", MeterKind::Diaphragm, 25, 0.037, Provenance::Memory},
        {"u40_g25", MeterKind::Diaphragm, 40, 0.067, Provenance::Memory},
        {"u65_g40", MeterKind::Diaphragm, 65, 0.100, Provenance::Memory},
        {"u100_g65", MeterKind::Diaphragm, 100, 0.182, Provenance::Memory},
        {"u160_g100", MeterKind::Diaphragm, 160, 0.304, Provenance::Memory},
    };
    for (const auto& c : cases) {
        const Meter* meter = meterByCode(c.code);
        ASSERT_NE(meter, nullptr) << c.code;
        EXPECT_EQ(meter->kind, c.kind) << c.code;
        EXPECT_EQ(meter->badge, c.badge) << c.code;
        EXPECT_EQ(meter->volume, c.volume) << c.code;
        EXPECT_EQ(meter->provenance, c.provenance) << c.code;
    }
}

TEST(Meters, AnotherMeterHasNoVolumeUntilItIsTyped) {
    const Meter* other = meterByCode("other");
    ASSERT_NE(other, nullptr);
    EXPECT_FALSE(other->volume);
    EXPECT_EQ(meterByCode("g4"), nullptr);
    std::set<std::string_view> codes;
    for (const auto& meter : meters()) {
        EXPECT_TRUE(codes.insert(meter.code).second);
    }
}

}  // namespace
}  // namespace hearth::pipework
