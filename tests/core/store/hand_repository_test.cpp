// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/hands.h"
#include "tests/core/store/kept_fixture.h"

#include <gmock/gmock.h>

namespace hearth::store {
namespace {

using ::testing::IsEmpty;

class HandsTest : public KeptTest {
  protected:
    void SetUp() override {
        KeptTest::SetUp();
        visit = valueOf(store->startVisit(sampleVisit(sample)));
    }
    [[nodiscard]] reg::HandSignature drawn(reg::Signer signer = reg::Signer::Receiver) const {
        reg::HandSignature signature;
        signature.visit = visit;
        signature.recordKind = "tightness_and_purge";
        signature.signer = signer;
        signature.way = reg::SignedWay::Drawn;
        signature.name = "Nell Harrow";
        signature.role = "tenant";
        signature.strokes = "1.0,2.0 3.0,4.0;5.0,6.0";
        signature.at = clock.now();
        return signature;
    }
    [[nodiscard]] std::vector<reg::HandSignature> kept() const {
        return valueOf(store->visitFile(visit)).signatures;
    }
    [[nodiscard]] std::string countOfRows() const {
        return askSql(path(), "SELECT count(*) FROM hand_signatures");
    }

    reg::VisitId visit;
};

TEST_F(HandsTest, areKeptWithTheVisitFileAndReadBackAsTheyWere) {
    valueOf(store->sign(drawn()));
    reopen();
    ASSERT_EQ(kept().size(), 1U);
    auto expected = drawn();
    expected.id = kept()[0].id;
    expected.issue = 1;
    EXPECT_EQ(kept()[0], expected);
    EXPECT_FALSE(expected.id.isNull());
}

TEST_F(HandsTest, areOneForEachSignerAndRecord) {
    valueOf(store->sign(drawn()));
    auto again = drawn();
    again.strokes = "9.0,9.0";
    valueOf(store->sign(again));
    ASSERT_EQ(kept().size(), 1U);
    EXPECT_EQ(kept()[0].strokes, "9.0,9.0");
    valueOf(store->sign(drawn(reg::Signer::Engineer)));
    auto other = drawn();
    other.recordKind = "warning_notice";
    valueOf(store->sign(other));
    EXPECT_EQ(kept().size(), 3U);
}

TEST_F(HandsTest, areTakenBackByUndoStrokeByStroke) {
    auto first = drawn();
    first.strokes = "1.0,2.0 3.0,4.0";
    valueOf(store->sign(first));
    valueOf(store->sign(drawn()));
    valueOf(store->undo());
    EXPECT_EQ(kept().at(0).strokes, first.strokes);
    valueOf(store->undo());
    EXPECT_THAT(kept(), IsEmpty());
}

TEST_F(HandsTest, areTakenAwayWhenAsked) {
    valueOf(store->sign(drawn()));
    valueOf(store->unsign(visit, "tightness_and_purge", reg::Signer::Engineer));
    EXPECT_EQ(kept().size(), 1U);
    valueOf(store->unsign(visit, "tightness_and_purge", reg::Signer::Receiver));
    EXPECT_THAT(kept(), IsEmpty());
    valueOf(store->undo());
    EXPECT_EQ(kept().size(), 1U);
}

// A revision asks again; what was signed for the record before stays kept, and is that record's alone.
TEST_F(HandsTest, neverCarryOverToARevision) {
    valueOf(store->sign(drawn()));
    const auto first = issueOne(visit);
    EXPECT_THAT(kept(), IsEmpty());
    EXPECT_EQ(countOfRows(), "1");
    EXPECT_NE(valueOf(store->record(first)).snapshotJson.find("1.0,2.0 3.0,4.0;5.0,6.0"), std::string::npos);

    auto second = drawn();
    second.strokes = "7.0,7.0";
    valueOf(store->sign(second));
    ASSERT_EQ(kept().size(), 1U);
    EXPECT_EQ(kept()[0].issue, 2);
    EXPECT_EQ(countOfRows(), "2");
    auto request = requestFor(*store, visit);
    request.supersedes = first;
    request.reason = "wrong meter";
    const auto revised = valueOf(store->record(valueOf(store->issue(request, pdfOf)))).snapshotJson;
    EXPECT_NE(revised.find("7.0,7.0"), std::string::npos);
    EXPECT_EQ(revised.find("1.0,2.0"), std::string::npos);
    EXPECT_THAT(kept(), IsEmpty());
}

TEST_F(HandsTest, areInNoRecordOfAnotherKind) {
    auto notice = drawn();
    notice.recordKind = "warning_notice";
    notice.strokes = "8.0,8.0";
    valueOf(store->sign(notice));
    const auto record = valueOf(store->record(issueOne(visit)));
    EXPECT_EQ(record.snapshotJson.find("8.0,8.0"), std::string::npos);
    EXPECT_EQ(kept().size(), 1U);  // still for the notice
}

TEST_F(HandsTest, areRefusedForStrokesThatAreNone) {
    auto bad = drawn();
    bad.strokes = "1,2 3,4";
    EXPECT_EQ(errorOf(store->sign(bad)), ErrorCode::StrokesUnreadable);
    EXPECT_THAT(kept(), IsEmpty());
    auto nowhere = drawn();
    nowhere.visit = {store->newId()};
    EXPECT_EQ(errorOf(store->sign(nowhere)), ErrorCode::NotFound);
}

TEST_F(HandsTest, goWithTheirVisit) {
    valueOf(store->sign(drawn()));
    valueOf(store->removeForGood(valueOf(store->putIntoBin("visits", visit.bytes, "a visit"))));
    EXPECT_EQ(countOfRows(), "0");
}

}  // namespace
}  // namespace hearth::store
