// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/file_pattern.h"

#include "core/base/clock.h"

#include <QRegularExpression>

#include <algorithm>
#include <array>

namespace hearth::ui::shell {
namespace {

constexpr qsizetype kLongestPart = 60;
constexpr qsizetype kMostNameBytes = 200;  // far below the 255 of common file systems

struct Placeholder {
    const char* name;
    QString (*text)(const FileNameParts&);
};
constexpr std::array kPlaceholders{
    Placeholder{"{number}", [](const FileNameParts& parts) { return parts.number; }},
    Placeholder{"{revision}",
                [](const FileNameParts& parts) {
                    return parts.revision > 1 ? QStringLiteral("r%1").arg(parts.revision) : QString();
                }},
    Placeholder{"{date}", [](const FileNameParts& parts) { return parts.date; }},
    Placeholder{"{premises}", [](const FileNameParts& parts) { return parts.premises; }},
    Placeholder{"{customer}", [](const FileNameParts& parts) { return parts.customer; }},
    Placeholder{"{reference}", [](const FileNameParts& parts) { return parts.reference; }},
};

const QRegularExpression& placeholderForm() {
    static const QRegularExpression kForm(QStringLiteral("\\{[^{}]*\\}|[{}]"));
    return kForm;
}

bool isRefused(QChar letter) {
    static const QString refused = QStringLiteral("/\\:*?\"<>|");
    return refused.contains(letter) || letter.unicode() < 0x20 || letter.unicode() == 0x7f;
}

QString safe(const QString& text) {
    QString made;
    for (const QChar letter : text) {
        made += isRefused(letter) ? QChar(u' ') : letter;
    }
    return made.simplified();
}

/// A hidden file is a lost one, and a name that ends in a dot is none everywhere.
QString withoutOuterDots(QString text) {
    while (text.startsWith(u'.') || text.startsWith(u' ')) {
        text.remove(0, 1);
    }
    while (text.endsWith(u'.') || text.endsWith(u' ')) {
        text.chop(1);
    }
    return text;
}

QString partOf(const QString& text) {
    return withoutOuterDots(safe(text).left(kLongestPart));
}

const Placeholder* placeholderOf(const QString& name) {
    const auto* found = std::find_if(kPlaceholders.begin(), kPlaceholders.end(),
                                     [&](const Placeholder& one) { return name == QLatin1String(one.name); });
    return found == kPlaceholders.end() ? nullptr : found;
}

QString filled(const QString& pattern, const FileNameParts& parts) {
    QString name;
    qsizetype at = 0;
    auto matches = placeholderForm().globalMatch(pattern);
    while (matches.hasNext()) {
        const auto match = matches.next();
        const Placeholder* placeholder = placeholderOf(match.captured());
        name += pattern.mid(at, match.capturedStart() - at);
        name += placeholder != nullptr ? partOf(placeholder->text(parts)) : QString();
        at = match.capturedEnd();
    }
    return name + pattern.mid(at);
}

QString referenceOf(const store::Store& store, reg::VisitId visit) {
    const auto file = store.visitFile(visit);
    if (!file) {
        return {};
    }
    const auto found = std::find_if(file->entries.begin(), file->entries.end(), [](const reg::Entry& entry) {
        return entry.item == reg::Item::VisitReference;
    });
    return found == file->entries.end() ? QString() : QString::fromStdString(found->text);
}

}  // namespace

QStringList filePlaceholders() {
    QStringList names;
    for (const auto& one : kPlaceholders) {
        names << QLatin1String(one.name);
    }
    return names;
}

QString usualFilePattern() {
    return QStringLiteral("{number} {revision} {premises} {date}");
}

QString fileNameBy(const QString& pattern, const FileNameParts& parts) {
    QString name = withoutOuterDots(safe(filled(pattern, parts)));
    while (name.toUtf8().size() > kMostNameBytes) {
        name.chop(1);
        name = withoutOuterDots(name);
    }
    return (name.isEmpty() ? partOf(parts.number) : name) + QStringLiteral(".pdf");
}

Result<void> checkFilePattern(const QString& pattern) {
    auto matches = placeholderForm().globalMatch(pattern);
    while (matches.hasNext()) {
        const QString name = matches.next().captured();
        if (placeholderOf(name) == nullptr) {
            return fail(ErrorCode::PatternUnknown, {name.toStdString()});
        }
    }
    return pattern.contains(QLatin1String("{number}"))
               ? Result<void>()
               : fail(ErrorCode::PatternUnknown, {pattern.toStdString()});
}

QString isoDayOf(const std::string& issuedAt) {
    Instant at{};
    return parseInstant(issuedAt, at)
               ? QString::fromStdString(calendar::isoText(FixedClock(at).today("Europe/London")))
               : QString();
}

QString recordFileName(const store::Store& store, const store::RecordLine& line) {
    const auto set = store.setting(kFilePatternSetting);
    const QString pattern = set && !set->empty() ? QString::fromStdString(*set) : usualFilePattern();
    FileNameParts parts;
    parts.number = QString::fromStdString(line.header.record);
    parts.revision = line.header.revision;
    parts.date = isoDayOf(line.header.issuedAt);
    parts.premises = QString::fromStdString(line.address);
    parts.customer = QString::fromStdString(line.customer);
    if (pattern.contains(QLatin1String("{reference}"))) {
        parts.reference = referenceOf(store, line.visit);
    }
    return fileNameBy(pattern, parts);
}

}  // namespace hearth::ui::shell
