// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/firm/instrument_form.h"
#include "ui/shell/kit.h"
#include "ui/shell/place.h"

namespace hearth::ui::shell {
class LineList;
}

namespace hearth::ui::firm {

/// The gauges and other instruments: a list, and the fields of the one that is chosen.
class InstrumentsPart : public QWidget {
    Q_OBJECT
  public:
    InstrumentsPart(const shell::Context& context, QWidget* parent);
    void refresh();
    void search(const QString& text);
    void takeFocus();
    /// Shows the instrument with that id and puts the focus into the field of that name.
    void open(const std::string& instrument, const char* field);

  private:
    void fillList();
    void show(int row);

    shell::Context m_context;
    QString m_search;
    shell::LineList* m_list;
    shell::KeyButton* m_add;
    InstrumentForm* m_form;
    std::vector<reg::Instrument> m_instruments;  // of the list's lines
};

}  // namespace hearth::ui::firm
