// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/core/store/store_fixture.h"

#include <array>
#include <filesystem>
#include <string>
#include <vector>

namespace hearth::store {

/// What a day's work does, one call of the store a step. The steps are numbered and follow from a seed, and
/// what they write are their numbers: so what a store must hold after a number of steps is known without it.
enum class Step {
    Entry,
    Premises,
    Party,
    Installation,
    Pipes,
    Visit,
    Issue,
    Revise,
    Event,
    Rule,
    Engineer,
    Together,  // an entry, a premises, two parties and a record
    Spoil,     // an entry that the next step takes back
    Undo,
    Backup,
};
[[nodiscard]] Step stepOf(unsigned seed, int number);

/// What the workload changes, as numbers.
enum class Seen {
    Entry,
    Premises,
    Meter,
    Parties,
    Pipes,
    PipesBy,
    Visits,
    Records,
    Events,
    Rules,
    Card,
    Count
};
using Picture = std::array<int, static_cast<std::size_t>(Seen::Count)>;
[[nodiscard]] std::string textOf(const Picture& picture);

/// The workload's own word for what the store holds.
class Expected {
  public:
    Expected(unsigned seed, const Picture& start) : m_seed(seed), m_picture(start) {}
    /// The store was closed or its program killed: nothing can be undone any more.
    void newSession() { m_canUndo = false; }
    void take(int number);
    [[nodiscard]] const Picture& picture() const { return m_picture; }

  private:
    int& at(Seen what) { return m_picture.at(static_cast<std::size_t>(what)); }

    unsigned m_seed;
    Picture m_picture;
    bool m_canUndo = false;
    int m_entryBefore = 0;
};

/// Does the steps on a store that SpoiltStore made.
class Worker {
  public:
    Worker(Store& store, reg::VisitId visit, unsigned seed, std::filesystem::path backup)
        : m_store(store), m_visit(visit), m_seed(seed), m_backup(std::move(backup)) {}
    [[nodiscard]] Result<void> run(int number);
    [[nodiscard]] static Picture pictureOf(const std::filesystem::path& store);

  private:
    [[nodiscard]] Result<void> change(Step step, int number, const reg::VisitFile& file);
    [[nodiscard]] Result<void> issue(int number, bool isRevision);
    [[nodiscard]] Result<void> layPipes(int number, const reg::VisitFile& file);
    [[nodiscard]] Result<void> together(int number, const reg::VisitFile& file);
    [[nodiscard]] Result<void> note();
    [[nodiscard]] Result<void> rule(int number);

    Store& m_store;
    reg::VisitId m_visit;
    unsigned m_seed;
    std::filesystem::path m_backup;
};

}  // namespace hearth::store
