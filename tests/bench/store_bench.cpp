// SPDX-License-Identifier: GPL-3.0-or-later
// The store on 100,000 premises (HEARTH_FULL=1; else a tenth): each call against the very statements that it
// runs, prepared beforehand, on a bare connection. Finding as somebody types, opening premises with their
// history, saving one field with the syncs that it costs.
#include "core/store/store.h"
#include "tests/bench/bare_statements.h"
#include "tests/bench/figure.h"
#include "tests/bench/store_generator.h"

#include <algorithm>
#include <benchmark/benchmark.h>
#include <chrono>
#include <cstdio>
#include <functional>
#include <memory>
#include <stdexcept>
#include <string>
#include <vector>

namespace {

using namespace hearth;
namespace fs = std::filesystem;

constexpr double kMostOfBare = 2.5;
constexpr double kMostOpening = 30.0;  // milliseconds
constexpr double kMostOfBareSave = 1.5;
constexpr double kFrame = 16.0;

template <class Value>
Value must(Result<Value> result) {
    if (!result) {
        throw std::runtime_error(std::string(codeText(result.error().code)));
    }
    if constexpr (!std::is_void_v<Value>) {
        return std::move(*result);
    }
}

double milliseconds(const std::function<void()>& work) {
    const auto begun = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begun).count();
}

double middle(std::vector<double> values) {
    std::nth_element(values.begin(), values.begin() + static_cast<long>(values.size() / 2), values.end());
    return values[values.size() / 2];
}

/// Both ways of doing each of many like things, in milliseconds.
struct Both {
    std::vector<double> ours;
    std::vector<double> bare;
    [[nodiscard]] double ratio() const {
        double ourSum = 0;
        double bareSum = 0;
        for (std::size_t i = 0; i < ours.size(); ++i) {
            ourSum += ours[i];
            bareSum += bare[i];
        }
        return ourSum / bareSum;
    }
    [[nodiscard]] double worst() const { return *std::max_element(ours.begin(), ours.end()); }
};

class StoreBench {
  public:
    explicit StoreBench(const fs::path& path) : m_path(path) {
        static_cast<void>(bench::syncsSoFar());
        bench::watchStatements();
        m_store = must(store::Store::open(path, store::Access::Write, m_clock));
        m_bare = std::make_unique<bench::BareStatements>(path);
    }

    /// The best of several times each, by turns: the machine's moods meet both.
    void compareReading(Both& both, const std::function<void()>& call) {
        constexpr int kTimes = 7;
        static_cast<void>(bench::takeStatements());
        call();
        m_bare->prepare(bench::takeStatements());
        m_bare->run();
        double ours = 1e9;
        double bare = 1e9;
        for (int i = 0; i < kTimes; ++i) {
            bare = std::min(bare, milliseconds([&] { m_bare->run(); }));
            ours = std::min(ours, milliseconds(call));
        }
        static_cast<void>(bench::takeStatements());
        both.ours.push_back(ours);
        both.bare.push_back(bare);
    }

    void find() {
        Both both;
        for (const std::string whole :
             {"tamsin highford", "12 mill lane", "qa7 2yw", "7946 0123", "bgs 000123", "o'brien 1",
              "ashby street", "po 4711", "g41234", "47-583", "s", "1 a"}) {
            for (std::size_t size = 1; size <= whole.size(); ++size) {
                const std::string typed = whole.substr(0, size);
                compareReading(both, [&] { benchmark::DoNotOptimize(must(m_store->find(typed))); });
            }
        }
        bench::figure("finding at each key, in times of its bare statements", both.ratio(), kMostOfBare);
        bench::figure("the slowest key of finding, in milliseconds", both.worst(), kFrame);
        std::printf("  %zu keys; ours in the middle %.3f ms, bare %.3f ms\n", both.ours.size(),
                    middle(both.ours), middle(both.bare));
    }

    void openPremises() {
        Both both;
        const int count = must(m_store->premisesCount());
        for (int i = 0; i < 200; ++i) {
            const auto line = must(m_store->premisesPage(static_cast<int>(i * 7919L % count), 1)).front();
            compareReading(both, [&] { readAllOf(line.premises.id); });
        }
        bench::figure("opening premises with their history, in times of the bare statements", both.ratio(),
                      kMostOfBare);
        bench::figure("the slowest opening of premises, in milliseconds", both.worst(), kMostOpening);
        std::printf("  ours in the middle %.3f ms, bare %.3f ms\n", middle(both.ours), middle(both.bare));
    }

    void pageThrough() {
        Both both;
        const int count = must(m_store->premisesCount());
        for (int i = 0; i <= 20; ++i) {
            const int first = static_cast<int>(static_cast<long>(count - 64) * i / 20);
            compareReading(both, [&] { benchmark::DoNotOptimize(must(m_store->premisesPage(first, 64))); });
        }
        bench::figure("a page of 64 premises, in times of its bare statements", both.ratio(), kMostOfBare);
        bench::figure("the slowest page of premises, in milliseconds", both.worst(), kFrame);
    }

