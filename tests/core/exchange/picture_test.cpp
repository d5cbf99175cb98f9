// SPDX-License-Identifier: GPL-3.0-or-later
// Published sources: Exif 2.32, section 4.6.6 (GPS attributes); XMP Specification Part 2. The pictures in
// data/ were made by an image library and are read back by another (ImageMagick), neither of them ours.
#include "core/exchange/picture.h"

#include "tests/support/files.h"

#include <gtest/gtest.h>

namespace hearth::exchange {
namespace {

using hearth::testing::readFile;
using hearth::testing::runCommand;
using hearth::testing::TempDir;
using hearth::testing::writeFile;

std::string sample(const std::string& name) {
    return readFile(std::string(HEARTH_SOURCE_DIR) + "/tests/core/exchange/data/" + name);
}

/// What ImageMagick says of a file's bytes.
std::string asked(const std::string& bytes, const std::string& extension, const std::string& format) {
    const TempDir folder;
    const auto file = folder / ("picture." + extension);
    writeFile(file, bytes);
    const auto answer = runCommand("identify -format '" + format + "' '" + file.string() + "' 2>/dev/null");
    EXPECT_EQ(answer.exitCode, 0) << answer.text;
    return answer.text;
}

TEST(Picture, losesItsPlaceAndNothingElse) {
    const std::string before = sample("with_place.jpg");
    ASSERT_NE(asked(before, "jpg", "%[EXIF:GPSLatitude]"), "") << "the sample tells no place";
    const auto picture = readPicture(before, PicturePlace::Remove, "with_place.jpg");
    ASSERT_TRUE(picture.has_value());
    EXPECT_TRUE(picture->hadPlace);
    EXPECT_FALSE(picture->placeKept);
    EXPECT_EQ(picture->mediaType, "image/jpeg");
    EXPECT_EQ(asked(picture->bytes, "jpg", "%[EXIF:GPSLatitude]%[EXIF:GPSLongitude]%[EXIF:GPSInfo]"), "");
    // how it was held, when and by what it was taken
    EXPECT_EQ(asked(picture->bytes, "jpg", "%[EXIF:Orientation] %[EXIF:DateTime] %[EXIF:Make]"),
              "6 2026:11:25 09:46:00 Invented");
    // a digest of the pixels
    EXPECT_EQ(asked(picture->bytes, "jpg", "%#"), asked(before, "jpg", "%#"));
}

TEST(Picture, keepsItsPlaceOnPurpose) {
    const std::string before = sample("with_place.jpg");
    const auto picture = readPicture(before, PicturePlace::Keep, "with_place.jpg");
    ASSERT_TRUE(picture.has_value());
    EXPECT_TRUE(picture->hadPlace);
    EXPECT_TRUE(picture->placeKept);
    EXPECT_EQ(picture->bytes, before);
}

TEST(Picture, withoutAPlaceIsKeptByteForByte) {
    const std::string before = sample("without_place.jpg");
    const auto picture = readPicture(before, PicturePlace::Remove, "without_place.jpg");
    ASSERT_TRUE(picture.has_value());
    EXPECT_FALSE(picture->hadPlace);
    EXPECT_EQ(picture->bytes, before);
}

TEST(Picture, losesThePlaceInItsXmpToo) {
    const std::string before = sample("with_place.png");
    ASSERT_NE(before.find("GPSLatitude"), std::string::npos);
    const auto picture = readPicture(before, PicturePlace::Remove, "with_place.png");
    ASSERT_TRUE(picture.has_value());
    EXPECT_EQ(picture->mediaType, "image/png");
    EXPECT_TRUE(picture->hadPlace);
    EXPECT_EQ(picture->bytes.find("GPSLatitude"), std::string::npos);
    EXPECT_EQ(asked(picture->bytes, "png", "%[xmp:*]%[exif:GPSLatitude]"), "");
    EXPECT_EQ(asked(picture->bytes, "png", "%#"), asked(before, "png", "%#"));
}

TEST(Picture, isToldByItsBytesNotByItsName) {
    EXPECT_EQ(mediaTypeOf("%PDF-1.4\n"), "application/pdf");
    EXPECT_EQ(mediaTypeOf("GIF89a"), "");
    EXPECT_EQ(mediaTypeOf(""), "");
    const auto paper = readPicture("%PDF-1.4\nwhatever", PicturePlace::Remove, "scan.jpg");
    ASSERT_TRUE(paper.has_value());
    EXPECT_EQ(paper->mediaType, "application/pdf");
    EXPECT_EQ(paper->bytes, "%PDF-1.4\nwhatever");
}

TEST(Picture, thatIsNoneIsRefusedByName) {
    const auto text = readPicture("hello", PicturePlace::Remove, "notes.jpg");
    ASSERT_FALSE(text.has_value());
    EXPECT_EQ(text.error(), (Error{ErrorCode::AttachmentUnknown, {"notes.jpg"}}));
    const auto cut = readPicture("\xFF\xD8\xFF", PicturePlace::Remove, "cut.jpg");
    ASSERT_FALSE(cut.has_value());
    EXPECT_EQ(cut.error(), (Error{ErrorCode::AttachmentDamaged, {"cut.jpg"}}));
}

/// However it is cut off: a picture, or said to be none; never a crash, and never with its place in it.
TEST(Picture, cutOffAnywhereNeverCrashes) {
    for (const auto* name : {"with_place.jpg", "with_place.png"}) {
        const std::string whole = sample(name);
        for (std::size_t length = 0; length < whole.size(); ++length) {
            const auto picture = readPicture(whole.substr(0, length), PicturePlace::Remove, name);
            if (picture) {
                EXPECT_EQ(picture->bytes.find("GPSLatitude"), std::string::npos) << name << ' ' << length;
            }
        }
    }
}

}  // namespace
}  // namespace hearth::exchange
