// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/choices.h"
#include "core/store/bin_repository.h"
#include "core/store/due_facts.h"

#include <algorithm>
#include <cstring>
#include <unordered_map>

/// Reads what deadlines come from: of one premises, or of all at once, table by table.
namespace hearth::store {
namespace {

using calendar::Date;

/// The end of a UUID is its random part.
struct KeyHash {
    std::size_t operator()(const UuidBytes& key) const noexcept {
        std::uint64_t end = 0;
        std::memcpy(&end, key.data() + sizeof end, sizeof end);
        return static_cast<std::size_t>(end);
    }
};

std::optional<Date> dateAt(const Columns& row, int column) {
    return row.isNull(column) ? std::nullopt : calendar::fromIso(row.text(column));
}
std::optional<UuidBytes> keyAt(const Columns& row, int column) {
    return row.isNull(column) ? std::nullopt : std::optional(row.uuid(column));
}

class FactsReader {
  public:
    FactsReader(const Connection& db, std::optional<UuidBytes> only, std::string_view among = {})
        : m_db(db), m_only(only), m_among(among) {}

    std::vector<DueFacts> read() {
        readPremises();
        readPlans();
        readRoles();
        readAppliances();
        readExtensions();
        readRecordChecks();
        readEarlierChecks();
        readBookings();
        return std::move(m_facts);
    }

  private:
    /// " AND column = ?" for one premises, " AND column IN (...)" among some.
    [[nodiscard]] std::string ofOne(std::string_view column) const {
        if (m_only) {
            return " AND " + std::string(column) + " = ?";
        }
        return m_among.empty() ? std::string()
                               : " AND " + std::string(column) + " IN (" + std::string(m_among) + ")";
    }
    [[nodiscard]] Cells one() const { return m_only ? Cells{*m_only} : Cells(); }

    /// Null where the premises lie in the bin, or no duty asks.
    DueFacts* of(const UuidBytes& premises) {
        // Rows of one premises stand together, and most tables in the order of these.
        for (std::size_t near = m_at; near < std::min(m_at + kNear, m_facts.size()); ++near) {
            if (m_facts[near].premises == premises) {
                m_at = near;
                return &m_facts[near];
            }
        }
        const auto known = m_byKey.find(premises);
        if (known == m_byKey.end()) {
            return nullptr;
        }
        m_at = known->second;
        return &m_facts[m_at];
    }
    DueFacts* withDuty(const UuidBytes& premises) {
        DueFacts* facts = of(premises);
        const bool asks = facts != nullptr && dutyOf(*facts) != calendar::CheckDuty::None;
        return asks ? facts : nullptr;
    }

    void readPremises() {
        if (!m_only && m_among.empty()) {
            const auto all = static_cast<std::size_t>(m_db.number("SELECT count(*) FROM premises"));
            m_facts.reserve(all);
            m_byKey.reserve(all);
        }
        m_db.query("SELECT p.id, p.line1, p.line2, p.town, p.postcode, p.country FROM premises AS p WHERE " +
                       notInBin("p.id") + ofOne("p.id") + " ORDER BY p.id",
                   one(), [&](const Columns& row) {
                       DueFacts& facts = m_facts.emplace_back();
                       facts.premises = row.uuid(0);
                       facts.address = {row.text(1), row.text(2), row.text(3), row.text(4)};
                       facts.country = reg::countryFromCode(row.text(5)).value_or(facts.country);
                       m_byKey.emplace(facts.premises, m_facts.size() - 1);
                   });
    }

    void readPlans() {
        m_db.query("SELECT c.premises, c.duty, c.months, c.lease_begins FROM check_plans AS c WHERE TRUE" +
                       ofOne("c.premises"),
                   one(), [&](const Columns& row) {
                       if (DueFacts* facts = of(row.uuid(0))) {
                           facts->said = reg::checkDutyFromCode(row.text(1)).value_or(facts->said);
                           facts->months = row.number(2);
                           facts->leaseBegins = dateAt(row, 3);
                       }
                   });
    }

    void readRoles() {
        m_db.query("SELECT r.premises FROM roles AS r WHERE r.until IS NULL AND r.kind = 'home_owner'" +
                       ofOne("r.premises"),
                   one(), [&](const Columns& row) {
                       if (DueFacts* facts = of(row.uuid(0))) {
                           facts->isOwners = true;
                       }
                   });
        m_db.query(
            "SELECT r.premises, r.kind, r.party, q.name FROM roles AS r JOIN parties AS q ON q.id = "
            "r.party WHERE r.until IS NULL AND r.kind IN ('landlord', 'agent')" +
                ofOne("r.premises"),
            one(), [&](const Columns& row) {
                DueFacts* facts = of(row.uuid(0));
                if (facts == nullptr) {
                    return;
                }
                if (row.text(1) == "landlord") {
                    facts->landlord = row.uuid(2);
                    facts->landlordName = row.text(3);
                } else {
                    facts->agent = row.uuid(2);
                }
            });
    }

