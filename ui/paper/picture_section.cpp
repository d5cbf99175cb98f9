// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/look/look.h"
#include "ui/paper/sections.h"

#include <QBuffer>
#include <QImageReader>
#include <QPainter>

#include <algorithm>
#include <array>

namespace hearth::ui::paper {

namespace {

constexpr double kPicturesGutter = 6;
constexpr double kMostPictureHeight = 60;
/// What an eye at arm's length tells apart; more would only make the record large.
constexpr double kPictureDotsPerInch = 150;

/// The picture no finer than it is printed, upright, without transparency; null for what can't be read.
QImage printable(const std::string& bytes, const QSizeF& most) {
    QByteArray data(bytes.data(), static_cast<qsizetype>(bytes.size()));
    QBuffer buffer(&data);
    QImageReader reader(&buffer);
    reader.setAutoTransform(true);
    const QSize size = reader.size();
    if (!size.isValid() || size.isEmpty()) {
        return {};
    }
    // The size asked for is that before it is turned upright.
    const bool isTurned = reader.transformation() & QImageIOHandler::TransformationRotate90;
    const QSizeF box = (isTurned ? most.transposed() : most) * kPictureDotsPerInch / kMmPerInch;
    const QSize wanted = QSizeF(size).scaled(box, Qt::KeepAspectRatio).toSize().expandedTo({1, 1});
    if (wanted.width() < size.width()) {
        reader.setScaledSize(wanted);
    }
    const QImage read = reader.read();
    if (read.isNull()) {
        return {};
    }
    QImage flat(read.size(), QImage::Format_RGB32);
    flat.fill(look::colour(look::Role::Sheet, look::Scheme::Light));
    QPainter painter(&flat);
    painter.drawImage(0, 0, read);
    painter.end();
    return flat;
}

/// One picture with what it is of and its caption, in a column of the page.
Group pictureRow(const record::Pictures& block, std::size_t from, std::size_t to, double width,
                 const TypeSetter& type) {
    Slice images;
    std::vector<Cell> names;
    std::vector<Cell> captions;
    for (std::size_t i = from; i < to; ++i) {
        const record::Picture& one = block.pictures[i];
        const double x = static_cast<double>(i - from) * (width + kPicturesGutter);
        names.push_back({type.set(settable(one.of), styles::kHead, width), x});
        captions.push_back({type.set(settable(one.caption), styles::kCaption, width), x});
        const QSizeF most(width, kMostPictureHeight);
        QImage image = printable(one.bytes, most);
        const QSizeF size = image.isNull() ? most : QSizeF(image.size()).scaled(most, Qt::KeepAspectRatio);
        images.height = std::max(images.height, size.height());
        if (image.isNull()) {
            images.items.emplace_back(FrameItem{QRectF(QPointF(x, 0), size), 0.2, look::Role::Line});
        } else {
            images.items.emplace_back(PictureItem{QRectF(QPointF(x, 0), size), std::move(image), true});
        }
    }
    Group group;
    group.slices = sideBySide(std::move(names), styles::kHead.lineHeight());
    group.slices.push_back(gap(0.6));
    group.slices.push_back(std::move(images));
    group.slices.push_back(gap(0.8));
    append(group.slices, sideBySide(std::move(captions), styles::kCaption.lineHeight()));
    return group;
}

}  // namespace

void addPictures(std::vector<Group>& groups, const record::Pictures& block, const Setting& setting) {
    constexpr std::size_t kBeside = 2;
    if (block.pictures.empty()) {
        return;
    }
    addSectionTitle(groups, block.title, setting);
    const double width = (setting.width - kPicturesGutter) / 2;
    for (std::size_t from = 0; from < block.pictures.size(); from += kBeside) {
        groups.push_back(
            pictureRow(block, from, std::min(from + kBeside, block.pictures.size()), width, setting.type));
        groups.back().spaceBefore = from > 0 || block.title.empty() ? kSectionGap : 0;
    }
}

}  // namespace hearth::ui::paper
