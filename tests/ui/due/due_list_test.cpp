// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/due_list.h"

#include "tests/ui/due/due_bench.h"
#include "tests/ui/support/keys.h"
#include "tests/ui/support/walker.h"
#include "ui/due/due_head.h"
#include "ui/due/due_place.h"
#include "ui/words/pseudo_translator.h"

#include <QImage>

#include <gtest/gtest.h>
#include <memory>
#include <set>

namespace hearth::ui::due {
namespace {

using calendar::Date;
using calendar::DueState;
using hearth::testing::child;
using hearth::testing::FirmBench;
using hearth::testing::press;
using hearth::testing::type;

Date day(const char* iso) {
    return *calendar::fromIso(iso);
}

/// A row in which everything is filled.
store::DueLine fullLine() {
    store::DueLine line;
    line.address = {"14 Tallow Lane", "Flat 2", "Thornmere", "TH2 9XY"};
    line.duty = calendar::CheckDuty::Let;
    line.state = DueState::Overdue;
    line.deadline = day("2026-11-19");
    line.opens = day("2026-09-20");
    line.lastCheck = day("2025-11-19");
    store::DueBooking booking;
    booking.date = day("2026-12-01");
    booking.from = "10:00";
    booking.until = "12:00";
    booking.engineerName = "R. Ashdown";
    booking.afterDeadline = true;
    line.booking = booking;
    line.letters = {day("2026-10-01"), day("2026-10-29")};
    line.attempts = {day("2026-11-12")};
    line.landlordName = "Fenn Estate";
    line.agentName = "Ash Lettings";
    return line;
}

class DueListTest : public ::testing::Test {
  protected:
    void start() {
        window = std::make_unique<shell::MainWindow>(bench.parts());
        place = new DuePlace(window->context(), due);
        window->setPlaces({place});
        window->resize(1280, 800);
        hearth::testing::activate(window.get());
    }
    void fillWith(int count) {
        due.count = count;
        due.counts.of[static_cast<std::size_t>(DueState::Overdue)] = count;
        for (int i = 0; i < 4; ++i) {
            ids.push_back({bench.store->newId()});
        }
        due.line = [this](int row) {
            auto line = fullLine();
            line.premises = ids[static_cast<std::size_t>(row) % ids.size()];
            line.address.line1 = std::to_string(row) + " Long Lane";
            return line;
        };
    }
    [[nodiscard]] DueList* list() const { return child<DueList>(place, "dueList"); }
    [[nodiscard]] QString spoken(int row) const {
        return list()->model()->index(row, 0).data(Qt::AccessibleTextRole).toString();
    }

