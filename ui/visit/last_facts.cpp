// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/last_facts.h"

#include <algorithm>

namespace hearth::ui::visit {

using reg::Item;

namespace {

std::string canonicalText(const reg::VisitFile& file, const reg::SubjectRef& subject, Item item) {
    const reg::Entry* entry = file.find(subject, item);
    return entry == nullptr ? std::string() : entry->canonical;
}

std::string nextRoom(const reg::VisitFile& file, const reg::VisitFile& last) {
    const auto here = file.rooms();
    for (const reg::SubjectRef& room : last.rooms()) {
        const std::string name = canonicalText(last, room, Item::RoomName);
        const bool isHere = std::any_of(here.begin(), here.end(), [&](const reg::SubjectRef& one) {
            return canonicalText(file, one, Item::RoomName) == name;
        });
        if (!name.empty() && !isHere) {
            return name;
        }
    }
    return {};
}

std::string ofSameRoom(const reg::SubjectRef& room, Item item, const reg::VisitFile& file,
                       const reg::VisitFile& last) {
    const std::string name = canonicalText(file, room, Item::RoomName);
    for (const reg::SubjectRef& one : last.rooms()) {
        if (!name.empty() && canonicalText(last, one, Item::RoomName) == name) {
            return canonicalText(last, one, item);
        }
    }
    return {};
}

}  // namespace

bool isFact(Item item) {
    switch (item) {
        case Item::RoomName:
        case Item::RoomCoAlarmExpiry:
        case Item::RoomSmokeAlarmExpiry:
        case Item::FlueRoute:
        case Item::CondensateRoute:
        case Item::ServiceInterval:
            return true;
        default:
            return false;
    }
}

Result<std::optional<reg::VisitFile>> visitBefore(const store::Store& store, const reg::VisitFile& file) {
    const auto lines = store.visitsOf(file.premises.id);
    if (!lines) {
        return tl::unexpected(lines.error());
    }
    for (const store::VisitLine& line : *lines) {  // newest first
        const bool isBefore =
            line.visit.date < file.visit.date ||
            (line.visit.date == file.visit.date && line.visit.startedAt < file.visit.startedAt);
        if (!(line.visit.id == file.visit.id) && isBefore &&
            line.visit.installation == file.installation.id) {
            auto last = store.visitFile(line.visit.id);
            if (!last) {
                return tl::unexpected(last.error());
            }
            return std::optional(std::move(*last));
        }
    }
    return std::optional<reg::VisitFile>();
}

std::string lastFactOf(const reg::SubjectRef& subject, Item item, const reg::VisitFile& file,
                       const reg::VisitFile& last) {
    if (!isFact(item) || file.find(subject, item) != nullptr) {
        return {};
    }
    if (subject.kind == reg::SubjectKind::Room) {
        return item == Item::RoomName ? nextRoom(file, last) : ofSameRoom(subject, item, file, last);
    }
    return canonicalText(last, subject, item);
}

}  // namespace hearth::ui::visit
