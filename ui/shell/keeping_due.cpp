// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/keeping_due.h"

#include <QCoreApplication>

#include <algorithm>

namespace hearth::ui::shell {
namespace {

constexpr auto kLookedOn = "keeping.looked_on";
constexpr int kYearInMonths = 12;

calendar::Date keepingToday(const Clock& clock) {
    return clock.today("Europe/London");
}

/// Whether there is anything to decide: what is held waits for its hold, and nobody is called for it.
bool isAnythingWaiting(const store::Store& store, calendar::Date today) {
    constexpr int kEnough = 50;  // of the oldest: a start does not wait for more
    const auto records = store.mayGo(today, kEnough);
    const bool any = records && std::any_of(records->begin(), records->end(),
                                            [](const store::MayGo& one) { return !one.hold; });
    return any || !store.lettersMayGo(today, 1).value_or(std::vector<store::LetterMayGo>()).empty();
}

}  // namespace

std::optional<calendar::Date> keepingLookedOn(const store::Store& store) {
    const auto said = store.setting(kLookedOn);
    return said ? calendar::fromIso(*said) : std::nullopt;
}

bool isKeepingLookDue(std::optional<calendar::Date> lookedOn, calendar::Date today) {
    return !lookedOn || calendar::addMonths(*lookedOn, kYearInMonths) <= today;
}

Result<void> noteKeepingLook(store::Store& store, const Clock& clock) {
    return store.saveSetting(kLookedOn, calendar::isoText(keepingToday(clock)));
}

QString keepingDueText(const store::Store& store, const Clock& clock) {
    const auto today = keepingToday(clock);
    if (store.isReadOnly() || !isKeepingLookDue(keepingLookedOn(store), today) ||
        !isAnythingWaiting(store, today)) {
        return {};
    }
    return QCoreApplication::translate(
        "KeepingDue",
        "Some records or letters have been kept for long enough: look through them under Firm, "
        "What may go.");
}

}  // namespace hearth::ui::shell
