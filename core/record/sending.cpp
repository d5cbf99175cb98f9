// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/sending.h"

#include <algorithm>
#include <array>
#include <utility>

namespace hearth::record {
namespace {

struct SentRow {
    SentBy by;
    std::string_view code;
};
constexpr std::array kSent{
    SentRow{SentBy::File, "saved_pdf"},    SentRow{SentBy::Mail, "mailed"},
    SentRow{SentBy::Printed, "printed"},   SentRow{SentBy::PrintedCopy, "printed_copy"},
    SentRow{SentBy::Shown, "shown"},       SentRow{SentBy::TextMessage, "text_message"},
    SentRow{SentBy::File, "saved as PDF"},  // by the command line, before codes were one
};

/// As far as telling people apart goes: capitals don't.
std::string folded(const std::string& to) {
    std::string text = to;
    std::transform(text.begin(), text.end(), text.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    return text;
}

bool isCopy(const Sending& sending) {
    return !sending.to.empty() && sending.how != SentBy::TextMessage && sending.how != SentBy::Shown;
}

}  // namespace

std::string_view sentByCode(SentBy by) {
    return std::find_if(kSent.begin(), kSent.end(), [by](const SentRow& row) { return row.by == by; })->code;
}

std::optional<SentBy> sentByFromCode(std::string_view code) {
    const auto* row =
        std::find_if(kSent.begin(), kSent.end(), [code](const SentRow& one) { return one.code == code; });
    return row == kSent.end() ? std::nullopt : std::optional<SentBy>(row->by);
}

std::vector<CopyHolder> holdersToTell(const std::vector<Sending>& earlier,
                                      const std::vector<Sending>& ofThisOne) {
    std::vector<CopyHolder> holders;
    for (const auto& sending : earlier) {
        const auto same = [&](const auto& other) { return folded(other.to) == folded(sending.to); };
        const bool hasIt = std::any_of(ofThisOne.begin(), ofThisOne.end(),
                                       [&](const Sending& other) { return isCopy(other) && same(other); });
        if (!isCopy(sending) || hasIt) {
            continue;
        }
        const auto known = std::find_if(holders.begin(), holders.end(), same);
        if (known == holders.end()) {
            holders.push_back({sending.to, sending.how, sending.at});
        } else {
            *known = {known->to, sending.how, sending.at};
        }
    }
    return holders;
}

}  // namespace hearth::record
