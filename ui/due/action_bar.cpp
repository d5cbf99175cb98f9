// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/action_bar.h"

#include "ui/shell/flow_layout.h"
#include "ui/shell/kit.h"

namespace hearth::ui::due {

namespace {

struct ActionFace {
    Action action;
    const char* name;
    QString text;
    QKeySequence key;
    bool writes;
};

std::vector<ActionFace> actionFaces() {
    const auto ctrl = [](Qt::Key key) { return QKeySequence(Qt::CTRL | key); };
    const auto shift = [](Qt::Key key) { return QKeySequence(Qt::CTRL | Qt::SHIFT | key); };
    return {
        {Action::Book, "bookButton", ActionBar::tr("Book"), ctrl(Qt::Key_B), true},
        {Action::NoAccess, "noAccessButton", ActionBar::tr("No access"), ctrl(Qt::Key_K), true},
        {Action::Call, "callButton", ActionBar::tr("Call or letter"), ctrl(Qt::Key_L), true},
        {Action::Remind, "remindButton", ActionBar::tr("Remind"), ctrl(Qt::Key_R), true},
        {Action::RemindersDue, "remindersDueButton", ActionBar::tr("Reminders due"), shift(Qt::Key_R), true},
        {Action::Earlier, "earlierButton", ActionBar::tr("Another firm's check"), shift(Qt::Key_A), true},
        {Action::Copy, "copyButton", ActionBar::tr("Alike flats"), shift(Qt::Key_D), true},
        {Action::Premises, "openPremisesButton", ActionBar::tr("Open premises"), ctrl(Qt::Key_O), false},
        {Action::Visit, "startVisitHereButton", ActionBar::tr("Start a visit"), ctrl(Qt::Key_N), true},
        {Action::Day, "dayButton", ActionBar::tr("Day sheet"), ctrl(Qt::Key_D), false},
        {Action::Overview, "overviewButton", ActionBar::tr("Overview"), ctrl(Qt::Key_G), false},
        {Action::Summary, "summaryButton", ActionBar::tr("Summary"), shift(Qt::Key_S), false},
        {Action::Duties, "dutiesButton", ActionBar::tr("Other duties"), ctrl(Qt::Key_U), false},
        {Action::Evidence, "evidenceButton", ActionBar::tr("Evidence"), ctrl(Qt::Key_E), false},
        {Action::Calendar, "calendarButton", ActionBar::tr("Calendar file"), shift(Qt::Key_E), false},
    };
}

}  // namespace

ActionBar::ActionBar(const std::vector<Action>& actions, bool writes, QWidget* parent) : QWidget(parent) {
    auto* flow = new shell::FlowLayout(this, look::kGap / 2 + 2);
    const auto faces = actionFaces();
    for (const auto action : actions) {
        for (const auto& face : faces) {
            if (face.action != action) {
                continue;
            }
            auto* button = new shell::KeyButton(face.text, face.key, shell::ButtonKind::Plain, this);
            button->setObjectName(QString::fromLatin1(face.name));
            button->setEnabled(writes || !face.writes);
            connect(button, &QPushButton::clicked, this, [this, action] { Q_EMIT asked(action); });
            flow->addWidget(button);
        }
    }
}

}  // namespace hearth::ui::due
