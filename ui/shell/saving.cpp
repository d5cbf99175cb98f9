// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/saving.h"

#include <QSaveFile>

namespace hearth::ui::shell {

Result<void> writeFile(const QString& path, const std::string& bytes) {
    QSaveFile file(path);
    const auto length = static_cast<qint64>(bytes.size());
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes.data(), length) != length || !file.commit()) {
        return fail(ErrorCode::FileUnwritable, {path.toStdString(), file.errorString().toStdString()});
    }
    return {};
}

}  // namespace hearth::ui::shell
