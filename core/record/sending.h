// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// How a record left the house, and who therefore holds a copy.
namespace hearth::record {

enum class SentBy { File, Mail, Printed, PrintedCopy, Shown, TextMessage };

/// What files hold.
[[nodiscard]] std::string_view sentByCode(SentBy by);
/// Also what earlier programs wrote.
[[nodiscard]] std::optional<SentBy> sentByFromCode(std::string_view code);

struct Sending {
    SentBy how = SentBy::File;
    std::string to;      // name, address or telephone number, as it was said; empty: it was not
    std::string detail;  // the file, the wording
    std::string by;      // who sent it
    Instant at{};
    bool operator==(const Sending&) const = default;
};

/// Somebody who was given a record that no longer counts, and by which way last.
struct CopyHolder {
    std::string to;
    SentBy how = SentBy::File;
    Instant at{};
    bool operator==(const CopyHolder&) const = default;
};

/// Who was given an earlier revision and not yet this one, each once, in the order in which they were given
/// it. A message is no copy; whom nobody named can't be told.
[[nodiscard]] std::vector<CopyHolder> holdersToTell(const std::vector<Sending>& earlier,
                                                    const std::vector<Sending>& ofThisOne);

}  // namespace hearth::record
