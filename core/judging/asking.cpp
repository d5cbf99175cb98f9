// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/asking.h"

#include <algorithm>
#include <iterator>
#include <vector>

namespace hearth::judging {

namespace {

bool asksFor(Question question, Group group, reg::Item item) {
    const auto groups = infoOf(question).groups;
    return std::any_of(groups.begin(), groups.end(), [&](const AskedGroup& asked) {
        return asked.group == group &&
               std::find(asked.items.begin(), asked.items.end(), item) != asked.items.end();
    });
}

}  // namespace

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
    std::vector<reg::Item> lacking;
    if (finding.why.say == rulebook::Say::ReadingMissing) {
        std::copy_if(about.begin(), about.end(), std::back_inserter(lacking), [&](reg::Item item) {
            return asksFor(sheet.question(), group, item) && sheet.isAsked(group, row, item) &&
                   sheet.find(group, row, item) == nullptr;
        });
    }
    answer.findings.push_back(
        {std::move(finding), Worksheet::subject(group, row), about, std::move(lacking)});
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
