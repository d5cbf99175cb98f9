// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/ui/support/firm_bench.h"
#include "tests/ui/support/keys.h"
#include "tests/ui/support/walker.h"
#include "ui/due/due_list.h"
#include "ui/due/due_place.h"

#include <QLabel>

#include <gtest/gtest.h>
#include <memory>

namespace hearth::ui::due {

inline calendar::Date on(const char* iso) {
    return *calendar::fromIso(iso);
}

/// The real window with this one place on a real store: three let premises, one overdue, one in its last two
/// weeks, one with its window open. Today is 25 November 2026.
class DueWindowTest : public ::testing::Test {
  protected:
    void SetUp() override {
        bench.firm.telephone = "01632 960000";
        hearth::testing::need(bench.store->saveFirm(bench.firm));
        landlord.id = {bench.store->newId()};
        landlord.name = "Fenn Estate";
        landlord.address = {"1 Estate Office", "", "Thornmere", "TH1 1AA"};
        landlord.telephone = "01632 960111";
        hearth::testing::need(bench.store->save(landlord));
        overdue = let("9 Tanner's Row", "2025-11-11");
        soon = let("21 Chapel Street", "2025-12-04");
        open = let("8 Quarry Bank", "2026-01-06");
        window = std::make_unique<shell::MainWindow>(bench.parts());
        place = new DuePlace(window->context(), *bench.store);
        window->setPlaces({place});
        window->resize(1280, 800);
        hearth::testing::activate(window.get());
    }
    reg::PremisesId let(const std::string& line1, const char* checked) {
        const auto id = bench.addPremises(line1);
        hearth::testing::need(
            bench.store->save(reg::Role{{bench.store->newId()}, id, landlord.id, reg::RoleKind::Landlord}));
        reg::EarlierCheck check;
        check.premises = id;
        check.date = on(checked);
        check.by = "another firm";
        hearth::testing::need(bench.store->save(check));
        return id;
    }
    [[nodiscard]] DueList* list() const { return hearth::testing::child<DueList>(place, "dueList"); }
    [[nodiscard]] store::DueLine line(reg::PremisesId id) const {
        return hearth::testing::need(bench.store->dueFile(id, today)).line;
    }
    [[nodiscard]] QString text(const char* name) const {
        return hearth::testing::child<QLabel>(place, name)->text();
    }
    [[nodiscard]] QString fileNamed(const char* name) const {
        return QString::fromStdString((bench.folder() / name).string());
    }
    void chooseFirst(int count) {
        list()->setFocus();
        hearth::testing::press(Qt::Key_Home);
        for (int i = 1; i < count; ++i) {
            hearth::testing::press(Qt::Key_Down, Qt::ShiftModifier);
        }
    }

    hearth::testing::FirmBench bench;
    calendar::Date today = on("2026-11-25");
    reg::Party landlord;
    reg::PremisesId overdue;
    reg::PremisesId soon;
    reg::PremisesId open;
    std::unique_ptr<shell::MainWindow> window;
    DuePlace* place = nullptr;
};

}  // namespace hearth::ui::due
