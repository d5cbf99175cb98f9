// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/burner/rate_samples.h"

#include <utility>
#include <vector>

namespace hearth::burner::ratesamples {

using rulebook::Entry;
using rulebook::RuleBook;

RuleBook allConfirmed() {
    const auto shipped = RuleBook::shipped();
    std::vector<Entry> entries(shipped.entries().begin(), shipped.entries().end());
    for (auto& entry : entries) {
        if (entry.isKnown()) {
            entry.provenance = rulebook::Provenance::Firm;
        }
    }
    return RuleBook(std::move(entries));
}

RuleBook without(const RuleBook& book, rulebook::Rule rule) {
    std::vector<Entry> entries;
    for (const auto& entry : book.entries()) {
        if (entry.key.rule != rule) {
            entries.push_back(entry);
        }
    }
    return RuleBook(std::move(entries));
}

rulebook::RulesInForce on(const RuleBook& book, rulebook::Gas gas) {
    return {book, rulebook::Edition::General, gas, calendar::fromIso("2026-11-10").value()};
}

quantity::Volume cubicMetres(double value) {
    return {value, quantity::kCubicMetre};
}

quantity::Duration seconds(double value) {
    return {value, quantity::kSecond};
}

quantity::Flow hourly(double value) {
    return {value, quantity::kCubicMetrePerHour};
}

quantity::Share percent(double value) {
    return {value, quantity::kPercent};
}

gas::Fuel fuel(double gross, double ratio) {
    gas::Fuel made;
    made.gross = {gross, quantity::kMegajoulePerCubicMetre};
    made.net = quantity::NetHeatValue(gross / ratio, quantity::kMegajoulePerCubicMetre);
    return made;
}

RateInput timed(double passed, double took) {
    RateInput input;
    input.passed = Passed{VolumeRead{cubicMetres(passed), cubicMetres(0.001)}};
    input.took = seconds(took);
    input.othersOff = true;
    input.atFullRate = true;
    input.warm = true;
    return input;
}

}  // namespace hearth::burner::ratesamples
