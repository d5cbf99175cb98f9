// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/import_row.h"

#include "core/exchange/folded.h"
#include "core/exchange/import_address.h"
#include "core/register/forms.h"

#include <algorithm>
#include <array>
#include <utility>

namespace hearth::exchange {
namespace {

using Field = ImportField;
using reg::RoleKind;

struct CalledCode {
    std::string_view name;  // folded
    std::string_view code;
};
constexpr std::array kKindsCalled{
    CalledCode{"condensing boiler", reg::choice::kCondensingBoiler},
    CalledCode{"condensing combi", reg::choice::kCondensingBoiler},
    CalledCode{"condensing combi boiler", reg::choice::kCondensingBoiler},
    CalledCode{"boeler cyddwyso", reg::choice::kCondensingBoiler},
    CalledCode{"kociol kondensacyjny", reg::choice::kCondensingBoiler},
    CalledCode{"non condensing boiler", reg::choice::kNonCondensingBoiler},
    CalledCode{"back boiler", reg::choice::kBackBoiler},
    CalledCode{"warm air heater", reg::choice::kWarmAirHeater},
    CalledCode{"warm air unit", reg::choice::kWarmAirHeater},
    CalledCode{"gas fire", reg::choice::kGasFire},
    CalledCode{"tan nwy", reg::choice::kGasFire},
    CalledCode{"kominek gazowy", reg::choice::kGasFire},
    CalledCode{"decorative fire", reg::choice::kDecorativeFire},
    CalledCode{"decorative fuel effect", reg::choice::kDecorativeFire},
    CalledCode{"dfe", reg::choice::kDecorativeFire},
    CalledCode{"hob", reg::choice::kHotplate},
    CalledCode{"hotplate", reg::choice::kHotplate},
    CalledCode{"gas hob", reg::choice::kHotplate},
    CalledCode{"oven", reg::choice::kOven},
    CalledCode{"gas oven", reg::choice::kOven},
    CalledCode{"popty", reg::choice::kOven},
    CalledCode{"grill", reg::choice::kGrill},
    CalledCode{"range cooker", reg::choice::kRangeCooker},
    CalledCode{"tumble dryer", reg::choice::kTumbleDryer},
    CalledCode{"cabinet heater", reg::choice::kCabinetHeater},
    CalledCode{"catering appliance", reg::choice::kCatering},
    CalledCode{"unvented cylinder", reg::choice::kUnventedCylinder},
};

struct CalledGas {
    std::string_view name;
    rulebook::Gas gas;
};
constexpr std::array kGasesCalled{
    CalledGas{"natural gas", rulebook::Gas::NaturalGas},
    CalledGas{"natural", rulebook::Gas::NaturalGas},
    CalledGas{"ng", rulebook::Gas::NaturalGas},
    CalledGas{"nat gas", rulebook::Gas::NaturalGas},
    CalledGas{"mains gas", rulebook::Gas::NaturalGas},
    CalledGas{"mains", rulebook::Gas::NaturalGas},
    CalledGas{"nwy naturiol", rulebook::Gas::NaturalGas},
    CalledGas{"gaz ziemny", rulebook::Gas::NaturalGas},
    CalledGas{"propane", rulebook::Gas::Propane},
    CalledGas{"propan", rulebook::Gas::Propane},
    CalledGas{"propane lpg", rulebook::Gas::Propane},
    CalledGas{"lpg propane", rulebook::Gas::Propane},
    CalledGas{"butane lpg", rulebook::Gas::Butane},
    CalledGas{"lpg butane", rulebook::Gas::Butane},
    CalledGas{"lpg air mixture", rulebook::Gas::LpgAir},
    CalledGas{"butane", rulebook::Gas::Butane},
    CalledGas{"butan", rulebook::Gas::Butane},
    CalledGas{"bwtan", rulebook::Gas::Butane},
    CalledGas{"lpg air", rulebook::Gas::LpgAir},
};

struct CalledFlue {
    std::string_view name;
    reg::FlueType flue;
};
constexpr std::array kFluesCalled{CalledFlue{"room sealed", reg::FlueType::RoomSealed},
                                  CalledFlue{"rs", reg::FlueType::RoomSealed},
                                  CalledFlue{"balanced", reg::FlueType::RoomSealed},
                                  CalledFlue{"balanced flue", reg::FlueType::RoomSealed},
                                  CalledFlue{"fan flue", reg::FlueType::RoomSealed},
                                  CalledFlue{"open flue", reg::FlueType::OpenFlued},
                                  CalledFlue{"open flued", reg::FlueType::OpenFlued},
                                  CalledFlue{"of", reg::FlueType::OpenFlued},
                                  CalledFlue{"open", reg::FlueType::OpenFlued},
                                  CalledFlue{"conventional", reg::FlueType::OpenFlued},
                                  CalledFlue{"flueless", reg::FlueType::Flueless},
                                  CalledFlue{"fl", reg::FlueType::Flueless}};

template <class Table>
auto calledIn(const Table& table, std::string_view text) {
    const std::string name = folded(text);
    const auto found =
        std::find_if(table.begin(), table.end(), [&](const auto& known) { return known.name == name; });
    return found == table.end() ? nullptr : &*found;
}

bool isOrganisation(std::string_view name) {
    constexpr std::array<std::string_view, 22> kWords{
        "ltd",        "limited", "llp",        "plc",      "cyf",    "council",   "housing", "association",
        "lettings",   "estates", "properties", "property", "homes",  "group",     "trust",   "services",
        "management", "company", "co",         "school",   "church", "university"};
    const auto words = foldedWords(name);
    return std::any_of(words.begin(), words.end(), [&](const std::string& word) {
        return std::find(kWords.begin(), kWords.end(), word) != kWords.end();
    });
}

/// "1.00023E+11": a spreadsheet wrote a long number so, and the digits behind are gone.
bool isShortened(std::string_view cell) {
    const std::size_t e = cell.find_first_of("Ee");
    return e != std::string_view::npos && e > 0 && cell.find_first_not_of("0123456789.,") == e &&
           cell.substr(e + 1).find_first_not_of("+0123456789") == std::string_view::npos &&
           cell.size() > e + 1 && cell[e + 1] == '+';
}

bool looksLikeEmail(std::string_view text) {
    const std::size_t at = text.find('@');
    return at != std::string_view::npos && at > 0 && text.find('@', at + 1) == std::string_view::npos &&
           text.find('.', at + 2) != std::string_view::npos && text.back() != '.' &&
           text.find(' ') == std::string_view::npos;
}

void append(std::string& text, std::string_view more, std::string_view between) {
    if (!more.empty()) {
        text.append(text.empty() ? "" : between).append(more);
    }
}

/// Reads one row column by column, then puts together what several columns make.
class ImportRowReader {
  public:
    ImportRowReader(const CsvRow& row, const CsvRow& headings, const ImportColumns& columns,
                    const RowForm& form)
        : m_row(row), m_headings(headings), m_columns(columns), m_form(form) {
        m_content.line = row.line;
        m_content.premises.country = form.country;
        m_content.installation.gas = form.gas;
    }

