// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/backup_seal.h"

#include "core/store/plain_file.h"
#include "core/store/seal_header.h"
#include "tests/core/store/store_fixture.h"

#include <random>

namespace hearth::store {
namespace {

namespace fs = std::filesystem;
using hearth::testing::readFile;
using hearth::testing::writeFile;

constexpr const char* kPassphrase = "kettle harbour violet";
// The least that libsodium takes: what a guess costs is not what is tested here.
constexpr KeyCost kCheap{crypto_pwhash_OPSLIMIT_MIN, crypto_pwhash_MEMLIMIT_MIN};

std::string bytesBy(unsigned seed, std::size_t size) {
    std::mt19937 random(seed);
    std::string bytes(size, '\0');
    for (auto& byte : bytes) {
        byte = static_cast<char>(random());
    }
    return bytes;
}

class Sealed : public ::testing::Test {
  protected:
    /// Seals bytes as the file `sealed()`.
    void seal(const std::string& bytes) {
        fs::remove(sealed());
        writeFile(m_folder / "plain", bytes);
        sealFile(sealing, m_folder / "plain", sealed());
    }
    /// What opening it gives: "ok", or the error's code with what was found.
    [[nodiscard]] std::string open(const std::string& passphrase = kPassphrase) {
        fs::remove(opened());
        const auto done = guarded([&] { unsealFile(sealed(), passphrase, opened()); });
        if (done) {
            return "ok";
        }
        std::string said(codeText(done.error().code));
        return done.error().details.size() > 1 ? said + " " + done.error().details.at(1) : said;
    }
    [[nodiscard]] fs::path sealed() const { return m_folder / "backup.hearth.sealed"; }
    [[nodiscard]] fs::path opened() const { return m_folder / "opened"; }

    const Sealing sealing = sealingFor(kPassphrase, kCheap);

