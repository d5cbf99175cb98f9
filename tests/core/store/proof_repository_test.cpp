// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/proof_repository.h"

#include "tests/core/store/store_fixture.h"

#include <gmock/gmock.h>

namespace hearth::store {
namespace {

using record::Claim;
using record::Mismatch;
using record::Verdict;
using ::testing::ElementsAre;

class Proving : public StoreTest {
  protected:
    void SetUp() override {
        StoreTest::SetUp();
        visit = valueOf(store->startVisit(sampleVisit(putSample(*store))));
        first = issueOne(visit);
        second = issueOne(visit);
    }
    [[nodiscard]] IssuedRecord read(RecordId id) const { return valueOf(store->record(id)); }
    [[nodiscard]] record::Proof ofFile(const std::string& bytes) const {
        return valueOf(store->proveFile(bytes));
    }
    [[nodiscard]] record::Proof ofNumber(const std::string& number, int revision = 0) const {
        return valueOf(store->proveClaim({Claim::By::Number, {number, revision}, {}}));
    }
    [[nodiscard]] record::Proof ofCode(const RecordLine& line) const {
        return valueOf(store->proveClaim(
            {Claim::By::Code, {line.header.record, line.header.revision}, line.header.snapshotDigest}));
    }
    RecordId revise(RecordId id) {
        auto request = requestFor(*store, visit);
        request.supersedes = id;
        request.reason = "serial number mistyped";
        return valueOf(store->issue(request, pdfOf));
    }
    void tamper(const std::string& sql) {
        store.reset();
        ASSERT_EQ(sqlOn(path(), sql), "");
        store = valueOf(Store::open(path(), Access::Write, clock));
    }

