// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/row_json.h"
#include "core/store/privacy.h"

namespace hearth::store {
namespace {

using nlohmann::json;

template <class Values, class Make>
json listOf(const Values& values, Make make) {
    json list = json::array();
    for (const auto& value : values) {
        list.push_back(make(value));
    }
    return list;
}

json roleJson(const RoleLine& line) {
    auto role = record::rowJson(line.role);
    role["address"] = {{"line1", line.address.line1},
                       {"line2", line.address.line2},
                       {"town", line.address.town},
                       {"postcode", line.address.postcode}};
    return role;
}

json recordJson(const RecordLine& line) {
    return {{"number", line.header.record},
            {"revision", std::to_string(line.header.revision)},
            {"kind", line.header.kind},
            {"issued_at", line.header.issuedAt},
            {"address", line.address}};
}

json changeJson(const Change& change) {
    const auto optional = [](const std::optional<std::string>& text) {
        return text ? json(*text) : json(nullptr);
    };
    return {{"field", change.field},
            {"before", optional(change.before)},
            {"after", optional(change.after)},
            {"at", instantText(change.at)}};
}

}  // namespace

std::string personJson(const PersonFile& file) {
    constexpr int kIndent = 2;
    const json whole{
        {"format", "hearthledger-person"},
        {"version", "1"},
        {"made_at", instantText(file.madeAt)},
        {"person", record::rowJson(file.party)},
        {"roles", listOf(file.roles, roleJson)},
        {"letters", listOf(file.letters, [](const reg::Letter& letter) { return record::rowJson(letter); })},
        {"records", listOf(file.records, recordJson)},
        {"attachments",
         listOf(file.attachments, [](const reg::Attachment& kept) { return record::rowJson(kept); })},
        {"changes", listOf(file.changes, changeJson)},
    };
    return whole.dump(kIndent, ' ', false, json::error_handler_t::replace);
}

}  // namespace hearth::store
