// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/judging/judge.h"
#include "core/judging/pipes.h"
#include "core/record/check_dates.h"
#include "core/record/kind.h"
#include "core/store/store.h"
#include "ui/visit/sheet_traces.h"

#include <QObject>
#include <QString>

#include <optional>
#include <vector>

namespace hearth::ui::visit {

/// One visit as the sheet shows it: what is entered, what the rules say of it, what a record still lacks. No
/// widgets.
///
/// Every change goes one road: into the store (one transaction, on the disk when the call returns), then into
/// the file held here, then the visit is judged and `judged()` is sent. When the store refuses, nothing here
/// changes and the error comes back to the field, which keeps what was typed.
class VisitSheetModel : public QObject {
    Q_OBJECT
  public:
    explicit VisitSheetModel(store::Store& store, QObject* parent = nullptr);

    /// Reads a visit and judges it. Errors: those of the store.
    [[nodiscard]] Result<void> open(reg::VisitId id);
    /// Reads the same visit again (after an undo, after a record was issued).
    [[nodiscard]] Result<void> reload();
    [[nodiscard]] bool isOpen() const { return m_isOpen; }

    [[nodiscard]] const reg::VisitFile& file() const { return m_file; }
    [[nodiscard]] const rulebook::RuleBook& book() const { return m_book; }
    [[nodiscard]] const std::vector<judging::Judged>& findings() const { return m_findings; }
    /// What is doubted of who does the work and with what: told on the sheet, no part of a record.
    [[nodiscard]] const std::vector<judging::Judged>& doubts() const { return m_doubts; }
    /// Both, as they stand in the sheet's margin.
    [[nodiscard]] const std::vector<judging::Judged>& marginFindings() const { return m_margin; }
    [[nodiscard]] const pipework::VolumeReport& volume() const { return m_volume; }
    [[nodiscard]] const judging::VisitPipes& pipes() const { return m_pipes; }
    /// A kind of record that the visit can issue, and what it still lacks, in the order of its table.
    struct Owed {
        record::RecordKind kind = record::RecordKind::TightnessAndPurge;
        std::vector<record::Missing> missing;
    };
    [[nodiscard]] const std::vector<Owed>& owed() const { return m_owed; }
    /// What any of them lacks, each once.
    [[nodiscard]] const std::vector<record::Missing>& missing() const { return m_missing; }
    /// Records issued of this visit, newest first.
    [[nodiscard]] const std::vector<store::RecordLine>& records() const { return m_records; }
    /// The record that counts: the newest that nothing supersedes.
    [[nodiscard]] const store::RecordLine* currentRecord() const;
    /// The same of one kind.
    [[nodiscard]] const store::RecordLine* currentRecord(record::RecordKind kind) const;

    /// What the visit before this one said of a fact that nothing is entered of yet; empty: nothing.
    [[nodiscard]] QString lastFact(const reg::SubjectRef& subject, reg::Item item) const;

    /// The visit before this one at the same premises, and what the rules say of it; nothing: none.
    [[nodiscard]] const reg::VisitFile* last() const { return m_last ? &*m_last : nullptr; }
    [[nodiscard]] const std::vector<judging::Judged>& lastFindings() const { return m_lastFindings; }
    /// Unsafe situations of the premises that other visits found and nobody closed.
    [[nodiscard]] const std::vector<reg::Situation>& openBefore() const { return m_openBefore; }

    /// True when nothing may be changed: the store is read-only, or the visit was closed.
    [[nodiscard]] bool isReadOnly() const { return m_store.isReadOnly() || m_file.visit.closed; }
    [[nodiscard]] store::Store& store() { return m_store; }

    [[nodiscard]] QString textOf(const reg::SubjectRef& subject, reg::Item item) const;
    /// The unit that an entry was typed in; the family's first when there is none.
    [[nodiscard]] quantity::UnitCode unitOf(const reg::SubjectRef& subject, reg::Item item) const;

