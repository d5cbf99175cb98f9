// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rulebook/finding.h"

namespace hearth::testing {

inline quantity::Figure mbar(int mantissa, int decimals) {
    return {quantity::Decimal(mantissa, decimals), quantity::UnitCode::Millibar};
}

/// A finding about tightness as judging makes them: why, a note, a limit with its source. Invented readings.
inline rulebook::Finding sampleFinding(rulebook::Outcome outcome) {
    using namespace rulebook;
    Finding finding;
    finding.kind = FindingKind::Tightness;
    finding.outcome = outcome;
    finding.measured = mbar(4, 2);
    finding.limit = mbar(20, 2);
    finding.comparison = Comparison::Below;
    finding.why = {Say::TightNoMovement, {mbar(4, 2), mbar(20, 2)}};
    finding.notes.push_back(Sentence{Say::DoFailNoSmell, {}});
    Entry entry;
    entry.key = {Rule::NoMovementElectronic, Edition::Up1bEd4, std::nullopt};
    entry.value = mbar(20, 2);
    entry.comparison = Comparison::Below;
    entry.provenance = Provenance::Secondary;
    entry.standard = "IGEM/UP/1B Edition 4";
    entry.clause = "a clause";
    entry.source = "a place where it was read";
    entry.doubt = "what is doubtful about it";
    finding.limits.push_back(entry);
    return finding;
}

}  // namespace hearth::testing
