// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/base/result.h"
#include "core/calendar/civil_date.h"
#include "core/quantity/typed.h"
#include "ui/input/editor.h"
#include "ui/look/look.h"
#include "ui/shell/fields.h"
#include "ui/words/words.h"

#include <QFont>
#include <QKeyEvent>
#include <QKeySequence>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>
#include <QWidget>

#include <functional>
#include <optional>
#include <string_view>
#include <vector>

/// The pieces that pages are built from: text by role, buttons that show their key, the sheet on its desk,
/// fields in a grid. All of them read the scheme when they paint, so that a change of the palette needs no
/// rebuilding.
namespace hearth::ui::shell {

/// The scheme in use (see look).
[[nodiscard]] inline look::Scheme currentScheme() {
    return look::schemeInUse();
}

/// The body's type, strong: for what is said with weight and for what is chosen.
[[nodiscard]] QFont strongFont();

[[nodiscard]] inline bool isEnter(const QKeyEvent& event) {
    return event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter;
}

/// A stable code as text for an editor.
[[nodiscard]] QString coded(std::string_view code);

/// The civil day of an instant where the firm works: "25 Nov 2026".
[[nodiscard]] QString dayOf(const words::Words& words, Instant instant);

/// A date as typed; nothing for an empty field. Errors: those of calendar::parseDate.
[[nodiscard]] Result<std::optional<calendar::Date>> dateTyped(const QString& text, calendar::Date today);

/// A date and what was typed for it where that is none: one of the two is empty.
struct DateSlot {
    std::optional<calendar::Date>& date;
    std::string& asTyped;
};
/// Puts what was typed into one of them. The error says why it is no date; it was kept nevertheless.
[[nodiscard]] Result<void> takeDate(const QString& text, calendar::Date today, const DateSlot& slot);
/// Shows one, with what is wrong with it.
void showDate(input::Editor* editor, const DateSlot& slot, calendar::Date today, const words::Words& words);

/// A number as typed with its unit, kept to the letter; `value()` says whether it can be read.
[[nodiscard]] quantity::Typed typedIn(const input::Editor* editor);
/// Shows one, with what is wrong with it.
void showTyped(input::Editor* editor, const quantity::Typed& typed, const words::Words& words);
/// Nothing wrong for an empty field and for a number that can be read.
[[nodiscard]] Result<void> readable(const quantity::Typed& typed);

/// A line or paragraph in a type and an ink; wraps where it is asked to.
class Text : public QLabel {
  public:
    Text(const QString& text, look::TypeRole type, look::Role ink, QWidget* parent);
    void setInk(look::Role ink);

  protected:
    void changeEvent(QEvent* event) override;

  private:
    void applyInk();
    look::Role m_ink;
    bool m_applying = false;
};

[[nodiscard]] Text* titleText(const QString& text, QWidget* parent);
[[nodiscard]] Text* headingText(const QString& text, QWidget* parent);
/// Wraps.
[[nodiscard]] Text* bodyText(const QString& text, QWidget* parent);
/// Small, soft, wraps.
[[nodiscard]] Text* softText(const QString& text, QWidget* parent);

/// A paragraph that is filled in later, found by its name. Wraps.
[[nodiscard]] Text* namedText(const char* name, look::TypeRole type, look::Role ink, QWidget* parent);

enum class ButtonKind { Plain, Primary, Danger, Quiet };

/// A button with its key beside its words. Enter and Space press it.
class KeyButton : public QPushButton {
    Q_OBJECT
  public:
    KeyButton(const QString& text, const QKeySequence& key, ButtonKind kind, QWidget* parent);
    KeyButton(const QString& text, ButtonKind kind, QWidget* parent) : KeyButton(text, {}, kind, parent) {}
    /// Changes the words and keeps the key.
    void setWords(const QString& text);
    /// Shows a key that somebody else listens to.
    void showKey(const QString& key);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

  protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

  private:
    [[nodiscard]] QString keyText() const;
    [[nodiscard]] int pad() const;
    QKeySequence m_key;
    QString m_shownKey;
    ButtonKind m_kind;
};

/// A sheet of paper on the desk. Scrolls to whatever takes the focus; is no stop of the Tab key itself.
class Sheet : public QScrollArea {
    Q_OBJECT
    Q_DISABLE_COPY_MOVE(Sheet)
  public:
    explicit Sheet(QWidget* parent);
    ~Sheet() override;
    /// Where the page's lines are put, from the top.
    [[nodiscard]] QVBoxLayout* lines() const { return m_lines; }

  private:
    void follow(QWidget* focus);
    QVBoxLayout* m_lines = nullptr;
};

/// A hairline between parts of a sheet.
[[nodiscard]] QWidget* hairline(QWidget* parent);

/// A place of two: what to choose from at the left on the desk, the sheet of what is chosen at the right.
void besideSheet(QWidget* place, const std::vector<QWidget*>& left, QWidget* sheet);

/// Keeps a field when it is committed. What `keep` can't use stays in the field as typed, with the reason
/// below it.
void keepOnCommit(input::Editor* editor, const words::Words& words,
                  std::function<Result<void>(const QString&)> keep);

/// Commits the field under the cursor if it lies in `place`; the cursor stays.
void commitField(QWidget* place);

/// Puts the stops of the Tab key into the order in which the layouts hold them. After building or rebuilding
/// a page: otherwise what was made last comes last.
void orderTabs(QWidget* page);

/// Puts these stops of the Tab key, and no others, one after the other.
void chainTabs(const std::vector<QWidget*>& stops);

/// Puts the focus on a field once its page is laid out.
void focusOn(input::Editor* editor);

}  // namespace hearth::ui::shell
