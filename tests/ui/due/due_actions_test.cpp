// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/files.h"
#include "tests/ui/due/due_window.h"
#include "tests/ui/support/keys.h"
#include "tests/ui/support/walker.h"
#include "ui/due/book_page.h"
#include "ui/due/due_head.h"
#include "ui/due/due_place.h"
#include "ui/due/kept_page.h"
#include "ui/shell/line_list.h"
#include "ui/words/due_words.h"
#include "ui/words/pseudo_translator.h"

#include <QFile>

#include <gtest/gtest.h>
#include <memory>

namespace hearth::ui::due {
namespace {

using calendar::Date;
using calendar::DueState;
using hearth::testing::child;
using hearth::testing::editor;
using hearth::testing::enterField;
using hearth::testing::fillField;
using hearth::testing::FirmBench;
using hearth::testing::focus;
using hearth::testing::need;
using hearth::testing::press;
using hearth::testing::type;

class DueActionsTest : public DueWindowTest {};

TEST_F(DueActionsTest, whatNeedsDoingFirstStandsFirst) {
    ASSERT_EQ(list()->count(), 3);
    EXPECT_EQ(list()->line(0).premises, overdue);
    EXPECT_EQ(list()->line(1).premises, soon);
    EXPECT_EQ(list()->line(2).premises, open);
    EXPECT_EQ(child<CountChip>(place, "count_overdue")->count(), 1);
    EXPECT_EQ(child<CountChip>(place, "count_last_two_weeks")->count(), 1);
    EXPECT_EQ(child<CountChip>(place, "count_window_open")->count(), 1);
}

TEST_F(DueActionsTest, oneIsBookedByKeysAlone) {
    chooseFirst(1);
    press(Qt::Key_B, Qt::ControlModifier);
    hearth::testing::typeLine(QStringLiteral("3/12"));
    EXPECT_TRUE(text("whatIfText").contains(QStringLiteral("late: the year starts anew")))
        << text("whatIfText").toStdString();
    EXPECT_TRUE(text("whatIfText").contains(QStringLiteral("3 Dec 2027")));
    EXPECT_TRUE(text("clashesText").contains(QStringLiteral("After the deadline")));
    hearth::testing::typeLine(QStringLiteral("10"));
    hearth::testing::typeLine(QStringLiteral("11:30"));
    type(QStringLiteral("r"));
    press(Qt::Key_Return, Qt::ControlModifier);
    const auto bookings = need(bench.store->bookings(overdue));
    ASSERT_EQ(bookings.size(), 1U);
    EXPECT_EQ(bookings[0].date, on("2026-12-03"));
    EXPECT_EQ(bookings[0].from, "10:00");
    EXPECT_EQ(bookings[0].until, "11:30");
    EXPECT_EQ(bookings[0].engineer, bench.engineer.id);
    EXPECT_EQ(focus(), list()) << "back in the list";
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(need(bench.store->bookings(overdue)).empty());
}

TEST_F(DueActionsTest, severalAreBookedOneAfterTheOther) {
    chooseFirst(3);
    press(Qt::Key_B, Qt::ControlModifier);
    hearth::testing::typeLine(QStringLiteral("26/11"));
    hearth::testing::typeLine(QStringLiteral("9"));
    fillField(editor(place, "bookEach"), QStringLiteral("45"));
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_EQ(need(bench.store->bookings(overdue)).size(), 1U);
    EXPECT_EQ(need(bench.store->bookings(overdue)).at(0).from, "09:00");
    EXPECT_EQ(need(bench.store->bookings(soon)).at(0).from, "09:45");
    EXPECT_EQ(need(bench.store->bookings(open)).at(0).until, "11:15");
    EXPECT_EQ(line(soon).state, DueState::Booked);
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(need(bench.store->bookings(open)).empty()) << "one step of undo";
}

TEST_F(DueActionsTest, aDayThatCannotHoldThemAllIsSaid) {
    chooseFirst(3);
    press(Qt::Key_B, Qt::ControlModifier);
    hearth::testing::typeLine(QStringLiteral("26/11"));
    hearth::testing::typeLine(QStringLiteral("22"));
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(need(bench.store->bookings(overdue)).empty());
    EXPECT_TRUE(editor(place, "bookFrom")
                    ->focusTarget()
                    ->accessibleDescription()
                    .contains(QStringLiteral("do not all fit")));
    EXPECT_EQ(timeAfter("23:30", 30), std::nullopt);
    EXPECT_EQ(timeAfter("09:30", 45), "10:15");
    EXPECT_EQ(timeAfter("soon", 45), std::nullopt);
}

TEST_F(DueActionsTest, aTimeThatIsNoneIsNeverBooked) {
    EXPECT_EQ(timeTyped(QStringLiteral(" 9 ")), "09:00");
    EXPECT_EQ(timeTyped(QString()), "");
    EXPECT_EQ(timeTyped(QStringLiteral("25")), std::nullopt);
    chooseFirst(1);
    press(Qt::Key_B, Qt::ControlModifier);
    hearth::testing::typeLine(QStringLiteral("3/12"));
    hearth::testing::typeLine(QStringLiteral("noonish"));
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(need(bench.store->bookings(overdue)).empty());
    EXPECT_TRUE(editor(place, "bookFrom")
                    ->focusTarget()
                    ->accessibleDescription()
                    .contains(QStringLiteral("Not a time")));
}

TEST_F(DueActionsTest, aBookingIsMovedAndCancelled) {
    chooseFirst(1);
    press(Qt::Key_B, Qt::ControlModifier);
    hearth::testing::typeLine(QStringLiteral("3/12"));
    press(Qt::Key_Return, Qt::ControlModifier);
    chooseFirst(1);
    ASSERT_EQ(list()->line(0).premises, overdue);
    press(Qt::Key_B, Qt::ControlModifier);
    EXPECT_EQ(editor(place, "bookDate")->text(), QStringLiteral("2026-12-03"));
    fillField(editor(place, "bookDate"), QStringLiteral("4/12"));
    press(Qt::Key_Return, Qt::ControlModifier);
    auto bookings = need(bench.store->bookings(overdue));
    ASSERT_EQ(bookings.size(), 1U) << "moved, not made again";
    EXPECT_EQ(bookings[0].date, on("2026-12-04"));
    EXPECT_EQ(bookings[0].sequence, 1);
    chooseFirst(1);
    press(Qt::Key_B, Qt::ControlModifier);
    bench.dialogs.texts = {QStringLiteral("tenant away")};
    press(Qt::Key_D, Qt::ControlModifier);
    bookings = need(bench.store->bookings(overdue));
    EXPECT_EQ(bookings.at(0).state, reg::BookingState::Cancelled);
}

TEST_F(DueActionsTest, noAccessIsKeptWithItsPhotograph) {
    const QString path = QString::fromStdString((bench.folder() / "door.png").string());
    QImage picture(40, 40, QImage::Format_RGB32);
    picture.fill(0);
    ASSERT_TRUE(picture.save(path));
    chooseFirst(1);
    press(Qt::Key_K, Qt::ControlModifier);
    hearth::testing::typeLine(QStringLiteral("R. Ashdown"));
    fillField(editor(place, "noAccessLeft"), QStringLiteral("card"));
    bench.dialogs.chosen = {{path}};
    press(Qt::Key_P, Qt::ControlModifier);
    EXPECT_TRUE(text("photographText").contains(QStringLiteral("door.png")));
    fillField(editor(place, "noAccessDate"), QStringLiteral("24/11"));
    press(Qt::Key_Return, Qt::ControlModifier);
    const auto attempts = need(bench.store->accessAttempts(overdue));
    ASSERT_EQ(attempts.size(), 1U);
    EXPECT_EQ(attempts[0].who, "R. Ashdown");
    EXPECT_EQ(attempts[0].left, "card");
    EXPECT_EQ(attempts[0].channel, reg::Channel::Visit);
    EXPECT_EQ(need(bench.store->attachmentsOf(attempts[0].id.bytes)).size(), 1U);
    EXPECT_EQ(line(overdue).attempts, std::vector<Date>{on("2026-11-24")});
}

TEST_F(DueActionsTest, anAttemptNeedsWhoAndIsNeverToCome) {
    chooseFirst(1);
    press(Qt::Key_K, Qt::ControlModifier);
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(need(bench.store->accessAttempts(overdue)).empty());
    fillField(editor(place, "noAccessWho"), QStringLiteral("R. Ashdown"));
    fillField(editor(place, "noAccessDate"), QStringLiteral("26/11"));
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(need(bench.store->accessAttempts(overdue)).empty());
    press(Qt::Key_Escape);
    EXPECT_EQ(focus(), list());
}

TEST_F(DueActionsTest, aLetterWrittenElsewhereIsKeptWordForWord) {
    chooseFirst(2);
    press(Qt::Key_L, Qt::ControlModifier);
    fillField(editor(place, "callHow"), QStringLiteral("letter"));
    EXPECT_EQ(editor(place, "callNumber")->text(), QStringLiteral("1 Estate Office, Thornmere TH1 1AA"));
    fillField(editor(place, "callResult"), QStringLiteral("no answer yet"));
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(need(bench.store->letters(overdue)).empty()) << "what it says is missing";
    fillField(editor(place, "callText"), QStringLiteral("Please choose a day."));
    press(Qt::Key_Return, Qt::ControlModifier);
    for (const auto id : {overdue, soon}) {
        const auto letters = need(bench.store->letters(id));
        ASSERT_EQ(letters.size(), 1U);
        EXPECT_EQ(letters[0].channel, reg::Channel::Letter);
        EXPECT_EQ(letters[0].kind, "letter");
        EXPECT_EQ(letters[0].party, landlord.id);
        EXPECT_EQ(letters[0].text, "Please choose a day.");
        EXPECT_EQ(letters[0].result, "no answer yet");
        EXPECT_EQ(line(id).letters, std::vector<Date>{on("2026-11-25")});
    }
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(need(bench.store->letters(overdue)).empty()) << "one step of undo for both";
}

TEST_F(DueActionsTest, aCallIsKeptForAllThatWereChosen) {
    chooseFirst(2);
    press(Qt::Key_L, Qt::ControlModifier);
    EXPECT_EQ(editor(place, "callNumber")->text(), QStringLiteral("01632 960111"));
    fillField(editor(place, "callResult"), QStringLiteral("rings back tomorrow"));
    press(Qt::Key_Return, Qt::ControlModifier);
    for (const auto id : {overdue, soon}) {
        const auto letters = need(bench.store->letters(id));
        ASSERT_EQ(letters.size(), 1U);
        EXPECT_EQ(letters[0].channel, reg::Channel::Telephone);
        EXPECT_EQ(letters[0].party, landlord.id);
        EXPECT_EQ(letters[0].result, "rings back tomorrow");
    }
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(need(bench.store->letters(overdue)).empty()) << "one step of undo for both";
    EXPECT_TRUE(need(bench.store->letters(soon)).empty());
}

TEST_F(DueActionsTest, theStorySaysWhyAndOffersTheNextStep) {
    chooseFirst(1);
    press(Qt::Key_Return);
    EXPECT_EQ(focus(), child<QWidget>(place, "nextStepButton"));
    EXPECT_TRUE(text("reasonsText").contains(QStringLiteral("12 months from the check on 11 November 2025")))
        << text("reasonsText").toStdString();
    EXPECT_TRUE(text("reasonsText").contains(QStringLiteral("another firm's record")));
    auto* story = child<shell::LineList>(place, "storyList");
    ASSERT_GE(story->count(), 3);
    EXPECT_EQ(story->line(0).title, QStringLiteral("Deadline of the next check"));
    press(Qt::Key_Return);  // ring and book now
    EXPECT_TRUE(child<QWidget>(place, "callPage")->isVisible());
    fillField(editor(place, "callResult"), QStringLiteral("no answer"));
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(child<QWidget>(place, "storyPage")->isVisible()) << "back to where one came from";
    EXPECT_EQ(child<shell::LineList>(place, "storyList")->line(0).title, QStringLiteral("Telephone call"));
    press(Qt::Key_Escape);
    EXPECT_EQ(focus(), list());
}

TEST_F(DueActionsTest, anotherFirmsCheckMovesTheDeadline) {
    chooseFirst(1);
    press(Qt::Key_Return);
    press(Qt::Key_A, Qt::ControlModifier | Qt::ShiftModifier);
    fillField(editor(place, "earlierDate"), QStringLiteral("20/11"));
    fillField(editor(place, "earlierBy"), QStringLiteral("Kiln Gas"));
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(line(overdue).deadline, on("2027-11-20"))
        << "late: 12 months from the check, regulation 36(3)(a)";
}

TEST_F(DueActionsTest, alikeFlatsAreMadeInOneStep) {
    EXPECT_EQ(numberPattern(QStringLiteral("Flat 5, The Maltings")), QStringLiteral("Flat #, The Maltings"));
    EXPECT_EQ(numberPattern(QStringLiteral("Weir Cottage")), QStringLiteral("Weir Cottage #"));
    chooseFirst(1);
    press(Qt::Key_Return);
    press(Qt::Key_D, Qt::ControlModifier | Qt::ShiftModifier);
    hearth::testing::typeLine(QStringLiteral("8"));
    hearth::testing::typeLine(QStringLiteral("12"));
    EXPECT_TRUE(text("copyPreview").contains(QStringLiteral("8 Tanner's Row")))
        << text("copyPreview").toStdString();
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(need(bench.store->premises("tanner")).size(), 5U) << "9 stands there already";
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(need(bench.store->premises("tanner")).size(), 1U);
}

TEST_F(DueActionsTest, theSummaryIsWrittenAsSpreadsheetAndPages) {
    const QString csv = QString::fromStdString((bench.folder() / "checks.csv").string());
    bench.dialogs.answers = {1};
    bench.dialogs.files = {csv};
    press(Qt::Key_S, Qt::ControlModifier | Qt::ShiftModifier);
    QFile file(csv);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QList<QByteArray> rows = file.readAll().split('\n');
    ASSERT_EQ(rows.size(), 5) << "headings, three premises, and the end";
    EXPECT_TRUE(rows[1].contains("9 Tanner's Row")) << rows[1].toStdString();
    EXPECT_TRUE(rows[1].contains("Overdue"));
    EXPECT_TRUE(rows[1].contains("11 Nov 2026"));
    const QString pdf = QString::fromStdString((bench.folder() / "checks.pdf").string());
    bench.dialogs.answers = {0};
    bench.dialogs.files = {pdf};
    press(Qt::Key_S, Qt::ControlModifier | Qt::ShiftModifier);
    QFile pages(pdf);
    ASSERT_TRUE(pages.open(QIODevice::ReadOnly));
    EXPECT_TRUE(pages.readAll().startsWith("%PDF"));
}

TEST_F(DueActionsTest, aLandlordsSummaryNamesThemAndSpeaksTheirLanguage) {
    const auto pagesText = [this](const store::DueFilter& filter) {
        auto* head = child<DueHead>(place, "dueHead");
        head->show(filter, store::DueSort::Need, {});
        const QString path = fileNamed("summary.pdf");
        bench.dialogs.answers = {0};
        bench.dialogs.files = {path};
        list()->setFocus();
        press(Qt::Key_S, Qt::ControlModifier | Qt::ShiftModifier);
        return QString::fromStdString(
                   hearth::testing::runCommand("pdftotext -layout '" + path.toStdString() + "' -").text)
            .simplified();
    };
    store::DueFilter filter;
    filter.landlord = landlord.id;
    const QString english = pagesText(filter);
    for (const char* said :
         {"Gas safety checks: summary", "Fenn Estate", "9 Tanner's Row", "11 Nov 2026", "Record"}) {
        EXPECT_TRUE(english.contains(QLatin1String(said))) << said << " in " << english.toStdString();
    }
    landlord.language = "pl";
    need(bench.store->save(landlord));
    const words::Words polish(QStringLiteral("pl"));
    const QString overdueWord = words::dueState(polish, calendar::DueState::Overdue);
    ASSERT_NE(overdueWord, words::dueState(bench.words, calendar::DueState::Overdue));
    EXPECT_TRUE(pagesText(filter).contains(overdueWord));
    EXPECT_TRUE(pagesText({}).contains(overdueWord)) << "not narrowed, and all is theirs";
    const auto status = [this] { return child<QLabel>(window.get(), "statusText")->text(); };
    EXPECT_FALSE(status().contains(QStringLiteral("different languages"))) << status().toStdString();
    reg::Party other;
    other.id = {bench.store->newId()};
    other.name = "Ned Ash";
    need(bench.store->save(other));
    need(bench.store->removeRole(open, reg::RoleKind::Landlord));
    need(bench.store->save(reg::Role{{bench.store->newId()}, open, other.id, reg::RoleKind::Landlord}));
    const QString both = pagesText({});
    EXPECT_FALSE(both.contains(overdueWord)) << "one of them prefers none, and the window is English";
    EXPECT_FALSE(both.contains(QStringLiteral("Fenn Estate"))) << "it is not one landlord's";
    EXPECT_TRUE(status().contains(QStringLiteral("different languages"))) << status().toStdString();
}

TEST_F(DueActionsTest, theOverviewCountsAndLeadsToALandlord) {
    press(Qt::Key_G, Qt::ControlModifier);
    EXPECT_TRUE(child<QWidget>(place, "monthBars")->accessibleName().contains(QStringLiteral("Overdue: 1")))
        << child<QWidget>(place, "monthBars")->accessibleName().toStdString();
    press(Qt::Key_P, Qt::ControlModifier);
    ASSERT_EQ(bench.printing.jobs.size(), 1U);
    EXPECT_EQ(bench.printing.jobs[0].document.kind, "due_overview");
    const auto& chart = std::get<record::Plots>(bench.printing.jobs[0].document.blocks.front());
    const auto& due = chart.plots.at(0).series.at(0);
    ASSERT_EQ(due.points.size(), 13U) << "what is late, and twelve months";
    EXPECT_EQ(due.points[0].y, quantity::Decimal(1, 0));
    EXPECT_EQ(due.points[2].y, quantity::Decimal(1, 0)) << "4 December";
    EXPECT_EQ(due.points[3].y, quantity::Decimal(1, 0)) << "6 January";
    EXPECT_EQ(chart.plots[0].x.ticks[2].text, "Dec");
    child<shell::LineList>(place, "landlordsList")->setFocus();
    press(Qt::Key_Home);
    press(Qt::Key_Return);
    EXPECT_EQ(focus(), list());
    EXPECT_EQ(child<DueHead>(place, "dueHead")->filter().landlord, landlord.id);
}

TEST_F(DueActionsTest, aDaySheetHoldsTheEngineersBookings) {
    reg::Booking booking;
    booking.premises = soon;
    booking.date = on("2026-11-26");
    booking.from = "09:00";
    booking.engineer = bench.engineer.id;
    need(bench.store->book({booking}));
    press(Qt::Key_D, Qt::ControlModifier);
    EXPECT_EQ(child<shell::LineList>(place, "dayList")->count(), 0);
    fillField(editor(place, "dayDate"), QStringLiteral("26/11"));
    ASSERT_EQ(child<shell::LineList>(place, "dayList")->count(), 1);
    press(Qt::Key_P, Qt::ControlModifier);
    ASSERT_EQ(bench.printing.jobs.size(), 1U);
    const auto& table = std::get<record::Table>(bench.printing.jobs[0].document.blocks.front());
    ASSERT_EQ(table.rows.size(), 1U);
    EXPECT_EQ(table.rows[0][0], "09:00");
    EXPECT_NE(table.rows[0][1].find("21 Chapel Street"), std::string::npos);
}

TEST_F(DueActionsTest, whatTurnedOverdueIsChosenInTheList) {
    const auto second = let("10 Tanner's Row", "2025-11-20");
    const auto third = let("11 Tanner's Row", "2025-11-21");
    press(Qt::Key_B, Qt::ControlModifier);  // another page lies over the list
    place->openOverdue({second, third});
    EXPECT_EQ(list()->count(), 3) << "the overdue alone";
    EXPECT_EQ(list()->chosen(), (std::vector<reg::PremisesId>{second, third}));
    EXPECT_EQ(focus(), list());
    EXPECT_TRUE(text("chosenText").contains(QStringLiteral("2 premises chosen")));
}

/// Escape leaves a page from whatever holds the keyboard, but for a field that was typed into.
TEST_F(DueActionsTest, escapeLeavesAPageFromWhereverTheKeyboardIs) {
    const std::vector<std::pair<Qt::Key, Qt::KeyboardModifiers>> pages{
        {Qt::Key_B, Qt::ControlModifier}, {Qt::Key_K, Qt::ControlModifier}, {Qt::Key_L, Qt::ControlModifier},
        {Qt::Key_R, Qt::ControlModifier}, {Qt::Key_G, Qt::ControlModifier}, {Qt::Key_D, Qt::ControlModifier},
        {Qt::Key_U, Qt::ControlModifier}, {Qt::Key_Return, Qt::NoModifier}};
    for (const auto& [key, modifiers] : pages) {
        constexpr int kMostStops = 80;
        QWidget* first = nullptr;
        for (int stops = 0; stops < kMostStops; ++stops) {
            chooseFirst(1);
            press(key, modifiers);
            for (int i = 0; i < stops; ++i) {
                press(Qt::Key_Tab);
            }
            auto* at = focus();
            if (stops > 0 && at == first) {
                break;
            }
            first = stops == 0 ? at : first;
            const bool outside = !place->isAncestorOf(at);
            press(Qt::Key_Escape);
            if (outside) {
                EXPECT_TRUE(place->isAncestorOf(focus())) << at->objectName().toStdString();
                press(Qt::Key_Escape);
            }
            ASSERT_EQ(focus(), list())
                << "from " << at->objectName().toStdString() << " of the page by " << key;
        }
    }
}

TEST_F(DueActionsTest, everyPageIsWalkable) {
    const auto walk = [this](int key, Qt::KeyboardModifiers modifiers) {
        chooseFirst(1);
        press(key, modifiers);
        hearth::testing::expectWalkable(window.get(), [this] { return bench.state(); });
        press(Qt::Key_Escape);
        press(Qt::Key_Escape);
    };
    walk(Qt::Key_B, Qt::ControlModifier);
    walk(Qt::Key_K, Qt::ControlModifier);
    walk(Qt::Key_L, Qt::ControlModifier);
    walk(Qt::Key_R, Qt::ControlModifier);
    walk(Qt::Key_R, Qt::ControlModifier | Qt::ShiftModifier);
    walk(Qt::Key_G, Qt::ControlModifier);
    walk(Qt::Key_D, Qt::ControlModifier);
    walk(Qt::Key_Return, Qt::NoModifier);
}

}  // namespace
}  // namespace hearth::ui::due
