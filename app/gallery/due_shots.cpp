// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/gallery/shots.h"
#include "ui/due/due_list.h"
#include "ui/due/due_place.h"
#include "ui/due/duties_page.h"
#include "ui/shell/overdue_news.h"

#include <QApplication>

#include <array>
#include <utility>

namespace hearth::app::gallery {
namespace {

using ui::due::Action;

constexpr int kMonthsAway = 36;  // long enough for something to have turned overdue

/// The place with its list in view and the most urgent premises chosen.
ui::due::DuePlace* listed(Scene& scene) {
    scene.window.showPlace(kDue);
    auto* place = dynamic_cast<ui::due::DuePlace*>(scene.window.placeInView());
    auto* list = place == nullptr ? nullptr : place->findChild<ui::due::DueList*>();
    if (list == nullptr) {
        return nullptr;
    }
    place->showList();
    list->setCurrentRow(0);
    return place;
}

void showAction(Scene& scene, Action action) {
    if (auto* place = listed(scene)) {
        place->act(action);
    }
}

/// What is read beside the work is there.
void showDuties(Scene& scene) {
    showAction(scene, Action::Duties);
    const auto* page = scene.window.findChild<ui::due::DutiesPage*>();
    while (page != nullptr && page->isReading()) {
        QApplication::processEvents(QEventLoop::WaitForMoreEvents);
    }
}

void showStory(Scene& scene) {
    if (auto* place = listed(scene)) {
        Q_EMIT place->findChild<ui::due::DueList*>()->opened(0);
    }
}

/// As for somebody who last looked years ago; what the store remembers stays.
void showNews(Scene& scene) {
    static_cast<void>(listed(scene));
    const auto today = scene.clock.today("Europe/London");
    ui::shell::NewsDay day(scene.store, nullptr);
    if (day.note(calendar::addMonths(today, -kMonthsAway))) {
        scene.window.tellOverdueNews();
        static_cast<void>(day.note(today));
    }
}

}  // namespace

void addDueShots(std::vector<Shot>& shots) {
    constexpr std::array<std::pair<const char*, Action>, 7> kPages{{{"due-book", Action::Book},
                                                                    {"due-no-access", Action::NoAccess},
                                                                    {"due-call", Action::Call},
                                                                    {"due-remind", Action::Remind},
                                                                    {"due-reminders", Action::RemindersDue},
                                                                    {"due-day-sheet", Action::Day},
                                                                    {"due-overview", Action::Overview}}};
    shots.push_back({QStringLiteral("due-story"), [](Scene& scene) { showStory(scene); }});
    for (const auto& [name, action] : kPages) {
        shots.push_back(
            {QString::fromLatin1(name), [which = action](Scene& scene) { showAction(scene, which); }});
    }
    shots.push_back({QStringLiteral("due-other-duties"), [](Scene& scene) { showDuties(scene); }});
    shots.push_back({QStringLiteral("due-news"), [](Scene& scene) { showNews(scene); }});
    // Whoever comes to the place after this finds its list.
    shots.push_back({QStringLiteral("checks-due"), [](Scene& scene) { static_cast<void>(listed(scene)); }});
}

}  // namespace hearth::app::gallery
