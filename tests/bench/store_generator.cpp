// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/store_generator.h"

#include "core/record/snapshot.h"
#include "core/store/due_index.h"
#include "core/store/migrations.h"
#include "core/store/sealing.h"
#include "core/store/search_index.h"
#include "core/store/series.h"
#include "core/store/store.h"
#include "tests/bench/big_firm.h"
#include "tests/bench/bulk_file.h"

#include <array>
#include <cstdlib>
#include <stdexcept>
#include <string_view>

namespace hearth::bench {
namespace {

namespace fs = std::filesystem;
using namespace std::chrono;
using quantity::Typed;
using quantity::UnitCode;
using store::Cell;
using store::Cells;

constexpr std::size_t kVisitsEach = 3;
constexpr std::size_t kPdfSize = 1024;
constexpr std::string_view kSeries = "BGS";
const sys_days kFirstDay{year(2020) / 1 / 6};

Instant atDay(sys_days day, int minutes) {
    return Instant(day) + minutes * 1min + 8h;
}

/// A record's snapshot in which the marks stand for what differs from record to record: wording each of
/// 300,000 by itself would take minutes.
class SnapshotTemplate {
  public:
    enum Part { Visit, Premises, Line, Town, Postcode, Customer, Number, Count };

    SnapshotTemplate() {
        record::Snapshot snapshot;
        snapshot.file.visit.id = reg::VisitId{idOf(Visit)};
        snapshot.file.premises.id = reg::PremisesId{idOf(Premises)};
        snapshot.file.premises.address = {mark(Line), "", mark(Town), mark(Postcode)};
        reg::Party customer;
        customer.name = mark(Customer);
        snapshot.file.people.push_back({reg::RoleKind::Customer, customer});
        snapshot.document.number = mark(Number);
        snapshot.document.title = "Gas tightness and purge record";
        snapshot.document.blocks = {
            record::Headline{rulebook::Outcome::Pass, "Tight within what the limits allow.", {}},
            record::Paragraph{"Remarks", "No movement was seen; nothing else to be said.", false}};
        snapshot.outcome = rulebook::Outcome::Pass;
        cut(record::canonicalJson(snapshot));
    }

    [[nodiscard]] std::string filled(const std::array<std::string, Count>& values) const {
        std::string json;
        for (const auto& [text, part] : m_pieces) {
            json.append(text).append(part == Count ? std::string() : values.at(part));
        }
        return json;
    }

  private:
    static UuidBytes idOf(Part part) { return {0xEE, 0xEE, 0xEE, static_cast<std::uint8_t>(part)}; }
    static std::string mark(Part part) { return "<" + std::to_string(part) + ">"; }

    void cut(const std::string& json) {
        std::size_t from = 0;
        for (std::size_t at = 0; at < json.size(); ++at) {
            for (int part = Visit; part < Count; ++part) {
                const auto which = static_cast<Part>(part);
                const std::string sign =
                    which == Visit || which == Premises ? uuidText(idOf(which)) : mark(which);
                if (json.compare(at, sign.size(), sign) == 0) {
                    m_pieces.push_back({json.substr(from, at - from), which});
                    from = at + sign.size();
                    at = from - 1;
                    break;
                }
            }
        }
        m_pieces.push_back({json.substr(from), Count});
    }

    std::vector<std::pair<std::string, Part>> m_pieces;
};

reg::Firm bigFirm() {
    reg::Firm firm;
    firm.name = "Cinder Lane Heating";
    firm.address = {"4 Cinder Lane", "", "Ashford Quay", "QA1 1AA"};
    firm.registrationNumber = "000000";
    firm.telephone = "01632 960000";
    firm.email = "office@cinder.example";
    return firm;
}

class Maker {
  public:
    Maker(const fs::path& path, std::size_t premises, std::uint64_t seed)
        : m_file(path), m_chance(seed), m_count(premises) {}

