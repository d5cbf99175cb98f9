// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/duty_reader.h"

#include "core/calendar/due_state.h"
#include "core/record/nation.h"
#include "core/store/bin_repository.h"
#include "core/store/doings_repository.h"
#include "core/store/services.h"
#include "core/store/tables.h"

#include <algorithm>

namespace hearth::store {
namespace {

using calendar::Date;
using calendar::Duty;
using calendar::DutyKind;

constexpr int kMonthsLookedBack = 12;
constexpr int kMonthsOfServices = 24;  // a service of then was to be followed by one that is looked back to

class DutyReader {
  public:
    DutyReader(const Connection& db, Date today, std::optional<reg::PremisesId> premises)
        : m_db(db), m_today(today), m_premises(premises) {}

    std::vector<DutyLine> read() {
        addCopies();
        addBuildingWork();
        addReports();
        addOpenNotices();
        addFirms();
        std::stable_sort(m_lines.begin(), m_lines.end(), [](const DutyLine& a, const DutyLine& b) {
            return a.by && b.by ? *a.by < *b.by : a.by.has_value() && !b.by.has_value();
        });
        return std::move(m_lines);
    }

    /// Copies and notices are the many: a line of each costs several reads.
    DutyCount count() {
        DutyCount count;
        countCopies(count);
        count.open += countOpenSituations(m_db);  // no law sets a day
        addBuildingWork();
        addReports();
        addFirms();
        for (const auto& line : m_lines) {
            ++count.open;
            count.overdue += line.isOverdue(m_today) ? 1 : 0;
        }
        return count;
    }

  private:
    void addFirms() {
        if (!m_premises) {
            addInstruments();
            addEngineers();
            addInsurance();
            addServices();
        }
    }
    /// " AND <column> = ?" where only some premises are asked for, with its value at the end of `cells`.
    std::string ofPremises(const std::string& column, Cells& cells) const {
        if (!m_premises) {
            return {};
        }
        cells.emplace_back(m_premises->bytes);
        return " AND " + column + " = ?";
    }
    static reg::Address addressAt(const Columns& row, int column) {
        return {row.text(column), row.text(column + 1), row.text(column + 2), row.text(column + 3)};
    }
    static reg::Country countryAt(const Columns& row, int column) {
        return reg::countryFromCode(row.text(column)).value_or(reg::Country::England);
    }
    void addSoon(DutyLine line, const std::optional<Date>& runsOut) {
        if (runsOut && calendar::expiryOn(*runsOut, m_today) != calendar::Expiry::Valid) {
            line.by = runsOut;
            m_lines.push_back(std::move(line));
        }
    }
    void addDuty(DutyLine line, const std::optional<Duty>& duty) {
        if (duty) {
            line.kind = duty->kind;
            line.by = duty->by;
            line.from = duty->from;
            m_lines.push_back(std::move(line));
        }
    }

