// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/kind.h"
#include "core/register/model.h"
#include "ui/input/editor.h"
#include "ui/shell/place.h"
#include "ui/visit/sheet_model.h"

#include <QObject>
#include <QString>

#include <functional>
#include <optional>

namespace hearth::ui::visit {

/// What every piece of the sheet needs.
struct SheetContext {
    VisitSheetModel& model;
    const shell::Context& window;
};

/// Which field of the sheet: an item on a subject, or a field of the register.
struct FieldKey {
    std::optional<reg::Item> item;
    std::optional<record::Field> field;
    reg::SubjectRef subject;
    bool operator==(const FieldKey&) const = default;
};

/// How a field is read from the model and kept in it.
struct FieldBinding {
    std::function<quantity::Typed()> read;
    std::function<Result<void>(const QString& text, quantity::UnitCode unit)> write;
    /// Why a text that was kept can't be used; none: anything can.
    std::function<Result<void>(const std::string& text)> check;
    /// A sentence of the field's own in place of the error's; empty: the error's.
    std::function<QString(const std::string& text)> explain = {};
};

/// A field of the sheet: an editor and what it stands for. What is committed is kept by the binding; what
/// can't be used, or can't be kept, stays in the editor as typed with the reason below it.
class SheetField : public QObject {
    Q_OBJECT
  public:
    SheetField(input::Editor* editor, const FieldKey& key, FieldBinding binding, const words::Words& words);

    [[nodiscard]] const FieldKey& key() const { return m_key; }
    [[nodiscard]] input::Editor* editor() const { return m_editor; }
    /// Shows what the model holds.
    void refill();

  private:
    void keep(const QString& text);
    void showWhetherUsable(const std::string& text);

    input::Editor* m_editor;
    FieldKey m_key;
    FieldBinding m_binding;
    const words::Words& m_words;
};

/// The binding of an item: the same for all, from the catalogue.
[[nodiscard]] FieldBinding itemBinding(VisitSheetModel& model, const reg::SubjectRef& subject,
                                       reg::Item item);

/// The editor that an item's kind, units and choices call for: a few choices are buttons, more a list.
[[nodiscard]] input::Editor* makeItemEditor(QWidget* parent, reg::Item item, const SheetContext& context);

}  // namespace hearth::ui::visit