    void make() {
        makePeopleOfFirm();
        makeParties();
        m_file.put("series (series, position, started_at, follows_series, follows_head, place, head)",
                   {std::string(kSeries), std::int64_t{1}, instantText(atDay(kFirstDay, 0)), std::string(),
                    std::string(), std::string(store::kPlaceOfCopy), std::string()});
        for (std::size_t i = 0; i < m_count; ++i) {
            makePremises(i);
        }
        m_file.run("UPDATE series SET last_number = " + std::to_string(m_number) +
                   ", last_record = " + std::to_string(m_number) + ", head = '" + m_head + "'");
        m_file.finish();
    }

  private:
    void makePeopleOfFirm() {
        for (int i = 0; i < 12; ++i) {
            reg::Engineer engineer;
            engineer.id = {m_chance.id()};
            engineer.name = personName(m_chance);
            engineer.cardNumber = m_chance.digits(7);
            m_file.put(engineer);
            m_engineers.push_back(engineer.id);
        }
    }

    reg::Party party(reg::PartyKind kind) {
        reg::Party party;
        party.id = {m_chance.id()};
        party.kind = kind;
        party.name = kind == reg::PartyKind::Person ? personName(m_chance) : organisationName(m_chance);
        const std::size_t town = m_chance.below(townCount());
        party.address = {std::to_string(1 + m_chance.below(180)) + " ", "", townName(town), {}};
        party.address.line1 += streetName(m_chance);
        party.address.postcode = postcodeOf(town, m_chance);
        party.telephone = telephone(m_chance);
        party.email = "p" + m_chance.digits(7) + "@mail.example";
        return party;
    }

    void makeParties() {
        for (std::size_t i = 0; i < m_count / 40 + 1; ++i) {
            m_landlords.push_back(
                party(m_chance.oneIn(3) ? reg::PartyKind::Organisation : reg::PartyKind::Person));
            m_file.put(m_landlords.back());
        }
        for (std::size_t i = 0; i < m_count / 400 + 1; ++i) {
            m_agents.push_back(party(reg::PartyKind::Organisation));
            m_file.put(m_agents.back());
        }
    }

    void role(reg::PremisesId premises, reg::PartyId party, reg::RoleKind kind,
              std::optional<calendar::Date> until = {}) {
        m_file.put(reg::Role{{m_chance.id()}, premises, party, kind, calendar::Date(kFirstDay), until});
    }

    /// Gives the name that its records carry.
    std::string makeHolders(reg::PremisesId premises, const reg::Address& address) {
        reg::Party lives = party(reg::PartyKind::Person);
        lives.address = address;
        m_file.put(lives);
        if (m_chance.below(10) < 7) {
            role(premises, lives.id, reg::RoleKind::HomeOwner);
            // lodgers, and now and then a workshop: each has a deadline
            const auto duty = m_chance.oneIn(7) ? calendar::CheckDuty::OwnInterval : calendar::CheckDuty::Let;
            m_file.put(reg::CheckPlan{{m_chance.id()}, premises, duty, 0, {}});
            m_isLet = duty == calendar::CheckDuty::Let;
            return lives.name;
        }
        m_isLet = true;
        const auto& landlord = m_landlords.at(m_chance.below(m_landlords.size()));
        role(premises, landlord.id, reg::RoleKind::Landlord);
        role(premises, lives.id, reg::RoleKind::Tenant,
             m_chance.oneIn(5) ? std::optional<calendar::Date>(kFirstDay + days(900)) : std::nullopt);
        if (m_chance.oneIn(2)) {
            role(premises, m_agents.at(m_chance.below(m_agents.size())).id, reg::RoleKind::Agent);
        }
        return landlord.name;
    }

    void makePipes(reg::InstallationId installation) {
        std::optional<reg::PipeSectionId> before;
        constexpr std::array<std::string_view, 3> kTo{"tee to hob", "hob", "boiler"};
        for (std::size_t i = 0; i < kTo.size(); ++i) {
            reg::PipeSection section;
            section.id = {m_chance.id()};
            section.installation = installation;
            section.after = before;
            section.position = static_cast<int>(i);
            section.tubeCode = i == 0 ? "copper_22" : "copper_15";
            section.length = {std::to_string(1 + m_chance.below(9)), UnitCode::Metre};
            section.leadsTo = kTo.at(i);
            m_file.put(section);
            before = i == 0 ? std::optional(section.id) : before;
        }
    }

