// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/judging/scenario.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <map>
#include <set>
#include <tuple>

/// Laws that hold whatever the readings: nothing passes by default, nothing passes on memory.
namespace hearth::judging {
namespace {

using namespace scenario;
using reg::Item;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Provenance;

constexpr std::pair<const char*, const char*> kEditions[] = {{"2026-09-15", "ed3"}, {"2026-11-10", "ed4"}};

/// What the headline rests on: take any one away, and it must not pass.
constexpr Item kNeededForHeadline[] = {
    Item::SmellOnArrival, Item::TestWork,  Item::TestExtent,      Item::TestAppliances,
    Item::TestPilots,     Item::TestGauge, Item::TestGaugeZeroed, Item::TestSmell,
    Item::LetByStart,     Item::LetByEnd,  Item::LetByStartedAt,  Item::LetByEndedAt,
    Item::SettleStart,    Item::SettleEnd, Item::SettleStartedAt, Item::SettleEndedAt,
    Item::TightStart,     Item::TightEnd,  Item::TightStartedAt,  Item::TightEndedAt,
};

TEST(Laws, HeadlineDoesNotPassWithoutAnyOneReading) {
    const auto book = confirmedBook();
    for (const auto& [date, edition] : kEditions) {
        for (const auto item : kNeededForHeadline) {
            auto file = commonPractice(date, edition);
            ASSERT_EQ(overallOf(file, book), Outcome::Pass);
            removeItem(file, item);
            EXPECT_NE(overallOf(file, book), Outcome::Pass) << edition << reg::infoOf(item).code;
        }
    }
}

/// Removing it leaves what it was about as good as it was: only these, each for its reason.
const std::set<Item> kMayBeLeftOut{
    Item::TestEdition,         // the only one that may judge on that day is taken
    Item::SecondDisplayStart,  // one of the two comparisons is enough
    Item::SecondDisplayEnd,
};

TEST(Laws, NothingThatAReadingIsAboutPassesWithoutIt) {
    const auto book = confirmedBook();
    for (const auto& [date, edition] : kEditions) {
        const auto whole = commonPractice(date, edition);
        const auto before = judge(whole, book);
        for (const auto& entry : whole.entries) {
            if (kMayBeLeftOut.count(entry.item) > 0) {
                continue;
            }
            auto file = whole;
            removeItem(file, entry.item);
            const auto after = judge(file, book);
            int judgedBy = 0;
            for (const auto& judged : before) {
                const bool about =
                    judged.about.front() == entry.item ||
                    std::find(judged.about.begin(), judged.about.end(), entry.item) != judged.about.end();
                // The scope goes by the whole installation, whatever part was tested.
                if (!about || judged.finding.kind == FindingKind::Scope ||
                    judged.finding.kind == FindingKind::DisplaysAgree) {
                    continue;
                }
                ++judgedBy;
                EXPECT_NE(outcomeOf(after, judged.finding.kind), Outcome::Pass)
                    << edition << ' ' << reg::infoOf(entry.item).code << ' ' << kindText(judged.finding.kind);
            }
            EXPECT_GT(judgedBy, 0) << reg::infoOf(entry.item).code << " is judged by nothing";
        }
    }
}

TEST(Laws, WhatCannotBeReadIsNoBetterThanMissing) {
    const auto book = confirmedBook();
    for (const auto item : kNeededForHeadline) {
        auto file = commonPractice("2026-11-10", "ed4");
        enter(file, item, "20..5 or so");
        EXPECT_NE(overallOf(file, book), Outcome::Pass) << reg::infoOf(item).code;
    }
}

TEST(Laws, InstallationFieldsAreNeededToo) {
    const auto book = confirmedBook();
    const auto passes = [&](auto change) {
        auto file = commonPractice("2026-11-10", "ed4");
        change(file);
        return overallOf(file, book) == Outcome::Pass;
    };
    EXPECT_TRUE(passes([](reg::VisitFile&) {}));
    EXPECT_FALSE(passes([](reg::VisitFile& f) { f.installation.meterCode.clear(); }));
    EXPECT_FALSE(passes([](reg::VisitFile& f) { f.installation.operatingPressure = {}; }));
    EXPECT_FALSE(passes([](reg::VisitFile& f) { f.installation.supplyPressure.text = "?"; }));
    EXPECT_FALSE(passes([](reg::VisitFile& f) { f.pipes.clear(); }));
    EXPECT_FALSE(passes([](reg::VisitFile& f) { f.pipes.front().tubeCode.clear(); }));
    EXPECT_FALSE(passes([](reg::VisitFile& f) { f.pipes.front().length.text = "six"; }));
    EXPECT_FALSE(passes([](reg::VisitFile& f) { f.instruments.clear(); }));
}

/// One key may have several entries, each for its own time.
bool isSame(const rulebook::Entry& limit, const rulebook::Entry& entry) {
    return limit.key == entry.key && limit.appliesFrom == entry.appliesFrom;
}

/// The book with one entry's provenance changed.
rulebook::RuleBook withProvenance(const rulebook::RuleBook& book, std::size_t index, Provenance provenance) {
    std::vector<rulebook::Entry> entries(book.entries().begin(), book.entries().end());
    entries[index].provenance = provenance;
    return rulebook::RuleBook(std::move(entries));
}

TEST(Laws, NothingPassesOnMemoryAlone) {
    const auto book = confirmedBook();
    std::size_t decided = 0;
    for (const auto& [date, edition] : kEditions) {
        const auto file = commonPractice(date, edition);
        for (std::size_t i = 0; i < book.entries().size(); ++i) {
            const auto& entry = book.entries()[i];
            for (const auto provenance : {Provenance::Memory, Provenance::Secondary}) {
                for (const auto& judged : judge(file, withProvenance(book, i, provenance))) {
                    const auto& limits = judged.finding.limits;
                    const bool rests = std::any_of(limits.begin(), limits.end(),
                                                   [&](const auto& limit) { return isSame(limit, entry); });
                    // A volume is no limit: what its fittings' share rests on is shown, and fails nothing.
                    if (rests && judged.finding.kind != FindingKind::Volume) {
                        ++decided;
                        EXPECT_NE(judged.finding.outcome, Outcome::Pass)
                            << edition << ' ' << ruleText(entry.key.rule) << ' '
                            << kindText(judged.finding.kind);
                    }
                }
            }
        }
    }
    EXPECT_GT(decided, 40U) << "the loop has something to bite on";
}

TEST(Laws, AnEmptyEntryDecidesNothing) {
    const auto book = confirmedBook();
    for (const auto& [date, edition] : kEditions) {
        const auto file = commonPractice(date, edition);
        for (std::size_t i = 0; i < book.entries().size(); ++i) {
            std::vector<rulebook::Entry> entries(book.entries().begin(), book.entries().end());
            entries[i].value = std::monostate{};
            const auto& entry = entries[i];
            for (const auto& judged : judge(file, rulebook::RuleBook(entries))) {
                const auto& limits = judged.finding.limits;
                const bool rests = std::any_of(limits.begin(), limits.end(),
                                               [&](const auto& limit) { return isSame(limit, entry); });
                if (rests && judged.finding.kind != FindingKind::Volume) {
                    EXPECT_EQ(judged.finding.outcome, Outcome::NoVerdict)
                        << ruleText(entry.key.rule) << ' ' << kindText(judged.finding.kind);
                }
            }
        }
    }
}

TEST(Laws, JudgingIsPure) {
    const auto book = confirmedBook();
    const auto file = commonPractice("2026-11-10", "ed4");
    EXPECT_EQ(judge(file, book), judge(file, book));
}

}  // namespace
}  // namespace hearth::judging
