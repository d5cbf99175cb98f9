// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/stage_timer.h"

#include "core/rulebook/rules_in_force.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace hearth::ui::visit {

using reg::Item;
using rulebook::Edition;
using rulebook::Rule;

namespace {

std::optional<std::chrono::seconds> timeFrom(const rulebook::RulesInForce& rules, Rule rule) {
    const rulebook::Entry* entry = rules.known(rule);
    const auto figure = entry == nullptr ? std::nullopt : rulebook::figureOf(*entry);
    if (!figure) {
        return std::nullopt;
    }
    const quantity::Duration time(figure->value.toDouble(), quantity::timeUnit(figure->unit));
    return std::chrono::seconds(std::lround(time.in(quantity::kSecond)));
}

}  // namespace

Edition editionOf(const reg::VisitFile& file, const reg::Test& test) {
    const auto said = file.choiceOf(reg::subject(test.id), Item::TestEdition);
    if (said == reg::choice::kEd3) {
        return Edition::Up1bEd3;
    }
    if (said == reg::choice::kEd4) {
        return Edition::Up1bEd4;
    }
    return rulebook::editionsAllowedOn(file.visit.date).only().value_or(Edition::General);
}

StagePlan stagePlan(const reg::VisitFile& file, const reg::Test& test, const rulebook::RuleBook& book) {
    StagePlan plan;
    const Edition edition = editionOf(file, test);
    const auto put = [&](Stage stage, Rule rule) {
        const auto from = [&](Edition e) {
            return timeFrom(rulebook::RulesInForce(book, e, file.installation.gas, file.visit.date), rule);
        };
        // Until it is said which of two editions counts, the longer time serves both.
        plan.needed[static_cast<std::size_t>(stage)] =
            edition == Edition::General ? std::max(from(Edition::Up1bEd3), from(Edition::Up1bEd4))
                                        : from(edition);
    };
    put(Stage::LetBy, Rule::LetByTime);
    put(Stage::Settle, Rule::SettleTime);
    put(Stage::Tightness, Rule::TestTime);
    put(Stage::Retest, Rule::TestTime);
    return plan;
}

std::optional<StageItems> itemsOf(Stage stage) {
    switch (stage) {
        case Stage::LetBy:
            return StageItems{Item::LetByStart, Item::LetByEnd, Item::LetByStartedAt, Item::LetByEndedAt};
        case Stage::Settle:
            return StageItems{Item::SettleStart, Item::SettleEnd, Item::SettleStartedAt, Item::SettleEndedAt};
        case Stage::Tightness:
            return StageItems{Item::TightStart, Item::TightEnd, Item::TightStartedAt, Item::TightEndedAt};
        case Stage::Retest:
            return StageItems{Item::RetestStart, Item::RetestEnd, Item::RetestStartedAt, Item::RetestEndedAt};
        case Stage::Raise:
        case Stage::Restore:
            break;
    }
    return std::nullopt;
}

void StageTimer::start(Stage stage) {
    m_stage = stage;
    m_startedAt = m_clock.now();
    m_mark = m_clock.elapsed();
    m_rung = false;
}

void StageTimer::resume(Stage stage, Instant startedAt) {
    m_stage = stage;
    m_startedAt = startedAt;
    m_mark = m_clock.elapsed() - (m_clock.now() - startedAt);
    m_rung = false;
}

std::optional<StageRun> StageTimer::stop() {
    if (!m_stage) {
        return std::nullopt;
    }
    const StageRun run{*m_stage, m_startedAt, m_startedAt + passed()};
    m_stage.reset();
    return run;
}

std::chrono::milliseconds StageTimer::passed() const {
    return m_stage ? m_clock.elapsed() - m_mark : std::chrono::milliseconds(0);
}

std::optional<std::chrono::milliseconds> StageTimer::left() const {
    if (!m_stage || !m_plan.of(*m_stage)) {
        return std::nullopt;
    }
    return std::chrono::milliseconds(*m_plan.of(*m_stage)) - passed();
}

bool StageTimer::isDue() const {
    const auto rest = left();
    return rest && rest->count() <= 0;
}

bool StageTimer::takeBell() {
    return isDue() && !std::exchange(m_rung, true);
}

std::string timeOfDay(Instant instant) {
    // A zone's offset is a whole number of minutes, so the seconds are those of UTC.
    const auto seconds =
        std::chrono::duration_cast<std::chrono::seconds>(instant.time_since_epoch()).count() % 60;
    const std::string two = std::to_string(seconds);
    return wallTimeText(instant) + (two.size() < 2 ? ":0" : ":") + two;
}

}  // namespace hearth::ui::visit
