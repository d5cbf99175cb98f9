// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workings/work_sheet.h"

#include "ui/shell/kit.h"

#include <QApplication>
#include <QKeyEvent>
#include <QScrollBar>
#include <QTimer>

#include <algorithm>

namespace hearth::ui::workings {

using input::FindingNote;

namespace {

constexpr int kAround = 6 * look::kGap;

}  // namespace

WorkSheet::WorkSheet(WorkingsModel& model, const shell::Context& context, QWidget* parent)
    : QScrollArea(parent), m_model(model), m_context(context), m_builtFor(model.question()) {
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    connect(&model, &WorkingsModel::refilled, this, &WorkSheet::refilled);
    connect(&model, &WorkingsModel::answered, this, [this] {
        if (m_builtFor == m_model.question()) {
            m_paper->refresh();
        }
    });
    connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) { follow(now); });
    rebuild();
}

WorkSheet::~WorkSheet() {
    // While the fields are being deleted the focus wanders, and the members that follow it are gone by then.
    disconnect(qApp, nullptr, this, nullptr);
    // Not to outlive what they draw on, if the window goes first.
    std::for_each(m_old.begin(), m_old.end(), [](const QPointer<WorkPaper>& old) { delete old; });
}

void WorkSheet::rebuild() {
    m_builtFor = m_model.question();
    if (m_paper != nullptr) {
        m_paper->hide();
        m_paper->disconnect(this);
        takeWidget();
        m_old.emplace_back(m_paper);
        m_paper->deleteLater();  // what was pressed may stand on it
    }
    m_paper = new WorkPaper(m_model, m_context, nullptr);
    m_paper->setRoom(viewport()->width());
    setWidget(m_paper);
    m_paper->show();
    connect(m_paper, &WorkPaper::noteChosen, this,
            [this](const judging::Judged& judged) { shell::focusOn(m_paper->anchorOf(judged)); });
    connect(m_paper, &WorkPaper::ruleWanted, this, &WorkSheet::openRule, Qt::QueuedConnection);
    connect(m_paper, &WorkPaper::stopsChanged, this, &WorkSheet::watchStops);
    verticalScrollBar()->setValue(0);
    watchStops();
}

void WorkSheet::refilled() {
    if (m_builtFor != m_model.question()) {
        rebuild();
        return;
    }
    m_paper->refill();
}

/// Fields would answer some keys in a way of their own. See eventFilter.
void WorkSheet::watchStops() {
    for (const WorkField& field : m_paper->fields()) {
        field.editor->focusTarget()->installEventFilter(this);
    }
    Q_EMIT stopsChanged();
}

/// A list would page through its choices and change a value: the paging keys move the paper, wherever the
/// keyboard is. Enter in the last field would go out to the window's buttons and press one by the next Enter.
bool WorkSheet::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool isPlain = (key->modifiers() & ~Qt::KeypadModifier) == Qt::NoModifier;
        const bool pages = key->key() == Qt::Key_PageUp || key->key() == Qt::Key_PageDown;
        if (pages && isPlain) {
            turn(key->key() == Qt::Key_PageUp ? -1 : 1);
            return true;
        }
        const bool isEnter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
        if (isEnter && isPlain && isLast(watched)) {
            endHere(watched);
            return true;
        }
    }
    return QScrollArea::eventFilter(watched, event);
}

bool WorkSheet::isLast(const QObject* field) const {
    const auto fields = m_paper->fields();
    return !fields.empty() && fields.back().editor->focusTarget() == field;
}

/// On, if a field has come of what was typed.
void WorkSheet::endHere(const QObject* field) {
    shell::commitField(this);
    const auto fields = m_paper->fields();
    const auto at = std::find_if(fields.begin(), fields.end(), [field](const WorkField& other) {
        return other.editor->focusTarget() == field;
    });
    if (at != fields.end() && at + 1 != fields.end()) {
        shell::focusOn((at + 1)->editor);
        return;
    }
    follow(QApplication::focusWidget());
    m_context.navigator.say(tr("The last field. Ctrl+T takes the sheet over, Ctrl+K goes to the questions."));
}

void WorkSheet::turn(int by) {
    QScrollBar* bar = verticalScrollBar();
    bar->setValue(bar->value() + by * bar->pageStep());
}

void WorkSheet::takeFocus() {
    const auto fields = m_paper->fields();
    const auto empty = std::find_if(fields.begin(), fields.end(),
                                    [](const WorkField& field) { return field.editor->text().isEmpty(); });
    if (!fields.empty()) {
        shell::focusOn(empty == fields.end() ? fields.front().editor : empty->editor);
    }
}

void WorkSheet::takeFirst() {
    if (const auto fields = m_paper->fields(); !fields.empty()) {
        shell::focusOn(fields.front().editor);
    }
}

void WorkSheet::follow(QWidget* focus) {
    if (focus == nullptr || !m_paper->isAncestorOf(focus)) {
        Q_EMIT helped({});
        return;
    }
    QWidget* shown = focus;
    for (QWidget* at = focus; at != m_paper; at = at->parentWidget()) {
        if (qobject_cast<input::Editor*>(at) != nullptr) {
            shown = at;  // with its label and what is said below it
        }
    }
    if (isLast(focus)) {
        verticalScrollBar()->setValue(verticalScrollBar()->maximum());  // to the figures below it
    }
    ensureWidgetVisible(shown, 0, kAround);
    Q_EMIT helped(shown->toolTip());
}

