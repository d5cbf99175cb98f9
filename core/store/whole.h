// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/record/register_rows.h"
#include "core/record/whole.h"
#include "core/store/lines.h"

#include <functional>

namespace hearth::store {

/// The store taken as a whole, for what goes out of it and comes in.
class Whole {
  public:
    Whole() = default;
    Whole(const Whole&) = delete;
    Whole& operator=(const Whole&) = delete;
    virtual ~Whole() = default;

    /// All of the register at one moment.
    [[nodiscard]] virtual Result<record::RegisterRows> registerRows() const = 0;
    /// The whole change log, the oldest line first, one line after the other.
    [[nodiscard]] virtual Result<void> eachChange(const std::function<void(const Change&)>& take) const = 0;

    /// The schema of the file, as createFrom() wants it.
    [[nodiscard]] virtual int schema() const = 0;
    /// Every row of every table that is not derived, at one moment: what createFrom() makes an equal store
    /// of. `take` gives an error to stop it.
    [[nodiscard]] virtual Result<void> readWhole(
        const std::function<Result<void>(const record::WholeTable&)>& begin,
        const std::function<Result<void>(const record::WholeTable&, const record::WholeRow&)>& take)
        const = 0;
};

}  // namespace hearth::store
