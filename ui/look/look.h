// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rulebook/finding.h"

#include <QColor>
#include <QFont>
#include <QPainter>
#include <QPalette>
#include <QRectF>
#include <QString>

/// Colours by role, type and spacing: the only place with literal colours. Gui only, no widgets.
namespace hearth::ui::look {

enum class Scheme { Light, Dark, HighContrast };

/// Every text role on its ground has a contrast of 4.5:1 or better in every scheme (a test computes it).
enum class Role {
    Desk,   // what the sheet lies on
    Sheet,  // paper
    SheetEdge,
    Line,
    Ink,
    SoftInk,
    Key,
    KeyGround,
    OnKey,  // the key colour: actions, where you are
    Pass,
    PassGround,
    Fail,
    FailGround,
    LookAgain,
    LookAgainGround,
    NoVerdict,
    NoVerdictGround,
    FieldEdge,
    FieldGround,
    FieldProblem,
    Focus,
    Selection,
    DemoBand,
    OnDemoBand,
};

[[nodiscard]] QColor colour(Role role, Scheme scheme = Scheme::Light);
/// The text and ground roles of an outcome.
[[nodiscard]] Role inkOf(rulebook::Outcome outcome);
[[nodiscard]] Role groundOf(rulebook::Outcome outcome);

/// Dark when the desktop's palette is dark (Qt 6.4 has no colour scheme hint); high contrast when it is white
/// on black.
[[nodiscard]] Scheme schemeOf(const QPalette& desktop);
/// The scheme in use: what the application's property "hearthScheme" says (a Scheme as int), else that of its
/// palette.
[[nodiscard]] Scheme schemeInUse();
[[nodiscard]] QPalette palette(Scheme scheme);
/// For QApplication::setStyleSheet: fields, buttons, lists and tables in our look. What a widget may ask for
/// by a property: a button's "kind": "primary", "danger", "quiet"; a field's "problem": true; a label's
/// "ink": "soft", "key", "pass", "fail", "look_again", "no_verdict"; a QFrame's (or styled QWidget's)
/// "ground": "desk", "sheet", "demo".
[[nodiscard]] QString styleSheet(Scheme scheme);

/// Loads the bundled family once (resources must be initialised); false if it can't, then the system's font
/// stands in.
bool loadFonts();
[[nodiscard]] QString family();
/// Sizes in logical pixels on screen: body 13. The application's property "hearthFontScale" (a double) scales
/// them all.
enum class TypeRole { Body, Small, Label, Heading, Title, Figure, BigFigure };
[[nodiscard]] QFont font(TypeRole role);
/// The same property in per cent; what widgets already have does not follow.
[[nodiscard]] int textPercentInUse();
void useTextPercent(int percent);

/// The shape of an outcome, drawn (never typed): disc with tick, square with cross, triangle, ring with dash.
/// They keep apart by form alone, in one colour and in greyscale. The largest square in the middle of `box`
/// is used.
void drawOutcome(QPainter& painter, const QRectF& box, rulebook::Outcome outcome,
                 Scheme scheme = Scheme::Light);

inline constexpr int kGap = 8;  // the grid of all distances, logical pixels

}  // namespace hearth::ui::look
