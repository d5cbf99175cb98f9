// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/kept_fixture.h"

#include "tests/core/store/due_fixture.h"

namespace hearth::store {
namespace {

using quantity::UnitCode;

const std::vector<std::string> kChangedTables{"firm",
                                              "parties",
                                              "premises",
                                              "roles",
                                              "installations",
                                              "pipe_sections",
                                              "engineers",
                                              "instruments",
                                              "visits",
                                              "tests",
                                              "traces",
                                              "entries",
                                              "appliances",
                                              "competences",
                                              "access_attempts",
                                              "letters",
                                              "bookings",
                                              "situations",
                                              "situation_events",
                                              "emergency_contacts",
                                              "attachments",
                                              "bin",
                                              "settings",
                                              "check_plans",
                                              "earlier_checks",
                                              "check_extensions",
                                              "due_premises",
                                              "search_text"};

template <class Value>
Result<void> noValue(const Result<Value>& result) {
    return result ? Result<void>() : Result<void>(tl::unexpected<Error>(result.error()));
}

Result<void> saveKeptAppliance(Store& store, const Sample& sample) {
    return store.save(fullAppliance(store, sample.installation.id));
}

Result<void> turnAppliances(Store& store, const Sample& sample) {
    std::vector<reg::ApplianceId> order;
    for (const auto& appliance : valueOf(store.appliances(sample.installation.id))) {
        order.insert(order.begin(), appliance.id);
    }
    return store.orderAppliances(sample.installation.id, order);
}

Result<void> twoAppliances(Store& store, const Sample& sample) {
    const auto first = saveKeptAppliance(store, sample);
    return first ? saveKeptAppliance(store, sample) : first;
}

Result<void> saveKeptCompetence(Store& store, const Sample& sample) {
    return store.save(reg::Competence{{store.newId()}, sample.engineer.id, "CCN1", day(2028, 3, 1), ""});
}

Result<void> dropCompetence(Store& store, const Sample& sample) {
    return store.removeCompetence(valueOf(store.competences(sample.engineer.id)).front().id);
}

Result<void> followHolder(Store& store, const Sample& sample) {
    return store.save(reg::Role{{store.newId()},
                                sample.premises.id,
                                sample.customer.id,
                                reg::RoleKind::Landlord,
                                day(2026, 5, 1),
                                {}});
}

Result<void> someHolder(Store& store, const Sample& sample) {
    reg::Party party;
    party.id = {store.newId()};
    party.name = "Nell Harrow";
    valueOf(store.save(party));
    return store.save(reg::Role{
        {store.newId()}, sample.premises.id, party.id, reg::RoleKind::Landlord, day(2020, 1, 1), {}});
}

Result<void> endHolder(Store& store, const Sample& sample) {
    return store.endRole(sample.premises.id, reg::RoleKind::Landlord, day(2026, 11, 1));
}

Result<void> saveKeptAttempt(Store& store, const Sample& sample) {
    reg::AccessAttempt attempt;
    attempt.id = {store.newId()};
    attempt.premises = sample.premises.id;
    attempt.at = Instant(std::chrono::milliseconds(1795000000000));
    attempt.who = "Tamsin Ember";
    attempt.channel = reg::Channel::Telephone;
    attempt.left = "message";
    attempt.response = "none";
    attempt.nextStep = "letter";
    attempt.nextOn = day(2026, 12, 2);
    return store.save(attempt);
}

Result<void> saveKeptLetter(Store& store, const Sample& sample) {
    return store.save(reg::Letter{{store.newId()},
                                  sample.premises.id,
                                  sample.customer.id,
                                  "reminder",
                                  reg::Channel::Email,
                                  "llyr@obrien.example",
                                  "The check is due.\nPlease ring.",
                                  Instant(std::chrono::milliseconds(1795000000000)),
                                  "answered"});
}

Result<void> saveKeptBooking(Store& store, const Sample& sample) {
    return store.save(reg::Booking{{store.newId()},
                                   sample.premises.id,
                                   std::nullopt,
                                   sample.engineer.id,
                                   day(2026, 12, 3),
                                   "09:30",
                                   "11:00",
                                   reg::BookingState::Proposed,
                                   "ring first",
                                   1});
}

Result<void> saveKeptSituation(Store& store, const Sample& sample) {
    reg::Situation situation;
    situation.id = {store.newId()};
    situation.premises = sample.premises.id;
    situation.installation = sample.installation.id;
    situation.foundAt = Instant(std::chrono::milliseconds(1795000000000));
    situation.danger = reg::Danger::AtRisk;
    situation.what = "flue not supported";
    situation.where = "loft";
    return store.save(situation);
}

Result<void> addKeptEvent(Store& store, const Sample& sample) {
    return store.add(reg::SituationEvent{{store.newId()},
                                         valueOf(store.situations(sample.premises.id)).front().id,
                                         Instant(std::chrono::milliseconds(1795000060000)),
                                         "told",
                                         "the tenant, in person",
                                         "Tamsin Ember"});
}

Result<void> saveKeptContact(Store& store, const Sample& /*sample*/) {
    return store.save(reg::EmergencyContact{{store.newId()},
                                            reg::Country::Wales,
                                            rulebook::Gas::NaturalGas,
                                            "the valley's own line",
                                            "01632 960099"});
}

Result<void> dropContact(Store& store, const Sample& /*sample*/) {
    return store.removeEmergencyContact(valueOf(store.emergencyContacts()).front().id);
}

Result<void> saveKeptSetting(Store& store, const Sample& /*sample*/) {
    return store.saveSetting("told", uuidText(store.newId()));
}

Result<void> binAppliance(Store& store, const Sample& sample) {
    const auto id = valueOf(store.appliances(sample.installation.id)).front().id;
    return noValue(store.putIntoBin("appliances", id.bytes, "cooker in the kitchen"));
}

Result<void> someBinned(Store& store, const Sample& sample) {
    const auto saved = saveKeptAppliance(store, sample);
    return saved ? binAppliance(store, sample) : saved;
}

Result<void> bringOneBack(Store& store, const Sample& /*sample*/) {
    return store.bringBack(valueOf(store.bin()).front().id);
}

Result<void> removeOneForGood(Store& store, const Sample& /*sample*/) {
    return store.removeForGood(valueOf(store.bin()).front().id);
}

}  // namespace

calendar::Date day(int year, unsigned month, unsigned dayOfMonth) {
    return calendar::Date{std::chrono::year(year), std::chrono::month(month), std::chrono::day(dayOfMonth)};
}

reg::Appliance fullAppliance(Store& store, reg::InstallationId installation) {
    reg::Appliance appliance;
    appliance.id = {store.newId()};
    appliance.installation = installation;
    appliance.kind = "cooker";
    appliance.make = "Emberline";
    appliance.model = "Highcroft 60";
    appliance.serial = "EL-0042";
    appliance.gcNumber = "11-222-33";
    appliance.place = "kitchen";
    appliance.flue = reg::FlueType::Flueless;
    appliance.gas = rulebook::Gas::NaturalGas;
    appliance.netInput = {"11.2", UnitCode::Kilowatt};
    appliance.grossInput = {"12.4", UnitCode::Kilowatt};
    appliance.installedOn = day(2019, 4, 1);
    appliance.owner = reg::Owner::Tenant;
    appliance.makerRatio = {"0.004", UnitCode::None};
    appliance.makerCo = {"50", UnitCode::Ppm};
    appliance.makerInletLeast = {"17", UnitCode::Millibar};
    appliance.makerInletMost = {"25", UnitCode::Millibar};
    appliance.makerBurnerLeast = {"14.5", UnitCode::Millibar};
    appliance.makerBurnerMost = {"15.5", UnitCode::Millibar};
    appliance.makerTolerance = {"0.5", UnitCode::Millibar};
    appliance.makerSource = "instructions, page 12";
    appliance.removedOnText = "";
    appliance.notes = "lid switch renewed";
    return appliance;
}

reg::Entry applianceEntry(reg::VisitId visit, reg::ApplianceId appliance, const std::string& ppm) {
    reg::Entry entry;
    entry.visit = visit;
    entry.subject = reg::subject(appliance);
    entry.item = reg::Item::FlueCoHigh;
    entry.text = ppm;
    entry.unit = UnitCode::Ppm;
    return entry;
}

namespace {

const std::vector<KeptAction>& usualActions() {
    static const std::vector<KeptAction> kActions{
        {"appliance", "save reg::Appliance", saveKeptAppliance},
        {"order", "orderAppliances", turnAppliances, twoAppliances},
        {"competence", "save reg::Competence", saveKeptCompetence},
        {"drop_competence", "removeCompetence", dropCompetence, saveKeptCompetence},
        {"holder", "save reg::Role", followHolder, someHolder},
        {"end_role", "endRole", endHolder, followHolder},
        {"attempt", "save reg::AccessAttempt", saveKeptAttempt},
        {"letter", "save reg::Letter", saveKeptLetter},
        {"booking", "save reg::Booking", saveKeptBooking},
        {"situation", "save reg::Situation", saveKeptSituation},
        {"situation_event", "add", addKeptEvent, saveKeptSituation},
        {"contact", "save reg::EmergencyContact", saveKeptContact},
        {"drop_contact", "removeEmergencyContact", dropContact, saveKeptContact},
        {"setting", "saveSetting", saveKeptSetting, {}, false},
        {"bin", "putIntoBin", binAppliance, saveKeptAppliance},
        {"bring_back", "bringBack", bringOneBack, someBinned},
        {"remove_for_good", "removeForGood", removeOneForGood, someBinned, false},
        {"bin_again", "putIntoBin", binAppliance, twoAppliances},
    };
    return kActions;
}

}  // namespace

const std::vector<KeptAction>& keptActions() {
    static const std::vector<KeptAction> kAll = [] {
        auto all = usualActions();
        const auto& due = dueActions();
        all.insert(all.begin(), due.begin(), due.end());
        return all;
    }();
    return kAll;
}

void KeptTest::SetUp() {
    StoreTest::SetUp();
    sample = putSample(*store);
}

reg::ApplianceId KeptTest::addAppliance(const std::string& kind) {
    reg::Appliance appliance;
    appliance.id = {store->newId()};
    appliance.installation = sample.installation.id;
    appliance.kind = kind;
    valueOf(store->save(appliance));
    return appliance.id;
}

std::vector<std::string> KeptTest::kindsHere() const {
    std::vector<std::string> kinds;
    for (const auto& appliance : valueOf(store->appliances(sample.installation.id))) {
        kinds.push_back(appliance.kind);
    }
    return kinds;
}

reg::Installation KeptTest::otherInstallation() {
    reg::Installation flat;
    flat.id = {store->newId()};
    flat.premises = sample.premises.id;
    flat.name = "flat above";
    valueOf(store->save(flat));
    return flat;
}

std::string everythingIn(const std::filesystem::path& path) {
    std::string all;
    for (const auto& table : kChangedTables) {
        const std::string columns =
            askSql(path, "SELECT group_concat('quote(' || name || ')', '||') FROM pragma_table_info('" +
                             table + "')");
        all += table + ": " +
               askSql(path, "SELECT group_concat(r, '; ') FROM (SELECT " + columns + " AS r FROM " + table +
                                " ORDER BY r)") +
               "\n";
    }
    return all;
}

}  // namespace hearth::store
