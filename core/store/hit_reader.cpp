// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/hit_reader.h"

#include "core/store/bin_repository.h"
#include "core/store/register_repository.h"

#include <algorithm>

namespace hearth::store {
namespace {

std::string between(std::string_view first, std::string_view mark, std::string_view second) {
    std::string text(first);
    text.append(first.empty() || second.empty() ? "" : mark).append(second);
    return text;
}

bool isBegun(const SearchQuery::Way& way, const std::set<std::string>& words) {
    return std::all_of(way.begin(), way.end(), [&](const std::string& sought) {
        const auto found = words.lower_bound(sought);
        return found != words.end() && found->compare(0, sought.size(), sought) == 0;
    });
}

/// How many parts of what was typed a value answers.
int partsAnswered(const SearchQuery& query, const std::string& value) {
    SearchDocument document;
    document.addNumber(value);
    const auto& words = document.words(SearchField::Numbers);
    return static_cast<int>(
        std::count_if(query.parts().begin(), query.parts().end(), [&](const SearchQuery::Part& part) {
            return std::any_of(part.begin(), part.end(),
                               [&](const SearchQuery::Way& way) { return isBegun(way, words); });
        }));
}

bool answers(const SearchQuery& query, const std::string& value) {
    return partsAnswered(query, value) > 0;
}

/// Notes the value by which it was found, the first of those that are asked about.
class Why {
  public:
    Why(const SearchQuery& query, Hit& hit) : m_query(query), m_hit(hit) {}
    void number(HitField field, const std::string& value, const std::string& of = {}) {
        if (!m_known && answers(m_query, value)) {
            m_hit.field = field;
            m_hit.found = value;
            m_hit.of = of;
            m_known = true;
        }
    }
    [[nodiscard]] bool isKnown() const { return m_known; }

