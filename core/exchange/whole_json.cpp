// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/whole_json.h"

#include "core/exchange/json_node.h"

#include <algorithm>
#include <optional>
#include <set>
#include <sodium.h>
#include <utility>
#include <vector>

namespace hearth::exchange {
namespace {

using nlohmann::json;
using record::WholeBytes;
using record::WholeCell;
using record::WholeRow;
using record::WholeTable;
using record::WholeType;

std::string base64Of(const std::string& bytes) {
    constexpr int kVariant = sodium_base64_VARIANT_ORIGINAL;
    std::string text(sodium_base64_ENCODED_LEN(bytes.size(), kVariant), '\0');
    const std::vector<unsigned char> raw(bytes.begin(), bytes.end());
    sodium_bin2base64(text.data(), text.size(), raw.data(), raw.size(), kVariant);
    text.pop_back();  // the closing NUL
    return text;
}

std::optional<std::string> fromBase64(const std::string& text) {
    std::vector<unsigned char> raw(text.size() / 4 * 3 + 3);
    std::size_t length = 0;
    if (sodium_base642bin(raw.data(), raw.size(), text.data(), text.size(), nullptr, &length, nullptr,
                          sodium_base64_VARIANT_ORIGINAL) != 0) {
        return std::nullopt;
    }
    return std::string(raw.begin(), raw.begin() + static_cast<std::ptrdiff_t>(length));
}

json jsonOfCell(const WholeCell& cell, WholeType type) {
    if (const auto* number = std::get_if<std::int64_t>(&cell)) {
        return *number;
    }
    if (const auto* text = std::get_if<std::string>(&cell)) {
        return *text;
    }
    if (const auto* id = std::get_if<UuidBytes>(&cell)) {
        return uuidText(*id);
    }
    if (const auto* bytes = std::get_if<WholeBytes>(&cell)) {
        return type == WholeType::TextBytes ? bytes->bytes : base64Of(bytes->bytes);
    }
    return nullptr;
}

/// One member as it goes into the store; refuses the node for what it can't be.
WholeCell cellOfJson(const JsonNode& node, const json& value, const record::WholeColumn& column) {
    if (value.is_null()) {
        return column.nullable ? WholeCell() : (node.refuse("wrong_type"), WholeCell());
    }
    if (column.type == WholeType::Integer) {
        if (!value.is_number_integer() ||
            (value.is_number_unsigned() && value.get<std::uint64_t>() > INT64_MAX)) {
            node.refuse("wrong_type");
        }
        return value.get<std::int64_t>();
    }
    const std::string text = node.text();
    switch (column.type) {
        case WholeType::Uuid: {
            const auto id = uuidFromText(text);
            return id ? WholeCell(*id) : (node.refuse("unreadable"), WholeCell());
        }
        case WholeType::Bytes: {
            auto bytes = fromBase64(text);
            return bytes ? WholeCell(WholeBytes{std::move(*bytes)})
                         : (node.refuse("unreadable"), WholeCell());
        }
        case WholeType::TextBytes:
            return WholeBytes{text};
        default:
            return text;
    }
}

/// A refusal of the sink on its way through the parser.
struct SinkRefused {
    Error error;
};

/// Takes the parser's events: the head's members, then each row as soon as it is whole.
class WholeReader {
  public:
    WholeReader(record::WholeSink& sink, std::string name) : m_sink(sink), m_name(std::move(name)) {}

    /// Whether the parser is to keep what it has just read.
    bool take(int depth, json::parse_event_t event, json& value) {
        using Event = json::parse_event_t;
        if (event == Event::key) {
            key(depth, value.get<std::string>());
            return true;
        }
        const bool isRow = depth == kRowDepth && !m_table.empty();
        if (event == Event::object_end && isRow) {
            row(value);
            return false;
        }
        if (event == Event::value && depth <= kRowDepth) {
            lone(depth, value);
        }
        if ((event == Event::array_start || event == Event::object_start) && depth < kRowDepth) {
            shape(depth, event == Event::object_start);
        }
        return true;
    }

    void finish() const {
        if (!m_begun) {
            throw NodeFault{"tables", "missing"};
        }
    }

  private:
    static constexpr int kRowDepth = 3;

    void key(int depth, const std::string& name) {
        if (depth == 1) {
            m_member = name;
            m_table.clear();
        } else if (depth == 2 && m_member == "tables") {
            begin();
            m_table = name;
            m_rows = 0;
            m_known = std::find_if(m_tables.begin(), m_tables.end(),
                                   [&](const WholeTable& table) { return table.name == name; });
            if (m_known == m_tables.end()) {
                throw NodeFault{"tables." + name, "unknown"};
            }
            if (!m_seen.insert(name).second) {
                throw NodeFault{"tables." + name, "twice"};
            }
        }
    }

    /// A value that is no row: a member of the head, or something out of place.
    void lone(int depth, const json& value) {
        const JsonNode node(value, depth == 1 ? m_member : "tables." + m_table);
        if (depth != 1) {
            node.refuse("wrong_type");
        }
        if (m_member == "format") {
            m_isOurs = node.text() == kWholeFormat;
        } else if (m_member == "version") {
            m_version = node.integer();
        } else if (m_member == "schema") {
            m_schema = node.integer();
        } else if (m_member == "program" || m_member == "written_at") {
            static_cast<void>(node.text());
        } else {
            node.refuse(m_member == "tables" ? "wrong_type" : "unknown");
        }
    }

