// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/whole_schema.h"

#include "core/exchange/whole_json.h"
#include "core/record/doings_fields.h"

#include <map>
#include <nlohmann/json.hpp>
#include <stdexcept>

namespace hearth::exchange {
namespace {

using Json = nlohmann::ordered_json;
using Properties = std::map<std::string, Json>;
using record::describe;
using record::WholeType;

Json schemaOfType(const char* type) {
    return {{"type", type}};
}
Json schemaRef(const char* name) {
    return {{"$ref", std::string("#/$defs/") + name}};
}

/// Archive that notes what each field of a value is.
class SchemaArchive {
  public:
    static constexpr bool kStaysInside = true;

    template <class Key>
    void id(const char* name, const Key&) {
        properties[name] = schemaRef("uuid");
    }
    template <class Key>
    void link(const char* name, const Key&) {
        properties[name] = schemaRef("uuid");
    }
    void owner(const char* name, const UuidBytes&) { properties[name] = schemaRef("uuid"); }
    void text(const char* name, const std::string&) { properties[name] = schemaOfType("string"); }
    void secret(const char* name, const std::string&) { properties[name] = schemaOfType("string"); }
    void number(const char* name, int) { properties[name] = schemaOfType("integer"); }
    void flag(const char* name, bool) { properties[name] = {{"enum", {0, 1}}}; }
    template <class Enumeration>
    void code(const char* name, Enumeration) {
        properties[name] = {{"enum", codesOf<Enumeration>()}};
    }
    void typed(const char* name, const quantity::Typed&) {
        properties[name] = schemaOfType("string");
        properties[std::string(name) + "_unit"] = schemaOfType("string");
    }
    template <class Date>
    void date(const char* name, const Date&) {
        properties[name] = schemaRef("date");
    }
    template <class Time>
    void instant(const char* name, const Time&) {
        properties[name] = schemaRef("instant");
    }

    Properties properties;

  private:
    /// Enumerators count from 0; the tables behind codeOf() throw beyond the last.
    template <class Enumeration>
    static std::vector<std::string> codesOf() {
        constexpr int kMost = 64;
        std::vector<std::string> codes;
        try {
            for (int i = 0; i < kMost; ++i) {
                const auto value = static_cast<Enumeration>(i);
                const std::string code(record::CodeOf<Enumeration>::text(value));
                if (record::CodeOf<Enumeration>::value(code) != value) {
                    break;
                }
                codes.push_back(code);
            }
        } catch (const std::out_of_range&) {
        }
        return codes;
    }
};

template <class Value>
Properties described() {
    SchemaArchive archive;
    const Value value{};
    describe(archive, value);
    return archive.properties;
}

/// What the register's tables hold, by the fields' one description.
const std::map<std::string, Properties>& registerProperties() {
    static const std::map<std::string, Properties> kAll{
        {"firm", described<reg::Firm>()},
        {"parties", described<reg::Party>()},
        {"premises", described<reg::Premises>()},
        {"roles", described<reg::Role>()},
        {"installations", described<reg::Installation>()},
        {"pipe_sections", described<reg::PipeSection>()},
        {"engineers", described<reg::Engineer>()},
        {"instruments", described<reg::Instrument>()},
        {"visits", described<reg::Visit>()},
        {"tests", described<reg::Test>()},
        {"appliances", described<reg::Appliance>()},
        {"competences", described<reg::Competence>()},
        {"access_attempts", described<reg::AccessAttempt>()},
        {"letters", described<reg::Letter>()},
        {"bookings", described<reg::Booking>()},
        {"situations", described<reg::Situation>()},
        {"situation_events", described<reg::SituationEvent>()},
        {"emergency_contacts", described<reg::EmergencyContact>()},
        {"attachments", described<reg::Attachment>()},
        {"hand_signatures", described<reg::HandSignature>()},
        {"traces", described<reg::GaugeTrace>()},
        {"bin", described<reg::Binned>()},
    };
    return kAll;
}

Json schemaOfColumn(const std::string& table, const record::WholeColumn& column) {
    Json schema;
    const auto known = registerProperties().find(table);
    const bool isDescribed = known != registerProperties().end() && known->second.count(column.name) > 0;
    if (isDescribed) {
        schema = known->second.at(column.name);
    } else {
        switch (column.type) {
            case WholeType::Integer:
                schema = schemaOfType("integer");
                break;
            case WholeType::Uuid:
                schema = schemaRef("uuid");
                break;
            case WholeType::Bytes:
                schema = {{"type", "string"}, {"contentEncoding", "base64"}};
                break;
            default:
                schema = schemaOfType("string");
                break;
        }
    }
    return column.nullable ? Json{{"anyOf", Json::array({schema, schemaOfType("null")})}} : schema;
}

Json schemaOfTable(const record::WholeTable& table) {
    Json properties = Json::object();
    Json required = Json::array();
    for (const auto& column : table.columns) {
        properties[column.name] = schemaOfColumn(table.name, column);
        required.push_back(column.name);
    }
    return {{"type", "array"},
            {"items",
             {{"type", "object"},
              {"properties", properties},
              {"required", required},
              {"additionalProperties", false}}}};
}

}  // namespace

std::string wholeSchema(const std::vector<record::WholeTable>& tables, int schema) {
    Json ofTables = Json::object();
    for (const auto& table : tables) {
        ofTables[table.name] = schemaOfTable(table);
    }
    const Json whole{
        {"$schema", "https://json-schema.org/draft/2020-12/schema"},
        {"title", "A whole store of Hearthledger, row by row"},
        {"type", "object"},
        {"properties",
         {{"format", {{"const", kWholeFormat}}},
          {"version", {{"const", kWholeVersion}}},
          {"schema", {{"const", schema}}},
          {"program", schemaOfType("string")},
          {"written_at", schemaRef("instant")},
          {"tables", {{"type", "object"}, {"properties", ofTables}, {"additionalProperties", false}}}}},
        {"required", {"format", "version", "schema", "tables"}},
        {"additionalProperties", false},
        {"$defs",
         {{"uuid",
           {{"type", "string"},
            {"pattern", "^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$"}}},
          {"date", {{"type", "string"}, {"pattern", "^[0-9]{4}-[0-9]{2}-[0-9]{2}$"}}},
          {"instant", {{"type", "string"}, {"pattern", "^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9:.]+Z$"}}}}},
    };
    return whole.dump(1) + '\n';
}

}  // namespace hearth::exchange
