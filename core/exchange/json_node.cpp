// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/json_node.h"

#include <algorithm>

namespace hearth::exchange {

std::optional<JsonNode> JsonNode::find(const char* key) const {
    mustBe(m_value.is_object());
    const auto found = m_value.find(key);
    if (found == m_value.end()) {
        return std::nullopt;
    }
    return JsonNode(*found, m_where.empty() ? key : m_where + '.' + key);
}

JsonNode JsonNode::at(const char* key) const {
    const auto found = find(key);
    if (!found) {
        throw NodeFault{m_where.empty() ? key : m_where + '.' + key, "missing"};
    }
    return *found;
}

std::vector<JsonNode> JsonNode::elements() const {
    mustBe(m_value.is_array());
    std::vector<JsonNode> nodes;
    for (std::size_t i = 0; i < m_value.size(); ++i) {
        nodes.emplace_back(m_value[i], m_where + '[' + std::to_string(i) + ']');
    }
    return nodes;
}

std::vector<JsonNode> JsonNode::list(const char* key) const {
    const auto found = find(key);
    return found ? found->elements() : std::vector<JsonNode>{};
}

std::vector<std::pair<std::string, JsonNode>> JsonNode::members() const {
    mustBe(m_value.is_object());
    std::vector<std::pair<std::string, JsonNode>> nodes;
    for (const auto& [key, value] : m_value.items()) {
        nodes.emplace_back(key, JsonNode(value, m_where.empty() ? key : m_where + '.' + key));
    }
    return nodes;
}

void JsonNode::allowOnly(std::initializer_list<std::string_view> known) const {
    for (const auto& [key, node] : members()) {
        if (std::find(known.begin(), known.end(), key) == known.end()) {
            node.refuse("unknown");
        }
    }
}

std::string JsonNode::text() const {
    mustBe(m_value.is_string());
    return m_value.get<std::string>();
}

bool JsonNode::truth() const {
    mustBe(m_value.is_boolean());
    return m_value.get<bool>();
}

int JsonNode::integer() const {
    mustBe(m_value.is_number_integer());
    return m_value.get<int>();
}

std::string JsonNode::textOr(const char* key, const std::string& otherwise) const {
    const auto found = find(key);
    return found ? found->text() : otherwise;
}

}  // namespace hearth::exchange