  private:
    const SearchQuery& m_query;
    Hit& m_hit;
    bool m_known = false;
};

void readNumberOfPremises(const Connection& db, const std::string& uprn, const SearchQuery& query, Hit& hit) {
    Why why(query, hit);
    db.query(
        "SELECT i.mprn, i.meter_serial FROM installations AS i WHERE i.premises = ? AND " + notInBin("i.id"),
        {hit.row}, [&](const Columns& row) {
            why.number(HitField::Mprn, row.text(0));
            why.number(HitField::MeterSerial, row.text(1));
        });
    if (!why.isKnown()) {
        db.query(
            "SELECT a.serial, a.gc_number, a.make, a.model FROM installations AS i JOIN appliances AS a "
            "ON a.installation = i.id WHERE i.premises = ? AND " +
                notInBin("i.id") + " AND " + notInBin("a.id") + " ORDER BY a.position, a.id",
            {hit.row}, [&](const Columns& row) {
                const std::string of = between(row.text(2), " ", row.text(3));
                why.number(HitField::ApplianceSerial, row.text(0), of);
                why.number(HitField::GcNumber, row.text(1), of);
            });
    }
    why.number(HitField::Uprn, uprn);
}

void readHolderOfPremises(const Connection& db, const SearchQuery& query, Hit& hit) {
    db.query(
        "SELECT p.name FROM roles AS r JOIN parties AS p ON p.id = r.party "
        "WHERE r.premises = ? AND r.until IS NULL AND " +
            notInBin("p.id") + " ORDER BY r.kind, r.id",
        {hit.row}, [&](const Columns& row) {
            const std::string name = row.text(0);
            if (hit.found.empty() && answers(query, name)) {
                hit.field = HitField::Holder;
                hit.found = name;
            }
        });
}

std::optional<Hit> premisesHit(const Connection& db, const UuidBytes& id, SearchField field,
                               const SearchQuery& query) {
    std::string uprn;
    auto hit = db.first("SELECT p.line1, p.line2, p.town, p.postcode, p.uprn, " + customerOf("p.id") +
                            " FROM premises AS p WHERE p.id = ? AND " + notInBin("p.id"),
                        {id}, [&](const Columns& row) {
                            Hit read;
                            read.kind = HitKind::Premises;
                            read.row = id;
                            read.title = between(row.text(0), ", ", row.text(1));
                            read.detail = between(between(row.text(2), " ", row.text(3)), " · ", row.text(5));
                            uprn = row.text(4);
                            return read;
                        });
    if (hit && field == SearchField::Numbers) {
        readNumberOfPremises(db, uprn, query, *hit);
    } else if (hit && field == SearchField::Names) {
        readHolderOfPremises(db, query, *hit);
    } else if (hit && field == SearchField::Towns) {
        hit->field = HitField::Postcode;
    }
    return hit;
}

std::optional<Hit> partyHit(const Connection& db, const UuidBytes& id, SearchField field,
                            const SearchQuery& query) {
    return db.first(
        "SELECT p.name, p.telephone, p.line1, p.town, p.postcode, p.email, "
        "(SELECT r.premises FROM roles AS r WHERE r.party = p.id AND " +
            notInBin("r.premises") +
            " ORDER BY r.until IS NOT NULL, r.until DESC, r.id DESC LIMIT 1) "
            "FROM parties AS p WHERE p.id = ? AND " +
            notInBin("p.id"),
        {id}, [&](const Columns& row) {
            Hit read;
            read.kind = HitKind::Party;
            read.row = id;
            read.title = row.text(0);
            read.detail = between(row.text(1), " · ", between(row.text(2), ", ", row.text(3)));
            read.field = HitField::Name;
            if (!row.isNull(6)) {
                read.premises = reg::PremisesId{row.uuid(6)};
            }
            if (field == SearchField::Numbers) {
                read.field = HitField::Telephone;
            } else if (field == SearchField::Names &&
                       partsAnswered(query, row.text(5)) > partsAnswered(query, row.text(0))) {
                read.field = HitField::Email;
                read.found = row.text(5);
            } else if (field == SearchField::Streets) {
                read.field = HitField::Address;
            } else if (field == SearchField::Towns) {
                read.field = HitField::Postcode;
                read.found = row.text(4);
            }
            return read;
        });
}

std::optional<Hit> recordHit(const Connection& db, const UuidBytes& id, SearchField field) {
    return db.first(
        "SELECT h.record, h.revision, h.issued_at, s.address, s.customer, s.outcome, length(s.json) "
        "FROM record_headers AS h JOIN record_snapshots AS s ON s.record = h.id WHERE h.id = ?",
        {id}, [&](const Columns& row) {
            Hit read;
            read.kind = HitKind::Record;
            read.row = id;
            read.title = row.text(0);
            read.revision = row.number(1);
            constexpr std::size_t kDay = 10;
            read.date = calendar::fromIso(row.text(2).substr(0, kDay));
            read.detail = between(row.text(3), " · ", row.text(4));
            if (row.integer(6) > 0) {
                read.outcome = rulebook::outcomeFromText(row.text(5));
            }
            constexpr HitField kFields[kSearchFields] = {HitField::RecordNumber, HitField::Name,
                                                         HitField::Address, HitField::Postcode};
            read.field = kFields[static_cast<std::size_t>(field)];
            return read;
        });
}

std::optional<Hit> visitHit(const Connection& db, const UuidBytes& id) {
    return db.first(
        "SELECT v.date, p.line1, p.line2, p.town, p.postcode, "
        "(SELECT e.text FROM entries AS e WHERE e.subject = v.id AND e.item = 'visit.reference') "
        "FROM visits AS v JOIN premises AS p ON p.id = v.premises WHERE v.id = ? AND " +
            notInBin("v.id") + " AND " + notInBin("p.id"),
        {id}, [&](const Columns& row) {
            Hit read;
            read.kind = HitKind::Visit;
            read.row = id;
            read.date = calendar::fromIso(row.text(0));
            read.title = between(row.text(1), ", ", row.text(2));
            read.detail = between(row.text(3), " ", row.text(4));
            read.field = HitField::OrderReference;
            read.found = row.isNull(5) ? std::string() : row.text(5);
            return read;
        });
}

}  // namespace

std::optional<Hit> readHit(const Connection& db, Indexed kind, const UuidBytes& row, SearchField field,
                           const SearchQuery& query) {
    switch (kind) {
        case Indexed::Premises:
            return premisesHit(db, row, field, query);
        case Indexed::Party:
            return partyHit(db, row, field, query);
        case Indexed::Record:
            return recordHit(db, row, field);
        case Indexed::Visit:
            break;
    }
    return visitHit(db, row);
}

}  // namespace hearth::store
