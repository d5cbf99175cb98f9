// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/asking.h"

#include <algorithm>

namespace hearth::judging {

rulebook::Gas Asking::gasOf(const Worksheet& sheet) {
    const auto* entry = sheet.find(Group::Once, 0, reg::Item::GasFamily);
    return entry == nullptr ? rulebook::Gas::NaturalGas
                            : rulebook::gasFromText(entry->canonical).value_or(rulebook::Gas::NaturalGas);
}

Asking::Asking(const Worksheet& asked, const rulebook::RuleBook& rules)
    : sheet(asked),
      book(rules),
      once(asked.readings(Group::Once)),
      gas(gasOf(asked)),
      inForce(rules, rulebook::Edition::General, gas, asked.on()) {}

void Asking::find(rulebook::Finding finding, std::initializer_list<reg::Item> about, Group group, int row) {
    answer.findings.push_back({std::move(finding), Worksheet::subject(group, row), about});
}

void Asking::work(Derived what, const quantity::Figure& figure, std::string_view source,
                  std::optional<quantity::Figure> uncertainty) {
    answer.figures.push_back({what, figure, uncertainty, source});
}

void Asking::fail(const Error& error) {
    if (std::find(answer.errors.begin(), answer.errors.end(), error) == answer.errors.end()) {
        answer.errors.push_back(error);
    }
}

}  // namespace hearth::judging
