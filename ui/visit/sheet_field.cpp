// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/sheet_field.h"

#include "ui/input/item_editor.h"

#include <algorithm>

namespace hearth::ui::visit {

using input::ChoiceItem;
using reg::Item;

namespace {

bool suits(Item item, reg::InstrumentKind kind) {
    return item == Item::VisitAnalyser
               ? kind == reg::InstrumentKind::CombustionAnalyser
               : kind == reg::InstrumentKind::ElectronicGauge || kind == reg::InstrumentKind::WaterGauge;
}

/// The firm's instruments of the kind that an item asks for; another only where it was chosen before.
std::vector<ChoiceItem> instrumentChoices(Item item, const reg::VisitFile& file) {
    std::vector<ChoiceItem> choices;
    for (const reg::Instrument& instrument : file.instruments) {
        const std::string id = instrument.id.text();
        const bool isChosen =
            std::any_of(file.entries.begin(), file.entries.end(),
                        [&](const reg::Entry& entry) { return entry.item == item && entry.text == id; });
        if (suits(item, instrument.kind) || isChosen) {
            choices.push_back({QString::fromStdString(id), QString::fromStdString(instrument.name)});
        }
    }
    return choices;
}

}  // namespace

SheetField::SheetField(input::Editor* editor, const FieldKey& key, FieldBinding binding,
                       const words::Words& words)
    : QObject(editor), m_editor(editor), m_key(key), m_binding(std::move(binding)), m_words(words) {
    connect(editor, &input::Editor::committed, this, &SheetField::keep);
}

void SheetField::refill() {
    const quantity::Typed typed = m_binding.read();
    if (typed.unit != quantity::UnitCode::None) {
        m_editor->setUnit(typed.unit);
    }
    m_editor->setText(QString::fromStdString(typed.text));
    showWhetherUsable(typed.text);
}

void SheetField::keep(const QString& text) {
    const auto kept = m_binding.write(text, m_editor->unit());
    if (!kept) {
        m_editor->setProblem(m_words.error(kept.error()));
        return;
    }
    showWhetherUsable(text.toStdString());
}

void SheetField::showWhetherUsable(const std::string& text) {
    const auto usable = m_binding.check && !text.empty() ? m_binding.check(text) : Result<void>();
    const QString own = !usable && m_binding.explain ? m_binding.explain(text) : QString();
    m_editor->setProblem(usable ? QString() : own.isEmpty() ? m_words.error(usable.error()) : own);
}

FieldBinding itemBinding(VisitSheetModel& model, const reg::SubjectRef& subject, Item item) {
    return {
        [&model, subject, item] {
            return quantity::Typed{model.textOf(subject, item).toStdString(), model.unitOf(subject, item)};
        },
        [&model, subject, item](const QString& text, quantity::UnitCode unit) {
            return model.enter(subject, item, text, unit);
        },
        [item](const std::string& text) -> Result<void> {
            const auto canonical = reg::canonicalOf(item, text);
            return canonical ? Result<void>() : tl::unexpected(canonical.error());
        }};
}

input::Editor* makeItemEditor(QWidget* parent, Item item, const SheetContext& context) {
    if (reg::infoOf(item).kind == reg::ItemKind::Instrument) {
        return input::makeListEditor(parent, instrumentChoices(item, context.model.file()));
    }
    return input::makeItemEditor(parent, item, context.window.words, context.window.clock);
}

}  // namespace hearth::ui::visit
