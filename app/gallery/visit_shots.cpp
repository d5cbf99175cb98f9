// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures of the visit sheet beyond the tightness test.
#include "app/gallery/shots.h"
#include "app/issue.h"
#include "ui/visit/sheet.h"
#include "ui/visit/sheet_model.h"
#include "ui/visit/trace_area.h"
#include "ui/visit/visits_place.h"

#include <QApplication>
#include <QScrollArea>
#include <QScrollBar>

#include <algorithm>
#include <array>

namespace hearth::app::gallery {
namespace {

using record::RecordKind;
using ui::visit::PartKind;
using ui::visit::PartRef;

/// Which part of which kind of visit: the demonstration's first visit that owes such a record.
struct Picture {
    const char* name;
    RecordKind of;
    PartRef part;
};
constexpr std::array kPictures{
    Picture{"visit-landlord-who", RecordKind::LandlordSafety, {PartKind::WhoAndWhere}},
    Picture{"visit-landlord-rooms", RecordKind::LandlordSafety, {PartKind::Rooms}},
    Picture{"visit-landlord-appliances", RecordKind::LandlordSafety, {PartKind::Appliances}},
    Picture{"visit-landlord-appliance", RecordKind::LandlordSafety, {PartKind::Appliance, 0}},
    Picture{"visit-commissioning-appliance", RecordKind::Commissioning, {PartKind::Appliance, 0}},
    Picture{"visit-commissioning-hand-over", RecordKind::Commissioning, {PartKind::HandOver}},
    Picture{"visit-investigation", RecordKind::RoomInvestigation, {PartKind::Investigation}},
    Picture{"visit-unsafe-situation", RecordKind::WarningNotice, {PartKind::Situation, 0}},
    Picture{"visit-records-of-several-kinds", RecordKind::WarningNotice, {PartKind::Records}},
};

/// The demonstration's visit with traces: one test each.
constexpr std::array kTraces{"visit-trace-cools", "visit-trace-leak-under-warming", "visit-trace-let-by",
                             "visit-trace-stuck-gauge"};

constexpr int kAbove = 70;  // pixels, for the heading

void showTrace(Scene& scene, reg::VisitId visit, std::size_t test) {
    scene.window.openVisit(visit);
    auto* place = dynamic_cast<ui::visit::VisitsPlace*>(scene.window.placeInView());
    if (place == nullptr || place->sheet() == nullptr) {
        return;
    }
    auto* sheet = place->sheet();
    sheet->goTo(PartRef{PartKind::Tightness, test});
    QApplication::processEvents();
    for (const auto* area : sheet->findChildren<ui::visit::TraceArea*>()) {
        const auto& seen = area->seen();
        if (seen && seen->test == place->model()->file().tests[test].id) {
            auto* scroll = sheet->scroll();
            scroll->verticalScrollBar()->setValue(area->mapTo(scroll->widget(), QPoint()).y() - kAbove);
        }
    }
}

Result<void> addTraceShots(const store::Store& store, std::vector<Shot>& shots) {
    const auto visits = store.visits({});
    for (std::size_t i = 0; visits && i < visits->size(); ++i) {
        const auto visit = (*visits)[i].visit.id;
        const auto file = store.visitFile(visit);
        if (!file) {
            return tl::unexpected(file.error());
        }
        const auto first = std::count_if(file->traces.begin(), file->traces.end(),
                                         [](const reg::GaugeTrace& trace) { return !trace.beside; });
        const bool isWatched = first == static_cast<std::ptrdiff_t>(kTraces.size());
        for (std::size_t test = 0; isWatched && test < kTraces.size(); ++test) {
            shots.push_back({QString::fromLatin1(kTraces[test]),
                             [visit, test](Scene& scene) { showTrace(scene, visit, test); }});
        }
        if (isWatched) {
            shots.push_back({QStringLiteral("visit-gauge-live"), [visit](Scene& scene) {
                                 showTrace(scene, visit, 0);
                                 pressToOpen(scene, "watchGaugeButton", "livePanel");
                             }});
            shots.push_back({QStringLiteral("visit-gauge-set-up"), [visit](Scene& scene) {
                                 showTrace(scene, visit, 0);
                                 pressToOpen(scene, "setUpGaugeButton", "profilesPanel");
                             }});
        }
    }
    return visits ? Result<void>() : tl::unexpected(visits.error());
}

}  // namespace

Result<std::vector<Shot>> visitShotsOf(const store::Store& store) {
    const auto visits = store.visits({});
    if (!visits) {
        return tl::unexpected(visits.error());
    }
    std::vector<Shot> shots;
    for (const Picture& picture : kPictures) {
        for (const auto& line : *visits) {
            const auto file = store.visitFile(line.visit.id);
            if (!file) {
                return tl::unexpected(file.error());
            }
            const auto kinds = record::kindsOf(*file);
            if (std::find(kinds.begin(), kinds.end(), picture.of) == kinds.end()) {
                continue;
            }
            shots.push_back({QString::fromLatin1(picture.name),
                             [visit = line.visit.id, part = picture.part](Scene& scene) {
                                 scene.window.openVisit(visit);
                                 auto* place =
                                     dynamic_cast<ui::visit::VisitsPlace*>(scene.window.placeInView());
                                 if (place != nullptr && place->sheet() != nullptr) {
                                     place->sheet()->goTo(part);
                                 }
                             }});
            break;
        }
    }
    if (const auto added = addTraceShots(store, shots); !added) {
        return tl::unexpected(added.error());
    }
    if (const auto added = addRoomShots(store, shots); !added) {
        return tl::unexpected(added.error());
    }
    return shots;
}

}  // namespace hearth::app::gallery
