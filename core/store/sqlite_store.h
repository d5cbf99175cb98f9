// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/opening.h"
#include "core/store/session.h"
#include "core/store/store.h"

#include <string>
#include <utility>
#include <vector>

namespace hearth::store {

/// The store on one SQLite file. Each member stands at the border of this folder: it hands the work to a
/// repository and turns what that throws into a Result.
class SqliteStore final : public Store {
  public:
    /// Throws Failure for a store that can't say who it is.
    SqliteStore(Opened opened, std::filesystem::path path, const Clock& clock);

    [[nodiscard]] bool isReadOnly() const override { return m_opened.readOnly.has_value(); }
    [[nodiscard]] Error whyReadOnly() const override;
    [[nodiscard]] std::filesystem::path path() const override { return m_path; }
    [[nodiscard]] std::filesystem::path migrationBackup() const override { return m_opened.migrationBackup; }
    void actAs(const std::string& name) override { m_session.actor = name; }

    [[nodiscard]] Result<void> together(const std::function<Result<void>()>& writes, Steps steps) override;
    [[nodiscard]] Result<record::RegisterRows> registerRows() const override;
    [[nodiscard]] Result<void> eachChange(const std::function<void(const Change&)>& take) const override;
    [[nodiscard]] int schema() const override;
    [[nodiscard]] Result<void> readWhole(
        const std::function<Result<void>(const record::WholeTable&)>& begin,
        const std::function<Result<void>(const record::WholeTable&, const record::WholeRow&)>& take)
        const override;

    [[nodiscard]] Result<reg::Firm> firm() const override;
    [[nodiscard]] Result<void> saveFirm(const reg::Firm& firm) override;
    [[nodiscard]] Result<std::vector<reg::Engineer>> engineers() const override;
    [[nodiscard]] Result<void> save(const reg::Engineer& engineer) override;
    [[nodiscard]] Result<std::vector<reg::Instrument>> instruments() const override;
    [[nodiscard]] Result<void> save(const reg::Instrument& instrument) override;

    [[nodiscard]] Result<rulebook::RuleBook> ruleBook() const override;
    [[nodiscard]] Result<void> save(const rulebook::FirmEntry& entry) override;
    [[nodiscard]] Result<std::vector<rulebook::FirmEntry>> ruleHistory(
        const rulebook::RuleKey& key) const override;

    [[nodiscard]] UuidBytes newId() override { return m_session.newId(); }
    [[nodiscard]] Result<std::vector<PremisesLine>> premises(const std::string& search,
                                                             int limit) const override;
    [[nodiscard]] Result<reg::Premises> premises(reg::PremisesId id) const override;
    [[nodiscard]] Result<void> save(const reg::Premises& premises) override;
    [[nodiscard]] Result<std::vector<reg::Party>> parties(const std::string& search,
                                                          int limit) const override;
    [[nodiscard]] Result<void> save(const reg::Party& party) override;
    [[nodiscard]] Result<std::vector<reg::VisitFile::Holder>> holders(reg::PremisesId id) const override;
    [[nodiscard]] Result<void> save(const reg::Role& role) override;
    [[nodiscard]] Result<void> removeRole(reg::PremisesId premises, reg::RoleKind kind) override;
    [[nodiscard]] Result<std::vector<reg::Installation>> installations(reg::PremisesId id) const override;
    [[nodiscard]] Result<void> save(const reg::Installation& installation) override;
    [[nodiscard]] Result<std::vector<reg::PipeSection>> pipes(reg::InstallationId id) const override;
    [[nodiscard]] Result<void> savePipes(reg::InstallationId id,
                                         const std::vector<reg::PipeSection>& sections) override;

    [[nodiscard]] Result<std::vector<VisitLine>> visits(const std::string& search, int limit) const override;
    [[nodiscard]] Result<std::vector<VisitLine>> visitsOf(reg::PremisesId id) const override;
    [[nodiscard]] Result<reg::VisitId> startVisit(const reg::Visit& visit) override;
    [[nodiscard]] Result<void> save(const reg::Visit& visit) override;
    [[nodiscard]] Result<reg::TestId> addTest(reg::VisitId visit, const std::string& label) override;
    [[nodiscard]] Result<reg::VisitFile> visitFile(reg::VisitId id) const override;
    [[nodiscard]] Result<void> saveEntry(const reg::Entry& entry) override;

