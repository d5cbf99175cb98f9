// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <string>
#include <string_view>

/// How a record's number is written. The firm chooses what stands before the series' letters and how many
/// digits there are at least; letters, hyphen and number stand in every form, and last, so that no two
/// records of whatever form and series are ever written alike.
namespace hearth::record {

struct NumberForm {
    static constexpr std::size_t kMostPrefix = 8;
    static constexpr int kLeastDigits = 4;
    static constexpr int kMostDigits = 8;
    static constexpr int kUsualDigits = 6;

    std::string prefix;         // capital letters, numerals, hyphens and points
    int digits = kUsualDigits;  // filled with zeros; a greater number takes more
    bool operator==(const NumberForm&) const = default;
};

/// Reads "HL-{series}-{number:5}"; empty: the program's own form. Error: NumberFormUnusable.
[[nodiscard]] Result<NumberForm> numberFormFrom(std::string_view text);
/// The text that is kept; empty for the program's own form, and for nothing else. Not checked: see
/// numberFormFrom().
[[nodiscard]] std::string numberFormText(const NumberForm& form);

/// "BCD-000017", "HL-BCD-00017".
[[nodiscard]] std::string recordNumber(const NumberForm& form, const std::string& series, int number);

}  // namespace hearth::record
