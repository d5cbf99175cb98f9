// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/kit.h"
#include "ui/shell/place.h"

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

/// The form of one row of the register: fields in columns, each kept when it is committed.
namespace hearth::ui::shell {

/// What is odd about a postcode; empty for nothing. The demonstration's are none on purpose.
[[nodiscard]] QString postcodeDoubt(const Context& context, const std::string& typed);

/// What does not depend on the row's type.
class RegisterFormBase : public QWidget {
  public:
    /// What to offer for what was typed so far.
    using Suggest = std::function<QStringList(const QString& typed)>;

    /// The field of that name, null for none.
    [[nodiscard]] input::Editor* field(const char* name) const;
    [[nodiscard]] input::Editor* first() const { return m_first; }
    /// To the field of that name; without one, to the first.
    void takeFocus(const char* name = nullptr);
    void breakRow() { m_fields->breakRow(); }
    /// Offers what was used before, as a list below the field; nothing is taken without being chosen.
    static void suggest(input::Editor* editor, Suggest ask);

  protected:
    /// `nameContext` goes before the accessible names where several such forms stand in one window.
    RegisterFormBase(const Context& context, int columns, const QString& nameContext, QWidget* parent);
    input::Editor* finish(input::Editor* editor, const QString& label, const char* name, int span);
    [[nodiscard]] Fields* fields() const { return m_fields; }
    [[nodiscard]] const Context& context() const { return m_context; }
    [[nodiscard]] calendar::Date today() const { return m_context.clock.today("Europe/London"); }

  private:
    Context m_context;
    QString m_nameContext;
    Fields* m_fields;
    input::Editor* m_first = nullptr;
};

/// A form for `Value`, which has an `id` and which Store::save() takes, or for the firm. A new one (its id is
/// null) is made with the first field that is kept.
template <class Value>
class RegisterForm : public RegisterFormBase {
  public:
    template <class Part>
    using Of = std::function<Part&(Value&)>;  // a pointer to a member is one
    using Change = std::function<void(Value&)>;
    /// A sentence on what is odd about the row as it stands, for one field; empty: nothing.
    using Check = std::function<QString(const Value&)>;

    RegisterForm(const Context& context, int columns, const QString& nameContext, QWidget* parent)
        : RegisterFormBase(context, columns, nameContext, parent) {}

    void show(const Value& value) {
        m_value = value;
        for (const auto& fill : m_fills) {
            fill();
        }
    }
    [[nodiscard]] const Value& value() const { return m_value; }
    /// Called with each row that was kept.
    void whenKept(std::function<void(const Value&)> then) { m_then = std::move(then); }

