// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/saving.h"

#include <QSaveFile>

namespace hearth::ui::shell {

namespace {

tl::unexpected<Error> unwritable(const QString& path, const QSaveFile& file) {
    return fail(ErrorCode::FileUnwritable, {path.toStdString(), file.errorString().toStdString()});
}

}  // namespace

Result<void> writeFile(const QString& path, const std::function<Result<void>(const FileSink&)>& fill) {
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly)) {
        return unwritable(path, file);
    }
    const auto filled = fill([&](std::string_view bytes) -> Result<void> {
        const auto length = static_cast<qint64>(bytes.size());
        return file.write(bytes.data(), length) == length ? Result<void>() : unwritable(path, file);
    });
    if (!filled) {
        file.cancelWriting();
        return filled;
    }
    return file.commit() ? Result<void>() : unwritable(path, file);
}

Result<void> writeFile(const QString& path, const std::string& bytes) {
    return writeFile(path, [&bytes](const FileSink& sink) { return sink(bytes); });
}

}  // namespace hearth::ui::shell
