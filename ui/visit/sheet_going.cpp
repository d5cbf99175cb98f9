// SPDX-License-Identifier: GPL-3.0-or-later
// Where the keyboard goes on the sheet.
#include "ui/look/look.h"
#include "ui/shell/attachments_part.h"
#include "ui/shell/kit.h"
#include "ui/visit/part_view.h"
#include "ui/visit/sheet.h"
#include "ui/visit/spine.h"
#include "ui/visit/wanted.h"

#include <QApplication>
#include <QKeyEvent>
#include <QPlainTextEdit>
#include <QScrollArea>
#include <QScrollBar>

#include <algorithm>
#include <utility>

namespace hearth::ui::visit {

namespace {

constexpr int kAroundGoal = 6 * look::kGap;

/// Names a field of the sheet from one start of the program to the next.
std::string placeText(const FieldKey& key) {
    const std::string_view code = key.item    ? reg::infoOf(*key.item).code
                                  : key.field ? record::fieldCode(*key.field)
                                              : std::string_view("kinds");
    return std::string(code) + " " + uuidText(key.subject.id);
}

}  // namespace

std::string VisitSheet::noteOfPlace() const {
    return "sheet_at." + m_context.model.file().visit.id.text();
}

void VisitSheet::keepPlace() {
    if (m_last == nullptr || m_context.model.isReadOnly()) {
        return;
    }
    auto& store = m_context.model.store();
    const std::string place = placeText(m_last->key());
    const auto noted = store.setting(noteOfPlace());
    if (noted && *noted != place) {
        if (const auto kept = store.saveSetting(noteOfPlace(), place); !kept) {
            m_context.window.navigator.say(m_context.window.words.error(kept.error()));
        }
    }
}

bool VisitSheet::goToKeptPlace() {
    const auto noted = m_context.model.store().setting(noteOfPlace());
    if (!noted || noted->empty()) {
        return false;
    }
    for (PartView* part : m_paper->parts()) {
        for (SheetField* field : part->fields()) {
            if (placeText(field->key()) == *noted && !field->editor()->isHidden()) {
                shell::focusOn(field->editor());
                bringToTop(field->editor());
                return true;
            }
        }
    }
    return false;
}

/// What a visit is for decides what is asked: nothing else comes before it.
bool VisitSheet::goToKinds() {
    const reg::VisitFile& file = m_context.model.file();
    const FieldKey kinds{std::nullopt, std::nullopt, reg::subject(file.visit.id)};
    const PartView* part = m_paper->part({PartKind::WhoAndWhere});
    input::Editor* editor = part == nullptr ? nullptr : part->editorFor(kinds);
    if (editor == nullptr || !editor->text().isEmpty() || m_context.model.isReadOnly()) {
        return false;
    }
    shell::focusOn(editor);
    return true;
}

void VisitSheet::takeFocus() {
    if (goToKeptPlace() || goToKinds()) {
        return;
    }
    for (const record::Missing& missing : m_context.model.missing()) {
        PartView* part = m_paper->part(partOf(missing, m_context.model.file()));
        if (part != nullptr && part->editorFor({missing.item, missing.field, missing.subject}) != nullptr) {
            goTo(missing);
            return;
        }
    }
    goTo(PartRef{PartKind::Records});
}

void VisitSheet::commit() {
    for (QWidget* at = QApplication::focusWidget(); at != nullptr; at = at->parentWidget()) {
        if (auto* editor = qobject_cast<input::Editor*>(at); editor != nullptr && isAncestorOf(editor)) {
            editor->commit();
            return;
        }
    }
}

void VisitSheet::bringToTop(QWidget* widget) {
    // The notes make room for themselves when the layout is asked for, and that moves the parts: three
    // rounds, from the fields to the parts to the paper.
    constexpr int kRounds = 3;
    for (int round = 0; round < kRounds; ++round) {
        QCoreApplication::sendPostedEvents(nullptr, QEvent::LayoutRequest);
    }
    const int y = widget->mapTo(m_paper, QPoint(0, 0)).y();
    m_scroll->verticalScrollBar()->setValue(y - 2 * look::kGap);
}

void VisitSheet::goTo(const PartRef& ref) {
    PartView* part = m_paper->part(ref);
    if (part != nullptr) {
        part->takeFocus();
        m_spine->setCurrent(ref);
        bringToTop(part);
    }
}

void VisitSheet::goTo(const record::Missing& missing) {
    PartView* part = m_paper->part(partOf(missing, m_context.model.file()));
    input::Editor* editor =
        part == nullptr ? nullptr : part->editorFor({missing.item, missing.field, missing.subject});
    if (editor != nullptr && !editor->isHidden()) {
        shell::focusOn(editor);
        m_scroll->ensureWidgetVisible(editor, 0, kAroundGoal);
        return;
    }
    if (part != nullptr && !isKeptElsewhere(missing)) {
        goTo(part->ref());
    } else if (isKeptAtPremises(missing)) {
        m_context.window.navigator.openPremises(m_context.model.file().premises.id);
    } else if (missing.field) {
        goToFirm(missing);
    }
}

void VisitSheet::goToFirm(const record::Missing& missing) {
    using record::Field;
    const reg::VisitFile& file = m_context.model.file();
    const reg::Instrument* instrument = nullptr;
    if (missing.field == Field::InstrumentSerial || missing.field == Field::InstrumentCalibration) {
        instrument = file.gaugeOf(reg::TestId{missing.subject.id});
    } else if (missing.field == Field::AnalyserSerial || missing.field == Field::AnalyserCalibration) {
        instrument = file.instrumentOf(reg::subject(file.visit.id), reg::Item::VisitAnalyser);
    }
    const auto& engineer = file.visit.engineer;
    m_context.window.navigator.openFirm(*missing.field, instrument != nullptr ? instrument->id.text()
                                                        : engineer            ? engineer->text()
                                                                              : std::string());
}

/// Another unsafe situation, at the appliance whose part has the keyboard.
void VisitSheet::addSituation() {
    if (m_context.model.isReadOnly()) {
        return;
    }
    commit();
    const PartView* part = partOfFocus();
    std::optional<reg::ApplianceId> appliance;
    if (part != nullptr && part->ref().kind == PartKind::Appliance) {
        appliance = reg::ApplianceId{subjectOf(part->ref(), m_context.model.file()).id};
    }
    const auto made = m_context.model.addSituation(appliance, m_context.window.clock.now());
    if (made) {
        goTo(partAt(PartKind::Situation, reg::subject(*made), m_context.model.file()));
    } else {
        m_context.window.navigator.say(m_context.window.words.error(made.error()));
    }
}

void VisitSheet::step(int by) {
    const PartView* now = partOfFocus();
    const auto& parts = m_paper->parts();
    const auto at = std::find(parts.begin(), parts.end(), now);
    const auto last = static_cast<std::ptrdiff_t>(parts.size()) - 1;
    auto to = at == parts.end() ? (by > 0 ? -1 : 0) : at - parts.begin();
    // Past a part that asks nothing now: the keyboard finds no place in it.
    do {
        to = std::clamp<std::ptrdiff_t>(to + by, 0, last);
        goTo(parts[static_cast<std::size_t>(to)]->ref());
    } while (partOfFocus() == now && to > 0 && to < last);
}

/// Enter from habit after an answer that has gone on already would leave the next field out, and what is
/// typed after that would stand one field too far: it is taken as the end of the answer.
void VisitSheet::goOnFrom(input::Editor* answered) {
    const QWidget* field = answered->focusTarget();
    const bool wasKept = !field->property("problem").toBool();
    if (wasKept && field == QApplication::focusWidget()) {
        m_byEnter = true;  // it goes on as Enter does
        focusNextChild();
        m_wentOn = true;
        m_answeredAt = m_keyAt;
    }
}

/// From field to field, nobody is led through a list of photographs and its buttons, nor through clocks that
/// Ctrl+Enter starts and stops from anywhere: Tab reaches them.
bool VisitSheet::focusNextPrevChild(bool next) {
    const auto inPictures = [this](const QWidget* at) {
        while (at != nullptr && at != this && qobject_cast<const shell::AttachmentsPart*>(at) == nullptr) {
            at = at->parentWidget();
        }
        return at != nullptr && at != this;
    };
    bool went = QWidget::focusNextPrevChild(next);
    while (went && m_byEnter &&
           (inPictures(QApplication::focusWidget()) || isLeftOutByEnter(QApplication::focusWidget()))) {
        went = QWidget::focusNextPrevChild(next);
    }
    return went;
}

bool VisitSheet::goByEnter(QObject* watched, const QKeyEvent& key) {
    // Out of habit it comes at once; who waits that long means the next field.
    constexpr quint64 kHabit = 1000;  // milliseconds
    const bool isHabit = key.timestamp() - m_answeredAt < kHabit;
    const bool wentOn = std::exchange(m_wentOn, false) && isHabit;
    const auto modifiers = key.modifiers() & ~Qt::KeypadModifier;
    if (modifiers == Qt::ShiftModifier && qobject_cast<QPlainTextEdit*>(watched) == nullptr) {
        return focusPreviousChild();
    }
    if (modifiers != Qt::NoModifier) {
        return false;
    }
    // Nobody who goes from field to field finds an unsafe situation by one Enter too many.
    return wentOn || (isPassedByEnter(watched) && focusNextChild());
}

/// An answer can make parts above it grow (plots, notes, further fields) and push the field with the keyboard
/// out of view. Who scrolls away without typing is left alone.
void VisitSheet::followGrown() {
    constexpr qint64 kOfTheKey = 1500;  // milliseconds
    QWidget* focus = QApplication::focusWidget();
    if (m_paper == nullptr || !m_paper->isAncestorOf(focus) || !m_sinceKey.isValid() ||
        m_sinceKey.elapsed() > kOfTheKey) {
        return;
    }
    const QRect shown(focus->mapTo(m_scroll->viewport(), QPoint(0, 0)), focus->size());
    if (!m_scroll->viewport()->rect().contains(shown)) {
        follow(focus);
    }
}

void VisitSheet::follow(QWidget* focus) {
    if (focus == nullptr || m_paper == nullptr || !m_paper->isAncestorOf(focus)) {
        return;
    }
    QWidget* shown = focus;
    for (QWidget* at = focus; at != m_paper; at = at->parentWidget()) {
        if (qobject_cast<input::Editor*>(at) != nullptr) {
            shown = at;  // with its label and what is said below it
        }
    }
    m_scroll->ensureWidgetVisible(shown, 0, kAroundGoal);
    if (const PartView* part = partOfFocus()) {
        m_spine->setCurrent(part->ref());
    }
    if (SheetField* field = fieldOfFocus()) {
        m_last = field;
    }
}

}  // namespace hearth::ui::visit
