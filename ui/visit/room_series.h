// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/record/trace_text.h"
#include "ui/visit/sheet_model.h"

#include <QString>

#include <optional>

/// The series of carbon monoxide readings of a visit: rows, each with place, minutes and ppm.
namespace hearth::ui::visit {

/// When it began, by the store, so that it goes on after another start; nothing: no reading had its time kept
/// by the clock yet.
[[nodiscard]] std::optional<Instant> seriesBegan(VisitSheetModel& model);
[[nodiscard]] Result<void> beginSeries(VisitSheetModel& model, Instant at);

struct RoomReading {
    QString ppm;  // as it is to stand there
    air::CoPlace place = air::CoPlace::Room;
    Instant at{};
};

/// "12.5", to a tenth of a minute.
[[nodiscard]] QString minutesText(double minutes);
/// Its minutes in the series; nothing where that can't be known: readings stand there whose clock nobody
/// kept, or it was taken before the series began. A series without readings begins at `watchBegan`.
[[nodiscard]] std::optional<double> minutesOf(VisitSheetModel& model, const RoomReading& reading,
                                              Instant watchBegan);
/// Puts it into the series as a row of its own. Without its minutes where they can't be known: they are then
/// for the engineer to type, and nothing passes meanwhile.
[[nodiscard]] Result<void> putReading(VisitSheetModel& model, const RoomReading& reading, Instant watchBegan);
/// Such a row is there.
[[nodiscard]] bool isInSeries(VisitSheetModel& model, const RoomReading& reading, Instant watchBegan);

}  // namespace hearth::ui::visit
