// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/document_page.h"

#include <algorithm>
#include <array>

namespace hearth::ui::words {

namespace {

using reg::Item;
namespace choice = reg::choice;

constexpr std::array kStageItems{Item::SettleStart,    Item::SettleEnd,   Item::SettleStartedAt,
                                 Item::SettleEndedAt,  Item::TightStart,  Item::TightEnd,
                                 Item::TightStartedAt, Item::TightEndedAt};
constexpr std::array kPurgeItems{Item::PurgeMethod, Item::PurgeVolumePassed, Item::PurgeSteadyFlame};
constexpr std::array kPressureItems{Item::StandingPressure, Item::WorkingPressure, Item::WorkingLoad};

template <std::size_t N>
bool isOneOf(const std::array<Item, N>& items, Item item) {
    return std::find(items.begin(), items.end(), item) != items.end();
}

struct Caption {
    Item item;
    const char* text;
};
// Longer ones would take two lines above a value of one word.
constexpr std::array kCaptions{
    // of an appliance, where the block around it is the appliance's own
    Caption{Item::LocationSeen, QT_TRANSLATE_NOOP("Words", "Location")},
    Caption{Item::DistressSeen, QT_TRANSLATE_NOOP("Words", "Heat, soot, distress")},
    Caption{Item::ClearancesSeen, QT_TRANSLATE_NOOP("Words", "Clearances")},
    Caption{Item::ConnectionSeen, QT_TRANSLATE_NOOP("Words", "Gas connection")},
    Caption{Item::FlueSeen, QT_TRANSLATE_NOOP("Words", "Flue, its whole length")},
    Caption{Item::TerminalSeen, QT_TRANSLATE_NOOP("Words", "Terminal")},
    Caption{Item::FlueNotSeen, QT_TRANSLATE_NOOP("Words", "Not seen of the flue")},
    Caption{Item::VentilationSeen, QT_TRANSLATE_NOOP("Words", "Ventilation")},
    Caption{Item::SpillageFans, QT_TRANSLATE_NOOP("Words", "Spillage, fans running")},
    Caption{Item::CaseSealSeen, QT_TRANSLATE_NOOP("Words", "Case and seal")},
    Caption{Item::SafetyDevices, QT_TRANSLATE_NOOP("Words", "Safety devices")},
    Caption{Item::CondensateSeen, QT_TRANSLATE_NOOP("Words", "Condensate")},
    Caption{Item::PressureRelief, QT_TRANSLATE_NOOP("Words", "Relief, overheat")},
    Caption{Item::ServicedToday, QT_TRANSLATE_NOOP("Words", "Serviced as well")},
    Caption{Item::GasRateRead, QT_TRANSLATE_NOOP("Words", "Gas rate")},
    Caption{Item::HeatInputRead, QT_TRANSLATE_NOOP("Words", "Heat input")},
    Caption{Item::InletPressure, QT_TRANSLATE_NOOP("Words", "Inlet, working")},
    Caption{Item::InletStanding, QT_TRANSLATE_NOOP("Words", "Inlet, standing")},
    Caption{Item::MeterStandingPressure, QT_TRANSLATE_NOOP("Words", "Meter, standing")},
    Caption{Item::MeterWorkingPressure, QT_TRANSLATE_NOOP("Words", "Meter, working")},
    Caption{Item::ByMaker, QT_TRANSLATE_NOOP("Words", "By the maker’s instructions")},
    Caption{Item::VesselSeen, QT_TRANSLATE_NOOP("Words", "Expansion vessel")},
    Caption{Item::InhibitorSeen, QT_TRANSLATE_NOOP("Words", "Inhibitor")},
    Caption{Item::CombiMeasure, QT_TRANSLATE_NOOP("Words", "Combination boiler, further")},
    Caption{Item::WaterHardness, QT_TRANSLATE_NOOP("Words", "Mains hardness, ppm")},
    Caption{Item::WaterPressure, QT_TRANSLATE_NOOP("Words", "Water pressure, cold")},
    Caption{Item::HandoverShown, QT_TRANSLATE_NOOP("Words", "Demonstrated")},
    Caption{Item::HandoverInstructions, QT_TRANSLATE_NOOP("Words", "Instructions left")},
    Caption{Item::ControlsInformation, QT_TRANSLATE_NOOP("Words", "Information handed over")},
    // of a call to a room
    Caption{Item::EmergencyReference, QT_TRANSLATE_NOOP("Words", "Emergency reference")},
    Caption{Item::MedicalAdvice, QT_TRANSLATE_NOOP("Words", "Medical advice urged")},
    Caption{Item::AlarmMake, QT_TRANSLATE_NOOP("Words", "Alarm, make and type")},
    Caption{Item::AlarmPeak, QT_TRANSLATE_NOOP("Words", "Highest on the alarm")},
    // of larger pipework, under its own title
    Caption{Item::StrengthMedium, QT_TRANSLATE_NOOP("Words", "Tested with")},
    Caption{Item::StrengthGauge, QT_TRANSLATE_NOOP("Words", "Gauge's kind")},
    Caption{Item::StrengthPartsOff, QT_TRANSLATE_NOOP("Words", "Weaker parts taken off")},
    Caption{Item::StrengthMostOperating, QT_TRANSLATE_NOOP("Words", "Most operating")},
    Caption{Item::LargerIncidentalPressure, QT_TRANSLATE_NOOP("Words", "Most incidental")},
    Caption{Item::LargerSupplyPressure, QT_TRANSLATE_NOOP("Words", "Most of the supply")},
    Caption{Item::LargerVentilated, QT_TRANSLATE_NOOP("Words", "Well ventilated")},
    // of a test
    Caption{Item::TestGaugeZeroed, QT_TRANSLATE_NOOP("Words", "Gauge zeroed")},
    Caption{Item::TestSmell, QT_TRANSLATE_NOOP("Words", "Smell during test")},
    Caption{Item::PurgeVolumePassed, QT_TRANSLATE_NOOP("Words", "Volume passed at meter")},
    Caption{Item::PurgeSteadyFlame, QT_TRANSLATE_NOOP("Words", "All flames steady")},
    Caption{Item::TestPointProved, QT_TRANSLATE_NOOP("Words", "Test point proved (fluid)")},
    Caption{Item::DisturbedJointsProved, QT_TRANSLATE_NOOP("Words", "Disturbed joints proved")},
    Caption{Item::StandingPressure, QT_TRANSLATE_NOOP("Words", "Standing pressure (meter)")},
    Caption{Item::WorkingPressure, QT_TRANSLATE_NOOP("Words", "Working pressure (meter)")},
};

/// Volumes are shown to the cubic centimetre: 0.009386 m³.
constexpr int kVolumeDecimals = 6;

bool isOfDrop(const judging::Judged& judged) {
    return judged.finding.kind == rulebook::FindingKind::PressureDropDesign ||
           judged.finding.kind == rulebook::FindingKind::PressureDropMeasured;
}

}  // namespace

bool drawsPipes(record::RecordKind kind) {
    using record::RecordKind;
    return kind == RecordKind::TightnessAndPurge || kind == RecordKind::LandlordSafety ||
           kind == RecordKind::OwnerSafety || kind == RecordKind::Commissioning ||
           kind == RecordKind::LargerPipework;
}

QString recordCaption(const Words& words, Item item) {
    const auto own = std::find_if(kCaptions.begin(), kCaptions.end(),
                                  [&](const Caption& caption) { return caption.item == item; });
    return own != kCaptions.end() ? words.say(own->text) : words.item(item);
}

std::string absentCell() {
    return "—";
}

std::vector<judging::Judged> DocumentPage::findingsOf(const DocumentInput& input) {
    auto shown = record::shownFindings(input.file, input.findings);
    const auto appliances = record::appliancesFor(input.kind, input.file);
    const bool isTest = input.kind == record::RecordKind::TightnessAndPurge;
    std::erase_if(shown, [&](const judging::Judged& judged) {
        if (judged.subject.kind == reg::SubjectKind::Appliance) {
            return isTest ||
                   std::none_of(appliances.begin(), appliances.end(), [&](const reg::Appliance& one) {
                       return reg::subject(one.id) == judged.subject;
                   });
        }
        if (judged.subject.kind == reg::SubjectKind::Installation) {
            return isOfDrop(judged) ? !drawsPipes(input.kind)
                                    : input.kind != record::RecordKind::LargerPipework;
        }
        const bool entered = std::any_of(judged.about.begin(), judged.about.end(), [&](Item item) {
            return input.file.find(judged.subject, item) != nullptr;
        });
        return !isTest && judged.subject.kind == reg::SubjectKind::Visit && !entered;
    });
    return shown;
}

std::vector<reg::Test> DocumentPage::tests() const {
    std::vector<reg::Test> made;
    std::copy_if(file().tests.begin(), file().tests.end(), std::back_inserter(made),
                 [&](const reg::Test& test) { return !record::isEmptyTest(file(), test.id); });
    return made;
}

QString DocumentPage::testLabel(const reg::Test& test) const {
    if (!test.label.empty()) {
        return qstring(test.label);
    }
    const auto made = tests();
    const auto at =
        std::find_if(made.begin(), made.end(), [&](const reg::Test& t) { return t.id == test.id; });
    return say(QT_TRANSLATE_NOOP("Words", "test %1"), {QString::number(at - made.begin() + 1)});
}

std::string DocumentPage::titled(const QString& title, const reg::Test& test) const {
    return utf8(severalTests() ? title + QStringLiteral(": ") + testLabel(test) : title);
}

bool DocumentPage::has(const reg::SubjectRef& on, Item item) const {
    const reg::Entry* entry = file().find(on, item);
    return entry != nullptr && !qstring(entry->text).trimmed().isEmpty();
}

QString DocumentPage::value(const reg::SubjectRef& on, Item item) const {
    const reg::Entry* entry = file().find(on, item);
    if (entry == nullptr) {
        return {};
    }
    const auto unreadable = [&] {
        return say(QT_TRANSLATE_NOOP("Words", "“%1” (can't be read)"), {qstring(entry->text)});
    };
    switch (reg::infoOf(item).kind) {
        case reg::ItemKind::Number: {
            const auto number = quantity::Decimal::parse(entry->text);
            if (number && item == Item::HeatInputRead && has(on, Item::HeatInputBasis)) {
                return m_words.figure({*number, entry->unit}) + u' ' + value(on, Item::HeatInputBasis);
            }
            return number ? m_words.figure({*number, entry->unit}) : unreadable();
        }
        case reg::ItemKind::Choice:
        case reg::ItemKind::YesNo:
            return m_words.choice(item, entry->canonical.empty() ? entry->text : entry->canonical);
        case reg::ItemKind::Instrument: {
            const reg::Instrument* instrument = file().instrumentOf(on, item);
            return instrument != nullptr ? qstring(instrument->name) : unreadable();
        }
        case reg::ItemKind::Date: {
            const auto date = calendar::fromIso(entry->canonical);
            return date ? m_words.date(*date) : unreadable();
        }
        case reg::ItemKind::Time:
            return entry->canonical.empty() ? unreadable() : qstring(entry->canonical);
        case reg::ItemKind::Text:
        case reg::ItemKind::LongText:
            break;
    }
    return qstring(entry->text);
}

QString DocumentPage::reasonForAbsence(const reg::SubjectRef& on, Item item) const {
    if (isOneOf(kStageItems, item) && record::stoppedByLetBy(m_findings, on)) {
        return say(QT_TRANSLATE_NOOP("Words", "not made: stopped at let-by"));
    }
    if (isOneOf(kPurgeItems, item)) {
        const auto done = file().choiceOf(on, Item::PurgeDone);
        if (done == choice::kNotNeeded) {
            return say(QT_TRANSLATE_NOOP("Words", "no purge needed"));
        }
        if (done == choice::kYes && item == Item::PurgeVolumePassed &&
            file().installation.meterCode == "none") {
            return say(QT_TRANSLATE_NOOP("Words", "no meter to read"));
        }
        const bool noAppliance = file().choiceOf(on, Item::TestAppliances) == choice::kNoneConnected;
        if (done == choice::kYes && item == Item::PurgeSteadyFlame && noAppliance) {
            return say(QT_TRANSLATE_NOOP("Words", "no appliance connected"));
        }
        return done == choice::kYes ? say(QT_TRANSLATE_NOOP("Words", "not entered"))
                                    : say(QT_TRANSLATE_NOOP("Words", "not purged"));
    }
    if (on.kind == reg::SubjectKind::Appliance) {
        const auto seen = file().choiceOf(on, Item::ApplianceInspected);
        return seen == choice::kVisualOnly ? say(QT_TRANSLATE_NOOP("Words", "visual check only"))
               : seen == choice::kDecommissioned
                   ? say(QT_TRANSLATE_NOOP("Words", "decommissioned and capped"))
               : seen == choice::kNotInspected ? say(QT_TRANSLATE_NOOP("Words", "not inspected"))
                                               : say(QT_TRANSLATE_NOOP("Words", "not entered"));
    }
    const bool gasOff = record::stoppedByLetBy(m_findings, on) || record::foundLeaking(m_findings, on);
    if (gasOff && (item == Item::PurgeDone || isOneOf(kPressureItems, item))) {
        return say(QT_TRANSLATE_NOOP("Words", "the gas stays off"));
    }
    if (isOneOf(kPressureItems, item)) {
        return say(QT_TRANSLATE_NOOP("Words", "not taken"));
    }
    if (item == Item::TestPilots) {
        return say(QT_TRANSLATE_NOOP("Words", "appliances not connected"));
    }
    return say(QT_TRANSLATE_NOOP("Words", "not entered"));
}

record::CaptionedValue DocumentPage::captioned(const reg::SubjectRef& on, Item item) const {
    const std::string caption = utf8(recordCaption(m_words, item));
    return has(on, item) ? record::CaptionedValue{caption, {utf8(value(on, item))}, false}
                         : record::CaptionedValue{caption, {utf8(reasonForAbsence(on, item))}, true};
}

void DocumentPage::addIfGiven(record::FieldGrid& grid, const reg::SubjectRef& on, Item item) const {
    if (has(on, item)) {
        grid.fields.push_back(captioned(on, item));
    }
}

record::CaptionedValue DocumentPage::field(const char* caption, const QString& value,
                                           const char* reason) const {
    const bool absent = value.trimmed().isEmpty();
    return {text(caption), {absent ? text(reason) : utf8(value)}, absent};
}

record::CaptionedValue DocumentPage::absentTogether(const char* caption, const reg::SubjectRef& on,
                                                    Item item) const {
    return {text(caption), {utf8(reasonForAbsence(on, item))}, true};
}

QString DocumentPage::typed(const quantity::Typed& typed) const {
    if (typed.text.empty()) {
        return {};
    }
    const auto number = typed.value();
    return number ? m_words.figure({*number, typed.unit}) : qstring(typed.text);
}

QString DocumentPage::volume(quantity::Volume volume) const {
    return m_words.figure({quantity::Decimal::rounded(volume.in(quantity::kCubicMetre), kVolumeDecimals),
                           quantity::UnitCode::CubicMetre});
}

}  // namespace hearth::ui::words
