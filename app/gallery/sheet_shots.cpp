// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures of what the demonstration's visits have not: signatures, photographs, kinds of appliance with
// items of their own, years of readings, doubts about who is booked. What they need is written into the
// store.
#include "app/gallery/shots.h"
#include "app/issue.h"
#include "ui/due/due_list.h"
#include "ui/due/due_place.h"
#include "ui/input/editor.h"
#include "ui/premises/appliances_part.h"
#include "ui/shell/attachments_part.h"
#include "ui/shell/line_list.h"
#include "ui/visit/sheet.h"
#include "ui/visit/sheet_field.h"
#include "ui/visit/sheet_model.h"
#include "ui/visit/sheet_paper.h"
#include "ui/visit/signature_pad.h"
#include "ui/visit/signatures_box.h"
#include "ui/visit/visits_place.h"

#include <QApplication>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>

#include <algorithm>
#include <array>

namespace hearth::app::gallery {
namespace {

using quantity::UnitCode;
using record::RecordKind;
using reg::Item;
using ui::visit::PartKind;
using ui::visit::PartRef;
using ui::visit::VisitsPlace;
namespace choice = reg::choice;

constexpr int kHeadAbove = 60;  // pixels, so that the heading stays in view

VisitsPlace* placeOf(Scene& scene) {
    auto* place = dynamic_cast<VisitsPlace*>(scene.window.placeInView());
    return place != nullptr && place->sheet() != nullptr ? place : nullptr;
}

/// The nearest thing around it that scrolls shows it at its top.
void bringUp(const QWidget* shown) {
    QApplication::processEvents();
    for (QWidget* around = shown->parentWidget(); around != nullptr; around = around->parentWidget()) {
        if (auto* area = qobject_cast<QScrollArea*>(around)) {
            area->verticalScrollBar()->setValue(shown->mapTo(area->widget(), QPoint()).y() - kHeadAbove);
        }
    }
}

void commit(const QWidget* in, const char* name, std::string_view text) {
    if (auto* editor = in->findChild<ui::input::Editor*>(QLatin1String(name))) {
        editor->setText(QString::fromUtf8(text.data(), static_cast<int>(text.size())));
        Q_EMIT editor->committed(editor->text());
    }
}

/// Of the visits that owe such a record the one with the most entries.
std::optional<reg::VisitId> visitOf(const store::Store& store, RecordKind kind) {
    const auto visits = store.visits({});
    std::optional<reg::VisitId> fullest;
    std::size_t most = 0;
    for (std::size_t i = 0; visits && i < visits->size(); ++i) {
        const auto file = store.visitFile((*visits)[i].visit.id);
        const auto kinds = file ? record::kindsOf(*file) : std::vector<RecordKind>();
        if (std::find(kinds.begin(), kinds.end(), kind) != kinds.end() && file->entries.size() > most) {
            most = file->entries.size();
            fullest = (*visits)[i].visit.id;
        }
    }
    return fullest;
}

/// Somebody's hand, as it might be: a wave and a line below it.
reg::PenStrokes inventedHand() {
    constexpr std::array<std::pair<int, int>, 12> kWave{{{60, 120},
                                                         {90, 60},
                                                         {110, 130},
                                                         {140, 70},
                                                         {160, 130},
                                                         {200, 90},
                                                         {220, 120},
                                                         {260, 80},
                                                         {280, 125},
                                                         {330, 95},
                                                         {350, 120},
                                                         {420, 100}}};
    reg::PenStroke wave;
    for (const auto& [x, y] : kWave) {
        wave.push_back({x, y});
    }
    return {wave, {{80, 150}, {410, 142}}};
}

/// The pad of the engineer drawn on, who receives it not there.
void showSignatures(Scene& scene, reg::VisitId visit) {
    showPart(scene, visit, PartKind::Records);
    auto* engineer = scene.window.findChild<QWidget*>(QStringLiteral("engineerPanel"));
    auto* receiver = scene.window.findChild<QWidget*>(QStringLiteral("receiverPanel"));
    if (engineer == nullptr || receiver == nullptr) {
        return;
    }
    commit(engineer, "signedWay", reg::codeOf(reg::SignedWay::Drawn));
    if (auto* pad = engineer->findChild<ui::visit::SignaturePad*>()) {
        pad->setStrokes(inventedHand());
        Q_EMIT pad->changed();
    }
    commit(receiver, "signedWay", reg::codeOf(reg::SignedWay::NotPresent));
    commit(receiver, "signedCopyLeft", "on the kitchen table");
    bringUp(engineer);
}

/// Two photographs of an appliance, the second chosen.
void showPhotographs(Scene& scene, reg::VisitId visit) {
    const auto file = scene.store.visitFile(visit);
    if (!file || file->appliances.empty()) {
        return;
    }
    for (const auto& [name, note] : {std::pair("terminal.png", "the terminal, from the yard"),
                                     std::pair("label.png", "the label on the case")}) {
        static_cast<void>(
            scene.store.attach({"appliances", file->appliances.front().id.bytes, name, "image/png",
                                inventedPicture(), inventedPicture(), false, note}));
    }
    showPart(scene, visit, PartKind::Appliance);
    QApplication::processEvents();
    auto* place = placeOf(scene);
    for (auto* part :
         place == nullptr ? std::vector<ui::visit::PartView*>() : place->sheet()->paper()->parts()) {
        auto* pictures = part->findChild<ui::shell::AttachmentsPart*>();
        if (part->ref() == PartRef{PartKind::Appliance, 0} && pictures != nullptr) {
            if (auto* list = pictures->findChild<ui::shell::LineList*>()) {
                list->setCurrentRow(1);
                list->setFocus(Qt::OtherFocusReason);
                Q_EMIT list->moved(1);
            }
            bringUp(pictures);
        }
    }
}

/// The series of readings with its plot.
void showSeries(Scene& scene, reg::VisitId visit) {
    showPart(scene, visit, PartKind::Investigation);
    QApplication::processEvents();
    auto* place = placeOf(scene);
    if (place == nullptr) {
        return;
    }
    // The last is the one not begun yet, with the plot beneath it.
    ui::input::Editor* last = nullptr;
    for (auto* part : place->sheet()->paper()->parts()) {
        for (const auto* field : part->fields()) {
            const bool isReading =
                field->key().item == Item::RoomCoPlace && part->ref().kind == PartKind::Investigation;
            last = isReading ? field->editor() : last;
        }
    }
    if (last != nullptr) {
        last->focusTarget()->setFocus(Qt::OtherFocusReason);
        bringUp(last);
    }
}

/// What was read of an appliance on the same day of earlier years; nothing of it is anybody's.
struct Earlier {
    int years;
    const char* ratioCo;
    const char* inlet;
    const char* gasRate;
};
constexpr std::array kEarlier{Earlier{3, "41", "20.9", "2.56"}, Earlier{2, "55", "20.7", "2.55"},
                              Earlier{1, "62", "20.4", "2.54"}};

void readEarlier(store::Store& store, const reg::VisitFile& now, const Earlier& earlier) {
    constexpr int kMonths = 12;
    reg::Visit visit = now.visit;
    visit.id = {store.newId()};
    visit.closed = false;
    visit.date = calendar::addMonths(visit.date, -kMonths * earlier.years);
    if (!store.startVisit(visit)) {
        return;
    }
    const auto boiler = reg::subject(now.appliances.front().id);
    for (reg::Entry entry : now.entries) {
        if (entry.subject == boiler) {
            entry.id = {store.newId()};
            entry.visit = visit.id;
            entry.text = entry.item == Item::FlueCoHigh      ? earlier.ratioCo
                         : entry.item == Item::InletPressure ? earlier.inlet
                         : entry.item == Item::GasRateRead   ? earlier.gasRate
                                                             : entry.text;
            entry.canonical = reg::canonicalOf(entry.item, entry.text).value_or(std::string());
            static_cast<void>(store.saveEntry(entry));
        }
    }
}

/// An appliance at its premises, with what was read of it over the years.
void showYears(Scene& scene, reg::VisitId visit) {
    const auto file = scene.store.visitFile(visit);
    if (!file || file->appliances.empty()) {
        return;
    }
    for (const Earlier& earlier : kEarlier) {
        readEarlier(scene.store, *file, earlier);
    }
    scene.window.showPlace(kPremises);
    scene.window.openPremises(file->premises.id);
    QApplication::processEvents();
    auto* part = scene.window.findChild<ui::premises::AppliancesPart*>();
    auto* list = scene.window.findChild<ui::shell::LineList*>(QStringLiteral("appliancesList"));
    auto* years = scene.window.findChild<QPushButton*>(QStringLiteral("yearsButton"));
    if (part == nullptr || list == nullptr || years == nullptr) {
        return;
    }
    list->setCurrentRow(0);
    Q_EMIT list->moved(0);
    years->click();
    list->setFocus(Qt::OtherFocusReason);
    bringUp(list);
}

/// An appliance of a kind with items of its own, on a landlord's visit: how it was found, and its name in the
/// picture's name.
struct OwnKind {
    const char* name;
    std::string_view kind;
    std::string_view found;
    const char* place;
};
constexpr std::array kOwnKinds{
    OwnKind{"visit-leisure-vehicle", choice::kLeisureVehicle, choice::kInspected, "pitch 14"},
    OwnKind{"visit-boat", choice::kBoat, choice::kInspected, "berth 3"},
    OwnKind{"visit-catering", choice::kCatering, choice::kInspected, "canteen"},
    OwnKind{"visit-unvented-cylinder", choice::kUnventedCylinder, choice::kInspected, "airing cupboard"},
    OwnKind{"visit-capped", choice::kGasFire, choice::kDecommissioned, "back room"}};

void showOwnKind(Scene& scene, reg::VisitId visit, const OwnKind& own) {
    const auto before = scene.store.visitFile(visit);
    if (!before) {
        return;
    }
    reg::Appliance appliance;
    appliance.id = {scene.store.newId()};
    appliance.installation = before->installation.id;
    appliance.kind = std::string(own.kind);
    appliance.place = own.place;
    appliance.owner = reg::Owner::Landlord;
    static_cast<void>(scene.store.save(appliance));
    scene.window.openVisit(visit);
    auto* place = placeOf(scene);
    if (place == nullptr) {
        return;
    }
    const auto on = reg::subject(appliance.id);
    static_cast<void>(place->model()->take(appliance.id));
    const QString found = QString::fromUtf8(own.found.data(), static_cast<int>(own.found.size()));
    static_cast<void>(place->model()->enter(on, Item::ApplianceInspected, found));
    static_cast<void>(place->model()->reload());
    QApplication::processEvents();
    place->sheet()->goTo(ui::visit::partAt(PartKind::Appliance, on, place->model()->file()));
}

/// The entries of a test that was made with something shut; readings as in no house.
struct Shut {
    const char* label;
    const char* pipes;
    const char* end;
};
constexpr std::array kShut{Shut{"whole, to find the leak", "", "19.10"},
                           Shut{"last pipe shut", "2", "20.40"}};

/// A leak looked for by shutting off a branch: two tests more, and what they mean together.
void showLeakHunt(Scene& scene, reg::VisitId visit) {
    scene.window.openVisit(visit);
    auto* place = placeOf(scene);
    if (place == nullptr || place->model()->file().tests.empty()) {
        return;
    }
    auto& model = *place->model();
    const auto first = reg::subject(model.file().tests.front().id);
    const auto* gauge = model.file().find(first, Item::TestGauge);
    const QString gaugeText = gauge == nullptr ? QString() : QString::fromStdString(gauge->text);
    for (const Shut& shut : kShut) {
        static_cast<void>(model.addTest(QString::fromUtf8(shut.label)));
        const auto on = reg::subject(model.file().tests.back().id);
        const auto enter = [&](Item item, const QString& text) {
            static_cast<void>(model.enter(on, item, text));
        };
        enter(Item::TestExtent, QStringLiteral("whole"));
        enter(Item::TestAppliances, QStringLiteral("isolated"));
        enter(Item::TestGauge, gaugeText);
        enter(Item::AssumedTemperatureChange, QStringLiteral("0.1"));
        enter(Item::TestPipesShut, QString::fromUtf8(shut.pipes));
        enter(Item::TightStart, QStringLiteral("20.40"));
        enter(Item::TightEnd, QString::fromUtf8(shut.end));
        enter(Item::TightStartedAt, QStringLiteral("11:00:00"));
        enter(Item::TightEndedAt, QStringLiteral("11:02:00"));
    }
    QApplication::processEvents();
    for (auto* part : place->sheet()->paper()->parts()) {
        auto* area = part->findChild<QWidget*>(QStringLiteral("leakHunt"));
        if (part->ref() == PartRef{PartKind::Tightness, model.file().tests.size() - 1} && area != nullptr) {
            bringUp(area);
        }
    }
}

/// Somebody is booked whose categories do not cover what stands there.
void showBookingDoubts(Scene& scene) {
    scene.window.showPlace(kDue);
    auto* place = dynamic_cast<ui::due::DuePlace*>(scene.window.placeInView());
    auto* list = place == nullptr ? nullptr : place->findChild<ui::due::DueList*>();
    const auto engineers = scene.store.engineers();
    if (list == nullptr || !engineers || engineers->empty()) {
        return;
    }
    place->showList();
    list->setCurrentRow(0);
    place->act(ui::due::Action::Book);
    QApplication::processEvents();
    auto* page = place->findChild<QWidget*>(QStringLiteral("bookPage"));
    if (page != nullptr) {
        commit(page, "bookDate", "2030-05-14");
        commit(page, "bookEngineer", engineers->front().id.text());
    }
}

}  // namespace

void addSheetShots(const store::Store& store, std::vector<Shot>& shots) {
    const auto add = [&](const char* name, RecordKind kind, void (*show)(Scene&, reg::VisitId)) {
        if (const auto visit = visitOf(store, kind)) {
            shots.push_back(
                {QString::fromLatin1(name), [show, of = *visit](Scene& scene) { show(scene, of); }});
        }
    };
    add("visit-room-co-series", RecordKind::RoomInvestigation, showSeries);
    add("visit-photographs", RecordKind::LandlordSafety, showPhotographs);
    add("premises-appliance-years", RecordKind::LandlordSafety, showYears);
    add("visit-signatures", RecordKind::OwnerSafety, showSignatures);
    add("visit-leak-hunt", RecordKind::TightnessAndPurge, showLeakHunt);
    shots.push_back({QStringLiteral("due-book-doubts"), [](Scene& scene) { showBookingDoubts(scene); }});
    if (const auto visit = visitOf(store, RecordKind::LandlordSafety)) {
        for (const OwnKind& own : kOwnKinds) {
            shots.push_back({QString::fromLatin1(own.name),
                             [own, of = *visit](Scene& scene) { showOwnKind(scene, of, own); }});
        }
    }
}

}  // namespace hearth::app::gallery
