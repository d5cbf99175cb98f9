// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/kind.h"

#include "core/base/blanks.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <iterator>

namespace hearth::record {

namespace {

using reg::Item;
using reg::VisitFile;
using rulebook::FindingKind;
using rulebook::Outcome;
namespace choice = reg::choice;

constexpr std::string_view kTightnessCode = "tightness_and_purge";
// In the order of the enumeration; a test holds it.
constexpr std::array<std::string_view, 15> kFieldCodes{"firm.name",
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
                                                       "visit.date"};

bool isBlank(const std::string& text) {
    return withoutOuterBlanks(text).empty();
}
bool isNumber(const quantity::Typed& typed) {
    return typed.value().has_value();
}

bool judged(const std::vector<judging::Judged>& findings, const reg::SubjectRef& test, FindingKind kind,
            Outcome outcome) {
    return std::any_of(findings.begin(), findings.end(), [&](const judging::Judged& j) {
        return j.subject == test && j.finding.kind == kind && j.finding.outcome == outcome;
    });
}

/// One visit while its record is being checked.
struct Check {
    const VisitFile& file;
    const std::vector<judging::Judged>& findings;

    [[nodiscard]] bool says(const reg::SubjectRef& test, rulebook::Say say) const {
        return std::any_of(findings.begin(), findings.end(), [&](const judging::Judged& j) {
            return j.subject == test && j.finding.why.say == say;
        });
    }
    [[nodiscard]] bool retestBegun(const reg::SubjectRef& test) const {
        constexpr std::array kRetest{Item::RetestStart, Item::RetestEnd, Item::RetestStartedAt,
                                     Item::RetestEndedAt};
        return std::any_of(kRetest.begin(), kRetest.end(),
                           [&](Item item) { return file.find(test, item) != nullptr; });
    }
    [[nodiscard]] bool purged(const reg::SubjectRef& test) const {
        return file.choiceOf(test, Item::PurgeDone) == choice::kYes;
    }
    /// The gauge of a test, or nothing.
    [[nodiscard]] const reg::Instrument* gauge(const reg::SubjectRef& test) const {
        return file.gaugeOf(reg::TestId{test.id});
    }

