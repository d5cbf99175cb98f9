// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/finding.h"

#include "core/store/migrations.h"
#include "core/store/opening.h"
#include "core/store/search_index.h"
#include "tests/core/store/store_fixture.h"

#include <algorithm>
#include <gmock/gmock.h>

namespace hearth::store {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

class FindingThings : public StoreTest {
  protected:
    void SetUp() override {
        StoreTest::SetUp();
        sample = putSample(*store);  // Llŷr O'Brien, Flat 3, 12 Highcroft Rise, Ashwick, QA2 3BC
        sample.customer.telephone = "+44 (0)20 7946 0123";
        sample.customer.email = "llyr@mail.example";
        sample.premises.uprn = "100023336956";
        sample.installation.mprn = "7512 3456 01";
        sample.installation.meterSerial = "G4-A0012345";
        valueOf(store->save(sample.customer));
        valueOf(store->save(sample.premises));
        valueOf(store->save(sample.installation));
        boiler.id = reg::ApplianceId{store->newId()};
        boiler.installation = sample.installation.id;
        boiler.make = "Emberline";
        boiler.model = "Combi 24";
        boiler.serial = "EFG-12345 B";
        boiler.gcNumber = "47-583-29";
        valueOf(store->save(boiler));
    }
    [[nodiscard]] std::vector<Hit> found(const std::string& typed) const {
        return valueOf(store->find(typed)).hits;
    }
    /// The kinds and fields that were found, the best first.
    [[nodiscard]] std::vector<std::pair<HitKind, HitField>> by(const std::string& typed) const {
        std::vector<std::pair<HitKind, HitField>> all;
        for (const auto& hit : found(typed)) {
            all.emplace_back(hit.kind, hit.field);
        }
        return all;
    }
    [[nodiscard]] std::vector<std::string> titles(const std::string& typed) const {
        std::vector<std::string> all;
        for (const auto& hit : found(typed)) {
            all.push_back(hit.title);
        }
        return all;
    }
    reg::PremisesId another(const std::string& line1, const std::string& town) {
        reg::Premises premises = sample.premises;
        premises.id = reg::PremisesId{store->newId()};
        premises.address = {line1, "", town, "QA9 1ZZ"};
        premises.uprn.clear();
        valueOf(store->save(premises));
        return premises.id;
    }

