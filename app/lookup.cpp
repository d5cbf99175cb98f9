// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/lookup.h"

namespace hearth::app {
namespace {

constexpr int kAll = 1000000;
constexpr qsizetype kShort = 8;       // shown
constexpr qsizetype kLeastTyped = 4;  // taken for the end of an id

/// Store::records() of a number's search may give others that have it in another field.
bool isThat(const store::RecordLine& line, const QString& number, int revision) {
    return QString::fromStdString(line.header.record).compare(number, Qt::CaseInsensitive) == 0 &&
           (revision == 0 ? !line.supersededBy.has_value() : line.header.revision == revision);
}

}  // namespace

QString shortId(reg::VisitId id) {
    return QString::fromStdString(id.text()).right(kShort);
}

Result<std::vector<store::VisitLine>> visitsNamed(const store::Store& store, const QStringList& words) {
    if (words.size() == 1 && words.first().size() >= kLeastTyped) {
        auto all = store.visits({}, kAll);
        if (!all) {
            return all;
        }
        std::vector<store::VisitLine> ending;
        for (auto& line : *all) {
            if (QString::fromStdString(line.visit.id.text()).endsWith(words.first(), Qt::CaseInsensitive)) {
                ending.push_back(line);
            }
        }
        if (!ending.empty()) {
            return ending;
        }
    }
    return store.visits(words.join(QLatin1Char(' ')).toStdString(), kAll);
}

Result<store::RecordId> recordNamed(const store::Store& store, const QString& number, int revision) {
    const auto lines = store.records({}, kAll);
    if (!lines) {
        return tl::unexpected(lines.error());
    }
    for (const auto& line : *lines) {
        if (isThat(line, number, revision)) {
            return line.id;
        }
    }
    return fail(ErrorCode::NotFound, {"record", number.toStdString()});
}

}  // namespace hearth::app
