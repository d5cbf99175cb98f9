// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/plot.h"

#include "ui/paper/plot_scale.h"

#include <QLineF>

#include <algorithm>
#include <array>
#include <utility>

namespace hearth::ui::paper {

namespace {

// Millimetres.
constexpr double kAxisLine = 0.2;
constexpr double kGridLine = 0.1;
constexpr double kSeriesLine = 0.35;
constexpr double kLimitLine = 0.3;
constexpr double kBarLine = 0.22;
constexpr double kBarEnd = 0.8;        // half of a bar's end
constexpr double kUprightHalf = 0.34;  // half of a bar chart's bar, of the way from one x to the next
constexpr double kMarkSize = 1.7;
constexpr double kLabelGap = 1.1;
constexpr double kTickLength = 0.9;
constexpr double kRightMargin = 1.5;
constexpr double kSample = 6;
constexpr double kSampleGap = 1.6;
constexpr double kLeastYStep = 5.2;
constexpr double kLeastXStep = 13;
constexpr double kSmallGap = 0.6;

constexpr std::array kSeriesRoles{look::Role::Ink, look::Role::Key, look::Role::NoVerdict, look::Role::Pass};

Mark markOf(record::PlotShape shape) {
    switch (shape) {
        case record::PlotShape::Ring:
            return Mark::Ring;
        case record::PlotShape::Square:
            return Mark::Square;
        case record::PlotShape::Diamond:
            return Mark::Diamond;
        case record::PlotShape::Triangle:
            return Mark::Triangle;
        case record::PlotShape::Disc:
        case record::PlotShape::Bar:
        case record::PlotShape::OpenBar:
            break;
    }
    return Mark::Disc;
}

bool isUpright(record::PlotShape shape) {
    return shape == record::PlotShape::Bar || shape == record::PlotShape::OpenBar;
}

/// A bar of a bar chart: filled, or a frame that tells it from one even in grey.
Item upright(const QRectF& box, record::PlotShape shape, look::Role role) {
    if (shape == record::PlotShape::OpenBar) {
        return FrameItem{box, kBarLine, role};
    }
    return RuleItem{box.topLeft(), box.width(), box.height(), role};
}

/// Two ends joined.
LineItem line(QPointF from, QPointF to, double thickness, look::Role role, Stroke stroke = Stroke::Solid) {
    return {{from, to}, thickness, role, stroke};
}

look::Role limitRole(const record::PlotLimit& limit) {
    return limit.isHard ? look::Role::Fail : look::Role::SoftInk;
}

Stroke limitStroke(const record::PlotLimit& limit) {
    return limit.isHard ? Stroke::Dashed : Stroke::Dotted;
}

/// One plot in the making, from its top down.
class PlotSetter {
  public:
    PlotSetter(const record::Plot& plot, const TypeSetter& type, double width, double height)
        : m_plot(plot),
          m_type(type),
          m_width(width),
          m_y(yScale(plot, std::max(2, static_cast<int>(height / kLeastYStep)))),
          m_height(height) {}

    SetPlot set();

  private:
    void addHead();
    void addArea();
    void addYAxis();
    void addXAxis();
    void addBandsAndLimits();
    void addStretches();
    void addNumber(double x);
    void addMarks();
    void addSeries(std::size_t which);
    void addUprights(const record::PlotSeries& series, look::Role role);
    void addBar(const QPointF& at, const record::PlotPoint& point, look::Role role);
    [[nodiscard]] std::vector<QRectF> takenByOthers() const;
    [[nodiscard]] bool isCrossed(const QRectF& box) const;
    void addPointLabel(const record::PlotPoint& point, std::vector<QRectF>& taken);
    void addPointLabels();
    void addKey();
    void addKeyLine(const std::string& name, std::vector<Item> sample);

