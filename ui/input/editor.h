// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/civil_date.h"
#include "core/quantity/units.h"

#include <QString>
#include <QTime>
#include <QWidget>

#include <functional>
#include <vector>

/// Editors: one line of a form each. What all of them hold to:
/// - anything typed is kept; what can't be used is marked, said below the field and in the accessible
/// description;
/// - committed() comes when the field is left or Enter is pressed, and only if the text (or a number's unit)
/// changed; a choice's
///   letter or click commits at once, since it is whole;
/// - Enter goes to the next field (in a text area Shift+Enter starts a line), Escape brings back what was
/// there before;
///   Ctrl+Enter is left to the window; the wheel never changes a value; comma and point both work;
/// - the accessible name is the label with its unit.
namespace hearth::ui::input {

class Editor : public QWidget {
    Q_OBJECT
  public:
    explicit Editor(QWidget* parent = nullptr) : QWidget(parent) {}

    /// What was typed (a choice: its code; a date: ISO once it can be read; a time: "09:46"; empty: nothing).
    [[nodiscard]] virtual QString text() const = 0;
    /// Shows a value without emitting anything.
    virtual void setText(const QString& text) = 0;
    [[nodiscard]] virtual quantity::UnitCode unit() const { return quantity::UnitCode::None; }
    virtual void setUnit(quantity::UnitCode) {}
    /// Label above the field; also the accessible name (with the unit). `context` is put before it in the
    /// accessible name where the same label stands twice in a window ("Let-by, start"), so that names are
    /// unique.
    virtual void setLabel(const QString& label, const QString& context = {}) = 0;
    /// Says below the field what is wrong with the text; empty: nothing is.
    virtual void setProblem(const QString& sentence) = 0;
    /// The widget that takes the focus.
    [[nodiscard]] virtual QWidget* focusTarget() = 0;
    virtual void setReadOnly(bool readOnly) = 0;
    /// Shows in grey, while nothing is typed, what it was before; the Right key takes it. It is no value
    /// until then. Only lines of text and dates offer one; empty: nothing.
    virtual void suggest(const QString&) {}
    /// Commits what stands in the field now, as leaving it would; for closing a window or leaving a place.
    virtual void commit() {}

  Q_SIGNALS:
    void committed(const QString& text);
    /// A single key gave a whole answer, and it is committed: a form may go on to the next field.
    void answered();
    /// While typing, before it is committed (for live checks; nothing is stored on it).
    void edited();
};

struct ChoiceItem {
    QString code;
    QString label;  // its first letter (or the one after &) chooses it from the keyboard
};

/// Whose today and now a date's "t" and a time's "n" mean; where nothing is given, the computer's.
using Today = std::function<calendar::Date()>;
using Now = std::function<QTime()>;

/// One line of text; a number with its unit; a text area of several lines (Tab leaves it); a choice among a
/// few, shown as a row of buttons (keys: letters, arrows) or a list; yes / no; a date ("3/10", "t", "+7"); a
/// time of day ("946", "09:46", "n" for now).
[[nodiscard]] Editor* makeTextEditor(QWidget* parent);
[[nodiscard]] Editor* makeLongTextEditor(QWidget* parent, int lines);
/// Another unit of the family is taken by typing it ("8.3 inH2O") or from the list that Alt+Down opens; the
/// figure stays as typed.
[[nodiscard]] Editor* makeQuantityEditor(QWidget* parent, quantity::UnitFamily family);
[[nodiscard]] Editor* makeChoiceEditor(QWidget* parent, const std::vector<ChoiceItem>& choices);
/// The same where several may be chosen: a letter chooses one or takes it away. The text is their codes with
/// spaces between, in the order of the choices.
[[nodiscard]] Editor* makeSeveralEditor(QWidget* parent, const std::vector<ChoiceItem>& choices);
[[nodiscard]] Editor* makeListEditor(QWidget* parent, const std::vector<ChoiceItem>& choices);
/// A list that is long to read: what it holds is asked for when the field is entered, and when a code is to
/// be shown that it does not know. Until then it has `choices`.
using Offer = std::function<std::vector<ChoiceItem>()>;
[[nodiscard]] Editor* makeListEditor(QWidget* parent, const std::vector<ChoiceItem>& choices, Offer offer);
[[nodiscard]] Editor* makeDateEditor(QWidget* parent, Today today = {});
[[nodiscard]] Editor* makeTimeEditor(QWidget* parent, Now now = {});

}  // namespace hearth::ui::input
