// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/lists.h"

#include "core/record/doings_fields.h"

#include <algorithm>
#include <array>
#include <map>
#include <utility>

namespace hearth::exchange {
namespace {

using Cells = std::vector<CsvCell>;
using reg::RoleKind;

constexpr std::array<std::pair<ListKind, std::string_view>, 8> kListCodes{
    {{ListKind::Premises, "premises"},
     {ListKind::People, "people"},
     {ListKind::Appliances, "appliances"},
     {ListKind::Engineers, "engineers"},
     {ListKind::Instruments, "instruments"},
     {ListKind::Visits, "visits"},
     {ListKind::Records, "records"},
     {ListKind::Changes, "changes"}}};
constexpr std::array kListKinds{ListKind::Premises,  ListKind::People,      ListKind::Appliances,
                                ListKind::Engineers, ListKind::Instruments, ListKind::Visits,
                                ListKind::Records,   ListKind::Changes};

constexpr std::array kListRoles{RoleKind::Customer,  RoleKind::Landlord, RoleKind::Agent,
                                RoleKind::HomeOwner, RoleKind::Tenant,   RoleKind::ResponsiblePerson};

/// Cells and their columns, side by side, so that neither can be forgotten.
class ListRow {
  public:
    ListRow& add(std::string code, std::string text, int number = 0,
                 CsvCell::Kind kind = CsvCell::Kind::Text) {
        columns.push_back({std::move(code), number});
        cells.push_back({std::move(text), kind});
        return *this;
    }
    ListRow& address(const std::string& before, const reg::Address& address) {
        return add(before + "line1", address.line1)
            .add(before + "line2", address.line2)
            .add(before + "town", address.town)
            .add(before + "postcode", address.postcode);
    }
    ListRow& date(std::string code, const std::optional<calendar::Date>& date,
                  const std::string& typed = {}) {
        return add(std::move(code), !typed.empty() ? typed : date ? calendar::isoText(*date) : std::string());
    }
    /// A number as typed, with its unit in the next column.
    ListRow& typed(const std::string& code, const quantity::Typed& typed) {
        const bool isNumber = quantity::Decimal::parse(typed.text).has_value();
        return add(code, typed.text, 0, isNumber ? CsvCell::Kind::Number : CsvCell::Kind::Text)
            .add(code + "_unit",
                 typed.text.empty() ? std::string() : std::string(quantity::unitText(typed.unit)));
    }

