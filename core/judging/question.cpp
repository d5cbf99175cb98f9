// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/question.h"

#include <algorithm>
#include <array>
#include <cassert>

namespace hearth::judging {

namespace {

using reg::Item;

constexpr std::array kGasRateOnce{
    Item::GasFamily,          Item::GasHeatValue,
    Item::RateMeter,          Item::RateIndexStart,
    Item::RateIndexEnd,       Item::RateDial,
    Item::RateTurns,          Item::RateTime,
    Item::RateCorrection,     Item::RateMeterPressure,
    Item::RateGasTemperature, Item::RateAltitude,
    Item::ApplianceInput,     Item::ApplianceInputBasis,
    Item::ApplianceTolerance,
};
constexpr std::array kGasRate{AskedGroup{Group::Once, kGasRateOnce, 1}};

constexpr std::array kRoomCoOnce{Item::RoomCoDistance};
constexpr std::array kRoomCoEach{Item::RoomCoAt, Item::RoomCoPlace, Item::RoomCo};
constexpr std::array kRoomCo{AskedGroup{Group::Once, kRoomCoOnce, 1},
                             AskedGroup{Group::Reading, kRoomCoEach, 200}};

constexpr std::array kQuestions{
    QuestionInfo{Question::GasRate, "gas_rate", kGasRate},
    QuestionInfo{Question::RoomCo, "room_co", kRoomCo},
};

}  // namespace

std::span<const QuestionInfo> questions() {
    return kQuestions;
}

const QuestionInfo& infoOf(Question question) {
    const auto* found = std::find_if(kQuestions.begin(), kQuestions.end(),
                                     [&](const QuestionInfo& info) { return info.question == question; });
    assert(found != kQuestions.end());
    return *found;
}

std::optional<Question> questionFromCode(std::string_view code) {
    for (const auto& info : kQuestions) {
        if (info.code == code) {
            return info.question;
        }
    }
    return std::nullopt;
}

}  // namespace hearth::judging
