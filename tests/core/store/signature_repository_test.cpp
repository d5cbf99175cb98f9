// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/signature_repository.h"

#include "tests/core/store/store_fixture.h"

#include <gmock/gmock.h>

namespace hearth::store {
namespace {

using record::Mismatch;
using record::Verdict;
using ::testing::ElementsAre;
using ::testing::HasSubstr;

const std::string kKeyPassphrase = "quiet lamp under stairs";
const std::string kNewKeyPassphrase = "seven grey geese walking";

class SigningTest : public StoreTest {
  protected:
    void SetUp() override {
        StoreTest::SetUp();
        visit = valueOf(store->startVisit(sampleVisit(putSample(*store))));
        store->actAs("R. Ashdown");
    }
    void unlock(const std::string& passphrase = kKeyPassphrase) {
        store->signWith(valueOf(store->openSigningKey(passphrase)));
    }
    [[nodiscard]] std::string pdf(RecordId id) const { return valueOf(store->record(id)).pdf; }
    [[nodiscard]] std::optional<RecordSignature> signature(RecordId id) const {
        return valueOf(store->signatureOf(id));
    }
    reg::VisitId visit;
};

TEST_F(SigningTest, whatIsIssuedWhileTheKeyIsOpenIsSignedAtOnce) {
    EXPECT_TRUE(valueOf(store->signingKeys()).empty());
    valueOf(store->makeSigningKey(kKeyPassphrase));
    EXPECT_FALSE(store->canSign());
    unlock();
    EXPECT_TRUE(store->canSign());
    const auto id = issueOne(visit);
    const auto made = signature(id);
    ASSERT_TRUE(made);
    EXPECT_EQ(made->bytes.size(), 64U);
    EXPECT_TRUE(record::signatureHolds(pdf(id), made->bytes, made->key.publicKey));
    EXPECT_EQ(made->at, clock.now());
    EXPECT_EQ(valueOf(store->waitingForSignature()), 0);
    const auto keys = valueOf(store->signingKeys());
    ASSERT_EQ(keys.size(), 1U);
    EXPECT_EQ(keys[0], made->key);
    EXPECT_EQ(keys[0].signatures, 1);
    EXPECT_EQ(keys[0].by, "R. Ashdown");
    EXPECT_EQ(keys[0].until, std::nullopt);
}

TEST_F(SigningTest, withoutTheKeyIssuingWorksAndTheRecordWaits) {
    const auto before = issueOne(visit);
    valueOf(store->makeSigningKey(kKeyPassphrase));
    const auto locked = issueOne(visit);
    EXPECT_EQ(signature(locked), std::nullopt);
    EXPECT_EQ(valueOf(store->waitingForSignature()), 2);
    EXPECT_EQ(errorOf(store->signWaiting(10)), ErrorCode::SigningLocked);
    unlock();
    EXPECT_EQ(valueOf(store->signWaiting(1)), 1);
    EXPECT_TRUE(signature(before)) << "the oldest first";
    EXPECT_FALSE(signature(locked));
    EXPECT_EQ(valueOf(store->signWaiting(10)), 1);
    EXPECT_TRUE(
        record::signatureHolds(pdf(locked), signature(locked)->bytes, signature(locked)->key.publicKey));
    EXPECT_EQ(valueOf(store->signWaiting(10)), 0);
    store->signWith(std::nullopt);
    EXPECT_EQ(signature(issueOne(visit)), std::nullopt);
    EXPECT_TRUE(store->verify());
}

TEST_F(SigningTest, everySignatureIsHeldAgainstItsPdfWhenTheStoreIsLookedAt) {
    valueOf(store->makeSigningKey(kKeyPassphrase));
    unlock();
    static_cast<void>(issueOne(visit));
    const auto second = issueOne(visit);
    store->signWith(std::nullopt);
    static_cast<void>(issueOne(visit));
    auto health = valueOf(Store::inspect(path()));
    EXPECT_EQ(health.signatures, 2);
    EXPECT_TRUE(health.wrongSignatures.empty());
    EXPECT_TRUE(health.isSound());
    const std::string number = valueOf(store->record(second)).line.header.record;
    store.reset();
    // The first's signature in the second's place: good bytes, over the wrong pages.
    ASSERT_EQ(
        sqlOn(path(),
              "DROP TRIGGER record_signatures_stay; UPDATE record_signatures SET signature = "
              "(SELECT s.signature FROM record_signatures AS s JOIN record_headers AS h ON h.id = s.record "
              "ORDER BY h.number LIMIT 1)"),
        "");
    health = valueOf(Store::inspect(path()));
    EXPECT_EQ(health.signatures, 1);
    EXPECT_THAT(health.wrongSignatures, ElementsAre(number));
    EXPECT_TRUE(health.chain) << "signatures are no part of the chain";
    EXPECT_FALSE(health.isSound());
}

TEST_F(SigningTest, theKeyIsOpenForOneRunOnly) {
    valueOf(store->makeSigningKey(kKeyPassphrase));
    unlock();
    reopen();
    EXPECT_FALSE(store->canSign());
    EXPECT_EQ(errorOf(store->openSigningKey("another passphrase")), ErrorCode::KeyPassphraseWrong);
    EXPECT_TRUE(store->openSigningKey(kKeyPassphrase));
}

TEST_F(SigningTest, aKeyNeedsAPassphraseAndAStoreThatCanBeWritten) {
    EXPECT_EQ(errorOf(store->openSigningKey(kKeyPassphrase)), ErrorCode::SigningKeyMissing);
    EXPECT_EQ(errorOf(store->makeSigningKey("short")), ErrorCode::PassphraseShort);
    reopen(Access::Read);
    EXPECT_EQ(errorOf(store->makeSigningKey(kKeyPassphrase)), ErrorCode::StoreReadOnly);
    EXPECT_TRUE(valueOf(store->signingKeys()).empty());
}

TEST_F(SigningTest, aRenewedKeyLeavesTheOldOnesSignaturesStanding) {
    valueOf(store->makeSigningKey(kKeyPassphrase));
    unlock();
    const auto old = issueOne(visit);
    clock.set(clock.now() + std::chrono::hours(48));
    valueOf(store->makeSigningKey(kNewKeyPassphrase));
    const auto between = issueOne(visit);
    EXPECT_EQ(signature(between), std::nullopt) << "the key that is open is not the firm's any more";
    EXPECT_EQ(errorOf(store->signWaiting(10)), ErrorCode::SigningLocked);
    EXPECT_EQ(errorOf(store->openSigningKey(kKeyPassphrase)), ErrorCode::KeyPassphraseWrong);
    unlock(kNewKeyPassphrase);
    EXPECT_EQ(valueOf(store->signWaiting(10)), 1);
    const auto keys = valueOf(store->signingKeys());
    ASSERT_EQ(keys.size(), 2U);
    EXPECT_EQ(keys[1].until, keys[0].from);
    EXPECT_EQ(signature(old)->key, keys[1]);
    EXPECT_EQ(signature(between)->key, keys[0]);

    const auto proof = valueOf(store->proveFile(pdf(old)));
    ASSERT_TRUE(proof.kept->signature);
    EXPECT_TRUE(proof.kept->signature->holds);
    EXPECT_EQ(proof.kept->signature->fingerprint, record::keyFingerprint(keys[1].publicKey));
    EXPECT_EQ(proof.kept->signature->until, instantText(keys[0].from));
}

TEST_F(SigningTest, theProofSaysWhetherTheSignatureHolds) {
    valueOf(store->makeSigningKey(kKeyPassphrase));
    unlock();
    const auto id = issueOne(visit);
    std::string changed = pdf(id);
    changed[3] = static_cast<char>(changed[3] ^ 1);
    const auto proof = valueOf(store->proveFile(changed));
    EXPECT_EQ(proof.verdict, Verdict::Changed);
    EXPECT_THAT(proof.mismatches, ElementsAre(Mismatch::PdfDigest, Mismatch::Signature));
    EXPECT_FALSE(proof.kept->signature->holds);
    const auto number = valueOf(store->record(id)).line.header.record;
    EXPECT_TRUE(
        valueOf(store->proveClaim({record::Claim::By::Number, {number, 0}, {}})).kept->signature->holds);
}

TEST_F(SigningTest, opensslAgreesWithoutThisProgram) {
    valueOf(store->makeSigningKey(kKeyPassphrase));
    unlock();
    const auto id = issueOne(visit);
    const auto made = *signature(id);
    hearth::testing::writeFile(inFolder("record.pdf"), pdf(id));
    hearth::testing::writeFile(inFolder("record.pdf.sig"), made.bytes);
    hearth::testing::writeFile(inFolder("firm.pem"), record::publicKeyPem(made.key.publicKey));
    const std::string check =
        "cd " + path().parent_path().string() +
        " && openssl pkeyutl -verify -pubin -inkey firm.pem -rawin -in record.pdf -sigfile "
        "record.pdf.sig 2>&1";
    const auto good = hearth::testing::runCommand(check);
    EXPECT_EQ(good.exitCode, 0) << good.text;
    EXPECT_THAT(good.text, HasSubstr("Signature Verified Successfully"));
    hearth::testing::writeFile(inFolder("record.pdf"), pdf(id) + " ");
    const auto bad = hearth::testing::runCommand(check);
    EXPECT_NE(bad.exitCode, 0);
    EXPECT_THAT(bad.text, HasSubstr("Signature Verification Failure"));
}

TEST_F(SigningTest, whatWasTamperedWithIsNotSigned) {
    const auto id = issueOne(visit);
    const auto number = valueOf(store->record(id)).line.header.record;
    store.reset();
    ASSERT_EQ(
        sqlOn(path(), "DROP TRIGGER record_pdfs_stay; UPDATE record_pdfs SET pdf = CAST('%PDF' AS BLOB);"),
        "");
    store = valueOf(Store::open(path(), Access::Write, clock));
    valueOf(store->makeSigningKey(kKeyPassphrase));
    unlock();
    const auto refused = store->signWaiting(10);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error(), (Error{ErrorCode::RecordAltered, {number, "pdf"}}));
    EXPECT_EQ(signature(id), std::nullopt);
}

TEST_F(SigningTest, keysAndSignaturesAreOnlyEverAdded) {
    valueOf(store->makeSigningKey(kKeyPassphrase));
    unlock();
    static_cast<void>(issueOne(visit));
    store.reset();
    for (const char* sql : {"UPDATE signing_keys SET by = 'x';", "DELETE FROM signing_keys;",
                            "DELETE FROM record_signatures;", "UPDATE record_signatures SET at = 'x';",
                            "INSERT OR REPLACE INTO signing_keys SELECT * FROM signing_keys;",
                            "INSERT OR REPLACE INTO record_signatures SELECT * FROM record_signatures;"}) {
        EXPECT_THAT(sqlOn(path(), sql), HasSubstr("is never")) << sql;
    }
}

}  // namespace
}  // namespace hearth::store
