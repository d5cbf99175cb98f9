// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/duty_list.h"
#include "core/store/duties.h"
#include "ui/words/words.h"

#include <QString>

#include <vector>

/// What the place and the command line say of duties beside the checks.
namespace hearth::ui::shell {

/// "Copy of the record to the tenant"
[[nodiscard]] QString dutyTitle(calendar::DutyKind kind);
/// Whom or what it is about: "Nell Harrow, record A-000017".
[[nodiscard]] QString dutyAbout(const store::DutyLine& line);
/// Why that day: "28 days after the check on 20 October 2026."
[[nodiscard]] QString dutyWhy(const store::DutyLine& line, const words::Words& words);
/// "by 17 Nov 2026", "ran out on …", "no day is set".
[[nodiscard]] QString dutyDay(const store::DutyLine& line, calendar::Date today, const words::Words& words);
/// All of it in one line, with the premises.
[[nodiscard]] QString dutySentence(const store::DutyLine& line, calendar::Date today,
                                   const words::Words& words);

[[nodiscard]] std::vector<exchange::DutyRow> dutyRows(const std::vector<store::DutyLine>& lines,
                                                      calendar::Date today);

}  // namespace hearth::ui::shell
