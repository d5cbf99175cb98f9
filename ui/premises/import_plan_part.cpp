// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/premises/import_plan_part.h"

#include "ui/shell/importing.h"
#include "ui/shell/line_list.h"

#include <QCheckBox>

#include <algorithm>

namespace hearth::ui::premises {
namespace {

using exchange::DuplicateChoice;
using exchange::PlannedRow;
using exchange::RowChoice;
using exchange::RowFate;
using rulebook::Outcome;
using words::qstring;

std::optional<Outcome> markOf(RowFate fate) {
    switch (fate) {
        case RowFate::SetAside:
            return Outcome::LookAgain;
        case RowFate::Refused:
            return Outcome::Fail;
        default:
            return std::nullopt;
    }
}

QString duplicateCode(DuplicateChoice choice) {
    return choice == DuplicateChoice::KeepBoth ? QStringLiteral("both")
           : choice == DuplicateChoice::Skip   ? QStringLiteral("skip")
                                               : QStringLiteral("merge");
}

/// What a row's line says: what sets it aside before what is only told. The row has some problem.
const exchange::ProblemAt& weightiest(const exchange::ImportPlan& plan, const PlannedRow& row) {
    const auto weighs = [&](std::size_t problem) {
        return exchange::weightOf(plan.problems[problem].problem);
    };
    return plan.problems[*std::max_element(row.problems.begin(), row.problems.end(),
                                           [&](auto a, auto b) { return weighs(a) < weighs(b); })];
}

}  // namespace

ImportPlanPart::ImportPlanPart(const shell::Context& context, ImportWork& work, QWidget* parent)
    : QWidget(parent),
      m_context(context),
      m_work(work),
      m_summary(shell::bodyText({}, this)),
      m_file(shell::bodyText({}, this)),
      m_duplicates(input::makeChoiceEditor(this, {{QStringLiteral("merge"), tr("&fill what is empty")},
                                                  {QStringLiteral("both"), tr("&keep both")},
                                                  {QStringLiteral("skip"), tr("&leave the row out")}})),
      m_onlyDoubtful(new QCheckBox(tr("Show only &rows with something to say"), this)),
      m_rows(new shell::LineList(tr("Rows of the file"), tr("No row has anything to say."), this)),
      m_row(shell::bodyText({}, this)),
      m_take(new shell::KeyButton(tr("Take this row as it is read"), shell::ButtonKind::Plain, this)),
      m_leave(new shell::KeyButton(tr("Leave this row out"), shell::ButtonKind::Plain, this)),
      m_takeAll(new shell::KeyButton(tr("Take all doubtful rows"), shell::ButtonKind::Quiet, this)) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    m_summary->setObjectName(QStringLiteral("importSummary"));
    m_summary->setFont(shell::strongFont());
    lines->addWidget(m_summary);
    m_file->setObjectName(QStringLiteral("importFileProblems"));
    m_file->setTextFormat(Qt::PlainText);
    lines->addWidget(m_file);
    m_duplicates->setObjectName(QStringLiteral("importDuplicates"));
    m_duplicates->setLabel(tr("Where the premises is there already"));
    m_duplicates->setText(duplicateCode(m_work.choices.duplicates));
    lines->addWidget(m_duplicates);
    m_onlyDoubtful->setObjectName(QStringLiteral("importOnlyDoubtful"));
    lines->addWidget(m_onlyDoubtful);
    m_rows->setObjectName(QStringLiteral("importRows"));
    m_rows->setMinimumHeight(30 * look::kGap);
    lines->addWidget(m_rows, 1);
    m_row->setObjectName(QStringLiteral("importRowProblems"));
    m_row->setTextFormat(Qt::PlainText);
    lines->addWidget(m_row);
    addButtons(lines);
    connect(m_duplicates, &input::Editor::committed, this, [this](const QString& code) {
        m_work.choices.duplicates = code == QLatin1String("both")   ? DuplicateChoice::KeepBoth
                                    : code == QLatin1String("skip") ? DuplicateChoice::Skip
                                                                    : DuplicateChoice::Merge;
        Q_EMIT chosen();
    });
    connect(m_onlyDoubtful, &QCheckBox::toggled, this, &ImportPlanPart::refresh);
    connect(m_rows, &shell::LineList::moved, this, &ImportPlanPart::showRow);
}

