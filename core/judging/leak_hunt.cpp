// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/leak_hunt.h"

#include "core/judging/installation.h"
#include "core/judging/pipes.h"
#include "core/judging/readings.h"
#include "core/tightness/leak_rate.h"

#include <algorithm>
#include <charconv>
#include <string_view>

namespace hearth::judging {

using quantity::Flow;
using quantity::GaugePressure;
using quantity::kPascal;
using reg::Item;
using tightness::LeakPlacesSay;
using tightness::Within95;

namespace {

bool isSame(std::string_view one, std::string_view other) {
    return std::equal(one.begin(), one.end(), other.begin(), other.end(), [](char a, char b) {
        const auto lower = [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; };
        return lower(a) == lower(b);
    });
}

std::string_view huntTrimmed(std::string_view text) {
    const auto from = text.find_first_not_of(" \t");
    return from == std::string_view::npos ? std::string_view()
                                          : text.substr(from, text.find_last_not_of(" \t") - from + 1);
}

/// By its number in the list, or by what it leads to.
std::optional<std::size_t> sectionNamed(const std::vector<reg::PipeSection>& pipes, std::string_view word) {
    std::size_t number = 0;
    const auto [end, error] = std::from_chars(word.data(), word.data() + word.size(), number);
    if (error == std::errc() && end == word.data() + word.size()) {
        return number >= 1 && number <= pipes.size() ? std::optional(number - 1) : std::nullopt;
    }
    std::optional<std::size_t> found;
    for (std::size_t at = 0; at < pipes.size(); ++at) {
        if (isSame(huntTrimmed(pipes[at].leadsTo), word)) {
            if (found) {
                return std::nullopt;  // two lead there
            }
            found = at;
        }
    }
    return found;
}

void readShut(const reg::VisitFile& file, std::string_view text, HuntedTest& hunted) {
    while (!text.empty()) {
        const auto end = text.find_first_of(",;");
        const auto word = huntTrimmed(text.substr(0, end));
        text = end == std::string_view::npos ? std::string_view() : text.substr(end + 1);
        if (word.empty()) {
            continue;
        }
        if (const auto section = sectionNamed(file.pipes, word)) {
            hunted.shut.push_back(*section);
        } else if (hunted.lacks == HuntLacks::Nothing) {
            hunted.lacks = HuntLacks::PipesShut;
            hunted.unread = word;
        }
    }
}

/// Whether gas came to it past the valves that were shut. Without a tree nobody can say what a valve shuts.
bool isReached(const pipework::Tree* tree, const std::vector<std::size_t>& shut, std::size_t section) {
    if (tree == nullptr || shut.empty()) {
        return shut.empty();
    }
    const auto route = tree->route(section);
    return std::none_of(shut.begin(), shut.end(), [&](std::size_t valve) {
        return std::find(route.begin(), route.end(), valve) != route.end();
    });
}

/// An appliance can be at the end of the pipes, or where the list says so; none behind a cap.
bool hasAppliance(const reg::PipeSection& pipe, const pipework::Tree* tree, std::size_t section) {
    return !pipe.capped && (pipe.appliance || tree == nullptr || tree->isEnd(section));
}

std::vector<HuntPlace> placesOf(const std::vector<reg::PipeSection>& pipes, const pipework::Tree* tree) {
    using Kind = HuntPlace::Kind;
    std::vector<HuntPlace> places{{Kind::Meter, std::nullopt}};
    for (std::size_t section = 0; section < pipes.size(); ++section) {
        places.push_back({Kind::Pipe, section});
    }
    for (std::size_t section = 0; section < pipes.size(); ++section) {
        if (hasAppliance(pipes[section], tree, section)) {
            places.push_back({Kind::Appliance, section});
        }
    }
    if (pipes.empty()) {
        places.push_back({Kind::Appliance, std::nullopt});
    }
    return places;
}

/// A leak, and the pressure that it is told at.
struct LeakAt {
    Within95<Flow> leak;
    GaugePressure at;
};

Within95<Flow> timesOf(const Within95<Flow>& leak, double by) {
    return {leak.best * by, leak.least * by, leak.most * by};
}

/// What the two readings say; why not where they say nothing.
std::optional<LeakAt> byReadings(const reg::VisitFile& file, const rulebook::RuleBook& book,
                                 const Readings& readings, const StageItems& items, HuntedTest& hunted) {
    const auto stage = stageOf(readings, items);
    const auto* instrument = file.gaugeOf(hunted.test);
    const auto gauge = instrument == nullptr ? std::nullopt : gaugeFrom(*instrument);
    if (!stage.start || !stage.end || !stage.took || !(*stage.took > quantity::Duration{})) {
        hunted.lacks = HuntLacks::Readings;
        return std::nullopt;
    }
    if (!gauge) {
        hunted.lacks = HuntLacks::Gauge;
        return std::nullopt;
    }
    const auto start = stage.start->pressure;
    const auto rate = tightness::leakRate(
        {*hunted.volume, tightness::changeBetween(*gauge, *stage.start, *stage.end), start, *stage.took,
         gauge->accuracy, assumedChange(readings, book), volumeOffOf(readings), gauge->drift});
    return LeakAt{{rate.rate, rate.rate - rate.uncertainty, rate.rate + rate.uncertainty}, start};
}

/// Whether its fit may speak of a leak at all.
bool canTell(const tightness::TraceTold& told) {
    using tightness::TraceSays;
    return told.test && told.test->isIdentified && told.says != TraceSays::StuckGauge &&
           told.says != TraceSays::LetsBy && told.says != TraceSays::NothingToGoBy;
}

/// What the test's trace says, the newest of them, for the volume that the test reached.
std::optional<LeakAt> byTrace(std::span<const TraceSeen> traces, const HuntedTest& hunted) {
    const auto newest = std::find_if(traces.rbegin(), traces.rend(),
                                     [&](const TraceSeen& seen) { return seen.test == hunted.test; });
    if (newest == traces.rend() || !canTell(newest->told) || !newest->asked.volume) {
        return std::nullopt;
    }
    const auto& fit = *newest->told.test;
    auto leak = timesOf(fit.leak, *hunted.volume / *newest->asked.volume);
    const bool isLeak = newest->told.says == tightness::TraceSays::Leak ||
                        newest->told.says == tightness::TraceSays::HiddenLeak;
    if (!isLeak) {
        leak.least = std::min(leak.least, Flow{});
    }
    return LeakAt{leak, fit.pressureAt(fit.begin).best};
}

class Hunt {
  public:
    Hunt(const reg::VisitFile& file, const rulebook::RuleBook& book, std::span<const TraceSeen> traces)
        : m_file(file), m_book(book), m_traces(traces) {
        if (auto tree = treeOf(file, book)) {
            m_tree = *std::move(tree);
        }
        m_hunt.places = placesOf(file.pipes, tree());
    }
    [[nodiscard]] LeakHunt go() && {
        for (const auto& test : m_file.tests) {
            take(test.id, kTight, false);
            const Readings readings(m_file, reg::subject(test.id));
            if (readings.isEntered(Item::RetestEnd)) {
                take(test.id, kRetest, true);
            }
        }
        tellTheLast();
        return std::move(m_hunt);
    }

