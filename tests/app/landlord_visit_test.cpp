// SPDX-License-Identifier: GPL-3.0-or-later
// A landlord's check of four appliances, one of them the tenant's own, by keys alone through the program's
// window to the issued record. The figures are common practice, no source; the letters are those that the
// sheet underlines.
#include "app/window.h"
#include "tests/ui/support/firm_bench.h"
#include "ui/shell/line_list.h"
#include "ui/visit/part_records.h"
#include "ui/visit/sheet.h"
#include "ui/visit/sheet_model.h"
#include "ui/visit/sheet_paper.h"
#include "ui/visit/visits_place.h"

#include <QApplication>
#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>
#include <iostream>
#include <map>

namespace {

using namespace hearth;
using hearth::testing::need;
using reg::Item;
using ui::visit::PartKind;

/// What the engineer types, by item, and for one appliance only where that differs.
using Answers = std::map<Item, QString>;

Answers visitAnswers() {
    return {{Item::SmellOnArrival, QStringLiteral("n")},
            {Item::VisualInspection, QStringLiteral("s")},
            {Item::GasOnArrival, QStringLiteral("on")},
            {Item::VisitAnalyser, QStringLiteral("ana")},
            {Item::SignedByEngineer, QStringLiteral("R. Ashdown")}};
}

Answers inspectedAnswers() {
    Answers answers;
    for (const Item seen : {Item::LocationSeen, Item::StabilitySeen, Item::DistressSeen, Item::FlueSeen,
                            Item::TerminalSeen, Item::VentilationSeen, Item::FlueFlowTest, Item::SpillageTest,
                            Item::SafetyDevices, Item::FlameSeen}) {
        answers[seen] = QStringLiteral("i");  // in order
    }
    answers[Item::ApplianceInspected] = QStringLiteral("i");
    answers[Item::FlueHidden] = QStringLiteral("none");
    answers[Item::BurnerPressure] = QStringLiteral("11.5");
    answers[Item::ServicedToday] = QStringLiteral("n");
    answers[Item::ExaminedFlue] = QStringLiteral("e");
    answers[Item::ExaminedAir] = QStringLiteral("e");
    answers[Item::ExaminedPressure] = QStringLiteral("r");
    answers[Item::ExaminedOperation] = QStringLiteral("e");
    answers[Item::CheckCovered] = QStringLiteral("y");
    answers[Item::DefectsFound] = QStringLiteral("n");
    answers[Item::SafeToUse] = QStringLiteral("y");
    return answers;
}

/// A flueless hob: no flue to look at or to test.
Answers hobAnswers() {
    Answers answers = inspectedAnswers();
    for (const Item none : {Item::FlueSeen, Item::TerminalSeen, Item::FlueFlowTest, Item::SpillageTest}) {
        answers[none] = QStringLiteral("d");  // does not apply
    }
    answers[Item::FlueHidden] = QStringLiteral("does");
    answers[Item::ExaminedFlue] = QStringLiteral("x");  // examined: there is none
    return answers;
}

Answers boilerAnswers() {
    Answers answers = inspectedAnswers();
    answers[Item::FlueCoHigh] = QStringLiteral("52");
    answers[Item::FlueCo2High] = QStringLiteral("9.1");
    return answers;
}

/// The tenant's own: looked at only, and whether it is safe to use as far as seen.
Answers cookerAnswers() {
    return {{Item::ApplianceInspected, QStringLiteral("v")}, {Item::LocationSeen, QStringLiteral("i")},
            {Item::StabilitySeen, QStringLiteral("i")},      {Item::DistressSeen, QStringLiteral("i")},
            {Item::DefectsFound, QStringLiteral("n")},       {Item::SafeToUse, QStringLiteral("y")}};
}

class LandlordVisit : public ::testing::Test {
  protected:
    LandlordVisit() {
        premises = firm.addPremises("14 Kiln Lane");
        installation = need(firm.store->installations(premises)).front().id;
        reg::Party landlord;
        landlord.id = {firm.store->newId()};
        landlord.name = "Ash Lettings";
        landlord.address = {"1 Weir Street", "", "Thornmere", "TH1 1AA"};
        need(firm.store->save(landlord));
        need(firm.store->save(
            reg::Role{{firm.store->newId()}, premises, landlord.id, reg::RoleKind::Landlord}));
        reg::Instrument analyser;
        analyser.id = {firm.store->newId()};
        analyser.kind = reg::InstrumentKind::CombustionAnalyser;
        analyser.name = "analyser no. 1";
        analyser.serial = "CA-7";
        analyser.calibrationDue = firm.gauge.calibrationDue;
        need(firm.store->save(analyser));
        add(reg::choice::kCondensingBoiler, "kitchen", reg::FlueType::RoomSealed, reg::Owner::Landlord);
        add(reg::choice::kHotplate, "kitchen", reg::FlueType::Flueless, reg::Owner::Landlord);
        add(reg::choice::kGasFire, "lounge", reg::FlueType::OpenFlued, reg::Owner::Landlord);
        add(reg::choice::kRangeCooker, "annexe", reg::FlueType::Flueless, reg::Owner::Tenant);
        visit = firm.startVisit(premises);
        answers = {visitAnswers(), boilerAnswers(), hobAnswers(), inspectedAnswers(), cookerAnswers()};
    }

