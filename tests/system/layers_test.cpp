// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/files.h"
#include "tests/system/fences.h"

#include <filesystem>
#include <functional>
#include <gtest/gtest.h>
#include <sstream>

namespace hearth::testing {
namespace {

using Rule = std::function<std::vector<std::string>(const SourceFile&)>;

void expectNoSlips(const std::vector<SourceFile>& files, const Rule& rule) {
    ASSERT_GT(files.size(), 5U) << "too few files: the fence looks in the wrong place";
    for (const auto& file : files) {
        for (const auto& slip : rule(file)) {
            ADD_FAILURE() << slip;
        }
    }
}

std::vector<SourceFile> program() {
    return sourceFiles({"app", "core", "ui"}, {".h", ".cpp"});
}

TEST(Layers, everyIncludeIsAllowed) {
    expectNoSlips(program(), layerSlips);
}

TEST(Layers, everyForeignHeaderIsWhereItBelongs) {
    expectNoSlips(program(), foreignHeaderSlips);
}

TEST(Layers, everyLibraryThatAFolderLinksIsAllowed) {
    expectNoSlips(sourceFiles({"app", "core", "resources", "ui"}, {"CMakeLists.txt"}), linkSlips);
}

TEST(Layers, thePrinterIsInOneFile) {
    std::vector<std::string> files;
    for (const auto& file : sourceFiles({"ui/paper"}, {".h", ".cpp"})) {
        if (includesPrinter(file)) {
            files.push_back(file.path);
        }
    }
    EXPECT_LE(files.size(), 1U) << ::testing::PrintToString(files);
}

TEST(Layers, coloursAreInLookOnly) {
    expectNoSlips(program(), colourSlips);
}

TEST(Layers, sqlIsInTheStoreOnly) {
    expectNoSlips(program(), sqlSlips);
}

TEST(Form, everyFileHasItsLicenceLineAndItsGuard) {
    expectNoSlips(sourceFiles({"app", "core", "ui", "tests", "resources"},
                              {".h", ".cpp", ".sql", ".cmake", "CMakeLists.txt", ".py", ".sh"}),
                  formSlips);
}

/// What git keeps, or what lies there when the sources came without git. Builds lie in build/, which git
/// ignores.
std::vector<std::string> namesAtTheTop() {
    const std::string root = HEARTH_SOURCE_DIR;
    std::vector<std::string> names;
    if (!std::filesystem::exists(root + "/.git")) {
        for (const auto& entry : std::filesystem::directory_iterator(root)) {
            const std::string name = entry.path().filename().string();
            if (name.substr(0, 5) != "build") {
                names.push_back(name);
            }
        }
        return names;
    }
    const auto listed = runCommand("git -c safe.directory='*' -C '" + root + "' ls-files 2>&1");
    EXPECT_EQ(listed.exitCode, 0) << listed.text;
    std::istringstream lines(listed.text);
    for (std::string line; std::getline(lines, line);) {
        names.push_back(line);
    }
    return names;
}

TEST(Form, theTopOfTheRepositoryHoldsNothingElse) {
    const auto names = namesAtTheTop();
    ASSERT_GT(names.size(), 3U);
    EXPECT_EQ(topLevelSlips(names), std::vector<std::string>{});
}

// From here on: each fence holds back a bad sample, and lets a good one pass.

struct Sample {
    std::string path;
    std::string text;
};

void expectHeldBack(const Rule& rule, const std::vector<Sample>& samples) {
    for (const auto& [path, text] : samples) {
        EXPECT_EQ(rule({path, text}).size(), 1U) << path << ":\n" << text;
    }
}

void expectLetPass(const Rule& rule, const std::vector<Sample>& samples) {
    for (const auto& [path, text] : samples) {
        EXPECT_EQ(rule({path, text}), std::vector<std::string>{}) << path << ":\n" << text;
    }
}

TEST(FenceLayers, holdsBackWhatTheTableForbids) {
    expectHeldBack(layerSlips, {
                                   {"core/base/a.h", "#include \"core/quantity/units.h\"\n"},
                                   {"core/quantity/a.cpp", "#include \"core/calendar/civil_date.h\"\n"},
                                   {"core/calendar/a.cpp", "#include \"core/quantity/units.h\"\n"},
                                   {"core/gas/a.cpp", "#include \"core/pipework/tube.h\"\n"},
                                   {"core/tightness/a.cpp", "#include \"core/register/model.h\"\n"},
                                   {"core/register/a.cpp", "#include \"core/pipework/tube.h\"\n"},
                                   {"core/record/a.cpp", "#include \"core/store/store.h\"\n"},
                                   {"core/store/a.cpp", "#include \"core/exchange/csv.h\"\n"},
                                   {"core/exchange/a.cpp", "#include \"core/store/store.h\"\n"},
                                   {"core/store/a.cpp", "#include \"ui/look/look.h\"\n"},
                                   {"ui/words/a.cpp", "#include \"ui/look/look.h\"\n"},
                                   {"ui/paper/a.cpp", "#include \"core/store/store.h\"\n"},
                                   {"ui/input/a.cpp", "#include \"ui/paper/paper.h\"\n"},
                                   {"ui/visit/a.cpp", "#include \"ui/records/list.h\"\n"},
                                   {"ui/shell/a.cpp", "#include \"ui/visit/sheet.h\"\n"},
                                   {"ui/visit/a.cpp", "#include \"app/wiring.h\"\n"},
                                   {"core/record/a.cpp", "#include \"resources/resources.h\"\n"},
                                   {"core/unheard/a.cpp", "#include \"core/quantity/units.h\"\n"},
                                   {"core/quantity/a.cpp", "#include \"units.h\"\n"},
                                   {"core/quantity/a.cpp", "#include \"../base/id.h\"\n"},
                                   {"core/quantity/a.cpp", "#include <core/base/id.h>\n"},
                                   {"core/quantity/a.cpp", "  #  include \"core/calendar/civil_date.h\"\n"},
                               });
}

TEST(FenceLayers, letsPassWhatTheTableAllows) {
    expectLetPass(
        layerSlips,
        {
            {"core/tightness/a.cpp", "#include \"core/pipework/tube.h\"\n#include <vector>\n"},
            {"core/quantity/a.cpp", "#include \"core/quantity/b.h\"\n#include \"core/base/id.h\"\n"},
            {"ui/visit/a.cpp", "#include \"ui/shell/place.h\"\n#include \"core/store/store.h\"\n"},
            {"ui/visit/a.cpp", "#include \"ui/input/editor.h\"\n#include \"a.moc\"\n"},
            {"app/a.cpp", "#include \"ui/visit/sheet.h\"\n#include \"core/exchange/csv.h\"\n"},
            {"core/base/a.cpp", "// #include \"core/store/store.h\"\n"},
            {"core/base/a.cpp", "const char* s = \"\\n#include <core/store/store.h>\";\n"},
        });
}

TEST(FenceLinks, holdsBackLibrariesThatTheTableForbids) {
    expectHeldBack(linkSlips,
                   {
                       {"core/register/CMakeLists.txt", "LINKS Hearth::core_rulebook Hearth::core_store)"},
                       {"ui/visit/CMakeLists.txt", "LINKS Hearth::ui_input Hearth::ui_records)"},
                       {"core/record/CMakeLists.txt", "LINKS Qt6::Core)"},
                       {"core/exchange/CMakeLists.txt", "LINKS Qt6::Sql)"},
                   });
    expectLetPass(linkSlips,
                  {
                      {"core/register/CMakeLists.txt", "LINKS Hearth::core_rulebook Hearth::core_base)"},
                      {"core/store/CMakeLists.txt", "LINKS Hearth::core_record Qt6::Sql Qt6::Core)"},
                      {"app/CMakeLists.txt", "LINKS Hearth::ui_visit Hearth::core_store Qt6::Widgets)"},
                  });
}

TEST(FenceForeignHeaders, holdsBackWhatDoesNotBelong) {
    expectHeldBack(foreignHeaderSlips, {
                                           {"core/register/a.h", "#include <QString>\n"},
                                           {"core/record/a.h", "#include <QtCore/QString>\n"},
                                           {"core/base/a.h", "#include <qglobal.h>\n"},
                                           {"core/exchange/a.cpp", "#include <QSqlQuery>\n"},
                                           {"ui/visit/a.cpp", "#include <QtSql/QSqlDatabase>\n"},
                                           {"app/a.cpp", "#include <sqlite3.h>\n"},
                                           {"ui/shell/a.cpp", "#include <QPrinter>\n"},
                                           {"app/a.cpp", "#include <QtPrintSupport/QPrinter>\n"},
                                           {"ui/visit/a.h", "#include <QtWidgets>\n"},
                                           {"ui/visit/a.h", "#include <QtGui/QtGui>\n"},
                                           {"core/base/a.h", "#include <format>\n"},
                                           {"core/base/a.h", "#include <ranges>\n"},
                                       });
}

TEST(FenceForeignHeaders, letsPassWhatBelongs) {
    expectLetPass(foreignHeaderSlips,
                  {
                      {"core/store/a.cpp", "#include <QSqlQuery>\n#include <sqlite3.h>\n"},
                      {"core/exchange/a.cpp", "#include <QByteArray>\n"},
                      {"ui/paper/a.cpp", "#include <QPrinter>\n#include <qrencode.h>\n"},
                      {"core/record/a.cpp", "#include <sodium.h>\n#include <nlohmann/json.hpp>\n"},
                  });
    EXPECT_TRUE(includesPrinter({"ui/paper/a.cpp", "#include <QPrinter>\n"}));
    EXPECT_FALSE(includesPrinter({"ui/paper/a.cpp", "#include <QPrinterInfo>\n"}));
}

TEST(FenceColours, holdsBackColoursWrittenOut) {
    expectHeldBack(colourSlips, {
                                    {"ui/visit/a.cpp", "setStyleSheet(u\"color: #a01020\"_qs);\n"},
                                    {"ui/visit/a.cpp", "QColor c(u\"#fff\"_qs);\n"},
                                    {"ui/paper/a.cpp", "painter.setPen(Qt::red);\n"},
                                    {"ui/paper/a.cpp", "painter.setPen(Qt::darkGreen);\n"},
                                    {"ui/paper/a.cpp", "painter.fillRect(r, QColor(255, 0, 0));\n"},
                                    {"ui/paper/a.cpp", "const QColor paper{250, 250, 245};\n"},
                                    {"ui/paper/a.cpp", "auto c = qRgb(1, 2, 3);\n"},
                                    {"app/a.cpp", "auto c = QColor::fromHsv(120, 2, 3);\n"},
                                });
}

TEST(FenceColours, letsPassTheRest) {
    expectLetPass(colourSlips,
                  {
                      {"ui/look/a.cpp", "const QColor kFail(u\"#a01020\"_qs);\nauto r = Qt::red;\n"},
                      {"ui/visit/a.cpp", "auto c = look.colour(Role::Fail);\n"},
                      {"ui/visit/a.cpp", "// Qt::red is #f00\nauto a = Qt::transparent;\n"},
                      {"ui/visit/a.cpp", "label(u\"Record #%1\"_qs);\nfill(QColor(role));\n"},
                      {"ui/visit/a.cpp", "auto k = Qt::blackAndWhite;\n"},
                  });
}

TEST(FenceSql, holdsBackStatementsOutsideTheStore) {
    expectHeldBack(sqlSlips, {
                                 {"ui/due/a.cpp", "run(\"SELECT name FROM premises\");\n"},
                                 {"ui/due/a.cpp", "run(\"INSERT \" \"INTO premises\");\n"},
                                 {"ui/due/a.cpp", "run(R\"(\nUPDATE premises SET name = ?\n)\");\n"},
                                 {"core/exchange/a.cpp", "run(u\"DELETE FROM premises\"_qs);\n"},
                                 {"app/a.cpp", "run(\"PRAGMA user_version\");\n"},
                             });
}

TEST(FenceSql, letsPassSentencesAndTheStore) {
    expectLetPass(sqlSlips,
                  {
                      {"core/store/a.cpp", "run(\"SELECT name FROM premises\");\n"},
                      {"ui/due/a.cpp", "tr(\"Select a name from the list, or insert into the table\");\n"},
                      {"ui/due/a.cpp", "// SELECT name FROM premises\nint a;\n"},
                  });
}

TEST(FenceForm, holdsBackFilesWithoutLicenceOrGuard) {
    const std::string licence = "// SPDX-License-Identifier: GPL-3.0-or-later\n";
    expectHeldBack(formSlips, {
                                  {"core/base/a.cpp", "int a;\n"},
                                  {"core/base/a.cpp", "\n" + licence},
                                  {"core/base/a.cpp", "// SPDX-License-Identifier: MIT\n"},
                                  {"core/base/a.h", licence + "int a;\n"},
                                  {"core/base/a.h", licence + "// #pragma once\n"},
                                  {"tests/a.sh", "#!/bin/sh\necho\n"},
                              });
    expectLetPass(formSlips, {
                                 {"core/base/a.h", licence + "#pragma once\n"},
                                 {"core/base/a.cpp", licence},
                                 {"tests/a.sh", "#!/bin/sh\n# SPDX-License-Identifier: GPL-3.0-or-later\n"},
                                 {"resources/a.sql", "-- SPDX-License-Identifier: GPL-3.0-or-later\n"},
                             });
}

TEST(FenceTopLevel, holdsBackStrangers) {
    EXPECT_EQ(
        topLevelSlips({"core/base/id.h", ".ci/run", "README.md", "notes.txt", "src/a.cpp", "src/b.cpp"}),
        (std::vector<std::string>{"notes.txt", "src"}));
}

TEST(TakeApart, tellsCodeFromTextAndComments) {
    const auto parts =
        takeApart("a(\"x\\\"y\" \"z\"); // \"no\"\n/* \"no\" */ b(R\"d(q)\" )d\", 'c', 1'0);\n");
    ASSERT_EQ(parts.literals.size(), 2U);
    EXPECT_EQ(parts.literals[0].text, "x\\\"yz");
    EXPECT_EQ(parts.literals[0].line, 1U);
    EXPECT_EQ(parts.literals[1].text, "q)\" ");
    EXPECT_EQ(parts.literals[1].line, 2U);
    EXPECT_EQ(lineCount(parts.code), 2U);
    EXPECT_NE(parts.code.find("1'0"), std::string::npos);
    EXPECT_EQ(parts.code.find("no"), std::string::npos);
}

}  // namespace
}  // namespace hearth::testing
