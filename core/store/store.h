// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/base/result.h"
#include "core/record/kind.h"
#include "core/record/snapshot.h"
#include "core/register/visit_file.h"
#include "core/rulebook/rule_book.h"
#include "core/store/attachments.h"
#include "core/store/backups.h"
#include "core/store/due.h"
#include "core/store/duties.h"
#include "core/store/finding.h"
#include "core/store/hands.h"
#include "core/store/kept.h"
#include "core/store/lines.h"
#include "core/store/numbering.h"
#include "core/store/privacy.h"
#include "core/store/proving.h"
#include "core/store/signing.h"
#include "core/store/traces.h"
#include "core/store/whole.h"

#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

/// Everything that the firm keeps, in one SQLite file. Only this folder knows SQL. One writer, one
/// connection; a second program on the same file gets it read-only and can say so. Every call that writes is
/// one transaction that is on the disk when the call returns, or has changed nothing.
namespace hearth::store {

enum class Access {
    Write,        // fails with StoreLocked when another program holds it
    WriteOrRead,  // read-only then (isReadOnly(), whyReadOnly())
    Read,
};

struct IssuedRecord {
    RecordLine line;
    record::Document document;
    std::string snapshotJson;
    std::string pdf;  // bytes as issued
};

/// What to issue. The store fills number, revision and digest.
struct IssueRequest {
    record::RecordKind kind = record::RecordKind::TightnessAndPurge;
    record::Snapshot snapshot;
    rulebook::Outcome outcome = rulebook::Outcome::NoVerdict;
    std::optional<RecordId> supersedes;  // for a revision, with its reason
    std::string reason;
};
/// Called inside the transaction with the document numbered and the snapshot's digest; gives the PDF's bytes.
using Render =
    std::function<Result<std::string>(const record::Document& numbered, const std::string& digest)>;

/// Health of a store, for the command line and the firm's page.
struct Health {
    std::string path;
    int schema = 0;
    std::string integrity;  // "ok" or the first lines of what SQLite found
    Result<void> chain;     // the records' chain and digests
    /// Records that by the clock were issued before the one ahead of them: it was set back.
    std::vector<std::string> outOfTime;
    int signatures = 0;                        // that hold over their record's PDF
    std::vector<std::string> wrongSignatures;  // records whose signature doesn't
    int records = 0;
    int letGo = 0;  // of them: erased since their keeping was over
    int visits = 0;
    int premises = 0;
    int staleDue = 0;  // premises whose next deadline is listed otherwise than it follows
    bool demonstration = false;

