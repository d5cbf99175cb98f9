// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/input/date_time_editors.h"

#include "tests/ui/input/bed.h"

#include <QApplication>
#include <QCalendarWidget>
#include <QLineEdit>

#include <gtest/gtest.h>

namespace hearth::ui::input {
namespace {

using testing::Bed;

calendar::Date today() {
    using namespace std::chrono;
    return year(2026) / 11 / 25;
}

struct TypedDate {
    const char* typed;
    const char* text;
    const char* shown;
};

class DateTest : public ::testing::TestWithParam<TypedDate> {};

TEST_P(DateTest, isReadShownInFullAndKeptAsIso) {
    Bed bed;
    Editor* editor = bed.add(makeDateEditor(nullptr, today), QStringLiteral("Date"));
    bed.add(makeTextEditor(nullptr), QStringLiteral("Next"));
    bed.show();
    bed.focus(editor);
    Bed::type(QString::fromUtf8(GetParam().typed));
    Bed::press(Qt::Key_Return);
    EXPECT_EQ(editor->text().toStdString(), GetParam().text);
    EXPECT_EQ(qobject_cast<QLineEdit*>(editor->focusTarget())->text().toStdString(), GetParam().shown);
    EXPECT_EQ(bed.committed, QStringList{QString::fromUtf8(GetParam().text)});
    // Going through once more changes nothing.
    bed.focus(editor);
    Bed::press(Qt::Key_Return);
    EXPECT_EQ(bed.committed.size(), 1);
}

INSTANTIATE_TEST_SUITE_P(TypedDate, DateTest,
                         ::testing::Values(TypedDate{"t", "2026-11-25", "25 Nov 2026"},
                                           TypedDate{"+7", "2026-12-02", "2 Dec 2026"},
                                           TypedDate{"3/10", "2026-10-03", "3 Oct 2026"},
                                           TypedDate{"07.04.23", "2023-04-07", "7 Apr 2023"},
                                           TypedDate{"2026-11-30", "2026-11-30", "30 Nov 2026"},
                                           TypedDate{"1 May 2027", "2027-05-01", "1 May 2027"},
                                           // what can't be read, or never was, stays as it is
                                           TypedDate{"31/2/2026", "31/2/2026", "31/2/2026"},
                                           TypedDate{"next week", "next week", "next week"}));

TEST(DateEditor, showsWhatItIsGiven) {
    Bed bed;
    Editor* editor = bed.add(makeDateEditor(nullptr, today), QStringLiteral("Date"));
    editor->setText(QStringLiteral("2026-10-25"));
    EXPECT_EQ(qobject_cast<QLineEdit*>(editor->focusTarget())->text(), QStringLiteral("25 Oct 2026"));
    EXPECT_EQ(editor->text(), QStringLiteral("2026-10-25"));
    editor->setText(QString());
    EXPECT_EQ(editor->text(), QString());
}

TEST(DateEditor, altAndDownOpensACalendarAtTheDate) {
    Bed bed;
    Editor* editor = bed.add(makeDateEditor(nullptr, today), QStringLiteral("Date"));
    bed.show();
    bed.focus(editor);
    editor->setText(QStringLiteral("2026-10-25"));
    Bed::press(Qt::Key_Down, Qt::AltModifier);
    auto* month = editor->findChild<QCalendarWidget*>(QStringLiteral("dateCalendar"));
    ASSERT_NE(month, nullptr);
    EXPECT_EQ(month->selectedDate(), QDate(2026, 10, 25));
    Q_EMIT month->activated(QDate(2026, 10, 29));
    EXPECT_EQ(editor->text(), QStringLiteral("2026-10-29"));
    EXPECT_EQ(bed.committed, QStringList{QStringLiteral("2026-10-29")});
}

struct TypedTime {
    const char* typed;
    const char* text;
};

class TimeTest : public ::testing::TestWithParam<TypedTime> {};

TEST_P(TimeTest, isReadAsHoursAndMinutes) {
    Bed bed;
    Editor* editor = bed.add(makeTimeEditor(nullptr, [] { return QTime(14, 5, 9); }), QStringLiteral("At"));
    bed.add(makeTextEditor(nullptr), QStringLiteral("Next"));
    bed.show();
    bed.focus(editor);
    Bed::type(QString::fromUtf8(GetParam().typed));
    Bed::press(Qt::Key_Return);
    EXPECT_EQ(editor->text().toStdString(), GetParam().text);
    EXPECT_EQ(bed.committed, QStringList{QString::fromUtf8(GetParam().text)});
}

INSTANTIATE_TEST_SUITE_P(TypedDate, TimeTest,
                         ::testing::Values(TypedTime{"946", "09:46"}, TypedTime{"09:46", "09:46"},
                                           TypedTime{"9.46", "09:46"}, TypedTime{"1605", "16:05"},
                                           TypedTime{"09:46:10", "09:46:10"}, TypedTime{"n", "14:05"},
                                           TypedTime{"N", "14:05"}, TypedTime{"2560", "2560"},
                                           TypedTime{"24:00", "24:00"}, TypedTime{"9", "9"},
                                           TypedTime{"soon", "soon"}));

}  // namespace
}  // namespace hearth::ui::input
