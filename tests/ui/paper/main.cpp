// SPDX-License-Identifier: GPL-3.0-or-later
#include "resources/resources.h"
#include "tests/ui/paper/sample_documents.h"
#include "ui/paper/paper.h"

#include <QApplication>

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

}  // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    testing::InitGoogleTest(&argc, argv);
    QApplication application(argc, argv);
    hearth::initResources();
    if (application.arguments().contains(QStringLiteral("--places"))) {
        return printPlaces();
    }
    return RUN_ALL_TESTS();
}
