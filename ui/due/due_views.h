// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/due.h"
#include "core/store/store.h"

#include <QString>

#include <string>
#include <vector>

/// Views of the list that somebody saved: filter and order under a name, kept in the store's settings.
namespace hearth::ui::due {

struct DueView {
    QString name;
    store::DueFilter filter;
    store::DueSort sort = store::DueSort::Need;
    bool operator==(const DueView&) const = default;
};

/// As it stands in the settings; what can't be read is left out.
[[nodiscard]] std::string viewsText(const std::vector<DueView>& views);
[[nodiscard]] std::vector<DueView> viewsFrom(const std::string& text);

[[nodiscard]] std::vector<DueView> savedViews(const store::Store& store);
/// Another of the same name is replaced. Errors: those of Store::saveSetting().
[[nodiscard]] Result<void> saveView(store::Store& store, const DueView& view);
[[nodiscard]] Result<void> forgetView(store::Store& store, const QString& name);

[[nodiscard]] QString codeOf(store::DueSort sort);
[[nodiscard]] store::DueSort sortFromCode(const QString& code);

}  // namespace hearth::ui::due
