// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/part.h"

#include <algorithm>
#include <set>

namespace hearth::ui::visit {

using record::Field;
using record::RecordKind;
using reg::Item;
using reg::SubjectKind;
using rulebook::FindingKind;

namespace {

/// A check, and work on an appliance, are seldom done without a tightness test, though their records ask for
/// none (common practice, no source).
bool offersTest(RecordKind kind) {
    return kind == RecordKind::LandlordSafety || kind == RecordKind::OwnerSafety ||
           kind == RecordKind::Commissioning;
}

/// The parts in which the records that the visit can issue ask for something, and in which something stands.
std::set<PartKind> neededParts(const reg::VisitFile& file) {
    std::set<PartKind> needed{PartKind::WhoAndWhere, PartKind::BeforeYouStart, PartKind::Situations,
                              PartKind::HandOver, PartKind::Records};
    for (const RecordKind kind : record::kindsOf(file)) {
        for (const record::Requirement& wanted : record::requirementsOf(kind)) {
            needed.insert(wanted.item ? partOf(*wanted.item) : partOf(*wanted.field));
        }
        if (offersTest(kind)) {
            needed.insert({PartKind::Pipework, PartKind::Tightness, PartKind::Restore});
        }
    }
    for (const reg::Entry& entry : file.entries) {
        needed.insert(partOf(entry.item));
    }
    if (needed.count(PartKind::Tightness) > 0 || needed.count(PartKind::Restore) > 0) {
        needed.insert({PartKind::Pipework, PartKind::Tightness, PartKind::Restore});
    }
    return needed;
}

/// Whether a record that the visit can issue accounts for that appliance, or something was entered of it.
bool isSpokenOf(const reg::Appliance& appliance, const reg::VisitFile& file) {
    if (file.hasEntries(reg::subject(appliance.id))) {
        return true;
    }
    const auto kinds = record::kindsOf(file);
    return std::any_of(kinds.begin(), kinds.end(), [&](RecordKind kind) {
        const auto wanted = record::requirementsOf(kind);
        const bool asksOfAppliances = std::any_of(wanted.begin(), wanted.end(), [](const auto& one) {
            return one.item && reg::infoOf(*one.item).subject == SubjectKind::Appliance;
        });
        const auto all = record::appliancesFor(kind, file);
        return asksOfAppliances && std::find(all.begin(), all.end(), appliance) != all.end();
    });
}

template <class List>
std::size_t indexOf(const List& list, const reg::SubjectRef& subject) {
    for (std::size_t index = 0; index < list.size(); ++index) {
        if (reg::subject(list[index].id) == subject) {
            return index;
        }
    }
    return list.size();
}

template <class List>
reg::SubjectRef subjectAt(const List& list, std::size_t index, const reg::SubjectRef& otherwise) {
    return index < list.size() ? reg::subject(list[index].id) : otherwise;
}

}  // namespace

std::vector<PartRef> partsOf(const reg::VisitFile& file, const std::vector<reg::ApplianceId>& taken) {
    const auto needed = neededParts(file);
    std::vector<PartRef> parts;
    const auto put = [&](PartKind kind, std::size_t index = 0) {
        if (needed.count(kind) > 0) {
            parts.push_back({kind, index});
        }
    };
    for (const PartKind kind : {PartKind::WhoAndWhere, PartKind::BeforeYouStart, PartKind::Rooms,
                                PartKind::Investigation, PartKind::Pipework}) {
        put(kind);
    }
    for (std::size_t test = 0; test < file.tests.size(); ++test) {
        put(PartKind::Tightness, test);
        put(PartKind::Restore, test);
    }
    put(PartKind::Larger);
    if (needed.count(PartKind::Appliance) > 0 || !taken.empty()) {
        parts.push_back({PartKind::Appliances});
    }
    for (std::size_t index = 0; index < file.appliances.size(); ++index) {
        const reg::Appliance& appliance = file.appliances[index];
        if (isSpokenOf(appliance, file) ||
            std::find(taken.begin(), taken.end(), appliance.id) != taken.end()) {
            parts.push_back({PartKind::Appliance, index});
        }
    }
    put(PartKind::Situations);
    for (std::size_t index = 0; index < file.situations.size(); ++index) {
        parts.push_back({PartKind::Situation, index});
    }
    put(PartKind::HandOver);
    put(PartKind::Records);
    return parts;
}

PartKind partOf(Item item) {
    switch (reg::infoOf(item).subject) {
        case SubjectKind::Installation:
            return PartKind::Larger;
        case SubjectKind::Appliance:
            return PartKind::Appliance;
        case SubjectKind::Situation:
            return PartKind::Situation;
        case SubjectKind::Room:
            return item == Item::RoomCo || item == Item::RoomCoAt || item == Item::RoomCoPlace
                       ? PartKind::Investigation
                       : PartKind::Rooms;
        case SubjectKind::Test:
            // The catalogue stands in the order of the sheet but for the volume, which is typed beside the
            // pipes.
            return item == Item::TestVolumeTyped ? PartKind::Pipework
                   : item < Item::PurgeDone      ? PartKind::Tightness
                                                 : PartKind::Restore;
        case SubjectKind::Visit:
            break;
    }
    if (item <= Item::VisitPresent || (item >= Item::VisitLandlordCheck && item <= Item::VisitUnsafe) ||
        item == Item::VisitAnalyser || item == Item::VisitGauge) {
        return PartKind::WhoAndWhere;
    }
    if (item <= Item::VisualNotes || (item >= Item::GasOnArrival && item <= Item::MainBonding)) {
        return PartKind::BeforeYouStart;
    }
    return item >= Item::CallFrom && item < Item::CauseFound ? PartKind::Investigation : PartKind::HandOver;
}

PartKind partOf(Field field) {
    switch (field) {
        case Field::InstallationGas:
        case Field::InstallationMeter:
        case Field::PipeOrVolume:
        case Field::PipeOrder:
            return PartKind::Pipework;
        case Field::InstrumentSerial:
        case Field::InstrumentCalibration:
            return PartKind::Tightness;
        case Field::ApplianceChecked:
            return PartKind::Appliances;
        case Field::ApplianceKind:
        case Field::ApplianceMake:
        case Field::ApplianceModel:
        case Field::ApplianceSerial:
        case Field::AppliancePlace:
        case Field::ApplianceFlue:
            return PartKind::Appliance;
        case Field::RoomNamed:
            return PartKind::Rooms;
        case Field::SituationDanger:
        case Field::SituationWhat:
        case Field::SituationWhere:
            return PartKind::Situation;
        default:
            return PartKind::WhoAndWhere;
    }
}

PartKind partOf(FindingKind kind) {
    switch (kind) {
        case FindingKind::SafeToTouch:
        case FindingKind::OpenEnds:
        case FindingKind::SmellOnArrival:
        case FindingKind::VisualInspection:
            return PartKind::BeforeYouStart;
        case FindingKind::EngineerCard:
        case FindingKind::EngineerCategories:
        case FindingKind::AnalyserCalibration:
            return PartKind::WhoAndWhere;
        case FindingKind::Scope:
        case FindingKind::Volume:
        case FindingKind::PressureDropDesign:
        case FindingKind::PressureDropMeasured:
            return PartKind::Pipework;
        case FindingKind::Purge:
        case FindingKind::JointsProved:
        case FindingKind::StandingPressure:
        case FindingKind::WorkingPressure:
            return PartKind::Restore;
        default:
            return PartKind::Tightness;
    }
}

PartRef partAt(PartKind kind, const reg::SubjectRef& subject, const reg::VisitFile& file) {
    const auto at = [&](const auto& list, PartKind otherwise) -> PartRef {
        const std::size_t index = indexOf(list, subject);
        return index < list.size() ? PartRef{kind, index} : PartRef{otherwise};
    };
    switch (kind) {
        case PartKind::Tightness:
        case PartKind::Restore:
            return at(file.tests, kind);
        case PartKind::Appliance:
            return at(file.appliances, PartKind::Appliances);
        case PartKind::Situation:
            return at(file.situations, PartKind::Situations);
        default:
            return {kind};
    }
}

PartRef partOf(const record::Missing& missing, const reg::VisitFile& file) {
    const PartKind kind = missing.item    ? partOf(*missing.item)
                          : missing.field ? partOf(*missing.field)
                                          : PartKind::WhoAndWhere;
    return partAt(kind, missing.subject, file);
}

PartRef partOf(const judging::Judged& judged, const reg::VisitFile& file) {
    switch (judged.subject.kind) {
        case SubjectKind::Appliance:
            return partAt(PartKind::Appliance, judged.subject, file);
        case SubjectKind::Situation:
            return partAt(PartKind::Situation, judged.subject, file);
        case SubjectKind::Installation:
            return {partOf(judged.finding.kind) == PartKind::Pipework ? PartKind::Pipework
                                                                      : PartKind::Larger};
        case SubjectKind::Room:
            return {judged.about.empty() ? PartKind::Rooms : partOf(judged.about.front())};
        case SubjectKind::Visit:
        case SubjectKind::Test:
            break;
    }
    return partAt(partOf(judged.finding.kind), judged.subject, file);
}

reg::SubjectRef subjectOf(const PartRef& ref, const reg::VisitFile& file) {
    const auto visit = reg::subject(file.visit.id);
    switch (ref.kind) {
        case PartKind::Tightness:
        case PartKind::Restore:
            return subjectAt(file.tests, ref.index, visit);
        case PartKind::Appliance:
            return subjectAt(file.appliances, ref.index, visit);
        case PartKind::Situation:
            return subjectAt(file.situations, ref.index, visit);
        case PartKind::Larger:
            return reg::subject(file.installation.id);
        default:
            return visit;
    }
}

}  // namespace hearth::ui::visit
