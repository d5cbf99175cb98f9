// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/kit.h"

#include <QApplication>
#include <QEvent>
#include <QFontMetrics>
#include <QFrame>
#include <QPainter>
#include <QStyle>

#include <utility>
#include <vector>

namespace hearth::ui::shell {

namespace {

constexpr int kButtonHeight = 30;
constexpr int kSheetMargin = 3 * look::kGap;

/// The paper itself: ground and edge painted, so that no style sheet has to be parsed for it.
class Paper : public QWidget {
  public:
    using QWidget::QWidget;

  protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.fillRect(rect(), look::colour(look::Role::Sheet, currentScheme()));
        painter.setPen(look::colour(look::Role::SheetEdge, currentScheme()));
        painter.drawRect(rect().adjusted(0, 0, -1, -1));
    }
};

class Hairline : public QWidget {
  public:
    explicit Hairline(QWidget* parent) : QWidget(parent) { setFixedHeight(1 + 2 * look::kGap); }

  protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.fillRect(QRect(0, height() / 2, width(), 1), look::colour(look::Role::Line, currentScheme()));
    }
};

struct ButtonColours {
    QColor ground;
    QColor edge;
    QColor ink;
    QColor keyInk;
};

ButtonColours coloursOf(ButtonKind kind, const QPushButton& button) {
    using look::Role;
    const auto scheme = currentScheme();
    const auto at = [scheme](Role role) { return look::colour(role, scheme); };
    ButtonColours colours{at(Role::FieldGround), at(Role::FieldEdge), at(Role::Ink), at(Role::SoftInk)};
    if (kind == ButtonKind::Primary) {
        colours = {at(Role::Key), at(Role::Key), at(Role::OnKey), at(Role::OnKey)};
    } else if (kind == ButtonKind::Danger) {
        colours = {at(Role::Sheet), at(Role::Fail), at(Role::Fail), at(Role::Fail)};
    } else if (kind == ButtonKind::Quiet) {
        colours = {QColor(), QColor(), at(Role::Key), at(Role::SoftInk)};  // no ground, no edge
    }
    if (!button.isEnabled()) {
        const QColor edge = kind == ButtonKind::Quiet ? QColor() : at(Role::Line);
        colours = {QColor(), edge, at(Role::SoftInk), at(Role::SoftInk)};
    } else if (button.isDown() || (button.underMouse() && kind != ButtonKind::Primary)) {
        colours.ground = kind == ButtonKind::Primary ? colours.ground : at(Role::KeyGround);
    }
    return colours;
}

/// The style sheet's name of an ink; it outranks the palette wherever the application has set the sheet.
const char* inkName(look::Role ink) {
    switch (ink) {
        case look::Role::SoftInk:
            return "soft";
        case look::Role::Key:
            return "key";
        case look::Role::Pass:
            return "pass";
        case look::Role::Fail:
            return "fail";
        case look::Role::LookAgain:
            return "look_again";
        case look::Role::NoVerdict:
            return "no_verdict";
        default:
            return "";
    }
}

}  // namespace

QFont strongFont() {
    QFont font = look::font(look::TypeRole::Body);
    font.setWeight(QFont::Bold);
    return font;
}

QString coded(std::string_view code) {
    return QString::fromUtf8(code.data(), static_cast<qsizetype>(code.size()));
}

QString dayOf(const words::Words& words, Instant instant) {
    return words.shortDate(FixedClock(instant).today("Europe/London"));
}

Result<std::optional<calendar::Date>> dateTyped(const QString& text, calendar::Date today) {
    if (text.trimmed().isEmpty()) {
        return std::nullopt;
    }
    const auto date = calendar::parseDate(text.toStdString(), today);
    if (!date) {
        return tl::unexpected<Error>(date.error());
    }
    return std::optional(*date);
}

Result<void> takeDate(const QString& text, calendar::Date today, const DateSlot& slot) {
    const auto date = dateTyped(text, today);
    slot.date = date.value_or(std::nullopt);
    slot.asTyped = date ? std::string() : text.toStdString();
    return date ? Result<void>() : tl::unexpected<Error>(date.error());
}

void showDate(input::Editor* editor, const DateSlot& slot, calendar::Date today, const words::Words& words) {
    const QString typed = words::qstring(slot.asTyped);
    editor->setText(slot.date ? words::qstring(calendar::isoText(*slot.date)) : typed);
    const auto date = dateTyped(typed, today);
    editor->setProblem(date ? QString() : words.error(date.error()));
}

quantity::Typed typedIn(const input::Editor* editor) {
    const std::string text = editor->text().toStdString();
    return {text, text.empty() ? quantity::UnitCode::None : editor->unit()};
}

void showTyped(input::Editor* editor, const quantity::Typed& typed, const words::Words& words) {
    editor->setText(words::qstring(typed.text));
    if (typed.unit != quantity::UnitCode::None) {
        editor->setUnit(typed.unit);
    }
    const auto good = readable(typed);
    editor->setProblem(good ? QString() : words.error(good.error()));
}

