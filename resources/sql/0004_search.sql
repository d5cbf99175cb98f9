-- SPDX-License-Identifier: GPL-3.0-or-later
-- Finding things by the words that they hold: one text for each thing, in an index of SQLite's own (FTS5), in place of
-- a table with a row for each word. Derived, in the transaction of what it comes from; filled by the program when
-- the setting search_form is not the form that it writes (see core/store/search_index.h).

DROP TABLE search_words;

-- The newest has the highest number: what is found is handed out newest first without being sorted.
CREATE TABLE search_things (
    thing INTEGER NOT NULL PRIMARY KEY,
    kind TEXT NOT NULL,
    row BLOB NOT NULL CHECK (length(row) = 16),
    UNIQUE (row, kind)
) STRICT;

-- Words are folded by the program; before each stands one letter for the kind of thing, so that the words of each
-- kind lie together. The beginnings of one to four letters of a word have indexes of their own.
CREATE VIRTUAL TABLE search_text USING fts5 (
    numbers, names, streets, towns,
    detail = column, prefix = '2 3 4 5', tokenize = 'ascii'
);

UPDATE store SET min_reader = 4;
