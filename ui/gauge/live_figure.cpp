// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gauge/live_figure.h"

#include "ui/look/look.h"
#include "ui/shell/kit.h"

#include <QFontMetrics>
#include <QPainter>

namespace hearth::ui::gauge {

namespace {

constexpr int kFigurePad = look::kGap;

}  // namespace

LiveFigure::LiveFigure(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Minimum, QSizePolicy::Fixed);
    setAccessibleName(tr("No reading yet"));
}

QString LiveFigure::caption() const {
    if (m_shown.figure.isEmpty()) {
        return tr("no reading yet");
    }
    const QString age = m_shown.isStale ? tr("stale: %1").arg(m_shown.age) : m_shown.age;
    return m_shown.isDanger ? tr("danger, %1").arg(age) : age;
}

void LiveFigure::show(const Shown& shown) {
    if (shown == m_shown) {
        return;
    }
    m_shown = shown;
    setAccessibleName(shown.figure.isEmpty()
                          ? tr("%1: no reading yet").arg(shown.name)
                          : tr("%1: %2 %3, %4").arg(shown.name, shown.figure, shown.unit, caption()));
    updateGeometry();
    update();
}

QSize LiveFigure::sizeHint() const {
    const QFontMetrics big(look::font(look::TypeRole::BigFigure));
    const QFontMetrics body(look::font(look::TypeRole::Body));
    const QFontMetrics small(look::font(look::TypeRole::Small));
    // As wide as any pressure, so that what stands beside it stands still.
    const int figure = std::max(big.horizontalAdvance(QStringLiteral("\u2212000.00")),
                                big.horizontalAdvance(m_shown.figure));
    const int unit = body.horizontalAdvance(m_shown.unit + QStringLiteral("mm"));
    const int below = std::max(small.horizontalAdvance(m_shown.name), small.horizontalAdvance(caption())) +
                      small.height() + kFigurePad;
    return {std::max(figure + kFigurePad + unit, below) + 2 * kFigurePad,
            big.height() + 2 * small.height() + 2 * kFigurePad};
}

void LiveFigure::paintEvent(QPaintEvent*) {
    using look::Role;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const auto scheme = shell::currentScheme();
    const QFont bigFont = look::font(look::TypeRole::BigFigure);
    const QFontMetrics big(bigFont);
    const QFontMetrics small(look::font(look::TypeRole::Small));
    painter.setFont(look::font(look::TypeRole::Small));
    painter.setPen(look::colour(Role::SoftInk, scheme));
    painter.drawText(0, small.ascent(), small.elidedText(m_shown.name, Qt::ElideRight, width()));
    const int baseline = small.height() + kFigurePad / 2 + big.ascent();
    const bool isFaint = m_shown.isStale || m_shown.figure.isEmpty();
    const QString figure = m_shown.figure.isEmpty() ? QStringLiteral("\u2013") : m_shown.figure;
    painter.setFont(bigFont);
    painter.setPen(look::colour(m_shown.isDanger ? Role::Fail : isFaint ? Role::SoftInk : Role::Ink, scheme));
    painter.drawText(0, baseline, figure);
    const int end = big.horizontalAdvance(figure);
    if (m_shown.isStale) {
        // Struck through: what stands there is not what the gauge shows now.
        QPen pen(look::colour(Role::LookAgain, scheme));
        pen.setWidth(3);
        painter.setPen(pen);
        const int middle = baseline - big.strikeOutPos();
        painter.drawLine(0, middle, end, middle);
    }
    painter.setFont(look::font(look::TypeRole::Body));
    painter.setPen(look::colour(Role::SoftInk, scheme));
    painter.drawText(end + kFigurePad, baseline, m_shown.unit);
    const int top = baseline + big.descent();
    int left = 0;
    if (m_shown.isStale || m_shown.isDanger) {
        look::drawOutcome(painter, QRectF(0, top, small.height(), small.height()),
                          m_shown.isDanger ? rulebook::Outcome::Fail : rulebook::Outcome::LookAgain, scheme);
        left = small.height() + kFigurePad / 2;
    }
    painter.setFont(look::font(look::TypeRole::Small));
    painter.setPen(look::colour(m_shown.isDanger  ? Role::Fail
                                : m_shown.isStale ? Role::LookAgain
                                                  : Role::SoftInk,
                                scheme));
    painter.drawText(left, top + small.ascent(), caption());
}

}  // namespace hearth::ui::gauge
