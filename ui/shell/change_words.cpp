// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/change_words.h"

#include "core/base/id.h"
#include "core/pipework/tube.h"
#include "core/register/item.h"

#include <QCoreApplication>

#include <string_view>

namespace hearth::ui::shell {

namespace {

struct FieldName {
    std::string_view table;  // "": in whatever table
    std::string_view field;
    const char* name;
};

/// Names of the register's columns. Where a table is named, its name wins over the general one.
constexpr FieldName kFields[] = {
    {"premises", "access_notes", QT_TRANSLATE_NOOP("Changes", "Access notes")},
    {"firm", "name", QT_TRANSLATE_NOOP("Changes", "Firm's name")},
    {"firm", "language", QT_TRANSLATE_NOOP("Changes", "Language of records")},
    {"firm", "registration_number", QT_TRANSLATE_NOOP("Changes", "Registration number")},
    {"instruments", "kind", QT_TRANSLATE_NOOP("Changes", "Kind of instrument")},
    {"instruments", "name", QT_TRANSLATE_NOOP("Changes", "Instrument's name")},
    {"engineers", "name", QT_TRANSLATE_NOOP("Changes", "Engineer's name")},
    {"parties", "name", QT_TRANSLATE_NOOP("Changes", "Name")},
    {"parties", "kind", QT_TRANSLATE_NOOP("Changes", "Person or organisation")},
    {"roles", "kind", QT_TRANSLATE_NOOP("Changes", "Role")},
    {"roles", "party", QT_TRANSLATE_NOOP("Changes", "Who holds the role")},
    {"tests", "label", QT_TRANSLATE_NOOP("Changes", "Test")},
    {"visits", "date", QT_TRANSLATE_NOOP("Changes", "Date of the visit")},
    {"visits", "engineer", QT_TRANSLATE_NOOP("Changes", "Engineer of the visit")},
    {"visits", "closed", QT_TRANSLATE_NOOP("Changes", "Visit closed")},
    {"", "line1", QT_TRANSLATE_NOOP("Changes", "Address, first line")},
    {"", "line2", QT_TRANSLATE_NOOP("Changes", "Address, second line")},
    {"", "town", QT_TRANSLATE_NOOP("Changes", "Town")},
    {"", "postcode", QT_TRANSLATE_NOOP("Changes", "Postcode")},
    {"", "country", QT_TRANSLATE_NOOP("Changes", "Country")},
    {"", "telephone", QT_TRANSLATE_NOOP("Changes", "Telephone")},
    {"", "email", QT_TRANSLATE_NOOP("Changes", "E-mail")},
    {"", "gas", QT_TRANSLATE_NOOP("Changes", "Gas")},
    {"", "meter_code", QT_TRANSLATE_NOOP("Changes", "Meter")},
    {"", "meter_volume", QT_TRANSLATE_NOOP("Changes", "Meter's volume")},
    {"", "meter_volume_unit", QT_TRANSLATE_NOOP("Changes", "Meter's volume, unit")},
    {"", "meter_serial", QT_TRANSLATE_NOOP("Changes", "Meter serial number")},
    {"", "meter_place", QT_TRANSLATE_NOOP("Changes", "Where the meter is")},
    {"", "operating_pressure", QT_TRANSLATE_NOOP("Changes", "Operating pressure")},
    {"", "operating_pressure_unit", QT_TRANSLATE_NOOP("Changes", "Operating pressure, unit")},
    {"", "supply_pressure", QT_TRANSLATE_NOOP("Changes", "Supply pressure")},
    {"", "supply_pressure_unit", QT_TRANSLATE_NOOP("Changes", "Supply pressure, unit")},
    {"", "control_valve_place", QT_TRANSLATE_NOOP("Changes", "Where the emergency control valve is")},
    {"", "tube_code", QT_TRANSLATE_NOOP("Changes", "Tube")},
    {"", "card_expires_text", QT_TRANSLATE_NOOP("Changes", "Card runs out on, as typed")},
    {"", "calibrated_on_text", QT_TRANSLATE_NOOP("Changes", "Calibrated on, as typed")},
    {"", "calibration_due_text", QT_TRANSLATE_NOOP("Changes", "Calibration due, as typed")},
    {"", "after_text", QT_TRANSLATE_NOOP("Changes", "Goes on from, as typed")},
    {"", "date_text", QT_TRANSLATE_NOOP("Changes", "Date, as typed")},
    {"", "length", QT_TRANSLATE_NOOP("Changes", "Length")},
    {"", "length_unit", QT_TRANSLATE_NOOP("Changes", "Length, unit")},
    {"", "volume", QT_TRANSLATE_NOOP("Changes", "Volume")},
    {"", "volume_unit", QT_TRANSLATE_NOOP("Changes", "Volume, unit")},
    {"", "leads_to", QT_TRANSLATE_NOOP("Changes", "Leads to")},
    {"", "under_test", QT_TRANSLATE_NOOP("Changes", "Under test")},
    {"", "card_number", QT_TRANSLATE_NOOP("Changes", "Card number")},
    {"", "card_expires", QT_TRANSLATE_NOOP("Changes", "Card runs out on")},
    {"", "serial", QT_TRANSLATE_NOOP("Changes", "Instrument's serial number")},
    {"", "resolution", QT_TRANSLATE_NOOP("Changes", "One step of the display")},
    {"", "resolution_unit", QT_TRANSLATE_NOOP("Changes", "One step of the display, unit")},
    {"", "repeatability", QT_TRANSLATE_NOOP("Changes", "Repeatability")},
    {"", "repeatability_unit", QT_TRANSLATE_NOOP("Changes", "Repeatability, unit")},
    {"", "accuracy", QT_TRANSLATE_NOOP("Changes", "Accuracy")},
    {"", "accuracy_unit", QT_TRANSLATE_NOOP("Changes", "Accuracy, unit")},
    {"", "certificate", QT_TRANSLATE_NOOP("Changes", "Calibration certificate")},
    {"", "calibrated_on", QT_TRANSLATE_NOOP("Changes", "Calibrated on")},
    {"", "calibration_due", QT_TRANSLATE_NOOP("Changes", "Calibration due")},
};

QString text(const char* source) {
    return QCoreApplication::translate("Changes", source);
}

struct ThingName {
    std::string_view table;
    const char* name;
};

/// What a row of each table is.
constexpr ThingName kThings[] = {
    {"premises", QT_TRANSLATE_NOOP("Changes", "Premises")},
    {"installations", QT_TRANSLATE_NOOP("Changes", "Gas installation")},
    {"parties", QT_TRANSLATE_NOOP("Changes", "Person or organisation")},
    {"roles", QT_TRANSLATE_NOOP("Changes", "Role at the premises")},
    {"engineers", QT_TRANSLATE_NOOP("Changes", "Engineer")},
    {"instruments", QT_TRANSLATE_NOOP("Changes", "Instrument")},
    {"pipe_sections", QT_TRANSLATE_NOOP("Changes", "Section of pipe")},
    {"visits", QT_TRANSLATE_NOOP("Changes", "Visit")},
    {"tests", QT_TRANSLATE_NOOP("Changes", "Test")},
};

bool isKey(const std::optional<std::string>& value) {
    return value && uuidFromText(*value).has_value();
}

/// A row that came or went is logged by its key first.
std::optional<QString> cameOrWent(const store::Change& change) {
    if (change.field != "id") {
        return std::nullopt;
    }
    for (const ThingName& thing : kThings) {
        if (thing.table == change.table) {
            return change.after ? text(QT_TRANSLATE_NOOP("Changes", "%1: added")).arg(text(thing.name))
                                : text(QT_TRANSLATE_NOOP("Changes", "%1: taken away")).arg(text(thing.name));
        }
    }
    return std::nullopt;
}

std::optional<reg::Item> itemOf(const store::Change& change) {
    return reg::itemFromCode(change.field);
}

/// Codes of choices in the register, in words; nothing when the field holds plain text.
std::optional<QString> codeInWords(const words::Words& words, const store::Change& change,
                                   const std::string& code) {
    if (change.field == "gas") {
        const auto gas = rulebook::gasFromText(code);
        return gas ? std::optional(words.gas(*gas)) : std::nullopt;
    }
    if (change.field == "meter_code") {
        const auto* meter = pipework::meterByCode(code);
        return meter != nullptr ? std::optional(words.meter(*meter)) : std::nullopt;
    }
    if (change.field == "tube_code") {
        const auto* tube = pipework::tubeByCode(code);
        return tube != nullptr ? std::optional(words.tube(*tube)) : std::nullopt;
    }
    if (change.field == "country") {
        const auto country = reg::countryFromCode(code);
        return country ? std::optional(words.country(*country)) : std::nullopt;
    }
    if (change.field == "kind" && change.table == "roles") {
        const auto role = reg::roleKindFromCode(code);
        return role ? std::optional(words.role(*role)) : std::nullopt;
    }
    return std::nullopt;
}

}  // namespace

QString changedThing(const words::Words& words, const store::Change& change) {
    if (const auto item = itemOf(change)) {
        return words.item(*item);
    }
    for (const FieldName& field : kFields) {
        if (field.field == change.field && (field.table.empty() || field.table == change.table)) {
            return text(field.name);
        }
    }
    return QString::fromStdString(change.field).replace(u'_', u' ');
}

QString changedValue(const words::Words& words, const store::Change& change,
                     const std::optional<std::string>& value) {
    if (!value || value->empty()) {
        return text(QT_TRANSLATE_NOOP("Changes", "nothing"));
    }
    // What is written here says who may come in and how: the history says only that it changed.
    if (change.field == "access_notes") {
        return text(QT_TRANSLATE_NOOP("Changes", "(not shown)"));
    }
    QString shown = QString::fromStdString(*value);
    if (const auto item = itemOf(change); item && !reg::infoOf(*item).choices.empty()) {
        shown = words.choice(*item, *value);
    } else if (const auto code = codeInWords(words, change, *value)) {
        shown = *code;
    } else if (const auto date = calendar::fromIso(*value)) {
        shown = words.shortDate(*date);
    }
    return QStringLiteral("“") + shown + QStringLiteral("”");
}

QString changeSentence(const words::Words& words, const store::Change& change) {
    if (const auto row = cameOrWent(change)) {
        return *row;
    }
    if (isKey(change.before) || isKey(change.after)) {
        return text(QT_TRANSLATE_NOOP("Changes", "%1: another than before")).arg(changedThing(words, change));
    }
    return text(QT_TRANSLATE_NOOP("Changes", "%1: %2 instead of %3"))
        .arg(changedThing(words, change), changedValue(words, change, change.after),
             changedValue(words, change, change.before));
}

}  // namespace hearth::ui::shell
