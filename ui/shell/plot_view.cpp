// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/plot_view.h"

#include "ui/look/look.h"
#include "ui/paper/layout.h"
#include "ui/paper/plot.h"
#include "ui/shell/kit.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace hearth::ui::shell {

namespace {

// Millimetres of the plot's own; a screen shows them so large that its captions are the window's small type.
constexpr double kLeastPlotWidth = 58;
constexpr double kMostPlotWidth = 110;
constexpr double kPlotHeight = 24;
constexpr double kBetween = 6;

/// Pixels for a millimetre.
double plotScale() {
    return QFontMetricsF(look::font(look::TypeRole::Small)).height() / paper::styles::kCaption.lineHeight();
}

QString told(const record::Plots& plots) {
    QStringList lines;
    for (const auto& plot : plots.plots) {
        lines << QString::fromStdString(plot.title);
        const auto addNames = [&](const auto& parts) {
            for (const auto& part : parts) {
                lines << QString::fromStdString(part.name);
            }
        };
        addNames(plot.series);
        addNames(plot.limits);
        addNames(plot.bands);
        addNames(plot.stretches);
        addNames(plot.marks);
    }
    lines.removeAll(QString());
    return lines.join(QStringLiteral("; "));
}

struct SetPlots {
    paper::Page page;
    double height = 0;
};

/// `width` in millimetres, as all of it.
SetPlots plotsFor(const record::Plots& plots, double width) {
    const paper::TypeSetter type;
    SetPlots set;
    const double fit = std::floor((width + kBetween) / (kLeastPlotWidth + kBetween));
    const auto beside = static_cast<std::size_t>(
        std::clamp(fit, 1.0, std::max(1.0, static_cast<double>(plots.plots.size()))));
    const double each = std::min(
        kMostPlotWidth, (width - kBetween * static_cast<double>(beside - 1)) / static_cast<double>(beside));
    double top = 0;
    for (std::size_t from = 0; from < plots.plots.size(); from += beside) {
        double height = 0;
        for (std::size_t i = from; i < std::min(from + beside, plots.plots.size()); ++i) {
            auto one = paper::setPlot(plots.plots[i], type, each, kPlotHeight);
            const QPointF corner(static_cast<double>(i - from) * (each + kBetween), top);
            for (paper::Item& item : one.items) {
                set.page.items.push_back(paper::moved(std::move(item), corner));
            }
            height = std::max(height, one.height);
        }
        top += height + kBetween / 2;
    }
    set.height = top;
    return set;
}

}  // namespace

PlotView::PlotView(QWidget* parent) : QWidget(parent) {
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    setObjectName(QStringLiteral("plots"));
    hide();
}

void PlotView::show(const record::Plots& plots) {
    if (m_plots == plots) {
        return;
    }
    m_plots = plots;
    setAccessibleName(told(m_plots));
    setVisible(!m_plots.plots.empty());
    updateGeometry();
    update();
}

int PlotView::heightForWidth(int width) const {
    const double scale = plotScale();
    return m_plots.plots.empty()
               ? 0
               : static_cast<int>(std::ceil(plotsFor(m_plots, width / scale).height * scale));
}

QSize PlotView::sizeHint() const {
    constexpr int kUsual = 480;
    return {kUsual, heightForWidth(kUsual)};
}

void PlotView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const double scale = plotScale();
    painter.scale(scale, scale);
    paper::paintPage(painter, plotsFor(m_plots, width() / scale).page, currentScheme());
}

}  // namespace hearth::ui::shell
