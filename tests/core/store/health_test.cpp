// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/migrations.h"
#include "tests/core/store/store_fixture.h"

namespace hearth::store {
namespace {

using hearth::testing::readFile;

class HealthOfAStore : public StoreTest {
  protected:
    void SetUp() override {
        StoreTest::SetUp();
        const Sample sample = putSample(*store);
        static_cast<void>(issueOne(valueOf(store->startVisit(sampleVisit(sample)))));
    }
};

TEST_F(HealthOfAStore, isReadWithoutChangingAByte) {
    const std::string before = readFile(path());
    const auto health = valueOf(Store::inspect(path()));  // while the store is at work
    EXPECT_EQ(health.path, path().string());
    EXPECT_EQ(health.schema, newestSchema(shippedMigrations()));
    EXPECT_EQ(health.integrity, "ok");
    EXPECT_TRUE(health.chain);
    EXPECT_EQ(health.records, 1);
    EXPECT_EQ(health.visits, 1);
    EXPECT_EQ(health.premises, 1);
    EXPECT_FALSE(health.demonstration);
    EXPECT_EQ(readFile(path()), before);
}

TEST_F(HealthOfAStore, saysWhatIsWrongWithADamagedOne) {
    store.reset();
    std::string bytes = readFile(path());
    bytes.replace(bytes.size() - 4096 * 3, 4096 * 3, 4096 * 3, '\xA5');
    hearth::testing::writeFile(path(), bytes);
    const auto health = valueOf(Store::inspect(path()));
    EXPECT_NE(health.integrity, "ok");
    EXPECT_EQ(readFile(path()), bytes);
}

TEST_F(HealthOfAStore, saysThatARecordWasAltered) {
    store.reset();
    ASSERT_EQ(sqlOn(path(), "DROP TRIGGER record_pdfs_stay; UPDATE record_pdfs SET pdf = x'00'"), "");
    const auto health = valueOf(Store::inspect(path()));
    EXPECT_EQ(health.integrity, "ok");
    ASSERT_FALSE(health.chain);
    EXPECT_EQ(health.chain.error().code, ErrorCode::RecordAltered);
}

TEST_F(HealthOfAStore, ofWhatIsNoStoreIsAnError) {
    hearth::testing::writeFile(inFolder("letter"), "Dear Sir");
    EXPECT_EQ(errorOf(Store::inspect(inFolder("letter"))), ErrorCode::StoreNotOurs);
    EXPECT_EQ(errorOf(Store::inspect(inFolder("none"))), ErrorCode::StoreMissing);
}

}  // namespace
}  // namespace hearth::store
