// SPDX-License-Identifier: GPL-3.0-or-later
// Published source: UK GDPR articles 15, 17 and 17(3)(b), (e) (from memory; pages on erasure requests).
#include "core/store/privacy_repository.h"

#include "tests/core/store/kept_fixture.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

namespace hearth::store {
namespace {

using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;
using ::testing::SizeIs;

class PrivacyRepository : public KeptTest {
  protected:
    void SetUp() override {
        KeptTest::SetUp();
        tenant.id = {store->newId()};
        tenant.name = "Ottoline Brackenbury";
        tenant.telephone = "01632 960123";
        tenant.email = "ottoline@example.org";
        tenant.notes = "rings twice";
        valueOf(store->save(tenant));
        valueOf(
            store->save(reg::Role{{store->newId()}, sample.premises.id, tenant.id, reg::RoleKind::Tenant}));
    }
    void moveOut() { valueOf(store->endRole(sample.premises.id, reg::RoleKind::Tenant, day(2026, 11, 20))); }
    void sendLetter(const std::string& kind) {
        reg::Letter letter;
        letter.id = {store->newId()};
        letter.premises = sample.premises.id;
        letter.party = tenant.id;
        letter.kind = kind;
        letter.sentTo = "Ottoline Brackenbury, 12 Highcroft Rise";
        letter.text = "Dear Ottoline Brackenbury";
        letter.at = clock.now();
        valueOf(store->save(letter));
    }
    [[nodiscard]] std::string fileBytes() { return hearth::testing::readFile(path()); }
    reg::Party tenant;
};

TEST_F(PrivacyRepository, gathersWhatIsHeldAboutOnePersonAndNobodyElse) {
    sendLetter("reminder");
    static_cast<void>(valueOf(store->attach(
        {"parties", tenant.id.bytes, "letter.pdf", "application/pdf", "%PDF-", "", false, "signed"})));
    const auto file = valueOf(store->heldAbout(tenant.id));
    EXPECT_EQ(file.party, tenant);
    EXPECT_THAT(file.roles, SizeIs(1));
    EXPECT_THAT(file.letters, SizeIs(1));
    EXPECT_THAT(file.attachments, SizeIs(1));
    EXPECT_THAT(file.changes, Not(IsEmpty()));
    const auto text = personJson(file);
    const auto json = nlohmann::json::parse(text);
    EXPECT_EQ(json["person"]["name"], "Ottoline Brackenbury");
    EXPECT_EQ(json["person"]["telephone"], "01632 960123");
    EXPECT_EQ(json["roles"][0]["address"]["line1"], sample.premises.address.line1);
    EXPECT_EQ(json["letters"][0]["text"], "Dear Ottoline Brackenbury");
    EXPECT_THAT(text, Not(HasSubstr(sample.customer.name))) << "another person";
    EXPECT_EQ(errorOf(store->heldAbout({store->newId()})), ErrorCode::NotFound);
}

TEST_F(PrivacyRepository, namesTheRecordsThatNameThem) {
    const auto visit = valueOf(store->startVisit(sampleVisit(sample)));
    static_cast<void>(issueOne(visit));
    EXPECT_THAT(valueOf(store->heldAbout(tenant.id)).records, SizeIs(1));
    moveOut();
    const auto later = valueOf(store->startVisit(sampleVisit(sample)));
    static_cast<void>(issueOne(later));
    EXPECT_THAT(valueOf(store->heldAbout(tenant.id)).records, SizeIs(1)) << "moved out before the second";
}

TEST_F(PrivacyRepository, refusesWhileTheyStillHaveToDoWithPremises) {
    const auto refused = store->erase(tenant.id);
    ASSERT_EQ(errorOf(refused), ErrorCode::ErasureHoldsRole);
    EXPECT_THAT(refused.error().details,
                ::testing::ElementsAre("Ottoline Brackenbury", sample.premises.address.line1));
    EXPECT_EQ(valueOf(store->heldAbout(tenant.id)).party, tenant);
}

TEST_F(PrivacyRepository, erasesEverythingThatNothingKeepsFromTheFileItself) {
    static_cast<void>(valueOf(store->attach({"parties", tenant.id.bytes, "brackenbury.pdf", "application/pdf",
                                             "%PDF- of Ottoline", "", false, ""})));
    moveOut();
    const auto plan = valueOf(store->erasureOf(tenant.id));
    EXPECT_EQ(plan.fields, 4);  // name, telephone, e-mail, notes
    EXPECT_EQ(plan.attachments, 1);
    EXPECT_GT(plan.logLines, 4);
    EXPECT_THAT(plan.stays, IsEmpty());
    const auto done = valueOf(store->erase(tenant.id));
    EXPECT_EQ(done.fields, plan.fields);
    const auto left = valueOf(store->heldAbout(tenant.id));
    EXPECT_EQ(left.party.name, "");
    EXPECT_THAT(left.attachments, IsEmpty());
    EXPECT_THAT(left.roles, SizeIs(1)) << "that somebody lived there stays, without a name";
    EXPECT_THAT(valueOf(store->parties("ottoline")), IsEmpty());
    EXPECT_FALSE(valueOf(store->undo()).has_value());
    valueOf(store->verify());
    store.reset();
    for (const char* trace : {"Ottoline", "ottoline", "01632 960123", "rings twice", "brackenbury"}) {
        EXPECT_EQ(fileBytes().find(trace), std::string::npos) << trace;
    }
}

TEST_F(PrivacyRepository, whatLiesInTheBinIsHeldAndErasedAsWell) {
    moveOut();
    sendLetter("reminder");
    const auto paper = valueOf(store->attach(
        {"parties", tenant.id.bytes, "letter.pdf", "application/pdf", "%PDF-", "", false, "signed"}));
    const auto letter = valueOf(store->letters(tenant.id)).front().id;
    static_cast<void>(valueOf(store->putIntoBin("letters", letter.bytes, "to Ottoline Brackenbury")));
    static_cast<void>(valueOf(store->putIntoBin("attachments", paper.bytes, "of Ottoline Brackenbury")));
    static_cast<void>(valueOf(store->putIntoBin("parties", tenant.id.bytes, "Ottoline Brackenbury")));
    const auto file = valueOf(store->heldAbout(tenant.id));
    EXPECT_THAT(file.letters, SizeIs(1));
    EXPECT_THAT(file.attachments, SizeIs(1));
    EXPECT_THAT(file.roles, SizeIs(1));
    clock.advance(std::chrono::hours(24 * 366 * 20));
    static_cast<void>(valueOf(store->erase(tenant.id)));
    EXPECT_TRUE(store->verify());
    EXPECT_THAT(valueOf(store->bin()), SizeIs(2));
    store.reset();
    EXPECT_THAT(fileBytes(), Not(HasSubstr("Brackenbury")));
}

TEST_F(PrivacyRepository, keepsRecordsAndYoungLettersAndSaysUntilWhen) {
    const auto visit = valueOf(store->startVisit(sampleVisit(sample)));
    const auto record = issueOne(visit);
    sendLetter("reminder");
    moveOut();
    const auto done = valueOf(store->erase(tenant.id));
    ASSERT_THAT(done.stays, SizeIs(2));
    EXPECT_EQ(done.stays[0].what, Stays::What::Letter);
    EXPECT_EQ(done.stays[0].until, day(2032, 11, 25));
    EXPECT_EQ(done.stays[1].what, Stays::What::Record);
    EXPECT_EQ(done.stays[1].until, day(2032, 11, 25));
    EXPECT_TRUE(store->record(record).has_value()) << "an issued record is a fact";
    EXPECT_EQ(valueOf(store->letters(tenant.id)).at(0).text, "Dear Ottoline Brackenbury");
    clock.advance(std::chrono::hours(24 * 365 * 7));
    const auto later = valueOf(store->erase(tenant.id));
    EXPECT_EQ(later.letters, 1);
    EXPECT_EQ(valueOf(store->letters(tenant.id)).at(0).text, "");
    EXPECT_EQ(valueOf(store->letters(tenant.id)).at(0).kind, "reminder") << "that one was sent stays";
    valueOf(store->verify());
}

TEST_F(PrivacyRepository, listsOnceAYearWhatMayGo) {
    const auto visit = valueOf(store->startVisit(sampleVisit(sample)));
    const auto record = issueOne(visit);
    EXPECT_THAT(valueOf(store->mayGo(day(2032, 11, 25))), IsEmpty()) << "the last day of its keeping";
    const auto over = valueOf(store->mayGo(day(2032, 11, 26)));
    ASSERT_THAT(over, SizeIs(1));
    EXPECT_EQ(over[0].record.id, record);
    EXPECT_EQ(over[0].keptUntil, day(2032, 11, 25));
    reg::Situation open;
    open.id = {store->newId()};
    open.premises = sample.premises.id;
    open.foundAt = clock.now();
    valueOf(store->save(open));
    EXPECT_THAT(valueOf(store->mayGo(day(2032, 11, 26))), IsEmpty()) << "never while something is open there";
}

}  // namespace
}  // namespace hearth::store