    input::Editor* addText(const QString& label, const char* name, Of<std::string> field, int span = 1) {
        return addTextIn(input::makeTextEditor(fields()), label, name, std::move(field), span);
    }
    input::Editor* addLongText(const QString& label, const char* name, int lines, Of<std::string> field,
                               int span) {
        return addTextIn(input::makeLongTextEditor(fields(), lines), label, name, std::move(field), span);
    }
    /// One of some codes, where the register keeps the code itself.
    input::Editor* addCodeText(const QString& label, const char* name,
                               const std::vector<input::ChoiceItem>& choices, Of<std::string> field) {
        return addTextIn(input::makeListEditor(fields(), choices), label, name, std::move(field), 1);
    }
    input::Editor* addTyped(const QString& label, const char* name, quantity::UnitFamily family,
                            Of<quantity::Typed> field) {
        auto* editor = finish(input::makeQuantityEditor(fields(), family), label, name, 1);
        keepOnCommit(editor, context().words, [this, editor, field](const QString&) {
            const quantity::Typed typed = typedIn(editor);
            const auto kept = keep([&](Value& value) { field(value) = typed; });
            // Kept to the letter in any case; what can't be read as a number is said.
            return kept ? readable(typed) : kept;
        });
        m_fills.push_back([this, editor, field] { showTyped(editor, field(m_value), context().words); });
        return editor;
    }
    input::Editor* addDate(const QString& label, const char* name, std::function<DateSlot(Value&)> slot) {
        auto* editor = finish(input::makeDateEditor(fields()), label, name, 1);
        keepOnCommit(editor, context().words, [this, slot](const QString& text) -> Result<void> {
            Result<void> good;
            const auto kept = keep([&](Value& value) { good = takeDate(text, today(), slot(value)); });
            return kept ? good : kept;
        });
        m_fills.push_back(
            [this, editor, slot] { showDate(editor, slot(m_value), today(), context().words); });
        return editor;
    }
    /// A date of which only the day is kept: what can't be read as one stays in the field alone.
    input::Editor* addDay(const QString& label, const char* name, Of<std::optional<calendar::Date>> field) {
        auto* editor = finish(input::makeDateEditor(fields()), label, name, 1);
        keepOnCommit(editor, context().words, [this, field](const QString& text) -> Result<void> {
            const auto date = dateTyped(text, today());
            return date ? keep([&](Value& value) { field(value) = *date; })
                        : Result<void>(tl::unexpected<Error>(date.error()));
        });
        m_fills.push_back([this, editor, field] {
            const auto& date = field(m_value);
            editor->setText(date ? words::qstring(calendar::isoText(*date)) : QString());
            editor->setProblem({});
        });
        return editor;
    }
    enum class As { Row, List };
    /// One of an enumeration: `from` reads its code.
    template <class Enumeration>
    input::Editor* addChoice(const QString& label, const char* name, As as,
                             const std::vector<input::ChoiceItem>& choices, Of<Enumeration> field,
                             std::optional<Enumeration> (*from)(std::string_view),
                             std::string_view (*codeOf)(Enumeration), int span = 1) {
        auto* editor = finish(as == As::Row ? input::makeChoiceEditor(fields(), choices)
                                            : input::makeListEditor(fields(), choices),
                              label, name, span);
        keepOnCommit(editor, context().words, [this, field, from](const QString& code) {
            return keep(
                [&](Value& value) { field(value) = from(code.toStdString()).value_or(field(value)); });
        });
        m_fills.push_back([this, editor, field, codeOf] { editor->setText(coded(codeOf(field(m_value)))); });
        return editor;
    }
    /// Says below the field what is odd; what was typed is kept all the same. After the fields are added.
    void check(input::Editor* editor, Check odd) {
        const auto say = [this, editor, odd = std::move(odd)] {
            if (const QString sentence = odd(m_value); !sentence.isEmpty()) {
                editor->setProblem(sentence);
            }
        };
        QObject::connect(editor, &input::Editor::committed, editor, say);
        m_fills.push_back(say);
    }
    /// Changes the row and keeps it.
    Result<void> keep(const Change& change) {
        Value changed = m_value;
        change(changed);
        if (const auto kept = save(changed); !kept) {
            return kept;
        }
        m_value = changed;
        if (m_then) {
            m_then(m_value);
        }
        return {};
    }

  protected:
    /// Puts it into the store; gives a new one its id.
    virtual Result<void> save(Value& changed) {
        if constexpr (requires { changed.id; }) {
            if (changed.id.isNull()) {
                changed.id.bytes = context().store.newId();
            }
            return context().store.save(changed);
        } else {
            return context().store.saveFirm(changed);
        }
    }

  private:
    input::Editor* addTextIn(input::Editor* editor, const QString& label, const char* name,
                             Of<std::string> field, int span) {
        finish(editor, label, name, span);
        keepOnCommit(editor, context().words, [this, field](const QString& text) {
            return keep([&](Value& value) { field(value) = text.trimmed().toStdString(); });
        });
        m_fills.push_back([this, editor, field = std::move(field)] {
            editor->setText(words::qstring(field(m_value)));
            editor->setProblem({});
        });
        return editor;
    }

    Value m_value{};
    std::vector<std::function<void()>> m_fills;
    std::function<void(const Value&)> m_then;
};

}  // namespace hearth::ui::shell
