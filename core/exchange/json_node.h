// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace hearth::exchange {

/// Why a node can't be used, and where it stands. Thrown within a reader and caught at its boundary, so that
/// readers of deeply nested text stay readable.
struct NodeFault {
    std::string where;  // "visits[3].date"
    std::string what;   // a code
};

/// A value in a JSON text that knows where it stands, so that every fault can be named.
class JsonNode {
  public:
    JsonNode(const nlohmann::json& value, std::string where) : m_value(value), m_where(std::move(where)) {}

    [[nodiscard]] const std::string& where() const { return m_where; }
    [[noreturn]] void refuse(const char* what) const { throw NodeFault{m_where, what}; }

    /// A member that must be there.
    [[nodiscard]] JsonNode at(const char* key) const;
    /// A member that may be absent.
    [[nodiscard]] std::optional<JsonNode> find(const char* key) const;
    /// Elements of a list; none when the member is absent.
    [[nodiscard]] std::vector<JsonNode> list(const char* key) const;
    [[nodiscard]] std::vector<JsonNode> elements() const;
    /// Members of an object with their keys, in the order of the keys.
    [[nodiscard]] std::vector<std::pair<std::string, JsonNode>> members() const;
    /// Refuses a member that is not among `known`: a misspelt key would otherwise be lost in silence.
    void allowOnly(std::initializer_list<std::string_view> known) const;

    [[nodiscard]] std::string text() const;
    [[nodiscard]] bool truth() const;
    [[nodiscard]] int integer() const;
    /// The member's text, or `otherwise` when it is absent.
    [[nodiscard]] std::string textOr(const char* key, const std::string& otherwise = {}) const;

  private:
    void mustBe(bool right) const {
        if (!right) {
            refuse("wrong_type");
        }
    }

    const nlohmann::json& m_value;
    std::string m_where;
};

}  // namespace hearth::exchange
