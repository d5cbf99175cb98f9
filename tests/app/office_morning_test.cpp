// SPDX-License-Identifier: GPL-3.0-or-later
// An office morning, by keys alone, through the program's window: a landlord's spreadsheet of 300 premises is
// taken over, the 17 overdue are found, 9 of them booked, no access is logged at 3, 40 letters are written,
// the calendar and the landlord's summary go out. What went out is read back by pdftotext, python3-icalendar
// and Python's csv.
#include "app/window.h"
#include "tests/ui/support/firm_bench.h"
#include "tests/ui/support/keys.h"
#include "tests/ui/support/walker.h"
#include "ui/due/due_head.h"
#include "ui/due/due_list.h"
#include "ui/shell/line_list.h"

#include <QElapsedTimer>
#include <QRegularExpression>

#include <gtest/gtest.h>
#include <iostream>
#include <memory>

namespace hearth::app {
namespace {

using hearth::testing::child;
using hearth::testing::need;
using hearth::testing::runCommand;

constexpr int kPremises = 300;
constexpr int kOverdue = 17;
constexpr int kDueWithin8Weeks = 23;

/// Today is 25 November 2026, 9:46 in the morning.
class OfficeMorning : public ::testing::Test {
  protected:
    void SetUp() override {
        bench.firm.telephone = "01632 960000";
        need(bench.store->saveFirm(bench.firm));
        hearth::testing::writeFile(bench.folder() / "fenn.csv", spreadsheet());
        window = makeMainWindow(*bench.store, {bench.clock, bench.words, bench.dialogs, bench.printing});
        hearth::testing::activate(window.get());
    }

    // Every key that the office presses is counted.
    void press(int key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        ++keys;
        hearth::testing::press(key, modifiers);
    }
    void ctrl(int key) { press(key, Qt::ControlModifier); }
    void ctrlShift(int key) { press(key, Qt::ControlModifier | Qt::ShiftModifier); }
    void typeLine(const QString& text) {
        keys += static_cast<int>(text.size());
        hearth::testing::type(text);
        press(Qt::Key_Return);
    }
    void tabTo(const char* name) {
        auto* wanted = child<QWidget>(window.get(), name);
        constexpr int kMostStops = 60;
        for (int stops = 0; hearth::testing::focus() != wanted; ++stops) {
            ASSERT_LT(stops, kMostStops) << name << " is not reached by Tab";
            press(Qt::Key_Tab);
        }
    }
    void step(const char* what) {
        std::cout << "[ morning  ] " << what << ": " << keys - keysBefore << " keys, " << timer.restart()
                  << " ms\n";
        keysBefore = keys;
    }

    /// Twelve months before the deadline: 17 of them are past, 23 within eight weeks, the others far.
    static calendar::Date lastCheck(int number) {
        const auto deadline = [number]() {
            if (number < kOverdue) {
                return calendar::addDays(*calendar::fromIso("2026-11-24"), -number);
            }
            if (number < kOverdue + kDueWithin8Weeks) {
                return calendar::addDays(*calendar::fromIso("2026-11-26"), 2 * (number - kOverdue));
            }
            return calendar::addDays(*calendar::fromIso("2027-02-01"), number % 200);
        }();
        return calendar::addMonths(deadline, -12);
    }
    /// As a landlord's office keeps it, in an order of its own: no premises stand together that fall due
    /// together.
    static std::string spreadsheet() {
        std::string text =
            "Address,Town,Postcode,Landlord,Landlord address,Landlord town,Landlord postcode,Last "
            "check,Appliance make,Appliance model\r\n";
        constexpr int kStride = 7;  // has no factor in common with 300
        for (int i = 0; i < kPremises; ++i) {
            const int number = i * kStride % kPremises;
            text += std::to_string(100 + i) + " Larch Row,Thornmere,TH2 9XY,Fenn Estate,1 Estate Office," +
                    "Thornmere,TH1 1AA," + calendar::isoText(lastCheck(number)) + ",Emberline,Combi 24\r\n";
        }
        return text;
    }
    QString file(const char* name) const { return QString::fromStdString((bench.folder() / name).string()); }
    [[nodiscard]] ui::due::DueList* list() const { return child<ui::due::DueList>(window.get(), "dueList"); }
    void takeOver();
    void bookNine();
    void logThree();
    void writeLetters();
    void exportCalendar();
    void writeSummaries();

