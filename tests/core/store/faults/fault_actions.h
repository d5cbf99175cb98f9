// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/core/store/faults/whole_state.h"
#include "tests/core/store/store_fixture.h"

#include <functional>
#include <string>
#include <vector>

namespace hearth::store {

/// One thing that a person does.
struct Action {
    const char* name;
    const char* call;  // the member of Store, with its first parameter's type where there are several
    std::function<Result<void>(Store&, reg::VisitId)> run;
    std::function<Result<void>(Store&, reg::VisitId)> prepare = {};  // before that, without a fault
    std::chrono::hours later{0};                                     // that pass between the two
};
/// One at least for each member of Store that writes.
[[nodiscard]] const std::vector<Action>& actions();

template <class Value>
Result<void> withoutValue(const Result<Value>& result) {
    return result ? Result<void>() : Result<void>(tl::unexpected<Error>(result.error()));
}

/// Runs `work` with the visit as it stands.
template <class Work>
auto onFile(Work work) {
    return [work](Store& store, reg::VisitId visit) -> Result<void> {
        const auto file = store.visitFile(visit);
        return file ? work(store, *file) : withoutValue(file);
    };
}

/// What is signed on the sheet, and what gauges saw.
[[nodiscard]] const std::vector<Action>& sheetActions();

[[nodiscard]] Result<void> layPipes(Store& store, reg::VisitId visit);
[[nodiscard]] Result<void> issueAnother(Store& store, reg::VisitId visit);
[[nodiscard]] std::string bigPdf(const record::Document& document, const std::string& digest);

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
    [[nodiscard]] std::string state() const { return wholeState(path(), Of::AnyRun); }

    reg::VisitId visit;

  private:
    std::string m_bytes;
    Instant m_start{};
};

}  // namespace hearth::store
