// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/item.h"

#include "core/register/kind_items.h"
#include "core/register/visit_items.h"
#include "core/register/work_items.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cstddef>
#include <vector>

namespace hearth::reg {

namespace {

using quantity::UnitFamily;

constexpr std::array kYesNo{Choice{choice::kYes}, Choice{choice::kNo}};
constexpr std::array kOpenEnds{Choice{choice::kNoneSeen}, Choice{choice::kFoundSealed},
                               Choice{choice::kFoundOpen}, Choice{choice::kNotLooked}};
constexpr std::array kSafeToTouch{Choice{choice::kSafe}, Choice{choice::kVoltage}, Choice{choice::kNotDone}};
constexpr std::array kVisual{Choice{choice::kSound}, Choice{choice::kDefects}, Choice{choice::kNotDone}};
constexpr std::array kEdition{Choice{choice::kEd4}, Choice{choice::kEd3}};
constexpr std::array kWork{Choice{choice::kExisting}, Choice{choice::kNew}};
constexpr std::array kExtent{Choice{choice::kWhole}, Choice{choice::kPart}};
constexpr std::array kAppliances{Choice{choice::kConnected}, Choice{choice::kIsolated},
                                 Choice{choice::kNoneConnected}};
constexpr std::array kPilots{Choice{choice::kOut}, Choice{choice::kNoneFitted}, Choice{choice::kLeftLit}};
constexpr std::array kPurgeDone{Choice{choice::kYes}, Choice{choice::kNo}, Choice{choice::kNotNeeded}};
constexpr std::array kPurgeMethod{Choice{choice::kOpenBurner}, Choice{choice::kVentilatedPlace}};
constexpr std::array kDisturbedJoints{Choice{choice::kYes}, Choice{choice::kNo},
                                      Choice{choice::kNoneDisturbed}};

constexpr ItemInfo visitItem(Item item, std::string_view code, ItemKind kind,
                             std::span<const Choice> choices = {}) {
    return {item, code, kind, SubjectKind::Visit, UnitFamily::None, choices};
}
constexpr ItemInfo testItem(Item item, std::string_view code, ItemKind kind,
                            std::span<const Choice> choices = {}) {
    return {item, code, kind, SubjectKind::Test, UnitFamily::None, choices};
}
constexpr ItemInfo yesNo(Item item, std::string_view code) {
    return testItem(item, code, ItemKind::YesNo, kYesNo);
}
constexpr ItemInfo reading(Item item, std::string_view code, UnitFamily units = UnitFamily::Pressure) {
    return {item, code, ItemKind::Number, SubjectKind::Test, units, {}};
}
constexpr ItemInfo time(Item item, std::string_view code) {
    return testItem(item, code, ItemKind::Time);
}

// In the order of the enumeration: infoOf() indexes it, and a test holds the order.
constexpr std::array kCatalogue{
    visitItem(Item::VisitReference, "visit.reference", ItemKind::Text),
    visitItem(Item::VisitPresent, "visit.present", ItemKind::Text),
    visitItem(Item::SmellOnArrival, "visit.smell_on_arrival", ItemKind::YesNo, kYesNo),
    visitItem(Item::OpenEnds, "visit.open_ends", ItemKind::Choice, kOpenEnds),
    visitItem(Item::SafeToTouch, "visit.safe_to_touch", ItemKind::Choice, kSafeToTouch),
    visitItem(Item::VisualInspection, "visit.visual_inspection", ItemKind::Choice, kVisual),
    visitItem(Item::VisualNotes, "visit.visual_notes", ItemKind::LongText),

    testItem(Item::TestEdition, "test.edition", ItemKind::Choice, kEdition),
    testItem(Item::TestWork, "test.work", ItemKind::Choice, kWork),
    testItem(Item::TestExtent, "test.extent", ItemKind::Choice, kExtent),
    testItem(Item::TestPartDescription, "test.part_description", ItemKind::Text),
    testItem(Item::TestAppliances, "test.appliances", ItemKind::Choice, kAppliances),
    testItem(Item::TestIsolatedWhat, "test.isolated_what", ItemKind::Text),
    testItem(Item::TestPilots, "test.pilots", ItemKind::Choice, kPilots),
    testItem(Item::TestGauge, "test.gauge", ItemKind::Instrument),
    yesNo(Item::TestGaugeZeroed, "test.gauge_zeroed"),
    yesNo(Item::TestSmell, "test.smell"),
    reading(Item::TestVolumeTyped, "test.volume_typed", UnitFamily::Volume),
    testItem(Item::TestPipesShut, "test.pipes_shut", ItemKind::Text),

    reading(Item::LetByStart, "test.let_by_start"),
    reading(Item::LetByEnd, "test.let_by_end"),
    time(Item::LetByStartedAt, "test.let_by_started_at"),
    time(Item::LetByEndedAt, "test.let_by_ended_at"),

    reading(Item::SettleStart, "test.settle_start"),
    reading(Item::SettleEnd, "test.settle_end"),
    time(Item::SettleStartedAt, "test.settle_started_at"),
    time(Item::SettleEndedAt, "test.settle_ended_at"),

    reading(Item::TightStart, "test.tight_start"),
    reading(Item::TightEnd, "test.tight_end"),
    time(Item::TightStartedAt, "test.tight_started_at"),
    time(Item::TightEndedAt, "test.tight_ended_at"),
    reading(Item::SecondDisplayStart, "test.second_display_start"),
    reading(Item::SecondDisplayEnd, "test.second_display_end"),
    testItem(Item::LowPressureReason, "test.low_pressure_reason", ItemKind::Text),
    reading(Item::AssumedTemperatureChange, "test.assumed_temperature_change", UnitFamily::TemperatureChange),
    reading(Item::TestVolumeOff, "test.volume_off", UnitFamily::Share),

    reading(Item::RetestStart, "test.retest_start"),
    reading(Item::RetestEnd, "test.retest_end"),
    time(Item::RetestStartedAt, "test.retest_started_at"),
    time(Item::RetestEndedAt, "test.retest_ended_at"),

    testItem(Item::PurgeDone, "test.purge_done", ItemKind::Choice, kPurgeDone),
    testItem(Item::PurgeMethod, "test.purge_method", ItemKind::Choice, kPurgeMethod),
    reading(Item::PurgeVolumePassed, "test.purge_volume_passed", UnitFamily::Volume),
    yesNo(Item::PurgeSteadyFlame, "test.purge_steady_flame"),

    yesNo(Item::TestPointProved, "test.test_point_proved"),
    testItem(Item::DisturbedJointsProved, "test.disturbed_joints_proved", ItemKind::Choice, kDisturbedJoints),
    yesNo(Item::FluidWiped, "test.fluid_wiped"),
    reading(Item::StandingPressure, "test.standing_pressure"),
    reading(Item::WorkingPressure, "test.working_pressure"),
    testItem(Item::WorkingLoad, "test.working_load", ItemKind::Text),

    visitItem(Item::VisitRemarks, "visit.remarks", ItemKind::LongText),
    visitItem(Item::SignedByEngineer, "visit.signed_by_engineer", ItemKind::Text),
    visitItem(Item::ReceivedBy, "visit.received_by", ItemKind::Text),
};

}  // namespace

std::span<const ItemInfo> itemCatalogue() {
    static const std::vector<ItemInfo> kAll = [] {
        std::vector<ItemInfo> all(kCatalogue.begin(), kCatalogue.end());
        all.insert(all.end(), workItems().begin(), workItems().end());
        all.insert(all.end(), visitItems().begin(), visitItems().end());
        all.insert(all.end(), kindItems().begin(), kindItems().end());
        return all;
    }();
    return kAll;
}

std::span<const ItemInfo> sheetItems() {
    return kCatalogue;
}

const ItemInfo& infoOf(Item item) {
    const auto index = static_cast<std::size_t>(item);
    const auto catalogue = itemCatalogue();
    assert(index < catalogue.size() && catalogue[index].item == item);
    return catalogue[index];
}

std::optional<Item> itemFromCode(std::string_view code) {
    const auto catalogue = itemCatalogue();
    const auto found =
        std::find_if(catalogue.begin(), catalogue.end(), [&](const ItemInfo& i) { return i.code == code; });
    return found == catalogue.end() ? std::nullopt : std::optional(found->item);
}

}  // namespace hearth::reg
