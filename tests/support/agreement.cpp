// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/agreement.h"

#include <algorithm>
#include <cmath>
#include <fstream>
#include <gtest/gtest.h>
#include <limits>
#include <map>
#include <utility>

namespace hearth::testing {
namespace {

std::string testName() {
    const auto* info = ::testing::UnitTest::GetInstance()->current_test_info();
    return info == nullptr ? std::string() : std::string(info->test_suite_name()) + '.' + info->name();
}

/// Whether another test of this program has taken that line already; the same test may, when it is repeated.
bool isTaken(const std::filesystem::path& line) {
    static std::map<std::filesystem::path, std::string> taken;
    return taken.emplace(line, testName()).first->second != testName();
}

std::string programName() {
    std::error_code ignored;
    return std::filesystem::read_symlink("/proc/self/exe", ignored).filename().string();
}

/// A field of a line of tab-separated ones.
bool isOneField(const std::string& text) {
    return !text.empty() && text.find_first_of("\t\n") == std::string::npos;
}

}  // namespace

std::filesystem::path agreementFolder() {
    return std::filesystem::path(HEARTH_BINARY_DIR) / "agreement";
}

Agreement::Agreement(std::string check, std::string source, std::string unit, double allowed,
                     std::filesystem::path folder)
    : m_check(std::move(check)),
      m_source(std::move(source)),
      m_unit(std::move(unit)),
      m_allowed(allowed),
      m_folder(std::move(folder)) {}

Agreement::~Agreement() {
    EXPECT_GT(m_values, 0) << m_check << ": nothing was held against anything";
    EXPECT_TRUE(isOneField(m_check) && isOneField(m_source))
        << m_check << ": a name and a source, on one line";
    // One file a check: ctest runs the programs side by side, and a second run replaces its own.
    const auto key = std::to_string(std::hash<std::string>{}(m_check + '\t' + m_source));
    const auto path = m_folder / (programName() + '-' + key + ".tsv");
    EXPECT_FALSE(isTaken(path)) << m_check << ": two tests check this by the same name against " << m_source;
    std::error_code ignored;
    std::filesystem::create_directories(m_folder, ignored);
    std::ofstream file(path);
    file << m_check << '\t' << m_source << '\t' << m_values << '\t' << m_most << '\t' << m_allowed << '\t'
         << m_unit << '\n';
    EXPECT_TRUE(file.flush()) << "cannot write " << path;
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
    // What is no number agrees with nothing.
    m_most = std::max(m_most, std::isnan(deviation) ? std::numeric_limits<double>::infinity() : deviation);
}

}  // namespace hearth::testing
