// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/blanks.h"
#include "core/record/recipient.h"
#include "core/record/requirements.h"
#include "core/register/appliance_kinds.h"

#include <algorithm>
#include <array>

/// Whether what a kind of record wants is there.
namespace hearth::record {

namespace {

using reg::Item;
using reg::VisitFile;
namespace choice = reg::choice;

bool isBlank(const std::string& text) {
    return withoutOuterBlanks(text).empty();
}
bool isNumber(const quantity::Typed& typed) {
    return typed.value().has_value();
}

/// One visit while its record is being checked.
struct Check {
    const VisitFile& file;
    const std::vector<judging::Judged>& findings;

    [[nodiscard]] bool applies(const Requirement& wanted, const reg::SubjectRef& on) const;
    [[nodiscard]] bool has(const Requirement& wanted, const reg::SubjectRef& on) const;

  private:
    [[nodiscard]] bool says(const reg::SubjectRef& test, rulebook::Say say) const {
        return std::any_of(findings.begin(), findings.end(), [&](const judging::Judged& j) {
            return j.subject == test && j.finding.why.say == say;
        });
    }
    [[nodiscard]] bool is(const reg::SubjectRef& on, Item item, std::string_view code) const {
        return file.choiceOf(on, item) == code;
    }
    [[nodiscard]] bool isEntered(const reg::SubjectRef& on, Item item) const {
        const reg::Entry* entry = file.find(on, item);
        return entry != nullptr && !isBlank(entry->text);
    }
    [[nodiscard]] bool purged(const reg::SubjectRef& test) const {
        return is(test, Item::PurgeDone, choice::kYes);
    }
    /// The gauge of a test, or nothing.
    [[nodiscard]] const reg::Instrument* gauge(const reg::SubjectRef& test) const {
        return file.gaugeOf(reg::TestId{test.id});
    }
    [[nodiscard]] const reg::Appliance* appliance(const reg::SubjectRef& on) const {
        const auto found = std::find_if(file.appliances.begin(), file.appliances.end(),
                                        [&](const reg::Appliance& a) { return a.id.bytes == on.id; });
        return found == file.appliances.end() ? nullptr : &*found;
    }
    [[nodiscard]] const reg::Situation* situation(const reg::SubjectRef& on) const {
        const auto found = std::find_if(file.situations.begin(), file.situations.end(),
                                        [&](const reg::Situation& s) { return s.id.bytes == on.id; });
        return found == file.situations.end() ? nullptr : &*found;
    }
    [[nodiscard]] const reg::Party* landlord() const {
        const auto* landlord = file.holder(reg::RoleKind::Landlord);
        return landlord != nullptr ? landlord : file.holder(reg::RoleKind::Agent);
    }
    [[nodiscard]] bool named(const reg::Party* party) const {
        return party != nullptr && !isBlank(party->name);
    }
    [[nodiscard]] bool addressed(const reg::Party* party) const {
        return party != nullptr && !isBlank(party->address.line1) && !isBlank(party->address.town);
    }

