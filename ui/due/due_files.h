// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/document.h"
#include "core/register/model.h"
#include "core/store/due.h"
#include "ui/words/words.h"

#include <string>
#include <vector>

/// The list as files: a summary for a spreadsheet; a day of an engineer on paper.
namespace hearth::ui::due {

/// All that the filter finds, in that order. Errors: those of Due::duePage().
[[nodiscard]] Result<std::vector<store::DueLine>> allLines(const store::Due& due,
                                                           const store::DueFilter& filter,
                                                           store::DueSort sort, calendar::Date today);

/// One premises a row: state, deadline, last check, booking, record, letters, attempts, next step. As CSV
/// (RFC 4180), with cells that no spreadsheet takes for a formula. `records`: see Due::newestRecords().
[[nodiscard]] std::string summaryCsv(const std::vector<store::DueLine>& lines,
                                     const std::vector<std::string>& records, calendar::Date today,
                                     const words::Words& words);

/// An engineer's bookings of a day, in their order. Access notes never stand on it.
[[nodiscard]] record::Document dayDocument(const reg::Firm& firm, const QString& engineer, calendar::Date day,
                                           const std::vector<store::DayStop>& stops, record::Paper paper,
                                           const words::Words& words);
/// The overview as pages: months, how deadlines were kept, landlords.
[[nodiscard]] record::Document overviewDocument(const reg::Firm& firm, const store::DueOverview& overview,
                                                calendar::Date today, record::Paper paper,
                                                const words::Words& words);
/// "Nov 2026"; the first of an overview is everything overdue.
[[nodiscard]] QString monthName(const store::DueMonth& month, bool isOverdue);
/// How deadlines were kept in the last twelve months, in sentences.
[[nodiscard]] QString keptText(const store::DueKept& kept);

}  // namespace hearth::ui::due
