// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/firm_logo.h"

#include "core/record/snapshot.h"
#include "tests/core/store/store_fixture.h"

namespace hearth::store {
namespace {

class FirmLogo : public StoreTest {
  protected:
    void SetUp() override {
        StoreTest::SetUp();
        const Sample sample = putSample(*store);
        visit = valueOf(store->startVisit(sampleVisit(sample)));
    }
    reg::AttachmentId put(const std::string& bytes) {
        return valueOf(store->attachLogo({"", {}, "logo.png", "image/png", bytes, "", false, ""}));
    }
    [[nodiscard]] std::optional<record::Logo> logo() const {
        return valueOf(logoOf(*store, valueOf(store->firm())));
    }
    /// Issues with the logo of that moment.
    [[nodiscard]] RecordId issue() {
        auto request = requestFor(*store, visit);
        request.snapshot.document.logo = logo();
        return valueOf(store->issue(request, pdfOf));
    }

    reg::VisitId visit;
};

TEST_F(FirmLogo, isKeptTakenAwayAndBroughtBack) {
    EXPECT_FALSE(logo().has_value());
    const auto id = put("\x89PNG one");
    EXPECT_EQ(valueOf(store->firm()).logo, id);
    EXPECT_EQ(logo(), (record::Logo{record::sha256("\x89PNG one"), "image/png", "\x89PNG one"}));
    ASSERT_TRUE(valueOf(store->undo()).has_value());
    EXPECT_FALSE(logo().has_value()) << "picture and logo are one step";
    EXPECT_FALSE(store->attachmentBytes(id).has_value());

    put("\xFF\xD8 two");
    EXPECT_EQ(logo()->mediaType, "image/jpeg");
    reg::Firm firm = valueOf(store->firm());
    firm.logo.reset();
    valueOf(store->saveFirm(firm));
    EXPECT_FALSE(logo().has_value());
    ASSERT_TRUE(valueOf(store->undo()).has_value());
    EXPECT_EQ(logo()->bytes, "\xFF\xD8 two");
}

TEST_F(FirmLogo, ofARecordStaysWhenTheFirmHasAnother) {
    put("\x89PNG one");
    const auto first = issue();
    put("\x89PNG two");
    const auto second = issue();
    reg::Firm firm = valueOf(store->firm());
    firm.logo.reset();
    valueOf(store->saveFirm(firm));
    const auto third = issue();
    valueOf(store->dropUnusedBytes());
    reopen();
    EXPECT_EQ(valueOf(store->record(first)).document.logo->bytes, "\x89PNG one");
    EXPECT_EQ(valueOf(store->record(second)).document.logo->bytes, "\x89PNG two");
    EXPECT_FALSE(valueOf(store->record(third)).document.logo.has_value());
    EXPECT_TRUE(store->verify());
}

// The record is read all the same: its PDF holds the picture, and it proves nothing.
TEST_F(FirmLogo, thatIsNotWhatWasKeptIsNotShown) {
    put("\x89PNG one");
    const auto id = issue();
    store.reset();
    ASSERT_EQ(sqlOn(path(), "UPDATE attachment_bytes SET bytes = CAST('other' AS BLOB)"), "");
    store = valueOf(Store::open(path(), Access::Write, clock));
    EXPECT_EQ(valueOf(store->record(id)).document.logo->bytes, "");
    EXPECT_EQ(errorOf(logoOf(*store, valueOf(store->firm()))), ErrorCode::AttachmentAltered);
}

TEST_F(FirmLogo, tooLargeIsRefused) {
    const std::string large(Attachments::kMostBytes + 1, 'x');
    EXPECT_EQ(errorOf(store->attachLogo({"", {}, "logo.png", "image/png", large, "", false, ""})),
              ErrorCode::AttachmentTooLarge);
    EXPECT_FALSE(valueOf(store->firm()).logo.has_value());
}

}  // namespace
}  // namespace hearth::store
