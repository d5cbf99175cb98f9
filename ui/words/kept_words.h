// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/checks.h"
#include "core/register/doings.h"
#include "ui/words/words.h"

/// Words for the codes of what the firm keeps beside tests.
namespace hearth::ui::words {

[[nodiscard]] QString yesNo(const Words& words, reg::YesNo value);
[[nodiscard]] QString sendBy(const Words& words, reg::SendBy value);
[[nodiscard]] QString reminderBasis(const Words& words, reg::ReminderBasis value);
[[nodiscard]] QString owner(const Words& words, reg::Owner value);
[[nodiscard]] QString flueType(const Words& words, reg::FlueType value);
[[nodiscard]] QString channel(const Words& words, reg::Channel value);
[[nodiscard]] QString bookingState(const Words& words, reg::BookingState value);
[[nodiscard]] QString danger(const Words& words, reg::Danger value);
/// "Welsh", "English, with Welsh below it": of record::recordLanguages(); another code as it stands.
[[nodiscard]] QString recordLanguage(const Words& words, const std::string& code);
/// What is odd about a number or code as it was typed; empty for no doubt.
[[nodiscard]] QString doubt(const Words& words, const std::optional<reg::Doubt>& value);

}  // namespace hearth::ui::words
