// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/gallery/shots.h"
#include "ui/shell/kit.h"
#include "ui/shell/line_list.h"
#include "ui/visit/sheet.h"
#include "ui/visit/visits_place.h"

#include <QApplication>
#include <QBuffer>
#include <QImage>
#include <QPainter>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>

#include <tuple>

namespace hearth::app::gallery {
namespace {

using ui::visit::PartKind;

/// The firm's backups, one made and looked into.
void showBackups(Scene& scene) {
    if (const auto job = scene.store.backupJob()) {
        static_cast<void>(scene.store.noteBackup(store::runBackup(*job)));
    }
    scene.window.showPlace(kFirm);
    if (auto* list = scene.window.findChild<ui::shell::LineList*>(QStringLiteral("backupList"))) {
        list->setCurrentRow(0);
        list->setFocus();
        Q_EMIT list->opened(0);
    }
}

/// The firm's place with what it has set: the field of that name in view.
void showFirmAt(Scene& scene, const char* field) {
    scene.window.showPlace(kVisits);
    scene.window.showPlace(kFirm);
    QApplication::processEvents();
    if (auto* editor = scene.window.findChild<ui::input::Editor*>(QString::fromLatin1(field))) {
        editor->focusTarget()->setFocus(Qt::OtherFocusReason);
    }
}

void showLogo(Scene& scene) {
    static_cast<void>(
        scene.store.attachLogo({"", {}, "logo.png", "image/png", inventedPicture(), "", false, ""}));
    showFirmAt(scene, "numberPrefix");
}

void showContacts(Scene& scene) {
    using rulebook::Gas;
    for (const auto& [gas, name, number] : {std::tuple(Gas::Propane, "Corrie Bulk Gas", "01632 960430"),
                                            std::tuple(Gas::NaturalGas, "Duty engineer", "01632 960417")}) {
        static_cast<void>(scene.store.save(
            reg::EmergencyContact{{scene.store.newId()}, reg::Country::England, gas, name, number}));
    }
    showFirmAt(scene, "emergencyNumber");
}

/// What may go, seen when the demonstration's records have been kept for long enough: the first held, the
/// others marked.
void showWhatMayGo(Scene& scene) {
    const Instant now = scene.clock.now();
    constexpr std::chrono::hours kSevenYears{24 * 366 * 7};
    scene.clock.set(now + kSevenYears);
    if (const auto over = scene.store.mayGo(scene.clock.today("Europe/London")); over && !over->empty()) {
        static_cast<void>(scene.store.hold(over->front().record.id, "a claim about the work is not settled"));
    }
    scene.window.showPlace(kFirm);
    auto* list = scene.window.findChild<ui::shell::LineList*>(QStringLiteral("keepingList"));
    auto* all = scene.window.findChild<QPushButton*>(QStringLiteral("keepingMarkAllButton"));
    if (list != nullptr && all != nullptr) {
        all->click();
        list->setCurrentRow(0);
        all->setFocus();  // so that the sheet shows what is below the list
        list->setFocus();
        Q_EMIT list->moved(0);
    }
    scene.clock.set(now);
}

/// A letter whole, with the text that it is made from.
void showLetters(Scene& scene) {
    showFirmAt(scene, "letterText");
    QApplication::processEvents();
    auto* sheet = scene.window.placeInView()->findChild<ui::shell::Sheet*>();
    auto* preview = scene.window.findChild<QWidget*>(QStringLiteral("letterPreview"));
    if (sheet != nullptr && preview != nullptr) {
        sheet->ensureWidgetVisible(preview);
    }
}

/// The firm's own key, made and unlocked.
void showSigning(Scene& scene) {
    static_cast<void>(scene.store.makeSigningKey("an invented phrase for pictures"));
    scene.window.showPlace(kVisits);
    scene.window.showPlace(kFirm);
    QApplication::processEvents();
    auto* sheet = scene.window.placeInView()->findChild<ui::shell::Sheet*>();
    auto* keys = scene.window.findChild<QWidget*>(QStringLiteral("signingKeysText"));
    if (sheet != nullptr && keys != nullptr) {
        sheet->ensureWidgetVisible(keys);
    }
}

/// Which bank holidays are known, and where they were read.
void showHolidays(Scene& scene) {
    scene.window.showPlace(kFirm);
    QApplication::processEvents();
    auto* sheet = scene.window.placeInView()->findChild<ui::shell::Sheet*>();
    auto* take = scene.window.findChild<QWidget*>(QStringLiteral("takeHolidaysButton"));
    if (sheet != nullptr && take != nullptr) {
        sheet->ensureWidgetVisible(take);
    }
}

/// The draft of a record, with the logo at its head.
void showDraftWithLogo(Scene& scene, reg::VisitId visit) {
    showPart(scene, visit, PartKind::Records);
    auto* button = scene.window.findChild<QPushButton*>(QStringLiteral("draftButton"));
    if (button == nullptr) {
        return;
    }
    button->click();
    QApplication::processEvents();
    for (QWidget* around = button->parentWidget(); around != nullptr; around = around->parentWidget()) {
        if (auto* area = qobject_cast<QScrollArea*>(around)) {
            area->verticalScrollBar()->setValue(button->mapTo(area->widget(), QPoint()).y());
        }
    }
}
}  // namespace

std::string inventedPicture() {
    constexpr int kSide = 240;
    QImage image(2 * kSide, kSide, QImage::Format_ARGB32);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    const QColor ink = ui::look::colour(ui::look::Role::Focus, ui::look::Scheme::Light);
    painter.setPen(QPen(ink, kSide / 12.0));
    painter.drawEllipse(QRectF(kSide / 10.0, kSide / 10.0, kSide * 0.8, kSide * 0.8));
    painter.setPen(Qt::NoPen);
    painter.setBrush(ink);
    painter.drawEllipse(QRectF(kSide * 0.35, kSide * 0.4, kSide * 0.3, kSide * 0.35));
    painter.drawRect(QRectF(kSide * 1.1, kSide * 0.45, kSide * 0.8, kSide / 12.0));
    painter.end();
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "PNG");
    return bytes.toStdString();
}

void addFirmShots(std::vector<Shot>& shots, const std::optional<reg::VisitId>& openVisit) {
    shots.push_back({QStringLiteral("firm-backups"), showBackups});
    shots.push_back({QStringLiteral("firm-logo-and-numbers"), showLogo});
    shots.push_back({QStringLiteral("firm-signing"), showSigning});
    shots.push_back({QStringLiteral("firm-emergency-contacts"), showContacts});
    shots.push_back({QStringLiteral("firm-what-may-go"), showWhatMayGo});
    shots.push_back({QStringLiteral("firm-letters"), showLetters});
    shots.push_back({QStringLiteral("firm-bank-holidays"), showHolidays});
    if (openVisit) {
        shots.push_back({QStringLiteral("visit-draft-with-logo"),
                         [visit = *openVisit](Scene& scene) { showDraftWithLogo(scene, visit); }});
    }
}

}  // namespace hearth::app::gallery
