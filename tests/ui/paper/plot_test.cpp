// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/plot.h"

#include "tests/ui/paper/programs.h"
#include "tests/ui/paper/sample_documents.h"
#include "ui/paper/layout.h"

#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>
#include <set>

namespace hearth::ui::paper {
namespace {

using quantity::Decimal;

record::Plot smallPlot() {
    record::Plot plot;
    plot.title = "CO";
    plot.y = {"ppm", {}, true};
    plot.x = {"minutes", {}, true};
    plot.series = {{"room",
                    record::PlotShape::Disc,
                    true,
                    true,
                    {{Decimal(0, 0), Decimal(0, 0), {}, ""},
                     {Decimal(10, 0), Decimal(10, 0), {}, ""},
                     {Decimal(20, 0), std::nullopt, {}, ""},
                     {Decimal(30, 0), Decimal(40, 0), Decimal(5, 0), ""},
                     {Decimal(40, 0), Decimal(20, 0), {}, "20"}}}};
    plot.limits = {{Decimal(20, 0), "limit", true}, {Decimal(30, 0), "advice", false}};
    plot.bands = {{Decimal(10, 0), Decimal(15, 0), "range"}};
    plot.stretches = {{Decimal(5, 0), Decimal(25, 0), "stage"}};
    plot.marks = {{Decimal(30, 0), "door"}};
    return plot;
}

template <class T>
std::vector<T> itemsOf(const SetPlot& set) {
    std::vector<T> found;
    for (const Item& item : set.items) {
        if (const auto* one = std::get_if<T>(&item)) {
            found.push_back(*one);
        }
    }
    return found;
}

/// Where a figure stands, by the axes: x from 0 to 40, y from 0 to 50 (the bar reaches 45).
QPointF placed(const SetPlot& set, double x, double y) {
    return {set.area.left() + x / 40 * set.area.width(), set.area.bottom() - y / 50 * set.area.height()};
}

bool isAt(const QPointF& a, const QPointF& b) {
    return QLineF(a, b).length() < 1e-6;
}

class PlotTest : public ::testing::Test {
  protected:
    TypeSetter m_type;
    SetPlot m_set = setPlot(smallPlot(), m_type, 100, 30);
};

TEST_F(PlotTest, putsEachMarkWhereItsFigureIs) {
    const auto marks = itemsOf<MarkItem>(m_set);
    ASSERT_EQ(marks.size(), 5U);  // four readings and the key's sample; nothing for what was not read
    EXPECT_TRUE(isAt(marks[0].centre, placed(m_set, 0, 0)));
    EXPECT_TRUE(isAt(marks[1].centre, placed(m_set, 10, 10)));
    EXPECT_TRUE(isAt(marks[2].centre, placed(m_set, 30, 40)));
    EXPECT_TRUE(isAt(marks[3].centre, placed(m_set, 40, 20)));
}

TEST_F(PlotTest, leavesAGapWhereNothingWasRead) {
    std::vector<LineItem> joined;
    for (const LineItem& line : itemsOf<LineItem>(m_set)) {
        const bool slants = line.points.size() == 2 && line.points[0].x() != line.points[1].x() &&
                            line.points[0].y() != line.points[1].y();
        if (slants || line.points.size() > 2) {
            joined.push_back(line);
        }
    }
    ASSERT_EQ(joined.size(), 2U);
    EXPECT_TRUE(isAt(joined[0].points.back(), placed(m_set, 10, 10)));
    EXPECT_TRUE(isAt(joined[1].points.front(), placed(m_set, 30, 40)));
}

TEST_F(PlotTest, drawsTheUncertaintyAsABar) {
    bool found = false;
    for (const LineItem& line : itemsOf<LineItem>(m_set)) {
        found = found || (isAt(line.points.front(), placed(m_set, 30, 45)) &&
                          isAt(line.points.back(), placed(m_set, 30, 35)));
    }
    EXPECT_TRUE(found);
}

TEST_F(PlotTest, drawsLimitsAcrossItAndTellsThemApartByTheirStroke) {
    std::set<Stroke> strokes;
    for (const LineItem& line : itemsOf<LineItem>(m_set)) {
        for (const double y : {20.0, 30.0}) {
            if (isAt(line.points.front(), placed(m_set, 0, y)) &&
                isAt(line.points.back(), placed(m_set, 40, y))) {
                strokes.insert(line.stroke);
            }
        }
    }
    EXPECT_EQ(strokes, (std::set{Stroke::Dashed, Stroke::Dotted}));
}

TEST_F(PlotTest, drawsARangeBetweenItsEnds) {
    bool found = false;
    for (const RuleItem& rule : itemsOf<RuleItem>(m_set)) {
        found = found || (isAt(rule.from, placed(m_set, 0, 15)) &&
                          std::abs(rule.thickness - m_set.area.height() / 10) < 1e-6);
    }
    EXPECT_TRUE(found);
}

TEST_F(PlotTest, drawsAStageFromItsBeginningToItsEndAndNumbersItBeforeTheMarks) {
    bool found = false;
    for (const RuleItem& rule : itemsOf<RuleItem>(m_set)) {
        found = found || (isAt(rule.from, placed(m_set, 5, 50)) &&
                          std::abs(rule.length - m_set.area.width() / 2) < 1e-6 &&
                          std::abs(rule.thickness - m_set.area.height()) < 1e-6);
    }
    EXPECT_TRUE(found);
    for (const TextItem& text : itemsOf<TextItem>(m_set)) {
        if (text.box.bottom() < m_set.area.top() + 1e-6 && (text.text == u"1" || text.text == u"2")) {
            EXPECT_NEAR(text.box.center().x(), placed(m_set, text.text == u"1" ? 15 : 30, 0).x(), 1.0);
        }
    }
}

TEST_F(PlotTest, namesAxesAndKeyInWords) {
    QStringList texts;
    for (const TextItem& text : itemsOf<TextItem>(m_set)) {
        texts << text.text;
        EXPECT_LE(text.box.bottom(), m_set.height + 0.9);
    }
    for (const char* wanted :
         {"CO", "ppm", "minutes", "room", "limit", "advice", "range", "20", "stage", "door"}) {
        EXPECT_TRUE(texts.contains(QString::fromUtf8(wanted))) << wanted;
    }
}

/// Each shape in one ink, as on a greyscale printer: no two give the same picture.
TEST(PlotMarks, keepApartWithoutColour) {
    std::set<QByteArray> pictures;
    for (const Mark mark : {Mark::Disc, Mark::Ring, Mark::Square, Mark::Diamond, Mark::Triangle}) {
        QImage image(60, 60, QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        painter.scale(10, 10);
        Page page;
        page.items.emplace_back(MarkItem{{3, 3}, 3.4, mark, look::Role::Ink});
        paintPage(painter, page);
        painter.end();
        const QImage grey = image.convertToFormat(QImage::Format_Grayscale8);
        pictures.insert(QByteArray(reinterpret_cast<const char*>(grey.constBits()),
                                   static_cast<int>(grey.sizeInBytes())));
    }
    EXPECT_EQ(pictures.size(), 5U);
}

TEST(PlotPaper, stands) {
    const QTemporaryDir folder;
    QFile file(folder.filePath(QStringLiteral("plots.pdf")));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    const auto pdf = toPdf(testing::plotDocument(), {PaperSize::A4, Stamp::None, testing::sampleDigest()});
    ASSERT_TRUE(pdf.has_value());
    file.write(*pdf);
    file.close();
    const QString said = testing::preflight(file.fileName());
    EXPECT_TRUE(said.contains(QStringLiteral("is a valid PDF/A-1b file"))) << said.toStdString();
    // Vectors: there is no image in it.
    const auto images = testing::run(QStringLiteral("pdfimages"), {QStringLiteral("-list"), file.fileName()});
    ASSERT_TRUE(images.started);
    EXPECT_EQ(QString::fromUtf8(images.out).split(u'\n', Qt::SkipEmptyParts).size(), 2)
        << images.out.toStdString();
    EXPECT_EQ(testing::withoutTimes(*pdf),
              testing::withoutTimes(
                  *toPdf(testing::plotDocument(), {PaperSize::A4, Stamp::None, testing::sampleDigest()})));
}

TEST_F(PlotTest, BarsStandOnNoughtAndAPartStandsInItsWhole) {
    record::Plot plot;
    plot.y = {"checks", {}, true};
    plot.x = {"", {{Decimal(0, 0), "Nov"}, {Decimal(1, 0), "Dec"}}, false};
    const auto bars = [](record::PlotShape shape, int first, int second) {
        return record::PlotSeries{
            "bars",
            shape,
            false,
            false,
            {{Decimal(0, 0), Decimal(first, 0), {}, ""}, {Decimal(1, 0), Decimal(second, 0), {}, ""}}};
    };
    plot.series = {bars(record::PlotShape::OpenBar, 10, 4), bars(record::PlotShape::Bar, 5, 4)};
    const SetPlot set = setPlot(plot, m_type, 100, 21);
    const auto frames = itemsOf<FrameItem>(set);
    ASSERT_EQ(frames.size(), 3U) << "two bars, and the key";
    std::vector<RuleItem> filled;
    for (const auto& rule : itemsOf<RuleItem>(set)) {
        if (rule.role == look::Role::Key) {
            filled.push_back(rule);
        }
    }
    ASSERT_EQ(filled.size(), 3U);
    EXPECT_NEAR(frames[0].box.bottom(), set.area.bottom(), 1e-6) << "nought is the axis";
    EXPECT_NEAR(filled[0].from.y() + filled[0].thickness, set.area.bottom(), 1e-6);
    EXPECT_NEAR(filled[0].thickness / frames[0].box.height(), 0.5, 1e-6) << "5 of 10";
    EXPECT_NEAR(frames[1].box.height() / frames[0].box.height(), 0.4, 1e-6) << "4 to 10";
    EXPECT_NEAR(filled[0].from.x(), frames[0].box.left(), 1e-6);
    EXPECT_LT(frames[0].box.right(), frames[1].box.left()) << "apart";
    EXPECT_GT(frames[0].box.left(), set.area.left());
    EXPECT_LT(frames[1].box.right(), set.area.right());
}

}  // namespace
}  // namespace hearth::ui::paper
