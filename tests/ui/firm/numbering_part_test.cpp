// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/numbering_part.h"

#include "tests/ui/support/firm_bench.h"
#include "tests/ui/support/keys.h"
#include "tests/ui/support/walker.h"

#include <QLabel>

#include <gtest/gtest.h>

namespace hearth::ui::firm {
namespace {

using hearth::testing::child;
using hearth::testing::editor;
using hearth::testing::enterField;
using hearth::testing::fillField;
using hearth::testing::FirmBench;
using hearth::testing::need;
using hearth::testing::type;

class NumberingPartTest : public ::testing::Test {
  protected:
    void SetUp() override {
        visit = bench.startVisit(bench.addPremises("1 Fell Row"));
        part = std::make_unique<NumberingPart>(bench.context(), nullptr);
        part->refresh();
        hearth::testing::activate(part.get());
    }
    std::string issue() {
        const auto id = need(bench.issue()(visit, {}, {}));
        return need(bench.store->record(id)).line.header.record;
    }
    [[nodiscard]] std::string example() const {
        return child<QLabel>(part.get(), "numberExample")->text().toStdString();
    }
    void takeDigits(const char* digits) {
        auto* field = editor(part.get(), "numberDigits");
        field->setText(QString::fromLatin1(digits));
        Q_EMIT field->committed(field->text());
    }

    FirmBench bench;
    reg::VisitId visit;
    std::unique_ptr<NumberingPart> part;
};

TEST_F(NumberingPartTest, showsTheNextNumberAndRecordsBearIt) {
    EXPECT_EQ(example(), "The first record: ···-000001, its letters drawn then");
    const std::string first = issue();
    const std::string letters = first.substr(0, 3);
    part->refresh();
    EXPECT_EQ(example(), "The next record: " + letters + "-000002");
    enterField(editor(part.get(), "numberPrefix"));
    type(QStringLiteral("hl-"));
    EXPECT_EQ(example(), "The next record: HL-" + letters + "-000002") << "while it is typed";
    EXPECT_EQ(need(bench.store->firm()).numberForm, "") << "not kept before it is committed";
    fillField(editor(part.get(), "numberPrefix"), QStringLiteral("hl-"));
    takeDigits("4");
    EXPECT_EQ(editor(part.get(), "numberPrefix")->text(), QStringLiteral("HL-"));
    EXPECT_EQ(example(), "The next record: HL-" + letters + "-0002");
    EXPECT_EQ(issue(), "HL-" + letters + "-0002");
    EXPECT_TRUE(need(bench.store->recordByNumber(first)).has_value()) << "the first keeps its number";
}

TEST_F(NumberingPartTest, saysWhatIsNotAllowedAndKeepsWhatWas) {
    auto* prefix = editor(part.get(), "numberPrefix");
    for (const char* wrong : {"A/B", "A B", "ABCDEFGHI", "{X}"}) {
        fillField(prefix, QString::fromLatin1(wrong));
        EXPECT_TRUE(
            prefix->focusTarget()->accessibleDescription().contains(QStringLiteral("8 capital letters")))
            << prefix->focusTarget()->accessibleDescription().toStdString();
        EXPECT_EQ(prefix->text().toStdString(), wrong) << "what was typed stays in the field";
        EXPECT_EQ(example(), "No number can be written so.");
        EXPECT_EQ(need(bench.store->firm()).numberForm, "");
    }
    takeDigits("5");
    EXPECT_EQ(need(bench.store->firm()).numberForm, "{series}-{number:5}") << "the digits alone";
}

TEST_F(NumberingPartTest, aChangeIsTakenBackByUndo) {
    fillField(editor(part.get(), "numberPrefix"), QStringLiteral("HL"));
    EXPECT_EQ(need(bench.store->firm()).numberForm, "HL{series}-{number:6}");
    ASSERT_TRUE(need(bench.store->undo()).has_value());
    part->refresh();
    EXPECT_EQ(editor(part.get(), "numberPrefix")->text(), QString());
}

TEST_F(NumberingPartTest, hasUniqueNames) {
    hearth::testing::expectUniqueNames(part.get());
    hearth::testing::expectEveryStopOnce(part.get());
}

}  // namespace
}  // namespace hearth::ui::firm
