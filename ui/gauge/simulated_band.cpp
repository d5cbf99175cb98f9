// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gauge/simulated_band.h"

#include "ui/gauge/gauge_words.h"
#include "ui/shell/kit.h"

#include <QFrame>
#include <QVBoxLayout>

namespace hearth::ui::gauge {

QWidget* makeSimulatedBand(QWidget* parent) {
    auto* band = new QFrame(parent);
    band->setProperty("ground", QStringLiteral("demo"));
    auto* inside = new QVBoxLayout(band);
    inside->setContentsMargins(look::kGap, look::kGap / 2, look::kGap, look::kGap / 2);
    auto* said = new shell::Text(GaugeWords::simulated(), look::TypeRole::Body, look::Role::OnDemoBand, band);
    said->setWordWrap(true);
    inside->addWidget(said);
    band->setObjectName(QStringLiteral("simulatedBand"));
    band->setAccessibleName(GaugeWords::simulated());
    band->hide();
    return band;
}

}  // namespace hearth::ui::gauge
