// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console.h"

#include <QCoreApplication>

#include <unistd.h>

namespace hearth::app {

QString tr(const char* text) {
    return QCoreApplication::translate("CommandLine", text);
}

Console::Console()
    : Console(stdout, stderr, ::isatty(STDOUT_FILENO) == 1 && qEnvironmentVariableIsEmpty("NO_COLOR")) {}

void Console::write(std::FILE* stream, const QString& line) {
    const QByteArray bytes = line.toUtf8();
    std::fwrite(bytes.constData(), 1, static_cast<std::size_t>(bytes.size()), stream);
    std::fputc('\n', stream);
    std::fflush(stream);
}

}  // namespace hearth::app
