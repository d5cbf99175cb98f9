// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/register/hand_signature.h"

namespace hearth::store {

/// What people sign with their hands, for the next record of a kind that a visit issues. Once that is issued,
/// its revision asks again: VisitFile::signatures holds none for it.
class Hands {
  public:
    Hands() = default;
    Hands(const Hands&) = delete;
    Hands& operator=(const Hands&) = delete;
    virtual ~Hands() = default;

    /// Keeps it in place of what the same signer gave for the same record so far; `id` and `issue` are the
    /// store's. Errors: StrokesUnreadable; NotFound for a visit that is not there.
    [[nodiscard]] virtual Result<void> sign(const reg::HandSignature& signature) = 0;
    /// Takes it away; nothing where there is none.
    [[nodiscard]] virtual Result<void> unsign(reg::VisitId visit, const std::string& recordKind,
                                              reg::Signer signer) = 0;
};

}  // namespace hearth::store
