// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/doings.h"
#include "core/register/gauge_trace.h"
#include "core/register/hand_signature.h"

#include <optional>
#include <span>
#include <vector>

namespace hearth::reg {

/// Everything that judging and a record need of one visit, read in one go: a value, so that judging is a pure
/// function.
struct VisitFile {
    Firm firm;
    Visit visit;
    Premises premises;
    Installation installation;
    std::vector<PipeSection> pipes;  // in list order
    std::vector<Test> tests;         // in order
    std::vector<Entry> entries;
    std::vector<Engineer> engineers;  // of the firm
    std::vector<Instrument> instruments;
    struct Holder {
        RoleKind role = RoleKind{};
        Party party;
        bool operator==(const Holder&) const = default;
    };
    std::vector<Holder> people;                       // roles on the premises
    std::vector<EmergencyContact> emergencyContacts;  // the firm's own numbers to ring
    /// Those that stand in the installation, and whatever else the visit says something of; in their order.
    std::vector<Appliance> appliances;
    /// Unsafe situations that the visit found or says something of, as they were found.
    std::vector<Situation> situations;
    /// For the next record of each kind: what was signed for one that was issued is that one's alone.
    std::vector<HandSignature> signatures;
    /// What gauges saw of the tests, in the order they were kept, without the readings.
    std::vector<GaugeTrace> traces;

    [[nodiscard]] const Entry* find(const SubjectRef& subject, Item item) const;
    /// The canonical choice code of an entry; empty when absent or unreadable.
    [[nodiscard]] std::string_view choiceOf(const SubjectRef& subject, Item item) const;
    [[nodiscard]] const Instrument* instrument(InstrumentId id) const;
    /// The gauge of a test: its TestGauge entry.
    [[nodiscard]] const Instrument* gaugeOf(TestId test) const;
    /// The instrument that an entry of the kind Instrument names.
    [[nodiscard]] const Instrument* instrumentOf(const SubjectRef& subject, Item item) const;
    [[nodiscard]] bool hasEntries(const SubjectRef& subject) const;
    /// The rooms that something is said of, in the order in which they were made.
    [[nodiscard]] std::vector<SubjectRef> rooms() const;
    /// The readings of CO in rooms: subjects of their own, each with a time, a place and a figure.
    [[nodiscard]] std::vector<SubjectRef> roomReadings() const;
    /// The trace that a test goes by: the newest, whatever was watched beside it. Null: it has none.
    [[nodiscard]] const GaugeTrace* traceOf(TestId test) const;
    /// What a second gauge saw beside that one. Null: there was none.
    [[nodiscard]] const GaugeTrace* traceBeside(GaugeTraceId id) const;
    [[nodiscard]] const Engineer* engineer() const;
    [[nodiscard]] const Party* holder(RoleKind role) const;
};

}  // namespace hearth::reg
