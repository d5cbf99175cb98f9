// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/premises/import_assistant.h"

#include "tests/ui/support/firm_bench.h"
#include "tests/ui/support/keys.h"
#include "tests/ui/support/walker.h"
#include "ui/premises/premises_place.h"
#include "ui/shell/line_list.h"

#include <QPushButton>

#include <gtest/gtest.h>
#include <memory>

namespace hearth::ui::premises {
namespace {

using hearth::testing::child;
using hearth::testing::editor;
using hearth::testing::FirmBench;
using hearth::testing::need;
using hearth::testing::press;
using hearth::testing::readFile;
using hearth::testing::writeFile;

class ImportAssistantTest : public ::testing::Test {
  protected:
    void SetUp() override {
        window = std::make_unique<shell::MainWindow>(bench.parts());
        place = new PremisesPlace(window->context());
        window->setPlaces({place});
        hearth::testing::activate(window.get());
    }
    [[nodiscard]] QString file(const char* name) const {
        return QString::fromStdString((bench.folder() / name).string());
    }
    /// Opens the assistant by its key and chooses a file with that text.
    void open(const std::string& text) {
        writeFile(bench.folder() / "list.csv", text);
        bench.dialogs.chosen.push_back({file("list.csv")});
        press(Qt::Key_I, Qt::ControlModifier | Qt::ShiftModifier);
        press(Qt::Key_Space);  // "Choose a file" has the focus
    }
    void next() {
        press(Qt::Key_Right, Qt::AltModifier);
        QApplication::processEvents();
    }
    [[nodiscard]] QString textOf(const char* name) const { return child<QLabel>(place, name)->text(); }
    [[nodiscard]] std::size_t premisesKept() const { return need(bench.store->premises("")).size(); }

