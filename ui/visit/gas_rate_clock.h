// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/visit/sheet_field.h"

#include <QTimer>
#include <QWidget>

#include <chrono>
#include <optional>

namespace hearth::ui::shell {
class KeyButton;
class Text;
}  // namespace hearth::ui::shell

namespace hearth::ui::visit {

/// Times the gas rate of one appliance: one key starts, the same key stops and keeps the time taken. Each
/// appliance has its own; they run beside the timed test and go on while other parts are filled in, and after
/// the program was ended.
class GasRateClock : public QWidget {
    Q_OBJECT
  public:
    GasRateClock(const SheetContext& context, reg::ApplianceId appliance, QWidget* parent);

    void toggle();
    [[nodiscard]] bool isRunning() const { return m_startedAt.has_value(); }
    /// Whether a gas rate is asked of the appliance. One that runs when it no longer is, since the appliance
    /// turned out to be capped, stays in view and says that its time is not kept.
    void setAsked(bool asked);
    /// Looks at the clock; by a timer while it runs.
    void tick();
    [[nodiscard]] QString figure() const;
    void setReadOnly(bool readOnly);

  Q_SIGNALS:
    /// The time was kept: its field.
    void kept();

  private:
    void start();
    void stop();
    [[nodiscard]] bool keepTime();
    [[nodiscard]] bool mayStartAgain();
    [[nodiscard]] std::chrono::milliseconds passed() const;
    /// Where the store keeps that it runs.
    [[nodiscard]] std::string note() const;
    void say(const Result<void>& done);

    SheetContext m_context;
    reg::ApplianceId m_appliance;
    bool m_isAsked = true;
    std::optional<Instant> m_startedAt;
    std::optional<std::chrono::milliseconds>
        m_mark;  // elapsed() at the start, if this run of the program started it
    QTimer m_ticks;
    shell::Text* m_figure;
    shell::Text* m_notKept;
    shell::KeyButton* m_button;
};

}  // namespace hearth::ui::visit
