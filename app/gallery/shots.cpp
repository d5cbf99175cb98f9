// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/gallery/shots.h"

#include "app/issue.h"
#include "ui/visit/sheet.h"
#include "ui/visit/visits_place.h"

#include <QApplication>
#include <QKeyEvent>

#include <array>
#include <map>
#include <optional>

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

enum Places { kVisits, kPremises, kRecords, kRuleBook, kFirm };

void press(QWidget* widget, int key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
    QWidget* target = QApplication::focusWidget() != nullptr ? QApplication::focusWidget() : widget;
    QKeyEvent down(QEvent::KeyPress, key, modifiers);
    QKeyEvent up(QEvent::KeyRelease, key, modifiers);
    QApplication::sendEvent(target, &down);
    QApplication::sendEvent(target, &up);
}

void showPart(Scene& scene, reg::VisitId visit, PartKind part) {
    scene.window.openVisit(visit);
    if (auto* place = dynamic_cast<VisitsPlace*>(scene.window.placeInView());
        place != nullptr && place->sheet() != nullptr) {
        place->sheet()->goTo(PartRef{part, 0});
    }
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

void addPanels(std::vector<Shot>& shots) {
    using rulebook::Gas;
    const auto emergency = [](Gas gas) { return [gas](Scene& scene) { scene.window.openEmergency(gas); }; };
    shots.push_back({QStringLiteral("emergency-natural-gas"), emergency(Gas::NaturalGas)});
    shots.push_back({QStringLiteral("emergency-propane"), emergency(Gas::Propane)});
    shots.push_back({QStringLiteral("keys"), [](Scene& scene) { scene.window.showKeys(); }});
    shots.push_back({QStringLiteral("about"), [](Scene& scene) { scene.window.showAbout(); }});
}

/// A running stage, a quarter of its time gone.
void runClock(Scene& scene, reg::VisitId visit) {
    showPart(scene, visit, PartKind::Tightness);
    press(&scene.window, Qt::Key_Return, Qt::ControlModifier);
    scene.clock.advance(std::chrono::seconds(14));
    QApplication::processEvents();
}

}  // namespace

Result<std::vector<Shot>> shotsOf(const store::Store& store) {
    const auto chosen = chosenFrom(store);
    if (!chosen) {
        return tl::unexpected(chosen.error());
    }
    std::vector<Shot> shots{place("visits", kVisits), place("premises", kPremises),
                            place("records", kRecords), place("rule-book", kRuleBook), place("firm", kFirm)};
    addParts(shots, *chosen);
    shots.push_back({QStringLiteral("rule-book-bands"), [](Scene& scene) {
                         scene.window.openRule({rulebook::Rule::DropByVolume, rulebook::Edition::Up1bEd4,
                                                rulebook::Gas::NaturalGas});
                     }});
    addPanels(shots);
    if (chosen->unfinished) {
        shots.push_back({QStringLiteral("visit-clock-running"),
                         [visit = *chosen->unfinished](Scene& scene) { runClock(scene, visit); }});
    }
    return shots;
}

}  // namespace hearth::app::gallery