    std::optional<RowContent> read() {
        for (m_column = 0; m_column < m_columns.targets.size(); ++m_column) {
            if (const std::string cell = cellAt(m_column); !cell.empty()) {
                m_saysSomething |= m_columns.targets[m_column].field != Field::Ignored;
                take(m_columns.targets[m_column], cell);
            }
        }
        if (!m_saysSomething) {
            return std::nullopt;
        }
        m_column = static_cast<std::size_t>(-1);
        checkRow();
        finishAddress();
        finishParties();
        finishAppliances();
        return std::move(m_content);
    }

  private:
    [[nodiscard]] std::string cellAt(std::size_t column) const {
        if (column >= m_row.cells.size()) {
            return {};
        }
        const std::string_view cell = withoutGuard(m_row.cells[column]);
        const Field field =
            column < m_columns.targets.size() ? m_columns.targets[column].field : Field::Ignored;
        const bool keepsLines = field == Field::Address || field == Field::PartyAddress ||
                                field == Field::Notes || field == Field::AccessNotes;
        const std::size_t end = cell.find_last_not_of(" \t\r\n");
        return keepsLines && end != std::string_view::npos ? std::string(cell.substr(0, end + 1))
                                                           : tidied(cell);
    }
    [[nodiscard]] std::string heading() const {
        return m_column < m_headings.cells.size() ? tidied(m_headings.cells[m_column]) : std::string();
    }

