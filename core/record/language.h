// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/kind.h"

#include <span>
#include <string>
#include <string_view>

/// The languages that a record can be issued in: one, or English with a second beside it.
namespace hearth::record {

/// "en", "cy", "pl", "en+cy", "en+pl".
[[nodiscard]] std::span<const std::string_view> recordLanguages();
[[nodiscard]] bool isRecordLanguage(std::string_view code);
/// "en" of "en+cy", "pl" of "pl": the document's language.
[[nodiscard]] std::string mainLanguage(std::string_view code);
/// "cy" of "en+cy"; empty where there is no second.
[[nodiscard]] std::string languageBeside(std::string_view code);

/// The language that a record of a visit is issued in unless somebody chooses another: what whoever receives
/// it prefers, else the firm's; an entry that the firm makes for itself is in the firm's. A code that no
/// record can be issued in (from a newer program) does not count.
[[nodiscard]] std::string languageFor(RecordKind kind, const reg::VisitFile& file);

}  // namespace hearth::record
