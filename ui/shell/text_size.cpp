// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/text_size.h"

#include "ui/look/look.h"

#include <QCoreApplication>
#include <QFont>
#include <QSettings>

#include <algorithm>
#include <array>
#include <cmath>

namespace hearth::ui::shell {

namespace {

constexpr std::array kSizes{kUsualText, 115, 130, kLargestText};
constexpr double kUsualDesktop = 11.0;  // points: no desktop's own size is larger

QString key() {
    return QStringLiteral("look/text_percent");
}

QString tr(const char* text) {
    return QCoreApplication::translate("hearth::ui::shell::TextSize", text);
}

int nextSize(int now, int by) {
    if (by > 0) {
        const auto* const larger = std::upper_bound(kSizes.begin(), kSizes.end(), now);
        return larger == kSizes.end() ? kSizes.back() : *larger;
    }
    const auto* const here = std::lower_bound(kSizes.begin(), kSizes.end(), now);
    return here == kSizes.begin() ? kSizes.front() : *std::prev(here);
}

/// What the letters will be at the next start.
int chosen(const QSettings& settings) {
    const int kept = settings.value(key()).toInt();
    return kept > 0 ? kept : look::textPercentInUse();
}

}  // namespace

int textPercent(const QSettings* settings, const QFont& desktop) {
    const int kept = settings == nullptr ? 0 : settings->value(key()).toInt();
    // Of a desktop that gives its size in pixels no points are known.
    const int asked = desktop.pointSizeF() > 0.0
                          ? static_cast<int>(std::lround(100.0 * desktop.pointSizeF() / kUsualDesktop))
                          : kUsualText;
    return std::clamp(kept > 0 ? kept : asked, kUsualText, kLargestText);
}

QString changeTextPercent(QSettings* settings, int by) {
    if (settings == nullptr) {
        return tr("The size of the letters can't be kept here.");
    }
    if (by == 0) {
        settings->remove(key());
    } else {
        settings->setValue(key(), nextSize(chosen(*settings), by));
    }
    settings->sync();
    if (settings->status() != QSettings::NoError) {
        return tr("The size of the letters was not kept: %1 can't be written.").arg(settings->fileName());
    }
    return by == 0 ? tr("Letters as the desktop has them, from the next start on.")
                   : tr("Letters at %1 %, from the next start on. Ctrl+0 goes back to the desktop's.")
                         .arg(chosen(*settings));
}

}  // namespace hearth::ui::shell