    void add(std::string_view kind, const std::string& place, reg::FlueType flue, reg::Owner owner) {
        reg::Appliance appliance;
        appliance.id = {firm.store->newId()};
        appliance.installation = installation;
        appliance.kind = std::string(kind);
        appliance.make = "Invented";
        appliance.model = "Thirty";
        appliance.place = place;
        appliance.flue = flue;
        appliance.owner = owner;
        need(firm.store->save(appliance));
    }

    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        ++beyond;
        QTest::keyClick(QApplication::focusWidget(), key, modifiers);
        for (int round = 0; round < 4; ++round) {
            QApplication::processEvents();
        }
    }
    void type(const QString& text) {
        values += static_cast<int>(text.size());
        for (const QChar letter : text) {
            const int key = letter.isLetterOrNumber() ? letter.toUpper().unicode() : 0;
            QTest::sendKeyEvent(QTest::Click, QApplication::focusWidget(), static_cast<Qt::Key>(key),
                                QString(letter), Qt::NoModifier);
        }
    }

    [[nodiscard]] ui::visit::VisitsPlace* place() const {
        return dynamic_cast<ui::visit::VisitsPlace*>(window->placeInView());
    }
    [[nodiscard]] const reg::VisitFile& file() const { return place()->model()->file(); }

    struct At {
        ui::visit::PartView* part = nullptr;
        ui::visit::SheetField* field = nullptr;
    };
    [[nodiscard]] At at() const {
        QWidget* focus = QApplication::focusWidget();
        for (auto* part : place()->sheet()->paper()->parts()) {
            if (!part->isAncestorOf(focus)) {
                continue;
            }
            for (auto* field : part->fields()) {
                if (field->editor()->focusTarget() == focus) {
                    return {part, field};
                }
            }
            return {part, nullptr};
        }
        return {};
    }
    /// What is to be typed where the keyboard is; empty: nothing, go on.
    [[nodiscard]] QString answerAt(const At& now) const {
        const auto& key = now.field->key();
        if (!key.item || file().find(key.subject, *key.item) != nullptr) {
            return {};
        }
        if (*key.item == Item::RoomName) {
            return file().rooms().empty() ? QStringLiteral("Kitchen") : QString();
        }
        if (*key.item == Item::RoomCoAlarm) {
            return QStringLiteral("f");  // fitted, tested, works
        }
        const std::size_t whose = now.part->ref().kind == PartKind::Appliance ? now.part->ref().index + 1 : 0;
        const auto found = answers[whose].find(*key.item);
        return found == answers[whose].end() ? QString() : found->second;
    }

