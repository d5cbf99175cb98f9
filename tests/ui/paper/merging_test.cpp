// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/merging.h"

#include "tests/support/files.h"
#include "ui/paper/paper.h"

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

std::string by(const std::string& command) {
    return hearth::testing::runCommand(command + " 2>&1").text;
}

// By programs that know nothing of ours: poppler and qpdf.
TEST(Merging, keepsEachPageAndItsBookmark) {
    const hearth::testing::TempDir folder;
    const std::vector<PdfPart> parts{part("BCD-000001 Tŷ Gŵyr", 3), part("BCD-000002 Łódź (long)", 200),
                                     part("BCD-000003", 1)};
    const auto whole = mergePdfs({"Records of Tŷ Gŵyr", "en"}, partsOf(parts));
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
    const std::string outline = by("qpdf --json --json-key=outlines " + file);
    for (const auto& one : parts) {
        EXPECT_THAT(outline, HasSubstr('"' + one.bookmark + '"'));
    }
    EXPECT_THAT(outline, HasSubstr("\"destpageposfrom1\": " + std::to_string(count)));
}

TEST(Merging, givesTheSameBytesAgain) {
    const std::vector<PdfPart> parts{part("BCD-000001", 3), part("BCD-000002", 3)};
    EXPECT_EQ(mergePdfs({"Records", "en"}, partsOf(parts)), mergePdfs({"Records", "en"}, partsOf(parts)));
}

TEST(Merging, saysWhatIsNoPdfAndWhereItWasStopped) {
    const auto broken =
        mergePdfs({"Records", "en"}, partsOf({part("BCD-000001", 1), {"BCD-000002", "no PDF"}}));
    ASSERT_FALSE(broken);
    EXPECT_EQ(broken.error().code, ErrorCode::PdfNotWritten);
    EXPECT_EQ(broken.error().details.front(), "BCD-000002");
    EXPECT_FALSE(mergePdfs({"Records", "en"}, partsOf({})));
    const auto stopped = mergePdfs({"Records", "en"}, []() -> Result<std::optional<PdfPart>> {
        return fail(ErrorCode::RecordAltered, {"BCD-000001", "pdf"});
    });
    ASSERT_FALSE(stopped);
    EXPECT_EQ(stopped.error().code, ErrorCode::RecordAltered);
}

}  // namespace
}  // namespace hearth::ui::paper
