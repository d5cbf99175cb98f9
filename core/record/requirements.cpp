// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/kind.h"

#include <array>

namespace hearth::record {

namespace {

using reg::Item;

// Who wants it. A standard that was read only in others' words is named with those words' source; what no
// source asks for but every record in the trade shows is called that.
constexpr std::string_view kCommon = "common practice";
constexpr std::string_view kBulletin = "GB gas register, Industry Standard Update 133 (IGEM/UP/1B Edition 4)";
constexpr std::string_view kArticle = "GB gas register, article on IGEM/UP/1B Edition 4 (2026)";
constexpr std::string_view kGuide = "certification body's pocket guide Gas 2 (IGEM/UP/1B Edition 3)";
constexpr std::string_view kNotes = "training notes (IGEM/UP/1B Edition 3)";
constexpr std::string_view kPurgeLaw = "Gas Safety (Installation and Use) Regulations 1998, regulation 22";
constexpr std::string_view kCompetence = "Gas Safety (Installation and Use) Regulations 1998, regulation 3";

constexpr Requirement field(Field field, std::string_view source, When when = When::Always) {
    return {std::nullopt, field, source, when};
}
constexpr Requirement item(Item item, std::string_view source, When when = When::Always) {
    return {item, std::nullopt, source, when};
}

// In the order of the sheet. What stands between the first and the last line about a test is asked of each
// test.
constexpr std::array kTightnessAndPurge{
    // who and where
    field(Field::FirmName, kCommon),
    field(Field::FirmAddress, kCommon),
    field(Field::FirmRegistration, kCompetence),
    field(Field::PremisesAddress, kCommon),
    field(Field::PremisesPostcode, kCommon),
    field(Field::CustomerName, kCommon),
    field(Field::EngineerName, kCommon),
    field(Field::EngineerCard, kCompetence),
    field(Field::VisitDate, kCommon),
    item(Item::VisitReference, kCommon, When::WhenTyped),
    item(Item::VisitPresent, kCommon, When::WhenTyped),
    // before you start
    item(Item::SmellOnArrival, kGuide),
    item(Item::SafeToTouch, kArticle),
    item(Item::OpenEnds, kArticle),
    item(Item::VisualInspection, kArticle),
    item(Item::VisualNotes, kCommon, When::WhenTyped),
    // meter and pipework
    field(Field::InstallationGas, kCommon),
    field(Field::InstallationMeter, kGuide),
    field(Field::PipeOrVolume, kBulletin),
    field(Field::PipeOrder, kBulletin),
    // what is tested, and with what
    item(Item::TestEdition, kBulletin),
    item(Item::TestWork, kGuide),
    item(Item::TestExtent, kBulletin),
    item(Item::TestPartDescription, kBulletin, When::PartTested),
    item(Item::TestAppliances, kBulletin),
    item(Item::TestIsolatedWhat, kBulletin, When::Isolated),
    item(Item::TestPilots, kNotes, When::AppliancesOn),
    item(Item::TestGauge, kNotes),
    field(Field::InstrumentSerial, kCommon, When::ElectronicGauge),
    field(Field::InstrumentCalibration, kNotes, When::ElectronicGauge),
    item(Item::TestGaugeZeroed, kNotes),
    item(Item::TestSmell, kGuide),
    item(Item::TestVolumeTyped, kBulletin, When::WhenTyped),
    // let-by
    item(Item::LetByStart, kArticle),
    item(Item::LetByEnd, kArticle),
    item(Item::LetByStartedAt, kArticle),
    item(Item::LetByEndedAt, kArticle),
    // settle
    item(Item::SettleStart, kGuide, When::NotStopped),
    item(Item::SettleEnd, kGuide, When::NotStopped),
    item(Item::SettleStartedAt, kGuide, When::NotStopped),
    item(Item::SettleEndedAt, kGuide, When::NotStopped),
    // tightness
    item(Item::TightStart, kGuide, When::NotStopped),
    item(Item::TightEnd, kGuide, When::NotStopped),
    item(Item::TightStartedAt, kGuide, When::NotStopped),
    item(Item::TightEndedAt, kGuide, When::NotStopped),
    item(Item::SecondDisplayStart, kCommon, When::WhenTyped),
    item(Item::SecondDisplayEnd, kCommon, When::WhenTyped),
    item(Item::LowPressureReason, kArticle, When::LowUnexplained),
    item(Item::AssumedTemperatureChange, kCommon, When::WhenTyped),
    // the repeat with appliances isolated
    item(Item::RetestStart, kBulletin, When::RetestBegun),
    item(Item::RetestEnd, kBulletin, When::RetestBegun),
    item(Item::RetestStartedAt, kBulletin, When::RetestBegun),
    item(Item::RetestEndedAt, kBulletin, When::RetestBegun),
    // purge
    item(Item::PurgeDone, kPurgeLaw, When::FoundTight),
    item(Item::PurgeMethod, kGuide, When::Purged),
    item(Item::PurgeVolumePassed, kNotes, When::PurgedWithMeter),
    item(Item::PurgeSteadyFlame, kNotes, When::PurgedToFlame),
    // restore: the gauge was on the test point, so it is proved whatever the test said
    item(Item::TestPointProved, kNotes),
    item(Item::DisturbedJointsProved, kPurgeLaw),
    item(Item::FluidWiped, kCommon),
    item(Item::StandingPressure, kCommon, When::WhenTyped),
    item(Item::WorkingPressure, kCommon, When::WhenTyped),
    item(Item::WorkingLoad, kCommon, When::WhenTyped),
    // hand-over
    item(Item::VisitRemarks, kCommon, When::WhenTyped),
    item(Item::SignedByEngineer, kCommon),
    item(Item::ReceivedBy, kCommon, When::WhenTyped),
};

}  // namespace

std::span<const Requirement> requirementsOf(RecordKind kind) {
    switch (kind) {
        case RecordKind::TightnessAndPurge:
            break;
    }
    return kTightnessAndPurge;
}

}  // namespace hearth::record
