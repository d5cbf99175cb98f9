// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/kit.h"
#include "ui/shell/place.h"

namespace hearth::ui::firm {

/// The fields of one instrument; each is kept when it is committed. A new one is kept with its first field.
class InstrumentForm : public QWidget {
    Q_OBJECT
  public:
    InstrumentForm(const shell::Context& context, QWidget* parent);
    void show(const reg::Instrument& instrument);
    void takeFocus(const char* field = "instrumentName");

  Q_SIGNALS:
    void changed(const hearth::reg::Instrument& instrument);

  private:
    using TextOf = std::string& (*)(reg::Instrument&);
    using TypedOf = quantity::Typed& (*)(reg::Instrument&);
    using DateOf = shell::DateSlot (*)(reg::Instrument&);
    void finish(input::Editor* editor, const QString& label, const char* name);
    void addKind();
    void addText(const QString& label, const char* name, TextOf field);
    void addTyped(const QString& label, const char* name, TypedOf field);
    void addDate(const QString& label, const char* name, DateOf field);
    Result<void> keep(const std::function<void(reg::Instrument&)>& change);

    shell::Context m_context;
    reg::Instrument m_instrument;
    shell::Fields* m_fields;
    input::Editor* m_kind = nullptr;
    std::vector<std::pair<input::Editor*, TextOf>> m_texts;
    std::vector<std::pair<input::Editor*, TypedOf>> m_typed;
    std::vector<std::pair<input::Editor*, DateOf>> m_dates;
};

}  // namespace hearth::ui::firm
