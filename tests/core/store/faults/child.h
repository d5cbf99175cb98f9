// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <sys/types.h>

namespace hearth::store {

/// Runs `work` in a child process that ends with what it gives; gives the child. 98: it threw.
[[nodiscard]] pid_t inChild(const std::function<int()>& work);

/// How a child ended: "0", "3", "signal 11".
[[nodiscard]] std::string endOf(pid_t child);

/// What a child said, and how it ended.
struct Said {
    std::string text;
    std::string end;
};
/// Runs `work` in a child process, which is ended when it takes longer than a minute.
[[nodiscard]] Said saidByChild(const std::function<std::string()>& work);

/// A child tells what it has been promised is on the disk, one number after the other.
class Acknowledged {
  public:
    Acknowledged();
    ~Acknowledged();
    Acknowledged(const Acknowledged&) = delete;
    Acknowledged& operator=(const Acknowledged&) = delete;

    void say(int number) const;
    void closeWriter();
    /// The next number; waits for it. Nothing when the child is gone.
    [[nodiscard]] std::optional<int> next() const;

  private:
    int m_ends[2] = {-1, -1};
};

}  // namespace hearth::store
