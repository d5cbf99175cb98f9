// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/document_parts.h"
#include "ui/words/leak_hunt_words.h"
#include "ui/words/plot_words.h"
#include "ui/words/room_trace_words.h"
#include "ui/words/trace_words.h"

/// Plots beside the figures that they are drawn from.
namespace hearth::ui::words {

namespace {

PlotSource plotSource(const DocumentPage& page) {
    return {page.file(), page.findings(), page.words()};
}

void addPlots(record::Plots plots, Blocks& blocks) {
    if (!plots.plots.empty()) {
        blocks.emplace_back(std::move(plots));
    }
}

}  // namespace

void addTestPlots(const DocumentPage& page, const reg::Test& test, Blocks& blocks) {
    addPlots(testPlots(plotSource(page), test.id), blocks);
}

void addTraces(const DocumentPage& page, const reg::Test& test, Blocks& blocks) {
    for (const auto& seen : page.input().traces) {
        if (seen.test != test.id) {
            continue;
        }
        addPlots(tracePlots(plotSource(page), seen), blocks);
        QStringList told{traceMeaning(seen, page.words())};
        told << traceGrounds(seen, page.words()) << traceBesideVerdict(page.words());
        blocks.emplace_back(
            record::Paragraph{utf8(traceSource(seen, page.words())), utf8(told.join(u' ')), false});
    }
}

void addLeakHunt(const DocumentPage& page, Blocks& blocks) {
    const auto& hunt = page.input().hunt;
    if (!wasLeakHunted(hunt)) {
        return;
    }
    blocks.emplace_back(leakHuntTable(hunt, page.file(), page.words()));
    QStringList told = leakHuntPlaces(hunt, page.file(), page.words());
    blocks.emplace_back(record::Paragraph{utf8(leakHuntMeaning(hunt, page.file(), page.words())),
                                          utf8(told.join(u'\n')), false});
}

void addRoomPlots(const DocumentPage& page, Blocks& blocks) {
    addPlots(roomPlots(plotSource(page)), blocks);
}

void addRoomTraces(const DocumentPage& page, Blocks& blocks) {
    const auto ofSeries = roomPlots(plotSource(page));
    const auto limits = ofSeries.plots.empty() ? std::vector<record::PlotLimit>() : ofSeries.plots[0].limits;
    for (const auto& trace : page.input().roomTraces) {
        addPlots(roomTracePlots(trace, {}, limits, page.words()), blocks);
        blocks.emplace_back(record::Paragraph{utf8(roomTraceSource(trace, page.words())),
                                              utf8(roomTraceBesideFindings(page.words())), false});
    }
}

void addCombustionPlots(const DocumentPage& page, const reg::Appliance& appliance, Blocks& blocks) {
    addPlots(combustionPlots(plotSource(page), appliance.id), blocks);
}

}  // namespace hearth::ui::words
