// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/record/document.h"
#include "core/record/public_key.h"
#include "core/register/model.h"
#include "ui/words/words.h"

#include <optional>
#include <vector>

/// The firm's key in words, and as a page to hand out.
namespace hearth::ui::words {

struct ShownKey {
    record::PublicKey publicKey{};
    Instant from{};
    std::optional<Instant> until;  // nothing: the one in use
    int signatures = 0;
};

struct SigningStanding {
    bool hasKey = false;
    bool isOpen = false;
    int waiting = 0;
};
/// How it stands with signing, in a sentence or two.
[[nodiscard]] QString signingState(const Words& words, const SigningStanding& standing);
/// One line a key: since when, until when, how many records, its fingerprint.
[[nodiscard]] QStringList keyLines(const Words& words, const std::vector<ShownKey>& keys);
/// The public keys as a page for customers, with how to check a record without this program.
[[nodiscard]] record::Document keyDocument(const Words& words, const reg::Firm& firm,
                                           const std::vector<ShownKey>& keys, calendar::Date today);
/// The command that checks a PDF by its signature and the public key, with `openssl`.
[[nodiscard]] QString checkCommand();

}  // namespace hearth::ui::words
