// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/record_pictures.h"

#include "tests/core/store/kept_fixture.h"

#include <gmock/gmock.h>

namespace hearth::store {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

class RecordPicturesTest : public KeptTest {
  protected:
    void SetUp() override {
        KeptTest::SetUp();
        appliance = addAppliance("condensing_boiler");
        visit = valueOf(store->startVisit(sampleVisit(sample)));
    }
    reg::AttachmentId attach(const std::string& bytes, const char* type = "image/jpeg") {
        return valueOf(
            store->attach({"appliances", appliance.bytes, "a.jpg", type, bytes, "", false, "the flue"}));
    }
    [[nodiscard]] std::vector<std::string> shown(reg::VisitId of) const {
        std::vector<std::string> bytes;
        for (const auto& one : valueOf(picturesOf(*store, valueOf(store->visitFile(of))))) {
            bytes.push_back(one.picture.bytes);
        }
        return bytes;
    }
    /// Issues with the pictures that the visit shows.
    RecordId issueWithPictures() {
        auto request = requestFor(*store, visit);
        record::Pictures pictures{"Photographs", {}};
        for (auto& one : valueOf(picturesOf(*store, request.snapshot.file))) {
            pictures.pictures.push_back(one.picture);
        }
        request.snapshot.document.blocks.emplace_back(pictures);
        return valueOf(store->issue(request, pdfOf));
    }
    [[nodiscard]] record::Picture pictureIn(RecordId id) const {
        for (const auto& block : valueOf(store->record(id)).document.blocks) {
            if (const auto* pictures = std::get_if<record::Pictures>(&block)) {
                return pictures->pictures.at(0);
            }
        }
        return {};
    }

    reg::ApplianceId appliance;
    reg::VisitId visit;
};

TEST_F(RecordPicturesTest, areThoseThatTheVisitIsToShow) {
    const auto first = attach("one");
    const auto second = attach("two");
    static_cast<void>(attach("three"));
    const auto paper = attach("four", "application/pdf");
    for (const auto id : {first, second, paper}) {
        valueOf(store->showInRecords(id, visit));
    }
    EXPECT_THAT(shown(visit), ElementsAre("one", "two"));
    const auto one = valueOf(picturesOf(*store, valueOf(store->visitFile(visit)))).at(0);
    EXPECT_EQ(one.subject, reg::subject(appliance));
    EXPECT_EQ(one.picture.caption, "the flue");
    EXPECT_EQ(one.picture.digest, record::sha256("one"));
    valueOf(store->showInRecords(first, std::nullopt));
    EXPECT_THAT(shown(visit), ElementsAre("two"));
    valueOf(store->undo());
    EXPECT_THAT(shown(visit), ElementsAre("one", "two"));
}

// The picture stays with the appliance; next year's record does not show this year's by itself.
TEST_F(RecordPicturesTest, doNotCarryOverToAnotherVisit) {
    valueOf(store->showInRecords(attach("one"), visit));
    const auto next = valueOf(store->startVisit(sampleVisit(sample)));
    EXPECT_THAT(shown(next), IsEmpty());
    EXPECT_THAT(shown(visit), ElementsAre("one"));
}

TEST_F(RecordPicturesTest, areWantedOfAVisitThatIsThere) {
    EXPECT_EQ(errorOf(store->showInRecords(attach("one"), reg::VisitId{store->newId()})),
              ErrorCode::NotFound);
    EXPECT_EQ(errorOf(store->showInRecords({store->newId()}, visit)), ErrorCode::NotFound);
}

TEST_F(RecordPicturesTest, areToldWhenTheirBytesAreNotWhatWasKept) {
    valueOf(store->showInRecords(attach("one"), visit));
    ASSERT_EQ(sqlOn(path(), "UPDATE attachment_bytes SET bytes = x'00'"), "");
    EXPECT_EQ(errorOf(picturesOf(*store, valueOf(store->visitFile(visit)))), ErrorCode::AttachmentAltered);
}

// What was handed over can be shown again, though the picture was taken away and unused bytes were dropped.
TEST_F(RecordPicturesTest, stayAsLongAsTheRecordSaysSomething) {
    const auto id = attach("one");
    valueOf(store->showInRecords(id, visit));
    const auto record = issueWithPictures();
    EXPECT_EQ(pictureIn(record).bytes, "one");
    EXPECT_EQ(valueOf(store->record(record)).snapshotJson.find("\"one\""), std::string::npos);
    valueOf(store->detach(id));
    EXPECT_EQ(valueOf(store->dropUnusedBytes()), 0);
    EXPECT_EQ(pictureIn(record).bytes, "one");
    EXPECT_NE(sqlOn(path(), "DELETE FROM record_pictures"), "");
    EXPECT_NE(sqlOn(path(), "UPDATE record_pictures SET digest = ''"), "");
}

TEST_F(RecordPicturesTest, goWithWhatTheRecordSaid) {
    const auto id = attach("one");
    valueOf(store->showInRecords(id, visit));
    static_cast<void>(issueWithPictures());
    valueOf(store->detach(id));
    // As letting_go does it: by the event alone, with the last day of the keeping and its rule.
    ASSERT_EQ(sqlOn(path(),
                    "INSERT INTO record_events (id, record, position, event, detail, by, at) SELECT "
                    "randomblob(16), record, 99, 'payload erased', '2001-01-01 six_years', '', "
                    "'2026-11-25T09:46:00.000Z' FROM record_snapshots"),
              "");
    EXPECT_EQ(askSql(path(), "SELECT count(*) FROM record_pictures"), "0");
    EXPECT_EQ(valueOf(store->dropUnusedBytes()), 3);
}

TEST_F(RecordPicturesTest, areKeptButNoLongerWantedWhenTheirVisitGoes) {
    const auto id = attach("one");
    valueOf(store->showInRecords(id, visit));
    valueOf(store->removeForGood(valueOf(store->putIntoBin("visits", visit.bytes, "a visit"))));
    const auto kept = valueOf(store->attachmentsOf(appliance.bytes));
    ASSERT_EQ(kept.size(), 1U);
    EXPECT_FALSE(kept[0].inRecordOf.has_value());
}

}  // namespace
}  // namespace hearth::store
