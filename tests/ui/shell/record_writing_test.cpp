// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/record_writing.h"

#include "tests/ui/support/firm_bench.h"
#include "ui/shell/file_pattern.h"
#include "ui/shell/paper_choice.h"

namespace hearth::ui::shell {
namespace {

using hearth::testing::FirmBench;
using hearth::testing::need;
using hearth::testing::readFile;

class RecordWriting : public ::testing::Test {
  protected:
    void SetUp() override {
        const auto visit = bench.startVisit(bench.addPremises("14 Tallow Lane"));
        for (int i = 0; i < 3; ++i) {
            static_cast<void>(need(bench.issue()(visit, std::nullopt, {})));
        }
        lines = need(bench.store->recordsChosen({}));
    }
    [[nodiscard]] QString at(const char* name) const {
        return QString::fromStdString((bench.folder() / name).string());
    }
    [[nodiscard]] std::string nameOf(std::size_t i) const {
        return recordFileName(*bench.store, lines[i]).toStdString();
    }
    [[nodiscard]] std::size_t noted(std::size_t i) const {
        return need(bench.store->sendings(lines[i].id)).size();
    }

    FirmBench bench;
    std::vector<store::RecordLine> lines;
};

TEST_F(RecordWriting, oneThatIsStoppedLeavesNothing) {
    int asked = 0;
    const auto written =
        need(writeAsOne(*bench.store, lines, at("one.pdf"), bench.words, [&](int done, int all) {
            EXPECT_EQ(done, asked++);
            EXPECT_EQ(all, 3);
            return done < 2;
        }));
    EXPECT_TRUE(written.stopped);
    EXPECT_FALSE(std::filesystem::exists(bench.folder() / "one.pdf"));
    EXPECT_EQ(noted(0), 0U);
}

TEST_F(RecordWriting, filesThatWereWrittenBeforeItWasStoppedStayAndAreNoted) {
    const auto written =
        need(writeAsFiles(*bench.store, lines, at(""), [](int done, int) { return done < 2; }));
    EXPECT_TRUE(written.stopped);
    EXPECT_EQ(written.records, 2);
    EXPECT_EQ(readFile(bench.folder() / nameOf(1)), need(bench.store->record(lines[1].id)).pdf);
    EXPECT_FALSE(std::filesystem::exists(bench.folder() / nameOf(2)));
    EXPECT_EQ(noted(1), 1U);
    EXPECT_EQ(noted(2), 0U);
    const auto again = need(writeAsFiles(*bench.store, lines, at(""), [](int, int) { return true; }));
    EXPECT_EQ(again.records, 3) << "the same again is no hindrance";
}

TEST_F(RecordWriting, somebodyElsesFileIsNotWrittenOver) {
    hearth::testing::writeFile(bench.folder() / nameOf(1), "somebody's own");
    const auto refused = need(writeAsFiles(*bench.store, lines, at(""), [](int, int) { return true; }));
    ASSERT_TRUE(refused.failure);
    EXPECT_EQ(refused.failure->code, ErrorCode::FileUnwritable);
    EXPECT_EQ(refused.records, 1);
    EXPECT_EQ(readFile(bench.folder() / nameOf(1)), "somebody's own");
    EXPECT_EQ(noted(0), 1U) << "what was written before is noted";
}

TEST_F(RecordWriting, printsAllAsOneJobOnTheFirmsPaperAndNotesEach) {
    need(keepPaper(*bench.store, record::Paper::Letter));
    const auto printed =
        need(printAsOneJob(*bench.store, lines, bench.printing, [](int, int) { return true; }));
    EXPECT_EQ(printed.records, 3);
    EXPECT_FALSE(printed.stopped);
    EXPECT_EQ(bench.printing.manys, 1);
    ASSERT_EQ(bench.printing.jobs.size(), 3U);
    for (std::size_t i = 0; i < 3; ++i) {
        EXPECT_EQ(bench.printing.jobs[i].document.number, lines[i].header.record);
        EXPECT_EQ(bench.printing.jobs[i].document.paper, record::Paper::A4) << "as it was issued";
        EXPECT_EQ(bench.printing.jobs[i].options.digest, lines[i].header.snapshotDigest);
        EXPECT_EQ(bench.printing.jobs[i].sheet, record::Paper::Letter);
        ASSERT_EQ(noted(i), 1U);
        EXPECT_EQ(need(bench.store->sendings(lines[i].id))[0].how, record::SentBy::Printed);
    }
}

TEST_F(RecordWriting, whatWasPrintedBeforeItWasStoppedIsNotedAndNoMore) {
    const auto printed =
        need(printAsOneJob(*bench.store, lines, bench.printing, [](int done, int) { return done < 2; }));
    EXPECT_TRUE(printed.stopped);
    EXPECT_EQ(printed.records, 2);
    EXPECT_EQ(bench.printing.jobs.size(), 2U);
    EXPECT_EQ(noted(1), 1U);
    EXPECT_EQ(noted(2), 0U);
    bench.printing.cancelled = true;
    const auto declined =
        need(printAsOneJob(*bench.store, lines, bench.printing, [](int, int) { return true; }));
    EXPECT_TRUE(declined.stopped);
    EXPECT_EQ(declined.records, 0);
    EXPECT_EQ(noted(0), 1U);
}

TEST_F(RecordWriting, aPrinterThatFailsIsSaidWithWhatWentOutBefore) {
    bench.printing.failure = Error{ErrorCode::PrinterFailed, {"Office", "error"}};
    bench.printing.failsAt = 1;
    const auto printed =
        need(printAsOneJob(*bench.store, lines, bench.printing, [](int, int) { return true; }));
    EXPECT_EQ(printed.records, 1);
    ASSERT_TRUE(printed.failure);
    EXPECT_EQ(printed.failure->code, ErrorCode::PrinterFailed);
    EXPECT_EQ(noted(0), 1U);
    EXPECT_EQ(noted(1), 0U);
}

}  // namespace
}  // namespace hearth::ui::shell
