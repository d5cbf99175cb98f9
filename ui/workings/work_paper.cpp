// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workings/work_paper.h"

#include "ui/input/margin_layout.h"
#include "ui/shell/kit.h"
#include "ui/words/question_words.h"
#include "ui/workings/result_view.h"

#include <QCoreApplication>
#include <QEvent>
#include <QPainter>
#include <QVBoxLayout>

#include <algorithm>

namespace hearth::ui::workings {

using input::FindingNote;
using judging::Judged;

namespace {

constexpr int kEdge = 3 * look::kGap;
constexpr int kMarginPad = 14;
constexpr int kLeastMargin = 232;
constexpr int kMostMargin = 320;

}  // namespace

WorkPaper::WorkPaper(WorkingsModel& model, const shell::Context& context, QWidget* parent)
    : QWidget(parent), m_model(model), m_context(context), m_lines(new QVBoxLayout(this)) {
    m_lines->setContentsMargins(kEdge, kEdge, kMostMargin + kEdge, kEdge);
    m_lines->setSpacing(look::kGap);
    addHead();
    for (const judging::AskedGroup& group : judging::infoOf(model.question()).groups) {
        auto* view = new GroupView(model, context, group, this);
        m_lines->addWidget(view);
        m_groups.push_back(view);
    }
    m_result = new ResultView(context.words, this);
    m_lines->addWidget(m_result);
    m_lines->addSpacing(look::kGap);
    m_caution = shell::softText({}, this);
    m_caution->setObjectName(QStringLiteral("workingsCaution"));
    m_lines->addWidget(m_caution);
    m_lines->addStretch(1);
    m_hint = shell::softText({}, this);
    m_hint->setObjectName(QStringLiteral("workingsHint"));
    refresh();
}

void WorkPaper::addHead() {
    auto* title = shell::titleText(words::question(m_context.words, m_model.question()), this);
    title->setObjectName(QStringLiteral("workingsTitle"));
    m_lines->addWidget(title);
    auto* help = shell::bodyText(words::questionHelp(m_context.words, m_model.question()), this);
    help->setInk(look::Role::SoftInk);
    m_lines->addWidget(help);
    m_lines->addSpacing(look::kGap);
    if (m_model.bookError()) {
        auto* error = shell::bodyText(m_context.words.error(*m_model.bookError()), this);
        error->setInk(look::Role::Fail);
        m_lines->addWidget(error);
    }
}

std::vector<WorkField> WorkPaper::fields() const {
    std::vector<WorkField> fields;
    for (const GroupView* group : m_groups) {
        std::copy_if(group->fields().begin(), group->fields().end(), std::back_inserter(fields),
                     [](const WorkField& field) { return !field.editor->isHidden(); });
    }
    return fields;
}

input::Editor* WorkPaper::anchorOf(const Judged& judged) const {
    const auto all = fields();
    for (const reg::Item item : judged.about) {
        const auto at = std::find_if(all.begin(), all.end(), [&](const WorkField& field) {
            return field.at.item == item &&
                   judging::Worksheet::subject(field.at.group, field.at.row) == judged.subject;
        });
        if (at != all.end()) {
            return at->editor;
        }
    }
    return nullptr;
}

std::vector<FindingNote*> WorkPaper::notesAbout(const FieldAt& at) const {
    std::vector<FindingNote*> beside;
    std::vector<FindingNote*> about;
    for (FindingNote* note : m_notes) {
        const Judged& judged = note->judged();
        const bool looksAt =
            judged.subject == judging::Worksheet::subject(at.group, at.row) &&
            std::find(judged.about.begin(), judged.about.end(), at.item) != judged.about.end();
        if (!looksAt) {
            continue;
        }
        about.push_back(note);
        const input::Editor* anchor = anchorOf(judged);
        const auto all = fields();
        if (std::any_of(all.begin(), all.end(),
                        [&](const WorkField& field) { return field.editor == anchor && field.at == at; })) {
            beside.push_back(note);
        }
    }
    return beside.empty() ? about : beside;
}

void WorkPaper::refill() {
    for (GroupView* group : m_groups) {
        group->refill();
    }
    Q_EMIT stopsChanged();
}

void WorkPaper::refresh() {
    bool changed = false;
    for (GroupView* group : m_groups) {
        changed = group->refresh() || changed;
    }
    m_result->show(m_model.answer());
    showCaution();
    showNotes();
    if (changed) {
        Q_EMIT stopsChanged();
    }
    rearrange();
}

void WorkPaper::rearrange() {
    // Placed when the fields have taken their new shape.
    QCoreApplication::postEvent(this, new QEvent(QEvent::LayoutRequest));
}

void WorkPaper::showCaution() {
    const auto firm = m_context.store.firm();
    m_caution->setText(m_context.words.caution(
        gasOf(m_model.sheet()), firm ? firm->country : reg::Country::England,
        m_context.store.emergencyContacts().value_or(std::vector<reg::EmergencyContact>())));
}

/// The note that showed the same kind of finding on the same subject before, so that an open source stays
/// open.
FindingNote* WorkPaper::takeNote(std::vector<FindingNote*>& from, const Judged& judged) {
    const auto same = std::find_if(from.begin(), from.end(), [&](const FindingNote* note) {
        return note->judged().finding.kind == judged.finding.kind && note->judged().subject == judged.subject;
    });
    if (same != from.end()) {
        FindingNote* note = *same;
        from.erase(same);
        return note;
    }
    auto* note = new FindingNote(m_context.words, this);
    // Not a stop of the Tab key: Enter goes from field to field. Ctrl+M goes to the margin.
    note->setFocusPolicy(Qt::ClickFocus);
    connect(note, &FindingNote::chosen, this, [this, note] { Q_EMIT noteChosen(note->judged()); });
    connect(note, &FindingNote::ruleWanted, this, &WorkPaper::ruleWanted);
    return note;
}

void WorkPaper::showNotes() {
    std::vector<FindingNote*> before = std::move(m_notes);
    m_notes.clear();
    for (const Judged& judged : m_model.answer().findings) {
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
    showHint();
}

void WorkPaper::showHint() {
    const judging::Answer& answer = m_model.answer();
    if (m_model.sheet().isEmpty()) {
        m_hint->setText(
            tr("What is found stands here, beside the field that it judges, as soon as "
               "something is typed."));
    } else if (answer.figures.empty()) {
        m_hint->setText(tr("Nothing can be found from this yet."));
    } else {
        m_hint->setText(tr("Nothing on this sheet is held against a limit yet."));
    }
    m_hint->setVisible(m_notes.empty());
}

int WorkPaper::marginOf(int width) {
    return std::clamp(width * 3 / 10, kLeastMargin, kMostMargin);
}

void WorkPaper::setRoom(int width) {
    const int room = width - marginOf(width) - 2 * kEdge;
    for (GroupView* group : m_groups) {
        group->setRoom(room);
    }
    m_result->setRoom(room);
}

int WorkPaper::anchorTop(const Judged& judged) const {
    const input::Editor* anchor = anchorOf(judged);
    return anchor == nullptr ? kEdge : anchor->mapTo(this, QPoint(0, 0)).y();
}

void WorkPaper::arrange() {
    if (m_isArranging) {
        return;
    }
    m_isArranging = true;
    const QMargins wanted(kEdge, kEdge, marginWidth() + kEdge, kEdge);
    if (m_lines->contentsMargins() != wanted) {
        m_lines->setContentsMargins(wanted);
        m_lines->activate();
    }
    const int noteWidth = marginWidth() - kMarginPad;
    const int left = width() - marginWidth();
    std::stable_sort(m_notes.begin(), m_notes.end(), [this](const FindingNote* a, const FindingNote* b) {
        return anchorTop(a->judged()) < anchorTop(b->judged());
    });
    std::vector<input::NoteBox> boxes;
    for (const FindingNote* note : m_notes) {
        boxes.push_back({anchorTop(note->judged()), note->heightForWidth(noteWidth)});
    }
    const std::vector<int> tops = input::placeNotes(boxes, kEdge, look::kGap);
    for (std::size_t i = 0; i < m_notes.size(); ++i) {
        m_notes[i]->setGeometry(left, tops[i], noteWidth, boxes[i].height);
    }
    m_hint->setGeometry(left, kEdge, noteWidth, m_hint->heightForWidth(noteWidth));
    setMinimumHeight(tops.empty() ? 0 : tops.back() + boxes.back().height + kEdge);
    m_isArranging = false;
}

bool WorkPaper::event(QEvent* event) {
    const bool done = QWidget::event(event);
    if (event->type() == QEvent::LayoutRequest) {
        arrange();
    }
    return done;
}

void WorkPaper::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange();
}

void WorkPaper::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const auto scheme = shell::currentScheme();
    painter.fillRect(rect(), look::colour(look::Role::Sheet, scheme));
    painter.setPen(look::colour(look::Role::SheetEdge, scheme));
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
    const int x = width() - marginWidth() - kMarginPad;
    painter.setPen(look::colour(look::Role::Line, scheme));
    painter.drawLine(x, 1, x, height() - 2);
}

}  // namespace hearth::ui::workings
