// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/import_working.h"

#include "core/exchange/folded.h"
#include "core/exchange/import_address.h"
#include "core/register/forms.h"

#include <algorithm>
#include <utility>

namespace hearth::exchange {
namespace {

using Field = ImportField;

std::string mprnKey(const std::string& mprn) {
    return mprn.size() >= 6 && mprn.find_first_not_of("0123456789") == std::string::npos ? mprn
                                                                                         : std::string();
}

std::string uprnKey(const std::string& uprn) {
    const std::size_t first = uprn.find_first_not_of('0');
    return reg::isUprn(uprn) && first != std::string::npos ? uprn.substr(first) : std::string();
}

std::string telephoneKey(const reg::Party& party) {
    return reg::telephoneE164(party.telephone).value_or(folded(party.telephone));
}

/// Fills a text that is empty; says where both have one and they differ.
class Filler {
  public:
    Filler(int line, std::vector<ProblemAt>& problems) : m_line(line), m_problems(problems) {}

    void fill(std::string& kept, const std::string& from, Field field) {
        if (from.empty() || folded(kept) == folded(from)) {
            return;
        }
        if (kept.empty()) {
            kept = from;
            changed = true;
        } else {
            m_problems.push_back(
                {m_line, -1, ImportProblem::MergeDiffers, {std::string(codeOf(field)), kept, from}});
        }
    }
    /// What is written down freely is added where it is not there yet.
    void add(std::string& kept, const std::string& from) {
        if (!from.empty() && kept.find(from) == std::string::npos) {
            kept += (kept.empty() ? "" : "\n") + from;
            changed = true;
        }
    }

    bool changed = false;

