// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/gauge/simulated_pipe.h"
#include "ui/gauge/source.h"

namespace hearth::ui::gauge {

/// A practice pipe that sends "20.51 mbar" ten times a second. Whatever comes of it is marked as simulated.
class SimulatedSource : public Source {
    Q_OBJECT
  public:
    SimulatedSource(PracticePipe pipe, const Clock& clock);
    [[nodiscard]] bool isSimulated() const override { return true; }

  protected:
    void open() override;
    void close() override;
    [[nodiscard]] bool beginsWithALine() const override { return true; }

  private:
    void send();

    PracticePipe m_pipe;
    QTimer m_ticks;
    std::chrono::milliseconds m_began{0};
    std::uint32_t m_count = 0;
};

}  // namespace hearth::ui::gauge
