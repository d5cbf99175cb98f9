// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/due_commands.h"

#include "core/calendar/civil_date.h"
#include "tests/app/demonstration_copy.h"

#include <gmock/gmock.h>

namespace {

using hearth::testing::DemonstrationCopy;
using hearth::testing::readFile;
using hearth::testing::runCommand;
using hearth::testing::writeFile;
using ::testing::HasSubstr;
using ::testing::Not;

/// A landlord's spreadsheet of three flats: one long overdue, one just checked, one of which nothing is
/// known.
class DueCommands : public DemonstrationCopy {
  protected:
    void SetUp() override {
        DemonstrationCopy::SetUp();
        const auto today = hearth::SystemClock().today("Europe/London");
        const auto day = [&](int back) {
            return hearth::calendar::isoText(hearth::calendar::addDays(today, -back));
        };
        writeFile(inHome("flats.csv"),
                  "address,town,postcode,landlord,landlord email,last check,appliance make,appliance model\n"
                  "1 Weir Bank,Ashby,QA1 1AA,Orla Quill,orla@quill.example," +
                      day(400) +
                      ",Brightwell,B1\n"
                      "2 Weir Bank,Ashby,QA1 1AB,Orla Quill,orla@quill.example," +
                      day(30) +
                      ",Brightwell,B1\n"
                      "3 Weir Bank,Ashby,QA1 1AC,Orla Quill,orla@quill.example,,Brightwell,B1\n");
        const auto done = run("import " + inHome("flats.csv"));
        ASSERT_EQ(done.exitCode, 0) << done.out << done.error;
    }
    [[nodiscard]] hearth::testing::Program::Run ofOrla(const QStringList& more) const {
        return run(QStringList{QStringLiteral("due"), QStringLiteral("--of"), QStringLiteral("Orla Quill")} +
                   more);
    }
};

TEST_F(DueCommands, listAPortfolioThatWasImported) {
    const auto said = ofOrla({});
    EXPECT_EQ(said.exitCode, 1) << "one is overdue";
    EXPECT_THAT(said.out, HasSubstr("1 Weir Bank, Ashby: overdue"));
    EXPECT_THAT(said.out, HasSubstr("2 Weir Bank, Ashby: later"));
    EXPECT_THAT(said.out, HasSubstr("3 Weir Bank, Ashby: no check known"));
    EXPECT_LT(said.out.find("1 Weir Bank"), said.out.find("2 Weir Bank"));
    EXPECT_LT(said.out.find("2 Weir Bank"), said.out.find("3 Weir Bank"));
    const auto later = ofOrla({QStringLiteral("--state"), QStringLiteral("later")});
    EXPECT_EQ(later.exitCode, 0);
    EXPECT_THAT(later.out, Not(HasSubstr("1 Weir Bank")));
    EXPECT_THAT(later.out, HasSubstr("2 Weir Bank"));
}

TEST_F(DueCommands, giveCsvAndJsonAndTheSummary) {
    const auto csv = ofOrla({QStringLiteral("--format"), QStringLiteral("csv")});
    EXPECT_THAT(csv.out, HasSubstr("state,deadline,"));
    EXPECT_THAT(csv.out, HasSubstr("overdue,"));
    const auto json = ofOrla({QStringLiteral("--format"), QStringLiteral("json")});
    EXPECT_THAT(json.out, HasSubstr("\"state\": \"overdue\""));
    const QString pdf = QString::fromStdString(inHome("summary.pdf"));
    EXPECT_EQ(ofOrla({QStringLiteral("--to"), pdf}).exitCode, 1);
    const auto text = runCommand("pdftotext -layout " + pdf.toStdString() + " -").text;
    EXPECT_THAT(text, HasSubstr("Orla Quill"));
    EXPECT_THAT(text, HasSubstr("3 Weir Bank, Ashby"));
    EXPECT_EQ(
        ofOrla({QStringLiteral("--to"), pdf, QStringLiteral("--format"), QStringLiteral("csv")}).exitCode, 3)
        << "it is there already";
}

TEST_F(DueCommands, listTheDutiesBesideTheChecks) {
    const auto said = run("due --duties");
    EXPECT_EQ(said.exitCode, 1) << "a detector's calibration ran out on 12 November 2026, a fixed day";
    EXPECT_THAT(said.out, HasSubstr("Calibration · ran out on 12 Nov 2026 · overdue"));
    const auto csv = run("due --duties --format csv");
    EXPECT_THAT(csv.out, HasSubstr("duty,state,by,counts_from,"));
    EXPECT_THAT(csv.out, HasSubstr("calibration,overdue,2026-11-12,"));
    const auto json = run("due --duties --format json");
    EXPECT_THAT(json.out, HasSubstr("\"by\": \"2026-11-12\""));
    const auto ofOne = ofOrla({QStringLiteral("--duties")});
    EXPECT_EQ(ofOne.exitCode, 0) << "nothing is open at the premises of hers";
    EXPECT_THAT(ofOne.out, Not(HasSubstr("Calibration")));
}

/// 1 Weir Bank's check was 400 days ago, so that its deadline is 34 or 35 days past.
TEST_F(DueCommands, listWhatTurnedOverdueWithinSoManyDays) {
    const auto within = [this](const char* days) {
        return ofOrla({QStringLiteral("--turned"), QString::fromLatin1(days), QStringLiteral("--format"),
                       QStringLiteral("csv")});
    };
    const auto since = within("40");
    EXPECT_EQ(since.exitCode, 1);
    EXPECT_THAT(since.out, HasSubstr("1 Weir Bank"));
    EXPECT_THAT(since.out, Not(HasSubstr("2 Weir Bank")));
    EXPECT_THAT(since.out, Not(HasSubstr("3 Weir Bank")));
    const auto none = within("1");
    EXPECT_EQ(none.exitCode, 0) << "nothing since yesterday";
    EXPECT_THAT(none.out, Not(HasSubstr("Weir Bank")));
    EXPECT_EQ(within("0").exitCode, 2);
    EXPECT_EQ(within("soon").exitCode, 2);
}

TEST_F(DueCommands, refuseWhatTheyDoNotKnow) {
    EXPECT_EQ(run("due --state soon").exitCode, 2);
    EXPECT_EQ(run("due --format xml").exitCode, 2);
    const auto nobody =
        run(QStringList{QStringLiteral("due"), QStringLiteral("--of"), QStringLiteral("Nobody")});
    EXPECT_EQ(nobody.exitCode, 1);
    EXPECT_THAT(nobody.error, HasSubstr("Orla Quill"));
    EXPECT_EQ(run("calendar").exitCode, 2);
    EXPECT_EQ(run("calendar --to a --into b").exitCode, 2);
}

TEST_F(DueCommands, writeACalendarAsOneFileAndAsAFolder) {
    const QStringList whose{QStringLiteral("--of"), QStringLiteral("Orla Quill")};
    const QString file = QString::fromStdString(inHome("checks.ics"));
    const auto one = run(QStringList{QStringLiteral("calendar"), QStringLiteral("--to"), file} + whose);
    ASSERT_EQ(one.exitCode, 0) << one.error;
    EXPECT_EQ(one.out, "Calendar entries written to " + inHome("checks.ics") + ": 2\n");
    const auto text = readFile(inHome("checks.ics"));
    EXPECT_THAT(text, HasSubstr("BEGIN:VCALENDAR\r\n"));
    EXPECT_THAT(text, HasSubstr("Gas safety check due: 1 Weir Bank"));
    const QString folder = QString::fromStdString(inHome("calendar"));
    const auto many = run(QStringList{QStringLiteral("calendar"), QStringLiteral("--into"), folder} + whose);
    ASSERT_EQ(many.exitCode, 0) << many.error;
    EXPECT_EQ(std::distance(std::filesystem::directory_iterator(inHome("calendar")), {}), 2);
    EXPECT_EQ(run(QStringList{QStringLiteral("calendar"), QStringLiteral("--into"), folder} + whose).exitCode,
              0)
        << "the same entries again, under the same names";
    EXPECT_EQ(std::distance(std::filesystem::directory_iterator(inHome("calendar")), {}), 2);
}

}  // namespace
