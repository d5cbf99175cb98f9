// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>

namespace hearth::testing {

/// Where the lines of the table are collected: "agreement" in the build folder.
[[nodiscard]] std::filesystem::path agreementFolder();

/// A check of our numbers against somebody else's: holds each pair to within `allowed`, keeps the largest
/// deviation, and leaves one line for the table of agreement in DEVELOPERS.md when it goes out of scope.
///
///     Agreement agreement("Gross calorific value, test gases", "EN 437:2003+A1:2009 Table 2", "MJ/m3",
///     0.02); agreement.hold("G23", ours, 34.95);
///
/// One object for each check: two tests that hold something by the same name against the same source would
/// take each other's line, and the second fails for it.
class Agreement {
  public:
    /// `unit` "" for a bare ratio; "%" with holdRelative().
    Agreement(std::string check, std::string source, std::string unit, double allowed,
              std::filesystem::path folder = agreementFolder());
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
    std::filesystem::path m_folder;
    double m_most = 0.0;
    int m_values = 0;
};

}  // namespace hearth::testing