    FirmBench bench;
    std::unique_ptr<shell::MainWindow> window;
    PremisesPlace* place = nullptr;
};

// No catalogue is loaded in these tests, so what is counted stands in its source's form ("1 rows").
const std::string kList =
    "Property,Postcode,Landlord,Landlord tel,Gas,Colour\r\n"
    "\"14 Larch Row, Thornmere\",TH2 9XY,Bo Ash,0113 496 0000,mains,red\r\n"
    "\"15 Larch Row, Thornmere\",TH2 9XY,Bo Ash,0113 496 0000,LPG,blue\r\n"
    ",TH2 9XY,,,,\r\n";

TEST_F(ImportAssistantTest, goesFromTheFileToItsEndByKeyboardAlone) {
    open(kList);
    EXPECT_EQ(editor(place, "importColumn0")->text(), QStringLiteral("address"));
    EXPECT_EQ(editor(place, "importColumn3")->text(), QStringLiteral("party_telephone landlord"));
    EXPECT_EQ(editor(place, "importColumn5")->text(), QStringLiteral("ignored"));
    EXPECT_EQ(textOf("importSamples0"), QStringLiteral("14 Larch Row | Thornmere\n15 Larch Row | Thornmere"));
    next();
    EXPECT_EQ(
        textOf("importSummary"),
        QStringLiteral("1 new premises · 1 new people · 1 rows set aside · 1 rows that can't be taken"));
    auto* rows = child<shell::LineList>(place, "importRows");
    ASSERT_EQ(rows->count(), 3);
    EXPECT_EQ(rows->line(1).outcome, rulebook::Outcome::LookAgain);
    EXPECT_EQ(rows->line(2).outcome, rulebook::Outcome::Fail);
    EXPECT_EQ(premisesKept(), 0U) << "nothing is written yet";
    press(Qt::Key_Down);
    EXPECT_EQ(textOf("importRowProblems"), QStringLiteral("Which gas “LPG” means can't be told."));
    child<QPushButton>(place, "importTakeRow")->click();
    EXPECT_EQ(textOf("importSummary"),
              QStringLiteral("2 new premises · 1 new people · 1 rows that can't be taken"));
    next();
    EXPECT_EQ(premisesKept(), 2U);
    EXPECT_EQ(textOf("importDone"),
              QStringLiteral("Taken over: 2 new premises · 1 new people · 1 rows that can't be taken"));
    press(Qt::Key_Escape);
    EXPECT_EQ(child<shell::LineList>(place, "premisesList")->count(), 2);
}

TEST_F(ImportAssistantTest, takesAllOfItBackAtOnce) {
    open(kList);
    next();
    next();
    EXPECT_EQ(premisesKept(), 1U);
    child<QPushButton>(place, "importUndo")->click();
    EXPECT_EQ(premisesKept(), 0U);
    EXPECT_TRUE(need(bench.store->parties("")).empty());
    EXPECT_EQ(textOf("importDone"),
              QStringLiteral("All of it was taken back: the store is as it was before."));
}

TEST_F(ImportAssistantTest, writesTheRestToAFileThatCanBeTakenOver) {
    open(kList);
    next();
    next();
    bench.dialogs.files.push_back(file("rest.csv"));
    child<QPushButton>(place, "importWriteRest")->click();
    EXPECT_EQ(readFile((bench.folder() / "rest.csv").string()),
              "\xEF\xBB\xBFProperty,Postcode,Landlord,Landlord tel,Gas,Colour\r\n"
              "\"15 Larch Row, Thornmere\",TH2 9XY,Bo Ash,0113 496 0000,LPG,blue\r\n"
              ",TH2 9XY,,,,\r\n");
}

TEST_F(ImportAssistantTest, aColumnGetsItsMeaningByHand) {
    open("Where,What\r\n14 Larch Row,x\r\n");
    next();
    EXPECT_EQ(textOf("importSummary"), QStringLiteral("The file can't be taken over as it is."));
    EXPECT_EQ(textOf("importFileProblems"),
              QStringLiteral("No column is said to hold the address of the premises. Choose one."));
    press(Qt::Key_Left, Qt::AltModifier);
    auto* column = editor(place, "importColumn0");
    column->setText(QStringLiteral("address"));
    Q_EMIT column->committed(column->text());
    next();
    EXPECT_EQ(textOf("importSummary"), QStringLiteral("1 new premises"));
}

TEST_F(ImportAssistantTest, duplicatesAreMergedKeptOrLeftOut) {
    bench.addPremises("14 Larch Row");
    open(kList);
    next();
    EXPECT_EQ(textOf("importSummary"),
              QStringLiteral(
                  "1 premises filled up · 1 new people · 1 rows set aside · 1 rows that can't be taken"));
    auto* choice = editor(place, "importDuplicates");
    choice->setText(QStringLiteral("both"));
    Q_EMIT choice->committed(choice->text());
    EXPECT_EQ(
        textOf("importSummary"),
        QStringLiteral("1 new premises · 1 new people · 1 rows set aside · 1 rows that can't be taken"));
}

TEST_F(ImportAssistantTest, aFileThatIsNoneIsToldAndLeft) {
    open("");
    EXPECT_EQ(bench.dialogs.told.size(), 1);
    bench.dialogs.chosen.push_back({file("gone.csv")});
    child<QPushButton>(place, "importChooseFile")->click();
    EXPECT_EQ(bench.dialogs.told.size(), 2);
    press(Qt::Key_Escape);
    EXPECT_TRUE(child<shell::LineList>(place, "premisesList")->isVisible());
}

TEST_F(ImportAssistantTest, everythingHasItsName) {
    open(kList);
    hearth::testing::expectUniqueNames(window.get());
    next();
    hearth::testing::expectUniqueNames(window.get());
}

TEST_F(ImportAssistantTest, listsAreWrittenByAKey) {
    bench.addPremises("14 Larch Row", "Bo Ash");
    place->refresh();
    bench.dialogs.answers.push_back(0);
    bench.dialogs.files.push_back(file("out.csv"));
    press(Qt::Key_E, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_NE(readFile((bench.folder() / "out.csv").string()).find("14 Larch Row"), std::string::npos);
    bench.dialogs.answers.push_back(3);
    bench.dialogs.files.push_back(file("out.vcf"));
    press(Qt::Key_E, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_NE(readFile((bench.folder() / "out.vcf").string()).find("FN:Bo Ash"), std::string::npos);
}

}  // namespace
}  // namespace hearth::ui::premises
