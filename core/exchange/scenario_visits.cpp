// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/scenario_reader.h"

#include <algorithm>
#include <sstream>

namespace hearth::exchange {

namespace {

using quantity::Decimal;
using quantity::UnitCode;

Decimal decimalIn(const JsonNode& node) {
    const auto value = Decimal::parse(node.text());
    if (!value) {
        node.refuse("unreadable");
    }
    return *value;
}

UnitCode unitIn(const JsonNode& node) {
    const auto unit = node.find("unit");
    return unit ? valueOf(quantity::unitFromText(unit->text()), *unit) : UnitCode::None;
}

std::vector<JsonNode> pairIn(const JsonNode& node) {
    auto pair = node.elements();
    if (pair.size() != 2) {
        node.refuse("wrong_type");
    }
    return pair;
}

rulebook::Value ruleValueIn(const JsonNode& node) {
    if (const auto figure = node.find("figure")) {
        return quantity::Figure{decimalIn(*figure), unitIn(node)};
    }
    if (const auto range = node.find("range")) {
        const auto pair = pairIn(*range);
        return rulebook::Range{decimalIn(pair[0]), decimalIn(pair[1]), unitIn(node)};
    }
    std::vector<rulebook::Band> bands;
    for (const auto& band : node.at("bands").elements()) {
        const auto pair = pairIn(band);
        bands.push_back({decimalIn(pair[0]), decimalIn(pair[1])});
    }
    return bands;
}

std::vector<ExpectedFinding> expectedIn(const JsonNode& node, const char* key) {
    std::vector<ExpectedFinding> expected;
    if (const auto found = node.find(key)) {
        for (const auto& [kind, outcome] : found->members()) {
            expected.push_back({valueOf(rulebook::kindFromText(kind), outcome),
                                valueOf(rulebook::outcomeFromText(outcome.text()), outcome)});
        }
    }
    return expected;
}

Instant startIn(const JsonNode& node, calendar::Date date) {
    Instant start{};
    const auto time = node.at("started");
    if (!instantAt(date, time.text(), start)) {
        time.refuse("unreadable");
    }
    return start;
}

}  // namespace

void ScenarioReader::readRule(const JsonNode& node) {
    node.allowOnly({"rule", "edition", "gas", "figure", "range", "bands", "unit", "confirmed_by",
                    "confirmed_on", "from_copy"});
    rulebook::FirmEntry entry{
        {valueOf(rulebook::ruleFromText(node.at("rule").text()), node.at("rule")),
         valueOf(rulebook::editionFromText(node.at("edition").text()), node.at("edition")), std::nullopt},
        ruleValueIn(node),
        node.at("confirmed_by").text(),
        dateIn(node.at("confirmed_on")),
        node.textOr("from_copy")};
    if (const auto gas = node.find("gas")) {
        entry.key.gas = valueOf(rulebook::gasFromText(gas->text()), *gas);
    }
    m_scenario.rules.push_back(entry);
}

reg::Entry ScenarioReader::readEntry(const std::string& code, const JsonNode& node, const reg::Visit& visit,
                                     const reg::SubjectRef& on) {
    const auto item = valueOf(reg::itemFromCode(code), node);
    const auto& info = reg::infoOf(item);
    if (info.subject != on.kind) {
        node.refuse("unknown");
    }
    reg::Entry entry;
    entry.id = reg::EntryId{m_newId()};
    entry.visit = visit.id;
    entry.subject = on;
    entry.item = item;
    entry.text = node.text();
    entry.at = visit.startedAt;
    if (info.kind == reg::ItemKind::Number) {
        const auto typed = typedIn(node, info.units);
        entry.text = typed.text;
        entry.unit = typed.unit;
    } else if (info.kind == reg::ItemKind::Instrument) {
        entry.instrument = reg::InstrumentId{known("instrument", node)};
        entry.text = entry.instrument->text();
    }
    const auto canonical = reg::canonicalOf(item, entry.text);
    if (!canonical) {
        node.refuse("unreadable");
    }
    entry.canonical = *canonical;
    return entry;
}

namespace {

/// Readings at even steps of time, in the unit of the gauge's step, between blanks.
tightness::Trace evenReadings(const JsonNode& readings, int every, quantity::UnitCode unit) {
    tightness::Trace trace;
    std::istringstream figures(readings.text());
    int milliseconds = 0;
    for (std::string figure; figures >> figure; milliseconds += every) {
        const auto value = quantity::Decimal::parse(figure);
        if (!value) {
            readings.refuse("unreadable");
        }
        trace.push_back({quantity::Duration(milliseconds / 1000.0, quantity::kSecond),
                         quantity::GaugePressure(value->toDouble(), quantity::pressureUnit(unit))});
    }
    return trace;
}

}  // namespace

/// The zero was looked at a minute before.
PlannedTrace ScenarioReader::traceIn(const JsonNode& node, Instant began) {
    node.allowOnly({"source", "step", "every_ms", "marks", "readings", "zero", "second"});
    PlannedTrace planned;
    planned.source.name = node.at("source").text();
    planned.source.beganAt = began;
    planned.source.resolution = typedIn(node.at("step"), quantity::UnitFamily::Pressure);
    if (const auto zero = node.find("zero")) {
        planned.source.zero = {typedIn(*zero, quantity::UnitFamily::Pressure), planned.source.resolution,
                               began - std::chrono::minutes(1), true};
    }
    planned.marks = valueOf(reg::marksFromText(node.at("marks").text()), node.at("marks"));
    const int every = node.at("every_ms").integer();
    planned.trace = evenReadings(node.at("readings"), every, planned.source.resolution.unit);
    if (const auto other = node.find("second")) {
        other->allowOnly({"source", "step", "readings"});
        auto& second = planned.second.emplace();
        second.source.name = other->at("source").text();
        second.source.beganAt = began;
        second.source.resolution = typedIn(other->at("step"), quantity::UnitFamily::Pressure);
        second.trace = evenReadings(other->at("readings"), every, second.source.resolution.unit);
    }
    return planned;
}

PlannedTest ScenarioReader::readTest(const JsonNode& node, const reg::Visit& visit, int position) {
    node.allowOnly({"label", "entries", "expect", "trace"});
    PlannedTest planned;
    planned.test = {reg::TestId{m_newId()}, visit.id, position, node.textOr("label")};
    if (const auto trace = node.find("trace")) {
        planned.trace = traceIn(*trace, visit.startedAt);
    }
    for (const auto& [code, entry] : node.at("entries").members()) {
        planned.entries.push_back(readEntry(code, entry, visit, reg::subject(planned.test.id)));
    }
    planned.expected = expectedIn(node, "expect");
    return planned;
}

/// Appliances by their keys; rooms and readings in them, each with an id of its own; situations.
void ScenarioReader::readSubjects(const JsonNode& node, PlannedVisit& planned) {
    const auto take = [&](const JsonNode& entries, const reg::SubjectRef& on) {
        for (const auto& [code, entry] : entries.members()) {
            planned.subjectEntries.push_back(readEntry(code, entry, planned.visit, on));
        }
    };
    if (const auto pipework = node.find("pipework")) {
        take(*pipework, reg::subject(planned.visit.installation));
    }
    for (const auto& appliance : node.list("appliances")) {
        appliance.allowOnly({"appliance", "entries"});
        const reg::ApplianceId id{known("appliance", appliance.at("appliance"))};
        take(appliance.at("entries"), reg::subject(id));
    }
    for (const auto& room : node.list("rooms")) {
        take(room, reg::subject(reg::RoomId{m_newId()}));
    }
    for (const auto& situation : node.list("situations")) {
        readSituation(situation, planned);
        take(situation.at("entries"), reg::subject(planned.situations.back().id));
    }
}

void ScenarioReader::readSituation(const JsonNode& node, PlannedVisit& planned) {
    node.allowOnly({"danger", "what", "where", "appliance", "entries"});
    reg::Situation situation;
    situation.id = reg::SituationId{m_newId()};
    situation.premises = planned.visit.premises;
    situation.installation = planned.visit.installation;
    situation.visit = planned.visit.id;
    situation.foundAt = planned.visit.startedAt;
    situation.danger = valueOf(reg::dangerFromCode(node.at("danger").text()), node.at("danger"));
    situation.what = node.at("what").text();
    situation.where = node.at("where").text();
    if (const auto appliance = node.find("appliance")) {
        situation.appliance = reg::ApplianceId{known("appliance", *appliance)};
    }
    planned.situations.push_back(situation);
}

void ScenarioReader::readVisit(const JsonNode& node) {
    node.allowOnly({"about", "installation", "date", "started", "engineer", "entries", "tests", "expect",
                    "expect_overall", "issue", "records", "appliances", "rooms", "situations", "pipework"});
    PlannedVisit planned;
    planned.about = node.at("about").text();
    const reg::InstallationId installation{known("installation", node.at("installation"))};
    const auto owner = std::find_if(m_scenario.installations.begin(), m_scenario.installations.end(),
                                    [&](const reg::Installation& i) { return i.id == installation; });
    planned.visit.id = reg::VisitId{m_newId()};
    planned.visit.premises = owner->premises;
    planned.visit.installation = installation;
    planned.visit.date = dateIn(node.at("date"));
    planned.visit.engineer = reg::EngineerId{known("engineer", node.at("engineer"))};
    planned.visit.startedAt = startIn(node, planned.visit.date);
    for (const auto& [code, entry] : node.at("entries").members()) {
        planned.entries.push_back(readEntry(code, entry, planned.visit, reg::subject(planned.visit.id)));
    }
    int position = 0;
    for (const auto& test : node.list("tests")) {
        planned.tests.push_back(readTest(test, planned.visit, position++));
    }
    readSubjects(node, planned);
    planned.expected = expectedIn(node, "expect");
    if (const auto overall = node.find("expect_overall")) {
        planned.expectedOverall = valueOf(rulebook::outcomeFromText(overall->text()), *overall);
    }
    planned.issue = node.at("issue").truth();
    for (const auto& kind : node.list("records")) {
        planned.kinds.push_back(valueOf(record::kindFromCode(kind.text()), kind));
    }
    if (planned.kinds.empty()) {
        planned.kinds = {record::RecordKind::TightnessAndPurge};
    }
    m_scenario.visits.push_back(planned);
}

}  // namespace hearth::exchange
