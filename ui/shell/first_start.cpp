// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/first_start.h"

#include "ui/shell/kit.h"
#include "ui/shell/set_up_pages.h"

#include <QKeyEvent>

namespace hearth::ui::shell {

namespace {

constexpr QSize kSize{860, 590};
constexpr int kDoorWidth = 340;

}  // namespace

FirstStart::FirstStart(const words::Words& words, const Clock& clock, const rulebook::RuleBook& book,
                       QWidget* parent)
    : QDialog(parent), m_stack(new QStackedWidget(this)) {
    setObjectName(QStringLiteral("firstStart"));
    setWindowTitle(tr("Hearthledger: first start"));
    auto* around = new QVBoxLayout(this);
    around->setContentsMargins(2 * look::kGap, 2 * look::kGap, 2 * look::kGap, 2 * look::kGap);
    around->addWidget(m_stack);
    m_stack->addWidget(makeDoors(words));
    addPage(new FirmPage(words, this));
    addPage(new EngineerAndGaugePage(words, clock, this));
    addPage(new ConfirmPage(words, clock, book, this));
    resize(kSize);
    showPage(0);
}

QWidget* FirstStart::makeDoors(const words::Words& words) {
    auto* sheet = new Sheet(this);
    auto* lines = sheet->lines();
    lines->addWidget(titleText(tr("Hearthledger"), sheet));
    lines->addWidget(bodyText(tr("Readings of gas installations, judged at once with the reason, and the "
                                 "record that is handed over."),
                              sheet));
    lines->addSpacing(2 * look::kGap);
    const auto addDoor = [&](const QString& text, const QString& what, ButtonKind kind, const char* name) {
        auto* door = new KeyButton(text, kind, sheet);
        door->setObjectName(QString::fromLatin1(name));
        door->setMinimumWidth(kDoorWidth);
        lines->addWidget(door, 0, Qt::AlignLeft);
        lines->addWidget(softText(what, sheet));
        lines->addSpacing(look::kGap);
        return door;
    };
    m_ownFirm = addDoor(tr("&Set up my firm"),
                        tr("Firm, first engineer, first gauge, and the limits of daily work: two minutes."),
                        ButtonKind::Primary, "ownFirmDoor");
    connect(m_ownFirm, &QPushButton::clicked, this, [this] { showPage(1); });
    auto* demonstration = addDoor(
        tr("&Look round with the demonstration firm"),
        tr("Invented people, streets and tests in a store of their own, marked on every screen. It never "
           "mixes with your own records."),
        ButtonKind::Plain, "demonstrationDoor");
    connect(demonstration, &QPushButton::clicked, this, [this] {
        m_door = Door::Demonstration;
        accept();
    });
    auto* backup =
        addDoor(tr("&Open a backup"),
                tr("From a stick, a synchronised folder or another computer: all that the firm kept "
                   "there, checked first."),
                ButtonKind::Plain, "backupDoor");
    connect(backup, &QPushButton::clicked, this, [this] {
        m_door = Door::Backup;
        accept();
    });
    lines->addStretch(1);
    auto* caution = bodyText(words.caution(rulebook::Gas::NaturalGas, reg::Country::England, {}), sheet);
    caution->setObjectName(QStringLiteral("cautionText"));
    lines->addWidget(caution);
    return sheet;
}

void FirstStart::addPage(SetUpPage* page) {
    auto* holder = new QWidget(this);
    auto* lines = new QVBoxLayout(holder);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    auto* sheet = new Sheet(holder);
    page->setParent(sheet);
    sheet->lines()->addWidget(page);
    sheet->lines()->addStretch(1);
    lines->addWidget(sheet, 1);
    auto* row = new QHBoxLayout;
    const auto number = m_pages.size() + 1;
    const bool isLast = number == 3;
    auto* next = new KeyButton(isLast ? tr("Begin") : tr("Go on"), ButtonKind::Primary, holder);
    next->setObjectName(QStringLiteral("nextButton%1").arg(number));
    next->showKey(QStringLiteral("Ctrl+Enter"));
    auto* back = new KeyButton(tr("Back"), ButtonKind::Plain, holder);
    back->setObjectName(QStringLiteral("backButton%1").arg(number));
    back->showKey(QStringLiteral("Esc"));
    row->addWidget(
        new Text(tr("Step %1 of 3").arg(number), look::TypeRole::Small, look::Role::SoftInk, holder));
    row->addStretch(1);
    row->addWidget(next);  // first after the last field, so that Enter goes on from there
    row->addWidget(back);
    lines->addLayout(row);
    connect(next, &QPushButton::clicked, this, &FirstStart::goOn);
    connect(back, &QPushButton::clicked, this, &FirstStart::goBack);
    m_stack->addWidget(holder);
    m_pages.push_back(page);
    orderTabs(holder);
}

void FirstStart::showPage(int page) {
    m_stack->setCurrentIndex(page);
    if (page == 0) {
        m_ownFirm->setFocus(Qt::OtherFocusReason);
    } else {
        m_pages[static_cast<std::size_t>(page - 1)]->takeFocus();
    }
}

void FirstStart::goOn() {
    if (page() == 0) {
        return;
    }
    auto* at = m_pages[static_cast<std::size_t>(page() - 1)];
    if (!at->isUsable()) {
        return;
    }
    if (page() < static_cast<int>(m_pages.size())) {
        showPage(page() + 1);
        return;
    }
    // In order: whose name stands under the confirmed entries is said on the page before them.
    for (auto* each : m_pages) {
        each->addTo(m_setUp);
    }
    m_door = Door::OwnFirm;
    accept();
}

void FirstStart::goBack() {
    if (page() > 0) {
        showPage(page() - 1);
    } else {
        reject();
    }
}

void FirstStart::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        goBack();
        return;
    }
    if (isEnter(*event)) {
        if (event->modifiers().testFlag(Qt::ControlModifier)) {
            goOn();
        }
        return;  // a field's Enter has gone to the next field; no button is pressed from afar
    }
    QDialog::keyPressEvent(event);
}

}  // namespace hearth::ui::shell
