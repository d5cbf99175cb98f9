// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/pipe_sketch.h"

#include "core/pipework/tube.h"
#include "ui/look/look.h"
#include "ui/shell/kit.h"
#include "ui/visit/joined.h"
#include "ui/visit/volume_text.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>

namespace hearth::ui::visit {

namespace {

constexpr double kMeterWidth = 84;
constexpr double kRowHeight = 52;
constexpr double kEndRadius = 4;

QString lengthText(const quantity::Typed& length, const words::Words& words) {
    if (length.text.empty()) {
        return {};
    }
    const auto value = length.value();
    return value ? words.figure({*value, length.unit}) : QString::fromStdString(length.text);
}

}  // namespace

PipeSketch::PipeSketch(const words::Words& words, QWidget* parent) : QWidget(parent), m_words(words) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void PipeSketch::draw(const reg::VisitFile& file, const pipework::VolumeReport& volume) {
    m_tree = drawTree(file.pipes);
    m_lines.clear();
    for (std::size_t index = 0; index < file.pipes.size(); ++index) {
        const reg::PipeSection& pipe = file.pipes[index];
        const pipework::Tube* tube = pipework::tubeByCode(pipe.tubeCode);
        const QString name = tube != nullptr ? m_words.tube(*tube) : QString::fromStdString(pipe.tubeCode);
        const bool hasVolume = index < volume.sections.size() && volume.sections[index].volume;
        Line line;
        line.above = joined({name, lengthText(pipe.length, m_words)});
        line.below = joined({QString::fromStdString(pipe.leadsTo),
                             hasVolume ? volumeText(*volume.sections[index].volume, m_words) : QString()});
        line.thickness = tube != nullptr ? std::clamp(tube->nominal / 7.0, 2.0, 7.0) : 2.0;
        line.underTest = pipe.underTest;
        m_lines.push_back(line);
    }
    const pipework::Meter* meter = pipework::meterByCode(file.installation.meterCode);
    m_meter = meter != nullptr ? m_words.meter(*meter) : tr("meter not said");
    setVisible(!m_lines.empty());
    updateGeometry();
    update();
}

QSize PipeSketch::sizeHint() const {
    return {320, static_cast<int>(kRowHeight * std::max(1, m_tree.rows)) + look::kGap};
}

double PipeSketch::columnLeft(int column) const {
    const double room = width() - kMeterWidth - look::kGap;
    return kMeterWidth + room * column / std::max(1, m_tree.columns);
}

double PipeSketch::rowMiddle(int row) {
    return kRowHeight * (row + 0.5);
}

void PipeSketch::paintSection(QPainter& painter, const DrawnSection& section) const {
    const auto scheme = shell::currentScheme();
    const Line& line = m_lines[section.index];
    const double left = columnLeft(section.column);
    const double right = columnLeft(section.column + 1);
    const double y = rowMiddle(section.row);
    const QColor ink = look::colour(line.underTest ? look::Role::Key : look::Role::FieldEdge, scheme);
    QPen pen(ink, line.thickness, line.underTest ? Qt::SolidLine : Qt::DotLine, Qt::FlatCap);
    painter.setPen(pen);
    if (section.row != section.fromRow) {
        painter.drawLine(QPointF(left + line.thickness / 2, rowMiddle(section.fromRow)),
                         QPointF(left + line.thickness / 2, y));
    }
    painter.drawLine(QPointF(left, y), QPointF(right, y));
    if (section.isEnd) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(ink);
        painter.drawEllipse(QPointF(right - kEndRadius, y), kEndRadius + 1, kEndRadius + 1);
    }
    const QRectF box(left + look::kGap + line.thickness, y - kRowHeight / 2,
                     right - left - 1.5 * look::kGap - line.thickness, kRowHeight);
    const auto put = [&](const QString& text, look::TypeRole type, look::Role role, int alignment) {
        painter.setFont(look::font(type));
        painter.setPen(look::colour(role, scheme));
        const double away = line.thickness / 2 + 3;
        const QRectF half = alignment & Qt::AlignBottom
                                ? QRectF(box.left(), box.top(), box.width(), kRowHeight / 2 - away)
                                : QRectF(box.left(), y + away, box.width(), kRowHeight / 2 - away);
        painter.drawText(half, alignment,
                         QFontMetricsF(painter.font()).elidedText(text, Qt::ElideRight, half.width()));
    };
    put(line.above, look::TypeRole::Body, line.underTest ? look::Role::Ink : look::Role::SoftInk,
        Qt::AlignLeft | Qt::AlignBottom);
    put(line.below, look::TypeRole::Small, look::Role::SoftInk, Qt::AlignLeft | Qt::AlignTop);
}

void PipeSketch::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const auto scheme = shell::currentScheme();
    for (const DrawnSection& section : m_tree.sections) {
        paintSection(painter, section);
    }
    const QRectF box(0.5, rowMiddle(0) - 18, kMeterWidth - 1, 36);
    painter.setPen(QPen(look::colour(look::Role::Key, scheme), 1));
    painter.setBrush(look::colour(look::Role::KeyGround, scheme));
    painter.drawRoundedRect(box, 3, 3);
    painter.setFont(look::font(look::TypeRole::Small));
    painter.setPen(look::colour(look::Role::Ink, scheme));
    painter.drawText(box.adjusted(4, 2, -4, -2), Qt::AlignCenter | Qt::TextWordWrap, m_meter);
}

}  // namespace hearth::ui::visit
