// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/tightness/settle_leak.h"

#include <utility>
#include <vector>

namespace hearth::tightness {

/// The settling time is not known: curves of many settling times, each with its share.
class FitMixture {
  public:
    /// The best curve of all settling times.
    [[nodiscard]] static FitComponent likeliest(const SettleLeak& model, const FitPlace& from);
    /// The best curve near one that was the best of nearly the same readings.
    [[nodiscard]] static FitComponent nearby(const SettleLeak& model, const FitComponent& curve);
    /// All curves that have a share worth counting, about the likeliest.
    [[nodiscard]] static FitMixture around(const SettleLeak& model, const FitComponent& likeliest);

    [[nodiscard]] const std::vector<FitComponent>& components() const { return m_components; }
    /// Of k, 1/s.
    [[nodiscard]] double mean() const;
    [[nodiscard]] double standardDeviation() const;
    [[nodiscard]] std::pair<double, double> interval() const;

  private:
    [[nodiscard]] bool reaches(double logTime) const;
    void addAbout(const SettleLeak& model, const FitComponent& mode);
    std::vector<FitComponent> m_components;  // weights sum to one
};

/// What a mixture of normal distributions is below with that probability.
/// Source: textbook (halving the interval on the distribution function). Checked: fit_mixture_test.cpp.
struct NormalPart {
    double weight = 0.0;
    double mean = 0.0;
    double standard = 0.0;
};
[[nodiscard]] double quantileOf(const std::vector<NormalPart>& parts, double probability);

}  // namespace hearth::tightness
