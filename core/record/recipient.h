// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/kind.h"

#include <optional>
#include <string>

namespace hearth::record {

/// To whom a letter goes, and where.
struct Recipient {
    std::string name;
    reg::Address address;
    bool operator==(const Recipient&) const = default;
};

/// A reminder goes to the landlord or the agent, a letter after no access to whoever lives there and can let
/// us in, a covering letter to the customer; where there is none such, to the next who has an address. Who
/// lives at the premises has theirs. Nothing: nobody can be written to.
/// Source: common practice, no source. Checked: tests/core/record/recipient_test.cpp.
[[nodiscard]] std::optional<Recipient> recipientOf(RecordKind kind, const reg::VisitFile& file);

/// Who reads it: of a letter its recipient, of a record the customer, else whoever stands for them. Null:
/// nobody is named.
[[nodiscard]] const reg::Party* receiverOf(RecordKind kind, const reg::VisitFile& file);

}  // namespace hearth::record
