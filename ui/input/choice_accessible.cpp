// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/input/choice_accessible.h"

#include "ui/input/choice_editors.h"
#include "ui/input/choice_field.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <QComboBox>

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

/// On Unix, Qt gives a box's value as its name too: nobody would hear what is being chosen.
class ListAccessible : public QAccessibleWidget {
  public:
    explicit ListAccessible(QComboBox* box) : QAccessibleWidget(box, QAccessible::ComboBox), m_box(box) {}

    [[nodiscard]] QString text(QAccessible::Text kind) const override {
        return kind == QAccessible::Value ? m_box->currentText() : QAccessibleWidget::text(kind);
    }
    [[nodiscard]] QStringList actionNames() const override {
        return QAccessibleWidget::actionNames() << pressAction();
    }
    void doAction(const QString& action) override {
        if (action == pressAction()) {
            m_box->showPopup();
            return;
        }
        QAccessibleWidget::doAction(action);
    }

  private:
    QComboBox* m_box;
};

QAccessibleInterface* make(const QString&, QObject* object) {
    if (auto* field = qobject_cast<ChoiceField*>(object)) {
        return new ChoiceAccessible(field);
    }
    auto* box = qobject_cast<QComboBox*>(object);
    const bool isOurs = box != nullptr && qobject_cast<ListEditor*>(box->parentWidget()) != nullptr;
    return isOurs ? new ListAccessible(box) : nullptr;
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
