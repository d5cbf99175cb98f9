// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/blanks.h"
#include "core/store/due_facts.h"
#include "core/store/due_list.h"
#include "core/store/due_repository.h"
#include "core/store/tables.h"

#include <algorithm>
#include <array>
#include <tuple>

/// Who is reminded of which check, by which means, and who is not.
namespace hearth::store {
namespace {

using calendar::Date;
using reg::RoleKind;

constexpr int kWeekDays = 7;
/// As record::recipientOf() has them, without those who live with somebody else's appliances.
constexpr std::array kReminded{RoleKind::Landlord, RoleKind::Agent, RoleKind::HomeOwner, RoleKind::Customer,
                               RoleKind::ResponsiblePerson};

bool hasBlankOnly(const std::string& text) {
    return withoutOuterBlanks(text).empty();
}

std::string inOneLine(const reg::Address& address) {
    std::string line;
    for (const auto* part : {&address.line1, &address.line2, &address.town, &address.postcode}) {
        if (!hasBlankOnly(*part)) {
            line.append(line.empty() ? "" : ", ").append(*part);
        }
    }
    return line;
}

/// A landlord and his agent are told of their own duty; anybody else needs a ground (facts: "Data
/// protection").
ReminderRefusal refusalOf(const reg::Party& party, RoleKind role, Date today) {
    if (party.reminderWithdrawn && *party.reminderWithdrawn <= today) {
        return ReminderRefusal::Objected;
    }
    const bool hasDuty = role == RoleKind::Landlord || role == RoleKind::Agent;
    return hasDuty || party.reminderBasis != reg::ReminderBasis::NotSaid ? ReminderRefusal::None
                                                                         : ReminderRefusal::NoGround;
}

/// By the means that they want, else by post.
void address(Reminder& reminder, const reg::Party& party, RoleKind role) {
    const bool byMail = party.sendBy == reg::SendBy::Email && !hasBlankOnly(party.email);
    if (byMail) {
        reminder.channel = reg::Channel::Email;
        reminder.sentTo = party.email;
        return;
    }
    const bool livesThere = role == RoleKind::HomeOwner || role == RoleKind::ResponsiblePerson;
    const bool hasPlace = !hasBlankOnly(party.address.line1) && !hasBlankOnly(party.address.town);
    reminder.channel = reg::Channel::Letter;
    reminder.recipient = hasPlace ? party.address : livesThere ? reminder.address : reg::Address{};
    reminder.sentTo = inOneLine(reminder.recipient);
    if (reminder.sentTo.empty()) {
        reminder.refusal = ReminderRefusal::NoAddress;
    }
}

using Holders = std::vector<std::pair<RoleKind, reg::Party>>;

Holders holdersNow(const Connection& db, reg::PremisesId id) {
    const Table& table = tableOf<reg::Party>();
    return db.all("SELECT r.kind, " + table.columnList("p") +
                      " FROM roles AS r JOIN parties AS p ON p.id = r.party WHERE r.premises = ? AND r.until "
                      "IS NULL AND " +
                      notInBin("p.id"),
                  {id.bytes}, [](const Columns& row) {
                      return std::pair(reg::roleKindFromCode(row.text(0)).value_or(RoleKind::Tenant),
                                       valueOf<reg::Party>(row, 1));
                  });
}

/// The first who may be told and can be; else the first with why not.
void chooseParty(const Connection& db, Reminder& reminder, Date today) {
    reminder.refusal = ReminderRefusal::NobodyToTell;
    const auto holders = holdersNow(db, reminder.premises);
    for (const auto role : kReminded) {
        for (const auto& [kind, party] : holders) {
            if (kind != role || hasBlankOnly(party.name)) {
                continue;
            }
            Reminder tried = reminder;
            tried.party = party;
            tried.role = role;
            tried.refusal = refusalOf(party, role, today);
            if (tried.refusal == ReminderRefusal::None) {
                address(tried, party, role);
            }
            if (tried.refusal == ReminderRefusal::None) {
                reminder = tried;
                return;
            }
            if (reminder.refusal == ReminderRefusal::NobodyToTell) {
                reminder = tried;
            }
        }
    }
}

std::vector<Date> remindedOn(const Connection& db, const DueLine& line) {
    const std::string since = line.lastCheck ? calendar::isoText(*line.lastCheck) : std::string();
    std::vector<Date> dates;
    db.query(
        "SELECT substr(l.at, 1, 10) FROM letters AS l WHERE l.premises = ? AND l.at > ? AND l.kind = "
        "'reminder' AND " +
            notInBin("l.id") + " ORDER BY l.at",
        {line.premises.bytes, since}, [&](const Columns& row) {
            if (const auto date = calendar::fromIso(row.text(0))) {
                dates.push_back(*date);
            }
        });
    return dates;
}

Reminder reminderOf(const Connection& db, const DueLine& line, int stage, Date today) {
    Reminder reminder;
    reminder.premises = line.premises;
    reminder.address = line.address;
    reminder.deadline = *line.deadline;
    reminder.opens = line.opens;
    reminder.stage = stage;
    reminder.sentBefore = remindedOn(db, line);
    reminder.booking = line.booking;
    chooseParty(db, reminder, today);
    return reminder;
}

void sortByRecipient(std::vector<Reminder>& reminders) {
    const auto key = [](const Reminder& one) {
        const auto& to = one.recipient;
        return std::tie(to.town, to.postcode, to.line1, to.line2, one.address.town, one.address.line1,
                        one.address.line2);
    };
    std::stable_sort(reminders.begin(), reminders.end(),
                     [&](const Reminder& a, const Reminder& b) { return key(a) < key(b); });
}

}  // namespace

std::vector<Reminder> readRemindersDue(const Connection& db, const DueFilter& filter, Date today) {
    const auto cadence = readCadence(db);
    const int longest = *std::max_element(cadence.begin(), cadence.end());
    std::vector<Reminder> reminders;
    for (const auto& line : readDueUntil(db, filter, today, calendar::addDays(today, longest * kWeekDays))) {
        const auto sent = remindedOn(db, line);
        if (const auto stage = calendar::reminderStage(*line.deadline, cadence, sent, today)) {
            reminders.push_back(reminderOf(db, line, *stage, today));
        }
    }
    sortByRecipient(reminders);
    return reminders;
}

std::vector<Reminder> readRemindersFor(const Connection& db, const std::vector<reg::PremisesId>& premises,
                                       Date today) {
    std::vector<Reminder> reminders;
    for (const auto& line : readDueLines(db, premises, today)) {
        if (line.deadline) {
            reminders.push_back(reminderOf(db, line, 0, today));
        }
    }
    sortByRecipient(reminders);
    return reminders;
}

}  // namespace hearth::store
