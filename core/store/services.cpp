// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/services.h"

#include "core/record/kind.h"
#include "core/register/choices.h"
#include "core/register/item.h"

namespace hearth::store {

namespace {

/// Of the tables h, s, v and e, in whatever order they are read.
std::string isService() {
    const auto quoted = [](std::string_view code) { return "'" + std::string(code) + "'"; };
    using record::kindCode;
    using record::RecordKind;
    return " WHERE ((h.kind = " + quoted(kindCode(RecordKind::Service)) +
           " AND e.item GLOB 'service.*') OR (h.kind IN (" + quoted(kindCode(RecordKind::LandlordSafety)) +
           ", " + quoted(kindCode(RecordKind::OwnerSafety)) +
           ") AND e.item = " + quoted(reg::infoOf(reg::Item::ServicedToday).code) +
           " AND e.canonical = " + quoted(reg::choice::kYes) +
           ")) AND NOT EXISTS (SELECT 1 FROM record_events AS o WHERE o.record = h.id AND o.event = 'void')";
}

}  // namespace

std::string servicesOnRecord() {
    return "record_headers AS h JOIN record_snapshots AS s ON s.record = h.id JOIN visits AS v ON v.id = "
           "s.visit JOIN entries AS e ON e.visit = v.id AND e.subject_kind = 'appliance'" +
           isService();
}

std::string servicesByVisit() {
    return "visits AS v CROSS JOIN record_snapshots AS s ON s.visit = v.id CROSS JOIN record_headers AS h ON "
           "h.id = s.record CROSS JOIN entries AS e ON e.visit = v.id AND e.subject_kind = 'appliance'" +
           isService();
}

std::optional<calendar::Date> lastService(const Connection& db, const UuidBytes& appliance) {
    const auto date =
        db.text("SELECT max(v.date) FROM " + servicesOnRecord() + " AND e.subject = ?", {appliance});
    return calendar::fromIso(date);
}

}  // namespace hearth::store