Result<void> readable(const quantity::Typed& typed) {
    if (typed.text.empty()) {
        return {};
    }
    const auto value = typed.value();
    return value ? Result<void>() : tl::unexpected<Error>(value.error());
}

Text::Text(const QString& text, look::TypeRole type, look::Role ink, QWidget* parent)
    : QLabel(text, parent), m_ink(ink) {
    setFont(look::font(type));
    setTextFormat(Qt::PlainText);
    applyInk();
}

void Text::setInk(look::Role ink) {
    m_ink = ink;
    applyInk();
}

void Text::applyInk() {
    m_applying = true;
    setProperty("ink", QString::fromLatin1(inkName(m_ink)));
    QPalette inked = palette();
    inked.setColor(QPalette::WindowText, look::colour(m_ink, currentScheme()));
    setPalette(inked);
    if (testAttribute(Qt::WA_WState_Polished)) {
        style()->unpolish(this);
        style()->polish(this);
    }
    m_applying = false;
}

void Text::changeEvent(QEvent* event) {
    if (event->type() == QEvent::PaletteChange && !m_applying) {
        applyInk();
    }
    QLabel::changeEvent(event);
}

Text* titleText(const QString& text, QWidget* parent) {
    auto* title = new Text(text, look::TypeRole::Title, look::Role::Ink, parent);
    title->setWordWrap(true);
    return title;
}

Text* headingText(const QString& text, QWidget* parent) {
    return new Text(text, look::TypeRole::Heading, look::Role::Ink, parent);
}

Text* bodyText(const QString& text, QWidget* parent) {
    auto* body = new Text(text, look::TypeRole::Body, look::Role::Ink, parent);
    body->setWordWrap(true);
    return body;
}

Text* softText(const QString& text, QWidget* parent) {
    auto* soft = new Text(text, look::TypeRole::Small, look::Role::SoftInk, parent);
    soft->setWordWrap(true);
    return soft;
}

Text* namedText(const char* name, look::TypeRole type, look::Role ink, QWidget* parent) {
    auto* text = new Text({}, type, ink, parent);
    text->setObjectName(QLatin1String(name));
    text->setWordWrap(true);
    return text;
}

KeyButton::KeyButton(const QString& text, const QKeySequence& key, ButtonKind kind, QWidget* parent)
    : QPushButton(parent), m_key(key), m_kind(kind) {
    setFont(kind == ButtonKind::Primary ? strongFont() : look::font(look::TypeRole::Body));
    setAutoDefault(true);  // Enter presses it outside a dialog too
    setAttribute(Qt::WA_Hover);
    setWords(text);
}

void KeyButton::setWords(const QString& text) {
    setText(text);
    if (!m_key.isEmpty()) {
        setShortcut(m_key);  // setText() has taken it away
    }
    setAccessibleName(QString(text).remove(u'&'));
    setAccessibleDescription(keyText());
    updateGeometry();
}

void KeyButton::showKey(const QString& key) {
    m_shownKey = key;
    setAccessibleDescription(key);
    updateGeometry();
}

bool KeyButton::event(QEvent* event) {
    // At once. QAbstractButton shows itself pressed first and clicks a tenth of a second later, when the next
    // key may have gone elsewhere already.
    if (event->type() == QEvent::Shortcut && !static_cast<QShortcutEvent*>(event)->isAmbiguous()) {
        click();
        return true;
    }
    return QPushButton::event(event);
}

QString KeyButton::keyText() const {
    return m_key.isEmpty() ? m_shownKey : m_key.toString(QKeySequence::NativeText);
}

/// Quiet words stand nearly flush with the text above them.
int KeyButton::pad() const {
    return m_kind == ButtonKind::Quiet ? look::kGap / 2 + 2 : 2 * look::kGap;
}

QSize KeyButton::sizeHint() const {
    const QFontMetrics metrics(font());
    int width = metrics.horizontalAdvance(QString(text()).remove(u'&')) + 2 * pad();
    if (!keyText().isEmpty()) {
        width += QFontMetrics(look::font(look::TypeRole::Small)).horizontalAdvance(keyText()) + look::kGap;
    }
    return {width, qMax(kButtonHeight, metrics.height() + 2 * look::kGap)};
}

void KeyButton::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const ButtonColours colours = coloursOf(m_kind, *this);
    const QRectF box = QRectF(rect()).adjusted(1.5, 1.5, -1.5, -1.5);
    painter.setPen(colours.edge.isValid() ? QPen(colours.edge, 1) : QPen(Qt::NoPen));
    painter.setBrush(colours.ground.isValid() ? QBrush(colours.ground) : QBrush(Qt::NoBrush));
    painter.drawRoundedRect(box, 3, 3);
    if (hasFocus()) {
        painter.setPen(QPen(look::colour(look::Role::Focus, currentScheme()), 2));
        painter.setBrush(Qt::NoBrush);
        const double inset = m_kind == ButtonKind::Primary ? 2.5 : 0.0;
        if (inset > 0) {
            painter.setPen(QPen(colours.ink, 1.5));
        }
        painter.drawRoundedRect(box.adjusted(inset, inset, -inset, -inset), 3, 3);
    }
    const QRect words = rect().adjusted(pad(), 0, -pad(), 0);
    painter.setFont(font());
    painter.setPen(colours.ink);
    const Qt::Alignment alignment =
        keyText().isEmpty() ? Qt::Alignment(Qt::AlignCenter) : Qt::AlignVCenter | Qt::AlignLeft;
    painter.drawText(words, static_cast<int>(alignment) | Qt::TextShowMnemonic, text());
    painter.setFont(look::font(look::TypeRole::Small));
    painter.setPen(colours.keyInk);
    painter.drawText(words, Qt::AlignVCenter | Qt::AlignRight, keyText());
}