    void say(ImportProblem problem, std::vector<std::string> arguments = {}) {
        m_content.problems.push_back({m_row.line, static_cast<int>(m_column), problem, std::move(arguments)});
    }
    void check(bool right, ImportProblem problem, const std::string& cell) {
        if (!right) {
            say(isShortened(cell) ? ImportProblem::NumberShortened : problem,
                isShortened(cell) ? std::vector{heading(), cell} : std::vector{cell});
        }
    }

    void take(const ColumnTarget& target, const std::string& cell) {
        if (isOfParty(target.field)) {
            takeParty(target, cell);
        } else if (isOfAppliance(target.field)) {
            takeAppliance(target, cell);
        } else if (target.field >= Field::Gas) {
            takeInstallation(target.field, cell);
        } else {
            takePremises(target.field, cell);
        }
    }

    void takePremises(Field field, const std::string& cell) {
        reg::Premises& premises = m_content.premises;
        switch (field) {
            case Field::Postcode:
                premises.address.postcode = reg::postcodeIn(cell).value_or(cell);
                check(reg::postcodeIn(cell).has_value(), ImportProblem::PostcodeStrange, cell);
                break;
            case Field::Uprn:
                premises.uprn = cell;
                check(reg::isUprn(cell), ImportProblem::UprnStrange, cell);
                break;
            case Field::Country:
                premises.country = countryCalled(cell).value_or(m_form.country);
                check(countryCalled(cell).has_value(), ImportProblem::CountryUnknown, cell);
                m_countrySaid = countryCalled(cell).has_value();
                break;
            case Field::AccessNotes:
            case Field::Notes:
                append(premises.accessNotes, cell, "\n");
                break;
            case Field::LastCheck:
                takeLastCheck(cell);
                break;
            default:
                m_parts[field] = cell;
                break;
        }
    }

    void takeLastCheck(const std::string& cell) {
        const auto order = m_form.dateOrders.find(m_column);
        const auto read =
            readImportedDate(cell, order == m_form.dateOrders.end() ? DateOrder::DayFirst : order->second);
        if (!read) {
            say(ImportProblem::DateUnreadable, {heading(), cell});
            return;
        }
        if (read->date > m_form.today) {
            say(ImportProblem::DateInFuture, {heading(), cell});
        } else if (read->form == DateForm::Serial) {
            say(ImportProblem::DateSerial, {cell, calendar::isoText(read->date)});
        } else if (read->form == DateForm::ShortYear) {
            say(ImportProblem::DateShortYear, {cell, calendar::isoText(read->date)});
        }
        m_content.lastCheck = read->date;
    }

    void takeInstallation(Field field, const std::string& cell) {
        m_content.saysInstallation = true;
        reg::Installation& installation = m_content.installation;
        if (field == Field::Gas) {
            const auto* gas = calledIn(kGasesCalled, cell);
            check(gas != nullptr, ImportProblem::GasUnknown, cell);
            installation.gas = gas != nullptr ? gas->gas : m_form.gas;
            m_content.saysGas = gas != nullptr;
        } else if (field == Field::Mprn) {
            installation.mprn = cell;
            check(reg::isMprn(cell), ImportProblem::MprnStrange, cell);
        } else if (field == Field::MeterSerial) {
            installation.meterSerial = cell;
            check(!isShortened(cell), ImportProblem::NumberShortened, cell);
        } else {
            installation.meterPlace = cell;
        }
    }

