// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/number_form.h"

#include "core/record/snapshot.h"

#include <algorithm>

namespace hearth::record {
namespace {

constexpr std::string_view kSeriesPart = "{series}-{number:";

bool mayStandInPrefix(char c) {
    return (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-' || c == '.';
}

}  // namespace

Result<NumberForm> numberFormFrom(std::string_view text) {
    if (text.empty()) {
        return NumberForm{};
    }
    const auto refused = [&] { return fail(ErrorCode::NumberFormUnusable, {std::string(text)}); };
    const std::size_t at = text.find(kSeriesPart);
    if (at == std::string_view::npos) {
        return refused();
    }
    const std::string_view prefix = text.substr(0, at);
    const std::string_view end = text.substr(at + kSeriesPart.size());
    const bool fits = prefix.size() <= NumberForm::kMostPrefix &&
                      std::all_of(prefix.begin(), prefix.end(), mayStandInPrefix) && end.size() == 2 &&
                      end[1] == '}' && end[0] >= '0' + NumberForm::kLeastDigits &&
                      end[0] <= '0' + NumberForm::kMostDigits;
    if (!fits) {
        return refused();
    }
    return NumberForm{std::string(prefix), end[0] - '0'};
}

std::string numberFormText(const NumberForm& form) {
    return form == NumberForm{} ? std::string()
                                : form.prefix + std::string(kSeriesPart) + std::to_string(form.digits) + "}";
}

std::string recordNumber(const NumberForm& form, const std::string& series, int number) {
    const std::string digits = std::to_string(number);
    const auto least = static_cast<std::size_t>(std::max(form.digits, 0));
    const std::size_t zeros = digits.size() < least ? least - digits.size() : 0;
    return form.prefix + series + "-" + std::string(zeros, '0') + digits;
}

std::string recordNumber(const std::string& series, int number) {
    return recordNumber(NumberForm{}, series, number);
}

}  // namespace hearth::record
