// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/calendar/duties.h"
#include "core/register/doings.h"
#include "core/store/lines.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace hearth::store {

/// Kinds of letters that log what was handed over, so that a duty is done.
inline constexpr const char* kTenantCopyLetter = "tenant_copy";
inline constexpr const char* kInformationLetter = "operating_information";

/// Something that is to be done beside the checks, or runs out, and is not done yet.
struct DutyLine {
    calendar::DutyKind kind = calendar::DutyKind::TenantCopy;
    /// Nothing: it is open, and no day is set or the day that it counts from is not known.
    std::optional<calendar::Date> by = {};
    std::optional<calendar::Date> from = {};
    std::optional<reg::PremisesId> premises = {};
    reg::Address address = {};
    std::string what = {};  // the tenant, the engineer, the instrument, what is wrong, make and model
    // the record's number, the competence's category, a serial, a danger's code, where an appliance stands
    std::string which = {};
    std::optional<reg::PartyId> party = {};  // who is to have it
    std::optional<RecordId> record = {};
    std::optional<reg::VisitId> visit = {};  // on whose sheet it is entered when done
    std::string of = {};                     // the engineer's, instrument's or appliance's id

    /// On the day itself it is not overdue.
    [[nodiscard]] bool isOverdue(calendar::Date today) const { return by && *by < today; }
    bool operator==(const DutyLine&) const = default;
};

/// How many there are.
struct DutyCount {
    int open = 0;
    int overdue = 0;  // of these
    bool operator==(const DutyCount&) const = default;
};

/// How many Duties::dutiesOpen() has for the whole firm, read on a connection of its own: in any thread,
/// beside an open store. A firm of many premises has more of them than a list may wait for. Errors: those of
/// reading a store.
[[nodiscard]] Result<DutyCount> countDuties(const std::filesystem::path& store, calendar::Date today);
/// All of them, read the same way.
[[nodiscard]] Result<std::vector<DutyLine>> openDuties(const std::filesystem::path& store,
                                                       calendar::Date today);

/// Duties beside the checks themselves. Whatever lies in the bin is left out.
class Duties {
  public:
    Duties() = default;
    Duties(const Duties&) = delete;
    Duties& operator=(const Duties&) = delete;
    virtual ~Duties() = default;

    /// What is not done: the tenant's copy of our newest landlord's record (28 days; a tenant who moves in
    /// after the check: before; for a stay of 28 days or less: on display), notice and operating information
    /// of work completed at a visit of the last twelve months, reports of dangerous fittings, unsafe
    /// situations that are open; and what runs out within 30 days or ran out: calibrations, competences,
    /// cards, the insurance; and the maker's yearly service within 30 days, or missed within the last twelve
    /// months. By their days, those without one last. `premises`: of these alone, and then nothing of the
    /// firm's own, and no services: they stand with the appliances (DueItem::duties).
    [[nodiscard]] virtual Result<std::vector<DutyLine>> dutiesOpen(
        calendar::Date today, std::optional<reg::PremisesId> premises = {}) const = 0;
};

}  // namespace hearth::store
