// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rulebook/sentence.h"

#include <optional>
#include <utility>

namespace hearth::rulebook {

/// An input that may not have been entered, or entered so that it can't be read. Default is not entered.
template <class T>
struct Given {
    std::optional<T> value;
    bool unreadable = false;

    Given() = default;
    Given(T given)
        : value(std::move(given)) {}  // NOLINT(google-explicit-constructor): a value is a given input
    [[nodiscard]] static Given unusable() {
        Given given;
        given.unreadable = true;
        return given;
    }
    [[nodiscard]] explicit operator bool() const { return value.has_value(); }
    [[nodiscard]] const T& operator*() const { return *value; }
    [[nodiscard]] const T* operator->() const { return &*value; }
    [[nodiscard]] bool isEntered() const { return value.has_value() || unreadable; }
};

/// What to say when one of the inputs can't be used: unreadable before missing; nothing when all are there.
template <class... T>
[[nodiscard]] std::optional<Sentence> absence(const Given<T>&... given) {
    if ((given.unreadable || ...)) {
        return Sentence{Say::ReadingUnusable};
    }
    if (!(given.value.has_value() && ...)) {
        return Sentence{Say::ReadingMissing};
    }
    return std::nullopt;
}

}  // namespace hearth::rulebook
