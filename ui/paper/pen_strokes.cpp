// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/pen_strokes.h"

#include "core/register/hand_signature.h"

namespace hearth::ui::paper {

namespace {

constexpr double kPenWidth = 0.4;
constexpr double kTenthsToMm = 0.1;
/// Of what was drawn on the pad, which is larger than a line on paper.
constexpr double kMostScale = 0.62;

QRectF boundsOf(const reg::PenStrokes& strokes) {
    double left = reg::kPadWidth;
    double top = reg::kPadHeight;
    double right = 0;
    double bottom = 0;
    for (const auto& stroke : strokes) {
        for (const auto& point : stroke) {
            left = std::min(left, point.x * kTenthsToMm);
            right = std::max(right, point.x * kTenthsToMm);
            top = std::min(top, point.y * kTenthsToMm);
            bottom = std::max(bottom, point.y * kTenthsToMm);
        }
    }
    return {left, top, right - left, bottom - top};
}

}  // namespace

std::vector<Item> drawnStrokes(const std::string& text, const QRectF& box) {
    const auto strokes = reg::strokesFromText(text);
    if (!strokes || strokes->empty()) {
        return {};
    }
    const QRectF bounds = boundsOf(*strokes);
    const double room = kPenWidth;  // half a pen's width at each edge
    double scale = kMostScale;
    if (bounds.width() > 0) {
        scale = std::min(scale, (box.width() - room) / bounds.width());
    }
    if (bounds.height() > 0) {
        scale = std::min(scale, (box.height() - room) / bounds.height());
    }
    const QPointF corner(box.left() + room / 2, box.bottom() - room / 2 - bounds.height() * scale);
    std::vector<Item> items;
    for (const auto& stroke : *strokes) {
        LineItem line{{}, kPenWidth, look::Role::Ink};
        for (const auto& point : stroke) {
            const QPointF at(point.x * kTenthsToMm, point.y * kTenthsToMm);
            line.points.append(corner + (at - bounds.topLeft()) * scale);
        }
        if (line.points.size() == 1) {
            line.points.append(line.points.first() + QPointF(0.01, 0));  // a dot of the pen
        }
        items.emplace_back(std::move(line));
    }
    return items;
}

}  // namespace hearth::ui::paper
