// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/faults/workload.h"

#include <sstream>

namespace hearth::store {
namespace {

using quantity::UnitCode;

/// Well mixed bits of two numbers (splitmix64, from memory): any step can be asked for without those before
/// it.
std::uint64_t mixed(unsigned seed, int number) {
    std::uint64_t x = (std::uint64_t{seed} << 32U) + static_cast<std::uint64_t>(number);
    x += 0x9E3779B97F4A7C15U;
    x = (x ^ (x >> 30U)) * 0xBF58476D1CE4E5B9U;
    x = (x ^ (x >> 27U)) * 0x94D049BB133111EBU;
    return x ^ (x >> 31U);
}

Step byLot(unsigned seed, int number) {
    constexpr std::array kOften{
        Step::Entry,  Step::Entry,        Step::Entry,  Step::Entry,    Step::Entry,    Step::Premises,
        Step::Party,  Step::Installation, Step::Pipes,  Step::Visit,    Step::Issue,    Step::Issue,
        Step::Revise, Step::Event,        Step::Rule,   Step::Engineer, Step::Together, Step::Together,
        Step::Spoil,  Step::Spoil,        Step::Backup,
    };
    return kOften.at(mixed(seed, number) % kOften.size());
}

template <class Value>
Result<void> plain(const Result<Value>& result) {
    return result ? Result<void>() : Result<void>(tl::unexpected<Error>(result.error()));
}

constexpr int kSections = 5;
int sectionsOf(int number) {
    return 1 + number % kSections;
}

}  // namespace

Step stepOf(unsigned seed, int number) {
    const Step step = byLot(seed, number);
    if (number % 2 == 0) {
        return step;
    }
    if (byLot(seed, number - 1) == Step::Spoil) {
        return Step::Undo;
    }
    return step == Step::Spoil ? Step::Entry : step;
}

std::string textOf(const Picture& picture) {
    std::string text;
    for (const int number : picture) {
        text.append(text.empty() ? "" : " ").append(std::to_string(number));
    }
    return text;
}

void Expected::take(int number) {
    const Step step = stepOf(m_seed, number);
    const bool undoes = step == Step::Undo && m_canUndo;
    m_canUndo = false;
    switch (step) {
        case Step::Spoil:
            m_entryBefore = at(Seen::Entry);
            m_canUndo = true;
            at(Seen::Entry) = number;
            return;
        case Step::Undo:
            at(Seen::Entry) = undoes ? m_entryBefore : at(Seen::Entry);
            return;
        case Step::Together:
            at(Seen::Premises) = number;
            at(Seen::Parties) += 2;
            ++at(Seen::Records);
            [[fallthrough]];
        case Step::Entry:
            at(Seen::Entry) = number;
            return;
        case Step::Premises:
            at(Seen::Premises) = number;
            return;
        case Step::Installation:
            at(Seen::Meter) = number;
            return;
        case Step::Pipes:
            at(Seen::Pipes) = sectionsOf(number);
            at(Seen::PipesBy) = number;
            return;
        case Step::Engineer:
            at(Seen::Card) = number;
            return;
        case Step::Party:
            ++at(Seen::Parties);
            return;
        case Step::Visit:
            ++at(Seen::Visits);
            return;
        case Step::Issue:
        case Step::Revise:
            ++at(Seen::Records);
            return;
        case Step::Event:
            ++at(Seen::Events);
            return;
        case Step::Rule:
            ++at(Seen::Rules);
            return;
        case Step::Backup:
            return;
    }
}

Picture Worker::pictureOf(const std::filesystem::path& store) {
    std::istringstream numbers(askSql(
        store,
        "SELECT coalesce((SELECT text FROM entries WHERE item = 'test.tight_end'), 0) || ' ' ||"
        "(SELECT CAST(line1 AS INTEGER) FROM premises) || ' ' ||"
        "(SELECT CAST(meter_serial AS INTEGER) FROM installations) || ' ' ||"
        "(SELECT count(*) FROM parties) || ' ' || (SELECT count(*) FROM pipe_sections) || ' ' ||"
        "coalesce((SELECT max(CAST(leads_to AS INTEGER)) FROM pipe_sections), 0) || ' ' ||"
        "(SELECT count(*) FROM visits JOIN tests ON tests.visit = visits.id) || ' ' ||"
        "(SELECT count(*) FROM record_headers JOIN record_snapshots AS s ON s.record = record_headers.id "
        "JOIN record_pdfs AS p ON p.record = s.record) || ' ' ||"
        "(SELECT count(*) FROM record_events) || ' ' || (SELECT count(*) FROM firm_entries) || ' ' ||"
        "(SELECT CAST(card_number AS INTEGER) FROM engineers)"));
    Picture picture{};
    for (int& number : picture) {
        numbers >> number;
    }
    if (!numbers) {
        throw std::runtime_error("no picture: " + numbers.str());
    }
    return picture;
}

Result<void> Worker::run(int number) {
    const Step step = stepOf(m_seed, number);
    if (step == Step::Undo) {
        return plain(m_store.undo());
    }
    if (step == Step::Backup) {
        return m_store.backUp(m_backup);
    }
    const auto file = m_store.visitFile(m_visit);
    return file ? change(step, number, *file) : plain(file);
}

Result<void> Worker::change(Step step, int number, const reg::VisitFile& file) {
    auto [premises, installation, visit] = std::tuple(file.premises, file.installation, file.visit);
    switch (step) {
        case Step::Premises:
            premises.address.line1 = std::to_string(number) + " Highcroft Rise";
            return m_store.save(premises);
        case Step::Party: {
            reg::Party party;
            party.id = {m_store.newId()};
            party.name = "Person " + std::to_string(number);
            return m_store.save(party);
        }
        case Step::Installation:
            installation.meterSerial = std::to_string(number);
            return m_store.save(installation);
        case Step::Pipes:
            return layPipes(number, file);
        case Step::Visit:
            visit.id = {};
            return plain(m_store.startVisit(visit));
        case Step::Issue:
        case Step::Revise:
            return issue(number, step == Step::Revise);
        case Step::Event:
            return note();
        case Step::Rule:
            return rule(number);
        case Step::Engineer: {
            auto engineer = valueOf(m_store.engineers()).front();
            engineer.cardNumber = std::to_string(number);
            return m_store.save(engineer);
        }
        case Step::Together:
            return m_store.together([&] { return together(number, file); });
        default:
            return m_store.saveEntry(
                testEntry(file, reg::Item::TightEnd, std::to_string(number), UnitCode::Millibar));
    }
}

/// Records of all sizes, so that a file grows by a page now and by twenty then.
Result<void> Worker::issue(int number, bool isRevision) {
    auto request = requestFor(m_store, m_visit);
    if (isRevision) {
        const auto records = m_store.recordsOf(m_visit);
        if (!records) {
            return plain(records);
        }
        for (const auto& line : *records) {
            request.supersedes = line.supersededBy ? request.supersedes : line.id;
        }
        request.reason = "step " + std::to_string(number);
    }
    const std::size_t size = mixed(m_seed, number) / 64 % 60000;
    return plain(m_store.issue(
        request, [size](const auto&, const auto&) { return Result<std::string>(std::string(size, 'p')); }));
}

Result<void> Worker::layPipes(int number, const reg::VisitFile& file) {
    std::vector<reg::PipeSection> sections;
    for (int i = 0; i < sectionsOf(number); ++i) {
        sections.push_back({{m_store.newId()},
                            file.installation.id,
                            std::nullopt,
                            i,
                            "copper_22",
                            {"3", UnitCode::Metre},
                            {},
                            std::to_string(number),
                            true});
        sections.back().fittings = "2 elbows";
        sections.back().capped = true;
    }
    return m_store.savePipes(file.installation.id, sections);
}

Result<void> Worker::together(int number, const reg::VisitFile& file) {
    for (const Step part : {Step::Party, Step::Premises, Step::Issue, Step::Party, Step::Entry}) {
        if (const auto done = change(part, number, file); !done) {
            return done;
        }
    }
    return {};
}

Result<void> Worker::note() {
    const auto records = m_store.recordsOf(m_visit);
    return records ? m_store.noteEvent(records->front().id, "printed", "") : plain(records);
}

Result<void> Worker::rule(int number) {
    const std::string value = "0." + std::to_string(100 + number % 100);
    return m_store.save(rulebook::FirmEntry{
        {rulebook::Rule::NoMovementElectronic, {}, {}},
        quantity::Figure{valueOf(quantity::Decimal::parse(value)), UnitCode::Millibar},
        "Tamsin Ember",
        calendar::Date{std::chrono::year(2026), std::chrono::month(11), std::chrono::day(25)},
        "own copy, table 5"});
}

}  // namespace hearth::store