  private:
    struct Run {
        std::vector<tightness::ReachedLeak> reached;
        std::vector<std::size_t> tests;
    };

    [[nodiscard]] const pipework::Tree* tree() const { return m_tree ? &*m_tree : nullptr; }

    void take(reg::TestId id, const StageItems& items, bool isRetest) {
        HuntedTest hunted;
        hunted.test = id;
        hunted.isVolumeExact = !volumeOffOf(Readings(m_file, reg::subject(id)));
        hunted.isRetest = isRetest;
        const Readings readings(m_file, reg::subject(id));
        const auto conduct = conductOf(readings);
        hunted.reachedAppliances = !isRetest && conduct.appliances == tightness::Appliances::Connected;
        readShut(m_file, readings.text(Item::TestPipesShut), hunted);
        if (hunted.lacks == HuntLacks::Nothing && !isRetest && !conduct.appliances) {
            hunted.lacks = HuntLacks::Appliances;
        }
        if (hunted.lacks == HuntLacks::Nothing && !hunted.shut.empty() && !m_tree) {
            hunted.lacks = HuntLacks::PipeOrder;
        }
        if (hunted.lacks == HuntLacks::Nothing) {
            compare(readings, items, conduct.extent == tightness::Extent::Part, hunted);
        }
        m_hunt.tests.push_back(std::move(hunted));
    }

