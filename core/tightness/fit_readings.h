// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/tightness/settle_leak.h"
#include "core/tightness/trace.h"

#include <vector>

namespace hearth::tightness {

/// A trace's readings as a fit wants them: in mbar and seconds from the first, outliers set aside, gathered
/// over stretches of half a second or a hundredth of the time since the beginning.
class FitReadings {
  public:
    explicit FitReadings(const Trace& trace);

    /// Their scatter by the difference of neighbours, which neither slope nor outliers touch much.
    [[nodiscard]] double roughScatter() const;
    /// Standard deviation about a curve, by the median; no less than that of the gathered readings.
    [[nodiscard]] double scatterAbout(const FitComponent& curve) const;
    /// Sets aside what is further than that from the curve, and takes back what is not.
    void setAside(const FitComponent& curve, double distance);
    [[nodiscard]] int outliers() const;
    /// A line from the first to the last: p0, A = 0, k.
    [[nodiscard]] FitPlace firstGuess() const;
    /// Gathered: the means; or, of each reading that was shown, how often.
    [[nodiscard]] std::vector<FitTerm> means() const;
    [[nodiscard]] std::vector<FitTerm> levels() const;

  private:
    struct Reading {
        double at = 0.0;
        double reads = 0.0;
        bool isAside = false;
    };
    [[nodiscard]] std::vector<std::vector<Reading>> stretches() const;
    std::vector<Reading> m_readings;
};

}  // namespace hearth::tightness
