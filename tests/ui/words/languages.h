// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/words/pseudo_translator.h"
#include "ui/words/words.h"

#include <QString>

#include <gmock/gmock.h>
#include <ostream>

/// Languages that every text must be there in, and readable failure messages.
inline std::ostream& operator<<(std::ostream& out, const QString& text) {
    return out << text.toStdString();
}

namespace hearth::testing {

[[nodiscard]] inline const std::vector<QString>& languages() {
    static const std::vector<QString> kLanguages{QStringLiteral("en"), QStringLiteral("en_XA")};
    return kLanguages;
}

/// A text of the pseudo-locale has brackets; one without was not sent through the translator.
[[nodiscard]] inline bool isTranslated(const QString& text, const ui::words::Words& words) {
    return words.language() == u"en" || (text.startsWith(u'[') && text.contains(u'~') && text.contains(u']'));
}

/// No placeholder was left standing.
[[nodiscard]] inline bool isFilled(const QString& text) {
    for (int i = 1; i <= 9; ++i) {
        if (text.contains(u'%' + QString::number(i))) {
            return false;
        }
    }
    return !text.contains(u"%n");
}

}  // namespace hearth::testing
