// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/document_parts.h"

#include <algorithm>

/// Photographs of what the record speaks of.
namespace hearth::ui::words {

namespace {

/// The situation's own words, where it has any.
std::string situationName(const DocumentPage& page, const reg::Situation& situation) {
    return situation.what.empty() ? page.text(QT_TRANSLATE_NOOP("Words", "Unsafe situation"))
                                  : situation.what;
}

/// Records of pipework, of building work and of instruments show no appliance and no situation.
bool showsPictures(record::RecordKind kind) {
    switch (kind) {
        case record::RecordKind::LandlordSafety:
        case record::RecordKind::OwnerSafety:
        case record::RecordKind::Commissioning:
        case record::RecordKind::Service:
        case record::RecordKind::WarningNotice:
        case record::RecordKind::RoomInvestigation:
        case record::RecordKind::ReportableEntry:
            return true;
        default:
            return false;
    }
}

/// What a picture is of, worded; nothing where the record does not speak of it.
std::optional<std::string> nameOfSubject(const DocumentPage& page, const reg::SubjectRef& subject) {
    for (const auto& appliance : appliancesOf(page)) {
        if (reg::subject(appliance.id) == subject) {
            return utf8(applianceName(page, appliance));
        }
    }
    for (const auto& situation : page.file().situations) {
        if (reg::subject(situation.id) == subject) {
            return situationName(page, situation);
        }
    }
    return std::nullopt;
}

}  // namespace

void addPictures(const DocumentPage& page, Blocks& blocks) {
    if (!showsPictures(page.input().kind)) {
        return;
    }
    record::Pictures pictures;
    for (const auto& one : page.input().pictures) {
        if (auto of = nameOfSubject(page, one.subject)) {
            pictures.pictures.push_back(one.picture);
            pictures.pictures.back().of = std::move(*of);
        }
    }
    if (!pictures.pictures.empty()) {
        pictures.title = page.text(QT_TRANSLATE_NOOP("Words", "Photographs"));
        blocks.emplace_back(std::move(pictures));
    }
}

}  // namespace hearth::ui::words
