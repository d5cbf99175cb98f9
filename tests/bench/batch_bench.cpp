// SPDX-License-Identifier: GPL-3.0-or-later
// Records by the thousand: as one job into one PDF, as files of their own by one thread and by two, and
// merged; each against a bare QPdfWriter that draws as many texts, lines and codes. With an office suite on
// the machine, against that too. What is compared is measured in turns; only what two threads do is measured
// by the clock.
#include "resources/resources.h"
#include "tests/bench/bare_pages.h"
#include "tests/bench/figure.h"
#include "tests/bench/office_page.h"
#include "tests/ui/paper/sample_documents.h"
#include "ui/look/look.h"
#include "ui/paper/layout.h"
#include "ui/paper/merging.h"
#include "ui/paper/printing.h"

#include <QApplication>
#include <QBuffer>
#include <QElapsedTimer>
#include <QFile>
#include <QPdfWriter>
#include <QPrinter>
#include <QProcess>
#include <QStandardPaths>
#include <QTemporaryDir>

#include <algorithm>
#include <atomic>
#include <cstdio>
#include <functional>
#include <thread>
#include <vector>

namespace {

using namespace hearth;
using namespace hearth::ui;
using bench::secondsOf;

constexpr int kBatch = 1000;
constexpr int kTurns = 5;  // of a fifth of the batch each

/// A record whose values are its own; what all records have is as on the others.
record::Document numbered(int i) {
    record::Document document = testing::usualDocument();
    document.number = "QKD-" + std::to_string(100000 + i);
    const std::string own = " " + std::to_string(i);
    for (record::Block& block : document.blocks) {
        if (auto* grid = std::get_if<record::FieldGrid>(&block)) {
            for (record::CaptionedValue& field : grid->fields) {
                field.lines.front() += own;
            }
        } else if (auto* table = std::get_if<record::Table>(&block)) {
            for (auto& row : table->rows) {
                row.back() += own;
            }
        } else if (auto* list = std::get_if<record::FindingList>(&block)) {
            for (record::FindingLine& finding : list->findings) {
                finding.measured += own;
            }
        }
    }
    return document;
}
paper::PageOptions withDigest() {
    paper::PageOptions options;
    options.digest = testing::sampleDigest();
    return options;
}

double clockSecondsOf(const std::function<void()>& work) {
    QElapsedTimer timer;
    timer.start();
    work();
    return static_cast<double>(timer.nsecsElapsed()) * 1e-9;
}

std::vector<bench::BarePage> barePages(const QString& family) {
    return bench::barePages(testing::usualDocument(), withDigest(), family);
}

void bareAsFiles(const std::vector<bench::BarePage>& pages, int count) {
    for (int i = 0; i < count; ++i) {
        QBuffer buffer;
        buffer.open(QIODevice::WriteOnly);
        QPdfWriter writer(&buffer);
        bench::prepareBare(writer);
        QPainter painter(&writer);
        for (std::size_t page = 0; page < pages.size(); ++page) {
            if (page > 0) {
                writer.newPage();
            }
            bench::drawBare(painter, pages[page]);
        }
    }
}

/// The road of the records place, into a file in place of a queue.
bool oursAsOne(int count, const QString& path) {
    const auto intoFile = [&path](QPrinter& printer, paper::PaperSize&, paper::Pages) {
        printer.setOutputFormat(QPrinter::PdfFormat);
        printer.setPdfVersion(QPrinter::PdfVersion_A1b);
        printer.setOutputFileName(path);
        return true;
    };
    int at = 0;
    const auto next = [&]() -> Result<std::optional<paper::PrintPart>> {
        return at < count ? std::optional(paper::PrintPart{numbered(at++), withDigest()}) : std::nullopt;
    };
    const auto printed =
        paper::printingThatAsks(intoFile)->printMany({QStringLiteral("Records"), paper::PaperSize::A4, next});
    return printed.parts == count && !printed.failure;
}

std::atomic<int> failures{0};

void oursAsFiles(int from, int to) {
    for (int i = from; i < to; ++i) {
        failures += paper::toPdf(numbered(i), withDigest()) ? 0 : 1;
    }
}

/// Kilobytes at most since it was last forgotten.
long mostMemory() {
    QFile status(QStringLiteral("/proc/self/status"));
    if (!status.open(QIODevice::ReadOnly)) {
        return 0;
    }
    for (const QByteArray& line : status.readAll().split('\n')) {
        if (line.startsWith("VmHWM:")) {
            return line.mid(6).trimmed().split(' ').front().toLong();
        }
    }
    return 0;
}
void forgetMost() {
    QFile refs(QStringLiteral("/proc/self/clear_refs"));
    if (refs.open(QIODevice::WriteOnly)) {
        refs.write("5");
    }
}

long memoryOfMerging(int count, const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly)) {
        return 0;
    }
    forgetMost();
    int at = 0;
    const auto next = [&]() -> Result<std::optional<paper::PdfPart>> {
        if (at == count) {
            return std::nullopt;
        }
        const auto document = numbered(at++);
        return paper::PdfPart{document.number, paper::toPdf(document, withDigest()).value().toStdString()};
    };
    const auto merged =
        paper::mergePdfs({"Records", "en"}, next, [&file](std::string_view bytes) -> Result<void> {
            file.write(bytes.data(), static_cast<qint64>(bytes.size()));
            return {};
        });
    failures += merged ? 0 : 1;
    return mostMemory();
}

