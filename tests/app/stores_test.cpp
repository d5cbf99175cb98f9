// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/stores.h"

#include <QString>

#include <gtest/gtest.h>

namespace {

using namespace hearth::app;

/// Sets an environment variable for a test's life.
class Environment {
  public:
    Environment(const char* name, const QByteArray& value) : m_name(name), m_before(qgetenv(name)) {
        qputenv(name, value);
    }
    ~Environment() { qputenv(m_name, m_before); }
    Environment(const Environment&) = delete;
    Environment& operator=(const Environment&) = delete;

  private:
    const char* m_name;
    QByteArray m_before;
};

// XDG Base Directory Specification: $XDG_DATA_HOME, else $HOME/.local/share (from memory).
TEST(StoresTest, FollowsTheDataFolderOfTheEnvironment) {
    const Environment data("XDG_DATA_HOME", "/somewhere/data");
    EXPECT_EQ(ownStore(), "/somewhere/data/hearthledger/firm.hearth");
    EXPECT_EQ(demonstrationStore(), "/somewhere/data/hearthledger/demonstration.hearth");
}

TEST(StoresTest, FallsBackToTheHomeFolder) {
    const Environment data("XDG_DATA_HOME", "");
    const Environment home("HOME", "/somewhere/else");
    EXPECT_EQ(ownStore(), "/somewhere/else/.local/share/hearthledger/firm.hearth");
}

TEST(StoresTest, TheCommandLineSaysWhichStore) {
    const Environment data("XDG_DATA_HOME", "/somewhere/data");
    CommandLine line;
    EXPECT_EQ(storeOf(line), ownStore());
    line.demonstration = true;
    EXPECT_EQ(storeOf(line), demonstrationStore());
    line.demonstration = false;
    line.store = QStringLiteral("other ŷ.hearth");
    EXPECT_EQ(storeOf(line), "other ŷ.hearth");
}

}  // namespace
