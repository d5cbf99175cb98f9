// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/judging/pipes.h"
#include "core/record/diagram.h"
#include "core/register/visit_file.h"
#include "ui/words/words.h"

/// A visit's pipework as a sketch, worded: for the record and for the sheet alike.
namespace hearth::ui::words {

struct PipeSource {
    const reg::VisitFile& file;
    const pipework::VolumeReport& volume;
    const judging::VisitPipes* pipes;  // none: without pressure drops
    const Words& words;
};

/// Size, length, where it leads and volume of each section; what hangs at the ends, and what is lost on the
/// way to each, at the heat input and as timed, where the visit asks for it. A drop without all fittings says
/// that it is a least one. No title; no sections where there are no pipes.
[[nodiscard]] record::Diagram pipeDiagram(const PipeSource& source);

/// The same in lines, one a section, for those who hear it: "2: Copper 15 mm · 4.5 m, hob, …".
[[nodiscard]] QString diagramInWords(const record::Diagram& diagram);

}  // namespace hearth::ui::words
