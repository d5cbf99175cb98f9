// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/register_repository.h"

#include "core/record/number_form.h"
#include "core/store/bin_repository.h"
#include "core/store/edit.h"
#include "core/store/kept_repository.h"
#include "core/store/search_query.h"

#include <algorithm>
#include <cassert>

namespace hearth::store {
namespace {

bool isAmong(const std::vector<reg::PipeSection>& sections, const UuidBytes& id) {
    return std::any_of(sections.begin(), sections.end(),
                       [&](const reg::PipeSection& section) { return section.id.bytes == id; });
}

/// What hangs at the end of a pipe stands in the same premises.
void refuseAppliance(const Connection& db, reg::InstallationId installation, reg::ApplianceId appliance) {
    const auto ofThem = db.number(
        "SELECT count(*) FROM appliances AS a JOIN installations AS i ON i.id = a.installation "
        "JOIN installations AS p ON p.premises = i.premises WHERE a.id = ? AND p.id = ?",
        {appliance.bytes, installation.bytes});
    if (ofThem == 0) {
        throw Failure(ErrorCode::NotFound, {"appliances", appliance.text()});
    }
}

}  // namespace

FirmRow readFirmRow(const Connection& db) {
    auto rows = valuesWhere<FirmRow>(db, {});
    if (rows.empty()) {
        throw Failure(ErrorCode::StoreDamaged, {db.path(), "firm"});
    }
    return std::move(rows.front());
}

reg::Firm readFirm(const Connection& db) {
    return readFirmRow(db).firm;
}

void saveFirm(Session& session, const reg::Firm& firm) {
    Edit edit(session);
    FirmRow row = readFirmRow(session.db);
    if (firm.numberForm != row.firm.numberForm) {
        static_cast<void>(valueOrThrow(record::numberFormFrom(firm.numberForm)));
    }
    const bool demonstration = row.firm.demonstration;
    row.firm = firm;
    row.firm.demonstration = demonstration;  // settled when the store was made
    edit.put(row);
    edit.commit();
}

std::vector<reg::Engineer> readEngineers(const Connection& db) {
    return valuesWhere<reg::Engineer>(db,
                                      "WHERE " + notInBin("t.id") + " ORDER BY t.name COLLATE NOCASE, t.id");
}

std::vector<reg::Instrument> readInstruments(const Connection& db) {
    return valuesWhere<reg::Instrument>(
        db, "WHERE " + notInBin("t.id") + " ORDER BY t.name COLLATE NOCASE, t.id");
}

std::string customerOf(std::string_view column) {
    return "coalesce((SELECT c.name FROM roles AS r JOIN parties AS c ON c.id = r.party WHERE r.premises = " +
           std::string(column) +
           " AND r.until IS NULL AND r.kind IN ('customer', 'landlord', 'home_owner') "
           "ORDER BY instr('customer landlord home_owner', r.kind) LIMIT 1), '')";
}

std::vector<reg::Party> findParties(const Connection& db, const std::string& search, int limit) {
    Cells values;
    const std::string condition = matching(Indexed::Party, search, "t.id", limit, values);
    values.emplace_back(std::int64_t{limit});
    return valuesWhere<reg::Party>(
        db,
        "WHERE " + condition + " AND " + notInBin("t.id") + " ORDER BY t.name COLLATE NOCASE, t.id LIMIT ?",
        values);
}

std::vector<reg::VisitFile::Holder> readHolders(const Session& session, reg::PremisesId premises) {
    return readHoldersAt(session.db, premises, session.clock.today());
}

std::vector<reg::Installation> readInstallations(const Connection& db, reg::PremisesId premises) {
    return valuesWhere<reg::Installation>(
        db, "WHERE t.premises = ? AND " + notInBin("t.id") + " ORDER BY t.id", {premises.bytes});
}

std::vector<reg::PipeSection> readPipes(const Connection& db, reg::InstallationId installation) {
    return valuesWhere<reg::PipeSection>(db, "WHERE t.installation = ? ORDER BY t.position, t.id",
                                         {installation.bytes});
}

void savePipes(Session& session, reg::InstallationId installation,
               const std::vector<reg::PipeSection>& sections) {
    Edit edit(session);
    for (const auto& standing : readPipes(session.db, installation)) {
        if (!isAmong(sections, standing.id.bytes)) {
            edit.remove(tableOf<reg::PipeSection>(), standing.id.bytes);
        }
    }
    for (const auto& section : sections) {
        assert(section.installation == installation);
        if (section.appliance) {
            refuseAppliance(session.db, installation, *section.appliance);
        }
        edit.put(section);
    }
    edit.commit();
}

template <class Value>
void saveOne(Session& session, const Value& value) {
    assert(!value.id.isNull());
    Edit edit(session);
    edit.put(value);
    edit.commit();
}
template void saveOne(Session&, const reg::Engineer&);
template void saveOne(Session&, const reg::Instrument&);
template void saveOne(Session&, const reg::Premises&);
template void saveOne(Session&, const reg::Party&);
template void saveOne(Session&, const reg::Installation&);
template void saveOne(Session&, const reg::Visit&);
template void saveOne(Session&, const reg::Competence&);
template void saveOne(Session&, const reg::AccessAttempt&);
template void saveOne(Session&, const reg::Letter&);
template void saveOne(Session&, const reg::Booking&);
template void saveOne(Session&, const reg::Situation&);

}  // namespace hearth::store