    /// Of tenants now and to come, each against our newest record there. A copy counts when it was logged for
    /// that tenant since the check, or the record itself went to them by name or mail.
    std::string copiesOwed(Cells& cells) const {
        cells = {static_cast<std::int64_t>(calendar::CheckDuty::Let), calendar::isoText(m_today)};
        const std::string one = ofPremises("r.premises", cells);
        return "FROM roles AS r "
               "JOIN due_premises AS d ON d.premises = r.premises AND d.duty = ? "
               "JOIN premises AS p ON p.id = r.premises JOIN parties AS q ON q.id = r.party "
               "JOIN record_checks AS c ON c.premises = r.premises AND c.counts = 1 AND c.kind = "
               "'landlord_safety' AND c.date = (SELECT max(n.date) FROM record_checks AS n WHERE n.premises "
               "= r.premises AND n.counts = 1 AND n.kind = 'landlord_safety') "
               "JOIN record_headers AS h ON h.id = c.record "
               "WHERE r.kind = 'tenant' AND (r.until IS NULL OR r.until >= ?)" +
               one + " AND " + notInBin("q.id") + " AND " + notInBin("p.id") +
               " AND NOT EXISTS (SELECT 1 FROM letters AS l WHERE l.premises = r.premises AND l.party = "
               "r.party AND l.kind = 'tenant_copy' AND substr(l.at, 1, 10) >= c.date AND " +
               notInBin("l.id") +
               ") AND NOT EXISTS (SELECT 1 FROM record_events AS o WHERE o.record = c.record AND o.sent_to "
               "<> '' AND (instr(o.sent_to, q.name) > 0 OR (q.email <> '' AND instr(o.sent_to, q.email) > "
               "0))) GROUP BY r.id";
    }
    void addCopies() {
        Cells cells;
        const std::string owed = copiesOwed(cells);
        m_db.query(
            "SELECT r.premises, p.line1, p.line2, p.town, p.postcode, r.party, q.name, r.since, "
            "r.until, c.date, p.appliance_in_rooms, c.record, h.record " +
                owed,
            cells, [&](const Columns& row) { addCopy(row); });
    }
    /// Those of the same days are due on the same day.
    void countCopies(DutyCount& count) const {
        Cells cells;
        const std::string owed = copiesOwed(cells);
        m_db.query(
            "SELECT since, until, date, rooms, count(*) FROM (SELECT r.since AS since, r.until AS until, "
            "c.date "
            "AS date, p.appliance_in_rooms AS rooms " +
                owed + ") GROUP BY since, until, date, rooms",
            cells, [&](const Columns& row) {
                if (const auto duty = copyDutyOf(row, 0)) {
                    count.open += row.number(4);
                    count.overdue += duty->by < m_today ? row.number(4) : 0;
                }
            });
    }
    /// Of the columns since, until, the check's date and whether an appliance stands in their rooms. A stay
    /// of which both days are known may be short; its last day counts, so that none is called short that is
    /// not. Where nobody has said that no appliance stands in their rooms, the stricter duty stands.
    static std::optional<Duty> copyDutyOf(const Columns& row, int first) {
        const auto dateAt = [&row](int column) {
            return row.isNull(column) ? std::nullopt : calendar::fromIso(row.text(column));
        };
        const auto since = dateAt(first);
        const auto until = dateAt(first + 1);
        const auto checked = dateAt(first + 2);
        if (!checked) {
            row.notUnderstood("record_checks.date = " + row.text(first + 2));
        }
        const bool movesInLater = since && *since > *checked;
        const bool noneInRooms = reg::yesNoFromCode(row.text(first + 3)) == reg::YesNo::No;
        calendar::Occupation stay{movesInLater, {}, !noneInRooms};
        if (since && until) {
            stay.days = calendar::daysBetween(*since, *until) + 1;
        }
        auto duty = calendar::copyDue(stay, *checked, movesInLater ? since : std::nullopt);
        if (duty && duty->kind == DutyKind::Display && movesInLater) {
            duty->by = *since;  // not before anybody stays there
        }
        return duty;
    }
    void addCopy(const Columns& row) {
        DutyLine line;
        line.premises = reg::PremisesId{row.uuid(0)};
        line.address = addressAt(row, 1);
        line.party = reg::PartyId{row.uuid(5)};
        line.what = row.text(6);
        line.record = RecordId{row.uuid(11)};
        line.which = row.text(12);
        addDuty(std::move(line), copyDutyOf(row, 7));
    }

