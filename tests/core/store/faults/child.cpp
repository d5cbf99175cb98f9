// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/faults/child.h"

#include <exception>
#include <stdexcept>
#include <sys/wait.h>
#include <unistd.h>

namespace hearth::store {

pid_t inChild(const std::function<int()>& work) {
    constexpr int kThrew = 98;
    const pid_t child = fork();
    if (child == 0) {
        int result = kThrew;
        try {
            result = work();
        } catch (const std::exception& problem) {
            const std::string text = std::string(problem.what()) + "\n";
            static_cast<void>(!write(STDERR_FILENO, text.data(), text.size()));
        }
        _exit(result);
    }
    return child;
}

std::string endOf(pid_t child) {
    int status = 0;
    waitpid(child, &status, 0);
    return WIFSIGNALED(status) ? "signal " + std::to_string(WTERMSIG(status))
                               : std::to_string(WEXITSTATUS(status));
}

Acknowledged::Acknowledged() {
    if (pipe(m_ends) != 0) {
        throw std::runtime_error("no pipe");
    }
}

Acknowledged::~Acknowledged() {
    close(m_ends[0]);
    closeWriter();
}

void Acknowledged::say(int number) const {
    if (write(m_ends[1], &number, sizeof number) != sizeof number) {
        throw std::runtime_error("nobody listens");
    }
}

void Acknowledged::closeWriter() {
    if (m_ends[1] >= 0) {
        close(m_ends[1]);
    }
    m_ends[1] = -1;
}

std::optional<int> Acknowledged::next() const {
    int number = 0;
    return read(m_ends[0], &number, sizeof number) == sizeof number ? std::optional<int>(number)
                                                                    : std::nullopt;
}

}  // namespace hearth::store
