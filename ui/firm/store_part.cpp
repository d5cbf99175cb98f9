// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/store_part.h"

namespace hearth::ui::firm {

using words::qstring;

StorePart::StorePart(const shell::Context& context, QWidget* parent)
    : QWidget(parent),
      m_context(context),
      m_backedUp(shell::bodyText({}, this)),
      m_health(shell::bodyText({}, this)) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    lines->addWidget(shell::headingText(tr("Where everything is kept"), this));
    auto* path = shell::bodyText(QString::fromStdString(m_context.store.path().string()), this);
    path->setObjectName(QStringLiteral("storePath"));
    path->setTextInteractionFlags(Qt::TextSelectableByMouse);
    lines->addWidget(path);
    auto* row = new QHBoxLayout;
    row->setSpacing(look::kGap);
    auto* backUpButton =
        new shell::KeyButton(tr("Copy it to a file…"), QKeySequence(), shell::ButtonKind::Plain, this);
    backUpButton->setObjectName(QStringLiteral("copyStoreButton"));
    row->addWidget(backUpButton);
    auto* checkButton =
        new shell::KeyButton(tr("Check the store"), QKeySequence(), shell::ButtonKind::Plain, this);
    checkButton->setObjectName(QStringLiteral("checkStoreButton"));
    row->addWidget(checkButton);
    row->addStretch(1);
    lines->addLayout(row);
    m_backedUp->setObjectName(QStringLiteral("backedUpText"));
    m_backedUp->hide();
    lines->addWidget(m_backedUp);
    m_health->setObjectName(QStringLiteral("healthText"));
    m_health->hide();
    lines->addWidget(m_health);
    connect(backUpButton, &QPushButton::clicked, this, &StorePart::backUp);
    connect(checkButton, &QPushButton::clicked, this, &StorePart::check);
}

void StorePart::backUp() {
    const QString day = qstring(calendar::isoText(m_context.clock.today("Europe/London")));
    const auto path = m_context.dialogs.saveFile(
        this, tr("Back up to"), tr("hearthledger backup %1.hearth").arg(day), tr("Stores (*.hearth)"));
    if (!path) {
        return;
    }
    const auto done = m_context.store.backUp(std::filesystem::path(path->toStdString()));
    m_backedUp->setInk(done ? look::Role::Pass : look::Role::Fail);
    m_backedUp->setText(done ? tr("Backed up, read again and found whole: %1").arg(*path)
                             : m_context.words.error(done.error()));
    m_backedUp->show();
    m_context.navigator.say(m_backedUp->text());
}

void StorePart::check() {
    const auto health = store::Store::inspect(m_context.store.path());
    m_health->show();
    if (!health) {
        m_health->setInk(look::Role::Fail);
        m_health->setText(m_context.words.error(health.error()));
        return;
    }
    QStringList said;
    said << (health->integrity == "ok" ? tr("The file is sound.")
                                       : tr("The file is damaged: %1").arg(qstring(health->integrity)));
    said << (health->chain ? tr("All records are as they were issued and follow one another.")
                           : m_context.words.error(health->chain.error()));
    if (health->signatures > 0) {
        said << tr("Signatures that hold: %1").arg(health->signatures);
    }
    for (const auto& record : health->wrongSignatures) {
        said << tr("The signature of record %1 does not hold over its PDF: one of the two was changed.")
                    .arg(qstring(record));
    }
    for (const auto& record : health->outOfTime) {
        said << tr("By the clock record %1 was issued before the one ahead of it: the computer's clock had "
                   "been "
                   "set back. The order of the numbers counts.")
                    .arg(qstring(record));
    }
    said << tr("Premises: %1 · visits: %2 · records: %3")
                .arg(health->premises)
                .arg(health->visits)
                .arg(health->records);
    if (health->letGo > 0) {
        said << tr("Let go of since their keeping was over, with numbers and digests kept: %1")
                    .arg(health->letGo);
    }
    m_health->setInk(health->isSound() ? look::Role::Pass : look::Role::Fail);
    m_health->setText(said.join(u'\n'));
}

}  // namespace hearth::ui::firm
