// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

namespace hearth::exchange {

/// Cuts what comes over a wire into lines, however it comes: half lines, bursts, CR, LF or both, a line that
/// never ends. Holds at most one line.
class LineSplitter {
  public:
    /// The longest line of a gauge that is taken; a longer one is thrown away up to its end and counted.
    static constexpr std::size_t kLongestLine = 512;

    /// The wire was opened, perhaps in the middle of a line: what comes before the first line end may be the
    /// tail of a figure ("0.5" of "20.5") and is thrown away. What was held is forgotten.
    void begin() {
        m_held.clear();
        m_isSkipping = true;
        m_isBeginning = true;
    }

    /// Hands each whole line to `take(std::string_view)`; empty ones are none.
    template <class Take>
    void feed(std::string_view bytes, Take take) {
        while (!bytes.empty()) {
            const auto end = bytes.find_first_of("\r\n");
            hold(bytes.substr(0, end));
            if (end == std::string_view::npos) {
                return;
            }
            bytes.remove_prefix(end + 1);
            if (!m_isSkipping && !m_held.empty()) {
                take(std::string_view(m_held));
            }
            m_held.clear();
            m_isSkipping = false;
            m_isBeginning = false;
        }
    }

    /// Lines that were too long, since the splitter was made.
    [[nodiscard]] std::uint64_t thrownAway() const { return m_thrownAway; }
    /// Bytes of a line that has not ended.
    [[nodiscard]] std::size_t held() const { return m_held.size(); }
    /// Nothing but the tail of a first line has come yet.
    [[nodiscard]] bool isBeginning() const { return m_isBeginning; }

  private:
    void hold(std::string_view part) {
        if (m_isSkipping) {
            return;
        }
        if (m_held.size() + part.size() > kLongestLine) {
            m_held.clear();
            m_isSkipping = true;
            ++m_thrownAway;
            return;
        }
        m_held.append(part);
    }

    std::string m_held;
    std::uint64_t m_thrownAway = 0;
    bool m_isSkipping = false;
    bool m_isBeginning = false;
};

}  // namespace hearth::exchange
