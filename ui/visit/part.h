// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/judging/judge.h"
#include "core/record/kind.h"
#include "core/register/visit_file.h"
#include "core/rulebook/finding.h"

#include <vector>

/// The visit sheet: one sheet of paper in the order of the work, findings in its margin.
namespace hearth::ui::visit {

/// Parts of the sheet, in the order of the work.
enum class PartKind {
    WhoAndWhere,
    BeforeYouStart,
    Rooms,
    Investigation,
    Pipework,
    Tightness,
    Restore,
    Larger,
    Appliances,  // which there are
    Appliance,
    Situations,  // which there are
    Situation,
    HandOver,
    Records,
};

/// One part of one visit's sheet. What a visit has several of (tests, appliances, situations) has its parts
/// once for each; `index` is its place in VisitFile's list (0 for the other parts).
struct PartRef {
    PartKind kind = PartKind::WhoAndWhere;
    std::size_t index = 0;
    bool operator==(const PartRef&) const = default;
};

/// The parts that the visit's kinds of record need, and those in which something was entered. `taken`: the
/// appliances that are to be worked on though nothing was entered yet.
[[nodiscard]] std::vector<PartRef> partsOf(const reg::VisitFile& file,
                                           const std::vector<reg::ApplianceId>& taken = {});

/// Where an item, a register field or a finding stands.
[[nodiscard]] PartKind partOf(reg::Item item);
[[nodiscard]] PartKind partOf(record::Field field);
[[nodiscard]] PartKind partOf(rulebook::FindingKind kind);

/// The same with the test, appliance or situation that the subject is; the first for a subject that is none
/// of the visit's.
[[nodiscard]] PartRef partAt(PartKind kind, const reg::SubjectRef& subject, const reg::VisitFile& file);
[[nodiscard]] PartRef partOf(const record::Missing& missing, const reg::VisitFile& file);
[[nodiscard]] PartRef partOf(const judging::Judged& judged, const reg::VisitFile& file);

/// What a part's items are of: its test, its appliance, its situation, the installation; else the visit.
[[nodiscard]] reg::SubjectRef subjectOf(const PartRef& ref, const reg::VisitFile& file);

}  // namespace hearth::ui::visit
