// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/file_pattern.h"

#include "tests/ui/support/firm_bench.h"

namespace hearth::ui::shell {
namespace {

using hearth::testing::FirmBench;
using hearth::testing::need;

struct NameCase {
    const char* name;
    QString pattern;
    FileNameParts parts;
    QString expected;
};

FileNameParts partsOf(const QString& premises, int revision = 1) {
    return {QStringLiteral("A-000017"),   revision,
            QStringLiteral("2026-11-25"), premises,
            QStringLiteral("M. Harrow"),  QStringLiteral("PO/77")};
}

class FileName : public ::testing::TestWithParam<NameCase> {};

TEST_P(FileName, isOneThatEveryFileSystemTakes) {
    EXPECT_EQ(fileNameBy(GetParam().pattern, GetParam().parts).toStdString(),
              GetParam().expected.toStdString());
}

const QString kUsual = usualFilePattern();

INSTANTIATE_TEST_SUITE_P(
    All, FileName,
    ::testing::Values(
        NameCase{"usual", kUsual, partsOf(QStringLiteral("14 Tallow Lane")),
                 QStringLiteral("A-000017 14 Tallow Lane 2026-11-25.pdf")},
        NameCase{"revision", kUsual, partsOf(QStringLiteral("14 Tallow Lane"), 2),
                 QStringLiteral("A-000017 r2 14 Tallow Lane 2026-11-25.pdf")},
        NameCase{"refused_letters", kUsual, partsOf(QStringLiteral("Flat 1/2: \"The Mill\"\n?*")),
                 QStringLiteral("A-000017 Flat 1 2 The Mill 2026-11-25.pdf")},
        NameCase{"no_address", kUsual, partsOf({}), QStringLiteral("A-000017 2026-11-25.pdf")},
        NameCase{"path", kUsual, partsOf(QStringLiteral("../../etc")),
                 QStringLiteral("A-000017 etc 2026-11-25.pdf")},
        NameCase{"welsh", kUsual, partsOf(QStringLiteral("Tŷ Gŵyr")),
                 QStringLiteral("A-000017 Tŷ Gŵyr 2026-11-25.pdf")},
        NameCase{"long_address", kUsual, partsOf(QString(200, u'x')),
                 QStringLiteral("A-000017 ") + QString(60, u'x') + QStringLiteral(" 2026-11-25.pdf")},
        NameCase{"own_pattern", QStringLiteral("{date} {reference} - {customer} ({number})"), partsOf({}),
                 QStringLiteral("2026-11-25 PO 77 - M. Harrow (A-000017).pdf")},
        NameCase{"pattern_with_slash", QStringLiteral("../{number}/x"), partsOf({}),
                 QStringLiteral("A-000017 x.pdf")},
        NameCase{"long_pattern", QString(300, u'ŵ') + QStringLiteral("{number}"), partsOf({}),
                 QString(100, u'ŵ') + QStringLiteral(".pdf")},
        NameCase{"nothing_left", QStringLiteral("{revision}"), partsOf({}), QStringLiteral("A-000017.pdf")}),
    [](const auto& instance) { return std::string(instance.param.name); });

TEST(FilePattern, isRefusedWithTheWordThatIsNone) {
    EXPECT_TRUE(checkFilePattern(usualFilePattern()));
    EXPECT_TRUE(checkFilePattern(filePlaceholders().join(u' ')));
    const auto slip = [](const QString& pattern) {
        const auto checked = checkFilePattern(pattern);
        return checked ? Error{ErrorCode::NotFound, {}} : checked.error();
    };
    EXPECT_EQ(slip(QStringLiteral("{number} {road}")), (Error{ErrorCode::PatternUnknown, {"{road}"}}));
    EXPECT_EQ(slip(QStringLiteral("{number} {")), (Error{ErrorCode::PatternUnknown, {"{"}}));
    EXPECT_EQ(slip(QStringLiteral("{date}")), (Error{ErrorCode::PatternUnknown, {"{date}"}}))
        << "two records of a day would have one name";
}

TEST(FilePattern, ofTheFirmAndTheVisitsReferenceAreUsed) {
    FirmBench bench;
    const auto visit = bench.startVisit(bench.addPremises("14 Tallow Lane", "M. Harrow"));
    reg::Entry entry;
    entry.visit = visit;
    entry.subject = {reg::SubjectKind::Visit, visit.bytes};
    entry.item = reg::Item::VisitReference;
    entry.text = "PO/77";
    need(bench.store->saveEntry(entry));
    const auto line = need(bench.store->record(need(bench.issue()(visit, std::nullopt, {})))).line;
    const QString number = QString::fromStdString(line.header.record);
    EXPECT_TRUE(recordFileName(*bench.store, line).startsWith(number + QStringLiteral(" 14 Tallow Lane")));
    need(bench.store->saveSetting(kFilePatternSetting, "{reference} {customer} {number}"));
    EXPECT_EQ(recordFileName(*bench.store, line), QStringLiteral("PO 77 M. Harrow %1.pdf").arg(number));
}

}  // namespace
}  // namespace hearth::ui::shell
