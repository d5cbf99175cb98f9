// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/gallery/shots.h"

#include "app/issue.h"
#include "ui/premises/premises_place.h"
#include "ui/shell/kit.h"
#include "ui/shell/line_list.h"
#include "ui/visit/sheet.h"
#include "ui/visit/visits_place.h"
#include "ui/workings/workings_place.h"

#include <QApplication>
#include <QBuffer>
#include <QFile>
#include <QImage>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPainter>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTemporaryDir>

#include <array>
#include <map>
#include <optional>
#include <tuple>

namespace hearth::app::gallery {
namespace {

using rulebook::Outcome;
using ui::shell::MainWindow;
using ui::visit::PartKind;
using ui::visit::PartRef;
using ui::visit::VisitsPlace;

constexpr std::array<std::pair<PartKind, const char*>, 7> kParts{
    {{PartKind::WhoAndWhere, "1-who-and-where"},
     {PartKind::BeforeYouStart, "2-before-you-start"},
     {PartKind::Pipework, "3-pipework"},
     {PartKind::Tightness, "4-tightness"},
     {PartKind::Restore, "5-restore"},
     {PartKind::HandOver, "6-hand-over"},
     {PartKind::Records, "7-records"}}};

void press(QWidget* widget, int key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
    QWidget* target = QApplication::focusWidget() != nullptr ? QApplication::focusWidget() : widget;
    QKeyEvent down(QEvent::KeyPress, key, modifiers);
    QKeyEvent up(QEvent::KeyRelease, key, modifiers);
    QApplication::sendEvent(target, &down);
    QApplication::sendEvent(target, &up);
}

Shot place(const char* name, int index) {
    return {QString::fromLatin1(name), [index](Scene& scene) { scene.window.showPlace(index); }};
}

/// Which visits to show: one that is open and passes, and one of each other outcome.
struct Chosen {
    std::optional<reg::VisitId> open;
    std::optional<reg::VisitId> unfinished;  // its test has not been timed to the end
    std::map<Outcome, reg::VisitId> byOutcome;
};

Result<Chosen> chosenFrom(const store::Store& store) {
    const auto visits = store.visits({});
    if (!visits) {
        return tl::unexpected(visits.error());
    }
    Chosen chosen;
    for (const auto& line : *visits) {
        const auto judged = judgeVisit(store, line.visit.id);
        if (!judged) {
            return tl::unexpected(judged.error());
        }
        chosen.byOutcome.try_emplace(judged->outcome, line.visit.id);
        if (line.records == 0 && !judged->missing.empty()) {
            chosen.unfinished = line.visit.id;
        }
        if (line.records == 0 && judged->missing.empty() &&
            (!chosen.open || judged->outcome == Outcome::Pass)) {
            chosen.open = line.visit.id;
        }
    }
    return chosen;
}

void addParts(std::vector<Shot>& shots, const Chosen& chosen) {
    if (chosen.open) {
        for (const auto& [part, name] : kParts) {
            shots.push_back(
                {QStringLiteral("visit-") + QString::fromLatin1(name),
                 [visit = *chosen.open, kind = part](Scene& scene) { showPart(scene, visit, kind); }});
        }
    }
    for (const auto& [outcome, visit] : chosen.byOutcome) {
        const QString name = QString::fromStdString(std::string(rulebook::outcomeText(outcome)));
        shots.push_back({QStringLiteral("visit-tightness-") + name,
                         [visit = visit](Scene& scene) { showPart(scene, visit, PartKind::Tightness); }});
    }
}

/// An invented office's list, with what such lists have wrong with them.
constexpr auto kOfficeList =
    "Property,Postcode,Landlord,Landlord tel,Boiler make,Boiler model,Gas,Last check\r\n"
    "\"14 Tallow Lane, Thornmere\",TH2 9XY,Ash Lettings Ltd,0113 496 "
    "0000,Invented,Thirty,mains,25/11/2025\r\n"
    "\"Flat 2, 15 Tallow Lane, Thornmere\",TH2 9XY,Ash Lettings "
    "Ltd,1134960000,Invented,Thirty,LPG,03/12/2025\r\n"
    "\"16 Tallow Lane, Thornmere\",TH2 9,Bo Elm,07700 900123,,,mains,31/02/2025\r\n"
    "\"14 Tallow Lane, Thornmere\",TH2 9XY,Ash Lettings Ltd,0113 496 0000,Other,Hob,mains,\r\n"
    ",TH2 9XZ,,,,,,\r\n";

/// The assistant that takes over a spreadsheet, so many steps beyond choosing the file.
void showImport(Scene& scene, int steps) {
    scene.window.showPlace(kPremises);
    auto* place = dynamic_cast<ui::premises::PremisesPlace*>(scene.window.placeInView());
    QTemporaryDir folder;
    QFile file(folder.filePath(QStringLiteral("office list.csv")));
    if (place == nullptr || !file.open(QIODevice::WriteOnly)) {
        return;
    }
    file.write(kOfficeList);
    file.close();
    place->startImport(file.fileName());
    for (int i = 0; i < steps; ++i) {
        if (auto* next = place->findChild<QPushButton*>(QStringLiteral("importNext"))) {
            next->click();
            QApplication::processEvents();
        }
    }
}

void addPanels(std::vector<Shot>& shots) {
    shots.push_back({QStringLiteral("import-columns"), [](Scene& scene) { showImport(scene, 0); }});
    shots.push_back({QStringLiteral("import-plan"), [](Scene& scene) { showImport(scene, 1); }});
    using rulebook::Gas;
    const auto emergency = [](Gas gas) { return [gas](Scene& scene) { scene.window.openEmergency(gas); }; };
    shots.push_back({QStringLiteral("emergency-natural-gas"), emergency(Gas::NaturalGas)});
    shots.push_back({QStringLiteral("emergency-propane"), emergency(Gas::Propane)});
    shots.push_back({QStringLiteral("keys"), [](Scene& scene) { scene.window.showKeys(); }});
    shots.push_back({QStringLiteral("search"), [](Scene& scene) {
                         scene.window.showPlace(kPremises);
                         press(&scene.window, Qt::Key_F, Qt::ControlModifier);
                         auto* field = scene.window.findChild<QLineEdit*>(QStringLiteral("searchField"));
                         field->setText(QStringLiteral("m"));
                         Q_EMIT field->textEdited(field->text());
                     }});
    shots.push_back({QStringLiteral("about"), [](Scene& scene) { scene.window.showAbout(); }});
}

/// What somebody typed for a question: the field's name on the sheet, and the text.
struct Typed {
    const char* field;
    const char* text;
};

/// A question's sheet with invented readings, the keyboard in its next field.
void showWorkings(Scene& scene, judging::Question question, const std::vector<Typed>& typed) {
    scene.window.showPlace(kWorkings);
    auto* place = dynamic_cast<ui::workings::WorkingsPlace*>(scene.window.placeInView());
    if (place == nullptr) {
        return;
    }
    place->openQuestion(question);
    for (const auto& [field, text] : typed) {
        if (auto* editor = place->findChild<ui::input::Editor*>(QString::fromLatin1(field))) {
            editor->setText(QString::fromLatin1(text));
            Q_EMIT editor->committed(editor->text());
        }
    }
    place->takeField();
}

void sheet(std::vector<Shot>& shots, const char* name, judging::Question question,
           const std::vector<Typed>& typed) {
    shots.push_back({QString::fromLatin1(name),
                     [question, typed](Scene& scene) { showWorkings(scene, question, typed); }});
}

void addAir(std::vector<Shot>& shots) {
    using judging::Question;
    const std::vector<Typed> roomCo{
        {"room_co.appliance", "flued"}, {"room_co.distance", "yes"}, {"4-1-room_co.place", "outdoors"},
        {"4-1-room_co.reading", "0"},   {"4-2-room_co.at", "2"},     {"4-2-room_co.place", "room"},
        {"4-2-room_co.reading", "4"},   {"4-3-room_co.at", "5"},     {"4-3-room_co.place", "room"},
        {"4-3-room_co.reading", "9"},   {"4-4-room_co.at", "10"},    {"4-4-room_co.place", "appliance"},
        {"4-4-room_co.reading", "14"}};
    const std::vector<Typed> roomCoBad{{"room_co.appliance", "cooker"}, {"4-1-room_co.place", "outdoors"},
                                       {"4-1-room_co.reading", "0"},    {"4-2-room_co.at", "2"},
                                       {"4-2-room_co.place", "room"},   {"4-2-room_co.reading", "38"}};
    const std::vector<Typed> vents{{"room.space", "room"},
                                   {"room.volume", "24.0"},
                                   {"room.opening", "yes"},
                                   {"room.tight", "no"},
                                   {"room.bed_sitting", "no"},
                                   {"2-1-appliance.kind", "condensing_boiler"},
                                   {"2-1-appliance.flue", "open_flued"},
                                   {"2-1-appliance.input", "18"},
                                   {"2-1-appliance.input_basis", "net"},
                                   {"2-2-appliance.kind", "gas_fire"},
                                   {"2-2-appliance.flue", "open_flued"},
                                   {"2-2-appliance.input", "6.9"},
                                   {"2-2-appliance.input_basis", "net"},
                                   {"3-1-vent.area", "75"},
                                   {"3-1-vent.to", "outside"},
                                   {"3-1-vent.sound", "yes"}};
    const std::vector<Typed> cupboard{{"room.space", "compartment_to_room"},
                                      {"2-1-appliance.kind", "condensing_boiler"},
                                      {"2-1-appliance.flue", "room_sealed"},
                                      {"2-1-appliance.input", "24"},
                                      {"2-1-appliance.input_basis", "net"}};
    sheet(shots, "workings-room-co", Question::RoomCo, roomCo);
    sheet(shots, "workings-room-co-bad", Question::RoomCo, roomCoBad);
    sheet(shots, "workings-vents", Question::Ventilation, vents);
    sheet(shots, "workings-compartment", Question::Ventilation, cupboard);
    sheet(shots, "workings-empty", Question::Ventilation, {});
}

void addInstallation(std::vector<Shot>& shots) {
    using judging::Question;
    const std::vector<Typed> pressures{{"gas.family", "natural_gas"},
                                       {"pressure.meter_standing", "22.4"},
                                       {"pressure.meter_working", "20.6"},
                                       {"pressure.inlet_standing", "22.0"},
                                       {"pressure.inlet", "19.9"},
                                       {"pressure.full_rate", "yes"},
                                       {"pressure.same_gauge", "yes"},
                                       {"pressure.inlet_least", "18"},
                                       {"pressure.inlet_most", "23"},
                                       {"pressure.burner", "12.1"},
                                       {"pressure.burner_least", "11.5"},
                                       {"pressure.burner_most", "12.5"},
                                       {"pressure.maker_source", "Installation manual, 7.2"}};
    const std::vector<Typed> purge{{"gas.family", "natural_gas"},
                                   {"purge.size", "small"},
                                   {"purge.meter", "u6_g4"},
                                   {"section.tube", "copper_22"},
                                   {"purge.installation_volume", "0.0115"},
                                   {"purge.flow", "1.2"}};
    const std::vector<Typed> larger{{"gas.family", "natural_gas"},
                                    {"purge.installation_volume", "0.35"},
                                    {"purge.largest_pipe", "65"},
                                    {"larger.operating_pressure", "21"},
                                    {"larger.work", "existing"},
                                    {"larger.area", "area_a"},
                                    {"larger.gauge", "electronic_1"},
                                    {"larger.medium", "fuel_gas"},
                                    {"larger.start", "21.0"},
                                    {"larger.end", "20.9"},
                                    {"larger.took", "10"},
                                    {"larger.smell", "no"}};
    sheet(shots, "workings-pressures", Question::Pressures, pressures);
    sheet(shots, "workings-purge", Question::Purge, purge);
    sheet(shots, "workings-larger", Question::Larger, larger);
}

void addOthers(std::vector<Shot>& shots) {
    using judging::Question;
    const std::vector<Typed> water{{"water.flow", "10.2"},      {"water.cold", "12"},
                                   {"water.hot", "46"},         {"water.full_rate", "yes"},
                                   {"water.maker_flow", "9.4"}, {"water.maker_rise", "35"},
                                   {"water.net_input", "24.6"}, {"water.maker_source", "Manual, table 2"}};
    const std::vector<Typed> examined{{"examined.flue", "good"},         {"examined.air", "good"},
                                      {"examined.pressure", "in_order"}, {"examined.heat_input", "not_taken"},
                                      {"examined.both", "no"},           {"examined.combustion", "in_order"},
                                      {"examined.operation", "good"}};
    const std::vector<Typed> due{{"check.installed", "2019-03-04"},
                                 {"check.last", "2025-11-20"},
                                 {"check.done", "2026-11-18"},
                                 {"check.tenant", "existing"}};
    sheet(shots, "workings-hot-water", Question::HotWater, water);
    sheet(shots, "workings-regulation-26", Question::Regulation26, examined);
    sheet(shots, "workings-check-due", Question::CheckDue, due);
}

void addWorkings(std::vector<Shot>& shots) {
    using judging::Question;
    const std::vector<Typed> gasRate{{"gas.family", "natural_gas"},
                                     {"rate.meter", "metric"},
                                     {"rate.index_start", "1204.318"},
                                     {"rate.index_end", "1204.395"},
                                     {"rate.time", "120"},
                                     {"rate.others_off", "yes"},
                                     {"rate.full_rate", "yes"},
                                     {"rate.warm", "yes"},
                                     {"rate.correction", "none"},
                                     {"appliance.input", "24.6"},
                                     {"appliance.input_basis", "net"}};
    const std::vector<Typed> pipes{{"gas.family", "natural_gas"},     {"1-1-section.tube", "copper_28"},
                                   {"1-1-section.length", "6.5"},     {"1-1-section.elbows", "3"},
                                   {"1-2-section.tube", "copper_22"}, {"1-2-section.length", "4"},
                                   {"1-2-section.after", "1"},        {"1-2-section.demand", "24.6"}};
    const std::vector<Typed> ratio{{"gas.family", "natural_gas"}, {"appliance.kind", "condensing_boiler"},
                                   {"analyser.zeroed", "yes"},    {"inlet.o2", "20.9"},
                                   {"flue.co_high", "142"},       {"flue.co2_high", "9.2"},
                                   {"flue.o2_high", "4.6"},       {"flue.co_low", "96"},
                                   {"flue.co2_low", "8.7"},       {"flue.temperature", "58"},
                                   {"flue.air_temperature", "17"}};
    const std::vector<Typed> gas{{"gas.family", "natural_gas"}, {"gas.mix", "natural_typical"}};
    addInstallation(shots);
    addOthers(shots);
    sheet(shots, "workings-gas-rate", Question::GasRate, gasRate);
    sheet(shots, "workings-pipes", Question::Pipes, pipes);
    sheet(shots, "workings-ratio", Question::Combustion, ratio);
    sheet(shots, "workings-gas", Question::Gas, gas);
}

/// A running stage, a quarter of its time gone.
void runClock(Scene& scene, reg::VisitId visit) {
    showPart(scene, visit, PartKind::Tightness);
    press(&scene.window, Qt::Key_Return, Qt::ControlModifier);
    scene.clock.advance(std::chrono::seconds(14));
    QApplication::processEvents();
}

}  // namespace

void showPart(Scene& scene, reg::VisitId visit, PartKind part) {
    scene.window.openVisit(visit);
    if (auto* place = dynamic_cast<VisitsPlace*>(scene.window.placeInView());
        place != nullptr && place->sheet() != nullptr) {
        place->sheet()->goTo(PartRef{part, 0});
    }
}

Result<std::vector<Shot>> shotsOf(const store::Store& store) {
    const auto chosen = chosenFrom(store);
    if (!chosen) {
        return tl::unexpected(chosen.error());
    }
    std::vector<Shot> shots{place("visits", kVisits), place("premises", kPremises),
                            place("records", kRecords), place("rule-book", kRuleBook), place("firm", kFirm)};
    addDueShots(shots);
    addParts(shots, *chosen);
    shots.push_back({QStringLiteral("rule-book-bands"), [](Scene& scene) {
                         scene.window.openRule({rulebook::Rule::DropByVolume, rulebook::Edition::Up1bEd4,
                                                rulebook::Gas::NaturalGas});
                     }});
    addWorkings(shots);
    addAir(shots);
    addPanels(shots);
    addFirmShots(shots, chosen->open);
    if (chosen->unfinished) {
        shots.push_back({QStringLiteral("visit-clock-running"),
                         [visit = *chosen->unfinished](Scene& scene) { runClock(scene, visit); }});
    }
    return shots;
}

}  // namespace hearth::app::gallery
