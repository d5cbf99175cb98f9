// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/visit_file.h"

#include <cstdint>
#include <string>
#include <vector>

/// A visit with everything in it, for tests to take things out of: the common-practice case (let-by steady at
/// about 9 mbar falling a hundredth or two, settled at about 20.5, a fall of 0.04 in two minutes on an
/// existing domestic installation, an electronic gauge with two decimals). Common practice, no source.
namespace hearth::testing {

[[nodiscard]] inline UuidBytes sampleBytes(std::uint8_t last) {
    UuidBytes bytes{};
    bytes[6] = 0x70;  // version 7, so that texts of it are read back
    bytes[8] = 0x80;
    bytes[15] = last;
    return bytes;
}

/// Puts an entry in (replacing the one that is there), with its canonical form as the store would.
inline void enter(reg::VisitFile& file, const reg::SubjectRef& subject, reg::Item item,
                  const std::string& text) {
    std::erase_if(file.entries, [&](const reg::Entry& e) { return e.subject == subject && e.item == item; });
    reg::Entry entry;
    entry.id = reg::EntryId{sampleBytes(static_cast<std::uint8_t>(100 + file.entries.size()))};
    entry.visit = file.visit.id;
    entry.subject = subject;
    entry.item = item;
    entry.text = text;
    const auto units = quantity::unitsOf(reg::infoOf(item).units);
    entry.unit = units.empty() ? quantity::UnitCode::None : units.front();
    entry.canonical = reg::canonicalOf(item, text).value_or(std::string());
    file.entries.push_back(entry);
}

inline void takeOut(reg::VisitFile& file, const reg::SubjectRef& subject, reg::Item item) {
    std::erase_if(file.entries, [&](const reg::Entry& e) { return e.subject == subject && e.item == item; });
}

struct SampleEntry {
    reg::Item item;
    const char* text;
};

[[nodiscard]] inline std::vector<SampleEntry> sampleVisitEntries() {
    using reg::Item;
    return {{Item::SmellOnArrival, "no"},
            {Item::SafeToTouch, "safe"},
            {Item::OpenEnds, "none_seen"},
            {Item::VisualInspection, "sound"},
            {Item::SignedByEngineer, "A. Sampleton"}};
}

[[nodiscard]] inline std::vector<SampleEntry> sampleTestEntries() {
    using reg::Item;
    return {{Item::TestEdition, "ed4"},        {Item::TestWork, "existing"},
            {Item::TestExtent, "whole"},       {Item::TestAppliances, "connected"},
            {Item::TestPilots, "none_fitted"}, {Item::TestGaugeZeroed, "yes"},
            {Item::TestSmell, "no"},           {Item::LetByStart, "9.03"},
            {Item::LetByEnd, "9.01"},          {Item::LetByStartedAt, "09:40"},
            {Item::LetByEndedAt, "09:41"},     {Item::SettleStart, "20.52"},
            {Item::SettleEnd, "20.50"},        {Item::SettleStartedAt, "09:42"},
            {Item::SettleEndedAt, "09:43"},    {Item::TightStart, "20.50"},
            {Item::TightEnd, "20.46"},         {Item::TightStartedAt, "09:43"},
            {Item::TightEndedAt, "09:45"},     {Item::PurgeDone, "not_needed"},
            {Item::TestPointProved, "yes"},    {Item::DisturbedJointsProved, "none_disturbed"},
            {Item::FluidWiped, "yes"}};
}

inline void addSampleRegister(reg::VisitFile& file) {
    file.firm.name = "Sampleton Gas";
    file.firm.address = {"1 Yard Lane", "", "Nowhere Cross", "QX1 1AA"};
    file.firm.registrationNumber = "000001";
    file.premises.id = reg::PremisesId{sampleBytes(1)};
    file.premises.address = {"2 Thistle Row", "", "Nowhere Cross", "QX1 1AB"};
    file.installation.id = reg::InstallationId{sampleBytes(2)};
    file.installation.premises = file.premises.id;
    file.installation.meterCode = "u6_g4";
    reg::PipeSection pipe;
    pipe.id = reg::PipeSectionId{sampleBytes(3)};
    pipe.installation = file.installation.id;
    pipe.tubeCode = "copper_15";
    pipe.length = {"9", quantity::UnitCode::Metre};
    pipe.leadsTo = "boiler";
    file.pipes = {pipe};
    reg::Engineer engineer;
    engineer.id = reg::EngineerId{sampleBytes(4)};
    engineer.name = "A. Sampleton";
    engineer.cardNumber = "0000001";
    file.engineers = {engineer};
    reg::Instrument gauge;
    gauge.id = reg::InstrumentId{sampleBytes(5)};
    gauge.name = "gauge no. 2";
    gauge.serial = "S-0042";
    gauge.resolution = {"0.01", quantity::UnitCode::Millibar};
    gauge.accuracy = {"0.3", quantity::UnitCode::Millibar};
    gauge.calibrationDue =
        calendar::Date{std::chrono::year{2027}, std::chrono::month{6}, std::chrono::day{1}};
    file.instruments = {gauge};
    reg::VisitFile::Holder customer{reg::RoleKind::Customer, {}};
    customer.party.id = reg::PartyId{sampleBytes(6)};
    customer.party.name = "B. Placeholder";
    file.people = {customer};
}

/// The visit on `date` with one test.
[[nodiscard]] inline reg::VisitFile sampleVisit(calendar::Date date = {std::chrono::year{2026},
                                                                       std::chrono::month{11},
                                                                       std::chrono::day{25}}) {
    reg::VisitFile file;
    addSampleRegister(file);
    file.visit.id = reg::VisitId{sampleBytes(7)};
    file.visit.premises = file.premises.id;
    file.visit.installation = file.installation.id;
    file.visit.date = date;
    file.visit.engineer = file.engineers[0].id;
    reg::Test test;
    test.id = reg::TestId{sampleBytes(8)};
    test.visit = file.visit.id;
    file.tests = {test};
    for (const auto& entry : sampleVisitEntries()) {
        enter(file, reg::subject(file.visit.id), entry.item, entry.text);
    }
    for (const auto& entry : sampleTestEntries()) {
        enter(file, reg::subject(test.id), entry.item, entry.text);
    }
    enter(file, reg::subject(test.id), reg::Item::TestGauge, file.instruments[0].id.text());
    return file;
}

}  // namespace hearth::testing
