// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/scenario.h"

#include "tests/core/exchange/counting_ids.h"

#include <gtest/gtest.h>
#include <string>
#include <utility>
#include <vector>

namespace hearth::exchange {
namespace {

// A whole scenario in small.
const std::string kSmall = R"({
  "format": "hearthledger scenario", "version": 1,
  "firm": {"name": "Small Gas", "address": {"line1": "1 Lane", "town": "Nowhere"}, "registration": "000001",
           "country": "wales", "demonstration": true},
  "engineers": [{"key": "e", "name": "E. Fitter", "card": "0000001"}],
  "instruments": [{"key": "g", "kind": "electronic_gauge", "name": "gauge", "resolution": "0.01 mbar"}],
  "rules": [{"rule": "no_movement_electronic", "edition": "general", "figure": "0.2", "unit": "mbar",
             "confirmed_by": "E. Fitter", "confirmed_on": "2026-04-01", "from_copy": "own"}],
  "parties": [{"key": "p", "kind": "person", "name": "P. Owner"}],
  "premises": [{"key": "h", "address": {"line1": "2 Lane", "town": "Nowhere"}, "country": "wales",
    "people": [{"role": "home_owner", "party": "p"}],
    "installations": [{"key": "i", "gas": "natural_gas", "meter": "u6_g4",
      "pipes": [{"key": "a", "tube": "copper_22", "length": "3,5 m"},
                {"key": "b", "after": "a", "tube": "copper_15", "length": "2 m", "under_test": false}]}]}],
  "visits": [
    {"about": "second", "installation": "i", "date": "2026-11-02", "started": "09:00", "engineer": "e",
     "entries": {}, "issue": false},
    {"about": "first", "installation": "i", "date": "2026-11-01", "started": "09:30", "engineer": "e",
     "entries": {"visit.smell_on_arrival": "no"},
     "tests": [{"label": "", "entries": {"test.gauge": "g", "test.tight_start": "20,71",
                                         "test.tight_end": "2.067 kPa", "test.tight_started_at": "946"},
                "expect": {"tightness": "no_verdict"}}],
     "expect_overall": "no_verdict", "issue": true}]
})";

Result<Scenario> parse(const std::string& json) {
    return parseScenario(json, testing::countingIds(), "small");
}

TEST(Scenario, ReadsEverythingAsTyped) {
    const auto scenario = parse(kSmall);
    ASSERT_TRUE(scenario.has_value()) << scenario.error().details[1] << ' ' << scenario.error().details[2];
    EXPECT_EQ(scenario->firm.country, reg::Country::Wales);
    EXPECT_TRUE(scenario->firm.demonstration);
    ASSERT_EQ(scenario->pipes.size(), 2U);
    EXPECT_EQ(scenario->pipes[0].length.text, "3,5");
    EXPECT_EQ(scenario->pipes[0].length.unit, quantity::UnitCode::Metre);
    EXPECT_EQ(scenario->pipes[1].after, scenario->pipes[0].id);
    EXPECT_FALSE(scenario->pipes[1].underTest);
    ASSERT_EQ(scenario->visits.size(), 2U);
    const auto& first = scenario->visits[0];  // by date
    EXPECT_EQ(first.about, "first");
    EXPECT_TRUE(first.issue);
    EXPECT_EQ(wallTimeText(first.visit.startedAt), "09:30");
    EXPECT_EQ(first.expectedOverall, rulebook::Outcome::NoVerdict);
    EXPECT_EQ(
        first.tests[0].expected,
        std::vector<ExpectedFinding>({{rulebook::FindingKind::Tightness, rulebook::Outcome::NoVerdict}}));
    EXPECT_EQ(scenario->visits[1].expectedOverall, std::nullopt);
}

TEST(Scenario, MakesAVisitAsTheStoreWould) {
    const auto scenario = parse(kSmall);
    ASSERT_TRUE(scenario.has_value());
    const auto file = scenario->fileOf(scenario->visits[0]);
    const auto test = reg::subject(file.tests[0].id);
    EXPECT_EQ(file.find(test, reg::Item::TightStart)->text, "20,71");
    EXPECT_EQ(file.find(test, reg::Item::TightStart)->canonical, "20.71");
    EXPECT_EQ(file.find(test, reg::Item::TightStart)->unit, quantity::UnitCode::Millibar);
    EXPECT_EQ(file.find(test, reg::Item::TightEnd)->unit, quantity::UnitCode::Kilopascal);
    EXPECT_EQ(file.find(test, reg::Item::TightStartedAt)->canonical, "09:46");
    ASSERT_NE(file.gaugeOf(file.tests[0].id), nullptr);
    EXPECT_EQ(file.gaugeOf(file.tests[0].id)->name, "gauge");
    EXPECT_EQ(file.choiceOf(reg::subject(file.visit.id), reg::Item::SmellOnArrival), "no");
    EXPECT_EQ(file.engineer()->name, "E. Fitter");
    EXPECT_EQ(file.holder(reg::RoleKind::HomeOwner)->name, "P. Owner");
    EXPECT_EQ(file.pipes.size(), 2U);
    EXPECT_EQ(file.installation.meterCode, "u6_g4");
}

