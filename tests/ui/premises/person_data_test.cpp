// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/premises/person_data.h"

#include "tests/support/files.h"
#include "tests/ui/support/firm_bench.h"

#include <gtest/gtest.h>

namespace hearth::ui::premises {
namespace {

using hearth::testing::FirmBench;
using hearth::testing::need;

class PersonDataTest : public ::testing::Test {
  protected:
    void SetUp() override {
        premises.id = {bench.store->newId()};
        premises.address.line1 = "14 Tallow Lane";
        need(bench.store->save(premises));
        tenant.id = {bench.store->newId()};
        tenant.name = "Ottoline Brackenbury";
        tenant.telephone = "01632 960123";
        need(bench.store->save(tenant));
        need(bench.store->save(
            reg::Role{{bench.store->newId()}, premises.id, tenant.id, reg::RoleKind::Tenant}));
    }
    void moveOut() {
        need(bench.store->endRole(premises.id, reg::RoleKind::Tenant, bench.clock.today("Europe/London")));
    }

    FirmBench bench;
    reg::Premises premises;
    reg::Party tenant;
};

TEST_F(PersonDataTest, isSavedToReadAndForMachines) {
    const hearth::testing::TempDir folder;
    const auto path = folder / "held.pdf";
    bench.dialogs.files = {QString::fromStdString(path.string())};
    saveWhatIsHeld(bench.context(), nullptr, tenant.id);
    EXPECT_EQ(hearth::testing::readFile(path).substr(0, 5), "%PDF-");
    const auto text = hearth::testing::runCommand("pdftotext -layout '" + path.string() + "' -");
    EXPECT_NE(text.text.find("Ottoline Brackenbury"), std::string::npos);
    EXPECT_NE(text.text.find("01632 960123"), std::string::npos);
    EXPECT_NE(text.text.find("14 Tallow Lane"), std::string::npos);
    EXPECT_NE(hearth::testing::readFile(folder / "held.json").find("\"01632 960123\""), std::string::npos);
    EXPECT_TRUE(bench.dialogs.told.isEmpty());
}

TEST_F(PersonDataTest, isNotErasedWhileTheyLiveThere) {
    EXPECT_FALSE(erasePerson(bench.context(), nullptr, tenant.id));
    ASSERT_EQ(bench.dialogs.told.size(), 1);
    EXPECT_TRUE(bench.dialogs.told[0].contains(QStringLiteral("14 Tallow Lane")));
}

TEST_F(PersonDataTest, isErasedOnlyWhenToldSo) {
    moveOut();
    bench.dialogs.answers = {0};
    EXPECT_FALSE(erasePerson(bench.context(), nullptr, tenant.id));
    EXPECT_EQ(need(bench.store->heldAbout(tenant.id)).party.name, "Ottoline Brackenbury");
    bench.dialogs.answers = {1};
    EXPECT_TRUE(erasePerson(bench.context(), nullptr, tenant.id));
    EXPECT_EQ(need(bench.store->heldAbout(tenant.id)).party.name, "");
}

}  // namespace
}  // namespace hearth::ui::premises
