// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/record/kind.h"
#include "core/register/visit_file.h"
#include "core/rulebook/finding.h"
#include "core/rulebook/rule_book.h"
#include "core/tightness/trace.h"

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// A firm and its work written down by hand: the demonstration, and cases for tests. A JSON format of our own
/// (resources/demo).
namespace hearth::exchange {

/// What the scenario's author worked out from the rules, by hand: never from the program's output.
struct ExpectedFinding {
    rulebook::FindingKind kind;
    rulebook::Outcome outcome;
    bool operator==(const ExpectedFinding&) const = default;
};

/// What a gauge saw of a test.
struct PlannedTrace {
    reg::TraceSource source;
    reg::TraceMarks marks;
    tightness::Trace trace;
    /// What a second gauge saw at the same time.
    struct Second {
        reg::TraceSource source;
        tightness::Trace trace;
    };
    std::optional<Second> second = std::nullopt;
};

struct PlannedTest {
    reg::Test test;
    std::optional<PlannedTrace> trace;
    std::vector<reg::Entry> entries;  // of this test
    std::vector<ExpectedFinding> expected;
};

struct PlannedVisit {
    std::string about;  // what the case shows: English, for the author and for failing tests
    reg::Visit visit;
    std::vector<reg::Entry> entries;  // of the visit itself
    std::vector<PlannedTest> tests;
    std::vector<reg::Entry> subjectEntries;            // of appliances, rooms and situations
    std::vector<reg::Situation> situations;            // that it found
    std::vector<ExpectedFinding> expected;             // of the visit itself
    std::optional<rulebook::Outcome> expectedOverall;  // none: too little is entered to expect one
    bool issue = false;                     // a record is to be issued; otherwise it stays an open draft
    std::vector<record::RecordKind> kinds;  // which records, one at least
};

/// Everything, with ids of its own that hold together. Whoever writes it into a store may keep them.
struct Scenario {
    reg::Firm firm;
    std::vector<reg::Engineer> engineers;
    std::vector<reg::Instrument> instruments;
    std::vector<rulebook::FirmEntry> rules;
    std::vector<reg::Party> parties;
    std::vector<reg::Premises> premises;
    std::vector<reg::Role> roles;
    std::vector<reg::Installation> installations;
    std::vector<reg::PipeSection> pipes;     // of all installations, each in list order
    std::vector<reg::Appliance> appliances;  // likewise
    std::vector<PlannedVisit> visits;        // by date

    /// A visit as the store would hand it to judging.
    [[nodiscard]] reg::VisitFile fileOf(const PlannedVisit& planned) const;
    /// The shipped rule book with the firm's entries laid over it.
    [[nodiscard]] Result<rulebook::RuleBook> ruleBook() const;
};

/// Reads a scenario's JSON. `newId` makes the ids; `name` is what errors call it. Everything is checked: a
/// misspelt item, a key that is named but not there, a text that its item can't read. Error: ScenarioInvalid
/// with name, where ("visits[3].tests[0]. entries.test.tight_start") and what (a code: "missing",
/// "wrong_type", "unknown", "not_found", "unreadable", "twice").
[[nodiscard]] Result<Scenario> parseScenario(std::string_view json, const std::function<UuidBytes()>& newId,
                                             const std::string& name = "scenario");

}  // namespace hearth::exchange
