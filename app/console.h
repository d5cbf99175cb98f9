// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <cstdio>

namespace hearth::app {

/// A sentence of the command line's in the language in use.
[[nodiscard]] QString tr(const char* text);

/// Where a command speaks: UTF-8 whatever the locale, colours only on a terminal that wants them.
class Console {
  public:
    Console();
    Console(std::FILE* out, std::FILE* error, bool colours)
        : m_out(out), m_error(error), m_colours(colours) {}

    void say(const QString& line) const { write(m_out, line); }
    void complain(const QString& line) const { write(m_error, line); }
    [[nodiscard]] bool hasColours() const { return m_colours; }

  private:
    static void write(std::FILE* stream, const QString& line);

    std::FILE* m_out;
    std::FILE* m_error;
    bool m_colours;
};

}  // namespace hearth::app
