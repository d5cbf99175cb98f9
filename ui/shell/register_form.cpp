// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/register_form.h"

#include "ui/words/kept_words.h"

#include <QCompleter>
#include <QLineEdit>
#include <QStringListModel>

namespace hearth::ui::shell {

QString postcodeDoubt(const Context& context, const std::string& typed) {
    const auto firm = context.store.firm();
    const bool isDemonstration = firm && firm->demonstration;
    return isDemonstration ? QString() : words::doubt(context.words, reg::doubtOfPostcode(typed));
}

RegisterFormBase::RegisterFormBase(const Context& context, int columns, const QString& nameContext,
                                   QWidget* parent)
    : QWidget(parent), m_context(context), m_nameContext(nameContext), m_fields(new Fields(columns, this)) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(m_fields);
}

input::Editor* RegisterFormBase::finish(input::Editor* editor, const QString& label, const char* name,
                                        int span) {
    editor->setLabel(label, m_nameContext);
    editor->setObjectName(QString::fromLatin1(name));
    editor->setReadOnly(m_context.store.isReadOnly());
    m_fields->add(editor, span);
    if (m_first == nullptr) {
        m_first = editor;
    }
    return editor;
}

input::Editor* RegisterFormBase::field(const char* name) const {
    return m_fields->findChild<input::Editor*>(QString::fromLatin1(name));
}

void RegisterFormBase::takeFocus(const char* name) {
    if (auto* editor = name == nullptr ? m_first : field(name)) {
        focusOn(editor);
    }
}

void RegisterFormBase::suggest(input::Editor* editor, Suggest ask) {
    auto* line = qobject_cast<QLineEdit*>(editor->focusTarget());
    if (line == nullptr) {
        return;
    }
    auto* offered = new QStringListModel(editor);
    auto* completer = new QCompleter(offered, editor);
    completer->setCaseSensitivity(Qt::CaseInsensitive);
    completer->setFilterMode(Qt::MatchContains);
    line->setCompleter(completer);
    connect(editor, &input::Editor::edited, offered, [editor, offered, ask = std::move(ask)] {
        const QString typed = editor->text().trimmed();
        if (!typed.isEmpty()) {
            offered->setStringList(ask(typed));
        }
    });
}

}  // namespace hearth::ui::shell
