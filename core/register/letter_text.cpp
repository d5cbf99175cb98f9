// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/letter_text.h"

#include "core/base/blanks.h"

#include <algorithm>

namespace hearth::reg {
namespace {

constexpr std::array<std::string_view, 3> kLetterCodes{"reminder", "no_access", "covering"};
constexpr std::array<std::string_view, 10> kPlaceholderCodes{"customer", "premises",    "due",  "attempted",
                                                             "worked",   "today",       "firm", "telephone",
                                                             "email",    "registration"};

bool canUse(LetterKind kind, Placeholder placeholder) {
    switch (placeholder) {
        case Placeholder::DateDue:
            return kind != LetterKind::Covering;
        case Placeholder::Attempted:
            return kind == LetterKind::NoAccess;
        case Placeholder::Worked:
            return kind == LetterKind::Covering;
        default:
            return true;
    }
}

std::optional<Placeholder> usable(LetterKind kind, std::string_view name) {
    for (const auto placeholder : placeholdersOf(kind)) {
        if (codeOf(placeholder) == name) {
            return placeholder;
        }
    }
    return std::nullopt;
}

/// A few words of where a brace stands alone, to find it by; whole letters of UTF-8 only.
std::string around(std::string_view from) {
    constexpr std::size_t kShown = 20;
    std::size_t end = std::min({from.find('\n'), from.size(), kShown});
    while (end < from.size() && (static_cast<unsigned char>(from[end]) & 0xC0U) == 0x80U) {
        ++end;
    }
    return std::string(from.substr(0, end));
}

/// Goes through the text: `plain` gets what stands between placeholders, `filled` gets each of those.
template <class Plain, class Filled>
Result<void> walk(LetterKind kind, std::string_view text, Plain plain, Filled filled) {
    while (!text.empty()) {
        const std::size_t brace = std::min(text.find_first_of("{}"), text.size());
        plain(text.substr(0, brace));
        text.remove_prefix(brace);
        if (text.empty()) {
            break;
        }
        const std::size_t end = text.find_first_of("{}\n", 1);
        if (text.front() == '}' || end == std::string_view::npos || text[end] != '}') {
            return fail(ErrorCode::PlaceholderOpen, {around(text)});
        }
        const std::string_view name = withoutOuterBlanks(text.substr(1, end - 1));
        const auto placeholder = usable(kind, name);
        if (!placeholder) {
            return fail(ErrorCode::PlaceholderUnknown, {std::string(name)});
        }
        if (Result<void> done = filled(*placeholder); !done) {
            return done;
        }
        text.remove_prefix(end + 1);
    }
    return {};
}

}  // namespace

std::string_view codeOf(LetterKind kind) {
    return kLetterCodes.at(static_cast<std::size_t>(kind));
}

std::optional<LetterKind> letterKindFromCode(std::string_view code) {
    for (const auto kind : kLetterKinds) {
        if (codeOf(kind) == code) {
            return kind;
        }
    }
    return std::nullopt;
}

std::string_view codeOf(Placeholder placeholder) {
    return kPlaceholderCodes.at(static_cast<std::size_t>(placeholder));
}

std::vector<Placeholder> placeholdersOf(LetterKind kind) {
    std::vector<Placeholder> usableOnes;
    for (std::size_t i = 0; i < kPlaceholderCodes.size(); ++i) {
        if (const auto placeholder = static_cast<Placeholder>(i); canUse(kind, placeholder)) {
            usableOnes.push_back(placeholder);
        }
    }
    return usableOnes;
}

Result<void> checkLetter(LetterKind kind, std::string_view text) {
    return walk(
        kind, text, [](std::string_view) {}, [](Placeholder) { return Result<void>(); });
}

Result<std::string> fillLetter(LetterKind kind, std::string_view text, const LetterValues& values) {
    std::string letter;
    const auto done = walk(
        kind, text, [&](std::string_view plain) { letter += plain; },
        [&](Placeholder placeholder) -> Result<void> {
            const auto value = values.find(placeholder);
            if (value == values.end() || withoutOuterBlanks(value->second).empty()) {
                return fail(ErrorCode::LetterLacks, {std::string(codeOf(placeholder))});
            }
            letter += value->second;
            return {};
        });
    if (!done) {
        return tl::unexpected<Error>(done.error());
    }
    return letter;
}

}  // namespace hearth::reg
