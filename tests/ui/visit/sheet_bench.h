// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/ui/support/firm_bench.h"
#include "tests/ui/support/walker.h"
#include "ui/input/editor.h"
#include "ui/shell/line_list.h"
#include "ui/visit/part_records.h"
#include "ui/visit/part_tightness.h"
#include "ui/visit/pipe_table.h"
#include "ui/visit/sheet.h"
#include "ui/visit/sheet_model.h"
#include "ui/visit/visits_place.h"

#include <QApplication>
#include <QInputMethodEvent>
#include <QTest>

#include <memory>

namespace hearth::testing {

/// The firm has confirmed every entry of its rule book that has a value, from its own copies, and has entered
/// Edition 4's scope and purge rule, which ship empty. What it enters for these stands in for its own copy
/// (the values are Edition 3's); nothing is claimed about Edition 4. The volume bands stay empty.
inline void confirmRuleBook(store::Store& store, calendar::Date on) {
    const auto book = need(store.ruleBook());
    for (const rulebook::Entry& entry : book.entries()) {
        const auto* third = book.find({entry.key.rule, rulebook::Edition::Up1bEd3, entry.key.gas});
        const bool standsIn = !entry.isKnown() && entry.key.edition == rulebook::Edition::Up1bEd4 &&
                              third != nullptr && third->isKnown() &&
                              entry.key.rule != rulebook::Rule::DropByVolume;
        if (entry.isKnown() || standsIn) {
            const auto& value = entry.isKnown() ? entry.value : third->value;
            need(store.save(rulebook::FirmEntry{entry.key, value, "R. Ashdown", on, "own copy"}));
        }
    }
}

/// The place of visits in a window of its own with one visit open, on a real store.
class SheetBench {
  public:
    explicit SheetBench(const std::string& day = "2026-11-25", bool confirmed = true) : firm(day) {
        if (confirmed) {
            confirmRuleBook(*firm.store, firm.clock.today("Europe/London"));
        }
        firm.makeCompetent();
        premises = firm.addPremises("14 Kiln Lane", "M. Okafor");
        visit = firm.startVisit(premises);
        open();
    }

    /// The window as after another start of the program.
    void open() {
        place.reset();
        place = std::make_unique<ui::visit::VisitsPlace>(firm.context());
        place->resize(1280, 800);
        place->show();
        place->activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(place.get(), 20000));
        place->refresh();
        place->openVisit(visit);
        settle();
    }

    /// Lets what was posted be done: layouts, notes in their places.
    static void settle() {
        for (int round = 0; round < 5; ++round) {
            QApplication::processEvents();
            QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        }
    }

    [[nodiscard]] ui::visit::VisitSheet& sheet() const { return *place->sheet(); }
    [[nodiscard]] ui::visit::VisitSheetModel& model() const { return *place->model(); }
    [[nodiscard]] const reg::VisitFile& file() const { return model().file(); }
    [[nodiscard]] reg::SubjectRef test() const { return reg::subject(file().tests.front().id); }
    [[nodiscard]] reg::SubjectRef subjectOf(reg::Item item) const {
        return reg::infoOf(item).subject == reg::SubjectKind::Test ? test() : reg::subject(file().visit.id);
    }

    [[nodiscard]] ui::visit::SheetField* field(reg::Item item) const {
        for (auto* part : sheet().paper()->parts()) {
            if (auto* found = part->find({item, std::nullopt, subjectOf(item)})) {
                return found;
            }
        }
        return nullptr;
    }
    [[nodiscard]] ui::input::Editor& editor(reg::Item item) const { return *field(item)->editor(); }

