// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gauge/ask_line.h"

#include <cctype>

namespace hearth::ui::gauge {

namespace {

constexpr int kHex = 16;

/// The byte that stands at `at`, which is moved behind it.
std::optional<char> escaped(const QByteArray& text, qsizetype& at) {
    switch (at < text.size() ? text[at++] : '\0') {
        case 'r':
            return '\r';
        case 'n':
            return '\n';
        case 't':
            return '\t';
        case '\\':
            return '\\';
        case 'x': {
            const auto digits = text.mid(at, 2);
            bool isByte = false;
            const int value = digits.toInt(&isByte, kHex);
            at += 2;
            // toInt() takes signs and blanks too.
            const bool isHex = digits.size() == 2 &&
                               std::isxdigit(static_cast<unsigned char>(digits[0])) != 0 &&
                               std::isxdigit(static_cast<unsigned char>(digits[1])) != 0;
            return isByte && isHex ? std::optional(static_cast<char>(value)) : std::nullopt;
        }
        default:
            return std::nullopt;
    }
}

}  // namespace

std::optional<QByteArray> askBytes(const QString& text) {
    const QByteArray typed = text.toUtf8();
    QByteArray bytes;
    for (qsizetype at = 0; at < typed.size();) {
        const char one = typed[at++];
        const auto byte = one == '\\' ? escaped(typed, at) : std::optional(one);
        if (!byte || bytes.size() == kLongestAsk) {
            return std::nullopt;
        }
        bytes += *byte;
    }
    return bytes;
}

QString askText(const QByteArray& bytes) {
    QByteArray text;
    for (const char one : bytes) {
        const auto byte = static_cast<unsigned char>(one);
        if (one == '\r') {
            text += "\\r";
        } else if (one == '\n') {
            text += "\\n";
        } else if (one == '\t') {
            text += "\\t";
        } else if (one == '\\') {
            text += "\\\\";
        } else if (byte < 0x20 || byte >= 0x7f) {
            text += "\\x" + QByteArray::number(byte, kHex).rightJustified(2, '0');
        } else {
            text += one;
        }
    }
    return QString::fromLatin1(text);
}

}  // namespace hearth::ui::gauge
