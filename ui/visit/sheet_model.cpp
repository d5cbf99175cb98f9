// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/sheet_model.h"

#include "core/judging/competence.h"
#include "ui/visit/last_facts.h"
#include "ui/words/usual_unit.h"

#include <algorithm>
#include <iterator>
#include <sstream>

namespace hearth::ui::visit {

using reg::Item;

namespace {

std::string noteOfTaken(const reg::VisitFile& file) {
    return "sheet_appliances." + file.visit.id.text();
}

}  // namespace

VisitSheetModel::VisitSheetModel(store::Store& store, QObject* parent)
    : QObject(parent), m_store(store), m_traces(store), m_book({}) {}

Result<void> VisitSheetModel::open(reg::VisitId id) {
    auto file = m_store.visitFile(id);
    if (!file) {
        return tl::unexpected(file.error());
    }
    auto book = m_store.ruleBook();
    if (!book) {
        return tl::unexpected(book.error());
    }
    auto records = m_store.recordsOf(id);
    if (!records) {
        return tl::unexpected(records.error());
    }
    const bool isAnother = m_file.visit.id != id;
    if (isAnother) {
        auto last = visitBefore(m_store, *file);
        if (!last) {
            return tl::unexpected(last.error());
        }
        m_last = std::move(*last);
        auto checks = m_store.checksBefore(id);
        if (!checks) {
            return tl::unexpected(checks.error());
        }
        m_checks = std::move(*checks);
    }
    m_file = std::move(*file);
    m_book = std::move(*book);
    m_records = std::move(*records);
    m_isOpen = true;
    if (auto taken = isAnother ? readTaken() : Result<void>(); !taken) {
        return taken;
    }
    if (auto held = readCompetences(); !held) {
        return held;
    }
    if (auto before = readBefore(); !before) {
        return before;
    }
    Q_EMIT reloaded();
    judgeAgain();
    return {};
}

Result<void> VisitSheetModel::readBefore() {
    auto situations = m_store.situations(m_file.premises.id);
    if (!situations) {
        return tl::unexpected(situations.error());
    }
    m_openBefore.clear();
    std::copy_if(situations->begin(), situations->end(), std::back_inserter(m_openBefore),
                 [&](const reg::Situation& one) {
                     const bool isOwn = one.visit && *one.visit == m_file.visit.id;
                     return !one.closedAt && !isOwn;
                 });
    m_lastFindings = m_last ? judging::judge(*m_last, m_book) : std::vector<judging::Judged>();
    return {};
}

Result<void> VisitSheetModel::reload() {
    return open(m_file.visit.id);
}

const store::RecordLine* VisitSheetModel::currentRecord() const {
    const auto found = std::find_if(m_records.begin(), m_records.end(),
                                    [](const store::RecordLine& line) { return !line.supersededBy; });
    return found == m_records.end() ? nullptr : &*found;
}

const store::RecordLine* VisitSheetModel::currentRecord(record::RecordKind kind) const {
    const auto found = std::find_if(m_records.begin(), m_records.end(), [&](const store::RecordLine& line) {
        return !line.supersededBy && line.header.kind == record::kindCode(kind);
    });
    return found == m_records.end() ? nullptr : &*found;
}

QString VisitSheetModel::textOf(const reg::SubjectRef& subject, Item item) const {
    const reg::Entry* entry = m_file.find(subject, item);
    return entry == nullptr ? QString() : QString::fromStdString(entry->text);
}

QString VisitSheetModel::lastFact(const reg::SubjectRef& subject, Item item) const {
    if (item == Item::LastCheckCounted && m_file.find(subject, item) == nullptr) {
        return lastCheckKept(subject);
    }
    return m_last ? QString::fromStdString(lastFactOf(subject, item, m_file, *m_last)) : QString();
}

/// The last check, or the deadline that it counted for, by what is kept: twelve months before the next.
QString VisitSheetModel::lastCheckKept(const reg::SubjectRef& appliance) const {
    for (const auto& one : m_checks) {
        const auto next = calendar::deadlineOf(one.item);
        if (reg::subject(one.appliance) == appliance && next) {
            return QString::fromStdString(
                calendar::isoText(calendar::addMonths(next->date, -calendar::kCheckMonths)));
        }
    }
    return {};
}

quantity::UnitCode VisitSheetModel::unitOf(const reg::SubjectRef& subject, Item item) const {
    const reg::Entry* entry = m_file.find(subject, item);
    if (entry != nullptr && entry->unit != quantity::UnitCode::None) {
        return entry->unit;
    }
    return words::usualUnit(item);
}

Result<void> VisitSheetModel::enter(const reg::SubjectRef& subject, Item item, const QString& text,
                                    quantity::UnitCode unit) {
    // The edition first, so that an undo takes back what was typed before it.
    if (subject.kind == reg::SubjectKind::Test && item != Item::TestEdition && !text.isEmpty()) {
        if (auto kept = keepOnlyEdition(subject); !kept) {
            return kept;
        }
    }
    if (auto kept = keep(subject, item, text.toStdString(), unit); !kept) {
        return kept;
    }
    judgeAgain();
    return {};
}

Result<void> VisitSheetModel::keep(const reg::SubjectRef& subject, Item item, const std::string& text,
                                   quantity::UnitCode unit) {
    const reg::Entry* present = m_file.find(subject, item);
    reg::Entry entry = present != nullptr ? *present : reg::Entry{};
    if (present == nullptr) {
        entry.visit = m_file.visit.id;
        entry.subject = subject;
        entry.item = item;
    }
    entry.text = text;
    entry.unit = unit;
    auto saved = m_store.saveEntry(entry);
    if (saved) {
        // As the store derives it: what can't be read stays as typed and has no canonical form.
        entry.canonical = reg::canonicalOf(item, text).value_or(std::string());
        hold(entry);
        Q_EMIT entered(subject, item);
    }
    return saved;
}

Result<void> VisitSheetModel::keepOnlyEdition(const reg::SubjectRef& test) {
    const auto only = rulebook::editionsAllowedOn(m_file.visit.date).only();
    if (!only || m_file.find(test, Item::TestEdition) != nullptr) {
        return {};
    }
    const auto code = *only == rulebook::Edition::Up1bEd3 ? reg::choice::kEd3 : reg::choice::kEd4;
    return keep(test, Item::TestEdition, std::string(code), quantity::UnitCode::None);
}

void VisitSheetModel::hold(const reg::Entry& entry) {
    auto& entries = m_file.entries;
    const auto at = std::find_if(entries.begin(), entries.end(), [&](const reg::Entry& e) {
        return e.item == entry.item && e.subject == entry.subject;
    });
    if (entry.text.empty()) {
        if (at != entries.end()) {
            entries.erase(at);
        }
    } else if (at != entries.end()) {
        *at = entry;
    } else {
        entries.push_back(entry);
    }
}

Result<void> VisitSheetModel::save(const reg::Visit& visit) {
    auto saved = m_store.save(visit);
    if (saved) {
        m_file.visit = visit;
        saved = readCompetences();
        judgeAgain();
    }
    return saved;
}

Result<void> VisitSheetModel::readCompetences() {
    m_held.clear();
    if (m_file.visit.engineer) {
        auto held = m_store.competences(*m_file.visit.engineer);
        if (!held) {
            return tl::unexpected(held.error());
        }
        m_held = std::move(*held);
    }
    return {};
}

Result<void> VisitSheetModel::save(const reg::Installation& installation) {
    auto saved = m_store.save(installation);
    if (saved) {
        m_file.installation = installation;
        judgeAgain();
    }
    return saved;
}

Result<void> VisitSheetModel::save(const std::vector<reg::PipeSection>& pipes) {
    auto saved = m_store.savePipes(m_file.installation.id, pipes);
    if (saved) {
        m_file.pipes = pipes;
        judgeAgain();
    }
    return saved;
}

Result<void> VisitSheetModel::nameCustomer(const QString& name) {
    const reg::Party* present = customerOf(m_file);
    reg::Party party = present != nullptr ? *present : reg::Party{};
    if (present == nullptr) {
        party.id = reg::PartyId{m_store.newId()};
    }
    party.name = name.toStdString();
    if (auto saved = m_store.save(party); !saved) {
        return saved;
    }
    if (present == nullptr) {
        const reg::Role role{reg::RoleId{m_store.newId()}, m_file.premises.id, party.id,
                             reg::RoleKind::Customer};
        if (auto saved = m_store.save(role); !saved) {
            return saved;
        }
    }
    auto people = m_store.holders(m_file.premises.id);
    if (!people) {
        return tl::unexpected(people.error());
    }
    m_file.people = std::move(*people);
    judgeAgain();
    return {};
}

Result<void> VisitSheetModel::save(const reg::Appliance& appliance) {
    auto saved = m_store.save(appliance);
    const auto at = std::find_if(m_file.appliances.begin(), m_file.appliances.end(),
                                 [&](const reg::Appliance& one) { return one.id == appliance.id; });
    if (saved && at != m_file.appliances.end()) {
        *at = appliance;
        judgeAgain();
    }
    return saved;
}

Result<void> VisitSheetModel::take(reg::ApplianceId id) {
    if (std::find(m_taken.begin(), m_taken.end(), id) != m_taken.end()) {
        return {};
    }
    m_taken.push_back(id);
    judgeAgain();
    return keepTaken();
}

/// A visit that is left and opened again shows the appliances that were taken up, though nothing was entered.
Result<void> VisitSheetModel::keepTaken() {
    if (isReadOnly()) {
        return {};
    }
    std::string text;
    for (const reg::ApplianceId id : m_taken) {
        text += (text.empty() ? "" : " ") + id.text();
    }
    return m_store.saveSetting(noteOfTaken(m_file), text);
}

Result<void> VisitSheetModel::readTaken() {
    m_taken.clear();
    const auto noted = m_store.setting(noteOfTaken(m_file));
    if (!noted) {
        return tl::unexpected(noted.error());
    }
    std::istringstream words(*noted);
    for (std::string word; words >> word;) {
        if (const auto id = uuidFromText(word)) {
            m_taken.push_back(reg::ApplianceId{*id});
        }
    }
    return {};
}

Result<reg::ApplianceId> VisitSheetModel::addAppliance() {
    reg::Appliance appliance;
    appliance.id = {m_store.newId()};
    appliance.installation = m_file.installation.id;
    appliance.gas = m_file.installation.gas;
    if (auto saved = m_store.save(appliance); !saved) {
        return tl::unexpected(saved.error());
    }
    m_taken.push_back(appliance.id);
    if (auto kept = keepTaken(); !kept) {
        return tl::unexpected(kept.error());
    }
    if (auto read = reload(); !read) {
        return tl::unexpected(read.error());
    }
    return appliance.id;
}

Result<void> VisitSheetModel::save(const reg::Situation& situation) {
    auto saved = m_store.save(situation);
    const auto at = std::find_if(m_file.situations.begin(), m_file.situations.end(),
                                 [&](const reg::Situation& one) { return one.id == situation.id; });
    if (saved && at != m_file.situations.end()) {
        *at = situation;
        judgeAgain();
    }
    return saved;
}

Result<reg::SituationId> VisitSheetModel::addSituation(std::optional<reg::ApplianceId> appliance,
                                                       Instant foundAt) {
    reg::Situation situation;
    situation.id = {m_store.newId()};
    situation.premises = m_file.premises.id;
    situation.installation = m_file.installation.id;
    situation.appliance = appliance;
    situation.visit = m_file.visit.id;
    situation.foundAt = foundAt;
    if (auto saved = m_store.save(situation); !saved) {
        return tl::unexpected(saved.error());
    }
    if (auto read = reload(); !read) {
        return tl::unexpected(read.error());
    }
    return situation.id;
}

Result<void> VisitSheetModel::addTest(const QString& label) {
    const auto added = m_store.addTest(m_file.visit.id, label.toStdString());
    return added ? reload() : Result<void>(tl::unexpected(added.error()));
}

Result<void> VisitSheetModel::sign(const reg::HandSignature& signature) {
    const auto kept = m_store.sign(signature);
    return kept ? readSignatures() : kept;
}

Result<void> VisitSheetModel::unsign(record::RecordKind kind, reg::Signer signer) {
    const auto kept = m_store.unsign(m_file.visit.id, std::string(record::kindCode(kind)), signer);
    return kept ? readSignatures() : kept;
}

Result<void> VisitSheetModel::readSignatures() {
    auto file = m_store.visitFile(m_file.visit.id);
    if (!file) {
        return tl::unexpected(file.error());
    }
    m_file.signatures = std::move(file->signatures);
    Q_EMIT judged();
    return {};
}

Result<reg::GaugeTraceId> VisitSheetModel::keepTrace(const store::NewTrace& trace) {
    return withTraces(m_store.keepTrace(trace));
}

Result<reg::GaugeTraceId> VisitSheetModel::keepRoomTrace(const store::NewRoomTrace& trace) {
    return withTraces(m_store.keepRoomTrace(trace));
}

Result<reg::GaugeTraceId> VisitSheetModel::withTraces(Result<reg::GaugeTraceId> kept) {
    if (kept) {
        if (const auto read = readTraces(); !read) {
            return tl::unexpected(read.error());
        }
    }
    return kept;
}

Result<void> VisitSheetModel::markTrace(reg::GaugeTraceId id, const reg::TraceMarks& marks) {
    const auto kept = m_store.markTrace(id, marks);
    return kept ? readTraces() : kept;
}

Result<void> VisitSheetModel::removeTrace(reg::GaugeTraceId id) {
    const auto removed = m_store.removeTrace(id);
    return removed ? readTraces() : removed;
}

Result<void> VisitSheetModel::readTraces() {
    auto file = m_store.visitFile(m_file.visit.id);
    if (!file) {
        return tl::unexpected(file.error());
    }
    m_file.traces = std::move(file->traces);
    m_traces.forgetHunt();
    Q_EMIT judged();
    return {};
}

void VisitSheetModel::judgeAgain() {
    m_traces.forgetHunt();
    m_findings = judging::judge(m_file, m_book);
    m_doubts = judging::judgeCompetence(m_file, m_held);
    m_margin = m_findings;
    m_margin.insert(m_margin.end(), m_doubts.begin(), m_doubts.end());
    m_volume = judging::volumeOf(m_file, m_book);
    m_pipes = judging::visitPipes(m_file, m_book);
    m_owed.clear();
    m_missing.clear();
    for (const record::RecordKind kind : record::kindsOf(m_file)) {
        m_owed.push_back({kind, record::missingFor(kind, m_file, m_findings)});
        for (const record::Missing& one : m_owed.back().missing) {
            const bool known =
                std::any_of(m_missing.begin(), m_missing.end(), [&](const record::Missing& other) {
                    return other.item == one.item && other.field == one.field && other.subject == one.subject;
                });
            if (!known) {
                m_missing.push_back(one);
            }
        }
    }
    Q_EMIT judged();
}

const reg::Party* customerOf(const reg::VisitFile& file) {
    for (const auto role : {reg::RoleKind::Customer, reg::RoleKind::Landlord, reg::RoleKind::HomeOwner}) {
        if (const reg::Party* party = file.holder(role)) {
            return party;
        }
    }
    return nullptr;
}

}  // namespace hearth::ui::visit
