// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/appliance.h"

#include <vector>

namespace hearth::record {

/// The register as lists, without what lies in the bin. Each in the order of its list.
struct RegisterRows {
    reg::Firm firm;
    std::vector<reg::Engineer> engineers;
    std::vector<reg::Competence> competences;
    std::vector<reg::Instrument> instruments;
    std::vector<reg::Party> parties;
    std::vector<reg::Premises> premises;
    std::vector<reg::Role> roles;  // in time: those that ended too
    std::vector<reg::Installation> installations;
    std::vector<reg::Appliance> appliances;  // those removed too
    std::vector<reg::Visit> visits;
};

}  // namespace hearth::record
