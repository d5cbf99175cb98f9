// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/duty_words.h"

#include "ui/words/words.h"

#include <gtest/gtest.h>
#include <set>

namespace hearth::ui::shell {
namespace {

using calendar::DutyKind;

store::DutyLine copyOf(DutyKind kind) {
    store::DutyLine line;
    line.kind = kind;
    line.what = "Nessa Corrie";
    line.which = "ABC-000007";
    line.from = calendar::fromIso("2026-10-20");
    return line;
}

TEST(DutyWords, nameEachKindOfDutyThatIsListed) {
    std::set<QString> titles;
    std::size_t listed = 0;
    for (const auto kind : calendar::kDutyKinds) {
        if (kind == DutyKind::SafetyCheck || kind == DutyKind::OwnInterval || kind == DutyKind::Keeping) {
            continue;  // these have lists of their own
        }
        ++listed;
        EXPECT_NE(dutyTitle(kind), QStringLiteral("Another duty")) << calendar::codeOf(kind);
        titles.insert(dutyTitle(kind));
    }
    EXPECT_EQ(titles.size(), listed);
}

TEST(DutyWords, sayOfACopyWhoseAndOfWhichRecord) {
    const words::Words words;
    for (const auto kind : {DutyKind::TenantCopy, DutyKind::CopyBeforeMovingIn, DutyKind::Display,
                            DutyKind::DisplayWithStatement}) {
        EXPECT_EQ(dutyAbout(copyOf(kind)), QStringLiteral("Nessa Corrie, record ABC-000007"))
            << calendar::codeOf(kind);
        EXPECT_TRUE(dutyWhy(copyOf(kind), words).contains(QStringLiteral("20 October 2026")))
            << dutyWhy(copyOf(kind), words).toStdString();
    }
    EXPECT_TRUE(dutyWhy(copyOf(DutyKind::DisplayWithStatement), words)
                    .contains(QStringLiteral("at which address to ask the landlord")));
}

}  // namespace
}  // namespace hearth::ui::shell
