// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/document_parts.h"
#include "ui/words/pipe_words.h"

namespace hearth::ui::words {

void addPipeSketch(const DocumentPage& page, const std::string& title, Blocks& blocks) {
    const auto* pipes = page.input().pipes;
    const bool isAsked = pipes != nullptr && pipes->isAsked;
    if (page.file().pipes.size() < 2 && !isAsked) {
        return;  // one pipe is no tree
    }
    auto diagram = pipeDiagram({page.file(), page.input().volume, pipes, page.words()});
    diagram.title = title;
    blocks.emplace_back(std::move(diagram));
}

}  // namespace hearth::ui::words
