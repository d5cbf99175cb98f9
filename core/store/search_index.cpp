// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/search_index.h"

#include "core/store/bin_repository.h"
#include "core/store/kept_repository.h"

#include <algorithm>
#include <array>
#include <vector>

namespace hearth::store {
namespace {

/// Raised whenever documentOf() or the folding of words changes: stores are then indexed again.
constexpr std::string_view kSearchForm = "1";
constexpr std::string_view kFormSetting = "search_form";

constexpr std::array kEveryIndexed{Indexed::Premises, Indexed::Party, Indexed::Record, Indexed::Visit};

SearchDocument premisesDocument(const Connection& db, const UuidBytes& id) {
    SearchDocument document;
    db.query("SELECT p.line1, p.line2, p.town, p.postcode, p.uprn FROM premises AS p WHERE p.id = ? AND " +
                 notInBin("p.id"),
             {id}, [&](const Columns& row) {
                 document.addAddress({row.text(0), row.text(1), row.text(2), row.text(3)});
                 document.addNumber(row.text(4));
             });
    if (document.isEmpty()) {
        return document;
    }
    db.query(
        "SELECT p.name FROM roles AS r JOIN parties AS p ON p.id = r.party "
        "WHERE r.premises = ? AND r.until IS NULL AND " +
            notInBin("p.id"),
        {id}, [&](const Columns& row) { document.addName(row.text(0)); });
    db.query(
        "SELECT i.mprn, i.meter_serial FROM installations AS i WHERE i.premises = ? AND " + notInBin("i.id"),
        {id}, [&](const Columns& row) {
            document.addNumber(row.text(0));
            document.addNumber(row.text(1));
        });
    db.query(
        "SELECT a.serial, a.gc_number FROM installations AS i JOIN appliances AS a "
        "ON a.installation = i.id WHERE i.premises = ? AND " +
            notInBin("i.id") + " AND " + notInBin("a.id"),
        {id}, [&](const Columns& row) {
            document.addNumber(row.text(0));
            document.addNumber(row.text(1));
        });
    return document;
}

SearchDocument partyDocument(const Connection& db, const UuidBytes& id) {
    SearchDocument document;
    db.query(
        "SELECT p.name, p.line1, p.line2, p.town, p.postcode, p.telephone, p.email FROM parties AS p "
        "WHERE p.id = ? AND " +
            notInBin("p.id"),
        {id}, [&](const Columns& row) {
            document.addName(row.text(0));
            document.addAddress({row.text(1), row.text(2), row.text(3), row.text(4)});
            document.addTelephone(row.text(5));
            document.addEmail(row.text(6));
        });
    return document;
}

/// From the one line that a record's snapshot keeps: the postcode is its last part, the town the one before.
reg::Address addressFromLine(std::string_view line) {
    constexpr std::string_view kBetween = ", ";
    reg::Address address;
    const auto cutLast = [&] {
        const std::size_t at = line.rfind(kBetween);
        const bool whole = at == std::string_view::npos;
        const std::string last(whole ? line : line.substr(at + kBetween.size()));
        line = whole ? std::string_view() : line.substr(0, at);
        return last;
    };
    address.postcode = cutLast();
    address.town = cutLast();
    address.line1 = line;
    return address;
}

SearchDocument recordDocument(const Connection& db, const UuidBytes& id) {
    SearchDocument document;
    db.query(
        "SELECT h.record, s.address, s.customer FROM record_headers AS h "
        "JOIN record_snapshots AS s ON s.record = h.id WHERE h.id = ?",
        {id}, [&](const Columns& row) {
            document.addRecordNumber(row.text(0));
            document.addAddress(addressFromLine(row.text(1)));
            document.addName(row.text(2));
        });
    return document;
}

SearchDocument visitDocument(const Connection& db, const UuidBytes& id) {
    SearchDocument document;
    db.query("SELECT e.text FROM entries AS e WHERE e.subject = ? AND e.item = 'visit.reference' AND " +
                 notInBin("e.subject"),
             {id}, [&](const Columns& row) { document.addNumber(row.text(0)); });
    return document;
}

/// The ids of all that may be found, the oldest first.
std::vector<UuidBytes> rowsOf(const Connection& db, Indexed kind) {
    constexpr std::array<std::string_view, kEveryIndexed.size()> kFrom{
        "SELECT id FROM premises ORDER BY id", "SELECT id FROM parties ORDER BY id",
        "SELECT record FROM record_snapshots ORDER BY record",
        "SELECT subject FROM entries WHERE item = 'visit.reference' ORDER BY subject"};
    return db.all(kFrom.at(static_cast<std::size_t>(kind)), {},
                  [](const Columns& row) { return row.uuid(0); });
}

std::string codedText(Indexed kind, const std::set<std::string>& words) {
    std::string text;
    for (const auto& word : words) {
        text += text.empty() ? "" : " ";
        text += indexedLetter(kind);
        text += word;
    }
    return text;
}

using Texts = std::array<std::string, kSearchFields>;

Texts textsOf(Indexed kind, const SearchDocument& document) {
    Texts texts;
    for (std::size_t i = 0; i < kSearchFields; ++i) {
        texts.at(i) = codedText(kind, document.words(static_cast<SearchField>(i)));
    }
    return texts;
}

void insertTexts(Connection& db, std::int64_t thing, const Texts& texts) {
    db.run("INSERT INTO search_text (rowid, numbers, names, streets, towns) VALUES (?, ?, ?, ?, ?)",
           {thing, texts[0], texts[1], texts[2], texts[3]});
}

void insertThing(Connection& db, Indexed kind, const UuidBytes& row, const Texts& texts) {
    const auto thing = db.number("SELECT coalesce(max(thing), 0) + 1 FROM search_things");
    db.run("INSERT INTO search_things (thing, kind, row) VALUES (?, ?, ?)",
           {thing, std::string(indexedName(kind)), row});
    insertTexts(db, thing, texts);
}

struct Standing {
    std::int64_t thing;
    Texts texts;
};
std::optional<Standing> standingThing(const Connection& db, Indexed kind, const UuidBytes& row) {
    return db.first(
        "SELECT t.thing, s.numbers, s.names, s.streets, s.towns FROM search_things AS t "
        "JOIN search_text AS s ON s.rowid = t.thing WHERE t.row = ? AND t.kind = ?",
        {row, std::string(indexedName(kind))}, [](const Columns& found) {
            return Standing{found.integer(0), {found.text(1), found.text(2), found.text(3), found.text(4)}};
        });
}

}  // namespace

std::string_view indexedName(Indexed kind) {
    constexpr std::array<std::string_view, kEveryIndexed.size()> kNames{"premises", "party", "record",
                                                                        "visit"};
    return kNames.at(static_cast<std::size_t>(kind));
}

char indexedLetter(Indexed kind) {
    constexpr std::string_view kLetters = "pyrv";
    return kLetters[static_cast<std::size_t>(kind)];
}

SearchDocument documentOf(const Connection& db, Indexed kind, const UuidBytes& row) {
    switch (kind) {
        case Indexed::Premises:
            return premisesDocument(db, row);
        case Indexed::Party:
            return partyDocument(db, row);
        case Indexed::Record:
            return recordDocument(db, row);
        case Indexed::Visit:
            break;
    }
    return visitDocument(db, row);
}

void refreshSearch(Connection& db, Indexed kind, const UuidBytes& row) {
    const SearchDocument document = documentOf(db, kind, row);
    const Texts texts = textsOf(kind, document);
    const auto standing = standingThing(db, kind, row);
    if (!standing) {
        if (!document.isEmpty()) {
            insertThing(db, kind, row, texts);
        }
        return;
    }
    if (standing->texts == texts) {
        return;
    }
    db.run("DELETE FROM search_text WHERE rowid = ?", {standing->thing});
    if (document.isEmpty()) {
        db.run("DELETE FROM search_things WHERE thing = ?", {standing->thing});
    } else {
        insertTexts(db, standing->thing, texts);
    }
}

void rebuildSearch(Connection& db) {
    Transaction transaction(db);
    // Made anew and not emptied: what is damaged can't always be emptied.
    const std::string made = db.text("SELECT sql FROM sqlite_schema WHERE name = 'search_text'");
    db.script("DROP TABLE search_text; DELETE FROM search_things;");
    db.script(made);
    for (const auto kind : kEveryIndexed) {
        for (const auto& row : rowsOf(db, kind)) {
            const SearchDocument document = documentOf(db, kind, row);
            if (!document.isEmpty()) {
                insertThing(db, kind, row, textsOf(kind, document));
            }
        }
    }
    db.run(
        "INSERT INTO settings (name, value) VALUES (?, ?) "
        "ON CONFLICT (name) DO UPDATE SET value = excluded.value",
        {std::string(kFormSetting), std::string(kSearchForm)});
    transaction.commit();
}

void rebuildOutdatedSearch(Connection& db) {
    if (readSetting(db, std::string(kFormSetting)) != kSearchForm) {
        rebuildSearch(db);
    }
}

namespace {

/// Whether SQLite finds the words of each text where they should be. It asks for a writer though nothing is
/// written.
bool isSoundItself(Connection& db) {
    if (db.isReadOnly()) {
        return true;
    }
    return guarded([&] { db.run("INSERT INTO search_text (search_text) VALUES ('integrity-check')"); })
        .has_value();
}

int staleOf(const Connection& db, Indexed kind, std::int64_t& expected) {
    int stale = 0;
    for (const auto& row : rowsOf(db, kind)) {
        const SearchDocument document = documentOf(db, kind, row);
        const auto standing = standingThing(db, kind, row);
        expected += document.isEmpty() ? 0 : 1;
        const bool right =
            document.isEmpty() ? !standing : standing && standing->texts == textsOf(kind, document);
        stale += right ? 0 : 1;
    }
    return stale;
}

}  // namespace

void tightenSearch(Connection& db) {
    db.run("INSERT INTO search_text (search_text) VALUES ('optimize')");
}

int staleInSearch(Connection& db) {
    const ReadScope oneState(db);
    int stale = isSoundItself(db) ? 0 : 1;
    std::int64_t expected = 0;
    for (const auto kind : kEveryIndexed) {
        stale += staleOf(db, kind, expected);
    }
    // No row stands behind what is more than that.
    const auto things = db.number("SELECT count(*) FROM search_things");
    return stale + static_cast<int>(std::max<std::int64_t>(things - expected, 0));
}

}  // namespace hearth::store
