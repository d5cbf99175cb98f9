// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/base/result.h"
#include "core/judging/judge.h"
#include "core/judging/pipes.h"
#include "core/record/kind.h"
#include "core/store/store.h"
#include "ui/shell/place.h"

#include <QString>

#include <optional>
#include <vector>

/// The one road from a visit to an issued record, for the window and the command line.
namespace hearth::app {

/// A visit as the rules see it.
struct JudgedVisit {
    reg::VisitFile file;
    std::vector<judging::Judged> findings;
    pipework::VolumeReport volume;
    judging::VisitPipes pipes;
    rulebook::Outcome outcome = rulebook::Outcome::NoVerdict;
    record::RecordKind kind = record::RecordKind::TightnessAndPurge;
    /// What a record of that kind still lacks.
    std::vector<record::Missing> missing;
};
/// For a record of one kind; without a kind for the first that the visit can issue.
[[nodiscard]] Result<JudgedVisit> judgeVisit(const store::Store& store, reg::VisitId visit,
                                             std::optional<record::RecordKind> kind = std::nullopt);

/// Words the visit, and has the store number it, render it and keep it, in one transaction. `language`: one
/// of record::recordLanguages(); empty: that of the record that is superseded, else what whoever receives it
/// prefers. Errors: RecordIncomplete with the codes of what is missing; LetterMissingInFont; those of
/// Store::issue.
[[nodiscard]] Result<store::RecordId> issueRecord(store::Store& store, const Clock& clock,
                                                  record::RecordKind kind, reg::VisitId visit,
                                                  std::optional<store::RecordId> supersedes,
                                                  const QString& reason, const QString& language = {});
/// The same of the kind of the record that is superseded, else of the first that the visit can issue.
[[nodiscard]] Result<store::RecordId> issueRecord(store::Store& store, const Clock& clock, reg::VisitId visit,
                                                  std::optional<store::RecordId> supersedes,
                                                  const QString& reason, const QString& language = {});

/// The same as the window's places take it. `store` and `clock` must outlive it.
[[nodiscard]] ui::shell::Issue issueThrough(store::Store& store, const Clock& clock);

}  // namespace hearth::app
