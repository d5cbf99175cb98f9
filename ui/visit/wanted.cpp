// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/wanted.h"

#include "core/rulebook/standard.h"

#include <algorithm>
#include <initializer_list>

namespace hearth::ui::visit {

using judging::Judged;
using reg::Item;
using rulebook::FindingKind;
using rulebook::Say;

namespace {

bool says(const rulebook::Finding& finding, std::initializer_list<Say> any) {
    const auto isOne = [&](const rulebook::Sentence& sentence) {
        return std::find(any.begin(), any.end(), sentence.say) != any.end();
    };
    return isOne(finding.why) || std::any_of(finding.notes.begin(), finding.notes.end(), isOne);
}

bool saysOf(const reg::SubjectRef& subject, const std::vector<Judged>& findings,
            std::initializer_list<Say> any) {
    return std::any_of(findings.begin(), findings.end(), [&](const Judged& judged) {
        return judged.subject == subject && says(judged.finding, any);
    });
}

bool isRetest(Item item) {
    return item >= Item::RetestStart && item <= Item::RetestEndedAt;
}

}  // namespace

bool isRetestWanted(const reg::SubjectRef& test, const reg::VisitFile& file,
                    const std::vector<Judged>& findings) {
    const auto isHeld = [&](Item item) { return file.find(test, item) != nullptr; };
    const std::initializer_list<Item> items{Item::RetestStart, Item::RetestEnd, Item::RetestStartedAt,
                                            Item::RetestEndedAt};
    return std::any_of(items.begin(), items.end(), isHeld) ||
           saysOf(test, findings, {Say::RetestNeeded, Say::RetestClear, Say::RetestMoved});
}

bool isWanted(Item item, const reg::SubjectRef& subject, const reg::VisitFile& file,
              const std::vector<Judged>& findings) {
    if (item == Item::TestEdition) {
        // Where only one is allowed it is kept without asking; another one that was kept before has to be
        // seen.
        const auto only = rulebook::editionsAllowedOn(file.visit.date).only();
        const auto said = file.choiceOf(subject, item);
        const auto onlyCode = only == rulebook::Edition::Up1bEd3 ? reg::choice::kEd3 : reg::choice::kEd4;
        return !only || (file.find(subject, item) != nullptr && said != onlyCode);
    }
    if (file.find(subject, item) != nullptr) {
        return true;
    }
    if (isRetest(item)) {
        return isRetestWanted(subject, file, findings);
    }
    switch (item) {
        case Item::VisualNotes:
            return file.choiceOf(subject, Item::VisualInspection) == reg::choice::kDefects;
        case Item::TestPartDescription:
            return file.choiceOf(subject, Item::TestExtent) == reg::choice::kPart;
        case Item::LowPressureReason:
            return saysOf(
                subject, findings,
                {Say::TestPressureLow, Say::TestPressureLowAccepted, Say::TestPressureLowUnexplained});
        case Item::PurgeMethod:
        case Item::PurgeVolumePassed:
        case Item::PurgeSteadyFlame:
            return file.choiceOf(subject, Item::PurgeDone) == reg::choice::kYes;
        default:
            return true;
    }
}

bool isWorthShowing(const Judged& judged, const reg::VisitFile& file) {
    if (judged.finding.outcome != rulebook::Outcome::NoVerdict) {
        return true;
    }
    const auto& kind = judged.finding.kind;
    const bool aboutInstallation = kind == FindingKind::Scope || kind == FindingKind::Volume;
    if (aboutInstallation) {
        const bool isFirst = file.tests.empty() || judged.subject == reg::subject(file.tests.front().id);
        return isFirst && (!file.installation.meterCode.empty() || !file.pipes.empty());
    }
    // The readings that a finding is about come first; what else it looks at (the gauge, what is tested)
    // follows.
    constexpr std::size_t kReadings = 2;
    const auto last =
        judged.about.begin() + static_cast<std::ptrdiff_t>(std::min(kReadings, judged.about.size()));
    return std::any_of(judged.about.begin(), last,
                       [&](Item item) { return file.find(judged.subject, item) != nullptr; });
}

}  // namespace hearth::ui::visit
