// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/blanks.h"
#include "core/base/digits.h"
#include "core/register/model.h"

#include <array>
#include <cstddef>
#include <vector>

namespace hearth::reg {

namespace {

Result<std::string> canonicalNumber(const std::string& text) {
    const auto value = quantity::Decimal::parse(text);
    if (!value) {
        return tl::unexpected(value.error());
    }
    return value->text();
}

Result<std::string> canonicalChoice(Item item, const std::string& text) {
    for (const auto& choice : infoOf(item).choices) {
        if (choice.code == text) {
            return text;
        }
    }
    return fail(ErrorCode::ChoiceUnknown, {text});
}

/// The groups of digits of "9:46", "09.46" or "09:46:10"; "0946" is split after its hours. Empty when it is
/// neither.
std::vector<std::string> timeParts(std::string_view text) {
    std::vector<std::string> parts(1);
    for (const char c : text) {
        if (isDigit(c)) {
            parts.back() += c;
        } else if (c == ':' || c == '.') {
            parts.emplace_back();
        } else {
            return {};
        }
    }
    if (parts.size() == 1 && (parts[0].size() == 3 || parts[0].size() == 4)) {
        const std::string digits = parts[0];
        const std::size_t hours = digits.size() - 2;
        parts = {digits.substr(0, hours), digits.substr(hours)};
    }
    return parts;
}

Result<std::string> canonicalTime(const std::string& text) {
    const auto parts = timeParts(withoutOuterBlanks(text));
    if (parts.size() != 2 && parts.size() != 3) {
        return fail(ErrorCode::TimeUnreadable, {text});
    }
    constexpr std::array kMost{23, 59, 59};
    std::string canonical;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const std::string& part = parts[i];
        const bool lengthFits = part.size() == 2 || (i == 0 && part.size() == 1);
        if (!lengthFits || std::stoi(part) > kMost.at(i)) {
            return fail(ErrorCode::TimeUnreadable, {text});
        }
        canonical += (i == 0 ? "" : ":") + std::string(2 - part.size(), '0') + part;
    }
    return canonical;
}

/// Only the form of files: what depends on today ("25/11", "+3") is settled by the editor before it is kept.
Result<std::string> canonicalDate(const std::string& text) {
    const auto date = calendar::fromIso(withoutOuterBlanks(text));
    if (!date) {
        return fail(ErrorCode::DateUnreadable, {text});
    }
    return calendar::isoText(*date);
}

Result<std::string> canonicalInstrument(const std::string& text) {
    const auto id = uuidFromText(withoutOuterBlanks(text));
    if (!id) {
        return fail(ErrorCode::ChoiceUnknown, {text});
    }
    return uuidText(*id);
}

}  // namespace

Result<std::string> canonicalOf(Item item, const std::string& text) {
    switch (infoOf(item).kind) {
        case ItemKind::Number:
            return canonicalNumber(text);
        case ItemKind::Choice:
        case ItemKind::YesNo:
            return canonicalChoice(item, text);
        case ItemKind::Time:
            return canonicalTime(text);
        case ItemKind::Date:
            return canonicalDate(text);
        case ItemKind::Instrument:
            return canonicalInstrument(text);
        case ItemKind::Text:
        case ItemKind::LongText:
            break;
    }
    return std::string(withoutOuterBlanks(text));
}

}  // namespace hearth::reg
