// SPDX-License-Identifier: GPL-3.0-or-later
// Checks due on 100,000 premises (HEARTH_FULL=1; else a tenth), all of them with a deadline: the list's pages
// against the very statements that they run, on a bare connection; each filter and sort; all deadlines worked
// out anew.
#include "core/store/store.h"
#include "tests/bench/bare_statements.h"
#include "tests/bench/figure.h"
#include "tests/bench/store_generator.h"

#include <algorithm>
#include <benchmark/benchmark.h>
#include <chrono>
#include <cstdio>
#include <ctime>
#include <functional>
#include <memory>
#include <stdexcept>
#include <string>
#include <vector>

namespace {

using namespace hearth;
namespace fs = std::filesystem;

constexpr double kMostOfBarePage = 2.5;
constexpr double kMostFilter = 50.0;     // milliseconds
constexpr double kMostRecompute = 1000;  // milliseconds
constexpr int kPage = 64;
// The generator's checks are of 2020 to 2022.
const calendar::Date kBenchDay{std::chrono::year(2023) / std::chrono::May / 2};

template <class Value>
Value needed(Result<Value> result) {
    if (!result) {
        throw std::runtime_error(std::string(codeText(result.error().code)));
    }
    if constexpr (!std::is_void_v<Value>) {
        return std::move(*result);
    }
}

double millisecondsOf(const std::function<void()>& work) {
    const auto begun = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begun).count();
}

class DueBench {
  public:
    explicit DueBench(const fs::path& path) {
        bench::watchStatements();
        m_store = needed(store::Store::open(path, store::Access::Write, m_clock));
        m_bare = std::make_unique<bench::BareStatements>(path);
    }

    void firstPage() {
        const auto call = [&] {
            benchmark::DoNotOptimize(needed(m_store->duePage({}, store::DueSort::Need, kBenchDay, 0, kPage)));
        };
        static_cast<void>(bench::takeStatements());
        call();
        m_bare->prepare(bench::takeStatements());
        m_bare->run();
        double ours = 1e9;
        double bare = 1e9;
        for (int i = 0; i < kTimes; ++i) {
            bare = std::min(bare, millisecondsOf([&] { m_bare->run(); }));
            ours = std::min(ours, millisecondsOf(call));
        }
        static_cast<void>(bench::takeStatements());
        bench::figure("the first page of checks due, in times of its bare statements", ours / bare,
                      kMostOfBarePage);
        std::printf("  ours %.3f ms, bare %.3f ms\n", ours, bare);
    }

    /// The counts and the first page by each filter, as the place asks for both when one is set.
    void filters() {
        const auto firstOf = [&](store::DueBy by) {
            return needed(m_store->dueChoices(by, kBenchDay)).front();
        };
        std::vector<std::pair<std::string, store::DueFilter>> asked{{"no filter", {}}};
        for (const auto state : calendar::kDueStates) {
            asked.push_back({std::string(calendar::codeOf(state)), {}});
            asked.back().second.states = {state};
        }
        asked.push_back({"a landlord", {}});
        asked.back().second.landlord = reg::PartyId{firstOf(store::DueBy::Landlord).id};
        asked.push_back({"an agent", {}});
        asked.back().second.agent = reg::PartyId{firstOf(store::DueBy::Agent).id};
        asked.push_back({"an engineer", {}});
        asked.back().second.engineer = reg::EngineerId{firstOf(store::DueBy::Engineer).id};
        asked.push_back({"an area", {}});
        asked.back().second.outward = firstOf(store::DueBy::Area).name;
        for (const std::string text : {"m", "mill", "mill lane 1", "tamsin"}) {
            asked.push_back({"the text " + text, {}});
            asked.back().second.text = text;
        }
        for (const auto& [name, filter] : asked) {
            slowest("counts and page by " + name, [&, filter = filter] {
                benchmark::DoNotOptimize(needed(m_store->dueCounts(filter, kBenchDay)));
                benchmark::DoNotOptimize(
                    needed(m_store->duePage(filter, store::DueSort::Need, kBenchDay, 0, kPage)));
            });
        }
        bench::figure("the slowest filter of checks due, in milliseconds", m_slowest, kMostFilter);
        std::printf("  %s\n", m_which.c_str());
    }

    void sorts() {
        m_slowest = 0;
        const int all = needed(m_store->premisesCount());
        const auto counts = needed(m_store->dueCounts({}, kBenchDay));
        for (const auto& [name, sort] : {std::pair{"need", store::DueSort::Need},
                                         {"deadline", store::DueSort::Deadline},
                                         {"address", store::DueSort::Address},
                                         {"postcode", store::DueSort::Postcode},
                                         {"landlord", store::DueSort::Landlord},
                                         {"last check", store::DueSort::LastCheck}}) {
            for (const int first : {0, all / 2, all - kPage}) {
                slowest(std::string("by ") + name + " from " + std::to_string(first), [&, sort = sort] {
                    const auto page = needed(m_store->duePage({}, sort, kBenchDay, first, kPage, counts));
                    if (page.size() != kPage) {
                        throw std::runtime_error("a page is short");
                    }
                });
            }
        }
        bench::figure("the slowest sort of checks due, in milliseconds", m_slowest, kMostFilter);
        std::printf("  %s\n", m_which.c_str());
    }

    void recompute() {
        double least = 1e9;
        for (int months : {11, 13, 12}) {
            least = std::min(least, millisecondsOf([&] { needed(m_store->saveOwnInterval(months)); }));
        }
        bench::figure("a new interval of the firm's with all deadlines, in milliseconds", least,
                      kMostRecompute);
        double same = 1e9;
        const std::clock_t before = std::clock();
        for (int i = 0; i < 3; ++i) {
            same = std::min(same, millisecondsOf([&] { needed(m_store->mendDue()); }));
        }
        const double processor = 1000.0 * static_cast<double>(std::clock() - before) / CLOCKS_PER_SEC / 3;
        bench::figure("all deadlines worked out anew, in milliseconds", same, kMostRecompute);
        std::printf("  of processor time %.0f ms\n", processor);
    }

  private:
    static constexpr int kTimes = 7;

    void slowest(const std::string& name, const std::function<void()>& call) {
        double least = 1e9;
        for (int i = 0; i < kTimes; ++i) {
            least = std::min(least, millisecondsOf(call));
        }
        static_cast<void>(bench::takeStatements());
        std::printf("  %s: %.3f ms\n", name.c_str(), least);
        if (least > m_slowest) {
            m_slowest = least;
            m_which = name;
        }
    }

    SystemClock m_clock;
    std::unique_ptr<store::Store> m_store;
    std::unique_ptr<bench::BareStatements> m_bare;
    double m_slowest = 0;
    std::string m_which;
};

}  // namespace

int main(int argc, char** argv) {
    benchmark::Initialize(&argc, argv);
    try {
        const fs::path folder(argc > 1 ? argv[1] : HEARTH_BENCH_DIR);
        DueBench due(bench::bigStoreIn(folder, bench::wantedPremises()));
        due.firstPage();
        due.filters();
        due.sorts();
        due.recompute();
    } catch (const std::exception& problem) {
        std::fprintf(stderr, "%s\n", problem.what());
        return 1;
    }
    return 0;
}
