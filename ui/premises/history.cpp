// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/premises/history.h"

#include "ui/shell/change_words.h"
#include "ui/shell/kit.h"

#include <algorithm>
#include <array>

namespace hearth::ui::premises {

namespace {

/// A unit that came with its number says nothing by itself.
bool isWorthALine(const store::Change& change) {
    const std::string_view field = change.field;
    constexpr std::string_view kUnit = "_unit";
    const bool isUnit = field.size() > kUnit.size() && field.substr(field.size() - kUnit.size()) == kUnit;
    // What the row is of, and what only the program needs.
    constexpr std::array<std::string_view, 16> kSilent{
        "id",  "premises",   "installation", "party",    "visit",  "situation",  "owner", "owner_table",
        "row", "table_name", "position",     "sequence", "digest", "media_type", "size",  "added_at"};
    const bool isSilent = std::find(kSilent.begin(), kSilent.end(), field) != kSilent.end();
    return !isUnit && !isSilent && change.before.value_or("") != change.after.value_or("");
}

void append(std::vector<store::Change>& all, const Result<std::vector<store::Change>>& more) {
    if (more) {
        std::copy_if(more->begin(), more->end(), std::back_inserter(all), isWorthALine);
    }
}

}  // namespace

std::vector<shell::Line> historyOf(const reg::Premises& premises, const shell::Context& context) {
    // So much that nobody reads to the end; the store keeps the rest.
    constexpr int kMost = 500;
    std::vector<store::Change> changes;
    if (const auto page = context.store.changesOfPremises(premises.id, kMost)) {
        append(changes, Result<std::vector<store::Change>>(page->lines));
    }
    if (const auto holders = context.store.holders(premises.id)) {
        for (const auto& holder : *holders) {
            append(changes, context.store.changes("parties", holder.party.id.text()));
        }
    }
    // Their keys sort in the order in which they were made, within one millisecond too.
    std::sort(changes.begin(), changes.end(),
              [](const store::Change& a, const store::Change& b) { return a.id > b.id; });
    std::vector<shell::Line> lines;
    for (const auto& change : changes) {
        shell::Line line;
        line.title = shell::changeSentence(context.words, change);
        line.right = shell::dayOf(context.words, change.at);
        line.detail = words::qstring(change.by);
        line.rightDetail = words::qstring(wallTimeText(change.at));
        lines.push_back(std::move(line));
    }
    return lines;
}

}  // namespace hearth::ui::premises
