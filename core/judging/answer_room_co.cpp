// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/co_means.h"
#include "core/air/figures.h"
#include "core/air/room_co.h"
#include "core/judging/asking.h"
#include "core/judging/doubts.h"
#include "core/quantity/units.h"

#include <algorithm>
#include <string>
#include <utility>

namespace hearth::judging {

using air::CoPlace;
using reg::Item;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Say;
namespace choice = reg::choice;

namespace {

/// The series, and the row of the sheet that its highest reading stands in.
struct TypedCo {
    air::CoSeries series;
    int highestRow = 0;
    int firstOutdoors = 0;
};

/// Takes the rows in their order. What is missing of a reading is said; the reading warns all the same, and
/// nothing passes.
class CoRows {
  public:
    explicit CoRows(Asking& asking) : m_asking(asking) {}
    TypedCo take();

  private:
    void takeRow(int at, const Readings& row);
    void doubt(Say say, int at) { m_asking.answer.notes.push_back({say, {std::to_string(at + 1)}}); }
    /// Nothing can pass with it.
    void lack(Say say, int at, bool isTyped) {
        doubt(say, at);
        (isTyped ? m_typed.series.someUnreadable : m_typed.series.someMissing) = true;
    }
    quantity::Duration timeOf(int at, const Readings& row);
    CoPlace placeOf(int at, const Readings& row);

