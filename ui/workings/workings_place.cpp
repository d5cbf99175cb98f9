// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workings/workings_place.h"

#include "ui/shell/kit.h"
#include "ui/shell/line_list.h"
#include "ui/words/question_words.h"
#include "ui/workings/take_over.h"
#include "ui/workings/visit_chooser.h"
#include "ui/workings/work_sheet.h"
#include "ui/workings/work_text.h"

#include <QApplication>
#include <QClipboard>
#include <QHBoxLayout>
#include <QShortcut>
#include <QStackedWidget>

#include <algorithm>

namespace hearth::ui::workings {

using judging::QuestionInfo;

WorkingsPlace::WorkingsPlace(const shell::Context& context, QWidget* parent)
    : Place(parent), m_context(context) {
    setObjectName(QStringLiteral("workingsPlace"));
}

void WorkingsPlace::build() {
    m_model = new WorkingsModel(m_context, this);
    auto* side = new QWidget(this);
    addSide(side);
    m_pages = new QStackedWidget(this);
    m_sheet = new WorkSheet(*m_model, m_context, m_pages);
    m_pages->addWidget(m_sheet);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(2 * look::kGap, look::kGap, 2 * look::kGap, 0);
    row->setSpacing(2 * look::kGap);
    row->addWidget(side, 2);
    row->addWidget(m_pages, 6);
    connect(m_model, &WorkingsModel::answered, this, &WorkingsPlace::showState);
    connect(m_sheet, &WorkSheet::left, this, [this] { m_list->setFocus(Qt::OtherFocusReason); });
    connect(m_sheet, &WorkSheet::helped, m_help, &QLabel::setText);
    connect(m_sheet, &WorkSheet::stopsChanged, this, &WorkingsPlace::orderTabs);
    // From wherever the keyboard is in the window, while this place is in view.
    auto* toQuestions = new QShortcut(Qt::CTRL | Qt::Key_K, this);
    connect(toQuestions, &QShortcut::activated, this, [this] {
        commit();
        m_list->setFocus(Qt::ShortcutFocusReason);
    });
}

void WorkingsPlace::addSide(QWidget* side) {
    auto* lines = new QVBoxLayout(side);
    lines->setContentsMargins(0, 0, 0, look::kGap);
    lines->setSpacing(look::kGap);
    m_list = new shell::LineList(tr("Questions"), {}, side);
    m_list->setObjectName(QStringLiteral("questionsList"));
    m_list->setWrapping(true);
    lines->addWidget(m_list, 1);
    m_take = new shell::KeyButton(tr("Take over into a visit"), QKeySequence(Qt::CTRL | Qt::Key_T),
                                  shell::ButtonKind::Plain, side);
    m_take->setObjectName(QStringLiteral("takeOverButton"));
    m_copy = new shell::KeyButton(tr("Copy as text"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_C),
                                  shell::ButtonKind::Plain, side);
    m_copy->setObjectName(QStringLiteral("copyButton"));
    m_clear = new shell::KeyButton(tr("Clear the sheet"), QKeySequence(Qt::CTRL | Qt::Key_L),
                                   shell::ButtonKind::Plain, side);
    m_clear->setObjectName(QStringLiteral("clearButton"));
    m_whyNot = shell::softText({}, side);
    m_whyNot->setObjectName(QStringLiteral("whyNotText"));
    for (QWidget* widget : {static_cast<QWidget*>(m_take), static_cast<QWidget*>(m_whyNot),
                            static_cast<QWidget*>(m_copy), static_cast<QWidget*>(m_clear)}) {
        lines->addWidget(widget);
    }
    m_help = shell::bodyText({}, side);
    m_help->setObjectName(QStringLiteral("fieldHelpText"));
    m_help->setMinimumHeight(2 * m_help->fontMetrics().lineSpacing());
    m_help->setAlignment(Qt::AlignBottom | Qt::AlignLeft);
    lines->addWidget(m_help);
    lines->addWidget(shell::softText(
        tr("Enter next field, Ctrl+Enter next row\nCtrl+K questions, F1 why, Ctrl+M margin"), side));
    connect(m_list, &shell::LineList::moved, this, &WorkingsPlace::showQuestion);
    connect(m_list, &shell::LineList::opened, this, [this](int row) {
        showQuestion(row);
        m_sheet->takeFocus();
    });
    connect(m_take, &QPushButton::clicked, this, &WorkingsPlace::chooseVisit);
    connect(m_copy, &QPushButton::clicked, this, &WorkingsPlace::copy);
    connect(m_clear, &QPushButton::clicked, this, [this] {
        if (m_model->wasCleared()) {
            takeBack();
            return;
        }
        commit();
        if (m_sheet->isAncestorOf(QApplication::focusWidget())) {
            m_sheet->takeFirst();  // a row with the keyboard in it would stay
        }
        m_model->clear();
        m_context.navigator.say(tr("Cleared. Ctrl+Z brings it back."));
    });
}

bool WorkingsPlace::isFound(const QuestionInfo& info) const {
    QString text = words::question(m_context.words, info.question) + u' ' +
                   words::questionHelp(m_context.words, info.question);
    for (const judging::AskedGroup& group : info.groups) {
        for (const reg::Item item : group.items) {
            text += u' ' + m_context.words.item(item);
        }
    }
    const QStringList wanted = m_search.split(u' ', Qt::SkipEmptyParts);
    return std::all_of(wanted.begin(), wanted.end(),
                       [&](const QString& word) { return text.contains(word, Qt::CaseInsensitive); });
}

void WorkingsPlace::fillList() {
    std::vector<shell::Line> lines;
    for (const QuestionInfo& info : judging::questions()) {
        if (isFound(info)) {
            shell::Line line;
            line.key = shell::coded(info.code);
            line.title = words::question(m_context.words, info.question);
            line.outcome = m_model->outcome(info.question);
            lines.push_back(std::move(line));
        }
    }
    m_list->setEmptyText(tr("Nothing found for “%1”.").arg(m_search));
    m_list->setLines(std::move(lines));
    m_list->setCurrentKey(shell::coded(judging::infoOf(m_model->question()).code));
}

void WorkingsPlace::showState() {
    fillList();
    const bool isEmpty = m_model->sheet().isEmpty();
    const bool readOnly = m_context.store.isReadOnly();
    m_copy->setEnabled(!isEmpty);
    m_take->setEnabled(!isEmpty && !readOnly);
    m_whyNot->setText(readOnly ? m_context.words.error(m_context.store.whyReadOnly()) : QString());
    m_whyNot->setVisible(readOnly);
    m_clear->setWords(m_model->wasCleared() ? tr("Bring it back") : tr("Clear the sheet"));
    m_clear->setEnabled(!isEmpty || m_model->wasCleared());
}

void WorkingsPlace::orderTabs() {
    shell::orderTabs(this);
}

void WorkingsPlace::refresh() {
    if (m_model == nullptr) {
        build();
    }
    m_model->refresh();
    orderTabs();
}

void WorkingsPlace::showQuestion(int row) {
    if (row < 0) {
        return;
    }
    const auto question = judging::questionFromCode(m_list->line(row).key.toStdString());
    if (question) {
        commit();
        showSheet();
        m_model->choose(*question);
    }
}

void WorkingsPlace::openQuestion(judging::Question question) {
    refresh();
    commit();
    showSheet();
    m_model->choose(question);
    takeField();
}

void WorkingsPlace::takeField() {
    m_sheet->takeFocus();
}

void WorkingsPlace::showSheet() {
    m_pages->setCurrentWidget(m_sheet);
}

void WorkingsPlace::copy() {
    commit();
    QApplication::clipboard()->setText(workText(m_model->sheet(), m_model->answer(), m_context.words));
    m_context.navigator.say(tr("Copied as text."));
}

void WorkingsPlace::chooseVisit() {
    commit();
    if (m_chooser == nullptr) {
        m_chooser = new VisitChooser(m_context, m_pages);
        m_pages->addWidget(m_chooser);
        connect(m_chooser, &VisitChooser::left, this, &WorkingsPlace::takeFocus);
        connect(m_chooser, &VisitChooser::chosen, this, &WorkingsPlace::takeOverInto);
    }
    m_pages->setCurrentWidget(m_chooser);
    m_chooser->open(words::question(m_context.words, m_model->question()));
    orderTabs();
}

void WorkingsPlace::takeOverInto(reg::VisitId visit, const QString& where) {
    const QString text = workText(m_model->sheet(), m_model->answer(), m_context.words);
    const auto taken = takeOver(m_context.store, visit, m_model->sheet(), text.toStdString());
    takeFocus();
    if (!taken) {
        m_context.dialogs.tell(this, tr("Nothing was taken over"), m_context.words.error(taken.error()));
        return;
    }
    m_model->storeChanged();
    m_context.navigator.say(
        taken->workingPressure
            ? tr("Taken over into the remarks of %1, and the working pressure into its test.").arg(where)
            : tr("Taken over into the remarks of %1.").arg(where));
}

void WorkingsPlace::commit() {
    shell::commitField(this);
    if (QWidget* focus = QApplication::focusWidget(); m_sheet != nullptr && isAncestorOf(focus)) {
        m_before = m_sheet->isAncestorOf(focus) ? focus : nullptr;
    }
}

bool WorkingsPlace::takeBack() {
    if (!m_model->takeBack()) {
        return false;
    }
    m_context.navigator.say(tr("Taken back on this sheet."));
    return true;
}

void WorkingsPlace::takeFocus() {
    if (m_pages->currentWidget() != m_sheet) {
        showSheet();
    }
    // Back from another place: on with the field that was left.
    QWidget* on = m_before != nullptr && m_before->isVisibleTo(this) ? m_before.data() : m_list;
    on->setFocus(Qt::OtherFocusReason);
}

void WorkingsPlace::takeFound() {
    if (m_list->count() == 1) {
        m_list->setCurrentRow(0);
        showQuestion(0);
    }
    m_list->setFocus(Qt::OtherFocusReason);
}

rulebook::Gas WorkingsPlace::gas() const {
    return m_model == nullptr ? rulebook::Gas::NaturalGas : gasOf(m_model->sheet());
}

void WorkingsPlace::search(const QString& text) {
    m_search = text;
    if (m_model == nullptr) {
        build();
        m_model->refresh();
    }
    fillList();
}

}  // namespace hearth::ui::workings
