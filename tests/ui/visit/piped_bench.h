// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/ui/visit/sheet_bench.h"

namespace hearth::testing {

/// Gives the bench's installation a boiler and a hob, and pipes to both: 4 m of 22 mm from the meter, 3 m and
/// 2 m of 15 mm on from it. Invented.
inline void layPipes(SheetBench& bench) {
    const auto appliance = [&](const char* kind, const char* place, const char* gross) {
        reg::Appliance one;
        one.id = {bench.firm.store->newId()};
        one.installation = bench.file().installation.id;
        one.kind = kind;
        one.place = place;
        one.grossInput = {gross, quantity::UnitCode::Kilowatt};
        need(bench.model().save(one));
        return one.id;
    };
    std::vector<reg::PipeSection> pipes;
    const auto pipe = [&](const char* tube, const char* metres, const char* leadsTo,
                          std::optional<reg::ApplianceId> end) {
        reg::PipeSection section;
        section.id = {bench.firm.store->newId()};
        section.installation = bench.file().installation.id;
        section.position = static_cast<int>(pipes.size());
        section.tubeCode = tube;
        section.length = {metres, quantity::UnitCode::Metre};
        section.leadsTo = leadsTo;
        section.fittings = "none";
        section.appliance = end;
        if (!pipes.empty()) {
            section.after = pipes.front().id;
        }
        pipes.push_back(section);
    };
    pipe("copper_22", "4", "tee under the stairs", {});
    pipe("copper_15", "3", "", appliance("condensing_boiler", "kitchen", "24"));
    pipe("copper_15", "2", "", appliance("hotplate", "kitchen", "8"));
    need(bench.model().save(pipes));
    need(bench.model().reload());
    SheetBench::settle();
}

}  // namespace hearth::testing
