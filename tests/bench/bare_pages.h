// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paper/layout.h"

#include <QBuffer>
#include <QPainter>
#include <QPdfWriter>
#include <QRawFont>

#include <ctime>
#include <functional>
#include <variant>
#include <vector>

/// What papers are measured against: a bare QPdfWriter that draws as many texts, lines and codes at the same
/// places.
namespace hearth::bench {

constexpr int kDotsPerInch = 1200;
constexpr double kDotsPerMm = kDotsPerInch / 25.4;

inline double processorSeconds() {
    timespec now{};
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) + static_cast<double>(now.tv_nsec) * 1e-9;
}
inline double secondsOf(const std::function<void()>& work) {
    const double start = processorSeconds();
    work();
    return processorSeconds() - start;
}

/// What the bare writer draws, in its dots: the strings, lines and codes of a record's own layout.
struct BareText {
    QPointF at;
    QString text;
    QFont font;
};
struct BarePage {
    std::vector<BareText> texts;
    std::vector<QLineF> lines;
    QList<QRectF> boxes;
};

inline BarePage barePage(const ui::paper::Page& page, const QString& family) {
    BarePage bare;
    for (const ui::paper::Item& item : page.items) {
        if (const auto* text = std::get_if<ui::paper::TextItem>(&item)) {
            QFont font(family);
            const QRawFont shaped = text->runs.isEmpty() ? QRawFont() : text->runs.front().rawFont();
            font.setPixelSize(static_cast<int>(shaped.pixelSize() / ui::paper::kUnitsPerMm * kDotsPerMm));
            font.setBold(shaped.weight() > QFont::Normal);
            bare.texts.push_back({text->origin * kDotsPerMm, text->text, font});
        } else if (const auto* rule = std::get_if<ui::paper::RuleItem>(&item)) {
            const QPointF from = rule->from * kDotsPerMm;
            bare.lines.emplace_back(from, from + QPointF(rule->length * kDotsPerMm, 0));
        } else if (const auto* code = std::get_if<ui::paper::CodeItem>(&item)) {
            const double side = code->moduleSize * kDotsPerMm;
            for (const QRect& run : code->runs) {
                bare.boxes.append(QRectF(code->origin.x() * kDotsPerMm + run.x() * side,
                                         code->origin.y() * kDotsPerMm + run.y() * side, run.width() * side,
                                         side));
            }
        }
    }
    return bare;
}

/// The pages of a document as the bare writer draws them.
inline std::vector<BarePage> barePages(const record::Document& document,
                                       const ui::paper::PageOptions& options, const QString& family) {
    std::vector<BarePage> pages;
    for (const ui::paper::Page& page : ui::paper::layOut(document, options).pages) {
        pages.push_back(barePage(page, family));
    }
    return pages;
}

inline void prepareBare(QPdfWriter& writer) {
    writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);
    writer.setResolution(kDotsPerInch);
    writer.setPageMargins(QMarginsF(0, 0, 0, 0));
    writer.setTitle(QStringLiteral("bare"));
}

inline void drawBare(QPainter& painter, const BarePage& page) {
    for (const BareText& text : page.texts) {
        painter.setFont(text.font);
        painter.drawText(text.at, text.text);
    }
    painter.drawLines(page.lines.data(), static_cast<int>(page.lines.size()));
    painter.setBrush(Qt::black);
    painter.drawRects(page.boxes.constData(), static_cast<int>(page.boxes.size()));
}

inline void bareAsOne(const std::vector<BarePage>& pages, int count, const QString& path) {
    QPdfWriter writer(path);
    prepareBare(writer);
    QPainter painter(&writer);
    for (int i = 0; i < count; ++i) {
        for (std::size_t page = 0; page < pages.size(); ++page) {
            if (i + static_cast<int>(page) > 0) {
                writer.newPage();
            }
            drawBare(painter, pages[page]);
        }
    }
}

}  // namespace hearth::bench
