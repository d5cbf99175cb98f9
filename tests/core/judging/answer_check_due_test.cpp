// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/answer.h"
#include "core/rulebook/conclude.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <map>
#include <string>

namespace hearth::judging {
namespace {

using reg::Item;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Say;
namespace choice = reg::choice;

using CheckTyped = std::map<Item, std::string>;

CheckTyped britain(CheckTyped typed) {
    typed[Item::CheckCountry] = std::string(choice::kGreatBritain);
    return typed;
}

CheckTyped ireland(CheckTyped typed) {
    typed[Item::CheckCountry] = std::string(choice::kNorthernIreland);
    return typed;
}

Answer askedWhenDue(const CheckTyped& typed, const char* today) {
    Worksheet sheet(Question::CheckDue, calendar::fromIso(today).value());
    for (const auto& [item, text] : typed) {
        sheet.put(Group::Once, 0, item, text);
    }
    return answer(sheet, rulebook::RuleBook::shipped());
}

const rulebook::Finding* checkFinding(const Answer& found, FindingKind kind = FindingKind::CheckDue) {
    const auto at = std::find_if(found.findings.begin(), found.findings.end(),
                                 [&](const Judged& judged) { return judged.finding.kind == kind; });
    return at == found.findings.end() ? nullptr : &at->finding;
}

/// The dates of a sentence, "2027-06-01 2028-06-01"; "-" when it is not said.
std::string datesOf(const std::vector<rulebook::Sentence>& sentences, Say say) {
    for (const auto& sentence : sentences) {
        if (sentence.say == say) {
            std::string dates;
            for (const auto& argument : sentence.arguments) {
                dates += (dates.empty() ? "" : " ") + calendar::isoText(std::get<calendar::Date>(argument));
            }
            return dates;
        }
    }
    return "-";
}

std::string datesOf(const rulebook::Finding& finding, Say say) {
    auto sentences = finding.notes;
    sentences.push_back(finding.why);
    return datesOf(sentences, say);
}

struct CheckCase {
    const char* name;
    CheckTyped typed;
    const char* today;
    Say due;
    const char* dueDates;
    Outcome dueOutcome;
    Say made;
    Outcome madeOutcome;
};

// Regulation 36A(1) and (4) as quoted on a page; the dates of a worked example are those of the notes on the
// law, 5 January 2019 for 10 February is a published example ("The Changes to Gas Safety Rules You Need to
// Know About").
const CheckCase kChecks[] = {
    {"in the window", britain({{Item::CheckLast, "2025-06-01"}, {Item::CheckDone, "2026-04-15"}}),
     "2026-04-15", Say::CheckDueBy, "2027-06-01", Outcome::Pass, Say::CheckCountsInWindow, Outcome::Pass},
    {"published example", britain({{Item::CheckLast, "2018-02-10"}, {Item::CheckDone, "2019-01-05"}}),
     "2019-01-05", Say::CheckDueBy, "2020-02-10", Outcome::Pass, Say::CheckCountsInWindow, Outcome::Pass},
    {"early", britain({{Item::CheckLast, "2025-06-01"}, {Item::CheckDone, "2026-03-20"}}), "2026-03-20",
     Say::CheckDueBy, "2027-03-20", Outcome::Pass, Say::CheckCountsEarly, Outcome::Pass},
    {"late", britain({{Item::CheckLast, "2025-06-01"}, {Item::CheckDone, "2026-06-10"}}), "2026-06-10",
     Say::CheckDueBy, "2027-06-10", Outcome::Pass, Say::CheckCountsLate, Outcome::Fail},
    {"guidance's day, one before the regulation's",
     britain({{Item::CheckLast, "2025-06-01"}, {Item::CheckDone, "2026-04-01"}}), "2026-04-01",
     Say::CheckDueEither, "2027-04-01 2027-06-01", Outcome::LookAgain, Say::CheckCountsEdge,
     Outcome::LookAgain},
    {"end of a short month", britain({{Item::CheckLast, "2026-02-28"}, {Item::CheckDone, "2026-12-31"}}),
     "2027-01-05", Say::CheckDueEither, "2027-12-31 2028-02-28", Outcome::LookAgain, Say::CheckCountsEdge,
     Outcome::LookAgain},
    {"Northern Ireland has no window",
     ireland({{Item::CheckLast, "2025-06-01"}, {Item::CheckDone, "2026-05-15"}}), "2026-05-15",
     Say::CheckDueBy, "2027-05-15", Outcome::LookAgain, Say::CheckCountsInTime, Outcome::LookAgain},
    {"first check of a new appliance, put off to come with the others",
     britain({{Item::CheckInstalled, "2026-03-10"},
              {Item::CheckOthersDue, "2027-06-01"},
              {Item::CheckDone, "2027-04-20"}}),
     "2027-04-20", Say::CheckDueEither, "2028-03-10 2028-06-01", Outcome::LookAgain, Say::CheckCountsPutOff,
     Outcome::Pass},
    {"the same, checked too late for that",
     britain({{Item::CheckInstalled, "2026-03-10"},
              {Item::CheckOthersDue, "2027-06-01"},
              {Item::CheckDone, "2027-05-11"}}),
     "2027-05-11", Say::CheckDueBy, "2028-05-11", Outcome::Pass, Say::CheckCountsLate, Outcome::Fail},
    {"before the lease begins", britain({{Item::CheckLease, "2026-09-01"}, {Item::CheckDone, "2026-08-20"}}),
     "2026-08-20", Say::CheckDueEither, "2027-08-20 2027-09-01", Outcome::LookAgain, Say::CheckCountsInTime,
     Outcome::Pass},
};

TEST(AnswerCheckDue, AfterACheck) {
    for (const auto& c : kChecks) {
        const auto found = askedWhenDue(c.typed, c.today);
        const auto* due = checkFinding(found);
        ASSERT_NE(due, nullptr) << c.name;
        EXPECT_EQ(due->outcome, c.dueOutcome) << c.name;
        EXPECT_EQ(due->why.say, c.due) << c.name;
        EXPECT_EQ(datesOf(*due, c.due), c.dueDates) << c.name;
        EXPECT_FALSE(due->notes.empty()) << c.name << ": the reason";
        const auto* made = checkFinding(found, FindingKind::CheckMade);
        ASSERT_NE(made, nullptr) << c.name;
        EXPECT_EQ(made->why.say, c.made) << c.name;
        EXPECT_EQ(made->outcome, c.madeOutcome) << c.name;
    }
}

struct WaitingCase {
    const char* name;
    CheckTyped typed;
    const char* today;
    Say why;
    const char* dates;
    Outcome outcome;
    Say reason;
};

const WaitingCase kWaiting[] = {
    {"from the installation", britain({{Item::CheckInstalled, "2026-03-10"}}), "2026-11-25", Say::CheckDueBy,
     "2027-03-10", Outcome::Pass, Say::CheckFromInstalled},
    {"on its last day", britain({{Item::CheckInstalled, "2026-03-10"}}), "2027-03-10", Say::CheckDueBy,
     "2027-03-10", Outcome::Pass, Say::CheckFromInstalled},
    {"overdue", britain({{Item::CheckInstalled, "2026-03-10"}}), "2027-03-11", Say::CheckOverdue,
     "2027-03-10", Outcome::Fail, Say::CheckFromInstalled},
    {"overdue in Northern Ireland", ireland({{Item::CheckLast, "2025-03-10"}}), "2027-03-11",
     Say::CheckOverdue, "2026-03-10", Outcome::Fail, Say::CheckFromDate},
    {"the lease is later", britain({{Item::CheckInstalled, "2025-03-10"}, {Item::CheckLease, "2026-12-01"}}),
     "2026-11-25", Say::CheckDueBy, "2026-12-01", Outcome::Pass, Say::CheckFromLease},
    {"put off, once", britain({{Item::CheckInstalled, "2026-03-10"}, {Item::CheckOthersDue, "2027-06-01"}}),
     "2026-11-25", Say::CheckDueBy, "2027-05-10", Outcome::Pass, Say::CheckPutOff},
    {"never put off in Northern Ireland",
     ireland({{Item::CheckInstalled, "2026-03-10"}, {Item::CheckOthersDue, "2027-06-01"}}), "2026-11-25",
     Say::CheckDueBy, "2027-03-10", Outcome::LookAgain, Say::CheckFromInstalled},
    {"nothing to count from", britain({}), "2026-11-25", Say::CheckBasisMissing, "", Outcome::NoVerdict,
     Say::CheckBasisMissing},
    {"country not said",
     {{Item::CheckLast, "2025-06-01"}},
     "2026-11-25",
     Say::CheckCountryMissing,
     "",
     Outcome::NoVerdict,
     Say::CheckCountryMissing},
    {"unreadable", britain({{Item::CheckLast, "31 June"}}), "2026-11-25", Say::ReadingUnusable, "",
     Outcome::NoVerdict, Say::ReadingUnusable},
    {"crossed", britain({{Item::CheckLast, "2026-06-01"}, {Item::CheckDone, "2026-05-01"}}), "2026-11-25",
     Say::CheckDatesCrossed, "2026-05-01 2026-06-01", Outcome::NoVerdict, Say::CheckDatesCrossed},
};

TEST(AnswerCheckDue, BeforeACheck) {
    for (const auto& c : kWaiting) {
        const auto found = askedWhenDue(c.typed, c.today);
        const auto* due = checkFinding(found);
        ASSERT_NE(due, nullptr) << c.name;
        EXPECT_EQ(due->outcome, c.outcome) << c.name;
        EXPECT_EQ(due->why.say, c.why) << c.name;
        EXPECT_EQ(datesOf(*due, c.why), c.dates) << c.name;
        EXPECT_TRUE(says(*due, c.reason)) << c.name;
        EXPECT_EQ(checkFinding(found, FindingKind::CheckMade), nullptr) << c.name;
        EXPECT_TRUE(found.notes.empty()) << c.name << ": no record yet to copy or to keep";
    }
}

// 2 April for 1 June: the regulation's two months; 1 July for 31 August.
TEST(AnswerCheckDue, TellsFromWhenACheckKeepsTheDate) {
    const auto june = askedWhenDue(britain({{Item::CheckLast, "2025-06-01"}}), "2025-11-25");
    EXPECT_EQ(datesOf(*checkFinding(june), Say::CheckWindowOpens), "2026-04-02 2026-06-01");
    const auto august = askedWhenDue(britain({{Item::CheckLast, "2025-08-31"}}), "2025-11-25");
    EXPECT_EQ(datesOf(*checkFinding(august), Say::CheckWindowOpens), "2026-07-01 2026-08-31");
    const auto north = askedWhenDue(ireland({{Item::CheckLast, "2025-06-01"}}), "2025-11-25");
    EXPECT_EQ(datesOf(*checkFinding(north), Say::CheckWindowOpens), "-");
}

TEST(AnswerCheckDue, NorthernIrelandIsNeverTheLastWord) {
    for (const auto& c : kChecks) {
        auto typed = c.typed;
        typed[Item::CheckCountry] = std::string(choice::kNorthernIreland);
        for (const auto& judged : askedWhenDue(typed, c.today).findings) {
            EXPECT_NE(judged.finding.outcome, Outcome::Pass) << c.name;
            EXPECT_TRUE(says(judged.finding, Say::CheckLawFromMemory)) << c.name;
        }
    }
}

// HSE "Record keeping": 28 days, here 15 April to 13 May 2026; two years and two further checks.
TEST(AnswerCheckDue, CopyAndRecord) {
    CheckTyped typed = britain({{Item::CheckLast, "2025-06-01"}, {Item::CheckDone, "2026-04-15"}});
    auto found = askedWhenDue(typed, "2026-04-15");
    EXPECT_EQ(datesOf(found.notes, Say::TenantCopyBy), "2026-05-13");
    EXPECT_EQ(datesOf(found.notes, Say::TenantCopyNoDay), "") << "not said which tenant: both are told";
    EXPECT_EQ(datesOf(found.notes, Say::RecordKeptOn), "2028-04-15");
    typed[Item::CheckTenant] = std::string(choice::kExisting);
    found = askedWhenDue(typed, "2026-04-15");
    EXPECT_EQ(datesOf(found.notes, Say::TenantCopyBy), "2026-05-13");
    EXPECT_EQ(datesOf(found.notes, Say::TenantCopyNoDay), "-");
    typed[Item::CheckTenant] = std::string(choice::kNew);
    typed[Item::CheckMovesIn] = "2026-05-02";
    found = askedWhenDue(typed, "2026-04-15");
    EXPECT_EQ(datesOf(found.notes, Say::TenantCopyBefore), "2026-05-02");
    EXPECT_EQ(datesOf(found.notes, Say::RecordCurrentUntil), "2027-04-15") << "from the check itself";
    EXPECT_EQ(datesOf(found.notes, Say::TenantCopyBy), "-");
    typed[Item::CheckCountry] = std::string(choice::kNorthernIreland);
    found = askedWhenDue(typed, "2026-04-15");
    EXPECT_EQ(datesOf(found.notes, Say::RecordKeptUntil), "2028-04-15");
    EXPECT_EQ(datesOf(found.notes, Say::TenantCopyBefore), "-") << "not read for Northern Ireland";
}

}  // namespace
}  // namespace hearth::judging
