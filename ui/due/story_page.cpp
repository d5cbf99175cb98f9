// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/story_page.h"

#include "core/calendar/duties.h"
#include "core/register/appliance.h"
#include "ui/due/due_text.h"
#include "ui/shell/duty_words.h"
#include "ui/shell/line_list.h"

#include <QHBoxLayout>

namespace hearth::ui::due {

using words::qstring;

Action actionOf(calendar::NextStep step) {
    using calendar::NextStep;
    switch (step) {
        case NextStep::AskLastCheck:
            return Action::Earlier;
        case NextStep::Prepare:
            return Action::Remind;
        case NextStep::BookNow:
            return Action::Call;
        case NextStep::Attend:
            return Action::Visit;
        default:
            return Action::Book;
    }
}

StoryPage::StoryPage(const DueContext& context, QWidget* parent) : ActionPage(context, {}, parent) {
    setObjectName(QStringLiteral("storyPage"));
    m_next =
        new shell::KeyButton({}, QKeySequence(Qt::CTRL | Qt::Key_Return), shell::ButtonKind::Primary, this);
    m_next->setObjectName(QStringLiteral("nextStepButton"));
    m_next->setEnabled(!context.shell.store.isReadOnly());
    connect(m_next, &QPushButton::clicked, this, [this] { Q_EMIT asked(m_nextAction); });
    auto* first = new QHBoxLayout;
    first->addWidget(m_next);
    first->addStretch(1);
    lines()->addLayout(first);
    m_line = new StoryLine(context.shell.words, this);
    lines()->addWidget(m_line);
    auto* columns = new QHBoxLayout;
    columns->setSpacing(3 * look::kGap);
    auto* left = new QVBoxLayout;
    left->addWidget(shell::headingText(tr("What happened"), this));
    m_list = new shell::LineList(tr("The story, newest first"), tr("Nothing yet."), this);
    m_list->setObjectName(QStringLiteral("storyList"));
    m_list->setMinimumHeight(170);
    left->addWidget(m_list, 1);
    auto* right = new QVBoxLayout;
    right->addWidget(shell::headingText(tr("Why this deadline"), this));
    m_reasons = shell::bodyText({}, this);
    m_reasons->setObjectName(QStringLiteral("reasonsText"));
    right->addWidget(m_reasons);
    right->addStretch(1);
    columns->addLayout(left, 1);
    columns->addLayout(right, 1);
    lines()->addLayout(columns, 10);
    auto* bar = new ActionBar({Action::Book, Action::NoAccess, Action::Call, Action::Remind, Action::Earlier,
                               Action::Copy, Action::Evidence, Action::Premises, Action::Visit},
                              !context.shell.store.isReadOnly(), this);
    connect(bar, &ActionBar::asked, this, &StoryPage::asked);
    lines()->addWidget(bar);
    connect(m_list, &shell::LineList::moved, this, [this](int row) {
        m_line->point(row < 0 ? std::nullopt
                              : std::optional(m_events.size() - 1 - static_cast<std::size_t>(row)));
    });
    connect(m_list, &shell::LineList::opened, this, &StoryPage::openEvent);
    endPage();
}

bool StoryPage::show(reg::PremisesId premises) {
    m_premises = premises;
    const auto file = context().due.dueFile(premises, context().today());
    auto story = context().due.storyOf(premises, context().today());
    if (!file || !story) {
        tell(tr("These premises can't be shown"), file ? story.error() : file.error());
        return false;
    }
    m_events = std::move(*story);
    const auto& line = file->line;
    QStringList below{stateWord(line), distanceText(line, context().today())};
    if (line.deadline) {
        below << tr("deadline %1").arg(context().shell.words.date(*line.deadline));
    }
    if (!line.landlordName.empty()) {
        below << tr("landlord %1").arg(qstring(line.landlordName));
    }
    if (!line.agentName.empty()) {
        below << tr("agent %1").arg(qstring(line.agentName));
    }
    below.removeAll(QString());
    setHead(oneLineOf(line.address), below.join(QStringLiteral(" · ")));
    m_next->setWords(stepWord(file->step));
    m_nextAction = actionOf(file->step);
    m_next->setVisible(file->step != calendar::NextStep::Nothing);
    m_line->show(m_events, line, context().today());
    fillStory();
    fillReasons(*file);
    return true;
}

void StoryPage::fillStory() {
    std::vector<shell::Line> lines;
    for (auto event = m_events.rbegin(); event != m_events.rend(); ++event) {
        shell::Line line;
        line.title = storyTitle(*event);
        line.detail = storyDetail(*event, context().shell.words);
        line.right = context().shell.words.shortDate(event->date);
        line.rightDetail = event->date > context().today() ? tr("to come") : QString();
        lines.push_back(std::move(line));
    }
    m_list->setLines(std::move(lines));
    if (!m_events.empty()) {
        m_list->setCurrentRow(0);
        m_line->point(m_events.size() - 1);
    }
}

QString StoryPage::itemReason(const store::DueItem& item, bool first) const {
    const auto& words = context().shell.words;
    QString what = tr("The premises as a whole");
    if (item.appliance) {
        QStringList parts{qstring(item.appliance->make), qstring(item.appliance->model),
                          qstring(item.appliance->place)};
        parts.removeAll(QString());
        what = parts.isEmpty() ? tr("An appliance") : parts.join(QStringLiteral(" "));
    }
    if (!item.reached) {
        return tr("%1: the tenant's own, no check by this duty.").arg(what);
    }
    if (!item.deadline) {
        return tr("%1: nothing is known that a deadline could count from. Ask for the last record.")
            .arg(what);
    }
    QString text = tr("%1: %2").arg(what, words.date(item.deadline->date));
    if (item.deadline->latest) {
        text += tr(" (perhaps only %1)").arg(words.date(*item.deadline->latest));
    }
    if (first) {
        text += tr(", the first: this one decides");
    }
    text += QStringLiteral(". ") + reasonText(*item.deadline, words);
    if (item.window) {
        text += QStringLiteral(" ") +
                tr("A check from %1 to the deadline keeps the date.").arg(words.date(item.window->certain));
    }
    return text;
}

void StoryPage::fillReasons(const store::DueFile& file) {
    QStringList said;
    for (std::size_t i = 0; i < file.items.size(); ++i) {
        said << itemReason(file.items[i], file.items.size() > 1 && file.first == i);
    }
    if (said.isEmpty()) {
        said << tr("No appliance that the duty reaches is known here.");
    }
    const bool let = file.line.duty == calendar::CheckDuty::Let;
    if (let || file.line.duty == calendar::CheckDuty::OwnInterval) {
        const auto kind = let ? calendar::DutyKind::SafetyCheck : calendar::DutyKind::OwnInterval;
        said << tr("Source: %1").arg(shell::coded(calendar::sourceOf(kind)));
    }
    for (const auto& duty : file.duties) {
        said << QStringList{shell::dutyTitle(duty.kind),
                            shell::dutyDay(duty, context().today(), context().shell.words),
                            shell::dutyAbout(duty)}
                    .join(QStringLiteral(" · "));
    }
    for (const auto& check : file.checks) {
        if (check.earlier) {
            said << tr("The check on %1 is known from another firm's record. It counts as proof of the "
                       "anniversary.")
                        .arg(context().shell.words.date(check.date));
            break;
        }
    }
    m_reasons->setText(said.join(QStringLiteral("\n\n")));
}

void StoryPage::openEvent(int row) {
    const auto& event = m_events[m_events.size() - 1 - static_cast<std::size_t>(row)];
    using store::StoryKind;
    auto& navigator = context().shell.navigator;
    switch (event.kind) {
        case StoryKind::Record:
        case StoryKind::Check:
        case StoryKind::RecordVoided:
        case StoryKind::RecordSent:
            navigator.openRecord({event.row});
            break;
        case StoryKind::Visit:
            navigator.openVisit({event.row});
            break;
        case StoryKind::Booking:
            Q_EMIT asked(Action::Book);
            break;
        case StoryKind::Letter:
        case StoryKind::Call:
        case StoryKind::NoAccess:
            context().shell.dialogs.tell(this, storyTitle(event),
                                         event.kind == StoryKind::NoAccess
                                             ? storyDetail(event, context().shell.words)
                                             : qstring(event.detail));
            break;
        default:
            break;
    }
}

void StoryPage::takeFocus() {
    if (m_next->isEnabled() && !m_next->isHidden()) {
        m_next->setFocus(Qt::OtherFocusReason);
    } else {
        m_list->setFocus(Qt::OtherFocusReason);
    }
}

}  // namespace hearth::ui::due
