// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QString>

#include <optional>

/// What is sent to a gauge that answers only when it is asked, as a person types it: \r and \n end a line, \t
/// is a tab, \xHH any byte, \\ a backslash; all else stands for itself.
namespace hearth::ui::gauge {

inline constexpr int kLongestAsk = 200;  // bytes
inline constexpr int kSoonestAsk = 50;   // ms: twenty a second are as many as are kept
inline constexpr int kLatestAsk = 60000;

/// The bytes; empty for an empty text. Nothing for a backslash that begins none of these, or too many bytes.
[[nodiscard]] std::optional<QByteArray> askBytes(const QString& text);
/// The bytes as text that gives them again: what can't be seen is written out.
[[nodiscard]] QString askText(const QByteArray& bytes);

}  // namespace hearth::ui::gauge
