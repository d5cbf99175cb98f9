// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/look/look.h"

#include <QRegularExpression>

#include <gtest/gtest.h>

namespace hearth::ui::look {
namespace {

class StyleSheetTest : public ::testing::TestWithParam<Scheme> {};

TEST_P(StyleSheetTest, hasAColourForEveryToken) {
    const QString sheet = styleSheet(GetParam());
    EXPECT_FALSE(sheet.contains(u'@')) << sheet.mid(sheet.indexOf(u'@'), 30).toStdString();
    EXPECT_EQ(sheet.count(u'{'), sheet.count(u'}'));
}

TEST_P(StyleSheetTest, usesOnlyTheColoursOfItsScheme) {
    QStringList known;
    for (int role = 0; role <= static_cast<int>(Role::OnDemoBand); ++role) {
        known << colour(static_cast<Role>(role), GetParam()).name();
    }
    const QRegularExpression literal(QStringLiteral("#[0-9a-f]{6}"));
    auto matches = literal.globalMatch(styleSheet(GetParam()));
    int count = 0;
    while (matches.hasNext()) {
        const QString name = matches.next().captured();
        EXPECT_TRUE(known.contains(name)) << name.toStdString();
        ++count;
    }
    EXPECT_GT(count, 40);
}

INSTANTIATE_TEST_SUITE_P(Schemes, StyleSheetTest,
                         ::testing::Values(Scheme::Light, Scheme::Dark, Scheme::HighContrast));

}  // namespace
}  // namespace hearth::ui::look
