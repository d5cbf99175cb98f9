// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/model.h"
#include "core/store/edit.h"

#include <optional>
#include <string>
#include <vector>

/// Entries as rows. In the change log an entry's line has the subject's id as its row and the item's code as
/// its field; its unit and its instrument are fields of their own, "<item>/unit" and "<item>/instrument".
namespace hearth::store {

/// What an entry says, by codes: also what this program does not know can be kept and undone.
struct EntryRow {
    UuidBytes visit{};
    UuidBytes subject{};
    std::string item;
    std::optional<std::string> text;  // nothing: no entry
    std::string unit;
    std::optional<UuidBytes> instrument;
};

[[nodiscard]] EntryRow entryRowOf(const reg::Entry& entry);

/// The entry of an item on a subject as it stands; without text when there is none.
[[nodiscard]] EntryRow standingEntry(const Connection& db, const UuidBytes& visit, const UuidBytes& subject,
                                     const std::string& item);

/// Makes, changes or removes the entry, and logs what differs.
void putEntry(Edit& edit, const EntryRow& row);

/// All entries of a visit that this program knows.
[[nodiscard]] std::vector<reg::Entry> entriesOf(const Connection& db, reg::VisitId visit);

inline constexpr std::string_view kEntriesTable = "entries";
inline constexpr std::string_view kUnitField = "/unit";
inline constexpr std::string_view kInstrumentField = "/instrument";

}  // namespace hearth::store
