// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/kept_repository.h"

#include "tests/core/store/kept_fixture.h"

#include <gmock/gmock.h>

namespace hearth::store {
namespace {

using reg::RoleKind;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

class Keeping : public KeptTest {};

TEST_F(Keeping, anApplianceComesBackFieldForField) {
    const auto cooker = fullAppliance();
    valueOf(store->save(cooker));
    reopen();
    EXPECT_EQ(valueOf(store->appliance(cooker.id)), cooker);
    EXPECT_THAT(valueOf(store->appliances(sample.installation.id)), ElementsAre(cooker));
    EXPECT_THAT(valueOf(store->appliancesOf(sample.premises.id)), ElementsAre(cooker));
}

TEST_F(Keeping, aNewApplianceGoesToTheEndAndTheOrderIsKept) {
    const auto boiler = addAppliance("boiler");
    const auto hob = addAppliance("hob");
    const auto fire = addAppliance("gas_fire");
    EXPECT_THAT(kindsHere(), ElementsAre("boiler", "hob", "gas_fire"));
    valueOf(store->orderAppliances(sample.installation.id, {fire, hob}));
    reopen();
    EXPECT_THAT(kindsHere(), ElementsAre("gas_fire", "hob", "boiler"));
    EXPECT_EQ(errorOf(store->orderAppliances(otherInstallation().id, {boiler})), ErrorCode::NotFound);
}

TEST_F(Keeping, whatWasRemovedIsShownOnlyOnPurpose) {
    auto hob = valueOf(store->appliance(addAppliance("hob")));
    hob.removedOn = day(2026, 10, 1);
    valueOf(store->save(hob));
    EXPECT_THAT(valueOf(store->appliances(sample.installation.id)), IsEmpty());
    EXPECT_THAT(valueOf(store->appliances(sample.installation.id, Removed::Included)), ElementsAre(hob));
    EXPECT_THAT(valueOf(store->appliancesOf(sample.premises.id)), IsEmpty());
    EXPECT_THAT(valueOf(store->appliancesOf(sample.premises.id, Removed::Included)), ElementsAre(hob));
}

TEST_F(Keeping, aPremisesMayHaveSeveralInstallations) {
    auto flat = otherInstallation();
    EXPECT_THAT(valueOf(store->installations(sample.premises.id)), ElementsAre(sample.installation, flat));
    const auto boiler = addAppliance("boiler");
    auto above = fullAppliance();
    above.installation = flat.id;
    valueOf(store->save(above));
    const auto all = valueOf(store->appliancesOf(sample.premises.id));
    ASSERT_EQ(all.size(), 2U);
    EXPECT_EQ(all[0].id, boiler);
    EXPECT_EQ(all[1], above);
}

TEST_F(Keeping, competencesAreListedByCategory) {
    const auto saved = [&](const char* category, std::optional<calendar::Date> expires) {
        reg::Competence one{{store->newId()}, sample.engineer.id, category, expires, expires ? "" : "spring"};
        valueOf(store->save(one));
        return one;
    };
    const auto water = saved("HTR1", std::nullopt);
    const auto core = saved("CCN1", day(2028, 3, 1));
    EXPECT_THAT(valueOf(store->competences(sample.engineer.id)), ElementsAre(core, water));
    valueOf(store->removeCompetence(core.id));
    EXPECT_THAT(valueOf(store->competences(sample.engineer.id)), ElementsAre(water));
}

TEST_F(Keeping, anAppliancesHistoryNamesItsVisitsAndRecords) {
    const auto boiler = addAppliance("boiler");
    const auto visitIn = [&](int year) {
        auto visit = sampleVisit(sample);
        visit.date = day(year, 11, 25);
        return valueOf(store->startVisit(visit));
    };
    const auto last = visitIn(2025);
    valueOf(store->saveEntry(applianceEntry(last, boiler, "40")));
    const auto record = issueOne(last);
    const auto now = visitIn(2026);
    static_cast<void>(visitIn(2024));  // without a reading on it
    valueOf(store->saveEntry(applianceEntry(now, boiler, "62")));
    auto changed = valueOf(store->appliance(boiler));
    changed.serial = "EL-7";
    valueOf(store->save(changed));
    const auto history = valueOf(store->historyOf(boiler));
    EXPECT_EQ(history.appliance, changed);
    ASSERT_EQ(history.visits.size(), 2U);
    EXPECT_EQ(history.visits[0].visit.visit.id, now);
    EXPECT_THAT(history.visits[0].records, IsEmpty());
    EXPECT_EQ(history.visits[1].visit.visit.id, last);
    ASSERT_EQ(history.visits[1].records.size(), 1U);
    EXPECT_EQ(history.visits[1].records[0].id, record);
    EXPECT_EQ(history.changes.back().field, "serial");
    EXPECT_EQ(errorOf(store->historyOf({store->newId()})), ErrorCode::NotFound);
}

// A reading is never carried forward, and next year's does not take the place of last year's.
TEST_F(Keeping, eachVisitHasItsOwnReadingsOfAnAppliance) {
    const auto boiler = addAppliance("boiler");
    const auto last = valueOf(store->startVisit(sampleVisit(sample)));
    const auto now = valueOf(store->startVisit(sampleVisit(sample)));
    valueOf(store->saveEntry(applianceEntry(last, boiler, "40")));
    EXPECT_THAT(valueOf(store->visitFile(now)).entries, IsEmpty());
    valueOf(store->saveEntry(applianceEntry(now, boiler, "62")));
    valueOf(store->saveEntry(applianceEntry(now, boiler, "63")));
    const auto typed = [&](reg::VisitId visit) {
        const auto file = valueOf(store->visitFile(visit));
        const auto* entry = file.find(reg::subject(boiler), reg::Item::FlueCoHigh);
        return entry != nullptr ? entry->text : "";
    };
    EXPECT_EQ(typed(last), "40");
    EXPECT_EQ(typed(now), "63");
    EXPECT_TRUE(valueOf(store->undo()));
    EXPECT_EQ(typed(now), "62");
    valueOf(store->saveEntry(applianceEntry(now, boiler, "")));
    EXPECT_EQ(typed(now), "");
    EXPECT_EQ(typed(last), "40");
}

TEST_F(Keeping, aReadingOnAnotherPremisesApplianceIsRefused) {
    reg::Premises other;
    other.id = {store->newId()};
    valueOf(store->save(other));
    reg::Installation gas;
    gas.id = {store->newId()};
    gas.premises = other.id;
    valueOf(store->save(gas));
    auto cooker = fullAppliance();
    cooker.installation = gas.id;
    valueOf(store->save(cooker));
    const auto visit = valueOf(store->startVisit(sampleVisit(sample)));
    EXPECT_EQ(errorOf(store->saveEntry(applianceEntry(visit, cooker.id, "40"))), ErrorCode::NotFound);
}

// Roles ----------------------------------------------------------------------------------------------------

class RolesInTime : public KeptTest {
  protected:
    reg::Party person(const char* name) {
        reg::Party party;
        party.id = {store->newId()};
        party.name = name;
        valueOf(store->save(party));
        return party;
    }
    [[nodiscard]] reg::Role landlord(const reg::Party& party, std::optional<calendar::Date> since,
                                     std::optional<calendar::Date> until = {}) {
        return {{store->newId()}, sample.premises.id, party.id, RoleKind::Landlord, since, until};
    }
    [[nodiscard]] std::string landlordAt(calendar::Date date) const {
        std::string names;
        for (const auto& holder : valueOf(store->holdersAt(sample.premises.id, date))) {
            names += holder.role == RoleKind::Landlord ? holder.party.name : "";
        }
        return names;
    }
    [[nodiscard]] std::vector<std::string> history() const {
        std::vector<std::string> lines;
        for (const auto& line : valueOf(store->rolesOf(sample.premises.id))) {
            const auto text = [](const auto& date) { return date ? calendar::isoText(*date) : "?"; };
            if (line.role.kind == RoleKind::Landlord) {
                lines.push_back(line.party.name + " " + text(line.role.since) + " " + text(line.role.until));
            }
        }
        return lines;
    }
};

TEST_F(RolesInTime, anotherHolderEndsTheOneBeforeOnTheDayBefore) {
    const auto first = person("Nell Harrow");
    const auto second = person("Odo Vance");
    valueOf(store->save(landlord(first, day(2020, 1, 1))));
    valueOf(store->save(landlord(second, day(2024, 3, 1))));
    EXPECT_THAT(history(), ElementsAre("Odo Vance 2024-03-01 ?", "Nell Harrow 2020-01-01 2024-02-29"));
    EXPECT_EQ(landlordAt(day(2019, 12, 31)), "");
    EXPECT_EQ(landlordAt(day(2020, 1, 1)), "Nell Harrow");
    EXPECT_EQ(landlordAt(day(2024, 2, 29)), "Nell Harrow");
    EXPECT_EQ(landlordAt(day(2024, 3, 1)), "Odo Vance");
    EXPECT_EQ(valueOf(store->rolesOf(first.id)).front().address, sample.premises.address);
    EXPECT_TRUE(valueOf(store->undo()));
    EXPECT_THAT(history(), ElementsAre("Nell Harrow 2020-01-01 ?"));
}

TEST_F(RolesInTime, withoutADayItIsTheCorrectionOfAMistake) {
    valueOf(store->save(landlord(person("Nell Harrow"), std::nullopt)));
    valueOf(store->save(landlord(person("Odo Vance"), std::nullopt)));
    EXPECT_THAT(history(), ElementsAre("Odo Vance ? ?"));
}

TEST_F(RolesInTime, aPastOneIsAddedToTheHistory) {
    valueOf(store->save(landlord(person("Odo Vance"), day(2024, 3, 1))));
    valueOf(store->save(landlord(person("Nell Harrow"), day(2020, 1, 1), day(2024, 2, 29))));
    EXPECT_THAT(history(), ElementsAre("Odo Vance 2024-03-01 ?", "Nell Harrow 2020-01-01 2024-02-29"));
}

TEST_F(RolesInTime, twoAtOnceAreRefused) {
    const auto first = person("Nell Harrow");
    const auto second = person("Odo Vance");
    valueOf(store->save(landlord(first, day(2020, 1, 1))));
    EXPECT_EQ(store->save(landlord(second, day(2019, 1, 1))).error(),
              (Error{ErrorCode::RoleOverlaps, {"Nell Harrow"}}));
    EXPECT_EQ(errorOf(store->save(landlord(second, day(2019, 1, 1), day(2020, 1, 1)))),
              ErrorCode::RoleOverlaps);
    EXPECT_EQ(errorOf(store->save(landlord(second, day(2019, 1, 1), day(2018, 1, 1)))),
              ErrorCode::RoleOverlaps);
    EXPECT_EQ(errorOf(store->endRole(sample.premises.id, RoleKind::Landlord, day(2019, 12, 31))),
              ErrorCode::RoleOverlaps);
    EXPECT_THAT(history(), ElementsAre("Nell Harrow 2020-01-01 ?"));
}

TEST_F(RolesInTime, anEndedRoleIsHistoryAfterItsLastDay) {
    valueOf(store->save(landlord(person("Nell Harrow"), std::nullopt)));
    valueOf(store->endRole(sample.premises.id, RoleKind::Landlord, day(2026, 11, 30)));
    EXPECT_EQ(landlordAt(day(2026, 11, 25)), "Nell Harrow");
    EXPECT_EQ(valueOf(store->holders(sample.premises.id)).size(), 2U);  // with the customer
    clock.advance(std::chrono::hours(24 * 6));                          // 1 December
    EXPECT_EQ(valueOf(store->holders(sample.premises.id)).size(), 1U);
    valueOf(store->endRole(sample.premises.id, RoleKind::Landlord, day(2026, 11, 30)));  // nothing stands
}

TEST_F(RolesInTime, aKnownRoleIsChangedWhereItStands) {
    auto role = landlord(person("Nell Harrow"), day(2020, 1, 1));
    valueOf(store->save(role));
    valueOf(store->save(landlord(person("Odo Vance"), day(2024, 3, 1))));
    role.since = day(2021, 1, 1);
    role.until = day(2023, 12, 31);
    valueOf(store->save(role));
    EXPECT_THAT(history(), ElementsAre("Odo Vance 2024-03-01 ?", "Nell Harrow 2021-01-01 2023-12-31"));
    role.until.reset();
    EXPECT_EQ(errorOf(store->save(role)), ErrorCode::RoleOverlaps);
}

// Settings -------------------------------------------------------------------------------------------------

TEST_F(Keeping, aSettingIsKeptAndLoggedButNoStepOfUndo) {
    EXPECT_EQ(valueOf(store->setting("second_folder")), "");
    valueOf(store->saveSetting("second_folder", "/media/stick"));
    valueOf(store->saveSetting("second_folder", "/media/other"));
    valueOf(store->saveSetting("second_folder", "/media/other"));
    const auto log = valueOf(store->changes("settings", "second_folder"));
    ASSERT_EQ(log.size(), 2U);
    EXPECT_EQ(log[1].before, std::optional<std::string>("/media/stick"));
    EXPECT_EQ(log[1].after, std::optional<std::string>("/media/other"));
    EXPECT_NE(valueOf(store->undo())->table, "settings");
    reopen();
    EXPECT_EQ(valueOf(store->setting("second_folder")), "/media/other");
}

// Every change --------------------------------------------------------------------------------------------

TEST_F(Keeping, aReaderIsRefusedEveryChange) {
    for (const auto& action : keptActions()) {
        if (action.prepare) {
            valueOf(action.prepare(*store, sample));
        }
        const auto reader = valueOf(Store::open(path(), Access::Read, clock));
        EXPECT_EQ(errorOf(action.run(*reader, sample)), ErrorCode::StoreReadOnly) << action.name;
    }
}

TEST_F(Keeping, everyChangeIsTakenBackExactly) {
    for (const auto& action : keptActions()) {
        if (action.prepare) {
            valueOf(action.prepare(*store, sample));
        }
        const std::string before = everythingIn(path());
        valueOf(action.run(*store, sample));
        EXPECT_NE(everythingIn(path()), before) << action.name;
        if (action.undoable) {
            EXPECT_TRUE(valueOf(store->undo())) << action.name;
            EXPECT_EQ(everythingIn(path()), before) << action.name;
            valueOf(action.run(*store, sample));
        }
    }
}

TEST_F(Keeping, anotherStoreSeesWhatWasSaved) {
    for (const auto& action : keptActions()) {
        if (action.prepare) {
            valueOf(action.prepare(*store, sample));
        }
        valueOf(action.run(*store, sample));
    }
    const auto reader = valueOf(Store::open(path(), Access::WriteOrRead, clock));
    EXPECT_EQ(reader->whyReadOnly().code, ErrorCode::StoreLocked);
    EXPECT_EQ(valueOf(reader->appliancesOf(sample.premises.id)),
              valueOf(store->appliancesOf(sample.premises.id)));
    EXPECT_EQ(valueOf(reader->letters(sample.customer.id)), valueOf(store->letters(sample.customer.id)));
    EXPECT_EQ(valueOf(reader->bin()), valueOf(store->bin()));
    EXPECT_FALSE(valueOf(reader->bin()).empty());
}

}  // namespace
}  // namespace hearth::store
