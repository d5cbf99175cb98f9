// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/attachments_part.h"

#include "core/exchange/picture.h"
#include "core/store/record_pictures.h"
#include "ui/shell/line_list.h"

#include <QApplication>
#include <QBuffer>
#include <QCheckBox>
#include <QClipboard>
#include <QDir>
#include <QDragEnterEvent>
#include <QFile>
#include <QFileInfo>
#include <QImageReader>
#include <QLocale>
#include <QMimeData>
#include <QUrl>

namespace hearth::ui::shell {

using words::qstring;

namespace {

constexpr int kThumbnail = 160;
constexpr int kPreviewHigh = 260;

QImage imageOf(const QByteArray& bytes) {
    QBuffer buffer;
    buffer.setData(bytes);
    QImageReader reader(&buffer);
    reader.setAutoTransform(true);  // a telephone says how it was held
    return reader.read();
}

/// Empty for a paper, and for a picture that can't be drawn here.
std::string thumbnailOf(const QByteArray& bytes) {
    const QImage image = imageOf(bytes);
    if (image.isNull()) {
        return {};
    }
    QByteArray small;
    QBuffer buffer(&small);
    buffer.open(QIODevice::WriteOnly);
    image.scaled(kThumbnail, kThumbnail, Qt::KeepAspectRatio, Qt::SmoothTransformation).save(&buffer, "PNG");
    return small.toStdString();
}

Result<QByteArray> bytesOf(const QString& path) {
    QFile file(path);
    const QString name = QFileInfo(path).fileName();
    if (file.size() > static_cast<qint64>(store::Attachments::kMostBytes)) {
        constexpr qint64 kMegabyte = 1024 * 1024;
        return fail(ErrorCode::AttachmentTooLarge,
                    {name.toStdString(), std::to_string(file.size() / kMegabyte),
                     std::to_string(static_cast<qint64>(store::Attachments::kMostBytes) / kMegabyte)});
    }
    if (!file.open(QIODevice::ReadOnly)) {
        return fail(ErrorCode::FileUnreadable, {path.toStdString(), file.errorString().toStdString()});
    }
    return file.readAll();
}

Line lineOf(const reg::Attachment& attachment, const Context& context) {
    Line line;
    line.key = qstring(attachment.id.text());
    line.title = qstring(attachment.name);
    line.detail = qstring(attachment.note);
    line.right = dayOf(context.words, attachment.addedAt);
    line.rightDetail = QLocale().formattedDataSize(attachment.size);
    if (attachment.placeKept) {
        line.rightDetail += AttachmentsPart::tr(" · place kept");
    }
    if (const auto small = context.store.thumbnailOf(attachment.id); small && !small->empty()) {
        line.picture.loadFromData(QByteArray::fromStdString(*small));
    }
    return line;
}

}  // namespace

AttachmentsPart::AttachmentsPart(const Context& context, const QString& nameContext, QWidget* parent)
    : QWidget(parent),
      m_context(context),
      m_list(new LineList(
          nameContext.isEmpty() ? tr("Pictures and papers") : tr("%1: pictures and papers").arg(nameContext),
          tr("No pictures or papers yet."), this)),
      m_preview(new QLabel(this)),
      m_note(input::makeTextEditor(this)),
      m_keepPlace(new QCheckBox(tr("Keep in pictures where they were taken"), this)),
      m_inRecord(new QCheckBox(tr("Show it in this visit's records"), this)),
      m_readOnly(context.store.isReadOnly()) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    m_list->setObjectName(QStringLiteral("attachmentsList"));
    m_list->setGrowing(true);
    m_list->installEventFilter(this);
    lines->addWidget(m_list);
    lines->addWidget(m_preview, 0, Qt::AlignLeft);
    m_note->setLabel(tr("What it shows"), nameContext);
    m_note->setObjectName(QStringLiteral("attachmentNote"));
    lines->addWidget(m_note);
    m_inRecord->setObjectName(QStringLiteral("inRecord"));
    lines->addWidget(m_inRecord);
    makeButtons(lines);
    if (!nameContext.isEmpty()) {
        for (QAbstractButton* button : findChildren<QAbstractButton*>()) {
            const QString own =
                button->accessibleName().isEmpty() ? button->text() : button->accessibleName();
            button->setAccessibleName(nameContext + QStringLiteral(", ") + own);
        }
    }
    setReadOnly(m_readOnly);
    connect(m_inRecord, &QCheckBox::clicked, this, &AttachmentsPart::chooseForRecord);
    connect(m_list, &LineList::moved, this, &AttachmentsPart::showCurrent);
    connect(m_list, &LineList::opened, this, &AttachmentsPart::open);
    keepOnCommit(m_note, m_context.words, [this](const QString& text) -> Result<void> {
        const auto* attachment = current();
        if (attachment == nullptr) {
            return {};
        }
        const auto kept = m_context.store.describeAttachment(attachment->id, attachment->name,
                                                             text.trimmed().toStdString());
        refresh();
        return kept;
    });
}

