// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/sheet.h"

#include "ui/look/look.h"
#include "ui/shell/kit.h"
#include "ui/visit/part_lists.h"
#include "ui/visit/part_records.h"
#include "ui/visit/part_situation.h"
#include "ui/visit/part_state.h"
#include "ui/visit/part_tightness.h"
#include "ui/visit/spine.h"
#include "ui/visit/tab_order.h"
#include "ui/visit/test_clock.h"
#include "ui/visit/volume_text.h"
#include "ui/visit/wanted.h"

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
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded);  // letters may be larger than the window
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
    connect(m_scroll->verticalScrollBar(), &QScrollBar::rangeChanged, this, &VisitSheet::followGrown,
            Qt::QueuedConnection);
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
    m_keys = shell::softText(tr("Enter next field\nPage Up, Page Down parts\nCtrl+K go to a part\nCtrl+U "
                                "unsafe, Ctrl+E more\nF1 why, Ctrl+M margin"),
                             side);
    lines->addWidget(m_address);
    lines->addWidget(m_day);
    lines->addSpacing(look::kGap);
    lines->addWidget(m_spine, 100);
    lines->addSpacing(look::kGap);
    lines->addWidget(m_keys);
    lines->addStretch(1);
    layout()->addWidget(side);
    connect(m_spine, &Spine::chosen, this, [this](const PartRef& ref) { goTo(ref); });
    connect(m_spine, &Spine::left, this, [this] {
        if (m_before != nullptr) {
            m_before->setFocus(Qt::OtherFocusReason);
        }
    });
}

/// The parts come before a word on keys where a window is low or letters are large; F1 has the keys too.
void VisitSheet::fitSide() {
    const int below = m_spine->y() + m_spine->sizeHint().height() + 2 * look::kGap;
    m_keys->setVisible(below + m_keys->heightForWidth(m_spine->width()) <= height());
}

void VisitSheet::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fitSide();
}

void VisitSheet::rebuild() {
    const reg::VisitFile& file = m_context.model.file();
    m_builtFor = file.visit.id;
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
        PartView* part = m_paper->part(partOf(judged, m_context.model.file()));
        QWidget* anchor = m_paper->anchorOf(judged);
        if (auto* editor = qobject_cast<input::Editor*>(anchor)) {
            shell::focusOn(editor);
        } else if (part != nullptr) {
            goTo(part->ref());
        }
    });
    for (PartView* part : m_paper->parts()) {
        listenTo(part);
    }
    orderTabs();
}

void VisitSheet::listenTo(PartView* part) {
    connect(part, &PartView::stopsChanged, this, &VisitSheet::orderTabs);
    connect(part, &PartView::answered, this, &VisitSheet::goOnFrom);
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
    if (auto* tightness = qobject_cast<TightnessPart*>(part)) {
        const PartRef restore{PartKind::Restore, part->ref().index};
        connect(tightness->clock(), &TestClock::restoreWanted, this, [this, restore] { goTo(restore); });
        connect(tightness->clock(), &TestClock::runningChanged, this, &VisitSheet::showSpine);
    } else if (auto* list = qobject_cast<ListPart*>(part)) {
        connect(list, &ListPart::chosen, this, [this](const reg::SubjectRef& subject) {
            const PartKind kind =
                subject.kind == reg::SubjectKind::Appliance ? PartKind::Appliance : PartKind::Situation;
            goTo(partAt(kind, subject, m_context.model.file()));
        });
    } else if (auto* situation = qobject_cast<SituationPart*>(part)) {
        connect(situation, &SituationPart::noticeWanted, this, [this] {
            recordsPart()->issue(record::RecordKind::WarningNotice);
            m_scroll->ensureWidgetVisible(recordsPart(), 0, kAround);
        });
    } else if (auto* records = qobject_cast<RecordsPart*>(part)) {
        connect(records, &RecordsPart::missingChosen, this,
                [this](const record::Missing& missing) { goTo(missing); });
    }
}

/// Parts come and go with the kinds of visit and with what is entered.
void VisitSheet::bringPartsUpToDate() {
    const auto before = m_paper->parts();
    for (PartView* part : m_paper->bringUpToDate()) {
        listenTo(part);
    }
    if (before != m_paper->parts()) {
        orderTabs();
    }
}

void VisitSheet::fileRead() {
    const reg::VisitFile& file = m_context.model.file();
    if (m_paper == nullptr || m_builtFor != file.visit.id) {
        rebuild();
        return;
    }
    bringPartsUpToDate();
    m_paper->setReadOnly(m_context.model.isReadOnly());
    m_paper->refill();
}

void VisitSheet::judgedAgain() {
    bringPartsUpToDate();
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
    const auto& owed = model.owed();
    const bool allIssued =
        !owed.empty() && std::all_of(owed.begin(), owed.end(), [&](const VisitSheetModel::Owed& one) {
            return model.currentRecord(one.kind) != nullptr;
        });
    SheetFacts facts{model.file(),
                     model.marginFindings(),
                     model.missing(),
                     allIssued ? static_cast<int>(model.records().size()) : 0,
                     {}};
    for (const TightnessPart* part : tightnessParts()) {
        if (part->clock()->running()) {
            facts.running = part->ref().index;
        }
    }
    std::vector<SpineLine> lines;
    for (const PartView* part : m_paper->parts()) {
        const PartRef& ref = part->ref();
        const PartState state = stateOf(ref, facts);
        QString word = wordOf(state);
        if (ref.kind == PartKind::Pipework && state.word == PartWord::Done && model.volume().total) {
            word = volumeText(*model.volume().total, m_context.window.words);
        }
        lines.push_back({ref, partTitle(ref, model.file(), m_context.window.words), word, state.word});
    }
    m_spine->setLines(lines);
    fitSide();
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
        m_keyAt = key->timestamp();
        m_sinceKey.start();
        m_byEnter = shell::isEnter(*key);
        if (m_byEnter && goByEnter(watched, *key)) {
            return true;
        }
        const bool isModifier =
            key->text().isEmpty() && key->key() >= Qt::Key_Shift && key->key() <= Qt::Key_ScrollLock;
        m_wentOn = m_wentOn && isModifier;
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
    if (PartView* own = partOfFocus(); own != nullptr && own->toggleClock()) {
        return;
    }
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
        case Qt::Key_U:
            if (control) {
                addSituation();
            }
            return control;
        case Qt::Key_E:
            if (PartView* part = partOfFocus(); control && part != nullptr) {
                part->toggleMore();
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