  private:
    int m_line;
    std::vector<ProblemAt>& m_problems;
};

bool fillParty(reg::Party& kept, const reg::Party& from, int line, std::vector<ProblemAt>& problems) {
    Filler filler(line, problems);
    filler.fill(kept.telephone, telephoneKey(kept) == telephoneKey(from) ? std::string() : from.telephone,
                Field::PartyTelephone);
    filler.fill(kept.email, from.email, Field::PartyEmail);
    if (kept.address == reg::Address{}) {
        filler.changed |= from.address != reg::Address{};
        kept.address = from.address;
    } else if (from.address != reg::Address{}) {
        filler.fill(kept.address.line1, from.address.line1, Field::PartyAddress);
        filler.fill(kept.address.town, from.address.town, Field::PartyTown);
        filler.fill(kept.address.postcode, from.address.postcode, Field::PartyPostcode);
    }
    filler.add(kept.notes, from.notes);
    return filler.changed;
}

bool fillPremises(reg::Premises& kept, const reg::Premises& from, int line,
                  std::vector<ProblemAt>& problems) {
    Filler filler(line, problems);
    const std::string key = premisesKey(kept.address);
    if (key.empty() || key != premisesKey(from.address)) {  // "1 A St" and "1 A Street" do not differ
        filler.fill(kept.address.line1, from.address.line1, Field::Line1);
    }
    filler.fill(kept.address.line2, from.address.line2, Field::Line2);
    filler.fill(kept.address.town, from.address.town, Field::Town);
    filler.fill(kept.address.postcode, from.address.postcode, Field::Postcode);
    filler.fill(kept.uprn,
                uprnKey(kept.uprn) == uprnKey(from.uprn) && !kept.uprn.empty() ? std::string() : from.uprn,
                Field::Uprn);
    filler.add(kept.accessNotes, from.accessNotes);
    return filler.changed;
}

bool fillInstallation(reg::Installation& kept, const RowContent& row, std::vector<ProblemAt>& problems) {
    Filler filler(row.line, problems);
    filler.fill(kept.mprn, row.installation.mprn, Field::Mprn);
    filler.fill(kept.meterSerial, row.installation.meterSerial, Field::MeterSerial);
    filler.fill(kept.meterPlace, row.installation.meterPlace, Field::MeterPlace);
    if (row.saysGas && kept.gas != row.installation.gas) {
        std::string gas(rulebook::gasText(kept.gas));
        filler.fill(gas, std::string(rulebook::gasText(row.installation.gas)), Field::Gas);
    }
    return filler.changed;
}

/// The same appliance: the same serial number; where one has none, something that both say is the same and
/// nothing differs.
bool isSameAppliance(const reg::Appliance& a, const reg::Appliance& b) {
    if (!a.serial.empty() && !b.serial.empty()) {
        return folded(a.serial) == folded(b.serial);
    }
    bool differs = false;
    bool agrees = false;
    const auto hold = [&](const std::string& one, const std::string& other, bool tells) {
        const bool both = !one.empty() && !other.empty();
        differs |= both && folded(one) != folded(other);
        agrees |= tells && both && folded(one) == folded(other);
    };
    hold(a.kind, b.kind, true);
    hold(a.make, b.make, true);
    hold(a.model, b.model, true);
    hold(a.place, b.place, false);
    return agrees && !differs;
}

bool fillAppliance(reg::Appliance& kept, const reg::Appliance& from, int line,
                   std::vector<ProblemAt>& problems) {
    Filler filler(line, problems);
    filler.fill(kept.make, from.make, Field::ApplianceMake);
    filler.fill(kept.model, from.model, Field::ApplianceModel);
    filler.fill(kept.serial, from.serial, Field::ApplianceSerial);
    filler.fill(kept.gcNumber, from.gcNumber, Field::ApplianceGc);
    filler.fill(kept.place, from.place, Field::AppliancePlace);
    if (kept.flue == reg::FlueType::NotSaid && from.flue != reg::FlueType::NotSaid) {
        kept.flue = from.flue;
        filler.changed = true;
    }
    filler.add(kept.notes, from.notes);
    return filler.changed;
}

template <class Value>
std::vector<Working<Value>> workingOf(const std::vector<Value>& values) {
    std::vector<Working<Value>> working;
    working.reserve(values.size());
    for (const auto& value : values) {
        working.push_back({value});
    }
    return working;
}

template <class Value>
void takeChanged(const std::vector<Working<Value>>& from, std::vector<Value>& to) {
    for (const auto& one : from) {
        if (one.changed) {
            to.push_back(one.value);
        }
    }
}

template <class Value>
int newAmong(const std::vector<Working<Value>>& values) {
    return static_cast<int>(
        std::count_if(values.begin(), values.end(), [](const auto& one) { return one.line > 0; }));
}

}  // namespace

WorkingRegister::WorkingRegister(const KnownRegister& known, std::string remark,
                                 const std::function<UuidBytes()>& newId)
    : m_newId(newId),
      m_remark(std::move(remark)),
      m_parties(workingOf(known.parties)),
      m_premises(workingOf(known.premises)),
      m_roles(workingOf(known.roles)),
      m_installations(workingOf(known.installations)),
      m_appliances(workingOf(known.appliances)) {
    for (std::size_t i = 0; i < m_premises.size(); ++i) {
        index(i);
    }
    for (std::size_t i = 0; i < m_parties.size(); ++i) {
        indexParty(i);
    }
    for (std::size_t i = 0; i < m_installations.size(); ++i) {
        const auto& installation = m_installations[i].value;
        m_installationsOf.emplace(installation.premises.bytes, i);
        if (const auto key = mprnKey(installation.mprn); !key.empty()) {
            m_premisesByMprn.emplace(key, installation.premises.bytes);
        }
    }
    for (std::size_t i = 0; i < m_appliances.size(); ++i) {
        m_appliancesOf.emplace(m_appliances[i].value.installation.bytes, i);
    }
    for (std::size_t i = 0; i < m_roles.size(); ++i) {
        m_roleOf.emplace(std::pair(m_roles[i].value.premises.bytes, m_roles[i].value.kind), i);
    }
    for (const auto& [premises, date] : known.visits) {
        m_visitDays.emplace(premises.bytes, calendar::isoText(date));
    }
}

void WorkingRegister::index(std::size_t premises) {
    const auto& value = m_premises[premises].value;
    m_premisesById.emplace(value.id.bytes, premises);
    if (const auto key = premisesKey(value.address); !key.empty()) {
        m_premisesByKey.emplace(key, premises);
    }
    if (const auto key = uprnKey(value.uprn); !key.empty()) {
        m_premisesByUprn.emplace(key, premises);
    }
}

void WorkingRegister::indexParty(std::size_t party) {
    m_partiesByName.emplace(folded(m_parties[party].value.name), party);
}

std::optional<Met> WorkingRegister::met(const RowContent& row) const {
    const auto found = [&](const auto& index, const std::string& key) -> const Working<reg::Premises>* {
        const auto at = key.empty() ? index.end() : index.find(key);
        return at == index.end() ? nullptr : &m_premises[at->second];
    };
    const auto* premises = found(m_premisesByUprn, uprnKey(row.premises.uprn));
    MetBy by = MetBy::Uprn;
    if (premises == nullptr) {
        const auto mprn = m_premisesByMprn.find(mprnKey(row.installation.mprn));
        by = MetBy::Mprn;
        premises = mprn == m_premisesByMprn.end() ? nullptr : &m_premises[m_premisesById.at(mprn->second)];
    }
    if (premises == nullptr) {
        by = MetBy::PostcodeAndNumber;
        premises = found(m_premisesByKey, premisesKey(row.premises.address));
    }
    return premises == nullptr ? std::nullopt : std::optional(Met{premises->value.id, by, premises->line});
}

void WorkingRegister::add(const RowContent& row, Problems& problems) {
    reg::Premises premises = row.premises;
    premises.id = made<reg::PremisesId>();
    m_premises.push_back({premises, row.line, true});
    index(m_premises.size() - 1);
    if (row.saysInstallation) {
        addInstallation(row, premises.id);
        const auto installation = m_installations.back().value;
        addAppliances(row, installation.id, problems);
        addCheck(row, installation, problems);
    }
    addPeople(row, premises.id, problems);
}

void WorkingRegister::addInstallation(const RowContent& row, reg::PremisesId premises) {
    reg::Installation installation = row.installation;
    installation.id = made<reg::InstallationId>();
    installation.premises = premises;
    m_installations.push_back({installation, row.line, true});
    m_installationsOf.emplace(premises.bytes, m_installations.size() - 1);
    if (const auto key = mprnKey(installation.mprn); !key.empty()) {
        m_premisesByMprn.emplace(key, premises.bytes);
    }
}

std::optional<std::size_t> WorkingRegister::installationFor(const RowContent& row,
                                                            reg::PremisesId premises) const {
    const auto [first, last] = m_installationsOf.equal_range(premises.bytes);
    for (auto at = first; at != last; ++at) {
        const auto& known = m_installations[at->second].value;
        if (!known.mprn.empty() && known.mprn == row.installation.mprn) {
            return at->second;
        }
    }
    return first != last && std::next(first) == last ? std::optional(first->second) : std::nullopt;
}

bool WorkingRegister::merge(const RowContent& row, reg::PremisesId into, Problems& problems) {
    const bool hasSome = m_installationsOf.count(into.bytes) > 0;
    const auto installation = installationFor(row, into);
    if (row.saysInstallation && hasSome && !installation) {
        return false;
    }
    auto& premises = m_premises[m_premisesById.at(into.bytes)];
    premises.changed |= fillPremises(premises.value, row.premises, row.line, problems);
    m_changedPremises.insert(into.bytes);
    if (row.saysInstallation) {
        if (!installation) {
            addInstallation(row, into);
        }
        auto& kept = installation ? m_installations[*installation] : m_installations.back();
        kept.changed |= fillInstallation(kept.value, row, problems);
        const reg::Installation value = kept.value;
        addAppliances(row, value.id, problems);
        addCheck(row, value, problems);
    }
    addPeople(row, into, problems);
    return true;
}

std::optional<std::size_t> WorkingRegister::partyLike(const RowParty& wanted) const {
    const std::string telephone = telephoneKey(wanted.party);
    const auto [first, last] = m_partiesByName.equal_range(folded(wanted.party.name));
    std::optional<std::size_t> byName;
    for (auto at = first; at != last; ++at) {
        const auto& known = m_parties[at->second].value;
        const bool sameTelephone = !telephone.empty() && telephone == telephoneKey(known);
        const bool sameEmail = !known.email.empty() && folded(known.email) == folded(wanted.party.email);
        if (sameTelephone || sameEmail) {
            return at->second;
        }
        const bool contradicts = (!telephone.empty() && !known.telephone.empty()) ||
                                 (!known.email.empty() && !wanted.party.email.empty());
        const bool trades = wanted.role == reg::RoleKind::Landlord || wanted.role == reg::RoleKind::Agent ||
                            known.kind == reg::PartyKind::Organisation;
        if (!contradicts && trades && !byName) {
            byName = at->second;
        }
    }
    return byName;
}

std::size_t WorkingRegister::partyOf(const RowParty& wanted, int line, Problems& problems) {
    if (const auto known = partyLike(wanted)) {
        auto& party = m_parties[*known];
        party.changed |= fillParty(party.value, wanted.party, line, problems);
        return *known;
    }
    reg::Party party = wanted.party;
    party.id = made<reg::PartyId>();
    m_parties.push_back({party, line, true});
    indexParty(m_parties.size() - 1);
    return m_parties.size() - 1;
}

void WorkingRegister::addPeople(const RowContent& row, reg::PremisesId premises, Problems& problems) {
    for (const auto& wanted : row.parties) {
        const auto held = m_roleOf.find({premises.bytes, wanted.role});
        if (held == m_roleOf.end()) {
            const reg::PartyId party = m_parties[partyOf(wanted, row.line, problems)].value.id;
            m_roles.push_back({{made<reg::RoleId>(), premises, party, wanted.role}, row.line, true});
            m_roleOf.emplace(std::pair(premises.bytes, wanted.role), m_roles.size() - 1);
            continue;
        }
        const auto party = std::find_if(m_parties.begin(), m_parties.end(), [&](const auto& known) {
            return known.value.id == m_roles[held->second].value.party;
        });
        if (party == m_parties.end()) {
            continue;
        }
        if (folded(party->value.name) == folded(wanted.party.name)) {
            party->changed |= fillParty(party->value, wanted.party, row.line, problems);
        } else {
            problems.push_back(
                {row.line,
                 -1,
                 ImportProblem::RoleHeld,
                 {std::string(reg::codeOf(wanted.role)), party->value.name, wanted.party.name}});
        }
    }
}

void WorkingRegister::addAppliances(const RowContent& row, reg::InstallationId installation,
                                    Problems& problems) {
    for (const auto& wanted : row.appliances) {
        const auto [first, last] = m_appliancesOf.equal_range(installation.bytes);
        const auto same = std::find_if(first, last, [&](const auto& at) {
            const auto& known = m_appliances[at.second];
            return known.line != row.line && isSameAppliance(known.value, wanted);
        });
        if (same != last) {
            auto& known = m_appliances[same->second];
            known.changed |= fillAppliance(known.value, wanted, row.line, problems);
            continue;
        }
        reg::Appliance appliance = wanted;
        appliance.id = made<reg::ApplianceId>();
        appliance.installation = installation;
        appliance.position = static_cast<int>(std::distance(first, last)) + 1;
        m_appliances.push_back({appliance, row.line, true});
        m_appliancesOf.emplace(installation.bytes, m_appliances.size() - 1);
    }
}

void WorkingRegister::addCheck(const RowContent& row, const reg::Installation& installation,
                               Problems& problems) {
    if (!row.lastCheck) {
        return;
    }
    const std::string day = calendar::isoText(*row.lastCheck);
    if (!m_visitDays.emplace(installation.premises.bytes, day).second) {
        problems.push_back({row.line, -1, ImportProblem::CheckKnown, {day}});
        return;
    }
    constexpr std::chrono::hours kNoon{12};  // the hour is not known
    PlannedCheck check;
    check.visit.id = made<reg::VisitId>();
    check.visit.premises = installation.premises;
    check.visit.installation = installation.id;
    check.visit.date = *row.lastCheck;
    check.visit.startedAt = Instant(std::chrono::sys_days(*row.lastCheck)) + kNoon;
    check.visit.closed = true;
    check.remark.id = made<reg::EntryId>();
    check.remark.visit = check.visit.id;
    check.remark.subject = reg::subject(check.visit.id);
    check.remark.item = reg::Item::VisitRemarks;
    check.remark.text = m_remark;
    m_checks.push_back(check);
}

void WorkingRegister::finish(ImportPlan& plan) const {
    takeChanged(m_parties, plan.parties);
    takeChanged(m_premises, plan.premises);
    takeChanged(m_roles, plan.roles);
    takeChanged(m_installations, plan.installations);
    takeChanged(m_appliances, plan.appliances);
    plan.checks = m_checks;
    plan.newPremises = newAmong(m_premises);
    plan.newParties = newAmong(m_parties);
    plan.newAppliances = newAmong(m_appliances);
    plan.changedPremises = static_cast<int>(
        std::count_if(m_changedPremises.begin(), m_changedPremises.end(),
                      [&](const UuidBytes& id) { return m_premises[m_premisesById.at(id)].line == 0; }));
}

}  // namespace hearth::exchange
