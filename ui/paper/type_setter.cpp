// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/type_setter.h"

#include "core/record/pairing.h"
#include "ui/paper/set_texts.h"

#include <QRawFont>
#include <QTextLayout>
#include <QTextOption>

#include <algorithm>
#include <cmath>

namespace hearth::ui::paper {

namespace {

/// What capitals with two accents and the tails of letters reach, in ems from the baseline.
constexpr double kReachUp = 0.98;
constexpr double kReachDown = 0.25;

QFont fontOf(const TextStyle& style) {
    QFont font(look::family());
    font.setPixelSize(std::max(1, static_cast<int>(std::lround(style.em() * kUnitsPerMm))));
    font.setWeight(style.isBold ? QFont::Bold : QFont::Normal);
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setStyleStrategy(QFont::StyleStrategy(QFont::PreferOutline | QFont::NoSubpixelAntialias));
    if (style.letterSpacing != 0) {
        font.setLetterSpacing(QFont::AbsoluteSpacing, style.letterSpacing * style.em() * kUnitsPerMm);
    }
    return font;
}

QTextOption optionOf() {
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    option.setUseDesignMetrics(true);
    option.setTextDirection(Qt::LayoutDirectionAuto);
    option.setAlignment(Qt::AlignLeft | Qt::AlignAbsolute);
    return option;
}

/// A font whose outlines may go into a PDF: it has outlines, and its licence bits do not forbid embedding
/// (OS/2 fsType, OpenType specification: bit 1 restricted, bit 9 bitmaps only).
bool isEmbeddable(const QRawFont& font) {
    if (font.fontTable("glyf").isEmpty() && font.fontTable("CFF ").isEmpty()) {
        return false;
    }
    const QByteArray os2 = font.fontTable("OS/2");
    if (os2.size() < 10) {
        return true;
    }
    const auto bits =
        static_cast<unsigned>((static_cast<unsigned char>(os2[8]) << 8) | static_cast<unsigned char>(os2[9]));
    return (bits & 0x0202U) == 0;
}

bool isMissing(char32_t letter) {
    const QString text = QString::fromUcs4(&letter, 1);
    QTextLayout layout(text, fontOf(styles::kValue));
    layout.beginLayout();
    layout.createLine();
    layout.endLayout();
    for (const QGlyphRun& run : layout.glyphRuns()) {
        const QList<quint32> glyphs = run.glyphIndexes();
        if (glyphs.contains(0U) || !isEmbeddable(run.rawFont())) {
            return true;
        }
    }
    return false;
}

/// Glyphs of a line in the order of its letters. The layout gathers them by font, in no order of its own: a
/// name in which two fonts meet would be copied from the PDF in pieces, and differ from one making to the
/// next.
QList<QGlyphRun> glyphsInOrder(const QTextLayout& layout, const QTextLine& line, const QFont& font) {
    QList<QGlyphRun> runs = layout.glyphRuns(line.textStart(), line.textLength());
    if (runs.size() <= 1) {
        return runs;
    }
    runs.clear();
    const QRawFont bundled = QRawFont::fromFont(font);
    const QString text = layout.text();
    const auto isOurs = [&](int at) {
        return text[at].isSpace() || (!text[at].isSurrogate() && bundled.supportsCharacter(text[at]));
    };
    const int end = line.textStart() + line.textLength();
    for (int from = line.textStart(); from < end;) {
        int to = from + 1;
        while (to < end && isOurs(to) == isOurs(from)) {
            ++to;
        }
        runs += layout.glyphRuns(from, to - from);
        from = to;
    }
    return runs;
}

/// To the whole unit, which is a hundredth of a millimetre: nobody sees it, and a PDF, which names the place
/// of every glyph, is a third smaller. Places are rounded, not advances, so nothing adds up.
QList<QGlyphRun> onWholeUnits(QList<QGlyphRun> runs) {
    for (QGlyphRun& run : runs) {
        QList<QPointF> places = run.positions();
        for (QPointF& place : places) {
            place = QPointF(std::round(place.x()), std::round(place.y()));
        }
        run.setPositions(places);
    }
    return runs;
}

std::vector<TextItem> shaped(const QString& text, const TextStyle& style, double width) {
    std::vector<TextItem> lines;
    QTextLayout layout(text, fontOf(style));
    layout.setTextOption(optionOf());
    layout.setCacheEnabled(false);
    layout.beginLayout();
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(std::max(width, style.em()) * kUnitsPerMm);
        line.setPosition({0, 0});
    }
    layout.endLayout();
    for (int i = 0; i < layout.lineCount(); ++i) {
        const QTextLine line = layout.lineAt(i);
        TextItem item;
        item.origin = {0, style.baseline()};
        item.runs = onWholeUnits(glyphsInOrder(layout, line, layout.font()));
        item.ascent = std::round(line.ascent());
        item.text =
            text.mid(line.textStart(), line.textLength()).remove(QChar(QChar::LineSeparator)).trimmed();
        item.box =
            QRectF(line.naturalTextRect().left() / kUnitsPerMm, item.origin.y() - kReachUp * style.em(),
                   line.naturalTextWidth() / kUnitsPerMm, (kReachUp + kReachDown) * style.em());
        item.role = style.role;
        lines.push_back(std::move(item));
    }
    return lines;
}

double shapedWidth(const QString& text, const TextStyle& style) {
    QTextLayout layout(text, fontOf(style));
    layout.setTextOption(optionOf());
    layout.beginLayout();
    QTextLine line = layout.createLine();
    if (line.isValid()) {
        line.setNumColumns(static_cast<int>(text.size()));
    }
    layout.endLayout();
    return line.isValid() ? line.naturalTextWidth() / kUnitsPerMm : 0;
}

constexpr QChar kPartsLanguages = QLatin1Char(record::kBeside);

/// Some of it: then the side where a line begins follows from all the text before it.
bool readsFromTheRight(const QString& text) {
    return std::any_of(text.begin(), text.end(), [](QChar letter) {
        const auto direction = letter.direction();
        return letter.isSurrogate() || direction == QChar::DirR || direction == QChar::DirAL;
    });
}

bool isShapeless(QChar letter) {
    const auto category = letter.category();
    return category == QChar::Other_Control || category == QChar::Other_Format;
}

}  // namespace