    /// Puts the keyboard on an item's field; the field must be in view.
    void at(reg::Item item) const {
        ASSERT_FALSE(editor(item).isHidden());
        editor(item).focusTarget()->setFocus(Qt::TabFocusReason);
    }
    /// Keys to whatever has the focus, one by one.
    static void keys(const QString& text) {
        for (const QChar letter : text) {
            const int key = letter.isLetterOrNumber() ? letter.toUpper().unicode() : 0;
            QTest::sendKeyEvent(QTest::Click, QApplication::focusWidget(), static_cast<Qt::Key>(key),
                                QString(letter), Qt::NoModifier);
        }
    }
    static void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        QTest::keyClick(QApplication::focusWidget(), key, modifiers);
        settle();
    }
    /// Types and goes to the next field.
    static void line(const QString& text) {
        keys(text);
        press(Qt::Key_Return);
    }
    /// Types into one item's field and leaves it by Enter.
    void type(reg::Item item, const QString& text) const {
        at(item);
        keys(text);
        press(Qt::Key_Return);
    }
    /// Enters without the keyboard, for what a test is not about.
    void enter(reg::Item item, const std::string& text) const {
        need(model().enter(subjectOf(item), item, QString::fromStdString(text),
                           model().unitOf(subjectOf(item), item)));
        settle();
    }

    [[nodiscard]] const judging::Judged* finding(rulebook::FindingKind kind) const {
        for (const auto& judged : model().findings()) {
            if (judged.finding.kind == kind) {
                return &judged;
            }
        }
        return nullptr;
    }
    [[nodiscard]] rulebook::Outcome outcome(rulebook::FindingKind kind) const {
        const auto* judged = finding(kind);
        return judged == nullptr ? rulebook::Outcome::NoVerdict : judged->finding.outcome;
    }
    [[nodiscard]] ui::input::FindingNote* note(rulebook::FindingKind kind) const {
        for (auto* note : sheet().paper()->notes()) {
            if (note->judged().finding.kind == kind) {
                return note;
            }
        }
        return nullptr;
    }

    /// The whole sheet filled in with the common-practice case; common practice, no source.
    void fillIn() const {
        using reg::Item;
        enter(Item::SmellOnArrival, "no");
        enter(Item::OpenEnds, "none_seen");
        enter(Item::SafeToTouch, "safe");
        enter(Item::VisualInspection, "sound");
        reg::PipeSection pipe;
        pipe.id = {firm.store->newId()};
        pipe.installation = file().installation.id;
        pipe.tubeCode = "copper_15";
        pipe.length = {"9", quantity::UnitCode::Metre};
        pipe.leadsTo = "boiler";
        need(model().save(std::vector{pipe}));
        reg::Installation installation = file().installation;
        installation.operatingPressure = {"21", quantity::UnitCode::Millibar};
        installation.supplyPressure = {"75", quantity::UnitCode::Millibar};
        need(model().save(installation));
        need(model().reload());
        settle();
        enter(Item::TestWork, "existing");
        enter(Item::TestExtent, "whole");
        enter(Item::TestAppliances, "connected");
        enter(Item::TestIsolatedWhat, "boiler and hob at their valves open, burners off");
        enter(Item::TestPilots, "none_fitted");
        enter(Item::TestGauge, firm.gauge.id.text());
        enter(Item::TestGaugeZeroed, "yes");
        fillInReadings();
        enter(Item::TestSmell, "no");
        enter(Item::PurgeDone, "not_needed");
        enter(Item::TestPointProved, "yes");
        enter(Item::FluidWiped, "yes");
        enter(Item::DisturbedJointsProved, "none_disturbed");
        enter(Item::SignedByEngineer, "R. Ashdown");
    }
    void fillInReadings() const {
        using reg::Item;
        const std::initializer_list<std::pair<Item, const char*>> readings{
            {Item::LetByStart, "9.02"},       {Item::LetByEnd, "9.01"},
            {Item::LetByStartedAt, "09:41"},  {Item::LetByEndedAt, "09:42"},
            {Item::SettleStart, "20.52"},     {Item::SettleEnd, "20.50"},
            {Item::SettleStartedAt, "09:43"}, {Item::SettleEndedAt, "09:44"},
            {Item::TightStart, "20.50"},      {Item::TightEnd, "20.46"},
            {Item::TightStartedAt, "09:45"},  {Item::TightEndedAt, "09:47"},
        };
        for (const auto& [item, text] : readings) {
            enter(item, text);
        }
    }

    FirmBench firm;
    reg::PremisesId premises;
    reg::VisitId visit;
    std::unique_ptr<ui::visit::VisitsPlace> place;
};

}  // namespace hearth::testing
