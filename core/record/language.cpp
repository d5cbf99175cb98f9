// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/language.h"

#include "core/record/recipient.h"

#include <algorithm>
#include <array>

namespace hearth::record {
namespace {

constexpr std::array<std::string_view, 5> kRecordLanguages{"en", "cy", "pl", "en+cy", "en+pl"};

/// Nobody but the firm, or an authority, reads it.
bool isForTheFirm(RecordKind kind) {
    return kind == RecordKind::ReportableEntry || kind == RecordKind::CalibrationLog ||
           kind == RecordKind::BuildingNotice;
}

}  // namespace

std::span<const std::string_view> recordLanguages() {
    return kRecordLanguages;
}

bool isRecordLanguage(std::string_view code) {
    return std::find(kRecordLanguages.begin(), kRecordLanguages.end(), code) != kRecordLanguages.end();
}

std::string mainLanguage(std::string_view code) {
    return std::string(code.substr(0, code.find('+')));
}

std::string languageBeside(std::string_view code) {
    const auto at = code.find('+');
    return at == std::string_view::npos ? std::string() : std::string(code.substr(at + 1));
}

std::string languageFor(RecordKind kind, const reg::VisitFile& file) {
    if (!isForTheFirm(kind)) {
        const auto* receiver = receiverOf(kind, file);
        if (receiver != nullptr && isRecordLanguage(receiver->language)) {
            return receiver->language;
        }
    }
    return isRecordLanguage(file.firm.language) ? file.firm.language : std::string("en");
}

}  // namespace hearth::record
