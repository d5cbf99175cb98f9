// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <sys/wait.h>
#include <unistd.h>

namespace hearth::store {

/// Runs `work` in a child process without root's rights, where file permissions count; true when it said so.
inline bool asNobody(const std::function<bool()>& work) {
    constexpr uid_t kNobody = 65534;
    const pid_t child = fork();
    if (child == 0) {
        const bool isOther = getuid() != 0 || setuid(kNobody) == 0;
        bool good = false;
        try {
            good = isOther && work();
        } catch (...) {
            good = false;
        }
        _exit(good ? 0 : 1);
    }
    int status = 0;
    waitpid(child, &status, 0);
    return WIFEXITED(status) && WEXITSTATUS(status) == 0;
}

}  // namespace hearth::store