    Asking& m_asking;
    TypedCo m_typed;
    bool m_isFirst = true;
    quantity::Duration m_before;
    std::optional<quantity::Share> m_highest;
    bool m_hasOutdoors = false;
};

/// Of the first reading nothing typed is the start.
quantity::Duration CoRows::timeOf(int at, const Readings& row) {
    const auto time = row.duration(Item::RoomCoAt);
    if (time) {
        if (!m_isFirst && time->value < m_before) {
            doubt(Say::CoTimesBackwards, at);
        }
        return time->value;
    }
    if (!m_isFirst || time.unreadable) {
        lack(Say::CoTimeMissing, at, time.unreadable);
    }
    return m_before;
}

CoPlace CoRows::placeOf(int at, const Readings& row) {
    const auto place = row.choice<CoPlace>(Item::RoomCoPlace, {{choice::kOutdoors, CoPlace::Outside},
                                                               {choice::kRoom, CoPlace::Room},
                                                               {choice::kAppliance, CoPlace::AtAppliance},
                                                               {choice::kElsewhere, CoPlace::NextRoom}});
    if (!place) {
        lack(Say::CoPlaceMissing, at, row.isEntered(Item::RoomCoPlace));
    }
    return place.value_or(CoPlace::Room);
}

void CoRows::takeRow(int at, const Readings& row) {
    const auto level = row.trace(Item::RoomCo);
    if (!level) {
        lack(Say::CoLevelMissing, at, level.unreadable);
        return;
    }
    auto& series = m_typed.series;
    const air::CoReading reading{timeOf(at, row), level->value, placeOf(at, row)};
    series.readings.push_back(reading);
    series.digit = std::max(series.digit, level->digit);
    m_before = reading.at;
    m_isFirst = false;
    if (!m_highest || level->value >= *m_highest) {
        m_highest = level->value;
        m_typed.highestRow = at;
    }
    if (reading.place == CoPlace::Outside && !m_hasOutdoors) {
        m_hasOutdoors = true;
        m_typed.firstOutdoors = at;
    }
}

TypedCo CoRows::take() {
    for (int at = 0; at < m_asking.sheet.rows(Group::Reading); ++at) {
        if (m_asking.sheet.holdsAny(Group::Reading, at)) {
            takeRow(at, m_asking.sheet.readings(Group::Reading, at));
        }
    }
    const auto& once = m_asking.once;
    m_typed.series.readAtDistance = once.yesNo(Item::RoomCoDistance) == true;
    if (isUnclear(once, Item::RoomCoAccuracy)) {
        m_typed.series.someUnreadable = true;
    } else if (const auto accuracy = once.trace(Item::RoomCoAccuracy)) {
        m_typed.series.accuracy = accuracy->value;
    }
    return std::move(m_typed);
}

air::Given<quantity::Length> coLength(const Readings& once, Item item) {
    const auto length = once.length(item);
    if (!length || isUnclear(once, item)) {
        return length.isEntered() ? air::Given<quantity::Length>::unusable() : air::Given<quantity::Length>();
    }
    return length->value;
}

air::RoomCoInput roomCoInput(const Readings& once, air::CoSeries series) {
    air::RoomCoInput input;
    input.series = std::move(series);
    const auto burning = once.code(Item::RoomCoAppliance);
    if (burning == choice::kFlued || burning == choice::kFlueless || burning == choice::kCooker) {
        input.flueless = burning != choice::kFlued;
        input.cooker = burning == choice::kCooker;
    }
    input.height = coLength(once, Item::RoomCoHeight);
    input.distance = coLength(once, Item::RoomCoFromAppliance);
    return input;
}

void findCo(Asking& asking, std::vector<Finding> findings, const TypedCo& typed) {
    // What asks people to act stands before the rest.
    std::stable_partition(findings.begin(), findings.end(),
                          [](const Finding& finding) { return finding.outcome == Outcome::Fail; });
    for (auto& finding : findings) {
        switch (finding.kind) {
            case FindingKind::RoomCoBackground:
                asking.find(std::move(finding), {Item::RoomCo, Item::RoomCoPlace, Item::RoomCoAt},
                            Group::Reading, typed.firstOutdoors);
                break;
            case FindingKind::RoomCoSampling:
                asking.find(std::move(finding),
                            {Item::RoomCoHeight, Item::RoomCoFromAppliance, Item::RoomCoDistance});
                break;
            default:
                asking.find(std::move(finding), {Item::RoomCo, Item::RoomCoAt, Item::RoomCoPlace},
                            Group::Reading, typed.highestRow);
        }
    }
}

void showCo(Asking& asking, const air::RoomCoInput& input) {
    constexpr std::string_view kTrapezium = "straight lines between the readings, textbook";
    const auto& series = input.series;
    const auto ppm = [](const quantity::Uncertain& value) {
        return air::ppmFigure(quantity::Share(value.value, quantity::kPpm));
    };
    if (const auto peak = air::peakOf(series)) {
        const auto read = air::coMeasured(*peak, series, quantity::UnitCode::Ppm);
        asking.work(Derived::CoPeak, ppm(read), "as read",
                    air::ppmFigure(quantity::Share(quantity::expanded(read), quantity::kPpm)));
    }
    const auto readings = air::mostExposed(series);
    if (const auto all = air::meanOf(readings)) {
        asking.work(Derived::CoMeanAll, air::ppmFigure(all->mean), kTrapezium);
    }
    for (const auto& [derived, window] : {std::pair(Derived::CoMeanQuarter, air::kCoShortExposure),
                                          std::pair(Derived::CoMeanLong, air::kCoLongExposure)}) {
        const auto mean = air::highestMean(readings, window);
        if (mean && mean->measured >= window) {
            asking.work(derived, air::ppmFigure(mean->mean), kTrapezium);
        }
    }
    if (const auto trend = air::roomTrend(input, asking.inForce); trend.trend != air::Trend::Unknown) {
        asking.work(Derived::CoChange, air::ppmFigure(trend.change), "line of least squares, textbook",
                    air::ppmFigure(trend.uncertainty));
    }
}

}  // namespace

void answerRoomCo(Asking& asking) {
    const auto typed = CoRows(asking).take();
    const auto input = roomCoInput(asking.once, typed.series);
    findCo(asking, air::roomCo(input, asking.inForce), typed);
    sayUnclear(asking, FindingKind::RoomCoLevel, {Item::RoomCoAccuracy});
    showCo(asking, input);
}

}  // namespace hearth::judging
