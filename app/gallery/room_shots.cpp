// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures of carbon monoxide in a room, watched from outside: an instrument on this machine's own network
// sends invented levels.
#include "app/gallery/shots.h"
#include "ui/gauge/air_panel.h"
#include "ui/input/editor.h"
#include "ui/visit/sheet.h"
#include "ui/visit/visits_place.h"

#include <QApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTcpServer>
#include <QTcpSocket>

#include <algorithm>
#include <cmath>
#include <memory>

namespace hearth::app::gallery {
namespace {

using namespace std::chrono_literals;
using ui::visit::PartKind;

constexpr int kLongest = 5000;  // ms, for what the network of one machine takes

bool waitUntil(const std::function<bool()>& isThere) {
    QElapsedTimer waited;
    waited.start();
    while (!isThere() && waited.elapsed() < kLongest) {
        QApplication::processEvents(QEventLoop::AllEvents, 1);
    }
    return isThere();
}

/// Six minutes at a reading in five seconds, from outdoors on; they rise to 26 ppm and fall where `clears`.
int levelAt(int reading, bool clears) {
    const double seconds = reading * 5.0;
    const double risen = 28.0 * (1.0 - std::exp(-std::max(0.0, seconds - 30.0) / 110.0));
    const double cleared = clears ? std::exp(-std::max(0.0, seconds - 200.0) / 60.0) : 1.0;
    return static_cast<int>(std::lround(risen * cleared)) + reading % 2;
}

/// Watches it; ended where `ends`.
void watch(Scene& scene, reg::VisitId visit, bool ends) {
    // What another picture's panel left in the middle of its watch is no part of this one.
    QDir(QString::fromStdString(scene.store.path().string()) + QStringLiteral("-gauge")).removeRecursively();
    // The series began by the clock, so that what is watched can be put into it.
    const auto began = instantText(scene.clock.now() - 20min);
    if (!scene.store.saveSetting("room_co." + visit.text(), began)) {
        return;
    }
    auto server = std::make_unique<QTcpServer>();
    server->listen(QHostAddress::LocalHost);
    ui::gauge::GaugeProfile profile;
    profile.name = "Room monitor";
    profile.kind = ui::gauge::SourceKind::Network;
    profile.host = "127.0.0.1";
    profile.networkPort = server->serverPort();
    profile.pattern.family = quantity::UnitFamily::Trace;
    profile.resolution = {"1", quantity::UnitCode::Ppm};
    if (!scene.store.saveSetting(ui::gauge::kProfilesSetting, ui::gauge::profilesText({profile}))) {
        return;
    }
    showPart(scene, visit, PartKind::Investigation);
    pressToOpen(scene, "watchRoomButton", "airPanel");
    auto* panel = scene.window.findChild<ui::gauge::AirPanel*>();
    if (panel == nullptr) {
        return;
    }
    auto* place = panel->findChild<ui::input::Editor*>(QStringLiteral("airPlace"));
    place->setText(QStringLiteral("room"));
    Q_EMIT place->committed(QStringLiteral("room"));
    panel->choose(0);
    if (!waitUntil([&] { return server->hasPendingConnections(); })) {
        return;
    }
    auto* peer = server->nextPendingConnection();
    server.release()->setParent(panel);  // it answers as long as the panel watches it
    peer->write("\n");
    panel->toggle();
    constexpr int kReadings = 72;
    for (int reading = 0; reading < kReadings; ++reading) {
        scene.clock.advance(5s);
        const auto now = scene.clock.elapsed();
        peer->write(QByteArray::number(levelAt(reading, ends)) + " ppm\n");
        if (!waitUntil([&] { return panel->watch().last() && panel->watch().last()->at == now; })) {
            return;
        }
    }
    if (ends) {
        panel->toggle();
    }
    panel->tick();
    QApplication::processEvents();
}

void showWatched(Scene& scene, reg::VisitId visit) {
    watch(scene, visit, true);
    pressToOpen(scene, "confirmRoomReading0", "roomTrace");
}

void showLive(Scene& scene, reg::VisitId visit) {
    watch(scene, visit, false);
    pressToOpen(scene, "airTakeButton", "roomWatchWhatFirst");
}

}  // namespace

void pressToOpen(Scene& scene, const char* button, const char* opened) {
    if (auto* pressed = scene.window.findChild<QPushButton*>(QLatin1String(button))) {
        pressed->click();
    }
    QApplication::processEvents();
    auto* place = dynamic_cast<ui::visit::VisitsPlace*>(scene.window.placeInView());
    const auto* shown = scene.window.findChild<QWidget*>(QLatin1String(opened));
    if (place != nullptr && place->sheet() != nullptr && shown != nullptr) {
        auto* scroll = place->sheet()->scroll();
        scroll->verticalScrollBar()->setValue(shown->mapTo(scroll->widget(), QPoint()).y());
    }
}

Result<void> addRoomShots(const store::Store& store, std::vector<Shot>& shots) {
    const auto visits = store.visits({});
    if (!visits) {
        return tl::unexpected(visits.error());
    }
    for (const auto& line : *visits) {
        const auto file = store.visitFile(line.visit.id);
        if (!file) {
            return tl::unexpected(file.error());
        }
        const auto kinds = record::kindsOf(*file);
        if (std::find(kinds.begin(), kinds.end(), record::RecordKind::RoomInvestigation) != kinds.end()) {
            const auto visit = line.visit.id;
            shots.push_back(
                {QStringLiteral("visit-room-live"), [visit](Scene& scene) { showLive(scene, visit); }});
            shots.push_back(
                {QStringLiteral("visit-room-watched"), [visit](Scene& scene) { showWatched(scene, visit); }});
            shots.push_back({QStringLiteral("visit-room-set-up"), [visit](Scene& scene) {
                                 showPart(scene, visit, PartKind::Investigation);
                                 pressToOpen(scene, "setUpRoomButton", "airProfilesPanel");
                             }});
            break;
        }
    }
    return {};
}

}  // namespace hearth::app::gallery