    Sample sample;
    reg::Appliance boiler;
};

TEST_F(FindingThings, numbersAsTypedAnyhow) {
    constexpr auto kHere = HitKind::Premises;
    const struct {
        const char* typed;
        HitKind kind;
        HitField field;
    } cases[] = {
        {"7512345601", kHere, HitField::Mprn},
        {"7512 3456 01", kHere, HitField::Mprn},
        {"751234", kHere, HitField::Mprn},
        {"g4a0012345", kHere, HitField::MeterSerial},
        {"G4 A0012", kHere, HitField::MeterSerial},
        {"a0012345", kHere, HitField::MeterSerial},
        {"efg12345b", kHere, HitField::ApplianceSerial},
        {"EFG 12345", kHere, HitField::ApplianceSerial},
        {"efg-123", kHere, HitField::ApplianceSerial},
        {"4758329", kHere, HitField::GcNumber},
        {"47 583 29", kHere, HitField::GcNumber},
        {"100023336956", kHere, HitField::Uprn},
        {"020 7946 0123", HitKind::Party, HitField::Telephone},
        {"02079460123", HitKind::Party, HitField::Telephone},
        {"+44 20 7946 0123", HitKind::Party, HitField::Telephone},
        {"+442079460", HitKind::Party, HitField::Telephone},
        {"0044 20 7946", HitKind::Party, HitField::Telephone},
        {"20 7946 0123", HitKind::Party, HitField::Telephone},
        {"0 20 79 46 01", HitKind::Party, HitField::Telephone},
        {"7946 0123", HitKind::Party, HitField::Telephone},
        {"llyr@mail", HitKind::Party, HitField::Email},
    };
    for (const auto& [typed, kind, field] : cases) {
        const auto hits = found(typed);
        ASSERT_FALSE(hits.empty()) << typed;
        EXPECT_EQ(hits.front().kind, kind) << typed;
        EXPECT_EQ(hits.front().field, field) << typed;
    }
    EXPECT_THAT(found("020 7946 0124"), IsEmpty());
    EXPECT_THAT(found("9946"), IsEmpty());  // words are found by how they begin
    EXPECT_EQ(found("efg12345").front().found, "EFG-12345 B");
    EXPECT_EQ(found("efg12345").front().of, "Emberline Combi 24");
    EXPECT_EQ(found("efg12345").front().row, sample.premises.id.bytes);
}

TEST_F(FindingThings, peopleAndPlacesByWordsBegunInAnyOrder) {
    for (const char* typed : {"llyr", "LLŶR", "obrien", "o'bri", "brien llŷr"}) {
        EXPECT_THAT(by(typed), ElementsAre(std::pair(HitKind::Premises, HitField::Holder),
                                           std::pair(HitKind::Party, HitField::Name)))
            << typed;
    }
    for (const char* typed : {"highc", "rise 12", "12 high ash", "flat 3 qa2", "qa23bc high"}) {
        EXPECT_THAT(by(typed), ElementsAre(std::pair(HitKind::Premises, HitField::Address))) << typed;
    }
    for (const char* typed : {"qa23bc", "QA2 3BC", "qa2", "ashwick"}) {
        EXPECT_THAT(by(typed), ElementsAre(std::pair(HitKind::Premises, HitField::Postcode))) << typed;
    }
    EXPECT_THAT(by("llyr highcroft"), ElementsAre(std::pair(HitKind::Premises, HitField::Holder)));
    EXPECT_THAT(by("efg ashwick llyr"), ElementsAre(std::pair(HitKind::Premises, HitField::ApplianceSerial)));
    for (const char* typed : {"", " ", "-", "%", "\"", "*", "croft", "llyr jones"}) {
        EXPECT_THAT(found(typed), IsEmpty()) << typed;
    }
    for (const char* typed : {"\"llyr\"", "llyr*", "llyr OR nobody", "NEAR(llyr)", "names : llyr"}) {
        EXPECT_TRUE(store->find(typed)) << typed;  // no language of its own
    }
    const Hit hit = found("highcroft").front();
    EXPECT_EQ(hit.title, "12 Highcroft Rise, Flat 3");
    EXPECT_EQ(hit.detail, "Ashwick QA2 3BC · Llŷr O'Brien");
}

TEST_F(FindingThings, recordsAndVisitsByTheirNumbers) {
    const auto visit = valueOf(store->startVisit(sampleVisit(sample)));
    reg::Entry reference;
    reference.visit = visit;
    reference.subject = reg::subject(visit);
    reference.item = reg::Item::VisitReference;
    reference.text = "PO/4711-77";
    valueOf(store->saveEntry(reference));
    for (const char* typed : {"po 4711", "po471177", "4711", "PO/4711-77"}) {
        EXPECT_THAT(by(typed), ElementsAre(std::pair(HitKind::Visit, HitField::OrderReference))) << typed;
    }
    EXPECT_EQ(found("po471177").front().row, visit.bytes);
    EXPECT_EQ(found("po471177").front().found, "PO/4711-77");
    EXPECT_EQ(valueOf(store->visits("po471177")).size(), 1U);

    const auto id = issueOne(visit);
    const std::string number = valueOf(store->record(id)).line.header.record;  // "BCD-000001" of its series
    const std::string letters = number.substr(0, number.find('-'));
    for (const std::string& typed : {number, letters + "1", letters + " 1", letters + "000001", letters}) {
        ASSERT_FALSE(found(typed).empty()) << typed;
        EXPECT_EQ(found(typed).front().kind, HitKind::Record) << typed;
        EXPECT_EQ(found(typed).front().field, HitField::RecordNumber) << typed;
        EXPECT_EQ(found(typed).front().title, number) << typed;
    }
    EXPECT_EQ(found(number).front().outcome, rulebook::Outcome::Pass);
    EXPECT_EQ(found(number).front().revision, 1);
}

TEST_F(FindingThings, wholeWordsFirstThenRarerFieldsThenNewer) {
    static_cast<void>(another("3 Ashwell Lane", "Dunmere"));
    static_cast<void>(another("4 Mill Lane", "Ash"));
    static_cast<void>(another("5 Mill Lane", "Ashford"));
    EXPECT_THAT(titles("ash"),
                ElementsAre("4 Mill Lane", "3 Ashwell Lane", "5 Mill Lane", "12 Highcroft Rise, Flat 3"));
    static_cast<void>(another("120 Mill Lane", "Dunmere"));
    static_cast<void>(another("12 Mill Lane", "Dunmere"));
    static_cast<void>(another("121 Mill Lane", "Dunmere"));
    EXPECT_THAT(titles("12 mill lane"), ElementsAre("12 Mill Lane", "121 Mill Lane", "120 Mill Lane"));
}

TEST_F(FindingThings, ofMuchThatMatchesTheBestOfTheNewest) {
    valueOf(store->together([&]() -> Result<void> {
        for (int i = 0; i < 120; ++i) {
            static_cast<void>(another(std::to_string(i) + " Tallow Street", "Dunmere"));
        }
        static_cast<void>(another("1 Tall Street", "Dunmere"));  // then a hundred newer ones
        for (int i = 120; i < 220; ++i) {
            static_cast<void>(another(std::to_string(i) + " Tallow Street", "Dunmere"));
        }
        return {};
    }));
    const auto hits = valueOf(store->find("tall", 5));
    EXPECT_EQ(hits.hits.size(), 5U);
    EXPECT_TRUE(hits.more);
    EXPECT_EQ(hits.hits.at(0).title, "1 Tall Street");
    EXPECT_EQ(hits.hits.at(1).title, "219 Tallow Street");
    EXPECT_FALSE(valueOf(store->find("219 tallow", 5)).more);
    EXPECT_EQ(valueOf(store->premises("tallow", 50)).size(), 50U);
}

TEST_F(FindingThings, followEveryChange) {
    boiler.serial = "ZZ-9";
    valueOf(store->save(boiler));
    EXPECT_THAT(found("efg12345"), IsEmpty());
    EXPECT_THAT(titles("zz9"), ElementsAre("12 Highcroft Rise, Flat 3"));
    static_cast<void>(valueOf(store->undo()));
    EXPECT_THAT(titles("efg12345"), ElementsAre("12 Highcroft Rise, Flat 3"));
    const auto binned = valueOf(store->putIntoBin("appliances", boiler.id.bytes, "boiler"));
    EXPECT_THAT(found("efg12345"), IsEmpty());
    valueOf(store->bringBack(binned));
    EXPECT_THAT(titles("efg12345"), ElementsAre("12 Highcroft Rise, Flat 3"));
    const auto all = valueOf(store->putIntoBin("premises", sample.premises.id.bytes, "premises"));
    EXPECT_THAT(found("highcroft"), IsEmpty());
    EXPECT_EQ(valueOf(store->staleInSearch()), 0);
    valueOf(store->bringBack(all));
    EXPECT_THAT(titles("highcroft"), ElementsAre("12 Highcroft Rise, Flat 3"));
    EXPECT_EQ(valueOf(store->staleInSearch()), 0);
    // A change that comes to nothing leaves nothing behind.
    EXPECT_FALSE(store->together([&]() -> Result<void> {
        static_cast<void>(another("1 Nowhere", "Dunmere"));
        return fail(ErrorCode::NotFound, {});
    }));
    EXPECT_THAT(found("nowhere"), IsEmpty());
}

TEST_F(FindingThings, aStaleIndexIsFoundAndMended) {
    EXPECT_EQ(valueOf(store->staleInSearch()), 0);
    EXPECT_EQ(sqlOn(path(), "UPDATE premises SET line1 = '9 Ford End'"), "");
    EXPECT_EQ(valueOf(store->staleInSearch()), 1);
    EXPECT_THAT(found("ford end"), IsEmpty());
    valueOf(store->mendSearch());
    EXPECT_EQ(valueOf(store->staleInSearch()), 0);
    EXPECT_THAT(titles("ford end"), ElementsAre("9 Ford End, Flat 3"));
    EXPECT_EQ(sqlOn(path(), "INSERT INTO search_things (kind, row) VALUES ('party', zeroblob(16))"), "");
    EXPECT_EQ(sqlOn(path(), "DELETE FROM search_text WHERE names <> '' AND numbers LIKE '%pefg%'"), "");
    EXPECT_GE(valueOf(store->staleInSearch()), 2);
    EXPECT_EQ(sqlOn(path(), "UPDATE search_text_data SET block = x'00' WHERE id > 10"), "");  // damaged
    EXPECT_GE(valueOf(store->staleInSearch()), 1);
    valueOf(store->mendSearch());
    EXPECT_EQ(valueOf(store->staleInSearch()), 0);
    EXPECT_THAT(titles("efg12345"), ElementsAre("9 Ford End, Flat 3"));
}

TEST_F(FindingThings, anIndexOfAnotherFormIsMadeAnewOnOpening) {
    store.reset();
    EXPECT_EQ(sqlOn(path(),
                    "DELETE FROM search_text; DELETE FROM search_things;"
                    "UPDATE settings SET value = '0' WHERE name = 'search_form'"),
              "");
    reopen(Access::Read);
    EXPECT_THAT(found("llyr"), IsEmpty());
    reopen();
    EXPECT_EQ(found("llyr").size(), 2U);
}

}  // namespace
}  // namespace hearth::store