    reg::InstallationId makeInstallation(reg::PremisesId premises, const std::string& name) {
        reg::Installation installation;
        installation.id = {m_chance.id()};
        installation.premises = premises;
        installation.meterCode = "u6_g4";
        installation.meterSerial = "G4" + m_chance.digits(8);
        installation.meterPlace = m_chance.oneIn(2) ? "porch" : "under the stairs";
        installation.operatingPressure = {"21", UnitCode::Millibar};
        installation.controlValvePlace = "beside the meter";
        installation.name = name;
        installation.mprn = m_chance.digits(10);
        m_file.put(installation);
        makePipes(installation.id);
        return installation.id;
    }

    void makeAppliances(reg::InstallationId installation) {
        constexpr std::array<std::string_view, 2> kPlaces{"kitchen", "living room"};
        for (std::size_t i = 0; i < 2; ++i) {
            reg::Appliance appliance;
            appliance.id = {m_chance.id()};
            appliance.installation = installation;
            appliance.position = static_cast<int>(i);
            appliance.kind = i == 0 ? "condensing_boiler" : "";
            const MadeBy made = applianceMake(m_chance);
            appliance.make = made.make;
            appliance.model = made.model;
            appliance.serial = serialNumber(m_chance);
            appliance.gcNumber = gcNumber(m_chance);
            appliance.place = kPlaces.at(i);
            appliance.netInput = {"24.5", UnitCode::Kilowatt};
            appliance.makerSource = "instructions, page 42";
            m_file.put(appliance);
            m_appliances.push_back(appliance.id);
        }
    }

    struct Where {
        reg::Premises premises;
        reg::InstallationId installation;
        std::string customer;
    };

    void makePremises(std::size_t number) {
        Where where;
        m_appliances.clear();
        where.premises.id = {m_chance.id()};
        const std::size_t town = m_chance.below(townCount());
        if (number % 8 == 0) {  // a street holds several
            m_street = streetName(m_chance);
            m_town = town;
        }
        where.premises.address = {std::to_string(1 + m_chance.below(160)) + " " + m_street,
                                  m_chance.oneIn(6) ? "Flat " + std::to_string(1 + m_chance.below(12)) : "",
                                  townName(m_town), postcodeOf(m_town, m_chance)};
        where.premises.uprn = m_chance.digits(12);
        m_file.put(where.premises);
        change({}, where.premises.id, "premises", where.premises.id.bytes, "access_notes", "key next door",
               atDay(kFirstDay, 0));
        where.customer = makeHolders(where.premises.id, where.premises.address);
        where.installation = makeInstallation(where.premises.id, {});
        makeAppliances(where.installation);
        if (m_chance.oneIn(50)) {
            static_cast<void>(makeInstallation(where.premises.id, "flat above"));
        }
        for (std::size_t i = 0; i < kVisitsEach; ++i) {
            makeVisit(where, kFirstDay + days(365 * i + m_chance.below(300)), i + 1 == kVisitsEach);
        }
        makeDoings(where);
    }

    void makeVisit(const Where& where, sys_days day, bool last) {
        reg::Visit visit;
        visit.id = {m_chance.id()};
        visit.premises = where.premises.id;
        visit.installation = where.installation;
        visit.date = day;
        visit.engineer = m_engineers.at(m_chance.below(m_engineers.size()));
        visit.startedAt = atDay(day, static_cast<int>(m_chance.below(480)));
        visit.closed = !last;
        m_file.put(visit);
        const reg::Test test{{m_chance.id()}, visit.id, 0, {}};
        m_file.put(test);
        entry(visit, test.id.bytes, "test.tight_start", "20." + m_chance.digits(2), "mbar");
        entry(visit, test.id.bytes, "test.tight_end", "20." + m_chance.digits(2), "mbar");
        entry(visit, test.id.bytes, "test.working_pressure", "19." + m_chance.digits(1), "mbar");
        if (last) {
            entry(visit, visit.id.bytes, "visit.reference", "PO-" + m_chance.digits(6), "");
        }
        makeRecord(where, visit);
    }

