// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/nation.h"

namespace hearth::record {

calendar::Nation nationOf(reg::Country country) {
    switch (country) {
        case reg::Country::Wales:
            return calendar::Nation::Wales;
        case reg::Country::Scotland:
            return calendar::Nation::Scotland;
        case reg::Country::NorthernIreland:
            return calendar::Nation::NorthernIreland;
        case reg::Country::England:
            break;
    }
    return calendar::Nation::England;
}

}  // namespace hearth::record
