// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workings/result_view.h"

#include "ui/words/question_words.h"

#include <QLabel>

#include <gtest/gtest.h>

namespace hearth::ui::workings {
namespace {

using judging::Answer;
using judging::Derived;
using quantity::Decimal;
using quantity::UnitCode;

QString shownIn(const QWidget& view) {
    QString text;
    for (const auto* label : view.findChildren<QLabel*>()) {
        text += label->text() + u'\n';
    }
    return text;
}

TEST(ResultView, ShowsEachFigureWithItsUncertaintyAndWhereItsFormulaStands) {
    const words::Words words;
    Answer answer;
    answer.figures.push_back({Derived::GasFlow,
                              {*Decimal::parse("2.31"), UnitCode::CubicMetrePerHour},
                              quantity::Figure{*Decimal::parse("0.03"), UnitCode::CubicMetrePerHour},
                              "a handbook"});
    answer.notes.push_back({rulebook::Say::LimitFromMemory, {}});
    answer.errors.push_back({ErrorCode::OutOfRange, {"7", "1", "2"}});
    ResultView view(words, nullptr);
    view.show(answer);
    const QString shown = shownIn(view);
    EXPECT_FALSE(view.isHidden());
    EXPECT_TRUE(shown.contains(words::derived(words, Derived::GasFlow)));
    EXPECT_TRUE(shown.contains(QStringLiteral("2.31 ± 0.03"))) << shown.toStdString();
    EXPECT_TRUE(shown.contains(QStringLiteral("a handbook")));
    EXPECT_TRUE(shown.contains(words.sentence(answer.notes.front())));
    EXPECT_TRUE(shown.contains(words.error(answer.errors.front())));
}

TEST(ResultView, IsHiddenWhileThereIsNothing) {
    const words::Words words;
    ResultView view(words, nullptr);
    view.show({});
    EXPECT_TRUE(view.isHidden());
}

TEST(ResultView, AFigureWhoseUncertaintyHasAnotherUnitShowsBoth) {
    const words::Words words;
    const judging::Worked worked{Derived::HeatInputNet,
                                 {*Decimal::parse("24.1"), UnitCode::Kilowatt},
                                 quantity::Figure{*Decimal::parse("1.2"), UnitCode::Percent},
                                 ""};
    EXPECT_EQ(figureText(worked, words), QStringLiteral("24.1\u00a0kW ± 1.2\u00a0%"));
}

}  // namespace
}  // namespace hearth::ui::workings
