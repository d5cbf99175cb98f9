// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workings/result_view.h"

#include "ui/shell/kit.h"
#include "ui/words/question_words.h"

#include <QGridLayout>
#include <QPainter>
#include <QVBoxLayout>

namespace hearth::ui::workings {

using judging::Worked;

namespace {

constexpr int kWide = 520;  // from here on a source stands beside its figure's name
constexpr int kNameShare = 5;
constexpr int kSourceShare = 4;
constexpr int kToBaseline = 3;  // small type level with the body's

/// Beside what could not be worked out: the shape of no verdict.
class Mark : public QWidget {
  public:
    explicit Mark(QWidget* parent) : QWidget(parent) { setFixedSize(kSize, kSize + kTop); }

  protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        look::drawOutcome(painter, QRectF(0, kTop, kSize, kSize), rulebook::Outcome::NoVerdict,
                          shell::currentScheme());
    }

  private:
    static constexpr int kSize = 15;
    static constexpr int kTop = 2;  // level with the first line's letters
};

}  // namespace

ResultView::ResultView(const words::Words& words, QWidget* parent)
    : QWidget(parent), m_words(words), m_lines(new QVBoxLayout(this)) {
    setObjectName(QStringLiteral("workingsResult"));
    m_lines->setContentsMargins(0, 0, 0, 0);
}

void ResultView::show(const judging::Answer& answer) {
    m_answer = answer;
    rebuild();
}

void ResultView::setRoom(int width) {
    const bool isWide = width >= kWide;
    if (isWide != m_isWide) {
        m_isWide = isWide;
        rebuild();
    }
}

void ResultView::rebuild() {
    delete m_page;
    m_page = nullptr;
    const bool isEmpty = m_answer.figures.empty() && m_answer.notes.empty() && m_answer.errors.empty();
    setVisible(!isEmpty);
    if (isEmpty) {
        return;
    }
    m_page = new QWidget(this);
    m_grid = new QGridLayout(m_page);
    m_grid->setContentsMargins(0, look::kGap, 0, 0);
    m_grid->setHorizontalSpacing(2 * look::kGap);
    m_grid->setVerticalSpacing(look::kGap / 2);
    m_grid->setColumnStretch(1, kNameShare);
    m_grid->setColumnStretch(2, m_isWide ? kSourceShare : 0);
    addLine(shell::hairline(m_page));
    addLine(shell::headingText(tr("Worked out"), m_page));
    for (const Worked& worked : m_answer.figures) {
        addFigure(worked);
    }
    for (const rulebook::Sentence& note : m_answer.notes) {
        addLine(shell::bodyText(m_words.sentence(note), m_page));
    }
    for (const Error& error : m_answer.errors) {
        addError(m_words.error(error));
    }
    m_lines->addWidget(m_page);
    m_page->show();
}

void ResultView::addLine(QWidget* line) {
    m_grid->addWidget(line, m_grid->rowCount(), 0, 1, 3);
}

/// The figure first, as in a column of sums; what it is and where its formula stands beside it, the latter
/// below where there is no room.
void ResultView::addFigure(const Worked& worked) {
    const int row = m_grid->rowCount();
    auto* value =
        new shell::Text(figureText(worked, m_words), look::TypeRole::Heading, look::Role::Ink, m_page);
    value->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_grid->addWidget(value, row, 0, Qt::AlignRight | Qt::AlignTop);
    auto* name = shell::bodyText(words::derived(m_words, worked.what), m_page);
    auto* source = shell::softText(shell::coded(worked.source), m_page);
    if (m_isWide) {
        source->setContentsMargins(0, kToBaseline, 0, 0);
        m_grid->addWidget(name, row, 1, Qt::AlignTop);
        m_grid->addWidget(source, row, 2, Qt::AlignTop);
        return;
    }
    auto* lines = new QVBoxLayout;
    lines->setSpacing(0);
    lines->addWidget(name);
    lines->addWidget(source);
    m_grid->addLayout(lines, row, 1, 1, 2);
}

void ResultView::addError(const QString& text) {
    const int row = m_grid->rowCount();
    m_grid->addWidget(new Mark(m_page), row, 0, Qt::AlignRight | Qt::AlignTop);
    m_grid->addWidget(shell::bodyText(text, m_page), row, 1, 1, 2);
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
