// SPDX-License-Identifier: GPL-3.0-or-later
// Every kind of record, in every language, with the longest texts that people may type: nothing is clipped,
// nothing stands on another, and the file is PDF/A.
#include "tests/core/record/sample_kinds.h"
#include "tests/ui/paper/programs.h"
#include "tests/ui/paper/sample_documents.h"
#include "ui/paper/furniture.h"
#include "ui/paper/paper.h"
#include "ui/words/blank_words.h"
#include "ui/words/document_words.h"

#include <QFile>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <algorithm>
#include <gtest/gtest.h>
#include <optional>

namespace hearth::ui::paper {
namespace {

using KindCase = std::tuple<record::RecordKind, const char*>;

/// Long words without a blank, and sentences over lines.
std::string longText(reg::ItemKind kind) {
    std::string text = "Donaudampfschifffahrtsgesellschaftsverwaltungsgeb\u00e4udeschl\u00fcsselkasten ";
    for (int i = 0; i < (kind == reg::ItemKind::LongText ? 30 : 3); ++i) {
        text += "and what else was seen there and is worth telling, ";
    }
    return text;
}

record::Document longestOfKind(record::RecordKind kind, const char* language) {
    auto file = testing::visitOfKind(kind);
    for (const auto& entry : std::vector(file.entries)) {
        const auto itemKind = reg::infoOf(entry.item).kind;
        if (itemKind == reg::ItemKind::Text || itemKind == reg::ItemKind::LongText) {
            testing::enter(file, entry.subject, entry.item, longText(itemKind));
        }
        if (entry.item == reg::Item::DefectsFound) {
            testing::enter(file, entry.subject, entry.item, "found");
        }
    }
    file.appliances.push_back(file.appliances[0]);
    file.appliances.back().id = reg::ApplianceId{testing::sampleBytes(60)};
    file.appliances.back().place = longText(reg::ItemKind::Text);
    for (const auto& entry : std::vector(file.entries)) {
        if (entry.subject == reg::subject(file.appliances[0].id)) {
            testing::enter(file, reg::subject(file.appliances[1].id), entry.item, entry.text);
        }
    }
    const auto book = rulebook::RuleBook::shipped();
    const auto findings = judging::judge(file, book);
    const auto volume = judging::volumeOf(file, book);
    auto document =
        words::documentFor({kind, file, findings, volume, file.visit.date}, QString::fromUtf8(language));
    document.number = "QKD-000017";
    return document;
}

QString withoutBlanks(QString text) {
    static const QRegularExpression kBlanks(QStringLiteral("[\\s\\x{00A0}\\x{2028}]+"));
    return text.remove(kBlanks);
}

/// Every text of the body stands whole within the margins.
void expectWhole(const record::Document& document, const PageOptions& how) {
    const Layout layout(document, how);
    const TypeSetter type;
    const Sheet sheet = sheetFor(document, sizeOf(document, how));
    const Furniture furniture(document, how, type, sheet);
    const QRectF allowed(sheet.left - 0.02, sheet.top - 0.02, sheet.width() + 0.04,
                         sheet.size.height() - sheet.top - sheet.bottom + 0.04);
    QString body;
    for (int page = 0; page < layout.pageCount(); ++page) {
        const double top = furniture.bodyTop(page == 0);
        for (const Layout::Run& run : layout.runs(page)) {
            EXPECT_TRUE(allowed.contains(run.box)) << run.text.toStdString();
            if (run.box.top() >= top - 0.02 && run.box.bottom() <= furniture.bodyBottom() + 0.02) {
                body += withoutBlanks(run.text);
            }
        }
    }
    for (const QString& text : testing::textsOf(document)) {
        EXPECT_TRUE(body.contains(withoutBlanks(text))) << text.left(80).toStdString();
    }
    EXPECT_EQ(layout.missingLetters(), QString());
}

void expectNothingOnAnother(const record::Document& document, const PageOptions& how) {
    constexpr double kTouching = 0.02;  // millimetres
    const Layout layout(document, how);
    for (int page = 0; page < layout.pageCount(); ++page) {
        const auto runs = layout.runs(page);
        for (std::size_t i = 0; i < runs.size(); ++i) {
            for (std::size_t j = i + 1; j < runs.size(); ++j) {
                const QRectF shared = runs[i].box & runs[j].box;
                EXPECT_TRUE(shared.width() < kTouching || shared.height() < kTouching)
                    << runs[i].text.toStdString() << " / " << runs[j].text.toStdString();
            }
        }
    }
}

void writePdf(const record::Document& document, const PageOptions& how, const QString& path) {
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    const auto pdf = toPdf(document, how);
    ASSERT_TRUE(pdf.has_value());
    file.write(*pdf);
}

/// ISO 19005-1 level B, as Apache PDFBox Preflight reads it.
void expectPdfA(const record::Document& document, const PageOptions& how) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("record.pdf"));
    writePdf(document, how, path);
    const QString said = testing::preflight(path);
    EXPECT_TRUE(said.contains(QStringLiteral("is a valid PDF/A-1b file"))) << said.toStdString();
}

