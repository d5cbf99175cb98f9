// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/burner/flue_samples.h"

#include <vector>

namespace hearth::burner::flue {

quantity::Share ppm(double value) {
    return {value, quantity::kPpm};
}

quantity::Share percent(double value) {
    return {value, quantity::kPercent};
}

quantity::Temperature celsius(double value) {
    return {value, quantity::kCelsius};
}

ShareReading ppmRead(double value, double digit) {
    return {ppm(value), ppm(digit)};
}

ShareReading percentRead(double value, double digit) {
    return {percent(value), percent(digit)};
}

FlueReadings read(double carbonMonoxide, double carbonDioxide, double oxygen) {
    return {ppmRead(carbonMonoxide), percentRead(carbonDioxide), percentRead(oxygen)};
}

Analyser zeroed() {
    Analyser analyser;
    analyser.zeroedOutdoors = true;
    return analyser;
}

const gas::Composition& named(const char* code) {
    return gas::namedGas(code)->composition;
}

gas::Stoichiometry burning(const char* code) {
    return gas::stoichiometry(named(code)).value();
}

rulebook::RuleBook confirmed() {
    const auto shipped = rulebook::RuleBook::shipped();
    std::vector<rulebook::Entry> entries(shipped.entries().begin(), shipped.entries().end());
    for (auto& entry : entries) {
        if (entry.isKnown()) {
            entry.provenance = rulebook::Provenance::Firm;
        }
    }
    return rulebook::RuleBook(std::move(entries));
}

rulebook::RulesInForce inForce(const rulebook::RuleBook& book) {
    return {book, rulebook::Edition::Up1bEd4, rulebook::Gas::NaturalGas,
            calendar::fromIso("2026-11-10").value()};
}

}  // namespace hearth::burner::flue
