// SPDX-License-Identifier: GPL-3.0-or-later
// Held against the C library's converter (iconv), which is not ours, for every byte and for letters of each
// length.
#include "core/exchange/file_text.h"

#include <gtest/gtest.h>
#include <iconv.h>

namespace hearth::exchange {
namespace {

/// Nothing where the converter refuses.
std::optional<std::string> byIconv(std::string bytes, const char* from, const char* to) {
    iconv_t converter = iconv_open(to, from);
    std::string out(bytes.size() * 4 + 8, '\0');
    char* in = bytes.data();
    std::size_t inLeft = bytes.size();
    char* at = out.data();
    std::size_t left = out.size();
    const bool good = iconv(converter, &in, &inLeft, &at, &left) != static_cast<std::size_t>(-1);
    iconv_close(converter);
    out.resize(out.size() - left);
    return good ? std::optional(out) : std::nullopt;
}

const std::string kLetters = "Tŷ Gŵyn, £45 – “Łódź” Ó Néill 😀 €\r\n";

TEST(FileText, readsEachByteOfWindows1252AsIconvDoes) {
    for (int byte = 1; byte < 256; ++byte) {
        const std::string bytes(1, static_cast<char>(byte));
        const auto text = readFileText(bytes, Encoding::Windows1252);
        const auto expected = byIconv(bytes, "WINDOWS-1252", "UTF-8");
        EXPECT_EQ(text.utf8, expected.value_or("\xEF\xBF\xBD")) << byte;
        EXPECT_EQ(text.unreadable, expected ? 0 : 1) << byte;
    }
}

TEST(FileText, guessesWhatItsWriterUsed) {
    struct Case {
        const char* name;
        std::string bytes;
        Encoding encoding;
        bool marked;
    };
    const std::vector<Case> cases{
        {"UTF-8", kLetters, Encoding::Utf8, false},
        {"UTF-8, marked", "\xEF\xBB\xBF" + kLetters, Encoding::Utf8, true},
        {"UTF-16LE, marked", *byIconv("\xEF\xBB\xBF" + kLetters, "UTF-8", "UTF-16LE"), Encoding::Utf16Little,
         true},
        {"UTF-16BE, marked", *byIconv("\xEF\xBB\xBF" + kLetters, "UTF-8", "UTF-16BE"), Encoding::Utf16Big,
         true},
        {"UTF-16LE", *byIconv(kLetters, "UTF-8", "UTF-16LE"), Encoding::Utf16Little, false},
        {"UTF-16BE", *byIconv(kLetters, "UTF-8", "UTF-16BE"), Encoding::Utf16Big, false},
    };
    for (const auto& one : cases) {
        const auto text = readFileText(one.bytes);
        EXPECT_EQ(text.encoding, one.encoding) << one.name;
        EXPECT_EQ(text.marked, one.marked) << one.name;
        EXPECT_EQ(text.utf8, kLetters) << one.name;
        EXPECT_EQ(text.unreadable, 0) << one.name;
    }
    const std::string western = "Ó Néill, £45 – “Café” €";
    const auto text = readFileText(*byIconv(western, "UTF-8", "WINDOWS-1252"));
    EXPECT_EQ(text.encoding, Encoding::Windows1252);
    EXPECT_EQ(text.utf8, western);
    EXPECT_EQ(readFileText("plain").encoding, Encoding::Utf8);
    EXPECT_EQ(readFileText("").utf8, "");
}

/// The Unicode Standard, table 3-7: what is not well formed.
TEST(FileText, countsWhatIsNoLetter) {
    for (const std::string bytes :
         {"\xC0\xAF", "\xED\xA0\x80", "\xF5\x80\x80\x80", "\xE2\x82", "\x80", "\xF0\x82\x82\xAC"}) {
        const auto text = readFileText("a" + bytes + "b", Encoding::Utf8);
        EXPECT_GT(text.unreadable, 0) << ::testing::PrintToString(bytes);
        EXPECT_EQ(text.utf8.front(), 'a');
        EXPECT_EQ(text.utf8.back(), 'b');
        EXPECT_FALSE(byIconv(bytes, "UTF-8", "UTF-16LE")) << ::testing::PrintToString(bytes);
    }
    EXPECT_EQ(readFileText(std::string_view("a\0b", 3), Encoding::Utf8).unreadable, 1);
    EXPECT_EQ(readFileText("abc", Encoding::Utf16Little).unreadable, 1) << "half a letter";
    EXPECT_EQ(readFileText(std::string_view("\x00\xD8\x41\x00", 4), Encoding::Utf16Little).unreadable, 1)
        << "half a pair";
}

TEST(FileText, namesItsEncodings) {
    for (const auto encoding :
         {Encoding::Utf8, Encoding::Utf16Little, Encoding::Utf16Big, Encoding::Windows1252}) {
        EXPECT_EQ(encodingFromCode(codeOf(encoding)), encoding);
    }
    EXPECT_EQ(encodingFromCode("ebcdic"), std::nullopt);
}

}  // namespace
}  // namespace hearth::exchange
