// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/rule_json.h"

#include "core/record/json_parts.h"

#include <array>
#include <stdexcept>
#include <type_traits>

namespace hearth::record {
namespace {

using record::jsonOf;  // those of the header beside those below
using rulebook::Band;
using rulebook::Comparison;
using rulebook::Provenance;

std::string_view codeText(Provenance provenance) {
    constexpr std::array<std::string_view, 6> kTexts{"published",       "secondary", "memory",
                                                     "common_practice", "firm",      "maker"};
    return kTexts.at(static_cast<std::size_t>(provenance));
}

std::string_view codeText(Comparison comparison) {
    constexpr std::array<std::string_view, 6> kTexts{"at_most", "below",  "at_least",
                                                     "within",  "equals", "as_given"};
    return kTexts.at(static_cast<std::size_t>(comparison));
}

Json jsonOf(const quantity::Figure& figure) {
    return {{"value", figure.value.text()}, {"unit", quantity::unitText(figure.unit)}};
}

Json jsonOf(const rulebook::Range& range) {
    return {
        {"least", range.least.text()}, {"most", range.most.text()}, {"unit", quantity::unitText(range.unit)}};
}

Json jsonOf(const std::vector<Band>& bands) {
    Json json = Json::array();
    for (const auto& band : bands) {
        json.push_back({{"up_to", band.upTo.text()}, {"allowed", band.allowed.text()}});
    }
    return json;
}

Json jsonOf(const std::optional<calendar::Date>& date) {
    return date ? Json(calendar::isoText(*date)) : Json(nullptr);
}

Json jsonOf(const rulebook::Argument& argument) {
    return std::visit(
        [](const auto& value) -> Json {
            using Type = std::decay_t<decltype(value)>;
            if constexpr (std::is_same_v<Type, quantity::Figure>) {
                return {{"figure", jsonOf(value)}};
            } else if constexpr (std::is_same_v<Type, calendar::Date>) {
                return {{"date", calendar::isoText(value)}};
            } else if constexpr (std::is_same_v<Type, rulebook::Edition>) {
                return {{"edition", rulebook::editionText(value)}};
            } else if constexpr (std::is_same_v<Type, rulebook::Gas>) {
                return {{"gas", rulebook::gasText(value)}};
            } else {
                return {{"text", value}};
            }
        },
        argument);
}

Json jsonOf(const rulebook::Sentence& sentence) {
    Json arguments = Json::array();
    for (const auto& argument : sentence.arguments) {
        arguments.push_back(jsonOf(argument));
    }
    return {{"say", rulebook::sayText(sentence.say)}, {"arguments", arguments}};
}

Json jsonOf(const rulebook::Entry& entry) {
    return {
        {"rule", rulebook::ruleText(entry.key.rule)},
        {"edition", rulebook::editionText(entry.key.edition)},
        {"gas", entry.key.gas ? Json(rulebook::gasText(*entry.key.gas)) : Json(nullptr)},
        {"value", jsonOf(entry.value)},
        {"comparison", codeText(entry.comparison)},
        {"provenance", codeText(entry.provenance)},
        {"standard", entry.standard},
        {"clause", entry.clause},
        {"source", entry.source},
        {"doubt", entry.doubt},
        {"applies_from", jsonOf(entry.appliesFrom)},
        {"applies_to", jsonOf(entry.appliesTo)},
        {"confirmed_by", entry.confirmedBy},
        {"confirmed_on", jsonOf(entry.confirmedOn)},
    };
}

quantity::Decimal decimalOf(const Json& json) {
    const auto decimal = quantity::Decimal::parse(json.get<std::string>());
    if (!decimal) {
        throw std::invalid_argument("no decimal");
    }
    return *decimal;
}

quantity::UnitCode unitOf(const Json& json) {
    const auto unit = quantity::unitFromText(json.get<std::string>());
    if (!unit) {
        throw std::invalid_argument("no unit");
    }
    return *unit;
}

rulebook::Value valueOf(const Json& json) {
    if (json.contains("figure")) {
        const Json& figure = json.at("figure");
        return quantity::Figure{decimalOf(figure.at("value")), unitOf(figure.at("unit"))};
    }
    if (json.contains("range")) {
        const Json& range = json.at("range");
        return rulebook::Range{decimalOf(range.at("least")), decimalOf(range.at("most")),
                               unitOf(range.at("unit"))};
    }
    if (json.contains("bands")) {
        std::vector<Band> bands;
        for (const auto& band : json.at("bands")) {
            bands.push_back({decimalOf(band.at("up_to")), decimalOf(band.at("allowed"))});
        }
        return bands;
    }
    if (!json.is_null()) {
        throw std::invalid_argument("no value");
    }
    return std::monostate{};
}

}  // namespace

Json jsonOf(const rulebook::Value& value) {
    if (const auto* figure = std::get_if<quantity::Figure>(&value)) {
        return {{"figure", jsonOf(*figure)}};
    }
    if (const auto* range = std::get_if<rulebook::Range>(&value)) {
        return {{"range", jsonOf(*range)}};
    }
    if (const auto* bands = std::get_if<std::vector<Band>>(&value)) {
        return {{"bands", jsonOf(*bands)}};
    }
    return nullptr;
}

Json jsonOf(const rulebook::Finding& finding) {
    Json notes = Json::array();
    for (const auto& note : finding.notes) {
        notes.push_back(jsonOf(note));
    }
    Json limits = Json::array();
    for (const auto& entry : finding.limits) {
        limits.push_back(jsonOf(entry));
    }
    return {
        {"kind", rulebook::kindText(finding.kind)},
        {"outcome", rulebook::outcomeText(finding.outcome)},
        {"measured", finding.measured ? jsonOf(*finding.measured) : Json(nullptr)},
        {"limit", finding.limit ? jsonOf(*finding.limit) : Json(nullptr)},
        {"comparison", codeText(finding.comparison)},
        {"why", jsonOf(finding.why)},
        {"notes", notes},
        {"limits", limits},
    };
}

std::string ruleValueJson(const rulebook::Value& value) {
    return canonicalText(jsonOf(value));
}

Result<rulebook::Value> ruleValueFromJson(std::string_view json) {
    try {
        return valueOf(Json::parse(json));
    } catch (const std::exception&) {
        return fail(ErrorCode::RuleValueUnusable, {std::string(), std::string(json)});
    }
}

}  // namespace hearth::record
