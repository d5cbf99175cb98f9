// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/faults/child.h"

#include <array>
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

Said saidByChild(const std::function<std::string()>& work) {
    constexpr unsigned kLongest = 60;
    int ends[2] = {-1, -1};
    if (pipe(ends) != 0) {
        throw std::runtime_error("no pipe");
    }
    const pid_t child = inChild([&] {
        alarm(kLongest);
        const std::string text = work();
        std::size_t written = 0;
        while (written < text.size()) {
            const auto more = write(ends[1], text.data() + written, text.size() - written);
            if (more <= 0) {
                return 1;
            }
            written += static_cast<std::size_t>(more);
        }
        return 0;
    });
    close(ends[1]);
    Said said;
    std::array<char, 4096> buffer{};
    ssize_t got = 0;
    while ((got = read(ends[0], buffer.data(), buffer.size())) > 0) {
        said.text.append(buffer.data(), static_cast<std::size_t>(got));
    }
    close(ends[0]);
    said.end = endOf(child);
    return said;
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
