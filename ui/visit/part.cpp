// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/part.h"

namespace hearth::ui::visit {

using record::Field;
using reg::Item;
using rulebook::FindingKind;

std::vector<PartRef> partsOf(const reg::VisitFile& file) {
    std::vector<PartRef> parts{{PartKind::WhoAndWhere}, {PartKind::BeforeYouStart}, {PartKind::Pipework}};
    for (std::size_t test = 0; test < file.tests.size(); ++test) {
        parts.push_back({PartKind::Tightness, test});
        parts.push_back({PartKind::Restore, test});
    }
    parts.push_back({PartKind::HandOver});
    parts.push_back({PartKind::Records});
    return parts;
}

PartKind partOf(Item item) {
    // The catalogue stands in the order of the sheet but for the volume, which is typed beside the pipes.
    if (item == Item::TestVolumeTyped) {
        return PartKind::Pipework;
    }
    if (item <= Item::VisitPresent) {
        return PartKind::WhoAndWhere;
    }
    if (item <= Item::VisualNotes) {
        return PartKind::BeforeYouStart;
    }
    if (item < Item::PurgeDone) {
        return PartKind::Tightness;
    }
    return item < Item::VisitRemarks ? PartKind::Restore : PartKind::HandOver;
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
        case FindingKind::Scope:
        case FindingKind::Volume:
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
    if (kind != PartKind::Tightness && kind != PartKind::Restore) {
        return {kind};
    }
    for (std::size_t test = 0; test < file.tests.size(); ++test) {
        if (reg::subject(file.tests[test].id) == subject) {
            return {kind, test};
        }
    }
    return {kind};
}

PartRef partOf(const record::Missing& missing, const reg::VisitFile& file) {
    const PartKind kind = missing.item    ? partOf(*missing.item)
                          : missing.field ? partOf(*missing.field)
                                          : PartKind::WhoAndWhere;
    return partAt(kind, missing.subject, file);
}

}  // namespace hearth::ui::visit
