// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/bin_part.h"

#include "tests/ui/support/firm_bench.h"
#include "tests/ui/support/keys.h"
#include "tests/ui/support/walker.h"
#include "ui/shell/line_list.h"

#include <QPushButton>

#include <gtest/gtest.h>

namespace hearth::ui::firm {
namespace {

using hearth::testing::child;
using hearth::testing::FirmBench;
using hearth::testing::need;
using hearth::testing::press;

class BinPartTest : public ::testing::Test {
  protected:
    void SetUp() override {
        premises.id = {bench.store->newId()};
        premises.address.line1 = "14 Tallow Lane";
        need(bench.store->save(premises));
        need(bench.store->putIntoBin("premises", premises.id.bytes, "14 Tallow Lane"));
        part = std::make_unique<BinPart>(bench.context(), nullptr);
        part->refresh();
        hearth::testing::activate(part.get());
    }
    [[nodiscard]] shell::LineList* list() const { return child<shell::LineList>(part.get(), "binList"); }

    FirmBench bench;
    reg::Premises premises;
    std::unique_ptr<BinPart> part;
};

TEST_F(BinPartTest, namesWhatLiesThereAndBringsItBackByEnter) {
    ASSERT_EQ(list()->count(), 1);
    EXPECT_EQ(list()->line(0).title, QStringLiteral("14 Tallow Lane"));
    EXPECT_EQ(list()->line(0).detail, QStringLiteral("premises"));
    list()->setCurrentRow(0);
    list()->setFocus();
    press(Qt::Key_Return);
    EXPECT_EQ(list()->count(), 0);
    EXPECT_EQ(need(bench.store->premises(premises.id)), premises);
    EXPECT_EQ(need(bench.store->premises("")).size(), 1U);
}

TEST_F(BinPartTest, removesForGoodOnlyWhenToldSo) {
    list()->setCurrentRow(0);
    bench.dialogs.answers = {0};
    child<QPushButton>(part.get(), "removeForGoodButton")->click();
    EXPECT_EQ(need(bench.store->bin()).size(), 1U);
    bench.dialogs.answers = {1};
    child<QPushButton>(part.get(), "removeForGoodButton")->click();
    EXPECT_TRUE(need(bench.store->bin()).empty());
    EXPECT_FALSE(bench.store->premises(premises.id).has_value());
}

}  // namespace
}  // namespace hearth::ui::firm
