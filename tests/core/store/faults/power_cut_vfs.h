// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace hearth::store {
class PowerCutDisk;
}

/// SQLite's side of the disk whose power is cut.
namespace hearth::store::power_cut {

/// From now on that disk is told of everything; nullptr: SQLite's own way again.
void plugIn(PowerCutDisk* disk);

}  // namespace hearth::store::power_cut