    struct PartyParts {
        std::map<Field, std::string> texts;
        std::string telephones;  // those after the first, with their headings
    };

    void takeParty(const ColumnTarget& target, const std::string& cell) {
        auto& parts = m_parties[target.role];
        std::string& text = parts.texts[target.field];
        if (target.field != Field::PartyTelephone) {
            check(target.field != Field::PartyEmail || looksLikeEmail(cell), ImportProblem::EmailStrange,
                  cell);
            text = cell;
            return;
        }
        const std::string number = dialling(cell);
        if (text.empty()) {
            text = number;
        } else {
            append(parts.telephones, heading() + ": " + number, "\n");
        }
    }

    /// A spreadsheet that took the number for one has dropped its first 0.
    std::string dialling(const std::string& cell) {
        const bool digitsOnly = cell.find_first_not_of("0123456789 ") == std::string::npos;
        if (!reg::telephoneE164(cell) && digitsOnly && cell.front() != '0' &&
            reg::telephoneE164('0' + cell)) {
            say(ImportProblem::TelephoneZeroAdded, {cell});
            return '0' + cell;
        }
        check(reg::telephoneE164(cell).has_value(), ImportProblem::TelephoneStrange, cell);
        return cell;
    }

    void takeAppliance(const ColumnTarget& target, const std::string& cell) {
        const auto [at, isNew] = m_appliances.try_emplace(target.group);
        reg::Appliance& appliance = at->second;
        if (isNew && !target.noun.empty()) {
            m_kinds[target.group] = target.noun;
        }
        switch (target.field) {
            case Field::ApplianceKind:
                m_kinds[target.group] = cell;
                break;
            case Field::ApplianceMake:
                appliance.make = cell;
                break;
            case Field::ApplianceModel:
                appliance.model = cell;
                break;
            case Field::ApplianceSerial:
                appliance.serial = cell;
                check(!isShortened(cell), ImportProblem::NumberShortened, cell);
                break;
            case Field::ApplianceGc:
                appliance.gcNumber = cell;
                break;
            case Field::AppliancePlace:
                appliance.place = cell;
                break;
            default: {
                const auto* flue = calledIn(kFluesCalled, cell);
                appliance.flue = flue != nullptr ? flue->flue : reg::FlueType::NotSaid;
                if (flue == nullptr) {
                    say(ImportProblem::FlueUnknown, {cell});
                    append(appliance.notes, cell, "\n");
                }
                break;
            }
        }
    }

    void checkRow() {
        if (m_row.strangeQuote) {
            say(ImportProblem::StrangeQuote);
        }
        for (std::size_t column = m_headings.cells.size(); column < m_row.cells.size(); ++column) {
            const bool isTaken =
                column < m_columns.targets.size() && m_columns.targets[column].field != Field::Ignored;
            if (!isTaken && !tidied(m_row.cells[column]).empty()) {
                say(ImportProblem::RowTooLong, {tidied(m_row.cells[column])});
                return;
            }
        }
    }

    void finishAddress() {
        reg::Premises& premises = m_content.premises;
        reg::Address& address = premises.address;
        const std::string town = m_parts[Field::Town];
        if (!m_parts[Field::Address].empty()) {
            const auto split = splitAddress(m_parts[Field::Address],
                                            town.empty() ? TownStands::Within : TownStands::Elsewhere);
            const std::string postcode = address.postcode;
            address = split.address;
            address.postcode = postcode.empty() ? address.postcode : postcode;
            premises.country = !m_countrySaid && split.country ? *split.country : premises.country;
        }
        std::string first = m_parts[Field::HouseNumber];
        const bool isPlain =
            foldedWords(first).size() == 1 && first.find_first_of("0123456789") != std::string::npos;
        append(first, m_parts[Field::Line1], isPlain ? " " : ", ");
        append(first, address.line1, isPlain ? " " : ", ");
        address.line1 = first;
        append(address.line2, m_parts[Field::Line2], ", ");
        append(address.line2, m_parts[Field::Line3], ", ");
        address.town = town.empty() ? address.town : town;
        if (address.line1.empty()) {  // "Address 2" alone
            address.line1 = std::exchange(address.line2, {});
        }
        if (address.line1.empty()) {
            say(ImportProblem::AddressMissing);
            return;
        }
        if (address.postcode.empty()) {
            say(ImportProblem::PostcodeMissing);
        }
        if (address.town.empty()) {
            say(ImportProblem::TownMissing);
        }
    }

