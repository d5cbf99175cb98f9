// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/appliance.h"
#include "ui/shell/register_form.h"

#include <QCoreApplication>

namespace hearth::ui::firm {

/// What an engineer is competent in: a row for each category with its expiry. A new one is kept with its
/// category.
class CompetencesPart : public QWidget {
    Q_OBJECT
  public:
    /// `nameContext`: whose they are, for the accessible names.
    CompetencesPart(const shell::Context& context, const QString& nameContext, QWidget* parent);
    void show(reg::EngineerId engineer);

  private:
    struct Row {
        QWidget* line;
        shell::RegisterForm<reg::Competence>* form;
        shell::KeyButton* remove;
    };
    void add();
    Row makeRow(std::size_t number);
    void refresh();
    void remove(std::size_t row);

    shell::Context m_context;
    QString m_nameContext;
    reg::EngineerId m_engineer;
    std::vector<Row> m_rows;
    QVBoxLayout* m_lines;
    shell::KeyButton* m_add;
};

}  // namespace hearth::ui::firm