    [[nodiscard]] Result<RecordId> issue(const IssueRequest& request, const Render& render) override;
    [[nodiscard]] Result<std::vector<RecordLine>> records(const std::string& search,
                                                          int limit) const override;
    [[nodiscard]] Result<std::vector<RecordLine>> recordsOf(reg::VisitId id) const override;
    [[nodiscard]] Result<IssuedRecord> record(RecordId id) const override;
    [[nodiscard]] Result<std::optional<RecordId>> recordByNumber(const std::string& number) const override;
    [[nodiscard]] Result<void> verify() const override;
    [[nodiscard]] Result<void> noteEvent(RecordId id, const std::string& event,
                                         const std::string& detail) override;

    [[nodiscard]] Result<std::vector<Change>> changes(const std::string& table,
                                                      const std::string& row) const override;
    [[nodiscard]] Result<std::vector<Change>> changesOfVisit(reg::VisitId id) const override;
    [[nodiscard]] Result<std::optional<Change>> undo() override;

    [[nodiscard]] Result<std::vector<reg::Appliance>> appliances(reg::InstallationId id,
                                                                 Removed removed) const override;
    [[nodiscard]] Result<std::vector<reg::Appliance>> appliancesOf(reg::PremisesId id,
                                                                   Removed removed) const override;
    [[nodiscard]] Result<reg::Appliance> appliance(reg::ApplianceId id) const override;
    [[nodiscard]] Result<void> save(const reg::Appliance& appliance) override;
    [[nodiscard]] Result<void> orderAppliances(reg::InstallationId id,
                                               const std::vector<reg::ApplianceId>& order) override;
    [[nodiscard]] Result<ApplianceHistory> historyOf(reg::ApplianceId id) const override;
    [[nodiscard]] Result<std::vector<reg::Competence>> competences(reg::EngineerId id) const override;
    [[nodiscard]] Result<void> save(const reg::Competence& competence) override;
    [[nodiscard]] Result<void> removeCompetence(reg::CompetenceId id) override;
    [[nodiscard]] Result<std::vector<reg::VisitFile::Holder>> holdersAt(reg::PremisesId id,
                                                                        calendar::Date date) const override;
    [[nodiscard]] Result<std::vector<RoleLine>> rolesOf(reg::PremisesId id) const override;
    [[nodiscard]] Result<std::vector<RoleLine>> rolesOf(reg::PartyId id) const override;
    [[nodiscard]] Result<void> endRole(reg::PremisesId premises, reg::RoleKind kind,
                                       calendar::Date lastDay) override;
    [[nodiscard]] Result<std::vector<reg::AccessAttempt>> accessAttempts(reg::PremisesId id) const override;
    [[nodiscard]] Result<void> save(const reg::AccessAttempt& attempt) override;
    [[nodiscard]] Result<std::vector<reg::Letter>> letters(reg::PremisesId id) const override;
    [[nodiscard]] Result<std::vector<reg::Letter>> letters(reg::PartyId id) const override;
    [[nodiscard]] Result<void> save(const reg::Letter& letter) override;
    [[nodiscard]] Result<std::vector<reg::Booking>> bookings(reg::PremisesId id) const override;
    [[nodiscard]] Result<std::vector<reg::Booking>> bookings(calendar::Date first,
                                                             calendar::Date last) const override;
    [[nodiscard]] Result<void> save(const reg::Booking& booking) override;
    [[nodiscard]] Result<std::vector<reg::Situation>> situations(reg::PremisesId id) const override;
    [[nodiscard]] Result<std::vector<reg::Situation>> openSituations() const override;
    [[nodiscard]] Result<void> save(const reg::Situation& situation) override;
    [[nodiscard]] Result<std::vector<reg::SituationEvent>> eventsOf(reg::SituationId id) const override;
    [[nodiscard]] Result<void> add(const reg::SituationEvent& event) override;
    [[nodiscard]] Result<std::vector<reg::EmergencyContact>> emergencyContacts() const override;
    [[nodiscard]] Result<void> save(const reg::EmergencyContact& contact) override;
    [[nodiscard]] Result<void> removeEmergencyContact(reg::EmergencyContactId id) override;
    [[nodiscard]] Result<std::string> setting(const std::string& name) const override;
    [[nodiscard]] Result<void> saveSetting(const std::string& name, const std::string& value) override;
    [[nodiscard]] Result<reg::BinnedId> putIntoBin(const std::string& table, const UuidBytes& row,
                                                   const std::string& label) override;
    [[nodiscard]] Result<std::vector<reg::Binned>> bin() const override;
    [[nodiscard]] Result<void> bringBack(reg::BinnedId id) override;
    [[nodiscard]] Result<void> removeForGood(reg::BinnedId id) override;
    [[nodiscard]] Result<ChangePage> changesOfPremises(reg::PremisesId id, int limit,
                                                       std::optional<ChangeId> after) const override;
    [[nodiscard]] Result<ChangePage> changesOfRecord(RecordId id, int limit,
                                                     std::optional<ChangeId> after) const override;
    [[nodiscard]] Result<std::vector<RecordEvent>> recordEvents(RecordId id) const override;
    [[nodiscard]] Result<std::vector<std::string>> suggestions(Suggest what, const std::string& typed,
                                                               const std::string& make,
                                                               int limit) const override;
    [[nodiscard]] Result<std::vector<reg::Appliance>> lastAppliances(reg::PremisesId id) const override;

