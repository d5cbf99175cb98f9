// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/document.h"
#include "core/store/store.h"
#include "ui/words/words.h"

#include <vector>

/// All that was done for one premises to have the check made, for the landlord: at any time, as pages.
namespace hearth::ui::due {

/// Something that happened, with all that is kept of it.
struct EvidenceEvent {
    store::StoryEvent event;
    std::string result;                        // of a letter or call: what came of it
    std::string nextStep;                      // of an attempt, as it was noted then
    std::optional<calendar::Date> nextOn;      // the day that was set for it
    std::vector<record::Picture> photographs;  // of an attempt or an unsafe situation
};
struct Evidence {
    reg::Firm firm;
    store::DueFile file;
    std::vector<EvidenceEvent> events;  // oldest first
};

/// Errors: NotFound; AttachmentAltered for a photograph that is not what was kept.
[[nodiscard]] Result<Evidence> gatherEvidence(const store::Store& store, reg::PremisesId premises,
                                              calendar::Date today);

/// In order of time, with letters and calls word for word and the photographs behind; with what inspectors
/// look for, and that it is no safe harbour. Access notes never stand on it.
[[nodiscard]] record::Document evidenceDocument(const Evidence& evidence, calendar::Date today,
                                                record::Paper paper, const words::Words& words);

}  // namespace hearth::ui::due
