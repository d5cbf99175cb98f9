// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/faults/power_cut_disk.h"

#include "tests/core/store/faults/in_memory.h"
#include "tests/core/store/store_fixture.h"

#include <cstdio>
#include <sqlite3.h>

// A disk that never hurts anybody would prove nothing: here SQLite works on it without the store's settings.

namespace hearth::store {
namespace {

class DiskAlone : public InMemory, public ::testing::Test {
  protected:
    struct Harm {
        int cuts = 0;
        int broken = 0;
        int lost = 0;
    };

    /// Numbers, each with much beside it, so that a save spreads over pages; each told once it is saved.
    void saveNumbers(PowerCutDisk& disk, const char* synchronous, int last) const {
        sqlite3* db = nullptr;
        sqlite3_open(path().c_str(), &db);
        const auto run = [&](const std::string& sql) {
            ASSERT_EQ(sqlite3_exec(db, sql.c_str(), nullptr, nullptr, nullptr), SQLITE_OK)
                << sqlite3_errmsg(db);
        };
        run(std::string("PRAGMA synchronous = ") + synchronous);
        for (int number = 1; number <= last; ++number) {
            run("BEGIN; UPDATE last SET number = " + std::to_string(number) + "; INSERT INTO much VALUES (" +
                std::to_string(number) + ", randomblob(3000)); DELETE FROM much WHERE number = " +
                std::to_string(number - 3) + "; COMMIT");
            disk.promise(number);
        }
        sqlite3_close(db);
    }

    [[nodiscard]] Harm harmWith(const char* synchronous) {
        constexpr int kNumbers = 12;
        constexpr int kStepsForACut = 10;
        const auto fresh = imageOf(folder());
        PowerCutDisk disk(folder(), 7);
        Harm harm;
        while (harm.cuts < rounds(300, 5000)) {
            putBack(folder(), fresh);
            disk.start(kStepsForACut);
            saveNumbers(disk, synchronous, kNumbers);
            for (const auto& image : disk.stop()) {
                putBack(folder(), image);
                ++harm.cuts;
                const int found = lastNumber();
                harm.broken += found < 0 ? 1 : 0;
                harm.lost += found >= 0 && found < image.promised ? 1 : 0;
            }
        }
        putBack(folder(), fresh);
        std::printf("synchronous = %s: of %d cuts %d left a broken file, %d lost a save\n", synchronous,
                    harm.cuts, harm.broken, harm.lost);
        return harm;
    }

    [[nodiscard]] const std::filesystem::path& folder() const { return m_folder.path(); }
    [[nodiscard]] std::filesystem::path path() const { return m_folder / "numbers"; }

  private:
    /// -1: broken.
    [[nodiscard]] int lastNumber() const {
        try {
            const bool whole = askSql(path(), "PRAGMA integrity_check") == "ok" &&
                               askSql(path(), "SELECT max(number) FROM much") ==
                                   askSql(path(), "SELECT nullif(number, 0) FROM last");
            return whole ? std::stoi(askSql(path(), "SELECT number FROM last")) : -1;
        } catch (const std::exception&) {
            return -1;
        }
    }

    hearth::testing::TempDir m_folder;
};

TEST_F(DiskAlone, hurtsWhoDoesNotSync) {
    hearth::testing::writeFile(path(), "");
    ASSERT_EQ(sqlOn(path(),
                    "CREATE TABLE last (number INTEGER); INSERT INTO last VALUES (0);"
                    "CREATE TABLE much (number INTEGER PRIMARY KEY, bytes BLOB)"),
              "");
    EXPECT_GT(harmWith("OFF").broken, 0);
    EXPECT_GT(harmWith("FULL").lost, 0);  // the folder is not synced once the journal is removed
    const Harm extra = harmWith("EXTRA");
    EXPECT_EQ(extra.broken, 0);
    EXPECT_EQ(extra.lost, 0);
}

}  // namespace
}  // namespace hearth::store
