// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/text_table.h"
#include "ui/words/words.h"

namespace hearth::ui::words {

namespace {

using pipework::TubeFamily;
using pipework::VolumeBasis;
using record::Field;
using record::RecordKind;
using reg::Country;
using reg::InstrumentKind;
using reg::PartyKind;
using reg::RoleKind;

constexpr std::array kBases{
    Text<VolumeBasis>{VolumeBasis::TradeTable, QT_TRANSLATE_NOOP("Words", "trade table")},
    Text<VolumeBasis>{VolumeBasis::Geometry, QT_TRANSLATE_NOOP("Words", "from the tube's dimensions")},
    Text<VolumeBasis>{VolumeBasis::Typed, QT_TRANSLATE_NOOP("Words", "typed in")},
};
constexpr std::array kRoles{
    Text<RoleKind>{RoleKind::Customer, QT_TRANSLATE_NOOP("Words", "Customer")},
    Text<RoleKind>{RoleKind::Landlord, QT_TRANSLATE_NOOP("Words", "Landlord")},
    Text<RoleKind>{RoleKind::Agent, QT_TRANSLATE_NOOP("Words", "Agent")},
    Text<RoleKind>{RoleKind::HomeOwner, QT_TRANSLATE_NOOP("Words", "Home owner")},
    Text<RoleKind>{RoleKind::Tenant, QT_TRANSLATE_NOOP("Words", "Tenant")},
    Text<RoleKind>{RoleKind::ResponsiblePerson, QT_TRANSLATE_NOOP("Words", "Responsible person")},
};
constexpr std::array kCountries{
    Text<Country>{Country::England, QT_TRANSLATE_NOOP("Words", "England")},
    Text<Country>{Country::Wales, QT_TRANSLATE_NOOP("Words", "Wales")},
    Text<Country>{Country::Scotland, QT_TRANSLATE_NOOP("Words", "Scotland")},
    Text<Country>{Country::NorthernIreland, QT_TRANSLATE_NOOP("Words", "Northern Ireland")},
};
constexpr std::array kPartyKinds{
    Text<PartyKind>{PartyKind::Person, QT_TRANSLATE_NOOP("Words", "Person")},
    Text<PartyKind>{PartyKind::Organisation, QT_TRANSLATE_NOOP("Words", "Organisation")},
};
constexpr std::array kInstruments{
    Text<InstrumentKind>{InstrumentKind::ElectronicGauge,
                         QT_TRANSLATE_NOOP("Words", "Electronic pressure gauge")},
    Text<InstrumentKind>{InstrumentKind::WaterGauge, QT_TRANSLATE_NOOP("Words", "Water gauge (U-tube)")},
    Text<InstrumentKind>{InstrumentKind::CombustionAnalyser, QT_TRANSLATE_NOOP("Words", "Flue gas analyser")},
    Text<InstrumentKind>{InstrumentKind::LeakDetector, QT_TRANSLATE_NOOP("Words", "Gas leak detector")},
    Text<InstrumentKind>{InstrumentKind::VoltageIndicator,
                         QT_TRANSLATE_NOOP("Words", "No-contact voltage detector")},
    Text<InstrumentKind>{InstrumentKind::Other, QT_TRANSLATE_NOOP("Words", "Other instrument")},
};
constexpr std::array kFamilies{
    Text<TubeFamily>{TubeFamily::Copper, QT_TRANSLATE_NOOP("Words", "Copper")},
    Text<TubeFamily>{TubeFamily::SteelMedium, QT_TRANSLATE_NOOP("Words", "Steel, medium")},
    Text<TubeFamily>{TubeFamily::SteelHeavy, QT_TRANSLATE_NOOP("Words", "Steel, heavy")},
    Text<TubeFamily>{TubeFamily::PeSdr11, QT_TRANSLATE_NOOP("Words", "Polyethylene SDR 11")},
    Text<TubeFamily>{TubeFamily::PeSdr176, QT_TRANSLATE_NOOP("Words", "Polyethylene SDR 17.6")},
    Text<TubeFamily>{TubeFamily::Corrugated, QT_TRANSLATE_NOOP("Words", "Corrugated")},
};
constexpr std::array kFields{
    Text<Field>{Field::FirmName, QT_TRANSLATE_NOOP("Words", "Firm's name")},
    Text<Field>{Field::FirmAddress, QT_TRANSLATE_NOOP("Words", "Firm's address")},
    Text<Field>{Field::FirmRegistration, QT_TRANSLATE_NOOP("Words", "Firm's registration number")},
    Text<Field>{Field::PremisesAddress, QT_TRANSLATE_NOOP("Words", "Address of the premises")},
    Text<Field>{Field::PremisesPostcode, QT_TRANSLATE_NOOP("Words", "Postcode of the premises")},
    Text<Field>{Field::CustomerName, QT_TRANSLATE_NOOP("Words", "Name of the customer, owner or agent")},
    Text<Field>{Field::EngineerName, QT_TRANSLATE_NOOP("Words", "Engineer")},
    Text<Field>{Field::EngineerCard, QT_TRANSLATE_NOOP("Words", "Engineer's card number")},
    Text<Field>{Field::InstallationGas, QT_TRANSLATE_NOOP("Words", "Gas")},
    Text<Field>{Field::InstallationMeter, QT_TRANSLATE_NOOP("Words", "Meter")},
    Text<Field>{Field::InstrumentSerial, QT_TRANSLATE_NOOP("Words", "Gauge's serial number")},
    Text<Field>{Field::InstrumentCalibration, QT_TRANSLATE_NOOP("Words", "Gauge's calibration date")},
    Text<Field>{Field::PipeOrVolume, QT_TRANSLATE_NOOP("Words", "Pipes with size and length, or the volume")},
    Text<Field>{Field::PipeOrder, QT_TRANSLATE_NOOP("Words", "What a pipe goes on from")},
    Text<Field>{Field::VisitDate, QT_TRANSLATE_NOOP("Words", "Date")},
    Text<Field>{Field::LandlordName, QT_TRANSLATE_NOOP("Words", "Name of the landlord or agent")},
    Text<Field>{Field::LandlordAddress, QT_TRANSLATE_NOOP("Words", "Address of the landlord or agent")},
    Text<Field>{Field::OwnerName, QT_TRANSLATE_NOOP("Words", "Name of the home owner")},
    Text<Field>{Field::ApplianceChecked,
                QT_TRANSLATE_NOOP("Words", "An appliance that was inspected or looked at")},
    Text<Field>{Field::ApplianceKind, QT_TRANSLATE_NOOP("Words", "Kind of the appliance")},
    Text<Field>{Field::ApplianceMake, QT_TRANSLATE_NOOP("Words", "Make of the appliance")},
    Text<Field>{Field::ApplianceModel, QT_TRANSLATE_NOOP("Words", "Model of the appliance")},
    Text<Field>{Field::ApplianceSerial, QT_TRANSLATE_NOOP("Words", "Serial number of the appliance")},
    Text<Field>{Field::AppliancePlace, QT_TRANSLATE_NOOP("Words", "Where the appliance is")},
    Text<Field>{Field::ApplianceFlue, QT_TRANSLATE_NOOP("Words", "Kind of flue")},
    Text<Field>{Field::AnalyserSerial, QT_TRANSLATE_NOOP("Words", "Analyser's serial number")},
    Text<Field>{Field::AnalyserCalibration, QT_TRANSLATE_NOOP("Words", "Analyser's calibration date")},
    Text<Field>{Field::RoomNamed, QT_TRANSLATE_NOOP("Words", "A room")},
    Text<Field>{Field::SituationDanger,
                QT_TRANSLATE_NOOP("Words", "Immediately dangerous or at risk, as the engineer decides")},
    Text<Field>{Field::SituationWhat, QT_TRANSLATE_NOOP("Words", "What is wrong")},
    Text<Field>{Field::SituationWhere, QT_TRANSLATE_NOOP("Words", "Where it is")},
    Text<Field>{Field::InstrumentSerials, QT_TRANSLATE_NOOP("Words", "Serial numbers of all instruments")},
    Text<Field>{Field::InstrumentDates, QT_TRANSLATE_NOOP("Words", "Calibration dates of all instruments")},
    Text<Field>{Field::RecipientAddress, QT_TRANSLATE_NOOP("Words", "Address of whom the letter goes to")},
};
constexpr std::array kRecordKinds{
    Text<RecordKind>{RecordKind::TightnessAndPurge,
                     QT_TRANSLATE_NOOP("Words", "Gas tightness and purge record")},
    Text<RecordKind>{RecordKind::LandlordSafety, QT_TRANSLATE_NOOP("Words", "Landlord's gas safety record")},
    Text<RecordKind>{RecordKind::OwnerSafety, QT_TRANSLATE_NOOP("Words", "Home owner's gas safety record")},
    Text<RecordKind>{RecordKind::Commissioning,
                     QT_TRANSLATE_NOOP("Words", "Installation and commissioning record")},
    Text<RecordKind>{RecordKind::Service, QT_TRANSLATE_NOOP("Words", "Service and maintenance record")},
    Text<RecordKind>{RecordKind::LargerPipework,
                     QT_TRANSLATE_NOOP("Words", "Strength, tightness and purge record, larger pipework")},
    Text<RecordKind>{RecordKind::WarningNotice, QT_TRANSLATE_NOOP("Words", "Warning notice")},
    Text<RecordKind>{RecordKind::RoomInvestigation,
                     QT_TRANSLATE_NOOP("Words", "Report on carbon monoxide or fumes in a room")},
    Text<RecordKind>{RecordKind::ReportableEntry,
                     QT_TRANSLATE_NOOP("Words", "Entry of a reportable gas incident, RIDDOR 11(2)")},
    Text<RecordKind>{RecordKind::BuildingNotice,
                     QT_TRANSLATE_NOOP("Words", "Notification under the building regulations")},
    Text<RecordKind>{RecordKind::CalibrationLog,
                     QT_TRANSLATE_NOOP("Words", "Calibration log of the instruments")},
    Text<RecordKind>{RecordKind::ReminderLetter, QT_TRANSLATE_NOOP("Words", "Reminder that a check is due")},
    Text<RecordKind>{RecordKind::NoAccessLetter, QT_TRANSLATE_NOOP("Words", "Letter after no access")},
    Text<RecordKind>{RecordKind::CoveringLetter, QT_TRANSLATE_NOOP("Words", "Letter with a record")},
};

}  // namespace

QString Words::volumeBasis(VolumeBasis basis) const {
    return say(textOf(kBases, basis));
}
QString Words::role(RoleKind role) const {
    return say(textOf(kRoles, role));
}
QString Words::country(Country country) const {
    return say(textOf(kCountries, country));
}
QString Words::partyKind(PartyKind kind) const {
    return say(textOf(kPartyKinds, kind));
}
QString Words::instrumentKind(InstrumentKind kind) const {
    return say(textOf(kInstruments, kind));
}
QString Words::tubeFamily(TubeFamily family) const {
    return say(textOf(kFamilies, family));
}
QString Words::field(Field field) const {
    return say(textOf(kFields, field));
}

QString Words::tube(const pipework::Tube& tube) const {
    if (tube.family == TubeFamily::Corrugated) {
        return tube.nominal > 0
                   ? say(QT_TRANSLATE_NOOP("Words", "Corrugated DN %1"), {QString::number(tube.nominal)})
                   : say(QT_TRANSLATE_NOOP("Words", "Corrugated, size not said"));
    }
    return tubeFamily(tube.family) + u' ' +
           QString::fromUtf8(tube.label.data(), static_cast<qsizetype>(tube.label.size()));
}

QString Words::meter(const pipework::Meter& meter) const {
    if (meter.kind == pipework::MeterKind::None) {
        return say(QT_TRANSLATE_NOOP("Words", "No meter in this part"));
    }
    if (meter.kind == pipework::MeterKind::Other) {
        return say(QT_TRANSLATE_NOOP("Words", "Another meter"));
    }
    return QString::fromUtf8(meter.label.data(), static_cast<qsizetype>(meter.label.size()));
}

QString Words::recordKind(record::RecordKind kind) const {
    return say(textOf(kRecordKinds, kind));
}

QString Words::missing(const record::Missing& missing) const {
    const QString what = missing.item    ? item(*missing.item)
                         : missing.field ? field(*missing.field)
                                         : QString();
    return missing.unreadable ? say(QT_TRANSLATE_NOOP("Words", "%1: typed, but can't be used"), {what})
                              : say(QT_TRANSLATE_NOOP("Words", "%1: not entered"), {what});
}

QString Words::wantedBy(const record::Missing& missing) const {
    const QString source = missing.source == "common practice"
                               ? provenance(rulebook::Provenance::CommonPractice)
                               : qstring(missing.source);
    return say(QT_TRANSLATE_NOOP("Words", "wanted by: %1"), {source});
}

}  // namespace hearth::ui::words
