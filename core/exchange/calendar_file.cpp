// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/calendar_file.h"

#include <cstdlib>
#include <libical/ical.h>
#include <memory>

namespace hearth::exchange {
namespace {

using calendar::Date;

struct ComponentFree {
    void operator()(icalcomponent* component) const { icalcomponent_free(component); }
};
using Component = std::unique_ptr<icalcomponent, ComponentFree>;

icaltimetype wholeDay(Date date) {
    icaltimetype time = icaltime_null_date();
    time.year = static_cast<int>(date.year());
    time.month = static_cast<int>(static_cast<unsigned>(date.month()));
    time.day = static_cast<int>(static_cast<unsigned>(date.day()));
    return time;
}

icaltimetype inUtc(Instant instant) {
    const auto seconds = std::chrono::floor<std::chrono::seconds>(instant).time_since_epoch().count();
    return icaltime_from_timet_with_zone(static_cast<time_t>(seconds), 0, icaltimezone_get_utc_timezone());
}

/// Takes the property over.
void put(icalcomponent* component, icalproperty* property) {
    icalcomponent_add_property(component, property);
}

Result<Instant> instantOf(Date date, const std::string& time, const std::string& zone) {
    Instant instant{};
    if (!instantAt(date, time, instant, zone)) {
        return fail(ErrorCode::TimeUnreadable, {time});
    }
    return instant;
}

Result<void> putTimes(icalcomponent* entry, const CalendarEvent& event, const std::string& zone) {
    if (event.from.empty()) {
        put(entry, icalproperty_new_dtstart(wholeDay(event.date)));
        put(entry, icalproperty_new_dtend(wholeDay(calendar::addDays(event.date, 1))));
        put(entry, icalproperty_new_transp(ICAL_TRANSP_TRANSPARENT));  // a deadline keeps nobody busy
        return {};
    }
    const auto begin = instantOf(event.date, event.from, zone);
    if (!begin) {
        return tl::unexpected(begin.error());
    }
    const auto end = event.until.empty() ? Result<Instant>(*begin + std::chrono::hours(1))
                                         : instantOf(event.date, event.until, zone);
    if (!end) {
        return tl::unexpected(end.error());
    }
    put(entry, icalproperty_new_dtstart(inUtc(*begin)));
    put(entry, icalproperty_new_dtend(inUtc(*end)));
    return {};
}

void putAlarms(icalcomponent* entry, const CalendarEvent& event) {
    constexpr int kSeconds = 60;
    for (const int minutes : event.alarmsBefore) {
        icalcomponent* alarm = icalcomponent_new_valarm();
        icaltriggertype trigger{};
        trigger.time = icaltime_null_time();
        trigger.duration = icaldurationtype_from_int(-minutes * kSeconds);
        put(alarm, icalproperty_new_action(ICAL_ACTION_DISPLAY));
        put(alarm, icalproperty_new_description(event.summary.c_str()));
        put(alarm, icalproperty_new_trigger(trigger));
        icalcomponent_add_component(entry, alarm);
    }
}

Result<void> putEvent(icalcomponent* whole, const CalendarEvent& event, Instant now,
                      const std::string& zone) {
    Component entry(icalcomponent_new_vevent());
    put(entry.get(), icalproperty_new_uid(event.uid.c_str()));
    put(entry.get(), icalproperty_new_dtstamp(inUtc(now)));
    put(entry.get(), icalproperty_new_sequence(event.sequence));
    put(entry.get(), icalproperty_new_summary(event.summary.c_str()));
    if (auto done = putTimes(entry.get(), event, zone); !done) {
        return done;
    }
    if (!event.description.empty()) {
        put(entry.get(), icalproperty_new_description(event.description.c_str()));
    }
    if (!event.location.empty()) {
        put(entry.get(), icalproperty_new_location(event.location.c_str()));
    }
    put(entry.get(),
        icalproperty_new_status(event.cancelled ? ICAL_STATUS_CANCELLED : ICAL_STATUS_CONFIRMED));
    if (!event.cancelled) {
        putAlarms(entry.get(), event);
    }
    icalcomponent_add_component(whole, entry.release());
    return {};
}

}  // namespace

int sequenceAt(Instant now) {
    const Instant start = std::chrono::sys_days(std::chrono::year(2020) / std::chrono::January / 1);
    return static_cast<int>(std::chrono::floor<std::chrono::minutes>(now - start).count());
}

Result<std::string> calendarOf(const std::vector<CalendarEvent>& events, Instant now,
                               const std::string& zone) {
    const Component whole(icalcomponent_new(ICAL_VCALENDAR_COMPONENT));
    put(whole.get(), icalproperty_new_prodid("-//Hearthledger//Checks due//EN"));
    put(whole.get(), icalproperty_new_version("2.0"));
    put(whole.get(), icalproperty_new_method(ICAL_METHOD_PUBLISH));
    for (const auto& event : events) {
        if (auto done = putEvent(whole.get(), event, now, zone); !done) {
            return tl::unexpected(done.error());
        }
    }
    const std::unique_ptr<char, decltype(&std::free)> text(icalcomponent_as_ical_string_r(whole.get()),
                                                           &std::free);
    return std::string(text.get());
}

}  // namespace hearth::exchange
