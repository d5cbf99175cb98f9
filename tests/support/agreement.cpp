// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/agreement.h"

#include <cmath>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <utility>

namespace hearth::testing {

Agreement::Agreement(std::string check, std::string source, std::string unit, double allowed)
    : m_check(std::move(check)), m_source(std::move(source)), m_unit(std::move(unit)), m_allowed(allowed) {}

Agreement::~Agreement() {
    EXPECT_GT(m_values, 0) << m_check << ": nothing was held against anything";
    // One file a check: ctest runs the binaries side by side, and a second run replaces its own.
    const auto folder = std::filesystem::path(HEARTH_BINARY_DIR) / "agreement";
    std::error_code ignored;
    std::filesystem::create_directories(folder, ignored);
    std::ofstream file(folder / (std::to_string(std::hash<std::string>{}(m_check)) + ".tsv"));
    file << m_check << '\t' << m_source << '\t' << m_values << '\t' << m_most << '\t' << m_allowed << '\t'
         << m_unit << '\n';
}

void Agreement::hold(const std::string& what, double ours, double theirs) {
    note(what, std::abs(ours - theirs), ours, theirs);
}

void Agreement::holdRelative(const std::string& what, double ours, double theirs) {
    note(what, 100.0 * std::abs(ours / theirs - 1.0), ours, theirs);
}

void Agreement::note(const std::string& what, double deviation, double ours, double theirs) {
    ++m_values;
    EXPECT_LE(deviation, m_allowed) << m_check << ", " << what << ": ours " << ours << ", published "
                                    << theirs;
    m_most = std::max(m_most, deviation);
}

}  // namespace hearth::testing
