// SPDX-License-Identifier: GPL-3.0-or-later
// Files out of the demonstration store and in again, by the real program; the JSON is held against its schema
// by python3-jsonschema, which is not ours.
#include "app/exchange_commands.h"

#include "core/exchange/import_plan.h"
#include "core/exchange/lists.h"
#include "core/store/store.h"
#include "tests/app/program.h"
#include "ui/words/exchange_words.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace hearth::app {
namespace {

using hearth::testing::Program;
using hearth::testing::readFile;
using hearth::testing::runCommand;
using hearth::testing::writeFile;
using ::testing::HasSubstr;
using ::testing::Not;

class ExchangeCommands : public ::testing::Test {
  protected:
    static void SetUpTestSuite() {
        s_original = std::make_unique<Program>();
        const auto made = s_original->run("demonstration --into " + s_original->home().path().string());
        ASSERT_EQ(made.exitCode, 0) << made.error;
    }
    static void TearDownTestSuite() { s_original.reset(); }
    void SetUp() override {
        std::filesystem::copy_file(s_original->home() / "demonstration.hearth", m_store);
    }

    [[nodiscard]] std::string file(const char* name) const { return (m_program.home() / name).string(); }
    [[nodiscard]] Program::Run run(const std::string& line) const {
        return m_program.run(line + " --store " + m_store.string());
    }
    [[nodiscard]] std::string exported(const char* list, const char* name) const {
        const auto done = run(std::string("export ") + list + " " + file(name));
        EXPECT_EQ(done.exitCode, 0) << done.error;
        return readFile(file(name));
    }

