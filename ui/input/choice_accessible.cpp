// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/input/choice_accessible.h"

#include "ui/input/choice_field.h"

#include <QAccessible>
#include <QAccessibleWidget>

namespace hearth::ui::input {

namespace {

class ChoiceAccessible : public QAccessibleWidget {
  public:
    explicit ChoiceAccessible(ChoiceField* field)
        : QAccessibleWidget(field, QAccessible::ComboBox), m_field(field) {}

    [[nodiscard]] QString text(QAccessible::Text kind) const override {
        return kind == QAccessible::Value ? m_field->chosenLabel() : QAccessibleWidget::text(kind);
    }

  private:
    ChoiceField* m_field;
};

QAccessibleInterface* make(const QString&, QObject* object) {
    auto* field = qobject_cast<ChoiceField*>(object);
    return field != nullptr ? new ChoiceAccessible(field) : nullptr;
}

}  // namespace

void installChoiceAccessible() {
    static const bool isInstalled = [] {
        QAccessible::installFactory(&make);
        return true;
    }();
    Q_UNUSED(isInstalled)
}

}  // namespace hearth::ui::input
