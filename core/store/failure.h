// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <exception>
#include <type_traits>
#include <utility>

namespace hearth::store {

/// An expected failure on its way out of this folder. Inside, every statement that fails throws one, so that
/// a transaction can't go on after it; guarded() turns it into the Result that the folder's callers see. It
/// never leaves the folder.
class Failure : public std::exception {
  public:
    explicit Failure(Error error) : m_error(std::move(error)) {}
    Failure(ErrorCode code, std::vector<std::string> details) : m_error{code, std::move(details)} {}
    [[nodiscard]] const char* what() const noexcept override { return "store failure"; }
    [[nodiscard]] const Error& error() const { return m_error; }

  private:
    Error m_error;
};

/// Runs `work` at the border of this folder.
template <class Work>
[[nodiscard]] auto guarded(Work work) -> Result<std::invoke_result_t<Work>> {
    try {
        if constexpr (std::is_void_v<std::invoke_result_t<Work>>) {
            work();
            return {};
        } else {
            return work();
        }
    } catch (const Failure& failure) {
        return tl::unexpected<Error>(failure.error());
    }
}

/// The value of a Result from below, or its error thrown on.
template <class Value>
Value valueOrThrow(Result<Value> result) {
    if (!result) {
        throw Failure(result.error());
    }
    if constexpr (!std::is_void_v<Value>) {
        return std::move(*result);
    }
}

}  // namespace hearth::store
