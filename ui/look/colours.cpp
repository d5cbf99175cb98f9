// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/look/look.h"

#include <QGuiApplication>
#include <QVariant>

#include <array>

namespace hearth::ui::look {

namespace {

constexpr std::size_t kRoles = static_cast<std::size_t>(Role::OnDemoBand) + 1;

struct Colours {
    Role role;
    QRgb light, dark, highContrast;
};

/// In the order of Role. Contrasts are held by tests/ui/look/colours_test.cpp.
constexpr std::array<Colours, kRoles> kColours{{
    {Role::Desk, 0xFFEEF0EE, 0xFF12171B, 0xFF000000},
    {Role::Sheet, 0xFFFFFFFF, 0xFF1B2227, 0xFF000000},
    {Role::SheetEdge, 0xFFD5DADF, 0xFF36414A, 0xFFFFFFFF},
    {Role::Line, 0xFFD5DADF, 0xFF36414A, 0xFFB8C0C8},
    {Role::Ink, 0xFF1F2A33, 0xFFE6EBEE, 0xFFFFFFFF},
    {Role::SoftInk, 0xFF5A6671, 0xFFA3AFB8, 0xFFE2E6EA},
    {Role::Key, 0xFF0F5C63, 0xFF72C6CB, 0xFF7CE7EE},
    {Role::KeyGround, 0xFFDCE9E8, 0xFF1F3A3D, 0xFF00363A},
    {Role::OnKey, 0xFFFFFFFF, 0xFF0B2629, 0xFF000000},
    {Role::Pass, 0xFF1B7347, 0xFF6CCB97, 0xFF7CF0AE},
    {Role::PassGround, 0xFFE8F3EC, 0xFF1A3226, 0xFF002B14},
    {Role::Fail, 0xFFA8201A, 0xFFFF948B, 0xFFFFA8A0},
    {Role::FailGround, 0xFFFAEAE8, 0xFF3C2321, 0xFF3A0500},
    {Role::LookAgain, 0xFF8A5300, 0xFFF0B45A, 0xFFFFCB73},
    {Role::LookAgainGround, 0xFFFCF2E1, 0xFF372B16, 0xFF2E1D00},
    {Role::NoVerdict, 0xFF5A6671, 0xFFA3AFB8, 0xFFE2E6EA},
    {Role::NoVerdictGround, 0xFFF0F2F4, 0xFF29323A, 0xFF1E2328},
    {Role::FieldEdge, 0xFF87919A, 0xFF7F8C96, 0xFFFFFFFF},
    {Role::FieldGround, 0xFFFFFFFF, 0xFF141A1E, 0xFF000000},
    {Role::FieldProblem, 0xFFA8201A, 0xFFFF948B, 0xFFFFA8A0},
    {Role::Focus, 0xFF0F5C63, 0xFF72C6CB, 0xFF7CE7EE},
    {Role::Selection, 0xFFCFE3E3, 0xFF2A4C50, 0xFF004F55},
    {Role::DemoBand, 0xFF5A3A6E, 0xFFD9BFEC, 0xFFE9D2FA},
    {Role::OnDemoBand, 0xFFFFFFFF, 0xFF27163A, 0xFF000000},
}};

constexpr bool isInOrder() {
    for (std::size_t i = 0; i < kRoles; ++i) {
        if (static_cast<std::size_t>(kColours[i].role) != i) {
            return false;
        }
    }
    return true;
}
static_assert(isInOrder());

}  // namespace

QColor colour(Role role, Scheme scheme) {
    const Colours& row = kColours[static_cast<std::size_t>(role)];
    switch (scheme) {
        case Scheme::Light:
            return QColor::fromRgb(row.light);
        case Scheme::Dark:
            return QColor::fromRgb(row.dark);
        case Scheme::HighContrast:
            return QColor::fromRgb(row.highContrast);
    }
    return {};
}

Role inkOf(rulebook::Outcome outcome) {
    switch (outcome) {
        case rulebook::Outcome::Pass:
            return Role::Pass;
        case rulebook::Outcome::Fail:
            return Role::Fail;
        case rulebook::Outcome::LookAgain:
            return Role::LookAgain;
        case rulebook::Outcome::NoVerdict:
            break;
    }
    return Role::NoVerdict;
}

Role groundOf(rulebook::Outcome outcome) {
    switch (outcome) {
        case rulebook::Outcome::Pass:
            return Role::PassGround;
        case rulebook::Outcome::Fail:
            return Role::FailGround;
        case rulebook::Outcome::LookAgain:
            return Role::LookAgainGround;
        case rulebook::Outcome::NoVerdict:
            break;
    }
    return Role::NoVerdictGround;
}

Scheme schemeOf(const QPalette& desktop) {
    const QColor ground = desktop.color(QPalette::Window);
    const QColor text = desktop.color(QPalette::WindowText);
    if (ground.lightness() >= text.lightness()) {
        return Scheme::Light;
    }
    const bool isExtreme = ground.lightness() == 0 && text.lightness() == 255;
    return isExtreme ? Scheme::HighContrast : Scheme::Dark;
}

Scheme schemeInUse() {
    const auto* application = qGuiApp;
    if (application == nullptr) {
        return Scheme::Light;
    }
    const QVariant said = application->property("hearthScheme");
    if (said.isValid()) {
        return static_cast<Scheme>(said.toInt());
    }
    return schemeOf(QGuiApplication::palette());
}

QPalette palette(Scheme scheme) {
    const auto of = [scheme](Role role) { return colour(role, scheme); };
    QPalette palette;
    palette.setColor(QPalette::Window, of(Role::Desk));
    palette.setColor(QPalette::WindowText, of(Role::Ink));
    palette.setColor(QPalette::Base, of(Role::FieldGround));
    palette.setColor(QPalette::AlternateBase, of(Role::Desk));
    palette.setColor(QPalette::Text, of(Role::Ink));
    palette.setColor(QPalette::Button, of(Role::Sheet));
    palette.setColor(QPalette::ButtonText, of(Role::Ink));
    palette.setColor(QPalette::BrightText, of(Role::Fail));
    palette.setColor(QPalette::Highlight, of(Role::Selection));
    palette.setColor(QPalette::HighlightedText, of(Role::Ink));
    palette.setColor(QPalette::ToolTipBase, of(Role::Sheet));
    palette.setColor(QPalette::ToolTipText, of(Role::Ink));
    palette.setColor(QPalette::PlaceholderText, of(Role::SoftInk));
    palette.setColor(QPalette::Link, of(Role::Key));
    palette.setColor(QPalette::LinkVisited, of(Role::Key));
    palette.setColor(QPalette::Light, of(Role::Sheet));
    palette.setColor(QPalette::Midlight, of(Role::Line));
    palette.setColor(QPalette::Mid, of(Role::FieldEdge));
    palette.setColor(QPalette::Dark, of(Role::FieldEdge));
    palette.setColor(QPalette::Shadow, of(Role::FieldEdge));
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
        palette.setColor(QPalette::Disabled, role, of(Role::SoftInk));
    }
    return palette;
}

}  // namespace hearth::ui::look
