// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/core/store/kept_fixture.h"

#include <string>
#include <vector>

namespace hearth::store {

/// What a person does in the place of checks due: one at least for each writing member of Due.
[[nodiscard]] const std::vector<KeptAction>& dueActions();

/// A let flat of the sample's landlord with one boiler.
struct LetFlat {
    reg::PremisesId premises;
    reg::InstallationId installation;
    reg::ApplianceId boiler;
};

class DueTest : public KeptTest {
  protected:
    void SetUp() override;
    /// At a street of its own, so that lists have an order.
    LetFlat letFlat(const std::string& line1, const std::string& postcode = "QA1 1AA");
    /// Another firm's check of all that stood there.
    void checkedBefore(const LetFlat& flat, calendar::Date date);
    /// A landlord's record issued of a visit at which the boiler was inspected.
    RecordId checkedByUs(const LetFlat& flat, calendar::Date date, const std::string& countedFrom = {});
    /// A record of a service issued of a visit at which the boiler was serviced.
    RecordId servicedByUs(const LetFlat& flat, calendar::Date date);
    reg::BookingId bookedOn(const LetFlat& flat, calendar::Date date, const std::string& from = {},
                            const std::string& until = {});
    [[nodiscard]] DueLine lineOf(const LetFlat& flat) const;
    /// First lines of the addresses in the order of the list.
    [[nodiscard]] std::vector<std::string> listed(const DueFilter& filter = {},
                                                  DueSort sort = DueSort::Need) const;
    /// A visit with these lines of the boiler, and a record of that visit.
    RecordId recordOf(const LetFlat& flat, calendar::Date date, record::RecordKind kind,
                      const std::vector<std::pair<reg::Item, std::string>>& typed);
    void expectDerived() const { EXPECT_EQ(valueOf(store->staleInDue()), 0); }

    calendar::Date today = day(2026, 11, 25);
    reg::Party landlord;
};

}  // namespace hearth::store
