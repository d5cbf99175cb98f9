// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

/// Text from files of unknown origin, as UTF-8.
namespace hearth::exchange {

enum class Encoding { Utf8, Utf16Little, Utf16Big, Windows1252 };

struct FileText {
    std::string utf8;
    Encoding encoding = Encoding::Utf8;
    bool marked = false;  // the file said so itself, by a byte order mark
    int unreadable = 0;   // places that are no letter in that encoding: U+FFFD stands there
};

/// Reads bytes as text. Unless `encoding` says otherwise: by the byte order mark; else UTF-16 where zeros
/// stand on every other place of the beginning only; else UTF-8 where all of it is good UTF-8; else
/// Windows-1252, which is what older spreadsheets write in Britain. A NUL is no letter. Sources: The Unicode
/// Standard, section 23.8 (byte order mark) and table 3-7 (well-formed UTF-8); WHATWG Encoding Standard,
/// index windows-1252. Checked: file_text_test.cpp.
[[nodiscard]] FileText readFileText(std::string_view bytes, std::optional<Encoding> encoding = std::nullopt);

/// "utf-8", "utf-16le", "utf-16be", "windows-1252": the names of the IANA list; and back.
[[nodiscard]] std::string_view codeOf(Encoding encoding);
[[nodiscard]] std::optional<Encoding> encodingFromCode(std::string_view code);

/// Appends a code point as UTF-8; what is no scalar value becomes U+FFFD.
void appendUtf8(std::string& to, char32_t letter);
/// The code point at `at`, which moves on; U+FFFD and one byte on where it is not well formed.
[[nodiscard]] char32_t takeUtf8(std::string_view text, std::size_t& at);

}  // namespace hearth::exchange