void AttachmentsPart::makeButtons(QVBoxLayout* lines) {
    auto* row = new QHBoxLayout;
    row->setSpacing(look::kGap);
    const auto button = [&](const QString& text, const char* name) {
        auto* made = new KeyButton(text, ButtonKind::Quiet, this);
        made->setObjectName(QString::fromLatin1(name));
        row->addWidget(made);
        return made;
    };
    m_add = button(tr("Add a picture or paper"), "addAttachmentButton");
    m_open = button(tr("Open it"), "openAttachmentButton");
    m_remove = button(tr("Take it away"), "removeAttachmentButton");
    row->addStretch(1);
    lines->addLayout(row);
    m_keepPlace->setObjectName(QStringLiteral("keepPlace"));
    m_keepPlace->setToolTip(tr("Otherwise the position is taken out of a picture before it is kept."));
    lines->addWidget(m_keepPlace);
    connect(m_add, &QPushButton::clicked, this, &AttachmentsPart::chooseFiles);
    connect(m_open, &QPushButton::clicked, this, &AttachmentsPart::open);
    connect(m_remove, &QPushButton::clicked, this, &AttachmentsPart::remove);
}

void AttachmentsPart::show(const std::string& ownerTable, const UuidBytes& owner) {
    m_ownerTable = ownerTable;
    m_owner = owner;
    refresh();
}

void AttachmentsPart::showOnVisit(const std::string& ownerTable, const UuidBytes& owner, reg::VisitId visit) {
    m_visit = visit;
    show(ownerTable, owner);
}

void AttachmentsPart::setReadOnly(bool readOnly) {
    m_readOnly = readOnly || m_context.store.isReadOnly();
    m_note->setReadOnly(m_readOnly);
    m_add->setEnabled(!m_readOnly);
    m_remove->setEnabled(!m_readOnly);
    m_inRecord->setEnabled(!m_readOnly);
    setAcceptDrops(!m_readOnly);
}

void AttachmentsPart::chooseForRecord(bool shown) {
    const auto* attachment = current();
    if (attachment == nullptr || !m_visit) {
        return;
    }
    const auto kept =
        m_context.store.showInRecords(attachment->id, shown ? m_visit : std::optional<reg::VisitId>());
    if (!kept) {
        m_context.dialogs.tell(this, tr("It was not changed"), m_context.words.error(kept.error()));
    }
    refresh();
}

void AttachmentsPart::refresh() {
    const auto kept = m_context.store.attachmentsOf(m_owner);
    m_kept = kept.value_or(std::vector<reg::Attachment>());
    m_list->setEmptyText(kept ? tr("No pictures or papers yet.") : m_context.words.error(kept.error()));
    std::vector<Line> lines;
    lines.reserve(m_kept.size());
    for (const auto& attachment : m_kept) {
        lines.push_back(lineOf(attachment, m_context));
        if (m_visit && attachment.inRecordOf == m_visit) {
            lines.back().right = tr("in the record");
        }
    }
    m_list->setLines(std::move(lines));
    showCurrent();
}

const reg::Attachment* AttachmentsPart::current() const {
    const int row = m_list->currentRow();
    return row < 0 ? nullptr : &m_kept.at(static_cast<std::size_t>(row));
}

void AttachmentsPart::showCurrent() {
    const auto* attachment = current();
    m_open->setVisible(attachment != nullptr);
    m_remove->setVisible(attachment != nullptr);
    m_note->setVisible(attachment != nullptr);
    const bool canShow = m_visit && attachment != nullptr && store::isPicture(*attachment);
    m_inRecord->setVisible(canShow);
    m_inRecord->setChecked(canShow && attachment->inRecordOf == m_visit);
    m_preview->setPixmap({});
    if (attachment != nullptr) {
        m_note->setText(qstring(attachment->note));
        if (const auto bytes = m_context.store.attachmentBytes(attachment->id)) {
            const QImage image = imageOf(QByteArray::fromStdString(*bytes));
            if (!image.isNull()) {
                m_preview->setPixmap(
                    QPixmap::fromImage(image.scaledToHeight(kPreviewHigh, Qt::SmoothTransformation)));
            }
            m_preview->setAccessibleName(qstring(attachment->name));
        }
    }
    m_preview->setVisible(!m_preview->pixmap(Qt::ReturnByValue).isNull());
}

