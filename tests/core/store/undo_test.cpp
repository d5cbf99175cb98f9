// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/undo.h"

#include "tests/core/store/store_fixture.h"

#include <gmock/gmock.h>

namespace hearth::store {
namespace {

using quantity::UnitCode;
using reg::Item;
using Text = std::optional<std::string>;

class ChangeLog : public StoreTest {
  protected:
    void SetUp() override {
        StoreTest::SetUp();
        sample = putSample(*store);
        visit = valueOf(store->startVisit(sampleVisit(sample)));
        store->actAs("Tamsin");
    }
    [[nodiscard]] reg::VisitFile file() const { return valueOf(store->visitFile(visit)); }
    [[nodiscard]] std::vector<Change> logOf(const reg::Premises& premises) const {
        return valueOf(store->changes("premises", premises.id.text()));
    }
    [[nodiscard]] std::vector<Change> logOfEntries() const {
        return valueOf(store->changes("entries", file().tests.front().id.text()));
    }
    [[nodiscard]] std::optional<Change> undo() { return valueOf(store->undo()); }
    [[nodiscard]] std::string typed(Item item) const {
        const auto now = file();
        const auto* entry = now.find(reg::subject(now.tests.front().id), item);
        return entry != nullptr ? entry->text + " " + std::string(quantity::unitText(entry->unit)) : "";
    }
    void type(Item item, const std::string& text, UnitCode unit = UnitCode::Millibar) {
        valueOf(store->saveEntry(testEntry(file(), item, text, unit)));
    }
    void dropWayBack() { reopen(), store->actAs("Tamsin"); }