QString settable(const QString& text) {
    QString kept;
    kept.reserve(text.size());
    for (const QChar letter : text) {
        if (letter == u'\n' || letter == QChar::ParagraphSeparator || letter == QChar::LineSeparator) {
            kept += QChar(QChar::LineSeparator);
        } else if (letter == u'\t') {
            kept += u' ';
        } else if (!isShapeless(letter) || letter == kPartsLanguages) {
            kept += letter;
        }
    }
    while (kept.endsWith(u' ') || kept.endsWith(QChar(QChar::LineSeparator))) {
        kept.chop(1);
    }
    return kept.normalized(QString::NormalizationForm_C);
}

QString settableInLine(const std::string& utf8) {
    return settable(record::inOneLine(utf8));
}

QString settable(const std::string& utf8) {
    return settable(QString::fromStdString(utf8));
}

TypeSetter::TypeSetter() {
    look::loadFonts();
}

void TypeSetter::note(const QString& text) const {
    for (const char32_t letter : text.toUcs4()) {
        if (letter > 0x7E && letter != QChar::LineSeparator) {
            m_met.insert(letter);
        }
    }
}

TextStyle besideStyle(const TextStyle& style) {
    constexpr double kFromAfar = 20;  // points
    constexpr double kLeast = 7;
    TextStyle beside = style;
    const bool isLarge = style.points >= kFromAfar;
    beside.points = std::max(kLeast, style.points * (isLarge ? 0.6 : 0.84));
    beside.isBold = isLarge;
    if (!isLarge && style.role != look::Role::DemoBand) {
        beside.role = look::Role::SoftInk;
    }
    return beside;
}

