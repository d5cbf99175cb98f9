// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/core/store/store_fixture.h"

#include <functional>
#include <string>
#include <vector>

namespace hearth::store {

[[nodiscard]] calendar::Date day(int year, unsigned month, unsigned dayOfMonth);

/// One with every field filled in; not saved.
[[nodiscard]] reg::Appliance fullAppliance(Store& store, reg::InstallationId installation);

/// A reading on an appliance: CO in its flue gas.
[[nodiscard]] reg::Entry applianceEntry(reg::VisitId visit, reg::ApplianceId appliance,
                                        const std::string& ppm);

/// One thing that a person does with what is kept beside visits and records.
struct KeptAction {
    const char* name;
    const char* call;  // the member of Store, with its first parameter's type where there are several
    std::function<Result<void>(Store&, const Sample&)> run;
    std::function<Result<void>(Store&, const Sample&)> prepare = {};  // before that
    bool undoable = true;
};
[[nodiscard]] const std::vector<KeptAction>& keptActions();

/// A store with the sample in it.
class KeptTest : public StoreTest {
  protected:
    void SetUp() override;
    [[nodiscard]] reg::Appliance fullAppliance() {
        return store::fullAppliance(*store, sample.installation.id);
    }
    reg::ApplianceId addAppliance(const std::string& kind);
    /// Kinds of the sample's appliances in order.
    [[nodiscard]] std::vector<std::string> kindsHere() const;
    /// A second installation of the sample's premises.
    [[nodiscard]] reg::Installation otherInstallation();

    Sample sample;
};

/// Every row of every table that a person changes, and the words to find them by, as text.
[[nodiscard]] std::string everythingIn(const std::filesystem::path& path);

}  // namespace hearth::store