void measureOneFile(const QTemporaryDir& folder) {
    const auto pages = barePages(look::family());
    std::vector<double> ratios;
    double ours = 0;
    for (int turn = 0; turn < kTurns; ++turn) {
        const double bare = secondsOf(
            [&] { bench::bareAsOne(pages, kBatch / kTurns, folder.filePath(QStringLiteral("bare.pdf"))); });
        const double mine = secondsOf([&] {
            failures += oursAsOne(kBatch / kTurns, folder.filePath(QStringLiteral("ours.pdf"))) ? 0 : 1;
        });
        ours += mine;
        ratios.push_back(mine / bare);
    }
    std::sort(ratios.begin(), ratios.end());
    std::printf("one file: %.0f pages/s\n", static_cast<double>(pages.size()) * kBatch / ours);
    bench::figure("1,000 records as one job into one PDF, in times of a bare QPdfWriter's",
                  ratios[kTurns / 2], 1 / 0.8);
}

void measureFiles() {
    const auto pages = barePages(QStringLiteral("DejaVu Sans"));
    std::vector<double> one;
    std::vector<double> two;
    double seconds = 0;
    constexpr int kCount = kBatch / kTurns;
    for (int turn = 0; turn < kTurns; ++turn) {
        double bare = 0;
        const double bareByClock =
            clockSecondsOf([&] { bare = secondsOf([&] { bareAsFiles(pages, kCount); }); });
        const double mine = secondsOf([] { oursAsFiles(0, kCount); });
        const double both = clockSecondsOf([] {
            std::thread other(oursAsFiles, 0, kCount / 2);
            oursAsFiles(kCount / 2, kCount);
            other.join();
        });
        seconds += mine;
        one.push_back(mine / bare);
        two.push_back(both / bareByClock);
    }
    std::sort(one.begin(), one.end());
    std::sort(two.begin(), two.end());
    std::printf("files of their own: %.0f records/s\n", kBatch / seconds);
    bench::figure("1,000 records as files, in times of a bare QPdfWriter's with a font of the system",
                  one[kTurns / 2], 1 / 2.0);
    bench::figure("the same by two threads", two[kTurns / 2], 1 / 3.0);
}

void measureMemory(const QTemporaryDir& folder) {
    const QString path = folder.filePath(QStringLiteral("merged.pdf"));
    static_cast<void>(memoryOfMerging(10, path));
    const long hundred = memoryOfMerging(100, path);
    const long thousand = memoryOfMerging(kBatch, path);
    std::printf("merging: %ld kB at most for 100 records, %ld kB for 1,000 (a file of %lld kB)\n", hundred,
                thousand, static_cast<long long>(QFile(path).size() / 1024));
    bench::figure("memory of merging 1,000 records, in times of 100's",
                  static_cast<double>(thousand) / static_cast<double>(hundred), 1.1);
}

