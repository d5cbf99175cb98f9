// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/calendar/civil_date.h"
#include "core/judging/judge.h"
#include "core/judging/leak_hunt.h"
#include "core/judging/pipes.h"
#include "core/judging/trace_seen.h"
#include "core/record/check_dates.h"
#include "core/record/document.h"
#include "core/record/kind.h"
#include "core/record/picture_of.h"
#include "core/record/trace_text.h"
#include "core/register/visit_file.h"
#include "ui/words/words.h"

#include <functional>
#include <optional>
#include <vector>

namespace hearth::ui::words {

struct DocumentInput {
    record::RecordKind kind;
    const reg::VisitFile& file;
    const std::vector<judging::Judged>& findings;
    const pipework::VolumeReport& volume;
    calendar::Date issued;
    std::optional<record::Logo> logo = {};
    std::vector<record::PictureOf> pictures = {};
    const judging::VisitPipes* pipes = nullptr;  // none: the sketch of the pipes is without pressure drops
    /// Of a letter: when the check is due, where no visit says so.
    std::optional<calendar::Date> checkDue = {};
    std::vector<judging::TraceSeen> traces = {};  // of the tests
    judging::LeakHunt hunt = {};                  // the tests compared
    /// What is kept of earlier checks of the visit's appliances; see store::Due::checksBefore().
    std::vector<record::CheckHistory> checks = {};
    std::vector<record::RoomTrace> roomTraces = {};  // what was watched of the carbon monoxide in rooms
};

/// The record as it will stand on the page, in the words' language; number and revision are left to the
/// store. Every field that records of the kind are asked for stands in it: what is absent is marked so, with
/// the reason. Extras (a reference, notes, a second display) stand only where they were given. Access notes
/// never do.
[[nodiscard]] record::Document documentFor(const DocumentInput& input, const Words& words);

/// The same in a language that a record can be issued in: where one stands beside English, both in one.
[[nodiscard]] record::Document documentFor(const DocumentInput& input, const QString& language);
/// What `make` words, in such a language: a record, a blank.
[[nodiscard]] record::Document documentIn(const QString& language,
                                          const std::function<record::Document(const Words&)>& make);

/// Why a letter can't be written: LetterLacks for a placeholder with nothing to fill it, or what is wrong
/// with the firm's text. Nothing for what is no letter.
[[nodiscard]] Result<void> letterFault(const DocumentInput& input, const Words& words);

/// What a letter says, word for word, as it stands in its document. Errors: as letterFault().
[[nodiscard]] Result<std::string> letterText(const DocumentInput& input, const Words& words);

}  // namespace hearth::ui::words
