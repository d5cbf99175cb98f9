// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/answer.h"

#include "core/rulebook/code_table.h"
#include "core/rulebook/conclude.h"

#include <array>

namespace hearth::judging {

namespace {

constexpr auto kDerived = std::to_array<rulebook::Code<Derived>>({
    {Derived::GasFlow, "gas_flow"},
    {Derived::HeatInputGross, "heat_input_gross"},
    {Derived::HeatInputNet, "heat_input_net"},
    {Derived::TimeForTwoPercent, "time_for_two_percent"},
});
static_assert(rulebook::inOrder(kDerived));

constexpr auto kAllDerived = [] {
    std::array<Derived, kDerived.size()> all{};
    for (std::size_t i = 0; i < kDerived.size(); ++i) {
        all[i] = kDerived[i].value;
    }
    return all;
}();

}  // namespace

std::span<const Derived> allDerived() {
    return kAllDerived;
}

std::string_view derivedText(Derived derived) {
    return rulebook::textIn(kDerived, derived);
}

Answer answer(const Worksheet& sheet, const rulebook::RuleBook& /*book*/) {
    Answer answer;
    answer.findings.push_back(
        {rulebook::noVerdict(rulebook::FindingKind::WorkingPressure, {rulebook::Say::ReadingMissing}),
         Worksheet::subject(Group::Once, 0),
         {infoOf(sheet.question()).groups.front().items.front()}});
    return answer;
}

}  // namespace hearth::judging
