// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/due_views.h"

#include "core/base/id.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>
#include <array>
#include <utility>

namespace hearth::ui::due {

namespace {

using store::DueSort;

constexpr auto kViewsKey = "due.views";
constexpr std::array<std::pair<DueSort, const char*>, 6> kSortCodes{{{DueSort::Need, "need"},
                                                                     {DueSort::Deadline, "deadline"},
                                                                     {DueSort::Address, "address"},
                                                                     {DueSort::Postcode, "postcode"},
                                                                     {DueSort::Landlord, "landlord"},
                                                                     {DueSort::LastCheck, "last_check"}}};

template <class Identity>
QString idText(const std::optional<Identity>& id) {
    return id ? QString::fromStdString(id->text()) : QString();
}

template <class Identity>
std::optional<Identity> idFrom(const QJsonValue& value) {
    const auto bytes = uuidFromText(value.toString().toStdString());
    return bytes ? std::optional(Identity{*bytes}) : std::nullopt;
}

QJsonObject objectOf(const DueView& view) {
    QJsonArray states;
    for (const auto state : view.filter.states) {
        const auto code = calendar::codeOf(state);
        states.append(QString::fromUtf8(code.data(), static_cast<qsizetype>(code.size())));
    }
    return {{QStringLiteral("name"), view.name},
            {QStringLiteral("states"), states},
            {QStringLiteral("landlord"), idText(view.filter.landlord)},
            {QStringLiteral("agent"), idText(view.filter.agent)},
            {QStringLiteral("engineer"), idText(view.filter.engineer)},
            {QStringLiteral("area"), QString::fromStdString(view.filter.outward)},
            {QStringLiteral("text"), QString::fromStdString(view.filter.text)},
            {QStringLiteral("order"), codeOf(view.sort)}};
}

DueView viewOf(const QJsonObject& object) {
    DueView view;
    view.name = object.value(QStringLiteral("name")).toString();
    for (const auto& state : object.value(QStringLiteral("states")).toArray()) {
        if (const auto known = calendar::dueStateFromCode(state.toString().toStdString())) {
            view.filter.states.push_back(*known);
        }
    }
    view.filter.landlord = idFrom<reg::PartyId>(object.value(QStringLiteral("landlord")));
    view.filter.agent = idFrom<reg::PartyId>(object.value(QStringLiteral("agent")));
    view.filter.engineer = idFrom<reg::EngineerId>(object.value(QStringLiteral("engineer")));
    view.filter.outward = object.value(QStringLiteral("area")).toString().toStdString();
    view.filter.text = object.value(QStringLiteral("text")).toString().toStdString();
    view.sort = sortFromCode(object.value(QStringLiteral("order")).toString());
    return view;
}

}  // namespace

QString codeOf(DueSort sort) {
    const auto* found = std::find_if(kSortCodes.begin(), kSortCodes.end(),
                                     [sort](const auto& one) { return one.first == sort; });
    return QString::fromLatin1(found == kSortCodes.end() ? "need" : found->second);
}

DueSort sortFromCode(const QString& code) {
    for (const auto& [sort, text] : kSortCodes) {
        if (code == QLatin1String(text)) {
            return sort;
        }
    }
    return DueSort::Need;
}

std::string viewsText(const std::vector<DueView>& views) {
    QJsonArray array;
    for (const auto& view : views) {
        array.append(objectOf(view));
    }
    return QJsonDocument(array).toJson(QJsonDocument::Compact).toStdString();
}

std::vector<DueView> viewsFrom(const std::string& text) {
    std::vector<DueView> views;
    for (const auto& one : QJsonDocument::fromJson(QByteArray::fromStdString(text)).array()) {
        const auto view = viewOf(one.toObject());
        if (!view.name.isEmpty()) {
            views.push_back(view);
        }
    }
    return views;
}

std::vector<DueView> savedViews(const store::Store& store) {
    const auto kept = store.setting(kViewsKey);
    return kept ? viewsFrom(*kept) : std::vector<DueView>();
}

Result<void> forgetView(store::Store& store, const QString& name) {
    auto views = savedViews(store);
    views.erase(std::remove_if(views.begin(), views.end(),
                               [&name](const DueView& view) { return view.name == name; }),
                views.end());
    return store.saveSetting(kViewsKey, viewsText(views));
}

Result<void> saveView(store::Store& store, const DueView& view) {
    auto views = savedViews(store);
    const auto found = std::find_if(views.begin(), views.end(),
                                    [&view](const DueView& one) { return one.name == view.name; });
    if (found == views.end()) {
        views.push_back(view);
    } else {
        *found = view;
    }
    return store.saveSetting(kViewsKey, viewsText(views));
}

}  // namespace hearth::ui::due
