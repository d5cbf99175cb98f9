// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/due_place.h"

#include "ui/due/due_head.h"
#include "ui/due/due_text.h"
#include "ui/due/due_views.h"
#include "ui/shell/kit.h"

#include <QKeyEvent>
#include <QStackedLayout>

#include <algorithm>

namespace hearth::ui::due {

DuePlace::DuePlace(const shell::Context& context, store::Due& due, QWidget* parent)
    : Place(parent), m_context(context), m_due(due) {
    setObjectName(QStringLiteral("duePlace"));
}

void DuePlace::build() {
    auto* browse = new QWidget(this);
    addList(browse);
    m_views = new QStackedLayout(this);
    m_views->addWidget(browse);
}

void DuePlace::addList(QWidget* browse) {
    m_head = new DueHead(browse);
    m_list = new DueList(
        m_due, m_context.words, [this](const Error& error) { failed(error); }, browse);
    m_list->setObjectName(QStringLiteral("dueList"));
    auto* lines = new QVBoxLayout(browse);
    lines->setContentsMargins(2 * look::kGap, look::kGap, 2 * look::kGap, look::kGap);
    lines->setSpacing(look::kGap);
    lines->addWidget(m_head);
    auto* table = new QVBoxLayout;
    table->setSpacing(0);
    table->addWidget(new DueHeader(*m_list, browse));
    table->addWidget(m_list, 1);
    lines->addLayout(table, 1);
    lines->addWidget(new Legend(browse));
    auto* chosen = shell::softText({}, browse);
    chosen->setObjectName(QStringLiteral("chosenText"));
    m_chosenText = chosen;
    lines->addWidget(chosen);
    connect(m_head, &DueHead::changed, this, &DuePlace::fill);
    connect(m_head, &DueHead::viewChosen, this, &DuePlace::chooseView);
    connect(m_head, &DueHead::saveAsked, this, &DuePlace::saveViewAs);
    connect(m_head, &DueHead::forgetAsked, this, &DuePlace::forgetShownView);
    connect(m_list, &DueList::chosenChanged, this, &DuePlace::sayChosen);
}

void DuePlace::refresh() {
    if (m_list == nullptr) {
        build();
    }
    fill();
}

void DuePlace::failed(const Error& error) {
    m_context.navigator.say(m_context.words.error(error));
}

void DuePlace::fill() {
    const auto choices = m_due.dueChoices(today());
    const auto counts = m_due.dueCounts(m_head->filter(), today());
    if (!choices || !counts) {
        m_list->setEmptyText(m_context.words.error(choices ? counts.error() : choices.error()));
        m_list->ask({m_head->filter(), m_head->sort(), today()}, 0);
        return;
    }
    m_head->offer(*choices, savedViews(m_context.store));
    m_head->setCounts(*counts);
    int count = 0;
    const auto& states = m_head->filter().states;
    for (const auto state : calendar::kDueStates) {
        const bool asked = states.empty() ? state != calendar::DueState::NoDuty
                                          : std::find(states.begin(), states.end(), state) != states.end();
        count += asked ? counts->at(state) : 0;
    }
    m_list->setEmptyText(m_head->isFiltered()
                             ? tr("Nothing like this. Alt+0 shows everything.")
                             : tr("No premises with a check to be made yet. Premises with a landlord or an "
                                  "agent come here by themselves."));
    m_list->ask({m_head->filter(), m_head->sort(), today()}, count);
    shell::orderTabs(this);
}

void DuePlace::sayChosen() {
    const int chosen = static_cast<int>(m_list->selectionModel()->selectedIndexes().size());
    static_cast<shell::Text*>(m_chosenText)
        ->setText(chosen > 1
                      ? tr("%n premises chosen. What you do next is done for all of them.", nullptr, chosen)
                      : tr("Enter: the whole story. Shift+arrows or Ctrl+Space choose several. Left and "
                           "Right move the strip, + and − widen and narrow it."));
}

void DuePlace::chooseView(const QString& name) {
    const auto views = savedViews(m_context.store);
    const auto found =
        std::find_if(views.begin(), views.end(), [&name](const DueView& view) { return view.name == name; });
    if (found == views.end()) {
        m_head->show({}, store::DueSort::Need, {});
    } else {
        m_head->show(found->filter, found->sort, found->name);
    }
    fill();
}

void DuePlace::saveViewAs() {
    const auto name = m_context.dialogs.askText(this, tr("Save this view"), tr("Name of the view"));
    if (!name || name->trimmed().isEmpty()) {
        return;
    }
    if (const auto kept = saveView(m_context.store, {name->trimmed(), m_head->filter(), m_head->sort()});
        !kept) {
        m_context.dialogs.tell(this, tr("The view was not saved"), m_context.words.error(kept.error()));
        return;
    }
    m_head->show(m_head->filter(), m_head->sort(), name->trimmed());
    fill();
    m_context.navigator.say(tr("Saved as “%1”.").arg(name->trimmed()));
}

void DuePlace::forgetShownView() {
    if (const auto gone = forgetView(m_context.store, m_head->view()); !gone) {
        failed(gone.error());
        return;
    }
    m_head->show(m_head->filter(), m_head->sort(), {});
    fill();
    m_list->setFocus(Qt::OtherFocusReason);
}

void DuePlace::takeFocus() {
    m_list->setFocus(Qt::OtherFocusReason);
}

void DuePlace::takeFound() {
    m_list->setFocus(Qt::OtherFocusReason);
}

void DuePlace::search(const QString& text) {
    m_head->setText(text);
    fill();
}

void DuePlace::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        m_list->setFocus(Qt::OtherFocusReason);
        return;
    }
    Place::keyPressEvent(event);
}

}  // namespace hearth::ui::due
