// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/words/document_page.h"

#include <initializer_list>
#include <span>
#include <string_view>

/// The parts of every other kind of record. Only documentFor() is for others.
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

// document_words.cpp
/// Everything but number and body.
void setFrame(const DocumentPage& page, record::Document& document);
// document_appliances.cpp
[[nodiscard]] record::Headline applianceHeadline(const DocumentPage& page);
[[nodiscard]] record::Table applianceTable(const DocumentPage& page);
/// Beside a table of the appliances, or alone.
enum class Telling { BesideTable, InFull };
[[nodiscard]] record::FieldGrid applianceGrid(const DocumentPage& page, const reg::Appliance& appliance,
                                              Telling told);
[[nodiscard]] record::Statements declarations(const DocumentPage& page, const reg::Appliance& appliance);
[[nodiscard]] record::Table matterTable(const DocumentPage& page, const reg::Appliance& appliance);
// document_of_its_kind.cpp
/// It has a flame of its own and is not capped: flue, air and combustion are spoken of.
[[nodiscard]] bool isBurning(const DocumentPage& page, const reg::Appliance& appliance);
/// Of these items those that the appliance's kind can be asked, and what was entered all the same.
[[nodiscard]] std::vector<reg::Item> thoseOfKind(const DocumentPage& page, const reg::SubjectRef& on,
                                                 std::span<const reg::Item> items);
/// The heading of what only such a kind is asked, or of how something is capped.
[[nodiscard]] const char* titleOfKind(std::string_view kind, bool capped);
/// What only its kind is asked (a vehicle's cylinders, a kitchen's interlock), or how it is capped; no block
/// where there is nothing of it.
void addOfItsKind(const DocumentPage& page, const reg::Appliance& appliance, Blocks& blocks);
// document_appliances.cpp
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
/// The last days that the law sets for building work, as values or as an entry's answers.
[[nodiscard]] record::FieldGrid buildingClockGrid(const DocumentPage& page);
[[nodiscard]] record::Statements buildingClocks(const DocumentPage& page);
[[nodiscard]] record::Statement reportClock(const DocumentPage& page, const reg::Situation& situation);
// document_notice.cpp
[[nodiscard]] std::string dangerWord(const DocumentPage& page);
[[nodiscard]] std::string dangerMeaning(const DocumentPage& page, reg::Danger grade);
[[nodiscard]] record::Statements whatNotToDo(const DocumentPage& page);
/// The appliance that the situation is on, in a line; no line where it is on none.
[[nodiscard]] std::vector<std::string> fittingDetails(const DocumentPage& page,
                                                      const reg::Situation& situation);
void addWarningNotice(const DocumentPage& page, Blocks& blocks);
// document_pictures.cpp
/// Those that the record speaks of; no block where there are none.
void addPictures(const DocumentPage& page, Blocks& blocks);
// document_signatures.cpp
[[nodiscard]] record::Signatures signaturesOf(const DocumentPage& page);
// document_plots.cpp
/// Plots of what was read; no block where nothing can be drawn.
void addTestPlots(const DocumentPage& page, const reg::Test& test, Blocks& blocks);
/// What gauges saw of the test: plots, and what they mean; always with the sentence that the verdict is by
/// the standard's rule.
void addTraces(const DocumentPage& page, const reg::Test& test, Blocks& blocks);
/// The tests compared, where pipes were shut for it.
void addLeakHunt(const DocumentPage& page, Blocks& blocks);
void addRoomPlots(const DocumentPage& page, Blocks& blocks);
/// What was watched of the rooms, with the sentence that nothing is decided by it.
void addRoomTraces(const DocumentPage& page, Blocks& blocks);
void addCombustionPlots(const DocumentPage& page, const reg::Appliance& appliance, Blocks& blocks);
// document_pipes.cpp
/// The pipework drawn from its list; no block where there is no tree to see.
void addPipeSketch(const DocumentPage& page, const std::string& title, Blocks& blocks);
// document_investigation.cpp
void addInvestigation(const DocumentPage& page, Blocks& blocks);
// document_larger.cpp
void addLargerRecord(const DocumentPage& page, Blocks& blocks);
// document_entries.cpp
void addReportableEntry(const DocumentPage& page, Blocks& blocks);
void addBuildingNotice(const DocumentPage& page, Blocks& blocks);
void addCalibrationLog(const DocumentPage& page, Blocks& blocks);
// document_letter.cpp
[[nodiscard]] record::Signatures letterSignature(const DocumentPage& page);
void addLetter(const DocumentPage& page, Blocks& blocks);

}  // namespace hearth::ui::words
