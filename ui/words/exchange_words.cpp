// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/exchange_words.h"

#include "core/rulebook/standard.h"
#include "ui/words/kept_words.h"
#include "ui/words/text_table.h"

namespace hearth::ui::words {
namespace {

using CodeText = Text<std::string_view>;

// %1, %2 … are the problem's arguments in the order of core/exchange/import_problem.h.
constexpr std::array kProblemTexts{
    CodeText{"file_empty", QT_TRANSLATE_NOOP("Words", "There are no rows below the headings.")},
    CodeText{"quote_open", QT_TRANSLATE_NOOP("Words",
                                             "A quotation mark is opened here and never closed, so what "
                                             "follows can't be told apart. Correct the file.")},
    CodeText{
        "no_address_column",
        QT_TRANSLATE_NOOP("Words", "No column is said to hold the address of the premises. Choose one.")},
    CodeText{"letters_unreadable",
             QT_TRANSLATE_NOOP("Words",
                               "%1 letters can't be read in this encoding and are shown as �. Choose another "
                               "encoding, or save the file as UTF-8.")},
    CodeText{"date_order_unclear",
             QT_TRANSLATE_NOOP(
                 "Words",
                 "No date under “%1” shows whether the day or the month comes first. The day is taken to.")},
    CodeText{"address_missing",
             QT_TRANSLATE_NOOP("Words", "There is no address, so this row can't be taken.")},
    CodeText{
        "row_too_long",
        QT_TRANSLATE_NOOP(
            "Words",
            "The row has more cells than there are headings; the first is “%1”. A cell may have slipped.")},
    CodeText{"strange_quote",
             QT_TRANSLATE_NOOP(
                 "Words", "A quotation mark closes within a cell, so where the cell ends can't be told.")},
    CodeText{"number_shortened",
             QT_TRANSLATE_NOOP("Words",
                               "%1: the spreadsheet has shortened a number to “%2”, and its last digits are "
                               "lost. Format the column as text and save again.")},
    CodeText{"gas_unknown", QT_TRANSLATE_NOOP("Words", "Which gas “%1” means can't be told.")},
    CodeText{"date_unreadable", QT_TRANSLATE_NOOP("Words", "%1: “%2” can't be read as a date.")},
    CodeText{"date_in_future", QT_TRANSLATE_NOOP("Words", "%1: “%2” is still to come.")},
    CodeText{
        "installation_unclear",
        QT_TRANSLATE_NOOP(
            "Words", "The premises has several installations, and the row does not say which by its MPRN.")},
    CodeText{"postcode_missing", QT_TRANSLATE_NOOP("Words", "There is no postcode.")},
    CodeText{
        "postcode_strange",
        QT_TRANSLATE_NOOP("Words", "“%1” does not have the form of a postcode. It is kept as it stands.")},
    CodeText{"town_missing", QT_TRANSLATE_NOOP("Words", "The town can't be told from the address.")},
    CodeText{
        "uprn_strange",
        QT_TRANSLATE_NOOP("Words", "“%1” is no UPRN, which has up to 12 digits. It is kept as it stands.")},
    CodeText{
        "mprn_strange",
        QT_TRANSLATE_NOOP("Words", "The check digits of the MPRN “%1” do not fit. It is kept as it stands.")},
    CodeText{"telephone_strange",
             QT_TRANSLATE_NOOP("Words", "“%1” is no whole telephone number. It is kept as it stands.")},
    CodeText{"telephone_zero_added",
             QT_TRANSLATE_NOOP("Words",
                               "The spreadsheet dropped the 0 at the beginning of “%1”. It is put back.")},
    CodeText{
        "email_strange",
        QT_TRANSLATE_NOOP("Words", "“%1” does not look like an e-mail address. It is kept as it stands.")},
    CodeText{"country_unknown",
             QT_TRANSLATE_NOOP("Words", "“%1” is none of the four countries. The firm's own is taken.")},
    CodeText{"date_serial", QT_TRANSLATE_NOOP("Words", "“%1” is a date as spreadsheets count days: %2.")},
    CodeText{"date_short_year",
             QT_TRANSLATE_NOOP("Words", "“%1” has a year of two digits. It is taken for %2.")},
    CodeText{
        "appliance_kind_unclear",
        QT_TRANSLATE_NOOP(
            "Words",
            "“%1” leaves open what kind of appliance it is. The word is kept in the appliance's notes.")},
    CodeText{
        "flue_unknown",
        QT_TRANSLATE_NOOP(
            "Words", "Which flue type “%1” means can't be told. The word is kept in the appliance's notes.")},
    CodeText{"party_without_name",
             QT_TRANSLATE_NOOP("Words", "%1 has no name. What is given (%2) is kept in the access notes.")},
    CodeText{"merge_differs", QT_TRANSLATE_NOOP("Words", "%1: “%2” stays; the file has “%3”.")},
    CodeText{"role_held", QT_TRANSLATE_NOOP("Words", "%1: “%2” stays; the file names “%3”.")},
    CodeText{"check_known", QT_TRANSLATE_NOOP("Words", "There is a visit of %1 already.")},
};

constexpr std::array kFieldTexts{
    CodeText{"ignored", QT_TRANSLATE_NOOP("Words", "(not taken)")},
    CodeText{"address", QT_TRANSLATE_NOOP("Words", "Address, all in one")},
    CodeText{"house_number", QT_TRANSLATE_NOOP("Words", "House number or name")},
    CodeText{"line1", QT_TRANSLATE_NOOP("Words", "Address line 1")},
    CodeText{"line2", QT_TRANSLATE_NOOP("Words", "Address line 2")},
    CodeText{"line3", QT_TRANSLATE_NOOP("Words", "Address line 3")},
    CodeText{"town", QT_TRANSLATE_NOOP("Words", "Town")},
    CodeText{"postcode", QT_TRANSLATE_NOOP("Words", "Postcode")},
    CodeText{"uprn", QT_TRANSLATE_NOOP("Words", "UPRN")},
    CodeText{"country", QT_TRANSLATE_NOOP("Words", "Country")},
    CodeText{"access_notes", QT_TRANSLATE_NOOP("Words", "Access notes")},
    CodeText{"notes", QT_TRANSLATE_NOOP("Words", "Notes (kept with the access notes)")},
    CodeText{"last_check", QT_TRANSLATE_NOOP("Words", "Date of the last check")},
    CodeText{"gas", QT_TRANSLATE_NOOP("Words", "Gas")},
    CodeText{"mprn", QT_TRANSLATE_NOOP("Words", "MPRN")},
    CodeText{"meter_serial", QT_TRANSLATE_NOOP("Words", "Meter serial number")},
    CodeText{"meter_place", QT_TRANSLATE_NOOP("Words", "Place of the meter")},
    CodeText{"party_name", QT_TRANSLATE_NOOP("Words", "name")},
    CodeText{"party_title", QT_TRANSLATE_NOOP("Words", "title")},
    CodeText{"party_first_name", QT_TRANSLATE_NOOP("Words", "first name")},
    CodeText{"party_surname", QT_TRANSLATE_NOOP("Words", "surname")},
    CodeText{"party_telephone", QT_TRANSLATE_NOOP("Words", "telephone")},
    CodeText{"party_email", QT_TRANSLATE_NOOP("Words", "e-mail")},
    CodeText{"party_address", QT_TRANSLATE_NOOP("Words", "address")},
    CodeText{"party_town", QT_TRANSLATE_NOOP("Words", "town")},
    CodeText{"party_postcode", QT_TRANSLATE_NOOP("Words", "postcode")},
    CodeText{"appliance_kind", QT_TRANSLATE_NOOP("Words", "kind")},
    CodeText{"appliance_make", QT_TRANSLATE_NOOP("Words", "make")},
    CodeText{"appliance_model", QT_TRANSLATE_NOOP("Words", "model")},
    CodeText{"appliance_serial", QT_TRANSLATE_NOOP("Words", "serial number")},
    CodeText{"appliance_gc", QT_TRANSLATE_NOOP("Words", "GC number")},
    CodeText{"appliance_place", QT_TRANSLATE_NOOP("Words", "room or place")},
    CodeText{"appliance_flue", QT_TRANSLATE_NOOP("Words", "flue type")},
};

constexpr std::array kFateTexts{
    CodeText{"new", QT_TRANSLATE_NOOP("Words", "new")},
    CodeText{"merged", QT_TRANSLATE_NOOP("Words", "fills what is empty")},
    CodeText{"kept_both", QT_TRANSLATE_NOOP("Words", "kept beside it")},
    CodeText{"skipped", QT_TRANSLATE_NOOP("Words", "left out: there already")},
    CodeText{"set_aside", QT_TRANSLATE_NOOP("Words", "set aside: doubtful")},
    CodeText{"left_out", QT_TRANSLATE_NOOP("Words", "left out")},
    CodeText{"refused", QT_TRANSLATE_NOOP("Words", "can't be taken")},
};

constexpr std::array kListTexts{
    CodeText{"premises", QT_TRANSLATE_NOOP("Words", "Premises")},
    CodeText{"people", QT_TRANSLATE_NOOP("Words", "People")},
    CodeText{"appliances", QT_TRANSLATE_NOOP("Words", "Appliances")},
    CodeText{"engineers", QT_TRANSLATE_NOOP("Words", "Engineers")},
    CodeText{"instruments", QT_TRANSLATE_NOOP("Words", "Instruments")},
    CodeText{"visits", QT_TRANSLATE_NOOP("Words", "Visits")},
    CodeText{"records", QT_TRANSLATE_NOOP("Words", "Records")},
    CodeText{"changes", QT_TRANSLATE_NOOP("Words", "Change log")},
};

// %1 is the appliance's number where there is one.
constexpr std::array kHeadingTexts{
    CodeText{"line1", QT_TRANSLATE_NOOP("Words", "Address line 1")},
    CodeText{"line2", QT_TRANSLATE_NOOP("Words", "Address line 2")},
    CodeText{"town", QT_TRANSLATE_NOOP("Words", "Town")},
    CodeText{"postcode", QT_TRANSLATE_NOOP("Words", "Postcode")},
    CodeText{"country", QT_TRANSLATE_NOOP("Words", "Country")},
    CodeText{"uprn", QT_TRANSLATE_NOOP("Words", "UPRN")},
    CodeText{"customer_name", QT_TRANSLATE_NOOP("Words", "Customer name")},
    CodeText{"customer_telephone", QT_TRANSLATE_NOOP("Words", "Customer telephone")},
    CodeText{"customer_email", QT_TRANSLATE_NOOP("Words", "Customer e-mail")},
    CodeText{"landlord_name", QT_TRANSLATE_NOOP("Words", "Landlord name")},
    CodeText{"landlord_telephone", QT_TRANSLATE_NOOP("Words", "Landlord telephone")},
    CodeText{"landlord_email", QT_TRANSLATE_NOOP("Words", "Landlord e-mail")},
    CodeText{"agent_name", QT_TRANSLATE_NOOP("Words", "Agent name")},
    CodeText{"agent_telephone", QT_TRANSLATE_NOOP("Words", "Agent telephone")},
    CodeText{"agent_email", QT_TRANSLATE_NOOP("Words", "Agent e-mail")},
    CodeText{"home_owner_name", QT_TRANSLATE_NOOP("Words", "Home owner name")},
    CodeText{"home_owner_telephone", QT_TRANSLATE_NOOP("Words", "Home owner telephone")},
    CodeText{"home_owner_email", QT_TRANSLATE_NOOP("Words", "Home owner e-mail")},
    CodeText{"tenant_name", QT_TRANSLATE_NOOP("Words", "Tenant name")},
    CodeText{"tenant_telephone", QT_TRANSLATE_NOOP("Words", "Tenant telephone")},
    CodeText{"tenant_email", QT_TRANSLATE_NOOP("Words", "Tenant e-mail")},
    CodeText{"responsible_person_name", QT_TRANSLATE_NOOP("Words", "Responsible person name")},
    CodeText{"responsible_person_telephone", QT_TRANSLATE_NOOP("Words", "Responsible person telephone")},
    CodeText{"responsible_person_email", QT_TRANSLATE_NOOP("Words", "Responsible person e-mail")},
    CodeText{"installation_name", QT_TRANSLATE_NOOP("Words", "Installation")},
    CodeText{"gas", QT_TRANSLATE_NOOP("Words", "Gas")},
    CodeText{"mprn", QT_TRANSLATE_NOOP("Words", "MPRN")},
    CodeText{"meter_serial", QT_TRANSLATE_NOOP("Words", "Meter serial number")},
    CodeText{"meter_place", QT_TRANSLATE_NOOP("Words", "Meter place")},
    CodeText{"last_visit", QT_TRANSLATE_NOOP("Words", "Last visit")},
    CodeText{"appliance_kind", QT_TRANSLATE_NOOP("Words", "Appliance %1 kind")},
    CodeText{"appliance_make", QT_TRANSLATE_NOOP("Words", "Appliance %1 make")},
    CodeText{"appliance_model", QT_TRANSLATE_NOOP("Words", "Appliance %1 model")},
    CodeText{"appliance_serial", QT_TRANSLATE_NOOP("Words", "Appliance %1 serial number")},
    CodeText{"appliance_gc_number", QT_TRANSLATE_NOOP("Words", "Appliance %1 GC number")},
    CodeText{"appliance_place", QT_TRANSLATE_NOOP("Words", "Appliance %1 place")},
    CodeText{"appliance_flue", QT_TRANSLATE_NOOP("Words", "Appliance %1 flue type")},
    CodeText{"name", QT_TRANSLATE_NOOP("Words", "Name")},
    CodeText{"party_kind", QT_TRANSLATE_NOOP("Words", "Person or organisation")},
    CodeText{"party_line1", QT_TRANSLATE_NOOP("Words", "Address line 1")},
    CodeText{"party_line2", QT_TRANSLATE_NOOP("Words", "Address line 2")},
    CodeText{"party_town", QT_TRANSLATE_NOOP("Words", "Town")},
    CodeText{"party_postcode", QT_TRANSLATE_NOOP("Words", "Postcode")},
    CodeText{"telephone", QT_TRANSLATE_NOOP("Words", "Telephone")},
    CodeText{"email", QT_TRANSLATE_NOOP("Words", "E-mail")},
    CodeText{"language", QT_TRANSLATE_NOOP("Words", "Language")},
    CodeText{"reminder_since", QT_TRANSLATE_NOOP("Words", "May be reminded since")},
    CodeText{"reminder_withdrawn", QT_TRANSLATE_NOOP("Words", "Withdrawn on")},
    CodeText{"net_input", QT_TRANSLATE_NOOP("Words", "Net input")},
    CodeText{"net_input_unit", QT_TRANSLATE_NOOP("Words", "Net input, unit")},
    CodeText{"gross_input", QT_TRANSLATE_NOOP("Words", "Gross input")},
    CodeText{"gross_input_unit", QT_TRANSLATE_NOOP("Words", "Gross input, unit")},
    CodeText{"installed_on", QT_TRANSLATE_NOOP("Words", "Installed on")},
    CodeText{"owner", QT_TRANSLATE_NOOP("Words", "Whose it is")},
    CodeText{"removed_on", QT_TRANSLATE_NOOP("Words", "Removed on")},
    CodeText{"notes", QT_TRANSLATE_NOOP("Words", "Notes")},
    CodeText{"card_number", QT_TRANSLATE_NOOP("Words", "Card number")},
    CodeText{"card_expires", QT_TRANSLATE_NOOP("Words", "Card expires")},
    CodeText{"competences", QT_TRANSLATE_NOOP("Words", "Competence categories")},
    CodeText{"instrument_kind", QT_TRANSLATE_NOOP("Words", "Kind of instrument")},
    CodeText{"serial", QT_TRANSLATE_NOOP("Words", "Serial number")},
    CodeText{"resolution", QT_TRANSLATE_NOOP("Words", "Resolution")},
    CodeText{"resolution_unit", QT_TRANSLATE_NOOP("Words", "Resolution, unit")},
    CodeText{"repeatability", QT_TRANSLATE_NOOP("Words", "Repeatability")},
    CodeText{"repeatability_unit", QT_TRANSLATE_NOOP("Words", "Repeatability, unit")},
    CodeText{"accuracy", QT_TRANSLATE_NOOP("Words", "Accuracy")},
    CodeText{"accuracy_unit", QT_TRANSLATE_NOOP("Words", "Accuracy, unit")},
    CodeText{"drift", QT_TRANSLATE_NOOP("Words", "Drift in a minute")},
    CodeText{"drift_unit", QT_TRANSLATE_NOOP("Words", "Drift in a minute, unit")},
    CodeText{"certificate", QT_TRANSLATE_NOOP("Words", "Certificate")},
    CodeText{"calibrated_on", QT_TRANSLATE_NOOP("Words", "Calibrated on")},
    CodeText{"calibration_due", QT_TRANSLATE_NOOP("Words", "Calibration due")},
    CodeText{"date", QT_TRANSLATE_NOOP("Words", "Date")},
    CodeText{"engineer", QT_TRANSLATE_NOOP("Words", "Engineer")},
    CodeText{"visit_state", QT_TRANSLATE_NOOP("Words", "State")},
    CodeText{"record", QT_TRANSLATE_NOOP("Words", "Record")},
    CodeText{"revision", QT_TRANSLATE_NOOP("Words", "Revision")},
    CodeText{"record_kind", QT_TRANSLATE_NOOP("Words", "Kind of record")},
    CodeText{"issued_at", QT_TRANSLATE_NOOP("Words", "Issued at")},
    CodeText{"premises_address", QT_TRANSLATE_NOOP("Words", "Address")},
    CodeText{"outcome", QT_TRANSLATE_NOOP("Words", "Outcome")},
    CodeText{"replaced_by", QT_TRANSLATE_NOOP("Words", "Replaced by")},
    CodeText{"at", QT_TRANSLATE_NOOP("Words", "At")},
    CodeText{"by", QT_TRANSLATE_NOOP("Words", "By")},
    CodeText{"table", QT_TRANSLATE_NOOP("Words", "Table")},
    CodeText{"row", QT_TRANSLATE_NOOP("Words", "Row")},
    CodeText{"field", QT_TRANSLATE_NOOP("Words", "Field")},
    CodeText{"before", QT_TRANSLATE_NOOP("Words", "Before")},
    CodeText{"after", QT_TRANSLATE_NOOP("Words", "After")},
};

template <std::size_t N>
QString codeSaid(const Words& words, const std::array<CodeText, N>& table, std::string_view code,
                 const QStringList& arguments = {}) {
    const char* text = textOf(table, code);
    return text == nullptr ? QString::fromUtf8(code.data(), static_cast<qsizetype>(code.size()))
                           : words.say(text, arguments);
}

template <std::size_t N>
std::vector<std::string_view> codesIn(const std::array<CodeText, N>& table) {
    std::vector<std::string_view> codes;
    for (const auto& row : table) {
        codes.push_back(row.code);
    }
    return codes;
}

}  // namespace

QString importProblem(const Words& words, std::string_view code, const std::vector<std::string>& arguments) {
    QStringList said;
    for (const auto& argument : arguments) {
        said << qstring(argument);
    }
    if (code == "merge_differs" && !arguments.empty()) {
        said[0] = importField(words, arguments[0]);
    } else if ((code == "role_held" || code == "party_without_name") && !arguments.empty()) {
        const auto role = reg::roleKindFromCode(arguments[0]);
        said[0] = role ? words.role(*role) : said[0];
    }
    return codeSaid(words, kProblemTexts, code, said);
}

QString importField(const Words& words, std::string_view code) {
    return codeSaid(words, kFieldTexts, code);
}

QString importFate(const Words& words, std::string_view code) {
    return codeSaid(words, kFateTexts, code);
}

QString listName(const Words& words, std::string_view code) {
    return codeSaid(words, kListTexts, code);
}

QString listHeading(const Words& words, std::string_view code, int number) {
    const QString counted = number > 0 ? QString::number(number) : QString();
    return codeSaid(words, kHeadingTexts, code, {counted}).simplified();
}

QString listWord(const Words& words, std::string_view vocabulary, const std::string& code) {
    const auto orCode = [&](const QString& word) { return word.isEmpty() ? qstring(code) : word; };
    if (vocabulary == "country") {
        const auto country = reg::countryFromCode(code);
        return country ? words.country(*country) : qstring(code);
    }
    if (vocabulary == "gas") {
        const auto gas = rulebook::gasFromText(code);
        return gas ? words.gas(*gas) : qstring(code);
    }
    if (vocabulary == "party_kind") {
        const auto kind = reg::partyKindFromCode(code);
        return kind ? words.partyKind(*kind) : qstring(code);
    }
    if (vocabulary == "instrument_kind") {
        const auto kind = reg::instrumentKindFromCode(code);
        return kind ? words.instrumentKind(*kind) : qstring(code);
    }
    if (vocabulary == "flue") {
        const auto flue = reg::flueTypeFromCode(code);
        return flue ? flueType(words, *flue) : qstring(code);
    }
    if (vocabulary == "owner") {
        const auto whose = reg::ownerFromCode(code);
        return whose ? owner(words, *whose) : qstring(code);
    }
    if (vocabulary == "record_kind") {
        const auto kind = record::kindFromCode(code);
        return kind ? words.recordKind(*kind) : qstring(code);
    }
    if (vocabulary == "outcome") {
        const auto outcome = rulebook::outcomeFromText(code);
        return outcome ? words.outcome(*outcome) : qstring(code);
    }
    if (vocabulary == "appliance_kind") {
        return orCode(words.choice(reg::Item::ApplianceKind, code));
    }
    if (vocabulary == "visit_state") {
        return words.say(code == "closed" ? QT_TRANSLATE_NOOP("Words", "closed")
                                          : QT_TRANSLATE_NOOP("Words", "open"));
    }
    return qstring(code);
}

std::vector<std::string_view> knownImportProblems() {
    return codesIn(kProblemTexts);
}
std::vector<std::string_view> knownImportFields() {
    return codesIn(kFieldTexts);
}
std::vector<std::string_view> knownListHeadings() {
    return codesIn(kHeadingTexts);
}

}  // namespace hearth::ui::words
