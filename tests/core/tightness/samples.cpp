// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/tightness/samples.h"

#include "core/quantity/units.h"
#include "core/tightness/stages.h"

#include <stdexcept>

namespace hearth::tightness::samples {

using rulebook::Edition;
using rulebook::Entry;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Gas;
using rulebook::Outcome;
using rulebook::Provenance;
using rulebook::RuleBook;
using rulebook::RulesInForce;

const calendar::Date kSeptember = calendar::fromIso("2026-09-15").value();
const calendar::Date kNovember = calendar::fromIso("2026-11-10").value();

namespace {

template <class Change>
void changeEntry(RuleBook& book, const rulebook::RuleKey& key, Change change) {
    std::vector<Entry> entries(book.entries().begin(), book.entries().end());
    for (auto& entry : entries) {
        if (entry.key == key) {
            change(entry);
            book = RuleBook(std::move(entries));
            return;
        }
    }
    throw std::logic_error("no such entry");
}

}  // namespace

quantity::PressureChange millibar(double value) {
    return {value, quantity::kMillibar};
}

quantity::GaugePressure gaugeMillibar(double value) {
    return {value, quantity::kMillibar};
}

quantity::Volume cubicMetres(double value) {
    return {value, quantity::kCubicMetre};
}

quantity::Duration seconds(double value) {
    return {value, quantity::kSecond};
}

Reading reading(double value, double digit) {
    return {gaugeMillibar(value), millibar(digit)};
}

Stage stage(double start, double end, double took, double digit) {
    return {reading(start, digit), reading(end, digit), seconds(took)};
}

Gauge electronic(double step) {
    return {GaugeKind::Electronic, millibar(step), std::nullopt, millibar(0.2)};
}

Gauge water() {
    return {GaugeKind::Water, millibar(0.5), std::nullopt, std::nullopt};
}

RuleBook allConfirmed() {
    const auto shipped = RuleBook::shipped();
    std::vector<Entry> entries(shipped.entries().begin(), shipped.entries().end());
    for (auto& entry : entries) {
        if (entry.isKnown()) {
            entry.provenance = Provenance::Firm;
        }
    }
    return RuleBook(std::move(entries));
}

void setProvenance(RuleBook& book, const rulebook::RuleKey& key, Provenance provenance) {
    changeEntry(book, key, [&](Entry& entry) { entry.provenance = provenance; });
}

void empty(RuleBook& book, const rulebook::RuleKey& key) {
    changeEntry(book, key, [](Entry& entry) { entry.value = std::monostate{}; });
}

void layFigure(RuleBook& book, const rulebook::RuleKey& key, const quantity::Figure& figure) {
    changeEntry(book, key, [&](Entry& entry) {
        entry.value = figure;
        entry.provenance = Provenance::Firm;
    });
}

void layBands(RuleBook& book, const rulebook::RuleKey& key) {
    using quantity::Decimal;
    const std::vector<rulebook::Band> bands{{Decimal(1, 2), Decimal(4, 0)}, {Decimal(35, 3), Decimal(2, 0)}};
    changeEntry(book, key, [&](Entry& entry) {
        entry.value = bands;
        entry.provenance = Provenance::Firm;
    });
}

RulesInForce edition3(const RuleBook& book, Gas gas) {
    return {book, Edition::Up1bEd3, gas, kSeptember};
}

RulesInForce edition4(const RuleBook& book, Gas gas) {
    return {book, Edition::Up1bEd4, gas, kNovember};
}

TestedPart part(const char* meter, double nominal, double volume) {
    return {pipework::meterByCode(meter), nominal, true, cubicMetres(volume)};
}

TightnessInput test(double fall, double digit) {
    TightnessInput input;
    input.conduct = {Work::Existing, Extent::Whole, Appliances::Connected, Pilots::Out, false};
    input.part = part("u6_g4", 22);
    input.gauge = electronic(digit);
    input.test = stage(20.5, 20.5 - fall, 120, digit);
    input.assumed = {0.07, quantity::kKelvin};
    return input;
}

TightnessFindings judged(const TightnessInput& input, const RulesInForce& rules) {
    Finding right{FindingKind::LetBy};
    right.outcome = Outcome::Pass;
    return tightness(input, {&right, &right, &right, &right, &right}, rules);
}

}  // namespace hearth::tightness::samples
