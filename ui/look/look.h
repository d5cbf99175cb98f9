// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QFont>
#include <QPainter>
#include <QPalette>
#include <QRectF>
#include <QString>

#include "core/rulebook/finding.h"

/// Colours by role, type and spacing: the only place with literal colours. Gui only, no widgets.
namespace hearth::ui::look {

enum class Scheme { Light, Dark, HighContrast };

/// Every text role on its ground has a contrast of 4.5:1 or better in every scheme (a test computes it).
enum class Role {
    Desk,         // what the sheet lies on
    Sheet,        // paper
    SheetEdge, Line,
    Ink, SoftInk,
    Key, KeyGround, OnKey,          // the key colour: actions, where you are
    Pass, PassGround, Fail, FailGround, LookAgain, LookAgainGround, NoVerdict, NoVerdictGround,
    FieldEdge, FieldGround, FieldProblem,
    Focus, Selection, DemoBand, OnDemoBand,
};

[[nodiscard]] QColor colour(Role role, Scheme scheme = Scheme::Light);
/// The text and ground roles of an outcome.
[[nodiscard]] Role inkOf(rulebook::Outcome outcome);
[[nodiscard]] Role groundOf(rulebook::Outcome outcome);

/// Dark when the desktop's palette is dark (Qt 6.4 has no colour scheme hint).
[[nodiscard]] Scheme schemeOf(const QPalette& desktop);
[[nodiscard]] QPalette palette(Scheme scheme);
/// For QApplication::setStyleSheet: fields, buttons, lists and tables in our look.
[[nodiscard]] QString styleSheet(Scheme scheme);

/// Loads the bundled family once (resources must be initialised); false if it can't, then the system's font stands in.
bool loadFonts();
[[nodiscard]] QString family();
/// Sizes in logical pixels on screen: body 13.
enum class TypeRole { Body, Small, Label, Heading, Title, Figure, BigFigure };
[[nodiscard]] QFont font(TypeRole role);

/// The shape of an outcome, drawn (never typed): disc with tick, square with cross, triangle, ring with dash.
void drawOutcome(QPainter& painter, const QRectF& box, rulebook::Outcome outcome, Scheme scheme = Scheme::Light);

/// The same shapes in one colour on paper or in greyscale keep apart by form alone.
inline constexpr int kGap = 8;   // the grid of all distances, logical pixels

}  // namespace hearth::ui::look
