// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/grounds.h"

#include "core/quantity/units.h"
#include "core/rulebook/conclude.h"
#include "core/rulebook/values.h"
#include "core/tightness/figures.h"

#include <utility>

namespace hearth::tightness {

using quantity::Figure;
using rulebook::Band;
using rulebook::Entry;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Rule;
using rulebook::RulesInForce;
using rulebook::Say;
using rulebook::Sentence;

namespace {

Finding tightnessFinding(const Change& change) {
    Finding finding{FindingKind::Tightness};
    finding.measured = figureOf(change);
    return finding;
}

/// A permissible drop that is one figure.
void holdAgainst(Finding& finding, const Change& change, const Entry& limit, Say within) {
    const auto shown = limitOf(limit);
    switch (standing(change, *rulebook::pressureChangeOf(limit))) {
        case Standing::Within:
            concludeWithin(finding, {within, {figureOf(change), shown}});
            break;
        case Standing::AtLimit:
            concludeAtLimit(finding, atLimitSentence(change, shown));
            break;
        case Standing::Beyond:
            concludeBeyond(finding, limit, {Say::FallBeyondDrop, {figureOf(change), shown}});
            break;
    }
}

Figure allowedFigure(const Band& band) {
    return {band.allowed, quantity::UnitCode::Millibar};
}

Sentence bandSentence(quantity::Volume volume, const Band& band) {
    return {Say::BandUsed,
            {figureOf(volume), Figure{band.upTo, quantity::UnitCode::CubicMetre}, allowedFigure(band)}};
}

/// For information only: what the withdrawn edition's table would have said of this meter and pipe.
void noteWithdrawnDrop(Finding& finding, const TestedPart& part, const RulesInForce& rules) {
    const auto rule = edition3DropRule(part);
    if (rules.edition() != rulebook::Edition::Up1bEd4 || !rule) {
        return;
    }
    if (const Entry* entry = rules.inEdition(*rule, rulebook::Edition::Up1bEd3)) {
        finding.notes.push_back({Say::Ed3WouldAllow, {limitOf(*entry)}});
    }
}

/// What the look-up in the bands lacks.
std::optional<Sentence> lackOf(const Entry* bands, const TestedPart& part) {
    const bool known = bands != nullptr && bands->isKnown();
    if (!part.volume) {
        return Sentence{known ? Say::VolumeUnknown : Say::LimitMissing};
    }
    if (!known) {
        return Sentence{Say::BandsEmpty, {figureOf(*part.volume)}};
    }
    if (bandFor(*rulebook::bandsOf(*bands), *part.volume) == nullptr) {
        return Sentence{Say::BeyondBands, {figureOf(*part.volume)}};
    }
    return std::nullopt;
}

}  // namespace

Standing standing(const Movement& movement) {
    return standing(movement.change, *rulebook::pressureChangeOf(*movement.threshold));
}

Sentence fallSentence(Say say, const Movement& movement) {
    return {say, {figureOf(movement.change), limitOf(*movement.threshold)}};
}

Sentence atLimitSentence(const Change& change, const Figure& limit) {
    return {Say::AtLimit, {figureOf(change), limit, uncertaintyOf(change)}};
}

Finding byNoMovement(const Movement& movement, Say beyond) {
    auto finding = tightnessFinding(movement.change);
    restOn(finding, *movement.threshold);
    switch (standing(movement)) {
        case Standing::Within:
            concludeWithin(finding, fallSentence(Say::TightNoMovement, movement));
            break;
        case Standing::AtLimit:
            concludeAtLimit(finding, atLimitSentence(movement.change, limitOf(*movement.threshold)));
            break;
        case Standing::Beyond:
            concludeBeyond(finding, *movement.threshold, fallSentence(beyond, movement));
            break;
    }
    return finding;
}

Finding byDropClass(const Change& change, const TestedPart& part, const RulesInForce& rules) {
    auto finding = tightnessFinding(change);
    const auto rule = edition3DropRule(part);
    if (!rule) {
        concludeOpen(finding, {Say::DropClassUnknown});
        return finding;
    }
    const Entry* limit = rules.known(*rule);
    if (limit == nullptr) {
        concludeOpen(finding, {Say::LimitMissing});
        return finding;
    }
    restOn(finding, *limit);
    holdAgainst(finding, change, *limit, Say::TightWithinDrop);
    return finding;
}

std::optional<Finding> byShortCut(const Change& change, const RulesInForce& rules) {
    const Entry* limit = rules.known(Rule::DropShortCut);
    if (limit == nullptr || standing(change, *rulebook::pressureChangeOf(*limit)) == Standing::Beyond) {
        return std::nullopt;
    }
    auto finding = tightnessFinding(change);
    restOn(finding, *limit);
    holdAgainst(finding, change, *limit, Say::ShortCutHolds);
    return finding;
}

Finding byBands(const Change& change, const TestedPart& part, const RulesInForce& rules) {
    auto finding = tightnessFinding(change);
    const Entry* bands = rules.find(Rule::DropByVolume);
    if (bands != nullptr) {
        restOn(finding, *bands);
    }
    if (auto lack = lackOf(bands, part)) {
        concludeOpen(finding, *lack);
        noteWithdrawnDrop(finding, part, rules);
        return finding;
    }
    const Band& band = *bandFor(*rulebook::bandsOf(*bands), *part.volume);
    const auto allowed = allowedFigure(band);
    finding.limit = allowed;
    switch (standing(change, allowedBy(band))) {
        case Standing::Within:
            concludeWithin(finding, {Say::TightWithinDrop, {figureOf(change), allowed}});
            break;
        case Standing::AtLimit:
            concludeAtLimit(finding, atLimitSentence(change, allowed));
            break;
        case Standing::Beyond:
            concludeBeyond(finding, *bands, {Say::FallBeyondDrop, {figureOf(change), allowed}});
            break;
    }
    finding.notes.push_back(bandSentence(*part.volume, band));
    return finding;
}

Finding bandLookUp(const TestedPart& part, const RulesInForce& rules) {
    Finding finding{FindingKind::VolumeBands};
    if (part.volume) {
        finding.measured = figureOf(*part.volume);
    }
    const Entry* bands = rules.find(Rule::DropByVolume);
    if (bands != nullptr) {
        restOn(finding, *bands);
    }
    if (auto lack = lackOf(bands, part)) {
        concludeOpen(finding, *lack);
        return finding;
    }
    const Band& band = *bandFor(*rulebook::bandsOf(*bands), *part.volume);
    finding.limit = Figure{band.upTo, quantity::UnitCode::CubicMetre};
    concludeWithin(finding, bandSentence(*part.volume, band));
    return finding;
}

std::optional<Finding> byRise(FindingKind kind, const Movement& movement) {
    const Movement rise{movement.change.reversed(), movement.threshold};
    const auto stands = standing(rise);
    const bool rose = rise.change.fall > quantity::PressureChange{};
    if (!rose || stands == Standing::Within) {
        return std::nullopt;
    }
    Finding finding{kind};
    finding.measured = figureOf(movement.change);
    restOn(finding, *movement.threshold);
    concludeAtLimit(finding, stands == Standing::Beyond
                                 ? Sentence{Say::RiseDuringTest, {figureOf(rise.change)}}
                                 : atLimitSentence(rise.change, limitOf(*movement.threshold)));
    return finding;
}

Finding better(Finding first, Finding second) {
    const bool firstIsGraver =
        first.outcome != second.outcome && graver(first.outcome, second.outcome) == first.outcome;
    return firstIsGraver ? std::move(second) : std::move(first);
}

}  // namespace hearth::tightness
