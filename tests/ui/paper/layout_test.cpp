// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/paper/sample_documents.h"
#include "ui/paper/furniture.h"
#include "ui/paper/paper.h"

#include <QApplication>
#include <QProcess>

#include <gtest/gtest.h>

namespace hearth::ui::paper {
namespace {

using testing::longestDocument;
using testing::sampleDigest;
using testing::shortDocument;
using testing::usualDocument;

struct Case {
    const char* name;
    record::Document document;
    PageOptions optionsFor;
};

record::Document draft() {
    record::Document document = usualDocument();
    document.number.clear();
    document.banner = "Draft: not issued";
    return document;
}

record::Document emptyOne() {
    record::Document document;
    document.pageWord = "page %1 of %2";
    return document;
}

PageOptions optionsFor(PaperSize size, Stamp stamp = Stamp::None) {
    return {size, stamp, sampleDigest()};
}

std::vector<Case> cases() {
    return {
        {"usual", usualDocument(), optionsFor(PaperSize::A4)},
        {"usual_letter", usualDocument(), optionsFor(PaperSize::Letter)},
        {"short_superseded", shortDocument(), optionsFor(PaperSize::A4, Stamp::Superseded)},
        {"short_letter_copy", shortDocument(), optionsFor(PaperSize::Letter, Stamp::Copy)},
        {"longest", longestDocument(), optionsFor(PaperSize::A4)},
        {"longest_letter_copy", longestDocument(), optionsFor(PaperSize::Letter, Stamp::Copy)},
        {"plots", testing::plotDocument(), optionsFor(PaperSize::A4)},
        {"plots_letter", testing::plotDocument(), optionsFor(PaperSize::Letter)},
        {"diagrams", testing::diagramDocument(), optionsFor(PaperSize::A4)},
        {"diagrams_letter", testing::diagramDocument(), optionsFor(PaperSize::Letter)},
        {"draft", draft(), {PaperSize::A4, Stamp::None, {}}},
        {"empty", emptyOne(), {PaperSize::A4, Stamp::None, {}}},
    };
}

class LayoutTest : public ::testing::TestWithParam<Case> {
  protected:
    Layout layout{GetParam().document, GetParam().optionsFor};
};

TEST_P(LayoutTest, allTextStandsWithinTheMargins) {
    const Sheet sheet = sheetOf(*GetParam().optionsFor.size);
    const QRectF allowed(sheet.left, sheet.top, sheet.width(),
                         sheet.size.height() - sheet.top - sheet.bottom);
    for (int page = 0; page < layout.pageCount(); ++page) {
        for (const Layout::Run& run : layout.runs(page)) {
            EXPECT_TRUE(allowed.adjusted(-0.02, -0.02, 0.02, 0.02).contains(run.box))
                << "page " << page + 1 << ": " << run.text.toStdString() << " at " << run.box.left() << ", "
                << run.box.top() << ", " << run.box.right() << ", " << run.box.bottom();
        }
    }
}

TEST_P(LayoutTest, noTextStandsOnAnother) {
    constexpr double kTouch = 0.02;  // millimetres
    for (int page = 0; page < layout.pageCount(); ++page) {
        const auto runs = layout.runs(page);
        for (std::size_t i = 0; i < runs.size(); ++i) {
            for (std::size_t j = i + 1; j < runs.size(); ++j) {
                const QRectF shared = runs[i].box & runs[j].box;
                EXPECT_TRUE(shared.width() < kTouch || shared.height() < kTouch)
                    << "page " << page + 1 << ": \"" << runs[i].text.toStdString() << "\" and \""
                    << runs[j].text.toStdString() << "\"";
            }
        }
    }
}

TEST_P(LayoutTest, everyPageSaysWhichItIs) {
    for (int page = 0; page < layout.pageCount(); ++page) {
        const QString wanted = QStringLiteral("page %1 of %2").arg(page + 1).arg(layout.pageCount());
        int found = 0;
        for (const Layout::Run& run : layout.runs(page)) {
            found += run.text == wanted ? 1 : 0;
        }
        EXPECT_EQ(found, 1) << "page " << page + 1;
    }
}

TEST_P(LayoutTest, everyPageCarriesTheCautionAndTheBanner) {
    for (const std::string& text : {GetParam().document.caution, GetParam().document.banner}) {
        QString wanted = QString::fromStdString(text);
        wanted.remove(u' ');
        for (int page = 0; page < layout.pageCount(); ++page) {
            QString all;
            for (const Layout::Run& run : layout.runs(page)) {
                all += QString(run.text).remove(u' ');
            }
            EXPECT_TRUE(all.contains(wanted)) << "page " << page + 1;
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Documents, LayoutTest, ::testing::ValuesIn(cases()),
                         [](const auto& one) { return std::string(one.param.name); });

QString allText(const Layout& layout, int page) {
    QString all;
    for (const Layout::Run& run : layout.runs(page)) {
        all += run.text + u'\n';
    }
    return all;
}

TEST(Layout, sizesAreThoseOfThePapers) {
    // ISO 216: A4 is 210 x 297 mm. ANSI/ASME Y14.1: A is 8.5 x 11 in.
    EXPECT_EQ(Layout(shortDocument(), optionsFor(PaperSize::A4)).pageSize(), QSizeF(210, 297));
    EXPECT_EQ(Layout(shortDocument(), optionsFor(PaperSize::Letter)).pageSize(),
              QSizeF(8.5 * 25.4, 11 * 25.4));
}

TEST(Layout, aShortRecordIsOnePageAndAUsualOneTwo) {
    EXPECT_EQ(Layout(shortDocument(), optionsFor(PaperSize::A4)).pageCount(), 1);
    EXPECT_EQ(Layout(usualDocument(), optionsFor(PaperSize::A4)).pageCount(), 2);
    EXPECT_EQ(Layout(shortDocument(), optionsFor(PaperSize::Letter)).pageCount(), 1);
    EXPECT_GT(Layout(longestDocument(), optionsFor(PaperSize::A4)).pageCount(), 6);
}

TEST(Layout, headsOfATableStandAgainWhereItGoesOn) {
    const Layout layout(longestDocument(), optionsFor(PaperSize::A4));
    for (int page = 0; page < layout.pageCount(); ++page) {
        const QString text = allText(layout, page);
        if (text.contains(QStringLiteral("Section ")) && text.contains(QStringLiteral("Copper"))) {
            EXPECT_TRUE(text.contains(QStringLiteral("\nTube\n"))) << "page " << page + 1;
        }
    }
}

TEST(Layout, stampsAreOnEveryPageAndOnlyWhenAsked) {
    const Layout plain(usualDocument(), optionsFor(PaperSize::A4));
    const Layout copy(usualDocument(), optionsFor(PaperSize::A4, Stamp::Copy));
    const Layout old(usualDocument(), optionsFor(PaperSize::A4, Stamp::Superseded));
    for (int page = 0; page < 2; ++page) {
        EXPECT_FALSE(allText(plain, page).contains(QStringLiteral("COPY")));
        EXPECT_TRUE(allText(copy, page).contains(QStringLiteral("COPY")));
        EXPECT_TRUE(allText(old, page).contains(QStringLiteral("SUPERSEDED")));
    }
}

TEST(Layout, theProofStandsOnTheLastPageAlone) {
    const Layout layout(usualDocument(), optionsFor(PaperSize::A4));
    QString digest = QString::fromStdString(sampleDigest());
    for (int page = 0; page < layout.pageCount(); ++page) {
        const QString text = allText(layout, page).remove(u' ').remove(u'\n');
        EXPECT_EQ(text.contains(digest), page == layout.pageCount() - 1);
    }
    PageOptions without = optionsFor(PaperSize::A4);
    without.digest.clear();
    const Layout bare(usualDocument(), without);
    EXPECT_FALSE(allText(bare, bare.pageCount() - 1).contains(QStringLiteral("digest")));
}

TEST(Layout, theProofGetsAPageOfItsOwnWhereTheLastIsFull) {
    record::Document document = shortDocument();
    PageOptions without = optionsFor(PaperSize::A4);
    without.digest.clear();
    bool seen = false;
    for (int lines = 1; lines < 60 && !seen; ++lines) {
        document.blocks = {
            record::Paragraph{"Remarks", std::string(static_cast<std::size_t>(lines), '\n') + "end", false}};
        const int bare = Layout(document, without).pageCount();
        const int proved = Layout(document, optionsFor(PaperSize::A4)).pageCount();
        EXPECT_LE(proved, bare + 1);
        seen = proved == bare + 1;
    }
    EXPECT_TRUE(seen);
}

TEST(Layout, signaturesAreNeverAloneOnTheirPage) {
    record::Document document = shortDocument();
    bool turned = false;
    for (int lines = 1; lines < 60; ++lines) {
        document.blocks = {
            record::Paragraph{"Before", std::string(static_cast<std::size_t>(lines), '\n') + "end", false},
            record::Paragraph{"Remarks", "none", false},
            record::Signatures{{{"Tested by", "R. Alder", "card 0000002"}}}};
        const Layout layout(document, optionsFor(PaperSize::A4));
        const QString last = allText(layout, layout.pageCount() - 1);
        EXPECT_TRUE(last.contains(QStringLiteral("Tested by"))) << lines;
        EXPECT_TRUE(last.contains(QStringLiteral("Remarks\nnone"))) << lines;
        turned = turned || layout.pageCount() == 2;
    }
    EXPECT_TRUE(turned);
}

/// Of the first page: where a line of text stands.
QRectF boxOf(const Layout& layout, const QString& text) {
    for (const Layout::Run& run : layout.runs(0)) {
        if (run.text == text) {
            return run.box;
        }
    }
    ADD_FAILURE() << text.toStdString() << " is not on the page";
    return {};
}

TEST(Layout, aFewWordsStandBesideTheirTitleAndMoreBelowIt) {
    record::Document document = shortDocument();
    document.blocks = {record::Paragraph{"Remarks", "none given", false}};
    const Layout few(document, optionsFor(PaperSize::A4));
    const QRectF title = boxOf(few, QStringLiteral("Remarks"));
    EXPECT_GT(boxOf(few, QStringLiteral("none given")).left(), title.right());
    EXPECT_LT(boxOf(few, QStringLiteral("none given")).top(), title.bottom());
    document.blocks = {record::Paragraph{"Remarks", "first\nsecond", false}};
    const Layout more(document, optionsFor(PaperSize::A4));
    EXPECT_GT(boxOf(more, QStringLiteral("first")).top(), boxOf(more, QStringLiteral("Remarks")).bottom());
}

TEST(Layout, aGridIsEvenDownToItsLastValueOfSeveralLinesAndCloserBelow) {
    const std::string wide = "A firm with a long name, 4 Some Lane, A Town of Some Length QX3 4TT";
    record::Document document = shortDocument();
    document.blocks = {record::FieldGrid{"Who",
                                         3,
                                         {{"Premises", {"9 Some Row", "A Town"}, false},
                                          {"Customer", {"Somebody"}, false},
                                          {"Engineer", {"Someone"}, false},
                                          {"Firm", {wide}, false},
                                          {"Date", {"a day"}, false}}}};
    const Layout layout(document, optionsFor(PaperSize::A4));
    const double third = boxOf(layout, QStringLiteral("Customer")).left();
    EXPECT_GT(boxOf(layout, QStringLiteral("Engineer")).left(), third);
    EXPECT_GT(boxOf(layout, QString::fromStdString(wide)).right(), third);  // reaches over, in one line
    EXPECT_EQ(boxOf(layout, QStringLiteral("Date")).top(), boxOf(layout, QStringLiteral("Firm")).top());
}

TEST(Layout, aLongReasonStandsBelowItsTitleWhereThatTakesFewerLines) {
    record::Document document = shortDocument();
    record::FindingLine line;
    line.title = "Also seen to: pass";
    line.outcome = rulebook::Outcome::Pass;
    for (int i = 0; i < 40; ++i) {
        line.why += "Something was seen to. ";
    }
    document.blocks = {record::FindingList{"Findings", {line}}};
    const Layout layout(document, optionsFor(PaperSize::A4));
    const QRectF title = boxOf(layout, QStringLiteral("Also seen to: pass"));
    int below = 0;
    for (const Layout::Run& run : layout.runs(0)) {
        if (run.text.contains(QStringLiteral("was seen to"))) {
            EXPECT_GT(run.box.top(), title.top());
            EXPECT_NEAR(run.box.left(), title.left(), 1);
            ++below;
        }
    }
    EXPECT_GT(below, 3);
    document.blocks = {record::FindingList{
        "Findings", {{rulebook::Outcome::Pass, "Open ends: pass", "", "No open ends were seen.", {}, {}}}}};
    const Layout brief(document, optionsFor(PaperSize::A4));
    EXPECT_GT(boxOf(brief, QStringLiteral("No open ends were seen.")).left(),
              boxOf(brief, QStringLiteral("Open ends: pass")).right());
}

TEST(Layout, anEmptyLineTakesRoomButIsNoText) {
    record::Document document = shortDocument();
    const auto lineOf = [&document](const std::string& text) {
        document.blocks = {record::Paragraph{"", text, false}};
        double y = 0;
        const Layout layout(document, optionsFor(PaperSize::A4));
        for (const Layout::Run& run : layout.runs(0)) {
            EXPECT_FALSE(run.text.isEmpty());
            y = run.text == QStringLiteral("after") ? run.box.top() : y;
        }
        return y;
    };
    EXPECT_GT(lineOf("before\n\nafter"), lineOf("before\nafter") + 1);
}

TEST(Layout, anAbsentValueIsADashWithItsReason) {
    const Layout layout(usualDocument(), optionsFor(PaperSize::A4));
    EXPECT_TRUE(allText(layout, 0).contains(QStringLiteral("— not given")));
}

TEST(Layout, theHeadlineIsFirstAndBiggest) {
    const Layout layout(usualDocument(), optionsFor(PaperSize::A4));
    double headline = 0;
    double others = 0;
    double y = 0;
    for (const Layout::Run& run : layout.runs(0)) {
        if (run.text.startsWith(QStringLiteral("Tight: no"))) {
            headline = run.box.height();
            y = run.box.top();
        } else if (headline > 0) {
            others = std::max(others, run.box.height());
            EXPECT_GT(run.box.top(), y);
        }
    }
    EXPECT_GT(headline, 1.3 * others);
}

TEST(Layout, namesLettersThatNoFontHas) {
    record::Document document = shortDocument();
    EXPECT_EQ(Layout(document, optionsFor(PaperSize::A4)).missingLetters(), QString());
    document.firm = "Alder \U0010F123 Finch";
    EXPECT_EQ(Layout(document, optionsFor(PaperSize::A4)).missingLetters(), QStringLiteral("\U0010F123"));
}

/// The same places to a ten-thousandth of a millimetre on another screen: layout knows no device.
TEST(Layout, doesNotDependOnTheScreen) {
    const auto places = [](const QStringList& settings) {
        QProcess process;
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        for (const QString& setting : settings) {
            environment.insert(setting.section(u'=', 0, 0), setting.section(u'=', 1));
        }
        process.setProcessEnvironment(environment);
        process.start(QApplication::applicationFilePath(), {QStringLiteral("--places")});
        EXPECT_TRUE(process.waitForFinished(30000));
        EXPECT_EQ(process.exitCode(), 0);
        return process.readAllStandardOutput();
    };
    const QByteArray usual = places({});
    EXPECT_GT(usual.count('\n'), 80);
    EXPECT_EQ(places({QStringLiteral("QT_SCALE_FACTOR=2")}), usual);
    EXPECT_EQ(places({QStringLiteral("QT_FONT_DPI=192")}), usual);
}

}  // namespace
}  // namespace hearth::ui::paper
