// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/kit.h"
#include "ui/shell/place.h"

namespace hearth::ui::premises {

/// How to reach a person or organisation. The same party on other premises changes with it: it is one.
class PartyForm : public QWidget {
    Q_OBJECT
  public:
    /// `nameContext`: the role, before the fields' accessible names.
    PartyForm(const shell::Context& context, const QString& nameContext, QWidget* parent);
    void show(const reg::Party& party);
    [[nodiscard]] input::Editor* first() const { return m_kind; }

  Q_SIGNALS:
    void changed(const hearth::reg::Party& party);

  private:
    using TextOf = std::string& (*)(reg::Party&);
    void addText(const QString& label, const char* name, TextOf field);
    Result<void> keep(const std::function<void(reg::Party&)>& change);

    shell::Context m_context;
    QString m_nameContext;
    reg::Party m_party;
    shell::Fields* m_fields;
    input::Editor* m_kind;
    std::vector<std::pair<input::Editor*, TextOf>> m_texts;
};

}  // namespace hearth::ui::premises
