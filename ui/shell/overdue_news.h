// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/store/store.h"
#include "ui/words/words.h"

#include <QString>

#include <optional>
#include <vector>

class QSettings;

/// What turned overdue since somebody last looked: said when the program starts, and when a day begins.
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

/// Until when somebody looked. The firm's store keeps the day; of one that can only be read the settings of
/// the person who reads do, by its path. Without those nothing is known, and nothing can be noted.
class NewsDay {
  public:
    NewsDay(store::Store& store, QSettings* settings) : m_store(store), m_settings(settings) {}
    /// Whether a day can be noted: else the same would be told at every start.
    [[nodiscard]] bool isKept() const;
    [[nodiscard]] std::optional<calendar::Date> seen() const;
    [[nodiscard]] Result<void> note(calendar::Date day);

  private:
    [[nodiscard]] QString key() const;
    store::Store& m_store;
    QSettings* m_settings;
};

/// Nothing: there is none. Who never looked is asked since yesterday, and it is remembered from then on.
[[nodiscard]] std::optional<OverdueNews> overdueNews(const store::Store& store, NewsDay& day,
                                                     calendar::Date today);

/// "3 checks turned overdue since 24 November 2026."
[[nodiscard]] QString newsText(const OverdueNews& news, const words::Words& words);

}  // namespace hearth::ui::shell