  private:
    /// What the sheet of premises asks for.
    void readAllOf(reg::PremisesId id) {
        benchmark::DoNotOptimize(must(m_store->premises(id)));
        benchmark::DoNotOptimize(must(m_store->holders(id)));
        benchmark::DoNotOptimize(must(m_store->rolesOf(id)));
        for (const auto& installation : must(m_store->installations(id))) {
            benchmark::DoNotOptimize(must(m_store->pipes(installation.id)));
            benchmark::DoNotOptimize(must(m_store->appliances(installation.id)));
        }
        for (const auto& visit : must(m_store->visitsOf(id))) {
            benchmark::DoNotOptimize(must(m_store->recordsOf(visit.visit.id)));
        }
        benchmark::DoNotOptimize(must(m_store->accessAttempts(id)));
        benchmark::DoNotOptimize(must(m_store->letters(id)));
        benchmark::DoNotOptimize(must(m_store->bookings(id)));
        benchmark::DoNotOptimize(must(m_store->situations(id)));
        benchmark::DoNotOptimize(must(m_store->changesOfPremises(id)));
    }

    SystemClock m_clock;
    fs::path m_path;
    std::unique_ptr<store::Store> m_store;
    std::unique_ptr<bench::BareStatements> m_bare;
};

/// Two copies of one store: what is saved in ours is done to the other by the bare statements, one after the
/// other, so that they stay alike.
class SaveBench {
  public:
    SaveBench(const fs::path& store, const fs::path& folder)
        : m_ours(folder / "saving-ours.hearth"), m_bare(folder / "saving-bare.hearth") {
        for (const auto& copy : {m_ours, m_bare}) {
            fs::copy_file(store, copy, fs::copy_options::overwrite_existing);
        }
        m_store = must(store::Store::open(m_ours, store::Access::Write, m_clock));
        m_connection = std::make_unique<bench::BareStatements>(m_bare);
    }
    ~SaveBench() {
        m_store.reset();
        m_connection.reset();
        fs::remove(m_ours);
        fs::remove(m_bare);
    }
    SaveBench(const SaveBench&) = delete;
    SaveBench& operator=(const SaveBench&) = delete;

    void run() {
        const auto lines = must(m_store->premisesPage(0, 60));
        compareSaves("a reading", lines, [&](const store::PremisesLine& line) {
            const auto file =
                must(m_store->visitFile(must(m_store->visitsOf(line.premises.id)).front().visit.id));
            reg::Entry entry;
            entry.visit = file.visit.id;
            entry.subject = reg::subject(file.tests.front().id);
            entry.item = reg::Item::TightStart;
            entry.text = "21.37";
            entry.unit = quantity::UnitCode::Millibar;
            return [this, entry] { must(m_store->saveEntry(entry)); };
        });
        compareSaves("a street of premises", lines, [&](const store::PremisesLine& line) {
            reg::Premises premises = line.premises;
            premises.address.line1 = "1 Other " + premises.address.line1;
            return [this, premises] { must(m_store->save(premises)); };
        });
    }

  private:
    template <class Make>
    void compareSaves(const char* what, const std::vector<store::PremisesLine>& lines, Make make) {
        Both both;
        long ourSyncs = 0;
        long bareSyncs = 0;
        for (const auto& line : lines) {
            const std::function<void()> save = make(line);
            static_cast<void>(bench::takeStatements());
            const long before = bench::syncsSoFar();
            both.ours.push_back(milliseconds(save));
            const long between = bench::syncsSoFar();
            m_connection->prepare(bench::takeStatements());
            both.bare.push_back(milliseconds([&] { m_connection->run(); }));
            ourSyncs += between - before;
            bareSyncs += bench::syncsSoFar() - between;
        }
        const std::string name = std::string("saving ") + what;
        bench::figure((name + ", in times of its bare statements").c_str(),
                      middle(both.ours) / middle(both.bare), kMostOfBareSave);
        bench::figure((name + ", in times of the syncs that SQLite needs").c_str(),
                      static_cast<double>(ourSyncs) / static_cast<double>(bareSyncs), 1.0);
        std::printf("  ours %.2f ms, bare %.2f ms; %.1f syncs a save, bare %.1f\n", middle(both.ours),
                    middle(both.bare), static_cast<double>(ourSyncs) / static_cast<double>(lines.size()),
                    static_cast<double>(bareSyncs) / static_cast<double>(lines.size()));
    }

    SystemClock m_clock;
    fs::path m_ours;
    fs::path m_bare;
    std::unique_ptr<store::Store> m_store;
    std::unique_ptr<bench::BareStatements> m_connection;
};

}  // namespace

int main(int argc, char** argv) {
    benchmark::Initialize(&argc, argv);
    try {
        const fs::path folder(argc > 1 ? argv[1] : HEARTH_BENCH_DIR);
        const fs::path path = bench::bigStoreIn(folder, bench::wantedPremises());
        {
            StoreBench reading(path);
            reading.find();
            reading.openPremises();
            reading.pageThrough();
        }
        SaveBench(path, folder).run();
    } catch (const std::exception& problem) {
        std::fprintf(stderr, "%s\n", problem.what());
        return 1;
    }
    return 0;
}