TEST(Scenario, LaysTheFirmsWordOverTheRuleBook) {
    const auto scenario = parse(kSmall);
    ASSERT_TRUE(scenario.has_value());
    const auto book = scenario->ruleBook();
    ASSERT_TRUE(book.has_value());
    const auto* entry = book->find({rulebook::Rule::NoMovementElectronic});
    ASSERT_NE(entry, nullptr);
    EXPECT_EQ(entry->provenance, rulebook::Provenance::Firm);
    EXPECT_EQ(entry->confirmedBy, "E. Fitter");
}

struct Slip {
    const char* right;
    const char* wrong;
    const char* where;
    const char* what;
};

TEST(Scenario, NamesEverySlip) {
    const std::vector<Slip> slips{
        {"hearthledger scenario", "something else", "format", "unknown"},
        {"\"version\": 1", "\"version\": 2", "version", "unknown"},
        {"\"version\": 1", "\"version\": \"1\"", "version", "wrong_type"},
        {"\"registration\"", "\"registratoin\"", "firm.registratoin", "unknown"},
        {"\"country\": \"wales\", \"demonstration\"", "\"country\": \"cymru\", \"demonstration\"",
         "firm.country", "unknown"},
        {"\"kind\": \"electronic_gauge\"", "\"kind\": \"gauge\"", "instruments[0].kind", "unknown"},
        {"0.01 mbar", "0.01 furlong", "instruments[0].resolution", "unreadable"},
        {"\"party\": \"p\"", "\"party\": \"q\"", "premises[0].people[0].party", "not_found"},
        {"\"after\": \"a\"", "\"after\": \"z\"", "premises[0].installations[0].pipes[1].after", "not_found"},
        {"\"key\": \"b\"", "\"key\": \"a\"", "premises[0].installations[0].pipes[1].key", "twice"},
        {"\"date\": \"2026-11-01\"", "\"date\": \"2026-11-31\"", "visits[1].date", "unknown"},
        {"\"started\": \"09:30\"", "\"started\": \"early\"", "visits[1].started", "unreadable"},
        {"test.tight_end", "test.tigth_end", "visits[1].tests[0].entries.test.tigth_end", "unknown"},
        {"\"visit.smell_on_arrival\": \"no\"", "\"visit.smell_on_arrival\": \"perhaps\"",
         "visits[1].entries.visit.smell_on_arrival", "unreadable"},
        {"\"visit.smell_on_arrival\": \"no\"", "\"test.smell\": \"no\"", "visits[1].entries.test.smell",
         "unknown"},
        {"20,71", "20,7x", "visits[1].tests[0].entries.test.tight_start", "unreadable"},
        {"\"test.gauge\": \"g\"", "\"test.gauge\": \"h\"", "visits[1].tests[0].entries.test.gauge",
         "not_found"},
        {"\"tightness\": \"no_verdict\"", "\"tightness\": \"good\"", "visits[1].tests[0].expect.tightness",
         "unknown"},
        {"\"figure\": \"0.2\"", "\"figure\": \"a bit\"", "rules[0].figure", "unreadable"},
        {"\"rule\": \"no_movement_electronic\"", "\"rule\": \"no_rule\"", "rules[0].rule", "unknown"},
    };
    for (const auto& slip : slips) {
        std::string json = kSmall;
        const auto at = json.find(slip.right);
        ASSERT_NE(at, std::string::npos) << slip.right;
        json.replace(at, std::string(slip.right).size(), slip.wrong);
        const auto scenario = parse(json);
        ASSERT_FALSE(scenario.has_value()) << slip.wrong;
        EXPECT_EQ(scenario.error(), (Error{ErrorCode::ScenarioInvalid, {"small", slip.where, slip.what}}))
            << slip.wrong << " gave " << scenario.error().details[1] << ' ' << scenario.error().details[2];
    }
}

TEST(Scenario, IsRefusedWhenItIsNoJson) {
    EXPECT_EQ(parse("{\"format\": ").error(),
              (Error{ErrorCode::ScenarioInvalid, {"small", "/", "not_json"}}));
    EXPECT_EQ(parse("[]").error(), (Error{ErrorCode::ScenarioInvalid, {"small", "/", "wrong_type"}}));
    EXPECT_FALSE(parse("").has_value());
}

}  // namespace
}  // namespace hearth::exchange
