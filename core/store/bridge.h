// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/id.h"
#include "core/calendar/civil_date.h"

#include <QByteArray>
#include <QDate>
#include <QString>

#include <string>
#include <string_view>

/// Where Qt's types begin: text is UTF-8 std::string below and QString above, civil dates are calendar::Date
/// below.
namespace hearth::store {

/// Never a null QString.
[[nodiscard]] inline QString toQt(std::string_view utf8) {
    return utf8.empty() ? QStringLiteral("")
                        : QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}
[[nodiscard]] inline std::string fromQt(const QString& text) {
    return text.toStdString();
}

[[nodiscard]] inline QDate toQt(calendar::Date date) {
    return {static_cast<int>(date.year()), static_cast<int>(static_cast<unsigned>(date.month())),
            static_cast<int>(static_cast<unsigned>(date.day()))};
}
/// An invalid QDate is a bug.
[[nodiscard]] inline calendar::Date fromQt(const QDate& date) {
    return {std::chrono::year(date.year()), std::chrono::month(static_cast<unsigned>(date.month())),
            std::chrono::day(static_cast<unsigned>(date.day()))};
}

[[nodiscard]] inline QByteArray bytesToQt(std::string_view bytes) {
    return {bytes.data(), static_cast<qsizetype>(bytes.size())};
}
[[nodiscard]] inline std::string bytesFromQt(const QByteArray& bytes) {
    return bytes.toStdString();
}

}  // namespace hearth::store
