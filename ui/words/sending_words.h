// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/difference.h"
#include "core/record/sending.h"
#include "ui/words/words.h"

/// What goes with a record when it is sent, and how sendings and revisions are told.
namespace hearth::ui::words {

struct SendingText {
    QString subject;
    QString text;
};
/// What a mail says beside the PDF. In the record's language where `words` speak it.
[[nodiscard]] SendingText mailText(const Words& words, const record::Document& document,
                                   const QString& address);
/// The wording of a text message.
[[nodiscard]] QString textMessage(const Words& words, const record::Document& document,
                                  const QString& address);

/// "by mail".
[[nodiscard]] QString sentBy(const Words& words, record::SentBy by);
/// "25 November 2026: by mail, to m@harrow.example (R. Ashdown)".
[[nodiscard]] QString sendingLine(const Words& words, const record::Sending& sending);
/// "m@harrow.example: by mail, 25 November 2026".
[[nodiscard]] QString holderLine(const Words& words, const record::CopyHolder& holder);
/// "Meter · Serial: E0001 → E0002".
[[nodiscard]] QString differenceLine(const Words& words, const record::Difference& difference);

}  // namespace hearth::ui::words
