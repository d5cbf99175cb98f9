// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/part_records.h"

#include "core/record/language.h"
#include "core/store/firm_logo.h"
#include "core/store/record_pictures.h"
#include "core/store/record_traces.h"
#include "ui/look/look.h"
#include "ui/shell/flow_layout.h"
#include "ui/shell/kit.h"
#include "ui/shell/line_list.h"
#include "ui/shell/paper_choice.h"
#include "ui/visit/draft_pages.h"
#include "ui/visit/joined.h"
#include "ui/visit/signatures_box.h"
#include "ui/visit/subject_name.h"
#include "ui/visit/wanted.h"
#include "ui/words/document_words.h"
#include "ui/words/kept_words.h"

#include <algorithm>

namespace hearth::ui::visit {

using shell::KeyButton;
using shell::Line;
using shell::LineList;

RecordsPart::RecordsPart(const SheetContext& context, QWidget* parent)
    : PartView(context, {PartKind::Records}, parent) {
    addKinds();
    addIssue();
    m_recordsHeading = shell::headingText(tr("Issued"), this);
    addWidget(m_recordsHeading);
    m_records = new LineList(tr("Records of this visit"), {}, this);
    m_records->setGrowing(true);
    addWidget(m_records);
    connect(m_records, &LineList::opened, this, [this](int row) {
        this->context().window.navigator.openRecord(model().records()[static_cast<std::size_t>(row)].id);
    });
    addVisitButtons();
    m_draft = new DraftPages(this);
    m_draft->hide();
    addWidget(m_draft);
}

void RecordsPart::addKinds() {
    m_kinds = new LineList(tr("Records that this visit owes"), {}, this);
    m_kinds->setGrowing(true);
    addWidget(m_kinds);
    connect(m_kinds, &LineList::moved, this, [this](int) {
        refuse({});
        refresh();
    });
    connect(m_kinds, &LineList::opened, this, [this](int) {
        refresh();
        if (m_missing->isHidden()) {
            m_issue->setFocus(Qt::OtherFocusReason);
        } else {
            m_missing->setFocus(Qt::OtherFocusReason);
        }
    });
}

std::optional<record::RecordKind> RecordsPart::kind() const {
    return record::kindFromCode(m_kinds->currentKey().toStdString());
}

const std::vector<record::Missing>& RecordsPart::missing() const {
    static const std::vector<record::Missing> none;
    const auto& owed = model().owed();
    const auto at = std::find_if(owed.begin(), owed.end(),
                                 [&](const VisitSheetModel::Owed& one) { return one.kind == kind(); });
    return at == owed.end() ? none : at->missing;
}

void RecordsPart::showKinds() {
    std::vector<Line> lines;
    for (const VisitSheetModel::Owed& owed : model().owed()) {
        const auto* issued = model().currentRecord(owed.kind);
        const int count = static_cast<int>(owed.missing.size());
        lines.push_back({shell::coded(record::kindCode(owed.kind)),
                         words().recordKind(owed.kind),
                         {},
                         issued != nullptr
                             ? tr("issued as %1").arg(QString::fromStdString(issued->header.record))
                         : count > 0 ? tr("missing: %1").arg(count)
                                     : tr("nothing is missing")});
    }
    const bool several = lines.size() > 1;
    setSubtitle(several         ? tr("Up and Down choose the record, Enter goes to what it lacks.")
                : lines.empty() ? tr("This visit owes no record: its kind is asked in the first part.")
                                : lines.front().title);
    m_kinds->setLines(std::move(lines));
    if (m_kinds->currentRow() < 0 && m_kinds->count() > 0) {
        m_kinds->setCurrentRow(0);
    }
    m_kinds->setVisible(several);
}

void RecordsPart::addIssue() {
    m_state = shell::bodyText({}, this);
    addWidget(m_state);
    m_doubts = shell::namedText("doubtsBeforeIssue", look::TypeRole::Body, look::Role::LookAgain, this);
    addWidget(m_doubts);
    m_missing = new LineList(tr("What is missing"), {}, this);
    m_missing->setGrowing(true);
    addWidget(m_missing);
    connect(m_missing, &LineList::opened, this, [this](int row) {
        const record::Missing chosen = missing()[static_cast<std::size_t>(row)];
        Q_EMIT missingChosen(chosen);
    });
    addLanguage();
    m_hands = new SignaturesBox(context(), this);
    m_hands->setObjectName(QStringLiteral("signatures"));
    addWidget(m_hands);
    m_issue = new KeyButton(tr("Issue the record"), QKeySequence(Qt::CTRL | Qt::Key_I),
                            shell::ButtonKind::Primary, this);
    m_issue->setObjectName(QStringLiteral("issueButton"));
    m_refused = new shell::Text({}, look::TypeRole::Body, look::Role::Fail, this);
    m_refused->setWordWrap(true);
    m_refused->hide();
    m_draftButton = new KeyButton(tr("Show the draft"), QKeySequence(Qt::CTRL | Qt::Key_D),
                                  shell::ButtonKind::Plain, this);
    m_draftButton->setObjectName(QStringLiteral("draftButton"));
    auto* row = new QWidget(this);
    auto* line = new shell::FlowLayout(row, look::kGap);
    row->setContentsMargins(0, look::kGap, 0, 0);
    line->addWidget(m_issue);
    line->addWidget(m_draftButton);
    addWidget(row);
    addWidget(m_refused);
    connect(m_issue, &QPushButton::clicked, this, [this] { issue(); });
    connect(m_draftButton, &QPushButton::clicked, this, &RecordsPart::toggleDraft);
}

void RecordsPart::addLanguage() {
    std::vector<input::ChoiceItem> choices;
    for (const auto code : record::recordLanguages()) {
        choices.push_back({shell::coded(code), words::recordLanguage(words(), std::string(code))});
    }
    auto* fields = addFields();
    m_language = input::makeListEditor(fields, choices);
    m_language->setObjectName(QStringLiteral("recordLanguage"));
    m_language->setLabel(tr("Language of the record"));
    m_language->setReadOnly(model().isReadOnly());
    fields->add(m_language, 3);
    connect(m_language, &input::Editor::committed, this, [this](const QString& code) {
        if (const auto of = kind()) {
            m_chosen[*of] = code;
            showDraft();
        }
    });
}

QString RecordsPart::languageOf(const store::RecordLine& issued) const {
    const auto known = m_ofIssued.find(issued.id.text());
    if (known != m_ofIssued.end()) {
        return known->second;
    }
    const auto record = issued.letGo ? std::nullopt : std::optional(model().store().record(issued.id));
    const bool goesOn = record && *record && record::isRecordLanguage((*record)->document.language);
    return m_ofIssued[issued.id.text()] = goesOn ? words::qstring((*record)->document.language) : QString();
}

QString RecordsPart::language() const {
    const auto of = kind().value_or(record::RecordKind::TightnessAndPurge);
    const auto chosen = m_chosen.find(of);
    if (chosen != m_chosen.end() && !chosen->second.isEmpty()) {
        return chosen->second;
    }
    const auto* current = model().currentRecord(of);
    const QString before = current != nullptr ? languageOf(*current) : QString();
    return before.isEmpty() ? words::qstring(record::languageFor(of, model().file())) : before;
}

void RecordsPart::showLanguage() {
    m_language->setVisible(kind().has_value());
    if (m_language->text() != language()) {
        m_language->setText(language());
    }
}

void RecordsPart::addVisitButtons() {
    auto* row = new QWidget(this);
    auto* line = new shell::FlowLayout(row, look::kGap);
    row->setContentsMargins(0, look::kGap, 0, 0);
    auto* another = new KeyButton(tr("Another test on this visit"), shell::ButtonKind::Quiet, row);
    another->setObjectName(QStringLiteral("addTestButton"));
    another->setEnabled(!model().isReadOnly());
    m_close = new KeyButton(tr("Close this visit"), shell::ButtonKind::Quiet, row);
    m_close->setObjectName(QStringLiteral("closeVisitButton"));
    line->addWidget(another);
    line->addWidget(m_close);
    addWidget(row);
    connect(m_close, &QPushButton::clicked, this, &RecordsPart::closeVisit);
    connect(another, &QPushButton::clicked, this, [this] {
        const auto label = context().window.dialogs.askText(this, tr("Another test"),
                                                            tr("Which test is it (\"after the work\")?"));
        if (!label) {
            return;
        }
        if (const auto added = model().addTest(*label); !added) {
            refuse(words().error(added.error()));
        }
    });
}

void RecordsPart::closeVisit() {
    reg::Visit visit = model().file().visit;
    visit.closed = !visit.closed;
    const auto saved = model().save(visit);
    const auto read = saved ? model().reload() : saved;
    if (!read) {
        refuse(words().error(read.error()));
    }
}

void RecordsPart::refuse(const QString& sentence) {
    m_refused->setText(sentence);
    m_refused->setVisible(!sentence.isEmpty());
}

std::optional<QString> RecordsPart::reasonForRevision(const store::RecordLine& current) {
    return context().window.dialogs.askText(
        this, tr("A revision of %1").arg(QString::fromStdString(current.header.record)),
        tr("Why is it issued again?"));
}

void RecordsPart::issue(record::RecordKind kind) {
    refresh();
    if (m_kinds->setCurrentKey(shell::coded(record::kindCode(kind)))) {
        refresh();
        issue();
    }
}

void RecordsPart::issue() {
    m_language->commit();  // a choice that was not left yet
    const auto kind = this->kind();
    if (model().store().isReadOnly() || !kind) {
        return;
    }
    if (!missing().empty()) {
        refuse(tr("Something is still missing: Enter on a line goes there."));
        m_missing->setFocus(Qt::OtherFocusReason);
        return;
    }
    const auto* current = model().currentRecord(*kind);
    QString reason;
    std::optional<store::RecordId> supersedes;
    if (current != nullptr) {
        const auto said = reasonForRevision(*current);
        if (!said || said->trimmed().isEmpty()) {
            return;
        }
        reason = *said;
        supersedes = current->id;
    }
    const auto issued = context().window.issue(model().file().visit.id, supersedes, reason, kind, language());
    if (!issued) {
        refuse(words().error(issued.error()));
        return;
    }
    refuse({});
    m_chosen.erase(*kind);
    if (const auto read = model().reload(); !read) {
        refuse(words().error(read.error()));
        return;
    }
    goToNextOwed();
    m_records->setCurrentRow(0);
    m_records->setFocus(Qt::OtherFocusReason);
    if (const auto* now = model().currentRecord(*kind)) {
        context().window.navigator.say(tr("Issued as %1.").arg(QString::fromStdString(now->header.record)));
    }
}

/// The same key again issues the next of the records that are owed, not a revision of this one.
void RecordsPart::goToNextOwed() {
    for (const VisitSheetModel::Owed& owed : model().owed()) {
        if (model().currentRecord(owed.kind) == nullptr) {
            m_kinds->setCurrentKey(shell::coded(record::kindCode(owed.kind)));
            refresh();
            return;
        }
    }
}

/// Whoever issues has seen it.
void RecordsPart::showDoubts() {
    QStringList lines;
    for (const judging::Judged& judged : model().doubts()) {
        const bool isOfVisit = judged.subject.kind == reg::SubjectKind::Visit;
        const QString of = isOfVisit ? QString() : subjectContext(context(), judged.subject);
        lines << joined({of, words().sentence(judged.finding.why)});
    }
    m_doubts->setText(lines.join(u'\n'));
    m_doubts->setVisible(!lines.isEmpty());
}

void RecordsPart::showMissing() {
    std::vector<Line> lines;
    for (const record::Missing& one : missing()) {
        // Of which appliance, room or situation; and where it is kept, where that is not on the sheet.
        const QString of = subjectContext(context(), one.subject);
        lines.push_back({QString::number(lines.size()),
                         (of.isEmpty() ? QString() : of + QStringLiteral(" \u00B7 ")) + words().missing(one),
                         tr("wanted by %1").arg(QString::fromStdString(one.source)),
                         isKeptAtPremises(one)  ? tr("kept at the premises")
                         : isKeptElsewhere(one) ? tr("kept under Firm")
                                                : QString()});
    }
    const int count = static_cast<int>(lines.size());
    m_missing->setVisible(count > 0);
    m_missing->setLines(std::move(lines));
    m_state->setText(!kind()     ? QString()
                     : count > 0 ? tr("Missing before it can be issued: %1").arg(count)
                                 : tr("Nothing is missing."));
}

/// Which record it is, where the visit issues several.
QString RecordsPart::kindName(const store::RecordLine& record) const {
    const auto kind = record::kindFromCode(record.header.kind);
    return kind && m_kinds->count() > 1 ? words().recordKind(*kind) : QString();
}

void RecordsPart::showRecords() {
    std::vector<Line> lines;
    for (const store::RecordLine& record : model().records()) {
        Instant at{};
        const bool known = parseInstant(record.header.issuedAt, at);
        const QString when =
            known ? tr("%1, %2").arg(shell::dayOf(words(), at), QString::fromStdString(wallTimeText(at)))
                  : QString();
        const QString reason =
            record.letGo ? tr("erased: its keeping was over") : QString::fromStdString(record.reason);
        const auto outcome = record.letGo ? std::nullopt : std::optional(record.outcome);
        lines.push_back({QString::fromStdString(record.id.text()),
                         tr("%1 · revision %2")
                             .arg(QString::fromStdString(record.header.record))
                             .arg(record.header.revision),
                         joined({kindName(record), record.supersededBy ? tr("superseded") : reason}), when,
                         record.supersededBy ? QString() : tr("Enter opens it"), outcome});
    }
    const bool any = !lines.empty();
    m_recordsHeading->setVisible(any);
    m_records->setVisible(any);
    m_records->setLines(std::move(lines));
}

void RecordsPart::toggleDraft() {
    m_draft->setVisible(m_draft->isHidden());
    m_draftButton->setWords(m_draft->isHidden() ? tr("Show the draft") : tr("Hide the draft"));
    showDraft();
    if (!m_draft->isHidden()) {
        Q_EMIT urgent(m_draft);
    }
}

void RecordsPart::showDraft() {
    if (m_draft->isHidden()) {
        return;
    }
    const reg::VisitFile& file = model().file();
    const auto today = context().window.clock.today();
    // A draft is shown without a logo or a picture that can't be read; issuing says why.
    const auto logo = store::logoOf(model().store(), file.firm).value_or(std::optional<record::Logo>());
    const auto pictures = store::picturesOf(model().store(), file).value_or(std::vector<record::PictureOf>());
    const auto traces =
        store::tracesOf(model().store(), file, model().book()).value_or(std::vector<judging::TraceSeen>());
    const auto roomTraces =
        store::roomTracesOf(model().store(), file).value_or(std::vector<record::RoomTrace>());
    record::Document document = words::documentFor({kind().value_or(record::RecordKind::TightnessAndPurge),
                                                    file,
                                                    model().findings(),
                                                    model().volume(),
                                                    today,
                                                    logo,
                                                    pictures,
                                                    &model().pipes(),
                                                    {},
                                                    traces,
                                                    {},
                                                    {},
                                                    roomTraces},
                                                   language());
    if (document.banner.empty()) {
        document.banner = tr("Draft").toStdString();
    }
    document.paper = shell::firmsPaper(model().store());
    m_draft->setDocument(document);
}

void RecordsPart::refresh() {
    PartView::refresh();
    showKinds();
    showLanguage();
    showDoubts();
    showMissing();
    m_hands->setKind(kind());
    m_hands->setReadOnly(model().isReadOnly());
    showRecords();
    showDraft();
    const auto* current = kind() ? model().currentRecord(*kind()) : nullptr;
    const QString wanted = current == nullptr ? tr("Issue the record") : tr("Issue a revision");
    if (m_issue->accessibleName() != wanted) {
        m_issue->setWords(wanted);
    }
    m_issue->setEnabled(!model().isReadOnly() && kind().has_value());
    m_close->setWords(model().file().visit.closed ? tr("Open this visit again") : tr("Close this visit"));
    m_close->setEnabled(!model().store().isReadOnly());
    if (missing().empty()) {
        refuse({});
    }
}

void RecordsPart::takeFocus() {
    if (!m_kinds->isHidden()) {
        m_kinds->setFocus(Qt::OtherFocusReason);
    } else if (!m_missing->isHidden()) {
        m_missing->setFocus(Qt::OtherFocusReason);
    } else {
        m_issue->setFocus(Qt::OtherFocusReason);
    }
}

}  // namespace hearth::ui::visit
