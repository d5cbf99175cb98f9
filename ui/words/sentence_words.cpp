// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/sentence_texts.h"
#include "ui/words/text_table.h"
#include "ui/words/words.h"

#include <QStringList>

#include <type_traits>

namespace hearth::ui::words {

namespace {

using rulebook::FindingKind;
using rulebook::Say;

using Title = Text<FindingKind>;
constexpr std::array kTitles{
    Title{FindingKind::SafeToTouch, QT_TRANSLATE_NOOP("Words", "Safe to touch")},
    Title{FindingKind::OpenEnds, QT_TRANSLATE_NOOP("Words", "Open ends")},
    Title{FindingKind::SmellOnArrival, QT_TRANSLATE_NOOP("Words", "Smell on arrival")},
    Title{FindingKind::VisualInspection, QT_TRANSLATE_NOOP("Words", "Visual inspection")},
    Title{FindingKind::Scope, QT_TRANSLATE_NOOP("Words", "Scope of the standard")},
    Title{FindingKind::Volume, QT_TRANSLATE_NOOP("Words", "Installation volume")},
    Title{FindingKind::EditionChoice, QT_TRANSLATE_NOOP("Words", "Edition")},
    Title{FindingKind::GaugeZero, QT_TRANSLATE_NOOP("Words", "Gauge zero")},
    Title{FindingKind::GaugeCalibration, QT_TRANSLATE_NOOP("Words", "Gauge calibration")},
    Title{FindingKind::GaugeAccuracy, QT_TRANSLATE_NOOP("Words", "Gauge accuracy")},
    Title{FindingKind::LetBy, QT_TRANSLATE_NOOP("Words", "Let-by")},
    Title{FindingKind::Settling, QT_TRANSLATE_NOOP("Words", "Settling")},
    Title{FindingKind::TestPressure, QT_TRANSLATE_NOOP("Words", "Test pressure")},
    Title{FindingKind::TestTime, QT_TRANSLATE_NOOP("Words", "Test time")},
    Title{FindingKind::Tightness, QT_TRANSLATE_NOOP("Words", "Tightness")},
    Title{FindingKind::IsolatedRetest, QT_TRANSLATE_NOOP("Words", "Retest, appliances isolated")},
    Title{FindingKind::VolumeBands, QT_TRANSLATE_NOOP("Words", "Drop by volume")},
    Title{FindingKind::DisplaysAgree, QT_TRANSLATE_NOOP("Words", "Two displays")},
    Title{FindingKind::Purge, QT_TRANSLATE_NOOP("Words", "Purge")},
    Title{FindingKind::JointsProved, QT_TRANSLATE_NOOP("Words", "Joints proved and wiped")},
    Title{FindingKind::StandingPressure, QT_TRANSLATE_NOOP("Words", "Standing pressure")},
    Title{FindingKind::WorkingPressure, QT_TRANSLATE_NOOP("Words", "Working pressure")},
    // --- gas
    Title{FindingKind::NetworkWobbe, QT_TRANSLATE_NOOP("Words", "Wobbe index of the network gas")},
    Title{FindingKind::NetworkDensity, QT_TRANSLATE_NOOP("Words", "Relative density of the network gas")},
    Title{FindingKind::HeatValueSeen, QT_TRANSLATE_NOOP("Words", "Calorific value")},
    // --- end of gas
    // --- pipework
    Title{FindingKind::PressureDropDesign, QT_TRANSLATE_NOOP("Words", "Pressure drop at the largest flow")},
    Title{FindingKind::PressureDropMeasured,
          QT_TRANSLATE_NOOP("Words", "Pressure drop at the measured flow")},
    Title{FindingKind::PurgeVolumeLarge, QT_TRANSLATE_NOOP("Words", "Purge volume, larger installation")},
    Title{FindingKind::PurgeFlow, QT_TRANSLATE_NOOP("Words", "Purge flow")},
    Title{FindingKind::PurgeEnd, QT_TRANSLATE_NOOP("Words", "End of the purge")},
    // --- end of pipework
    // --- larger
    Title{FindingKind::StandardChoice, QT_TRANSLATE_NOOP("Words", "Standard that applies")},
    Title{FindingKind::ReadableMovement, QT_TRANSLATE_NOOP("Words", "Readable movement of the gauge")},
    Title{FindingKind::LongestTest, QT_TRANSLATE_NOOP("Words", "Longest test on this gauge")},
    Title{FindingKind::PermittedLeak, QT_TRANSLATE_NOOP("Words", "Leak permitted")},
    Title{FindingKind::StrengthPressure, QT_TRANSLATE_NOOP("Words", "Strength test pressure")},
    Title{FindingKind::StrengthTimes, QT_TRANSLATE_NOOP("Words", "Strength test times")},
    Title{FindingKind::Strength, QT_TRANSLATE_NOOP("Words", "Strength")},
    // --- end of larger
    // --- burner
    Title{FindingKind::GasRate, QT_TRANSLATE_NOOP("Words", "Gas rate")},
    Title{FindingKind::HeatInput, QT_TRANSLATE_NOOP("Words", "Heat input")},
    Title{FindingKind::InletDrop, QT_TRANSLATE_NOOP("Words", "Drop from meter to appliance")},
    Title{FindingKind::InletPressure, QT_TRANSLATE_NOOP("Words", "Working pressure at the appliance")},
    Title{FindingKind::BurnerPressure, QT_TRANSLATE_NOOP("Words", "Burner pressure")},
    Title{FindingKind::MeterAverage, QT_TRANSLATE_NOOP("Words", "Average pressure at the meter")},
    Title{FindingKind::HotWater, QT_TRANSLATE_NOOP("Words", "Hot water output")},
    Title{FindingKind::HeatBalance, QT_TRANSLATE_NOOP("Words", "Hot water against heat input")},
    Title{FindingKind::Regulation26, QT_TRANSLATE_NOOP("Words", "Examinations after work, regulation 26(9)")},
    // --- end of burner
    // --- combustion
    Title{FindingKind::CombustionRatioMaximum, QT_TRANSLATE_NOOP("Words", "CO/CO₂ ratio at maximum rate")},
    Title{FindingKind::CombustionRatioMinimum, QT_TRANSLATE_NOOP("Words", "CO/CO₂ ratio at minimum rate")},
    Title{FindingKind::CarbonMonoxideMaximum, QT_TRANSLATE_NOOP("Words", "CO at maximum rate")},
    Title{FindingKind::CarbonMonoxideMinimum, QT_TRANSLATE_NOOP("Words", "CO at minimum rate")},
    Title{FindingKind::CarbonDioxideMaximum, QT_TRANSLATE_NOOP("Words", "CO₂ at maximum rate")},
    Title{FindingKind::CarbonDioxideMinimum, QT_TRANSLATE_NOOP("Words", "CO₂ at minimum rate")},
    Title{FindingKind::Combustion, QT_TRANSLATE_NOOP("Words", "Combustion")},
    Title{FindingKind::AirInletOxygen, QT_TRANSLATE_NOOP("Words", "O₂ at the air inlet")},
    Title{FindingKind::AirInletCarbonDioxide, QT_TRANSLATE_NOOP("Words", "CO₂ at the air inlet")},
    Title{FindingKind::CombustionPlausible, QT_TRANSLATE_NOOP("Words", "O₂ and CO₂ belong together")},
    Title{FindingKind::CombustionPlausibleMinimum,
          QT_TRANSLATE_NOOP("Words", "O₂ and CO₂ belong together, lowest rate")},
    Title{FindingKind::RatioAgrees, QT_TRANSLATE_NOOP("Words", "Ratio as printed and as worked out")},
    // --- end of combustion
    // --- air
    Title{FindingKind::VentScope, QT_TRANSLATE_NOOP("Words", "Scope of the ventilation standard")},
    Title{FindingKind::VentFreeArea, QT_TRANSLATE_NOOP("Words", "Free area of the vents")},
    Title{FindingKind::VentHighLevel, QT_TRANSLATE_NOOP("Words", "Vents at high level")},
    Title{FindingKind::VentLowLevel, QT_TRANSLATE_NOOP("Words", "Vents at low level")},
    Title{FindingKind::VentOpening, QT_TRANSLATE_NOOP("Words", "Openable window or door")},
    Title{FindingKind::VentAllowed, QT_TRANSLATE_NOOP("Words", "Appliance allowed in this room")},
    Title{FindingKind::VentSound, QT_TRANSLATE_NOOP("Words", "State of the vents")},
    Title{FindingKind::VentBasement, QT_TRANSLATE_NOOP("Words", "Cooker in a basement")},
    Title{FindingKind::PlantTemperature, QT_TRANSLATE_NOOP("Words", "Boiler room temperature")},
    Title{FindingKind::RoomCoBackground, QT_TRANSLATE_NOOP("Words", "Carbon monoxide outdoors")},
    Title{FindingKind::RoomCoLevel, QT_TRANSLATE_NOOP("Words", "Carbon monoxide in the room")},
    Title{FindingKind::RoomCoShortMean, QT_TRANSLATE_NOOP("Words", "Carbon monoxide, 15 minutes")},
    Title{FindingKind::RoomCoLongMean, QT_TRANSLATE_NOOP("Words", "Carbon monoxide, 8 hours")},
    Title{FindingKind::RoomCoSampling, QT_TRANSLATE_NOOP("Words", "How the room was sampled")},
    Title{FindingKind::RoomCoBlood,
          QT_TRANSLATE_NOOP("Words", "What the carbon monoxide could do to the blood")},
    // --- end of air
    // --- deadlines
    Title{FindingKind::CheckDue, QT_TRANSLATE_NOOP("Words", "Next safety check")},
    Title{FindingKind::CheckMade, QT_TRANSLATE_NOOP("Words", "Whether the check was in time")},
    // --- end of deadlines
    // --- competence
    Title{FindingKind::EngineerCard, QT_TRANSLATE_NOOP("Words", "Engineer's card")},
    Title{FindingKind::EngineerCategories, QT_TRANSLATE_NOOP("Words", "Engineer's categories")},
    Title{FindingKind::AnalyserCalibration, QT_TRANSLATE_NOOP("Words", "Analyser's calibration")},
    // --- end of competence
};

QString worded(const Words& words, const rulebook::Argument& argument) {
    return std::visit(
        [&](const auto& value) -> QString {
            using Value = std::decay_t<decltype(value)>;
            if constexpr (std::is_same_v<Value, quantity::Figure>) {
                return words.figure(value);
            } else if constexpr (std::is_same_v<Value, calendar::Date>) {
                return words.date(value);
            } else if constexpr (std::is_same_v<Value, rulebook::Edition>) {
                return words.edition(value);
            } else if constexpr (std::is_same_v<Value, rulebook::Gas>) {
                return words.gas(value);
            } else {
                return qstring(value);
            }
        },
        argument);
}

/// The whole number that a sentence counts, whatever shape it came in.
std::optional<int> countIn(const rulebook::Argument& argument) {
    if (const auto* figure = std::get_if<quantity::Figure>(&argument)) {
        return figure->value.decimals() == 0 ? std::optional(static_cast<int>(figure->value.mantissa()))
                                             : std::nullopt;
    }
    if (const auto* text = std::get_if<std::string>(&argument)) {
        bool whole = false;
        const int count = qstring(*text).toInt(&whole);
        return whole ? std::optional(count) : std::nullopt;
    }
    return std::nullopt;
}

QString calibrationSoon(const Words& words, const rulebook::Sentence& sentence,
                        const QStringList& arguments) {
    const auto days = sentence.arguments.size() > 1 ? countIn(sentence.arguments[1]) : std::nullopt;
    if (days == 0) {
        return words.say(
            QT_TRANSLATE_NOOP("Words", "Calibration runs out today, %1. It still counts for this test."),
            arguments);
    }
    return words.sayCount(
        QT_TRANSLATE_N_NOOP("Words", "Calibration runs out in %n day(s), on %1. It counts for this test."),
        days.value_or(0), arguments);
}

}  // namespace

QString Words::findingTitle(FindingKind kind) const {
    const char* text = textOf(kTitles, kind);
    return text != nullptr ? say(text) : qstring(std::string(rulebook::kindText(kind)));
}

QString Words::sentence(const rulebook::Sentence& sentence) const {
    QStringList arguments;
    for (const auto& argument : sentence.arguments) {
        arguments << worded(*this, argument);
    }
    if (sentence.say == Say::GaugeCalibrationSoon) {
        return calibrationSoon(*this, sentence, arguments);
    }
    const char* text = sentenceText(sentence.say);
    return text != nullptr ? say(text, arguments) : qstring(std::string(rulebook::sayText(sentence.say)));
}

}  // namespace hearth::ui::words