    void entry(const reg::Visit& visit, const UuidBytes& subject, const std::string& item,
               const std::string& text, const std::string& unit) {
        m_file.put(
            "entries (id, visit, subject_kind, subject, item, text, unit, canonical, instrument, at, by)",
            {m_chance.id(), visit.id.bytes, item.substr(0, item.find('.')), subject, item, text, unit, text,
             Cell(), instantText(visit.startedAt), std::string("office")});
        change(visit.id.bytes, visit.premises, "entries", subject, item, text, visit.startedAt);
    }

    void change(const std::optional<UuidBytes>& visit, reg::PremisesId premises, const std::string& table,
                const UuidBytes& row, const std::string& field, const std::string& after, Instant at) {
        const UuidBytes id = m_chance.id();
        const std::string salt(id.begin(), id.end());
        m_file.put(
            "changes (id, position, group_id, store, visit, table_name, row_id, field, before, after, "
            "by, at, premises, salt)",
            {id, ++m_position, id, m_engineers.front().bytes, visit ? Cell(*visit) : Cell(), table,
             uuidText(row), field, Cell(), after, std::string("office"), instantText(at), premises.bytes,
             store::Blob{salt}});
    }

    void makeRecord(const Where& where, const reg::Visit& visit) {
        record::ChainHeader header;
        header.series = kSeries;
        header.number = ++m_number;
        header.record = record::recordNumber(header.series, header.number);
        header.kind = m_isLet ? "landlord_safety" : "owner_safety";
        header.issuedAt = instantText(visit.startedAt + 1h);
        header.previous = m_head;
        const auto& address = where.premises.address;
        const std::string json =
            m_template.filled({visit.id.text(), where.premises.id.text(), address.line1, address.town,
                               address.postcode, where.customer, header.record});
        const std::string pdf = "%PDF" + std::string(kPdfSize - 4, static_cast<char>('A' + m_number % 26));
        header.snapshotDigest = record::sha256(json);
        header.pdfDigest = record::sha256(pdf);
        m_head = record::headerDigest(header);
        const UuidBytes id = m_chance.id();
        m_file.put(
            "record_headers (id, series, number, record, revision, kind, issued_at, snapshot_digest, "
            "pdf_digest, previous, digest)",
            {id, header.series, std::int64_t{header.number}, header.record, std::int64_t{1}, header.kind,
             header.issuedAt, header.snapshotDigest, header.pdfDigest, header.previous, m_head});
        m_file.put(
            "record_snapshots (record, json, visit, premises, address, customer, outcome, supersedes, "
            "reason)",
            {id, store::Blob{json}, visit.id.bytes, where.premises.id.bytes,
             address.line1 + ", " + address.town + ", " + address.postcode, where.customer,
             std::string("pass"), Cell(), std::string()});
        m_file.put("record_pdfs (record, pdf)", {id, store::Blob{pdf}});
        for (const auto& appliance : m_appliances) {
            m_file.put("record_checks (premises, date, record, appliance, kind, counted_from, counts)",
                       {where.premises.id.bytes, calendar::isoText(visit.date), id, appliance.bytes,
                        header.kind, Cell(), std::int64_t{1}});
        }
    }

