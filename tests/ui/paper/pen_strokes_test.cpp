// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/pen_strokes.h"

#include <gtest/gtest.h>

namespace hearth::ui::paper {
namespace {

const QRectF kBox(10, 20, 60, 14);

std::vector<LineItem> drawn(const char* text) {
    std::vector<LineItem> lines;
    for (const Item& item : drawnStrokes(text, kBox)) {
        lines.push_back(std::get<LineItem>(item));
    }
    return lines;
}

TEST(DrawnStrokes, keepTheirShapeAndStayInTheirBox) {
    // A small one is not blown up; one as large as the pad fits.
    for (const char* text : {"5.0,5.0 9.0,8.0;6.0,7.0 8.0,7.0", "0.0,0.0 80.0,24.0 0.0,24.0 80.0,0.0"}) {
        const auto lines = drawn(text);
        ASSERT_FALSE(lines.empty());
        for (const LineItem& line : lines) {
            for (const QPointF& point : line.points) {
                EXPECT_TRUE(kBox.contains(point)) << text << ": " << point.x() << ", " << point.y();
            }
        }
        const auto first = lines[0].points;
        const QPointF across = first[1] - first[0];
        const double slope = across.y() / across.x();
        EXPECT_NEAR(slope, text[0] == '5' ? 3.0 / 4.0 : 24.0 / 80.0, 1e-9);
    }
}

TEST(DrawnStrokes, drawADotWhereThePenOnlyTouched) {
    const auto lines = drawn("5.0,5.0");
    ASSERT_EQ(lines.size(), 1U);
    EXPECT_EQ(lines[0].points.size(), 2);
}

TEST(DrawnStrokes, areNoneForATextThatIsNone) {
    EXPECT_TRUE(drawn("").empty());
    EXPECT_TRUE(drawn("scribble").empty());
}

}  // namespace
}  // namespace hearth::ui::paper
