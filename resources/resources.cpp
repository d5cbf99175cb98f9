// SPDX-License-Identifier: GPL-3.0-or-later
#include "resources/resources.h"

#include <QtGlobal>

// The macro declares a function of the global namespace, so it can't stand within one.
static void initHearthResources() { Q_INIT_RESOURCE(hearthledger); }

namespace hearth {

void initResources() { initHearthResources(); }

}  // namespace hearth
