// SPDX-License-Identifier: GPL-3.0-or-later
// The script that installs what is missing, with the system's programs replaced by ones that only write down
// how they were called.
#include "tests/support/files.h"

#include <filesystem>
#include <gtest/gtest.h>
#include <string>

namespace hearth::testing {
namespace {

class InstallPackages : public ::testing::Test {
  protected:
    void SetUp() override {
        stub("dpkg-query", "for p; do case $p in -*|'$'*) ;; $ABSENT) ;; *) echo \"ii  $p\" ;; esac; done");
        stub("apt-get", "echo \"$DEBIAN_FRONTEND apt-get $*\" >>" + calls() + "; exit ${APT_EXIT:-0}");
        stub("sudo",
             "echo \"sudo $1\" >>" + calls() + "; [ \"$1\" = -n ] && shift; ${SUDO_REFUSES:-exec} \"$@\"");
        stub("id", "echo ${USER_ID:-0}");
    }

    void stub(const std::string& name, const std::string& body) const {
        const auto path = m_folder / name;
        writeFile(path, "#!/bin/sh\n" + body + "\n");
        std::filesystem::permissions(path, std::filesystem::perms::owner_all);
    }

    [[nodiscard]] std::string calls() const { return (m_folder / "calls").string(); }

    [[nodiscard]] CommandOutput run(const std::string& environment,
                                    const std::string& argument = "test") const {
        return runCommand("env PATH='" + m_folder.path().string() + "':\"$PATH\" " + environment +
                          " '" HEARTH_SOURCE_DIR "/app/install-packages' " + argument + " 2>&1 </dev/null");
    }

    [[nodiscard]] std::string called() const {
        return std::filesystem::exists(calls()) ? readFile(calls()) : std::string();
    }

    TempDir m_folder;
};

TEST_F(InstallPackages, saysAndDoesNothingWhenNothingIsMissing) {
    const auto output = run("ABSENT=none");
    EXPECT_EQ(output.exitCode, 0);
    EXPECT_EQ(output.text, "");
    EXPECT_EQ(called(), "");
}

TEST_F(InstallPackages, saysInOneLineWhatItInstallsAndAsksNothing) {
    const auto output = run("ABSENT=qpdf");
    EXPECT_EQ(output.exitCode, 0) << output.text;
    EXPECT_EQ(output.text, "Installing the Debian packages that are missing (1): qpdf\n");
    EXPECT_NE(called().find("noninteractive apt-get -q -y"), std::string::npos) << called();
    EXPECT_NE(called().find("install --no-install-recommends qpdf\n"), std::string::npos) << called();
    EXPECT_EQ(called().find("sudo"), std::string::npos);
}

TEST_F(InstallPackages, theProgramAloneNeedsNothingThatOnlyTestsNeed) {
    EXPECT_EQ(run("ABSENT=qpdf", "run").text, "");
    EXPECT_NE(run("ABSENT=ninja-build", "run").text, "");
}

TEST_F(InstallPackages, aUserWithoutATerminalIsNeverAskedForAPassword) {
    EXPECT_EQ(run("ABSENT=qpdf USER_ID=1000").exitCode, 0);
    EXPECT_NE(called().find("sudo -n\n"), std::string::npos) << called();

    const auto refused = run("ABSENT=qpdf USER_ID=1000 SUDO_REFUSES=false");
    EXPECT_EQ(refused.exitCode, 1);
    EXPECT_NE(refused.text.find("apt-get install qpdf"), std::string::npos) << refused.text;
}

TEST_F(InstallPackages, aFailedInstallationIsAFailure) {
    const auto output = run("ABSENT=qpdf APT_EXIT=100");
    EXPECT_EQ(output.exitCode, 1);
    EXPECT_NE(output.text.find("could not be installed"), std::string::npos) << output.text;
}

TEST_F(InstallPackages, anyOtherArgumentIsRefused) {
    EXPECT_EQ(run("ABSENT=none", "").exitCode, 2);
    EXPECT_EQ(run("ABSENT=none", "everything").exitCode, 2);
}

}  // namespace
}  // namespace hearth::testing
