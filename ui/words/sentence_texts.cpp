// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/sentence_texts.h"

#include <QtGlobal>

#include <span>

namespace hearth::ui::words {

namespace {

using rulebook::Say;

// Short, plain, and saying what to do where something is to be done. %1, %2 … are the arguments in the order
// of say.h.
constexpr std::array kGeneral{
    SayText{Say::ReadingMissing,
            QT_TRANSLATE_NOOP("Words", "A reading that this needs has not been entered.")},
    SayText{Say::ReadingUnusable,
            QT_TRANSLATE_NOOP(
                "Words",
                "What was typed can't be read as a number. It is kept: put it right to have it judged.")},
    SayText{Say::LimitMissing,
            QT_TRANSLATE_NOOP(
                "Words",
                "The rule book has no limit for this. Enter it there from your own copy of the standard.")},
    SayText{Say::LimitFromMemory, QT_TRANSLATE_NOOP("Words",
                                                    "This limit was written down from memory of the "
                                                    "standard: check it against your copy, then confirm "
                                                    "it in the rule book.")},
    SayText{
        Say::LimitSecondary,
        QT_TRANSLATE_NOOP(
            "Words",
            "This limit was read in training notes or the trade press, not in the standard: check it against "
            "your copy, then confirm it in the rule book.")},
    SayText{Say::LimitCommonPractice,
            QT_TRANSLATE_NOOP("Words",
                              "This figure is a habit of the trade and stands in no standard that "
                              "was read: it advises and decides nothing. Confirm it in the rule "
                              "book if your firm goes by it.")},
    SayText{Say::OutsideStated, QT_TRANSLATE_NOOP("Words", "%1 lies outside %2 to %3.")},
    SayText{
        Say::EditionNotAllowed,
        QT_TRANSLATE_NOOP(
            "Words", "%1 may not judge a test made on %2. Choose the edition that is in force on that day.")},
    SayText{Say::EditionToChoose,
            QT_TRANSLATE_NOOP(
                "Words", "Edition 3 and Edition 4 may both judge on this day: say which one you tested to.")},
    SayText{Say::EditionUsed, QT_TRANSLATE_NOOP("Words", "Judged by %1, in force on the day of the test.")},
};

constexpr std::array kBefore{
    SayText{Say::SafeToTouchDone,
            QT_TRANSLATE_NOOP("Words",
                              "The exposed metal pipe was swept with a voltage detector: safe to touch.")},
    SayText{
        Say::SafeToTouchVoltage,
        QT_TRANSLATE_NOOP(
            "Words",
            "Voltage was found on the pipe. Keep off it and warn the people there; have it made safe by a "
            "competent electrician before going on.")},
    SayText{
        Say::SafeToTouchNotDone,
        QT_TRANSLATE_NOOP(
            "Words",
            "The pipe was not checked for voltage. Sweep the exposed metal pipe with a no-contact detector "
            "before touching it.")},
    SayText{Say::NoOpenEnds, QT_TRANSLATE_NOOP("Words", "No open ends were seen.")},
    SayText{
        Say::OpenEndsFound,
        QT_TRANSLATE_NOOP(
            "Words", "An open end was found. Seal it with the proper fitting before any pressure goes on.")},
    SayText{Say::OpenEndsSealed,
            QT_TRANSLATE_NOOP("Words", "An open end was found and sealed before the test.")},
    SayText{
        Say::OpenEndsNotLooked,
        QT_TRANSLATE_NOOP(
            "Words", "Open ends were not looked for. Walk the installation before any pressure goes on.")},
    SayText{Say::NoSmellOnArrival, QT_TRANSLATE_NOOP("Words", "No smell of gas on arrival.")},
    SayText{
        Say::SmellOnArrival,
        QT_TRANSLATE_NOOP(
            "Words",
            "There was a smell of gas on arrival. Deal with the escape first: press F12 for what to do.")},
    SayText{Say::SmellNotAsked,
            QT_TRANSLATE_NOOP("Words", "Say whether there was a smell of gas on arrival.")},
    SayText{Say::VisualSound, QT_TRANSLATE_NOOP("Words", "What can be seen of the pipework is sound.")},
    SayText{Say::VisualDefects, QT_TRANSLATE_NOOP("Words",
                                                  "Defects were seen: weigh each one, and say in the notes "
                                                  "what was done about it.")},
    SayText{Say::VisualNotDone, QT_TRANSLATE_NOOP("Words", "The pipework has not been looked at.")},
    SayText{Say::GaugeZeroed, QT_TRANSLATE_NOOP("Words", "The gauge stood at zero before it was connected.")},
    SayText{
        Say::GaugeNotZeroed,
        QT_TRANSLATE_NOOP(
            "Words", "The gauge was not zeroed before it was connected: its readings can't be relied on.")},
    SayText{Say::GaugeZeroNotSaid,
            QT_TRANSLATE_NOOP("Words", "Say whether the gauge was zeroed before it was connected.")},
    SayText{Say::GaugeInCalibration, QT_TRANSLATE_NOOP("Words", "In calibration until %1.")},
    // GaugeCalibrationSoon counts days: sentence_words.cpp
    SayText{Say::GaugeOutOfCalibration,
            QT_TRANSLATE_NOOP(
                "Words",
                "Calibration ran out on %1, before this test. Repeat the test with a gauge in calibration.")},
    SayText{Say::GaugeCalibrationUnknown,
            QT_TRANSLATE_NOOP(
                "Words", "No calibration date is kept for this gauge. Enter it under Firm, instruments.")},
    SayText{Say::GaugeNotChosen, QT_TRANSLATE_NOOP("Words", "Say which gauge was used.")},
    SayText{Say::GaugeNotSuitable,
            QT_TRANSLATE_NOOP(
                "Words", "The instrument chosen is not a pressure gauge. Choose the gauge that was read.")},
    SayText{Say::GaugeAccurateEnough,
            QT_TRANSLATE_NOOP("Words", "The gauge is accurate to %1; at most %2 is asked.")},
    SayText{Say::GaugeTooCoarse,
            QT_TRANSLATE_NOOP("Words",
                              "The gauge is accurate to %1 only; at most %2 is asked. Use a better gauge.")},
    SayText{
        Say::GaugeAccuracyUnknown,
        QT_TRANSLATE_NOOP(
            "Words",
            "The gauge's accuracy is not known. Enter it under Firm, instruments, from its certificate.")},
};

constexpr std::array kScope{
    SayText{Say::VolumeWorkedOut,
            QT_TRANSLATE_NOOP("Words", "Installation volume %1: meter %2, pipes %3, fittings %4.")},
    SayText{Say::VolumeUnknown, QT_TRANSLATE_NOOP("Words",
                                                  "The installation volume can't be worked out yet: the "
                                                  "meter, or a pipe's size or length, is missing.")},
    SayText{Say::VolumeTableUsed, QT_TRANSLATE_NOOP("Words", "Pipe volumes are from the trade table.")},
    SayText{
        Say::VolumeGeometryUsed,
        QT_TRANSLATE_NOOP(
            "Words",
            "The trade table lacks a size of pipe: its volume is worked out from the tube's dimensions.")},
    SayText{Say::VolumeTypedUsed,
            QT_TRANSLATE_NOOP("Words", "A volume was typed in and is used as it stands.")},
    SayText{Say::ScopeWithin,
            QT_TRANSLATE_NOOP("Words",
                              "The installation lies within the scope of the small-installation standard.")},
    SayText{Say::ScopeBeyondVolume,
            QT_TRANSLATE_NOOP("Words",
                              "The volume of %1 is beyond this standard's %2: another standard applies.")},
    SayText{
        Say::ScopeBeyondPipe,
        QT_TRANSLATE_NOOP("Words", "The pipe of %1 is beyond this standard's %2: another standard applies.")},
    SayText{Say::ScopeBeyondMeter,
            QT_TRANSLATE_NOOP("Words",
                              "The meter of %1 is beyond this standard's %2: another standard applies.")},
    SayText{Say::ScopeBeyondPressure,
            QT_TRANSLATE_NOOP("Words",
                              "The pressure of %1 is beyond this standard's %2: another standard applies.")},
    SayText{
        Say::ScopeNotKnown,
        QT_TRANSLATE_NOOP(
            "Words",
            "Whether this standard applies can't be said before meter, pipes and pressures are entered.")},
    SayText{Say::ScopeUseUp1a,
            QT_TRANSLATE_NOOP("Words",
                              "IGE/UP/1A applies instead (natural gas, up to 1 m³, 150 mm and 40 mbar).")},
    SayText{Say::ScopeUseUp1, QT_TRANSLATE_NOOP("Words", "IGE/UP/1 applies instead.")},
    SayText{Say::ScopeUseUp1aOrUp1, QT_TRANSLATE_NOOP("Words",
                                                      "IGE/UP/1A applies instead if the installation lies "
                                                      "within it (natural gas, up to 1 m³, 150 mm and "
                                                      "40 mbar), otherwise IGE/UP/1.")},
    SayText{Say::ScopeEd4NotEntered, QT_TRANSLATE_NOOP("Words",
                                                       "Edition 4's scope is not in the rule book: enter it "
                                                       "from your own copy. Edition 3's is shown for "
                                                       "information.")},
    SayText{Say::ExtentUnknown,
            QT_TRANSLATE_NOOP("Words", "Say whether the whole installation was tested or a part of it.")},
};

constexpr std::array kStages{
    SayText{Say::LetByNone, QT_TRANSLATE_NOOP("Words", "No perceptible rise from %2 (change %1).")},
    SayText{Say::LetByFound,
            QT_TRANSLATE_NOOP("Words",
                              "The pressure rose by %1 (perceptible from %2): the valve may be "
                              "letting by. Stop. Prove it with leak "
                              "detection fluid; if it passes, make safe and report it. No "
                              "tightness test until the valve is right.")},
    SayText{Say::LetByFall,
            QT_TRANSLATE_NOOP("Words",
                              "The pressure fell by %1, which points to a leak. Go on only to find it.")},
    SayText{Say::LetByPressureOutside,
            QT_TRANSLATE_NOOP("Words",
                              "Started at %1, outside %2 to %3. Repeat the let-by test within that band.")},
    SayText{Say::LetByTooShort,
            QT_TRANSLATE_NOOP("Words", "Watched for %1 only; at least %2 is needed. Repeat it.")},
    SayText{Say::Settled, QT_TRANSLATE_NOOP("Words", "Steady enough to start timing (change %1).")},
    SayText{Say::NotSettled, QT_TRANSLATE_NOOP("Words",
                                               "Still moving: %1, more than %2. Wait longer before timing; "
                                               "if it will not steady, find out why.")},
    SayText{Say::SettleTooShort,
            QT_TRANSLATE_NOOP("Words", "Settled for %1 only; at least %2 is needed. Repeat it.")},
    SayText{Say::TestPressureGood, QT_TRANSLATE_NOOP("Words", "Timed from %1.")},
    SayText{
        Say::TestPressureLow,
        QT_TRANSLATE_NOOP("Words", "Timed from %1, below %2. Isolate and find the cause before testing.")},
    SayText{Say::TestPressureLowAccepted,
            QT_TRANSLATE_NOOP(
                "Words",
                "Timed from %1: the test pressure could not be reached, and %2 or more is accepted then.")},
    SayText{Say::TestPressureLowUnexplained,
            QT_TRANSLATE_NOOP("Words",
                              "Timed from %1, short of the test pressure. From %2 it is accepted only where "
                              "the pressure can't be "
                              "reached: say why, or raise it and repeat.")},
    SayText{Say::TestPressureHigh, QT_TRANSLATE_NOOP("Words",
                                                     "Timed from %1, above %2: the regulator may have locked "
                                                     "up and hide a leak. Lower it and repeat.")},
    SayText{Say::TestLongEnough, QT_TRANSLATE_NOOP("Words", "Timed for %1; %2 is needed.")},
    SayText{Say::TestTooShort, QT_TRANSLATE_NOOP("Words", "Timed for %1; %2 is needed. Repeat the test.")},
};

constexpr std::array kTightness{
    SayText{Say::TightNoMovement, QT_TRANSLATE_NOOP("Words", "No perceptible movement: %1, below %2.")},
    SayText{Say::TightWithinDrop,
            QT_TRANSLATE_NOOP("Words", "A fall of %1, within the %2 allowed, and no smell of gas.")},
    SayText{Say::FallBeyondDrop, QT_TRANSLATE_NOOP("Words", "A fall of %1 is more than the %2 allowed.")},
    SayText{Say::FallOnNewWork,
            QT_TRANSLATE_NOOP("Words",
                              "A fall of %1 on new pipework, where none is allowed (perceptible from %2).")},
    SayText{Say::FallOnIsolated,
            QT_TRANSLATE_NOOP(
                "Words", "A fall of %1 on pipework alone, where none is allowed (perceptible from %2).")},
    SayText{Say::RiseDuringTest, QT_TRANSLATE_NOOP("Words",
                                                   "The pressure rose by %1 during the test: warming, or the "
                                                   "valve letting by. Find the cause and repeat.")},
    SayText{Say::SmellFails,
            QT_TRANSLATE_NOOP("Words", "A smell of gas fails the test, whatever the gauge shows.")},
    SayText{Say::SmellUnknown,
            QT_TRANSLATE_NOOP("Words", "Say whether there was a smell of gas during the test.")},
    SayText{Say::AppliancesUnknown,
            QT_TRANSLATE_NOOP(
                "Words", "Say whether appliances were connected, isolated or not there during the test.")},
    SayText{Say::WorkUnknown,
            QT_TRANSLATE_NOOP("Words", "Say whether the pipework is new or was there before.")},
    SayText{Say::ShortCutHolds, QT_TRANSLATE_NOOP("Words",
                                                  "A fall of %1, below %2, with the pipework shown clear of "
                                                  "movement: the volume need not be worked out.")},
    SayText{Say::RetestNeeded, QT_TRANSLATE_NOOP("Words",
                                                 "The gauge moved by %1 (perceptible from %2). "
                                                 "Isolate the appliances at their valves and repeat, "
                                                 "to show that it does not come from the pipework.")},
    SayText{Say::RetestClear,
            QT_TRANSLATE_NOOP(
                "Words",
                "With appliances isolated the gauge did not move perceptibly (%1): the pipework is clear.")},
    SayText{Say::RetestMoved,
            QT_TRANSLATE_NOOP(
                "Words",
                "With appliances isolated it still fell by %1 (perceptible from %2): the pipework leaks.")},
    SayText{Say::NewWorkRetestAppliances,
            QT_TRANSLATE_NOOP(
                "Words", "The new pipework is tight. Now open the appliance valves and repeat the test.")},
    SayText{Say::BandsEmpty, QT_TRANSLATE_NOOP("Words",
                                               "What Edition 4 allows for %1 is not in the rule book. Enter "
                                               "its drops by volume there, once, from your "
                                               "own copy of the standard.")},
    SayText{Say::BandUsed,
            QT_TRANSLATE_NOOP("Words", "A volume of %1 is in the band up to %2, which may fall by %3.")},
    SayText{Say::BeyondBands,
            QT_TRANSLATE_NOOP("Words", "The volume of %1 is beyond the last band entered in the rule book.")},
    SayText{
        Say::Ed3WouldAllow,
        QT_TRANSLATE_NOOP(
            "Words",
            "For information only: the withdrawn Edition 3 would have allowed %1. It decides nothing here.")},
    SayText{Say::AtLimit, QT_TRANSLATE_NOOP("Words",
                                            "%1 is too near the limit of %2 to tell: the gauge reads a "
                                            "change to ±%3. Repeat the test, or use a finer "
                                            "gauge.")},
    SayText{Say::LeakRate, QT_TRANSLATE_NOOP("Words", "As a leak the change would be %1, give or take %2.")},
    SayText{Say::VolumeTakenAsExact, QT_TRANSLATE_NOOP("Words", "The volume is taken as exact.")},
    SayText{
        Say::TemperatureExplains,
        QT_TRANSLATE_NOOP("Words", "A change of %1 in the gas's temperature alone could account for it.")},
    SayText{
        Say::TemperatureDoesNotExplain,
        QT_TRANSLATE_NOOP(
            "Words", "Temperature would have to change by %1 to account for it, more than the %2 assumed.")},
    SayText{
        Say::StartDrifting,
        QT_TRANSLATE_NOOP(
            "Words",
            "It fell while settling and kept on falling: a steady fall is a leak's, not a settling gas's.")},
    SayText{
        Say::DoFailNoSmell,
        QT_TRANSLATE_NOOP(
            "Words", "Keep the gas off. Trace and repair, then test again from the start; or make safe.")},
    SayText{Say::DisplaysWithinDigit,
            QT_TRANSLATE_NOOP("Words", "The two displays differ by %1, within one step of the gauge (%2).")},
    SayText{Say::DisplaysDiffer,
            QT_TRANSLATE_NOOP(
                "Words",
                "The two displays differ by %1, more than one step of the gauge (%2). Read them again.")},
    SayText{
        Say::PilotsLeftLit,
        QT_TRANSLATE_NOOP("Words", "A pilot was left lit and draws gas. Put it out and repeat the test.")},
    SayText{Say::PilotsUnknown, QT_TRANSLATE_NOOP("Words", "Say whether the pilot lights were out.")},
    SayText{Say::DropClassUnknown, QT_TRANSLATE_NOOP("Words",
                                                     "Which drop applies is not known: the meter or a pipe's "
                                                     "size is not said, or lies outside the table.")},
};

constexpr std::array kAfter{
    SayText{Say::PurgeVolumeNeeded, QT_TRANSLATE_NOOP("Words", "At least %1 must pass the meter.")},
    SayText{Say::PurgeEnough, QT_TRANSLATE_NOOP("Words", "%1 passed the meter; at least %2 was needed.")},
    SayText{Say::PurgeShort,
            QT_TRANSLATE_NOOP("Words", "Only %1 passed the meter; at least %2 is needed. Purge on.")},
    SayText{Say::PurgeNotDone,
            QT_TRANSLATE_NOOP(
                "Words", "The installation was not purged. Purge it before it is used, or leave it sealed.")},
    SayText{Say::PurgeNotNeeded, QT_TRANSLATE_NOOP("Words", "No purge was needed: no air got in.")},
    SayText{
        Say::PurgeOpenBurner,
        QT_TRANSLATE_NOOP(
            "Words",
            "At %1, above %2, purge through an open burner: light it as soon as it will, and keep trying.")},
    SayText{Say::PurgeVentilatedPlace,
            QT_TRANSLATE_NOOP(
                "Words",
                "At %1, up to %2, it may be purged to a well-ventilated place with no source of ignition.")},
    SayText{Say::PurgeMethodWrong,
            QT_TRANSLATE_NOOP("Words", "At %1, above %2, it had to be purged through an open burner.")},
    SayText{Say::PurgeNoSteadyFlame,
            QT_TRANSLATE_NOOP("Words",
                              "There is no steady flame at every appliance yet. Purge on until there is.")},
    SayText{Say::JointsProvedAndWiped,
            QT_TRANSLATE_NOOP(
                "Words",
                "The test point and every disturbed joint were proved with leak detection fluid and wiped.")},
    SayText{
        Say::JointNotProved,
        QT_TRANSLATE_NOOP(
            "Words", "Prove the test point and every joint that was disturbed with leak detection fluid.")},
    SayText{
        Say::JointNotWiped,
        QT_TRANSLATE_NOOP("Words", "Wipe the leak detection fluid off: what stays can corrode the pipe.")},
    SayText{Say::JointsNotSaid,
            QT_TRANSLATE_NOOP("Words",
                              "Say whether the test point and the disturbed joints were proved and wiped.")},
    SayText{Say::PressureGood, QT_TRANSLATE_NOOP("Words", "%1, within %2 to %3.")},
    SayText{Say::PressureOutside, QT_TRANSLATE_NOOP("Words", "%1, outside %2 to %3.")},
    SayText{Say::LockUpGood, QT_TRANSLATE_NOOP("Words", "The regulator locks up at %1, not above %2.")},
    SayText{Say::LockUpHigh,
            QT_TRANSLATE_NOOP("Words", "The regulator locks up at %1, above %2. Have it put right.")},
};

}  // namespace

const char* sentenceText(Say say) {
    for (const std::span<const SayText> group :
         {std::span<const SayText>(kGeneral), std::span<const SayText>(kBefore),
          std::span<const SayText>(kScope), std::span<const SayText>(kStages),
          std::span<const SayText>(kTightness), std::span<const SayText>(kAfter), gasTexts(), pipeworkTexts(),
          largerTexts(), burnerTexts(), combustionTexts(), airTexts(), deadlinesTexts(), competenceTexts()}) {
        for (const auto& text : group) {
            if (text.code == say) {
                return text.english;
            }
        }
    }
    return nullptr;
}

}  // namespace hearth::ui::words
