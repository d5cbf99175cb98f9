// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/gauge_profiles.h"

#include <algorithm>

namespace hearth::ui::visit {

namespace {

std::vector<gauge::GaugeProfile> allProfiles(const store::Store& store) {
    return gauge::profilesFromText(store.setting(gauge::kProfilesSetting).value_or(""));
}

}  // namespace

std::vector<gauge::GaugeProfile> profilesThatRead(quantity::UnitFamily family, const store::Store& store) {
    auto profiles = allProfiles(store);
    profiles.erase(std::remove_if(profiles.begin(), profiles.end(),
                                  [family](const auto& one) { return one.pattern.family != family; }),
                   profiles.end());
    return profiles;
}

Result<void> keepProfiles(const std::vector<gauge::GaugeProfile>& profiles, quantity::UnitFamily family,
                          store::Store& store) {
    auto all = profiles;
    for (auto& other : allProfiles(store)) {
        if (other.pattern.family != family) {
            all.push_back(std::move(other));
        }
    }
    return store.saveSetting(gauge::kProfilesSetting, gauge::profilesText(all));
}

QString journalsOf(const store::Store& store) {
    return QString::fromStdString(store.path().string()) + QStringLiteral("-gauge");
}

}  // namespace hearth::ui::visit
