// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/store_fixture.h"

#include <gmock/gmock.h>

namespace hearth::store {
namespace {

using quantity::UnitCode;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

calendar::Date day(int y, unsigned m, unsigned d) {
    return {std::chrono::year(y), std::chrono::month(m), std::chrono::day(d)};
}

class RegisterRepository : public StoreTest {};

TEST_F(RegisterRepository, keepsEveryFieldOfTheFirm) {
    auto firm = valueOf(store->firm());
    EXPECT_EQ(firm, sampleFirm());
    firm = {"Gŵydd & Śliwa", {"2", "b", "c", "d"},   "123", "456",
            "e@f.example",   reg::Country::Scotland, "cy",  false};
    valueOf(store->saveFirm(firm));
    reopen();
    EXPECT_EQ(valueOf(store->firm()), firm);
}

TEST_F(RegisterRepository, aDemonstrationStaysOneAndAFirmToo) {
    auto firm = valueOf(store->firm());
    firm.demonstration = true;
    valueOf(store->saveFirm(firm));
    EXPECT_FALSE(valueOf(store->firm()).demonstration);
    store.reset();
    EXPECT_NE(sqlOn(path(), "UPDATE firm SET demonstration = 1"), "");
}

TEST_F(RegisterRepository, keepsEveryFieldOfAnEngineer) {
    const reg::Engineer engineer{{store->newId()}, "Ana Łuk", "77", day(2027, 2, 28)};
    const reg::Engineer plain{{store->newId()}, "Zed", "", std::nullopt};
    valueOf(store->save(engineer));
    valueOf(store->save(plain));
    reopen();
    EXPECT_THAT(valueOf(store->engineers()), ElementsAre(engineer, plain));
}

TEST_F(RegisterRepository, keepsEveryFieldOfAnInstrument) {
    const reg::Instrument gauge{{store->newId()},
                                reg::InstrumentKind::WaterGauge,
                                "u-tube",
                                "S1",
                                {"0,5", UnitCode::Millibar},
                                {"five", UnitCode::Pascal},
                                {"", UnitCode::None},
                                {"0.02", UnitCode::Millibar},
                                "C9",
                                day(2026, 1, 2),
                                day(2027, 1, 2)};
    valueOf(store->save(gauge));
    reopen();
    EXPECT_THAT(valueOf(store->instruments()), ElementsAre(gauge));
}

TEST_F(RegisterRepository, keepsEveryFieldOfPremisesPartiesAndInstallations) {
    const Sample sample = putSample(*store);
    reopen();
    EXPECT_EQ(valueOf(store->premises(sample.premises.id)), sample.premises);
    EXPECT_THAT(valueOf(store->parties("")), ElementsAre(sample.customer));
    EXPECT_THAT(valueOf(store->installations(sample.premises.id)), ElementsAre(sample.installation));
    const auto holders = valueOf(store->holders(sample.premises.id));
    EXPECT_THAT(holders, ElementsAre(reg::VisitFile::Holder{reg::RoleKind::Customer, sample.customer}));
}

TEST_F(RegisterRepository, whatIsNotThereIsSaidToBeMissing) {
    EXPECT_EQ(errorOf(store->premises(reg::PremisesId{store->newId()})), ErrorCode::NotFound);
    EXPECT_EQ(errorOf(store->visitFile(reg::VisitId{store->newId()})), ErrorCode::NotFound);
}

TEST_F(RegisterRepository, oneHolderOfEachRole) {
    const Sample sample = putSample(*store);
    reg::Party other = sample.customer;
    other.id = reg::PartyId{store->newId()};
    other.name = "Second";
    valueOf(store->save(other));
    valueOf(store->save(reg::Role{{}, sample.premises.id, other.id, reg::RoleKind::Customer}));
    valueOf(store->save(reg::Role{{}, sample.premises.id, sample.customer.id, reg::RoleKind::Tenant}));
    const auto holders = valueOf(store->holders(sample.premises.id));
    EXPECT_THAT(holders, ElementsAre(reg::VisitFile::Holder{reg::RoleKind::Customer, other},
                                     reg::VisitFile::Holder{reg::RoleKind::Tenant, sample.customer}));
    valueOf(store->removeRole(sample.premises.id, reg::RoleKind::Customer));
    valueOf(
        store->removeRole(sample.premises.id, reg::RoleKind::Customer));  // nothing to remove is no failure
    EXPECT_EQ(valueOf(store->holders(sample.premises.id)).size(), 1U);
}

TEST_F(RegisterRepository, aListOfPipesIsReplacedAsAWhole) {
    const Sample sample = putSample(*store);
    const auto installation = sample.installation.id;
    reg::PipeSection first{{store->newId()},       installation, std::nullopt, 0,   "copper_22",
                           {"3", UnitCode::Metre}, {},           "tee",        true};
    reg::PipeSection second{{store->newId()},         installation, first.id, 1,    "copper_15",
                            {"2.5", UnitCode::Metre}, {},           "hob",    false};
    valueOf(store->savePipes(installation, {first, second}));
    EXPECT_THAT(valueOf(store->pipes(installation)), ElementsAre(first, second));

    // The second comes first, and the first hangs on it: the order of writing must not matter.
    std::swap(first.position, second.position);
    second.after.reset();
    first.after = second.id;
    valueOf(store->savePipes(installation, {first, second}));
    reopen();
    EXPECT_THAT(valueOf(store->pipes(installation)), ElementsAre(second, first));
    valueOf(store->savePipes(installation, {}));
    EXPECT_THAT(valueOf(store->pipes(installation)), IsEmpty());
}

TEST_F(RegisterRepository, aPipeKnowsWhatHangsAtItsEnd) {
    const Sample sample = putSample(*store);
    const auto installation = sample.installation.id;
    reg::Appliance hob;
    hob.id = reg::ApplianceId{store->newId()};
    hob.installation = installation;
    valueOf(store->save(hob));
    reg::PipeSection pipe;
    pipe.id = {store->newId()};
    pipe.installation = installation;
    pipe.appliance = hob.id;
    pipe.fittings = "3e 1t";
    auto capped = pipe;
    capped.id = {store->newId()};
    capped.position = 1;
    capped.appliance.reset();
    capped.capped = true;
    valueOf(store->savePipes(installation, {pipe, capped}));
    reopen();
    EXPECT_THAT(valueOf(store->pipes(installation)), ElementsAre(pipe, capped));

    // None that is unknown, and none of somebody else's premises: nothing is changed then.
    auto wrong = pipe;
    wrong.appliance = reg::ApplianceId{store->newId()};
    EXPECT_EQ(errorOf(store->savePipes(installation, {wrong})), ErrorCode::NotFound);
    reg::Premises other;
    other.id = reg::PremisesId{store->newId()};
    other.address = {"9 Kiln Street", "", "Nether Wrenlow", "QW7 2AA"};
    valueOf(store->save(other));
    auto elsewhere = sample.installation;
    elsewhere.id = {store->newId()};
    elsewhere.premises = other.id;
    valueOf(store->save(elsewhere));
    auto theirs = hob;
    theirs.id = {store->newId()};
    theirs.installation = elsewhere.id;
    valueOf(store->save(theirs));
    wrong.appliance = theirs.id;
    EXPECT_EQ(errorOf(store->savePipes(installation, {wrong})), ErrorCode::NotFound);
    EXPECT_THAT(valueOf(store->pipes(installation)), ElementsAre(pipe, capped));
}

TEST_F(RegisterRepository, listsPremisesByTownAndAddressWithWhatALineShows) {
    const Sample sample = putSample(*store);
    reg::Premises earlier;
    earlier.id = reg::PremisesId{store->newId()};
    earlier.address = {"2 birch Way", "", "alder", "QA9 9ZZ"};
    valueOf(store->save(earlier));
    reg::Visit visit = sampleVisit(sample);
    static_cast<void>(valueOf(store->startVisit(visit)));
    visit.date = day(2026, 12, 1);
    visit.closed = true;
    static_cast<void>(valueOf(store->startVisit(visit)));

    const auto lines = valueOf(store->premises(""));
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_EQ(lines[0].premises, earlier);
    EXPECT_EQ(lines[0].customer, "");
    EXPECT_EQ(lines[0].lastVisit, std::nullopt);
    EXPECT_EQ(lines[1].premises, sample.premises);
    EXPECT_EQ(lines[1].customer, "Llŷr O'Brien");
    EXPECT_EQ(lines[1].lastVisit, day(2026, 12, 1));
    EXPECT_EQ(lines[1].drafts, 1);
    EXPECT_EQ(valueOf(store->premises("", 1)).size(), 1U);
}

TEST_F(RegisterRepository, theCustomerComesBeforeTheLandlordBeforeTheHomeOwner) {
    const Sample sample = putSample(*store);
    reg::Party landlord = sample.customer;
    landlord.id = reg::PartyId{store->newId()};
    landlord.name = "Landlord";
    valueOf(store->save(landlord));
    valueOf(store->save(reg::Role{{}, sample.premises.id, landlord.id, reg::RoleKind::Landlord}));
    EXPECT_EQ(valueOf(store->premises("")).at(0).customer, sample.customer.name);
    valueOf(store->removeRole(sample.premises.id, reg::RoleKind::Customer));
    EXPECT_EQ(valueOf(store->premises("")).at(0).customer, "Landlord");
}

TEST_F(RegisterRepository, keepsWhatSomebodyTypesToTheLetter) {
    const Sample sample = putSample(*store);
    for (const std::string text :
         {"'; DROP TABLE premises; --", "\"quoted\"", "tab\there\nand line", "Łódź 🔥", " ", "?1 :a @b"}) {
        reg::Premises premises = sample.premises;
        premises.address.line1 = text;
        valueOf(store->save(premises));
        EXPECT_EQ(valueOf(store->premises(premises.id)).address.line1, text);
    }
}

}  // namespace
}  // namespace hearth::store