    void compare(const Readings& readings, const StageItems& items, bool isPart, HuntedTest& hunted) {
        std::vector<bool> reaches(m_file.pipes.size());
        for (std::size_t section = 0; section < reaches.size(); ++section) {
            reaches[section] =
                isReached(tree(), hunted.shut, section) && (!isPart || m_file.pipes[section].underTest);
        }
        hunted.volume = volumeReached(m_file, readings, m_book, reaches);
        if (!hunted.volume || !(*hunted.volume > quantity::Volume{})) {
            hunted.lacks = HuntLacks::Volume;
            return;
        }
        auto found = hunted.isRetest ? std::nullopt : byTrace(m_traces, hunted);
        hunted.isByTrace = found.has_value();
        if (!found) {
            found = byReadings(m_file, m_book, readings, items, hunted);
        }
        if (!found || found->at.in(kPascal) <= 0.0) {
            hunted.lacks = hunted.lacks == HuntLacks::Nothing ? HuntLacks::Readings : hunted.lacks;
            return;
        }
        if (!m_at) {
            m_at = found->at;
        }
        hunted.leak = timesOf(found->leak, m_at->in(kPascal) / found->at.in(kPascal));
        keep({placesReached(reaches, hunted.reachedAppliances), *hunted.leak});
    }

    /// Into the comparison that goes on, or a new one where no leaks could have made it together with those
    /// before it: something was mended or changed since.
    void keep(tightness::ReachedLeak reached) {
        if (m_runs.empty()) {
            m_runs.emplace_back();
        }
        m_runs.back().reached.push_back(reached);
        const bool isFirst = m_runs.back().reached.size() == 1;
        if (!isFirst && !tightness::couldAllHold(m_runs.back().reached, m_hunt.places.size())) {
            m_runs.back().reached.pop_back();
            m_runs.emplace_back();
            m_runs.back().reached.push_back(std::move(reached));
        }
        m_runs.back().tests.push_back(m_hunt.tests.size());  // it is added after this
    }

    [[nodiscard]] tightness::LeakPlaces tellOf(const Run& run) const {
        return tightness::leakPlaces(run.reached, m_hunt.places.size());
    }

    /// The newest comparison that there is. Where each test stands alone since it contradicts the one before
    /// it, that is what there is to say.
    void tellTheLast() {
        for (auto run = m_runs.rbegin(); run != m_runs.rend(); ++run) {
            if (auto told = tellOf(*run); told.says != LeakPlacesSay::NothingToCompare) {
                tell(*run, std::move(told));
                return;
            }
        }
        if (m_runs.size() < 2) {
            return;
        }
        Run both = m_runs[m_runs.size() - 2];
        const auto& last = m_runs.back();
        both.reached.insert(both.reached.end(), last.reached.begin(), last.reached.end());
        both.tests.insert(both.tests.end(), last.tests.begin(), last.tests.end());
        tell(both, tellOf(both));
    }

    void tell(const Run& run, tightness::LeakPlaces told) {
        m_hunt.told = std::move(told);
        if (!m_hunt.isOne()) {
            return;
        }
        for (std::size_t at = 0; at < m_hunt.tests.size(); ++at) {
            const bool isIn = std::find(run.tests.begin(), run.tests.end(), at) != run.tests.end();
            if (!isIn && m_hunt.tests[at].lacks == HuntLacks::Nothing) {
                m_hunt.tests[at].lacks = HuntLacks::Changed;
            }
        }
    }

    [[nodiscard]] std::vector<bool> placesReached(const std::vector<bool>& sections, bool appliances) const {
        std::vector<bool> reached;
        for (const auto& place : m_hunt.places) {
            const bool isOpen = !place.section || sections[*place.section];
            reached.push_back(isOpen && (place.kind != HuntPlace::Kind::Appliance || appliances));
        }
        return reached;
    }

    const reg::VisitFile& m_file;
    const rulebook::RuleBook& m_book;
    std::span<const TraceSeen> m_traces;
    std::optional<pipework::Tree> m_tree;
    std::optional<GaugePressure> m_at;
    std::vector<Run> m_runs;
    LeakHunt m_hunt;
};

}  // namespace

LeakHunt huntLeak(const reg::VisitFile& file, const rulebook::RuleBook& book,
                  std::span<const TraceSeen> traces) {
    return Hunt(file, book, traces).go();
}

}  // namespace hearth::judging
