// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/collect_command.h"

#include "tests/app/demonstration_copy.h"

#include <gmock/gmock.h>

namespace {

using hearth::testing::DemonstrationCopy;
using hearth::testing::runCommand;
using ::testing::HasSubstr;

class Collect : public DemonstrationCopy {};

TEST_F(Collect, AllThatCountAsOnePdf) {
    const std::string one = inHome("one.pdf");
    const auto done = run("collect --to " + one);
    ASSERT_EQ(done.exitCode, 0) << done.error;
    const QString listed = QString::fromStdString(run("records").out);
    const auto count = listed.count(QLatin1Char('\n')) - listed.count(QLatin1String("replaced"));
    EXPECT_EQ(done.out, "Records written: " + std::to_string(count) + "\n");
    EXPECT_GT(count, 10);
    EXPECT_THAT(runCommand("qpdf --check " + one).text, HasSubstr("No syntax or stream encoding errors"));
    EXPECT_THAT(runCommand("qpdf --json --json-key=outlines " + one).text,
                HasSubstr(recordOn(0) + " revision 1"));
    EXPECT_EQ(run("collect --to " + one).exitCode, 3) << "it is there already";
    EXPECT_EQ(run("collect --to " + one + " --replace").exitCode, 0);
}

TEST_F(Collect, OfALandlordAndAPeriodAsFiles) {
    const std::string folder = inHome("files");
    const auto done = run("collect --of sallowby --into " + folder);
    ASSERT_EQ(done.exitCode, 0) << done.error;
    const auto written = std::distance(std::filesystem::directory_iterator(folder), {});
    EXPECT_THAT(done.out, HasSubstr("Records written: " + std::to_string(written)));
    EXPECT_GT(written, 1);
    EXPECT_LT(written, QString::fromStdString(run("records").out).count(QLatin1Char('\n')));
    EXPECT_EQ(run("collect --from 1/1/2020 --until 2/1/2020 --to " + inHome("none.pdf")).exitCode, 1);
    EXPECT_EQ(run("collect --of nobodyatall --to " + inHome("none.pdf")).exitCode, 1);
    EXPECT_EQ(run("collect --from 31/2/2026 --to " + inHome("none.pdf")).exitCode, 3);
    EXPECT_FALSE(std::filesystem::exists(inHome("none.pdf")));
}

TEST_F(Collect, NeedsOneTarget) {
    EXPECT_EQ(run("collect").exitCode, 2);
    EXPECT_EQ(run("collect --to a.pdf --into b").exitCode, 2);
}

}  // namespace
