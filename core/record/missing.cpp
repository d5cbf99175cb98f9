// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/blanks.h"
#include "core/record/requirements.h"

#include <algorithm>
#include <utility>

/// What a record misses, in the order of the sheet.
namespace hearth::record {

namespace {

using reg::Item;
using reg::VisitFile;

/// Of what a requirement is asked: once of the visit or its installation, or of each test, appliance, room or
/// situation.
reg::SubjectKind askedOf(const Requirement& wanted) {
    if (wanted.item) {
        return reg::infoOf(*wanted.item).subject;
    }
    switch (*wanted.field) {
        case Field::InstrumentSerial:
        case Field::InstrumentCalibration:
            return reg::SubjectKind::Test;
        case Field::InstallationGas:
        case Field::InstallationMeter:
        case Field::PipeOrVolume:
        case Field::PipeOrder:
            return reg::SubjectKind::Installation;
        case Field::ApplianceKind:
        case Field::ApplianceMake:
        case Field::ApplianceModel:
        case Field::ApplianceSerial:
        case Field::AppliancePlace:
        case Field::ApplianceFlue:
            return reg::SubjectKind::Appliance;
        case Field::SituationDanger:
        case Field::SituationWhat:
        case Field::SituationWhere:
            return reg::SubjectKind::Situation;
        default:
            return reg::SubjectKind::Visit;
    }
}

/// What is asked of each of several stands together: a group is asked of one subject after the other. Rooms
/// and the readings taken in them are subjects of one kind, but two groups.
struct AskedGroup {
    reg::SubjectKind kind = reg::SubjectKind::Visit;
    bool reading = false;
    bool operator==(const AskedGroup&) const = default;
};
AskedGroup groupOf(const Requirement& wanted) {
    const auto kind = askedOf(wanted);
    const bool reading =
        wanted.item == Item::RoomCo || wanted.item == Item::RoomCoAt || wanted.item == Item::RoomCoPlace;
    return {kind == reg::SubjectKind::Installation ? reg::SubjectKind::Visit : kind, reading};
}

/// Nothing there, where there must be one, is asked of nobody in particular.
template <class List>
std::vector<reg::SubjectRef> subjectsOf(const List& list, reg::SubjectKind kind, bool oneAtLeast) {
    std::vector<reg::SubjectRef> subjects;
    subjects.reserve(list.size() + 1);
    for (const auto& one : list) {
        subjects.push_back(reg::subject(one.id));
    }
    if (subjects.empty() && oneAtLeast) {
        subjects.push_back({kind, {}});
    }
    return subjects;
}

std::vector<reg::SubjectRef> readingsOf(const VisitFile& file) {
    auto readings = file.roomReadings();
    return readings.empty() ? std::vector<reg::SubjectRef>{{reg::SubjectKind::Room, {}}} : readings;
}

std::vector<reg::SubjectRef> asked(AskedGroup group, RecordKind kind, const VisitFile& file) {
    switch (group.kind) {
        case reg::SubjectKind::Test:
            return testsFor(file);
        case reg::SubjectKind::Appliance:
            return subjectsOf(appliancesFor(kind, file), group.kind, kind != RecordKind::RoomInvestigation);
        case reg::SubjectKind::Room:
            // A record that one is asked of says so by Field::RoomNamed.
            return group.reading ? readingsOf(file) : file.rooms();
        case reg::SubjectKind::Situation:
            return subjectsOf(file.situations, group.kind,
                              kind == RecordKind::WarningNotice || kind == RecordKind::ReportableEntry);
        case reg::SubjectKind::Visit:
        case reg::SubjectKind::Installation:
            break;
    }
    return {reg::subject(file.visit.id)};
}

/// One visit, and what was found to be missing of it.
struct Missed {
    const VisitFile& file;
    const std::vector<judging::Judged>& findings;
    std::vector<Missing> missing = {};

    void check(const Requirement& wanted, const reg::SubjectRef& on);
};

void Missed::check(const Requirement& wanted, const reg::SubjectRef& on) {
    if (isMet(wanted, on, file, findings)) {
        return;
    }
    const reg::Entry* entry = wanted.item ? file.find(on, *wanted.item) : nullptr;
    // These two are never empty: missing, they were typed so that they can't be read.
    const bool typed = (entry != nullptr && !withoutOuterBlanks(entry->text).empty()) ||
                       wanted.field == Field::PipeOrder || wanted.field == Field::VisitDate;
    missing.push_back({wanted.item, wanted.field, on, std::string(wanted.source), typed});
}

}  // namespace

std::vector<Missing> missingFor(RecordKind kind, const reg::VisitFile& file,
                                const std::vector<judging::Judged>& findings) {
    Missed missed{file, findings};
    const auto wanted = requirementsOf(kind);
    bool appliancesAsked = false;
    for (auto first = wanted.begin(); first != wanted.end();) {
        const auto group = groupOf(*first);
        const auto last =
            std::find_if_not(first, wanted.end(), [&](const Requirement& w) { return groupOf(w) == group; });
        const auto ofKinds = group.kind == reg::SubjectKind::Appliance && !appliancesAsked
                                 ? requirementsOfSomeKinds(kind)
                                 : std::span<const Requirement>();
        appliancesAsked = appliancesAsked || group.kind == reg::SubjectKind::Appliance;
        for (const auto& on : asked(group, kind, file)) {
            std::for_each(first, last, [&](const Requirement& one) {
                const bool installation = askedOf(one) == reg::SubjectKind::Installation;
                missed.check(one, installation ? reg::subject(file.installation.id) : on);
            });
            for (const auto& one : ofKinds) {
                missed.check(one, on);
            }
        }
        first = last;
    }
    return std::move(missed.missing);
}

}  // namespace hearth::record