    /// What stands on the sheet as done, or why it is not needed, ends the duty.
    void addBuildingWork() {
        Cells cells{calendar::isoText(calendar::addMonths(m_today, -kMonthsLookedBack))};
        const std::string one = ofPremises("v.premises", cells);
        m_db.query(
            "SELECT v.id, v.premises, p.line1, p.line2, p.town, p.postcode, p.country, e.canonical, "
            "coalesce((SELECT n.text FROM entries AS n WHERE n.subject = v.id AND n.item = "
            "'visit.building_notification'), ''), coalesce((SELECT n.canonical FROM entries AS n WHERE "
            "n.subject = v.id AND n.item = 'visit.controls_information'), ''), EXISTS (SELECT 1 FROM letters "
            "AS l WHERE l.premises = v.premises AND l.kind = 'operating_information' AND substr(l.at, 1, 10) "
            ">= e.canonical AND " +
                notInBin("l.id") +
                ") FROM visits AS v CROSS JOIN entries AS e ON e.subject = v.id AND e.item = "
                "'visit.work_completed' JOIN premises AS p ON p.id = v.premises WHERE v.date >= ?" +
                one + " AND e.canonical <> '' AND " + notInBin("v.id") + " AND " + notInBin("p.id"),
            cells, [&](const Columns& row) {
                const auto completed = calendar::fromIso(row.text(7));
                if (!completed) {
                    return;  // typed, and no date: the sheet says so
                }
                DutyLine line;
                line.visit = reg::VisitId{row.uuid(0)};
                line.premises = reg::PremisesId{row.uuid(1)};
                line.address = addressAt(row, 2);
                const auto nation = record::nationOf(countryAt(row, 6));
                if (row.text(8).empty()) {
                    addDuty(line, calendar::noticeDue(*completed, nation));
                }
                if (row.text(9) != "yes" && row.number(10) == 0) {
                    addDuty(line, calendar::informationDue(*completed, nation));
                }
            });
    }

    /// Those that the business has decided to report, and has not. From the few situations to their lines:
    /// the other way round every entry of the store is looked at.
    void addReports() {
        Cells cells;
        const std::string one = ofPremises("s.premises", cells);
        m_db.query(
            "SELECT s.visit, s.premises, p.line1, p.line2, p.town, p.postcode, p.country, s.what, s.place, "
            "coalesce((SELECT k.canonical FROM entries AS k WHERE k.subject = s.id AND k.item = "
            "'situation.known_on'), '') FROM situations AS s CROSS JOIN premises AS p ON p.id = s.premises "
            "CROSS JOIN entries AS r ON r.subject = s.id AND r.item = 'situation.reportable' AND r.canonical "
            "= 'yes' "
            "WHERE NOT EXISTS (SELECT 1 FROM entries AS d WHERE d.subject = s.id AND d.item = "
            "'situation.reported_on' AND d.canonical <> '')" +
                one + " AND " + notInBin("s.id") + " AND " + notInBin("p.id"),
            cells, [&](const Columns& row) {
                DutyLine line;
                line.kind = DutyKind::FittingReport;
                line.premises = reg::PremisesId{row.uuid(1)};
                line.address = addressAt(row, 2);
                line.what = row.text(7);
                line.which = row.text(8);
                if (!row.isNull(0)) {
                    line.visit = reg::VisitId{row.uuid(0)};
                }
                const auto known = calendar::fromIso(row.text(9));
                if (!known) {
                    m_lines.push_back(std::move(line));  // the clock runs from a day that nobody entered
                } else {
                    addDuty(std::move(line),
                            calendar::reportDue(*known, record::nationOf(countryAt(row, 6))));
                }
            });
    }

    void addOpenNotices() {
        for (const auto& situation : readOpenSituations(m_db)) {
            if (m_premises && situation.premises != *m_premises) {
                continue;
            }
            DutyLine line;
            line.kind = DutyKind::OpenNotice;
            line.from = Date(std::chrono::floor<std::chrono::days>(situation.foundAt));
            line.premises = situation.premises;
            line.address = valueWithId<reg::Premises>(m_db, situation.premises.bytes).address;
            line.what = situation.what;
            line.which = std::string(reg::codeOf(situation.danger));
            line.visit = situation.visit;
            m_lines.push_back(std::move(line));
        }
    }

