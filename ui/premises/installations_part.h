// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/kit.h"
#include "ui/shell/place.h"

namespace hearth::ui::premises {

/// The fields of one gas installation; each is kept when it is committed.
class InstallationForm : public QWidget {
    Q_OBJECT
  public:
    /// `context` of the fields' accessible names where there are several; empty for the only one.
    InstallationForm(const shell::Context& context, const QString& nameContext, QWidget* parent);
    void show(const reg::Installation& installation);
    [[nodiscard]] const reg::Installation& installation() const { return m_installation; }

  private:
    using TextOf = std::string& (*)(reg::Installation&);
    using TypedOf = quantity::Typed& (*)(reg::Installation&);
    void addGas();
    void addMeter();
    void addText(const QString& label, const char* name, TextOf field);
    void addTyped(const QString& label, const char* name, quantity::UnitFamily family, TypedOf field);
    void finish(input::Editor* editor, const QString& label, const char* name);
    Result<void> keep(const std::function<void(reg::Installation&)>& change);
    void showMeterVolume();

    shell::Context m_context;
    QString m_nameContext;
    reg::Installation m_installation;
    shell::Fields* m_fields;
    input::Editor* m_gas = nullptr;
    input::Editor* m_meter = nullptr;
    input::Editor* m_meterVolume = nullptr;
    std::vector<std::pair<input::Editor*, TextOf>> m_texts;
    std::vector<std::pair<input::Editor*, TypedOf>> m_typed;
};

/// All installations of a premises, and a way to add one.
class InstallationsPart : public QWidget {
    Q_OBJECT
  public:
    InstallationsPart(const shell::Context& context, QWidget* parent);
    void show(reg::PremisesId id);
    /// Of the first one.
    [[nodiscard]] rulebook::Gas gas() const;

  private:
    void add();
    void build(std::size_t count);

    shell::Context m_context;
    reg::PremisesId m_premises;
    QVBoxLayout* m_lines;
    shell::Text* m_problem;
    std::vector<InstallationForm*> m_forms;
    std::vector<QWidget*> m_headings;
    shell::KeyButton* m_add;
};

}  // namespace hearth::ui::premises
