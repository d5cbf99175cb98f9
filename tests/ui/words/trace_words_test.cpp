// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/trace_words.h"

#include "tests/core/record/sample_kinds.h"
#include "tests/ui/words/document_text.h"
#include "tests/ui/words/languages.h"
#include "ui/words/document_words.h"

#include <cmath>
#include <gmock/gmock.h>

namespace hearth::ui::words {
namespace {

using hearth::testing::blocksOf;
using quantity::Duration;
using quantity::GaugePressure;
using quantity::kMillibar;
using tightness::TraceSays;

/// 8.5 mbar for 75 s and 20.6 mbar for 185 s, to a hundredth and without noise; the second stretch falls by a
/// leak (k a second) and settles by `settles` mbar in the manner of 30 s; the first rises by `letBy` mbar a
/// second.
tightness::Trace pressed(double k, double settles, double letBy = 0.0) {
    tightness::Trace trace;
    for (int i = 0; i <= 2600; ++i) {
        const double t = i * 0.1;
        const double s = t - 75.0;
        const double value =
            s < 0 ? 8.5 + letBy * t : (20.6 * std::exp(-k * s) + settles * (std::exp(-s / 30.0) - 1.0));
        trace.push_back(
            {Duration(t, quantity::kSecond), GaugePressure(std::round(value * 100) / 100, kMillibar)});
    }
    return trace;
}

class TraceWords : public ::testing::Test {
  protected:
    [[nodiscard]] judging::TraceSeen seen(tightness::Trace trace) const {
        judging::TraceGiven given;
        given.source.name = "logger.csv";
        given.marks = {{reg::TraceEvent::LetBy, 10000},
                       {reg::TraceEvent::Settling, 76000},
                       {reg::TraceEvent::DoorOpened, 100000},
                       {reg::TraceEvent::Timing, 136000}};
        given.trace = std::move(trace);
        return judging::seenTrace(file, book, file.tests.front().id, std::move(given));
    }
    [[nodiscard]] record::Document documentWith(const judging::TraceSeen& one,
                                                const QString& language = QStringLiteral("en")) const {
        const auto findings = judging::judge(file, book);
        const auto volume = judging::volumeOf(file, book);
        DocumentInput input{record::RecordKind::TightnessAndPurge, file, findings, volume, file.visit.date};
        input.traces = {one};
        return documentFor(input, Words(language));
    }

