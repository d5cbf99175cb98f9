// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/core/store/store_fixture.h"

#include <functional>
#include <string>
#include <sys/types.h>
#include <vector>

namespace hearth::store {

/// What a person would find in a store: enough to tell the old state from the new one and from anything
/// between.
[[nodiscard]] std::string stateOf(const std::filesystem::path& path);

/// One thing that a person does.
struct Action {
    const char* name;
    std::function<Result<void>(Store&, reg::VisitId)> run;
    std::function<Result<void>(Store&, reg::VisitId)> prepare = {};  // before that, without a fault
};
[[nodiscard]] const std::vector<Action>& actions();

[[nodiscard]] Result<void> layPipes(Store& store, reg::VisitId visit);
[[nodiscard]] Result<void> issueAnother(Store& store, reg::VisitId visit);

/// Runs `work` in a child process that ends with what it gives; gives the child.
[[nodiscard]] pid_t inChild(const std::function<int()>& work);

/// A store with a visit, an entry and an issued record, closed, and brought back as often as a test spoils
/// it.
class SpoiltStore : public StoreTest {
  protected:
    void SetUp() override;
    /// The store as it was set up, in the same file, so that it keeps its place and its series.
    void restore();
    /// The store as it was set up and prepared for `action`, opened.
    [[nodiscard]] std::unique_ptr<Store> prepared(const Action& action);
    /// The store that is left is whole and in one of the states.
    void expectSound(const std::vector<std::string>& states) const;

    reg::VisitId visit;

  private:
    std::string m_bytes;
};

}  // namespace hearth::store
