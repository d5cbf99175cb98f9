// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/records/record_sheet.h"

#include "core/record/pairing.h"
#include "ui/records/page_preview.h"
#include "ui/records/record_story.h"
#include "ui/records/sender.h"
#include "ui/shell/file_pattern.h"
#include "ui/shell/paper_choice.h"
#include "ui/shell/record_writing.h"
#include "ui/words/proof_words.h"

namespace hearth::ui::records {

using words::qstring;

RecordSheet::RecordSheet(const shell::Context& context, QWidget* parent) : Sheet(parent), m_context(context) {
    setObjectName(QStringLiteral("recordSheet"));
    m_title = shell::titleText({}, this);
    m_subtitle = shell::softText({}, this);
    m_state = shell::bodyText({}, this);
    m_state->setObjectName(QStringLiteral("recordState"));
    lines()->addWidget(m_title);
    lines()->addWidget(m_subtitle);
    lines()->addWidget(m_state);
    addButtons();
    m_story = new RecordStory(m_context, this);
    lines()->addWidget(m_story);
    m_pages = new PagePreview(this);
    lines()->addWidget(m_pages);
    lines()->addStretch(1);
    showNothing();
}

shell::KeyButton* RecordSheet::addButton(const QString& text, const QKeySequence& key, const char* name,
                                         const std::function<void()>& act) {
    const auto kind =
        m_buttons->layout()->count() == 0 ? shell::ButtonKind::Primary : shell::ButtonKind::Plain;
    auto* button = new shell::KeyButton(text, key, kind, m_buttons);
    button->setObjectName(QString::fromLatin1(name));
    connect(button, &QPushButton::clicked, this, act);
    return button;
}

void RecordSheet::addButtons() {
    m_buttons = new QWidget(this);
    auto* grid = new QGridLayout(m_buttons);
    grid->setContentsMargins(0, look::kGap, 0, look::kGap);
    grid->setSpacing(look::kGap);
    m_send = addButton(tr("Send"), QKeySequence(Qt::CTRL | Qt::Key_E), "sendButton", [this] { send(); });
    grid->addWidget(m_send, 0, 0);
    m_save = addButton(tr("Save as PDF"), QKeySequence(Qt::CTRL | Qt::Key_S), "savePdfButton",
                       [this] { savePdf(); });
    grid->addWidget(m_save, 0, 1);
    m_print = addButton(tr("Print"), QKeySequence(Qt::CTRL | Qt::Key_P), "printButton",
                        [this] { print(Print::Original); });
    grid->addWidget(m_print, 0, 2);
    m_printCopy = addButton(tr("Print a copy"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_P),
                            "printCopyButton", [this] { print(Print::Copy); });
    grid->addWidget(m_printCopy, 1, 2);
    m_revise =
        addButton(tr("Revise"), QKeySequence(Qt::CTRL | Qt::Key_R), "reviseButton", [this] { revise(); });
    grid->addWidget(m_revise, 1, 0);
    m_void = addButton(tr("Declare void"), {}, "voidButton", [this] { declareVoid(); });
    grid->addWidget(m_void, 1, 1);
    addPlaceButtons(grid);
    grid->setColumnStretch(3, 1);
    lines()->addWidget(m_buttons);
}

void RecordSheet::addPlaceButtons(QGridLayout* grid) {
    grid->addWidget(addButton(tr("Open the visit"), QKeySequence(Qt::CTRL | Qt::Key_O), "openVisitButton",
                              [this] {
                                  if (m_record) {
                                      m_context.navigator.openVisit(m_record->line.visit);
                                  }
                              }),
                    2, 0);
    grid->addWidget(addButton(tr("Open the premises"), {}, "openPremisesButton",
                              [this] {
                                  if (m_record) {
                                      m_context.navigator.openPremises(m_record->line.premises);
                                  }
                              }),
                    2, 1);
    m_tell = addButton(tr("Send them this one"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_R),
                       "tellHoldersButton", [this] { sendToHolders(); });
    grid->addWidget(m_tell, 2, 2);
}

void RecordSheet::show(store::RecordId id) {
    const bool same = m_id == id;
    m_id = id;
    auto record = m_context.store.record(id);
    if (!record) {
        showUnreadable(record.error());
        return;
    }
    fill(*record);
    if (!same) {
        ensureVisible(0, 0);
    }
}

void RecordSheet::fill(const store::IssuedRecord& record) {
    m_record = record;
    const auto& line = record.line;
    m_title->setText(tr("Record %1").arg(qstring(line.header.record)));
    m_subtitle->setText(tr("revision %1 · issued %2 · %3")
                            .arg(line.header.revision)
                            .arg(qstring(record::inOneLine(record.document.issued)), qstring(line.address)));
    m_subtitle->show();
    showState(line);
    m_state->show();
    m_buttons->show();
    m_story->show(record);
    m_story->setVisible(true);
    const bool stands = !line.supersededBy && !line.voided;
    m_print->setWords(line.voided         ? tr("Print, marked void")
                      : line.supersededBy ? tr("Print, marked superseded")
                                          : tr("Print"));
    m_printCopy->setVisible(stands);
    m_send->setEnabled(stands);  // what doesn't count goes out only marked as such
    m_revise->setEnabled(stands && !m_context.store.isReadOnly());
    m_void->setEnabled(stands && !m_context.store.isReadOnly());
    m_tell->setVisible(!m_story->holders().empty());
    m_pages->show(record.document, options(Print::Original));
}

void RecordSheet::showState(const store::RecordLine& line) {
    m_state->setInk(counts() ? look::Role::SoftInk : look::Role::LookAgain);
    if (line.voided) {
        m_state->setText(tr("Void since %1, declared by %2: %3. It keeps its number and stays readable.")
                             .arg(words::dayOfInstant(m_context.words, line.voided->at),
                                  line.voided->by.empty() ? tr("nobody named") : qstring(line.voided->by),
                                  qstring(line.voided->why)));
    } else if (line.supersededBy) {
        m_state->setText(
            tr("Superseded by a later revision. It stays readable; it is no longer the one that counts."));
    } else {
        m_state->setText(tr("Verified: the record and its pages are as they were issued."));
    }
}

bool RecordSheet::counts() const {
    return m_record && !m_record->line.supersededBy && !m_record->line.voided;
}

void RecordSheet::showUnreadable(const Error& error) {
    m_record.reset();
    const bool isGone = error.code == ErrorCode::RecordErased && !error.details.empty();
    m_title->setText(isGone ? tr("Record %1").arg(qstring(error.details.front()))
                            : tr("This record can't be relied on"));
    m_subtitle->hide();
    m_state->setInk(isGone ? look::Role::SoftInk : look::Role::Fail);
    m_state->setText(m_context.words.error(error));
    m_state->show();
    m_buttons->hide();
    m_story->setVisible(false);
    m_pages->clear();
}

void RecordSheet::showNothing() {
    m_id.reset();
    m_record.reset();
    m_title->setText(tr("Records"));
    m_subtitle->setText(
        tr("Records are issued at the end of a visit's sheet; here they are seen, printed and sent again."));
    m_subtitle->show();
    m_state->hide();
    m_buttons->hide();
    m_story->setVisible(false);
    m_pages->clear();
}

void RecordSheet::takeFocus() {
    if (m_buttons->isVisible()) {
        m_save->setFocus(Qt::OtherFocusReason);
    }
}

paper::PageOptions RecordSheet::options(Print how) const {
    paper::PageOptions options;
    options.digest = m_record->line.header.snapshotDigest;
    options.stamp = shell::stampOf(m_record->line);
    if (options.stamp == paper::Stamp::None && how == Print::Copy) {
        options.stamp = paper::Stamp::Copy;
    }
    return options;
}

void RecordSheet::showAgain() {
    show(*m_id);
}

void RecordSheet::send() {
    if (m_record && Sender(m_context, this).send(*m_record, options(Print::Original))) {
        showAgain();
    }
}

void RecordSheet::sendToHolders() {
    if (!m_record || m_story->holders().empty()) {
        return;
    }
    const auto others = Sender(m_context, this).sendToHolders(*m_record, m_story->holders());
    if (!others.isEmpty()) {
        m_context.dialogs.tell(
            this, tr("Who has no mail address"),
            tr("Of these no mail address is noted with what they were given: %1. Give them this "
               "one with “Send”.")
                .arg(others.join(QStringLiteral(", "))));
    }
    showAgain();
}

void RecordSheet::savePdf() {
    if (!m_record) {
        return;
    }
    const auto path =
        m_context.dialogs.saveFile(this, tr("Save the record as PDF"),
                                   shell::recordFileName(m_context.store, m_record->line), tr("PDF (*.pdf)"));
    if (path && Sender(m_context, this).saveAs(*m_record, *path, {})) {
        showAgain();
    }
}

void RecordSheet::declareVoid() {
    if (!counts()) {
        return;
    }
    const QString number = qstring(m_record->line.header.record);
    const int answer = m_context.dialogs.ask(
        this, tr("Declare %1 void").arg(number),
        tr("A void record doesn't count any more, and nothing takes its place. It keeps its number and stays "
           "readable, with who, when and why; this can't be taken back. To put a mistake right, revise it "
           "instead."),
        {tr("Leave it as it is"), tr("Declare it void")}, 0);
    if (answer != 1) {
        return;
    }
    const auto why =
        m_context.dialogs.askText(this, tr("Why is it void?"), tr("Reason, kept with the record"));
    if (!why) {
        return;
    }
    if (const auto done = m_context.store.voidRecord(*m_id, why->toStdString()); !done) {
        m_context.dialogs.tell(this, tr("The record is as it was"), m_context.words.error(done.error()));
        return;
    }
    m_context.navigator.say(tr("Record %1 is void.").arg(number));
    Q_EMIT changed();
}

void RecordSheet::print(Print how) {
    if (!m_record || (how == Print::Copy && !counts())) {
        return;
    }
    const auto printed =
        m_context.printing.print(m_record->document, options(how), shell::firmsPaper(m_context.store));
    if (!printed) {
        m_context.dialogs.tell(this, tr("Nothing was printed"), m_context.words.error(printed.error()));
        return;
    }
    if (*printed) {
        m_context.navigator.say(
            tr("Sent to the printer: record %1").arg(qstring(m_record->line.header.record)));
        const auto by = how == Print::Copy ? record::SentBy::PrintedCopy : record::SentBy::Printed;
        Sender(m_context, this).note(*m_record, {by, {}, {}, {}, {}});
        showAgain();
    }
}

void RecordSheet::revise() {
    if (!counts()) {
        return;
    }
    const QString number = qstring(m_record->line.header.record);
    const int answer =
        m_context.dialogs.ask(this, tr("A revision of %1").arg(number),
                              tr("An issued record is never changed: a revision replaces it, and both stay "
                                 "readable. The revision is made from the "
                                 "visit's entries as they are now. Has the visit been put right already?"),
                              {tr("Open the visit first"), tr("Issue the revision now")}, 0);
    if (answer == 0) {
        m_context.navigator.openVisit(m_record->line.visit);
        m_context.navigator.say(tr("Put the visit right; then revise record %1 from Records.").arg(number));
    } else if (answer == 1) {
        issueRevision();
    }
}

void RecordSheet::issueRevision() {
    const auto reason =
        m_context.dialogs.askText(this, tr("Why the revision?"), tr("Reason, printed on the revision"));
    if (!reason) {
        return;
    }
    const auto made = m_context.issue(m_record->line.visit, *m_id, *reason);
    if (!made) {
        m_context.dialogs.tell(this, tr("The revision was not issued"), m_context.words.error(made.error()));
        return;
    }
    m_context.navigator.say(tr("The revision is issued; the record before it is marked superseded."));
    Q_EMIT issued(*made);
}

}  // namespace hearth::ui::records
