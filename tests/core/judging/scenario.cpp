// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/judging/scenario.h"

#include <algorithm>
#include <stdexcept>

namespace hearth::judging::scenario {

using reg::Item;
using rulebook::Edition;
using rulebook::RuleBook;

namespace {

template <class IdType>
IdType idOf(std::uint8_t number) {
    IdType id;
    id.bytes.fill(number);
    return id;
}

quantity::Typed typed(const char* text, quantity::UnitCode unit) {
    return {text, unit};
}

calendar::Date day(std::string_view iso) {
    return calendar::fromIso(iso).value();
}

reg::PipeSection pipe(std::uint8_t number, const char* tube, const char* metres) {
    reg::PipeSection section;
    section.id = idOf<reg::PipeSectionId>(number);
    section.tubeCode = tube;
    section.length = typed(metres, quantity::UnitCode::Metre);
    return section;
}

reg::Instrument gauge() {
    reg::Instrument instrument;
    instrument.id = idOf<reg::InstrumentId>(9);
    instrument.kind = reg::InstrumentKind::ElectronicGauge;
    instrument.resolution = typed("0.01", quantity::UnitCode::Millibar);
    instrument.accuracy = typed("0.2", quantity::UnitCode::Millibar);
    instrument.calibrationDue = day("2027-06-30");
    return instrument;
}

reg::VisitFile bareFile(std::string_view isoDate) {
    reg::VisitFile file;
    file.visit.id = idOf<reg::VisitId>(1);
    file.visit.date = day(isoDate);
    reg::Test test;
    test.id = idOf<reg::TestId>(2);
    test.visit = file.visit.id;
    file.tests = {test};
    file.installation.meterCode = "u6_g4";
    file.installation.operatingPressure = typed("21", quantity::UnitCode::Millibar);
    file.installation.supplyPressure = typed("75", quantity::UnitCode::Millibar);
    file.pipes = {pipe(3, "copper_22", "6"), pipe(4, "copper_15", "9")};
    file.instruments = {gauge()};
    return file;
}

struct Line {
    Item item;
    const char* text;
};

constexpr Line kBeforeAndHow[] = {
    {Item::VisualInspection, "sound"},   {Item::SmellOnArrival, "no"},
    {Item::OpenEnds, "none_seen"},       {Item::SafeToTouch, "safe"},
    {Item::TestWork, "existing"},        {Item::TestExtent, "whole"},
    {Item::TestAppliances, "connected"}, {Item::TestPilots, "out"},
    {Item::TestGaugeZeroed, "yes"},      {Item::TestSmell, "no"},
};
constexpr Line kStages[] = {
    {Item::LetByStart, "9.03"},          {Item::LetByEnd, "9.01"},
    {Item::LetByStartedAt, "09:40:00"},  {Item::LetByEndedAt, "09:41:00"},
    {Item::SettleStart, "20.58"},        {Item::SettleEnd, "20.53"},
    {Item::SettleStartedAt, "09:42:00"}, {Item::SettleEndedAt, "09:43:00"},
    {Item::TightStart, "20.53"},         {Item::TightEnd, "20.49"},
    {Item::TightStartedAt, "09:43:10"},  {Item::TightEndedAt, "09:45:10"},
    {Item::SecondDisplayStart, "20.54"}, {Item::SecondDisplayEnd, "20.50"},
};
constexpr Line kAfterwards[] = {
    {Item::PurgeDone, "yes"},           {Item::PurgeMethod, "open_burner"},
    {Item::PurgeVolumePassed, "0.012"}, {Item::PurgeSteadyFlame, "yes"},
    {Item::TestPointProved, "yes"},     {Item::DisturbedJointsProved, "none_disturbed"},
    {Item::FluidWiped, "yes"},          {Item::StandingPressure, "22.4"},
    {Item::WorkingPressure, "20.3"},
};

reg::SubjectRef subjectOf(const reg::VisitFile& file, Item item) {
    return reg::infoOf(item).subject == reg::SubjectKind::Visit ? reg::subject(file.visit.id)
                                                                : reg::subject(file.tests.front().id);
}

rulebook::FirmEntry confirmed(const RuleBook& book, const rulebook::Entry& entry) {
    auto value = entry.value;
    if (!entry.isKnown()) {
        value = book.find({entry.key.rule, Edition::Up1bEd3, entry.key.gas})->value;
    }
    return {entry.key, value, "Ada Marlow", day("2026-03-02"), "invented copy"};
}

}  // namespace

RuleBook confirmedBook() {
    auto book = RuleBook::shipped();
    const auto shipped = book;
    for (const auto& entry : shipped.entries()) {
        if (entry.daily && !book.lay(confirmed(shipped, entry))) {
            throw std::logic_error("a daily entry can't be confirmed");
        }
    }
    return book;
}

reg::VisitFile commonPractice(std::string_view isoDate, std::string_view edition) {
    auto file = bareFile(isoDate);
    for (const auto& [item, text] : kBeforeAndHow) {
        enter(file, item, text);
    }
    for (const auto& [item, text] : kStages) {
        enter(file, item, text);
    }
    for (const auto& [item, text] : kAfterwards) {
        enter(file, item, text);
    }
    enter(file, Item::TestEdition, edition);
    enter(file, Item::TestGauge, file.instruments.front().id.text());
    return file;
}

void enter(reg::VisitFile& file, Item item, std::string_view text) {
    removeItem(file, item);
    if (text.empty()) {
        return;
    }
    reg::Entry entry;
    entry.visit = file.visit.id;
    entry.subject = subjectOf(file, item);
    entry.item = item;
    entry.text = text;
    const auto family = reg::infoOf(item).units;
    entry.unit =
        family == quantity::UnitFamily::None ? quantity::UnitCode::None : quantity::unitsOf(family).front();
    entry.canonical = reg::canonicalOf(item, entry.text).value_or("");
    file.entries.push_back(entry);
}

void removeItem(reg::VisitFile& file, Item item) {
    const auto subject = subjectOf(file, item);
    file.entries.erase(
        std::remove_if(file.entries.begin(), file.entries.end(),
                       [&](const auto& entry) { return entry.item == item && entry.subject == subject; }),
        file.entries.end());
}

const Judged* findingOf(const std::vector<Judged>& judged, rulebook::FindingKind kind) {
    const auto found =
        std::find_if(judged.begin(), judged.end(), [&](const auto& one) { return one.finding.kind == kind; });
    return found == judged.end() ? nullptr : &*found;
}

std::optional<rulebook::Outcome> outcomeOf(const std::vector<Judged>& judged, rulebook::FindingKind kind) {
    const auto* found = findingOf(judged, kind);
    return found == nullptr ? std::nullopt : std::optional(found->finding.outcome);
}

std::optional<rulebook::Outcome> outcomeOf(const reg::VisitFile& file, const RuleBook& book,
                                           rulebook::FindingKind kind) {
    return outcomeOf(judge(file, book), kind);
}

rulebook::Outcome overallOf(const reg::VisitFile& file, const RuleBook& book) {
    return overall(judge(file, book));
}

}  // namespace hearth::judging::scenario
