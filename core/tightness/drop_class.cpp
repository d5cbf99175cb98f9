// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/drop_class.h"

namespace hearth::tightness {

using pipework::MeterKind;
using rulebook::Rule;

namespace {

constexpr double kSmallPipe = 28.0;   // mm
constexpr double kLargePipe = 35.0;   // mm
constexpr double kSmallMeter = 6.0;   // m3/h
constexpr double kLargeMeter = 16.0;  // m3/h

}  // namespace

std::optional<Rule> edition3DropRule(const TestedPart& part) {
    if (part.meter == nullptr || !part.nominalKnown || part.largestNominal > kLargePipe) {
        return std::nullopt;
    }
    const bool small = part.largestNominal <= kSmallPipe;
    const double badge = part.meter->badge;
    switch (part.meter->kind) {
        case MeterKind::None:
            return small ? Rule::DropNoMeter28 : Rule::DropNoMeter35;
        case MeterKind::Ultrasonic:
            if (badge <= kSmallMeter) {
                return small ? Rule::DropUltrasonic28 : Rule::DropUltrasonic35;
            }
            return std::nullopt;
        case MeterKind::Diaphragm:
            if (badge <= kSmallMeter) {
                return small ? Rule::DropDiaphragm6At28 : Rule::DropDiaphragm6At35;
            }
            if (badge <= kLargeMeter) {
                return small ? Rule::DropDiaphragm16At28 : Rule::DropDiaphragm16At35;
            }
            return std::nullopt;
        case MeterKind::Other:
            break;
    }
    return std::nullopt;
}

}  // namespace hearth::tightness