    void addInstruments() {
        for (const auto& one : valuesWhere<reg::Instrument>(m_db, "WHERE " + notInBin("t.id"))) {
            DutyLine line;
            line.kind = DutyKind::Calibration;
            line.from = one.calibratedOn;
            line.what = one.name;
            line.which = one.serial;
            line.of = one.id.text();
            addSoon(std::move(line), one.calibrationDue);
        }
    }
    void addEngineers() {
        for (const auto& one : valuesWhere<reg::Engineer>(m_db, "WHERE " + notInBin("t.id"))) {
            DutyLine line;
            line.kind = DutyKind::Registration;
            line.what = one.name;
            line.which = one.cardNumber;
            line.of = one.id.text();
            addSoon(line, one.cardExpires);
            line.kind = DutyKind::Competence;
            for (const auto& held : valuesWhere<reg::Competence>(
                     m_db, "WHERE t.engineer = ? AND " + notInBin("t.id"), {one.id.bytes})) {
                line.which = held.category;
                addSoon(line, held.expires);
            }
        }
    }
    void addInsurance() {
        for (const auto& row : valuesWhere<FirmRow>(m_db, "")) {
            DutyLine line;
            line.kind = DutyKind::Insurance;
            line.what = row.firm.insurer;
            line.which = row.firm.policy;
            addSoon(std::move(line), row.firm.insuredUntil);
        }
    }

    /// From our own record of a service, else from the day when it was installed. What was due longer ago
    /// than is looked back is not listed: somebody else has long had it in hand, or nobody asked us to.
    void addServices() {
        const auto from = calendar::isoText(calendar::addMonths(m_today, -kMonthsOfServices));
        const std::string where =
            "JOIN installations AS i ON i.id = a.installation JOIN premises AS p ON p.id = i.premises WHERE "
            "a.removed_on IS NULL AND " +
            notInBin("a.id") + " AND " + notInBin("i.id") + " AND " + notInBin("p.id");
        const std::string columns =
            "SELECT a.id, a.make, a.model, a.place, a.installed_on, p.id, p.line1, p.line2, p.town, "
            "p.postcode, ";
        m_db.query("WITH served AS MATERIALIZED (SELECT e.subject AS appliance, max(v.date) AS date FROM " +
                       servicesByVisit() + " AND v.date >= ? GROUP BY e.subject) " + columns +
                       "d.date FROM served AS d JOIN appliances AS a ON a.id = d.appliance " + where +
                       " UNION ALL " + columns + "NULL FROM appliances AS a " + where +
                       " AND a.installed_on >= ? AND a.id NOT IN (SELECT appliance FROM served)",
                   {from, from}, [&](const Columns& row) { addService(row); });
    }
    void addService(const Columns& row) {
        const auto dateAt = [&row](int column) {
            return row.isNull(column) ? std::nullopt : calendar::fromIso(row.text(column));
        };
        const auto duty = calendar::serviceDue(dateAt(10), dateAt(4));
        if (!duty || duty->by < calendar::addMonths(m_today, -kMonthsLookedBack)) {
            return;
        }
        DutyLine line;
        line.kind = duty->kind;
        line.from = duty->from;
        line.what = row.text(1);
        line.what += (line.what.empty() || row.text(2).empty() ? "" : " ") + row.text(2);
        line.which = row.text(3);
        line.of = reg::ApplianceId{row.uuid(0)}.text();
        line.premises = reg::PremisesId{row.uuid(5)};
        line.address = addressAt(row, 6);
        addSoon(std::move(line), duty->by);
    }

    const Connection& m_db;
    Date m_today;
    std::optional<reg::PremisesId> m_premises;
    std::vector<DutyLine> m_lines;
};

}  // namespace

std::vector<DutyLine> readDuties(const Connection& db, Date today, std::optional<reg::PremisesId> premises) {
    return DutyReader(db, today, premises).read();
}

DutyCount countDuties(const Connection& db, Date today) {
    return DutyReader(db, today, std::nullopt).count();
}

}  // namespace hearth::store
