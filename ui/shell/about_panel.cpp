// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/about_panel.h"

namespace hearth::ui::shell {

AboutPanel::AboutPanel(const QString& storePath, QWidget* parent)
    : Panel(parent), m_caution(bodyText({}, this)) {
    setObjectName(QStringLiteral("aboutPanel"));
    setAccessibleName(tr("About Hearthledger"));
    lines()->addWidget(titleText(tr("Hearthledger %1").arg(QStringLiteral(HEARTH_VERSION)), this));
    lines()->addWidget(bodyText(tr("Commissioning records for gas installations: readings, what the rules "
                                   "say of them, and the record."),
                                this));
    m_caution->setFont(strongFont());
    lines()->addWidget(m_caution);
    lines()->addWidget(bodyText(tr("It supports a competent, registered person. It replaces neither training "
                                   "nor the standard nor the maker's "
                                   "instructions: where it differs from them, they are right."),
                                this));
    lines()->addWidget(softText(tr("The store: %1").arg(storePath), this));
    lines()->addWidget(softText(
        tr("Free software under the GNU General Public License, version 3 or later; without any warranty."),
        this));
    m_close = closeButton();
    lines()->addWidget(m_close, 0, Qt::AlignLeft);
    lines()->addStretch(1);
}

void AboutPanel::showCaution(const QString& caution) {
    m_caution->setText(caution);
}

void AboutPanel::takeFocus() {
    m_close->setFocus(Qt::OtherFocusReason);
}

}  // namespace hearth::ui::shell
