// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/shipped/table.h"

namespace hearth::rulebook::shipped {

void addPipework(std::vector<Entry>& entries) {
    (void)entries;
}

}  // namespace hearth::rulebook::shipped
