// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/store/store.h"

#include <QString>
#include <QStringList>

#include <vector>

/// How a person names a visit or a record on the command line.
namespace hearth::app {

/// The end of a visit's id, as lists show it: the random part, since ids made together begin alike.
[[nodiscard]] QString shortId(reg::VisitId id);

/// Visits that the words name: one whose id is or ends with the word, else those that have all the words in
/// address, name or reference. Exactly one is what a command can work on; more or none is for the caller to
/// say.
[[nodiscard]] Result<std::vector<store::VisitLine>> visitsNamed(const store::Store& store,
                                                                const QStringList& words);

/// The record of that number in that revision (0: the newest). Error: NotFound.
[[nodiscard]] Result<store::RecordId> recordNamed(const store::Store& store, const QString& number,
                                                  int revision);

}  // namespace hearth::app
