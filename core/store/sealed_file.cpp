// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/backup_seal.h"
#include "core/store/failure.h"
#include "core/store/seal_header.h"

#include <algorithm>

namespace hearth::store {
namespace {

constexpr std::size_t kMoreInPiece = crypto_secretstream_xchacha20poly1305_ABYTES;
using Stream = crypto_secretstream_xchacha20poly1305_state;
using FileKey = SecretBytes<kSealKeySize>;

[[noreturn]] void sealedDamaged(const std::filesystem::path& path, const char* what) {
    throw Failure(ErrorCode::BackupDamaged, {path.string(), what});
}

/// A header for one file, and the stream that its pieces go through; `key` is the file's own, by lot.
SealHeader beginSealed(const Sealing& sealing, FileKey& key, Stream& stream) {
    SealHeader header;
    header.cost = sealing.cost;
    header.salt = sealing.salt;
    header.sealKey = sealing.sealKey;
    std::copy_n(sealing.signKey.data() + crypto_sign_SEEDBYTES, header.signKey.size(),
                header.signKey.begin());
    crypto_secretstream_xchacha20poly1305_keygen(key.data());
    crypto_box_seal(header.sealedKey.data(), key.data(), FileKey::size(), sealing.sealKey.data());
    crypto_secretstream_xchacha20poly1305_init_push(&stream, header.streamStart.data(), key.data());
    signHeader(header, sealing.signKey);
    return header;
}

FileDigest writePieces(InFile& source, OutFile& target, Stream& stream, const HeaderCheck& check) {
    std::vector<Byte> piece(kSealChunkSize);
    std::vector<Byte> next(kSealChunkSize);
    std::vector<Byte> coded(kSealChunkSize + kMoreInPiece);
    PieceDigest digest;
    std::size_t size = source.read(piece);
    for (bool isLast = false; !isLast;) {
        const std::size_t nextSize = source.read(next);
        isLast = nextSize == 0;
        digest.take({piece.data(), size});
        crypto_secretstream_xchacha20poly1305_push(
            &stream, coded.data(), nullptr, piece.data(), size, check.data(), check.size(),
            isLast ? crypto_secretstream_xchacha20poly1305_TAG_FINAL
                   : crypto_secretstream_xchacha20poly1305_TAG_MESSAGE);
        target.write({coded.data(), size + kMoreInPiece});
        piece.swap(next);
        size = nextSize;
    }
    return digest.finish();
}

/// Hands the pieces to `take`, each when it has proved to be whole. The last one says that it is: a file that
/// was cut off anywhere, or has something after its end, is found.
template <class Take>
void readPieces(InFile& source, const std::filesystem::path& path, const SealHeader& header,
                const FileKey& key, const Take& take) {
    Stream stream{};
    const auto check = checkIn(bytesOf(header));
    if (crypto_secretstream_xchacha20poly1305_init_pull(&stream, header.streamStart.data(), key.data()) !=
        0) {
        sealedDamaged(path, "header");
    }
    std::vector<Byte> coded(kSealChunkSize + kMoreInPiece);
    std::vector<Byte> piece(kSealChunkSize);
    bool isLast = false;
    for (std::size_t size = source.read(coded); size > 0; size = source.read(coded)) {
        unsigned char tag = 0;
        if (isLast || size < kMoreInPiece ||
            crypto_secretstream_xchacha20poly1305_pull(&stream, piece.data(), nullptr, &tag, coded.data(),
                                                       size, check.data(), check.size()) != 0) {
            sealedDamaged(path, "content");
        }
        isLast = tag == crypto_secretstream_xchacha20poly1305_TAG_FINAL;
        take(std::span<const Byte>(piece.data(), size - kMoreInPiece));
    }
    if (!isLast) {
        sealedDamaged(path, "end");
    }
}

SealHeader readSealHeader(InFile& source, const std::filesystem::path& path) {
    SealHeaderBytes bytes{};
    const std::size_t size = source.read(bytes);
    return parseSealHeader(std::span<const Byte>(bytes.data(), size), path);
}

FileKey openKeyOf(const SealHeader& header, const std::string& passphrase,
                  const std::filesystem::path& path) {
    if (passphrase.empty()) {
        throw Failure(ErrorCode::PassphraseMissing, {path.string()});
    }
    const KeyPairs pairs = keyPairsOf(passphrase, header.cost, header.salt);
    if (pairs.sealKey != header.sealKey) {
        throw Failure(ErrorCode::PassphraseWrong, {path.string()});
    }
    if (pairs.checkKey != header.signKey || !isSignedBy(header, pairs.checkKey)) {
        sealedDamaged(path, "signature");
    }
    FileKey key;
    if (crypto_box_seal_open(key.data(), header.sealedKey.data(), header.sealedKey.size(),
                             pairs.sealKey.data(), pairs.openKey.data()) != 0) {
        sealedDamaged(path, "header");
    }
    return key;
}

}  // namespace

bool isSealedFile(const std::filesystem::path& path) {
    const auto isSealed = guarded([&] {
        InFile file(path);
        std::array<Byte, kSealMagic.size()> magic{};
        return file.read(magic) == magic.size() && magic == kSealMagic;
    });
    return isSealed.value_or(false);
}

void sealFile(const Sealing& sealing, const std::filesystem::path& plain,
              const std::filesystem::path& sealed) {
    readySodium();
    FileKey key;
    Stream stream{};
    const SealHeader header = beginSealed(sealing, key, stream);
    FileDigest wrote;
    {
        InFile source(plain);
        OutFile target(sealed);
        const auto bytes = bytesOf(header);
        target.write(bytes);
        wrote = writePieces(source, target, stream, checkIn(bytes));
        target.finish();
    }
    sodium_memzero(&stream, sizeof stream);
    InFile again(sealed);
    again.forgetCached();
    PieceDigest digest;
    readPieces(again, sealed, readSealHeader(again, sealed), key,
               [&](std::span<const Byte> piece) { digest.take(piece); });
    if (digest.finish() != wrote) {
        sealedDamaged(sealed, "content");
    }
}

void unsealFile(const std::filesystem::path& sealed, const std::string& passphrase,
                const std::filesystem::path& plain) {
    InFile source(sealed);
    const SealHeader header = readSealHeader(source, sealed);
    const FileKey key = openKeyOf(header, passphrase, sealed);
    OutFile target(plain);
    readPieces(source, sealed, header, key, [&](std::span<const Byte> piece) { target.write(piece); });
    target.finish();
}

}  // namespace hearth::store
