// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/register/doings.h"
#include "core/register/visit_file.h"
#include "core/store/lines.h"

#include <string>
#include <vector>

namespace hearth::store {

/// Whether a list names what was removed from the premises (an appliance with a day in `removedOn`).
enum class Removed { LeftOut, Included };

/// A visit at which an appliance had readings, with the records issued of it.
struct ApplianceVisit {
    VisitLine visit;
    std::vector<RecordLine> records;  // newest first
};
struct ApplianceHistory {
    reg::Appliance appliance;
    std::vector<ApplianceVisit> visits;  // newest first
    std::vector<Change> changes;         // of its own fields, oldest first
};

/// A role with both its ends.
struct RoleLine {
    reg::Role role;
    reg::Party party;
    reg::Address address;  // of the premises
};

/// What can be suggested from what is already kept. Readings can't: a reading is never carried forward.
enum class Suggest { Make, Model, Place, TubeCode, Town };

/// What the firm keeps beside premises, tests and records. save() makes or changes a row (ids are made by
/// newId()); what lies in the bin is in none of the lists. Every writing member gives StoreReadOnly or
/// StoreLocked on a store that is read only, and InBin when a row that lies in the bin would be changed or
/// named.
class Kept {
  public:
    Kept() = default;
    Kept(const Kept&) = delete;
    Kept& operator=(const Kept&) = delete;
    virtual ~Kept() = default;

    // appliances
    /// In their order.
    [[nodiscard]] virtual Result<std::vector<reg::Appliance>> appliances(
        reg::InstallationId id, Removed removed = Removed::LeftOut) const = 0;
    /// Of all installations of the premises, by installation and order.
    [[nodiscard]] virtual Result<std::vector<reg::Appliance>> appliancesOf(
        reg::PremisesId id, Removed removed = Removed::LeftOut) const = 0;
    /// Also one that lies in the bin. Errors: NotFound.
    [[nodiscard]] virtual Result<reg::Appliance> appliance(reg::ApplianceId id) const = 0;
    /// A new one with the position 0 goes to the end of its installation's list.
    [[nodiscard]] virtual Result<void> save(const reg::Appliance& appliance) = 0;
    /// Gives the appliances of an installation the order of `order`; those that it does not name follow.
    /// Errors: NotFound for one of another installation.
    [[nodiscard]] virtual Result<void> orderAppliances(reg::InstallationId id,
                                                       const std::vector<reg::ApplianceId>& order) = 0;
    /// Errors: NotFound.
    [[nodiscard]] virtual Result<ApplianceHistory> historyOf(reg::ApplianceId id) const = 0;

    // competences
    /// By category.
    [[nodiscard]] virtual Result<std::vector<reg::Competence>> competences(reg::EngineerId id) const = 0;
    [[nodiscard]] virtual Result<void> save(const reg::Competence& competence) = 0;
    [[nodiscard]] virtual Result<void> removeCompetence(reg::CompetenceId id) = 0;

    // roles in time; Store::save(Role) makes them
    /// Who held a role on that day. A role without a first day began before every day.
    [[nodiscard]] virtual Result<std::vector<reg::VisitFile::Holder>> holdersAt(
        reg::PremisesId id, calendar::Date date) const = 0;
    /// The whole history, by kind, the newest first.
    [[nodiscard]] virtual Result<std::vector<RoleLine>> rolesOf(reg::PremisesId id) const = 0;
    [[nodiscard]] virtual Result<std::vector<RoleLine>> rolesOf(reg::PartyId id) const = 0;
    /// Ends the standing role of that kind; nothing when there is none. Errors: RoleOverlaps when it began
    /// after that day.
    [[nodiscard]] virtual Result<void> endRole(reg::PremisesId premises, reg::RoleKind kind,
                                               calendar::Date lastDay) = 0;

    // what is done around premises; each list newest first
    [[nodiscard]] virtual Result<std::vector<reg::AccessAttempt>> accessAttempts(
        reg::PremisesId id) const = 0;
    [[nodiscard]] virtual Result<void> save(const reg::AccessAttempt& attempt) = 0;
    [[nodiscard]] virtual Result<std::vector<reg::Letter>> letters(reg::PremisesId id) const = 0;
    [[nodiscard]] virtual Result<std::vector<reg::Letter>> letters(reg::PartyId id) const = 0;
    [[nodiscard]] virtual Result<void> save(const reg::Letter& letter) = 0;
    [[nodiscard]] virtual Result<std::vector<reg::Booking>> bookings(reg::PremisesId id) const = 0;
    /// Of all premises, first and last day included, in the order of the calendar.
    [[nodiscard]] virtual Result<std::vector<reg::Booking>> bookings(calendar::Date first,
                                                                     calendar::Date last) const = 0;
    [[nodiscard]] virtual Result<void> save(const reg::Booking& booking) = 0;

