// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/scenario_writer.h"

#include "app/issue.h"

#include <map>
#include <utility>

namespace hearth::app {
namespace {

constexpr std::chrono::seconds kBetweenEntries{20};
constexpr std::chrono::minutes kBeforeIssue{5};
constexpr auto kOffice = "office";

Instant morningOf(calendar::Date date) {
    Instant instant{};
    if (!instantAt(date, "09:00", instant)) {
        instant = std::chrono::sys_days(date);
    }
    return instant;
}

/// Stops at the first refusal, and keeps it.
class Writer {
  public:
    Writer(const exchange::Scenario& scenario, store::Store& store, FixedClock& clock, Records records)
        : m_scenario(scenario), m_store(store), m_clock(clock), m_records(records) {}

    Result<void> write() {
        m_store.actAs(kOffice);
        saveAll(m_scenario.engineers);
        saveAll(m_scenario.instruments);
        saveAll(m_scenario.rules);
        saveAll(m_scenario.parties);
        saveAll(m_scenario.premises);
        saveAll(m_scenario.roles);
        for (const auto& installation : m_scenario.installations) {
            take(m_store.save(installation));
        }
        saveAll(m_scenario.appliances);
        for (const auto& installation : m_scenario.installations) {
            take(m_store.savePipes(installation.id, pipesOf(installation.id)));
        }
        for (const auto& planned : m_scenario.visits) {
            writeVisit(planned);
        }
        return m_done;
    }

  private:
    void take(const Result<void>& result) {
        if (m_done && !result) {
            m_done = result;
        }
    }

    /// Nothing more is written after a refusal.
    template <class Value>
    std::optional<Value> taken(const Result<Value>& result) {
        take(result ? Result<void>() : tl::unexpected(result.error()));
        return m_done && result ? std::optional<Value>(*result) : std::nullopt;
    }

    template <class List>
    void saveAll(const List& list) {
        for (const auto& one : list) {
            if (m_done) {
                take(m_store.save(one));
            }
        }
    }

    [[nodiscard]] std::vector<reg::PipeSection> pipesOf(reg::InstallationId id) const {
        std::vector<reg::PipeSection> pipes;
        for (const auto& pipe : m_scenario.pipes) {
            if (pipe.installation == id) {
                pipes.push_back(pipe);
            }
        }
        return pipes;
    }

    void writeVisit(const exchange::PlannedVisit& planned) {
        if (!m_done) {
            return;
        }
        const reg::Visit& visit = planned.visit;
        m_clock.set(visit.startedAt == Instant{} ? morningOf(visit.date) : visit.startedAt);
        actAs(visit.engineer);
        const auto id = taken(m_store.startVisit(visit));
        if (!id) {
            return;
        }
        saveEntries(*id, planned.entries, reg::subject(*id));
        writeTests(*id, planned);
        saveAll(planned.situations);
        for (const auto& entry : planned.subjectEntries) {
            saveEntries(*id, {entry}, entry.subject);
        }
        if (planned.issue && m_records == Records::AsMarked) {
            m_clock.advance(kBeforeIssue);
            for (const auto kind : planned.kinds) {
                if (m_done) {
                    static_cast<void>(taken(issueRecord(m_store, m_clock, kind, *id, std::nullopt, {})));
                }
            }
        }
    }

    /// The store has made the first test with the visit; the scenario's ids of tests are not the store's.
    void writeTests(reg::VisitId visit, const exchange::PlannedVisit& planned) {
        const auto file = taken(m_store.visitFile(visit));
        for (std::size_t i = 0; file && i < planned.tests.size(); ++i) {
            const auto& test = planned.tests[i];
            const auto id = i < file->tests.size() ? std::optional(file->tests[i].id)
                                                   : taken(m_store.addTest(visit, test.test.label));
            if (id) {
                saveEntries(visit, test.entries, reg::subject(*id));
                keepTrace(*id, test);
            }
        }
    }

    void keepTrace(reg::TestId test, const exchange::PlannedTest& planned) {
        if (planned.trace && m_done) {
            const auto& [source, marks, trace, second] = *planned.trace;
            store::NewTrace kept{test, source, marks, trace};
            if (second) {
                kept.beside = store::NewTraceBeside{second->source, second->trace};
            }
            static_cast<void>(taken(m_store.keepTrace(kept)));
        }
    }

    void saveEntries(reg::VisitId visit, const std::vector<reg::Entry>& entries,
                     const reg::SubjectRef& subject) {
        for (reg::Entry entry : entries) {
            m_clock.advance(kBetweenEntries);
            entry.visit = visit;
            entry.subject = subject;
            if (m_done) {
                take(m_store.saveEntry(entry));
            }
        }
    }

    void actAs(const std::optional<reg::EngineerId>& id) {
        for (const auto& engineer : m_scenario.engineers) {
            if (id == engineer.id) {
                m_store.actAs(engineer.name);
            }
        }
    }

    const exchange::Scenario& m_scenario;
    store::Store& m_store;
    FixedClock& m_clock;
    Records m_records;
    Result<void> m_done;
};

}  // namespace

Instant startOf(const exchange::Scenario& scenario) {
    return scenario.visits.empty() ? Instant{}
                                   : morningOf(calendar::addDays(scenario.visits.front().visit.date, -1));
}

Result<void> writeScenario(const exchange::Scenario& scenario, store::Store& store, FixedClock& clock,
                           Records records) {
    // one transaction: some hundred entries of their own would keep a slow disk busy for minutes
    return store.together([&] { return Writer(scenario, store, clock, records).write(); });
}

}  // namespace hearth::app
