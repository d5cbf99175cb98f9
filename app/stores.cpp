// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/stores.h"

#include <QFile>
#include <QStandardPaths>
#include <QString>

namespace hearth::app {

std::filesystem::path pathFrom(const QString& text) {
    return {QFile::encodeName(text).toStdString()};
}

QString textOf(const std::filesystem::path& path) {
    return QFile::decodeName(QByteArray::fromStdString(path.string()));
}

std::filesystem::path dataFolder() {
    return pathFrom(QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation)) / "hearthledger";
}

std::filesystem::path ownStore() {
    return dataFolder() / "firm.hearth";
}

std::filesystem::path demonstrationStore() {
    return demonstrationStoreIn(dataFolder());
}

std::filesystem::path demonstrationStoreIn(const std::filesystem::path& folder) {
    return folder / "demonstration.hearth";
}

std::filesystem::path storeOf(const CommandLine& line) {
    if (line.store) {
        return pathFrom(*line.store);
    }
    return line.demonstration ? demonstrationStore() : ownStore();
}

QString windowSettingsFile() {
    return QStandardPaths::writableLocation(QStandardPaths::GenericConfigLocation) +
           QStringLiteral("/hearthledger/window.ini");
}

}  // namespace hearth::app