    void makeDoings(const Where& where) {
        const Instant at = atDay(kFirstDay + days(1200), 0);
        if (m_chance.oneIn(3)) {
            reg::Letter letter;
            letter.id = {m_chance.id()};
            letter.premises = where.premises.id;
            letter.party = m_landlords.front().id;
            letter.kind = "reminder";
            letter.sentTo = where.premises.address.line1;
            letter.text = std::string(400, 'x');
            letter.at = at;
            m_file.put(letter);
        }
        if (m_chance.oneIn(6)) {
            m_file.put(reg::AccessAttempt{{m_chance.id()},
                                          where.premises.id,
                                          at,
                                          "office",
                                          reg::Channel::Telephone,
                                          "",
                                          "no answer",
                                          "write",
                                          {}});
        }
        if (m_chance.oneIn(10)) {
            reg::Booking booking;
            booking.id = {m_chance.id()};
            booking.premises = where.premises.id;
            booking.engineer = m_engineers.at(m_chance.below(m_engineers.size()));
            booking.date = kFirstDay + days(1200 + m_chance.below(120));
            m_file.put(booking);
        }
        if (m_chance.oneIn(20)) {
            reg::Situation situation;
            situation.id = {m_chance.id()};
            situation.premises = where.premises.id;
            situation.installation = where.installation;
            situation.foundAt = at;
            situation.what = "flue loose";
            situation.danger = reg::Danger::AtRisk;
            m_file.put(situation);
        }
    }

    BulkFile m_file;
    Chance m_chance;
    std::size_t m_count;
    SnapshotTemplate m_template;
    std::vector<reg::EngineerId> m_engineers;
    std::vector<reg::ApplianceId> m_appliances;  // of the premises that is being made
    bool m_isLet = false;
    std::vector<reg::Party> m_landlords;
    std::vector<reg::Party> m_agents;
    std::string m_street;
    std::size_t m_town = 0;
    std::int64_t m_position = 100;  // after what making the store has logged
    int m_number = 0;
    std::string m_head;
};

template <class Value>
Value must(Result<Value> result) {
    if (!result) {
        throw std::runtime_error(std::string(codeText(result.error().code)));
    }
    if constexpr (!std::is_void_v<Value>) {
        return std::move(*result);
    }
}

/// The seal over the change log, and the index of words.
void finishAsTheStoreDoes(const fs::path& path) {
    store::Connection db(path, store::Connection::Mode::ReadWrite);
    db.script("PRAGMA synchronous = OFF; PRAGMA cache_size = -300000");
    store::Transaction whole(db);
    store::sealChanges(db);
    store::rebuildSearch(db);
    store::rebuildDue(db);
    whole.commit();
}

/// Another schema or another generator is another store.
std::string nameOf(std::size_t premises, std::uint64_t seed) {
    constexpr auto kGenerator = "4";
    std::string schema = kGenerator;
    for (const auto& migration : store::shippedMigrations()) {
        schema += record::sha256(migration.sql);
    }
    return "big-" + std::to_string(premises) + "-" + std::to_string(seed) + "-" +
           record::sha256(schema).substr(0, 12) + ".hearth";
}

}  // namespace

void makeBigStore(const fs::path& path, std::size_t premises, std::uint64_t seed) {
    const fs::path half = path.string() + ".half";
    fs::remove(half);
    const SystemClock clock;
    must(store::Store::create(half, bigFirm(), clock)).reset();
    Maker(half, premises, seed).make();
    finishAsTheStoreDoes(half);
    fs::rename(half, path);
}

fs::path bigStoreIn(const fs::path& folder, std::size_t premises) {
    fs::create_directories(folder);
    const std::string name = nameOf(premises, kSeed);
    if (!fs::exists(folder / name)) {
        const std::string before = "big-" + std::to_string(premises) + "-";
        for (const auto& file : fs::directory_iterator(folder)) {
            if (file.path().filename().string().compare(0, before.size(), before) == 0) {
                fs::remove(file.path());
            }
        }
        makeBigStore(folder / name, premises);
    }
    return folder / name;
}

std::size_t wantedPremises() {
    const char* full = std::getenv("HEARTH_FULL");
    return full != nullptr && std::string_view(full) == "1" ? kFullPremises : kFullPremises / 10;
}

}  // namespace hearth::bench
