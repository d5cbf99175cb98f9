// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/keeping.h"

namespace hearth::record {
namespace {
constexpr int kSixYearsInMonths = 72;
}  // namespace

calendar::Date keepUntil(RecordKind kind, calendar::Date issued) {
    switch (kind) {
        case RecordKind::TightnessAndPurge:
            break;
    }
    return calendar::addMonths(issued, kSixYearsInMonths);
}

calendar::Date keepLetterUntil(calendar::Date sent) {
    return calendar::addMonths(sent, kSixYearsInMonths);
}

}  // namespace hearth::record
