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
    {"firm", "logo", QT_TRANSLATE_NOOP("Changes", "Logo")},
    {"firm", "number_form", QT_TRANSLATE_NOOP("Changes", "Form of record numbers")},
    {"firm", "reminder_text", QT_TRANSLATE_NOOP("Changes", "Text of the reminder")},
    {"firm", "no_access_text", QT_TRANSLATE_NOOP("Changes", "Text of the no-access letter")},
    {"firm", "cover_text", QT_TRANSLATE_NOOP("Changes", "Text of the covering letter")},
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
    {"appliances", "kind", QT_TRANSLATE_NOOP("Changes", "Kind of appliance")},
    {"appliances", "serial", QT_TRANSLATE_NOOP("Changes", "Appliance's serial number")},
    {"appliances", "position", QT_TRANSLATE_NOOP("Changes", "Place in the list")},
    {"installations", "name", QT_TRANSLATE_NOOP("Changes", "Installation's name")},
    {"record_headers", "payload", QT_TRANSLATE_NOOP("Changes", "What a record said")},
    {"parties", "language", QT_TRANSLATE_NOOP("Changes", "Language of what is sent")},
    {"parties", "notes", QT_TRANSLATE_NOOP("Changes", "Notes on them")},
    {"appliances", "notes", QT_TRANSLATE_NOOP("Changes", "Notes on the appliance")},
    {"access_attempts", "at", QT_TRANSLATE_NOOP("Changes", "When somebody tried to get in")},
    {"access_attempts", "channel", QT_TRANSLATE_NOOP("Changes", "How somebody tried to get in")},
    {"letters", "kind", QT_TRANSLATE_NOOP("Changes", "Kind of letter")},
    {"letters", "channel", QT_TRANSLATE_NOOP("Changes", "How the letter was sent")},
    {"letters", "at", QT_TRANSLATE_NOOP("Changes", "When the letter was sent")},
    {"letters", "text", QT_TRANSLATE_NOOP("Changes", "Words of the letter")},
    {"bookings", "date", QT_TRANSLATE_NOOP("Changes", "Day of the booking")},
    {"bookings", "state", QT_TRANSLATE_NOOP("Changes", "State of the booking")},
    {"bookings", "note", QT_TRANSLATE_NOOP("Changes", "Note on the booking")},
    {"situations", "what", QT_TRANSLATE_NOOP("Changes", "What is wrong")},
    {"situations", "place", QT_TRANSLATE_NOOP("Changes", "Where it is wrong")},
    {"situation_events", "kind", QT_TRANSLATE_NOOP("Changes", "What was done about it")},
    {"situation_events", "text", QT_TRANSLATE_NOOP("Changes", "What was done about it, in words")},
    {"situation_events", "at", QT_TRANSLATE_NOOP("Changes", "When it was done")},
    {"attachments", "name", QT_TRANSLATE_NOOP("Changes", "Name of the picture or paper")},
    {"attachments", "note", QT_TRANSLATE_NOOP("Changes", "Note on the picture or paper")},
    {"competences", "category", QT_TRANSLATE_NOOP("Changes", "Category of competence")},
    {"competences", "expires", QT_TRANSLATE_NOOP("Changes", "Competence runs out on")},
    {"competences", "expires_text", QT_TRANSLATE_NOOP("Changes", "Competence runs out on, as typed")},
    {"emergency_contacts", "name", QT_TRANSLATE_NOOP("Changes", "Emergency contact")},
    {"emergency_contacts", "number", QT_TRANSLATE_NOOP("Changes", "Emergency number")},
    {"attachments", "in_record_of", QT_TRANSLATE_NOOP("Changes", "Whose records show the picture")},
    {"hand_signatures", "record_kind", QT_TRANSLATE_NOOP("Changes", "Which record was signed")},
    {"hand_signatures", "issue", QT_TRANSLATE_NOOP("Changes", "Which of its kind was signed")},
    {"hand_signatures", "signer", QT_TRANSLATE_NOOP("Changes", "Who signed")},
    {"hand_signatures", "way", QT_TRANSLATE_NOOP("Changes", "How it was signed")},
    {"hand_signatures", "name", QT_TRANSLATE_NOOP("Changes", "Name of who signed")},
    {"hand_signatures", "role", QT_TRANSLATE_NOOP("Changes", "As whom it was signed")},
    {"hand_signatures", "strokes", QT_TRANSLATE_NOOP("Changes", "What was drawn as a signature")},
    {"hand_signatures", "copy_left", QT_TRANSLATE_NOOP("Changes", "Where the copy was left")},
    {"hand_signatures", "signed_at", QT_TRANSLATE_NOOP("Changes", "When it was signed")},
    {"traces", "source", QT_TRANSLATE_NOOP("Changes", "Source of the gauge's trace")},
    {"traces", "origin", QT_TRANSLATE_NOOP("Changes", "How the gauge's trace came")},
    {"traces", "simulated", QT_TRANSLATE_NOOP("Changes", "Whether the gauge's trace is a simulation")},
    {"traces", "began_at", QT_TRANSLATE_NOOP("Changes", "When the gauge's trace began")},
    {"traces", "resolution", QT_TRANSLATE_NOOP("Changes", "Step of the gauge's trace")},
    {"traces", "resolution_unit", QT_TRANSLATE_NOOP("Changes", "Unit of the gauge's trace")},
    {"traces", "channels", QT_TRANSLATE_NOOP("Changes", "What the gauge's trace measured")},
    {"traces", "points", QT_TRANSLATE_NOOP("Changes", "Readings of the gauge's trace")},
    {"traces", "milliseconds",
     QT_TRANSLATE_NOOP("Changes", "How long the gauge's trace is, in milliseconds")},
    {"traces", "size", QT_TRANSLATE_NOOP("Changes", "Size of the gauge's trace, in bytes")},
    {"traces", "marks", QT_TRANSLATE_NOOP("Changes", "What happened when in the gauge's trace")},
    {"traces", "zero_reads", QT_TRANSLATE_NOOP("Changes", "What the gauge read open to the air")},
    {"traces", "zero_reads_unit", QT_TRANSLATE_NOOP("Changes", "What the gauge read open to the air, unit")},
    {"traces", "zero_step", QT_TRANSLATE_NOOP("Changes", "Step of the gauge when its zero was looked at")},
    {"traces", "zero_step_unit",
     QT_TRANSLATE_NOOP("Changes", "Step of the gauge when its zero was looked at, unit")},
    {"traces", "zero_at", QT_TRANSLATE_NOOP("Changes", "When the gauge's zero was looked at")},
    {"traces", "zero_is", QT_TRANSLATE_NOOP("Changes", "Whether the gauge stood at zero")},
    {"bin", "label", QT_TRANSLATE_NOOP("Changes", "In the bin as")},
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
    {"", "drift", QT_TRANSLATE_NOOP("Changes", "Drift in a minute")},
    {"", "drift_unit", QT_TRANSLATE_NOOP("Changes", "Drift in a minute, unit")},
    {"", "certificate", QT_TRANSLATE_NOOP("Changes", "Calibration certificate")},
    {"", "calibrated_on", QT_TRANSLATE_NOOP("Changes", "Calibrated on")},
    {"", "calibration_due", QT_TRANSLATE_NOOP("Changes", "Calibration due")},
    {"", "make", QT_TRANSLATE_NOOP("Changes", "Make")},
    {"", "model", QT_TRANSLATE_NOOP("Changes", "Model")},
    {"", "gc_number", QT_TRANSLATE_NOOP("Changes", "GC number")},
    {"", "place", QT_TRANSLATE_NOOP("Changes", "Where it is")},
    {"", "flue", QT_TRANSLATE_NOOP("Changes", "Flue")},
    {"", "net_input", QT_TRANSLATE_NOOP("Changes", "Net heat input")},
    {"", "gross_input", QT_TRANSLATE_NOOP("Changes", "Gross heat input")},
    {"", "installed_on", QT_TRANSLATE_NOOP("Changes", "Installed on")},
    {"", "installed_on_text", QT_TRANSLATE_NOOP("Changes", "Installed on, as typed")},
    {"", "owner", QT_TRANSLATE_NOOP("Changes", "Whose it is")},
    {"", "maker_ratio", QT_TRANSLATE_NOOP("Changes", "Maker's greatest CO/CO₂ ratio")},
    {"", "maker_co", QT_TRANSLATE_NOOP("Changes", "Maker's greatest CO")},
    {"", "maker_inlet_least", QT_TRANSLATE_NOOP("Changes", "Maker's least inlet pressure")},
    {"", "maker_inlet_most", QT_TRANSLATE_NOOP("Changes", "Maker's greatest inlet pressure")},
    {"", "maker_burner_least", QT_TRANSLATE_NOOP("Changes", "Maker's least burner pressure")},
    {"", "maker_burner_most", QT_TRANSLATE_NOOP("Changes", "Maker's greatest burner pressure")},
    {"", "maker_tolerance", QT_TRANSLATE_NOOP("Changes", "Maker's tolerance on heat input")},
    {"", "maker_source", QT_TRANSLATE_NOOP("Changes", "Maker's limits, where they stand")},
    {"", "removed_on", QT_TRANSLATE_NOOP("Changes", "Removed on")},
    {"", "removed_on_text", QT_TRANSLATE_NOOP("Changes", "Removed on, as typed")},
    {"", "mprn", QT_TRANSLATE_NOOP("Changes", "Meter point reference (MPRN)")},
    {"", "meter_badge", QT_TRANSLATE_NOOP("Changes", "Meter's badge")},
    {"", "regulator", QT_TRANSLATE_NOOP("Changes", "Regulator")},
    {"", "control_valve_accessible", QT_TRANSLATE_NOOP("Changes", "Emergency control valve within reach")},
    {"", "bonding_seen", QT_TRANSLATE_NOOP("Changes", "Bonding seen")},
    {"", "line_diagram", QT_TRANSLATE_NOOP("Changes", "Line diagram")},
    {"", "uprn", QT_TRANSLATE_NOOP("Changes", "Property reference (UPRN)")},
    {"", "appliance_in_rooms", QT_TRANSLATE_NOOP("Changes", "Gas appliance in a room that tenants occupy")},
    {"", "since", QT_TRANSLATE_NOOP("Changes", "From")},
    {"", "until", QT_TRANSLATE_NOOP("Changes", "Until")},
    {"", "send_by", QT_TRANSLATE_NOOP("Changes", "How records are sent")},
    {"", "reminder_basis", QT_TRANSLATE_NOOP("Changes", "Why they may be reminded")},
    {"", "reminder_since", QT_TRANSLATE_NOOP("Changes", "May be reminded since")},
    {"", "reminder_withdrawn", QT_TRANSLATE_NOOP("Changes", "Objected to reminders on")},
    {"", "who", QT_TRANSLATE_NOOP("Changes", "Who went or called")},
    {"", "what_was_left", QT_TRANSLATE_NOOP("Changes", "What was left")},
    {"", "response", QT_TRANSLATE_NOOP("Changes", "Response")},
    {"", "next_step", QT_TRANSLATE_NOOP("Changes", "What comes next")},
    {"", "next_on", QT_TRANSLATE_NOOP("Changes", "What comes next, on")},
    {"", "sent_to", QT_TRANSLATE_NOOP("Changes", "Where the letter went")},
    {"", "result", QT_TRANSLATE_NOOP("Changes", "What came of the letter")},
    {"", "from_time", QT_TRANSLATE_NOOP("Changes", "Booked from")},
    {"", "until_time", QT_TRANSLATE_NOOP("Changes", "Booked until")},
    {"", "found_at", QT_TRANSLATE_NOOP("Changes", "When it was found")},
    {"", "danger", QT_TRANSLATE_NOOP("Changes", "How dangerous it is")},
    {"", "closed_at", QT_TRANSLATE_NOOP("Changes", "Closed at")},
    {"", "insurer", QT_TRANSLATE_NOOP("Changes", "Liability insurer")},
    {"", "policy", QT_TRANSLATE_NOOP("Changes", "Policy number")},
    {"", "insured_until", QT_TRANSLATE_NOOP("Changes", "Insured until")},
    {"", "insured_until_text", QT_TRANSLATE_NOOP("Changes", "Insured until, as typed")},
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
    {"appliances", QT_TRANSLATE_NOOP("Changes", "Appliance")},
    {"access_attempts", QT_TRANSLATE_NOOP("Changes", "Attempt to get in")},
    {"letters", QT_TRANSLATE_NOOP("Changes", "Letter")},
    {"bookings", QT_TRANSLATE_NOOP("Changes", "Booking")},
    {"situations", QT_TRANSLATE_NOOP("Changes", "Unsafe situation")},
    {"situation_events", QT_TRANSLATE_NOOP("Changes", "Step about an unsafe situation")},
    {"attachments", QT_TRANSLATE_NOOP("Changes", "Picture or paper")},
    {"hand_signatures", QT_TRANSLATE_NOOP("Changes", "Signature by hand")},
    {"traces", QT_TRANSLATE_NOOP("Changes", "Trace of a gauge")},
    {"competences", QT_TRANSLATE_NOOP("Changes", "Competence")},
    {"emergency_contacts", QT_TRANSLATE_NOOP("Changes", "Emergency contact")},
    {"bin", QT_TRANSLATE_NOOP("Changes", "In the bin")},
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
    if (change.field == "strokes") {
        return text(QT_TRANSLATE_NOOP("Changes", "(drawn)"));
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
    if (change.table == "record_headers" && change.field == "payload") {
        constexpr std::size_t kDay = 10;  // before the code of the rule
        const auto until = calendar::fromIso(change.after.value_or(std::string()).substr(0, kDay));
        return text(QT_TRANSLATE_NOOP("Changes",
                                      "A record was let go: it had been kept until %1, and its number stays"))
            .arg(until ? words.shortDate(*until) : text(QT_TRANSLATE_NOOP("Changes", "an unknown day")));
    }
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
