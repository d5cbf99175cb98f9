// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/verification.h"

#include "tests/core/store/store_fixture.h"

#include <iterator>
#include <random>

namespace hearth::store {
namespace {

/// What somebody can do who takes the triggers away.
std::string withoutTriggers(const std::string& sql) {
    std::string script = "PRAGMA foreign_keys = OFF;";
    for (const auto* table : {"record_headers", "record_snapshots", "record_pdfs"}) {
        for (const auto* rule : {"_stay", "_are_kept", "_once"}) {
            script.append("DROP TRIGGER ").append(table).append(rule).append(";");
        }
    }
    return script + "DROP TRIGGER series_go_on; DROP TRIGGER series_are_kept;" + sql;
}

class Verification : public StoreTest {
  protected:
    void SetUp() override {
        StoreTest::SetUp();
        const Sample sample = putSample(*store);
        visit = valueOf(store->startVisit(sampleVisit(sample)));
        for (int i = 0; i < 3; ++i) {
            ids.push_back(issueOne(visit));
        }
        number = valueOf(store->record(ids[1])).line.header.record;
    }
    void tamper(const std::string& sql) {
        store.reset();
        const std::string problem = sqlOn(path(), withoutTriggers(sql));
        if (!problem.empty()) {
            throw std::runtime_error(problem);
        }
        store = valueOf(Store::open(path(), Access::Write, clock));
    }
    [[nodiscard]] Error verdict() const {
        const auto result = store->verify();
        return result ? Error{ErrorCode::NotFound, {"nothing wrong"}} : result.error();
    }

