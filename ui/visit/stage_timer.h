// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/register/visit_file.h"
#include "core/rulebook/rule_book.h"

#include <array>
#include <chrono>
#include <cstddef>
#include <optional>
#include <string>

namespace hearth::ui::visit {

/// Stages of a timed test, in order. Retest is run only when it is asked for; Restore has no clock.
enum class Stage { LetBy, Raise, Settle, Tightness, Retest, Restore };
inline constexpr std::size_t kStageCount = 6;

/// How long each stage has to last; nothing: not timed, or the rule book has no time for it (then it is ended
/// by hand).
struct StagePlan {
    std::array<std::optional<std::chrono::seconds>, kStageCount> needed{};
    [[nodiscard]] const std::optional<std::chrono::seconds>& of(Stage stage) const {
        return needed[static_cast<std::size_t>(stage)];
    }
    bool operator==(const StagePlan&) const = default;
};

/// From the rule book: LetByTime, SettleTime, TestTime of the test's edition and gas on the visit's day.
[[nodiscard]] StagePlan stagePlan(const reg::VisitFile& file, const reg::Test& test,
                                  const rulebook::RuleBook& book);

/// Which edition the test goes by: the one said, or the only one that is allowed on the day; General when
/// neither.
[[nodiscard]] rulebook::Edition editionOf(const reg::VisitFile& file, const reg::Test& test);

/// The items that a stage's readings and times are kept in; nothing for Raise and Restore.
struct StageItems {
    reg::Item start, end, startedAt, endedAt;
};
[[nodiscard]] std::optional<StageItems> itemsOf(Stage stage);

/// A stage that ran.
struct StageRun {
    Stage stage = Stage::LetBy;
    Instant startedAt{};
    Instant endedAt{};
    bool operator==(const StageRun&) const = default;
};

/// The clock of a timed test. Counts by the clock that runs on through sleep; times of day follow from the
/// start, so that a wall clock that is set in between does not make a stage longer or shorter.
class StageTimer {
  public:
    explicit StageTimer(const Clock& clock) : m_clock(clock) {}

    void setPlan(const StagePlan& plan) { m_plan = plan; }
    [[nodiscard]] const StagePlan& plan() const { return m_plan; }

    /// Starts a stage now; what ran before is given up.
    void start(Stage stage);
    /// Takes up a stage that another run of the program started, by the wall clock.
    void resume(Stage stage, Instant startedAt);
    /// Ends the running stage; nothing when none runs.
    std::optional<StageRun> stop();

    [[nodiscard]] std::optional<Stage> running() const { return m_stage; }
    [[nodiscard]] Instant startedAt() const { return m_startedAt; }
    /// Time since the start of the running stage; zero when none runs.
    [[nodiscard]] std::chrono::milliseconds passed() const;
    /// What is left of its time, negative when it is over; nothing for a stage without a time.
    [[nodiscard]] std::optional<std::chrono::milliseconds> left() const;
    [[nodiscard]] bool isDue() const;
    /// True once for each stage, at the first call at or after the end of its time: ring now.
    [[nodiscard]] bool takeBell();

  private:
    const Clock& m_clock;
    StagePlan m_plan;
    std::optional<Stage> m_stage;
    Instant m_startedAt{};
    std::chrono::milliseconds m_mark{0};  // elapsed() at the start
    bool m_rung = false;
};

/// "09:46:10": an instant's time of day where the firm works, as a stage's time is kept.
[[nodiscard]] std::string timeOfDay(Instant instant);

}  // namespace hearth::ui::visit
