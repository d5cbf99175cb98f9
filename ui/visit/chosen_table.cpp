// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/chosen_table.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>

namespace hearth::ui::visit {

namespace {

/// Larger than a day at ten a second in any table; what is larger is no trace.
constexpr qint64 kMostTraceBytes = qint64{64} * 1024 * 1024;

class TableWords {
    Q_DECLARE_TR_FUNCTIONS(hearth::ui::visit::ChosenTable)
};

}  // namespace

std::optional<ChosenTable> chooseTable(const shell::Context& window, QWidget* over) {
    const QStringList paths =
        window.dialogs.openFiles(over, TableWords::tr("Take in a logger's file"),
                                 TableWords::tr("Tables of times and readings (*.csv *.txt *.tsv)"));
    if (paths.isEmpty()) {
        return std::nullopt;
    }
    QFile file(paths.front());
    if (!file.open(QIODevice::ReadOnly) || file.size() > kMostTraceBytes) {
        const Error error{ErrorCode::FileUnreadable,
                          {paths.front().toStdString(),
                           file.isOpen() ? TableWords::tr("it is larger than 64 MB").toStdString()
                                         : file.errorString().toStdString()}};
        window.dialogs.tell(over, TableWords::tr("The file was not taken in"), window.words.error(error));
        return std::nullopt;
    }
    return ChosenTable{QFileInfo(paths.front()).fileName(), file.readAll().toStdString()};
}

}  // namespace hearth::ui::visit
