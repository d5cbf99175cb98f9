// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace hearth::testing {

/// A check of our numbers against somebody else's: holds each pair to within `allowed`, keeps the largest
/// deviation, and leaves one line for the table of agreement in DEVELOPERS.md when it goes out of scope.
///
///     Agreement agreement("Gross calorific value, test gases", "EN 437:2003+A1:2009 Table 2", "MJ/m3",
///     0.02); agreement.hold("G23", ours, 34.95);
class Agreement {
  public:
    /// `unit` "" for a bare ratio; "%" with holdRelative().
    Agreement(std::string check, std::string source, std::string unit, double allowed);
    ~Agreement();
    Agreement(const Agreement&) = delete;
    Agreement& operator=(const Agreement&) = delete;

    /// |ours - theirs| at most `allowed`; a gtest failure otherwise.
    void hold(const std::string& what, double ours, double theirs);
    /// |ours/theirs - 1| in per cent at most `allowed`.
    void holdRelative(const std::string& what, double ours, double theirs);

  private:
    void note(const std::string& what, double deviation, double ours, double theirs);

    std::string m_check;
    std::string m_source;
    std::string m_unit;
    double m_allowed;
    double m_most = 0.0;
    int m_values = 0;
};

}  // namespace hearth::testing
