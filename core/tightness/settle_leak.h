// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Core>
#include <optional>
#include <vector>

/// The curve that is laid through a trace, and how well one curve fits. In mbar and seconds; the public face
/// is trace_fit.h.
///
/// A closed pipe that leaks in laminar flow (proportional to the gauge pressure p) while its gas settles from
/// a temperature that is D kelvin off, D exp(-t/T):
///
///     p' = -k p - (A/T) exp(-t/T)        A = D p_abs / T_abs
///     p  = p0 exp(-k t) + A (exp(-t/T) - exp(-k t)) / (1 - k T)
///
/// Source: textbook (ideal gas, Newton's law of cooling, linear differential equation of first order).
/// Checked: settle_leak_test.cpp, against a numerical integration in trace_simulator.h.
namespace hearth::tightness {

/// A few readings of one short stretch of time that say the same.
struct FitTerm {
    double at = 0.0;      // mean time, s
    double spread = 0.0;  // variance of the times, s2
    double reads = 0.0;   // mean, mbar
    double count = 0.0;
    double slope = 0.0;  // of the curve there, mbar/s
};

/// How the gauge shows what it measures.
struct GaugeModel {
    double noise = 0.0;         // standard deviation before the display rounds, mbar
    double step = 0.0;          // of the display, mbar; 0: none known
    bool showsSteps = false;    // the noise is too small to smooth them: each reading is an interval
    double settlePrior = 10.8;  // standard deviation of A, mbar: 3 K at 20 mbar
    double decayPrior = 0.2;    // of k, 1/s: beyond any leak that holds a pressure for some seconds
};

/// p0, A, k.
using FitPlace = Eigen::Vector3d;

/// One curve of a fixed settling time, with the spread of its parameters.
struct FitComponent {
    double logTime = 0.0;  // ln T
    double weight = 0.0;   // share of all; before that: logarithm of the evidence
    FitPlace mean = FitPlace::Zero();
    Eigen::Matrix3d spread = Eigen::Matrix3d::Zero();
};

class SettleLeak {
  public:
    /// `end`: the last time that will be asked for, s.
    SettleLeak(std::vector<FitTerm> terms, const GaugeModel& gauge);

    /// The best curve whose settling time is exp(logTime), sought from `from`.
    [[nodiscard]] FitComponent best(double logTime, const FitPlace& from) const;
    void setGauge(const GaugeModel& gauge) { m_gauge = gauge; }
    [[nodiscard]] const GaugeModel& gauge() const { return m_gauge; }
    [[nodiscard]] const std::vector<FitTerm>& terms() const { return m_terms; }
    /// Notes the curve's slope at every term.
    void noteSlopes(const FitComponent& curve);

    /// The curve and its derivatives by p0, A, k at `t`. `spread` is the variance of the times about t.
    struct Point {
        double value;
        Eigen::Vector3d by;
    };
    [[nodiscard]] static Point at(double t, double logTime, const FitPlace& place, double spread = 0.0);

  private:
    struct Sum {
        double value = 0.0;  // logarithm of likelihood and prior
        Eigen::Vector3d gradient = Eigen::Vector3d::Zero();
        Eigen::Matrix3d curvature = Eigen::Matrix3d::Zero();  // negative of the second derivative
    };
    [[nodiscard]] Sum sum(double logTime, const FitPlace& place) const;
    void addPrior(Sum& sum, const FitPlace& place) const;

    std::vector<FitTerm> m_terms;
    GaugeModel m_gauge;
};

}  // namespace hearth::tightness
