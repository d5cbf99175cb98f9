// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/records/record_sheet.h"

#include "ui/records/file_name.h"
#include "ui/records/page_preview.h"
#include "ui/shell/saving.h"

namespace hearth::ui::records {

using words::qstring;

namespace {

/// Writes all or nothing.
QString isoDayOf(const store::RecordLine& line) {
    Instant at{};
    return parseInstant(line.header.issuedAt, at)
               ? qstring(calendar::isoText(FixedClock(at).today("Europe/London")))
               : QString();
}

}  // namespace

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
    m_save = addButton(tr("Save as PDF"), QKeySequence(Qt::CTRL | Qt::Key_S), "savePdfButton",
                       [this] { savePdf(); });
    grid->addWidget(m_save, 0, 0);
    m_print = addButton(tr("Print"), QKeySequence(Qt::CTRL | Qt::Key_P), "printButton",
                        [this] { print(Print::Original); });
    grid->addWidget(m_print, 0, 1);
    m_printCopy = addButton(tr("Print a copy"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_P),
                            "printCopyButton", [this] { print(Print::Copy); });
    grid->addWidget(m_printCopy, 0, 2);
    m_revise =
        addButton(tr("Revise"), QKeySequence(Qt::CTRL | Qt::Key_R), "reviseButton", [this] { revise(); });
    grid->addWidget(m_revise, 1, 0);
    grid->addWidget(addButton(tr("Open the visit"), QKeySequence(Qt::CTRL | Qt::Key_O), "openVisitButton",
                              [this] {
                                  if (m_record) {
                                      m_context.navigator.openVisit(m_record->line.visit);
                                  }
                              }),
                    1, 1);
    grid->addWidget(addButton(tr("Open the premises"), {}, "openPremisesButton",
                              [this] {
                                  if (m_record) {
                                      m_context.navigator.openPremises(m_record->line.premises);
                                  }
                              }),
                    1, 2);
    grid->setColumnStretch(3, 1);
    lines()->addWidget(m_buttons);
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
                            .arg(qstring(record.document.issued), qstring(line.address)));
    m_subtitle->show();
    m_state->setInk(line.supersededBy ? look::Role::LookAgain : look::Role::SoftInk);
    m_state->setText(
        line.supersededBy
            ? tr("Superseded by a later revision. It stays readable; it is no longer the one that counts.")
            : tr("Verified: the record and its pages are as they were issued."));
    m_state->show();
    m_buttons->show();
    m_print->setWords(line.supersededBy ? tr("Print, marked superseded") : tr("Print"));
    m_printCopy->setVisible(!line.supersededBy);
    m_revise->setEnabled(!line.supersededBy && !m_context.store.isReadOnly());
    m_pages->show(record.document, options(Print::Original));
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
    if (m_record->line.supersededBy) {
        options.stamp = paper::Stamp::Superseded;
    } else if (how == Print::Copy) {
        options.stamp = paper::Stamp::Copy;
    }
    return options;
}

void RecordSheet::note(const QString& event, const QString& detail) {
    if (m_context.store.isReadOnly()) {
        return;  // nothing can be noted; what was printed or saved is right all the same
    }
    if (const auto noted = m_context.store.noteEvent(*m_id, event.toStdString(), detail.toStdString());
        !noted) {
        m_context.navigator.say(m_context.words.error(noted.error()));
    }
}

void RecordSheet::savePdf() {
    if (!m_record) {
        return;
    }
    const auto& line = m_record->line;
    const QString name = proposedFileName(qstring(line.header.record), line.header.revision,
                                          qstring(line.address), isoDayOf(line));
    const auto path = m_context.dialogs.saveFile(this, tr("Save the record as PDF"), name, tr("PDF (*.pdf)"));
    if (!path) {
        return;
    }
    // The bytes that were issued, not the document rendered anew.
    if (const auto written = shell::writeFile(*path, m_record->pdf); !written) {
        m_context.dialogs.tell(this, tr("The PDF was not saved"), m_context.words.error(written.error()));
        return;
    }
    m_context.navigator.say(tr("Saved as %1").arg(*path));
    note(QStringLiteral("saved_pdf"), *path);
}

void RecordSheet::print(Print how) {
    if (!m_record || (how == Print::Copy && m_record->line.supersededBy)) {
        return;
    }
    const auto printed = m_context.printing.print(m_record->document, options(how));
    if (!printed) {
        m_context.dialogs.tell(this, tr("Nothing was printed"), m_context.words.error(printed.error()));
        return;
    }
    if (*printed) {
        m_context.navigator.say(
            tr("Sent to the printer: record %1").arg(qstring(m_record->line.header.record)));
        note(how == Print::Copy ? QStringLiteral("printed_copy") : QStringLiteral("printed"), {});
    }
}

void RecordSheet::revise() {
    if (!m_record || m_record->line.supersededBy) {
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
