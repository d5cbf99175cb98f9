-- SPDX-License-Identifier: GPL-3.0-or-later
-- Whom a record went to, beside what happened to it. And the firm's signatures over the PDFs as issued: Ed25519,
-- detached, each over the bytes of one PDF. A key's secret half is sealed under a passphrase (core/store/signing_key.h);
-- the newest key signs, the older ones stay, since their signatures hold on.

ALTER TABLE record_events ADD COLUMN sent_to TEXT NOT NULL DEFAULT '';

CREATE TABLE signing_keys (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    position INTEGER NOT NULL UNIQUE,
    public_key BLOB NOT NULL CHECK (length(public_key) = 32),
    operations INTEGER NOT NULL,
    memory INTEGER NOT NULL,
    salt BLOB NOT NULL CHECK (length(salt) = 16),
    nonce BLOB NOT NULL CHECK (length(nonce) = 24),
    sealed BLOB NOT NULL CHECK (length(sealed) = 48),
    by TEXT NOT NULL,
    at TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE record_signatures (
    record BLOB NOT NULL PRIMARY KEY REFERENCES record_headers (id),
    key BLOB NOT NULL REFERENCES signing_keys (id),
    signature BLOB NOT NULL CHECK (length(signature) = 64),
    at TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX record_signatures_by_key ON record_signatures (key);

CREATE TRIGGER signing_keys_stay BEFORE UPDATE ON signing_keys
BEGIN SELECT raise(ABORT, 'a key is never changed'); END;
CREATE TRIGGER signing_keys_are_kept BEFORE DELETE ON signing_keys
BEGIN SELECT raise(ABORT, 'a key is never removed'); END;
CREATE TRIGGER signing_keys_once BEFORE INSERT ON signing_keys
WHEN EXISTS (SELECT 1 FROM signing_keys AS k WHERE k.id = new.id OR k.position >= new.position)
BEGIN SELECT raise(ABORT, 'a key is never replaced'); END;

CREATE TRIGGER record_signatures_stay BEFORE UPDATE ON record_signatures
BEGIN SELECT raise(ABORT, 'a signature is never changed'); END;
CREATE TRIGGER record_signatures_are_kept BEFORE DELETE ON record_signatures
BEGIN SELECT raise(ABORT, 'a signature is never removed'); END;
CREATE TRIGGER record_signatures_once BEFORE INSERT ON record_signatures
WHEN EXISTS (SELECT 1 FROM record_signatures AS s WHERE s.record = new.record)
BEGIN SELECT raise(ABORT, 'a signature is never replaced'); END;