/// Sixty pages or so: what the preview does until the first of them is seen.
void measurePreview() {
    record::Document document = testing::longestDocument();
    const auto blocks = document.blocks;
    while (paper::Layout(document, withDigest()).pageCount() < 60) {
        document.blocks.insert(document.blocks.end(), blocks.begin(), blocks.end());
    }
    std::vector<double> times;
    int pages = 0;
    for (int turn = 0; turn < kTurns; ++turn) {
        // In a thread of its own, which has set no text yet.
        std::thread([&] {
            times.push_back(secondsOf([&] {
                const paper::Layout layout(document, withDigest());
                pages = layout.pageCount();
                failures += paper::toImage(layout, 0, 96).isNull() ? 1 : 0;
            }));
        }).join();
    }
    std::sort(times.begin(), times.end());
    std::printf("preview: %d pages\n", pages);
    bench::figure("a report's preview until its first page is seen, ms", times[kTurns / 2] * 1000, 100);
}

double secondsOfProgram(const QString& program, const QStringList& arguments) {
    return clockSecondsOf([&] {
        QProcess process;
        process.start(program, arguments);
        const bool done = process.waitForFinished(600000) && process.exitCode() == 0;
        failures += done ? 0 : 1;
    });
}

/// All that stands on a record's pages, line by line.
QStringList printedTexts() {
    const paper::Layout layout(testing::usualDocument(), withDigest());
    QStringList texts;
    for (int page = 0; page < layout.pageCount(); ++page) {
        for (const auto& run : layout.runs(page)) {
            texts.append(run.text);
        }
    }
    return texts;
}

int pagesOf(const QString& path) {
    QProcess process;
    process.start(QStringLiteral("pdfinfo"), {path});
    process.waitForFinished();
    const QString said = QString::fromUtf8(process.readAllStandardOutput());
    return said.section(QStringLiteral("Pages:"), 1).section(u'\n', 0, 0).trimmed().toInt();
}

void measureOffice(const QTemporaryDir& folder) {
    const QString office = QStandardPaths::findExecutable(QStringLiteral("soffice"));
    if (office.isEmpty()) {
        std::printf("no office suite here: not compared\n");
        return;
    }
    for (const int count : {1, kBatch}) {
        const QString page = folder.filePath(QStringLiteral("page.fodt"));
        failures += bench::writeOfficePages(page, printedTexts(), count) ? 0 : 1;
        const QStringList convert{
            QStringLiteral("--headless"),
            QStringLiteral("--convert-to"),
            QStringLiteral("pdf"),
            QStringLiteral("--outdir"),
            folder.path(),
            page,
            QStringLiteral("-env:UserInstallation=file://") + folder.path() + QStringLiteral("/office")};
        if (count == 1) {
            static_cast<void>(secondsOfProgram(office, convert));  // makes its folder, and is read in
        }
        const double theirs = secondsOfProgram(office, convert);
        const QStringList make{QStringLiteral("--make"), QString::number(count),
                               folder.filePath(QStringLiteral("made.pdf"))};
        const double ours = secondsOfProgram(QCoreApplication::applicationFilePath(), make);
        std::printf("whole process, %d record(s): %.3f s, %d pages; office suite: %.3f s, %d pages\n", count,
                    ours, pagesOf(make.back()), theirs, pagesOf(folder.filePath(QStringLiteral("page.pdf"))));
        bench::figure(count == 1 ? "one record as a whole process, in times of an office suite's"
                                 : "1,000 records as a whole process, in times of an office suite's",
                      ours / theirs, count == 1 ? 1 / 25.0 : 1 / 5.0);
    }
}

}  // namespace

int main(int argc, char** argv) {
    std::setvbuf(stdout, nullptr, _IOLBF, BUFSIZ);
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    hearth::initResources();
    look::loadFonts();
    const QStringList said = application.arguments();
    if (said.size() == 4 && said[1] == QStringLiteral("--make")) {
        return oursAsOne(said[2].toInt(), said[3]) ? 0 : 1;
    }
    const QTemporaryDir folder;
    measureOneFile(folder);
    measureFiles();
    measureMemory(folder);
    measurePreview();
    measureOffice(folder);
    return failures == 0 ? 0 : 1;
}
