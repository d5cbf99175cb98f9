// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/action_page.h"

#include "ui/due/due_text.h"

#include <QKeyEvent>

#include <algorithm>
#include <utility>

namespace hearth::ui::due {

ActionPage::ActionPage(const DueContext& context, const QString& title, QWidget* parent)
    : QWidget(parent),
      m_context(context),
      m_sheet(new shell::Sheet(this)),
      m_title(shell::titleText(title, this)),
      m_below(shell::softText({}, this)),
      m_buttons(new shell::FlowLayout(nullptr, look::kGap)) {
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(2 * look::kGap, look::kGap, 2 * look::kGap, 0);
    box->addWidget(m_sheet);
    lines()->addWidget(m_title);
    lines()->addWidget(m_below);
}

void ActionPage::setHead(const QString& title, const QString& below) {
    m_title->setText(title);
    m_below->setText(below);
    m_below->setVisible(!below.isEmpty());
}

shell::KeyButton* ActionPage::addButton(const QString& text, const char* name, const QKeySequence& key,
                                        shell::ButtonKind kind, const std::function<void()>& act) {
    auto* button = new shell::KeyButton(text, key, kind, this);
    button->setObjectName(QString::fromLatin1(name));
    connect(button, &QPushButton::clicked, this, act);
    m_buttons->addWidget(button);
    return button;
}

void ActionPage::endPage() {
    auto* back = new shell::KeyButton(tr("Back to the list"), shell::ButtonKind::Quiet, this);
    back->setObjectName(QStringLiteral("backButton"));
    back->showKey(tr("Esc"));
    connect(back, &QPushButton::clicked, this, [this] { finish({}); });
    m_buttons->addWidget(back);
    lines()->addLayout(m_buttons);
    lines()->addStretch(1);
    shell::orderTabs(this);
}

void ActionPage::tell(const QString& title, const Error& error) {
    m_context.shell.dialogs.tell(this, title, m_context.shell.words.error(error));
}

void ActionPage::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        finish({});
        return;
    }
    QWidget::keyPressEvent(event);
}

std::vector<Reachable> reachableAt(const store::Store& store, const std::vector<reg::PremisesId>& premises) {
    constexpr std::size_t kEnough = 50;
    std::vector<Reachable> people;
    for (std::size_t i = 0; i < std::min(premises.size(), kEnough); ++i) {
        const auto holders = store.holders(premises[i]);
        for (const auto& holder : holders.value_or(std::vector<reg::VisitFile::Holder>())) {
            const bool known = std::any_of(people.begin(), people.end(), [&holder](const Reachable& one) {
                return one.party.id == holder.party.id;
            });
            if (!known) {
                people.push_back({holder.party, holder.role});
            }
        }
    }
    return people;
}

QString premisesText(const store::Store& store, const std::vector<reg::PremisesId>& premises) {
    if (premises.empty()) {
        return {};
    }
    const auto first = store.premises(premises.front());
    const QString address = first ? oneLineOf(first->address) : QString();
    const int more = static_cast<int>(premises.size()) - 1;
    return more == 0 ? address
                     : QStringLiteral("%1 %2").arg(address, ActionPage::tr("and %n more", nullptr, more));
}

}  // namespace hearth::ui::due
