// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/set_up.h"

namespace hearth::ui::shell {

namespace {

Result<void> writeEngineerAndGauge(store::Store& store, const SetUp& setUp) {
    if (setUp.engineer) {
        reg::Engineer engineer = *setUp.engineer;
        engineer.id = {store.newId()};
        if (const auto kept = store.save(engineer); !kept) {
            return kept;
        }
    }
    if (setUp.gauge) {
        reg::Instrument gauge = *setUp.gauge;
        gauge.id = {store.newId()};
        return store.save(gauge);
    }
    return {};
}

}  // namespace

Result<void> writeSetUp(store::Store& store, const SetUp& setUp) {
    store.actAs(setUp.engineer ? setUp.engineer->name : setUp.firm.name);
    if (const auto kept = store.saveFirm(setUp.firm); !kept) {
        return kept;
    }
    if (const auto kept = writeEngineerAndGauge(store, setUp); !kept) {
        return kept;
    }
    for (const auto& entry : setUp.confirmed) {
        if (const auto kept = store.save(entry); !kept) {
            return kept;
        }
    }
    return {};
}

}  // namespace hearth::ui::shell
