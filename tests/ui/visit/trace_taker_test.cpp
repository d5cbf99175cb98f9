// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/trace_taker.h"

#include "tests/support/files.h"
#include "tests/ui/visit/trace_bench.h"

#include <gtest/gtest.h>

namespace hearth::ui::visit {
namespace {

using testing::loggersFile;
using testing::TraceBench;
using testing::watched;

class TraceTakerTest : public ::testing::Test {
  protected:
    [[nodiscard]] QString chosen(const char* name) const {
        return m_bench.taker().editor(QString::fromLatin1(name))->text();
    }
    void choose(const char* name, const char* code) const {
        auto* editor = m_bench.taker().editor(QString::fromLatin1(name));
        editor->setText(QString::fromLatin1(code));
        Q_EMIT editor->committed(editor->text());
    }
    [[nodiscard]] QString said() const {
        QStringList texts;
        for (const auto* label : m_bench.taker().findChildren<QLabel*>()) {
            texts << label->text();
        }
        return texts.join(u'\n');
    }
    TraceBench m_bench;
};

TEST_F(TraceTakerTest, readsAChosenFileAndKeepsItByOneKey) {
    const testing::TempDir folder;
    const auto path = folder / "gauge 3.csv";
    testing::writeFile(path, loggersFile(watched(0.0004)));
    m_bench.firm.dialogs.chosen.push_back({QString::fromStdString(path.string())});
    m_bench.button("takeLoggersFile")->setFocus();
    TraceBench::press(Qt::Key_Space);
    ASSERT_TRUE(m_bench.taker().file());
    EXPECT_EQ(chosen("traceTime"), QStringLiteral("0"));
    EXPECT_EQ(chosen("tracePressure"), QStringLiteral("1"));
    EXPECT_EQ(chosen("traceUnit"), QStringLiteral("mbar"));
    EXPECT_TRUE(said().contains(QStringLiteral("541 readings over 270.0")));
    EXPECT_TRUE(m_bench.file().traces.empty()) << "nothing is kept before it is said";
    EXPECT_EQ(QApplication::focusWidget(), m_bench.button("takeTraceButton"));
    TraceBench::press(Qt::Key_Space);
    ASSERT_EQ(m_bench.file().traces.size(), 1U);
    EXPECT_EQ(m_bench.file().traces[0].source.name, "gauge 3.csv");
    EXPECT_FALSE(m_bench.taker().isVisible());
    EXPECT_EQ(m_bench.file().traces[0].points, 541);
}

TEST_F(TraceTakerTest, takesNothingWhereTheUnitIsNotSaid) {
    m_bench.taker().show(QStringLiteral("a.csv"), loggersFile(watched(), "time,pressure\n"));
    EXPECT_FALSE(m_bench.taker().file());
    EXPECT_FALSE(m_bench.button("takeTraceButton")->isEnabled());
    EXPECT_TRUE(said().contains(QStringLiteral("choose the unit. It is never guessed.")));
    choose("traceUnit", "kPa");
    ASSERT_TRUE(m_bench.taker().file());
    EXPECT_TRUE(m_bench.button("takeTraceButton")->isEnabled());
    EXPECT_NEAR(m_bench.taker().file()->trace.back().pressure.in(quantity::kMillibar), 206.0, 1e-6);
    choose("traceUnit", "none");
    EXPECT_FALSE(m_bench.taker().file());
}

TEST_F(TraceTakerTest, takesNothingWhereTheClockGoesBack) {
    m_bench.taker().show(QStringLiteral("a.csv"), "s,mbar\n1,20.1\n2,20.2\n1,20.3\n");
    EXPECT_FALSE(m_bench.button("takeTraceButton")->isEnabled());
    EXPECT_TRUE(said().contains(QStringLiteral("The clock goes back in line 4")));
    m_bench.button("leaveTraceButton")->click();
    EXPECT_FALSE(m_bench.taker().isVisible());
    EXPECT_TRUE(m_bench.file().traces.empty());
}

TEST_F(TraceTakerTest, letsAWrongGuessBePutRight) {
    m_bench.taker().show(QStringLiteral("a.csv"), "a,b,c\n1,0,20.5\n2,1,20.4\n3,2,20.3\n");
    EXPECT_FALSE(m_bench.taker().file());
    choose("traceTime", "1");
    choose("traceTimeUnit", "min");
    choose("tracePressure", "2");
    choose("traceUnit", "mbar");
    ASSERT_TRUE(m_bench.taker().file());
    EXPECT_NEAR(m_bench.taker().file()->trace.back().at.in(quantity::kSecond), 120.0, 1e-9);
}

TEST_F(TraceTakerTest, knowsTheTimeOfDayWhereTheFileDoes) {
    m_bench.taker().show(QStringLiteral("a.csv"), "time,pressure (mbar)\n09:40:12,20.5\n09:40:13,20.4\n");
    m_bench.button("takeTraceButton")->click();
    ASSERT_EQ(m_bench.file().traces.size(), 1U);
    ASSERT_TRUE(m_bench.file().traces[0].source.beganAt);
    EXPECT_EQ(wallTimeText(*m_bench.file().traces[0].source.beganAt), "09:40");
}

TEST_F(TraceTakerTest, saysAFileThatCantBeRead) {
    m_bench.firm.dialogs.chosen.push_back({QStringLiteral("/nowhere/a.csv")});
    m_bench.taker().chooseFile();
    ASSERT_EQ(m_bench.firm.dialogs.told.size(), 1);
    EXPECT_TRUE(m_bench.firm.dialogs.told[0].contains(QStringLiteral("/nowhere/a.csv")));
    m_bench.firm.dialogs.chosen.emplace_back();
    m_bench.taker().chooseFile();
    EXPECT_FALSE(m_bench.taker().isVisible());
}

}  // namespace
}  // namespace hearth::ui::visit