    FirmBench bench;
    hearth::testing::ScriptedDue due;
    std::vector<reg::PremisesId> ids;
    std::unique_ptr<shell::MainWindow> window;
    DuePlace* place = nullptr;
};

TEST_F(DueListTest, aRowSaysAllThatItsStripShows) {
    fillWith(1);
    due.line = [](int) { return fullLine(); };
    start();
    EXPECT_EQ(
        spoken(0),
        QStringLiteral("14 Tallow Lane, Flat 2, Thornmere TH2 9XY, Overdue, booked, deadline 19 Nov 2026, "
                       "6 day(s) overdue, window from 20 Sep 2026, last check 19 Nov 2025, "
                       "booked 1 Dec 2026, 10:00 to 12:00, R. Ashdown, that is after the deadline, "
                       "letters and calls 1 Oct 2026, 29 Oct 2026, no access 12 Nov 2026, "
                       "landlord Fenn Estate, agent Ash Lettings, next: Booked 1 Dec, 10:00"));
}

TEST_F(DueListTest, aLongListIsReadAsItComesIntoView) {
    fillWith(100000);
    start();
    EXPECT_EQ(list()->count(), 100000);
    EXPECT_LE(due.pages.size(), 3U) << "more than what is in view was read";
    press(Qt::Key_End);
    EXPECT_EQ(list()->currentRow(), 99999);
    EXPECT_LE(due.pages.size(), 6U);
    EXPECT_EQ(list()->line(99999).address.line1, "99999 Long Lane");
}

TEST_F(DueListTest, countsAreFiltersByKey) {
    fillWith(3);
    due.counts.of[static_cast<std::size_t>(DueState::Booked)] = 5;
    due.counts.of[static_cast<std::size_t>(DueState::NoDuty)] = 7;
    start();
    EXPECT_EQ(child<CountChip>(place, "count_all")->count(), 8) << "what has no duty is not counted";
    EXPECT_EQ(child<CountChip>(place, "count_booked")->count(), 5);
    press(Qt::Key_4, Qt::AltModifier);
    EXPECT_EQ(due.asked.back().states, std::vector<DueState>{DueState::Booked});
    EXPECT_EQ(list()->count(), 5);
    EXPECT_TRUE(child<CountChip>(place, "count_booked")->isChecked());
    press(Qt::Key_4, Qt::AltModifier);
    EXPECT_TRUE(due.asked.back().states.empty()) << "a second press goes back";
    press(Qt::Key_1, Qt::AltModifier);
    press(Qt::Key_0, Qt::AltModifier);
    EXPECT_TRUE(due.asked.back().states.empty());
    child<CountChip>(place, "count_overdue")->setFocus();
    press(Qt::Key_Return);
    EXPECT_EQ(due.asked.back().states, std::vector<DueState>{DueState::Overdue});
}

TEST_F(DueListTest, theOverdueThatAreBookedAreSaidToBe) {
    fillWith(3);
    due.counts.overdueBooked = 2;
    start();
    EXPECT_EQ(child<CountChip>(place, "count_overdue")->accessibleName(),
              QStringLiteral("Overdue, 2 of them booked: 3"));
    EXPECT_EQ(child<CountChip>(place, "count_booked")->accessibleName(), QStringLiteral("Booked: 0"));
    EXPECT_TRUE(spoken(0).contains(QStringLiteral("Overdue, booked"))) << spoken(0).toStdString();
}

TEST_F(DueListTest, filtersAndOrderAreAskedOfTheStore) {
    fillWith(3);
    const UuidBytes landlord = bench.store->newId();
    due.choices[store::DueBy::Landlord] = {{landlord, "Fenn Estate", 3}};
    due.choices[store::DueBy::Area] = {{{}, "TH2", 3}};
    start();
    EXPECT_TRUE(due.choicesAsked.empty()) << "the list waits for what nobody opened";
    auto* field = hearth::testing::editor(place, "dueLandlord");
    hearth::testing::enterField(field);
    type(QStringLiteral("f"));
    press(Qt::Key_Return);
    EXPECT_EQ(due.asked.back().landlord, reg::PartyId{landlord});
    hearth::testing::enterField(hearth::testing::editor(place, "dueArea"));
    type(QStringLiteral("th"));
    press(Qt::Key_Return);
    EXPECT_EQ(due.asked.back().outward, "TH2");
    EXPECT_EQ(due.asked.back().landlord, reg::PartyId{landlord});
    hearth::testing::enterField(hearth::testing::editor(place, "dueOrder"));
    type(QStringLiteral("postc"));
    press(Qt::Key_Return);
    EXPECT_EQ(due.sorted, store::DueSort::Postcode);
    press(Qt::Key_F, Qt::ControlModifier);
    type(QStringLiteral("tallow"));
    EXPECT_EQ(due.asked.back().text, "tallow");
    press(Qt::Key_Down);
    EXPECT_EQ(hearth::testing::focus(), list());
}

TEST_F(DueListTest, aViewIsSavedChosenAndForgotten) {
    fillWith(3);
    start();
    press(Qt::Key_1, Qt::AltModifier);
    bench.dialogs.texts = {QStringLiteral(" Today ")};
    press(Qt::Key_S, Qt::ControlModifier);
    ASSERT_EQ(savedViews(*bench.store).size(), 1U);
    EXPECT_EQ(hearth::testing::editor(place, "dueView")->text(), QStringLiteral("Today"));
    press(Qt::Key_0, Qt::AltModifier);
    EXPECT_EQ(hearth::testing::editor(place, "dueView")->text(), QString());
    hearth::testing::enterField(hearth::testing::editor(place, "dueView"));
    type(QStringLiteral("to"));
    press(Qt::Key_Return);
    EXPECT_EQ(due.asked.back().states, std::vector<DueState>{DueState::Overdue});
    child<QAbstractButton>(place, "forgetViewButton")->setFocus();
    press(Qt::Key_Return);
    EXPECT_TRUE(savedViews(*bench.store).empty());
    EXPECT_EQ(due.asked.back().states, std::vector<DueState>{DueState::Overdue}) << "what is shown stays";
}

TEST_F(DueListTest, severalAreChosenByKeyboard) {
    fillWith(4);
    start();
    press(Qt::Key_Home);
    press(Qt::Key_Down, Qt::ShiftModifier);
    press(Qt::Key_Down, Qt::ShiftModifier);
    EXPECT_EQ(list()->chosen(), (std::vector<reg::PremisesId>{ids[0], ids[1], ids[2]}));
    EXPECT_TRUE(child<QLabel>(place, "chosenText")->text().startsWith(QStringLiteral("3 premises")));
    press(Qt::Key_A, Qt::ControlModifier);
    EXPECT_EQ(list()->chosen().size(), 4U);
}

TEST_F(DueListTest, theStripMovesAndZoomsByKeys) {
    fillWith(1);
    start();
    const auto before = list()->scale();
    EXPECT_TRUE(before.shows(day("2026-11-25"))) << "today is in view";
    press(Qt::Key_Right);
    EXPECT_EQ(list()->scale().first, calendar::addMonths(before.first, 1));
    press(Qt::Key_Left);
    EXPECT_EQ(list()->scale().first, before.first);
    press(Qt::Key_Minus);
    EXPECT_GT(calendar::daysBetween(list()->scale().first, list()->scale().last),
              calendar::daysBetween(before.first, before.last));
    press(Qt::Key_Plus);
    press(Qt::Key_Plus);
    EXPECT_LT(calendar::daysBetween(list()->scale().first, list()->scale().last),
              calendar::daysBetween(before.first, before.last));
}

TEST_F(DueListTest, anEmptyListHasNothingToChoose) {
    start();
    EXPECT_EQ(list()->count(), 0);
    press(Qt::Key_Down);
    EXPECT_FALSE(list()->current());
    EXPECT_TRUE(list()->chosen().empty());
}

TEST_F(DueListTest, thePlaceIsWalkable) {
    fillWith(3);
    start();
    hearth::testing::expectWalkable(window.get(), [this] { return bench.state(); });
}

TEST_F(DueListTest, thePlaceIsWalkableInTheLongestLanguage) {
    words::PseudoTranslator pseudo;
    QCoreApplication::installTranslator(&pseudo);
    fillWith(3);
    start();
    hearth::testing::expectWalkable(window.get(), [this] { return bench.state(); });
    QCoreApplication::removeTranslator(&pseudo);
}

/// Each sign is a picture of its own without its colour.
TEST(DueMarks, keepApartInGreyscale) {
    const auto grey = [](const std::function<void(QPainter&)>& draw) {
        QImage image(24, 24, QImage::Format_Grayscale8);
        image.fill(255);
        QPainter painter(&image);
        draw(painter);
        painter.end();
        QByteArray dark;  // what is inked at all, whatever its tone
        for (int y = 0; y < image.height(); ++y) {
            for (int x = 0; x < image.width(); ++x) {
                dark.append(qGray(image.pixel(x, y)) < 200 ? '1' : '0');
            }
        }
        return dark;
    };
    std::set<QByteArray> states;
    for (const auto state : calendar::kDueStates) {
        states.insert(grey([state](QPainter& painter) {
            drawState(painter, QRectF(2, 2, 20, 20), state, look::Scheme::Light);
        }));
    }
    EXPECT_EQ(states.size(), calendar::kDueStates.size());
    std::set<QByteArray> marks;
    for (const auto mark : {Mark::Check, Mark::Letter, Mark::Call, Mark::NoAccess, Mark::Booked,
                            Mark::Overrun, Mark::Deadline, Mark::Today}) {
        marks.insert(grey([mark](QPainter& painter) {
            drawMark(painter, QRectF(2, 2, 20, 20), mark, look::Scheme::Light);
        }));
    }
    EXPECT_EQ(marks.size(), 8U);
}

}  // namespace
}  // namespace hearth::ui::due
