// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/sheet.h"

#include "ui/look/look.h"
#include "ui/shell/kit.h"
#include "ui/visit/part_records.h"
#include "ui/visit/part_state.h"
#include "ui/visit/part_tightness.h"
#include "ui/visit/spine.h"
#include "ui/visit/tab_order.h"
#include "ui/visit/test_clock.h"
#include "ui/visit/volume_text.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QScrollArea>
#include <QScrollBar>
#include <QVBoxLayout>

#include <algorithm>

namespace hearth::ui::visit {

namespace {

constexpr int kSpineWidth = 208;
constexpr int kAround = 6 * look::kGap;

/// Leaves the paging keys to the sheet.
class SheetScroll : public QScrollArea {
  public:
    using QScrollArea::QScrollArea;

  protected:
    void keyPressEvent(QKeyEvent* event) override { event->ignore(); }
};

}  // namespace

VisitSheet::VisitSheet(const SheetContext& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_scroll(new SheetScroll(this)) {
    auto* line = new QHBoxLayout(this);
    line->setContentsMargins(look::kGap, look::kGap, look::kGap, 0);
    line->setSpacing(2 * look::kGap);
    addSide();
    m_scroll->setWidgetResizable(true);
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    line->addWidget(m_scroll, 1);
    connect(&context.model, &VisitSheetModel::reloaded, this, &VisitSheet::fileRead);
    connect(&context.model, &VisitSheetModel::judged, this, &VisitSheet::judgedAgain);
    connect(
        &context.model, &VisitSheetModel::entered, this,
        [this](const reg::SubjectRef& subject, reg::Item item) {
            for (PartView* part : m_paper->parts()) {
                SheetField* field = part->find({item, std::nullopt, subject});
                if (field != nullptr && field->editor()->text() != m_context.model.textOf(subject, item)) {
                    field->refill();
                }
            }
        });
    connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) { follow(now); });
    fileRead();
    judgedAgain();
}

VisitSheet::~VisitSheet() {
    // While the fields are being deleted the focus wanders, and the members that follow it are gone by then.
    disconnect(qApp, nullptr, this, nullptr);
}

void VisitSheet::addSide() {
    auto* side = new QWidget(this);
    side->setFixedWidth(kSpineWidth);
    auto* lines = new QVBoxLayout(side);
    lines->setContentsMargins(0, look::kGap, 0, look::kGap);
    lines->setSpacing(look::kGap / 2);
    m_address = shell::headingText({}, side);
    m_address->setWordWrap(true);
    m_day = shell::softText({}, side);
    m_spine = new Spine(side);
    m_spine->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    auto* keys = shell::softText(
        tr("Enter next field\nPage Up, Page Down parts\nCtrl+K go to a part\nF1 why, Ctrl+M margin"), side);
    lines->addWidget(m_address);
    lines->addWidget(m_day);
    lines->addSpacing(look::kGap);
    lines->addWidget(m_spine, 100);
    lines->addSpacing(look::kGap);
    lines->addWidget(keys);
    lines->addStretch(1);
    layout()->addWidget(side);
    connect(m_spine, &Spine::chosen, this, [this](const PartRef& ref) { goTo(ref); });
    connect(m_spine, &Spine::left, this, [this] {
        if (m_before != nullptr) {
            m_before->setFocus(Qt::OtherFocusReason);
        }
    });
}

void VisitSheet::rebuild() {
    const reg::VisitFile& file = m_context.model.file();
    m_builtFor = file.visit.id;
    m_builtParts = partsOf(file);
    if (m_paper != nullptr) {
        m_paper->hide();
        m_scroll->takeWidget();
        m_paper->deleteLater();  // what was pressed may stand on it
    }
    m_paper = new SheetPaper(m_context, nullptr);
    m_scroll->setWidget(m_paper);
    m_paper->show();
    connect(
        m_paper, &SheetPaper::ruleWanted, this,
        [this](const rulebook::RuleKey& key) { m_context.window.navigator.openRule(key); },
        Qt::QueuedConnection);
    connect(m_paper, &SheetPaper::noteChosen, this, [this](const judging::Judged& judged) {
        PartView* part =
            m_paper->part(partAt(partOf(judged.finding.kind), judged.subject, m_context.model.file()));
        QWidget* anchor = m_paper->anchorOf(judged);
        if (auto* editor = qobject_cast<input::Editor*>(anchor)) {
            shell::focusOn(editor);
        } else if (part != nullptr) {
            goTo(part->ref());
        }
    });
    for (PartView* part : m_paper->parts()) {
        connect(part, &PartView::stopsChanged, this, &VisitSheet::orderTabs);
        connect(part, &PartView::urgent, this, [this](QWidget* what) {
            QMetaObject::invokeMethod(
                this,
                [this, what = QPointer<QWidget>(what)] {
                    if (what != nullptr) {
                        m_scroll->ensureWidgetVisible(what, 0, kAround);
                    }
                },
                Qt::QueuedConnection);
        });
    }
    for (TightnessPart* part : tightnessParts()) {
        const PartRef restore{PartKind::Restore, part->ref().test};
        connect(part->clock(), &TestClock::restoreWanted, this, [this, restore] { goTo(restore); });
        connect(part->clock(), &TestClock::runningChanged, this, &VisitSheet::showSpine);
    }
    connect(recordsPart(), &RecordsPart::missingChosen, this,
            [this](const record::Missing& missing) { goTo(missing); });
    orderTabs();
}

