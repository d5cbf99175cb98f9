// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/tube_text.h"

#include <QRegularExpression>

#include <array>
#include <cmath>
#include <optional>

namespace hearth::ui::visit {

using pipework::Tube;
using pipework::TubeFamily;

namespace {

/// What was said beside the size.
struct Said {
    std::optional<TubeFamily> family;
    std::optional<double> size;  // mm
    std::optional<double> inches;
    std::optional<double> wall;  // mm
};

struct FamilyWord {
    const char* pattern;
    TubeFamily family;
};

// The first that is found counts, so the narrower ones stand first.
constexpr std::array kFamilyWords{
    FamilyWord{"\\b(csst|corrugated|flex|flexible)\\b", TubeFamily::Corrugated},
    FamilyWord{"\\b(cu|copper)\\b", TubeFamily::Copper},
    FamilyWord{"\\bheavy\\b", TubeFamily::SteelHeavy},
    FamilyWord{"\\b(steel|st|iron|dn|medium)\\b", TubeFamily::SteelMedium},
    FamilyWord{"\\bsdr ?17([.,]6)?", TubeFamily::PeSdr176},
    FamilyWord{"\\b(pe|poly|polyethylene|plastic|sdr ?11)\\b", TubeFamily::PeSdr11},
};

QRegularExpression pattern(const char* text) {
    return QRegularExpression(QString::fromLatin1(text));
}

double number(QString text) {
    return text.replace(u',', u'.').toDouble();
}

/// "22cu" to "22 cu", so that words stand apart from figures.
QString apart(QString text) {
    static const QRegularExpression figureLetter = pattern("([0-9])([a-z])");
    static const QRegularExpression letterFigure = pattern("([a-z])([0-9])");
    return text.replace(figureLetter, QStringLiteral("\\1 \\2"))
        .replace(letterFigure, QStringLiteral("\\1 \\2"))
        .simplified();
}

std::optional<double> takeInches(QString& text) {
    static const QRegularExpression fraction =
        pattern("(?:([0-9]+)[ -])?([0-9]+)/([0-9]+) ?(?:\"|''|in\\b|inch\\b)?");
    static const QRegularExpression whole = pattern("([0-9]+(?:[.,][0-9]+)?) ?(?:\"|''|in\\b|inch\\b)");
    if (const auto match = fraction.match(text); match.hasMatch() && match.captured(3).toDouble() > 0) {
        text.remove(match.capturedStart(), match.capturedLength());
        return match.captured(1).toDouble() + match.captured(2).toDouble() / match.captured(3).toDouble();
    }
    if (const auto match = whole.match(text); match.hasMatch()) {
        text.remove(match.capturedStart(), match.capturedLength());
        return number(match.captured(1));
    }
    return std::nullopt;
}

Said understand(const QString& typed) {
    Said said;
    QString text = apart(typed.toLower());
    for (const FamilyWord& word : kFamilyWords) {
        const QRegularExpression expression = pattern(word.pattern);
        if (!said.family && expression.match(text).hasMatch()) {
            said.family = word.family;
        }
    }
    static const QRegularExpression ratio = pattern("\\bsdr ?[0-9]+([.,][0-9]+)?");
    text.remove(ratio);
    static const QRegularExpression withWall =
        pattern("([0-9]+(?:[.,][0-9]+)?) ?[x\u00D7] ?([0-9]+(?:[.,][0-9]+)?)");
    static const QRegularExpression figure = pattern("[0-9]+(?:[.,][0-9]+)?");
    if (const auto match = withWall.match(text); match.hasMatch()) {
        said.size = number(match.captured(1));
        said.wall = number(match.captured(2));
    } else if (const auto inches = takeInches(text)) {
        said.inches = inches;
    } else if (const auto size = figure.match(text); size.hasMatch()) {
        said.size = number(size.captured(0));
    }
    return said;
}

/// Nominal size of a steel tube by its size in inches (EN 10255: DN 15 is R 1/2, and so on).
std::optional<double> nominalOfInches(double inches) {
    struct Pair {
        double inches;
        double nominal;
    };
    constexpr std::array kPairs{Pair{0.5, 15}, Pair{0.75, 20}, Pair{1, 25},   Pair{1.25, 32},
                                Pair{1.5, 40}, Pair{2, 50},    Pair{2.5, 65}, Pair{3, 80},
                                Pair{4, 100},  Pair{5, 125},   Pair{6, 150}};
    for (const Pair& pair : kPairs) {
        if (std::abs(pair.inches - inches) < 0.01) {
            return pair.nominal;
        }
    }
    return std::nullopt;
}

bool fits(const Tube& tube, const Said& said, std::optional<double> size) {
    if (said.family && tube.family != *said.family) {
        return false;
    }
    if (tube.family == TubeFamily::Corrugated) {
        return said.family == TubeFamily::Corrugated;
    }
    // 67 is said for 66.7, 76 for 76.1.
    const bool sizeFits = size && std::abs(tube.nominal - *size) < 0.5;
    return sizeFits && (!said.wall || std::abs(tube.wall - *said.wall) < 0.05);
}

/// One a family: the first, which is the common wall.
std::vector<const Tube*> candidatesFor(const Said& said, std::optional<double> size) {
    std::vector<const Tube*> found;
    for (const Tube& tube : pipework::tubes()) {
        const bool isNewFamily = found.empty() || found.back()->family != tube.family;
        if (isNewFamily && fits(tube, said, size)) {
            found.push_back(&tube);
        }
    }
    return found;
}

}  // namespace

TubeReading readTube(const QString& typed) {
    if (const Tube* byCode = pipework::tubeByCode(typed.toStdString())) {
        return {byCode, {byCode}};
    }
    Said said = understand(typed);
    std::optional<double> size = said.size;
    if (said.inches) {
        size = nominalOfInches(*said.inches);
        said.family = said.family.value_or(TubeFamily::SteelMedium);
    }
    TubeReading reading;
    reading.candidates = candidatesFor(said, size);
    const bool isCopper =
        !reading.candidates.empty() && reading.candidates.front()->family == TubeFamily::Copper;
    if (reading.candidates.size() == 1 || isCopper) {
        reading.tube = reading.candidates.front();
    }
    return reading;
}

}  // namespace hearth::ui::visit
