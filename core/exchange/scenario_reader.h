// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/json_node.h"
#include "core/exchange/scenario.h"

#include <functional>
#include <map>
#include <string>

namespace hearth::exchange {

/// Reads one scenario: the keys that its author gave become ids. Faults are thrown as NodeFault.
class ScenarioReader {
  public:
    explicit ScenarioReader(const std::function<UuidBytes()>& newId) : m_newId(newId) {}
    [[nodiscard]] Scenario read(const JsonNode& root);

  private:
    // scenario_reader.cpp: the register
    void readFirm(const JsonNode& node);
    void readEngineer(const JsonNode& node);
    void readInstrument(const JsonNode& node);
    void readParty(const JsonNode& node);
    void readPremises(const JsonNode& node);
    void readInstallation(const JsonNode& node, reg::PremisesId premises);
    void readAppliance(const JsonNode& node, reg::InstallationId installation, int position);
    void readPipe(const JsonNode& node, reg::InstallationId installation, int position);
    // scenario_visits.cpp
    void readRule(const JsonNode& node);
    void readVisit(const JsonNode& node);
    void readSubjects(const JsonNode& node, PlannedVisit& planned);
    void readSituation(const JsonNode& node, PlannedVisit& planned);
    [[nodiscard]] static PlannedTrace traceIn(const JsonNode& node, Instant began);
    [[nodiscard]] PlannedTest readTest(const JsonNode& node, const reg::Visit& visit, int position);
    [[nodiscard]] reg::Entry readEntry(const std::string& code, const JsonNode& node, const reg::Visit& visit,
                                       const reg::SubjectRef& on);

    /// A new id for a key of one kind of thing; a key that is there already is refused.
    UuidBytes named(const char* kind, const JsonNode& key);
    /// The id of a key that must be there.
    [[nodiscard]] UuidBytes known(const char* kind, const JsonNode& key) const;

    const std::function<UuidBytes()>& m_newId;
    std::map<std::string, UuidBytes> m_ids;  // "party/landlord" -> id
    Scenario m_scenario;
};

/// Shared between the two files.
[[nodiscard]] calendar::Date dateIn(const JsonNode& node);
[[nodiscard]] quantity::Typed typedIn(const JsonNode& node, quantity::UnitFamily family);

/// The value of a code, or the node is refused.
template <class Optional>
[[nodiscard]] auto valueOf(const Optional& value, const JsonNode& node) {
    if (!value) {
        node.refuse("unknown");
    }
    return *value;
}

}  // namespace hearth::exchange
