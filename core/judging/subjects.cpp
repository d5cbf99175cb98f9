// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/subjects.h"

#include "core/judging/answer.h"
#include "core/register/appliance_kinds.h"

#include <algorithm>
#include <array>
#include <string>
#include <utility>

namespace hearth::judging {

namespace {

using reg::Item;
namespace choice = reg::choice;

/// What a matter has been begun by: a reading, not what the register knows already.
constexpr std::array kRateRead{Item::RateTime, Item::RateIndexEnd, Item::RateTurns, Item::RatePassed};
constexpr std::array kPressureRead{Item::InletPressure, Item::BurnerPressure, Item::MeterWorkingPressure};
constexpr std::array kCombustionRead{Item::FlueCoHigh, Item::FlueCo2High, Item::FlueO2High, Item::FlueCoLow,
                                     Item::FlueCo2Low, Item::FlueO2Low,   Item::InletO2,    Item::InletCo2};
constexpr std::array kHotWaterRead{Item::HotWaterFlow, Item::HotWaterHot};

struct Matter {
    Question question;
    std::span<const Item> begunBy;
};
constexpr std::array kMatters{Matter{Question::Regulation26, {}}, Matter{Question::GasRate, kRateRead},
                              Matter{Question::Pressures, kPressureRead},
                              Matter{Question::Combustion, kCombustionRead},
                              Matter{Question::HotWater, kHotWaterRead}};

std::string_view gasChoice(rulebook::Gas gas) {
    switch (gas) {
        case rulebook::Gas::Propane:
            return choice::kPropane;
        case rulebook::Gas::Butane:
            return choice::kButane;
        case rulebook::Gas::LpgAir:
            return choice::kLpgAir;
        case rulebook::Gas::NaturalGas:
            break;
    }
    return choice::kNaturalGas;
}

/// What the register knows of the appliance, as it would be typed.
struct Known {
    Item item;
    std::string text;
    quantity::UnitCode unit = quantity::UnitCode::None;
};

std::vector<Known> knownOf(const reg::Appliance& appliance) {
    const bool net = !appliance.netInput.text.empty();
    const auto& input = net ? appliance.netInput : appliance.grossInput;
    const auto typed = [](Item item, const quantity::Typed& value) {
        return Known{item, value.text, value.unit};
    };
    return {{Item::GasFamily, std::string(gasChoice(appliance.gas))},
            {Item::ApplianceKind, appliance.kind},
            typed(Item::ApplianceInput, input),
            {Item::ApplianceInputBasis, std::string(net ? choice::kNet : choice::kGross)},
            typed(Item::ApplianceTolerance, appliance.makerTolerance),
            {Item::ApplianceToleranceSource, appliance.makerSource},
            typed(Item::InletLeast, appliance.makerInletLeast),
            typed(Item::InletMost, appliance.makerInletMost),
            typed(Item::BurnerLeast, appliance.makerBurnerLeast),
            typed(Item::BurnerMost, appliance.makerBurnerMost),
            {Item::PressureMakerSource, appliance.makerSource},
            typed(Item::MakerCo, appliance.makerCo),
            typed(Item::MakerRatio, appliance.makerRatio),
            {Item::MakerCombustionSource, appliance.makerSource}};
}

bool isAskedBy(const QuestionInfo& question, Item item) {
    return std::any_of(question.groups.begin(), question.groups.end(), [&](const AskedGroup& group) {
        return group.group == Group::Once &&
               std::find(group.items.begin(), group.items.end(), item) != group.items.end();
    });
}

Worksheet sheetOf(Question question, const reg::VisitFile& file, const reg::Appliance& appliance) {
    Worksheet sheet(question, file.visit.date);
    const auto& info = infoOf(question);
    for (const auto& known : knownOf(appliance)) {
        if (isAskedBy(info, known.item)) {
            sheet.put(Group::Once, 0, known.item, known.text, known.unit);
        }
    }
    for (const auto& entry : file.entries) {
        if (entry.subject == reg::subject(appliance.id) && isAskedBy(info, entry.item)) {
            sheet.put(Group::Once, 0, entry.item, entry.text, entry.unit);
        }
    }
    return sheet;
}

bool isEnteredOn(const reg::VisitFile& file, const reg::SubjectRef& on, Item item) {
    return file.find(on, item) != nullptr;
}

bool isBegun(const Matter& matter, const reg::VisitFile& file, const reg::Appliance& appliance) {
    const auto on = reg::subject(appliance.id);
    if (matter.question == Question::Regulation26) {
        return reg::burnsGas(appliance.kind) &&
               file.choiceOf(on, Item::ApplianceInspected) == choice::kInspected;
    }
    return std::any_of(matter.begunBy.begin(), matter.begunBy.end(),
                       [&](Item item) { return file.find(on, item) != nullptr; });
}

}  // namespace

std::vector<Judged> judgeAppliance(const reg::VisitFile& file, const reg::Appliance& appliance,
                                   const rulebook::RuleBook& book) {
    const auto on = reg::subject(appliance.id);
    std::vector<Judged> all;
    for (const auto& matter : kMatters) {
        if (!isBegun(matter, file, appliance)) {
            continue;
        }
        for (auto& judged : answer(sheetOf(matter.question, file, appliance), book).findings) {
            judged.subject = on;
            all.push_back(std::move(judged));
        }
    }
    return all;
}

std::vector<Judged> judgeLarger(const reg::VisitFile& file, const rulebook::RuleBook& book) {
    const auto on = reg::subject(file.installation.id);
    if (!isEnteredOn(file, on, Item::LargerStart) && !isEnteredOn(file, on, Item::StrengthStart)) {
        return {};
    }
    Worksheet sheet(Question::Larger, file.visit.date);
    sheet.put(Group::Once, 0, Item::GasFamily, std::string(gasChoice(file.installation.gas)));
    for (const auto& entry : file.entries) {
        if (entry.subject == on && isAskedBy(infoOf(Question::Larger), entry.item)) {
            sheet.put(Group::Once, 0, entry.item, entry.text, entry.unit);
        }
    }
    auto findings = answer(sheet, book).findings;
    for (auto& judged : findings) {
        judged.subject = on;
    }
    return findings;
}

std::vector<Judged> judgeRoomCo(const reg::VisitFile& file, const rulebook::RuleBook& book) {
    const auto readings = file.roomReadings();
    const auto rowOf = [&](const reg::SubjectRef& subject) {
        return static_cast<int>(std::find(readings.begin(), readings.end(), subject) - readings.begin());
    };
    Worksheet sheet(Question::RoomCo, file.visit.date);
    bool isBegun = false;
    for (const auto& entry : file.entries) {
        const int row = rowOf(entry.subject);
        if (row < static_cast<int>(readings.size())) {
            sheet.put(Group::Reading, row, entry.item, entry.text, entry.unit);
            isBegun = isBegun || entry.item == Item::RoomCo;
        }
    }
    if (!isBegun) {
        return {};
    }
    std::vector<Judged> all;
    for (auto& judged : answer(sheet, book).findings) {
        for (int row = 0; row < static_cast<int>(readings.size()); ++row) {
            if (judged.subject == Worksheet::subject(Group::Reading, row)) {
                judged.subject = readings[static_cast<std::size_t>(row)];
                all.push_back(std::move(judged));
                break;
            }
        }
    }
    return all;
}

}  // namespace hearth::judging