    void takeAppliance(DueFacts* facts, const Columns& row) {
        if (facts == nullptr) {
            return;
        }
        ++facts->applianceRows;
        if (row.isNull(4)) {
            facts->appliances.push_back(
                {row.uuid(1), row.text(2) == reg::codeOf(reg::Owner::Tenant), dateAt(row, 3), {}});
        }
    }

    void readAppliances() {
        const std::string columns = "SELECT a.installation, a.id, a.owner, a.installed_on, a.removed_on ";
        // An unvented cylinder is noted beside the gas work: no gas check of it falls due.
        const std::string standing = notInBin("a.id") + " AND " + notInBin("a.installation") +
                                     " AND a.kind <> '" + std::string(reg::choice::kUnventedCylinder) + "'";
        if (m_only) {
            m_db.query(columns +
                           "FROM installations AS i JOIN appliances AS a ON a.installation = i.id WHERE " +
                           standing + ofOne("i.premises") + " ORDER BY i.id, a.position, a.id",
                       one(), [&](const Columns& row) { takeAppliance(withDuty(*m_only), row); });
            return;
        }
        std::unordered_map<UuidBytes, DueFacts*, KeyHash> byInstallation(m_facts.size());
        m_db.query("SELECT i.id, i.premises FROM installations AS i WHERE TRUE" + ofOne("i.premises"), {},
                   [&](const Columns& row) {
                       if (DueFacts* facts = withDuty(row.uuid(1))) {
                           byInstallation.emplace(row.uuid(0), facts);
                       }
                   });
        m_db.query(
            columns + "FROM appliances AS a INDEXED BY appliances_for_due WHERE " + standing +
                " ORDER BY a.installation, a.position, a.id",
            {}, [&, last = UuidBytes{}, facts = static_cast<DueFacts*>(nullptr)](const Columns& row) mutable {
                if (const auto installation = row.uuid(0); installation != last) {
                    last = installation;
                    const auto found = byInstallation.find(installation);
                    facts = found == byInstallation.end() ? nullptr : found->second;
                }
                takeAppliance(facts, row);
            });
    }

    void readExtensions() {
        m_db.query("SELECT x.premises, x.appliance, x.others_due FROM check_extensions AS x WHERE TRUE" +
                       ofOne("x.premises"),
                   one(), [&](const Columns& row) {
                       DueFacts* facts = of(row.uuid(0));
                       if (facts == nullptr) {
                           return;
                       }
                       for (auto& appliance : facts->appliances) {
                           if (appliance.id == row.uuid(1)) {
                               appliance.extendedTo = dateAt(row, 2);
                           }
                       }
                   });
    }

    void takeCheck(const UuidBytes& premises, const std::optional<Date>& date, CheckFacts check) {
        DueFacts* facts = of(premises);
        if (facts != nullptr && date) {
            check.date = *date;
            facts->checks.push_back(check);
        }
    }

    void readRecordChecks() {
        m_db.query(
            "SELECT c.premises, c.date, c.appliance, c.counted_from, c.kind = 'landlord_safety' "
            "FROM record_checks AS c "
            "WHERE c.counts = 1" +
                ofOne("c.premises"),
            one(), [&](const Columns& row) {
                takeCheck(row.uuid(0), dateAt(row, 1),
                          {{}, row.uuid(2), dateAt(row, 3), true, row.integer(4) == 1});
            });
    }

    void readEarlierChecks() {
        m_db.query("SELECT e.premises, e.date, e.appliance FROM earlier_checks AS e WHERE " +
                       notInBin("e.id") + ofOne("e.premises"),
                   one(), [&](const Columns& row) {
                       takeCheck(row.uuid(0), dateAt(row, 1), {{}, keyAt(row, 2), {}, false, true});
                   });
    }

    void readBookings() {
        m_db.query(
            "SELECT b.premises, b.id, b.date, b.engineer FROM bookings AS b WHERE b.state = 'booked' "
            "AND " +
                notInBin("b.id") + ofOne("b.premises"),
            one(), [&](const Columns& row) {
                const auto date = dateAt(row, 2);
                DueFacts* facts = of(row.uuid(0));
                if (facts != nullptr && date) {
                    facts->bookings.push_back({row.uuid(1), *date, keyAt(row, 3)});
                }
            });
    }

    static constexpr std::size_t kNear = 4;

    const Connection& m_db;
    std::optional<UuidBytes> m_only;
    std::string_view m_among;
    std::vector<DueFacts> m_facts;
    std::unordered_map<UuidBytes, std::size_t, KeyHash> m_byKey;
    std::size_t m_at = 0;  // the one that was asked for last
};

}  // namespace

std::optional<DueFacts> readDueFacts(const Connection& db, const UuidBytes& premises) {
    auto facts = FactsReader(db, premises).read();
    return facts.empty() ? std::nullopt : std::optional(std::move(facts.front()));
}

std::vector<DueFacts> readDueFactsAmong(const Connection& db, std::string_view premises) {
    return FactsReader(db, std::nullopt, premises).read();
}

}  // namespace hearth::store
