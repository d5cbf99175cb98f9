// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/look/look.h"

#include <QImage>

#include <array>
#include <gtest/gtest.h>

namespace hearth::ui::look {
namespace {

using rulebook::Outcome;

constexpr std::array kOutcomes{Outcome::Pass, Outcome::Fail, Outcome::LookAgain, Outcome::NoVerdict};

QImage drawn(Outcome outcome, int side, Scheme scheme) {
    QImage image(side, side, QImage::Format_RGB32);
    image.fill(colour(Role::Sheet, scheme));
    QPainter painter(&image);
    drawOutcome(painter, QRectF(0, 0, side, side), outcome, scheme);
    painter.end();
    return image;
}

/// Dots that are ink and not ground: the form alone.
QImage form(const QImage& image) {
    const QRgb ground = image.pixel(0, 0);
    QImage mask(image.size(), QImage::Format_Grayscale8);
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            const bool isInk = std::abs(qGray(image.pixel(x, y)) - qGray(ground)) > 40;
            mask.setPixelColor(x, y, isInk ? Qt::black : Qt::white);
        }
    }
    return mask;
}

double shareThatDiffers(const QImage& a, const QImage& b) {
    int count = 0;
    for (int y = 0; y < a.height(); ++y) {
        for (int x = 0; x < a.width(); ++x) {
            count += a.pixel(x, y) != b.pixel(x, y) ? 1 : 0;
        }
    }
    return count / static_cast<double>(a.width() * a.height());
}

TEST(OutcomeShape, keepApartByFormAloneEvenWhenSmall) {
    for (const Scheme scheme : {Scheme::Light, Scheme::Dark, Scheme::HighContrast}) {
        for (const int side : {14, 48}) {
            for (const Outcome a : kOutcomes) {
                for (const Outcome b : kOutcomes) {
                    const double share =
                        shareThatDiffers(form(drawn(a, side, scheme)), form(drawn(b, side, scheme)));
                    if (a == b) {
                        EXPECT_EQ(share, 0.0);
                    } else {
                        EXPECT_GT(share, 0.10)
                            << static_cast<int>(a) << " and " << static_cast<int>(b) << " at " << side;
                    }
                }
            }
        }
    }
}

TEST(OutcomeShape, staysInItsBox) {
    for (const Outcome outcome : kOutcomes) {
        QImage image(60, 40, QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        drawOutcome(painter, QRectF(10, 5, 40, 30), outcome);
        painter.end();
        const QRect square(15, 5, 30, 30);  // the largest in the middle of the box
        int inside = 0;
        for (int y = 0; y < image.height(); ++y) {
            for (int x = 0; x < image.width(); ++x) {
                const bool isInk = image.pixelColor(x, y) != QColor(Qt::white);
                EXPECT_FALSE(isInk && !square.adjusted(-1, -1, 1, 1).contains(x, y)) << x << "," << y;
                inside += isInk ? 1 : 0;
            }
        }
        EXPECT_GT(inside, 150);
    }
}

TEST(OutcomeShape, leavesThePainterAsItWas) {
    QImage image(20, 20, QImage::Format_RGB32);
    QPainter painter(&image);
    painter.setPen(Qt::blue);
    painter.setBrush(Qt::yellow);
    const QTransform before = painter.transform();
    drawOutcome(painter, QRectF(0, 0, 20, 20), Outcome::Fail);
    EXPECT_EQ(painter.pen().color(), QColor(Qt::blue));
    EXPECT_EQ(painter.brush().color(), QColor(Qt::yellow));
    EXPECT_EQ(painter.transform(), before);
}

}  // namespace
}  // namespace hearth::ui::look
