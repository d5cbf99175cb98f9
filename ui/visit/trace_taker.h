// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/trace_file.h"
#include "ui/visit/sheet_field.h"

#include <QWidget>

#include <string>

class QVBoxLayout;

namespace hearth::ui::shell {
class Fields;
class KeyButton;
class Text;
}  // namespace hearth::ui::shell

namespace hearth::ui::visit {

/// Takes a logger's file in: which column is what and in which unit is guessed and shown, and can be said by
/// hand. Nothing is taken where the unit is not said or the clock goes back.
class TraceTaker : public QWidget {
    Q_OBJECT
  public:
    TraceTaker(const SheetContext& context, QWidget* parent);

    /// Asks for a file, reads it and shows what it seems to be.
    void chooseFile();
    /// The same of what was read already.
    void show(const QString& name, const std::string& bytes);
    /// As it is read with the columns as they stand now.
    [[nodiscard]] const tl::expected<exchange::TraceFile, exchange::TraceRefusal>& file() const {
        return m_file;
    }
    [[nodiscard]] input::Editor* editor(const QString& name) const;

  Q_SIGNALS:
    void taken(const hearth::tightness::Trace& trace, const hearth::reg::TraceSource& source);
    /// Fields came or went.
    void stopsChanged();

  private:
    void build();
    void addChoices(shell::Fields* grid);
    input::Editor* addChoice(const QString& name, const QString& label,
                             const std::vector<input::ChoiceItem>& choices, const QString& chosen);
    [[nodiscard]] std::vector<input::ChoiceItem> columnChoices(bool withNone) const;
    [[nodiscard]] exchange::TraceColumns columnsSaid() const;
    void readAgain();
    void take();
    void close();
    [[nodiscard]] QString refusalText(const exchange::TraceRefusal& refusal) const;
    [[nodiscard]] QString readText(const exchange::TraceFile& file) const;
    [[nodiscard]] std::optional<Instant> beganAt() const;

    SheetContext m_context;
    QString m_name;
    std::string m_bytes;
    std::vector<std::string> m_firstRow;
    exchange::TraceColumns m_guess;
    tl::expected<exchange::TraceFile, exchange::TraceRefusal> m_file =
        tl::unexpected(exchange::TraceRefusal{exchange::TraceFault::TooFew});
    QVBoxLayout* m_lines;
    QWidget* m_fields = nullptr;
    shell::Text* m_said = nullptr;
    shell::KeyButton* m_take = nullptr;
};

}  // namespace hearth::ui::visit
