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
enum class RecordKind { TightnessAndPurge };

[[nodiscard]] std::string_view kindCode(RecordKind kind);
[[nodiscard]] std::optional<RecordKind> kindFromCode(std::string_view code);

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
};

/// What a kind wants, as data: each with its source.
struct Requirement {
    std::optional<reg::Item> item;
    std::optional<Field> field;
    std::string_view source;
    When when = When::Always;
};
[[nodiscard]] std::span<const Requirement> requirementsOf(RecordKind kind);

/// A test of which nothing was entered: it was not made, and a record says nothing of it.
[[nodiscard]] bool isEmptyTest(const reg::VisitFile& file, reg::TestId test);

/// Let-by was found, so that the test went no further.
[[nodiscard]] bool stoppedByLetBy(const std::vector<judging::Judged>& findings, const reg::SubjectRef& test);
/// The test, or its repeat with appliances isolated, failed: the gas stays off.
[[nodiscard]] bool foundLeaking(const std::vector<judging::Judged>& findings, const reg::SubjectRef& test);

/// What a record of the visit says as a whole: the outcome of the last test that was made, for it is how the
/// installation was left (a test that failed before the work and one that passed after it make a pass, and
/// both stand in the record).
[[nodiscard]] rulebook::Outcome outcomeOf(const reg::VisitFile& file,
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
