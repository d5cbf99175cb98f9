// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/judging/judge.h"
#include "core/register/visit_file.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace hearth::record {

/// Kinds of record. The code (kindCode) is what files hold.
enum class RecordKind {
    TightnessAndPurge,
    LandlordSafety,     // regulation 36(3)(c)
    OwnerSafety,        // a home owner's or occupier's check
    Commissioning,      // installation and commissioning of appliances
    Service,            // service and maintenance of appliances
    LargerPipework,     // strength, tightness and purge beyond the small domestic
    WarningNotice,      // of the unsafe situations that a visit found
    RoomInvestigation,  // carbon monoxide or fumes in a room
    ReportableEntry,    // what is to be reported under RIDDOR 11(2)
    BuildingNotice,     // notifiable work: the 30 and the 5 days
    CalibrationLog,     // of the firm's instruments
    ReminderLetter,
    NoAccessLetter,
    CoveringLetter,
};

[[nodiscard]] std::span<const RecordKind> allKinds();
[[nodiscard]] constexpr bool isLetter(RecordKind kind) {
    return kind == RecordKind::ReminderLetter || kind == RecordKind::NoAccessLetter ||
           kind == RecordKind::CoveringLetter;
}
[[nodiscard]] std::string_view kindCode(RecordKind kind);
[[nodiscard]] std::optional<RecordKind> kindFromCode(std::string_view code);

/// The kinds that a visit can issue: those that its kinds of visit call for, a notice where it found an
/// unsafe situation, an entry where one is to be reported. A visit that says no kind is one of pipework.
[[nodiscard]] std::vector<RecordKind> kindsOf(const reg::VisitFile& file);

/// Fields of the register that a record needs, beside the items of the visit.
enum class Field {
    FirmName,
    FirmAddress,
    FirmRegistration,
    PremisesAddress,
    PremisesPostcode,
    CustomerName,
    EngineerName,
    EngineerCard,
    InstallationGas,
    InstallationMeter,
    InstrumentSerial,
    InstrumentCalibration,
    PipeOrVolume,
    PipeOrder,
    VisitDate,
    LandlordName,  // of the landlord, or of the agent
    LandlordAddress,
    OwnerName,         // of the home owner, or of the customer
    ApplianceChecked,  // one appliance at least that was inspected, or looked at
    ApplianceKind,
    ApplianceMake,
    ApplianceModel,
    ApplianceSerial,
    AppliancePlace,
    ApplianceFlue,
    AnalyserSerial,
    AnalyserCalibration,
    RoomNamed,  // one room at least
    SituationDanger,
    SituationWhat,
    SituationWhere,
    InstrumentSerials,  // of all the firm's instruments
    InstrumentDates,
    RecipientAddress,  // of whom a letter goes to
};
[[nodiscard]] std::string_view fieldCode(Field field);

/// Something that a record of this kind needs and that is not there (or can't be read): where to go, and who
/// wants it.
struct Missing {
    std::optional<reg::Item> item;  // one of the two is set
    std::optional<Field> field;
    reg::SubjectRef subject;
    std::string source;       // which source wants it: proper names, untranslated; or "common practice"
    bool unreadable = false;  // something was typed, but it can't be used
    bool operator==(const Missing&) const = default;
};

/// On what a requirement depends. A value that was typed must be readable in any case.
enum class When {
    Always,
    WhenTyped,        // may be left out
    PartTested,       // only a part of the installation was tested
    Isolated,         // appliances were isolated for the test
    AppliancesOn,     // appliances were connected during the test
    NotStopped,       // let-by did not stop the test
    LowUnexplained,   // the test pressure was low, and no reason is given
    RetestBegun,      // something of the retest was entered
    FoundTight,       // the test was made and did not fail: gas goes on again
    Purged,           // it was purged
    PurgedWithMeter,  // it was purged, and there is a meter to read the volume from
    PurgedToFlame,    // it was purged, and there are appliances to burn the gas
    ElectronicGauge,  // the gauge is electronic
    // of an appliance
    Seen,            // inspected or looked at, or found capped
    Inspected,       // inspected, not only looked at
    NotInspected,    // neither
    Unpressured,     // inspected, and neither operating pressure nor heat input was read
    OtherReason,     // the same, for a reason in words
    DefectFound,     // a safety defect was found
    CombustionRead,  // CO was read in its flue gas
    Boiler,          // it heats water for a system
    Condensing,      // it makes condensate
    Adjusted,        // its combustion was adjusted
    Breakdown,       // it was serviced for a fault
    // of a visit
    AnalyserUsed,  // CO was read in some flue gas
    NewWork,       // notifiable work: an appliance is new or a replacement
    // of a room
    CoAlarmThere,
    SmokeAlarmThere,
    // of a situation
    MadeSafe,
    LabelFixed,
    PermissionRefused,
    SignedFor,
    CopyLeft,
    Told,
    Reportable,
};