    reg::VisitFile file = testing::sampleVisit();
    rulebook::RuleBook book = rulebook::RuleBook::shipped();
    Words english;
};

TEST_F(TraceWords, sayInOneSentenceWhatItMeans) {
    struct Case {
        tightness::Trace trace;
        TraceSays says;
        const char* begins;
    };
    auto stuck = pressed(0, 0);
    for (auto& point : stuck) {
        point.pressure = GaugePressure(8.5, kMillibar);
    }
    const std::vector<Case> cases{
        {pressed(0, 0), TraceSays::Still, "Nothing moves"},
        {pressed(0, 0.8), TraceSays::Cooling, "The fall is what cooling explains"},
        {pressed(0, -0.8), TraceSays::Warming, "The rise is what warming explains"},
        {pressed(0.0004, 0), TraceSays::Leak,
         "A steady fall that cooling does not explain: look for a leak."},
        {pressed(0.0004, -1.2), TraceSays::HiddenLeak, "A leak that warming hides"},
        {pressed(0.014, 0), TraceSays::MostIsGone, "Half of the pressure or more is gone"},
        {pressed(-0.0004, 0), TraceSays::GasComesIn, "Rising steadily"},
        {pressed(0, 0, 0.02), TraceSays::LetsBy, "Rising while the valve was shut for let-by"},
        {stuck, TraceSays::StuckGauge, "A stuck gauge"},
        {{}, TraceSays::NothingToGoBy, "Too little to go by"},
    };
    for (const auto& one : cases) {
        const auto told = seen(one.trace);
        EXPECT_EQ(static_cast<int>(told.told.says), static_cast<int>(one.says)) << one.begins;
        EXPECT_TRUE(traceMeaning(told, english).startsWith(QString::fromUtf8(one.begins)))
            << traceMeaning(told, english).toStdString() << " "
            << traceGrounds(told, english).join(u' ').toStdString();
    }
}

// The sample's volume is what judging says; Q = V dp/dt / 1013.25 mbar at the beginning, by hand.
TEST_F(TraceWords, sayTheLeakWithItsIntervalAndTheSmallestThatCouldHaveBeenShown) {
    const auto told = seen(pressed(0.0004, 0));
    const double expected = told.asked.volume->in(quantity::kLitre)*20.6 * 0.0004 / 1013.25 * 3600.0;
    EXPECT_NEAR(told.told.test->leak.best.in(quantity::kLitrePerHour), expected, 0.02);
    const auto grounds = traceGrounds(told, english).join(u' ').toStdString();
    EXPECT_THAT(grounds,
                ::testing::MatchesRegex("Leak at 20\\.[56].*mbar: 0\\.[0-9]+.*l/h, between 0\\.[0-9]+.*l/h "
                                        "and 0\\.[0-9]+.*l/h, 95 times in a hundred\\..*The smallest leak "
                                        "that this trace could have shown: 0\\.[0-9]+.*l/h.*"));
    const auto letBy = traceGrounds(seen(pressed(0, 0, 0.02)), english).join(u' ').toStdString();
    EXPECT_THAT(letBy, ::testing::HasSubstr("It moved by 1.08"));
}

// Whatever a trace is worth, a leak of nought is not what it could have shown.
TEST_F(TraceWords, neverSayThatNoughtCouldHaveBeenShown) {
    for (const double settles : {0.0, 0.8, -0.8}) {
        const auto grounds = traceGrounds(seen(pressed(0, settles)), english).join(u' ').toStdString();
        EXPECT_THAT(grounds, ::testing::MatchesRegex(".*could have shown: 0\\.[0-9]*[1-9][0-9]*[^0-9].*"));
    }
}

TEST_F(TraceWords, sayTheSourceAndThatItIsASimulation) {
    auto told = seen(pressed(0, 0.5));
    EXPECT_EQ(traceSource(told, english).replace(QChar(0x00A0), u' '),
              QStringLiteral("logger.csv: 2601 readings over 260 s, one step 0.010 mbar"));
    told.given.source.isSimulated = true;
    EXPECT_TRUE(traceSource(told, english).startsWith(QStringLiteral("SIMULATION, for practice: ")));
}

TEST_F(TraceWords, drawTheTraceWithItsStagesTheLimitAndTheFit) {
    const auto told = seen(pressed(0.0004, 0.5));
    const auto findings = judging::judge(file, book);
    const auto plots = tracePlots({file, findings, english}, told);
    ASSERT_EQ(plots.plots.size(), 2U);
    const auto& whole = plots.plots[0];
    ASSERT_EQ(whole.stretches.size(), 3U);
    EXPECT_EQ(whole.stretches[2].name, "Tightness");
    EXPECT_EQ(whole.stretches[2].from.text(), "136.0");
    EXPECT_EQ(whole.stretches[2].to.text(), "256.0");
    ASSERT_EQ(whole.marks.size(), 1U);
    EXPECT_EQ(whole.marks[0].name, "door opened");
    EXPECT_LE(whole.series[0].points.size(), 310U);
    EXPECT_EQ(whole.series[0].points.front().y->text(), "8.500");
    const auto& test = plots.plots[1];
    EXPECT_EQ(test.series.size(), 2U);
    EXPECT_FALSE(test.limits.empty());
    EXPECT_EQ(plots.note, traceBesideVerdict(english).toStdString());
}

TEST_F(TraceWords, leaveAGapWhereNothingWasRead) {
    auto trace = pressed(0, 0);
    std::erase_if(trace, [](const auto& point) {
        return point.at > Duration(150.0, quantity::kSecond) && point.at < Duration(170.0, quantity::kSecond);
    });
    const auto told = seen(trace);
    const auto findings = judging::judge(file, book);
    const auto plots = tracePlots({file, findings, english}, told);
    const auto& points = plots.plots[0].series[0].points;
    EXPECT_EQ(std::count_if(points.begin(), points.end(), [](const auto& point) { return !point.y; }), 1);
    EXPECT_THAT(traceGrounds(told, english).join(u' ').toStdString(),
                ::testing::HasSubstr("The gauge was silent for 20"));
}

TEST_F(TraceWords, standInTheRecordWithTheSentenceThatTheVerdictIsByTheRule) {
    const auto told = seen(pressed(0.0004, 0));
    for (const char* language : {"en", "cy", "pl"}) {
        const auto code = QString::fromLatin1(language);
        const auto document = documentWith(told, code);
        const Words words(code);
        const auto rule = traceBesideVerdict(words).toStdString();
        bool isPlotted = false;
        for (const auto& plots : blocksOf<record::Plots>(document)) {
            isPlotted = isPlotted || (plots.note == rule && plots.plots.size() == 2U);
        }
        EXPECT_TRUE(isPlotted) << language;
        bool isTold = false;
        for (const auto& text : blocksOf<record::Paragraph>(document)) {
            isTold = isTold || (text.text.find(rule) != std::string::npos &&
                                text.text.find(traceMeaning(told, words).toStdString()) == 0);
        }
        EXPECT_TRUE(isTold) << language;
    }
    EXPECT_NE(traceBesideVerdict(Words(QStringLiteral("cy"))), traceBesideVerdict(english));
    EXPECT_NE(traceBesideVerdict(Words(QStringLiteral("pl"))), traceBesideVerdict(english));
}

// An old trace says nothing of what nobody looked at or kept.
TEST_F(TraceWords, sayNothingOfAZeroOrASecondGaugeThatWereNotKept) {
    const auto grounds = traceGrounds(seen(pressed(0, 0)), english).join(u' ');
    EXPECT_FALSE(grounds.contains(QStringLiteral("ero check"))) << grounds.toStdString();
    EXPECT_FALSE(grounds.contains(QStringLiteral("gauges"))) << grounds.toStdString();
    EXPECT_TRUE(grounds.contains(
        QStringLiteral("The volume is taken as exact. No drift of the gauge is in these figures.")));
}

TEST_F(TraceWords, sayInEachLanguageWhatTheZeroWasWhenItWasLookedAt) {
    auto told = seen(pressed(0, 0));
    Instant at{};
    ASSERT_TRUE(parseInstant("2026-11-25T09:12:30.000Z", at));
    told.given.source.zero = {
        {"0.004", quantity::UnitCode::Millibar}, {"0.01", quantity::UnitCode::Millibar}, at, true};
    const auto groundsIn = [&](const char* language) {
        return traceGrounds(told, Words(QString::fromLatin1(language)))
            .join(u' ')
            .replace(QChar(0x00A0), u' ')
            .toStdString();
    };
    EXPECT_THAT(groundsIn("en"),
                ::testing::HasSubstr("Zero check at 09:12, open to the air: the gauge read 0.004 mbar, "
                                     "which is zero within its step of 0.01 mbar."));
    EXPECT_THAT(groundsIn("cy"), ::testing::HasSubstr("Gwirio"));
    EXPECT_THAT(groundsIn("pl"), ::testing::HasSubstr("Sprawdzenie zera o 09:12"));
    EXPECT_THAT(groundsIn("pl"), ::testing::HasSubstr("0,004 mbar"));
    told.given.source.zero.isZero = false;
    EXPECT_THAT(groundsIn("en"), ::testing::HasSubstr("which is not zero within its step"));
    // What the trace itself shows is said beside it where the two do not agree.
    told.zero = tightness::ZeroCheck{quantity::PressureChange(0.0, kMillibar), true};
    EXPECT_THAT(groundsIn("en"), ::testing::HasSubstr("stood at zero"));
    told.given.source.zero.isZero = true;
    EXPECT_THAT(groundsIn("en"), ::testing::Not(::testing::HasSubstr("stood at zero")));
}

TEST_F(TraceWords, sayWhetherASecondGaugeAgrees) {
    const auto besides = [&](double drifts, double bump) {
        auto one = pressed(0, 0);
        judging::TraceGiven given{seen(one).given};
        given.source.resolution = {"0.01", quantity::UnitCode::Millibar};
        given.second = judging::SecondGauge{given.source, one};
        given.second->source.name = "Red gauge";
        for (auto& point : given.second->trace) {
            const double t = point.at.in(quantity::kSecond);
            const double less = (t > 136 ? drifts * (t - 136) : 0.0) + (t > 90 && t < 95 ? bump : 0.0);
            point.pressure = GaugePressure(point.pressure.in(kMillibar)-less, kMillibar);
        }
        return judging::seenTrace(file, book, file.tests.front().id, std::move(given));
    };
    const auto text = [&](const judging::TraceSeen& told) {
        return traceGrounds(told, english).join(u' ').replace(QChar(0x00A0), u' ').toStdString();
    };
    const auto alike = text(besides(0, 0));
    EXPECT_THAT(alike, ::testing::HasSubstr("Watched beside it: Red gauge, 2601 readings."));
    EXPECT_THAT(alike, ::testing::HasSubstr(
                           "The first less the second: 0.000 mbar when the timing began, 0.000 mbar at "
                           "its end"));
    EXPECT_THAT(alike, ::testing::HasSubstr("Their steps allow 0.010 mbar: the two gauges agree."));
    EXPECT_THAT(text(besides(0, 0.2)), ::testing::HasSubstr("in between they do not"));
    // 0.001 mbar a second over the two minutes: a mean of 0.119 in the last two seconds, by hand
    const auto drifting = besides(0.001, 0);
    EXPECT_THAT(text(drifting), ::testing::HasSubstr("0.119 mbar at its end"));
    EXPECT_THAT(text(drifting), ::testing::HasSubstr("the two gauges do not agree."));
    for (const char* language : {"en", "cy", "pl"}) {
        const auto document = documentWith(drifting, QString::fromLatin1(language));
        bool isTold = false;
        for (const auto& paragraph : blocksOf<record::Paragraph>(document)) {
            isTold = isTold || paragraph.text.find("Red gauge") != std::string::npos;
        }
        EXPECT_TRUE(isTold) << language;
        for (const auto& plots : blocksOf<record::Plots>(document)) {
            if (plots.note == traceBesideVerdict(Words(QString::fromLatin1(language))).toStdString()) {
                EXPECT_EQ(plots.plots.at(0).series.size(), 2U);
                EXPECT_EQ(plots.plots.at(0).series.at(1).name, "Red gauge");
            }
        }
    }
    auto unknown = besides(0, 0);
    unknown.given.second->trace.clear();
    unknown = judging::seenTrace(file, book, file.tests.front().id, std::move(unknown.given));
    EXPECT_THAT(text(unknown), ::testing::HasSubstr("The two can't be compared"));
}

// The interval is wider, and it is said what is in it; what the trace means is the same.
TEST_F(TraceWords, sayHowFarTheVolumeMayBeOffAndTheGaugesDrift) {
    const auto exact = seen(pressed(0.0004, 0));
    testing::enter(file, reg::subject(file.tests.front().id), reg::Item::TestVolumeOff, "20");
    const auto loose = seen(pressed(0.0004, 0));
    EXPECT_EQ(traceMeaning(loose, english), traceMeaning(exact, english));
    EXPECT_LT(loose.told.test->leak.least, exact.told.test->leak.least);
    EXPECT_GT(loose.told.test->leak.most, exact.told.test->leak.most);
    EXPECT_TRUE(traceGrounds(loose, english)
                    .join(u' ')
                    .replace(QChar(0x00A0), u' ')
                    .contains(QStringLiteral("the volume may be off by 20.0 %, either way. No drift")));
    for (auto& instrument : file.instruments) {
        instrument.drift = {"0.05", quantity::UnitCode::Millibar};
    }
    const auto drifting = seen(pressed(0.0004, 0));
    EXPECT_LT(drifting.told.test->leak.least, loose.told.test->leak.least);
    EXPECT_TRUE(traceGrounds(drifting, english)
                    .join(u' ')
                    .replace(QChar(0x00A0), u' ')
                    .contains(QStringLiteral("A drift of the gauge of 0.050 mbar in a minute")));
    for (const char* wrong : {"100", "-5", "much"}) {
        testing::enter(file, reg::subject(file.tests.front().id), reg::Item::TestVolumeOff, wrong);
        EXPECT_FALSE(seen(pressed(0.0004, 0)).asked.volumeOff) << wrong;
    }
}

TEST_F(TraceWords, nameEachEvent) {
    QStringList names;
    for (const auto event : {reg::TraceEvent::LetBy, reg::TraceEvent::Settling, reg::TraceEvent::Timing,
                             reg::TraceEvent::TestEnd, reg::TraceEvent::ValveShut,
                             reg::TraceEvent::PumpRemoved, reg::TraceEvent::DoorOpened}) {
        names << traceEvent(event, english);
    }
    EXPECT_EQ(names.removeDuplicates(), 0);
}

}  // namespace
}  // namespace hearth::ui::words