    [[nodiscard]] bool applies(When when, const reg::SubjectRef& on) const;
    [[nodiscard]] bool has(Field field, const reg::SubjectRef& on) const;
    [[nodiscard]] bool has(const Requirement& wanted, const reg::SubjectRef& on) const;
    [[nodiscard]] bool pipesKnown() const;
    [[nodiscard]] bool volumesTyped() const;
};

bool Check::applies(When when, const reg::SubjectRef& on) const {
    switch (when) {
        case When::Always:
            return true;
        case When::WhenTyped:
            return false;
        case When::PartTested:
            return file.choiceOf(on, Item::TestExtent) == choice::kPart;
        case When::Isolated:
            return file.choiceOf(on, Item::TestAppliances) == choice::kIsolated;
        case When::AppliancesOn:
            return file.choiceOf(on, Item::TestAppliances) == choice::kConnected;
        case When::NotStopped:
            return !stoppedByLetBy(findings, on);
        case When::LowUnexplained:
            return says(on, rulebook::Say::TestPressureLowUnexplained);
        case When::RetestBegun:
            return retestBegun(on);
        case When::FoundTight:
            return !stoppedByLetBy(findings, on) && !foundLeaking(findings, on);
        case When::Purged:
            return purged(on);
        case When::PurgedWithMeter:
            return purged(on) && file.installation.meterCode != "none";
        case When::PurgedToFlame:
            return purged(on) && file.choiceOf(on, Item::TestAppliances) != choice::kNoneConnected;
        case When::ElectronicGauge:
            return gauge(on) != nullptr && gauge(on)->kind == reg::InstrumentKind::ElectronicGauge;
    }
    return true;
}

bool Check::pipesKnown() const {
    const auto known = [](const reg::PipeSection& pipe) {
        return !pipe.underTest || isNumber(pipe.volume) || (!pipe.tubeCode.empty() && isNumber(pipe.length));
    };
    return !file.pipes.empty() && std::all_of(file.pipes.begin(), file.pipes.end(), known);
}

bool Check::volumesTyped() const {
    return !file.tests.empty() &&
           std::all_of(file.tests.begin(), file.tests.end(), [&](const reg::Test& test) {
               const reg::Entry* typed = file.find(reg::subject(test.id), Item::TestVolumeTyped);
               return isEmptyTest(file, test.id) || (typed != nullptr && !typed->canonical.empty());
           });
}

bool Check::has(Field field, const reg::SubjectRef& on) const {
    const reg::Engineer* engineer = file.engineer();
    const reg::Instrument* instrument = nullptr;
    switch (field) {
        case Field::FirmName:
            return !isBlank(file.firm.name);
        case Field::FirmAddress:
            return !isBlank(file.firm.address.line1) && !isBlank(file.firm.address.town);
        case Field::FirmRegistration:
            return !isBlank(file.firm.registrationNumber);
        case Field::PremisesAddress:
            return !isBlank(file.premises.address.line1);
        case Field::PremisesPostcode:
            return !isBlank(file.premises.address.postcode);
        case Field::CustomerName:
            return std::any_of(file.people.begin(), file.people.end(),
                               [](const VisitFile::Holder& holder) { return !isBlank(holder.party.name); });
        case Field::EngineerName:
            return engineer != nullptr && !isBlank(engineer->name);
        case Field::EngineerCard:
            return engineer != nullptr && !isBlank(engineer->cardNumber);
        case Field::InstallationGas:
            return true;  // a choice that always has a value
        case Field::InstallationMeter:
            return !file.installation.meterCode.empty();
        case Field::InstrumentSerial:
            instrument = gauge(on);
            return instrument != nullptr && !isBlank(instrument->serial);
        case Field::InstrumentCalibration:
            instrument = gauge(on);
            return instrument != nullptr && instrument->calibrationDue.has_value();
        case Field::PipeOrVolume:
            return pipesKnown() || volumesTyped();
        case Field::PipeOrder:
            return std::all_of(file.pipes.begin(), file.pipes.end(),
                               [](const reg::PipeSection& pipe) { return pipe.afterText.empty(); });
        case Field::VisitDate:
            return file.visit.dateText.empty();
    }
    return false;
}

bool Check::has(const Requirement& wanted, const reg::SubjectRef& on) const {
    if (wanted.field) {
        return !applies(wanted.when, on) || has(*wanted.field, on);
    }
    const reg::Entry* entry = file.find(on, *wanted.item);
    if (entry == nullptr || isBlank(entry->text)) {
        return !applies(wanted.when, on);
    }
    if (*wanted.item == Item::TestGauge) {
        return gauge(on) != nullptr;
    }
    const auto kind = reg::infoOf(*wanted.item).kind;
    if (kind == reg::ItemKind::Choice || kind == reg::ItemKind::YesNo) {
        return !file.choiceOf(on, *wanted.item).empty();
    }
    return !entry->canonical.empty();
}

bool isOfTest(const Requirement& wanted) {
    if (wanted.item) {
        return reg::infoOf(*wanted.item).subject == reg::SubjectKind::Test;
    }
    return wanted.field == Field::InstrumentSerial || wanted.field == Field::InstrumentCalibration;
}

reg::SubjectRef subjectOf(const Requirement& wanted, const VisitFile& file) {
    const bool installation = wanted.field == Field::InstallationGas ||
                              wanted.field == Field::InstallationMeter ||
                              wanted.field == Field::PipeOrVolume || wanted.field == Field::PipeOrder;
    return installation ? reg::subject(file.installation.id) : reg::subject(file.visit.id);
}

void check(const Check& check, std::span<const Requirement> wanted, std::optional<reg::SubjectRef> test,
           std::vector<Missing>& missing) {
    for (const auto& one : wanted) {
        const auto on = test.value_or(subjectOf(one, check.file));
        if (!check.has(one, on)) {
            const reg::Entry* entry = one.item ? check.file.find(on, *one.item) : nullptr;
            // These two are never empty: missing, they were typed so that they can't be read.
            const bool typed = (entry != nullptr && !isBlank(entry->text)) || one.field == Field::PipeOrder ||
                               one.field == Field::VisitDate;
            missing.push_back({one.item, one.field, on, std::string(one.source), typed});
        }
    }
}

/// The tests that the record speaks of: those with something entered; with none such, the first (so that it
/// is asked for).
std::vector<reg::SubjectRef> testsOf(const VisitFile& file) {
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

}  // namespace

std::string_view kindCode(RecordKind kind) {
    switch (kind) {
        case RecordKind::TightnessAndPurge:
            break;
    }
    return kTightnessCode;
}

std::optional<RecordKind> kindFromCode(std::string_view code) {
    return code == kTightnessCode ? std::optional(RecordKind::TightnessAndPurge) : std::nullopt;
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

std::vector<Missing> missingFor(RecordKind kind, const reg::VisitFile& file,
                                const std::vector<judging::Judged>& findings) {
    const Check one{file, findings};
    const auto wanted = requirementsOf(kind);
    const auto first = std::find_if(wanted.begin(), wanted.end(), isOfTest);
    const auto last = std::find_if_not(first, wanted.end(), isOfTest);
    std::vector<Missing> missing;
    check(one, {wanted.begin(), first}, std::nullopt, missing);
    for (const auto& test : testsOf(file)) {
        check(one, {first, last}, test, missing);
    }
    check(one, {last, wanted.end()}, std::nullopt, missing);
    return missing;
}

}  // namespace hearth::record
