// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/competences_part.h"

#include "tests/ui/support/firm_bench.h"
#include "tests/ui/support/keys.h"
#include "tests/ui/support/walker.h"

#include <QPushButton>

#include <gtest/gtest.h>

namespace hearth::ui::firm {
namespace {

using hearth::testing::child;
using hearth::testing::FirmBench;
using hearth::testing::need;
using hearth::testing::press;
using hearth::testing::typeLine;

class CompetencesPartTest : public ::testing::Test {
  protected:
    void SetUp() override {
        part = std::make_unique<CompetencesPart>(bench.context(), QStringLiteral("Engineer 1"), nullptr);
        part->show(bench.engineer.id);
        hearth::testing::activate(part.get());
    }
    [[nodiscard]] std::vector<reg::Competence> held() const {
        return need(bench.store->competences(bench.engineer.id));
    }
    void add(const char* category, const char* expires) {
        child<QPushButton>(part.get(), "addCompetenceButton")->setFocus();
        press(Qt::Key_Return);
        typeLine(QString::fromLatin1(category));
        typeLine(QString::fromLatin1(expires));
    }

    FirmBench bench;
    std::unique_ptr<CompetencesPart> part;
};

TEST_F(CompetencesPartTest, keepsACategoryWithItsExpiry) {
    add("CCN1", "1/2/2028");
    add("CENWAT", "soon");
    ASSERT_EQ(held().size(), 2U);
    EXPECT_EQ(held()[0].category, "CCN1");
    EXPECT_EQ(held()[0].expires, calendar::fromIso("2028-02-01"));
    EXPECT_EQ(held()[1].category, "CENWAT");
    EXPECT_FALSE(held()[1].expires.has_value());
    EXPECT_EQ(held()[1].expiresText, "soon") << "kept as typed";
}

TEST_F(CompetencesPartTest, takesOneAwayAndUndoBringsItBack) {
    add("CCN1", "1/2/2028");
    const auto before = held();
    const auto buttons = part->findChildren<QPushButton*>();
    for (auto* button : buttons) {
        if (button->accessibleName().endsWith(QStringLiteral("take it away"))) {
            button->click();
            break;
        }
    }
    EXPECT_TRUE(held().empty());
    ASSERT_TRUE(need(bench.store->undo()).has_value());
    EXPECT_EQ(held(), before);
}

TEST_F(CompetencesPartTest, hasUniqueNames) {
    add("CCN1", "1/2/2028");
    add("HTR1", "1/2/2028");
    hearth::testing::expectUniqueNames(part.get());
    hearth::testing::expectEveryStopOnce(part.get());
}

}  // namespace
}  // namespace hearth::ui::firm
