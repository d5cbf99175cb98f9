// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/merging.h"

#include "tests/support/files.h"
#include "tests/ui/paper/programs.h"
#include "ui/paper/paper.h"

#include <QBuffer>
#include <QImage>

#include <gmock/gmock.h>

namespace hearth::ui::paper {
namespace {

using ::testing::HasSubstr;

PdfPart part(const std::string& bookmark, int paragraphs) {
    record::Document document;
    document.title = bookmark;
    document.number = "BCD-000001";
    document.pageWord = "page %1 of %2";
    document.revisionWord = "revision %1";
    for (int i = 0; i < paragraphs; ++i) {
        document.blocks.emplace_back(record::Paragraph{{}, bookmark + " line " + std::to_string(i), false});
    }
    return {bookmark, toPdf(document, {}).value().toStdString()};
}

NextPdf partsOf(std::vector<PdfPart> parts) {
    return [parts, at = std::size_t{0}]() mutable -> Result<std::optional<PdfPart>> {
        return at < parts.size() ? std::optional<PdfPart>(parts[at++]) : std::nullopt;
    };
}

Result<std::string> merged(const NextPdf& next, const std::string& title = "Records") {
    std::string bytes;
    const auto done = mergePdfs({title, "en"}, next, [&bytes](std::string_view piece) -> Result<void> {
        bytes += piece;
        return {};
    });
    return done ? Result<std::string>(bytes) : Result<std::string>(tl::unexpected<Error>(done.error()));
}

std::string by(const std::string& command) {
    return hearth::testing::runCommand(command + " 2>&1").text;
}

record::Document letter(const std::string& about, int paragraphs, record::Paper paper) {
    record::Document document;
    document.title = about;
    document.pageWord = "page %1 of %2";
    document.paper = paper;
    for (int i = 0; i < paragraphs; ++i) {
        document.blocks.emplace_back(record::Paragraph{{}, about + " line " + std::to_string(i), false});
    }
    return document;
}

// Several documents that were painted as one: each has its bookmark where it begins, its own page numbers and
// paper.
TEST(Merging, keepsTheBookmarksOfAPartOfSeveral) {
    const hearth::testing::TempDir folder;
    const std::vector<record::Document> letters{letter("first", 1, record::Paper::A4),
                                                letter("second", 200, record::Paper::Letter),
                                                letter("third", 1, record::Paper::A4)};
    const auto together = toPdfOfMany(letters, {});
    ASSERT_TRUE(together);
    ASSERT_EQ(together->firstPages.size(), 3U);
    EXPECT_EQ(together->firstPages[1], 1);
    const int third = together->firstPages[2];
    EXPECT_GT(third, 2) << "the second is long";
    PdfPart several{"first", together->bytes.toStdString()};
    several.more = {{1, "second"}, {third, "third"}};
    const auto whole = merged(partsOf({part("before", 1), several}), "Letters");
    ASSERT_TRUE(whole);
    const std::string file = (folder / "letters.pdf").string();
    hearth::testing::writeFile(file, *whole);
    EXPECT_THAT(by("qpdf --check " + file), HasSubstr("No syntax or stream encoding errors found"));
    EXPECT_THAT(hearth::testing::preflight(QString::fromStdString(file)).toStdString(),
                HasSubstr("is a valid PDF/A-1b file"));
    const std::string outline = by("qpdf --json --json-key=outlines " + file);
    const auto leadsTo = [&](const char* title) {
        const auto at = outline.find('"' + std::string(title) + '"');
        const auto from = outline.rfind("destpageposfrom1\": ", at);
        return at == std::string::npos || from == std::string::npos
                   ? -1
                   : std::stoi(outline.substr(from + std::string("destpageposfrom1\": ").size()));
    };
    EXPECT_EQ(leadsTo("before"), 1);
    EXPECT_EQ(leadsTo("first"), 2);
    EXPECT_EQ(leadsTo("second"), 3);
    EXPECT_EQ(leadsTo("third"), third + 2);
    const auto textOfPage = [&](int page) {
        const auto number = std::to_string(page);
        return by("pdftotext -f " + number + " -l " + number + " " + file + " -");
    };
    EXPECT_THAT(textOfPage(third + 2), HasSubstr("third line 0"));
    EXPECT_THAT(textOfPage(third + 2), HasSubstr("page 1 of 1"));
    EXPECT_THAT(by("pdfinfo -f 3 -l 3 " + file), HasSubstr("612 x 792"));  // US Letter in points
    EXPECT_THAT(by("pdfinfo -f 2 -l 2 " + file), HasSubstr("A4"));
    EXPECT_FALSE(toPdfOfMany({}, {})) << "nothing to write";
}

// By programs that know nothing of ours: poppler and qpdf.
TEST(Merging, keepsEachPageAndItsBookmark) {
    const hearth::testing::TempDir folder;
    const std::vector<PdfPart> parts{part("BCD-000001 Tŷ Gŵyr", 3), part("BCD-000002 Łódź (long)", 200),
                                     part("BCD-000003", 1)};
    const auto whole = merged(partsOf(parts), "Records of Tŷ Gŵyr");
    ASSERT_TRUE(whole) << whole.error().details.back();
    const std::string file = (folder / "whole.pdf").string();
    hearth::testing::writeFile(file, *whole);
    EXPECT_THAT(by("qpdf --check " + file), HasSubstr("No syntax or stream encoding errors found"));
    std::string pages;
    std::string text;
    int count = 0;
    for (const auto& one : parts) {
        const std::string alone = (folder / "part.pdf").string();
        hearth::testing::writeFile(alone, one.pdf);
        text += by("pdftotext -layout " + alone + " -");
        count += std::stoi(by("qpdf --show-npages " + alone));
    }
    EXPECT_GT(count, 3);
    EXPECT_EQ(std::stoi(by("qpdf --show-npages " + file)), count);
    EXPECT_EQ(by("pdftotext -layout " + file + " -"), text);
    EXPECT_THAT(by("pdfinfo " + file), HasSubstr("Records of Tŷ Gŵyr"));
    // ISO 19005-1 level B, as Apache PDFBox Preflight reads it: as each part is.
    EXPECT_THAT(hearth::testing::preflight(QString::fromStdString(file)).toStdString(),
                HasSubstr("is a valid PDF/A-1b file"));
    const std::string outline = by("qpdf --json --json-key=outlines " + file);
    for (const auto& one : parts) {
        EXPECT_THAT(outline, HasSubstr('"' + one.bookmark + '"'));
    }
    EXPECT_THAT(outline, HasSubstr("\"destpageposfrom1\": " + std::to_string(count)));
}

TEST(Merging, claimsNoMoreThanItsParts) {
    const hearth::testing::TempDir folder;
    PdfPart plain = part("BCD-000001", 1);
    const auto at = plain.pdf.find("/OutputIntents");
    ASSERT_NE(at, std::string::npos);
    plain.pdf.replace(at, 14, "/NoOutIntents1");
    const auto whole = merged(partsOf({part("BCD-000002", 1), plain}));
    ASSERT_TRUE(whole);
    EXPECT_THAT(*whole, ::testing::Not(HasSubstr("pdfaid")));
    EXPECT_THAT(*merged(partsOf({part("BCD-000002", 1)})), HasSubstr("pdfaid"));
}

TEST(Merging, writesAPictureOfManyPartsOnce) {
    const auto withLogo = [](const std::string& number, bool isThere) {
        record::Document document;
        document.title = number;
        QImage logo(300, 100, QImage::Format_RGB32);
        for (int i = 0; i < 30000; ++i) {
            logo.setPixel(i % 300, i / 300, 0xFF000000U | (static_cast<unsigned>(i) * 2654435761U >> 8));
        }
        QByteArray bytes;
        QBuffer buffer(&bytes);
        logo.save(&buffer, "PNG");
        if (isThere) {
            document.logo = record::Logo{{}, "image/png", bytes.toStdString()};
        }
        return PdfPart{number, toPdf(document, {}).value().toStdString()};
    };
    const auto lengthOf = [&](bool isThere, int count) {
        std::vector<PdfPart> parts;
        for (int i = 0; i < count; ++i) {
            parts.push_back(withLogo("BCD-00000" + std::to_string(i), isThere));
        }
        return static_cast<double>(merged(partsOf(parts)).value().size());
    };
    const double logo = lengthOf(true, 1) - lengthOf(false, 1);
    EXPECT_GT(logo, 20000);
    EXPECT_LT(lengthOf(true, 5) - lengthOf(false, 5), 1.2 * logo);
}

TEST(Merging, aFullDiskEndsIt) {
    int pieces = 0;
    const auto done =
        mergePdfs({"Records", "en"}, partsOf({part("BCD-000001", 1), part("BCD-000002", 1)}),
                  [&pieces](std::string_view) -> Result<void> {
                      return ++pieces < 9 ? Result<void>() : Result<void>(fail(ErrorCode::FileUnwritable));
                  });
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().code, ErrorCode::FileUnwritable);
    EXPECT_EQ(pieces, 9);
}

TEST(Merging, givesTheSameBytesAgain) {
    const std::vector<PdfPart> parts{part("BCD-000001", 3), part("BCD-000002", 3)};
    EXPECT_EQ(merged(partsOf(parts)), merged(partsOf(parts)));
}

TEST(Merging, saysWhatIsNoPdfAndWhereItWasStopped) {
    const auto broken = merged(partsOf({part("BCD-000001", 1), {"BCD-000002", "no PDF"}}));
    ASSERT_FALSE(broken);
    EXPECT_EQ(broken.error().code, ErrorCode::PdfNotWritten);
    EXPECT_EQ(broken.error().details.front(), "BCD-000002");
    EXPECT_FALSE(merged(partsOf({})));
    const auto stopped = merged([]() -> Result<std::optional<PdfPart>> {
        return fail(ErrorCode::RecordAltered, {"BCD-000001", "pdf"});
    });
    ASSERT_FALSE(stopped);
    EXPECT_EQ(stopped.error().code, ErrorCode::RecordAltered);
}

}  // namespace
}  // namespace hearth::ui::paper
