// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/judge.h"

#include "core/judging/installation.h"
#include "core/judging/pipes.h"
#include "core/judging/readings.h"
#include "core/judging/subjects.h"
#include "core/rulebook/conclude.h"
#include "core/rulebook/rules_in_force.h"
#include "core/rulebook/values.h"
#include "core/tightness/preparation.h"
#include "core/tightness/purge.h"
#include "core/tightness/restore.h"
#include "core/tightness/stages.h"
#include "core/tightness/volume_finding.h"

#include <utility>

namespace hearth::judging {

using reg::Item;
using rulebook::Edition;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::RulesInForce;
using rulebook::Say;

namespace {

/// The findings of one test, made in the order of the sheet.
class TestJudge {
  public:
    TestJudge(const reg::VisitFile& file, const reg::Test& test, const rulebook::RuleBook& book)
        : m_file(file),
          m_book(book),
          m_subject(reg::subject(test.id)),
          m_readings(file, m_subject),
          m_volumes(volumesOf(file, m_readings, book)),
          m_part(testedPart(file, m_volumes.tested)),
          m_conduct(conductOf(m_readings)),
          m_instrument(file.gaugeOf(test.id)),
          m_gauge(m_instrument == nullptr ? std::nullopt : gaugeFrom(*m_instrument)),
          m_edition(tightness::editionFor(editionSaid(), file.visit.date)),
          m_rules(book, m_edition.edition.value_or(Edition::General), file.installation.gas,
                  file.visit.date) {
        m_judged.reserve(20);
    }

    [[nodiscard]] std::vector<Judged> judge() && {
        add(m_edition.finding, {Item::TestEdition});
        judgeInstallation();
        judgeInstrument();
        judgeStages();
        judgeRestoring();
        return std::move(m_judged);
    }

  private:
    [[nodiscard]] std::optional<Edition> editionSaid() const {
        return m_readings.choice<Edition>(Item::TestEdition, {{reg::choice::kEd3, Edition::Up1bEd3},
                                                              {reg::choice::kEd4, Edition::Up1bEd4}});
    }

    void add(Finding finding, std::vector<Item> about) {
        // Without an edition the limits are missing because nobody has said, or may say, by which to judge.
        if (!m_edition.edition && finding.outcome == Outcome::NoVerdict &&
            finding.why.say == Say::LimitMissing) {
            finding.why = m_edition.finding.why;
        }
        m_judged.push_back({std::move(finding), m_subject, std::move(about)});
    }

    void judgeInstallation();
    void judgeInstrument();
    void judgeStages();
    void judgeTightness(const tightness::Preceding& before, const tightness::Stage& settled);
    void judgeDisplays(const tightness::Stage& test);
    void judgeRestoring();

