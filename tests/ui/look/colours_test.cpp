// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/look/contrast.h"
#include "ui/look/look.h"

#include <QGuiApplication>

#include <gtest/gtest.h>
#include <vector>

namespace hearth::ui::look {
namespace {

using rulebook::Outcome;
using testing::contrast;

struct Pair {
    Role text;
    Role ground;
};

/// Every role that is written with, on every ground that it may stand on.
std::vector<Pair> textPairs() {
    std::vector<Pair> pairs;
    const Role grounds[] = {
        Role::Desk,       Role::Sheet,           Role::KeyGround,       Role::PassGround,
        Role::FailGround, Role::LookAgainGround, Role::NoVerdictGround, Role::FieldGround};
    for (const Role ground : grounds) {
        pairs.push_back({Role::Ink, ground});
        pairs.push_back({Role::SoftInk, ground});
        pairs.push_back({Role::Key, ground});
    }
    for (const Role ground : {Role::Desk, Role::Sheet, Role::FieldGround}) {
        for (const Role text :
             {Role::Pass, Role::Fail, Role::LookAgain, Role::NoVerdict, Role::FieldProblem}) {
            pairs.push_back({text, ground});
        }
    }
    for (const Outcome outcome : {Outcome::Pass, Outcome::Fail, Outcome::LookAgain, Outcome::NoVerdict}) {
        pairs.push_back({inkOf(outcome), groundOf(outcome)});
        pairs.push_back({Role::LookAgain, groundOf(outcome)});  // a source's doubt, in any note
    }
    pairs.push_back({Role::OnKey, Role::Key});
    pairs.push_back({Role::OnDemoBand, Role::DemoBand});
    pairs.push_back({Role::DemoBand, Role::Sheet});
    pairs.push_back({Role::Ink, Role::Selection});
    return pairs;
}

class ColoursTest : public ::testing::TestWithParam<Scheme> {};

TEST_P(ColoursTest, everyTextIsLegibleOnItsGround) {
    // WCAG 2.1, 1.4.3 (4.5:1); the high-contrast set keeps 1.4.6 (7:1).
    const double least = GetParam() == Scheme::HighContrast ? 7.0 : 4.5;
    for (const Pair& pair : textPairs()) {
        EXPECT_GE(contrast(colour(pair.text, GetParam()), colour(pair.ground, GetParam())), least)
            << "role " << static_cast<int>(pair.text) << " on " << static_cast<int>(pair.ground);
    }
}

TEST_P(ColoursTest, edgesThatMeanSomethingCanBeSeen) {
    // WCAG 2.1, 1.4.11: 3:1 for the edge of a field, the focus and what is chosen.
    for (const Role edge : {Role::FieldEdge, Role::FieldProblem, Role::Focus, Role::Key}) {
        for (const Role ground : {Role::Sheet, Role::FieldGround}) {
            EXPECT_GE(contrast(colour(edge, GetParam()), colour(ground, GetParam())), 3.0)
                << "role " << static_cast<int>(edge) << " on " << static_cast<int>(ground);
        }
    }
}

TEST_P(ColoursTest, outcomesDifferFromEachOther) {
    const Outcome outcomes[] = {Outcome::Pass, Outcome::Fail, Outcome::LookAgain, Outcome::NoVerdict};
    for (const Outcome a : outcomes) {
        for (const Outcome b : outcomes) {
            EXPECT_EQ(a == b, colour(inkOf(a), GetParam()) == colour(inkOf(b), GetParam()));
            EXPECT_EQ(a == b, colour(groundOf(a), GetParam()) == colour(groundOf(b), GetParam()));
        }
    }
}

TEST_P(ColoursTest, aPaletteIsRecognisedAgain) {
    EXPECT_EQ(schemeOf(palette(GetParam())), GetParam());
}

TEST_P(ColoursTest, thePaletteItselfIsLegible) {
    const QPalette palette = look::palette(GetParam());
    const std::pair<QPalette::ColorRole, QPalette::ColorRole> pairs[] = {
        {QPalette::WindowText, QPalette::Window},       {QPalette::Text, QPalette::Base},
        {QPalette::ButtonText, QPalette::Button},       {QPalette::HighlightedText, QPalette::Highlight},
        {QPalette::ToolTipText, QPalette::ToolTipBase}, {QPalette::PlaceholderText, QPalette::Base},
        {QPalette::Text, QPalette::AlternateBase},      {QPalette::Link, QPalette::Base},
    };
    for (const auto group : {QPalette::Active, QPalette::Inactive, QPalette::Disabled}) {
        for (const auto& [text, ground] : pairs) {
            EXPECT_GE(contrast(palette.color(group, text), palette.color(group, ground)), 4.5)
                << static_cast<int>(text) << " in group " << static_cast<int>(group);
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Schemes, ColoursTest,
                         ::testing::Values(Scheme::Light, Scheme::Dark, Scheme::HighContrast));

TEST(Contrast, isThatOfTheRecommendation) {
    // WCAG 2.1: black on white is 21:1. #767676 on white is the lightest grey that keeps 4.5:1 (W3C,
    // Understanding 1.4.3).
    EXPECT_NEAR(contrast(Qt::black, Qt::white), 21.0, 1e-9);
    EXPECT_GE(contrast(QColor(0x76, 0x76, 0x76), Qt::white), 4.5);
    EXPECT_LT(contrast(QColor(0x77, 0x77, 0x77), Qt::white), 4.5);
}

TEST(Schemes, ofAnOrdinaryDesktop) {
    QPalette light(QColor(0xEF, 0xEF, 0xEF));
    EXPECT_EQ(schemeOf(light), Scheme::Light);
    QPalette dark;
    dark.setColor(QPalette::Window, QColor(0x30, 0x30, 0x34));
    dark.setColor(QPalette::WindowText, QColor(0xF0, 0xF0, 0xF0));
    EXPECT_EQ(schemeOf(dark), Scheme::Dark);
    QPalette extreme;
    extreme.setColor(QPalette::Window, Qt::black);
    extreme.setColor(QPalette::WindowText, Qt::white);
    EXPECT_EQ(schemeOf(extreme), Scheme::HighContrast);
}

TEST(Schemes, whatTheApplicationSaysGoesBeforeThePalette) {
    QGuiApplication::setPalette(palette(Scheme::Dark));
    EXPECT_EQ(schemeInUse(), Scheme::Dark);
    qGuiApp->setProperty("hearthScheme", static_cast<int>(Scheme::Light));
    EXPECT_EQ(schemeInUse(), Scheme::Light);
    qGuiApp->setProperty("hearthScheme", QVariant());
    EXPECT_EQ(schemeInUse(), Scheme::Dark);
    QGuiApplication::setPalette(palette(Scheme::Light));
}

}  // namespace
}  // namespace hearth::ui::look
