// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/kit.h"
#include "ui/visit/parts.h"
#include "ui/visit/what_first.h"

#include <QCoreApplication>

namespace hearth::ui::visit {

namespace {

using reg::Item;
using rulebook::FindingKind;

/// Purge and restore: while the test did not pass, gas stays off, and the part says so instead of asking.
class RestorePart : public PartView {
    Q_DECLARE_TR_FUNCTIONS(hearth::ui::visit::RestorePart)
  public:
    RestorePart(const SheetContext& context, const PartRef& ref, QWidget* parent);
    void refresh() override;

  private:
    [[nodiscard]] bool hasFailed() const;

    WhatFirst* m_keepOff;
};

RestorePart::RestorePart(const SheetContext& context, const PartRef& ref, QWidget* parent)
    : PartView(context, ref, parent), m_keepOff(new WhatFirst(this)) {
    addWidget(m_keepOff);
    auto* purge = addFields();
    addItem(purge, Item::PurgeDone, 6);
    addItem(purge, Item::PurgeMethod, 6);
    addItem(purge, Item::PurgeVolumePassed, 3);
    addItem(purge, Item::PurgeSteadyFlame, 3);
    addHeading(tr("Proved with leak detection fluid"));
    auto* joints = addFields();
    addItem(joints, Item::TestPointProved, 3);
    addItem(joints, Item::FluidWiped, 3);
    addItem(joints, Item::DisturbedJointsProved, 6);
    addHeading(tr("Pressures with the gas on"));
    auto* pressures = addFields();
    addItem(pressures, Item::StandingPressure, 2);
    addItem(pressures, Item::WorkingPressure, 2);
    addItem(pressures, Item::WorkingLoad, 2);
}

bool RestorePart::hasFailed() const {
    for (const auto kind : {FindingKind::LetBy, FindingKind::Tightness, FindingKind::IsolatedRetest}) {
        const judging::Judged* judged = finding(kind);
        if (judged != nullptr && judged->finding.outcome == rulebook::Outcome::Fail) {
            return true;
        }
    }
    return false;
}

void RestorePart::refresh() {
    PartView::refresh();
    if (!hasFailed()) {
        m_keepOff->setSteps({}, {});
        return;
    }
    m_keepOff->setSteps(
        tr("The test did not pass: the gas stays off"),
        {tr("Purge and restore only after the fault is put right and the test is repeated from the start.")});
}

}  // namespace

PartView* makeRestorePart(const SheetContext& context, const PartRef& ref, QWidget* parent) {
    return new RestorePart(context, ref, parent);
}

}  // namespace hearth::ui::visit
