// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/doings_fields.h"

#include <nlohmann/json.hpp>
#include <string>

namespace hearth::record {

/// Every field of a register value as one JSON object, by the names that the store has for them: for what
/// goes out whole (a person's own data, an export). Numbers that mean something are texts; what was typed is
/// as it was typed, with its unit beside it; dates and instants are ISO 8601.
class RowJson {
  public:
    static constexpr bool kStaysInside = true;

    template <class Key>
    void id(const char* name, const Key& key) {
        m_json[name] = key.text();
    }
    template <class Key>
    void link(const char* name, const Id<Key>& key) {
        m_json[name] = key.text();
    }
    template <class Key>
    void link(const char* name, const std::optional<Id<Key>>& key) {
        m_json[name] = key ? nlohmann::json(key->text()) : nlohmann::json(nullptr);
    }
    void owner(const char* name, const UuidBytes& key) { m_json[name] = uuidText(key); }
    void text(const char* name, const std::string& text) { m_json[name] = text; }
    void secret(const char* name, const std::string& text) { m_json[name] = text; }
    void number(const char* name, int number) { m_json[name] = std::to_string(number); }
    void flag(const char* name, bool flag) { m_json[name] = flag; }
    template <class Enumeration>
    void code(const char* name, Enumeration value) {
        m_json[name] = CodeOf<Enumeration>::text(value);
    }
    void typed(const char* name, const quantity::Typed& typed) {
        m_json[name] = typed.text;
        m_json[std::string(name) + "_unit"] = quantity::unitText(typed.unit);
    }
    void date(const char* name, const std::optional<calendar::Date>& date) {
        m_json[name] = date ? nlohmann::json(calendar::isoText(*date)) : nlohmann::json(nullptr);
    }
    void instant(const char* name, Instant instant) { m_json[name] = instantText(instant); }
    void instant(const char* name, const std::optional<Instant>& instant) {
        m_json[name] = instant ? nlohmann::json(instantText(*instant)) : nlohmann::json(nullptr);
    }

    [[nodiscard]] nlohmann::json take() { return std::move(m_json); }

  private:
    nlohmann::json m_json = nlohmann::json::object();
};

template <class Value>
[[nodiscard]] nlohmann::json rowJson(const Value& value) {
    RowJson archive;
    describe(archive, value);
    return archive.take();
}

}  // namespace hearth::record
