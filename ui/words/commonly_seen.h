// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <span>
#include <vector>

namespace hearth::ui::words {

/// How sure one may be of a line of the table below.
enum class SeenConfidence { Published, High, Medium, Low };

/// What the trade commonly takes an unsafe situation for. Orientation only: the class is the engineer's
/// decision, and nothing here is ever chosen by the program. English source texts of the context "Words".
/// Source: IGEM/G/11 and the procedure's earlier editions, from memory, but for the lines marked as published
/// (register's bulletins and frequently asked questions; the institution's supplement).
struct CommonlySeen {
    const char* what;
    const char* usual;
    const char* reportable;  // under RIDDOR 11(2), where design, installation or servicing is the cause
    SeenConfidence confidence;
};
[[nodiscard]] std::span<const CommonlySeen> commonlySeen();

/// One line as it is shown: what, what it is commonly seen as, how sure that is.
[[nodiscard]] QString commonlySeenText(const CommonlySeen& line);
/// The lines that share most words with what was typed, at most `most`; none where no word is shared.
[[nodiscard]] std::vector<const CommonlySeen*> commonlySeenLike(const QString& typed, std::size_t most);

}  // namespace hearth::ui::words
