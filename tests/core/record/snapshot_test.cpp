// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/snapshot.h"

#include "tests/core/record/sample_visit.h"
#include "tests/support/files.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace hearth::record {
namespace {

using hearth::testing::readFile;
using hearth::testing::runCommand;
using hearth::testing::sampleVisit;
using hearth::testing::TempDir;
using hearth::testing::writeFile;
using quantity::Decimal;
using quantity::UnitCode;
using rulebook::Outcome;

/// Findings with every shape of value and argument, so that none is lost on the way.
judging::Judged fullFinding(const reg::VisitFile& file) {
    const auto day = calendar::Date{std::chrono::year(2026), std::chrono::month(11), std::chrono::day(25)};
    rulebook::Entry entry;
    entry.key = {rulebook::Rule::DropByVolume, rulebook::Edition::Up1bEd4, rulebook::Gas::NaturalGas};
    entry.value = std::vector<rulebook::Band>{{Decimal(10, 3), Decimal(40, 1)}};
    entry.provenance = rulebook::Provenance::Firm;
    entry.standard = "IGEM/UP/1B";
    entry.confirmedBy = "A. Sampleton";
    entry.confirmedOn = day;
    entry.appliesFrom = day;
    rulebook::Finding finding{rulebook::FindingKind::Tightness, Outcome::Pass, {}, {}, {}, {}, {}, {}};
    finding.measured = quantity::Figure{Decimal(4, 2), UnitCode::Millibar};
    finding.limit = quantity::Figure{Decimal(20, 2), UnitCode::Millibar};
    finding.why = {rulebook::Say::TightNoMovement,
                   {quantity::Figure{Decimal(4, 2), UnitCode::Millibar}, day, rulebook::Edition::Up1bEd4,
                    rulebook::Gas::Propane, std::string("text")}};
    finding.notes = {rulebook::Sentence{rulebook::Say::LimitFromMemory, {}}};
    finding.limits = {entry};
    return {finding, reg::subject(file.tests.front().id), {reg::Item::TightStart, reg::Item::TightEnd}};
}

Snapshot fullSnapshot() {
    Snapshot snapshot;
    snapshot.file = sampleVisit();
    snapshot.document.title = "Gas tightness and purge record";
    snapshot.document.blocks = {Paragraph{"Remarks", "Llŷr said \"no\"\n", false}};
    snapshot.findings = {fullFinding(snapshot.file)};
    snapshot.outcome = Outcome::Pass;
    snapshot.reason = "serial mistyped";
    snapshot.supersedes = "0197";
    return snapshot;
}

TEST(Snapshot, isTheSameBytesForTheSameThing) {
    auto shuffled = fullSnapshot();
    std::reverse(shuffled.file.entries.begin(), shuffled.file.entries.end());
    EXPECT_EQ(canonicalJson(shuffled), canonicalJson(fullSnapshot()));
}

// Read, sorted and written anew by Python's json module, it is the same bytes: sorted keys, no blanks, UTF-8.
// And no number but in text.
TEST(Snapshot, isCanonicalToAnotherProgram) {
    const TempDir folder;
    writeFile(folder / "snapshot.json", canonicalJson(fullSnapshot()));
    writeFile(folder / "check.py",
              "import json, sys\n"
              "raw = open(sys.argv[1], 'rb').read()\n"
              "def refuse(text): raise ValueError('a number: ' + text)\n"
              "data = json.loads(raw, parse_float=refuse, parse_int=refuse)\n"
              "again = json.dumps(data, sort_keys=True, separators=(',', ':'), ensure_ascii=False).encode()\n"
              "print('same' if again == raw else again.decode())\n");
    const auto checked = runCommand("python3 " + (folder / "check.py").string() + " " +
                                    (folder / "snapshot.json").string() + " 2>&1");
    EXPECT_EQ(checked.text, "same\n");
}

TEST(Snapshot, hasTheDigestThatSha256sumGives) {
    const TempDir folder;
    writeFile(folder / "snapshot.json", canonicalJson(fullSnapshot()));
    const auto summed = runCommand("sha256sum " + (folder / "snapshot.json").string());
    EXPECT_EQ(summed.text.substr(0, 64), sha256(canonicalJson(fullSnapshot())));
}

TEST(Snapshot, givesItsDocumentAndStandingBack) {
    const Snapshot snapshot = fullSnapshot();
    const auto json = canonicalJson(snapshot);
    EXPECT_EQ(documentFromJson(json), snapshot.document);
    const auto standing = standingFromJson(json);
    ASSERT_TRUE(standing);
    EXPECT_EQ(*standing, standingOf(snapshot));
    EXPECT_EQ(standing->visit, snapshot.file.visit.id);
    EXPECT_EQ(standing->premises, snapshot.file.premises.id);
    EXPECT_EQ(standing->address, "2 Thistle Row, Nowhere Cross, QX1 1AB");
    EXPECT_EQ(standing->customer, "B. Placeholder");
    EXPECT_EQ(standing->outcome, Outcome::Pass);
    EXPECT_EQ(standing->reason, "serial mistyped");
    EXPECT_FALSE(standingFromJson("{}"));
}

TEST(Snapshot, holdsEveryEntryAsTyped) {
    const Snapshot snapshot = fullSnapshot();
    const auto json = canonicalJson(snapshot);
    for (const auto& entry : snapshot.file.entries) {
        EXPECT_NE(json.find("\"item\":\"" + std::string(reg::infoOf(entry.item).code) + "\""),
                  std::string::npos);
        EXPECT_NE(json.find("\"text\":\"" + entry.text + "\""), std::string::npos) << entry.text;
    }
    for (const char* said :
         {"\"value\":\"0.04\"", "\"up_to\":\"0.010\"", "\"provenance\":\"firm\"",
          "\"confirmed_on\":\"2026-11-25\"", "\"edition\":\"up1b_ed4\"", "\"serial\":\"S-0042\""}) {
        EXPECT_NE(json.find(said), std::string::npos) << said;
    }
}

TEST(Snapshot, leavesOutWhatIsNobodysBusiness) {
    Snapshot snapshot = fullSnapshot();
    snapshot.file.premises.accessNotes = "the key is under the pot";
    reg::Engineer other = snapshot.file.engineers.front();
    other.id = reg::EngineerId{hearth::testing::sampleBytes(50)};
    other.name = "Somebody Else";
    snapshot.file.engineers.push_back(other);
    reg::Instrument unused = snapshot.file.instruments.front();
    unused.id = reg::InstrumentId{hearth::testing::sampleBytes(51)};
    unused.serial = "UNUSED-9";
    snapshot.file.instruments.push_back(unused);
    EXPECT_EQ(canonicalJson(snapshot), canonicalJson(fullSnapshot()));
}

// Each change of what a record stands on changes its digest.
TEST(Snapshot, changesWithWhatItHolds) {
    std::vector<Snapshot> others(12, fullSnapshot());
    others[0].file.entries.front().text += "x";
    others[1].file.entries.front().unit = UnitCode::Kilopascal;
    others[2].file.entries.front().by = "somebody";
    others[3].file.premises.address.town += "x";
    others[4].file.installation.meterCode += "x";
    others[5].file.pipes.front().length.text += "0";
    others[6].file.people.front().party.name += "x";
    others[7].file.firm.registrationNumber += "x";
    others[8].file.instruments.front().calibrationDue.reset();
    others[9].findings.front().finding.limits.front().doubt += "x";
    others[10].outcome = Outcome::Fail;
    others[11].document.caution += "x";
    for (std::size_t i = 0; i < others.size(); ++i) {
        EXPECT_NE(canonicalJson(others[i]), canonicalJson(fullSnapshot())) << i;
    }
}

}  // namespace
}  // namespace hearth::record
