// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/installation.h"

#include "core/rulebook/values.h"
#include "core/tightness/volume_off.h"

#include <algorithm>

namespace hearth::judging {

using pipework::SectionInput;
using pipework::VolumeInput;
using reg::Item;
using tightness::Appliances;
using tightness::Extent;
using tightness::Pilots;
using tightness::Work;

namespace {

enum class Sections { All, AsMarked };

SectionInput sectionInput(const reg::PipeSection& section, Sections which) {
    SectionInput input;
    input.underTest = which == Sections::All || section.underTest;
    const auto typed = volumeOf(section.volume);
    input.typedVolume = typed.value;
    input.length = lengthOf(section.length).value;
    // A typed volume that can't be read was meant to replace the tube's: the section is not known then.
    input.tube = pipework::tubeByCode(section.tubeCode);
    if (typed.unreadable) {
        input.length.reset();
    }
    return input;
}

VolumeInput volumeInput(const reg::VisitFile& file, Sections which, const rulebook::RuleBook& book) {
    VolumeInput input;
    const auto typed = volumeOf(file.installation.meterVolume);
    input.meterTyped = typed.value;
    input.meter = typed.unreadable ? nullptr : pipework::meterByCode(file.installation.meterCode);
    input.sections.reserve(file.pipes.size());
    for (const auto& section : file.pipes) {
        input.sections.push_back(sectionInput(section, which));
    }
    const auto* share = book.find({rulebook::Rule::FittingsShare});
    input.fittingsShare =
        share == nullptr ? input.fittingsShare : rulebook::factorOf(*share).value_or(input.fittingsShare);
    return input;
}

/// A positive step of a display or scale; what can't be read or is nought says nothing.
std::optional<quantity::PressureChange> positive(const quantity::Typed& typed) {
    const auto given = pressureChangeOf(typed);
    return given && *given > quantity::PressureChange{} ? given.value : std::nullopt;
}

}  // namespace

std::optional<Extent> extentOf(const Readings& test) {
    return test.choice<Extent>(Item::TestExtent,
                               {{reg::choice::kWhole, Extent::Whole}, {reg::choice::kPart, Extent::Part}});
}

Volumes volumesOf(const reg::VisitFile& file, const Readings& test, const rulebook::RuleBook& book) {
    const auto typed = test.volume(Item::TestVolumeTyped);
    const bool whole = extentOf(test) == Extent::Whole;
    Volumes volumes;
    volumes.typedUnreadable = typed.unreadable;

    auto all = volumeInput(file, Sections::All, book);
    all.typedTotal = whole ? typed.value : std::nullopt;
    volumes.whole = pipework::volume(all);
    if (whole) {
        volumes.tested = volumes.whole;
    } else {
        auto marked = volumeInput(file, Sections::AsMarked, book);
        marked.typedTotal = typed.value;
        volumes.tested = pipework::volume(marked);
    }
    if (volumes.typedUnreadable) {
        volumes.tested.total.reset();
        if (whole) {
            volumes.whole.total.reset();
        }
    }
    return volumes;
}

std::optional<quantity::Volume> volumeReached(const reg::VisitFile& file, const Readings& test,
                                              const rulebook::RuleBook& book,
                                              const std::vector<bool>& sections) {
    const auto typed = test.volume(Item::TestVolumeTyped);
    if (typed.unreadable) {
        return std::nullopt;
    }
    auto input = volumeInput(file, Sections::All, book);
    input.typedTotal = typed.value;
    for (std::size_t at = 0; at < input.sections.size(); ++at) {
        input.sections[at].underTest = at < sections.size() && sections[at];
    }
    const auto report = pipework::volume(input);
    const bool isMeterAlone =
        !report.typedTotal && !input.sections.empty() &&
        std::none_of(sections.begin(), sections.end(), [](bool isReached) { return isReached; });
    return isMeterAlone ? report.meter : report.total;
}

quantity::TemperatureChange assumedChange(const Readings& test, const rulebook::RuleBook& book) {
    if (const auto said = test.temperatureChange(Item::AssumedTemperatureChange)) {
        return *said < quantity::TemperatureChange{} ? -*said : *said;
    }
    const auto* entry = book.find({rulebook::Rule::AssumedTemperatureChange});
    return entry == nullptr ? quantity::TemperatureChange{}
                            : rulebook::temperatureChangeOf(*entry).value_or(quantity::TemperatureChange{});
}

std::optional<quantity::Share> volumeOffOf(const Readings& test) {
    const auto said = test.share(Item::TestVolumeOff);
    const bool isPart = said && said->value >= quantity::Share{} && said->value < tightness::kVolumeOffBelow;
    return isPart ? std::optional(said->value) : std::nullopt;
}

tightness::TestedPart testedPart(const reg::VisitFile& file, const pipework::VolumeReport& report) {
    return {pipework::meterByCode(file.installation.meterCode), report.largestNominal, report.nominalKnown,
            report.total};
}

tightness::ScopeInput scopeInput(const reg::VisitFile& file, const pipework::VolumeReport& whole) {
    return {whole.total,
            whole.largestNominal,
            whole.nominalKnown,
            pipework::meterByCode(file.installation.meterCode),
            gaugePressureOf(file.installation.operatingPressure),
            gaugePressureOf(file.installation.supplyPressure)};
}

tightness::Conduct conductOf(const Readings& test) {
    namespace choice = reg::choice;
    return {
        test.choice<Work>(Item::TestWork, {{choice::kNew, Work::New}, {choice::kExisting, Work::Existing}}),
        extentOf(test),
        test.choice<Appliances>(Item::TestAppliances, {{choice::kConnected, Appliances::Connected},
                                                       {choice::kIsolated, Appliances::Isolated},
                                                       {choice::kNoneConnected, Appliances::NoneConnected}}),
        test.choice<Pilots>(Item::TestPilots, {{choice::kOut, Pilots::Out},
                                               {choice::kNoneFitted, Pilots::NoneFitted},
                                               {choice::kLeftLit, Pilots::LeftLit}}),
        test.yesNo(Item::TestSmell)};
}

std::optional<tightness::Gauge> gaugeFrom(const reg::Instrument& instrument) {
    tightness::Gauge gauge;
    switch (instrument.kind) {
        case reg::InstrumentKind::ElectronicGauge:
        case reg::InstrumentKind::CombustionAnalyser:  // many have a pressure channel
            gauge.kind = tightness::GaugeKind::Electronic;
            break;
        case reg::InstrumentKind::WaterGauge:
            gauge.kind = tightness::GaugeKind::Water;
            break;
        case reg::InstrumentKind::LeakDetector:
        case reg::InstrumentKind::VoltageIndicator:
        case reg::InstrumentKind::Other:
            return std::nullopt;
    }
    gauge.resolution = positive(instrument.resolution);
    gauge.repeatability = positive(instrument.repeatability);
    gauge.accuracy = positive(instrument.accuracy);
    gauge.drift = positive(instrument.drift);
    return gauge;
}

}  // namespace hearth::judging
