// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/import_columns.h"

#include "core/exchange/folded.h"
#include "core/exchange/import_words.h"

#include <algorithm>
#include <array>
#include <utility>

namespace hearth::exchange {
namespace {

using reg::RoleKind;
using Field = ImportField;

struct FieldCode {
    Field field;
    std::string_view code;
};
constexpr std::array kFieldCodes{
    FieldCode{Field::Ignored, "ignored"},
    FieldCode{Field::Address, "address"},
    FieldCode{Field::HouseNumber, "house_number"},
    FieldCode{Field::Line1, "line1"},
    FieldCode{Field::Line2, "line2"},
    FieldCode{Field::Line3, "line3"},
    FieldCode{Field::Town, "town"},
    FieldCode{Field::Postcode, "postcode"},
    FieldCode{Field::Uprn, "uprn"},
    FieldCode{Field::Country, "country"},
    FieldCode{Field::AccessNotes, "access_notes"},
    FieldCode{Field::Notes, "notes"},
    FieldCode{Field::LastCheck, "last_check"},
    FieldCode{Field::Gas, "gas"},
    FieldCode{Field::Mprn, "mprn"},
    FieldCode{Field::MeterSerial, "meter_serial"},
    FieldCode{Field::MeterPlace, "meter_place"},
    FieldCode{Field::PartyName, "party_name"},
    FieldCode{Field::PartyTitle, "party_title"},
    FieldCode{Field::PartyFirstName, "party_first_name"},
    FieldCode{Field::PartySurname, "party_surname"},
    FieldCode{Field::PartyTelephone, "party_telephone"},
    FieldCode{Field::PartyEmail, "party_email"},
    FieldCode{Field::PartyAddress, "party_address"},
    FieldCode{Field::PartyTown, "party_town"},
    FieldCode{Field::PartyPostcode, "party_postcode"},
    FieldCode{Field::ApplianceKind, "appliance_kind"},
    FieldCode{Field::ApplianceMake, "appliance_make"},
    FieldCode{Field::ApplianceModel, "appliance_model"},
    FieldCode{Field::ApplianceSerial, "appliance_serial"},
    FieldCode{Field::ApplianceGc, "appliance_gc"},
    FieldCode{Field::AppliancePlace, "appliance_place"},
    FieldCode{Field::ApplianceFlue, "appliance_flue"},
};

constexpr std::array kFields = [] {
    std::array<Field, kFieldCodes.size()> fields{};
    for (std::size_t i = 0; i < fields.size(); ++i) {
        fields[i] = kFieldCodes[i].field;
    }
    return fields;
}();

template <class Phrases>
std::optional<Field> fieldCalled(const Phrases& phrases, std::string_view heading) {
    const auto found = std::find_if(phrases.begin(), phrases.end(),
                                    [&](const HeadingPhrase& known) { return known.phrase == heading; });
    return found == phrases.end() ? std::nullopt : std::optional(found->field);
}

/// Takes a phrase out of a heading where it stands as whole words.
bool takePhrase(std::string& heading, std::string_view phrase) {
    const std::string padded = ' ' + heading + ' ';
    const std::size_t at = padded.find(' ' + std::string(phrase) + ' ');
    if (at == std::string::npos) {
        return false;
    }
    heading = tidied(padded.substr(0, at) + ' ' + padded.substr(at + phrase.size() + 1));
    return true;
}

/// "landlords name" is the landlord's.
bool takeRole(std::string& heading, RoleKind& role) {
    for (const auto& [phrase, kind] : kRoleWords) {
        if (takePhrase(heading, phrase) || takePhrase(heading, std::string(phrase) + 's')) {
            role = kind;
            return true;
        }
    }
    return false;
}

/// Takes a number standing alone out of a heading; 0: none.
int takeGroup(std::string& heading) {
    for (int number = 1; number <= 9; ++number) {
        if (takePhrase(heading, std::to_string(number))) {
            return number;
        }
    }
    return 0;
}

std::optional<ColumnTarget> applianceTarget(std::string heading) {
    ColumnTarget target;
    for (const auto noun : kNouns) {
        const std::string before = heading;
        // "appliance1" and "app1" too
        for (int number = 0; number <= 9 && heading == before; ++number) {
            const std::string joined =
                std::string(noun) + (number > 0 ? std::to_string(number) : std::string());
            if (takePhrase(heading, joined)) {
                target.group = number;
                target.noun = noun;
            }
        }
        if (heading != before) {
            break;
        }
    }
    const int number = takeGroup(heading);
    target.group = std::max({1, target.group, number});
    if (std::find(kPlainNouns.begin(), kPlainNouns.end(), target.noun) != kPlainNouns.end()) {
        target.noun.clear();
        if (heading.empty()) {
            heading = "kind";  // "Appliance 1" alone
        }
    }
    const auto field = fieldCalled(kAppliancePhrases, heading);
    if (!field && !(heading.empty() && !target.noun.empty())) {
        return std::nullopt;
    }
    target.field = field.value_or(Field::ApplianceModel);  // "Boiler" alone: what boiler it is
    return target;
}

ColumnTarget partyTarget(Field field, RoleKind role) {
    ColumnTarget target;
    target.field = field;
    target.role = role;
    return target;
}

/// How many headings of a row are known.
std::size_t knownIn(const CsvRow& row) {
    return static_cast<std::size_t>(std::count_if(row.cells.begin(), row.cells.end(), [](const auto& cell) {
        return targetOfHeading(cell).field != Field::Ignored;
    }));
}

/// Headings that name their appliance by a noun get a group for each noun, after the numbered ones.
void numberNouns(std::vector<ColumnTarget>& targets) {
    int highest = 0;
    for (const auto& target : targets) {
        if (isOfAppliance(target.field) && target.noun.empty()) {
            highest = std::max(highest, target.group);
        }
    }
    std::vector<std::pair<std::string, int>> nouns;
    for (auto& target : targets) {
        if (!isOfAppliance(target.field) || target.noun.empty()) {
            continue;
        }
        const std::pair noun(target.noun, target.group);
        auto known = std::find(nouns.begin(), nouns.end(), noun);
        if (known == nouns.end()) {
            known = nouns.insert(nouns.end(), noun);
        }
        target.group = highest + 1 + static_cast<int>(known - nouns.begin());
    }
}

}  // namespace

bool isOfParty(ImportField field) {
    return field >= Field::PartyName && field <= Field::PartyPostcode;
}
bool isOfAppliance(ImportField field) {
    return field >= Field::ApplianceKind;
}

std::span<const ImportField> allImportFields() {
    return kFields;
}

std::string_view codeOf(ImportField field) {
    return kFieldCodes.at(static_cast<std::size_t>(field)).code;
}

std::optional<ImportField> importFieldFromCode(std::string_view code) {
    const auto found = std::find_if(kFieldCodes.begin(), kFieldCodes.end(),
                                    [&](const FieldCode& known) { return known.code == code; });
    return found == kFieldCodes.end() ? std::nullopt : std::optional(found->field);
}

ColumnTarget targetOfHeading(std::string_view text) {
    const std::string heading = folded(text);
    if (const auto field = fieldCalled(kPremisesPhrases, heading)) {
        return {*field};
    }
    if (const auto field = fieldCalled(kPartyPhrases, heading)) {
        return partyTarget(*field, RoleKind::Customer);
    }
    RoleKind role = RoleKind::Customer;
    std::string rest = heading;
    if (takeRole(rest, role)) {
        if (rest.empty()) {
            return partyTarget(Field::PartyName, role);
        }
        auto field = fieldCalled(kPartyPhrases, rest);
        field = field ? field : fieldCalled(kPartyAddressPhrases, rest);
        if (field) {
            return partyTarget(*field, role);
        }
    }
    return applianceTarget(heading).value_or(ColumnTarget{});
}

ImportColumns guessColumns(const CsvTable& table) {
    constexpr std::size_t kFirstRows = 10;  // titles and dates above the headings
    ImportColumns columns;
    std::size_t most = 0;
    std::size_t width = 0;
    for (std::size_t row = 0; row < table.rows.size(); ++row) {
        width = std::max(width, table.rows[row].cells.size());
        const std::size_t known = row < kFirstRows ? knownIn(table.rows[row]) : 0;
        if (known > most) {
            most = known;
            columns.headerRow = row;
        }
    }
    columns.targets.resize(width);
    if (table.rows.empty()) {
        return columns;
    }
    const auto& headings = table.rows[columns.headerRow].cells;
    for (std::size_t i = 0; i < headings.size(); ++i) {
        columns.targets[i] = targetOfHeading(headings[i]);
    }
    numberNouns(columns.targets);
    for (std::size_t i = 0; i < columns.targets.size(); ++i) {
        const auto& target = columns.targets[i];
        const bool maySame = target.field == Field::PartyTelephone || target.field == Field::Notes ||
                             target.field == Field::AccessNotes;
        const auto before = columns.targets.begin() + static_cast<std::ptrdiff_t>(i);
        if (!maySame && std::find(columns.targets.begin(), before, target) != before) {
            columns.targets[i] = {};  // the first column of that meaning has it
        }
    }
    return columns;
}

}  // namespace hearth::exchange
