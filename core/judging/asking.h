// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/judging/answer.h"
#include "core/rulebook/rules_in_force.h"

#include <initializer_list>
#include <string_view>
#include <utility>

namespace hearth::judging {

/// What an adapter works with: the sheet, the rules of its day and gas, and the answer that it fills.
class Asking {
  public:
    Asking(const Worksheet& asked, const rulebook::RuleBook& rules);

    const Worksheet& sheet;
    const rulebook::RuleBook& book;
    Readings once;      // what is asked once
    rulebook::Gas gas;  // natural gas until another is said
    rulebook::RulesInForce inForce;
    Answer answer;

    void find(rulebook::Finding finding, std::initializer_list<reg::Item> about, Group group = Group::Once,
              int row = 0);
    void work(Derived what, const quantity::Figure& figure, std::string_view source,
              std::optional<quantity::Figure> uncertainty = std::nullopt);
    /// The value; an error goes into the answer, once.
    template <class Value>
    [[nodiscard]] std::optional<Value> got(const Result<Value>& result) {
        if (!result) {
            fail(result.error());
            return std::nullopt;
        }
        return *result;
    }
    void fail(const Error& error);

  private:
    [[nodiscard]] static rulebook::Gas gasOf(const Worksheet& sheet);
};

// One adapter a question.
void answerGasRate(Asking& asking);
void answerPressures(Asking& asking);
void answerCombustion(Asking& asking);
void answerHotWater(Asking& asking);
void answerRegulation26(Asking& asking);
void answerVentilation(Asking& asking);
void answerRoomCo(Asking& asking);
void answerPipes(Asking& asking);
void answerPurge(Asking& asking);
void answerLarger(Asking& asking);
void answerGas(Asking& asking);
void answerCheckDue(Asking& asking);

}  // namespace hearth::judging
