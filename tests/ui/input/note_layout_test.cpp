// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/input/note_layout.h"

#include "tests/ui/input/sample_findings.h"

#include <gtest/gtest.h>

namespace hearth::ui::input {
namespace {

using rulebook::Comparison;
using rulebook::Finding;
using testing::mbar;
using testing::sampleFinding;

TEST(NoteBar, showsTheMeasuredValueBesideItsLimit) {
    Finding finding = sampleFinding(rulebook::Outcome::Pass);
    finding.measured = mbar(4, 2);  // 0.04
    finding.limit = mbar(20, 2);    // 0.20
    const auto bar = barOf(finding);
    ASSERT_TRUE(bar.has_value());
    ASSERT_EQ(bar->limits.size(), 1);
    EXPECT_LT(bar->limits[0], 1.0);
    EXPECT_NEAR((bar->to - bar->from) / bar->limits[0], 0.2, 1e-9);  // 0.04 of 0.20
}

TEST(NoteBar, aValueBeyondItsLimitReachesPastTheMark) {
    Finding finding = sampleFinding(rulebook::Outcome::Fail);
    finding.measured = mbar(140, 2);
    finding.limit = mbar(20, 2);
    const auto bar = barOf(finding);
    ASSERT_TRUE(bar.has_value());
    EXPECT_GT(bar->to, bar->limits[0]);
    EXPECT_LE(bar->to, 1.0);
    EXPECT_GT(bar->limits[0], 0.0);
}

TEST(NoteBar, aMovementTheOtherWayStartsAtZero) {
    Finding finding = sampleFinding(rulebook::Outcome::Pass);
    finding.measured = mbar(-3, 2);
    finding.limit = mbar(20, 2);
    const auto bar = barOf(finding);
    ASSERT_TRUE(bar.has_value());
    EXPECT_GE(bar->from, 0.0);
    EXPECT_LT(bar->from, bar->to);
    EXPECT_LT(bar->to, bar->limits[0]);
}

TEST(NoteBar, aRangeHasTwoMarks) {
    Finding finding = sampleFinding(rulebook::Outcome::Pass);
    finding.comparison = Comparison::Within;
    finding.measured = mbar(205, 1);
    finding.limits.front().value =
        rulebook::Range{quantity::Decimal(20, 0), quantity::Decimal(21, 0), quantity::UnitCode::Millibar};
    for (const int tenths : {205, 199, 214}) {
        finding.measured = mbar(tenths, 1);
        const auto bar = barOf(finding);
        ASSERT_TRUE(bar.has_value());
        ASSERT_EQ(bar->limits.size(), 2);
        const bool isWithin = bar->to > bar->limits[0] && bar->to < bar->limits[1];
        EXPECT_EQ(isWithin, tenths == 205) << tenths;
        EXPECT_GE(bar->to, 0.0);
        EXPECT_LE(bar->to, 1.0);
    }
}

TEST(NoteBar, withoutMeasureOrLimitThereIsNone) {
    Finding finding = sampleFinding(rulebook::Outcome::NoVerdict);
    finding.measured.reset();
    EXPECT_FALSE(barOf(finding).has_value());
    finding.measured = mbar(4, 2);
    finding.limit.reset();
    EXPECT_FALSE(barOf(finding).has_value());
    finding.limit = quantity::Figure{quantity::Decimal(1, 0), quantity::UnitCode::Minute};
    EXPECT_FALSE(barOf(finding).has_value());
}

TEST(NotePlan, textsStandBelowEachOtherWithinTheNote) {
    const words::Words words;
    for (const double width : {180.0, 240.0, 304.0, 500.0}) {
        for (const bool isOpen : {false, true}) {
            const judging::Judged judged{sampleFinding(rulebook::Outcome::LookAgain), {}, {}};
            const NotePlan plan = planNote(judged, words, isOpen, width);
            const QRectF note(0, 0, width, plan.height);
            for (qsizetype i = 0; i < plan.texts.size(); ++i) {
                EXPECT_TRUE(note.contains(plan.texts[i].box)) << i << " at width " << width;
                for (qsizetype j = i + 1; j < plan.texts.size(); ++j) {
                    const QRectF shared = plan.texts[i].box & plan.texts[j].box;
                    EXPECT_TRUE(shared.isEmpty())
                        << plan.texts[i].text.toStdString() << " on " << plan.texts[j].text.toStdString();
                }
            }
        }
    }
}

TEST(NotePlan, openedItNamesValueStandardProvenanceSourceAndDoubt) {
    const words::Words words;
    const judging::Judged judged{sampleFinding(rulebook::Outcome::Pass), {}, {}};
    const auto all = [&](bool isOpen) {
        QString text;
        for (const NoteText& one : planNote(judged, words, isOpen, 304).texts) {
            text += one.text + u'\n';
        }
        return text;
    };
    const rulebook::Entry& entry = judged.finding.limits.front();
    for (const std::string& wanted : {entry.standard, entry.clause, entry.source, entry.doubt}) {
        EXPECT_FALSE(wanted.empty());
        EXPECT_TRUE(all(true).contains(QString::fromStdString(wanted))) << wanted;
    }
    EXPECT_TRUE(all(true).contains(words.provenanceMeaning(entry.provenance)));
    EXPECT_FALSE(all(false).contains(QString::fromStdString(entry.doubt)));
    EXPECT_GT(planNote(judged, words, true, 304).height, planNote(judged, words, false, 304).height + 40);
}

}  // namespace
}  // namespace hearth::ui::input