    /// Keeps what was typed for an item; an empty text removes it. The first entry of a test keeps with it
    /// the edition that the test goes by, where only one is allowed on the visit's day: a record has to say
    /// which it was.
    [[nodiscard]] Result<void> enter(const reg::SubjectRef& subject, reg::Item item, const QString& text,
                                     quantity::UnitCode unit = quantity::UnitCode::None);
    [[nodiscard]] Result<void> save(const reg::Visit& visit);
    [[nodiscard]] Result<void> save(const reg::Installation& installation);
    [[nodiscard]] Result<void> save(const std::vector<reg::PipeSection>& pipes);
    /// Renames the customer, or makes one where the premises have none.
    [[nodiscard]] Result<void> nameCustomer(const QString& name);
    /// An appliance as it is known; a new one goes to the end of the installation's list.
    [[nodiscard]] Result<void> save(const reg::Appliance& appliance);
    /// Another appliance of the installation, of which nothing is known yet; it is taken up.
    [[nodiscard]] Result<reg::ApplianceId> addAppliance();
    /// Appliances that are to be worked on though nothing was entered of them yet.
    [[nodiscard]] const std::vector<reg::ApplianceId>& taken() const { return m_taken; }
    /// Kept with the visit, so that it is there when the visit is opened again.
    [[nodiscard]] Result<void> take(reg::ApplianceId id);
    [[nodiscard]] Result<void> save(const reg::Situation& situation);
    /// An unsafe situation found now, at an appliance or elsewhere: how dangerous it is nobody has said yet.
    [[nodiscard]] Result<reg::SituationId> addSituation(std::optional<reg::ApplianceId> appliance,
                                                        Instant foundAt);
    /// What somebody gives for the next record of a kind, or takes back.
    [[nodiscard]] Result<void> sign(const reg::HandSignature& signature);
    [[nodiscard]] Result<void> unsign(record::RecordKind kind, reg::Signer signer);
    /// What a gauge saw of a test, kept with it; its marks in place of those so far; taken away.
    [[nodiscard]] Result<reg::GaugeTraceId> keepTrace(const store::NewTrace& trace);
    /// The same of the rooms.
    [[nodiscard]] Result<reg::GaugeTraceId> keepRoomTrace(const store::NewRoomTrace& trace);
    [[nodiscard]] Result<void> markTrace(reg::GaugeTraceId id, const reg::TraceMarks& marks);
    [[nodiscard]] Result<void> removeTrace(reg::GaugeTraceId id);
    /// The visit's tests compared, for the search for a leak; worked out once for all who show it.
    [[nodiscard]] const judging::LeakHunt& leakHunt() { return m_traces.hunt(m_file, m_book); }
    [[nodiscard]] const SheetTraces& traces() const { return m_traces; }
    /// Another test of this visit ("after the work"); the file is read again.
    [[nodiscard]] Result<void> addTest(const QString& label);

  Q_SIGNALS:
    /// The whole file was read again: every field refills.
    void reloaded();
    /// An entry was kept, by a field or by the clock.
    void entered(const hearth::reg::SubjectRef& subject, hearth::reg::Item item);
    /// Findings, volume and what is missing are new.
    void judged();

  private:
    [[nodiscard]] Result<void> readSignatures();
    [[nodiscard]] QString lastCheckKept(const reg::SubjectRef& appliance) const;
    [[nodiscard]] Result<void> readTraces();
    [[nodiscard]] Result<reg::GaugeTraceId> withTraces(Result<reg::GaugeTraceId> kept);
    void judgeAgain();
    [[nodiscard]] Result<void> readCompetences();
    [[nodiscard]] Result<void> readBefore();
    [[nodiscard]] Result<void> keepTaken();
    [[nodiscard]] Result<void> readTaken();
    [[nodiscard]] Result<void> keep(const reg::SubjectRef& subject, reg::Item item, const std::string& text,
                                    quantity::UnitCode unit);
    [[nodiscard]] Result<void> keepOnlyEdition(const reg::SubjectRef& test);
    void hold(const reg::Entry& entry);

    store::Store& m_store;
    SheetTraces m_traces;
    bool m_isOpen = false;
    reg::VisitFile m_file;
    rulebook::RuleBook m_book;
    std::vector<reg::Competence> m_held;  // of the visit's engineer
    std::vector<judging::Judged> m_findings;
    std::vector<judging::Judged> m_doubts;
    std::vector<judging::Judged> m_margin;
    std::optional<reg::VisitFile> m_last;  // the visit before this one
    std::vector<judging::Judged> m_lastFindings;
    std::vector<reg::Situation> m_openBefore;
    std::vector<record::CheckHistory> m_checks;  // what is kept of checks before it
    pipework::VolumeReport m_volume;
    judging::VisitPipes m_pipes;
    std::vector<Owed> m_owed;
    std::vector<record::Missing> m_missing;
    std::vector<reg::ApplianceId> m_taken;
    std::vector<store::RecordLine> m_records;
};

/// The register's name of who a record is for: the customer, else the landlord, else the home owner; nothing
/// if none is known.
[[nodiscard]] const reg::Party* customerOf(const reg::VisitFile& file);

}  // namespace hearth::ui::visit
