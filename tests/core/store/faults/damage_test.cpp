// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/faults/child.h"
#include "tests/core/store/faults/fault_actions.h"
#include "tests/core/store/faults/in_memory.h"
#include "tests/core/store/faults/workload.h"

#include <algorithm>
#include <cstdio>
#include <map>
#include <random>
#include <sstream>

namespace hearth::store {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t kPage = 4096;

/// What a child that did all that can be done with a damaged store tells of it, a word each.
struct Told {
    bool quick = false;      // SQLite's quick check, which opening asks, found it
    bool integrity = false;  // SQLite's full check found it
    bool digests = false;    // the records' digests or the change log's seals found it
    bool changed = false;    // what the store holds is not what it held, or can't be read
    std::string code;        // what the digests say
    std::string named;       // and of what
    bool isNamed = false;    // and that record is one that was changed
};

template <class Value>
void touch(const Result<Value>& result) {
    static_cast<void>(result.has_value());
}

/// Everything that a window would ask for; whatever it gives, it must give something.
void readAll(const Store& store) {
    touch(store.firm());
    touch(store.engineers());
    touch(store.instruments());
    touch(store.ruleBook());
    touch(store.parties(""));
    for (const auto& line : store.premises("").value_or(std::vector<PremisesLine>())) {
        touch(store.holders(line.premises.id));
        touch(store.installations(line.premises.id));
        touch(store.changesOfPremises(line.premises.id));
    }
    for (const auto& line : store.visits("").value_or(std::vector<VisitLine>())) {
        touch(store.visitFile(line.visit.id));
        touch(store.changesOfVisit(line.visit.id));
    }
    for (const auto& line : store.records("").value_or(std::vector<RecordLine>())) {
        touch(store.record(line.id));
    }
    touch(store.bin());
    touch(store.suggestions(Suggest::Place, "u"));
}

/// And everything that it would do.
void workOn(Store& store, reg::VisitId visit) {
    if (const auto file = store.visitFile(visit)) {
        touch(store.saveEntry(testEntry(*file, reg::Item::TightEnd, "20.61", quantity::UnitCode::Millibar)));
        auto premises = file->premises;
        premises.address.line2 = "Flat 9";
        touch(store.save(premises));
        touch(issueAnother(store, visit));
    }
    touch(store.undo());
}

std::string wholeStateOrNone(const fs::path& path) {
    try {
        return wholeState(path, Of::OneRun);
    } catch (const std::exception&) {
        return "unreadable";
    }
}

std::string_view kindOf(const std::string& owner) {
    if (owner.find("record_headers") != std::string::npos || owner.find("record_snapshots") == 0 ||
        owner == "record_pdfs") {
        return "records";
    }
    if (owner == "changes" || owner == "change_seals") {
        return "change log";
    }
    return owner == "free" ? "free" : "working data";
}

/// The rows of each record, by its number, as SQLite alone gives them; what can't be read is left out.
std::map<std::string, std::string> recordsIn(const fs::path& path) {
    std::map<std::string, std::string> records;
    for (int number = 1; number < 200; ++number) {
        const std::string which = " WHERE h.number = " + std::to_string(number);
        try {
            const std::string record = askSql(path, "SELECT record FROM record_headers AS h" + which);
            if (record.empty()) {
                break;
            }
            // Several rows where it was revised.
            records[record] += askSql(
                path,
                "SELECT quote(h.id) || h.series || h.revision || h.kind || h.issued_at || h.snapshot_digest "
                "|| "
                "h.pdf_digest || h.previous || h.digest || quote(s.json) || quote(s.visit) || "
                "quote(s.premises) || s.address || s.customer || s.outcome || quote(s.supersedes) || "
                "s.reason "
                "|| quote(p.pdf) FROM record_headers AS h JOIN record_snapshots AS s ON s.record = h.id JOIN "
                "record_pdfs AS p ON p.record = h.id" +
                    which);
        } catch (const std::exception&) {
            continue;
        }
    }
    return records;
}

class Damage : public InMemory, public SpoiltStore {
  protected:
    void SetUp() override {
        SpoiltStore::SetUp();
        {
            const auto opened = valueOf(Store::open(path(), Access::Write, clock));
            Worker worker(*opened, visit, 3, inFolder("backup.hearth"));
            for (int number = 1; number <= 60; ++number) {
                valueOf(worker.run(number));
            }
        }
        whole = hearth::testing::readFile(path());
        m_state = wholeState(path(), Of::OneRun);
        m_records = recordsIn(path());
        learnPages();
    }

    /// Puts a damaged file in the store's place and lets a child do everything with it.
    [[nodiscard]] Told tell(const std::string& damaged) const {
        hearth::testing::writeFile(path(), damaged);
        const Said said = saidByChild([&] {
            const std::string state = wholeStateOrNone(path());
            const auto health = Store::inspect(path());
            std::ostringstream told;
            told << (askOrNothing("PRAGMA quick_check(1)") != "ok") << ' '
                 << (!health || health->integrity != "ok") << ' ' << (health && !health->chain) << ' '
                 << (state != m_state) << ' ';
            if (health && !health->chain) {
                const Error& error = health->chain.error();
                const std::string named = error.details.empty() ? "-" : error.details.front();
                const auto now = recordsIn(path());
                const auto known = m_records.find(named);
                const auto found = now.find(named);
                told << codeText(error.code) << ' ' << named << ' '
                     << (known != m_records.end() && (found == now.end() || found->second != known->second));
            }
            if (const auto reader = Store::open(path(), Access::Read, clock)) {
                readAll(**reader);
            }
            if (const auto opened = Store::open(path(), Access::Write, clock)) {
                workOn(**opened, visit);
                touch((*opened)->backUp(inFolder("damaged-backup.hearth")));
            }
            return told.str();
        });
        EXPECT_EQ(said.end, "0") << "it fell over";
        fs::remove(path().string() + "-journal");
        Told told;
        std::istringstream words(said.text);
        words >> told.quick >> told.integrity >> told.digests >> told.changed >> told.code >> told.named >>
            told.isNamed;
        return told;
    }

