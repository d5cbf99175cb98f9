// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/blanks.h"
#include "core/record/kind.h"
#include "core/record/recipient.h"

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

    [[nodiscard]] bool applies(When when, const reg::SubjectRef& on) const;
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
            return inspected || is(on, Item::ApplianceInspected, choice::kVisualOnly);
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
                return appliesToAppliance(When::Seen, reg::subject(a.id));
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
        return !applies(wanted.when, on) || hasField(*wanted.field, on);
    }
    const reg::Entry* entry = file.find(on, *wanted.item);
    if (entry == nullptr || isBlank(entry->text)) {
        return !applies(wanted.when, on);
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

/// Of what a requirement is asked: once of the visit or its installation, or of each test, appliance, room or
/// situation.
reg::SubjectKind askedOf(const Requirement& wanted) {
    if (wanted.item) {
        return reg::infoOf(*wanted.item).subject;
    }
    switch (*wanted.field) {
        case Field::InstrumentSerial:
        case Field::InstrumentCalibration:
            return reg::SubjectKind::Test;
        case Field::InstallationGas:
        case Field::InstallationMeter:
        case Field::PipeOrVolume:
        case Field::PipeOrder:
            return reg::SubjectKind::Installation;
        case Field::ApplianceKind:
        case Field::ApplianceMake:
        case Field::ApplianceModel:
        case Field::ApplianceSerial:
        case Field::AppliancePlace:
        case Field::ApplianceFlue:
            return reg::SubjectKind::Appliance;
        case Field::SituationDanger:
        case Field::SituationWhat:
        case Field::SituationWhere:
            return reg::SubjectKind::Situation;
        default:
            return reg::SubjectKind::Visit;
    }
}

/// What is asked of each of several stands together: a group is asked of one subject after the other. Rooms
/// and the readings taken in them are subjects of one kind, but two groups.
struct AskedGroup {
    reg::SubjectKind kind = reg::SubjectKind::Visit;
    bool reading = false;
    bool operator==(const AskedGroup&) const = default;
};
AskedGroup groupOf(const Requirement& wanted) {
    const auto kind = askedOf(wanted);
    const bool reading =
        wanted.item == Item::RoomCo || wanted.item == Item::RoomCoAt || wanted.item == Item::RoomCoPlace;
    return {kind == reg::SubjectKind::Installation ? reg::SubjectKind::Visit : kind, reading};
}

/// Nothing there, where there must be one, is asked of nobody in particular.
template <class List>
std::vector<reg::SubjectRef> subjectsOf(const List& list, reg::SubjectKind kind, bool oneAtLeast) {
    std::vector<reg::SubjectRef> subjects;
    subjects.reserve(list.size() + 1);
    for (const auto& one : list) {
        subjects.push_back(reg::subject(one.id));
    }
    if (subjects.empty() && oneAtLeast) {
        subjects.push_back({kind, {}});
    }
    return subjects;
}

std::vector<reg::SubjectRef> readingsOf(const VisitFile& file) {
    auto readings = file.roomReadings();
    return readings.empty() ? std::vector<reg::SubjectRef>{{reg::SubjectKind::Room, {}}} : readings;
}

std::vector<reg::SubjectRef> asked(AskedGroup group, RecordKind kind, const VisitFile& file) {
    switch (group.kind) {
        case reg::SubjectKind::Test:
            return testsFor(file);
        case reg::SubjectKind::Appliance:
            return subjectsOf(appliancesFor(kind, file), group.kind, kind != RecordKind::RoomInvestigation);
        case reg::SubjectKind::Room:
            // A record that one is asked of says so by Field::RoomNamed.
            return group.reading ? readingsOf(file) : file.rooms();
        case reg::SubjectKind::Situation:
            return subjectsOf(file.situations, group.kind,
                              kind == RecordKind::WarningNotice || kind == RecordKind::ReportableEntry);
        case reg::SubjectKind::Visit:
        case reg::SubjectKind::Installation:
            break;
    }
    return {reg::subject(file.visit.id)};
}

void checkOne(const Check& check, const Requirement& wanted, const reg::SubjectRef& on,
              std::vector<Missing>& missing) {
    if (check.has(wanted, on)) {
        return;
    }
    const reg::Entry* entry = wanted.item ? check.file.find(on, *wanted.item) : nullptr;
    // These two are never empty: missing, they were typed so that they can't be read.
    const bool typed = (entry != nullptr && !isBlank(entry->text)) || wanted.field == Field::PipeOrder ||
                       wanted.field == Field::VisitDate;
    missing.push_back({wanted.item, wanted.field, on, std::string(wanted.source), typed});
}

}  // namespace

bool isAsked(const Requirement& wanted, const reg::SubjectRef& on, const reg::VisitFile& file,
             const std::vector<judging::Judged>& findings) {
    return Check{file, findings}.applies(wanted.when, on);
}

std::vector<Missing> missingFor(RecordKind kind, const reg::VisitFile& file,
                                const std::vector<judging::Judged>& findings) {
    const Check check{file, findings};
    const auto wanted = requirementsOf(kind);
    std::vector<Missing> missing;
    for (auto first = wanted.begin(); first != wanted.end();) {
        const auto group = groupOf(*first);
        const auto last =
            std::find_if_not(first, wanted.end(), [&](const Requirement& w) { return groupOf(w) == group; });
        for (const auto& on : asked(group, kind, file)) {
            std::for_each(first, last, [&](const Requirement& one) {
                const bool installation = askedOf(one) == reg::SubjectKind::Installation;
                checkOne(check, one, installation ? reg::subject(file.installation.id) : on, missing);
            });
        }
        first = last;
    }
    return missing;
}

}  // namespace hearth::record
