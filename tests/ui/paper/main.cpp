// SPDX-License-Identifier: GPL-3.0-or-later
#include "resources/resources.h"
#include "tests/ui/paper/sample_documents.h"
#include "ui/paper/printing.h"

#include <QApplication>
#include <QPrinter>

#include <cstdio>
#include <gtest/gtest.h>

namespace {

/// For the test that starts this program again with another screen: all places of all texts.
int printPlaces() {
    hearth::ui::paper::PageOptions options;
    options.digest = hearth::testing::sampleDigest();
    const hearth::ui::paper::Layout layout(hearth::testing::usualDocument(), options);
    for (int page = 0; page < layout.pageCount(); ++page) {
        for (const auto& run : layout.runs(page)) {
            std::printf("%d %.4f %.4f %.4f %s\n", page, run.box.left(), run.box.top(), run.box.width(),
                        qPrintable(run.text));
        }
    }
    return 0;
}

/// For the test that has a queue: prints on it. What it prints, and how, is the second argument.
int printOn(const QString& queue, const QString& what) {
    namespace paper = hearth::ui::paper;
    const auto ask = [&](QPrinter& printer, paper::PaperSize&, paper::Pages) {
        printer.setPrinterName(queue);
        printer.setPageSize(QPageSize(QPageSize::A5));
        printer.setPageOrientation(QPageLayout::Landscape);
        printer.setDuplex(what == QStringLiteral("both sides") ? QPrinter::DuplexLongSide
                                                               : QPrinter::DuplexNone);
        return what != QStringLiteral("not");
    };
    const auto printing = paper::printingThatAsks(ask);
    if (what == QStringLiteral("one") || what == QStringLiteral("not")) {
        return printing->print(hearth::testing::usualDocument(), {}, paper::PaperSize::A4) ? 0 : 1;
    }
    int left = 3;
    const auto next = [&left]() -> hearth::Result<std::optional<paper::PrintPart>> {
        return left-- > 0 ? std::optional(paper::PrintPart{hearth::testing::shortDocument(), {}})
                          : std::nullopt;
    };
    return printing->printMany({QStringLiteral("Records"), paper::PaperSize::A4, next}).parts == 3 ? 0 : 1;
}

}  // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    testing::InitGoogleTest(&argc, argv);
    QApplication application(argc, argv);
    hearth::initResources();
    if (application.arguments().contains(QStringLiteral("--places"))) {
        return printPlaces();
    }
    if (const auto at = application.arguments().indexOf(QStringLiteral("--print")); at > 0) {
        return printOn(application.arguments().value(at + 1), application.arguments().value(at + 2));
    }
    return RUN_ALL_TESTS();
}