    reg::VisitId visit;
    std::vector<RecordId> ids;
    std::string number;  // of the second
};

TEST_F(Verification, aWholeStoreIsWhole) {
    EXPECT_TRUE(store->verify());
}

// By a program of another language that knows only what a chain is.
TEST_F(Verification, agreesWithAnotherProgram) {
    const std::string check =
        std::string("python3 ") + HEARTH_SOURCE_DIR + "/tests/core/store/check_chain.py " + path().string();
    EXPECT_EQ(hearth::testing::runCommand(check).text, "whole: 3 records\n");
    tamper("UPDATE record_headers SET kind = 'x' WHERE number = 2;");
    EXPECT_EQ(hearth::testing::runCommand(check).text,
              "does not follow: " + valueOf(store->records("")).front().header.record + "\n");
}

TEST_F(Verification, namesARecordWhoseSnapshotWasAltered) {
    tamper(
        "UPDATE record_snapshots SET json = CAST(replace(CAST(json AS TEXT), '20.67', '20.68') AS BLOB) "
        "WHERE record = (SELECT id FROM "
        "record_headers WHERE number = 2);");
    EXPECT_EQ(verdict(), (Error{ErrorCode::RecordAltered, {number, "snapshot"}}));
    EXPECT_EQ(errorOf(store->record(ids[1])), ErrorCode::RecordAltered);
    EXPECT_TRUE(store->record(ids[0]));
}

TEST_F(Verification, namesARecordWhosePdfWasAltered) {
    tamper(
        "UPDATE record_pdfs SET pdf = x'25504446' WHERE record = (SELECT id FROM record_headers WHERE number "
        "= 2);");
    EXPECT_EQ(verdict(), (Error{ErrorCode::RecordAltered, {number, "pdf"}}));
    EXPECT_EQ(errorOf(store->record(ids[1])), ErrorCode::RecordAltered);
}

TEST_F(Verification, namesARecordWhosePayloadIsGone) {
    tamper("DELETE FROM record_pdfs WHERE record = (SELECT id FROM record_headers WHERE number = 2);");
    EXPECT_EQ(verdict(), (Error{ErrorCode::RecordAltered, {number, "pdf"}}));
}

TEST_F(Verification, findsAHeaderThatWasAlteredWithItsOwnDigestToo) {
    tamper("UPDATE record_headers SET issued_at = '2026-01-01T00:00:00.000Z' WHERE number = 2;");
    EXPECT_EQ(verdict(), (Error{ErrorCode::RecordChainBroken, {number}}));
    EXPECT_EQ(errorOf(store->record(ids[1])), ErrorCode::RecordChainBroken);
}

TEST_F(Verification, findsAHeaderWhoseDigestWasMadeToFit) {
    auto header = valueOf(store->record(ids[1])).line.header;
    header.issuedAt = "2026-01-01T00:00:00.000Z";
    tamper("UPDATE record_headers SET issued_at = '" + header.issuedAt + "', digest = '" +
           record::headerDigest(header) + "' WHERE number = 2;");
    EXPECT_EQ(errorOf(store->verify()), ErrorCode::RecordChainBroken);  // the third no longer follows
    EXPECT_EQ(errorOf(store->record(ids[2])), ErrorCode::RecordChainBroken);
}

TEST_F(Verification, findsARecordThatWasTakenOutOfTheMiddle) {
    tamper(
        "DELETE FROM record_snapshots WHERE record = (SELECT id FROM record_headers WHERE number = 2);"
        "DELETE FROM record_pdfs WHERE record = (SELECT id FROM record_headers WHERE number = 2);"
        "DELETE FROM record_headers WHERE number = 2;");
    EXPECT_EQ(errorOf(store->verify()), ErrorCode::RecordChainBroken);
}

TEST_F(Verification, findsAnEndThatWasCutOffAndIssuesNothingAfterIt) {
    tamper(
        "DELETE FROM record_snapshots WHERE record = (SELECT id FROM record_headers WHERE number = 3);"
        "DELETE FROM record_pdfs WHERE record = (SELECT id FROM record_headers WHERE number = 3);"
        "DELETE FROM record_headers WHERE number = 3;");
    EXPECT_EQ(errorOf(store->verify()), ErrorCode::RecordChainBroken);
    EXPECT_EQ(errorOf(store->issue(requestFor(*store, visit), pdfOf)), ErrorCode::RecordChainBroken);
}

TEST_F(Verification, findsAListThatSaysSomethingElseThanTheSnapshot) {
    store.reset();
    const std::string whole = hearth::testing::readFile(path());
    for (const std::string column :
         {"address = 'Elsewhere'", "customer = 'Nobody'", "outcome = 'fail'", "reason = 'x'",
          "supersedes = (SELECT id FROM record_headers WHERE number = 1)"}) {
        hearth::testing::writeFile(path(), whole);
        tamper("UPDATE record_snapshots SET " + column +
               " WHERE record = (SELECT id FROM record_headers WHERE number = 2);");
        EXPECT_EQ(verdict(), (Error{ErrorCode::RecordAltered, {number, "snapshot"}})) << column;
        store.reset();
    }
}

struct Place {
    const char* table;
    const char* key;
    const char* column;
};
constexpr Place kPlaces[] = {
    {"record_snapshots", "record", "json"},     {"record_pdfs", "record", "pdf"},
    {"record_headers", "id", "record"},         {"record_headers", "id", "snapshot_digest"},
    {"record_headers", "id", "pdf_digest"},     {"record_headers", "id", "previous"},
    {"record_headers", "id", "issued_at"},      {"record_headers", "id", "digest"},
    {"record_headers", "id", "kind"},           {"record_snapshots", "record", "address"},
    {"record_snapshots", "record", "customer"},
};

std::string flipped(const std::string& hex, std::mt19937& random) {
    std::string bytes = hex;
    const std::size_t digit = random() % bytes.size();
    const int nibble = std::stoi(bytes.substr(digit, 1), nullptr, 16) ^ (1 << (random() % 4));
    bytes[digit] = "0123456789ABCDEF"[nibble];
    return bytes;
}

// SQLite's own check finds few of single flipped bits (its pages have no checksums): the digests must find
// each.
TEST_F(Verification, findsEveryFlippedBitOfARecord) {
    store.reset();
    ASSERT_EQ(sqlOn(path(), withoutTriggers("")), "");
    const std::string whole = hearth::testing::readFile(path());
    std::mt19937 random(20261125);
    for (int i = 0; i < rounds(60, 400); ++i) {
        const Place& place = kPlaces[static_cast<std::size_t>(i) % std::size(kPlaces)];
        const std::string from = std::string(" FROM ") + place.table + " WHERE " + place.key +
                                 " = (SELECT id FROM record_headers WHERE number = 2)";
        const std::string bytes =
            flipped(askSql(path(), std::string("SELECT hex(") + place.column + ")" + from), random);
        const std::string type = askSql(path(), std::string("SELECT typeof(") + place.column + ")" + from);
        ASSERT_EQ(sqlOn(path(), std::string("UPDATE ") + place.table + " SET " + place.column + " = CAST(x'" +
                                    bytes + "' AS " + type + ")" + from.substr(from.find(" WHERE"))),
                  "");
        EXPECT_FALSE(valueOf(Store::open(path(), Access::Read, clock))->verify())
            << place.column << " " << bytes;
        hearth::testing::writeFile(path(), whole);
    }
}

}  // namespace
}  // namespace hearth::store
