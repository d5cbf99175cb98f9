// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/wanted.h"

#include "core/register/appliance_kinds.h"
#include "core/rulebook/standard.h"

#include <algorithm>
#include <initializer_list>

namespace hearth::ui::visit {

using judging::Judged;
using record::RecordKind;
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

/// What makes a commissioning or a service record speak of an appliance: asked first, the rest follows.
bool opensWork(Item item) {
    return item == Item::NewOrReplacement || item == Item::ServiceKind;
}

bool speaksOf(RecordKind kind, const reg::SubjectRef& appliance, const reg::VisitFile& file) {
    const auto all = record::appliancesFor(kind, file);
    return std::any_of(all.begin(), all.end(),
                       [&](const reg::Appliance& one) { return reg::subject(one.id) == appliance; });
}

/// Which readings of an inspected appliance are offered before anybody asks for more: those that most
/// appliances give. A flueless one has no flue gas to read.
bool isOfferedFirst(Item item, const reg::SubjectRef& subject, const reg::VisitFile& file) {
    if (reg::isOfSomeKinds(item)) {
        const auto seen = file.choiceOf(subject, Item::ApplianceInspected);
        return !seen.empty() && seen != reg::choice::kNotInspected;
    }
    if (item == Item::SafeToUse) {
        return reg::isCapped(file, subject);
    }
    if (item == Item::SituationToldAt || item == Item::SituationToldReference) {
        // What stays on against advice: when it was told, and under which reference, is the proof of it.
        return file.choiceOf(subject, Item::SituationPermission) == reg::choice::kRefused;
    }
    if (subject.kind != reg::SubjectKind::Appliance ||
        file.choiceOf(subject, Item::ApplianceInspected) != reg::choice::kInspected) {
        return false;
    }
    const auto isFlueless = [&] {
        return std::any_of(file.appliances.begin(), file.appliances.end(), [&](const reg::Appliance& one) {
            return reg::subject(one.id) == subject && one.flue == reg::FlueType::Flueless;
        });
    };
    switch (item) {
        case Item::ExaminedPressure:
        case Item::ExaminedHeatInput:
        case Item::BurnerPressure:
            return true;
        case Item::HeatInputBasis:
            return file.find(subject, Item::HeatInputRead) != nullptr;
        case Item::FlueCoHigh:
        case Item::FlueRatioPrinted:
            return !isFlueless();
        default:
            return false;
    }
}

/// Of what is capped its engineer may still declare whether it is
/// safe to use, though no record waits for it.
bool mayBeDeclared(Item item, const reg::SubjectRef& subject, const reg::VisitFile& file) {
    return item == Item::SafeToUse && reg::isCapped(file, subject);
}

/// What a kind of record asks, of every appliance and of some.
template <class Do>
void eachRequirement(RecordKind kind, const Do& perform) {
    for (const record::Requirement& wanted : record::requirementsOf(kind)) {
        perform(wanted);
    }
    for (const record::Requirement& wanted : record::requirementsOfSomeKinds(kind)) {
        perform(wanted);
    }
}

/// Now, or once it is capped: such fields come and go without the part being made anew.
bool couldBeAsked(Item item, const reg::SubjectRef& subject, const reg::VisitFile& file) {
    const auto found =
        std::find_if(file.appliances.begin(), file.appliances.end(),
                     [&](const reg::Appliance& one) { return reg::subject(one.id) == subject; });
    return found == file.appliances.end() || reg::canBeAsked(item, found->kind, false) ||
           reg::canBeAsked(item, found->kind, true);
}

/// Beyond the tightness test everything follows from the records that the visit can issue.
bool followsKinds(Item item) {
    const auto subject = reg::infoOf(item).subject;
    const bool isOfTest = subject == reg::SubjectKind::Test;
    const bool isBefore = item >= Item::SmellOnArrival && item <= Item::VisualInspection;
    return !isOfTest && (isBefore || item > Item::ReceivedBy);
}

/// The questions before a test belong to it, whatever record it is for.
bool isBeforeTest(Item item, const reg::VisitFile& file) {
    const bool asked = item == Item::OpenEnds || item == Item::SafeToTouch || item == Item::VisualInspection;
    return asked && std::any_of(file.tests.begin(), file.tests.end(),
                                [&](const reg::Test& test) { return !record::isEmptyTest(file, test.id); });
}

}  // namespace

