// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/kit.h"
#include "ui/shell/place.h"

namespace hearth::ui::firm {

/// The firm's own fields; each is kept when it is committed.
class FirmPart : public QWidget {
    Q_OBJECT
  public:
    FirmPart(const shell::Context& context, QWidget* parent);
    void refresh();
    /// To the field of that name; without one, to the first.
    void takeFocus(const char* name = "firmName");

  private:
    using TextOf = std::string& (*)(reg::Firm&);
    void addText(const QString& label, const char* name, TextOf field);
    void addCountry();
    void addLanguage();
    Result<void> keep(const std::function<void(reg::Firm&)>& change);

    shell::Context m_context;
    reg::Firm m_firm;
    shell::Text* m_title;
    shell::Fields* m_fields;
    std::vector<std::pair<input::Editor*, TextOf>> m_texts;
    input::Editor* m_country = nullptr;
    input::Editor* m_language = nullptr;
};

}  // namespace hearth::ui::firm