void VisitSheet::fileRead() {
    const reg::VisitFile& file = m_context.model.file();
    if (m_paper == nullptr || m_builtFor != file.visit.id || m_builtParts != partsOf(file)) {
        rebuild();
        return;
    }
    m_paper->setReadOnly(m_context.model.isReadOnly());
    m_paper->refill();
}

void VisitSheet::judgedAgain() {
    m_paper->refresh();
    showSpine();
    showHead();
}

void VisitSheet::showHead() {
    const reg::VisitFile& file = m_context.model.file();
    m_address->setText(QString::fromStdString(file.premises.address.line1));
    QStringList day{m_context.window.words.shortDate(file.visit.date)};
    if (const reg::Party* customer = customerOf(file)) {
        day.prepend(QString::fromStdString(customer->name));
    }
    m_day->setText(day.join(QStringLiteral(" \u00B7 ")));
}

void VisitSheet::showSpine() {
    const VisitSheetModel& model = m_context.model;
    SheetFacts facts{
        model.file(), model.findings(), model.missing(), static_cast<int>(model.records().size()), {}};
    for (const TightnessPart* part : tightnessParts()) {
        if (part->clock()->running()) {
            facts.running = part->ref().test;
        }
    }
    std::vector<SpineLine> lines;
    for (const PartRef& ref : m_builtParts) {
        const PartState state = stateOf(ref, facts);
        QString word = wordOf(state);
        if (ref.kind == PartKind::Pipework && state.word == PartWord::Done && model.volume().total) {
            word = volumeText(*model.volume().total, m_context.window.words);
        }
        lines.push_back({ref, partTitle(ref, model.file()), word, state.word});
    }
    m_spine->setLines(lines);
}

void VisitSheet::orderTabs() {
    for (QWidget* stop : chainTabStops(this)) {
        stop->installEventFilter(this);
    }
}

