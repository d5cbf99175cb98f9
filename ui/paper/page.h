// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rulebook/finding.h"
#include "ui/look/look.h"

#include <QGlyphRun>
#include <QImage>
#include <QList>
#include <QRectF>
#include <QString>

#include <algorithm>
#include <iterator>
#include <variant>
#include <vector>

/// What stands on a page, placed: the result of laying out and all that the painter knows. Millimetres
/// throughout, from the page's top left corner (inside a slice: from the slice's).
namespace hearth::ui::paper {

/// Glyphs are shaped at this many units to the millimetre, so fine that no device's dots or hinting can
/// matter.
inline constexpr double kUnitsPerMm = 100.0;

inline constexpr double kMmPerInch = 25.4;

/// One line of text, shaped.
struct TextItem {
    QPointF origin;         // where the baseline starts
    QList<QGlyphRun> runs;  // in units, y from the line's top
    double ascent = 0;      // of the shaped line, in units: the baseline within `runs`
    QString text;
    QRectF box;  // what the letters may cover
    look::Role role = look::Role::Ink;
    double height = 0;  // of its line, where the line is not as high as the style of what it belongs to
    int column = 0;     // of several beside each other: a reader goes down one before the next
};

/// A horizontal rule, a frame or a filled band.
struct RuleItem {
    QPointF from;
    double length = 0;
    double thickness = 0;
    look::Role role = look::Role::Line;
};
struct FrameItem {
    QRectF box;
    double thickness = 0;
    look::Role role = look::Role::Ink;
};
struct ShapeItem {
    QRectF box;
    rulebook::Outcome outcome = rulebook::Outcome::NoVerdict;
};
/// Dark modules of a square code as horizontal runs, drawn without seams.
struct CodeItem {
    QPointF origin;
    double moduleSize = 0;
    QList<QRect> runs;  // in modules
};

/// The firm's logo, or a photograph. Without transparency.
struct PictureItem {
    QRectF box;
    QImage image;
    bool isPhotograph = false;  // a PDF holds it as JPEG, which is small; a logo to the last dot
};

/// Joined points: a plot's line, a pen's stroke.
enum class Stroke { Solid, Dashed, Dotted };
struct LineItem {
    QList<QPointF> points;
    double thickness = 0;
    look::Role role = look::Role::Ink;
    Stroke stroke = Stroke::Solid;
};
/// A plot's mark around a point. The filled ones keep clear of what lies below them by a rim of paper.
enum class Mark { Disc, Ring, Square, Diamond, Triangle };
struct MarkItem {
    QPointF centre;
    double size = 0;  // across
    Mark mark = Mark::Disc;
    look::Role role = look::Role::Ink;
};

using Item =
    std::variant<TextItem, RuleItem, FrameItem, ShapeItem, CodeItem, PictureItem, LineItem, MarkItem>;

template <typename T>
void append(std::vector<T>& to, std::vector<T> from) {
    std::move(from.begin(), from.end(), std::back_inserter(to));
}

struct Page {
    std::vector<Item> items;
};

/// The same item elsewhere.
[[nodiscard]] Item moved(Item item, QPointF by);

}  // namespace hearth::ui::paper