void ImportPlanPart::addButtons(QVBoxLayout* lines) {
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(look::kGap);
    m_take->setObjectName(QStringLiteral("importTakeRow"));
    m_leave->setObjectName(QStringLiteral("importLeaveRow"));
    m_takeAll->setObjectName(QStringLiteral("importTakeAll"));
    for (auto* button : {m_take, m_leave, m_takeAll}) {
        buttons->addWidget(button);
    }
    buttons->addStretch(1);
    lines->addLayout(buttons);
    connect(m_take, &QPushButton::clicked, this, [this] { choose(RowChoice::Take); });
    connect(m_leave, &QPushButton::clicked, this, [this] { choose(RowChoice::LeaveOut); });
    connect(m_takeAll, &QPushButton::clicked, this, &ImportPlanPart::chooseForAllDoubtful);
}

void ImportPlanPart::refresh() {
    const auto& plan = m_work.plan;
    m_summary->setText(plan.blocked ? tr("The file can't be taken over as it is.")
                                    : shell::planSummary(plan));
    QStringList ofFile;
    for (const auto& problem : plan.problems) {
        const bool ofNoRow = problem.line == 0 || problem.problem == exchange::ImportProblem::QuoteOpen;
        if (ofNoRow) {
            const QString text = shell::problemText(problem, m_context.words);
            ofFile << (problem.line == 0 ? text : tr("Line %1: %2").arg(problem.line).arg(text));
        }
    }
    m_file->setText(ofFile.join(u'\n'));
    m_file->setVisible(!ofFile.isEmpty());
    std::vector<shell::Line> lines;
    m_shown.clear();
    bool anyMet = false;
    for (std::size_t i = 0; i < plan.rows.size(); ++i) {
        const PlannedRow& row = plan.rows[i];
        anyMet |= row.met.has_value();
        if (m_onlyDoubtful->isChecked() && row.problems.empty() && !row.met) {
            continue;
        }
        shell::Line line;
        line.key = QString::number(row.line);
        line.title =
            qstring(row.premises.address.line1.empty() ? std::string("–") : row.premises.address.line1);
        line.detail = row.problems.empty() ? qstring(row.premises.address.postcode)
                                           : shell::problemText(weightiest(plan, row), m_context.words);
        line.right = shell::fateText(row.fate, m_context.words);
        line.rightDetail = tr("line %1").arg(row.line);
        line.outcome = markOf(row.fate);
        m_shown.push_back(i);
        lines.push_back(std::move(line));
    }
    m_rows->setLines(std::move(lines));
    if (m_rows->currentRow() < 0 && m_rows->count() > 0) {
        m_rows->setCurrentRow(0);
    }
    m_duplicates->setVisible(anyMet);
    m_takeAll->setVisible(plan.count(RowFate::SetAside) > 0);
    showRow();
}

const PlannedRow* ImportPlanPart::current() const {
    const int row = m_rows->currentRow();
    return row < 0 || row >= static_cast<int>(m_shown.size())
               ? nullptr
               : &m_work.plan.rows[m_shown[static_cast<std::size_t>(row)]];
}

void ImportPlanPart::showRow() {
    const PlannedRow* row = current();
    QStringList said;
    if (row != nullptr) {
        if (row->met) {
            said << (row->met->line == 0 ? tr("The premises is in the store already.")
                                         : tr("The premises is in line %1 already.").arg(row->met->line));
        }
        for (const auto problem : row->problems) {
            said << shell::problemText(m_work.plan.problems[problem], m_context.words);
        }
    }
    m_row->setText(said.isEmpty() ? tr("Nothing to say about this row.") : said.join(u'\n'));
    const bool canChoose = row != nullptr && row->fate != RowFate::Refused;
    m_take->setEnabled(canChoose && (row->fate == RowFate::SetAside || row->fate == RowFate::LeftOut));
    m_leave->setEnabled(canChoose && row->fate != RowFate::LeftOut);
}

void ImportPlanPart::choose(RowChoice choice) {
    if (const PlannedRow* row = current()) {
        m_work.choices.rows[row->line] = choice;
        Q_EMIT chosen();
        m_rows->setFocus(Qt::OtherFocusReason);
    }
}

void ImportPlanPart::chooseForAllDoubtful() {
    for (const auto& row : m_work.plan.rows) {
        if (row.fate == RowFate::SetAside) {
            m_work.choices.rows[row.line] = RowChoice::Take;
        }
    }
    Q_EMIT chosen();
    m_rows->setFocus(Qt::OtherFocusReason);
}

void ImportPlanPart::takeFocus() {
    m_rows->setFocus(Qt::OtherFocusReason);
}

}  // namespace hearth::ui::premises
