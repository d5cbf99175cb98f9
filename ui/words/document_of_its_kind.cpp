// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/appliance_kinds.h"
#include "ui/words/document_parts.h"

namespace hearth::ui::words {

const char* titleOfKind(std::string_view kind, bool capped) {
    if (capped) {
        return QT_TRANSLATE_NOOP("Words", "Decommissioned and capped");
    }
    if (reg::isLpgSystem(kind)) {
        return QT_TRANSLATE_NOOP("Words", "The LPG system");
    }
    return kind == reg::choice::kCatering ? QT_TRANSLATE_NOOP("Words", "The kitchen")
           : reg::isGasAppliance(kind)
               ? QT_TRANSLATE_NOOP("Words", "Further")
               : QT_TRANSLATE_NOOP("Words", "Unvented cylinder: noted only, no judgement of the gas work");
}

bool isBurning(const DocumentPage& page, const reg::Appliance& appliance) {
    return reg::burnsGas(appliance.kind) && !reg::isCapped(page.file(), reg::subject(appliance.id));
}

std::vector<reg::Item> thoseOfKind(const DocumentPage& page, const reg::SubjectRef& on,
                                   std::span<const reg::Item> items) {
    std::vector<reg::Item> meant;
    for (const auto item : items) {
        if (reg::canBeAsked(item, on, page.file()) || page.has(on, item)) {
            meant.push_back(item);
        }
    }
    return meant;
}

void addOfItsKind(const DocumentPage& page, const reg::Appliance& appliance, Blocks& blocks) {
    const auto on = reg::subject(appliance.id);
    record::FieldGrid grid;
    for (const auto& wanted : record::requirementsOfSomeKinds(page.input().kind)) {
        if (record::isAsked(wanted, on, page.file(), page.findings())) {
            grid.fields.push_back(page.captioned(on, *wanted.item));
        } else {
            page.addIfGiven(grid, on, *wanted.item);
        }
    }
    if (!grid.fields.empty()) {
        grid.title = page.text(titleOfKind(appliance.kind, reg::isCapped(page.file(), on)));
        blocks.emplace_back(std::move(grid));
    }
}

}  // namespace hearth::ui::words
