// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/requirements.h"

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

// In the order of the sheet. Lines about a test that stand together are asked of each test.
constexpr std::array kTightnessAndPurge{
    // who and where
    wantedField(Field::FirmName, kCommon),
    wantedField(Field::FirmAddress, kCommon),
    wantedField(Field::FirmRegistration, kCompetence),
    wantedField(Field::PremisesAddress, kCommon),
    wantedField(Field::PremisesPostcode, kCommon),
    wantedField(Field::CustomerName, kCommon),
    wantedField(Field::EngineerName, kCommon),
    wantedField(Field::EngineerCard, kCompetence),
    wantedField(Field::VisitDate, kCommon),
    wantedItem(Item::VisitReference, kCommon, When::WhenTyped),
    wantedItem(Item::VisitPresent, kCommon, When::WhenTyped),
    // before you start
    wantedItem(Item::SmellOnArrival, kGuide),
    wantedItem(Item::SafeToTouch, kArticle),
    wantedItem(Item::OpenEnds, kArticle),
    wantedItem(Item::VisualInspection, kArticle),
    wantedItem(Item::VisualNotes, kCommon, When::WhenTyped),
    // meter and pipework
    wantedField(Field::InstallationGas, kCommon),
    wantedField(Field::InstallationMeter, kGuide),
    wantedField(Field::PipeOrVolume, kBulletin),
    wantedField(Field::PipeOrder, kBulletin),
    // what is tested, and with what
    wantedItem(Item::TestEdition, kBulletin),
    wantedItem(Item::TestWork, kGuide),
    wantedItem(Item::TestExtent, kBulletin),
    wantedItem(Item::TestPartDescription, kBulletin, When::PartTested),
    wantedItem(Item::TestAppliances, kBulletin),
    wantedItem(Item::TestIsolatedWhat, kBulletin, When::Isolated),
    wantedItem(Item::TestPilots, kNotes, When::AppliancesOn),
    wantedItem(Item::TestGauge, kNotes),
    wantedField(Field::InstrumentSerial, kCommon, When::ElectronicGauge),
    wantedField(Field::InstrumentCalibration, kNotes, When::ElectronicGauge),
    wantedItem(Item::TestGaugeZeroed, kNotes),
    wantedItem(Item::TestSmell, kGuide),
    wantedItem(Item::TestVolumeTyped, kBulletin, When::WhenTyped),
    wantedItem(Item::TestPipesShut, kCommon, When::WhenTyped),
    // let-by
    wantedItem(Item::LetByStart, kArticle),
    wantedItem(Item::LetByEnd, kArticle),
    wantedItem(Item::LetByStartedAt, kArticle),
    wantedItem(Item::LetByEndedAt, kArticle),
    // settle
    wantedItem(Item::SettleStart, kGuide, When::NotStopped),
    wantedItem(Item::SettleEnd, kGuide, When::NotStopped),
    wantedItem(Item::SettleStartedAt, kGuide, When::NotStopped),
    wantedItem(Item::SettleEndedAt, kGuide, When::NotStopped),
    // tightness
    wantedItem(Item::TightStart, kGuide, When::NotStopped),
    wantedItem(Item::TightEnd, kGuide, When::NotStopped),
    wantedItem(Item::TightStartedAt, kGuide, When::NotStopped),
    wantedItem(Item::TightEndedAt, kGuide, When::NotStopped),
    wantedItem(Item::SecondDisplayStart, kCommon, When::WhenTyped),
    wantedItem(Item::SecondDisplayEnd, kCommon, When::WhenTyped),
    wantedItem(Item::LowPressureReason, kArticle, When::LowUnexplained),
    wantedItem(Item::AssumedTemperatureChange, kCommon, When::WhenTyped),
    wantedItem(Item::TestVolumeOff, kCommon, When::WhenTyped),
    // the repeat with appliances isolated
    wantedItem(Item::RetestStart, kBulletin, When::RetestBegun),
    wantedItem(Item::RetestEnd, kBulletin, When::RetestBegun),
    wantedItem(Item::RetestStartedAt, kBulletin, When::RetestBegun),
    wantedItem(Item::RetestEndedAt, kBulletin, When::RetestBegun),
    // purge
    wantedItem(Item::PurgeDone, kPurgeLaw, When::FoundTight),
    wantedItem(Item::PurgeMethod, kGuide, When::Purged),
    wantedItem(Item::PurgeVolumePassed, kNotes, When::PurgedWithMeter),
    wantedItem(Item::PurgeSteadyFlame, kNotes, When::PurgedToFlame),
    // restore: the gauge was on the test point, so it is proved whatever the test said
    wantedItem(Item::TestPointProved, kNotes),
    wantedItem(Item::DisturbedJointsProved, kPurgeLaw),
    wantedItem(Item::FluidWiped, kCommon),
    wantedItem(Item::StandingPressure, kCommon, When::WhenTyped),
    wantedItem(Item::WorkingPressure, kCommon, When::WhenTyped),
    wantedItem(Item::WorkingLoad, kCommon, When::WhenTyped),
    // hand-over
    wantedItem(Item::VisitRemarks, kCommon, When::WhenTyped),
    wantedItem(Item::SignedByEngineer, kCommon),
    wantedItem(Item::ReceivedBy, kCommon, When::WhenTyped),
};

}  // namespace

std::span<const Requirement> requirementsOf(RecordKind kind) {
    switch (kind) {
        case RecordKind::TightnessAndPurge:
            return kTightnessAndPurge;
        case RecordKind::LandlordSafety:
            return landlordRequirements();
        case RecordKind::OwnerSafety:
            return ownerRequirements();
        case RecordKind::Commissioning:
            return commissioningRequirements();
        case RecordKind::Service:
            return serviceRequirements();
        case RecordKind::LargerPipework:
            return largerRequirements();
        case RecordKind::WarningNotice:
            return noticeRequirements();
        case RecordKind::RoomInvestigation:
            return investigationRequirements();
        case RecordKind::ReportableEntry:
            return reportableRequirements();
        case RecordKind::BuildingNotice:
            return buildingRequirements();
        case RecordKind::CalibrationLog:
            return calibrationRequirements();
        case RecordKind::ReminderLetter:
        case RecordKind::NoAccessLetter:
        case RecordKind::CoveringLetter:
            break;
    }
    return letterRequirements();
}

}  // namespace hearth::record
