// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/issue.h"
#include "ui/words/words.h"

#include <QString>

namespace hearth::app {

enum class Colours { No, Yes };

/// A judged visit for a terminal: where and when, each finding with what was measured against which limit,
/// why, and where the limit comes from, and the verdict last. Outcomes are told apart by mark and word;
/// colour only comes on top.
[[nodiscard]] QString findingsText(const JudgedVisit& visit, const ui::words::Words& words, Colours colours);

/// What keeps the record from being issued, one a line; empty: nothing does.
[[nodiscard]] QString missingText(const JudgedVisit& visit, const ui::words::Words& words);

/// "14 Fore Street, Anytown ZZ1 1ZZ" in one line.
[[nodiscard]] QString addressLine(const reg::Address& address);

}  // namespace hearth::app
