// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/question_words.h"

#include "ui/words/text_table.h"

namespace hearth::ui::words {

namespace {

using judging::Derived;
using judging::Group;
using judging::Question;

struct QuestionText {
    Question code;
    const char* text;
    const char* help;
};

constexpr std::array kQuestionTexts{
    QuestionText{Question::GasRate, QT_TRANSLATE_NOOP("Words", "What does this gas rate mean?"),
                 QT_TRANSLATE_NOOP("Words",
                                   "Heat input from the meter, against the data plate. Every other appliance "
                                   "off, this one at full rate and warm.")},
    QuestionText{Question::Pressures, QT_TRANSLATE_NOOP("Words", "Are these pressures in order?"),
                 QT_TRANSLATE_NOOP(
                     "Words", "At the meter, at the appliance and at the burner, with the drop between.")},
    QuestionText{Question::Combustion, QT_TRANSLATE_NOOP("Words", "Is this ratio in order?"),
                 QT_TRANSLATE_NOOP("Words",
                                   "Carbon monoxide, carbon dioxide and oxygen of the products, by kind of "
                                   "appliance. The maker's figures come first.")},
    QuestionText{Question::HotWater, QT_TRANSLATE_NOOP("Words", "Does the hot water match the heat input?"),
                 QT_TRANSLATE_NOOP(
                     "Words", "Output from flow and rise, against the maker's flow and the heat put in.")},
    QuestionText{
        Question::Regulation26,
        QT_TRANSLATE_NOOP("Words", "Has everything been examined that regulation 26(9) wants?"),
        QT_TRANSLATE_NOOP("Words",
                          "After any work on an appliance. What was not examined is never taken as good.")},
    QuestionText{Question::Ventilation, QT_TRANSLATE_NOOP("Words", "What vent does this room need?"),
                 QT_TRANSLATE_NOOP(
                     "Words", "Free area for all appliances in one room or compartment, by net heat input.")},
    QuestionText{
        Question::RoomCo, QT_TRANSLATE_NOOP("Words", "What do these CO readings in a room mean?"),
        QT_TRANSLATE_NOOP("Words", "A reading outdoors first. This never says that a room is safe.")},
    QuestionText{
        Question::Pipes, QT_TRANSLATE_NOOP("Words", "Will this pipe do?"),
        QT_TRANSLATE_NOOP(
            "Words",
            "Pressure drop from the meter to each appliance, volume, and which section to enlarge.")},
    QuestionText{
        Question::Purge, QT_TRANSLATE_NOOP("Words", "How much and how long must be purged?"),
        QT_TRANSLATE_NOOP(
            "Words",
            "By volume, meter and flow. Tell the responsible person; no ignition, no switches; ventilate.")},
    QuestionText{
        Question::Larger, QT_TRANSLATE_NOOP("Words", "How is this larger installation tested?"),
        QT_TRANSLATE_NOOP("Words",
                          "Which standard applies, how long the test must last, what leak is permitted.")},
    QuestionText{
        Question::Gas, QT_TRANSLATE_NOOP("Words", "What is this gas?"),
        QT_TRANSLATE_NOOP("Words", "Calorific value, Wobbe index, air and products from the composition.")},
    QuestionText{Question::CheckDue, QT_TRANSLATE_NOOP("Words", "When is the next safety check due?"),
                 QT_TRANSLATE_NOOP("Words", "Of one appliance or flue that a landlord must have checked.")},
};

using GroupText = Text<Group>;
constexpr std::array kRowNames{
    GroupText{Group::Section, QT_TRANSLATE_NOOP("Words", "Section %1")},
    GroupText{Group::Appliance, QT_TRANSLATE_NOOP("Words", "Appliance %1")},
    GroupText{Group::Vent, QT_TRANSLATE_NOOP("Words", "Vent %1")},
    GroupText{Group::Reading, QT_TRANSLATE_NOOP("Words", "Reading %1")},
};

using DerivedText = Text<Derived>;
constexpr std::array kDerivedTexts{
    // --- gas_rate
    DerivedText{Derived::GasFlow, QT_TRANSLATE_NOOP("Words", "Gas rate")},
    DerivedText{Derived::HeatInputGross, QT_TRANSLATE_NOOP("Words", "Heat input, gross")},
    DerivedText{Derived::HeatInputNet, QT_TRANSLATE_NOOP("Words", "Heat input, net")},
    DerivedText{Derived::TwoMinuteShortcut, QT_TRANSLATE_NOOP("Words", "By the two-minute short cut, gross")},
    DerivedText{Derived::TimeForTwoPercent,
                QT_TRANSLATE_NOOP("Words", "Time it for at least, to be within 2 %")},
    DerivedText{Derived::MeterCorrection, QT_TRANSLATE_NOOP("Words", "Correction of the metered volume")},
    // --- end of gas_rate
    // --- pressures
    DerivedText{Derived::DropToAppliance, QT_TRANSLATE_NOOP("Words", "Drop from meter to appliance")},
    // --- end of pressures
    // --- combustion
    DerivedText{Derived::RatioHigh, QT_TRANSLATE_NOOP("Words", "CO/CO₂ ratio, highest rate")},
    DerivedText{Derived::RatioLow, QT_TRANSLATE_NOOP("Words", "CO/CO₂ ratio, lowest rate")},
    DerivedText{Derived::LambdaExact, QT_TRANSLATE_NOOP("Words", "Air ratio λ, exact")},
    DerivedText{Derived::LambdaSimple, QT_TRANSLATE_NOOP("Words", "Air ratio λ, simple")},
    DerivedText{Derived::ExcessAir, QT_TRANSLATE_NOOP("Words", "Excess air, exact")},
    DerivedText{Derived::ExcessAirSimple, QT_TRANSLATE_NOOP("Words", "Excess air, simple")},
    DerivedText{Derived::ExcessAirLow, QT_TRANSLATE_NOOP("Words", "Excess air, exact, lowest rate")},
    DerivedText{Derived::Co2FromOxygen, QT_TRANSLATE_NOOP("Words", "CO₂ that goes with this O₂")},
    DerivedText{Derived::CoAirFree, QT_TRANSLATE_NOOP("Words", "CO, free of air")},
    DerivedText{Derived::CoAirFreeLow, QT_TRANSLATE_NOOP("Words", "CO, free of air, lowest rate")},
    DerivedText{Derived::CoAtThreePercent, QT_TRANSLATE_NOOP("Words", "CO at 3 % O₂")},
    DerivedText{Derived::CoMassNet, QT_TRANSLATE_NOOP("Words", "CO for each kWh, net")},
    DerivedText{Derived::CoMassGross, QT_TRANSLATE_NOOP("Words", "CO for each kWh, gross")},
    DerivedText{Derived::SiegertLoss, QT_TRANSLATE_NOOP("Words", "Flue loss, Siegert, of the net input")},
    DerivedText{Derived::SiegertEfficiency, QT_TRANSLATE_NOOP("Words", "Efficiency, Siegert, net")},
    DerivedText{Derived::DryGasLoss, QT_TRANSLATE_NOOP("Words", "Loss by dry products, gross")},
    DerivedText{Derived::WaterVapourLoss, QT_TRANSLATE_NOOP("Words", "Loss by water vapour, gross")},
    DerivedText{Derived::UnburnedLoss, QT_TRANSLATE_NOOP("Words", "Loss by unburned gas, gross")},
    DerivedText{Derived::LossesEfficiency, QT_TRANSLATE_NOOP("Words", "What these losses leave, gross")},
    DerivedText{Derived::FlueDewPoint, QT_TRANSLATE_NOOP("Words", "Dew point of the products")},
    DerivedText{Derived::Recirculation, QT_TRANSLATE_NOOP("Words", "Products in the inlet air")},
    DerivedText{Derived::LatentCeiling,
                QT_TRANSLATE_NOOP("Words", "Most that condensing could win, of the net input")},
    // --- end of combustion
    // --- hot_water
    DerivedText{Derived::HotWaterOutput, QT_TRANSLATE_NOOP("Words", "Output to the water")},
    DerivedText{Derived::HotWaterExpectedFlow,
                QT_TRANSLATE_NOOP("Words", "Flow that this output heats at the maker's rise")},
    DerivedText{Derived::HotWaterMakersFlowHere,
                QT_TRANSLATE_NOOP("Words", "Flow that the maker's output heats by this rise")},
    DerivedText{Derived::HeatBalance, QT_TRANSLATE_NOOP("Words", "Output over net heat input")},
    // --- end of hot_water
    // --- ventilation
    DerivedText{Derived::VentNeed, QT_TRANSLATE_NOOP("Words", "Free area needed")},
    DerivedText{Derived::VentNeedHigh, QT_TRANSLATE_NOOP("Words", "Needed at high level")},
    DerivedText{Derived::VentNeedLow, QT_TRANSLATE_NOOP("Words", "Needed at low level")},
    DerivedText{Derived::VentThere, QT_TRANSLATE_NOOP("Words", "Free area there")},
    DerivedText{Derived::VentInput, QT_TRANSLATE_NOOP("Words", "Net heat input of all together")},
    // --- end of ventilation
    // --- room_co
    DerivedText{Derived::CoPeak, QT_TRANSLATE_NOOP("Words", "Highest reading")},
    DerivedText{Derived::CoMeanAll, QT_TRANSLATE_NOOP("Words", "Mean over what was measured")},
    DerivedText{Derived::CoMeanQuarter, QT_TRANSLATE_NOOP("Words", "Highest mean of 15 minutes")},
    DerivedText{Derived::CoChange, QT_TRANSLATE_NOOP("Words", "Change over the last minutes")},
    DerivedText{Derived::CoMeanLong, QT_TRANSLATE_NOOP("Words", "Highest mean of 8 hours")},
    // --- end of room_co
    // --- pipes
    DerivedText{Derived::VolumeWhole, QT_TRANSLATE_NOOP("Words", "Volume of meter, pipes and fittings")},
    DerivedText{Derived::DropWorst, QT_TRANSLATE_NOOP("Words", "Largest drop at full demand")},
    DerivedText{Derived::VolumeTested, QT_TRANSLATE_NOOP("Words", "Volume of the part that is tested")},
    DerivedText{Derived::DropMeasured, QT_TRANSLATE_NOOP("Words", "Largest drop at what was measured")},
    DerivedText{Derived::CopperMore,
                QT_TRANSLATE_NOOP("Words", "Metal that the larger pipes need beyond these, kg")},
    // --- end of pipes
    // --- purge
    DerivedText{Derived::PurgeVolume, QT_TRANSLATE_NOOP("Words", "Volume to be purged")},
    DerivedText{Derived::PurgeTime, QT_TRANSLATE_NOOP("Words", "Time that takes")},
    DerivedText{Derived::PurgeFlowLeast, QT_TRANSLATE_NOOP("Words", "Least purge flow")},
    // --- end of purge
    // --- larger
    DerivedText{Derived::TestTimeNeeded, QT_TRANSLATE_NOOP("Words", "The test must last at least")},
    DerivedText{Derived::LargerLeak, QT_TRANSLATE_NOOP("Words", "Leak that the fall means")},
    DerivedText{Derived::StrengthPressureNeeded, QT_TRANSLATE_NOOP("Words", "Strength test pressure")},
    // --- end of larger
    // --- gas
    DerivedText{Derived::GrossHeat, QT_TRANSLATE_NOOP("Words", "Calorific value, gross")},
    DerivedText{Derived::NetHeat, QT_TRANSLATE_NOOP("Words", "Calorific value, net")},
    DerivedText{Derived::GrossPerMass, QT_TRANSLATE_NOOP("Words", "Calorific value of 1 kg in MJ, gross")},
    DerivedText{Derived::GrossOverNet, QT_TRANSLATE_NOOP("Words", "Gross over net")},
    DerivedText{Derived::RelativeDensity, QT_TRANSLATE_NOOP("Words", "Relative density")},
    DerivedText{Derived::WobbeGross, QT_TRANSLATE_NOOP("Words", "Wobbe index, gross")},
    DerivedText{Derived::WobbeNet, QT_TRANSLATE_NOOP("Words", "Wobbe index, net")},
    DerivedText{Derived::AirNeeded, QT_TRANSLATE_NOOP("Words", "Air to burn 1 m³")},
    DerivedText{Derived::DryProducts, QT_TRANSLATE_NOOP("Words", "Dry products of 1 m³")},
    DerivedText{Derived::WetProducts, QT_TRANSLATE_NOOP("Words", "Wet products of 1 m³")},
    DerivedText{Derived::Co2Max, QT_TRANSLATE_NOOP("Words", "CO₂ without excess air, dry")},
    DerivedText{Derived::StoichiometricDewPoint, QT_TRANSLATE_NOOP("Words", "Dew point without excess air")},
    DerivedText{Derived::CondensateGross,
                QT_TRANSLATE_NOOP("Words", "Condensate at most in kg, for each kWh gross")},
    // --- end of gas
};

const QuestionText* textOfQuestion(Question question) {
    const auto* found = std::find_if(kQuestionTexts.begin(), kQuestionTexts.end(),
                                     [&](const QuestionText& text) { return text.code == question; });
    return found == kQuestionTexts.end() ? nullptr : found;
}

}  // namespace

QString question(const Words& words, Question question) {
    const auto* text = textOfQuestion(question);
    return text == nullptr ? QString() : words.say(text->text);
}

QString questionHelp(const Words& words, Question question) {
    const auto* text = textOfQuestion(question);
    return text == nullptr ? QString() : words.say(text->help);
}

QString rowName(const Words& words, Group group, int row) {
    const char* text = textOf(kRowNames, group);
    return text == nullptr ? QString() : words.say(text, {QString::number(row + 1)});
}

QString lacking(const Words& words, const std::vector<reg::Item>& items) {
    QStringList names;
    for (const reg::Item item : items) {
        names << words.item(item);
    }
    return names.isEmpty() ? QString()
                           : words.say(QT_TRANSLATE_NOOP("Words", "Still empty: %1."),
                                       {names.join(QStringLiteral(", "))});
}

QString derived(const Words& words, Derived derived) {
    const char* text = textOf(kDerivedTexts, derived);
    return text == nullptr ? QString() : words.say(text);
}

}  // namespace hearth::ui::words
