// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/due_views.h"

#include "tests/ui/support/firm_bench.h"

#include <gtest/gtest.h>

namespace hearth::ui::due {
namespace {

using hearth::testing::FirmBench;
using hearth::testing::need;

DueView wholeView(FirmBench& bench) {
    DueView view{QStringLiteral("Kiln Estate, north"), {}, store::DueSort::Postcode};
    view.filter.states = {calendar::DueState::Overdue, calendar::DueState::NotKnown};
    view.filter.landlord = reg::PartyId{bench.store->newId()};
    view.filter.agent = reg::PartyId{bench.store->newId()};
    view.filter.engineer = bench.engineer.id;
    view.filter.outward = "TH2";
    view.filter.text = "tallow “lane”";
    return view;
}

TEST(DueViews, aViewComesBackAsItWasSaved) {
    FirmBench bench;
    const auto view = wholeView(bench);
    const DueView other{QStringLiteral("all"), {}, store::DueSort::Need};
    need(saveView(*bench.store, view));
    need(saveView(*bench.store, other));
    EXPECT_EQ(savedViews(*bench.store), (std::vector<DueView>{view, other}));
}

TEST(DueViews, theSameNameIsReplacedAndOneIsForgotten) {
    FirmBench bench;
    auto view = wholeView(bench);
    need(saveView(*bench.store, view));
    view.filter.outward = "TH9";
    need(saveView(*bench.store, view));
    EXPECT_EQ(savedViews(*bench.store), std::vector<DueView>{view});
    need(forgetView(*bench.store, view.name));
    EXPECT_TRUE(savedViews(*bench.store).empty());
}

TEST(DueViews, whatCannotBeReadIsLeftOut) {
    EXPECT_TRUE(viewsFrom("no json").empty());
    EXPECT_TRUE(viewsFrom("[{\"name\":\"\"}, 3]").empty());
    const auto views =
        viewsFrom("[{\"name\":\"a\",\"states\":[\"overdue\",\"of a later version\"],\"order\":\"?\"}]");
    ASSERT_EQ(views.size(), 1U);
    EXPECT_EQ(views[0].filter.states, std::vector<calendar::DueState>{calendar::DueState::Overdue});
    EXPECT_EQ(views[0].sort, store::DueSort::Need);
}

TEST(DueViews, everyOrderHasACodeOfItsOwn) {
    for (const auto sort : {store::DueSort::Need, store::DueSort::Deadline, store::DueSort::Address,
                            store::DueSort::Postcode, store::DueSort::Landlord, store::DueSort::LastCheck}) {
        EXPECT_EQ(sortFromCode(codeOf(sort)), sort);
    }
}

}  // namespace
}  // namespace hearth::ui::due
