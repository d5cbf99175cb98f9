// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/visits_place.h"

#include "tests/ui/visit/sheet_bench.h"

#include <QLineEdit>

#include <gtest/gtest.h>

namespace hearth::ui::visit {
namespace {

using reg::Item;
using testing::need;
using testing::SheetBench;

TEST(VisitsPlace, OpenDraftsStandFirst) {
    testing::FirmBench firm;
    const auto first = firm.addPremises("1 First Street");
    const auto second = firm.addPremises("2 Second Street");
    const auto draft = firm.startVisit(first);
    const auto done = firm.startVisit(second);
    auto file = need(firm.store->visitFile(done));
    file.visit.closed = true;
    need(firm.store->save(file.visit));
    VisitsPlace place(firm.context());
    place.refresh();
    ASSERT_EQ(place.list()->count(), 2);
    EXPECT_EQ(place.list()->line(0).key, QString::fromStdString(draft.text()));
}

TEST(VisitsPlace, SearchFindsByAddressAndSaysWhenNothingIsFound) {
    testing::FirmBench firm;
    firm.startVisit(firm.addPremises("1 First Street"));
    firm.startVisit(firm.addPremises("2 Second Street"));
    VisitsPlace place(firm.context());
    place.refresh();
    place.search(QStringLiteral("second"));
    EXPECT_EQ(place.list()->count(), 1);
    place.search(QStringLiteral("nowhere"));
    EXPECT_EQ(place.list()->count(), 0);
    place.search({});
    EXPECT_EQ(place.list()->count(), 2);
}

TEST(VisitsPlace, SaysWhatAnOpenVisitStillNeedsAndWhichIsBooked) {
    testing::FirmBench firm;
    const auto premises = firm.addPremises("1 First Street");
    const auto today = firm.startVisit(premises);
    const auto ahead = firm.startVisit(premises);
    auto visit = need(firm.store->visitFile(ahead)).visit;
    visit.date = calendar::addMonths(visit.date, 1);
    need(firm.store->save(visit));
    VisitsPlace place(firm.context());
    place.refresh();
    ASSERT_EQ(place.list()->count(), 2);
    EXPECT_EQ(place.list()->line(0).key, QString::fromStdString(ahead.text()));
    EXPECT_TRUE(place.list()->line(0).rightDetail.startsWith(QStringLiteral("booked, missing: ")));
    EXPECT_EQ(place.list()->line(1).key, QString::fromStdString(today.text()));
    EXPECT_TRUE(place.list()->line(1).rightDetail.startsWith(QStringLiteral("draft, missing: ")));
}

TEST(VisitsPlace, ReturnsToTheFieldThatWasLeft) {
    SheetBench bench;
    bench.at(Item::TightStart);
    bench.place->commit();
    bench.open();
    EXPECT_EQ(QApplication::focusWidget(), bench.editor(Item::TightStart).focusTarget());
    bench.at(Item::VisitReference);
    SheetBench::press(Qt::Key_Escape);
    bench.place->openVisit(bench.visit);
    SheetBench::settle();
    EXPECT_EQ(QApplication::focusWidget(), bench.editor(Item::VisitReference).focusTarget());
}

TEST(VisitsPlace, ANewVisitAsksFirstWhatItIsFor) {
    const SheetBench bench;
    ASSERT_NE(QApplication::focusWidget(), nullptr);
    EXPECT_EQ(QApplication::focusWidget()->accessibleName(), QStringLiteral("Kind of visit"));
}

TEST(VisitsPlace, AVisitOfAKindOpensAtWhatIsMissingFirst) {
    SheetBench bench;
    const auto other = bench.firm.startVisit(bench.premises);
    reg::Entry kind;
    kind.id = reg::EntryId{bench.firm.store->newId()};
    kind.visit = other;
    kind.subject = reg::subject(other);
    kind.item = Item::VisitPipework;
    kind.text = reg::choice::kYes;
    need(bench.firm.store->saveEntry(kind));
    bench.place->openVisit(other);
    SheetBench::settle();
    EXPECT_EQ(QApplication::focusWidget(), bench.editor(Item::SmellOnArrival).focusTarget());
}

TEST(VisitsPlace, MakesNoWidgetsBeforeItIsShown) {
    testing::FirmBench firm;
    const VisitsPlace place(firm.context());
    EXPECT_TRUE(place.findChildren<QWidget*>().isEmpty());
}

TEST(VisitsPlace, TheListIsWalkable) {
    testing::FirmBench firm;
    firm.startVisit(firm.addPremises("1 First Street"));
    VisitsPlace place(firm.context());
    place.refresh();
    testing::activate(&place);
    testing::expectWalkable(&place, [&] { return firm.state(); });
}

TEST(VisitsPlace, KnowsTheGasOfTheVisitInView) {
    SheetBench bench;
    EXPECT_EQ(bench.place->gas(), rulebook::Gas::NaturalGas);
    auto installation = bench.file().installation;
    installation.gas = rulebook::Gas::Propane;
    need(bench.model().save(installation));
    EXPECT_EQ(bench.place->gas(), rulebook::Gas::Propane);
}

TEST(VisitsPlace, KnowsTheCountryOfTheVisitInView) {
    SheetBench bench;
    auto premises = bench.file().premises;
    EXPECT_EQ(bench.place->country(), premises.country);
    premises.country = reg::Country::NorthernIreland;
    need(bench.firm.store->save(premises));
    bench.open();
    EXPECT_EQ(bench.place->country(), reg::Country::NorthernIreland);
}

TEST(VisitsPlace, CommitKeepsTheFieldUnderTheCursor) {
    SheetBench bench;
    bench.at(Item::VisitReference);
    SheetBench::keys(QStringLiteral("PO 9"));
    bench.place->commit();
    EXPECT_EQ(need(bench.firm.store->visitFile(bench.visit))
                  .find(bench.subjectOf(Item::VisitReference), Item::VisitReference)
                  ->text,
              "PO 9");
}

TEST(VisitsPlace, AnotherVisitHasItsOwnSheet) {
    SheetBench bench;
    bench.type(Item::VisitReference, QStringLiteral("PO 1"));
    const auto other = bench.firm.startVisit(bench.firm.addPremises("2 Second Street"));
    bench.place->openVisit(other);
    SheetBench::settle();
    EXPECT_EQ(bench.editor(Item::VisitReference).text(), QString());
    bench.place->openVisit(bench.visit);
    SheetBench::settle();
    EXPECT_EQ(bench.editor(Item::VisitReference).text(), QStringLiteral("PO 1"));
}

TEST(VisitsPlace, AVisitThatIsNotThereIsSaid) {
    testing::FirmBench firm;
    VisitsPlace place(firm.context());
    place.refresh();
    place.openVisit(reg::VisitId{makeUuid7(7)});
    EXPECT_EQ(place.sheet(), nullptr);
}

/// A store that another program holds: everything can be read, nothing be changed.
TEST(VisitsPlace, AReadOnlyStoreIsReadableAndItsEditorsReadOnly) {
    SheetBench bench;
    bench.fillIn();
    auto reader = need(store::Store::open(bench.firm.path(), store::Access::WriteOrRead, bench.firm.clock));
    ASSERT_TRUE(reader->isReadOnly());
    auto& firm = bench.firm;
    const shell::Context context{*reader,        firm.clock,    firm.words,  firm.dialogs,
                                 firm.navigator, firm.printing, firm.issue()};
    VisitsPlace place(context);
    place.resize(1280, 800);
    testing::activate(&place);
    place.refresh();
    place.openVisit(bench.visit);
    SheetBench::settle();
    ASSERT_NE(place.sheet(), nullptr);
    int fields = 0;
    for (auto* line : place.sheet()->paper()->findChildren<QLineEdit*>()) {
        EXPECT_TRUE(line->isReadOnly()) << testing::described(line);
        ++fields;
    }
    EXPECT_GT(fields, 20);
    const auto before = testing::valuesIn(&place);
    for (auto* stop : testing::tabStops(place.sheet()->paper())) {
        stop->setFocus();
        SheetBench::keys(QStringLiteral("y1"));
    }
    EXPECT_EQ(testing::valuesIn(&place), before);
    EXPECT_FALSE(place.sheet()->findChild<QPushButton*>(QStringLiteral("issueButton"))->isEnabled());
}

}  // namespace
}  // namespace hearth::ui::visit