Asking askingOf(Item item, const reg::SubjectRef& subject, const reg::VisitFile& file,
                const std::vector<Judged>& findings) {
    Asking asking = Asking::Not;
    if (!reg::canBeAsked(item, subject, file)) {
        return asking;
    }
    for (const RecordKind kind : record::kindsOf(file)) {
        eachRequirement(kind, [&](const record::Requirement& wanted) {
            const bool isMeant =
                wanted.item == item && (subject.kind != reg::SubjectKind::Appliance || opensWork(item) ||
                                        item == Item::ApplianceInspected || speaksOf(kind, subject, file));
            if (isMeant && record::isAsked(wanted, subject, file, findings)) {
                asking = Asking::Asked;
            } else if (isMeant && asking == Asking::Not &&
                       (wanted.when == record::When::WhenTyped || mayBeDeclared(item, subject, file))) {
                asking = Asking::MayBeLeftOut;
            }
        });
    }
    return asking;
}

std::vector<Item> itemsAskedOf(const reg::SubjectRef& subject, const reg::VisitFile& file) {
    std::vector<Item> items;
    const auto put = [&](Item item) {
        if (reg::infoOf(item).subject == subject.kind && couldBeAsked(item, subject, file)) {
            items.push_back(item);
        }
    };
    // What is answered of an unsafe situation decides which of its records are owed.
    const auto owed = record::kindsOf(file);
    const auto every = record::allKinds();
    const auto kinds = subject.kind == reg::SubjectKind::Situation
                           ? std::vector<RecordKind>(every.begin(), every.end())
                           : owed;
    for (const RecordKind record : kinds) {
        eachRequirement(record, [&](const record::Requirement& wanted) {
            if (wanted.item) {
                put(*wanted.item);
            }
        });
    }
    for (const reg::Entry& entry : file.entries) {
        put(entry.item);
    }
    std::sort(items.begin(), items.end());
    items.erase(std::unique(items.begin(), items.end()), items.end());
    return items;
}

bool isKeptAtPremises(const record::Missing& missing) {
    using record::Field;
    return missing.field == Field::PremisesAddress || missing.field == Field::PremisesPostcode ||
           missing.field == Field::LandlordName || missing.field == Field::LandlordAddress ||
           missing.field == Field::RecipientAddress;
}

bool isKeptElsewhere(const record::Missing& missing) {
    using record::Field;
    if (!missing.field || isKeptAtPremises(missing)) {
        return missing.field.has_value();
    }
    switch (*missing.field) {
        case Field::FirmName:
        case Field::FirmAddress:
        case Field::FirmRegistration:
        case Field::EngineerCard:
        case Field::InstrumentSerial:
        case Field::InstrumentCalibration:
        case Field::AnalyserSerial:
        case Field::AnalyserCalibration:
        case Field::InstrumentSerials:
        case Field::InstrumentDates:
            return true;
        default:
            return false;
    }
}

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
    if (item == Item::SmellOnArrival) {
        return true;  // nose first, whatever the visit is for
    }
    if (followsKinds(item)) {
        const auto asking = askingOf(item, subject, file, findings);
        return asking == Asking::Asked || isBeforeTest(item, file) ||
               (asking == Asking::MayBeLeftOut && isOfferedFirst(item, subject, file));
    }
    if (isRetest(item)) {
        return isRetestWanted(subject, file, findings);
    }
    switch (item) {
        case Item::VisualNotes:
            return file.choiceOf(subject, Item::VisualInspection) == reg::choice::kDefects;
        case Item::TestPartDescription:
            return file.choiceOf(subject, Item::TestExtent) == reg::choice::kPart;
        case Item::TestPipesShut:
            return file.tests.size() > 1;  // a leak is looked for by comparing tests
        case Item::TestVolumeOff:          // where leaks are told in figures
            return file.tests.size() > 1 || file.traceOf(reg::TestId{subject.id}) != nullptr;
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
    if (kind == FindingKind::EngineerCard || kind == FindingKind::EngineerCategories ||
        kind == FindingKind::AnalyserCalibration) {
        return true;
    }
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
