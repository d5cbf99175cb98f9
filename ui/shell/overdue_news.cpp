// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/overdue_news.h"

#include <QCoreApplication>

#include <array>

namespace hearth::ui::shell {
namespace {

constexpr auto kNewsWhere = "due.news";
constexpr auto kNewsSeen = "due.news_seen";

struct OverdueNewsText {
    Q_DECLARE_TR_FUNCTIONS(hearth::ui::shell::OverdueNews)
};

constexpr std::array kWheres{NewsWhere::WindowAndDesktop, NewsWhere::Window, NewsWhere::Nowhere};

}  // namespace

QString codeOf(NewsWhere where) {
    switch (where) {
        case NewsWhere::Window:
            return QStringLiteral("window");
        case NewsWhere::Nowhere:
            return QStringLiteral("off");
        case NewsWhere::WindowAndDesktop:
            break;
    }
    return QStringLiteral("desktop");
}

NewsWhere newsWhere(const store::Store& store) {
    const auto said = store.setting(kNewsWhere);
    for (const auto where : kWheres) {
        if (said && *said == codeOf(where).toStdString()) {
            return where;
        }
    }
    return NewsWhere::WindowAndDesktop;
}

Result<void> saveNewsWhere(store::Store& store, const QString& code) {
    return store.saveSetting(kNewsWhere, code.toStdString());
}

std::optional<OverdueNews> overdueNews(store::Store& store, const Clock& clock) {
    const auto today = clock.today("Europe/London");
    const auto said = store.setting(kNewsSeen);
    const auto seen = said ? calendar::fromIso(*said) : std::nullopt;
    OverdueNews news{seen.value_or(calendar::addDays(today, -1)), {}};
    const auto lines = store.overdueSince(news.since, today);
    if (!lines || lines->empty()) {
        if (!seen && !store.isReadOnly()) {
            static_cast<void>(noteNewsSeen(store, clock));  // else each start would ask since its yesterday
        }
        return std::nullopt;
    }
    for (const auto& line : *lines) {
        news.premises.push_back(line.premises);
    }
    return news;
}

Result<void> noteNewsSeen(store::Store& store, const Clock& clock) {
    return store.saveSetting(kNewsSeen, calendar::isoText(clock.today("Europe/London")));
}

QString newsText(const OverdueNews& news, const words::Words& words) {
    return OverdueNewsText::tr("%n check(s) turned overdue since %1.", nullptr,
                               static_cast<int>(news.premises.size()))
        .arg(words.date(news.since));
}

}  // namespace hearth::ui::shell