class KindOnPaper : public ::testing::TestWithParam<KindCase> {
  protected:
    record::Document document = longestOfKind(std::get<0>(GetParam()), std::get<1>(GetParam()));
    PageOptions how{PaperSize::A4, Stamp::None, testing::sampleDigest()};
};

TEST_P(KindOnPaper, holdsEveryTextWholeWithinItsMargins) {
    expectWhole(document, how);
}

TEST_P(KindOnPaper, setsNoTextOnAnother) {
    expectNothingOnAnother(document, how);
}

std::vector<KindCase> kindCases() {
    std::vector<KindCase> all;
    for (const auto kind : record::allKinds()) {
        for (const char* language : {"en", "en_XA", "cy", "pl", "en+cy", "en+pl"}) {
            all.emplace_back(kind, language);
        }
    }
    return all;
}

INSTANTIATE_TEST_SUITE_P(Records, KindOnPaper, ::testing::ValuesIn(kindCases()), [](const auto& one) {
    std::string name = std::string(record::kindCode(std::get<0>(one.param))) + "_" + std::get<1>(one.param);
    std::replace(name.begin(), name.end(), '+', '_');
    return name;
});

// All in one run of the validator, which takes longer to start than to read a file.
TEST(KindsOnPaper, areValidPdfAInEveryLanguage) {
    const QTemporaryDir folder;
    const PageOptions how{PaperSize::A4, Stamp::None, testing::sampleDigest()};
    int number = 0;
    for (const auto& [kind, language] : kindCases()) {
        const auto name = QString::number(++number) + QString::fromLatin1(language) + QStringLiteral(".pdf");
        writePdf(longestOfKind(kind, language), how, folder.filePath(name));
    }
    const QString said = testing::preflightAll(folder.path());
    EXPECT_EQ(said.count(QStringLiteral("is a valid PDF/A-1b file")), number)
        << said.left(4000).toStdString();
    EXPECT_EQ(number, static_cast<int>(record::allKinds().size()) * 6);
}

class BlankOnPaper : public ::testing::TestWithParam<record::RecordKind> {
  protected:
    static record::Document blank(const char* language) {
        const auto firm = testing::sampleVisit().firm;
        return words::documentIn(QString::fromUtf8(language), [&](const words::Words& words) {
            return words::blankFor({GetParam(), firm, "B-KTM-000012"}, words);
        });
    }
};

TEST_P(BlankOnPaper, isWholeInEveryLanguageAndOnEitherPaper) {
    for (const char* language : {"en", "en_XA", "cy", "pl", "en+cy", "en+pl"}) {
        for (const auto size : {PaperSize::A4, PaperSize::Letter}) {
            PageOptions how;
            how.size = size;
            expectWhole(blank(language), how);
            expectNothingOnAnother(blank(language), how);
        }
    }
}

