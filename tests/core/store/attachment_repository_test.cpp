// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/attachment_repository.h"

#include "core/record/snapshot.h"
#include "tests/core/store/store_fixture.h"

#include <gmock/gmock.h>

namespace hearth::store {
namespace {

class AttachmentRepository : public StoreTest {
  protected:
    void SetUp() override {
        StoreTest::SetUp();
        store->actAs("Tamsin");
        sample = putSample(*store);
    }
    [[nodiscard]] NewAttachment picture(const std::string& bytes = "not really a picture") const {
        return {"premises", sample.premises.id.bytes, "meter box.jpg", "image/jpeg", bytes, "small",
                false,      "lid is cracked"};
    }
    [[nodiscard]] std::vector<reg::Attachment> kept() const {
        return valueOf(store->attachmentsOf(sample.premises.id.bytes));
    }
    [[nodiscard]] std::string countOfBytes() const {
        return askSql(path(), "SELECT count(*) FROM attachment_bytes");
    }

    Sample sample;
};

TEST_F(AttachmentRepository, keepsBytesThumbnailAndWhatIsSaidOfThem) {
    const auto id = valueOf(store->attach(picture()));
    reopen();
    ASSERT_EQ(kept().size(), 1U);
    const auto attachment = kept().front();
    EXPECT_EQ(attachment.id, id);
    EXPECT_EQ(attachment.name, "meter box.jpg");
    EXPECT_EQ(attachment.mediaType, "image/jpeg");
    EXPECT_EQ(attachment.size, 20);
    EXPECT_EQ(attachment.addedBy, "Tamsin");
    EXPECT_EQ(attachment.addedAt, clock.now());
    EXPECT_EQ(attachment.note, "lid is cracked");
    EXPECT_EQ(attachment.digest, record::sha256("not really a picture"));
    EXPECT_EQ(valueOf(store->attachmentBytes(id)), "not really a picture");
    EXPECT_EQ(valueOf(store->thumbnailOf(id)), "small");
}

TEST_F(AttachmentRepository, keepsTheSamePictureOnce) {
    const auto first = valueOf(store->attach(picture()));
    auto another = picture();
    another.ownerTable = "installations";
    another.owner = sample.installation.id.bytes;
    const auto second = valueOf(store->attach(another));
    EXPECT_EQ(countOfBytes(), "1");
    valueOf(store->detach(first));
    EXPECT_EQ(valueOf(store->dropUnusedBytes()), 0);
    EXPECT_EQ(valueOf(store->attachmentBytes(second)), "not really a picture");
}

TEST_F(AttachmentRepository, refusesWhatIsTooLargeOrBelongsToNothing) {
    const auto tooLarge = store->attach(picture(std::string(Attachments::kMostBytes + 1, 'x')));
    EXPECT_EQ(errorOf(tooLarge), ErrorCode::AttachmentTooLarge);
    EXPECT_THAT(tooLarge.error().details, ::testing::ElementsAre("meter box.jpg", "20", "20"));
    auto lost = picture();
    lost.owner = store->newId();
    EXPECT_EQ(errorOf(store->attach(lost)), ErrorCode::NotFound);
    lost.ownerTable = "premises; DROP TABLE premises";
    EXPECT_EQ(errorOf(store->attach(lost)), ErrorCode::NotFound);
    EXPECT_THAT(kept(), ::testing::IsEmpty());
    EXPECT_EQ(countOfBytes(), "0");
    EXPECT_TRUE(store->attach(picture(std::string(Attachments::kMostBytes, 'x'))).has_value());
}

TEST_F(AttachmentRepository, bringsADetachedOneBackWithItsBytes) {
    const auto id = valueOf(store->attach(picture()));
    const auto before = kept();
    valueOf(store->detach(id));
    EXPECT_THAT(kept(), ::testing::IsEmpty());
    ASSERT_TRUE(valueOf(store->undo()).has_value());
    EXPECT_EQ(kept(), before);
    EXPECT_EQ(valueOf(store->attachmentBytes(id)), "not really a picture");
}

TEST_F(AttachmentRepository, dropsBytesThatNobodyNames) {
    valueOf(store->detach(valueOf(store->attach(picture()))));
    EXPECT_EQ(countOfBytes(), "1");
    EXPECT_EQ(valueOf(store->dropUnusedBytes()), 20);
    EXPECT_EQ(countOfBytes(), "0");
    EXPECT_FALSE(valueOf(store->undo()).has_value()) << "it would come back without its bytes";
}

TEST_F(AttachmentRepository, takesANewNameAndNote) {
    const auto id = valueOf(store->attach(picture()));
    valueOf(store->describeAttachment(id, "meter.jpg", ""));
    EXPECT_EQ(kept().front().name, "meter.jpg");
    EXPECT_EQ(kept().front().note, "");
    const auto log = valueOf(store->changes("attachments", id.text()));
    EXPECT_EQ(log.back().after, std::optional<std::string>("")) << "the note's change is logged";
}

TEST_F(AttachmentRepository, namesWhatIsNotWhatWasKept) {
    const auto id = valueOf(store->attach(picture()));
    {
        const Connection db(path(), Connection::Mode::ReadOnly);
        EXPECT_THAT(alteredAttachments(db), ::testing::IsEmpty());
    }
    store.reset();
    ASSERT_EQ(sqlOn(path(), "UPDATE attachment_bytes SET bytes = CAST('Not really a picture' AS BLOB)"), "");
    store = valueOf(Store::open(path(), Access::Write, clock));
    const auto altered = store->attachmentBytes(id);
    EXPECT_EQ(errorOf(altered), ErrorCode::AttachmentAltered);
    EXPECT_THAT(altered.error().details, ::testing::ElementsAre("meter box.jpg"));
    const Connection db(path(), Connection::Mode::ReadOnly);
    EXPECT_THAT(alteredAttachments(db), ::testing::ElementsAre("meter box.jpg"));
}

}  // namespace
}  // namespace hearth::store
