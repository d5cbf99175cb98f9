// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <string>

namespace hearth::store {

/// What the next new record is numbered from.
struct NextNumber {
    std::string series;  // its letters; empty: they are drawn by lot with the first record
    int number = 1;
    bool operator==(const NextNumber&) const = default;
};

/// The numbers of records. In which form they are written is the firm's (reg::Firm::numberForm, see
/// record::NumberForm); a change holds for the records that are issued from then on, revisions keep their
/// record's number.
class Numbering {
  public:
    Numbering() = default;
    Numbering(const Numbering&) = delete;
    Numbering& operator=(const Numbering&) = delete;
    virtual ~Numbering() = default;

    [[nodiscard]] virtual Result<NextNumber> nextNumber() const = 0;
};

}  // namespace hearth::store