    /// The table or index that a page belongs to; "free" for none.
    [[nodiscard]] std::string ownerOf(std::size_t at) const {
        const auto owner = m_owners.find(at / kPage + 1);
        return owner == m_owners.end() ? "free" : owner->second;
    }

    /// A place by lot in the pages of that kind.
    [[nodiscard]] std::size_t placeIn(std::string_view kind) {
        std::size_t at = 0;
        do {
            at = random() % whole.size();
        } while (kindOf(ownerOf(at)) != kind);
        return at;
    }

    [[nodiscard]] std::size_t recordCount() const { return m_records.size(); }
    [[nodiscard]] static std::string flipped(std::string bytes, std::size_t at, unsigned bit) {
        bytes[at] = static_cast<char>(static_cast<unsigned char>(bytes[at]) ^ (1U << bit));
        return bytes;
    }

    std::string whole;
    std::mt19937 random{20261125};

  private:
    [[nodiscard]] std::string askOrNothing(const char* sql) const {
        try {
            return askSql(path(), sql);
        } catch (const std::exception&) {
            return "";
        }
    }

    void learnPages() {
        std::istringstream pages(askSql(
            path(),
            "SELECT group_concat(pageno || ' ' || name, char(10)) FROM dbstat WHERE name IS NOT NULL"));
        std::size_t page = 0;
        std::string name;
        while (pages >> page >> name) {
            m_owners[page] = name;
        }
        ASSERT_GT(m_owners.size(), 50U);
    }

    std::string m_state;
    std::map<std::string, std::string> m_records;
    std::map<std::size_t, std::string> m_owners;
};

/// Rates over the flips that changed what is held.
struct Rate {
    int flips = 0;
    int changed = 0;
    int quick = 0;
    int integrity = 0;
    int digests = 0;
    int any = 0;

    void take(const Told& told) {
        ++flips;
        changed += told.changed ? 1 : 0;
        quick += told.changed && told.quick ? 1 : 0;
        integrity += told.changed && told.integrity ? 1 : 0;
        digests += told.changed && told.digests ? 1 : 0;
        any += told.changed && (told.integrity || told.digests) ? 1 : 0;
    }
    void say(const char* where) const {
        std::printf(
            "%-14s %3d flips, %3d changed what is held; of these found by quick check %3d, integrity check "
            "%3d, "
            "digests %3d, any %3d\n",
            where, flips, changed, quick, integrity, digests, any);
    }
};

TEST_F(Damage, ofOneBitAnywhereIsNeverACrash) {
    std::map<std::string, Rate> rates;
    Rate all;
    for (int i = 0; i < rounds(kIsSanitized ? 8 : 24, 400) && !HasFailure(); ++i) {
        const std::size_t at = i % 2 == 0 ? random() % whole.size() : placeIn("working data");
        const Told told = tell(flipped(whole, at, random() % 8));
        rates[std::string(kindOf(ownerOf(at)))].take(told);
        all.take(told);
        EXPECT_FALSE(HasFailure()) << "byte " << at << " of " << ownerOf(at);
    }
    for (const auto& [kind, rate] : rates) {
        rate.say(kind.c_str());
    }
    all.say("all");
}

TEST_F(Damage, ofItsEndIsFoundAndNeverACrash) {
    int found = 0;
    const int times = rounds(10, 100);
    for (int i = 0; i < times && !HasFailure(); ++i) {
        const std::size_t left =
            i % 2 == 0 ? random() % whole.size() : random() % (whole.size() / kPage) * kPage;
        const Told told = tell(whole.substr(0, left));
        const bool isFound = told.integrity || !Store::inspect(path());
        found += isFound ? 1 : 0;
        EXPECT_TRUE(isFound) << left << " bytes left of " << whole.size();
    }
    std::printf("%d truncations, %d found\n", times, found);
    EXPECT_EQ(found, times);
}

TEST_F(Damage, ofOneBitOfARecordIsFoundAndNamed) {
    ASSERT_GT(recordCount(), 5U);
    int changed = 0;
    int tried = 0;
    std::map<std::string, int> said;
    const int wanted = rounds(kIsSanitized ? 8 : 25, 500);
    while (changed < wanted && !HasFailure()) {
        const std::size_t at = placeIn("records");
        const Told told = tell(flipped(whole, at, random() % 8));
        ++tried;
        if (!told.changed) {
            continue;  // room that holds nothing
        }
        ++changed;
        ++said[told.code];
        EXPECT_TRUE(told.digests) << "byte " << at << " of " << ownerOf(at);
        EXPECT_TRUE(told.isNamed) << told.code << " " << told.named << ", byte " << at << " of "
                                  << ownerOf(at);
    }
    std::printf("%d flips in the pages of %zu records, %d changed one:", tried, recordCount(), changed);
    for (const auto& [code, times] : said) {
        std::printf(" %s %d", code.c_str(), times);
    }
    std::printf("\n");
}

}  // namespace
}  // namespace hearth::store