    reg::VisitId visit;
    RecordId first;
    RecordId second;
};

TEST_F(Proving, whatWasIssuedIsOurs) {
    const auto record = read(second);
    const auto proof = ofFile(record.pdf);
    EXPECT_EQ(proof.verdict, Verdict::Ours);
    EXPECT_TRUE(proof.mismatches.empty());
    ASSERT_TRUE(proof.kept);
    EXPECT_EQ(proof.kept->header, record.line.header);
    EXPECT_EQ(proof.claim.name, (record::RecordName{record.line.header.record, 1}));
    EXPECT_EQ(proof.kept->differsAt, std::nullopt);
    EXPECT_EQ(ofCode(record.line).verdict, Verdict::Ours);
    EXPECT_EQ(ofNumber(record.line.header.record).verdict, Verdict::Ours);
    reopen(Access::Read);
    EXPECT_EQ(ofFile(record.pdf).verdict, Verdict::Ours) << "also where the store may only be read";
}

TEST_F(Proving, everyFlippedByteIsCaughtAndTheRecordNamed) {
    const auto record = read(first);
    for (std::size_t at = 0; at < record.pdf.size(); ++at) {
        std::string changed = record.pdf;
        changed[at] = static_cast<char>(changed[at] ^ 0x20);
        const auto proof = ofFile(changed);
        ASSERT_EQ(proof.verdict, Verdict::Changed) << at;
        EXPECT_THAT(proof.mismatches, ElementsAre(Mismatch::PdfDigest)) << at;
        EXPECT_EQ(proof.kept->header, record.line.header) << at;
        EXPECT_EQ(proof.kept->differsAt, at);
    }
}

TEST_F(Proving, aFileThatWasCutOrAddedToIsCaught) {
    const auto record = read(second);
    for (const auto& changed : {record.pdf + "\n", record.pdf.substr(0, record.pdf.size() - 1),
                                "%PDF-1.7 made anew: " + record.line.header.record}) {
        const auto proof = ofFile(changed);
        EXPECT_EQ(proof.verdict, Verdict::Changed) << changed;
        EXPECT_EQ(proof.kept->header.record, record.line.header.record);
    }
}

TEST_F(Proving, whatIsForeignIsNotOurs) {
    for (const std::string& bytes :
         {std::string(), std::string("%PDF-1.4 somebody else's"), std::string("%PDF-1.4 QQQ-000001"),
          std::string(read(first).pdf.size(), 'x')}) {
        const auto proof = ofFile(bytes);
        EXPECT_EQ(proof.verdict, Verdict::NotOurs) << bytes;
        EXPECT_FALSE(proof.kept);
    }
    EXPECT_EQ(ofNumber("QQQ-000001").verdict, Verdict::NotOurs);
    EXPECT_EQ(ofNumber(read(first).line.header.record, 2).verdict, Verdict::NotOurs) << "no such revision";
}

TEST_F(Proving, aSupersededOneNamesTheRevisionThatCounts) {
    const auto old = read(first);
    const auto between = read(revise(first));
    const auto newest = read(revise(between.line.id));
    for (const auto* record : {&old, &between}) {
        const auto proof = ofFile(record->pdf);
        EXPECT_EQ(proof.verdict, Verdict::Superseded);
        ASSERT_TRUE(proof.kept->supersededBy);
        EXPECT_EQ(proof.kept->supersededBy->name, (record::RecordName{old.line.header.record, 3}));
        EXPECT_EQ(ofCode(record->line).verdict, Verdict::Superseded);
    }
    EXPECT_EQ(ofFile(newest.pdf).verdict, Verdict::Ours);
    EXPECT_EQ(ofNumber(old.line.header.record).verdict, Verdict::Ours) << "the newest is meant";
    EXPECT_EQ(ofNumber(old.line.header.record, 1).verdict, Verdict::Superseded);
}

TEST_F(Proving, aNumberIsFoundWithoutItsZeros) {
    const auto number = read(first).line.header.record;
    const auto proof = ofNumber(number.substr(0, 4) + "1");
    EXPECT_EQ(proof.verdict, Verdict::Ours);
    EXPECT_EQ(proof.kept->header.record, number);
    EXPECT_EQ(ofNumber(number.substr(0, 4) + "3").verdict, Verdict::NotOurs);
}

TEST_F(Proving, whatWasLetGoIsStillToldByItsDigests) {
    const auto record = read(first);
    clock.set(clock.now() + std::chrono::hours(24 * 366 * 8));
    valueOf(store->letGo({{first}, {}}));
    const auto proof = ofFile(record.pdf);
    EXPECT_EQ(proof.verdict, Verdict::Ours);
    EXPECT_TRUE(proof.mismatches.empty());
    EXPECT_EQ(proof.kept->erasedAt, instantText(clock.now()));
    EXPECT_EQ(proof.kept->differsAt, std::nullopt);
    EXPECT_EQ(ofCode(record.line).verdict, Verdict::Ours);
    EXPECT_EQ(ofNumber(record.line.header.record).verdict, Verdict::Ours);
    EXPECT_EQ(errorOf(store->voidRecord(first, "why")), ErrorCode::RecordErased);
    RecordChoice all;
    all.onlyThatCount = false;
    EXPECT_EQ(valueOf(store->recordsChosen(all)).size(), 1U) << "it can't be written any more";
    valueOf(store->makeSigningKey("quiet lamp under stairs"));
    EXPECT_EQ(valueOf(store->waitingForSignature()), 1) << "nor signed";
}

TEST_F(Proving, aForgedCodeIsCaught) {
    auto line = read(first).line;
    line.header.snapshotDigest[10] = line.header.snapshotDigest[10] == 'a' ? 'b' : 'a';
    const auto proof = ofCode(line);
    EXPECT_EQ(proof.verdict, Verdict::Changed);
    EXPECT_THAT(proof.mismatches, ElementsAre(Mismatch::CodeDigest));
}

TEST_F(Proving, aVoidRecordKeepsItsNumberAndSaysWhoWhenAndWhy) {
    const auto before = read(second);
    store->actAs("R. Ashdown");
    valueOf(store->voidRecord(second, "made for the wrong house"));
    reopen();
    const auto after = read(second);
    EXPECT_EQ(after.line.header, before.line.header);
    EXPECT_EQ(after.pdf, before.pdf);
    const record::VoidMark mark{"R. Ashdown", "2026-11-25T09:46:00.000Z", "made for the wrong house"};
    EXPECT_EQ(after.line.voided, mark);
    const auto proof = ofFile(before.pdf);
    EXPECT_EQ(proof.verdict, Verdict::Void);
    EXPECT_EQ(proof.kept->voided, mark);
    EXPECT_EQ(read(first).line.voided, std::nullopt);
    EXPECT_EQ(withoutSeries(read(issueOne(visit)).line.header.record), "-000003")
        << "its number is not used again";
    EXPECT_TRUE(store->verify());
}

TEST_F(Proving, aVoidRecordIsNotVoidedOrRevisedAgain) {
    EXPECT_EQ(errorOf(store->voidRecord(first, " \t")), ErrorCode::ReasonMissing);
    EXPECT_EQ(errorOf(store->voidRecord(RecordId{store->newId()}, "why")), ErrorCode::NotFound);
    valueOf(store->voidRecord(first, "why"));
    EXPECT_EQ(errorOf(store->voidRecord(first, "again")), ErrorCode::RecordVoid);
    auto request = requestFor(*store, visit);
    request.supersedes = first;
    EXPECT_EQ(errorOf(store->issue(request, pdfOf)), ErrorCode::RecordVoid);
    static_cast<void>(revise(second));
    EXPECT_EQ(errorOf(store->voidRecord(second, "why")), ErrorCode::RecordSuperseded);
    reopen(Access::Read);
    EXPECT_EQ(errorOf(store->voidRecord(first, "why")), ErrorCode::StoreReadOnly);
}

TEST_F(Proving, whatWasTamperedWithHereIsSaid) {
    const auto record = read(second);
    const std::string number = record.line.header.record;
    tamper(
        "DROP TRIGGER record_pdfs_stay; UPDATE record_pdfs SET pdf = CAST('%PDF another' AS BLOB) WHERE "
        "record IN "
        "(SELECT id FROM record_headers WHERE record = '" +
        number + "');");
    const auto proof = ofFile(record.pdf);
    EXPECT_EQ(proof.verdict, Verdict::Ours) << "what they have is what was issued";
    EXPECT_THAT(proof.mismatches, ElementsAre(Mismatch::KeptPdf));
    EXPECT_EQ(ofNumber(number).verdict, Verdict::Changed);
    // The digest put right too: then the chain no longer holds.
    tamper("DROP TRIGGER record_headers_stay; UPDATE record_headers SET pdf_digest = '" +
           record::sha256("%PDF another") + "' WHERE record = '" + number + "';");
    EXPECT_EQ(ofFile("%PDF another").verdict, Verdict::Unprovable);
    EXPECT_THAT(ofNumber(number).mismatches, ElementsAre(Mismatch::Chain));
}

TEST_F(Proving, whoHoldsAnEarlierRevisionIsListedUntilTheyHaveThisOne) {
    using record::CopyHolder;
    using record::SentBy;
    store->actAs("R. Ashdown");
    valueOf(store->noteSending(first, {SentBy::Mail, "m@harrow.example", "subject", "", {}}));
    valueOf(store->noteEvent(first, "saved as PDF", "/tmp/a.pdf"));
    EXPECT_EQ(errorOf(store->noteSending(RecordId{store->newId()}, {})), ErrorCode::NotFound);
    const auto middle = revise(first);
    valueOf(store->noteSending(middle, {SentBy::Printed, "T. Nant", "", "", {}}));
    const auto newest = revise(middle);
    reopen();
    const auto sent = valueOf(store->sendings(first));
    ASSERT_EQ(sent.size(), 2U);
    EXPECT_EQ(sent[0],
              (record::Sending{SentBy::Mail, "m@harrow.example", "subject", "R. Ashdown", clock.now()}));
    EXPECT_EQ(sent[1].how, SentBy::File);
    EXPECT_TRUE(valueOf(store->holdersToTell(first)).empty());
    EXPECT_THAT(valueOf(store->holdersToTell(newest)),
                ElementsAre(CopyHolder{"m@harrow.example", SentBy::Mail, clock.now()},
                            CopyHolder{"T. Nant", SentBy::Printed, clock.now()}));
    valueOf(store->noteSending(newest, {SentBy::Mail, "m@harrow.example", "", "", {}}));
    EXPECT_THAT(valueOf(store->holdersToTell(newest)),
                ElementsAre(CopyHolder{"T. Nant", SentBy::Printed, clock.now()}));
    EXPECT_TRUE(valueOf(store->holdersToTell(second)).empty());
}

TEST_F(Proving, recordsAreChosenBySearchPeriodAndWhoHeldThePremises) {
    const auto numbers = [&](const RecordChoice& choice) {
        std::vector<RecordId> ids;
        for (const auto& line : valueOf(store->recordsChosen(choice))) {
            ids.push_back(line.id);
        }
        return ids;
    };
    const auto on = [](int month, int dayOfMonth) {
        return calendar::Date{std::chrono::year(2026), std::chrono::month(static_cast<unsigned>(month)),
                              std::chrono::day(static_cast<unsigned>(dayOfMonth))};
    };
    clock.set(clock.now() + std::chrono::hours(24 * 30));  // 25 December
    const auto third = issueOne(visit);
    EXPECT_THAT(numbers({}), ElementsAre(first, second, third));
    RecordChoice period;
    period.from = on(11, 25);
    period.until = on(11, 25);
    EXPECT_THAT(numbers(period), ElementsAre(first, second));
    period.until.reset();
    period.from = on(11, 26);
    EXPECT_THAT(numbers(period), ElementsAre(third));

    const auto revised = revise(first);
    valueOf(store->voidRecord(second, "wrong house"));
    EXPECT_THAT(numbers({}), ElementsAre(third, revised));
    RecordChoice all;
    all.onlyThatCount = false;
    EXPECT_THAT(numbers(all), ElementsAre(first, second, third, revised));

    RecordChoice search;
    search.search = "nowhere";
    EXPECT_TRUE(numbers(search).empty());
    search.search = "highcroft";
    EXPECT_EQ(numbers(search).size(), 2U);

    const auto holders = valueOf(store->holders(valueOf(store->record(first)).line.premises));
    ASSERT_FALSE(holders.empty());
    RecordChoice of;
    of.of = holders.front().party.id;
    EXPECT_EQ(numbers(of).size(), 2U);
    for (const auto& holder : holders) {
        valueOf(store->endRole(valueOf(store->record(first)).line.premises, holder.role, on(12, 24)));
    }
    EXPECT_TRUE(numbers(of).empty()) << "by then it was somebody else's";
    of.onlyThatCount = false;
    EXPECT_THAT(numbers(of), ElementsAre(first, second));
    of.of = reg::PartyId{store->newId()};
    EXPECT_TRUE(numbers(of).empty());
}

}  // namespace
}  // namespace hearth::store
