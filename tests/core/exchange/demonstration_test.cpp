// SPDX-License-Identifier: GPL-3.0-or-later
// The demonstration's outcomes were worked out by hand from the rule book's limits and written into the
// scenario; here they are held against what judging says.
#include "core/exchange/scenario.h"
#include "core/judging/judge.h"
#include "core/judging/trace_seen.h"
#include "core/record/kind.h"
#include "tests/core/exchange/counting_ids.h"
#include "tests/support/files.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <map>
#include <set>

namespace hearth::exchange {
namespace {

using rulebook::FindingKind;
using rulebook::Outcome;

struct Demonstration : ::testing::Test {
    static void SetUpTestSuite() {
        const auto json = testing::readFile(HEARTH_SOURCE_DIR "/resources/demo/scenario.json");
        auto parsed = parseScenario(json, testing::countingIds());
        if (parsed) {
            s_scenario = std::make_unique<Scenario>(*parsed);
        } else {
            s_fault = parsed.error().details[1] + ' ' + parsed.error().details[2];
        }
    }
    void SetUp() override {
        ASSERT_NE(s_scenario, nullptr) << s_fault;
        const auto laid = s_scenario->ruleBook();
        ASSERT_TRUE(laid.has_value()) << laid.error().details[0] << ' ' << laid.error().details[1];
        book = *laid;
    }
    static std::unique_ptr<Scenario> s_scenario;
    static std::string s_fault;
    rulebook::RuleBook book = rulebook::RuleBook::shipped();
};
std::unique_ptr<Scenario> Demonstration::s_scenario;
std::string Demonstration::s_fault;

std::string say(Outcome outcome) {
    return std::string(rulebook::outcomeText(outcome));
}

void expectFindings(const std::vector<judging::Judged>& findings, const reg::SubjectRef& on,
                    const std::vector<ExpectedFinding>& expected, const std::string& about) {
    for (const auto& one : expected) {
        const auto found = std::find_if(findings.begin(), findings.end(), [&](const judging::Judged& j) {
            return j.subject == on && j.finding.kind == one.kind;
        });
        ASSERT_NE(found, findings.end()) << about << ": no finding " << rulebook::kindText(one.kind);
        EXPECT_EQ(say(found->finding.outcome), say(one.outcome))
            << about << ": " << rulebook::kindText(one.kind) << " because "
            << rulebook::sayText(found->finding.why.say);
    }
}

TEST_F(Demonstration, EveryOutcomeIsAsItsAuthorWorkedItOut) {
    for (const auto& planned : s_scenario->visits) {
        const auto file = s_scenario->fileOf(planned);
        const auto findings = judging::judge(file, book);
        expectFindings(findings, reg::subject(planned.visit.id), planned.expected, planned.about);
        for (const auto& test : planned.tests) {
            expectFindings(findings, reg::subject(test.test.id), test.expected, planned.about);
        }
        if (planned.expectedOverall) {
            EXPECT_EQ(say(record::outcomeOf(planned.kinds.front(), file, findings)),
                      say(*planned.expectedOverall))
                << planned.about;
        }
    }
}

// What each pipe is, is in resources/demo/make_traces.py, which steps them by the gas law.
TEST_F(Demonstration, EachTraceIsToldForWhatItsPipeIs) {
    using tightness::TraceSays;
    std::map<std::string, TraceSays> expected{{"It cools", TraceSays::Cooling},
                                              {"A small leak under warming", TraceSays::HiddenLeak},
                                              {"Let-by", TraceSays::LetsBy},
                                              {"A stuck gauge", TraceSays::StuckGauge}};
    for (const auto& planned : s_scenario->visits) {
        const auto file = s_scenario->fileOf(planned);
        for (const auto& test : planned.tests) {
            if (!test.trace) {
                continue;
            }
            const auto& [source, marks, trace, second] = *test.trace;
            judging::TraceGiven given{source, marks, trace};
            if (second) {
                given.second = judging::SecondGauge{second->source, second->trace};
            }
            const auto seen = judging::seenTrace(file, book, test.test.id, std::move(given));
            // Another gauge on the stuck one's pipe shows what it does not.
            EXPECT_EQ(seen.compared.has_value(), test.test.label == "A stuck gauge");
            EXPECT_FALSE(seen.compared && seen.compared->allows(seen.compared->atStart));
            EXPECT_EQ(source.zero.isThere(), test.test.label == "It cools");
            ASSERT_EQ(expected.count(test.test.label), 1U) << test.test.label;
            EXPECT_EQ(static_cast<int>(seen.told.says), static_cast<int>(expected[test.test.label]))
                << test.test.label;
            expected.erase(test.test.label);
            // The leak that the script made, at 20 mbar: 0.14 l/h. By two readings it can't be told: over the
            // timed minutes the gauge falls by less than what is perceptible (0.2 mbar).
            if (test.test.label == "A small leak under warming") {
                EXPECT_LT(seen.told.test->leak.least.in(quantity::kLitrePerHour), 0.14);
                EXPECT_GT(seen.told.test->leak.most.in(quantity::kLitrePerHour), 0.14);
                const auto timed = tightness::stretchOf(trace, *seen.stages.timing);
                EXPECT_LT((timed.front().pressure - timed.back().pressure).in(quantity::kMillibar), 0.2);
            }
        }
    }
    EXPECT_TRUE(expected.empty());
}

TEST_F(Demonstration, WhatIsToBeIssuedLacksNothingAndADraftDoes) {
    for (const auto& planned : s_scenario->visits) {
        const auto file = s_scenario->fileOf(planned);
        const auto findings = judging::judge(file, book);
        for (const auto kind : planned.kinds) {
            for (const auto& one : record::missingFor(kind, file, findings)) {
                EXPECT_FALSE(planned.issue)
                    << planned.about << " lacks "
                    << (one.item ? reg::infoOf(*one.item).code : record::fieldCode(*one.field)) << " for "
                    << record::kindCode(kind);
            }
        }
    }
}

TEST_F(Demonstration, ShowsEveryKindOfOutcome) {
    std::map<Outcome, int> issued;
    std::set<Outcome> letBy;
    bool before = false;
    bool after = false;
    int drafts = 0;
    const auto changeOver =
        calendar::Date{std::chrono::year{2026}, std::chrono::month{10}, std::chrono::day{1}};
    for (const auto& planned : s_scenario->visits) {
        drafts += planned.issue ? 0 : 1;
        before = before || planned.visit.date < changeOver;
        after = after || planned.visit.date >= changeOver;
        if (planned.issue && planned.expectedOverall) {
            ++issued[*planned.expectedOverall];
        }
        for (const auto& test : planned.tests) {
            for (const auto& one : test.expected) {
                if (one.kind == FindingKind::LetBy) {
                    letBy.insert(one.outcome);
                }
            }
        }
    }
    EXPECT_GE(issued[Outcome::Pass], 5);
    EXPECT_GE(issued[Outcome::Fail], 2);
    EXPECT_GE(issued[Outcome::LookAgain], 1);
    EXPECT_GE(issued[Outcome::NoVerdict], 1);
    EXPECT_TRUE(letBy.count(Outcome::Fail) == 1) << "let-by found";
    EXPECT_TRUE(before && after);
    EXPECT_GE(drafts, 2);
}

TEST_F(Demonstration, HasThePremisesThatItPromises) {
    EXPECT_GE(s_scenario->premises.size(), 12U);
    EXPECT_EQ(s_scenario->engineers.size(), 2U);
    const auto landlords =
        std::count_if(s_scenario->roles.begin(), s_scenario->roles.end(),
                      [](const reg::Role& role) { return role.kind == reg::RoleKind::Landlord; });
    EXPECT_GE(landlords, 3);
    const auto has = [&](auto test) {
        return std::any_of(s_scenario->installations.begin(), s_scenario->installations.end(), test);
    };
    EXPECT_TRUE(has([](const reg::Installation& i) { return i.gas == rulebook::Gas::Propane; }));
    EXPECT_TRUE(has([](const reg::Installation& i) {
        return i.gas == rulebook::Gas::NaturalGas && i.meterCode == "none";  // a remote meter
    }));
    const bool longRun =
        std::any_of(s_scenario->pipes.begin(), s_scenario->pipes.end(), [](const reg::PipeSection& p) {
            return p.tubeCode == "copper_28" && p.length.value()->toDouble() >= 20.0;
        });
    EXPECT_TRUE(longRun);
}

// Postcodes never begin with Q (BS 7666 form), so none of these is real; the telephone numbers are of the
// range 01632 960 that the regulator keeps for fiction (from memory).
TEST_F(Demonstration, IsPlainlyInvented) {
    EXPECT_TRUE(s_scenario->firm.demonstration);
    for (const auto& premises : s_scenario->premises) {
        EXPECT_EQ(premises.address.postcode.rfind('Q', 0), 0U) << premises.address.postcode;
        EXPECT_EQ(premises.address.town, "Nether Wrenlow");
    }
    for (const auto& party : s_scenario->parties) {
        EXPECT_EQ(party.telephone.rfind("01632 960", 0), 0U) << party.telephone;
        EXPECT_TRUE(party.email.empty() || party.email.size() > 8) << party.email;
    }
}

// The firm has confirmed the rules of its daily work; the drops by volume of Edition 4 stay empty, as they
// ship.
TEST_F(Demonstration, TheFirmConfirmedItsDailyRulesAndLeftTheBandsEmpty) {
    for (const auto& entry : book.entries()) {
        if (entry.daily) {
            EXPECT_EQ(entry.provenance, rulebook::Provenance::Firm) << rulebook::ruleText(entry.key.rule);
        }
        if (entry.key.rule == rulebook::Rule::DropByVolume) {
            EXPECT_FALSE(entry.isKnown());
        }
    }
}

TEST_F(Demonstration, EveryTubeAndMeterIsKnown) {
    for (const auto& pipe : s_scenario->pipes) {
        EXPECT_NE(pipework::tubeByCode(pipe.tubeCode), nullptr) << pipe.tubeCode;
    }
    for (const auto& installation : s_scenario->installations) {
        EXPECT_NE(pipework::meterByCode(installation.meterCode), nullptr) << installation.meterCode;
    }
}

}  // namespace
}  // namespace hearth::exchange
