// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/error_code.h"

#include <string>
#include <tl/expected.hpp>
#include <utility>
#include <vector>

namespace hearth {

/// An expected failure: what went wrong as a code, with the particulars that the sentence in ui/words needs
/// (a path, a version, a field's code), in the order that the code's comment in error_code.h gives. No prose.
struct Error {
    ErrorCode code;
    std::vector<std::string> details = {};

    bool operator==(const Error&) const = default;
};

/// Value or Error. A function whose failure a person must hear of returns this; "nothing there" is
/// std::optional; a bug is an assert.
template <class T>
using Result = tl::expected<T, Error>;

/// `return fail(ErrorCode::StoreLocked, {path});`
[[nodiscard]] inline tl::unexpected<Error> fail(ErrorCode code, std::vector<std::string> details = {}) {
    return tl::unexpected<Error>(Error{code, std::move(details)});
}

}  // namespace hearth