    [[nodiscard]] Result<void> sign(const reg::HandSignature& signature) override;
    [[nodiscard]] Result<void> unsign(reg::VisitId visit, const std::string& recordKind,
                                      reg::Signer signer) override;

    [[nodiscard]] Result<reg::GaugeTraceId> keepTrace(const NewTrace& trace) override;
    [[nodiscard]] Result<reg::GaugeTraceId> keepRoomTrace(const NewRoomTrace& trace) override;
    [[nodiscard]] Result<void> markTrace(reg::GaugeTraceId id, const reg::TraceMarks& marks) override;
    [[nodiscard]] Result<std::string> recordOfTrace(reg::GaugeTraceId id) const override;
    [[nodiscard]] Result<void> removeTrace(reg::GaugeTraceId id) override;
    [[nodiscard]] Result<tightness::Trace> traceReadings(reg::GaugeTraceId id) const override;
    [[nodiscard]] Result<std::vector<air::CoReading>> roomTraceReadings(reg::GaugeTraceId id) const override;

    [[nodiscard]] Result<NextNumber> nextNumber() const override;

    [[nodiscard]] Result<reg::AttachmentId> attach(const NewAttachment& attachment) override;
    [[nodiscard]] Result<reg::AttachmentId> attachLogo(const NewAttachment& picture) override;
    [[nodiscard]] Result<std::vector<reg::Attachment>> attachmentsOf(const UuidBytes& owner) const override;
    [[nodiscard]] Result<std::string> attachmentBytes(reg::AttachmentId id) const override;
    [[nodiscard]] Result<std::string> thumbnailOf(reg::AttachmentId id) const override;
    [[nodiscard]] Result<void> describeAttachment(reg::AttachmentId id, const std::string& name,
                                                  const std::string& note) override;
    [[nodiscard]] Result<void> showInRecords(reg::AttachmentId id,
                                             const std::optional<reg::VisitId>& visit) override;
    [[nodiscard]] Result<void> detach(reg::AttachmentId id) override;
    [[nodiscard]] Result<std::int64_t> dropUnusedBytes() override;