    [[nodiscard]] bool applies(When when, const reg::SubjectRef& on) const;
    [[nodiscard]] bool suits(const Requirement& wanted, const reg::SubjectRef& on) const;
    [[nodiscard]] bool appliesToTest(When when, const reg::SubjectRef& on) const;
    [[nodiscard]] bool appliesToAppliance(When when, const reg::SubjectRef& on) const;
    [[nodiscard]] bool appliesToSituation(When when, const reg::SubjectRef& on) const;
    [[nodiscard]] bool appliesToVisit(When when, const reg::SubjectRef& on) const;
    [[nodiscard]] bool isBoiler(const reg::SubjectRef& on) const;
    [[nodiscard]] bool notTaken(const reg::SubjectRef& on, Item item) const;
    [[nodiscard]] bool hasField(Field field, const reg::SubjectRef& on) const;
    [[nodiscard]] bool hasOfAppliance(Field field, const reg::SubjectRef& on) const;
    [[nodiscard]] bool hasOfInstruments(Field field, const reg::SubjectRef& on) const;
    [[nodiscard]] bool hasOfSituation(Field field, const reg::SubjectRef& on) const;
    [[nodiscard]] bool pipesKnown() const;
    [[nodiscard]] bool volumesTyped() const;
};

bool Check::appliesToTest(When when, const reg::SubjectRef& on) const {
    constexpr std::array kRetest{Item::RetestStart, Item::RetestEnd, Item::RetestStartedAt,
                                 Item::RetestEndedAt};
    switch (when) {
        case When::PartTested:
            return is(on, Item::TestExtent, choice::kPart);
        case When::Isolated:
            return is(on, Item::TestAppliances, choice::kIsolated);
        case When::AppliancesOn:
            return is(on, Item::TestAppliances, choice::kConnected);
        case When::NotStopped:
            return !stoppedByLetBy(findings, on);
        case When::LowUnexplained:
            return says(on, rulebook::Say::TestPressureLowUnexplained);
        case When::RetestBegun:
            return std::any_of(kRetest.begin(), kRetest.end(),
                               [&](Item item) { return file.find(on, item) != nullptr; });
        case When::FoundTight:
            return !stoppedByLetBy(findings, on) && !foundLeaking(findings, on);
        case When::Purged:
            return purged(on);
        case When::PurgedWithMeter:
            return purged(on) && file.installation.meterCode != "none";
        case When::PurgedToFlame:
            return purged(on) && !is(on, Item::TestAppliances, choice::kNoneConnected);
        case When::ElectronicGauge:
            return gauge(on) != nullptr && gauge(on)->kind == reg::InstrumentKind::ElectronicGauge;
        default:
            return true;
    }
}

bool Check::isBoiler(const reg::SubjectRef& on) const {
    constexpr std::array kBoilers{choice::kCondensingBoiler, choice::kNonCondensingBoiler,
                                  choice::kBackBoiler};
    const auto* one = appliance(on);
    return one != nullptr && std::find(kBoilers.begin(), kBoilers.end(), one->kind) != kBoilers.end();
}

/// Nothing said is nothing read.
bool Check::notTaken(const reg::SubjectRef& on, Item item) const {
    const auto code = file.choiceOf(on, item);
    return code.empty() || code == choice::kNotTaken;
}

bool Check::appliesToAppliance(When when, const reg::SubjectRef& on) const {
    const bool inspected = is(on, Item::ApplianceInspected, choice::kInspected);
    const bool unpressured =
        inspected && notTaken(on, Item::ExaminedPressure) && notTaken(on, Item::ExaminedHeatInput);
    switch (when) {
        case When::Seen:
            return inspected || is(on, Item::ApplianceInspected, choice::kVisualOnly) ||
                   reg::isCapped(file, on);
        case When::Inspected:
            return inspected;
        case When::NotInspected:
            return is(on, Item::ApplianceInspected, choice::kNotInspected);
        case When::Unpressured:
            return unpressured;
        case When::OtherReason:
            return unpressured && is(on, Item::WhyNeither, choice::kOther);
        case When::DefectFound:
            return is(on, Item::DefectsFound, choice::kFound);
        case When::CombustionRead:
            return isEntered(on, Item::FlueCoHigh);
        case When::Boiler:
            return isBoiler(on);
        case When::Condensing:
            return appliance(on) != nullptr && appliance(on)->kind == choice::kCondensingBoiler;
        case When::Adjusted:
            return is(on, Item::ServiceAdjusted, choice::kYes);
        case When::Breakdown:
            return is(on, Item::ServiceKind, choice::kBreakdown) ||
                   is(on, Item::ServiceKind, choice::kAfterRepair);
        default:
            return true;
    }
}

bool Check::appliesToSituation(When when, const reg::SubjectRef& on) const {
    switch (when) {
        case When::MadeSafe:
            return isEntered(on, Item::SituationMadeSafe) &&
                   !is(on, Item::SituationMadeSafe, choice::kNotMadeSafe);
        case When::LabelFixed:
            return is(on, Item::SituationLabel, choice::kYes);
        case When::PermissionRefused:
            return is(on, Item::SituationPermission, choice::kRefused);
        case When::SignedFor:
            return is(on, Item::SituationReceipt, choice::kSigned);
        case When::CopyLeft:
            return is(on, Item::SituationReceipt, choice::kCopyLeft);
        case When::Told:
            return isEntered(on, Item::SituationTold);
        case When::Reportable:
            return is(on, Item::SituationReportable, choice::kYes);
        default:
            return true;
    }
}

bool Check::appliesToVisit(When when, const reg::SubjectRef& on) const {
    const auto any = [&](auto matches) {
        return std::any_of(file.appliances.begin(), file.appliances.end(),
                           [&](const reg::Appliance& a) { return matches(reg::subject(a.id)); });
    };
    switch (when) {
        case When::AnalyserUsed:
            return any([&](const reg::SubjectRef& a) {
                return isEntered(a, Item::FlueCoHigh) || isEntered(a, Item::FlueCoLow);
            });
        case When::NewWork:
            return any([&](const reg::SubjectRef& a) {
                return is(a, Item::NewOrReplacement, choice::kNew) ||
                       is(a, Item::NewOrReplacement, choice::kReplacement);
            });
        case When::CoAlarmThere:
            return isEntered(on, Item::RoomCoAlarm) && !is(on, Item::RoomCoAlarm, choice::kNone) &&
                   !is(on, Item::RoomCoAlarm, choice::kNotNeeded);
        case When::SmokeAlarmThere:
            return isEntered(on, Item::RoomSmokeAlarm) && !is(on, Item::RoomSmokeAlarm, choice::kNone) &&
                   !is(on, Item::RoomSmokeAlarm, choice::kNotNeeded);
        default:
            return true;
    }
}

bool Check::applies(When when, const reg::SubjectRef& on) const {
    if (when == When::Always || when == When::WhenTyped) {
        return when == When::Always;
    }
    switch (on.kind) {
        case reg::SubjectKind::Test:
            return appliesToTest(when, on);
        case reg::SubjectKind::Appliance:
            return appliesToAppliance(when, on);
        case reg::SubjectKind::Situation:
            return appliesToSituation(when, on);
        case reg::SubjectKind::Visit:
        case reg::SubjectKind::Installation:
        case reg::SubjectKind::Room:
            break;
    }
    return appliesToVisit(when, on);
}

/// What its kind can't be asked is not asked of it. Of what is capped nothing is used: whether it is safe may
/// be declared, and is not owed.
bool Check::suits(const Requirement& wanted, const reg::SubjectRef& on) const {
    if (wanted.field == Field::ApplianceFlue) {
        const auto* one = appliance(on);
        return one == nullptr || reg::burnsGas(one->kind);
    }
    if (wanted.item == Item::SafeToUse && reg::isCapped(file, on)) {
        return false;
    }
    return !wanted.item || reg::canBeAsked(*wanted.item, on, file);
}

bool Check::applies(const Requirement& wanted, const reg::SubjectRef& on) const {
    return suits(wanted, on) && applies(wanted.when, on);
}

bool Check::pipesKnown() const {
    const auto known = [](const reg::PipeSection& pipe) {
        return !pipe.underTest || isNumber(pipe.volume) || (!pipe.tubeCode.empty() && isNumber(pipe.length));
    };
    return !file.pipes.empty() && std::all_of(file.pipes.begin(), file.pipes.end(), known);
}

bool Check::volumesTyped() const {
    return !file.tests.empty() &&
           std::all_of(file.tests.begin(), file.tests.end(), [&](const reg::Test& test) {
               const reg::Entry* typed = file.find(reg::subject(test.id), Item::TestVolumeTyped);
               return isEmptyTest(file, test.id) || (typed != nullptr && !typed->canonical.empty());
           });
}

bool Check::hasOfAppliance(Field field, const reg::SubjectRef& on) const {
    const auto* one = appliance(on);
    if (one == nullptr) {
        return false;
    }
    switch (field) {
        case Field::ApplianceKind:
            return !one->kind.empty();
        case Field::ApplianceMake:
            return !isBlank(one->make);
        case Field::ApplianceModel:
            return !isBlank(one->model);
        case Field::ApplianceSerial:
            return !isBlank(one->serial);
        case Field::AppliancePlace:
            return !isBlank(one->place);
        default:
            return one->flue != reg::FlueType::NotSaid;
    }
}

bool Check::hasOfInstruments(Field field, const reg::SubjectRef& on) const {
    const auto all = [&](auto matches) {
        return !file.instruments.empty() &&
               std::all_of(file.instruments.begin(), file.instruments.end(), matches);
    };
    const auto* analyser = file.instrumentOf(reg::subject(file.visit.id), Item::VisitAnalyser);
    switch (field) {
        case Field::InstrumentSerial:
            return gauge(on) != nullptr && !isBlank(gauge(on)->serial);
        case Field::InstrumentCalibration:
            return gauge(on) != nullptr && gauge(on)->calibrationDue.has_value();
        case Field::AnalyserSerial:
            return analyser != nullptr && !isBlank(analyser->serial);
        case Field::AnalyserCalibration:
            return analyser != nullptr && analyser->calibrationDue.has_value();
        case Field::InstrumentSerials:
            return all([](const reg::Instrument& i) { return !isBlank(i.serial); });
        default:
            return all([](const reg::Instrument& i) {
                return i.kind == reg::InstrumentKind::WaterGauge || i.calibrationDue.has_value();
            });
    }
}

bool Check::hasOfSituation(Field field, const reg::SubjectRef& on) const {
    const auto* one = situation(on);
    if (one == nullptr) {
        return false;
    }
    return field == Field::SituationDanger ? one->danger != reg::Danger::NotSaid
           : field == Field::SituationWhat ? !isBlank(one->what)
                                           : !isBlank(one->where);
}

bool Check::hasField(Field field, const reg::SubjectRef& on) const {
    const reg::Engineer* engineer = file.engineer();
    const auto named = [](const VisitFile::Holder& holder) { return !isBlank(holder.party.name); };
    switch (field) {
        case Field::FirmName:
            return !isBlank(file.firm.name);
        case Field::FirmAddress:
            return !isBlank(file.firm.address.line1) && !isBlank(file.firm.address.town);
        case Field::FirmRegistration:
            return !isBlank(file.firm.registrationNumber);
        case Field::PremisesAddress:
            return !isBlank(file.premises.address.line1);
        case Field::PremisesPostcode:
            return !isBlank(file.premises.address.postcode);
        case Field::CustomerName:
            return std::any_of(file.people.begin(), file.people.end(), named);
        case Field::EngineerName:
            return engineer != nullptr && !isBlank(engineer->name);
        case Field::EngineerCard:
            return engineer != nullptr && !isBlank(engineer->cardNumber);
        case Field::InstallationGas:
            return true;  // a choice that always has a value
        case Field::InstallationMeter:
            return !file.installation.meterCode.empty();
        case Field::PipeOrVolume:
            return pipesKnown() || volumesTyped();
        case Field::PipeOrder:
            return std::all_of(file.pipes.begin(), file.pipes.end(),
                               [](const reg::PipeSection& pipe) { return pipe.afterText.empty(); });
        case Field::VisitDate:
            return file.visit.dateText.empty();
        case Field::LandlordName:
            return this->named(landlord());
        case Field::LandlordAddress:
            return addressed(landlord());
        case Field::OwnerName:
            return this->named(file.holder(reg::RoleKind::HomeOwner)) ||
                   this->named(file.holder(reg::RoleKind::Customer));
        case Field::RecipientAddress:
            return recipientOf(RecordKind::ReminderLetter, file)
                .has_value();  // somebody, whatever the letter
        case Field::ApplianceChecked:
            return std::any_of(file.appliances.begin(), file.appliances.end(), [&](const reg::Appliance& a) {
                return reg::isGasAppliance(a.kind) && appliesToAppliance(When::Seen, reg::subject(a.id));
            });
        case Field::RoomNamed:
            return !file.rooms().empty();
        default:
            break;
    }
    if (field >= Field::ApplianceKind && field <= Field::ApplianceFlue) {
        return hasOfAppliance(field, on);
    }
    return field >= Field::SituationDanger && field <= Field::SituationWhere ? hasOfSituation(field, on)
                                                                             : hasOfInstruments(field, on);
}

bool Check::has(const Requirement& wanted, const reg::SubjectRef& on) const {
    if (wanted.field) {
        return !applies(wanted, on) || hasField(*wanted.field, on);
    }
    const reg::Entry* entry = file.find(on, *wanted.item);
    if (entry == nullptr || isBlank(entry->text)) {
        return !applies(wanted, on);
    }
    const auto kind = reg::infoOf(*wanted.item).kind;
    if (kind == reg::ItemKind::Instrument) {
        return file.instrumentOf(on, *wanted.item) != nullptr;
    }
    if (kind == reg::ItemKind::Choice || kind == reg::ItemKind::YesNo) {
        return !file.choiceOf(on, *wanted.item).empty();
    }
    return !entry->canonical.empty();
}

}  // namespace

bool isAsked(const Requirement& wanted, const reg::SubjectRef& on, const reg::VisitFile& file,
             const std::vector<judging::Judged>& findings) {
    return Check{file, findings}.applies(wanted, on);
}

bool isMet(const Requirement& wanted, const reg::SubjectRef& on, const reg::VisitFile& file,
           const std::vector<judging::Judged>& findings) {
    return Check{file, findings}.has(wanted, on);
}

}  // namespace hearth::record
