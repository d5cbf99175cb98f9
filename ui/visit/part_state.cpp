// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/part_state.h"

#include "ui/visit/wanted.h"

#include <algorithm>

namespace hearth::ui::visit {

using rulebook::Outcome;

namespace {

int countOf(const PartRef& part, const SheetFacts& facts, Outcome outcome) {
    return static_cast<int>(
        std::count_if(facts.findings.begin(), facts.findings.end(), [&](const judging::Judged& judged) {
            return judged.finding.outcome == outcome && isWorthShowing(judged, facts.file) &&
                   partOf(judged, facts.file) == part;
        }));
}

int missingIn(const PartRef& part, const SheetFacts& facts) {
    return static_cast<int>(
        std::count_if(facts.missing.begin(), facts.missing.end(),
                      [&](const record::Missing& missing) { return partOf(missing, facts.file) == part; }));
}

bool hasEntries(const PartRef& part, const reg::VisitFile& file) {
    return std::any_of(file.entries.begin(), file.entries.end(), [&](const reg::Entry& entry) {
        return partAt(partOf(entry.item), entry.subject, file) == part;
    });
}

bool isStarted(const PartRef& part, const reg::VisitFile& file) {
    if (part.kind == PartKind::WhoAndWhere) {
        return true;  // a visit always has its premises and its day
    }
    if (part.kind == PartKind::Situation) {
        return true;  // somebody said that it is unsafe
    }
    if (part.kind == PartKind::Pipework && (!file.installation.meterCode.empty() || !file.pipes.empty())) {
        return true;
    }
    return hasEntries(part, file);
}

/// The engineer's own answers say so: filled in is not in order.
bool hasDefects(const PartRef& part, const reg::VisitFile& file) {
    if (part.kind != PartKind::Appliance) {
        return false;
    }
    const auto on = subjectOf(part, file);
    return file.choiceOf(on, reg::Item::DefectsFound) == reg::choice::kFound ||
           file.choiceOf(on, reg::Item::SafeToUse) == reg::choice::kNo;
}

bool isStillOpen(const PartRef& part, const reg::VisitFile& file) {
    return part.index < file.situations.size() && !file.situations[part.index].closedAt;
}

/// A list says how many there are; what is to do stands in the parts of its own.
PartState stateOfList(const PartRef& part, const SheetFacts& facts) {
    const auto there =
        part.kind == PartKind::Situations ? facts.file.situations.size() : facts.file.appliances.size();
    if (const int missing = missingIn(part, facts)) {
        return {PartWord::ToFill, missing};
    }
    return {there == 0 ? PartWord::NoneThere : PartWord::Listed, static_cast<int>(there)};
}

PartState stateOfRecords(const SheetFacts& facts) {
    if (facts.issued > 0) {
        return {PartWord::Issued, facts.issued};
    }
    const int missing = static_cast<int>(facts.missing.size());
    return missing > 0 ? PartState{PartWord::ToFill, missing} : PartState{PartWord::ReadyToIssue};
}

}  // namespace

Outcome shapeOf(PartWord word) {
    switch (word) {
        case PartWord::Fails:
        case PartWord::Defects:
            return Outcome::Fail;
        case PartWord::LookAgain:
        case PartWord::StillOpen:
            return Outcome::LookAgain;
        case PartWord::Done:
        case PartWord::Issued:
            return Outcome::Pass;
        default:
            return Outcome::NoVerdict;
    }
}

PartState stateOf(const PartRef& part, const SheetFacts& facts) {
    if (part.kind == PartKind::Records) {
        return stateOfRecords(facts);
    }
    if (part.kind == PartKind::Appliances || part.kind == PartKind::Situations) {
        return stateOfList(part, facts);
    }
    if (part.kind == PartKind::Tightness && facts.running == part.index) {
        return {PartWord::Running};
    }
    if (const int fails = countOf(part, facts, Outcome::Fail)) {
        return {PartWord::Fails, fails};
    }
    if (!isStarted(part, facts.file)) {
        return {PartWord::NotStarted};
    }
    if (const int advice = countOf(part, facts, Outcome::LookAgain)) {
        return {PartWord::LookAgain, advice};
    }
    if (const int missing = missingIn(part, facts)) {
        return {PartWord::ToFill, missing};
    }
    if (hasDefects(part, facts.file)) {
        return {PartWord::Defects};
    }
    if (part.kind == PartKind::Situation && isStillOpen(part, facts.file)) {
        return {PartWord::StillOpen};
    }
    if (const int open = countOf(part, facts, Outcome::NoVerdict)) {
        return {PartWord::NoVerdict, open};
    }
    return {PartWord::Done};
}

}  // namespace hearth::ui::visit