    /// The whole is an object, so is "tables", and each table is a list.
    void shape(int depth, bool isObject) const {
        const bool right = depth == 0 ? isObject : depth == 1 ? isObject && m_member == "tables" : !isObject;
        if (!right) {
            throw NodeFault{depth == 0   ? std::string("/")
                            : depth == 1 ? m_member
                                         : "tables." + m_table,
                            depth == 1 && m_member != "tables" ? "unknown" : "wrong_type"};
        }
    }

    void begin() {
        if (m_begun) {
            return;
        }
        if (!m_isOurs || !*m_isOurs) {
            throw NodeFault{"format", m_isOurs ? "unknown" : "missing"};
        }
        if (!m_version || !m_schema) {
            throw NodeFault{m_version ? "schema" : "version", "missing"};
        }
        if (*m_version > kWholeVersion) {
            throw SinkRefused{{ErrorCode::ExportNewer,
                               {m_name, std::to_string(*m_version), std::to_string(kWholeVersion)}}};
        }
        if (*m_version < 1) {
            throw NodeFault{"version", "unknown"};
        }
        auto tables = m_sink.begin(*m_schema);
        if (!tables) {
            throw SinkRefused{tables.error()};
        }
        m_tables = std::move(*tables);
        m_begun = true;
    }

    void row(const json& value) {
        const JsonNode node(value, "tables." + m_table + '[' + std::to_string(m_rows++) + ']');
        WholeRow cells;
        for (const auto& column : m_known->columns) {
            const auto found = value.find(column.name);
            if (found == value.end()) {
                throw NodeFault{node.where() + '.' + column.name, "missing"};
            }
            cells.push_back(cellOfJson(node.at(column.name.c_str()), *found, column));
        }
        for (const auto& item : value.items()) {
            const std::string& member = item.key();
            const bool known = std::any_of(m_known->columns.begin(), m_known->columns.end(),
                                           [&](const auto& column) { return column.name == member; });
            if (!known) {
                throw NodeFault{node.where() + '.' + member, "unknown"};
            }
        }
        if (auto taken = m_sink.take(*m_known, cells); !taken) {
            throw SinkRefused{taken.error()};
        }
    }

    record::WholeSink& m_sink;
    std::string m_name;
    std::string m_member;  // of the whole
    std::string m_table;
    std::vector<WholeTable> m_tables;
    std::vector<WholeTable>::const_iterator m_known;
    std::set<std::string> m_seen;
    std::size_t m_rows = 0;
    bool m_begun = false;
    std::optional<bool> m_isOurs;
    std::optional<int> m_version;
    std::optional<int> m_schema;
};

}  // namespace

Result<void> WholeWriter::head(int schema, std::string_view program, std::string_view writtenAt) {
    const auto quoted = [](std::string_view text) { return json(std::string(text)).dump(); };
    return m_sink("{\"format\":" + quoted(kWholeFormat) + ",\"version\":" + std::to_string(kWholeVersion) +
                  ",\"schema\":" + std::to_string(schema) + ",\"program\":" + quoted(program) +
                  ",\"written_at\":" + quoted(writtenAt) + ",\"tables\":{");
}

Result<void> WholeWriter::table(const WholeTable& table) {
    const std::string before = m_inTable ? "\n],\n" : "\n";
    m_inTable = true;
    m_firstRow = true;
    return m_sink(before + json(table.name).dump() + ":[");
}

Result<void> WholeWriter::row(const WholeTable& table, const WholeRow& row) {
    std::string text = m_firstRow ? "\n{" : ",\n{";
    m_firstRow = false;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        // what is not UTF-8 becomes U+FFFD: JSON has no way to say it
        text +=
            (i == 0 ? "" : ",") + json(table.columns[i].name).dump() + ':' +
            jsonOfCell(row.at(i), table.columns[i].type).dump(-1, ' ', false, json::error_handler_t::replace);
    }
    return m_sink(text + '}');
}

Result<void> WholeWriter::end() {
    return m_sink(m_inTable ? "\n]\n}}\n" : "}}\n");
}

Result<void> readWholeJson(std::string_view text, record::WholeSink& sink, const std::string& name) {
    WholeReader reader(sink, name);
    try {
        const auto callback = [&](int depth, json::parse_event_t event, json& value) {
            return reader.take(depth, event, value);
        };
        [[maybe_unused]] const json rest = json::parse(text, callback);  // rows are gone already
        reader.finish();
    } catch (const NodeFault& fault) {
        return fail(ErrorCode::ExportInvalid, {name, fault.where, fault.what});
    } catch (const SinkRefused& refused) {
        return tl::unexpected<Error>(refused.error);
    } catch (const json::exception&) {
        return fail(ErrorCode::ExportInvalid, {name, "/", "not_json"});
    }
    return {};
}

}  // namespace hearth::exchange