void AttachmentsPart::chooseFiles() {
    addFiles(m_context.dialogs.openFiles(this, tr("Add pictures and papers"),
                                         tr("Pictures and papers (*.jpg *.jpeg *.png *.pdf)")));
}

void AttachmentsPart::addFiles(const QStringList& paths) {
    QStringList problems;
    int added = 0;
    for (const auto& path : paths) {
        const auto bytes = bytesOf(path);
        const auto kept = bytes ? addOne(QFileInfo(path).fileName(), *bytes)
                                : Result<void>(tl::unexpected<Error>(bytes.error()));
        if (kept) {
            ++added;
        } else {
            problems << m_context.words.error(kept.error());
        }
    }
    refresh();
    if (added > 0) {
        m_list->setCurrentRow(m_list->count() - 1);
        showCurrent();
        m_context.navigator.say(tr("%n added. Ctrl+Z takes the last one away again.", nullptr, added));
    }
    if (!problems.isEmpty()) {
        m_context.dialogs.tell(this, tr("Not everything was added"), problems.join(QStringLiteral("\n\n")));
    }
}

Result<void> AttachmentsPart::addOne(const QString& name, const QByteArray& bytes) {
    const auto place =
        m_keepPlace->isChecked() ? exchange::PicturePlace::Keep : exchange::PicturePlace::Remove;
    const auto picture =
        exchange::readPicture(std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())),
                              place, name.toStdString());
    if (!picture) {
        return tl::unexpected<Error>(picture.error());
    }
    store::NewAttachment attachment;
    attachment.ownerTable = m_ownerTable;
    attachment.owner = m_owner;
    attachment.name = name.toStdString();
    attachment.mediaType = picture->mediaType;
    attachment.bytes = picture->bytes;
    attachment.thumbnail = thumbnailOf(bytes);
    attachment.placeKept = picture->placeKept;
    const auto kept = m_context.store.attach(attachment);
    return kept ? Result<void>() : Result<void>(tl::unexpected<Error>(kept.error()));
}

void AttachmentsPart::addFrom(const QMimeData& data) {
    QStringList paths;
    for (const auto& url : data.urls()) {
        if (url.isLocalFile()) {
            paths << url.toLocalFile();
        }
    }
    if (!paths.isEmpty()) {
        addFiles(paths);
        return;
    }
    const auto image = qvariant_cast<QImage>(data.imageData());
    if (image.isNull()) {
        return;
    }
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "PNG");
    if (const auto kept = addOne(tr("pasted picture.png"), bytes); !kept) {
        m_context.dialogs.tell(this, tr("The picture was not added"), m_context.words.error(kept.error()));
    }
    refresh();
    m_list->setCurrentRow(m_list->count() - 1);
    showCurrent();
}

void AttachmentsPart::open() {
    const auto* attachment = current();
    if (attachment == nullptr) {
        return;
    }
    const auto bytes = m_context.store.attachmentBytes(attachment->id);
    if (!bytes) {
        m_context.dialogs.tell(this, tr("It can't be opened"), m_context.words.error(bytes.error()));
        return;
    }
    m_context.dialogs.openDocument(this, qstring(attachment->name), QByteArray::fromStdString(*bytes));
}

void AttachmentsPart::remove() {
    const auto* attachment = current();
    if (attachment == nullptr) {
        return;
    }
    if (const auto done = m_context.store.detach(attachment->id); !done) {
        m_context.dialogs.tell(this, tr("It was not taken away"), m_context.words.error(done.error()));
        return;
    }
    refresh();
    m_list->setFocus(Qt::OtherFocusReason);
    m_context.navigator.say(tr("Taken away. Ctrl+Z brings it back."));
}

void AttachmentsPart::dragEnterEvent(QDragEnterEvent* event) {
    if (event->mimeData()->hasUrls() || event->mimeData()->hasImage()) {
        event->acceptProposedAction();
    }
}

void AttachmentsPart::dropEvent(QDropEvent* event) {
    addFrom(*event->mimeData());
    event->acceptProposedAction();
}

bool AttachmentsPart::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress && !m_readOnly) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->matches(QKeySequence::Paste)) {
            addFrom(*QApplication::clipboard()->mimeData());
            return true;
        }
        if (key->key() == Qt::Key_Delete) {
            remove();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace hearth::ui::shell