    void finishParties() {
        for (auto& [role, parts] : m_parties) {
            auto& texts = parts.texts;
            reg::Party party;
            party.name = texts[Field::PartyName];
            std::string name = texts[Field::PartyTitle];
            append(name, texts[Field::PartyFirstName], " ");
            append(name, texts[Field::PartySurname], " ");
            append(party.name, texts[Field::PartySurname].empty() && !party.name.empty() ? "" : name,
                   party.name.empty() ? "" : ", ");
            party.telephone = texts[Field::PartyTelephone];
            party.email = texts[Field::PartyEmail];
            party.notes = parts.telephones;
            const std::string town = texts[Field::PartyTown];
            const auto split = splitAddress(texts[Field::PartyAddress],
                                            town.empty() ? TownStands::Within : TownStands::Elsewhere);
            party.address = split.address;
            party.address.town = town.empty() ? party.address.town : town;
            if (const std::string postcode = texts[Field::PartyPostcode]; !postcode.empty()) {
                party.address.postcode = reg::postcodeIn(postcode).value_or(postcode);
            }
            party.kind = isOrganisation(party.name) ? reg::PartyKind::Organisation : reg::PartyKind::Person;
            keepParty(role, party);
        }
    }

    void keepParty(RoleKind role, const reg::Party& party) {
        if (!party.name.empty()) {
            m_content.parties.push_back({role, party});
            return;
        }
        std::string given = party.telephone;
        append(given, party.email, " ");
        append(given, party.notes, " ");
        append(given, party.address.line1, " ");
        if (!given.empty()) {
            say(ImportProblem::PartyWithoutName, {std::string(reg::codeOf(role)), given});
            append(m_content.premises.accessNotes, given, "\n");
        }
    }

    void finishAppliances() {
        for (auto& [group, appliance] : m_appliances) {
            if (const auto called = m_kinds.find(group); called != m_kinds.end()) {
                const auto kind = applianceKindCalled(called->second);
                appliance.kind = kind.value_or(std::string());
                if (!kind) {
                    say(ImportProblem::ApplianceKindUnclear, {called->second});
                    std::string notes = called->second;
                    append(notes, appliance.notes, "\n");
                    appliance.notes = notes;
                }
            }
            appliance.gas = m_content.installation.gas;
            appliance.position = static_cast<int>(m_content.appliances.size());
            m_content.appliances.push_back(appliance);
        }
        m_content.saysInstallation |= !m_content.appliances.empty() || m_content.lastCheck.has_value();
    }

    const CsvRow& m_row;
    const CsvRow& m_headings;
    const ImportColumns& m_columns;
    const RowForm& m_form;
    std::size_t m_column = 0;
    bool m_saysSomething = false;
    bool m_countrySaid = false;
    std::map<Field, std::string> m_parts;
    std::map<RoleKind, PartyParts> m_parties;
    std::map<int, reg::Appliance> m_appliances;
    std::map<int, std::string> m_kinds;
    RowContent m_content;
};

}  // namespace

std::optional<std::string> applianceKindCalled(std::string_view text) {
    const auto* kind = calledIn(kKindsCalled, text);
    return kind == nullptr ? std::nullopt : std::optional(std::string(kind->code));
}

std::optional<RowContent> readImportRow(const CsvRow& row, const CsvRow& headings,
                                        const ImportColumns& columns, const RowForm& form) {
    return ImportRowReader(row, headings, columns, form).read();
}

}  // namespace hearth::exchange
