// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/pipework/volume.h"
#include "core/rulebook/finding.h"
#include "core/rulebook/rule_book.h"

namespace hearth::tightness {

/// The installation volume of the part under test, as information: how it is made up and which figures were
/// used. A volume is not a limit, so the provenance of its figures fails nothing; not known, it has no
/// verdict.
/// Source: none needed: it tells what pipework::volume() computed. Checked: volume_finding_test.cpp.
[[nodiscard]] rulebook::Finding volumeFinding(const pipework::VolumeReport& report,
                                              const rulebook::RuleBook& book);

}  // namespace hearth::tightness
