// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/calendar/civil_date.h"
#include "core/pipework/volume.h"
#include "core/register/visit_file.h"
#include "core/rulebook/finding.h"
#include "core/rulebook/rule_book.h"

/// From a visit's entries to findings. Knows items and the computing functions; one adapter for each, nothing else.
namespace hearth::judging {

/// A finding with where it stands: its subject, and the items that it judges (the first is where the margin note is put and
/// where a click goes; the others are read too).
struct Judged {
    rulebook::Finding finding;
    reg::SubjectRef subject;
    std::vector<reg::Item> about;
    bool operator==(const Judged&) const = default;
};

/// All findings of a visit, in the order of the sheet. Pure: the same file and book give the same findings.
/// Everything is judged by the visit's date, an instrument's calibration too.
[[nodiscard]] std::vector<Judged> judge(const reg::VisitFile& file, const rulebook::RuleBook& book);

/// The findings of one test, for the margin while it runs.
[[nodiscard]] std::vector<Judged> judgeTest(const reg::VisitFile& file, const reg::Test& test,
                                            const rulebook::RuleBook& book);

/// The gravest outcome of the test's decisive findings (smell, scope, let-by, tightness, retest): the record's headline.
[[nodiscard]] rulebook::Outcome overall(const std::vector<Judged>& findings);

/// Live volume of the part under test, for the pipework list: one row a section, and the whole.
[[nodiscard]] pipework::VolumeReport volumeOf(const reg::VisitFile& file, const rulebook::RuleBook& book);

}  // namespace hearth::judging