    // unsafe situations
    [[nodiscard]] virtual Result<std::vector<reg::Situation>> situations(reg::PremisesId id) const = 0;
    /// Of all premises, the oldest first: those have waited longest.
    [[nodiscard]] virtual Result<std::vector<reg::Situation>> openSituations() const = 0;
    [[nodiscard]] virtual Result<void> save(const reg::Situation& situation) = 0;
    /// Its course in order.
    [[nodiscard]] virtual Result<std::vector<reg::SituationEvent>> eventsOf(reg::SituationId id) const = 0;
    /// Adds a step to its course. Errors: EventStays for one that is there already: what happened is not
    /// changed.
    [[nodiscard]] virtual Result<void> add(const reg::SituationEvent& event) = 0;

    // emergency contacts
    [[nodiscard]] virtual Result<std::vector<reg::EmergencyContact>> emergencyContacts() const = 0;
    /// One for each country and gas; saving another replaces it.
    [[nodiscard]] virtual Result<void> save(const reg::EmergencyContact& contact) = 0;
    [[nodiscard]] virtual Result<void> removeEmergencyContact(reg::EmergencyContactId id) = 0;

    // what this store is told about itself
    /// Empty when it was never said.
    [[nodiscard]] virtual Result<std::string> setting(const std::string& name) const = 0;
    /// Logged, but no step of undo: the program writes settings too.
    [[nodiscard]] virtual Result<void> saveSetting(const std::string& name, const std::string& value) = 0;

    // the bin
    /// Hides a row of "parties", "premises", "installations", "appliances", "engineers", "instruments",
    /// "competences", "visits", "access_attempts", "letters", "bookings", "situations" or "attachments" from
    /// every list and search, with all that belongs to it alone. Errors: BinKeepsRecords, BinHoldsRole,
    /// BinOpenSituation, BinHasReadings, BinLogo; InBin when it lies there already; NotFound.
    [[nodiscard]] virtual Result<reg::BinnedId> putIntoBin(const std::string& table, const UuidBytes& row,
                                                           const std::string& label) = 0;
    /// Newest first.
    [[nodiscard]] virtual Result<std::vector<reg::Binned>> bin() const = 0;
    /// Everything is as it was. Errors: NotFound.
    [[nodiscard]] virtual Result<void> bringBack(reg::BinnedId id) = 0;
    /// Removes it with what hangs on it, in one action that can't be undone; the change log says only that
    /// the rows are gone. Errors: BinStillUsed when something that stays names it; NotFound.
    [[nodiscard]] virtual Result<void> removeForGood(reg::BinnedId id) = 0;

    // the history of changes
    /// Of everything that belongs to the premises: itself, roles, installations, pipes, appliances, visits
    /// and their readings, attempts, letters, bookings, situations, attachments. Newest first, `limit` lines
    /// after the one that the page before ended with (its `next`).
    [[nodiscard]] virtual Result<ChangePage> changesOfPremises(reg::PremisesId id, int limit = 200,
                                                               std::optional<ChangeId> after = {}) const = 0;
    /// Of what an issued record speaks of: all of its visit, before and after it was issued, and of the
    /// premises itself, beside other visits, until it was issued. Errors: NotFound.
    [[nodiscard]] virtual Result<ChangePage> changesOfRecord(RecordId id, int limit = 200,
                                                             std::optional<ChangeId> after = {}) const = 0;
    /// Oldest first.
    [[nodiscard]] virtual Result<std::vector<RecordEvent>> recordEvents(RecordId id) const = 0;

    // suggestions
    /// Values used before that begin with `typed` (capital or small), those used often and lately first.
    /// `make` narrows models to those of a make.
    [[nodiscard]] virtual Result<std::vector<std::string>> suggestions(Suggest what, const std::string& typed,
                                                                       const std::string& make = {},
                                                                       int limit = 8) const = 0;
    /// The appliances that had readings at the premises' newest visit with any, in their order; all that
    /// stand there when no visit had.
    [[nodiscard]] virtual Result<std::vector<reg::Appliance>> lastAppliances(reg::PremisesId id) const = 0;
};

}  // namespace hearth::store