    const reg::VisitFile& m_file;
    const rulebook::RuleBook& m_book;
    reg::SubjectRef m_subject;
    Readings m_readings;
    Volumes m_volumes;
    tightness::TestedPart m_part;
    tightness::Conduct m_conduct;
    const reg::Instrument* m_instrument;
    std::optional<tightness::Gauge> m_gauge;
    tightness::EditionChosen m_edition;
    RulesInForce m_rules;
    Finding m_scope{FindingKind::Scope};
    std::vector<Judged> m_judged;
};

void TestJudge::judgeInstallation() {
    auto volume = tightness::volumeFinding(m_volumes.tested, m_book);
    if (m_volumes.typedUnreadable) {
        concludeOpen(volume, {Say::ReadingUnusable});
    } else if (!m_conduct.extent) {
        concludeOpen(volume, {Say::ExtentUnknown});
    }
    add(std::move(volume), {Item::TestVolumeTyped, Item::TestExtent});
    m_scope = tightness::scope(scopeInput(m_file, m_volumes.whole), m_rules);
    add(m_scope, {Item::TestExtent, Item::TestVolumeTyped});
}

void TestJudge::judgeInstrument() {
    if (m_instrument == nullptr || !m_gauge) {
        const auto why = m_instrument == nullptr ? Say::GaugeNotChosen : Say::GaugeNotSuitable;
        add(rulebook::noVerdict(FindingKind::GaugeCalibration, {why}), {Item::TestGauge});
    } else {
        const bool electronic = m_gauge->kind == tightness::GaugeKind::Electronic;
        // A water gauge is its own standard; a certificate is held against its date only if there is one.
        if (electronic || m_instrument->calibrationDue) {
            add(tightness::gaugeCalibration(m_instrument->calibrationDue, m_file.visit.date),
                {Item::TestGauge});
        }
        if (electronic) {
            add(tightness::gaugeAccuracy(pressureChangeOf(m_instrument->accuracy), m_book),
                {Item::TestGauge});
        }
    }
    add(tightness::gaugeZero(m_readings.yesNo(Item::TestGaugeZeroed)), {Item::TestGaugeZeroed});
}

void TestJudge::judgeStages() {
    const auto settle = stageOf(m_readings, kSettle);
    const auto test = stageOf(m_readings, kTight);
    const bool explained = m_readings.hasText(Item::LowPressureReason);
    const auto letBy = tightness::letBy(stageOf(m_readings, kLetBy), m_gauge, m_rules);
    const auto settling = tightness::settling(settle, m_gauge, m_rules);
    const auto pressure = tightness::testPressure(test.start, explained, m_rules);
    const auto time = tightness::testTime(test.took, m_rules);
    add(letBy, {Item::LetByEnd, Item::LetByStart, Item::LetByStartedAt, Item::LetByEndedAt, Item::TestGauge});
    add(settling,
        {Item::SettleEnd, Item::SettleStart, Item::SettleStartedAt, Item::SettleEndedAt, Item::TestGauge});
    add(pressure, {Item::TightStart, Item::LowPressureReason});
    add(time, {Item::TightEndedAt, Item::TightStartedAt});
    judgeTightness({&m_scope, &letBy, &settling, &pressure, &time}, settle);
    judgeDisplays(test);
}

void TestJudge::judgeTightness(const tightness::Preceding& before, const tightness::Stage& settled) {
    tightness::TightnessInput input;
    input.conduct = m_conduct;
    input.part = m_part;
    input.gauge = m_gauge;
    input.test = stageOf(m_readings, kTight);
    input.retest = stageOf(m_readings, kRetest);
    input.lowPressureExplained = m_readings.hasText(Item::LowPressureReason);
    input.assumed = assumedChange(m_readings, m_book);
    input.volumeOff = volumeOffOf(m_readings);
    if (m_gauge && settled.start && settled.end) {
        input.settled = changeBetween(*m_gauge, *settled.start, *settled.end);
    }
    auto found = tightness::tightness(input, before, m_rules);
    add(std::move(found.tightness),
        {Item::TightEnd, Item::TightStart, Item::TightStartedAt, Item::TightEndedAt, Item::TestSmell,
         Item::TestWork, Item::TestExtent, Item::TestAppliances, Item::TestPilots, Item::TestGauge});
    if (found.retest) {
        add(*std::move(found.retest), {Item::RetestEnd, Item::RetestStart, Item::RetestStartedAt,
                                       Item::RetestEndedAt, Item::TestIsolatedWhat});
    }
    if (found.bands) {
        add(*std::move(found.bands), {Item::TestVolumeTyped, Item::TestExtent});
    }
}

void TestJudge::judgeDisplays(const tightness::Stage& test) {
    const auto start = m_readings.pressure(Item::SecondDisplayStart);
    const auto end = m_readings.pressure(Item::SecondDisplayEnd);
    if (start.isEntered() || end.isEntered()) {
        add(tightness::displaysAgree({test.start, test.end, start, end}, m_gauge),
            {Item::SecondDisplayEnd, Item::SecondDisplayStart, Item::TightStart, Item::TightEnd});
    }
}

void TestJudge::judgeRestoring() {
    using tightness::JointsDisturbed;
    using tightness::PurgeDone;
    using tightness::PurgeMethod;
    namespace choice = reg::choice;
    const tightness::PurgeInput purge{
        m_readings.choice<PurgeDone>(Item::PurgeDone, {{choice::kYes, PurgeDone::Yes},
                                                       {choice::kNo, PurgeDone::No},
                                                       {choice::kNotNeeded, PurgeDone::NotNeeded}}),
        m_readings.choice<PurgeMethod>(Item::PurgeMethod,
                                       {{choice::kOpenBurner, PurgeMethod::OpenBurner},
                                        {choice::kVentilatedPlace, PurgeMethod::VentilatedPlace}}),
        m_readings.volume(Item::PurgeVolumePassed),
        m_readings.yesNo(Item::PurgeSteadyFlame),
        m_conduct,
        m_part};
    add(tightness::purge(purge, m_rules),
        {Item::PurgeDone, Item::PurgeMethod, Item::PurgeVolumePassed, Item::PurgeSteadyFlame});
    const tightness::JointsInput joints{
        m_readings.yesNo(Item::TestPointProved),
        m_readings.choice<JointsDisturbed>(Item::DisturbedJointsProved,
                                           {{choice::kYes, JointsDisturbed::Proved},
                                            {choice::kNo, JointsDisturbed::NotProved},
                                            {choice::kNoneDisturbed, JointsDisturbed::NoneDisturbed}}),
        m_readings.yesNo(Item::FluidWiped)};
    add(tightness::jointsProved(joints),
        {Item::TestPointProved, Item::DisturbedJointsProved, Item::FluidWiped});
    // The gas may well stay off: these are judged once they have been read.
    if (const auto standing = m_readings.pressure(Item::StandingPressure); standing.isEntered()) {
        add(tightness::standingPressure(standing, m_rules), {Item::StandingPressure});
    }
    if (const auto working = m_readings.pressure(Item::WorkingPressure); working.isEntered()) {
        add(tightness::workingPressure(working, m_rules), {Item::WorkingPressure, Item::WorkingLoad});
    }
}

void addVisitFindings(std::vector<Judged>& judged, const reg::VisitFile& file) {
    using tightness::OpenEnds;
    using tightness::SafeToTouch;
    using tightness::Visual;
    namespace choice = reg::choice;
    const auto subject = reg::subject(file.visit.id);
    const Readings readings(file, subject);
    judged.push_back(
        {tightness::smellOnArrival(readings.yesNo(Item::SmellOnArrival)), subject, {Item::SmellOnArrival}});
    judged.push_back({tightness::openEnds(readings.choice<OpenEnds>(
                          Item::OpenEnds, {{choice::kNoneSeen, OpenEnds::NoneSeen},
                                           {choice::kFoundSealed, OpenEnds::FoundSealed},
                                           {choice::kFoundOpen, OpenEnds::FoundOpen},
                                           {choice::kNotLooked, OpenEnds::NotLooked}})),
                      subject,
                      {Item::OpenEnds}});
    judged.push_back({tightness::safeToTouch(readings.choice<SafeToTouch>(
                          Item::SafeToTouch, {{choice::kSafe, SafeToTouch::Safe},
                                              {choice::kVoltage, SafeToTouch::VoltageFound},
                                              {choice::kNotDone, SafeToTouch::NotDone}})),
                      subject,
                      {Item::SafeToTouch}});
    judged.push_back({tightness::visualInspection(readings.choice<Visual>(
                          Item::VisualInspection, {{choice::kSound, Visual::Sound},
                                                   {choice::kDefects, Visual::Defects},
                                                   {choice::kNotDone, Visual::NotDone}})),
                      subject,
                      {Item::VisualInspection}});
}

}  // namespace

std::vector<Judged> judge(const reg::VisitFile& file, const rulebook::RuleBook& book) {
    std::vector<Judged> all;
    addVisitFindings(all, file);
    auto drops = judgePipes(file, book);
    all.insert(all.end(), std::make_move_iterator(drops.begin()), std::make_move_iterator(drops.end()));
    for (const auto& test : file.tests) {
        auto ofTest = judgeTest(file, test, book);
        all.insert(all.end(), std::make_move_iterator(ofTest.begin()), std::make_move_iterator(ofTest.end()));
    }
    auto larger = judgeLarger(file, book);
    all.insert(all.end(), std::make_move_iterator(larger.begin()), std::make_move_iterator(larger.end()));
    auto rooms = judgeRoomCo(file, book);
    all.insert(all.end(), std::make_move_iterator(rooms.begin()), std::make_move_iterator(rooms.end()));
    for (const auto& appliance : file.appliances) {
        auto ofOne = judgeAppliance(file, appliance, book);
        all.insert(all.end(), std::make_move_iterator(ofOne.begin()), std::make_move_iterator(ofOne.end()));
    }
    return all;
}

std::vector<Judged> judgeTest(const reg::VisitFile& file, const reg::Test& test,
                              const rulebook::RuleBook& book) {
    return TestJudge(file, test, book).judge();
}

pipework::VolumeReport volumeOf(const reg::VisitFile& file, const rulebook::RuleBook& book) {
    const auto subject =
        file.tests.empty() ? reg::subject(file.visit.id) : reg::subject(file.tests.back().id);
    return volumesOf(file, Readings(file, subject), book).tested;
}

}  // namespace hearth::judging
