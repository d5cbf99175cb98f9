// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/look/look.h"

#include <QFontDatabase>
#include <QGuiApplication>
#include <QVariant>

#include <algorithm>
#include <array>
#include <cmath>
#include <mutex>

namespace hearth::ui::look {

namespace {

struct TypeSize {
    int pixels;
    QFont::Weight weight;
};

/// In the order of TypeRole.
constexpr std::array<TypeSize, 7> kTypes{{
    {13, QFont::Normal},
    {11, QFont::Normal},
    {11, QFont::Normal},
    {14, QFont::Bold},
    {20, QFont::Bold},
    {42, QFont::Bold},
    {60, QFont::Bold},
}};

constexpr const char* kScaleProperty = "hearthFontScale";

double fontScale() {
    const QVariant said = qGuiApp != nullptr ? qGuiApp->property(kScaleProperty) : QVariant();
    return said.isValid() ? std::clamp(said.toDouble(), 0.5, 3.0) : 1.0;
}

}  // namespace

bool loadFonts() {
    static std::once_flag once;
    static bool loaded = false;
    std::call_once(once, [] {
        const int regular =
            QFontDatabase::addApplicationFont(QStringLiteral(":/fonts/HearthSans-Regular.ttf"));
        const int bold = QFontDatabase::addApplicationFont(QStringLiteral(":/fonts/HearthSans-Bold.ttf"));
        loaded = regular >= 0 && bold >= 0;
    });
    return loaded;
}

QString family() {
    return QStringLiteral("Hearth Sans");
}

QFont font(TypeRole role) {
    const TypeSize& type = kTypes[static_cast<std::size_t>(role)];
    QFont font(family());
    font.setPixelSize(std::max(1, static_cast<int>(std::lround(type.pixels * fontScale()))));
    font.setWeight(type.weight);
    font.setHintingPreference(QFont::PreferNoHinting);
    return font;
}

int textPercentInUse() {
    return static_cast<int>(std::lround(100.0 * fontScale()));
}

void useTextPercent(int percent) {
    qGuiApp->setProperty(kScaleProperty, percent / 100.0);
}

}  // namespace hearth::ui::look
