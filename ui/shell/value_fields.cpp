// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/value_fields.h"

#include "core/rulebook/firm_value.h"
#include "core/rulebook/values.h"
#include "ui/shell/kit.h"

#include <QHBoxLayout>

namespace hearth::ui::shell {

using words::qstring;

namespace {

constexpr int kWidest = 180;

/// In words, what rulebook::faultOf found.
QString faultSentence(std::string_view fault) {
    if (fault == "not_positive") {
        return ValueFields::tr("This has to be more than nothing.");
    }
    if (fault == "range_reversed") {
        return ValueFields::tr("The least is above the most.");
    }
    if (fault == "unit") {
        return ValueFields::tr("This unit does not fit here.");
    }
    return ValueFields::tr("This can't be used as a value of this rule.");
}

}  // namespace

ValueFields::ValueFields(const words::Words& words, const QString& nameContext, QWidget* parent)
    : QWidget(parent), m_words(words), m_nameContext(nameContext), m_row(new QHBoxLayout(this)) {
    m_row->setContentsMargins(0, 0, 0, 0);
    m_row->setSpacing(2 * look::kGap);
    m_row->addStretch(1);
}

void ValueFields::add(const QString& label, quantity::UnitFamily family) {
    auto* editor = family == quantity::UnitFamily::None ? input::makeTextEditor(this)
                                                        : input::makeQuantityEditor(this, family);
    editor->setLabel(label, m_nameContext);
    editor->setObjectName(QStringLiteral("value%1").arg(m_editors.size()));
    editor->setMaximumWidth(kWidest);
    m_row->insertWidget(m_row->count() - 1, editor, 1, Qt::AlignTop);
    m_editors.push_back(editor);
}

void ValueFields::show(const rulebook::Entry& entry) {
    qDeleteAll(m_editors);
    m_editors.clear();
    m_rule = entry.key.rule;
    const auto family = rulebook::unitFamilyOf(m_rule);
    const bool isRange = rulebook::shapeOf(m_rule) == rulebook::ValueShape::Range;
    add(isRange ? tr("My copy says: least") : tr("My copy says"), family);
    if (isRange) {
        add(tr("My copy says: most"), family);
    }
    if (family != quantity::UnitFamily::None) {
        for (auto* editor : m_editors) {
            editor->setUnit(rulebook::usualUnitOf(m_rule));
        }
    }
    std::vector<std::pair<quantity::Decimal, quantity::UnitCode>> now;
    if (const auto figure = rulebook::figureOf(entry)) {
        now = {{figure->value, figure->unit}};
    } else if (const auto range = rulebook::rangeOf(entry)) {
        now = {{range->least, range->unit}, {range->most, range->unit}};
    }
    for (std::size_t i = 0; i < now.size() && i < m_editors.size(); ++i) {
        m_editors[i]->setText(qstring(now[i].first.text()));
        if (now[i].second != quantity::UnitCode::None) {
            m_editors[i]->setUnit(now[i].second);
        }
    }
}

void ValueFields::refuse(input::Editor* editor, const QString& sentence) {
    editor->setProblem(sentence);
    focusOn(editor);
}

std::optional<quantity::Figure> ValueFields::figureIn(input::Editor* editor) {
    const auto value = quantity::Decimal::parse(editor->text().toStdString());
    if (!value) {
        refuse(editor, m_words.error(value.error()));
        return std::nullopt;
    }
    editor->setProblem({});
    return quantity::Figure{*value, editor->unit()};
}

std::optional<rulebook::Value> ValueFields::whole() {
    const auto first = figureIn(m_editors.front());
    if (!first || m_editors.size() == 1) {
        return first ? std::optional<rulebook::Value>(*first) : std::nullopt;
    }
    const auto second = figureIn(m_editors.back());
    if (!second) {
        return std::nullopt;
    }
    if (second->unit != first->unit) {
        refuse(m_editors.back(), tr("Both ends need the same unit."));
        return std::nullopt;
    }
    return rulebook::Range{first->value, second->value, first->unit};
}

std::optional<rulebook::Value> ValueFields::value() {
    if (m_editors.empty()) {
        return std::nullopt;
    }
    const auto typed = whole();
    if (!typed) {
        return std::nullopt;
    }
    if (const auto fault = rulebook::faultOf(m_rule, *typed)) {
        refuse(m_editors.back(), faultSentence(*fault));
        return std::nullopt;
    }
    return typed;
}

}  // namespace hearth::ui::shell
