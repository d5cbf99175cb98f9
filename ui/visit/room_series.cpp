// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/room_series.h"

#include "core/record/trace_text.h"
#include "ui/shell/kit.h"

#include <algorithm>
#include <chrono>

namespace hearth::ui::visit {

using reg::Item;

namespace {

std::string seriesNote(VisitSheetModel& model) {
    return "room_co." + model.file().visit.id.text();
}

double minutesBetween(Instant from, Instant to) {
    return std::chrono::duration<double, std::ratio<60>>(to - from).count();
}

}  // namespace

std::optional<Instant> seriesBegan(VisitSheetModel& model) {
    const auto noted = model.store().setting(seriesNote(model));
    Instant began{};
    return noted && parseInstant(*noted, began) ? std::optional(began) : std::nullopt;
}

Result<void> beginSeries(VisitSheetModel& model, Instant at) {
    return model.store().saveSetting(seriesNote(model), instantText(at));
}

QString minutesText(double minutes) {
    return QString::number(std::max(0.0, minutes), 'f', 1);
}

std::optional<double> minutesOf(VisitSheetModel& model, const RoomReading& reading, Instant watchBegan) {
    auto began = seriesBegan(model);
    if (!began && model.file().roomReadings().empty()) {
        began = watchBegan;
    }
    const double minutes = began ? minutesBetween(*began, reading.at) : -1.0;
    return minutes >= 0.0 ? std::optional(minutes) : std::nullopt;
}

Result<void> putReading(VisitSheetModel& model, const RoomReading& reading, Instant watchBegan) {
    const auto minutes = minutesOf(model, reading, watchBegan);
    if (minutes && !seriesBegan(model)) {
        if (auto begun = beginSeries(model, watchBegan); !begun) {
            return begun;
        }
    }
    const reg::SubjectRef row{reg::SubjectKind::Room, model.store().newId()};
    auto kept = model.enter(row, Item::RoomCoPlace, shell::coded(record::codeOf(reading.place)));
    if (kept && minutes) {
        kept = model.enter(row, Item::RoomCoAt, minutesText(*minutes), quantity::UnitCode::Minute);
    }
    return kept ? model.enter(row, Item::RoomCo, reading.ppm, quantity::UnitCode::Ppm) : kept;
}

bool isInSeries(VisitSheetModel& model, const RoomReading& reading, Instant watchBegan) {
    const auto minutes = minutesOf(model, reading, watchBegan);
    if (!minutes) {
        return false;
    }
    const auto rows = model.file().roomReadings();
    return std::any_of(rows.begin(), rows.end(), [&](const reg::SubjectRef& row) {
        return model.textOf(row, Item::RoomCo) == reading.ppm &&
               model.textOf(row, Item::RoomCoAt) == minutesText(*minutes) &&
               model.file().choiceOf(row, Item::RoomCoPlace) == record::codeOf(reading.place);
    });
}

}  // namespace hearth::ui::visit