/// A list would page through its choices and change a value: the paging keys belong to the parts, wherever
/// the keyboard is.
bool VisitSheet::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool pages = key->key() == Qt::Key_PageUp || key->key() == Qt::Key_PageDown;
        if (pages && key->modifiers() == Qt::NoModifier) {
            step(key->key() == Qt::Key_PageUp ? -1 : 1);
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

RecordsPart* VisitSheet::recordsPart() const {
    return qobject_cast<RecordsPart*>(m_paper->part({PartKind::Records}));
}

std::vector<TightnessPart*> VisitSheet::tightnessParts() const {
    std::vector<TightnessPart*> found;
    for (PartView* part : m_paper->parts()) {
        if (auto* tightness = qobject_cast<TightnessPart*>(part)) {
            found.push_back(tightness);
        }
    }
    return found;
}

TightnessPart* VisitSheet::tightnessPart() const {
    const auto parts = tightnessParts();
    const PartView* focused = partOfFocus();
    for (TightnessPart* part : parts) {
        if (part->clock()->running()) {
            return part;
        }
    }
    for (TightnessPart* part : parts) {
        if (part == focused) {
            return part;
        }
    }
    return parts.empty() ? nullptr : parts.back();
}

PartView* VisitSheet::partOfFocus() const {
    QWidget* focus = QApplication::focusWidget();
    for (PartView* part : m_paper->parts()) {
        if (focus != nullptr && part->isAncestorOf(focus)) {
            return part;
        }
    }
    return nullptr;
}

SheetField* VisitSheet::fieldOfFocus() const {
    const PartView* part = partOfFocus();
    const QWidget* focus = QApplication::focusWidget();
    if (part == nullptr) {
        return nullptr;
    }
    const auto at = std::find_if(part->fields().begin(), part->fields().end(),
                                 [&](SheetField* field) { return field->editor()->focusTarget() == focus; });
    return at == part->fields().end() ? nullptr : *at;
}

void VisitSheet::takeFocus() {
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
    using record::Field;
    PartView* part = m_paper->part(partOf(missing, m_context.model.file()));
    input::Editor* editor =
        part == nullptr ? nullptr : part->editorFor({missing.item, missing.field, missing.subject});
    if (editor != nullptr) {
        shell::focusOn(editor);
        m_scroll->ensureWidgetVisible(editor, 0, kAround);
        return;
    }
    const bool atPremises =
        missing.field == Field::PremisesAddress || missing.field == Field::PremisesPostcode;
    if (atPremises) {
        m_context.window.navigator.openPremises(m_context.model.file().premises.id);
        return;
    }
    if (missing.field) {
        const reg::VisitFile& file = m_context.model.file();
        const bool ofGauge =
            missing.field == Field::InstrumentSerial || missing.field == Field::InstrumentCalibration;
        const reg::Instrument* gauge = ofGauge ? file.gaugeOf(reg::TestId{missing.subject.id}) : nullptr;
        const auto& engineer = file.visit.engineer;
        m_context.window.navigator.openFirm(*missing.field, gauge != nullptr ? gauge->id.text()
                                                            : engineer       ? engineer->text()
                                                                             : std::string());
    }
}

void VisitSheet::step(int by) {
    const PartView* now = partOfFocus();
    const auto& parts = m_paper->parts();
    const auto at = std::find(parts.begin(), parts.end(), now);
    const auto from = at == parts.end() ? (by > 0 ? -1 : 0) : at - parts.begin();
    const auto to = std::clamp<std::ptrdiff_t>(from + by, 0, static_cast<std::ptrdiff_t>(parts.size()) - 1);
    goTo(parts[static_cast<std::size_t>(to)]->ref());
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
    m_scroll->ensureWidgetVisible(shown, 0, kAround);
    if (const PartView* part = partOfFocus()) {
        m_spine->setCurrent(part->ref());
    }
}

std::vector<input::FindingNote*> VisitSheet::notesOfFocus() const {
    const SheetField* field = fieldOfFocus();
    return field == nullptr ? std::vector<input::FindingNote*>() : m_paper->notesAbout(field->key());
}

void VisitSheet::openSources() {
    const auto notes = notesOfFocus();
    const bool allOpen =
        std::all_of(notes.begin(), notes.end(), [](auto* note) { return note->isSourceOpen(); });
    for (input::FindingNote* note : notes) {
        note->setSourceOpen(!allOpen);
    }
    if (!notes.empty()) {
        m_paper->refresh();
    }
}

void VisitSheet::openRuleOf(const std::vector<input::FindingNote*>& notes) {
    for (const input::FindingNote* note : notes) {
        if (const auto key = note->rule()) {
            m_context.window.navigator.openRule(*key);
            return;
        }
    }
}

void VisitSheet::goToMargin() {
    if (auto* note = qobject_cast<input::FindingNote*>(QApplication::focusWidget())) {
        Q_EMIT m_paper->noteChosen(note->judged());
        return;
    }
    const auto about = notesOfFocus();
    const auto& notes = about.empty() ? m_paper->notes() : about;
    if (!notes.empty()) {
        notes.front()->setFocus(Qt::OtherFocusReason);
    }
}

void VisitSheet::stepInMargin(int by) {
    std::vector<input::FindingNote*> notes = m_paper->notes();
    std::stable_sort(notes.begin(), notes.end(), [](auto* a, auto* b) { return a->y() < b->y(); });
    const auto at = std::find(notes.begin(), notes.end(), QApplication::focusWidget());
    const auto to =
        std::clamp<std::ptrdiff_t>(at - notes.begin() + by, 0, static_cast<std::ptrdiff_t>(notes.size()) - 1);
    notes[static_cast<std::size_t>(to)]->setFocus(Qt::OtherFocusReason);
}

void VisitSheet::toggleClock() {
    commit();
    if (const TightnessPart* part = tightnessPart()) {
        part->clock()->toggle();
    }
}

bool VisitSheet::answerKey(QKeyEvent* event) {
    const bool control = event->modifiers().testFlag(Qt::ControlModifier);
    const bool inMargin = qobject_cast<input::FindingNote*>(QApplication::focusWidget()) != nullptr;
    switch (event->key()) {
        case Qt::Key_PageDown:
            step(1);
            return true;
        case Qt::Key_PageUp:
            step(-1);
            return true;
        case Qt::Key_K:
            m_before = control ? QApplication::focusWidget() : m_before.data();
            if (control) {
                m_spine->setFocus(Qt::ShortcutFocusReason);
            }
            return control;
        case Qt::Key_M:
            if (control) {
                goToMargin();
            }
            return control;
        case Qt::Key_Return:
        case Qt::Key_Enter:
            if (control) {
                toggleClock();
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
            event->modifiers() == Qt::ShiftModifier ? openRuleOf(notes) : openSources();
            return !notes.empty();
        }
        case Qt::Key_Escape:
            inMargin ? goToMargin() : Q_EMIT left();
            return true;
        default:
            return false;
    }
}

void VisitSheet::keyPressEvent(QKeyEvent* event) {
    if (!answerKey(event)) {
        QWidget::keyPressEvent(event);
    }
}

void VisitSheet::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange && m_paper != nullptr) {
        rebuild();
        judgedAgain();
    }
    QWidget::changeEvent(event);
}

}  // namespace hearth::ui::visit
