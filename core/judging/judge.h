// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/civil_date.h"
#include "core/pipework/volume.h"
#include "core/register/visit_file.h"
#include "core/rulebook/finding.h"
#include "core/rulebook/rule_book.h"

#include <vector>

/// From a visit's entries to findings. Knows items and the computing functions; one adapter for each, nothing
/// else.
namespace hearth::judging {

/// A finding with where it stands: its subject, and the items that it judges (the first is where the margin
/// note is put and where a click goes; the others are read too).
struct Judged {
    rulebook::Finding finding;
    reg::SubjectRef subject;
    std::vector<reg::Item> about;
    /// Of these nothing is typed, and the finding says that something is missing.
    std::vector<reg::Item> lacking = {};
    bool operator==(const Judged&) const = default;
};

/// All findings of a visit, in the order of the sheet. Pure: the same file and book give the same findings.
/// Everything is judged by the visit's own date: the edition, the limits in force, the gauge's calibration.
[[nodiscard]] std::vector<Judged> judge(const reg::VisitFile& file, const rulebook::RuleBook& book);

/// The findings of one test, for the margin while it runs.
[[nodiscard]] std::vector<Judged> judgeTest(const reg::VisitFile& file, const reg::Test& test,
                                            const rulebook::RuleBook& book);

/// The record's headline: the gravest outcome of the decisive findings (edition, scope, let-by, test pressure
/// and time, tightness, the repeat). One of them missing altogether is no verdict. A gauge that was not
/// zeroed or is out of calibration, and a smell on arrival, make a pass "look again". Over several tests the
/// gravest counts: a test that failed before the work and another that passed after it are two headlines,
/// each by its own test.
[[nodiscard]] rulebook::Outcome overall(const std::vector<Judged>& findings);
/// The same of one test among them, with what belongs to the whole visit.
[[nodiscard]] rulebook::Outcome overall(const std::vector<Judged>& findings, reg::TestId test);

/// Live volume of the part under test (of the visit's last test), for the pipework list: one row a section,
/// and the whole.
[[nodiscard]] pipework::VolumeReport volumeOf(const reg::VisitFile& file, const rulebook::RuleBook& book);

}  // namespace hearth::judging
