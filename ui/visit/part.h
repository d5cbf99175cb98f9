// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/kind.h"
#include "core/register/visit_file.h"
#include "core/rulebook/finding.h"

#include <vector>

/// The visit sheet: one sheet of paper in the order of the work, findings in its margin.
namespace hearth::ui::visit {

/// Parts of the sheet, in the order of the work.
enum class PartKind { WhoAndWhere, BeforeYouStart, Pipework, Tightness, Restore, HandOver, Records };

/// One part of one visit's sheet. A visit with several tests has Tightness and Restore once for each; `test`
/// is its place in VisitFile::tests (0 for the other parts).
struct PartRef {
    PartKind kind = PartKind::WhoAndWhere;
    std::size_t test = 0;
    bool operator==(const PartRef&) const = default;
};

[[nodiscard]] std::vector<PartRef> partsOf(const reg::VisitFile& file);

/// Where an item, a register field or a finding stands.
[[nodiscard]] PartKind partOf(reg::Item item);
[[nodiscard]] PartKind partOf(record::Field field);
[[nodiscard]] PartKind partOf(rulebook::FindingKind kind);

/// The same with the test that the subject is; the first for a subject that is no test of the visit.
[[nodiscard]] PartRef partAt(PartKind kind, const reg::SubjectRef& subject, const reg::VisitFile& file);
[[nodiscard]] PartRef partOf(const record::Missing& missing, const reg::VisitFile& file);

}  // namespace hearth::ui::visit
