// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/document.h"
#include "core/register/model.h"

namespace hearth::record {

/// A picture that the records of a visit are to show, and the appliance or situation that it is of. What it
/// is of is worded where the document is made.
struct PictureOf {
    reg::SubjectRef subject;
    Picture picture;
};

}  // namespace hearth::record
