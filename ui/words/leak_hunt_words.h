// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/judging/leak_hunt.h"
#include "core/record/document.h"
#include "ui/words/words.h"

#include <QStringList>

/// Where a leak can be, by a visit's tests compared: worded for the record and for the sheet alike.
namespace hearth::ui::words {

/// Each test: what was shut, the volume that it reached, the leak that it found, or why it can't be compared.
[[nodiscard]] record::Table leakHuntTable(const judging::LeakHunt& hunt, const reg::VisitFile& file,
                                          const Words& words);
/// The one sentence that says what the tests mean together.
[[nodiscard]] QString leakHuntMeaning(const judging::LeakHunt& hunt, const reg::VisitFile& file,
                                      const Words& words);
/// What each place can leak, a line each; empty where nothing can be said.
[[nodiscard]] QStringList leakHuntPlaces(const judging::LeakHunt& hunt, const reg::VisitFile& file,
                                         const Words& words);
/// That it is for the search and no verdict. Stands wherever a comparison is shown.
[[nodiscard]] QString leakHuntBesideVerdict(const Words& words);
/// Whether pipes were shut for the search: the record then tells it.
[[nodiscard]] bool wasLeakHunted(const judging::LeakHunt& hunt);

}  // namespace hearth::ui::words
