// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/input/quantity_editor.h"

#include "core/quantity/decimal.h"
#include "core/quantity/typed.h"
#include "ui/look/look.h"

#include <QAction>
#include <QKeyEvent>
#include <QLabel>
#include <QMenu>

namespace hearth::ui::input {

namespace {

QString symbolOf(quantity::UnitCode unit) {
    const std::string_view symbol = quantity::unitSymbol(unit);
    return QString::fromUtf8(symbol.data(), static_cast<qsizetype>(symbol.size()));
}

bool asksForUnits(const QKeyEvent& event) {
    return event.key() == Qt::Key_Down && event.modifiers().testFlag(Qt::AltModifier);
}

}  // namespace

QuantityEditor::QuantityEditor(QWidget* parent, quantity::UnitFamily family)
    : LineEditor(parent), m_family(family), m_unitLabel(new QLabel(line())) {
    m_unitLabel->setProperty("ink", QStringLiteral("soft"));
    m_unitLabel->setFont(look::font(look::TypeRole::Small));
    m_unitLabel->setTextFormat(Qt::PlainText);
    m_unitLabel->setAttribute(Qt::WA_TransparentForMouseEvents);
    line()->setAlignment(Qt::AlignRight);
    line()->setMinimumWidth(96);
    const auto units = quantity::unitsOf(family);
    setUnit(units.empty() ? quantity::UnitCode::None : units.front());
    markCommitted();
}

void QuantityEditor::setUnit(quantity::UnitCode unit) {
    m_unit = unit;
    m_unitLabel->setText(symbolOf(unit));
    placeUnit();
    refreshNames();
}

void QuantityEditor::setReadOnly(bool readOnly) {
    LineEditor::setReadOnly(readOnly);
    refreshNames();
}

void QuantityEditor::placeUnit() {
    const QSize size = m_unitLabel->sizeHint();
    const bool hasUnit = m_unit != quantity::UnitCode::None;
    line()->setTextMargins(0, 0, hasUnit ? size.width() + look::kGap : 0, 0);
    m_unitLabel->setVisible(hasUnit);
    m_unitLabel->setGeometry(line()->width() - size.width() - 9, (line()->height() - size.height()) / 2,
                             size.width(), size.height());
}

void QuantityEditor::settle() {
    const std::string typed = text().toStdString();
    if (m_family == quantity::UnitFamily::None || quantity::Decimal::parse(typed)) {
        return;
    }
    const auto parts = quantity::parseTyped(typed, m_family);
    if (parts) {
        showText(QString::fromStdString(parts->text));
        setUnit(parts->unit);
    }
}

QString QuantityEditor::unitName() const {
    return symbolOf(m_unit);
}

QString QuantityEditor::hint() const {
    const bool hasChoice = quantity::unitsOf(m_family).size() > 1 && !line()->isReadOnly();
    return hasChoice ? tr("Alt+Down chooses another unit.") : QString();
}

void QuantityEditor::offerUnits() {
    auto* menu = new QMenu(this);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    menu->setAccessibleName(tr("Units"));
    for (const quantity::UnitCode unit : quantity::unitsOf(m_family)) {
        QAction* action = menu->addAction(symbolOf(unit));
        action->setCheckable(true);
        action->setChecked(unit == m_unit);
        connect(action, &QAction::triggered, this, [this, unit] {
            setUnit(unit);
            commit();
        });
        if (unit == m_unit) {
            menu->setActiveAction(action);
        }
    }
    menu->popup(line()->mapToGlobal(QPoint(0, line()->height())));
}

bool QuantityEditor::eventFilter(QObject* watched, QEvent* event) {
    if (watched == line()) {
        if (event->type() == QEvent::Resize) {
            placeUnit();
        }
        const bool canChoose = !line()->isReadOnly() && quantity::unitsOf(m_family).size() > 1;
        if (event->type() == QEvent::KeyPress && asksForUnits(*static_cast<QKeyEvent*>(event)) && canChoose) {
            offerUnits();
            return true;
        }
    }
    return LineEditor::eventFilter(watched, event);
}

Editor* makeQuantityEditor(QWidget* parent, quantity::UnitFamily family) {
    return new QuantityEditor(parent, family);
}

}  // namespace hearth::ui::input