    [[nodiscard]] Result<PersonFile> heldAbout(reg::PartyId id) const override;
    [[nodiscard]] Result<Erasure> erasureOf(reg::PartyId id) const override;
    [[nodiscard]] Result<Erasure> erase(reg::PartyId id) override;
    [[nodiscard]] Result<std::vector<MayGo>> mayGo(calendar::Date today, int limit) const override;
    [[nodiscard]] Result<std::vector<LetterMayGo>> lettersMayGo(calendar::Date today,
                                                                int limit) const override;
    [[nodiscard]] Result<void> letGo(const LettingGo& what) override;
    [[nodiscard]] Result<void> hold(RecordId id, const std::string& reason) override;
    [[nodiscard]] Result<void> liftHold(RecordId id) override;
    [[nodiscard]] Result<Hits> find(const std::string& typed, std::size_t most) const override;
    [[nodiscard]] Result<int> premisesCount() const override;
    [[nodiscard]] Result<std::vector<PremisesLine>> premisesPage(int first, int count,
                                                                 std::optional<int> all) const override;
    [[nodiscard]] Result<std::optional<int>> premisesRow(reg::PremisesId id) const override;
    [[nodiscard]] Result<int> staleInSearch() const override;
    [[nodiscard]] Result<void> mendSearch() override;

    [[nodiscard]] Result<record::Proof> proveFile(const std::string& bytes) const override;
    [[nodiscard]] Result<record::Proof> proveClaim(const record::Claim& claim) const override;
    [[nodiscard]] Result<void> voidRecord(RecordId id, const std::string& why) override;
    [[nodiscard]] Result<std::vector<RecordLine>> recordsChosen(const RecordChoice& choice) const override;
    [[nodiscard]] Result<void> noteSending(RecordId id, const record::Sending& sending) override;
    [[nodiscard]] Result<std::vector<record::Sending>> sendings(RecordId id) const override;
    [[nodiscard]] Result<std::vector<record::CopyHolder>> holdersToTell(RecordId id) const override;

    [[nodiscard]] Result<std::vector<KeyLine>> signingKeys() const override;
    [[nodiscard]] Result<void> makeSigningKey(const std::string& passphrase) override;
    [[nodiscard]] Result<OpenedKey> openSigningKey(const std::string& passphrase) const override;
    void signWith(const std::optional<OpenedKey>& key) override;
    [[nodiscard]] bool canSign() const override { return m_session.signer.has_value(); }
    [[nodiscard]] Result<int> waitingForSignature() const override;
    [[nodiscard]] Result<int> signWaiting(int most) override;
    [[nodiscard]] Result<std::optional<RecordSignature>> signatureOf(RecordId id) const override;

