// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/text_table.h"
#include "ui/words/words.h"

namespace hearth::ui::words {

namespace {

using reg::Item;

/// A label, and one line of help where it is not plain from the label.
struct ItemText {
    Item code;
    const char* label;
    const char* help;
};

constexpr std::array kItems{
    ItemText{Item::VisitReference, QT_TRANSLATE_NOOP("Words", "Customer's reference"),
             QT_TRANSLATE_NOOP("Words", "An order or job number, if there is one.")},
    ItemText{Item::VisitPresent, QT_TRANSLATE_NOOP("Words", "Who was there"), ""},
    ItemText{Item::SmellOnArrival, QT_TRANSLATE_NOOP("Words", "Smell of gas on arrival"),
             QT_TRANSLATE_NOOP("Words", "Yes: deal with the escape first (F12).")},
    ItemText{Item::OpenEnds, QT_TRANSLATE_NOOP("Words", "Open ends"),
             QT_TRANSLATE_NOOP("Words", "Walk the whole installation before any pressure goes on.")},
    ItemText{Item::SafeToTouch, QT_TRANSLATE_NOOP("Words", "Pipe safe to touch"),
             QT_TRANSLATE_NOOP("Words", "Sweep exposed metal pipe with a no-contact voltage detector.")},
    ItemText{Item::VisualInspection, QT_TRANSLATE_NOOP("Words", "Visual inspection"), ""},
    ItemText{Item::VisualNotes, QT_TRANSLATE_NOOP("Words", "What was seen"), ""},

    ItemText{Item::TestEdition, QT_TRANSLATE_NOOP("Words", "Tested to"),
             QT_TRANSLATE_NOOP("Words", "From 1 October 2026 Edition 4 only.")},
    ItemText{Item::TestWork, QT_TRANSLATE_NOOP("Words", "Pipework tested"), ""},
    ItemText{Item::TestExtent, QT_TRANSLATE_NOOP("Words", "How much was tested"), ""},
    ItemText{Item::TestPartDescription, QT_TRANSLATE_NOOP("Words", "Which part"),
             QT_TRANSLATE_NOOP("Words", "From where to where, so that another can find it.")},
    ItemText{Item::TestAppliances, QT_TRANSLATE_NOOP("Words", "Appliances during the test"), ""},
    ItemText{Item::TestIsolatedWhat, QT_TRANSLATE_NOOP("Words", "What was open and shut"),
             QT_TRANSLATE_NOOP("Words", "Which valves, which appliances.")},
    ItemText{Item::TestPilots, QT_TRANSLATE_NOOP("Words", "Pilot lights"), ""},
    ItemText{Item::TestGauge, QT_TRANSLATE_NOOP("Words", "Gauge"), ""},
    ItemText{Item::TestGaugeZeroed, QT_TRANSLATE_NOOP("Words", "Gauge zeroed before connecting"), ""},
    ItemText{Item::TestSmell, QT_TRANSLATE_NOOP("Words", "Smell of gas during the test"),
             QT_TRANSLATE_NOOP("Words", "Any smell of gas fails, whatever the gauge shows.")},
    ItemText{Item::TestVolumeTyped, QT_TRANSLATE_NOOP("Words", "Volume from elsewhere"),
             QT_TRANSLATE_NOOP("Words", "Used instead of the pipe list.")},

    ItemText{Item::LetByStart, QT_TRANSLATE_NOOP("Words", "Let-by, start"), ""},
    ItemText{Item::LetByEnd, QT_TRANSLATE_NOOP("Words", "Let-by, end"), ""},
    ItemText{Item::LetByStartedAt, QT_TRANSLATE_NOOP("Words", "Let-by, from"), ""},
    ItemText{Item::LetByEndedAt, QT_TRANSLATE_NOOP("Words", "Let-by, to"), ""},

    ItemText{Item::SettleStart, QT_TRANSLATE_NOOP("Words", "Settling, start"), ""},
    ItemText{Item::SettleEnd, QT_TRANSLATE_NOOP("Words", "Settling, end"), ""},
    ItemText{Item::SettleStartedAt, QT_TRANSLATE_NOOP("Words", "Settling, from"), ""},
    ItemText{Item::SettleEndedAt, QT_TRANSLATE_NOOP("Words", "Settling, to"), ""},

    ItemText{Item::TightStart, QT_TRANSLATE_NOOP("Words", "Tightness, start"), ""},
    ItemText{Item::TightEnd, QT_TRANSLATE_NOOP("Words", "Tightness, end"), ""},
    ItemText{Item::TightStartedAt, QT_TRANSLATE_NOOP("Words", "Tightness, from"), ""},
    ItemText{Item::TightEndedAt, QT_TRANSLATE_NOOP("Words", "Tightness, to"), ""},
    ItemText{Item::SecondDisplayStart, QT_TRANSLATE_NOOP("Words", "Second display, start"),
             QT_TRANSLATE_NOOP("Words", "The same gauge read on another display, if there is one.")},
    ItemText{Item::SecondDisplayEnd, QT_TRANSLATE_NOOP("Words", "Second display, end"), ""},
    ItemText{Item::LowPressureReason, QT_TRANSLATE_NOOP("Words", "Why the pressure could not be reached"),
             ""},
    ItemText{Item::AssumedTemperatureChange, QT_TRANSLATE_NOOP("Words", "Temperature change assumed"),
             QT_TRANSLATE_NOOP("Words", "How far the gas may have warmed or cooled during the test.")},

    ItemText{Item::RetestStart, QT_TRANSLATE_NOOP("Words", "Retest, start"),
             QT_TRANSLATE_NOOP("Words", "Repeat with the appliances isolated at their valves.")},
    ItemText{Item::RetestEnd, QT_TRANSLATE_NOOP("Words", "Retest, end"), ""},
    ItemText{Item::RetestStartedAt, QT_TRANSLATE_NOOP("Words", "Retest, from"), ""},
    ItemText{Item::RetestEndedAt, QT_TRANSLATE_NOOP("Words", "Retest, to"), ""},

    ItemText{Item::PurgeDone, QT_TRANSLATE_NOOP("Words", "Purged"), ""},
    ItemText{Item::PurgeMethod, QT_TRANSLATE_NOOP("Words", "Purged through"), ""},
    ItemText{Item::PurgeVolumePassed, QT_TRANSLATE_NOOP("Words", "Volume passed at the meter"), ""},
    ItemText{Item::PurgeSteadyFlame, QT_TRANSLATE_NOOP("Words", "Steady flame at every appliance"), ""},

    ItemText{Item::TestPointProved, QT_TRANSLATE_NOOP("Words", "Test point proved with leak detection fluid"),
             ""},
    ItemText{Item::DisturbedJointsProved,
             QT_TRANSLATE_NOOP("Words", "Disturbed joints proved with leak detection fluid"),
             QT_TRANSLATE_NOOP("Words", "Also joints that the test did not cover, and any purge point.")},
    ItemText{Item::FluidWiped, QT_TRANSLATE_NOOP("Words", "Fluid wiped off"), ""},
    ItemText{Item::StandingPressure, QT_TRANSLATE_NOOP("Words", "Standing pressure at the meter"), ""},
    ItemText{Item::WorkingPressure, QT_TRANSLATE_NOOP("Words", "Working pressure at the meter"), ""},
    ItemText{Item::WorkingLoad, QT_TRANSLATE_NOOP("Words", "With what burning"),
             QT_TRANSLATE_NOOP("Words", "Which appliances, at what setting.")},

    ItemText{Item::VisitRemarks, QT_TRANSLATE_NOOP("Words", "Remarks"), ""},
    ItemText{Item::SignedByEngineer, QT_TRANSLATE_NOOP("Words", "Signed by the engineer"),
             QT_TRANSLATE_NOOP("Words", "Name, typed in place of a signature.")},
    ItemText{Item::ReceivedBy, QT_TRANSLATE_NOOP("Words", "Received by"),
             QT_TRANSLATE_NOOP("Words", "Name of who took the record; may be left empty.")},
};

const ItemText& textOfItem(Item item) {
    const auto found =
        std::find_if(kItems.begin(), kItems.end(), [&](const ItemText& t) { return t.code == item; });
    Q_ASSERT(found != kItems.end());
    return *found;
}

struct ChoiceText {
    std::string_view code;
    const char* label;
};

namespace choice = reg::choice;

constexpr std::array kChoices{
    ChoiceText{choice::kNoneDisturbed, QT_TRANSLATE_NOOP("Words", "none disturbed")},
    ChoiceText{choice::kYes, QT_TRANSLATE_NOOP("Words", "yes")},
    ChoiceText{choice::kNo, QT_TRANSLATE_NOOP("Words", "no")},
    ChoiceText{choice::kNotNeeded, QT_TRANSLATE_NOOP("Words", "not needed")},
    ChoiceText{choice::kNoneSeen, QT_TRANSLATE_NOOP("Words", "none seen")},
    ChoiceText{choice::kFoundSealed, QT_TRANSLATE_NOOP("Words", "found and sealed")},
    ChoiceText{choice::kFoundOpen, QT_TRANSLATE_NOOP("Words", "found open")},
    ChoiceText{choice::kNotLooked, QT_TRANSLATE_NOOP("Words", "not looked for")},
    ChoiceText{choice::kSafe, QT_TRANSLATE_NOOP("Words", "safe")},
    ChoiceText{choice::kVoltage, QT_TRANSLATE_NOOP("Words", "voltage found")},
    ChoiceText{choice::kNotDone, QT_TRANSLATE_NOOP("Words", "not done")},
    ChoiceText{choice::kSound, QT_TRANSLATE_NOOP("Words", "sound")},
    ChoiceText{choice::kDefects, QT_TRANSLATE_NOOP("Words", "defects noted")},
    ChoiceText{choice::kNew, QT_TRANSLATE_NOOP("Words", "new")},
    ChoiceText{choice::kExisting, QT_TRANSLATE_NOOP("Words", "existing")},
    ChoiceText{choice::kWhole, QT_TRANSLATE_NOOP("Words", "whole installation")},
    ChoiceText{choice::kPart, QT_TRANSLATE_NOOP("Words", "a part")},
    ChoiceText{choice::kConnected, QT_TRANSLATE_NOOP("Words", "connected, all off")},
    ChoiceText{choice::kIsolated, QT_TRANSLATE_NOOP("Words", "isolated at their valves")},
    ChoiceText{choice::kNoneConnected, QT_TRANSLATE_NOOP("Words", "none connected")},
    ChoiceText{choice::kOut, QT_TRANSLATE_NOOP("Words", "out")},
    ChoiceText{choice::kNoneFitted, QT_TRANSLATE_NOOP("Words", "none fitted")},
    ChoiceText{choice::kLeftLit, QT_TRANSLATE_NOOP("Words", "left lit")},
    ChoiceText{choice::kOpenBurner, QT_TRANSLATE_NOOP("Words", "an open burner")},
    ChoiceText{choice::kVentilatedPlace,
               QT_TRANSLATE_NOOP("Words", "to a ventilated place, no source of ignition")},
};

}  // namespace

QString Words::item(Item item) const {
    return say(textOfItem(item).label);
}

QString Words::itemHelp(Item item) const {
    const char* help = textOfItem(item).help;
    return *help == '\0' ? QString() : say(help);
}

QString Words::choice(Item /*item*/, const std::string& code) const {
    if (code == choice::kEd3 || code == choice::kEd4) {
        return edition(code == choice::kEd3 ? rulebook::Edition::Up1bEd3 : rulebook::Edition::Up1bEd4);
    }
    for (const auto& text : kChoices) {
        if (text.code == code) {
            return say(text.label);
        }
    }
    return qstring(code);  // of a newer program: kept, shown as it stands
}

}  // namespace hearth::ui::words
