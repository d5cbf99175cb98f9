// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/store/store.h"
#include "ui/words/words.h"

#include <QString>

#include <optional>
#include <vector>

/// What turned overdue since somebody last looked: said when the program starts.
namespace hearth::ui::shell {

enum class NewsWhere { WindowAndDesktop, Window, Nowhere };
/// "desktop", "window", "off".
[[nodiscard]] QString codeOf(NewsWhere where);
/// As the firm chose; in the window and on the desktop where it never did.
[[nodiscard]] NewsWhere newsWhere(const store::Store& store);
[[nodiscard]] Result<void> saveNewsWhere(store::Store& store, const QString& code);

struct OverdueNews {
    calendar::Date since;  // when somebody last looked
    std::vector<reg::PremisesId> premises;
};
/// Nothing: there is none. A store that was never asked is asked since yesterday, and remembers from then on.
[[nodiscard]] std::optional<OverdueNews> overdueNews(store::Store& store, const Clock& clock);
/// It was seen: it is not said again.
[[nodiscard]] Result<void> noteNewsSeen(store::Store& store, const Clock& clock);

/// "3 checks turned overdue since 24 November 2026."
[[nodiscard]] QString newsText(const OverdueNews& news, const words::Words& words);

}  // namespace hearth::ui::shell
