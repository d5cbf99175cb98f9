// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/sheet_paper.h"

#include "ui/input/margin_layout.h"
#include "ui/look/look.h"
#include "ui/shell/kit.h"
#include "ui/visit/parts.h"
#include "ui/visit/wanted.h"

#include <QApplication>
#include <QEvent>
#include <QPainter>
#include <QVBoxLayout>

#include <algorithm>

namespace hearth::ui::visit {

using input::FindingNote;
using judging::Judged;

namespace {

constexpr int kEdge = 3 * look::kGap;
constexpr int kNoteGap = look::kGap;
constexpr int kMarginPad = 14;
constexpr int kLeastMargin = 232;
constexpr int kMostMargin = 320;

}  // namespace

SheetPaper::SheetPaper(const SheetContext& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_lines(new QVBoxLayout(this)) {
    m_lines->setContentsMargins(kEdge, kEdge, kMostMargin + kEdge, kEdge);
    m_lines->setSpacing(0);
    m_issued = shell::bodyText({}, this);
    m_issued->setInk(look::Role::Key);
    m_issued->setContentsMargins(0, 0, 0, 2 * look::kGap);
    m_lines->addWidget(m_issued);
    m_lines->addStretch();
    bringUpToDate();
}

std::vector<PartView*> SheetPaper::bringUpToDate() {
    const QWidget* focus = QApplication::focusWidget();
    const auto hasFocus = [&](const PartView* part) { return focus != nullptr && part->isAncestorOf(focus); };
    const auto wanted = partsOf(m_context.model.file(), m_context.model.taken());
    std::vector<PartView*> parts;
    std::vector<PartView*> made;
    std::vector<PartView*> before = std::move(m_parts);
    for (const PartRef& ref : wanted) {
        const auto at = std::find_if(before.begin(), before.end(), [&](const PartView* part) {
            return part->ref() == ref && (part->isUpToDate() || hasFocus(part));
        });
        if (at != before.end()) {
            parts.push_back(*at);
            before.erase(at);
            continue;
        }
        made.push_back(makePart(m_context, ref, this));
        parts.push_back(made.back());
    }
    for (PartView* gone : before) {
        gone->hide();
        m_lines->removeWidget(gone);
        gone->deleteLater();  // what was pressed may stand on it
    }
    m_parts = std::move(parts);
    if (!made.empty()) {
        // Children in the order of the parts: the Tab key goes by it.
        for (std::size_t index = 0; index < m_parts.size(); ++index) {
            m_lines->removeWidget(m_parts[index]);
            m_lines->insertWidget(static_cast<int>(index) + 1, m_parts[index]);
            m_parts[index]->raise();
            m_parts[index]->show();
        }
    }
    return made;
}

PartView* SheetPaper::part(const PartRef& ref) const {
    const auto at =
        std::find_if(m_parts.begin(), m_parts.end(), [&](PartView* part) { return part->ref() == ref; });
    return at == m_parts.end() ? nullptr : *at;
}

PartView* SheetPaper::partOf(const Judged& judged) const {
    return part(visit::partOf(judged, m_context.model.file()));
}

QWidget* SheetPaper::anchorOf(const Judged& judged) const {
    const PartView* part = partOf(judged);
    return part == nullptr ? nullptr : part->anchorOf(judged);
}

std::vector<FindingNote*> SheetPaper::notesAbout(const FieldKey& key) const {
    std::vector<FindingNote*> beside;
    std::vector<FindingNote*> about;
    for (FindingNote* note : m_notes) {
        const Judged& judged = note->judged();
        const bool looksAt =
            key.item && judged.subject == key.subject &&
            std::find(judged.about.begin(), judged.about.end(), *key.item) != judged.about.end();
        if (!looksAt) {
            continue;
        }
        about.push_back(note);
        const PartView* part = partOf(judged);
        if (part != nullptr && part->editorFor(key) == part->anchorOf(judged)) {
            beside.push_back(note);
        }
    }
    return beside.empty() ? about : beside;
}

std::vector<FindingNote*> SheetPaper::notesOf(const PartView* part) const {
    std::vector<FindingNote*> found;
    for (FindingNote* note : m_notes) {
        if (partOf(note->judged()) == part) {
            found.push_back(note);
        }
    }
    const auto height = [&](const FindingNote* note) {
        return part->anchorOf(note->judged())->mapTo(part, QPoint(0, 0)).y();
    };
    std::stable_sort(found.begin(), found.end(),
                     [&](const FindingNote* a, const FindingNote* b) { return height(a) < height(b); });
    return found;
}

void SheetPaper::refresh() {
    for (PartView* part : m_parts) {
        part->refresh();
    }
    showNotes();
    showIssued();
    // Placed when the parts have taken their new shape.
    QCoreApplication::postEvent(this, new QEvent(QEvent::LayoutRequest));
}

void SheetPaper::refill() {
    for (PartView* part : m_parts) {
        part->refill();
    }
}

void SheetPaper::setReadOnly(bool readOnly) {
    for (PartView* part : m_parts) {
        part->setReadOnly(readOnly);
    }
}

/// The note that showed the same kind of finding on the same subject before, so that an open source stays
/// open.
FindingNote* SheetPaper::takeNote(std::vector<FindingNote*>& from, const Judged& judged) {
    const auto same = std::find_if(from.begin(), from.end(), [&](const FindingNote* note) {
        return note->judged().finding.kind == judged.finding.kind && note->judged().subject == judged.subject;
    });
    if (same != from.end()) {
        FindingNote* note = *same;
        from.erase(same);
        return note;
    }
    auto* note = new FindingNote(m_context.window.words, this);
    // Not a stop of the Tab key: Enter goes from reading to reading. Ctrl+M goes to the margin.
    note->setFocusPolicy(Qt::ClickFocus);
    connect(note, &FindingNote::chosen, this, [this, note] { Q_EMIT noteChosen(note->judged()); });
    connect(note, &FindingNote::ruleWanted, this, &SheetPaper::ruleWanted);
    return note;
}

/// Several tests of one installation find the same of it: said once where they say it.
bool SheetPaper::isSaid(const Judged& judged) const {
    const PartView* part = partOf(judged);
    return std::any_of(m_notes.begin(), m_notes.end(), [&](const FindingNote* note) {
        return note->judged().finding == judged.finding && partOf(note->judged()) == part &&
               part->anchorOf(note->judged()) == part->anchorOf(judged);
    });
}

void SheetPaper::showNotes() {
    std::vector<FindingNote*> before = std::move(m_notes);
    m_notes.clear();
    for (const Judged& judged : m_context.model.marginFindings()) {
        if (!isWorthShowing(judged, m_context.model.file()) || partOf(judged) == nullptr || isSaid(judged)) {
            continue;
        }
        FindingNote* note = takeNote(before, judged);
        if (!(note->judged() == judged)) {
            note->show(judged);
        }
        note->QWidget::show();
        m_notes.push_back(note);
    }
    for (FindingNote* gone : before) {
        gone->hide();
        gone->deleteLater();
    }
}

void SheetPaper::showIssued() {
    const auto* record = m_context.model.currentRecord();
    QString text;
    if (record != nullptr) {
        text = tr("Issued as %1, revision %2. A record never changes: what is changed here goes into a "
                  "revision.")
                   .arg(QString::fromStdString(record->header.record))
                   .arg(record->header.revision);
    }
    if (m_context.model.file().visit.closed) {
        text += (text.isEmpty() ? QString() : QStringLiteral(" ")) + tr("This visit is closed.");
    }
    m_issued->setText(text);
    m_issued->setVisible(!text.isEmpty());
}

int SheetPaper::marginWidth() const {
    return std::clamp(width() * 3 / 10, kLeastMargin, kMostMargin);
}

void SheetPaper::arrangePart(PartView* part) {
    const auto notes = notesOf(part);
    const int noteWidth = marginWidth() - kMarginPad;
    std::vector<input::NoteBox> boxes;
    for (const FindingNote* note : notes) {
        boxes.push_back(
            {part->anchorOf(note->judged())->mapTo(part, QPoint(0, 0)).y(), note->heightForWidth(noteWidth)});
    }
    const std::vector<int> tops = input::placeNotes(boxes, 0, kNoteGap);
    const int partTop = part->y();
    for (std::size_t index = 0; index < notes.size(); ++index) {
        notes[index]->setGeometry(width() - marginWidth(), partTop + tops[index], noteWidth,
                                  boxes[index].height);
    }
    part->setRoomForNotes(notes.empty() ? 0 : tops.back() + boxes.back().height + kNoteGap);
}

void SheetPaper::arrange() {
    if (m_isArranging) {
        return;
    }
    m_isArranging = true;
    const QMargins wanted(kEdge, kEdge, marginWidth() + kEdge, kEdge);
    if (m_lines->contentsMargins() != wanted) {
        m_lines->setContentsMargins(wanted);
        m_lines->activate();
    }
    for (PartView* part : m_parts) {
        arrangePart(part);
    }
    m_isArranging = false;
}

bool SheetPaper::event(QEvent* event) {
    const bool done = QWidget::event(event);
    if (event->type() == QEvent::LayoutRequest) {
        arrange();
    }
    return done;
}

void SheetPaper::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange();
}

void SheetPaper::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const auto scheme = shell::currentScheme();
    painter.fillRect(rect(), look::colour(look::Role::Sheet, scheme));
    painter.setPen(look::colour(look::Role::SheetEdge, scheme));
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
    const int x = width() - marginWidth() - kMarginPad;
    painter.setPen(look::colour(look::Role::Line, scheme));
    painter.drawLine(x, 1, x, height() - 2);
}

}  // namespace hearth::ui::visit
