// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/words/document_page.h"

#include <initializer_list>
#include <span>

/// The parts of records of appliances, and of kinds that are set as lists. Only documentFor() is for others.
namespace hearth::ui::words {

using Blocks = std::vector<record::Block>;

/// "landlord's record, item (v)": the caption with the item's number of regulation 36(3)(c) before it, where
/// the record is the landlord's.
[[nodiscard]] std::string numbered(const DocumentPage& page, const char* number, const char* caption);
/// "condensing boiler, kitchen cupboard", with its number where there are several.
[[nodiscard]] QString applianceName(const DocumentPage& page, const reg::Appliance& appliance);
/// The appliances that the record speaks of.
[[nodiscard]] std::vector<reg::Appliance> appliancesOf(const DocumentPage& page);

/// Each item that was entered, and those that are wanted but absent, with their reason.
[[nodiscard]] record::FieldGrid gridOf(const DocumentPage& page, const reg::SubjectRef& on,
                                       const std::string& title, std::span<const reg::Item> items);
/// The same with only what was entered; no block when that is nothing.
void addGiven(const DocumentPage& page, const reg::SubjectRef& on, const std::string& title,
              std::span<const reg::Item> items, Blocks& blocks);

// document_appliances.cpp
[[nodiscard]] record::Headline applianceHeadline(const DocumentPage& page);
[[nodiscard]] record::Table applianceTable(const DocumentPage& page);
/// Beside a table of the appliances, or alone.
enum class Telling { BesideTable, InFull };
[[nodiscard]] record::FieldGrid applianceGrid(const DocumentPage& page, const reg::Appliance& appliance,
                                              Telling told);
[[nodiscard]] record::Statements declarations(const DocumentPage& page, const reg::Appliance& appliance);
[[nodiscard]] record::Table matterTable(const DocumentPage& page, const reg::Appliance& appliance);
void addReadings(const DocumentPage& page, const reg::Appliance& appliance, Blocks& blocks);
// document_safety.cpp
void addSafetyRecord(const DocumentPage& page, Blocks& blocks);
void addSituations(const DocumentPage& page, Blocks& blocks);
void addRooms(const DocumentPage& page, Blocks& blocks);
void addFindings(const DocumentPage& page, Blocks& blocks);
// document_work.cpp
void addCommissioningRecord(const DocumentPage& page, Blocks& blocks);
void addServiceRecord(const DocumentPage& page, Blocks& blocks);
// document_clocks.cpp
/// The last days that the law sets for what the record is about; the words of a letter.
void addClocks(const DocumentPage& page, Blocks& blocks);
// document_listed.cpp
void addListedRecord(const DocumentPage& page, Blocks& blocks);

}  // namespace hearth::ui::words
