// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/import_plan.h"

#include <functional>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

/// The register as it grows while rows are planned; for import_plan.cpp only.
namespace hearth::exchange {

/// One value with what became of it.
template <class Value>
struct Working {
    Value value;
    int line = 0;  // the row that made it; 0: it was in the store
    bool changed = false;
};

/// What is there, found by what makes two of them the same.
class WorkingRegister {
  public:
    WorkingRegister(const KnownRegister& known, std::string remark, const std::function<UuidBytes()>& newId);

    /// The premises that a row means, if it is there.
    [[nodiscard]] std::optional<Met> met(const RowContent& row) const;
    /// Makes a new premises of a row with all that belongs to it.
    void add(const RowContent& row, std::vector<ProblemAt>& problems);
    /// Fills what is empty in one that is there. False, with nothing changed: it can't be told which of its
    /// installations is meant.
    [[nodiscard]] bool merge(const RowContent& row, reg::PremisesId into, std::vector<ProblemAt>& problems);

    /// Everything that changed, into the plan.
    void finish(ImportPlan& plan) const;

  private:
    using Problems = std::vector<ProblemAt>;

    void index(std::size_t premises);
    void indexParty(std::size_t party);
    [[nodiscard]] std::optional<std::size_t> installationFor(const RowContent& row,
                                                             reg::PremisesId premises) const;
    [[nodiscard]] std::optional<std::size_t> partyLike(const RowParty& wanted) const;
    void addInstallation(const RowContent& row, reg::PremisesId premises);
    void addPeople(const RowContent& row, reg::PremisesId premises, Problems& problems);
    void addAppliances(const RowContent& row, reg::InstallationId installation, Problems& problems);
    void addCheck(const RowContent& row, const reg::Installation& installation, Problems& problems);
    std::size_t partyOf(const RowParty& wanted, int line, Problems& problems);

    template <class IdType>
    [[nodiscard]] IdType made() const {
        return IdType{m_newId()};
    }

    const std::function<UuidBytes()>& m_newId;
    std::string m_remark;
    std::vector<Working<reg::Party>> m_parties;
    std::vector<Working<reg::Premises>> m_premises;
    std::vector<Working<reg::Role>> m_roles;
    std::vector<Working<reg::Installation>> m_installations;
    std::vector<Working<reg::Appliance>> m_appliances;
    std::vector<PlannedCheck> m_checks;
    std::set<std::pair<UuidBytes, std::string>> m_visitDays;

    std::map<UuidBytes, std::size_t> m_premisesById;
    std::map<std::string, std::size_t> m_premisesByKey;
    std::map<std::string, std::size_t> m_premisesByUprn;
    std::map<std::string, UuidBytes> m_premisesByMprn;
    std::multimap<std::string, std::size_t> m_partiesByName;
    std::multimap<UuidBytes, std::size_t> m_installationsOf;
    std::multimap<UuidBytes, std::size_t> m_appliancesOf;
    std::map<std::pair<UuidBytes, reg::RoleKind>, std::size_t> m_roleOf;
    std::set<UuidBytes> m_changedPremises;  // those of the store that got something
};

}  // namespace hearth::exchange
