// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/judging/asked.h"

#include "core/rulebook/conclude.h"

#include <algorithm>
#include <limits>
#include <stdexcept>

namespace hearth::judging::asked {

namespace {

const calendar::Date kAskedOn{std::chrono::year(2026), std::chrono::November, std::chrono::day(25)};

rulebook::RuleBook withUnreadConfirmed() {
    const auto shipped = rulebook::RuleBook::shipped();
    auto book = shipped;
    for (const auto& entry : shipped.entries()) {
        const bool unread = entry.provenance == rulebook::Provenance::Memory ||
                            entry.provenance == rulebook::Provenance::Secondary;
        if (entry.isKnown() && unread &&
            !book.lay({entry.key, entry.value, "Ada Marlow", kAskedOn, "invented copy"})) {
            throw std::logic_error("an entry can't be confirmed");
        }
    }
    return book;
}

}  // namespace

const rulebook::RuleBook& shippedBook() {
    static const auto book = rulebook::RuleBook::shipped();
    return book;
}

const rulebook::RuleBook& confirmedBook() {
    static const auto book = withUnreadConfirmed();
    return book;
}

Sheet inRow(Group group, int row, Sheet sheet) {
    for (auto& entry : sheet) {
        entry.group = group;
        entry.row = row;
    }
    return sheet;
}

Answer answerTo(Question question, const Sheet& sheet, const rulebook::RuleBook& book) {
    Worksheet typed(question, kAskedOn);
    for (const auto& entry : sheet) {
        typed.put(entry.group, entry.row, entry.item, entry.text, entry.unit);
    }
    return answer(typed, book);
}

Sheet with(Sheet sheet, const Sheet& more) {
    sheet.insert(sheet.end(), more.begin(), more.end());
    return sheet;
}

Sheet without(Sheet sheet, reg::Item item) {
    std::erase_if(sheet, [&](const Typed& typed) { return typed.item == item; });
    return sheet;
}

const rulebook::Finding* findingOf(const Answer& answer, rulebook::FindingKind kind) {
    const auto at = std::find_if(answer.findings.begin(), answer.findings.end(),
                                 [&](const Judged& judged) { return judged.finding.kind == kind; });
    return at == answer.findings.end() ? nullptr : &at->finding;
}

std::optional<rulebook::Outcome> outcomeOf(const Answer& answer, rulebook::FindingKind kind) {
    const auto* finding = findingOf(answer, kind);
    return finding == nullptr ? std::nullopt : std::optional(finding->outcome);
}

bool saysOf(const Answer& answer, rulebook::FindingKind kind, rulebook::Say say) {
    const auto* finding = findingOf(answer, kind);
    return finding != nullptr && rulebook::says(*finding, say);
}

bool passes(const Answer& answer) {
    return std::any_of(answer.findings.begin(), answer.findings.end(), [](const Judged& judged) {
        return judged.finding.outcome == rulebook::Outcome::Pass;
    });
}

std::optional<double> figureOf(const Answer& answer, Derived what) {
    const auto at = std::find_if(answer.figures.begin(), answer.figures.end(),
                                 [&](const Worked& worked) { return worked.what == what; });
    return at == answer.figures.end() ? std::nullopt : std::optional(at->figure.value.toDouble());
}

double valueOf(const Answer& answer, Derived what) {
    return figureOf(answer, what).value_or(std::numeric_limits<double>::quiet_NaN());
}

}  // namespace hearth::judging::asked
