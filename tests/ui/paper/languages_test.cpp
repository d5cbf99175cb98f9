// SPDX-License-Identifier: GPL-3.0-or-later
// Records in Welsh, in Polish, and in English with the second language below it.
#include "core/record/pairing.h"
#include "tests/core/record/sample_kinds.h"
#include "tests/ui/paper/programs.h"
#include "tests/ui/paper/sample_documents.h"
#include "ui/paper/layout.h"
#include "ui/words/document_words.h"

#include <QFile>
#include <QRawFont>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace hearth::ui::paper {
namespace {

record::Document inLanguage(record::RecordKind kind, const char* language) {
    const auto file = testing::visitOfKind(kind);
    const auto book = rulebook::RuleBook::shipped();
    const auto findings = judging::judge(file, book);
    const auto volume = judging::volumeOf(file, book);
    auto document =
        words::documentFor({kind, file, findings, volume, file.visit.date}, QString::fromUtf8(language));
    document.number = "QKD-000017";
    return document;
}

QString withoutSpaces(QString text) {
    QString kept;
    for (const QChar letter : text) {
        if (!letter.isSpace()) {
            kept += letter;
        }
    }
    return kept;
}

QByteArray pdfOf(const record::Document& document) {
    const auto pdf = toPdf(document, {PaperSize::A4, Stamp::None, testing::sampleDigest()});
    EXPECT_TRUE(pdf.has_value());
    return pdf.value_or(QByteArray());
}

QString pageText(const QByteArray& pdf) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("record.pdf"));
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(pdf);
    file.close();
    return testing::pdfText(path);
}

using PairCase = std::tuple<record::RecordKind, const char*>;
class TwoLanguages : public ::testing::TestWithParam<PairCase> {};

TEST_P(TwoLanguages, AreReadTheFirstAndThenTheSecond) {
    const auto document = inLanguage(std::get<0>(GetParam()), std::get<1>(GetParam()));
    const auto pairs = testing::pairsOf(document);
    EXPECT_GE(pairs.size(), 2U);  // a letter has its text and its signature, at the least
    const QString all = withoutSpaces(pageText(pdfOf(document)));
    int parted = 0;
    for (const auto& [first, second] : pairs) {
        const QString one = withoutSpaces(first);
        const QString two = withoutSpaces(second);
        parted += all.contains(one + two) ? 0 : 1;
        const auto at = all.indexOf(one);
        EXPECT_GE(at, 0) << first.toStdString();
        EXPECT_GT(all.indexOf(two, at), at) << second.toStdString();
    }
    EXPECT_LE(parted, 2) << "only where a page ends between the two";
}

/// What is the same in both stands once: the same document in English alone has no value that this lacks, and
/// none stands there twice.
TEST_P(TwoLanguages, HaveValuesOnce) {
    const auto [kind, language] = GetParam();
    for (const auto& [first, second] : testing::pairsOf(inLanguage(kind, language))) {
        EXPECT_NE(first, second);
        EXPECT_TRUE(std::any_of(first.begin(), first.end(), [](QChar letter) { return letter.isLetter(); }))
            << first.toStdString();
    }
    const QStringList english = testing::textsOf(inLanguage(kind, "en"));
    const QStringList both = testing::textsOf(inLanguage(kind, language));
    for (const QString& text : english) {
        EXPECT_TRUE(both.contains(text)) << text.toStdString();
    }
}

std::vector<PairCase> pairCases() {
    std::vector<PairCase> all;
    for (const auto kind : record::allKinds()) {
        for (const char* language : {"en+cy", "en+pl"}) {
            all.emplace_back(kind, language);
        }
    }
    return all;
}

INSTANTIATE_TEST_SUITE_P(Records, TwoLanguages, ::testing::ValuesIn(pairCases()), [](const auto& one) {
    return std::string(record::kindCode(std::get<0>(one.param))) + "_" +
           std::string(std::get<1>(one.param)).substr(3);
});

TEST(LanguagesOnPaper, ASecondLanguageNeverParts) {
    // Worded from the same input, every block answers its own: nothing was kept side by side for want of it.
    for (const auto kind : record::allKinds()) {
        for (const char* language : {"en+cy", "en+pl"}) {
            EXPECT_EQ(inLanguage(kind, language).blocks.size(), inLanguage(kind, "en").blocks.size())
                << record::kindCode(kind) << ' ' << language;
        }
    }
}

TEST(LanguagesOnPaper, TheFileNamesTheRecordsLanguage) {
    for (const auto& [language, tag] : std::vector<std::pair<const char*, const char*>>{
             {"en", "en"}, {"cy", "cy"}, {"pl", "pl"}, {"en+cy", "en"}}) {
        const auto pdf = pdfOf(inLanguage(record::RecordKind::WarningNotice, language));
        EXPECT_TRUE(pdf.contains(QByteArray("/Lang (") + tag + ")")) << language;
    }
}

TEST(LanguagesOnPaper, ThePdfsTitleIsInTheFirst) {
    const auto document = inLanguage(record::RecordKind::Service, "en+pl");
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("record.pdf"));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(pdfOf(document));
    file.close();
    const QString info = QString::fromUtf8(testing::run(QStringLiteral("pdfinfo"), {path}).out);
    EXPECT_TRUE(info.contains(QStringLiteral("QKD-000017 · Service and maintenance record\n")))
        << info.toStdString();
}

// Welsh: a, e, i, o, u, w, y with circumflex, acute, grave and diaeresis. Polish: its nine letters beyond
// ASCII.
TEST(LanguagesOnPaper, TheBundledFacesHaveTheirLetters) {
    look::loadFonts();
    const QString letters =
        QStringLiteral("ÂÊÎÔÛŴŶâêîôûŵŷÁÉÍÓÚẂÝáéíóúẃýÀÈÌÒÙẀỲàèìòùẁỳÄËÏÖÜẄŸäëïöüẅÿĄĆĘŁŃÓŚŹŻąćęłńóśźż„”’");
    for (const auto weight : {QFont::Normal, QFont::Bold}) {
        QFont font(look::family());
        font.setWeight(weight);
        const QRawFont face = QRawFont::fromFont(font);
        for (const QChar letter : letters) {
            EXPECT_TRUE(face.supportsCharacter(letter)) << QString(letter).toStdString();
        }
    }
}

TEST(LanguagesOnPaper, TheSecondIsSmallerAndLighter) {
    const TypeSetter type;
    const auto lines = type.set(QStringLiteral("one\u001Ftwo"), styles::kFinding, 50);
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_EQ(lines[0].text, QStringLiteral("one"));
    EXPECT_EQ(lines[1].text, QStringLiteral("two"));
    EXPECT_EQ(lines[1].role, look::Role::SoftInk);
    EXPECT_LT(lines[1].box.height(), lines[0].box.height());
    EXPECT_GT(lines[1].height, 0);
    EXPECT_LT(lines[1].height, styles::kFinding.lineHeight());
    // a warning is read from afar in either
    EXPECT_EQ(besideStyle(styles::kAlertWord).role, styles::kAlertWord.role);
    EXPECT_GE(besideStyle(styles::kAlertWord).points, 16);
}

}  // namespace
}  // namespace hearth::ui::paper
