// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/premises/premises_place.h"

#include "tests/ui/support/firm_bench.h"
#include "tests/ui/support/keys.h"
#include "tests/ui/support/walker.h"
#include "ui/shell/line_list.h"
#include "ui/words/pseudo_translator.h"

#include <QPushButton>

#include <gtest/gtest.h>
#include <memory>

namespace hearth::ui::premises {
namespace {

using hearth::testing::child;
using hearth::testing::editor;
using hearth::testing::enterField;
using hearth::testing::fillField;
using hearth::testing::FirmBench;
using hearth::testing::focus;
using hearth::testing::need;
using hearth::testing::press;
using hearth::testing::type;
using hearth::testing::typeLine;

/// The real window with this one place, on a real store.
class PremisesPlaceTest : public ::testing::Test {
  protected:
    void start() {
        window = std::make_unique<shell::MainWindow>(bench.parts());
        place = new PremisesPlace(window->context());
        window->setPlaces({place});
        hearth::testing::activate(window.get());
    }
    [[nodiscard]] shell::LineList* list() const { return child<shell::LineList>(place, "premisesList"); }
    [[nodiscard]] std::vector<store::PremisesLine> stored() const { return need(bench.store->premises("")); }
    [[nodiscard]] input::Editor* nameOf(const char* role) const {
        return editor(child<QWidget>(place, role), "name");
    }
    [[nodiscard]] std::optional<reg::Party> holder(reg::PremisesId id, reg::RoleKind kind) const {
        for (const auto& held : need(bench.store->holders(id))) {
            if (held.role == kind) {
                return held.party;
            }
        }
        return std::nullopt;
    }

