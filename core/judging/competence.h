// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/judging/judge.h"

#include <string_view>

/// Whether the visit's engineer and instruments may do the work: warned of on the sheet and before a record
/// is issued. Only doubts are told, never that somebody is competent, and they are no findings of the record:
/// the categories are the firm's own words.
namespace hearth::judging {

/// `held` are the categories that are kept of the visit's engineer. Judged by the visit's own date: card,
/// categories for each appliance that is worked on and for the kinds of visit, calibration of the analyser.
/// A category whose term is not known covers nothing here: "look again".
[[nodiscard]] std::vector<Judged> judgeCompetence(const reg::VisitFile& file,
                                                  const std::vector<reg::Competence>& held);

/// The same of a visit that is only booked: by the booked day, and for every appliance that stands there.
/// What still runs today is said to run out by then.
[[nodiscard]] std::vector<Judged> judgeBooked(const reg::VisitFile& booked,
                                              const std::vector<reg::Competence>& held, calendar::Date today);

/// The trade's term for the category that covers a kind of appliance; empty: none is known.
/// Source: facts of the trade. HTR1 and CENWAT are named by the GB gas register and by HSE's pages; CKR1,
/// CCN1, CCLP1, COMCAT, TPCP1 and the rest common practice, no source. Checked: competence_test.cpp.
[[nodiscard]] std::vector<std::string_view> categoriesFor(std::string_view applianceKind);
/// Whether a category, in the firm's words ("CKR1 cookers", "cenwat1"), has the term as one of its words; a
/// digit at the end may be left out ("CENWAT" and "CENWAT1").
[[nodiscard]] bool namesTerm(std::string_view category, std::string_view term);

}  // namespace hearth::judging