    static std::unique_ptr<Program> s_original;
    Program m_program;
    std::filesystem::path m_store = m_program.home() / "demonstration.hearth";
};

std::unique_ptr<Program> ExchangeCommands::s_original;

const std::string kSpreadsheet =
    "Address,Town,Postcode,Landlord,Landlord tel,Boiler make,Boiler serial,Last check\r\n"
    "14 Larch Row,Thornmere,TH2 9XY,Bo Ash,0113 496 0000,Invented,S1,25/11/2025\r\n"
    "15 Larch Row,Thornmere,TH2 9XY,Bo Ash,0113 496 0000,Invented,S2,31/02/2025\r\n"
    ",,,,,,,,stray\r\n";

TEST_F(ExchangeCommands, aDryRunSaysWhatWouldHappenAndWritesNothing) {
    writeFile(file("in.csv"), kSpreadsheet);
    const std::string before = readFile(m_store.string());
    const auto dry = run("import " + file("in.csv") + " --dry-run");
    EXPECT_EQ(dry.exitCode, 0) << dry.error;
    EXPECT_THAT(dry.out, HasSubstr("Landlord tel: Landlord: telephone"));
    EXPECT_THAT(dry.out, HasSubstr("line 3: Last check: “31/02/2025” can't be read as a date."));
    EXPECT_THAT(
        dry.out,
        HasSubstr("Would be taken over: 1 new premises · 1 new person · 1 new appliance · 1 earlier check"));
    EXPECT_THAT(dry.out, HasSubstr("1 row set aside"));
    EXPECT_EQ(readFile(m_store.string()), before);
}

TEST_F(ExchangeCommands, anImportIsFoundAgainAndMeetsItself) {
    writeFile(file("in.csv"), kSpreadsheet);
    const auto done = run("import " + file("in.csv"));
    EXPECT_EQ(done.exitCode, 0) << done.error;
    EXPECT_THAT(run("visits larch").out, HasSubstr("14 Larch Row"));
    const auto again = run("import " + file("in.csv"));
    EXPECT_EQ(again.exitCode, 0) << again.error;
    EXPECT_THAT(again.out, HasSubstr("line 2: is there already (the store): fills what is empty"));
    EXPECT_THAT(again.out, Not(HasSubstr("new premises")));
    EXPECT_THAT(again.out, Not(HasSubstr("new appliance")));
    const auto blocked = run("import " + m_store.string());
    EXPECT_EQ(blocked.exitCode, 1) << "a store is no spreadsheet";
    EXPECT_EQ(run("import " + file("gone.csv")).exitCode, 3);
}

TEST_F(ExchangeCommands, anImportIsInABackupBeforeTheDayEnds) {
    writeFile(file("in.csv"), kSpreadsheet);
    reg::Firm firm;
    firm.name = "Ashcombe Heating";
    const SystemClock clock;
    ASSERT_TRUE(store::Store::create(m_program.home() / "own.hearth", firm, clock));
    const std::string own = " --store " + file("own.hearth");
    const auto dry = m_program.run("import " + file("in.csv") + " --dry-run" + own);
    EXPECT_THAT(dry.out, Not(HasSubstr("own-backups")));
    const auto done = m_program.run("import " + file("in.csv") + own);
    EXPECT_EQ(done.exitCode, 0) << done.error;
    EXPECT_THAT(done.out, HasSubstr("own-backups"));
    for (const auto& backup : std::filesystem::directory_iterator(m_program.home() / "own-backups")) {
        EXPECT_THAT(m_program.run("visits larch --store " + backup.path().string()).out,
                    HasSubstr("14 Larch Row"));
    }
}

/// What we write of premises is known again by every heading, and finds its own premises.
TEST_F(ExchangeCommands, theListOfPremisesCanBeTakenOverAgain) {
    const auto table = exchange::readCsv(exported("premises", "premises.csv"));
    const auto columns = exchange::guessColumns(table);
    EXPECT_EQ(columns.headerRow, 0U);
    std::vector<std::string> unknown;
    for (std::size_t i = 0; i < columns.targets.size(); ++i) {
        if (columns.targets[i].field == exchange::ImportField::Ignored) {
            unknown.push_back(table.rows[0].cells[i]);
        }
    }
    EXPECT_EQ(unknown, (std::vector<std::string>{"Installation", "Last visit"}))
        << "a visit is no check, and an installation is told by its MPRN";
    const auto again = run("import " + file("premises.csv") + " --dry-run");
    EXPECT_EQ(again.exitCode, 0) << again.error;
    EXPECT_THAT(again.out, Not(HasSubstr("new premises")));
    EXPECT_THAT(again.out, Not(HasSubstr("new person")));
    EXPECT_THAT(again.out, Not(HasSubstr("new people")));
}

TEST_F(ExchangeCommands, everyListIsWritten) {
    for (const auto kind : exchange::allListKinds()) {
        const std::string code(exchange::codeOf(kind));
        const auto table = exchange::readCsv(exported(code.c_str(), (code + ".csv").c_str()));
        EXPECT_EQ(table.encoding, exchange::Encoding::Utf8);
        for (const auto& row : table.rows) {
            EXPECT_EQ(row.cells.size(), table.rows.front().cells.size()) << code;
        }
        EXPECT_GT(table.rows.size(), code == "appliances" ? 0U : 1U)
            << code << ": the demonstration has no appliances";
    }
    EXPECT_THAT(exported("cards", "people.vcf"), HasSubstr("BEGIN:VCARD\r\nVERSION:4.0\r\n"));
    EXPECT_EQ(run("export colours " + file("x")).exitCode, 2);
    writeFile(file("there.csv"), "something else");
    EXPECT_EQ(run("export people " + file("there.csv")).exitCode, 3);
    EXPECT_EQ(run("export people " + file("there.csv") + " --replace").exitCode, 0);
}

std::string withoutTime(std::string json) {
    const auto at = json.find("\"written_at\"");
    return json.erase(at, json.find(',', at) - at);
}

TEST_F(ExchangeCommands, everythingComesBackWithoutLoss) {
    const std::string json = exported("everything", "all.json");
    const auto made = m_program.run("make-from " + file("all.json") + " --to " + file("copy.hearth"));
    ASSERT_EQ(made.exitCode, 0) << made.error;
    const auto again =
        m_program.run("export everything " + file("again.json") + " --store " + file("copy.hearth"));
    ASSERT_EQ(again.exitCode, 0) << again.error;
    EXPECT_EQ(withoutTime(readFile(file("again.json"))), withoutTime(json));
    const auto health = m_program.run("health " + file("copy.hearth"));
    EXPECT_EQ(health.exitCode, 0) << health.out;
    EXPECT_EQ(m_program.run("records --store " + file("copy.hearth")).out, run("records").out);
    EXPECT_EQ(m_program.run("make-from " + file("all.json") + " --to " + file("copy.hearth")).exitCode, 3)
        << "what is there is not written over";
    writeFile(file("bad.json"), json.substr(0, json.size() / 2));
    EXPECT_EQ(m_program.run("make-from " + file("bad.json") + " --to " + file("bad.hearth")).exitCode, 3);
    EXPECT_FALSE(std::filesystem::exists(file("bad.hearth")));
}

TEST_F(ExchangeCommands, everythingIsAsItsSchemaSays) {
    const std::string json = exported("everything", "all.json");
    const std::string schema = exported("schema", "schema.json");
    EXPECT_EQ(readFile(std::string(HEARTH_SOURCE_DIR) + "/resources/exchange/store.schema.json"), schema)
        << "write it anew: hearthledger export schema resources/exchange/store.schema.json --demonstration "
           "--replace";
    writeFile(file("check.py"),
              "import json, jsonschema, sys\n"
              "schema = json.load(open(sys.argv[1])); whole = json.load(open(sys.argv[2]))\n"
              "jsonschema.Draft202012Validator.check_schema(schema)\n"
              "check = jsonschema.Draft202012Validator(schema)\n"
              "print('good', [e.message for e in check.iter_errors(whole)][:3])\n"
              "whole['tables']['premises'][0]['country'] = 'france'\n"
              "print('code', sum(1 for e in check.iter_errors(whole)))\n"
              "del whole['tables']['parties'][0]['name']; whole['tables']['visits'][0]['more'] = 1\n"
              "print('more', sum(1 for e in check.iter_errors(whole)))\n");
    const auto checked = runCommand("/usr/bin/python3 '" + file("check.py") + "' '" + file("schema.json") +
                                    "' '" + file("all.json") + "' 2>&1");
    EXPECT_EQ(checked.text, "good []\ncode 1\nmore 3\n");
}

TEST(ExchangeWords, haveOneForEachCode) {
    const auto holds = [](const std::vector<std::string_view>& known, std::string_view code) {
        return std::find(known.begin(), known.end(), code) != known.end();
    };
    for (const auto problem : exchange::allImportProblems()) {
        EXPECT_TRUE(holds(ui::words::knownImportProblems(), exchange::codeOf(problem)))
            << exchange::codeOf(problem);
    }
    for (const auto field : exchange::allImportFields()) {
        EXPECT_TRUE(holds(ui::words::knownImportFields(), exchange::codeOf(field)))
            << exchange::codeOf(field);
    }
}

}  // namespace
}  // namespace hearth::app
