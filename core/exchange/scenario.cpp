// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/scenario.h"

#include "core/exchange/json_node.h"
#include "core/exchange/scenario_reader.h"

#include <algorithm>
#include <cassert>
#include <iterator>

namespace hearth::exchange {

namespace {

template <class T, class Match>
const T& theOne(const std::vector<T>& all, Match match) {
    const auto found = std::find_if(all.begin(), all.end(), match);
    assert(found != all.end());  // the reader refused a key that is not there
    return *found;
}

}  // namespace

reg::VisitFile Scenario::fileOf(const PlannedVisit& planned) const {
    reg::VisitFile file;
    file.firm = firm;
    file.visit = planned.visit;
    file.premises = theOne(premises, [&](const reg::Premises& p) { return p.id == planned.visit.premises; });
    file.installation =
        theOne(installations, [&](const reg::Installation& i) { return i.id == planned.visit.installation; });
    std::copy_if(pipes.begin(), pipes.end(), std::back_inserter(file.pipes),
                 [&](const reg::PipeSection& pipe) { return pipe.installation == file.installation.id; });
    file.entries = planned.entries;
    for (const auto& test : planned.tests) {
        file.tests.push_back(test.test);
        file.entries.insert(file.entries.end(), test.entries.begin(), test.entries.end());
    }
    file.entries.insert(file.entries.end(), planned.subjectEntries.begin(), planned.subjectEntries.end());
    std::copy_if(
        appliances.begin(), appliances.end(), std::back_inserter(file.appliances),
        [&](const reg::Appliance& appliance) { return appliance.installation == file.installation.id; });
    file.situations = planned.situations;
    file.engineers = engineers;
    file.instruments = instruments;
    for (const auto& role : roles) {
        if (role.premises == file.premises.id) {
            file.people.push_back(
                {role.kind, theOne(parties, [&](const reg::Party& p) { return p.id == role.party; })});
        }
    }
    return file;
}

Result<rulebook::RuleBook> Scenario::ruleBook() const {
    auto book = rulebook::RuleBook::shipped();
    for (const auto& rule : rules) {
        if (const auto laid = book.lay(rule); !laid) {
            return tl::unexpected(laid.error());
        }
    }
    return book;
}

Result<Scenario> parseScenario(std::string_view json, const std::function<UuidBytes()>& newId,
                               const std::string& name) {
    const auto root = nlohmann::json::parse(json, nullptr, /*allow_exceptions=*/false);
    if (root.is_discarded()) {
        return fail(ErrorCode::ScenarioInvalid, {name, "/", "not_json"});
    }
    try {
        auto scenario = ScenarioReader(newId).read(JsonNode(root, {}));
        std::stable_sort(
            scenario.visits.begin(), scenario.visits.end(),
            [](const PlannedVisit& a, const PlannedVisit& b) { return a.visit.date < b.visit.date; });
        return scenario;
    } catch (const NodeFault& fault) {
        return fail(ErrorCode::ScenarioInvalid, {name, fault.where.empty() ? "/" : fault.where, fault.what});
    }
}

}  // namespace hearth::exchange
