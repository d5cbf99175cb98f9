// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/news_part.h"

#include "tests/ui/support/firm_bench.h"
#include "tests/ui/support/keys.h"
#include "ui/shell/overdue_news.h"

#include <gtest/gtest.h>

namespace hearth::ui::firm {
namespace {

TEST(NewsPart, switchesTheNewsOffAndOn) {
    hearth::testing::FirmBench bench;
    NewsPart part(bench.context(), nullptr);
    part.refresh();
    auto* field = hearth::testing::editor(&part, "newsWhere");
    EXPECT_EQ(field->text(), QStringLiteral("desktop"));
    const auto choose = [field](shell::NewsWhere where) {
        field->setText(shell::codeOf(where));
        Q_EMIT field->committed(field->text());
    };
    for (const auto where :
         {shell::NewsWhere::Nowhere, shell::NewsWhere::Window, shell::NewsWhere::WindowAndDesktop}) {
        choose(where);
        EXPECT_EQ(shell::newsWhere(*bench.store), where);
        part.refresh();
        EXPECT_EQ(field->text(), shell::codeOf(where));
    }
}

}  // namespace
}  // namespace hearth::ui::firm