    [[nodiscard]] bool isSound() const {
        return integrity == "ok" && chain.has_value() && wrongSignatures.empty();
    }
};

class Store : public Kept,
              public Attachments,
              public Privacy,
              public Finding,
              public Backups,
              public Whole,
              public Numbering,
              public Proving,
              public Signing,
              public Due,
              public Duties,
              public Hands,
              public Traces {
  public:
    using Due::save;
    using Kept::save;

    /// Makes a new store; the folder is made too. Errors: StoreFolderUnusable, StoreFull, StoreFailed.
    [[nodiscard]] static Result<std::unique_ptr<Store>> create(const std::filesystem::path& path,
                                                               const reg::Firm& firm, const Clock& clock);
    /// Opens one, migrating it first if it is older (after a verified backup beside it). A newer store is
    /// left untouched. Errors: StoreMissing, StoreNotOurs, StoreNewer, StoreDamaged, StoreLocked,
    /// StoreReadOnly, MigrationChanged, BackupFailed.
    [[nodiscard]] static Result<std::unique_ptr<Store>> open(const std::filesystem::path& path, Access access,
                                                             const Clock& clock);
    /// Makes a new store of the rows of another (see readWhole()), ids, records and change log as they were.
    /// Errors: as create(); ExportNewer, ExportInvalid, RecordAltered and the like when the rows don't hold
    /// together.
    [[nodiscard]] static Result<void> createFrom(const std::filesystem::path& path, const Clock& clock,
                                                 const std::function<Result<void>(record::WholeSink&)>& rows);
    /// Reads a store's health without changing a byte of it.
    [[nodiscard]] static Result<Health> inspect(const std::filesystem::path& path);

    [[nodiscard]] virtual bool isReadOnly() const = 0;
    [[nodiscard]] virtual Error whyReadOnly() const = 0;  // StoreLocked with the holder, or StoreReadOnly
    [[nodiscard]] virtual std::filesystem::path path() const = 0;
    /// The backup made before a migration on opening; empty: none was needed.
    [[nodiscard]] virtual std::filesystem::path migrationBackup() const = 0;
    /// Who acts from now on, for the change log.
    virtual void actAs(const std::string& name) = 0;

    /// Makes one transaction of all that `writes` does here: on the disk when the call returns, or nothing of
    /// it when `writes` gives an error. For much at once (a scenario, an import): each transaction of its own
    /// costs the disk several syncs.
    ///
    /// With Steps::One undo takes all of it back at once. Records are not issued in such a one, nor anything
    /// done that is no step of undo.
    enum class Steps { AsMade, One };
    [[nodiscard]] virtual Result<void> together(const std::function<Result<void>()>& writes,
                                                Steps steps = Steps::AsMade) = 0;

    // the firm
    [[nodiscard]] virtual Result<reg::Firm> firm() const = 0;
    [[nodiscard]] virtual Result<void> saveFirm(const reg::Firm& firm) = 0;
    [[nodiscard]] virtual Result<std::vector<reg::Engineer>> engineers() const = 0;
    [[nodiscard]] virtual Result<void> save(const reg::Engineer& engineer) = 0;
    [[nodiscard]] virtual Result<std::vector<reg::Instrument>> instruments() const = 0;
    [[nodiscard]] virtual Result<void> save(const reg::Instrument& instrument) = 0;

    // the rule book: shipped entries with the firm's newest word on each
    [[nodiscard]] virtual Result<rulebook::RuleBook> ruleBook() const = 0;
    [[nodiscard]] virtual Result<void> save(const rulebook::FirmEntry& entry) = 0;
    [[nodiscard]] virtual Result<std::vector<rulebook::FirmEntry>> ruleHistory(
        const rulebook::RuleKey& key) const = 0;

    // people and premises; save() makes or changes (ids are made by newId())
    [[nodiscard]] virtual UuidBytes newId() = 0;
    /// Words of `search` anywhere in address, postcode or a holder's name; empty: all. Ordered by town and
    /// address.
    [[nodiscard]] virtual Result<std::vector<PremisesLine>> premises(const std::string& search,
                                                                     int limit = 500) const = 0;
    [[nodiscard]] virtual Result<reg::Premises> premises(reg::PremisesId id) const = 0;
    [[nodiscard]] virtual Result<void> save(const reg::Premises& premises) = 0;
    [[nodiscard]] virtual Result<std::vector<reg::Party>> parties(const std::string& search,
                                                                  int limit = 500) const = 0;
    [[nodiscard]] virtual Result<void> save(const reg::Party& party) = 0;
    /// Who holds a role today (see holdersAt()).
    [[nodiscard]] virtual Result<std::vector<reg::VisitFile::Holder>> holders(reg::PremisesId id) const = 0;
    /// One holder of each kind on a premises at once. Another one with a first day (`since`) ends the one who
    /// stood there on the day before; without one, or with the same, it takes that one's place as the
    /// correction of a mistake (the change log keeps who it was). One with a last day (`until`) is history
    /// and touches nobody. A known id changes that row. Errors: RoleOverlaps when two would hold it on one
    /// day.
    [[nodiscard]] virtual Result<void> save(const reg::Role& role) = 0;
    /// Removes the standing role as one that never was; endRole() ends it.
    [[nodiscard]] virtual Result<void> removeRole(reg::PremisesId premises, reg::RoleKind kind) = 0;
    [[nodiscard]] virtual Result<std::vector<reg::Installation>> installations(reg::PremisesId id) const = 0;
    [[nodiscard]] virtual Result<void> save(const reg::Installation& installation) = 0;
    [[nodiscard]] virtual Result<std::vector<reg::PipeSection>> pipes(reg::InstallationId id) const = 0;
    /// Replaces the list of sections as a whole; each changed field is one line of the change log.
    [[nodiscard]] virtual Result<void> savePipes(reg::InstallationId id,
                                                 const std::vector<reg::PipeSection>& sections) = 0;

    // visits
    [[nodiscard]] virtual Result<std::vector<VisitLine>> visits(const std::string& search,
                                                                int limit = 500) const = 0;
    [[nodiscard]] virtual Result<std::vector<VisitLine>> visitsOf(reg::PremisesId id) const = 0;
    /// Makes a visit with its first test.
    [[nodiscard]] virtual Result<reg::VisitId> startVisit(const reg::Visit& visit) = 0;
    [[nodiscard]] virtual Result<void> save(const reg::Visit& visit) = 0;
    [[nodiscard]] virtual Result<reg::TestId> addTest(reg::VisitId visit, const std::string& label) = 0;
    [[nodiscard]] virtual Result<reg::VisitFile> visitFile(reg::VisitId id) const = 0;
    /// Keeps what was typed; an empty text removes the entry. `canonical`, `at` and `by` are filled by the
    /// store.
    [[nodiscard]] virtual Result<void> saveEntry(const reg::Entry& entry) = 0;

    // records
    [[nodiscard]] virtual Result<RecordId> issue(const IssueRequest& request, const Render& render) = 0;
    [[nodiscard]] virtual Result<std::vector<RecordLine>> records(const std::string& search,
                                                                  int limit = 500) const = 0;
    [[nodiscard]] virtual Result<std::vector<RecordLine>> recordsOf(reg::VisitId id) const = 0;
    /// Verifies both digests and the link on the way: RecordAltered, RecordChainBroken. One that was let go
    /// is verified as far as it is there: RecordErased.
    [[nodiscard]] virtual Result<IssuedRecord> record(RecordId id) const = 0;
    [[nodiscard]] virtual Result<std::optional<RecordId>> recordByNumber(const std::string& number) const = 0;
    /// The whole chain with all digests.
    [[nodiscard]] virtual Result<void> verify() const = 0;
    /// Appends "printed", "saved as PDF", … to the record's events.
    [[nodiscard]] virtual Result<void> noteEvent(RecordId id, const std::string& event,
                                                 const std::string& detail) = 0;

    // the change log
    [[nodiscard]] virtual Result<std::vector<Change>> changes(const std::string& table,
                                                              const std::string& row) const = 0;
    [[nodiscard]] virtual Result<std::vector<Change>> changesOfVisit(reg::VisitId id) const = 0;
    /// Takes the newest change of this session back (itself a change); nothing when there is none. Gives what
    /// was undone.
    [[nodiscard]] virtual Result<std::optional<Change>> undo() = 0;

    /// A verified copy of the whole store (SQLite's backup API, reopened and checked). Errors: BackupFailed.
    [[nodiscard]] virtual Result<void> backUp(const std::filesystem::path& target) const = 0;
};

}  // namespace hearth::store