    std::vector<ListColumn> columns;
    Cells cells;
};

void keep(ListTable& table, ListRow row) {
    table.columns = std::move(row.columns);
    table.rows.push_back(std::move(row.cells));
}

/// A table without rows still has its headings.
template <class Value, class Make>
ListTable tableOf(const std::vector<Value>& values, Make make) {
    ListTable table;
    for (const auto& value : values) {
        keep(table, make(value));
    }
    if (values.empty()) {
        keep(table, make(Value{}));
        table.rows.clear();
    }
    return table;
}

template <class Value>
std::map<UuidBytes, const Value*> byId(const std::vector<Value>& values) {
    std::map<UuidBytes, const Value*> index;
    for (const auto& value : values) {
        index.emplace(value.id.bytes, &value);
    }
    return index;
}

template <class Value>
const Value* at(const std::map<UuidBytes, const Value*>& index, const UuidBytes& id) {
    const auto found = index.find(id);
    return found == index.end() ? nullptr : found->second;
}

template <class Enumeration>
std::string worded(const ListWording& word, std::string_view vocabulary, Enumeration value) {
    return word(vocabulary, record::CodeOf<Enumeration>::text(value));
}

std::string kindWorded(const reg::Appliance& appliance, const ListWording& word) {
    return appliance.kind.empty() ? std::string() : word("appliance_kind", appliance.kind);
}

/// Everything of a premises within reach.
struct PremisesIndex {
    explicit PremisesIndex(const record::RegisterRows& rows)
        : premises(byId(rows.premises)),
          parties(byId(rows.parties)),
          installations(byId(rows.installations)) {
        for (const auto& installation : rows.installations) {
            installationsOf[installation.premises.bytes].push_back(&installation);
        }
        for (const auto& appliance : rows.appliances) {
            if (!appliance.removedOn) {
                appliancesOf[appliance.installation.bytes].push_back(&appliance);
            }
        }
        for (const auto& visit : rows.visits) {
            auto& last = lastVisit[visit.premises.bytes];
            last = last ? std::max(*last, visit.date) : visit.date;
        }
    }
    std::map<UuidBytes, const reg::Premises*> premises;
    std::map<UuidBytes, const reg::Party*> parties;
    std::map<UuidBytes, const reg::Installation*> installations;
    std::map<UuidBytes, std::vector<const reg::Installation*>> installationsOf;
    std::map<UuidBytes, std::vector<const reg::Appliance*>> appliancesOf;
    std::map<UuidBytes, std::optional<calendar::Date>> lastVisit;
    std::map<std::pair<UuidBytes, RoleKind>, const reg::Party*> holders;
};

void addPeople(ListRow& row, const PremisesIndex& index, const reg::Premises& premises) {
    for (const auto role : kListRoles) {
        const auto held = index.holders.find({premises.id.bytes, role});
        const reg::Party none{};
        const reg::Party& party = held == index.holders.end() ? none : *held->second;
        const std::string code(reg::codeOf(role));
        row.add(code + "_name", party.name)
            .add(code + "_telephone", party.telephone)
            .add(code + "_email", party.email);
    }
}

void addAppliances(ListRow& row, const std::vector<const reg::Appliance*>& appliances, std::size_t most,
                   const ListWording& word) {
    for (std::size_t i = 0; i < most; ++i) {
        const reg::Appliance none{};
        const reg::Appliance& appliance = i < appliances.size() ? *appliances[i] : none;
        const int number = static_cast<int>(i) + 1;
        row.add("appliance_kind", kindWorded(appliance, word), number)
            .add("appliance_make", appliance.make, number)
            .add("appliance_model", appliance.model, number)
            .add("appliance_serial", appliance.serial, number)
            .add("appliance_gc_number", appliance.gcNumber, number)
            .add("appliance_place", appliance.place, number)
            .add("appliance_flue",
                 appliance.flue == reg::FlueType::NotSaid ? std::string()
                                                          : worded(word, "flue", appliance.flue),
                 number);
    }
}

bool isSecret(const ChangeRow& row) {
    return row.table == "premises" && row.field == "access_notes";
}

}  // namespace

std::span<const ListKind> allListKinds() {
    return kListKinds;
}

std::string_view codeOf(ListKind kind) {
    return kListCodes.at(static_cast<std::size_t>(kind)).second;
}

std::optional<ListKind> listKindFromCode(std::string_view code) {
    for (const auto& [kind, known] : kListCodes) {
        if (known == code) {
            return kind;
        }
    }
    return std::nullopt;
}

ListTable premisesTable(const record::RegisterRows& rows, calendar::Date today, const ListWording& word) {
    PremisesIndex index(rows);
    for (const auto& role : rows.roles) {
        const bool stands = (!role.since || *role.since <= today) && (!role.until || *role.until >= today);
        if (const auto* party = at(index.parties, role.party.bytes); party != nullptr && stands) {
            index.holders[{role.premises.bytes, role.kind}] = party;
        }
    }
    std::size_t most = 0;
    for (const auto& [installation, appliances] : index.appliancesOf) {
        most = std::max(most, appliances.size());
    }
    ListTable table;
    const auto addRow = [&](const reg::Premises& premises, const reg::Installation* installation) {
        ListRow row;
        const reg::Installation none{};
        const reg::Installation& shown = installation == nullptr ? none : *installation;
        row.address({}, premises.address)
            .add("country", worded(word, "country", premises.country))
            .add("uprn", premises.uprn);
        addPeople(row, index, premises);
        row.add("installation_name", shown.name)
            .add("gas", installation == nullptr ? std::string() : worded(word, "gas", shown.gas))
            .add("mprn", shown.mprn)
            .add("meter_serial", shown.meterSerial)
            .add("meter_place", shown.meterPlace)
            .date("last_visit", index.lastVisit[premises.id.bytes]);
        addAppliances(row, index.appliancesOf[shown.id.bytes], most, word);
        keep(table, std::move(row));
    };
    for (const auto& premises : rows.premises) {
        const auto& installations = index.installationsOf[premises.id.bytes];
        if (installations.empty()) {
            addRow(premises, nullptr);
        }
        for (const auto* installation : installations) {
            addRow(premises, installation);
        }
    }
    if (rows.premises.empty()) {
        addRow({}, nullptr);
        table.rows.clear();
    }
    return table;
}

ListTable peopleTable(const record::RegisterRows& rows, const ListWording& word) {
    return tableOf(rows.parties, [&](const reg::Party& party) {
        ListRow row;
        row.add("name", party.name)
            .add("party_kind", worded(word, "party_kind", party.kind))
            .address("party_", party.address)
            .add("telephone", party.telephone)
            .add("email", party.email)
            .add("language", party.language)
            .date("reminder_since", party.reminderSince)
            .date("reminder_withdrawn", party.reminderWithdrawn);
        return row;
    });
}

ListTable appliancesTable(const record::RegisterRows& rows, const ListWording& word) {
    const PremisesIndex index(rows);
    return tableOf(rows.appliances, [&](const reg::Appliance& appliance) {
        const auto* installation = at(index.installations, appliance.installation.bytes);
        const auto* premises =
            installation == nullptr ? nullptr : at(index.premises, installation->premises.bytes);
        ListRow row;
        row.address({}, premises == nullptr ? reg::Address{} : premises->address)
            .add("installation_name", installation == nullptr ? std::string() : installation->name)
            .add("appliance_kind", kindWorded(appliance, word))
            .add("appliance_make", appliance.make)
            .add("appliance_model", appliance.model)
            .add("appliance_serial", appliance.serial)
            .add("appliance_gc_number", appliance.gcNumber)
            .add("appliance_place", appliance.place)
            .add("appliance_flue", appliance.flue == reg::FlueType::NotSaid
                                       ? std::string()
                                       : worded(word, "flue", appliance.flue))
            .add("gas", worded(word, "gas", appliance.gas))
            .typed("net_input", appliance.netInput)
            .typed("gross_input", appliance.grossInput)
            .date("installed_on", appliance.installedOn, appliance.installedOnText)
            .add("owner", appliance.owner == reg::Owner::NotSaid ? std::string()
                                                                 : worded(word, "owner", appliance.owner))
            .date("removed_on", appliance.removedOn, appliance.removedOnText)
            .add("notes", appliance.notes);
        return row;
    });
}

ListTable engineersTable(const record::RegisterRows& rows) {
    return tableOf(rows.engineers, [&](const reg::Engineer& engineer) {
        std::string categories;
        for (const auto& competence : rows.competences) {
            if (competence.engineer == engineer.id) {
                const std::string until = !competence.expiresText.empty() ? competence.expiresText
                                          : competence.expires ? calendar::isoText(*competence.expires)
                                                               : std::string();
                categories += (categories.empty() ? "" : "; ") + competence.category +
                              (until.empty() ? std::string() : " (" + until + ")");
            }
        }
        ListRow row;
        row.add("name", engineer.name)
            .add("card_number", engineer.cardNumber)
            .date("card_expires", engineer.cardExpires, engineer.cardExpiresText)
            .add("competences", categories);
        return row;
    });
}

ListTable instrumentsTable(const record::RegisterRows& rows, const ListWording& word) {
    return tableOf(rows.instruments, [&](const reg::Instrument& instrument) {
        ListRow row;
        row.add("name", instrument.name)
            .add("instrument_kind", worded(word, "instrument_kind", instrument.kind))
            .add("serial", instrument.serial)
            .typed("resolution", instrument.resolution)
            .typed("repeatability", instrument.repeatability)
            .typed("accuracy", instrument.accuracy)
            .typed("drift", instrument.drift)
            .add("certificate", instrument.certificate)
            .date("calibrated_on", instrument.calibratedOn, instrument.calibratedOnText)
            .date("calibration_due", instrument.calibrationDue, instrument.calibrationDueText);
        return row;
    });
}

ListTable visitsTable(const record::RegisterRows& rows, const ListWording& word) {
    const PremisesIndex index(rows);
    const auto engineers = byId(rows.engineers);
    return tableOf(rows.visits, [&](const reg::Visit& visit) {
        const auto* premises = at(index.premises, visit.premises.bytes);
        const auto* engineer = visit.engineer ? at(engineers, visit.engineer->bytes) : nullptr;
        ListRow row;
        row.date("date", visit.date, visit.dateText)
            .address({}, premises == nullptr ? reg::Address{} : premises->address)
            .add("engineer", engineer == nullptr ? std::string() : engineer->name)
            .add("visit_state", word("visit_state", visit.closed ? "closed" : "open"));
        return row;
    });
}

ListTable recordsTable(const std::vector<RecordRow>& rows, const ListWording& word) {
    return tableOf(rows, [&](const RecordRow& record) {
        ListRow row;
        row.add("record", record.number)
            .add("revision", std::to_string(record.revision), 0, CsvCell::Kind::Number)
            .add("record_kind", word("record_kind", record.kind))
            .add("issued_at", record.issuedAt)
            .add("premises_address", record.address)
            .add("customer_name", record.customer)
            .add("outcome", word("outcome", record.outcome))
            .add("replaced_by", record.replacedBy);
        return row;
    });
}

ListTable changesTable(const std::vector<ChangeRow>& rows) {
    return tableOf(rows, [&](const ChangeRow& change) {
        ListRow row;
        row.add("at", change.at)
            .add("by", change.by)
            .add("table", change.table)
            .add("row", change.row)
            .add("field", change.field)
            .add("before", isSecret(change) ? std::string() : change.before)
            .add("after", isSecret(change) ? std::string() : change.after);
        return row;
    });
}

std::string csvOf(const ListTable& table, const std::function<std::string(const ListColumn&)>& heading) {
    std::string text(kUtf8Mark);
    Cells headings;
    for (const auto& column : table.columns) {
        headings.push_back({heading(column)});
    }
    if (!headings.empty()) {
        text += csvLine(headings);
    }
    for (const auto& row : table.rows) {
        text += csvLine(row);
    }
    return text;
}

}  // namespace hearth::exchange