  private:
    hearth::testing::TempDir m_folder;
};

TEST_F(Sealed, opensToWhatItWas) {
    for (const std::size_t size : {0U, 1U, 65535U, 65536U, 65537U, 131072U, 300000U}) {
        const std::string bytes = bytesBy(1, size);
        seal(bytes);
        EXPECT_EQ(open(), "ok") << size;
        EXPECT_EQ(readFile(opened()), bytes) << size;
        EXPECT_TRUE(isSealedFile(sealed()));
    }
}

TEST_F(Sealed, showsNothingOfWhatItHolds) {
    seal("Zofia Wiśniewska, 9 Ford End, 01632 960001");
    const std::string bytes = readFile(sealed());
    EXPECT_EQ(bytes.find("Zofia"), std::string::npos);
    const std::string once = bytes;
    seal("Zofia Wiśniewska, 9 Ford End, 01632 960001");
    EXPECT_NE(readFile(sealed()), once);  // a key of its own each time
}

TEST_F(Sealed, isForItsOwnerAlone) {
    seal("x");
    EXPECT_EQ(fs::status(sealed()).permissions(), fs::perms::owner_read | fs::perms::owner_write);
}

TEST_F(Sealed, wantsThePassphraseItWasSealedWith) {
    seal(bytesBy(2, 1000));
    EXPECT_EQ(open(""), "passphrase_missing");
    EXPECT_EQ(open("kettle harbour violets"), "passphrase_wrong");
    EXPECT_EQ(open("Kettle harbour violet"), "passphrase_wrong");
    EXPECT_FALSE(fs::exists(opened()));
}

TEST_F(Sealed, takesTheSameLettersFromAnyKeyboard) {
    const Sealing composed = sealingFor("caf\xC3\xA9 au lait", kCheap);
    const auto decomposed = keyPairsOf("cafe\xCC\x81 au lait", kCheap, composed.salt);
    EXPECT_EQ(decomposed.sealKey, composed.sealKey);
}

TEST_F(Sealed, whatTheStoreKeepsIsReadAsItIsWrittenAndOpensNothing) {
    const auto text = textOf(sealing);
    EXPECT_EQ(parseSealing(text), sealing);
    for (const auto& bad : {std::string(), std::string("1 2"), text.substr(0, text.size() - 1), "x" + text}) {
        EXPECT_FALSE(parseSealing(bad)) << bad;
    }
    const auto pairs = keyPairsOf(kPassphrase, kCheap, sealing.salt);
    const std::string secret(reinterpret_cast<const char*>(pairs.openKey.data()), pairs.openKey.size());
    std::array<char, 65> hex{};
    sodium_bin2hex(hex.data(), hex.size(), pairs.openKey.data(), pairs.openKey.size());
    EXPECT_EQ(text.find(hex.data()), std::string::npos);
}

// Whoever can read a synchronised folder knows the public key from any backup there, and can seal with it.
// What he can't do is sign.
TEST_F(Sealed, isRefusedWhenSomebodyElseMadeIt) {
    const Sealing other = sealingFor("another passphrase", kCheap);
    Sealing forged = sealing;
    forged.signKey = other.signKey;
    hearth::testing::TempDir folder;
    writeFile(folder / "plain", "a store of mine");
    sealFile(forged, folder / "plain", sealed());
    EXPECT_EQ(open(), "backup_damaged signature");
}

TEST_F(Sealed, saysThatANewerProgramMadeIt) {
    seal("x");
    std::string bytes = readFile(sealed());
    bytes.at(8) = 2;
    writeFile(sealed(), bytes);
    EXPECT_EQ(open(), "backup_newer 2");
}

TEST_F(Sealed, isNotJustAnyFile) {
    for (const auto& bytes :
         {std::string(), std::string("HLgr"), std::string("SQLite format 3"), bytesBy(3, 5000)}) {
        writeFile(sealed(), bytes);
        EXPECT_FALSE(isSealedFile(sealed()));
        EXPECT_EQ(open(), "store_not_ours");
    }
}

TEST_F(Sealed, piecesCannotChangePlaces) {
    seal(bytesBy(4, 3 * 65536));
    std::string bytes = readFile(sealed());
    constexpr std::size_t kPiece = 65536 + 17;
    std::swap_ranges(bytes.begin() + kSealHeaderSize, bytes.begin() + kSealHeaderSize + kPiece,
                     bytes.begin() + kSealHeaderSize + kPiece);
    writeFile(sealed(), bytes);
    EXPECT_EQ(open(), "backup_damaged content");
}

TEST_F(Sealed, isRefusedWhereverItWasCutOff) {
    seal(bytesBy(5, 150000));
    const std::string whole = readFile(sealed());
    std::mt19937 random(20261125);
    std::vector<std::size_t> lengths{0,
                                     7,
                                     8,
                                     kSealHeaderSize - 1,
                                     kSealHeaderSize,
                                     kSealHeaderSize + 1,
                                     kSealHeaderSize + 65536 + 17,
                                     kSealHeaderSize + 2 * (65536 + 17),
                                     whole.size() - 1};
    for (int i = 0; i < rounds(150, 2000); ++i) {
        lengths.push_back(random() % whole.size());
    }
    for (const auto length : lengths) {
        writeFile(sealed(), whole.substr(0, length));
        const std::string said = open();
        EXPECT_TRUE(said == "store_not_ours" || said.rfind("backup_damaged", 0) == 0)
            << length << " " << said;
    }
    writeFile(sealed(), whole + "x");
    EXPECT_EQ(open(), "backup_damaged content");
    writeFile(sealed(), whole + whole.substr(whole.size() - 300));
    EXPECT_EQ(open(), "backup_damaged content");
}

TEST_F(Sealed, isRefusedWhereverABitWasFlipped) {
    seal(bytesBy(6, 150000));
    const std::string whole = readFile(sealed());
    std::mt19937 random(500);
    std::vector<std::size_t> places;
    for (std::size_t i = 0; i < kSealHeaderSize; ++i) {
        places.push_back(i);  // every byte of the header
    }
    for (int i = 0; i < rounds(500, 5000); ++i) {
        places.push_back(kSealHeaderSize + random() % (whole.size() - kSealHeaderSize));
    }
    for (const auto place : places) {
        writeFile(sealed(), withFlippedBit(whole, place, static_cast<unsigned>(random())));
        const std::string said = open();
        EXPECT_TRUE(said == "store_not_ours" || said.rfind("backup_", 0) == 0) << place << " " << said;
    }
}

}  // namespace
}  // namespace hearth::store
