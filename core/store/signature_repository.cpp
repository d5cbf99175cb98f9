// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/signature_repository.h"

#include "core/store/record_repository.h"
#include "core/store/verification.h"

#include <algorithm>

namespace hearth::store {
namespace {

template <std::size_t kSize>
std::array<unsigned char, kSize> bytesIn(const Columns& columns, int column) {
    const std::string bytes = columns.bytes(column);
    std::array<unsigned char, kSize> array{};
    if (bytes.size() != kSize) {
        columns.notUnderstood("signing_keys");
    }
    std::transform(bytes.begin(), bytes.end(), array.begin(),
                   [](char c) { return static_cast<unsigned char>(c); });
    return array;
}

template <std::size_t kSize>
Blob blobOf(const std::array<unsigned char, kSize>& bytes) {
    return {std::string(bytes.begin(), bytes.end())};
}

Instant instantIn(const Columns& columns, int column) {
    Instant at{};
    if (!parseInstant(columns.text(column), at)) {
        columns.notUnderstood("signing_keys.at = " + columns.text(column));
    }
    return at;
}

constexpr std::string_view kWaiting =
    " FROM record_headers AS h WHERE NOT EXISTS (SELECT 1 FROM record_signatures AS s WHERE s.record = h.id)"
    " AND NOT EXISTS (SELECT 1 FROM record_events AS e WHERE e.record = h.id AND e.event = 'payload erased')";

void keepSignature(Session& session, RecordId id, std::string_view pdf) {
    session.db.run("INSERT INTO record_signatures (record, key, signature, at) VALUES (?, ?, ?, ?)",
                   {id.bytes, session.signer->id.bytes, Blob{signatureOver(pdf, session.signer->secret)},
                    instantText(session.clock.now())});
}

/// The key that the session holds may have been renewed by another program since.
bool isNewest(const Connection& db, KeyId id) {
    const auto newest = db.first("SELECT id FROM signing_keys ORDER BY position DESC LIMIT 1", {},
                                 [](const Columns& columns) { return columns.uuid(0); });
    return newest == id.bytes;
}

}  // namespace

std::vector<KeyLine> readKeys(const Connection& db) {
    auto keys = db.all(
        "SELECT k.id, k.public_key, k.by, k.at, (SELECT count(*) FROM record_signatures AS s WHERE s.key = "
        "k.id) "
        "FROM signing_keys AS k ORDER BY k.position DESC",
        {}, [](const Columns& columns) {
            return KeyLine{KeyId{columns.uuid(0)}, bytesIn<32>(columns, 1),
                           columns.text(2),        instantIn(columns, 3),
                           std::nullopt,           columns.number(4)};
        });
    for (std::size_t i = 1; i < keys.size(); ++i) {
        keys[i].until = keys[i - 1].from;
    }
    return keys;
}

void keepKey(Session& session, const SealedKey& key) {
    Transaction transaction(session.db);
    session.db.run(
        "INSERT INTO signing_keys (id, position, public_key, operations, memory, salt, nonce, sealed, by, "
        "at) "
        "VALUES (?, (SELECT coalesce(max(position), 0) + 1 FROM signing_keys), ?, ?, ?, ?, ?, ?, ?, ?)",
        {session.newId(), blobOf(key.publicKey), static_cast<std::int64_t>(key.cost.operations),
         static_cast<std::int64_t>(key.cost.memory), blobOf(key.salt), blobOf(key.nonce), blobOf(key.sealed),
         session.actor, instantText(session.clock.now())});
    transaction.commit();
}

OpenedKey openNewestKey(const Connection& db, const std::string& passphrase) {
    struct Row {
        KeyId id;
        SealedKey key;
    };
    const auto row = db.first(
        "SELECT id, public_key, operations, memory, salt, nonce, sealed FROM signing_keys ORDER BY position "
        "DESC "
        "LIMIT 1",
        {}, [](const Columns& columns) {
            Row read{KeyId{columns.uuid(0)}, {}};
            read.key.publicKey = bytesIn<32>(columns, 1);
            read.key.cost = {static_cast<std::uint64_t>(columns.integer(2)),
                             static_cast<std::uint64_t>(columns.integer(3))};
            read.key.salt = bytesIn<16>(columns, 4);
            read.key.nonce = bytesIn<24>(columns, 5);
            read.key.sealed = bytesIn<48>(columns, 6);
            return read;
        });
    if (!row) {
        throw Failure(ErrorCode::SigningKeyMissing, {});
    }
    const auto secret = openSealedKey(row->key, passphrase);
    if (!secret) {
        throw Failure(ErrorCode::KeyPassphraseWrong, {});
    }
    return {row->id, *secret};
}

int waitingCount(const Connection& db) {
    return static_cast<int>(db.number("SELECT count(*)" + std::string(kWaiting)));
}

int signWaiting(Session& session, int most) {
    if (!session.signer || !isNewest(session.db, session.signer->id)) {
        throw Failure(ErrorCode::SigningLocked, {});
    }
    Transaction transaction(session.db);
    const auto ids = session.db.all(
        "SELECT h.id" + std::string(kWaiting) + " ORDER BY h.issued_at, h.id LIMIT ?", {std::int64_t{most}},
        [](const Columns& columns) { return RecordId{columns.uuid(0)}; });
    for (const auto& id : ids) {
        const auto line = findRecord(session.db, id);
        if (!line) {
            throw Failure(ErrorCode::NotFound, {"record", id.text()});
        }
        verifyLink(session.db, *line);
        keepSignature(session, id, verifiedPdf(session.db, *line));
    }
    transaction.commit();
    return static_cast<int>(ids.size());
}

void signIssued(Session& session, RecordId id, std::string_view pdf) {
    if (session.signer && isNewest(session.db, session.signer->id)) {
        keepSignature(session, id, pdf);
    }
}

std::optional<RecordSignature> readSignature(const Connection& db, RecordId id) {
    struct Row {
        std::string bytes;
        KeyId key;
        Instant at;
    };
    const auto row = db.first("SELECT signature, key, at FROM record_signatures WHERE record = ?", {id.bytes},
                              [](const Columns& columns) {
                                  return Row{columns.bytes(0), KeyId{columns.uuid(1)}, instantIn(columns, 2)};
                              });
    if (!row) {
        return std::nullopt;
    }
    for (const auto& key : readKeys(db)) {
        if (key.id == row->key) {
            return RecordSignature{row->bytes, key, row->at};
        }
    }
    throw Failure(ErrorCode::StoreDamaged, {db.path(), "record_signatures.key"});
}

SignaturesHeld holdSignatures(const Connection& db) {
    SignaturesHeld held;
    // A key that is not there, or a PDF, is a signature that holds over nothing.
    const auto wrong = db.all(
        "SELECT h.record, s.signature, coalesce(k.public_key, x''), coalesce(p.pdf, x'')"
        " FROM record_signatures AS s JOIN record_headers AS h ON h.id = s.record"
        " LEFT JOIN signing_keys AS k ON k.id = s.key LEFT JOIN record_pdfs AS p ON p.record = s.record"
        " WHERE NOT EXISTS (SELECT 1 FROM record_events AS e"
        " WHERE e.record = s.record AND e.event = 'payload erased') ORDER BY h.issued_at, h.id",
        {}, [&held](const Columns& columns) -> std::string {
            const bool holds =
                columns.bytes(2).size() == std::tuple_size_v<record::PublicKey> &&
                record::signatureHolds(columns.bytes(3), columns.bytes(1), bytesIn<32>(columns, 2));
            held.right += holds ? 1 : 0;
            return holds ? std::string() : columns.text(0);
        });
    std::copy_if(wrong.begin(), wrong.end(), std::back_inserter(held.wrong),
                 [](const std::string& number) { return !number.empty(); });
    return held;
}

}  // namespace hearth::store
