// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/parts.h"

#include "ui/visit/part_lists.h"
#include "ui/visit/part_records.h"
#include "ui/visit/part_situation.h"
#include "ui/visit/part_tightness.h"

namespace hearth::ui::visit {

PartView* makePart(const SheetContext& context, const PartRef& ref, QWidget* parent) {
    switch (ref.kind) {
        case PartKind::WhoAndWhere:
            return makeWhoPart(context, parent);
        case PartKind::BeforeYouStart:
            return makeBeforePart(context, parent);
        case PartKind::Rooms:
            return makeRoomsPart(context, parent);
        case PartKind::Investigation:
            return makeInvestigationPart(context, parent);
        case PartKind::Larger:
            return makeLargerPart(context, parent);
        case PartKind::Appliances:
        case PartKind::Situations:
            return new ListPart(context, ref, parent);
        case PartKind::Appliance:
            return makeAppliancePart(context, ref, parent);
        case PartKind::Situation:
            return new SituationPart(context, ref, parent);
        case PartKind::Pipework:
            return makePipeworkPart(context, parent);
        case PartKind::Tightness:
            return new TightnessPart(context, ref, parent);
        case PartKind::Restore:
            return makeRestorePart(context, ref, parent);
        case PartKind::HandOver:
            return makeHandOverPart(context, parent);
        case PartKind::Records:
            break;
    }
    return new RecordsPart(context, parent);
}

}  // namespace hearth::ui::visit
