// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

namespace hearth::ui::visit {

/// The parts that are not empty, one after the other.
[[nodiscard]] inline QString joined(QStringList parts, const QString& with = QStringLiteral(" \u00B7 ")) {
    parts.removeAll(QString());
    return parts.join(with);
}

}  // namespace hearth::ui::visit
