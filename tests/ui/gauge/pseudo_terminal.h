// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <poll.h>
#include <pty.h>
#include <string>
#include <string_view>
#include <termios.h>
#include <unistd.h>

namespace hearth::testing {

/// A serial port without a cable: what is written comes out at `port()`.
class PseudoTerminal {
  public:
    PseudoTerminal() {
        int other = -1;
        char name[128] = {};
        termios raw{};
        cfmakeraw(&raw);
        if (openpty(&m_master, &other, name, &raw, nullptr) == 0) {
            m_port = QString::fromLocal8Bit(name);
            m_other = other;
        }
    }
    ~PseudoTerminal() { unplug(); }
    PseudoTerminal(const PseudoTerminal&) = delete;
    PseudoTerminal& operator=(const PseudoTerminal&) = delete;

    [[nodiscard]] const QString& port() const { return m_port; }
    [[nodiscard]] bool write(std::string_view bytes) const {
        return ::write(m_master, bytes.data(), bytes.size()) == static_cast<ssize_t>(bytes.size());
    }
    /// What came from the other end, as far as it has come.
    [[nodiscard]] std::string read() const {
        std::string bytes;
        pollfd waiting{m_master, POLLIN, 0};
        char some[256];
        while (::poll(&waiting, 1, 0) == 1 && (waiting.revents & POLLIN) != 0) {
            const auto got = ::read(m_master, some, sizeof some);
            if (got <= 0) {
                break;
            }
            bytes.append(some, static_cast<std::size_t>(got));
        }
        return bytes;
    }
    [[nodiscard]] int master() const { return m_master; }
    void unplug() {
        for (int* end : {&m_master, &m_other}) {
            if (*end >= 0) {
                ::close(*end);
                *end = -1;
            }
        }
    }

  private:
    int m_master = -1;
    int m_other = -1;
    QString m_port;
};

}  // namespace hearth::testing