/// What a kind wants, as data: each with its source.
struct Requirement {
    std::optional<reg::Item> item;
    std::optional<Field> field;
    std::string_view source;
    When when = When::Always;
};
[[nodiscard]] std::span<const Requirement> requirementsOf(RecordKind kind);
/// What only some kinds of appliance are asked beside it (a vehicle's cylinders, a kitchen's interlock, how
/// it is capped). Blank forms have no place for it.
[[nodiscard]] std::span<const Requirement> requirementsOfSomeKinds(RecordKind kind);
/// Whether a requirement is asked of that subject as the visit stands: what it depends on holds. What may be
/// left out is asked of nobody.
[[nodiscard]] bool isAsked(const Requirement& wanted, const reg::SubjectRef& on, const reg::VisitFile& file,
                           const std::vector<judging::Judged>& findings);

/// The tests that a record speaks of: those with something entered; with none such, the first.
[[nodiscard]] std::vector<reg::SubjectRef> testsFor(const reg::VisitFile& file);
/// The appliances that a record of the kind speaks of. A safety record accounts for every one that stands
/// there; a commissioning or service record speaks of those that were commissioned or serviced.
[[nodiscard]] std::vector<reg::Appliance> appliancesFor(RecordKind kind, const reg::VisitFile& file);

/// A test of which nothing was entered: it was not made, and a record says nothing of it.
[[nodiscard]] bool isEmptyTest(const reg::VisitFile& file, reg::TestId test);

/// Let-by was found, so that the test went no further.
[[nodiscard]] bool stoppedByLetBy(const std::vector<judging::Judged>& findings, const reg::SubjectRef& test);
/// The test, or its repeat with appliances isolated, failed: the gas stays off.
[[nodiscard]] bool foundLeaking(const std::vector<judging::Judged>& findings, const reg::SubjectRef& test);

/// The engineer said that it was put right at once; one that was only made safe is not.
[[nodiscard]] bool isPutRight(const reg::VisitFile& file, const reg::Situation& situation);
/// There are some, and each was.
[[nodiscard]] bool isAllPutRight(const reg::VisitFile& file);

/// What a record of the visit says as a whole: the outcome of the last test that was made, for it is how the
/// installation was left (a test that failed before the work and one that passed after it make a pass, and
/// both stand in the record).
[[nodiscard]] rulebook::Outcome outcomeOf(const reg::VisitFile& file,
                                          const std::vector<judging::Judged>& findings);
/// The same of a record of that kind. Whether an appliance is safe to use is what its engineer declared,
/// never worked out: one declared not safe fails the record, one that was not inspected, only looked at, not
/// yet declared or left with a defect makes it "look again", and so does a finding that says so; a finding
/// that fails, fails it whatever was declared.
[[nodiscard]] rulebook::Outcome outcomeOf(RecordKind kind, const reg::VisitFile& file,
                                          const std::vector<judging::Judged>& findings);
/// The findings that a record shows: not those of a test that was added and left empty.
[[nodiscard]] std::vector<judging::Judged> shownFindings(const reg::VisitFile& file,
                                                         const std::vector<judging::Judged>& findings);

/// What is missing, in the order of the sheet. Empty: the record may be issued. Which requirements apply
/// depends on the visit (no purge method when no purge was needed; no end reading when let-by stopped the
/// test). A test that was added and left empty beside another asks for nothing.
[[nodiscard]] std::vector<Missing> missingFor(RecordKind kind, const reg::VisitFile& file,
                                              const std::vector<judging::Judged>& findings);

}  // namespace hearth::record