std::vector<TextItem> TypeSetter::set(const QString& text, const TextStyle& style, double width) const {
    const auto at = text.indexOf(kPartsLanguages);
    if (at < 0) {
        return setOne(text, style, width);
    }
    auto lines = setOne(text.left(at), style, width);
    const TextStyle second = besideStyle(style);
    for (TextItem& line : setOne(text.mid(at + 1), second, width)) {
        line.height = second.lineHeight();
        lines.push_back(std::move(line));
    }
    return lines;
}

std::vector<TextItem> TypeSetter::setOne(const QString& text, const TextStyle& style, double width) const {
    if (text.isEmpty()) {
        return {};
    }
    note(text);
    if (!text.contains(QChar(QChar::LineSeparator)) || readsFromTheRight(text)) {
        return setPiece(text, style, width);
    }
    // Between breaks lines do not depend on each other, and letters to many have most of them in common.
    std::vector<TextItem> lines;
    for (const QString& piece : text.split(QChar(QChar::LineSeparator))) {
        for (TextItem& line : setPiece(piece.isEmpty() ? QStringLiteral(" ") : piece, style, width)) {
            lines.push_back(std::move(line));
        }
    }
    return lines;
}

std::vector<TextItem> TypeSetter::setPiece(const QString& text, const TextStyle& style, double width) const {
    const SetKey key{text, style, width};
    if (const auto* known = SetTexts::ofThread().lines(key)) {
        return *known;
    }
    auto lines = shaped(text, style, width);
    SetTexts::ofThread().keepLines(key, lines);
    return lines;
}

double TypeSetter::widthOf(const QString& text, const TextStyle& style) const {
    if (const auto at = text.indexOf(kPartsLanguages); at >= 0) {
        return std::max(widthOf(text.left(at), style), widthOf(text.mid(at + 1), besideStyle(style)));
    }
    const SetKey key{text, style, 0};
    if (const auto known = SetTexts::ofThread().width(key)) {
        return *known;
    }
    const double width = shapedWidth(text, style);
    SetTexts::ofThread().keepWidth(key, width);
    return width;
}

double TypeSetter::longestWord(const QString& text, const TextStyle& style) const {
    if (const auto at = text.indexOf(kPartsLanguages); at >= 0) {
        return std::max(longestWord(text.left(at), style), longestWord(text.mid(at + 1), besideStyle(style)));
    }
    double longest = 0;
    QString spaced = text;
    spaced.replace(QChar(QChar::LineSeparator), u' ');
    const QStringList words = spaced.split(u' ', Qt::SkipEmptyParts);
    // Only the words with the most letters can be the widest by enough to matter.
    qsizetype most = 0;
    for (const QString& word : words) {
        most = std::max(most, word.size());
    }
    for (const QString& word : words) {
        if (word.size() * 2 > most) {
            longest = std::max(longest, widthOf(word, style));
        }
    }
    return longest;
}

QString TypeSetter::missingLetters() const {
    const QRawFont bundled = QRawFont::fromFont(fontOf(styles::kValue));
    QList<char32_t> missing;
    for (const char32_t letter : m_met) {
        if (!bundled.supportsCharacter(static_cast<quint32>(letter)) && isMissing(letter)) {
            missing.append(letter);
        }
    }
    std::sort(missing.begin(), missing.end());
    return QString::fromUcs4(missing.constData(), missing.size());
}

void alignRight(TextItem& line, double width) {
    const double by = width - line.box.right();
    line.origin.rx() += by;
    line.box.translate(by, 0);
}

void centre(TextItem& line, double width) {
    const double by = (width - line.box.width()) / 2 - line.box.left();
    line.origin.rx() += by;
    line.box.translate(by, 0);
}

}  // namespace hearth::ui::paper
