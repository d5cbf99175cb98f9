// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workings/result_view.h"

#include "ui/shell/kit.h"
#include "ui/words/question_words.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace hearth::ui::workings {

using judging::Worked;

ResultView::ResultView(const words::Words& words, QWidget* parent)
    : QWidget(parent), m_words(words), m_lines(new QVBoxLayout(this)) {
    setObjectName(QStringLiteral("workingsResult"));
    m_lines->setContentsMargins(0, 0, 0, 0);
}

void ResultView::show(const judging::Answer& answer) {
    delete m_page;
    m_page = nullptr;
    const bool isEmpty = answer.figures.empty() && answer.notes.empty() && answer.errors.empty();
    setVisible(!isEmpty);
    if (isEmpty) {
        return;
    }
    m_page = new QWidget(this);
    auto* lines = new QVBoxLayout(m_page);
    lines->setContentsMargins(0, look::kGap, 0, 0);
    lines->setSpacing(look::kGap);
    lines->addWidget(shell::hairline(m_page));
    if (!answer.figures.empty()) {
        lines->addWidget(shell::headingText(tr("Worked out"), m_page));
    }
    for (const Worked& worked : answer.figures) {
        addFigure(worked);
    }
    for (const rulebook::Sentence& note : answer.notes) {
        addSentence(m_words.sentence(note), false);
    }
    for (const Error& error : answer.errors) {
        addSentence(m_words.error(error), true);
    }
    m_lines->addWidget(m_page);
    m_page->show();
}

void ResultView::addFigure(const Worked& worked) {
    auto* box = new QWidget(m_page);
    auto* lines = new QVBoxLayout(box);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(0);
    auto* first = new QHBoxLayout;
    first->setSpacing(2 * look::kGap);
    first->addWidget(shell::bodyText(words::derived(m_words, worked.what), box), 1);
    auto* value = new shell::Text(figureText(worked, m_words), look::TypeRole::Heading, look::Role::Ink, box);
    value->setTextInteractionFlags(Qt::TextSelectableByMouse);
    first->addWidget(value, 0, Qt::AlignRight | Qt::AlignTop);
    lines->addLayout(first);
    if (!worked.source.empty()) {
        lines->addWidget(shell::softText(shell::coded(worked.source), box));
    }
    m_page->layout()->addWidget(box);
}

void ResultView::addSentence(const QString& text, bool isError) {
    auto* line = shell::bodyText(text, m_page);
    line->setInk(isError ? look::Role::LookAgain : look::Role::Ink);
    m_page->layout()->addWidget(line);
}

QString figureText(const Worked& worked, const words::Words& words) {
    if (!worked.uncertainty) {
        return words.figure(worked.figure);
    }
    const bool sameUnit = worked.uncertainty->unit == worked.figure.unit;
    const QString value = sameUnit ? words.figure({worked.figure.value, quantity::UnitCode::None})
                                   : words.figure(worked.figure);
    return QStringLiteral("%1 ± %2").arg(value, words.figure(*worked.uncertainty));
}

}  // namespace hearth::ui::workings
