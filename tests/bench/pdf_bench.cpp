// SPDX-License-Identifier: GPL-3.0-or-later
// A record's PDF against a bare QPdfWriter that draws as many texts and lines with the same font, PDF/A too.
// Goal: at most 1.3 times. Both are measured in turns and in processor time, so that other work on the
// machine weighs on both alike.
#include "resources/resources.h"
#include "tests/bench/figure.h"
#include "tests/ui/paper/sample_documents.h"
#include "ui/look/look.h"
#include "ui/paper/layout.h"

#include <QBuffer>
#include <QGuiApplication>
#include <QPdfWriter>

#include <algorithm>
#include <benchmark/benchmark.h>
#include <cstdio>
#include <ctime>
#include <vector>

namespace {

using namespace hearth;
using namespace hearth::ui;

constexpr double kGoal = 1.3;
constexpr int kDotsPerInch = 600;
constexpr double kDotsPerMm = kDotsPerInch / 25.4;

double measuredRatio = 0;

struct BareText {
    QPointF at;
    QString text;
    QFont font;
};
/// What the bare writer draws: the strings and lines of the record's own layout, as plain calls.
struct BarePage {
    std::vector<BareText> texts;
    std::vector<QLineF> lines;
};

std::vector<BarePage> barePages(const paper::LaidOut& laid) {
    std::vector<BarePage> pages;
    for (const paper::Page& page : laid.pages) {
        BarePage bare;
        for (const paper::Item& item : page.items) {
            if (const auto* text = std::get_if<paper::TextItem>(&item)) {
                QFont font = look::font(look::TypeRole::Body);
                const QRawFont shaped = text->runs.isEmpty() ? QRawFont() : text->runs.front().rawFont();
                font.setPixelSize(static_cast<int>(shaped.pixelSize() / paper::kUnitsPerMm * kDotsPerMm));
                font.setBold(shaped.weight() > QFont::Normal);
                bare.texts.push_back({text->origin * kDotsPerMm, text->text, font});
            } else if (const auto* rule = std::get_if<paper::RuleItem>(&item)) {
                const QPointF from = rule->from * kDotsPerMm;
                bare.lines.emplace_back(from, from + QPointF(rule->length * kDotsPerMm, 0));
            }
        }
        pages.push_back(std::move(bare));
    }
    return pages;
}

QByteArray barePdf(const std::vector<BarePage>& pages) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);
    writer.setResolution(kDotsPerInch);
    writer.setPageMargins(QMarginsF(0, 0, 0, 0));
    writer.setTitle(QStringLiteral("bare"));
    QPainter painter(&writer);
    for (std::size_t i = 0; i < pages.size(); ++i) {
        if (i > 0) {
            writer.newPage();
        }
        for (const BareText& text : pages[i].texts) {
            painter.setFont(text.font);
            painter.drawText(text.at, text.text);
        }
        for (const QLineF& line : pages[i].lines) {
            painter.drawLine(line);
        }
    }
    painter.end();
    return bytes;
}

double processorSeconds() {
    timespec now{};
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) + static_cast<double>(now.tv_nsec) * 1e-9;
}

double median(std::vector<double> values) {
    std::nth_element(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2),
                     values.end());
    return values[values.size() / 2];
}

void recordPdf(benchmark::State& state) {
    const record::Document document = testing::usualDocument();
    paper::PageOptions options;
    options.digest = testing::sampleDigest();
    const std::vector<BarePage> bare = barePages(paper::layOut(document, options));
    std::size_t texts = 0;
    std::size_t lines = 0;
    for (const BarePage& page : bare) {
        texts += page.texts.size();
        lines += page.lines.size();
    }
    std::vector<double> ours;
    std::vector<double> plain;
    for (auto _ : state) {
        const double start = processorSeconds();
        benchmark::DoNotOptimize(barePdf(bare));
        const double between = processorSeconds();
        const auto pdf = paper::toPdf(document, options);
        const double end = processorSeconds();
        if (!pdf) {
            state.SkipWithError("no PDF was made");
            return;
        }
        plain.push_back(between - start);
        ours.push_back(end - between);
        state.SetIterationTime(end - between);
    }
    measuredRatio = median(ours) / median(plain);
    state.counters["record_ms"] = median(ours) * 1000;
    state.counters["bare_ms"] = median(plain) * 1000;
    state.counters["ratio"] = measuredRatio;
    state.counters["texts"] = static_cast<double>(texts);
    state.counters["lines"] = static_cast<double>(lines);
}
BENCHMARK(recordPdf)->UseManualTime()->Unit(benchmark::kMillisecond)->Iterations(100);

}  // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QGuiApplication application(argc, argv);
    hearth::initResources();
    look::loadFonts();
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    hearth::bench::figure("a record's PDF, in times of a bare QPdfWriter's", measuredRatio, kGoal);
    return measuredRatio > 0 ? 0 : 1;  // 0: none was made
}
