// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/ui/support/firm_bench.h"
#include "tests/ui/support/keys.h"
#include "tests/ui/support/walker.h"
#include "ui/shell/line_list.h"
#include "ui/workings/work_sheet.h"
#include "ui/workings/workings_place.h"

#include <QLabel>

#include <gtest/gtest.h>
#include <memory>
#include <vector>

namespace hearth::testing {

/// The place in a window of a firm that has nothing yet.
class WorkingsBench : public ::testing::Test {
  protected:
    void start() {
        window = std::make_unique<ui::shell::MainWindow>(bench.parts());
        place = new ui::workings::WorkingsPlace(window->context());
        window->setPlaces({place});
        window->resize(1280, 800);
        activate(window.get());
    }
    void start(judging::Question question) {
        start();
        place->openQuestion(question);
        QApplication::processEvents();
    }
    [[nodiscard]] ui::shell::LineList* list() const {
        return child<ui::shell::LineList>(place, "questionsList");
    }
    [[nodiscard]] ui::workings::WorkSheet* sheet() const {
        return place->findChild<ui::workings::WorkSheet*>();
    }
    [[nodiscard]] std::vector<ui::workings::WorkField> fields() const { return sheet()->paper()->fields(); }
    [[nodiscard]] bool inView(const char* field) const {
        const auto* found = place->findChild<ui::input::Editor*>(QString::fromLatin1(field));
        return found != nullptr && found->isVisible();
    }
    [[nodiscard]] QString title() const { return child<QLabel>(place, "workingsTitle")->text(); }
    [[nodiscard]] QString said() const {
        QString text;
        for (const auto* label : window->findChildren<QLabel*>()) {
            text += label->isVisible() ? label->text() + u'\n' : QString();
        }
        return text;
    }

    FirmBench bench;
    std::unique_ptr<ui::shell::MainWindow> window;
    ui::workings::WorkingsPlace* place = nullptr;
};

}  // namespace hearth::testing