    FirmBench bench;
    std::unique_ptr<shell::MainWindow> window;
    PremisesPlace* place = nullptr;
};

TEST_F(PremisesPlaceTest, anEmptyStoreSaysHowToBegin) {
    start();
    EXPECT_EQ(list()->count(), 0);
    EXPECT_FALSE(child<QPushButton>(place, "startVisitButton")->isVisible());
}

TEST_F(PremisesPlaceTest, aLongListIsReadAsItComesIntoView) {
    need(bench.store->together([&]() -> Result<void> {
        for (int i = 0; i < 700; ++i) {
            reg::Premises premises;
            premises.id = {bench.store->newId()};
            premises.address = {QStringLiteral("%1 Long Lane").arg(i, 4, 10, QLatin1Char('0')).toStdString(),
                                "", "Thornmere", "TH2 9XY"};
            if (const auto kept = bench.store->save(premises); !kept) {
                return kept;
            }
        }
        return {};
    }));
    start();
    EXPECT_EQ(list()->count(), 700);
    EXPECT_EQ(list()->line(0).title, QStringLiteral("0000 Long Lane"));
    press(Qt::Key_End);
    EXPECT_EQ(list()->currentRow(), 699);
    EXPECT_EQ(editor(place, "line1")->text(), QStringLiteral("0699 Long Lane"));
    const auto found = need(bench.store->premises("0350")).front().premises.id;
    place->openPremises(found);
    EXPECT_EQ(list()->currentRow(), 350);
    fillField(editor(place, "line1"), QStringLiteral("0001a Long Lane"));
    EXPECT_EQ(list()->currentRow(), 2) << "it goes where it now belongs, and the cursor with it";
    EXPECT_EQ(list()->line(2).title, QStringLiteral("0001a Long Lane"));
}

TEST_F(PremisesPlaceTest, premisesAreAddedByKeyboardAlone) {
    start();
    press(Qt::Key_N, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_TRUE(stored().empty()) << "nothing is kept before something is said";
    for (const char* line : {"14 Tallow Lane", "", "Thornmere", "TH2 9XY"}) {
        typeLine(QString::fromLatin1(line));
    }
    const auto premises = stored();
    ASSERT_EQ(premises.size(), 1U);
    EXPECT_EQ(premises[0].premises.address, (reg::Address{"14 Tallow Lane", "", "Thornmere", "TH2 9XY"}));
    const auto id = premises[0].premises.id;
    const auto installations = need(bench.store->installations(id));
    ASSERT_EQ(installations.size(), 1U);
    EXPECT_EQ(installations[0].gas, rulebook::Gas::NaturalGas);
    press(Qt::Key_Return);  // the country stays
    EXPECT_EQ(place->country(), premises[0].premises.country) << "whom to ring follows the country";
    EXPECT_TRUE(editor(place, "gas")->isAncestorOf(focus())) << hearth::testing::described(focus());
    type(QStringLiteral("p"));
    EXPECT_EQ(need(bench.store->installations(id)).at(0).gas, rulebook::Gas::Propane);
    EXPECT_EQ(place->gas(), rulebook::Gas::Propane) << "what to do first follows the gas";
    enterField(nameOf("role_customer"));
    typeLine(QStringLiteral("M. Harrow"));
    ASSERT_TRUE(holder(id, reg::RoleKind::Customer));
    EXPECT_EQ(holder(id, reg::RoleKind::Customer)->name, "M. Harrow");
    EXPECT_EQ(list()->count(), 1);
    EXPECT_TRUE(list()->line(0).detail.contains(QStringLiteral("M. Harrow")));
    press(Qt::Key_Escape);
    EXPECT_EQ(focus(), list());
}

TEST_F(PremisesPlaceTest, newPremisesThatAreLeftAreNotKept) {
    start();
    press(Qt::Key_N, Qt::ControlModifier | Qt::ShiftModifier);
    press(Qt::Key_Escape);
    EXPECT_TRUE(stored().empty());
}

TEST_F(PremisesPlaceTest, searchFindsWordsInAnyOrderWhileTyping) {
    bench.addPremises("14 Tallow Lane", "M. Harrow");
    bench.addPremises("2 Tallow Lane", "Fenn & Daughter");
    bench.addPremises("The Granary", "M. Harrow");
    start();
    EXPECT_EQ(list()->count(), 3);
    press(Qt::Key_F, Qt::ControlModifier);
    type(QStringLiteral("harrow tall"));
    ASSERT_EQ(list()->count(), 1);
    EXPECT_EQ(list()->line(0).title, QStringLiteral("14 Tallow Lane"));
    EXPECT_EQ(editor(place, "line1")->text(), QStringLiteral("14 Tallow Lane"));
    press(Qt::Key_Down);  // into what was found everywhere
    press(Qt::Key_Return);
    EXPECT_EQ(editor(place, "line1")->text(), QStringLiteral("14 Tallow Lane"));
    EXPECT_EQ(list()->count(), 3) << "the search is over";
}

TEST_F(PremisesPlaceTest, fieldsAreKeptWhenCommittedAndTakenBackByControlZ) {
    const auto id = bench.addPremises("14 Tallow Lane");
    start();
    fillField(editor(place, "meterSerial"), QStringLiteral("SN 4471"));
    EXPECT_EQ(need(bench.store->installations(id)).at(0).meterSerial, "SN 4471");
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(need(bench.store->installations(id)).at(0).meterSerial, "");
    EXPECT_EQ(editor(place, "meterSerial")->text(), QString());
    fillField(editor(place, "postcode"), QStringLiteral("TH9 1AA"));
    EXPECT_EQ(need(bench.store->premises(id)).address.postcode, "TH9 1AA");
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(need(bench.store->premises(id)).address.postcode, "TH2 9XY");
}

TEST_F(PremisesPlaceTest, aPressureThatCannotBeReadIsKeptToTheLetterAndMarked) {
    const auto id = bench.addPremises("14 Tallow Lane");
    start();
    auto* field = editor(place, "operatingPressure");
    fillField(field, QStringLiteral("about 21"));
    EXPECT_EQ(field->text(), QStringLiteral("about 21"));
    EXPECT_EQ(need(bench.store->installations(id)).at(0).operatingPressure.text, "about 21");
    EXPECT_FALSE(field->focusTarget()->accessibleDescription().isEmpty()) << "what is wrong is not said";
    fillField(field, QStringLiteral("21,0"));
    EXPECT_EQ(need(bench.store->installations(id)).at(0).operatingPressure,
              (quantity::Typed{"21,0", quantity::UnitCode::Millibar}));
}

TEST_F(PremisesPlaceTest, aKnownCustomerIsTakenNotMadeAgain) {
    bench.addPremises("14 Tallow Lane", "M. Harrow");
    const auto second = bench.addPremises("2 Tallow Lane");
    start();
    window->openPremises(second);
    fillField(nameOf("role_landlord"), QStringLiteral("m. harrow"));
    EXPECT_EQ(need(bench.store->parties("")).size(), 1U);
    ASSERT_TRUE(holder(second, reg::RoleKind::Landlord));
    EXPECT_EQ(holder(second, reg::RoleKind::Landlord)->name, "M. Harrow");
}

TEST_F(PremisesPlaceTest, aChangedNameIsAskedAbout) {
    const auto id = bench.addPremises("14 Tallow Lane", "M. Harrow");
    start();
    bench.dialogs.answers = {1};  // the same person, name corrected
    fillField(nameOf("role_customer"), QStringLiteral("Mary Harrow"));
    EXPECT_EQ(need(bench.store->parties("")).size(), 1U);
    EXPECT_EQ(holder(id, reg::RoleKind::Customer)->name, "Mary Harrow");
    bench.dialogs.answers = {0};  // somebody else
    fillField(nameOf("role_customer"), QStringLiteral("J. Fenn"));
    EXPECT_EQ(need(bench.store->parties("")).size(), 2U);
    EXPECT_EQ(holder(id, reg::RoleKind::Customer)->name, "J. Fenn");
    bench.dialogs.answers = {-1};  // stepped back
    fillField(nameOf("role_customer"), QStringLiteral("K. Moss"));
    EXPECT_EQ(holder(id, reg::RoleKind::Customer)->name, "J. Fenn");
    EXPECT_EQ(nameOf("role_customer")->text(), QStringLiteral("J. Fenn"));
}

TEST_F(PremisesPlaceTest, anEmptiedNameTakesTheRoleAwayAndControlZBringsItBack) {
    const auto id = bench.addPremises("14 Tallow Lane", "M. Harrow");
    start();
    enterField(nameOf("role_customer"));
    press(Qt::Key_A, Qt::ControlModifier);
    press(Qt::Key_Delete);
    press(Qt::Key_Return);
    EXPECT_FALSE(holder(id, reg::RoleKind::Customer));
    press(Qt::Key_Z, Qt::ControlModifier);
    ASSERT_TRUE(holder(id, reg::RoleKind::Customer));
    EXPECT_EQ(nameOf("role_customer")->text(), QStringLiteral("M. Harrow"));
}

TEST_F(PremisesPlaceTest, detailsOfAPersonAreEditedInPlace) {
    const auto id = bench.addPremises("14 Tallow Lane", "M. Harrow");
    start();
    auto* row = child<QWidget>(place, "role_customer");
    child<QPushButton>(row, "detailsButton")->setFocus();
    press(Qt::Key_Return);
    fillField(editor(row, "telephone"), QStringLiteral("01234 000000"));
    EXPECT_EQ(holder(id, reg::RoleKind::Customer)->telephone, "01234 000000");
}

TEST_F(PremisesPlaceTest, accessNotesAreShownOnlyOnPurpose) {
    const auto id = bench.addPremises("14 Tallow Lane");
    auto premises = need(bench.store->premises(id));
    premises.accessNotes = "key safe by the door";
    need(bench.store->save(premises));
    bench.addPremises("2 Tallow Lane");
    start();
    window->openPremises(id);
    auto* notes = editor(place, "accessNotes");
    EXPECT_FALSE(notes->isVisible());
    child<QPushButton>(place, "showNotesButton")->setFocus();
    press(Qt::Key_Return);
    EXPECT_TRUE(notes->isVisible());
    EXPECT_EQ(notes->text(), QStringLiteral("key safe by the door"));
    press(Qt::Key_Escape);
    press(Qt::Key_Down);
    EXPECT_FALSE(notes->isVisible()) << "the next premises show theirs at once";
}

TEST_F(PremisesPlaceTest, whatWasChangedCanBeRead) {
    bench.addPremises("14 Tallow Lane");
    start();
    fillField(editor(place, "meterSerial"), QStringLiteral("SN 4471"));
    child<QPushButton>(place, "showHistoryButton")->setFocus();
    press(Qt::Key_Return);
    auto* history = child<shell::LineList>(place, "historyList");
    ASSERT_GT(history->count(), 0);
    EXPECT_EQ(history->line(0).title, QStringLiteral("Meter serial number: “SN 4471” instead of nothing"));
    EXPECT_EQ(history->line(0).detail, QStringLiteral("R. Ashdown"));
    EXPECT_EQ(history->line(0).right, QStringLiteral("25 Nov 2026"));
}

// Kept as typed all the same: every rule about such numbers has exceptions.
TEST_F(PremisesPlaceTest, anOddPostcodeOrNumberIsSaidAndKept) {
    const auto id = bench.addPremises("14 Tallow Lane");
    start();
    const auto said = [this](const char* name) {
        return editor(place, name)->focusTarget()->accessibleDescription();
    };
    EXPECT_EQ(said("postcode"), QString());
    fillField(editor(place, "postcode"), QStringLiteral("TH2 9CY"));  // no C in the last two letters
    EXPECT_TRUE(said("postcode").contains(QStringLiteral("postcode"))) << said("postcode").toStdString();
    EXPECT_EQ(need(bench.store->premises(id)).address.postcode, "TH2 9CY");
    fillField(editor(place, "postcode"), QStringLiteral("TH2 9XY"));
    EXPECT_EQ(said("postcode"), QString());
    fillField(editor(place, "uprn"), QStringLiteral("12x"));
    EXPECT_TRUE(said("uprn").contains(QStringLiteral("UPRN")));
    EXPECT_EQ(need(bench.store->premises(id)).uprn, "12x");
    fillField(editor(place, "mprn"), QStringLiteral("3938424430"));
    EXPECT_TRUE(said("mprn").contains(QStringLiteral("last two digits"))) << said("mprn").toStdString();
    fillField(editor(place, "mprn"), QStringLiteral("3938424403"));
    EXPECT_EQ(said("mprn"), QString());
}

TEST_F(PremisesPlaceTest, whetherAnApplianceStandsInATenantsRoomIsSaidOrNot) {
    const auto id = bench.addPremises("14 Tallow Lane");
    start();
    auto* field = editor(place, "applianceInRooms");
    EXPECT_EQ(field->text(), QStringLiteral("not_said"));
    enterField(field);
    type(QStringLiteral("n"));
    press(Qt::Key_Return);
    EXPECT_EQ(need(bench.store->premises(id)).applianceInRooms, reg::YesNo::No);
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(need(bench.store->premises(id)).applianceInRooms, reg::YesNo::NotSaid);
    EXPECT_EQ(field->text(), QStringLiteral("not_said"));
}

TEST_F(PremisesPlaceTest, visitsAndTheirRecordsAreOpenedFromHere) {
    const auto id = bench.addPremises("14 Tallow Lane");
    const auto visit = bench.startVisit(id);
    const auto record = need(bench.issue()(visit, std::nullopt, {}));
    auto context = bench.context();
    PremisesPlace alone(context);
    alone.refresh();
    hearth::testing::activate(&alone);
    auto* visits = child<shell::LineList>(&alone, "premisesVisitsList");
    ASSERT_EQ(visits->count(), 2);
    visits->setFocus();
    press(Qt::Key_Home);
    press(Qt::Key_Return);
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    press(Qt::Key_N, Qt::ControlModifier);
    EXPECT_EQ(bench.navigator.went,
              (std::vector<std::string>{"visit " + visit.text(), "record " + record.text(),
                                        "start visit " + id.text()}));
}

TEST_F(PremisesPlaceTest, anotherInstallationHasNamesOfItsOwn) {
    const auto id = bench.addPremises("14 Tallow Lane");
    start();
    child<QPushButton>(place, "addInstallationButton")->setFocus();
    press(Qt::Key_Return);
    EXPECT_EQ(need(bench.store->installations(id)).size(), 2U);
    hearth::testing::expectUniqueNames(window.get());
    hearth::testing::expectEveryStopOnce(window.get());
}

TEST_F(PremisesPlaceTest, aReadOnlyStoreShowsAllAndChangesNothing) {
    bench.addPremises("14 Tallow Lane", "M. Harrow");
    const auto second = need(store::Store::open(bench.path(), store::Access::WriteOrRead, bench.clock));
    auto parts = bench.parts();
    shell::MainWindow reader({*second, parts.clock, parts.words, parts.dialogs, parts.printing, parts.issue,
                              parts.scheme, nullptr});
    auto* shown = new PremisesPlace(reader.context());
    reader.setPlaces({shown});
    hearth::testing::activate(&reader);
    const std::string before = bench.state();
    enterField(editor(shown, "line1"));
    type(QStringLiteral("x"));
    press(Qt::Key_Return);
    press(Qt::Key_N, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(bench.state(), before);
    EXPECT_EQ(editor(shown, "line1")->text(), QStringLiteral("14 Tallow Lane"));
}

TEST_F(PremisesPlaceTest, whatToDoFirstIsOneKeyAwayFromEveryField) {
    bench.addPremises("14 Tallow Lane", "M. Harrow");
    start();
    for (QWidget* stop : hearth::testing::tabStops(place)) {
        stop->setFocus();
        press(Qt::Key_F12);
        auto* panel = child<QWidget>(window.get(), "emergencyPanel");
        ASSERT_TRUE(panel->isVisible()) << hearth::testing::described(stop);
        press(Qt::Key_Escape);
        ASSERT_FALSE(panel->isVisible());
        EXPECT_EQ(focus(), stop);
    }
}

TEST_F(PremisesPlaceTest, canBeWalkedThrough) {
    bench.addPremises("14 Tallow Lane", "M. Harrow");
    bench.addPremises("2 Tallow Lane", "Fenn & Daughter");
    start();
    hearth::testing::expectWalkable(window.get(), [this] { return bench.state(); });
    child<QPushButton>(child<QWidget>(place, "role_customer"), "detailsButton")->click();
    child<QPushButton>(place, "showNotesButton")->click();
    child<QPushButton>(place, "showHistoryButton")->click();
    hearth::testing::expectWalkable(window.get(), [this] { return bench.state(); });
}

TEST_F(PremisesPlaceTest, fitsASmallScreenInTheLongestLanguage) {
    words::PseudoTranslator pseudo;
    QCoreApplication::installTranslator(&pseudo);
    bench.addPremises("14 Tallow Lane", "M. Harrow");
    start();
    hearth::testing::expectFits(window.get(), {1024, 600});
    QCoreApplication::removeTranslator(&pseudo);
}

}  // namespace
}  // namespace hearth::ui::premises
