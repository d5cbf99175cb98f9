// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/tube_menu.h"

#include "core/pipework/tube.h"

namespace hearth::ui::visit {

TubeMenu::TubeMenu(const words::Words& words, QWidget* parent) : QMenu(parent) {
    setAttribute(Qt::WA_DeleteOnClose);
    setAccessibleName(tr("Tubes"));
    QMenu* family = nullptr;
    const pipework::Tube* before = nullptr;
    for (const pipework::Tube& tube : pipework::tubes()) {
        if (before == nullptr || before->family != tube.family) {
            family = addMenu(words.tubeFamily(tube.family));
        }
        before = &tube;
        const QString code = QString::fromUtf8(tube.code.data(), static_cast<qsizetype>(tube.code.size()));
        QAction* action = family->addAction(words.tube(tube));
        connect(action, &QAction::triggered, this, [this, code] { Q_EMIT chosen(code); });
    }
}

}  // namespace hearth::ui::visit
