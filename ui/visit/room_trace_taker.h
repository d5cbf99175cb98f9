// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/exchange/co_file.h"
#include "core/register/gauge_trace.h"
#include "ui/visit/sheet_field.h"

#include <QWidget>

#include <string>
#include <vector>

class QVBoxLayout;

namespace hearth::ui::shell {
class Fields;
class KeyButton;
class Text;
}  // namespace hearth::ui::shell

namespace hearth::ui::visit {

/// Takes in what a logger noted of the carbon monoxide in a room: which column is what is guessed and shown,
/// and can be said by hand; where its probe was has to be said, and so has when it began, where the file does
/// not tell. Levels are in ppm or are not taken.
class RoomTraceTaker : public QWidget {
    Q_OBJECT
  public:
    RoomTraceTaker(const SheetContext& context, QWidget* parent);

    /// Asks for a file, reads it and shows what it seems to be.
    void chooseFile();
    /// The same of what was read already.
    void show(const QString& name, const std::string& bytes);
    /// As it is read with the columns as they stand now.
    [[nodiscard]] const tl::expected<exchange::CoFile, exchange::CoRefusal>& file() const { return m_file; }
    [[nodiscard]] input::Editor* editor(const QString& name) const;

  Q_SIGNALS:
    void taken(const std::vector<hearth::air::CoReading>& readings, const hearth::reg::TraceSource& source);
    /// Fields came or went.
    void stopsChanged();

  private:
    void build();
    void addChoices(shell::Fields* grid);
    input::Editor* addChoice(const char* name, const QString& label,
                             const std::vector<input::ChoiceItem>& choices, const QString& chosen);
    [[nodiscard]] exchange::CoColumns columnsSaid() const;
    void readAgain();
    void take();
    void close();
    [[nodiscard]] QString refusalText(const exchange::CoRefusal& refusal) const;
    [[nodiscard]] QString readText(const exchange::CoFile& file) const;
    [[nodiscard]] std::optional<Instant> beganAt() const;

    SheetContext m_context;
    QString m_name;
    std::string m_bytes;
    std::vector<std::string> m_firstRow;
    exchange::CoColumns m_guess;
    tl::expected<exchange::CoFile, exchange::CoRefusal> m_file =
        tl::unexpected(exchange::CoRefusal{exchange::CoFault::TooFew});
    QVBoxLayout* m_lines;
    QWidget* m_fields = nullptr;
    input::Editor* m_began = nullptr;
    shell::Text* m_said = nullptr;
    shell::KeyButton* m_take = nullptr;
};

}  // namespace hearth::ui::visit