TEST_P(BlankOnPaper, hasItsNumberOnEveryPageAndIsValidPdfA) {
    const auto document = blank("en");
    const Layout layout(document, {});
    for (int page = 0; page < layout.pageCount(); ++page) {
        const auto runs = layout.runs(page);
        EXPECT_TRUE(std::any_of(runs.begin(), runs.end(), [](const Layout::Run& run) {
            return run.text == QStringLiteral("B-KTM-000012");
        })) << page;
    }
    expectPdfA(document, {});
}

const std::vector<record::RecordKind> kBlankKinds = words::blankKinds();
INSTANTIATE_TEST_SUITE_P(Records, BlankOnPaper, ::testing::ValuesIn(kBlankKinds),
                         [](const auto& one) { return std::string(record::kindCode(one.param)); });

TEST(BlankNoticeOnPaper, isOnePage) {
    const auto firm = testing::sampleVisit().firm;
    const auto document =
        words::blankFor({record::RecordKind::WarningNotice, firm, "B-KTM-000012"}, words::Words());
    EXPECT_EQ(Layout(document, {}).pageCount(), 1);
}

record::Document usualOfKind(record::RecordKind kind, const QString& language = QStringLiteral("en")) {
    const auto file = testing::visitOfKind(kind);
    const auto book = rulebook::RuleBook::shipped();
    const auto findings = judging::judge(file, book);
    const auto volume = judging::volumeOf(file, book);
    auto document = words::documentFor({kind, file, findings, volume, file.visit.date}, language);
    document.number = "QKD-000017";
    return document;
}

std::optional<QRectF> firstPageBox(const Layout& layout, const QString& text) {
    for (const Layout::Run& run : layout.runs(0)) {
        if (run.text == text) {
            return run.box;
        }
    }
    return std::nullopt;
}

TEST(NoticeOnPaper, isOnePageWithTheDangerInTheLargestLetters) {
    const Layout layout(usualOfKind(record::RecordKind::WarningNotice),
                        {PaperSize::A4, Stamp::None, testing::sampleDigest()});
    EXPECT_EQ(layout.pageCount(), 1);
    const auto danger = firstPageBox(layout, QStringLiteral("DANGER \u2013 DO NOT USE"));
    ASSERT_TRUE(danger.has_value());
    for (const Layout::Run& run : layout.runs(0)) {
        EXPECT_LE(run.box.height(), danger->height()) << run.text.toStdString();
    }
    EXPECT_LT(danger->top(), layout.pageSize().height() / 4);
}

// The window of an envelope of 110 mm by 220 mm for a sheet folded in three, slipping by up to 11 mm: common
// practice, no source.
TEST(LetterOnPaper, hasItsAddressWhereTheWindowIs) {
    const auto document = usualOfKind(record::RecordKind::ReminderLetter);
    const Layout layout(document, {PaperSize::A4, Stamp::None, testing::sampleDigest()});
    const auto& head = std::get<record::LetterHead>(document.blocks.front());
    ASSERT_EQ(head.recipient.size(), 3U);
    for (const auto& line : head.recipient) {
        const auto box = firstPageBox(layout, QString::fromStdString(line));
        ASSERT_TRUE(box.has_value()) << line;
        EXPECT_TRUE(QRectF(20, 49, 85, 35).contains(*box)) << line << ' ' << box->top();
    }
    const auto date = firstPageBox(layout, QString::fromStdString(head.date));
    ASSERT_TRUE(date.has_value());
    EXPECT_GT(date->top(), 83) << "nothing else shows in the window";
    EXPECT_EQ(firstPageBox(layout, QString::fromStdString(document.title)), std::nullopt)
        << "no record's title";
}

}  // namespace
}  // namespace hearth::ui::paper
