// SPDX-License-Identifier: GPL-3.0-or-later
// Serial numbers: days since 30 December 1899, ECMA-376 part 1, 18.17.4.1, from memory; the pairs below were
// counted by Python's datetime (date(1899, 12, 30) + timedelta(n)), which is not ours.
#include "core/exchange/import_dates.h"

#include <gtest/gtest.h>

namespace hearth::exchange {
namespace {

struct Written {
    const char* cell;
    const char* iso;
    DateForm form = DateForm::Plain;
};

TEST(ImportDates, readWhatSpreadsheetsWrite) {
    const std::vector<Written> dates{
        {"25/11/2026", "2026-11-25"},
        {"25.11.2026", "2026-11-25"},
        {"25-11-2026", "2026-11-25"},
        {"2026-11-25", "2026-11-25"},
        {"2026-11-25T00:00:00", "2026-11-25"},
        {"2026-11-25 09:30", "2026-11-25"},
        {"25/11/2026 00:00:00", "2026-11-25"},
        {"03/04/2026", "2026-04-03", DateForm::EitherOrder},
        {"4/4/2026", "2026-04-04"},
        {"25 Nov 2026", "2026-11-25"},
        {"25-Nov-2026", "2026-11-25"},
        {"Wed 25 November 2026", "2026-11-25"},
        {"25th November 2026", "2026-11-25"},
        {"November 25, 2026", "2026-11-25"},
        {"25 Tachwedd 2026", "2026-11-25"},
        {"3 Mai 2026", "2026-05-03"},
        {"25 listopada 2026", "2026-11-25"},
        {"25/11/26", "2026-11-25", DateForm::ShortYear},
        {"25/11/31", "1931-11-25", DateForm::ShortYear},
        {"25-Nov-26", "2026-11-25", DateForm::ShortYear},
        {"45231", "2023-11-01", DateForm::Serial},
        {"45231.5", "2023-11-01", DateForm::Serial},
        {"44197", "2021-01-01", DateForm::Serial},
        {"29/02/2024", "2024-02-29"},
    };
    for (const auto& date : dates) {
        const auto read = readImportedDate(date.cell, DateOrder::DayFirst);
        ASSERT_TRUE(read.has_value()) << date.cell;
        EXPECT_EQ(calendar::isoText(read->date), date.iso) << date.cell;
        EXPECT_EQ(read->form, date.form) << date.cell;
    }
    EXPECT_EQ(calendar::isoText(readImportedDate("03/04/2026", DateOrder::MonthFirst)->date), "2026-03-04");
}

TEST(ImportDates, refuseWhatIsNone) {
    for (const char* cell :
         {"", "31/02/2026", "29/02/2023", "11/25/2026", "2026-13-01", "soon", "25/11", "2026", "1234",
          "12345", "99999", "25 Nob 2026", "12/", "0/1/2026", "25/11/026", "25/11/2026/1"}) {
        EXPECT_EQ(readImportedDate(cell, DateOrder::DayFirst), std::nullopt) << cell;
    }
}

TEST(ImportDates, tellTheOrderOfAColumn) {
    const auto guess = [](std::vector<std::string> cells) {
        const auto found = guessDateOrder(cells);
        return std::string(found.order == DateOrder::DayFirst ? "day" : "month") + (found.sure ? "" : "?");
    };
    EXPECT_EQ(guess({"03/04/2026", "25/11/2026"}), "day");
    EXPECT_EQ(guess({"03/04/2026", "11/25/2026"}), "month");
    EXPECT_EQ(guess({"03/04/2026", "05/06/2026"}), "day?");
    EXPECT_EQ(guess({"25/11/2026", "11/25/2026", "11/26/2026"}), "month?");
    EXPECT_EQ(guess({"2026-11-25", "45231", "", "4/4/2026"}), "day");
    EXPECT_EQ(guess({}), "day");
}

}  // namespace
}  // namespace hearth::exchange
