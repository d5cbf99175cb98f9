// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/remind_page.h"

#include "tests/ui/due/due_window.h"
#include "ui/shell/line_list.h"
#include "ui/words/letter_words.h"

#include <QFile>

#include <algorithm>
#include <array>

namespace hearth::ui::due {
namespace {

using hearth::testing::child;
using hearth::testing::need;
using hearth::testing::press;

constexpr std::array kRows{0, 1, 2};

class RemindPageTest : public DueWindowTest {
  protected:
    [[nodiscard]] QString headText() const {
        QString all;
        for (const auto* one : child<RemindPage>(place, "remindPage")->findChildren<QLabel*>()) {
            all += one->text() + u' ';
        }
        return all;
    }
};

TEST_F(RemindPageTest, lettersGoIntoOnePdfAndAreKeptWordForWord) {
    const QString path = QString::fromStdString((bench.folder() / "letters.pdf").string());
    press(Qt::Key_R, Qt::ControlModifier | Qt::ShiftModifier);
    auto* reminders = child<shell::LineList>(place, "remindList");
    ASSERT_GE(reminders->count(), 2);
    const int count = reminders->count();
    bench.dialogs.files = {path};
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(QFile::exists(path));
    const auto kept = need(bench.store->letters(landlord.id));
    ASSERT_EQ(static_cast<int>(kept.size()), count);
    EXPECT_EQ(kept[0].kind, "reminder");
    EXPECT_NE(kept[0].text.find("Dear Fenn Estate"), std::string::npos) << kept[0].text;
    EXPECT_NE(kept[0].text.find("01632\u00a0960000"), std::string::npos) << kept[0].text;
    press(Qt::Key_R, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(child<shell::LineList>(place, "remindList")->count(), 0) << "not twice for the same stage";
}

TEST_F(RemindPageTest, aLetterSpeaksTheLanguageOfWhoGetsIt) {
    landlord.language = "pl";
    need(bench.store->save(landlord));
    bench.dialogs.files = {fileNamed("letters.pdf")};
    chooseFirst(1);
    press(Qt::Key_R, Qt::ControlModifier);
    press(Qt::Key_Return, Qt::ControlModifier);
    const words::Words polish(QStringLiteral("pl"));
    const auto own = words::shippedReminder(polish, words::ReminderDay::Past);
    ASSERT_NE(own, words::shippedReminder(bench.words, words::ReminderDay::Past));
    const auto begins = own.section(u'{', 0, 0).toStdString();
    const auto first = need(bench.store->letters(landlord.id)).front().text;
    EXPECT_EQ(first.substr(0, begins.size()), begins);
    landlord.language = "en+pl";
    need(bench.store->save(landlord));
    bench.dialogs.files = {fileNamed("letters.pdf")};
    press(Qt::Key_R, Qt::ControlModifier);
    press(Qt::Key_Return, Qt::ControlModifier);
    const auto letters = need(bench.store->letters(landlord.id));
    ASSERT_EQ(letters.size(), 2U);
    const bool isFirst = letters[0].text != first;
    const auto& both = letters[isFirst ? 0 : 1].text;
    EXPECT_EQ(both.find("Dear Fenn Estate"), 0U) << both;
    EXPECT_NE(both.find("\n\n" + begins), std::string::npos) << both;
}

TEST_F(RemindPageTest, aLetterSaysWhenTheCheckIsDueWhereTheFirmsTextAsksForIt) {
    bench.firm.reminderText = "Dear {customer}, the check at {premises} is due by {due}.";
    need(bench.store->saveFirm(bench.firm));
    bench.dialogs.files = {fileNamed("letters.pdf")};
    chooseFirst(1);
    press(Qt::Key_R, Qt::ControlModifier);
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(need(bench.store->letters(landlord.id)).front().text,
              "Dear Fenn Estate, the check at 9 Tanner's Row, Thornmere TH2 9XY is due by "
              "11\u00a0November\u00a02026.");
}

TEST_F(RemindPageTest, lettersArePrintedAsOneJob) {
    chooseFirst(3);
    press(Qt::Key_R, Qt::ControlModifier);
    press(Qt::Key_P, Qt::ControlModifier);
    EXPECT_EQ(bench.printing.manys, 1);
    EXPECT_EQ(bench.printing.jobs.size(), 3U);
    EXPECT_EQ(need(bench.store->letters(landlord.id)).size(), 3U);
}

TEST_F(RemindPageTest, whoObjectedIsNotRemindedAndThatIsSaid) {
    landlord.reminderWithdrawn = on("2026-11-01");
    need(bench.store->save(landlord));
    chooseFirst(1);
    press(Qt::Key_R, Qt::ControlModifier);
    auto* reminders = child<shell::LineList>(place, "remindList");
    ASSERT_EQ(reminders->count(), 1);
    EXPECT_TRUE(reminders->line(0).detail.contains(QStringLiteral("objected")))
        << reminders->line(0).detail.toStdString();
    EXPECT_FALSE(child<QPushButton>(place, "lettersPdfButton")->isEnabled());
    EXPECT_FALSE(child<QPushButton>(place, "mailsButton")->isEnabled());
}

TEST_F(RemindPageTest, mailsAreBegunInTheMailProgramAndKept) {
    landlord.email = "estate@example.org";
    landlord.sendBy = reg::SendBy::Email;
    need(bench.store->save(landlord));
    chooseFirst(2);
    press(Qt::Key_R, Qt::ControlModifier);
    press(Qt::Key_M, Qt::ControlModifier);
    ASSERT_EQ(bench.mails.size(), 2U);
    EXPECT_EQ(bench.mails[0].to, QStringLiteral("estate@example.org"));
    EXPECT_TRUE(bench.mails[0].text.startsWith(QStringLiteral("Dear Fenn Estate")));
    const auto kept = need(bench.store->letters(landlord.id));
    ASSERT_EQ(kept.size(), 2U);
    EXPECT_EQ(kept[0].channel, reg::Channel::Email);
}

TEST_F(RemindPageTest, aMailProgramThatFailsKeepsNothingAsSent) {
    landlord.email = "estate@example.org";
    landlord.sendBy = reg::SendBy::Email;
    need(bench.store->save(landlord));
    bench.mailFailure = Error{ErrorCode::MailFailed, {"no mail program"}};
    chooseFirst(1);
    press(Qt::Key_R, Qt::ControlModifier);
    press(Qt::Key_M, Qt::ControlModifier);
    EXPECT_EQ(bench.dialogs.told.size(), 1);
    EXPECT_TRUE(need(bench.store->letters(landlord.id)).empty());
}

/// By hand: booked for 30 November, before its deadline of 4 December.
TEST_F(RemindPageTest, whereAVisitIsBookedNobodyIsRemindedUnlessThatIsAskedFor) {
    reg::Booking booking;
    booking.premises = soon;
    booking.date = on("2026-11-30");
    need(bench.store->book({booking}));
    place->refresh();
    auto* const bothWays = list();
    for (const bool chosen : {true, false}) {
        bothWays->setFocus();
        if (chosen) {
            press(Qt::Key_A, Qt::ControlModifier);
        }
        press(Qt::Key_R, Qt::ControlModifier | (chosen ? Qt::NoModifier : Qt::ShiftModifier));
        auto* reminders = child<shell::LineList>(place, "remindList");
        ASSERT_EQ(reminders->count(), 2) << "the one that is booked is left out";
        EXPECT_NE(reminders->accessibleName(), QString());
        EXPECT_TRUE(headText().contains(QStringLiteral("1 booked, left out."))) << headText().toStdString();
        press(Qt::Key_B, Qt::ControlModifier);
        ASSERT_EQ(reminders->count(), 3);
        EXPECT_TRUE(headText().contains(QStringLiteral("1 booked among them."))) << headText().toStdString();
        EXPECT_TRUE(std::any_of(kRows.begin(), kRows.end(), [reminders](int row) {
            return reminders->line(row).detail.endsWith(QStringLiteral("booked for 30 Nov 2026"));
        }));
        press(Qt::Key_B, Qt::ControlModifier);
        EXPECT_EQ(reminders->count(), 2);
        press(Qt::Key_Escape);
    }
    chooseFirst(3);
    press(Qt::Key_R, Qt::ControlModifier);
    press(Qt::Key_End);
    const QString key = child<shell::LineList>(place, "remindList")->currentKey();
    press(Qt::Key_B, Qt::ControlModifier);
    EXPECT_EQ(child<shell::LineList>(place, "remindList")->currentKey(), key) << "the cursor stays";
    press(Qt::Key_Escape);
    bench.dialogs.files = {fileNamed("letters.pdf")};
    press(Qt::Key_R, Qt::ControlModifier | Qt::ShiftModifier);
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(need(bench.store->letters(landlord.id)).size(), 2U);
    EXPECT_TRUE(need(bench.store->letters(soon)).empty());
}

/// The days are the test's own: 12 months after the checks of 11 November 2025 and 6 January 2026.
TEST_F(RemindPageTest, aLetterNamesTheDayAndWhetherItIsPast) {
    bench.dialogs.files = {fileNamed("letters.pdf")};
    press(Qt::Key_R, Qt::ControlModifier | Qt::ShiftModifier);
    press(Qt::Key_Return, Qt::ControlModifier);
    const auto late = need(bench.store->letters(overdue)).front().text;
    EXPECT_NE(late.find("was due by 11\u00a0November\u00a02026. We know of none since."), std::string::npos)
        << late;
    const auto early = need(bench.store->letters(open)).front().text;
    EXPECT_NE(early.find("is due by 6\u00a0January\u00a02027."), std::string::npos) << early;
}

}  // namespace
}  // namespace hearth::ui::due
