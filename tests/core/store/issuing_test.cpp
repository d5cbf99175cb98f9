// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/issuing.h"

#include "tests/core/store/store_fixture.h"

#include <algorithm>
#include <cctype>
#include <gmock/gmock.h>

namespace hearth::store {
namespace {

class Issuing : public StoreTest {
  protected:
    void SetUp() override {
        StoreTest::SetUp();
        sample = putSample(*store);
        visit = valueOf(store->startVisit(sampleVisit(sample)));
    }
    [[nodiscard]] IssuedRecord read(RecordId id) const { return valueOf(store->record(id)); }
    [[nodiscard]] Result<RecordId> revise(RecordId id) {
        auto request = requestFor(*store, visit);
        request.supersedes = id;
        request.reason = "serial number mistyped";
        return store->issue(request, pdfOf);
    }

    Sample sample;
    reg::VisitId visit;
};

TEST_F(Issuing, aRecordSaysWhatItIs) {
    const auto id = issueOne(visit);
    reopen();
    const auto record = read(id);
    const auto& header = record.line.header;
    EXPECT_THAT(header.series, ::testing::MatchesRegex("[BCDFGHJKLMNPRSTVWXZ]{3}"));
    EXPECT_EQ(header.record, header.series + "-000001");
    EXPECT_EQ(header.number, 1);
    EXPECT_EQ(header.revision, 1);
    EXPECT_EQ(header.kind, record::kindCode(record::RecordKind::TightnessAndPurge));
    EXPECT_EQ(header.issuedAt, "2026-11-25T09:46:00.000Z");
    EXPECT_EQ(header.previous, "");
    EXPECT_EQ(record.line.visit, visit);
    EXPECT_EQ(record.line.premises, sample.premises.id);
    EXPECT_EQ(record.line.address, "12 Highcroft Rise, Flat 3, Ashwick, QA2 3BC");
    EXPECT_EQ(record.line.customer, sample.customer.name);
    EXPECT_EQ(record.line.outcome, rulebook::Outcome::Pass);
    EXPECT_FALSE(record.line.supersedes || record.line.supersededBy);
    EXPECT_EQ(record.document.number, header.record);
    EXPECT_EQ(record.document.revision, 1);
    EXPECT_EQ(record.document.blocks, requestFor(*store, visit).snapshot.document.blocks);
    EXPECT_EQ(record.pdf, pdfOf(record.document, header.snapshotDigest));
    EXPECT_EQ(record::sha256(record.snapshotJson), header.snapshotDigest);
    EXPECT_EQ(record::sha256(record.pdf), header.pdfDigest);
    EXPECT_TRUE(store->verify());
}

TEST_F(Issuing, numbersRunWithoutAGapOverRecordsAndRevisions) {
    const auto first = issueOne(visit);
    const auto revised = valueOf(revise(first));
    const auto second = issueOne(visit);
    const auto& a = read(first).line;
    const auto& b = read(revised).line;
    const auto& c = read(second).line;
    EXPECT_EQ(withoutSeries(a.header.record), "-000001");
    EXPECT_EQ(b.header.record, a.header.record);
    EXPECT_EQ(b.header.revision, 2);
    EXPECT_EQ(withoutSeries(c.header.record), "-000002");
    EXPECT_THAT((std::vector{a.header.number, b.header.number, c.header.number}),
                ::testing::ElementsAre(1, 2, 3));
    EXPECT_EQ(b.header.previous, record::headerDigest(a.header));
    EXPECT_EQ(c.header.previous, record::headerDigest(b.header));
    EXPECT_TRUE(store->verify());
}

TEST_F(Issuing, aRevisionSupersedesAndBothStayReadable) {
    const auto first = issueOne(visit);
    const auto revised = valueOf(revise(first));
    EXPECT_EQ(read(first).line.supersededBy, revised);
    EXPECT_EQ(read(revised).line.supersedes, first);
    EXPECT_EQ(read(revised).line.reason, "serial number mistyped");
    EXPECT_EQ(read(revised).document.revision, 2);
    const auto number = read(first).line.header.record;
    EXPECT_EQ(valueOf(store->recordByNumber(number)), revised);
    std::string small = number;
    std::transform(small.begin(), small.end(), small.begin(),
                   [](char c) { return static_cast<char>(std::tolower(c)); });
    EXPECT_EQ(valueOf(store->recordByNumber(small)), revised);
    EXPECT_EQ(valueOf(store->recordByNumber("none")), std::nullopt);
    EXPECT_EQ(valueOf(store->recordsOf(visit)).size(), 2U);
}

TEST_F(Issuing, whatWasSupersededIsNotSupersededAgain) {
    const auto first = issueOne(visit);
    const auto second = valueOf(revise(first));
    const auto refused = revise(first);
    ASSERT_FALSE(refused);
    const std::string number = read(first).line.header.record;
    EXPECT_EQ(refused.error(), (Error{ErrorCode::RecordSuperseded, {number, number + "/2"}}));
    EXPECT_EQ(read(valueOf(revise(second))).line.header.revision, 3);
    EXPECT_EQ(errorOf(revise(RecordId{store->newId()})), ErrorCode::NotFound);
}

TEST_F(Issuing, aFailedRenderUsesUpNoNumber) {
    const auto refused = store->issue(requestFor(*store, visit), renderRefused);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error(), (Error{ErrorCode::LetterMissingInFont, {"ŷ"}}));
    EXPECT_TRUE(valueOf(store->records("")).empty());
    EXPECT_THROW(static_cast<void>(store->issue(requestFor(*store, visit),
                                                [](const auto&, const auto&) -> Result<std::string> {
                                                    throw std::runtime_error("the painter broke");
                                                })),
                 std::runtime_error);
    EXPECT_EQ(withoutSeries(read(issueOne(visit)).line.header.record), "-000001");
}

TEST_F(Issuing, theRendererSeesTheNumberedDocumentAndMayRead) {
    record::Document seen;
    std::string digest;
    const auto id =
        valueOf(store->issue(requestFor(*store, visit), [&](const auto& document, const auto& given) {
            seen = document;
            digest = given;
            EXPECT_TRUE(store->visitFile(visit));
            return Result<std::string>("pdf");
        }));
    EXPECT_EQ(seen, read(id).document);
    EXPECT_EQ(digest, read(id).line.header.snapshotDigest);
}

TEST_F(Issuing, laterChangesOfTheRegisterDoNotReachARecord) {
    const auto id = issueOne(visit);
    const auto before = read(id);
    auto premises = sample.premises;
    premises.address.line1 = "Elsewhere";
    valueOf(store->save(premises));
    EXPECT_EQ(read(id).line.address, before.line.address);
    EXPECT_EQ(read(id).snapshotJson, before.snapshotJson);
}

TEST_F(Issuing, eventsAreAdded) {
    const auto id = issueOne(visit);
    valueOf(store->noteEvent(id, "printed", "2 copies"));
    EXPECT_EQ(errorOf(store->noteEvent(RecordId{store->newId()}, "printed", "")), ErrorCode::NotFound);
    store.reset();
    EXPECT_EQ(askSql(path(), "SELECT event || detail FROM record_events"), "printed2 copies");
}

struct Tampering {
    const char* what;
    const char* sql;
};

class IssuedFacts : public Issuing, public ::testing::WithParamInterface<Tampering> {};

// As another program would: recursive triggers are off there, so INSERT OR REPLACE deletes without a trigger.
TEST_P(IssuedFacts, areRefusedToChange) {
    const auto id = issueOne(visit);
    static_cast<void>(valueOf(revise(id)));
    valueOf(store->noteEvent(id, "printed", ""));
    const auto before = read(id);
    store.reset();
    EXPECT_NE(sqlOn(path(), GetParam().sql), "");
    EXPECT_NE(sqlOn(path(), std::string("PRAGMA recursive_triggers = ON; PRAGMA foreign_keys = ON; ") +
                                GetParam().sql),
              "");
    reopen();
    EXPECT_TRUE(store->verify());
    EXPECT_EQ(read(id).snapshotJson, before.snapshotJson);
    EXPECT_EQ(read(id).pdf, before.pdf);
}

INSTANTIATE_TEST_SUITE_P(
    Statements, IssuedFacts,
    ::testing::Values(
        Tampering{"update_header", "UPDATE record_headers SET issued_at = '2020'"},
        Tampering{"update_snapshot", "UPDATE record_snapshots SET outcome = 'pass'"},
        Tampering{"update_pdf", "UPDATE record_pdfs SET pdf = x'00'"},
        Tampering{"update_event", "UPDATE record_events SET event = 'x'"},
        Tampering{"update_or_replace", "UPDATE OR REPLACE record_headers SET number = 1"},
        Tampering{"delete_header", "DELETE FROM record_headers"},
        Tampering{"delete_snapshot", "DELETE FROM record_snapshots"},
        Tampering{"delete_pdf", "DELETE FROM record_pdfs"},
        Tampering{"delete_event", "DELETE FROM record_events"},
        Tampering{"replace_header", "INSERT OR REPLACE INTO record_headers SELECT * FROM record_headers"},
        Tampering{"replace_header_by_number",
                  "INSERT OR REPLACE INTO record_headers SELECT randomblob(16), series, number, 'X', "
                  "revision, kind, "
                  "issued_at, snapshot_digest, pdf_digest, previous, digest FROM record_headers"},
        Tampering{"replace_header_by_record",
                  "INSERT OR REPLACE INTO record_headers SELECT randomblob(16), series, number + 10, record, "
                  "revision, kind, "
                  "issued_at, snapshot_digest, pdf_digest, previous, digest FROM record_headers"},
        Tampering{"replace_snapshot",
                  "INSERT OR REPLACE INTO record_snapshots SELECT * FROM record_snapshots"},
        Tampering{"replace_snapshot_by_supersedes",
                  "INSERT OR REPLACE INTO record_snapshots SELECT randomblob(16), json, visit, premises, "
                  "address, customer, "
                  "outcome, supersedes, reason FROM record_snapshots WHERE supersedes IS NOT NULL"},
        Tampering{"replace_pdf", "INSERT OR REPLACE INTO record_pdfs SELECT record, x'00' FROM record_pdfs"},
        Tampering{"replace_event",
                  "INSERT OR REPLACE INTO record_events SELECT id, position, record, 'x', detail, by, at "
                  "FROM record_events"},
        Tampering{"replace_event_by_position",
                  "INSERT OR REPLACE INTO record_events SELECT randomblob(16), position, record, 'x', "
                  "detail, by, at FROM record_events"},
        Tampering{"upsert_pdf",
                  "INSERT INTO record_pdfs SELECT record, pdf FROM record_pdfs WHERE true ON CONFLICT DO "
                  "UPDATE SET pdf = x'00'"},
        Tampering{"series_back", "UPDATE series SET last_number = 0"},
        Tampering{"series_gone", "DELETE FROM series"},
        Tampering{"series_replaced", "INSERT OR REPLACE INTO series SELECT * FROM series"},
        Tampering{"migrations", "DELETE FROM migrations"}),
    [](const auto& named) { return std::string(named.param.what); });

}  // namespace
}  // namespace hearth::store
