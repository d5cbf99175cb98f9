// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/kind.h"

#include "core/register/appliance_kinds.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <iterator>
#include <utility>

namespace hearth::record {

namespace {

using reg::Item;
using reg::VisitFile;
using rulebook::FindingKind;
using rulebook::Outcome;
namespace choice = reg::choice;

// In the order of the enumeration; a test holds it.
constexpr std::array<std::string_view, 14> kKindCodes{
    "tightness_and_purge", "landlord_safety",          "owner_safety",    "installation_commissioning",
    "service_maintenance", "strength_tightness_purge", "warning_notice",  "room_investigation",
    "reportable_entry",    "building_notice",          "calibration_log", "reminder_letter",
    "no_access_letter",    "covering_letter"};
constexpr std::array kKinds{
    RecordKind::TightnessAndPurge, RecordKind::LandlordSafety,    RecordKind::OwnerSafety,
    RecordKind::Commissioning,     RecordKind::Service,           RecordKind::LargerPipework,
    RecordKind::WarningNotice,     RecordKind::RoomInvestigation, RecordKind::ReportableEntry,
    RecordKind::BuildingNotice,    RecordKind::CalibrationLog,    RecordKind::ReminderLetter,
    RecordKind::NoAccessLetter,    RecordKind::CoveringLetter};
// In the order of the enumeration; a test holds it.
constexpr std::array<std::string_view, 34> kFieldCodes{"firm.name",
                                                       "firm.address",
                                                       "firm.registration",
                                                       "premises.address",
                                                       "premises.postcode",
                                                       "customer.name",
                                                       "engineer.name",
                                                       "engineer.card",
                                                       "installation.gas",
                                                       "installation.meter",
                                                       "gauge.serial",
                                                       "gauge.calibration",
                                                       "installation.pipe_or_volume",
                                                       "installation.pipe_order",
                                                       "visit.date",
                                                       "landlord.name",
                                                       "landlord.address",
                                                       "owner.name",
                                                       "appliance.checked",
                                                       "appliance.kind",
                                                       "appliance.make",
                                                       "appliance.model",
                                                       "appliance.serial",
                                                       "appliance.place",
                                                       "appliance.flue",
                                                       "analyser.serial",
                                                       "analyser.calibration",
                                                       "room.named",
                                                       "situation.danger",
                                                       "situation.what",
                                                       "situation.where",
                                                       "instruments.serial",
                                                       "instruments.calibration",
                                                       "recipient.address"};

bool judged(const std::vector<judging::Judged>& findings, const reg::SubjectRef& test, FindingKind kind,
            Outcome outcome) {
    return std::any_of(findings.begin(), findings.end(), [&](const judging::Judged& j) {
        return j.subject == test && j.finding.kind == kind && j.finding.outcome == outcome;
    });
}

bool isWork(const reg::VisitFile& file, Item item) {
    return file.choiceOf(reg::subject(file.visit.id), item) == choice::kYes;
}

/// Whether something was entered of the kind's own items ("service.", "commissioning.").
bool speaksOf(const reg::VisitFile& file, const reg::Appliance& appliance, std::string_view prefix) {
    const auto on = reg::subject(appliance.id);
    return std::any_of(file.entries.begin(), file.entries.end(), [&](const reg::Entry& entry) {
        return entry.subject == on && reg::infoOf(entry.item).code.substr(0, prefix.size()) == prefix;
    });
}

/// What the engineer declared of one appliance.
Outcome declared(const reg::VisitFile& file, const reg::Appliance& appliance) {
    const auto on = reg::subject(appliance.id);
    const auto safe = file.choiceOf(on, Item::SafeToUse);
    if (safe == choice::kNo) {
        return Outcome::Fail;
    }
    const bool whole = file.choiceOf(on, Item::ApplianceInspected) == choice::kInspected;
    const bool clean = file.choiceOf(on, Item::DefectsFound) == choice::kNoneFound;
    return safe == choice::kYes && whole && clean ? Outcome::Pass : Outcome::LookAgain;
}

Outcome outcomeOfAppliances(RecordKind kind, const VisitFile& file,
                            const std::vector<judging::Judged>& findings) {
    auto appliances = appliancesFor(kind, file);
    // What is noted beside the gas work makes no outcome, unless its engineer declared something of it.
    std::erase_if(appliances, [&](const reg::Appliance& one) {
        return !reg::isGasAppliance(one.kind) && file.choiceOf(reg::subject(one.id), Item::SafeToUse).empty();
    });
    if (appliances.empty()) {
        return Outcome::NoVerdict;
    }
    Outcome outcome = Outcome::Pass;
    for (const auto& appliance : appliances) {
        outcome = graver(outcome, declared(file, appliance));
        for (const auto& one : findings) {
            if (one.subject == reg::subject(appliance.id)) {
                // A reading that nobody can judge does not take a declaration back, but it is no pass.
                outcome = graver(outcome, one.finding.outcome == Outcome::NoVerdict ? Outcome::LookAgain
                                                                                    : one.finding.outcome);
            }
        }
    }
    const bool tested = std::any_of(file.tests.begin(), file.tests.end(),
                                    [&](const reg::Test& test) { return !isEmptyTest(file, test.id); });
    if (tested && record::outcomeOf(file, findings) == Outcome::Fail) {
        return Outcome::Fail;
    }
    return file.situations.empty() ? outcome : graver(outcome, Outcome::LookAgain);
}

/// The gravest of what was found of the pipework; nothing found is no verdict.
Outcome outcomeOfLarger(const VisitFile& file, const std::vector<judging::Judged>& findings) {
    Outcome outcome = Outcome::Pass;
    bool any = false;
    for (const auto& one : findings) {
        // A pressure drop that is small enough says nothing of strength and tightness.
        const bool isDrop = one.finding.kind == rulebook::FindingKind::PressureDropDesign ||
                            one.finding.kind == rulebook::FindingKind::PressureDropMeasured;
        if (one.subject == reg::subject(file.installation.id) && !isDrop) {
            outcome = graver(outcome, one.finding.outcome);
            any = true;
        }
    }
    return any ? outcome : Outcome::NoVerdict;
}

}  // namespace

std::span<const RecordKind> allKinds() {
    return kKinds;
}

std::string_view kindCode(RecordKind kind) {
    return kKindCodes.at(static_cast<std::size_t>(kind));
}

std::optional<RecordKind> kindFromCode(std::string_view code) {
    const auto* const found =
        std::find_if(kKinds.begin(), kKinds.end(), [&](RecordKind kind) { return kindCode(kind) == code; });
    return found == kKinds.end() ? std::nullopt : std::optional(*found);
}

std::vector<RecordKind> kindsOf(const reg::VisitFile& file) {
    constexpr std::array<std::pair<Item, RecordKind>, 7> kWorks{{
        {Item::VisitLandlordCheck, RecordKind::LandlordSafety},
        {Item::VisitOwnerCheck, RecordKind::OwnerSafety},
        {Item::VisitInstallation, RecordKind::Commissioning},
        {Item::VisitService, RecordKind::Service},
        {Item::VisitPipework, RecordKind::TightnessAndPurge},
        {Item::VisitLarger, RecordKind::LargerPipework},
        {Item::VisitRoomCo, RecordKind::RoomInvestigation},
    }};
    std::vector<RecordKind> kinds;
    for (const auto& [item, kind] : kWorks) {
        if (isWork(file, item)) {
            kinds.push_back(kind);
        }
    }
    if (isWork(file, Item::VisitInstallation)) {
        kinds.push_back(RecordKind::BuildingNotice);
    }
    if (!file.situations.empty()) {
        kinds.push_back(RecordKind::WarningNotice);
    }
    if (std::any_of(file.situations.begin(), file.situations.end(), [&](const reg::Situation& situation) {
            return file.choiceOf(reg::subject(situation.id), Item::SituationReportable) == choice::kYes;
        })) {
        kinds.push_back(RecordKind::ReportableEntry);
    }
    if (kinds.empty() && !isWork(file, Item::VisitUnsafe)) {
        kinds.push_back(RecordKind::TightnessAndPurge);
    }
    return kinds;
}

std::string_view fieldCode(Field field) {
    return kFieldCodes.at(static_cast<std::size_t>(field));
}

bool isEmptyTest(const reg::VisitFile& file, reg::TestId test) {
    const auto on = reg::subject(test);
    return std::none_of(file.entries.begin(), file.entries.end(),
                        [&](const reg::Entry& entry) { return entry.subject == on; });
}

bool stoppedByLetBy(const std::vector<judging::Judged>& findings, const reg::SubjectRef& test) {
    return judged(findings, test, FindingKind::LetBy, Outcome::Fail);
}

bool foundLeaking(const std::vector<judging::Judged>& findings, const reg::SubjectRef& test) {
    return judged(findings, test, FindingKind::Tightness, Outcome::Fail) ||
           judged(findings, test, FindingKind::IsolatedRetest, Outcome::Fail);
}

rulebook::Outcome outcomeOf(const reg::VisitFile& file, const std::vector<judging::Judged>& findings) {
    const auto last = std::find_if(file.tests.rbegin(), file.tests.rend(),
                                   [&](const reg::Test& test) { return !isEmptyTest(file, test.id); });
    return last == file.tests.rend() ? Outcome::NoVerdict : judging::overall(findings, last->id);
}

std::vector<judging::Judged> shownFindings(const reg::VisitFile& file,
                                           const std::vector<judging::Judged>& findings) {
    std::vector<judging::Judged> shown;
    std::copy_if(findings.begin(), findings.end(), std::back_inserter(shown), [&](const judging::Judged& j) {
        return j.subject.kind != reg::SubjectKind::Test || !isEmptyTest(file, reg::TestId{j.subject.id});
    });
    return shown;
}

std::vector<reg::Appliance> appliancesFor(RecordKind kind, const reg::VisitFile& file) {
    std::vector<reg::Appliance> appliances;
    std::copy_if(file.appliances.begin(), file.appliances.end(), std::back_inserter(appliances),
                 [&](const reg::Appliance& appliance) {
                     switch (kind) {
                         case RecordKind::Commissioning:
                         case RecordKind::BuildingNotice:
                             return speaksOf(file, appliance, "commissioning.");
                         case RecordKind::Service:
                             return speaksOf(file, appliance, "service.");
                         case RecordKind::RoomInvestigation:
                             return file.hasEntries(reg::subject(appliance.id));
                         default:
                             return true;
                     }
                 });
    return appliances;
}

std::vector<reg::SubjectRef> testsFor(const VisitFile& file) {
    std::vector<reg::SubjectRef> made;
    for (const auto& test : file.tests) {
        if (!isEmptyTest(file, test.id)) {
            made.push_back(reg::subject(test.id));
        }
    }
    if (made.empty()) {
        made.push_back(file.tests.empty() ? reg::subject(reg::TestId{}) : reg::subject(file.tests[0].id));
    }
    return made;
}

bool isPutRight(const reg::VisitFile& file, const reg::Situation& situation) {
    return file.choiceOf(reg::subject(situation.id), Item::SituationMadeSafe) == choice::kPutRight;
}

bool isAllPutRight(const reg::VisitFile& file) {
    return !file.situations.empty() &&
           std::all_of(file.situations.begin(), file.situations.end(),
                       [&file](const reg::Situation& one) { return isPutRight(file, one); });
}

rulebook::Outcome outcomeOf(RecordKind kind, const reg::VisitFile& file,
                            const std::vector<judging::Judged>& findings) {
    switch (kind) {
        case RecordKind::TightnessAndPurge:
            return outcomeOf(file, findings);
        case RecordKind::LandlordSafety:
        case RecordKind::OwnerSafety:
        case RecordKind::Commissioning:
        case RecordKind::Service:
            return outcomeOfAppliances(kind, file, findings);
        case RecordKind::WarningNotice:
            return isAllPutRight(file) ? Outcome::LookAgain : Outcome::Fail;
        case RecordKind::ReportableEntry:
            return Outcome::Fail;
        case RecordKind::RoomInvestigation:
            return file.situations.empty() ? Outcome::LookAgain : Outcome::Fail;
        case RecordKind::LargerPipework:
            return outcomeOfLarger(file, findings);
        case RecordKind::BuildingNotice:
        case RecordKind::CalibrationLog:
        case RecordKind::ReminderLetter:
        case RecordKind::NoAccessLetter:
        case RecordKind::CoveringLetter:
            break;
    }
    return Outcome::NoVerdict;
}

}  // namespace hearth::record