    Sample sample;
    reg::VisitId visit;
};

TEST_F(ChangeLog, hasOneLineForEachChangedFieldOfARegisterRow) {
    auto premises = sample.premises;
    const auto before = logOf(premises).size();
    premises.address.line1 = "9 Ford End";
    premises.accessNotes = "";
    clock.advance(std::chrono::minutes(5));
    valueOf(store->save(premises));
    const auto log = logOf(premises);
    ASSERT_EQ(log.size(), before + 2);
    EXPECT_EQ(log[before].table, "premises");
    EXPECT_EQ(log[before].row, premises.id.text());
    EXPECT_EQ(log[before].field, "line1");
    EXPECT_EQ(log[before].before, Text("12 Highcroft Rise"));
    EXPECT_EQ(log[before].after, Text("9 Ford End"));
    EXPECT_EQ(log[before].by, "Tamsin");
    EXPECT_EQ(log[before].at, clock.now());
    EXPECT_EQ(log[before + 1].field, "access_notes");
    EXPECT_EQ(log[before + 1].after, Text(""));
}

TEST_F(ChangeLog, hasNoLineForSavingTheSame) {
    const auto before = logOf(sample.premises).size();
    valueOf(store->save(sample.premises));
    valueOf(store->saveFirm(valueOf(store->firm())));
    EXPECT_EQ(logOf(sample.premises).size(), before);
}

TEST_F(ChangeLog, tellsAnEntrysLife) {
    type(Item::TightStart, "20.71");
    type(Item::TightStart, "207.1");
    type(Item::TightStart, "2.071", UnitCode::Kilopascal);
    type(Item::TightStart, "");
    std::vector<std::string> told;
    for (const auto& line : logOfEntries()) {
        told.push_back(line.field + ": " + line.before.value_or("-") + " > " + line.after.value_or("-"));
    }
    EXPECT_THAT(told,
                ::testing::ElementsAre("test.tight_start: - > 20.71", "test.tight_start/unit: - > mbar",
                                       "test.tight_start: 20.71 > 207.1", "test.tight_start: 207.1 > 2.071",
                                       "test.tight_start/unit: mbar > kPa", "test.tight_start: 2.071 > -",
                                       "test.tight_start/unit: kPa > -"));
    const auto ofVisit = valueOf(store->changesOfVisit(visit));
    EXPECT_EQ(ofVisit.back().field, "test.tight_start/unit");
    EXPECT_EQ(ofVisit.front().table, "visits");
}

TEST_F(ChangeLog, isOnlyEverAddedTo) {
    store.reset();
    EXPECT_NE(sqlOn(path(), "UPDATE changes SET after = 'x'"), "");
    EXPECT_NE(sqlOn(path(), "DELETE FROM changes"), "");
    EXPECT_NE(sqlOn(path(), "INSERT OR REPLACE INTO changes SELECT * FROM changes"), "");
    EXPECT_NE(sqlOn(path(),
                    "INSERT OR REPLACE INTO changes SELECT randomblob(16), position, group_id, store, visit, "
                    "table_name, row_id, field, 'x', after, by, at FROM changes"),
              "");
    EXPECT_EQ(askSql(path(), "SELECT count(*) FROM changes WHERE before = 'x' OR after = 'x'"), "0");
}

TEST_F(ChangeLog, namesTheStoreThatWroteIt) {
    store.reset();
    EXPECT_EQ(askSql(path(), "SELECT count(*) FROM changes WHERE store <> (SELECT id FROM store)"), "0");
}

TEST_F(ChangeLog, undoTakesBackARegisterField) {
    auto premises = sample.premises;
    premises.address.line1 = "9 Ford End";
    premises.address.town = "Elsewhere";
    valueOf(store->save(premises));
    const auto undone = undo();
    ASSERT_TRUE(undone.has_value());
    EXPECT_EQ(undone->field, "line1");
    EXPECT_EQ(undone->after, Text("9 Ford End"));
    EXPECT_EQ(valueOf(store->premises(premises.id)), sample.premises);
    const auto log = logOf(premises);
    EXPECT_EQ(log.back().field, "town");
    EXPECT_EQ(log.back().before, Text("Elsewhere"));
    EXPECT_EQ(log.back().after, Text("Ashwick"));
}

TEST_F(ChangeLog, undoTakesBackAnEntryStepByStep) {
    type(Item::TightStart, "20.71");
    type(Item::TightStart, "2.07", UnitCode::Kilopascal);
    type(Item::TightStart, "");
    EXPECT_EQ(typed(Item::TightStart), "");
    EXPECT_EQ(undo()->before, Text("2.07"));
    EXPECT_EQ(typed(Item::TightStart), "2.07 kPa");
    EXPECT_TRUE(undo());
    EXPECT_EQ(typed(Item::TightStart), "20.71 mbar");
    EXPECT_TRUE(undo());
    EXPECT_EQ(typed(Item::TightStart), "");
}

TEST_F(ChangeLog, undoRestoresTheInstrumentOfAnEntry) {
    auto entry = testEntry(file(), Item::TightStart, "20.71", UnitCode::Millibar);
    entry.instrument = sample.gauge.id;
    valueOf(store->saveEntry(entry));
    entry.instrument.reset();
    entry.text = "20.70";
    valueOf(store->saveEntry(entry));
    EXPECT_TRUE(undo());
    EXPECT_EQ(file().entries.front().instrument, sample.gauge.id);
    EXPECT_EQ(file().entries.front().canonical, "20.71");
}

TEST_F(ChangeLog, undoTakesBackWhatWasMadeAndBringsBackWhatWasRemoved) {
    dropWayBack();
    reg::PipeSection first{{store->newId()},
                           sample.installation.id,
                           std::nullopt,
                           0,
                           "copper_22",
                           {"3", UnitCode::Metre},
                           {},
                           "",
                           true};
    reg::PipeSection second{{store->newId()},
                            sample.installation.id,
                            first.id,
                            1,
                            "copper_15",
                            {"2", UnitCode::Metre},
                            {},
                            "",
                            true};
    second.capped = true;
    second.fittings = "2 bends";
    valueOf(store->savePipes(sample.installation.id, {first, second}));
    valueOf(store->savePipes(sample.installation.id, {}));
    EXPECT_TRUE(undo());
    EXPECT_THAT(valueOf(store->pipes(sample.installation.id)), ::testing::ElementsAre(first, second));
    EXPECT_TRUE(undo());
    EXPECT_TRUE(valueOf(store->pipes(sample.installation.id)).empty());
    EXPECT_FALSE(undo());
}

TEST_F(ChangeLog, undoOfAVisitTakesItsTestToo) {
    const auto started = valueOf(store->startVisit(sampleVisit(sample)));
    EXPECT_TRUE(undo());
    EXPECT_EQ(errorOf(store->visitFile(started)), ErrorCode::NotFound);
}

TEST_F(ChangeLog, undoGoesBackToTheStateAtTheStartWhateverWasDone) {
    dropWayBack();
    const auto before = file();
    type(Item::TightStart, "20.71");
    auto firm = valueOf(store->firm());
    firm.name = "Other";
    valueOf(store->saveFirm(firm));
    static_cast<void>(valueOf(store->addTest(visit, "after")));
    reg::Party tenant = sample.customer;
    tenant.id = reg::PartyId{store->newId()};
    valueOf(store->save(tenant));
    valueOf(store->save(reg::Role{{}, sample.premises.id, tenant.id, reg::RoleKind::Tenant}));
    valueOf(store->removeRole(sample.premises.id, reg::RoleKind::Customer));
    auto closed = file().visit;
    closed.closed = true;
    closed.engineer.reset();
    valueOf(store->save(closed));
    int steps = 0;
    while (undo()) {
        ++steps;
    }
    EXPECT_EQ(steps, 7);
    EXPECT_EQ(file().firm, before.firm);
    EXPECT_EQ(file().visit, before.visit);
    EXPECT_EQ(file().tests, before.tests);
    EXPECT_EQ(file().people, before.people);
    EXPECT_EQ(file().entries, before.entries);
}

TEST_F(ChangeLog, undoDoesNotReachBehindTheStartOfTheProgram) {
    type(Item::TightStart, "20.71");
    reopen();
    EXPECT_FALSE(undo());
    EXPECT_EQ(typed(Item::TightStart), "20.71 mbar");
}

TEST_F(ChangeLog, undoDoesNotReachBehindAnIssuedRecord) {
    type(Item::TightStart, "20.71");
    static_cast<void>(issueOne(visit));
    EXPECT_FALSE(undo());
    type(Item::TightEnd, "20.67");
    EXPECT_TRUE(undo());
    EXPECT_FALSE(undo());
    EXPECT_EQ(typed(Item::TightStart), "20.71 mbar");
}

}  // namespace
}  // namespace hearth::store
