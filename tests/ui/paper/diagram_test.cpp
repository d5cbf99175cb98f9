// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/diagram.h"

#include "tests/ui/paper/programs.h"
#include "tests/ui/paper/sample_documents.h"
#include "ui/paper/layout.h"
#include "ui/paper/paper.h"

#include <QFile>
#include <QLineF>
#include <QTemporaryDir>

#include <gtest/gtest.h>
#include <random>

namespace hearth::ui::paper {
namespace {

using record::Diagram;

/// A tree by lot: each row leaves an earlier one, and runs on for some columns.
Diagram randomDiagram(std::mt19937& lot) {
    const auto upTo = [&](int most) { return static_cast<int>(lot() % static_cast<unsigned>(most + 1)); };
    Diagram diagram{"", "U6 / G4 diaphragm", {}, "goes on in the list below", "after %1", {}};
    std::vector<int> firsts;  // the column where each row begins
    std::vector<int> lasts;
    const int rows = 1 + upTo(9);
    for (int row = 0; row < rows; ++row) {
        // Drawn depth first: a row leaves one that no later row has shut off.
        int from = 0;
        int first = 0;
        if (row > 0) {
            const int most = std::min(lasts.back(), firsts.back() + upTo(3));
            first = upTo(std::max(0, most));
            for (int back = row - 1; back >= 0; --back) {
                if (firsts[static_cast<std::size_t>(back)] <= std::max(0, first - 1)) {
                    from = back;
                    break;
                }
            }
        }
        const int last = first + upTo(4);
        for (int column = first; column <= last; ++column) {
            record::DiagramSection section;
            section.column = column;
            section.row = row;
            section.fromRow = column == first ? from : row;
            section.diameter = upTo(54);
            section.number = std::to_string(diagram.sections.size() + 1);
            section.above =
                std::string("Copper 22 mm and more words").substr(0, static_cast<std::size_t>(6 + upTo(20)));
            section.below = upTo(2) == 0 ? "" : "tee under the stairs \u00B7 0.000252 m\u00B3";
            section.isEnd = column == last;
            if (section.isEnd) {
                section.end = {"condensing combination boiler (loft)", "0.62 mbar lost at full load"};
            }
            diagram.sections.push_back(section);
        }
        firsts.push_back(first);
        lasts.push_back(last);
    }
    return diagram;
}

std::vector<TextItem> textsOf(const SetDiagram& set) {
    std::vector<TextItem> texts;
    for (const Item& item : set.items) {
        if (const auto* text = std::get_if<TextItem>(&item)) {
            texts.push_back(*text);
        }
    }
    return texts;
}

QString wordsOf(const std::vector<TextItem>& texts) {
    QString all;
    for (const auto& text : texts) {
        all += text.text + u' ';
    }
    return all;
}

class DiagramTest : public ::testing::Test {
  protected:
    TypeSetter m_type;
};

// Nothing stands outside, nothing on another, and nothing is lost, whatever the tree and the width.
TEST_F(DiagramTest, holdsEveryTextInItsRoom) {
    std::mt19937 lot(20261126);
    for (int round = 0; round < 80; ++round) {
        const Diagram diagram = randomDiagram(lot);
        const double width = round % 2 == 0 ? 180 : 75;
        const SetDiagram set = setDiagram(diagram, m_type, width);
        const auto texts = textsOf(set);
        for (std::size_t i = 0; i < texts.size(); ++i) {
            const QRectF box = texts[i].box;
            EXPECT_GE(box.left(), -0.3) << qPrintable(texts[i].text);
            EXPECT_LE(box.right(), width + 0.3) << qPrintable(texts[i].text);
            EXPECT_GE(box.top(), -0.3);
            EXPECT_LE(box.bottom(), set.height + 0.3);
            for (std::size_t j = 0; j < i; ++j) {
                const QRectF shared = box.intersected(texts[j].box);
                EXPECT_LT(std::min(shared.width(), shared.height()), 0.45)
                    << qPrintable(texts[i].text) << " on " << qPrintable(texts[j].text) << ", round "
                    << round;
            }
        }
        const QString words = wordsOf(texts);
        for (const auto& section : diagram.sections) {
            for (const QString& word : QString::fromStdString(section.above).split(u' ')) {
                EXPECT_TRUE(words.contains(word)) << qPrintable(word);
            }
        }
        EXPECT_EQ(words.count(QStringLiteral("0.62 mbar")),
                  std::count_if(diagram.sections.begin(), diagram.sections.end(),
                                [](const auto& section) { return section.isEnd; }));
    }
}

TEST_F(DiagramTest, goesOnAsAListWhereItIsTooDeepForTheWidth) {
    Diagram deep{"", "G4", {}, "goes on in the list below", "after %1", {}};
    for (int column = 0; column < 9; ++column) {
        deep.sections.push_back(
            {column, 0, 0, 22, true, false, std::to_string(column + 1), "run", "", column == 8, {}});
    }
    const QString narrow = wordsOf(textsOf(setDiagram(deep, m_type, 120)));
    EXPECT_TRUE(narrow.contains(QStringLiteral("goes on"))) << qPrintable(narrow);
    EXPECT_TRUE(narrow.contains(QStringLiteral("9 (after 8)"))) << qPrintable(narrow);
    EXPECT_FALSE(wordsOf(textsOf(setDiagram(deep, m_type, wholeDiagramWidth(deep))))
                     .contains(QStringLiteral("goes on")));
}

// A branch's line meets that of the section above it: the rows fit together.
TEST_F(DiagramTest, joinsABranchToWhatItLeaves) {
    Diagram diagram{"", "G4", {}, "", "", {}};
    diagram.sections = {{0, 0, 0, 22, true, false, "1", "a", "", true, {}},
                        {0, 1, 0, 22, true, false, "2", "b", "", true, {}},
                        {0, 2, 0, 22, true, false, "3", "c", "", true, {}}};
    const SetDiagram set = setDiagram(diagram, m_type, 180);
    std::vector<QLineF> down;
    std::vector<double> across;
    for (const Item& item : set.items) {
        if (const auto* line = std::get_if<LineItem>(&item)) {
            const QLineF one(line->points.front(), line->points.back());
            one.x1() == one.x2() ? down.push_back(one) : across.push_back(one.y1());
        }
    }
    ASSERT_EQ(across.size(), 3U);
    double reached = across[0];
    std::sort(down.begin(), down.end(), [](const QLineF& a, const QLineF& b) { return a.y1() < b.y1(); });
    for (const QLineF& line : down) {
        EXPECT_LE(line.y1(), reached + 1e-9) << "a gap";
        reached = std::max(reached, line.y2());
    }
    EXPECT_NEAR(reached, across[2], 1e-9);
}

TEST_F(DiagramTest, aLongTreeGoesOverPagesAndLosesNothing) {
    const LaidOut laid =
        layOut(testing::diagramDocument(), {PaperSize::A4, Stamp::None, testing::sampleDigest()});
    EXPECT_GT(laid.pages.size(), 1U);
    int units = 0;
    for (const Page& page : laid.pages) {
        for (const Item& item : page.items) {
            const auto* text = std::get_if<TextItem>(&item);
            units += text != nullptr && text->text.startsWith(QStringLiteral("unit ")) ? 1 : 0;
        }
    }
    EXPECT_EQ(units, 57);
}

// ISO 19005-1 level B, as Apache PDFBox Preflight 2.0.27 reads it; the same bytes each time.
TEST_F(DiagramTest, isValidOnPaperAndTheSameTwice) {
    const auto make = [] {
        return toPdf(testing::diagramDocument(), {PaperSize::A4, Stamp::None, testing::sampleDigest()});
    };
    const auto pdf = make();
    ASSERT_TRUE(pdf.has_value());
    EXPECT_EQ(testing::withoutTimes(*pdf), testing::withoutTimes(*make()));
    QTemporaryDir folder;
    QFile file(folder.filePath(QStringLiteral("diagram.pdf")));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(*pdf);
    file.close();
    EXPECT_TRUE(testing::preflight(file.fileName()).contains(QStringLiteral("is a valid PDF/A-1b file")));
    // Vectors: there is no image in it.
    const auto images = testing::run(QStringLiteral("pdfimages"), {QStringLiteral("-list"), file.fileName()});
    ASSERT_TRUE(images.started);
    EXPECT_EQ(QString::fromUtf8(images.out).split(u'\n', Qt::SkipEmptyParts).size(), 2);
}

}  // namespace
}  // namespace hearth::ui::paper
