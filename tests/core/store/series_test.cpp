// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/series.h"

#include "tests/core/store/store_fixture.h"

namespace hearth::store {
namespace {

namespace fs = std::filesystem;

class SeriesOfNumbers : public StoreTest {
  protected:
    void SetUp() override {
        StoreTest::SetUp();
        const Sample sample = putSample(*store);
        visit = valueOf(store->startVisit(sampleVisit(sample)));
    }
    [[nodiscard]] record::ChainHeader issueIn(Store& in) const {
        const auto id = valueOf(in.issue(requestFor(in, visit), pdfOf));
        return valueOf(in.record(id)).line.header;
    }
    [[nodiscard]] std::unique_ptr<Store> openAt(const fs::path& where) const {
        return valueOf(Store::open(where, Access::Write, clock));
    }

    reg::VisitId visit;
};

TEST_F(SeriesOfNumbers, goesOnFromDayToDay) {
    const auto first = issueIn(*store);
    reopen();
    const auto second = issueIn(*store);
    EXPECT_EQ(second.series, first.series);
    EXPECT_EQ(second.number, 2);
}

TEST_F(SeriesOfNumbers, areWrittenInTheFirmsFormFromThenOn) {
    EXPECT_EQ(valueOf(store->nextNumber()), (NextNumber{"", 1})) << "the letters are not drawn yet";
    const auto first = issueIn(*store);
    EXPECT_EQ(valueOf(store->nextNumber()), (NextNumber{first.series, 2}));
    reg::Firm firm = valueOf(store->firm());
    firm.numberForm = "HL-{series}-{number:4}";
    valueOf(store->saveFirm(firm));
    const auto second = issueIn(*store);
    EXPECT_EQ(first.record, first.series + "-000001");
    EXPECT_EQ(second.record, "HL-" + first.series + "-0002");
    EXPECT_TRUE(store->verify());

    const auto found = valueOf(store->recordByNumber(second.record));
    ASSERT_TRUE(found.has_value());
    EXPECT_EQ(valueOf(store->records(second.record)).size(), 1U) << "found as it is written";
    // A revision keeps its record's number.
    auto request = requestFor(*store, visit);
    request.supersedes = valueOf(store->recordByNumber(first.record));
    const auto revised = valueOf(store->record(valueOf(store->issue(request, pdfOf)))).line.header;
    EXPECT_EQ(revised.record, first.record);
    EXPECT_EQ(valueOf(store->nextNumber()), (NextNumber{first.series, 3}));
    EXPECT_TRUE(store->verify());
}

TEST_F(SeriesOfNumbers, takeNoFormThatCouldBeMistaken) {
    reg::Firm firm = valueOf(store->firm());
    firm.numberForm = "{number:6}";
    EXPECT_EQ(errorOf(store->saveFirm(firm)), ErrorCode::NumberFormUnusable);
    EXPECT_EQ(valueOf(store->firm()).numberForm, "");
}

TEST_F(SeriesOfNumbers, ofACopyIsAnotherThatNamesTheOldHead) {
    const auto first = issueIn(*store);
    store.reset();
    const auto copy = inFolder("copy.hearth");
    fs::copy_file(path(), copy);
    const auto opened = openAt(copy);
    EXPECT_EQ(valueOf(opened->nextNumber()), (NextNumber{"", 1}));
    const auto there = issueIn(*opened);
    EXPECT_NE(there.series, first.series);
    EXPECT_EQ(there.number, 1);
    EXPECT_EQ(withoutSeries(there.record), "-000001");
    EXPECT_EQ(there.previous, record::headerDigest(first));
    EXPECT_TRUE(opened->verify());
    EXPECT_EQ(issueIn(*opened).number, 2);

    reopen();  // the original goes on in its own
    const auto here = issueIn(*store);
    EXPECT_EQ(here.series, first.series);
    EXPECT_EQ(here.number, 2);
    EXPECT_TRUE(store->verify());
}

TEST_F(SeriesOfNumbers, ofAFileThatWasMovedAwayIsAnother) {
    const auto first = issueIn(*store);
    store.reset();
    const auto moved = inFolder("moved.hearth");
    fs::rename(path(), moved);
    EXPECT_NE(issueIn(*openAt(moved)).series, first.series);
}

TEST_F(SeriesOfNumbers, ofAFileReplacedByItsCopyIsAnother) {
    const auto first = issueIn(*store);
    store.reset();
    const auto copy = inFolder("copy.hearth");
    fs::copy_file(path(), copy);
    fs::remove(path());
    fs::copy_file(copy, path());
    reopen();
    EXPECT_NE(issueIn(*store).series, first.series);
}

// A backup written over the store in place keeps path and inode, and so the place; but a backup is marked.
TEST_F(SeriesOfNumbers, ofABackupWrittenOverTheStoreIsAnother) {
    const auto first = issueIn(*store);
    const auto backup = inFolder("backup.hearth");
    valueOf(store->backUp(backup));
    const auto lost = issueIn(*store);
    store.reset();
    hearth::testing::writeFile(path(), hearth::testing::readFile(backup));
    reopen();
    const auto after = issueIn(*store);
    EXPECT_NE(after.series, first.series);
    EXPECT_NE(after.record, lost.record);
    EXPECT_TRUE(store->verify());
}

TEST_F(SeriesOfNumbers, beginsOnlyWithTheFirstRecord) {
    const auto copy = inFolder("copy.hearth");
    store.reset();
    fs::copy_file(path(), copy);
    reopen();
    const auto opened = openAt(copy);
    const auto there = issueIn(*opened);
    EXPECT_EQ(there.previous, "");
    EXPECT_NE(there.series, issueIn(*store).series);
}

TEST_F(SeriesOfNumbers, aRevisionKeepsTheNumberThatItsRecordHadInTheOldOne) {
    const auto first = issueOne(visit);
    const auto number = valueOf(store->record(first)).line.header.record;
    store.reset();
    const auto moved = inFolder("moved.hearth");
    fs::rename(path(), moved);
    const auto opened = openAt(moved);
    auto request = requestFor(*opened, visit);
    request.supersedes = first;
    const auto revised = valueOf(opened->record(valueOf(opened->issue(request, pdfOf)))).line.header;
    EXPECT_EQ(revised.record, number);
    EXPECT_EQ(revised.revision, 2);
    EXPECT_NE(number.substr(0, 3), revised.series);
    EXPECT_TRUE(opened->verify());
}

TEST_F(SeriesOfNumbers, whoFollowsAHeadThatIsGoneIsFound) {
    static_cast<void>(issueIn(*store));
    store.reset();
    ASSERT_EQ(sqlOn(path(), "DROP TRIGGER series_go_on; UPDATE series SET follows_head = 'feed'"), "");
    reopen();
    EXPECT_EQ(errorOf(store->verify()), ErrorCode::RecordChainBroken);
}

TEST(Place, isTheSameForTheSameFileAndAnotherForAnother) {
    const hearth::testing::TempDir folder;
    hearth::testing::writeFile(folder / "a", "1");
    hearth::testing::writeFile(folder / "b", "1");
    EXPECT_EQ(placeOf(folder / "a"), placeOf(folder.path() / "." / "a"));
    EXPECT_NE(placeOf(folder / "a"), placeOf(folder / "b"));
    EXPECT_NE(placeOf(folder / "a"), kPlaceOfCopy);
}

}  // namespace
}  // namespace hearth::store
