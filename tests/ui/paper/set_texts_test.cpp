// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/set_texts.h"

#include "tests/ui/paper/programs.h"
#include "tests/ui/paper/sample_documents.h"
#include "ui/paper/layout.h"

#include <cmath>
#include <functional>
#include <gtest/gtest.h>
#include <thread>

namespace hearth::ui::paper {
namespace {

TEST(SetTexts, whatDiffersInAnythingIsSetForItself) {
    const QString text = QStringLiteral("Tightness test 12.5");
    const SetKey key{text, styles::kValue, 40};
    EXPECT_TRUE((key == SetKey{text, styles::kValue, 40}));
    EXPECT_EQ(qHash(key), qHash(SetKey{text, styles::kValue, 40}));
    TextStyle other = styles::kValue;
    for (const auto& change : std::vector<std::function<void(TextStyle&)>>{
             [](TextStyle& style) { style.points += 0.5; }, [](TextStyle& style) { style.isBold = true; },
             [](TextStyle& style) { style.role = look::Role::Fail; },
             [](TextStyle& style) { style.leading += 0.1; },
             [](TextStyle& style) { style.letterSpacing = 0.1; }}) {
        TextStyle changed = other;
        change(changed);
        EXPECT_FALSE((key == SetKey{text, changed, 40}));
    }
    EXPECT_FALSE((key == SetKey{text, styles::kValue, 40.001}));
    EXPECT_FALSE((key == SetKey{text + u'0', styles::kValue, 40}));
}

TEST(SetTexts, gaveWhatSettingAnewGives) {
    // A thread that starts has shaped nothing yet.
    const auto inNewThread = [](const std::function<QByteArray()>& work) {
        QByteArray result;
        std::thread([&] { result = work(); }).join();
        return result;
    };
    const auto make = [] { return testing::withoutTimes(toPdf(testing::longestDocument(), {}).value()); };
    const QByteArray first = inNewThread(make);
    const QByteArray second = inNewThread([&] {
        static_cast<void>(toPdf(testing::usualDocument(), {}));
        static_cast<void>(make());
        return make();
    });
    EXPECT_FALSE(first.isEmpty());
    EXPECT_EQ(first, second);
}

TEST(SetTexts, holdsSoManyLettersAtMost) {
    const TypeSetter type;
    for (int i = 0; i < 3000; ++i) {
        const QString text = QString::number(i) + QString(50, u'x');
        static_cast<void>(type.set(text, styles::kText, 200));
        static_cast<void>(type.widthOf(text, styles::kText));
        ASSERT_LE(SetTexts::ofThread().letters(), 2 * SetTexts::kMostLetters);
    }
    // The last is still there, the first has gone.
    const QString last = QString::number(2999) + QString(50, u'x');
    EXPECT_NE(SetTexts::ofThread().lines({last, styles::kText, 200}), nullptr);
    EXPECT_EQ(SetTexts::ofThread().lines({QString::number(0) + QString(50, u'x'), styles::kText, 200}),
              nullptr);
}

TEST(TypeSetter, glyphsStandOnWholeUnitsWithinHalfOfOneOfTheirPlace) {
    const auto lines = TypeSetter().set(QStringLiteral("Working pressure 19.84 mbar"), styles::kText, 200);
    ASSERT_EQ(lines.size(), 1U);
    for (const QGlyphRun& run : lines.front().runs) {
        for (const QPointF& place : run.positions()) {
            EXPECT_EQ(place, QPointF(std::round(place.x()), std::round(place.y())));
        }
    }
    // The last glyph ends where the line does: roundings don't add up.
    const QGlyphRun& run = lines.front().runs.back();
    const auto advances = run.rawFont().advancesForGlyphIndexes(run.glyphIndexes());
    EXPECT_NEAR(run.positions().back().x() + advances.back().x(), lines.front().box.right() * kUnitsPerMm,
                1.0);
}

}  // namespace
}  // namespace hearth::ui::paper
