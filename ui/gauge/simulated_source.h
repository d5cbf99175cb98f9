// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/gauge/simulated_pipe.h"
#include "ui/gauge/simulated_room.h"
#include "ui/gauge/source.h"

#include <functional>

namespace hearth::ui::gauge {

/// A practice pipe that sends "20.51 mbar" ten times a second, or a practice room that sends "12 ppm" each
/// second. Whatever comes of it is marked as simulated.
class SimulatedSource : public Source {
    Q_OBJECT
  public:
    SimulatedSource(PracticePipe pipe, const Clock& clock);
    SimulatedSource(PracticeRoom room, const Clock& clock);
    [[nodiscard]] bool isSimulated() const override { return true; }

  protected:
    void open() override;
    void close() override;
    [[nodiscard]] bool beginsWithALine() const override { return true; }

  private:
    /// What it sends at so many seconds, as the so manyeth reading.
    using Line = std::function<QByteArray(double seconds, std::uint32_t count)>;
    SimulatedSource(Line line, std::chrono::milliseconds beat, quantity::UnitFamily family,
                    const Clock& clock);
    void send();

    Line m_line;
    QTimer m_ticks;
    std::chrono::milliseconds m_began{0};
    std::uint32_t m_count = 0;
};

}  // namespace hearth::ui::gauge
