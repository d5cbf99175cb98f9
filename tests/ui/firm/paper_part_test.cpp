// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/paper_part.h"

#include "tests/ui/support/firm_bench.h"
#include "tests/ui/support/keys.h"
#include "ui/shell/paper_choice.h"

#include <gtest/gtest.h>

namespace hearth::ui::firm {
namespace {

using hearth::testing::editor;
using hearth::testing::FirmBench;

TEST(PaperPart, keepsThePaperForWhatIsIssuedFromNowOn) {
    FirmBench bench;
    PaperPart part(bench.context(), nullptr);
    part.refresh();
    EXPECT_EQ(shell::firmsPaper(*bench.store), record::Paper::A4);
    auto* field = editor(&part, "firmsPaper");
    EXPECT_EQ(field->text(), QStringLiteral("a4"));
    const auto choose = [&](const char* code) {
        field->setText(QString::fromLatin1(code));
        Q_EMIT field->committed(field->text());
    };
    choose("letter");
    EXPECT_EQ(shell::firmsPaper(*bench.store), record::Paper::Letter);
    part.refresh();
    EXPECT_EQ(field->text(), QStringLiteral("letter"));
    choose("a4");
    EXPECT_EQ(shell::firmsPaper(*bench.store), record::Paper::A4);
}

}  // namespace
}  // namespace hearth::ui::firm