    hearth::testing::FirmBench bench;
    std::unique_ptr<ui::shell::MainWindow> window;
    QElapsedTimer timer;
    int keys = 0;
    int keysBefore = 0;
};

void OfficeMorning::takeOver() {
    ctrl(Qt::Key_2);
    bench.dialogs.chosen.push_back({file("fenn.csv")});
    ctrlShift(Qt::Key_I);
    press(Qt::Key_Space);  // "Choose a file"
    press(Qt::Key_Right, Qt::AltModifier);
    press(Qt::Key_Right, Qt::AltModifier);
    press(Qt::Key_Escape);
    ASSERT_EQ(need(bench.store->premises("", kPremises + 1)).size(), std::size_t{kPremises});
    step("300 premises taken over");
}

void OfficeMorning::bookNine() {
    ctrl(Qt::Key_3);
    press(Qt::Key_1, Qt::AltModifier);
    ASSERT_EQ(list()->count(), kOverdue);
    step("17 overdue found");
    ASSERT_EQ(hearth::testing::focus(), list());
    press(Qt::Key_Home);
    for (int i = 1; i < 9; ++i) {
        press(Qt::Key_Down, Qt::ShiftModifier);
    }
    ctrl(Qt::Key_B);
    typeLine(QStringLiteral("26/11"));
    typeLine(QStringLiteral("9"));
    ctrl(Qt::Key_Return);
    const auto bookings =
        need(bench.store->bookings(*calendar::fromIso("2026-11-26"), *calendar::fromIso("2026-11-26")));
    ASSERT_EQ(bookings.size(), 9U);
    EXPECT_EQ(bookings[0].premises, list()->line(0).premises) << "in the order of the list";
    EXPECT_EQ(bookings[0].from, "09:00");
    EXPECT_LT(bookings[7].from, bookings[8].from) << "one after the other";
    EXPECT_EQ(child<ui::due::CountChip>(window.get(), "count_overdue")->accessibleName(),
              QStringLiteral("Overdue, 9 of them booked: 17"));
    step("9 booked");
}

void OfficeMorning::logThree() {
    ASSERT_EQ(hearth::testing::focus(), list());
    press(Qt::Key_Home);
    for (int i = 0; i < 9; ++i) {
        press(Qt::Key_Down);
    }
    press(Qt::Key_Down, Qt::ShiftModifier);
    press(Qt::Key_Down, Qt::ShiftModifier);
    const auto meant = list()->chosen();
    ctrl(Qt::Key_K);
    typeLine(QStringLiteral("R. Ashdown"));
    ctrl(Qt::Key_Return);
    ASSERT_EQ(meant.size(), 3U);
    for (const auto& premises : meant) {
        const auto attempts = need(bench.store->accessAttempts(premises));
        ASSERT_EQ(attempts.size(), 1U);
        EXPECT_EQ(attempts[0].who, "R. Ashdown");
    }
    step("no access logged at 3");
}

/// Each letter is a page and names its premises; they come in the order of the addresses.
void OfficeMorning::writeLetters() {
    press(Qt::Key_0, Qt::AltModifier);
    ctrlShift(Qt::Key_R);
    auto* reminders = child<ui::shell::LineList>(window.get(), "remindList");
    EXPECT_EQ(reminders->count(), kOverdue + kDueWithin8Weeks - 9)
        << "those that were just booked are left out";
    ctrl(Qt::Key_B);  // the landlord is told of all the same
    ASSERT_EQ(reminders->count(), kOverdue + kDueWithin8Weeks);
    bench.dialogs.files = {file("letters.pdf")};
    ctrl(Qt::Key_Return);
    step("40 letters written");
    const auto read = runCommand("pdftotext -layout '" + file("letters.pdf").toStdString() + "' -");
    ASSERT_EQ(read.exitCode, 0) << read.text;
    QStringList pages = QString::fromStdString(read.text).split(u'\f');
    pages.removeLast();  // what follows the last page
    ASSERT_EQ(pages.size(), kOverdue + kDueWithin8Weeks);
    const QRegularExpression about(QStringLiteral("Gas safety check at (\\d+) Larch Row"));
    int before = 0;
    std::set<int> houses;
    for (const auto& page : pages) {
        const auto match = about.match(page);
        ASSERT_TRUE(match.hasMatch()) << page.toStdString();
        const int house = match.captured(1).toInt();
        EXPECT_GT(house, before) << "in the order of the addresses";
        before = house;
        houses.insert(house);
        EXPECT_TRUE(page.contains(QStringLiteral("Fenn Estate")));
    }
    std::set<int> expected;  // by the spreadsheet alone
    constexpr int kStride = 7;
    for (int i = 0; i < kPremises; ++i) {
        if (i * kStride % kPremises < kOverdue + kDueWithin8Weeks) {
            expected.insert(100 + i);
        }
    }
    EXPECT_EQ(houses, expected);
    EXPECT_EQ(need(bench.store->letters(need(bench.store->parties("Fenn")).front().id)).size(),
              std::size_t{kOverdue + kDueWithin8Weeks})
        << "kept as sent";
}

void OfficeMorning::exportCalendar() {
    bench.dialogs.answers = {0};
    bench.dialogs.files = {file("checks.ics")};
    ctrlShift(Qt::Key_E);
    step("calendar written");
    const auto read = runCommand("LC_ALL=C.UTF-8 /usr/bin/python3 '" HEARTH_SOURCE_DIR
                                 "/tests/core/exchange/read_calendar.py' '" +
                                 file("checks.ics").toStdString() + "'");
    ASSERT_EQ(read.exitCode, 0) << read.text;
    const QStringList entries = QString::fromStdString(read.text).split(u'\n', Qt::SkipEmptyParts);
    EXPECT_EQ(entries.size(), kPremises + 9);
    EXPECT_EQ(entries.filter(QStringLiteral("\t2026-11-26T")).size(), 9) << "bookings at their times";
    EXPECT_EQ(entries.filter(QRegularExpression(QStringLiteral("\t2026-11-24\t2026-11-25\t"))).size(), 1)
        << "the deadline that was missed yesterday";
}

void OfficeMorning::writeSummaries() {
    ctrl(Qt::Key_G);  // the overview leads to one landlord's premises
    tabTo("landlordsList");
    press(Qt::Key_Home);
    press(Qt::Key_Return);
    bench.dialogs.answers = {0, 1};
    bench.dialogs.files = {file("summary.pdf"), file("summary.csv")};
    ctrlShift(Qt::Key_S);
    ctrlShift(Qt::Key_S);
    step("the landlord's summary written twice");
    const auto pages = runCommand("pdftotext -layout '" + file("summary.pdf").toStdString() + "' -");
    EXPECT_NE(pages.text.find("Gas safety checks: summary"), std::string::npos);
    EXPECT_NE(pages.text.find("Fenn Estate"), std::string::npos);
    EXPECT_NE(pages.text.find("overdue, of them booked"), std::string::npos);
    const auto rows = runCommand(
        "LC_ALL=C.UTF-8 /usr/bin/python3 -c 'import csv,sys;rows=list(csv.DictReader(open(sys.argv[1],"
        "newline=\"\",encoding=\"utf-8-sig\")));print(len(rows),sum(r[\"State\"].startswith(\"Overdue\") for "
        "r in rows),"
        "sum(r[\"State\"]==\"Overdue, booked\" for r in rows),"
        "sum(r[\"Letters\"]==\"1\" for r in rows),sum(r[\"No access\"]==\"1\" for r in rows),"
        "sum(r[\"Booked\"]!=\"\" for r in rows))' '" +
        file("summary.csv").toStdString() + "'");
    EXPECT_EQ(rows.text, "300 17 9 40 3 9\n")
        << "premises, overdue, of them booked, letters, no access, booked";
}

TEST_F(OfficeMorning, IsDoneByKeysAlone) {
    timer.start();
    QElapsedTimer whole;
    whole.start();
    takeOver();
    bookNine();
    logThree();
    writeLetters();
    exportCalendar();
    writeSummaries();
    std::cout << "[ morning  ] whole: " << keys << " keys, " << whole.elapsed() << " ms with the checks\n";
    EXPECT_TRUE(bench.dialogs.told.isEmpty()) << bench.dialogs.told.join(u'\n').toStdString();
}

}  // namespace
}  // namespace hearth::app