std::vector<FindingNote*> WorkSheet::notesOfFocus() const {
    const QWidget* focus = QApplication::focusWidget();
    for (const WorkField& field : m_paper->fields()) {
        if (field.editor->focusTarget() == focus) {
            return m_paper->notesAbout(field.at);
        }
    }
    return {};
}

void WorkSheet::openSources(const std::vector<FindingNote*>& notes) {
    if (std::all_of(notes.begin(), notes.end(),
                    [](auto* note) { return note->judged().finding.limits.empty(); })) {
        m_context.navigator.say(tr("No limit was used here: what is found says all there is."));
        return;
    }
    const bool allOpen =
        std::all_of(notes.begin(), notes.end(), [](auto* note) { return note->isSourceOpen(); });
    for (FindingNote* note : notes) {
        note->setSourceOpen(!allOpen);
    }
    m_paper->rearrange();
    if (!notes.empty() && !allOpen) {
        // When the notes have taken their new height. The field stays in view whatever the note needs.
        QTimer::singleShot(0, notes.front(), [this, note = notes.front()] {
            ensureWidgetVisible(note, 0, look::kGap);
            follow(QApplication::focusWidget());
        });
    }
}

void WorkSheet::openRule(const rulebook::RuleKey& key) {
    m_context.navigator.openRule(key);
}

void WorkSheet::openRuleOf(const std::vector<FindingNote*>& notes) {
    for (const FindingNote* note : notes) {
        if (const auto key = note->rule()) {
            openRule(*key);
            return;
        }
    }
}

void WorkSheet::goToMargin() {
    if (auto* note = qobject_cast<FindingNote*>(QApplication::focusWidget())) {
        input::Editor* anchor = m_paper->anchorOf(note->judged());
        anchor != nullptr ? shell::focusOn(anchor) : takeFocus();
        return;
    }
    const auto about = notesOfFocus();
    const auto& notes = about.empty() ? m_paper->notes() : about;
    if (!notes.empty()) {
        notes.front()->setFocus(Qt::OtherFocusReason);
    }
}

/// Past what is empty in a long row: to the next row, or to the next part of the sheet.
void WorkSheet::goToNextRow() {
    shell::commitField(this);  // a row may come of it
    const QWidget* focus = QApplication::focusWidget();
    const auto fields = m_paper->fields();
    const auto now = std::find_if(fields.begin(), fields.end(), [focus](const WorkField& field) {
        return field.editor->focusTarget() == focus;
    });
    if (now == fields.end()) {
        return;
    }
    const auto next = std::find_if(now, fields.end(), [now](const WorkField& field) {
        return field.at.group != now->at.group || field.at.row != now->at.row;
    });
    shell::focusOn(next == fields.end() ? fields.front().editor : next->editor);
}

void WorkSheet::stepInMargin(int by) {
    const auto& notes = m_paper->notes();
    const auto at = std::find(notes.begin(), notes.end(), QApplication::focusWidget());
    const auto to =
        std::clamp<std::ptrdiff_t>(at - notes.begin() + by, 0, static_cast<std::ptrdiff_t>(notes.size()) - 1);
    notes[static_cast<std::size_t>(to)]->setFocus(Qt::OtherFocusReason);
}

bool WorkSheet::answerKey(QKeyEvent* event) {
    const bool control = event->modifiers() == Qt::ControlModifier;
    const bool inMargin = qobject_cast<FindingNote*>(QApplication::focusWidget()) != nullptr;
    switch (event->key()) {
        case Qt::Key_PageDown:
        case Qt::Key_PageUp:
            turn(event->key() == Qt::Key_PageUp ? -1 : 1);
            return true;
        case Qt::Key_M:
            if (control) {
                goToMargin();
            }
            return control;
        case Qt::Key_Return:
        case Qt::Key_Enter:
            if (control) {
                goToNextRow();
            }
            return control;
        case Qt::Key_Up:
        case Qt::Key_Down:
            if (inMargin) {
                stepInMargin(event->key() == Qt::Key_Up ? -1 : 1);
            }
            return inMargin;
        case Qt::Key_F1: {
            const auto notes = notesOfFocus();
            if (event->modifiers() == Qt::ShiftModifier) {
                openRuleOf(notes);
            } else if (!notes.empty()) {
                openSources(notes);
            }
            return !notes.empty();
        }
        case Qt::Key_Escape:
            if (inMargin) {
                goToMargin();
            } else {
                Q_EMIT left();
            }
            return true;
        default:
            return false;
    }
}

/// Not QScrollArea's: it would scroll by the arrow keys.
void WorkSheet::keyPressEvent(QKeyEvent* event) {
    if (!answerKey(event)) {
        QWidget::keyPressEvent(event);
    }
}

void WorkSheet::resizeEvent(QResizeEvent* event) {
    m_paper->setRoom(viewport()->width());
    QScrollArea::resizeEvent(event);
}

void WorkSheet::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange && m_paper != nullptr) {
        rebuild();
    }
    QScrollArea::changeEvent(event);
}

}  // namespace hearth::ui::workings
