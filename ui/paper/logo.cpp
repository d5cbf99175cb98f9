// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/logo.h"

#include "ui/look/look.h"
#include "ui/paper/page.h"

#include <QBuffer>
#include <QImageReader>
#include <QPainter>

namespace hearth::ui::paper {

namespace {

constexpr double kLogoDotsPerInch = 300;

QImage pictureIn(const std::string& bytes) {
    QByteArray data(bytes.data(), static_cast<qsizetype>(bytes.size()));
    QBuffer buffer(&data);
    QImageReader reader(&buffer);
    reader.setAutoTransform(true);
    return reader.read();
}

QImage onWhite(const QImage& picture) {
    QImage flat(picture.size(), QImage::Format_RGB32);
    flat.fill(look::colour(look::Role::Sheet, look::Scheme::Light));
    QPainter painter(&flat);
    painter.drawImage(0, 0, picture);
    painter.end();
    return flat;
}

}  // namespace

HeadLogo headLogo(const record::Document& document) {
    if (!document.logo || document.logo->bytes.empty()) {
        return {};
    }
    const QImage picture = pictureIn(document.logo->bytes);
    if (picture.isNull()) {
        return {};
    }
    const QSizeF size =
        QSizeF(picture.size()).scaled(HeadLogo::kMostWide, HeadLogo::kMostHigh, Qt::KeepAspectRatio);
    const QSize most = (size * kLogoDotsPerInch / kMmPerInch).toSize().expandedTo({1, 1});
    const bool isFiner = picture.width() > most.width();
    return {
        onWhite(isFiner ? picture.scaled(most, Qt::IgnoreAspectRatio, Qt::SmoothTransformation) : picture),
        size};
}

}  // namespace hearth::ui::paper
