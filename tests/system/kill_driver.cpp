// SPDX-License-Identifier: GPL-3.0-or-later
// Types into a visit in the real window until it is killed; says each value before it is typed and again once
// it is kept.
//
//     kill_driver STORE VISIT 1000   types 1000, 1001, ... and says "typing NAME VALUE", "kept NAME VALUE"
//     kill_driver STORE VISIT show   opens the visit and says what its fields show: "shown NAME VALUE"
//
// Words of a line are separated by tabs. The window is the program's own; only the keys come from here.

#include "app/window.h"
#include "core/store/store.h"
#include "resources/resources.h"
#include "ui/shell/no_dialogs.h"
#include "ui/visit/sheet.h"
#include "ui/visit/visits_place.h"

#include <QApplication>
#include <QLineEdit>
#include <QTest>

#include <cstdio>
#include <cstdlib>
#include <string>

namespace {

using namespace hearth;
using ui::visit::PartKind;
using ui::visit::PartRef;
using ui::visit::VisitSheet;

void say(const char* what, const QString& name, const QString& value) {
    std::printf("%s\t%s\t%s\n", what, qPrintable(name), qPrintable(value));
    std::fflush(stdout);
}

VisitSheet* sheetOf(ui::shell::MainWindow& window) {
    auto* place = dynamic_cast<ui::visit::VisitsPlace*>(window.placeInView());
    return place == nullptr ? nullptr : place->sheet();
}

/// One field after the other, round and round; ends only by being killed.
[[noreturn]] void typeForEver(VisitSheet& sheet, int first) {
    for (int value = first;; ++value) {
        auto* field = qobject_cast<QLineEdit*>(QApplication::focusWidget());
        if (field == nullptr || field->isReadOnly() || !sheet.isAncestorOf(field)) {
            if (QApplication::focusWidget() == nullptr || value % 97 == 0) {
                sheet.goTo(PartRef{PartKind::Tightness, 0});
            } else {
                QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
            }
            continue;
        }
        const QString name = field->accessibleName();
        const QString text = QString::number(value);
        say("typing", name, text);
        field->selectAll();
        QTest::keyClicks(field, text);
        QTest::keyClick(field, Qt::Key_Return);
        QApplication::processEvents();
        say("kept", name, text);
    }
}

void showAll(VisitSheet& sheet) {
    for (const auto* field : sheet.findChildren<QLineEdit*>()) {
        say("shown", field->accessibleName(), field->text());
    }
}

std::optional<reg::VisitId> visitFrom(const char* text) {
    const auto bytes = uuidFromText(text);
    return bytes ? std::optional(reg::VisitId{*bytes}) : std::nullopt;
}

/// `first`: the value to begin with; 0 to show.
int run(store::Store& store, reg::VisitId visit, int first) {
    const SystemClock clock;
    const ui::words::Words words;
    ui::shell::NoDialogs dialogs;
    const auto printing = ui::paper::systemPrinting();
    const auto window = app::makeMainWindow(store, {clock, words, dialogs, *printing});
    window->show();
    QApplication::setActiveWindow(window.get());
    window->openVisit(visit);
    VisitSheet* sheet = sheetOf(*window);
    if (sheet == nullptr) {
        std::fputs("the visit did not open\n", stderr);
        return 1;
    }
    sheet->goTo(PartRef{PartKind::Tightness, 0});
    QApplication::processEvents();
    if (first == 0) {
        showAll(*sheet);
        return 0;
    }
    typeForEver(*sheet, first);
}

}  // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(argc, argv);
    initResources();
    ui::look::loadFonts();
    app::applyLook(*qApp, ui::look::Scheme::Light);
    const SystemClock clock;
    const auto visit = argc == 4 ? visitFrom(argv[2]) : std::nullopt;
    const auto store =
        visit ? store::Store::open(argv[1], store::Access::Write, clock) : fail(ErrorCode::UsageWrong);
    if (!store) {
        std::fprintf(stderr, "%s\n", std::string(codeText(store.error().code)).c_str());
        return 1;
    }
    return run(**store, *visit, std::atoi(argv[3]));
}