    [[nodiscard]] Result<DueCounts> dueCounts(const DueFilter& filter, calendar::Date today) const override;
    [[nodiscard]] Result<std::vector<DueLine>> duePage(const DueFilter& filter, DueSort sort,
                                                       calendar::Date today, int first, int count,
                                                       const std::optional<DueCounts>& counts) const override;
    [[nodiscard]] Result<std::vector<DueChoice>> dueChoices(DueBy by, calendar::Date today) const override;
    [[nodiscard]] Result<std::vector<DueLine>> overdueSince(calendar::Date since,
                                                            calendar::Date today) const override;
    [[nodiscard]] Result<DueFile> dueFile(reg::PremisesId id, calendar::Date today) const override;
    [[nodiscard]] Result<std::vector<StoryEvent>> storyOf(reg::PremisesId id,
                                                          calendar::Date today) const override;
    [[nodiscard]] Result<std::vector<std::string>> newestRecords(
        const std::vector<reg::PremisesId>& premises) const override;
    [[nodiscard]] Result<std::vector<DueIfChecked>> dueIfChecked(const std::vector<reg::PremisesId>& premises,
                                                                 calendar::Date day) const override;
    [[nodiscard]] Result<void> save(const reg::CheckPlan& plan) override;
    [[nodiscard]] Result<std::vector<reg::EarlierCheck>> earlierChecks(reg::PremisesId id) const override;
    [[nodiscard]] Result<void> save(const reg::EarlierCheck& check) override;
    [[nodiscard]] Result<void> save(const reg::EarlierCheck& check, const NewAttachment& scan) override;
    [[nodiscard]] Result<void> removeEarlierCheck(reg::EarlierCheckId id) override;
    [[nodiscard]] Result<void> save(const reg::CheckExtension& extension) override;
    [[nodiscard]] Result<std::vector<Clash>> clashesOf(const reg::Booking& booking,
                                                       calendar::Date today) const override;
    [[nodiscard]] Result<std::vector<reg::BookingId>> book(
        const std::vector<reg::Booking>& bookings) override;
    [[nodiscard]] Result<void> moveBooking(reg::BookingId id, calendar::Date date, const std::string& from,
                                           const std::string& until,
                                           std::optional<reg::EngineerId> engineer) override;
    [[nodiscard]] Result<void> cancelBooking(reg::BookingId id, const std::string& why) override;
    [[nodiscard]] Result<reg::LetterId> logCall(const Call& call) override;
    [[nodiscard]] Result<std::vector<reg::LetterId>> keepSent(
        const std::vector<SentLetter>& letters) override;
    [[nodiscard]] Result<reg::AccessAttemptId> logNoAccess(const NoAccess& what) override;
    [[nodiscard]] Result<std::vector<reg::PremisesId>> copyPremises(
        reg::PremisesId id, const std::vector<AlikePremises>& alike) override;
    [[nodiscard]] Result<calendar::BankHolidays> bankHolidays() const override;
    [[nodiscard]] Result<void> saveBankHolidays(const std::optional<calendar::BankHolidays>& table) override;
    [[nodiscard]] Result<calendar::Cadence> cadence() const override;
    [[nodiscard]] Result<void> saveCadence(const calendar::Cadence& cadence) override;
    [[nodiscard]] Result<int> ownInterval() const override;
    [[nodiscard]] Result<void> saveOwnInterval(int months) override;
    [[nodiscard]] Result<std::vector<Reminder>> remindersDue(const DueFilter& filter,
                                                             calendar::Date today) const override;
    [[nodiscard]] Result<std::vector<Reminder>> remindersFor(const std::vector<reg::PremisesId>& premises,
                                                             calendar::Date today) const override;
    [[nodiscard]] Result<std::vector<DayStop>> dayRound(std::optional<reg::EngineerId> engineer,
                                                        calendar::Date day) const override;
    [[nodiscard]] Result<DueOverview> dueOverview(calendar::Date today) const override;
    [[nodiscard]] Result<int> staleInDue() const override;
    [[nodiscard]] Result<void> mendDue() override;
    [[nodiscard]] Result<std::vector<record::CheckHistory>> checksBefore(reg::VisitId visit) const override;
    [[nodiscard]] Result<std::vector<DutyLine>> dutiesOpen(
        calendar::Date today, std::optional<reg::PremisesId> premises) const override;

    [[nodiscard]] Result<BackupState> backupState() const override;
    [[nodiscard]] Result<BackupJob> backupJob() const override;
    [[nodiscard]] Result<std::optional<BackupJob>> backupDue(BackupOccasion occasion) const override;
    [[nodiscard]] Result<void> noteBackup(const BackupOutcome& outcome) override;
    [[nodiscard]] Result<void> setSecondFolder(const std::filesystem::path& folder) override;
    [[nodiscard]] Result<void> setSealing(const std::string& sealing) override;

    [[nodiscard]] Result<void> backUp(const std::filesystem::path& target) const override;

  private:
    /// Runs `work` when the store may be written to.
    template <class Work>
    [[nodiscard]] auto changing(Work work) -> Result<std::invoke_result_t<Work>> {
        if (m_opened.readOnly) {
            return tl::unexpected<Error>(*m_opened.readOnly);
        }
        return guarded([&] {
            checkStillOurs();
            return work();
        });
    }
    /// Throws StoreMoved when somebody has copied another store over the file.
    void checkStillOurs();

    Opened m_opened;
    std::filesystem::path m_path;
    Connection& m_db;
    Session m_session;
    std::optional<BackupOutcome> m_unnoted;  // what could not be written into the store
    std::int64_t m_dataVersion;              // of the file, as far as this connection has seen it
};

}  // namespace hearth::store
