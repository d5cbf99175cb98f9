// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paper/type_setter.h"

#include <QCache>

#include <optional>

namespace hearth::ui::paper {

/// What decides how a text is set.
struct SetKey {
    QString text;
    TextStyle style;
    double width = 0;  // millimetres

    [[nodiscard]] bool operator==(const SetKey& other) const;
};
[[nodiscard]] size_t qHash(const SetKey& key, size_t seed = 0);

/// What was shaped lately, so that it isn't shaped again: captions, rules and statutory words are the same on
/// every record of a batch, and shaping is half of what a page costs. Holds so many letters at most; what was
/// not wanted for longest goes first. Shaped glyphs belong to a thread, so each thread has its own.
class SetTexts {
  public:
    /// This thread's. The main thread's is emptied with the application, while its fonts still exist.
    [[nodiscard]] static SetTexts& ofThread();

    [[nodiscard]] const std::vector<TextItem>* lines(const SetKey& key) const { return m_lines.object(key); }
    void keepLines(const SetKey& key, const std::vector<TextItem>& lines);
    [[nodiscard]] std::optional<double> width(const SetKey& key) const;
    void keepWidth(const SetKey& key, double width);

    [[nodiscard]] qsizetype letters() const { return m_lines.totalCost() + m_widths.totalCost(); }

    static constexpr qsizetype kMostLetters = 60'000;  // of lines, and of widths

  private:
    QCache<SetKey, std::vector<TextItem>> m_lines{kMostLetters};
    QCache<SetKey, double> m_widths{kMostLetters};
};

}  // namespace hearth::ui::paper
