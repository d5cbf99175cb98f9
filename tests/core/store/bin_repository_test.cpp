// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/bin_repository.h"

#include "tests/core/store/kept_fixture.h"

#include <gmock/gmock.h>

namespace hearth::store {
namespace {

using ::testing::IsEmpty;

class Bin : public KeptTest {
  protected:
    reg::BinnedId put(const std::string& table, const UuidBytes& row, const std::string& label = "it") {
        return valueOf(store->putIntoBin(table, row, label));
    }
    [[nodiscard]] Error refusal(const std::string& table, const UuidBytes& row) {
        return store->putIntoBin(table, row, "it").error();
    }
    [[nodiscard]] std::string count(const std::string& table) const {
        return askSql(path(), "SELECT count(*) FROM " + table);
    }
    /// A second premises with everything that can hang on one.
    reg::Premises crowdedPremises() {
        reg::Premises premises;
        premises.id = {store->newId()};
        premises.address = {"4 Ford End", "", "Ashwick", "QA2 4DE"};
        valueOf(store->save(premises));
        Sample there = sample;
        there.premises = premises;
        there.installation.id = {store->newId()};
        there.installation.premises = premises.id;
        valueOf(store->save(there.installation));
        for (const auto& action : keptActions()) {
            const std::string name = action.name;
            if (name != "contact" && name != "alike" && name.find("bin") != 0) {
                if (action.prepare) {
                    valueOf(action.prepare(*store, there));
                }
                valueOf(action.run(*store, there));
            }
        }
        for (auto situation : valueOf(store->situations(premises.id))) {
            situation.closedAt = clock.now();
            valueOf(store->save(situation));
        }
        const auto visit = valueOf(store->startVisit(sampleVisit(there)));
        const auto file = valueOf(store->visitFile(visit));
        valueOf(
            store->saveEntry(testEntry(file, reg::Item::TightStart, "20.71", quantity::UnitCode::Millibar)));
        reg::PipeSection pipe;
        pipe.id = {store->newId()};
        pipe.installation = there.installation.id;
        pipe.appliance = valueOf(store->appliancesOf(premises.id)).front().id;
        valueOf(store->savePipes(there.installation.id, {pipe}));
        static_cast<void>(
            valueOf(store->attach({"visits", visit.bytes, "flue.png", "image/png", "bytes", "", false, ""})));
        return premises;
    }
};

TEST_F(Bin, whatLiesInItIsInNoListAndNoSearch) {
    const auto second = crowdedPremises();
    const auto visit = valueOf(store->visitsOf(second.id)).front().visit.id;
    const auto picture = valueOf(store->attachmentsOf(visit.bytes)).front().id;
    const auto gas = valueOf(store->installations(second.id)).front().id;
    const auto shown = [&] {
        return std::vector<std::size_t>{valueOf(store->premises("")).size(),
                                        valueOf(store->premises("ford")).size(),
                                        valueOf(store->visits("")).size(),
                                        valueOf(store->visitsOf(second.id)).size(),
                                        valueOf(store->installations(second.id)).size(),
                                        valueOf(store->bookings(day(2026, 1, 1), day(2027, 1, 1))).size(),
                                        valueOf(store->letters(sample.customer.id)).size(),
                                        valueOf(store->rolesOf(sample.customer.id)).size()};
    };
    const auto all = shown();
    const auto binned = put("premises", second.id.bytes, "4 Ford End");
    EXPECT_EQ(shown(), (std::vector<std::size_t>{1, 0, 0, 0, 1, 0, 0, 1}));
    valueOf(store->bringBack(binned));
    EXPECT_EQ(shown(), all);
    put("attachments", picture.bytes);
    EXPECT_THAT(valueOf(store->attachmentsOf(visit.bytes)), IsEmpty());
    put("visits", visit.bytes);
    EXPECT_THAT(valueOf(store->visitsOf(second.id)), IsEmpty());
    EXPECT_EQ(valueOf(store->premises("ford")).front().drafts, 0);
    put("installations", gas.bytes);
    EXPECT_THAT(valueOf(store->installations(second.id)), IsEmpty());
    EXPECT_THAT(valueOf(store->appliancesOf(second.id)), IsEmpty());
    put("instruments", sample.gauge.id.bytes);
    EXPECT_THAT(valueOf(store->instruments()), IsEmpty());
    put("engineers", sample.engineer.id.bytes);
    EXPECT_THAT(valueOf(store->engineers()), IsEmpty());
}

TEST_F(Bin, comesBackExactly) {
    const auto second = crowdedPremises();
    const auto before = everythingIn(path());
    const auto binned = put("premises", second.id.bytes, "4 Ford End");
    EXPECT_EQ(valueOf(store->bin()).front().label, "4 Ford End");
    valueOf(store->bringBack(binned));
    EXPECT_EQ(everythingIn(path()), before);
    EXPECT_EQ(errorOf(store->bringBack(binned)), ErrorCode::NotFound);
}

TEST_F(Bin, itIsNotChangedAndNotNamedAnew) {
    const auto second = crowdedPremises();
    const auto visit = valueOf(store->visitsOf(second.id)).front().visit;
    const auto file = valueOf(store->visitFile(visit.id));
    put("premises", second.id.bytes, "4 Ford End");
    const Error lies{ErrorCode::InBin, {"4 Ford End"}};
    auto renamed = second;
    renamed.address.line1 = "5 Ford End";
    EXPECT_EQ(store->save(renamed).error(), lies);
    EXPECT_EQ(store->addTest(visit.id, "after").error(), lies);
    auto appliance = fullAppliance();
    appliance.installation = visit.installation;
    EXPECT_EQ(store->save(appliance).error(), lies);
    auto another = visit;
    another.id = {};
    EXPECT_EQ(store->startVisit(another).error(), lies);
    EXPECT_EQ(
        store->saveEntry(testEntry(file, reg::Item::TightEnd, "20.7", quantity::UnitCode::Millibar)).error(),
        lies);
    IssueRequest request;
    request.snapshot.file = file;
    EXPECT_EQ(store->issue(request, pdfOf).error(), lies);
    EXPECT_EQ(store->save(reg::Role{{store->newId()}, second.id, sample.customer.id, reg::RoleKind::Tenant})
                  .error(),
              lies);
    EXPECT_EQ(store->attach({"premises", second.id.bytes, "x", "image/png", "b", "", false, ""}).error(),
              lies);
    EXPECT_EQ(refusal("premises", second.id.bytes), lies);
}

TEST_F(Bin, anEngineerAndAGaugeStayOnTheVisitsThatNameThem) {
    const auto visit = valueOf(store->startVisit(sampleVisit(sample)));
    auto entry = testEntry(valueOf(store->visitFile(visit)), reg::Item::TightStart, "20.71",
                           quantity::UnitCode::Millibar);
    entry.instrument = sample.gauge.id;
    valueOf(store->saveEntry(entry));
    put("engineers", sample.engineer.id.bytes);
    put("instruments", sample.gauge.id.bytes);
    const auto file = valueOf(store->visitFile(visit));
    ASSERT_NE(file.engineer(), nullptr);
    EXPECT_EQ(file.engineer()->name, sample.engineer.name);
    EXPECT_NE(file.instrument(sample.gauge.id), nullptr);
    EXPECT_EQ(valueOf(store->visits("")).front().engineer, sample.engineer.name);
    const auto other = valueOf(store->visitFile(valueOf(store->startVisit([&] {
        auto plain = sampleVisit(sample);
        plain.engineer.reset();
        return plain;
    }()))));
    EXPECT_THAT(other.engineers, IsEmpty());
    EXPECT_THAT(other.instruments, IsEmpty());
}

TEST_F(Bin, whatMustStayIsRefusedWithTheReason) {
    EXPECT_EQ(refusal("parties", sample.customer.id.bytes), (Error{ErrorCode::BinHoldsRole, {"it", "1"}}));
    const auto visit = valueOf(store->startVisit(sampleVisit(sample)));
    const auto appliance = addAppliance("boiler");
    valueOf(store->saveEntry(applianceEntry(visit, appliance, "40")));
    EXPECT_EQ(refusal("appliances", appliance.bytes), (Error{ErrorCode::BinHasReadings, {"it", "1"}}));
    static_cast<void>(issueOne(visit));
    for (const auto& [table, row] :
         std::vector<std::pair<std::string, UuidBytes>>{{"visits", visit.bytes},
                                                        {"installations", sample.installation.id.bytes},
                                                        {"premises", sample.premises.id.bytes}}) {
        EXPECT_EQ(refusal(table, row), (Error{ErrorCode::BinKeepsRecords, {"it", "1"}})) << table;
    }
    reg::Situation situation;
    situation.id = {store->newId()};
    situation.premises = sample.premises.id;
    situation.appliance = addAppliance("hob");
    valueOf(store->save(situation));
    EXPECT_EQ(refusal("appliances", situation.appliance->bytes).code, ErrorCode::BinOpenSituation);
    auto firm = valueOf(store->firm());
    firm.logo = valueOf(
        store->attach({"premises", sample.premises.id.bytes, "logo.png", "image/png", "b", "", false, ""}));
    valueOf(store->saveFirm(firm));
    EXPECT_EQ(refusal("attachments", firm.logo->bytes).code, ErrorCode::BinLogo);
    EXPECT_EQ(refusal("firm", firm.logo->bytes).code, ErrorCode::NotFound);
    EXPECT_EQ(refusal("premises; DROP TABLE visits", {}).code, ErrorCode::NotFound);
    EXPECT_EQ(refusal("premises", {}).code, ErrorCode::NotFound);
    EXPECT_THAT(valueOf(store->bin()), IsEmpty());
}

TEST_F(Bin, isEmptiedOfARowWithAllThatHangsOnItAndOfNothingElse) {
    const auto second = crowdedPremises();
    const auto binned = put("premises", second.id.bytes, "4 Ford End");
    valueOf(store->removeForGood(binned));
    // The people and settings that came with the crowd stay.
    for (const auto* table :
         {"premises", "installations", "visits", "tests", "entries", "pipe_sections", "appliances",
          "access_attempts", "letters", "bookings", "situations", "situation_events", "attachments", "bin"}) {
        const bool once = std::string(table) == "premises" || std::string(table) == "installations";
        EXPECT_EQ(count(table), once ? "1" : "0") << table;
    }
    EXPECT_EQ(valueOf(store->undo()), std::nullopt);
    EXPECT_TRUE(store->verify());
    EXPECT_EQ(askSql(path(), "SELECT count(*) FROM changes WHERE table_name = 'premises' AND after IS NULL"),
              "1");
    EXPECT_THAT(valueOf(store->premises("ford")), IsEmpty());
}

TEST_F(Bin, anApplianceThatGoesIsLetGoByThePipeThatFedIt) {
    reg::Appliance hob;
    hob.id = {store->newId()};
    hob.installation = sample.installation.id;
    valueOf(store->save(hob));
    reg::PipeSection pipe;
    pipe.id = {store->newId()};
    pipe.installation = sample.installation.id;
    pipe.appliance = hob.id;
    valueOf(store->savePipes(sample.installation.id, {pipe}));
    valueOf(store->removeForGood(put("appliances", hob.id.bytes, "hob")));
    pipe.appliance.reset();
    EXPECT_EQ(valueOf(store->pipes(sample.installation.id)), std::vector{pipe});
    EXPECT_TRUE(store->verify());
}

TEST_F(Bin, whatIsStillNamedStaysInIt) {
    static_cast<void>(valueOf(store->startVisit(sampleVisit(sample))));
    const auto binned = put("engineers", sample.engineer.id.bytes, "Tamsin");
    EXPECT_EQ(store->removeForGood(binned).error(), (Error{ErrorCode::BinStillUsed, {"Tamsin", "1"}}));
    EXPECT_EQ(valueOf(store->bin()).size(), 1U);
}

}  // namespace
}  // namespace hearth::store