Sheet::Sheet(QWidget* parent) : QScrollArea(parent) {
    setFocusPolicy(Qt::NoFocus);
    setFrameShape(QFrame::NoFrame);
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* paper = new Paper;
    m_lines = new QVBoxLayout(paper);
    m_lines->setContentsMargins(kSheetMargin, kSheetMargin, kSheetMargin, kSheetMargin);
    m_lines->setSpacing(look::kGap);
    setWidget(paper);
    connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) { follow(now); });
}

Sheet::~Sheet() {
    // While its fields are being deleted the focus wanders, and there is nothing left to scroll.
    disconnect(qApp, nullptr, this, nullptr);
}

void Sheet::follow(QWidget* focus) {
    if (focus != nullptr && widget()->isAncestorOf(focus)) {
        ensureWidgetVisible(focus, 0, 8 * look::kGap);
    }
}

QWidget* hairline(QWidget* parent) {
    return new Hairline(parent);
}

void besideSheet(QWidget* place, const std::vector<QWidget*>& left, QWidget* sheet) {
    auto* row = new QHBoxLayout(place);
    row->setContentsMargins(2 * look::kGap, look::kGap, 2 * look::kGap, 0);
    row->setSpacing(2 * look::kGap);
    auto* column = new QVBoxLayout;
    column->setSpacing(look::kGap);
    for (QWidget* widget : left) {
        column->addWidget(widget);
    }
    row->addLayout(column, 2);
    row->addWidget(sheet, 5);
}

void keepOnCommit(input::Editor* editor, const words::Words& words,
                  std::function<Result<void>(const QString&)> keep) {
    QObject::connect(editor, &input::Editor::committed, editor,
                     [editor, &words, keep = std::move(keep)](const QString& text) {
                         const Result<void> kept = keep(text);
                         editor->setProblem(kept ? QString() : words.error(kept.error()));
                     });
}

void commitField(QWidget* place) {
    QWidget* at = QApplication::focusWidget();
    if (at == nullptr || !place->isAncestorOf(at)) {
        return;
    }
    for (; at != nullptr && at != place; at = at->parentWidget()) {
        if (auto* editor = qobject_cast<input::Editor*>(at)) {
            editor->commit();
            return;
        }
    }
}

namespace {

/// The outermost widget that the stop takes the focus for. Going forwards, Tab comes to that one and is led
/// on to the stop: moved without it, the stop is come to twice.
QWidget* wholeOf(QWidget* stop) {
    QWidget* whole = stop;
    for (QWidget* above = stop->parentWidget(); above != nullptr && above->focusProxy() == whole;
         above = above->parentWidget()) {
        whole = above;
    }
    return whole;
}

void collectStops(QWidget* widget, std::vector<QWidget*>& stops);

void collectStops(QLayout* layout, std::vector<QWidget*>& stops) {
    for (int i = 0; i < layout->count(); ++i) {
        QLayoutItem* item = layout->itemAt(i);
        if (item->widget() != nullptr) {
            collectStops(item->widget(), stops);
        } else if (item->layout() != nullptr) {
            collectStops(item->layout(), stops);
        }
    }
}

void collectStops(QWidget* widget, std::vector<QWidget*>& stops) {
    if ((widget->focusPolicy() & Qt::TabFocus) == Qt::TabFocus && widget->focusProxy() == nullptr) {
        stops.push_back(widget);
    }
    if (const auto* scroll = qobject_cast<QScrollArea*>(widget);
        scroll != nullptr && scroll->widget() != nullptr) {
        collectStops(scroll->widget(), stops);
    } else if (widget->layout() != nullptr) {
        collectStops(widget->layout(), stops);
    }
}

}  // namespace

void orderTabs(QWidget* page) {
    std::vector<QWidget*> stops;
    collectStops(page, stops);
    chainTabs(stops);
}

void chainTabs(const std::vector<QWidget*>& stops) {
    for (QWidget* stop : stops) {
        if (const auto* area = qobject_cast<QAbstractScrollArea*>(stop)) {
            // It would be left behind and lead Shift+Tab back here from there. A click reaches the area
            // anyway.
            area->viewport()->setFocusProxy(nullptr);
        }
    }
    for (std::size_t i = 1; i < stops.size(); ++i) {
        QWidget::setTabOrder(wholeOf(stops[i - 1]), wholeOf(stops[i]));
    }
}

void focusOn(input::Editor* editor) {
    if (editor != nullptr) {
        editor->focusTarget()->setFocus(Qt::OtherFocusReason);
    }
}

}  // namespace hearth::ui::shell