    /// Through the sheet as somebody does who knows it: Enter from field to field, Page Down over parts with
    /// nothing to do and once a part is filled in.
    void fillIn() {
        for (int guard = 0; guard < 400; ++guard) {
            const At now = at();
            ASSERT_NE(now.part, nullptr) << "the keyboard left the sheet";
            const PartKind kind = now.part->ref().kind;
            if (kind == PartKind::Records) {
                return;
            }
            const bool nothingHere = kind == PartKind::Pipework || kind == PartKind::Tightness ||
                                     kind == PartKind::Restore || kind == PartKind::Situations ||
                                     kind == PartKind::Appliances;
            if (nothingHere || now.field == nullptr || isFilled(now.part)) {
                press(Qt::Key_PageDown);
                continue;
            }
            if (const QString answer = answerAt(now); !answer.isEmpty()) {
                type(answer);
                ++entries;
            }
            press(Qt::Key_Return);
        }
        FAIL() << "the end of the sheet was not reached";
    }
    /// Every answer that the engineer has for this part stands there.
    [[nodiscard]] bool isFilled(ui::visit::PartView* part) const {
        if (part->ref().kind == PartKind::Rooms) {
            return !file().rooms().empty() &&
                   file().find(file().rooms().front(), Item::RoomCoAlarm) != nullptr;
        }
        const std::size_t whose = part->ref().kind == PartKind::Appliance ? part->ref().index + 1 : 0;
        return std::none_of(part->fields().begin(), part->fields().end(), [&](const auto* field) {
            const auto& key = field->key();
            return key.item && !field->editor()->isHidden() && answers[whose].count(*key.item) > 0 &&
                   file().find(key.subject, *key.item) == nullptr;
        });
    }

    hearth::testing::FirmBench firm;
    reg::PremisesId premises;
    reg::InstallationId installation;
    reg::VisitId visit;
    std::vector<Answers> answers;
    std::unique_ptr<ui::shell::MainWindow> window;
    int beyond = 0;   // key strokes beyond the values themselves
    int values = 0;   // characters of the values
    int entries = 0;  // values
};

TEST_F(LandlordVisit, IsFilledInAndIssuedByKeysAlone) {
    const app::Surroundings surroundings{firm.clock, firm.words, firm.dialogs, firm.printing};
    window = app::makeMainWindow(*firm.store, surroundings);
    window->resize(1024, 600);
    window->show();
    window->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
    window->openVisit(visit);
    QApplication::processEvents();
    // The sheet opens at the first thing missing; the kind of visit stands before it.
    press(Qt::Key_PageUp);
    type(QStringLiteral("l"));
    ++entries;
    EXPECT_EQ(place()->model()->owed().front().kind, record::RecordKind::LandlordSafety);
    // Nothing of an appliance is there before it was seen: no answer is preset.
    for (const auto& appliance : file().appliances) {
        EXPECT_FALSE(file().hasEntries(reg::subject(appliance.id)));
    }
    fillIn();
    for (const auto& missing : place()->model()->missing()) {
        ADD_FAILURE() << firm.words.missing(missing).toStdString();
    }
    const auto& of = file().appliances;
    EXPECT_EQ(file().choiceOf(reg::subject(of[1].id), Item::FlueSeen), reg::choice::kNotApplicable);
    EXPECT_EQ(file().choiceOf(reg::subject(of[3].id), Item::ApplianceInspected), reg::choice::kVisualOnly);
    press(Qt::Key_I, Qt::ControlModifier);
    const auto& records = place()->model()->records();
    ASSERT_EQ(records.size(), 1U);
    EXPECT_EQ(records.front().header.kind, "landlord_safety");
    std::cout << "landlord's check of four appliances: " << entries << " entries, " << beyond
              << " key strokes beyond the " << values << " characters of the values\n";
    RecordProperty("entries", entries);
    RecordProperty("strokes_beyond_values", beyond);
}

}  // namespace
