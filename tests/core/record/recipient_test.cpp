// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/recipient.h"

#include "tests/core/record/sample_visit.h"

#include <gtest/gtest.h>

namespace hearth::record {
namespace {

using hearth::testing::sampleVisit;
using reg::RoleKind;

struct RecipientTest : ::testing::Test {
    reg::VisitFile file = sampleVisit();

    void SetUp() override { file.people.clear(); }
    void add(RoleKind role, const char* name, const char* line1) {
        reg::VisitFile::Holder holder{role, {}};
        holder.party.name = name;
        if (*line1 != 0) {
            holder.party.address = {line1, "", "Nowhere Cross", "QX1 1AC"};
        }
        file.people.push_back(holder);
    }
    std::string nameFor(RecordKind kind) const {
        const auto recipient = recipientOf(kind, file);
        return recipient ? recipient->name : "nobody";
    }
};

TEST_F(RecipientTest, EachLetterGoesToWhomItIsFor) {
    add(RoleKind::Tenant, "tenant", "");
    add(RoleKind::Customer, "customer", "1 Row");
    add(RoleKind::Landlord, "landlord", "2 Row");
    EXPECT_EQ(nameFor(RecordKind::ReminderLetter), "landlord");
    EXPECT_EQ(nameFor(RecordKind::NoAccessLetter), "tenant");
    EXPECT_EQ(nameFor(RecordKind::CoveringLetter), "customer");
}

TEST_F(RecipientTest, WhoLivesThereHasTheAddressOfThePremises) {
    add(RoleKind::Tenant, "tenant", "");
    EXPECT_EQ(recipientOf(RecordKind::NoAccessLetter, file)->address, file.premises.address);
    file.premises.address.line1.clear();
    EXPECT_EQ(recipientOf(RecordKind::NoAccessLetter, file), std::nullopt);
}

TEST_F(RecipientTest, WithoutAnAddressItGoesToTheNext) {
    add(RoleKind::Landlord, "landlord", "");
    EXPECT_EQ(nameFor(RecordKind::ReminderLetter), "nobody");
    add(RoleKind::Agent, "agent", "3 Row");
    EXPECT_EQ(nameFor(RecordKind::ReminderLetter), "agent");
    file.people.back().party.name = " ";
    EXPECT_EQ(nameFor(RecordKind::ReminderLetter), "nobody");
}

}  // namespace
}  // namespace hearth::record
