// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/overdue_news.h"

#include <QCoreApplication>
#include <QCryptographicHash>
#include <QSettings>

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

bool NewsDay::isKept() const {
    return !m_store.isReadOnly() || m_settings != nullptr;
}

QString NewsDay::key() const {
    const auto path = QByteArray::fromStdString(m_store.path().string());
    return QStringLiteral("news/") +
           QString::fromLatin1(QCryptographicHash::hash(path, QCryptographicHash::Sha256).toHex().left(16));
}

std::optional<calendar::Date> NewsDay::seen() const {
    if (m_store.isReadOnly()) {
        return m_settings == nullptr ? std::nullopt
                                     : calendar::fromIso(m_settings->value(key()).toString().toStdString());
    }
    const auto said = m_store.setting(kNewsSeen);
    return said ? calendar::fromIso(*said) : std::nullopt;
}

Result<void> NewsDay::note(calendar::Date day) {
    if (!m_store.isReadOnly()) {
        return m_store.saveSetting(kNewsSeen, calendar::isoText(day));
    }
    if (m_settings != nullptr) {
        m_settings->setValue(key(), words::qstring(calendar::isoText(day)));
    }
    return {};
}

std::optional<OverdueNews> overdueNews(const store::Store& store, NewsDay& day, calendar::Date today) {
    if (!day.isKept()) {
        return std::nullopt;
    }
    const auto seen = day.seen();
    OverdueNews news{seen.value_or(calendar::addDays(today, -1)), {}};
    const auto lines = store.overdueSince(news.since, today);
    if (!lines || lines->empty()) {
        if (!seen) {
            static_cast<void>(day.note(today));  // else each start would ask since its yesterday
        }
        return std::nullopt;
    }
    for (const auto& line : *lines) {
        news.premises.push_back(line.premises);
    }
    return news;
}

QString newsText(const OverdueNews& news, const words::Words& words) {
    return OverdueNewsText::tr("%n check(s) turned overdue since %1.", nullptr,
                               static_cast<int>(news.premises.size()))
        .arg(words.date(news.since));
}

}  // namespace hearth::ui::shell
