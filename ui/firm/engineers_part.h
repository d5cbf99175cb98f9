// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/kit.h"
#include "ui/shell/place.h"

namespace hearth::ui::firm {

class CompetencesPart;

/// The engineers, a row each. A new one is kept with its name.
class EngineersPart : public QWidget {
    Q_OBJECT
  public:
    EngineersPart(const shell::Context& context, QWidget* parent);
    void refresh();
    /// To the card, or the name, of the engineer with that id; without one, to the first.
    void takeFocus(const std::string& engineer, bool card);

  private:
    struct Row {
        reg::Engineer engineer;
        QWidget* line;
        input::Editor* name;
        input::Editor* card;
        input::Editor* expires;
        CompetencesPart* competences;
    };
    void add();
    void makeRow(const reg::Engineer& engineer);
    input::Editor* addField(QWidget* line, input::Editor* editor, const QString& label, const char* name);
    Result<void> keep(std::size_t row, const std::function<void(reg::Engineer&)>& change);
    Result<void> keepExpiry(std::size_t row, const QString& text);
    void fill(const Row& row);

    shell::Context m_context;
    QVBoxLayout* m_lines;
    shell::Text* m_problem;
    shell::KeyButton* m_add;
    std::vector<Row> m_rows;
};

}  // namespace hearth::ui::firm