    [[nodiscard]] double xOf(const quantity::Decimal& value) const {
        return m_area.left() + m_x.share(value) * m_area.width();
    }
    [[nodiscard]] double yOf(double value) const {
        return m_area.bottom() - m_y.share(value) * m_area.height();
    }
    [[nodiscard]] double yOf(const quantity::Decimal& value) const { return yOf(value.toDouble()); }
    [[nodiscard]] QPointF placeOf(const record::PlotPoint& point) const {
        return {xOf(point.x), yOf(*point.y)};
    }
    /// Sets lines below each other; gives where they end.
    double put(std::vector<TextItem> lines, const TextStyle& style, QPointF at) {
        for (TextItem& one : lines) {
            const double height = one.height > 0 ? one.height : style.lineHeight();
            m_set.items.push_back(moved(std::move(one), at));
            at.ry() += height;
        }
        return at.y();
    }

    const record::Plot& m_plot;
    const TypeSetter& m_type;
    double m_width;
    Scale m_y;
    Scale m_x;
    double m_height;
    QRectF m_area;
    double m_bottom = 0;  // of what has been set
    int m_number = 0;     // of stretches and marks
    SetPlot m_set;
};

void PlotSetter::addHead() {
    const auto title = m_type.set(settable(m_plot.title), styles::kHead, m_width);
    m_bottom = put(title, styles::kHead, {0, 0});
    const auto unit = m_type.set(settable(m_plot.y.title), styles::kCaption, m_width);
    m_bottom = put(unit, styles::kCaption, {0, m_bottom}) + kSmallGap;
}

void PlotSetter::addArea() {
    double gutter = 0;
    for (const ScaleTick& tick : m_y.ticks) {
        gutter = std::max(gutter, m_type.widthOf(settable(tick.text), styles::kCaption));
    }
    // Half of the topmost figure stands above the area, and the numbers of what happened.
    const double lines = m_plot.marks.empty() && m_plot.stretches.empty() ? 0.5 : 1.0;
    const double top = m_bottom + lines * styles::kCaption.lineHeight();
    const double left = gutter + kTickLength + kSmallGap;
    m_area = QRectF(left, top, std::max(1.0, m_width - left - kRightMargin), m_height);
    m_x = xScale(m_plot, std::max(2, static_cast<int>(m_area.width() / kLeastXStep)));
    m_bottom = m_area.bottom();
}

void PlotSetter::addYAxis() {
    for (const ScaleTick& tick : m_y.ticks) {
        const double y = yOf(tick.at);
        m_set.items.emplace_back(
            RuleItem{{m_area.left(), y - kGridLine / 2}, m_area.width(), kGridLine, look::Role::Line});
        const double width = m_area.left() - kTickLength - kSmallGap + 0.02;
        for (TextItem& figure : m_type.set(settable(tick.text), styles::kCaption, width)) {
            alignRight(figure, width);
            m_set.items.push_back(moved(std::move(figure), {0, y - styles::kCaption.lineHeight() / 2}));
        }
    }
    m_set.items.emplace_back(line(m_area.topLeft(), m_area.bottomLeft(), kAxisLine, look::Role::SoftInk));
}

/// Figures below their ticks, each as wide as there is room; where two would meet, the later one is left out.
void PlotSetter::addXAxis() {
    m_set.items.emplace_back(line(m_area.bottomLeft(), m_area.bottomRight(), kAxisLine, look::Role::SoftInk));
    // Below the lower half of the y axis's last figure, which a figure at the left end would touch.
    const double top = m_bottom + styles::kCaption.lineHeight() / 2 + kSmallGap;
    double reached = 0;
    double bottom = top + styles::kCaption.lineHeight();
    for (std::size_t i = 0; i < m_x.ticks.size(); ++i) {
        const double x = m_area.left() + m_x.share(m_x.ticks[i].at) * m_area.width();
        m_set.items.emplace_back(
            line({x, m_area.bottom()}, {x, m_area.bottom() + kTickLength}, kAxisLine, look::Role::SoftInk));
        const auto count = static_cast<double>(m_x.ticks.size());
        const QString text = settable(m_x.ticks[i].text);
        const double room = std::min(2 * std::min(x, m_width - x), m_area.width() / count);
        const double wanted = m_type.widthOf(text, styles::kCaption) + 0.1;
        const double widest = m_plot.x.ticks.empty() ? wanted : std::max(room, 1.0);
        const double width = std::min(wanted, widest);
        const double left = std::clamp(x - width / 2, 0.0, std::max(0.0, m_width - width));
        if (i > 0 && left < reached + kSmallGap) {
            continue;
        }
        auto lines = m_type.set(text, styles::kCaption, width);
        for (TextItem& one : lines) {
            centre(one, width);
        }
        bottom = std::max(bottom, put(std::move(lines), styles::kCaption, {left, top}));
        reached = left + width;
    }
    m_bottom = bottom;
    auto title = m_type.set(settable(m_plot.x.title), styles::kCaption, m_width - m_area.left());
    for (TextItem& one : title) {
        centre(one, m_area.width());
    }
    m_bottom = put(std::move(title), styles::kCaption, {m_area.left(), m_bottom});
}

void PlotSetter::addBandsAndLimits() {
    for (const record::PlotBand& band : m_plot.bands) {
        const double top = yOf(band.most);
        const double bottom = yOf(band.least);
        m_set.items.emplace_back(
            RuleItem{{m_area.left(), top}, m_area.width(), bottom - top, look::Role::KeyGround});
        for (const double y : {top, bottom}) {
            m_set.items.emplace_back(
                line({m_area.left(), y}, {m_area.right(), y}, kBarLine, look::Role::Key));
        }
    }
    for (const record::PlotLimit& limit : m_plot.limits) {
        const double y = yOf(limit.y);
        m_set.items.emplace_back(
            line({m_area.left(), y}, {m_area.right(), y}, kLimitLine, limitRole(limit), limitStroke(limit)));
    }
}

/// The next number above the area, which the key explains.
void PlotSetter::addNumber(double x) {
    const QString text = QString::number(++m_number);
    const double width = m_type.widthOf(text, styles::kCaption) + 0.1;
    put(m_type.set(text, styles::kCaption, width), styles::kCaption,
        {std::clamp(x - width / 2, m_area.left(), m_area.right() - width),
         m_area.top() - styles::kCaption.lineHeight()});
}

void PlotSetter::addStretches() {
    for (const record::PlotStretch& stretch : m_plot.stretches) {
        const double from = xOf(stretch.from);
        const double to = xOf(stretch.to);
        m_set.items.emplace_back(
            RuleItem{{from, m_area.top()}, to - from, m_area.height(), look::Role::KeyGround});
        for (const double x : {from, to}) {
            m_set.items.emplace_back(
                line({x, m_area.top()}, {x, m_area.bottom()}, kBarLine, look::Role::Key));
        }
    }
}

void PlotSetter::addMarks() {
    for (const record::PlotStretch& stretch : m_plot.stretches) {
        addNumber((xOf(stretch.from) + xOf(stretch.to)) / 2);
    }
    for (const record::PlotMark& mark : m_plot.marks) {
        const double x = xOf(mark.x);
        m_set.items.emplace_back(
            line({x, m_area.top()}, {x, m_area.bottom()}, kBarLine, look::Role::SoftInk, Stroke::Dotted));
        addNumber(x);
    }
}

void PlotSetter::addBar(const QPointF& at, const record::PlotPoint& point, look::Role role) {
    if (!point.spread) {
        return;
    }
    const double half = point.spread->toDouble() / (m_y.most - m_y.least) * m_area.height();
    m_set.items.emplace_back(line(at - QPointF(0, half), at + QPointF(0, half), kBarLine, role));
    for (const double y : {at.y() - half, at.y() + half}) {
        m_set.items.emplace_back(line({at.x() - kBarEnd, y}, {at.x() + kBarEnd, y}, kBarLine, role));
    }
}

void PlotSetter::addUprights(const record::PlotSeries& series, look::Role role) {
    const double half = kUprightHalf * m_area.width() / (m_x.most - m_x.least);
    const double foot = yOf(0.0);
    for (const record::PlotPoint& point : series.points) {
        if (point.y) {
            const QPointF top = placeOf(point);
            m_set.items.push_back(upright({QPointF(top.x() - half, top.y()), QPointF(top.x() + half, foot)},
                                          series.shape, role));
        }
    }
}

void PlotSetter::addSeries(std::size_t which) {
    const record::PlotSeries& series = m_plot.series[which];
    const look::Role role = kSeriesRoles[which % kSeriesRoles.size()];
    if (isUpright(series.shape)) {
        addUprights(series, role);
        return;
    }
    LineItem joined{{}, kSeriesLine, role};
    const auto close = [&] {
        if (series.isJoined && joined.points.size() > 1) {
            m_set.items.emplace_back(joined);
        }
        joined.points.clear();
    };
    for (const record::PlotPoint& point : series.points) {
        if (point.y) {
            joined.points.append(placeOf(point));
        } else {
            close();
        }
    }
    close();
    for (const record::PlotPoint& point : series.points) {
        if (point.y) {
            const QPointF at = placeOf(point);
            addBar(at, point, role);
            if (series.hasMarks) {
                m_set.items.emplace_back(MarkItem{at, kMarkSize, markOf(series.shape), role});
            }
        }
    }
}

/// What a figure beside a point must keep clear of.
std::vector<QRectF> PlotSetter::takenByOthers() const {
    std::vector<QRectF> taken;
    for (const Item& item : m_set.items) {
        if (const auto* text = std::get_if<TextItem>(&item)) {
            taken.push_back(text->box);
        } else if (const auto* mark = std::get_if<MarkItem>(&item)) {
            taken.emplace_back(mark->centre.x() - mark->size / 2, mark->centre.y() - mark->size / 2,
                               mark->size, mark->size);
        }
    }
    for (const record::PlotLimit& limit : m_plot.limits) {
        taken.emplace_back(m_area.left(), yOf(limit.y) - kLimitLine, m_area.width(), 2 * kLimitLine);
    }
    return taken;
}

/// Whether a joined line runs through the box.
bool PlotSetter::isCrossed(const QRectF& box) const {
    constexpr int kPieces = 24;  // of a line between two points: finer than a letter
    return std::any_of(m_set.items.begin(), m_set.items.end(), [&](const Item& item) {
        const auto* joined = std::get_if<LineItem>(&item);
        for (qsizetype i = 0; joined != nullptr && i + 1 < joined->points.size(); ++i) {
            const QLineF piece(joined->points[i], joined->points[i + 1]);
            for (int k = 0; k <= kPieces; ++k) {
                if (box.contains(piece.pointAt(k / double(kPieces)))) {
                    return true;
                }
            }
        }
        return false;
    });
}

void PlotSetter::addPointLabel(const record::PlotPoint& point, std::vector<QRectF>& taken) {
    const QString text = settable(point.label);
    const double width = m_type.widthOf(text, styles::kCaption) + 0.1;
    const double height = styles::kCaption.lineHeight();
    const QPointF at = placeOf(point);
    const double half =
        point.spread ? point.spread->toDouble() / (m_y.most - m_y.least) * m_area.height() : 0;
    const double away = std::max(kLabelGap, half + kSmallGap);
    const std::array<QPointF, 4> corners{QPointF(at.x() - width / 2, at.y() - away - height),
                                         QPointF(at.x() - width / 2, at.y() + away),
                                         QPointF(at.x() + kLabelGap, at.y() - height / 2),
                                         QPointF(at.x() - kLabelGap - width, at.y() - height / 2)};
    for (const QPointF& corner : corners) {
        const QRectF box(corner, QSizeF(width, height));
        const bool isFree = m_area.contains(box) && !isCrossed(box) &&
                            std::none_of(taken.begin(), taken.end(),
                                         [&](const QRectF& other) { return other.intersects(box); });
        if (isFree) {
            put(m_type.set(text, styles::kCaption, width), styles::kCaption, corner);
            taken.push_back(box);
            return;
        }
    }
}

/// Each point's own figure beside it, where nothing else stands; what finds no room is told elsewhere.
void PlotSetter::addPointLabels() {
    std::vector<QRectF> taken = takenByOthers();
    for (const record::PlotSeries& series : m_plot.series) {
        for (const record::PlotPoint& point : series.points) {
            if (point.y && !point.label.empty()) {
                addPointLabel(point, taken);
            }
        }
    }
}

void PlotSetter::addKeyLine(const std::string& name, std::vector<Item> sample) {
    const double middle = m_bottom + styles::kCaption.lineHeight() / 2;
    for (Item& item : sample) {
        m_set.items.push_back(moved(std::move(item), {0, middle}));
    }
    const double x = kSample + kSampleGap;
    m_bottom =
        put(m_type.set(settable(name), styles::kCaption, m_width - x), styles::kCaption, {x, m_bottom});
}

void PlotSetter::addKey() {
    m_bottom += kSmallGap;
    for (std::size_t i = 0; i < m_plot.series.size(); ++i) {
        const record::PlotSeries& series = m_plot.series[i];
        if (series.name.empty()) {
            continue;
        }
        const look::Role role = kSeriesRoles[i % kSeriesRoles.size()];
        std::vector<Item> sample;
        if (isUpright(series.shape)) {
            sample.push_back(upright({kSample / 2 - 0.9, -0.9, 1.8, 1.8}, series.shape, role));
        } else if (series.isJoined) {
            sample.emplace_back(line({0, 0}, {kSample, 0}, kSeriesLine, role));
        }
        if (series.hasMarks && !isUpright(series.shape)) {
            sample.emplace_back(MarkItem{{kSample / 2, 0}, kMarkSize, markOf(series.shape), role});
        }
        addKeyLine(series.name, std::move(sample));
    }
    for (const record::PlotLimit& limit : m_plot.limits) {
        addKeyLine(limit.name,
                   {line({0, 0}, {kSample, 0}, kLimitLine, limitRole(limit), limitStroke(limit))});
    }
    for (const record::PlotBand& band : m_plot.bands) {
        addKeyLine(band.name, {RuleItem{{0, -0.9}, kSample, 1.8, look::Role::KeyGround},
                               line({0, -0.9}, {kSample, -0.9}, kBarLine, look::Role::Key),
                               line({0, 0.9}, {kSample, 0.9}, kBarLine, look::Role::Key)});
    }
    int number = 0;
    const auto addNumbered = [&](const std::string& name) {
        const QString text = QString::number(++number);
        std::vector<Item> sample;
        for (TextItem& one : m_type.set(text, styles::kCaption, kSample)) {
            sample.push_back(moved(std::move(one), {kSample / 2, -styles::kCaption.lineHeight() / 2}));
        }
        addKeyLine(name, std::move(sample));
    };
    for (const record::PlotStretch& stretch : m_plot.stretches) {
        addNumbered(stretch.name);
    }
    for (const record::PlotMark& mark : m_plot.marks) {
        addNumbered(mark.name);
    }
}

SetPlot PlotSetter::set() {
    addHead();
    addArea();
    addStretches();
    addBandsAndLimits();
    addYAxis();
    addXAxis();
    addMarks();
    for (std::size_t i = 0; i < m_plot.series.size(); ++i) {
        addSeries(i);
    }
    addPointLabels();
    addKey();
    m_set.height = m_bottom;
    m_set.area = m_area;
    return std::move(m_set);
}

}  // namespace

SetPlot setPlot(const record::Plot& plot, const TypeSetter& type, double width, double height) {
    return PlotSetter(plot, type, width, height).set();
}

}  // namespace hearth::ui::paper
