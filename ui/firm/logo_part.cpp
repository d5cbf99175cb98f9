// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/logo_part.h"

#include "core/exchange/picture.h"
#include "core/store/firm_logo.h"
#include "ui/paper/logo.h"

#include <QBuffer>
#include <QFile>
#include <QFileInfo>
#include <QImageReader>

namespace hearth::ui::firm {

namespace {

constexpr qint64 kLogoMegabyte = 1024 * 1024;
constexpr qint64 kMostLogoMegabytes = 5;
// Finer than 300 dots to the inch on paper, and quick to read with each record.
constexpr QSize kMostLogoPixels(1200, 600);
constexpr int kShownDotsPerInch = 120;
constexpr double kLogoMmPerInch = 25.4;

/// A picture that is finer than paper shows is kept smaller, as PNG.
Result<store::NewAttachment> logoFrom(const QByteArray& bytes, const std::string& name) {
    const std::string_view view(bytes.constData(), static_cast<std::size_t>(bytes.size()));
    const auto type = exchange::mediaTypeOf(view);
    if (type != "image/png" && type != "image/jpeg") {
        return fail(ErrorCode::LogoUnknown, {name});
    }
    const auto read = exchange::readPicture(view, exchange::PicturePlace::Remove, name);
    if (!read) {
        return tl::unexpected<Error>(read.error());
    }
    QByteArray kept = QByteArray::fromStdString(read->bytes);
    QBuffer buffer(&kept);
    QImageReader reader(&buffer);
    reader.setAutoTransform(true);
    const QImage image = reader.read();
    if (image.isNull()) {
        return fail(ErrorCode::AttachmentDamaged, {name});
    }
    store::NewAttachment logo;
    logo.name = name;
    logo.mediaType = read->mediaType;
    logo.bytes = read->bytes;
    if (image.width() > kMostLogoPixels.width() || image.height() > kMostLogoPixels.height()) {
        QByteArray smaller;
        QBuffer out(&smaller);
        out.open(QIODevice::WriteOnly);
        image.scaled(kMostLogoPixels, Qt::KeepAspectRatio, Qt::SmoothTransformation).save(&out, "PNG");
        logo.mediaType = "image/png";
        logo.bytes = smaller.toStdString();
    }
    return logo;
}

}  // namespace

LogoPart::LogoPart(const shell::Context& context, QWidget* parent)
    : QWidget(parent),
      m_context(context),
      m_picture(new QLabel(this)),
      m_state(shell::bodyText({}, this)),
      m_choose(new shell::KeyButton(tr("Choose a logo"), shell::ButtonKind::Plain, this)),
      m_remove(new shell::KeyButton(tr("Take the logo away"), shell::ButtonKind::Quiet, this)) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    lines->addWidget(shell::headingText(tr("Logo"), this));
    lines->addWidget(shell::softText(
        tr("At the head of the records to come; those that were issued keep the logo that they had. A PNG "
           "or JPEG file of at most %1 MB; on paper it is at most %2 mm wide and %3 mm high.")
            .arg(kMostLogoMegabytes)
            .arg(paper::HeadLogo::kMostWide)
            .arg(paper::HeadLogo::kMostHigh),
        this));
    m_picture->setObjectName(QStringLiteral("logoPicture"));
    lines->addWidget(m_picture, 0, Qt::AlignLeft);
    m_state->setObjectName(QStringLiteral("logoState"));
    lines->addWidget(m_state);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(look::kGap);
    m_choose->setObjectName(QStringLiteral("chooseLogoButton"));
    m_remove->setObjectName(QStringLiteral("removeLogoButton"));
    buttons->addWidget(m_choose);
    buttons->addWidget(m_remove);
    buttons->addStretch(1);
    lines->addLayout(buttons);
    connect(m_choose, &QPushButton::clicked, this, &LogoPart::choose);
    connect(m_remove, &QPushButton::clicked, this, &LogoPart::takeAway);
}

void LogoPart::refresh() {
    const auto firm = m_context.store.firm();
    const auto logo = firm ? store::logoOf(m_context.store, *firm)
                           : Result<std::optional<record::Logo>>(tl::unexpected<Error>(firm.error()));
    const bool has = logo && logo->has_value();
    m_picture->setVisible(has);
    if (has) {
        record::Document document;
        document.logo = **logo;
        const paper::HeadLogo shown = paper::headLogo(document);
        const QSize pixels = (shown.size * kShownDotsPerInch / kLogoMmPerInch).toSize();
        m_picture->setPixmap(
            QPixmap::fromImage(shown.image.scaled(pixels, Qt::IgnoreAspectRatio, Qt::SmoothTransformation)));
        m_picture->setAccessibleName(tr("The firm's logo"));
    }
    m_state->setText(!logo ? m_context.words.error(logo.error())
                     : has ? QString()
                           : tr("No logo: records begin with the firm's name."));
    m_state->setVisible(!has);
    m_choose->setWords(has ? tr("Choose another logo") : tr("Choose a logo"));
    m_choose->setEnabled(!m_context.store.isReadOnly());
    m_remove->setVisible(firm && firm->logo.has_value());
    m_remove->setEnabled(!m_context.store.isReadOnly());
}

void LogoPart::choose() {
    const QStringList files =
        m_context.dialogs.openFiles(this, tr("Choose a logo"), tr("Pictures (*.png *.jpg *.jpeg)"));
    if (files.isEmpty()) {
        return;
    }
    if (const auto kept = keep(files.first()); !kept) {
        m_context.dialogs.tell(this, tr("The logo was not kept"), m_context.words.error(kept.error()));
        return;
    }
    refresh();
    m_context.navigator.say(tr("The logo stands on the records to come. Ctrl+Z takes it back."));
}

Result<void> LogoPart::keep(const QString& path) {
    QFile file(path);
    const std::string name = QFileInfo(path).fileName().toStdString();
    if (file.size() > kMostLogoMegabytes * kLogoMegabyte) {
        const qint64 megabytes = (file.size() + kLogoMegabyte - 1) / kLogoMegabyte;
        return fail(ErrorCode::AttachmentTooLarge,
                    {name, std::to_string(megabytes), std::to_string(kMostLogoMegabytes)});
    }
    if (!file.open(QIODevice::ReadOnly)) {
        return fail(ErrorCode::FileUnreadable, {path.toStdString(), file.errorString().toStdString()});
    }
    return logoFrom(file.readAll(), name).and_then([this](const store::NewAttachment& logo) {
        return m_context.store.attachLogo(logo).map([](reg::AttachmentId) {});
    });
}

void LogoPart::takeAway() {
    auto firm = m_context.store.firm();
    Result<void> done = firm ? Result<void>() : Result<void>(tl::unexpected<Error>(firm.error()));
    if (firm) {
        firm->logo.reset();
        done = m_context.store.saveFirm(*firm);
    }
    if (!done) {
        m_context.dialogs.tell(this, tr("It was not taken away"), m_context.words.error(done.error()));
        return;
    }
    m_choose->setFocus(Qt::OtherFocusReason);
    refresh();
    m_context.navigator.say(tr("Taken away. Ctrl+Z brings it back."));
}

}  // namespace hearth::ui::firm
