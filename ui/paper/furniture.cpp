// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/furniture.h"

#include "core/record/language.h"
#include "core/record/pairing.h"
#include "ui/paper/square_code.h"
#include "ui/words/words.h"

#include <algorithm>

namespace hearth::ui::paper {

namespace {

constexpr double kBandHeight = 7;
constexpr double kBandGap = 3;
constexpr double kHeadRight = 52;  // width of the column with number, revision and page
constexpr double kHeadGap = 6;
constexpr double kLogoGap = 4;
constexpr double kBelowHead = 3.4;
constexpr double kAboveFoot = 3;
constexpr double kCodeSide = 20;
constexpr double kCodeGap = 5;     // more than the four modules of quiet zone that the code needs
constexpr double kProofText = 38;  // width of number and digest beside the code
constexpr double kProofWidth = kProofText + kCodeGap + kCodeSide + 5;
constexpr double kProofHeight = 21.5;
constexpr double kLetterMargin = 22;
constexpr int kMostPages = 88;  // only for measuring how wide the page line may become

/// 64 hexadecimal digits in groups of four, four to a line, so that two prints can be held against each
/// other.
QStringList digestLines(const QString& digest) {
    constexpr int kGroup = 4;
    constexpr int kGroupsInLine = 4;
    QStringList lines;
    QString line;
    for (qsizetype i = 0; i < digest.size(); i += kGroup) {
        if (i > 0 && i % (kGroup * kGroupsInLine) == 0) {
            lines << line;
            line.clear();
        }
        line += (line.isEmpty() ? QString() : QStringLiteral(" ")) + digest.mid(i, kGroup);
    }
    lines << line;
    return lines;
}

double heightOf(const TextItem& line, const TextStyle& style) {
    return line.height > 0 ? line.height : style.lineHeight();
}

double heightOf(const std::vector<TextItem>& lines, const TextStyle& style) {
    double height = 0;
    for (const TextItem& line : lines) {
        height += heightOf(line, style);
    }
    return height;
}

const char* stampOf(Stamp stamp) {
    switch (stamp) {
        case Stamp::Copy:
            return QT_TRANSLATE_NOOP("Words", "COPY");
        case Stamp::Superseded:
            return QT_TRANSLATE_NOOP("Words", "SUPERSEDED");
        case Stamp::Void:
            return QT_TRANSLATE_NOOP("Words", "VOID");
        case Stamp::None:
            break;
    }
    return nullptr;
}

}  // namespace

Sheet sheetOf(PaperSize size) {
    // ISO 216 A4; ANSI/ASME Y14.1 A ("Letter"), 8.5 x 11 in.
    return {size == PaperSize::A4 ? QSizeF(210, 297) : QSizeF(215.9, 279.4)};
}

bool isLetter(const record::Document& document) {
    return !document.blocks.empty() && std::holds_alternative<record::LetterHead>(document.blocks.front());
}

Sheet sheetFor(const record::Document& document, PaperSize size) {
    Sheet sheet = sheetOf(size);
    if (isLetter(document)) {
        // The left one is where an envelope's window begins.
        sheet.left = kLetterMargin;
        sheet.right = kLetterMargin;
    }
    return sheet;
}

Furniture::Furniture(const record::Document& document, const PageOptions& options, const TypeSetter& type,
                     const Sheet& sheet)
    : m_document(document), m_options(options), m_type(type), m_sheet(sheet), m_logo(headLogo(document)) {
    std::vector<Item> measured;
    const QString page = pageText(kMostPages - 1, kMostPages);
    const double top = putBand(measured);
    m_firstTop = putFirstHead(measured, top, page);
    m_runningTop = putRunningHead(measured, top, page);
    const auto foot = m_type.set(settable(m_document.caution), styles::kFoot, m_sheet.width());
    const double footHeight = 1.8 + heightOf(foot, styles::kFoot);
    m_footTop = m_sheet.size.height() - m_sheet.bottom - footHeight;
}

double Furniture::bodyTop(bool isFirst) const {
    return isFirst ? m_firstTop : m_runningTop;
}

double Furniture::bodyBottom() const {
    return m_footTop - kAboveFoot;
}

QString Furniture::pageText(int index, int count) const {
    QString text = settableInLine(m_document.pageWord);
    return text.replace(QStringLiteral("%1"), QString::number(index + 1))
        .replace(QStringLiteral("%2"), QString::number(count));
}

QString Furniture::revisionText() const {
    return settableInLine(m_document.revisionWord)
        .replace(QStringLiteral("%1"), QString::number(m_document.revision));
}

/// Number and revision; a blank has no revision.
QStringList Furniture::numberParts() const {
    QStringList parts;
    if (!m_document.number.empty()) {
        parts << settable(m_document.number);
        if (!m_document.revisionWord.empty()) {
            parts << revisionText();
        }
    }
    return parts;
}

QString Furniture::stampText() const {
    const char* stamp = stampOf(m_options.stamp);
    if (stamp == nullptr) {
        return {};
    }
    const std::string code = m_document.language;
    const QString first = words::Words(QString::fromStdString(code)).say(stamp);
    const auto beside = record::languageBeside(code);
    return beside.empty()
               ? first
               : settableInLine(record::pairedText(
                     first.toStdString(),
                     words::Words(QString::fromStdString(std::string(beside))).say(stamp).toStdString()));
}

double Furniture::put(std::vector<Item>& items, const QString& text, const TextStyle& style,
                      const QRectF& column, Side side) const {
    double y = column.top();
    for (TextItem& line : m_type.set(text, style, column.width())) {
        const double height = heightOf(line, style);
        if (side == Side::Right) {
            alignRight(line, column.width());
        }
        items.push_back(moved(std::move(line), {column.left(), y}));
        y += height;
    }
    return y;
}

/// Banner at the left, stamp at the right; either may be missing. Nothing at all: the head begins at the
/// margin.
double Furniture::putBand(std::vector<Item>& items) const {
    const QString banner = settable(m_document.banner);
    const QString stamp = stampText();
    if (banner.isEmpty() && stamp.isEmpty()) {
        return m_sheet.top;
    }
    double height = kBandHeight;
    double stampWidth = 0;
    if (!stamp.isEmpty()) {
        stampWidth = m_type.widthOf(stamp, styles::kStamp) + 8;
        const QRectF frame(m_sheet.size.width() - m_sheet.right - stampWidth, m_sheet.top, stampWidth,
                           kBandHeight);
        items.emplace_back(FrameItem{frame, 0.5, styles::kStamp.role});
        items.emplace_back(FrameItem{frame.adjusted(0.9, 0.9, -0.9, -0.9), 0.15, styles::kStamp.role});
        const double down = (kBandHeight - styles::kStamp.lineHeight()) / 2;
        put(items, stamp, styles::kStamp, QRectF(frame.left() + 4, frame.top() + down, stampWidth, 0));
    }
    if (!banner.isEmpty()) {
        const double width = m_sheet.width() - (stampWidth > 0 ? stampWidth + 4 : 0);
        const QRectF inner(m_sheet.left + 4, m_sheet.top, width - 8, 0);
        std::vector<TextItem> lines = m_type.set(banner, styles::kBanner, inner.width());
        const double text = heightOf(lines, styles::kBanner);
        height = std::max(height, text + 3);
        items.emplace_back(
            FrameItem{QRectF(m_sheet.left, m_sheet.top, width, height), 0.4, styles::kBanner.role});
        double y = m_sheet.top + (height - text) / 2;
        for (TextItem& line : lines) {
            const double down = heightOf(line, styles::kBanner);
            centre(line, inner.width());
            items.push_back(moved(std::move(line), {inner.left(), y}));
            y += down;
        }
    }
    return m_sheet.top + height + kBandGap;
}

/// Who writes: the name large, address and how to be reached below it. A letter's number and page are small
/// print.
double Furniture::putLetterHead(std::vector<Item>& items, double y, const QString& page) const {
    const auto& letter = std::get<record::LetterHead>(m_document.blocks.front());
    double x = m_sheet.left;
    double logoBottom = y;
    if (!m_logo.image.isNull()) {
        items.emplace_back(PictureItem{QRectF({x, y}, m_logo.size), m_logo.image});
        logoBottom = y + m_logo.size.height();
        x += m_logo.size.width() + kLogoGap;
    }
    const double right = m_sheet.size.width() - m_sheet.right;
    const QRectF left(x, y, right - x - kHeadRight - kHeadGap, 0);
    double leftY = y;
    bool isName = true;
    for (const std::string& line : letter.sender) {
        leftY = put(items, settable(line), isName ? styles::kTitle : styles::kDetail,
                    QRectF(left.left(), leftY, left.width(), 0));
        isName = false;
    }
    leftY = put(items, settable(m_document.supersedes), styles::kHeadStrong,
                QRectF(left.left(), leftY + 0.4, left.width(), 0));
    const QStringList which = numberParts();
    const double down = styles::kTitle.baseline() - styles::kHeadNote.baseline();
    QRectF column(right - kHeadRight, y + down, kHeadRight, 0);
    column.moveTop(put(items, which.join(QStringLiteral(" · ")), styles::kHeadNote, column, Side::Right));
    const double rightY = put(items, page, styles::kHeadNote, column, Side::Right);
    const double ruleY = std::max({leftY, rightY, logoBottom}) + 1.6;
    items.emplace_back(RuleItem{{m_sheet.left, ruleY}, m_sheet.width(), 0.45, look::Role::Ink});
    return ruleY + kBelowHead;
}

double Furniture::putFirstHead(std::vector<Item>& items, double y, const QString& page) const {
    if (isLetter(m_document)) {
        return putLetterHead(items, y, page);
    }
    const QRectF whole(m_sheet.left, y, m_sheet.width(), 0);
    double logoBottom = y;
    double beside = 0;  // what the logo takes from the text's column
    if (!m_logo.image.isNull()) {
        items.emplace_back(PictureItem{QRectF({whole.left(), y}, m_logo.size), m_logo.image});
        logoBottom = y + m_logo.size.height();
        beside = m_logo.size.width() + kLogoGap;
    }
    const QRectF left(whole.left() + beside, y, whole.width() - beside - kHeadRight - kHeadGap, 0);
    const QRectF right(whole.right() - kHeadRight, y, kHeadRight, 0);
    const auto below = [](const QRectF& column, double top) {
        return QRectF(column.left(), top, column.width(), 0);
    };

    double leftY = put(items, settable(m_document.firm), styles::kFirm, left) + 0.6;
    const double titleY = leftY;
    leftY = put(items, settable(m_document.title), styles::kTitle, below(left, leftY));
    leftY = put(items, settable(m_document.subtitle), styles::kHeadNote, below(left, leftY + 0.6));
    leftY = put(items, settable(m_document.supersedes), styles::kHeadStrong, below(left, leftY + 0.4));

    // The number stands on the title's line.
    const double numberDown = styles::kTitle.baseline() - styles::kNumber.baseline();
    const QString number = settable(m_document.number);
    double rightY = put(items, number, styles::kNumber, below(right, titleY + numberDown), Side::Right) + 0.4;
    QStringList which;
    for (const QString& part : {number.isEmpty() ? QString() : revisionText(), settable(m_document.issued)}) {
        if (!part.isEmpty()) {
            which << part;
        }
    }
    // What does not fit one line stands in one each.
    const QString line = which.join(QStringLiteral(" · "));
    const bool fits = m_type.widthOf(line, styles::kHeadNote) <= right.width();
    for (const QString& part : fits ? QStringList{line} : which) {
        rightY = put(items, part, styles::kHeadNote, below(right, rightY), Side::Right);
    }
    rightY = put(items, page, styles::kHeadNote, below(right, rightY), Side::Right);

    const double ruleY = std::max({leftY, rightY, logoBottom}) + 1.6;
    items.emplace_back(RuleItem{{whole.left(), ruleY}, whole.width(), 0.45, look::Role::Ink});
    return ruleY + kBelowHead;
}

double Furniture::putRunningHead(std::vector<Item>& items, double y, const QString& page) const {
    const QRectF whole(m_sheet.left, y, m_sheet.width(), 0);
    const QRectF left(whole.left(), y, whole.width() - kHeadRight - kHeadGap, 0);
    const QRectF right(whole.right() - kHeadRight, y, kHeadRight, 0);
    const QStringList which = numberParts();
    const double leftY = put(items, settable(m_document.title), styles::kRunningTitle, left);
    const double down = styles::kRunningTitle.baseline() - styles::kHeadStrong.baseline();
    double rightY = put(items, which.join(QStringLiteral(" · ")), styles::kHeadStrong,
                        right.translated(0, down), Side::Right);
    rightY = put(items, page, styles::kHeadNote, QRectF(right.left(), rightY, right.width(), 0), Side::Right);
    const double ruleY = std::max(leftY, rightY) + 1.6;
    items.emplace_back(RuleItem{{whole.left(), ruleY}, whole.width(), 0.25, look::Role::Ink});
    return ruleY + kBelowHead;
}

std::vector<Item> Furniture::head(int index, int count) const {
    std::vector<Item> items;
    const double top = putBand(items);
    const QString page = pageText(index, count);
    if (index == 0) {
        putFirstHead(items, top, page);
    } else {
        putRunningHead(items, top, page);
    }
    return items;
}

std::vector<Item> Furniture::foot() const {
    std::vector<Item> items;
    items.emplace_back(RuleItem{{m_sheet.left, m_footTop}, m_sheet.width(), 0.2, look::Role::Line});
    put(items, settable(m_document.caution), styles::kFoot,
        QRectF(m_sheet.left, m_footTop + 1.8, m_sheet.width(), 0));
    return items;
}

double Furniture::proofWidth() const {
    return m_options.digest.empty() ? 0 : kProofWidth;
}

double Furniture::proofHeight() const {
    return m_options.digest.empty() ? 0 : kProofHeight;
}

std::vector<Item> Furniture::proof(double top) const {
    std::vector<Item> items;
    if (m_options.digest.empty()) {
        return items;
    }
    const QString digest = settable(m_options.digest);
    const QString number = settable(m_document.number);
    const QString content = number + u' ' + QString::number(m_document.revision) + u' ' + digest;
    const SquareCode code = squareCode(content.toUtf8());
    const double codeLeft = m_sheet.size.width() - m_sheet.right - kCodeSide;
    if (code.size > 0) {
        items.emplace_back(CodeItem{{codeLeft, top}, kCodeSide / code.size, code.runs});
    }
    const auto word = record::parted(m_document.revisionWord).first;
    const QString revision =
        settable(std::string(word)).replace(QStringLiteral("%1"), QString::number(m_document.revision));
    QStringList lines{number + QStringLiteral(" · ") + revision, settableInLine(m_document.digestWord)};
    lines << digestLines(digest);
    QRectF column(codeLeft - kCodeGap - kProofText, top, kProofText, 0);
    bool isFirst = true;
    for (const QString& line : lines) {
        const double y = put(items, line, isFirst ? styles::kHeadStrong : styles::kFoot, column, Side::Right);
        column.moveTop(y);
        isFirst = false;
    }
    return items;
}

}  // namespace hearth::ui::paper
