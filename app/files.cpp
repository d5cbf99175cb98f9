// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/files.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

namespace hearth::app {
namespace {

tl::unexpected<Error> unwritable(const QString& path, const QString& reason) {
    return fail(ErrorCode::FileUnwritable, {path.toStdString(), reason.toStdString()});
}

bool holds(const QString& path, const QByteArray& bytes) {
    QFile there(path);
    return there.open(QIODevice::ReadOnly) && there.size() == bytes.size() && there.readAll() == bytes;
}

}  // namespace

Result<void> makeFolder(const QString& path) {
    return QDir().mkpath(path)
               ? Result<void>()
               : unwritable(path, QCoreApplication::translate("CommandLine", "the folder can't be made"));
}

Result<void> writeFile(const QString& path, const std::string& bytes, IfThere ifThere) {
    const QByteArray data = QByteArray::fromStdString(bytes);
    if (QFileInfo::exists(path)) {
        if (holds(path, data)) {
            return {};
        }
        if (ifThere == IfThere::Refuse) {
            return unwritable(path, QCoreApplication::translate(
                                        "CommandLine", "it holds something else; --replace writes over it"));
        }
    }
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(data) != data.size() || !file.commit()) {
        return unwritable(path, file.errorString());
    }
    return {};
}

QString fileFor(const QString& to, const QString& name) {
    return QFileInfo(to).isDir() ? QDir(to).filePath(name) : to;
}

Result<std::string> firstLineOf(const QString& path) {
    QFile file(path);
    const bool opened =
        path == QStringLiteral("-") ? file.open(stdin, QIODevice::ReadOnly) : file.open(QIODevice::ReadOnly);
    if (!opened) {
        return fail(ErrorCode::FileUnreadable, {path.toStdString(), file.errorString().toStdString()});
    }
    QByteArray first = file.readLine();
    while (first.endsWith('\n') || first.endsWith('\r')) {
        first.chop(1);
    }
    return first.toStdString();
}

}  // namespace hearth::app
