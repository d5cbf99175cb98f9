// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/civil_date.h"
#include "core/record/diagram.h"
#include "core/record/plot.h"
#include "core/rulebook/finding.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

/// A record as data: what stands on the page, worded, in order, with no geometry. ui/words makes it, ui/paper
/// lays it out, the snapshot freezes it. All text is UTF-8 in the record's language.
namespace hearth::record {

struct CaptionedValue {  // one captioned value
    std::string caption;
    std::vector<std::string> lines;  // what it says; one line or more
    bool absent = false;             // printed as a dash, with lines[0] as the reason
    bool operator==(const CaptionedValue&) const = default;
};

/// The outcome in words and shape, first and big.
struct Headline {
    rulebook::Outcome outcome = rulebook::Outcome::NoVerdict;
    std::string sentence;
    std::vector<std::string> details;
    bool operator==(const Headline&) const = default;
};

/// Captioned values in a grid of `columns`.
struct FieldGrid {
    std::string title;
    int columns = 3;
    std::vector<CaptionedValue> fields;
    bool operator==(const FieldGrid&) const = default;
};

enum class Align { Left, Right };
struct Column {
    std::string title;
    Align align = Align::Left;
    double weight = 1.0;  // share of the width
    bool operator==(const Column&) const = default;
};
/// Breaks between rows with the heads repeated.
struct Table {
    std::string title;
    std::vector<Column> columns;
    std::vector<std::vector<std::string>> rows;
    std::vector<std::string> total;  // the last row, strong; empty: none
    std::string note;                // small print below
    int toWrite = 0;                 // empty rows below them, to be filled by pen
    bool operator==(const Table&) const = default;
};

struct FindingLine {
    rulebook::Outcome outcome = rulebook::Outcome::NoVerdict;
    std::string title;     // "Tightness: pass"
    std::string measured;  // "0.04 mbar (limit: below 0.2 mbar)"
    std::string why;
    std::vector<std::string> notes;
    std::vector<std::string> sources;  // "IGEM/UP/1B Edition 4 · confirmed by … on …"
    bool operator==(const FindingLine&) const = default;
};
struct FindingList {
    std::string title;
    std::vector<FindingLine> findings;
    bool operator==(const FindingList&) const = default;
};

struct Paragraph {
    std::string title;
    std::string text;  // flows over pages; "\n" breaks
    bool strong = false;
    bool operator==(const Paragraph&) const = default;
};

struct Signature {
    std::string caption;  // "Tested by"
    std::string name;
    std::string detail;        // "card 0000001, 25 November 2026"
    std::string strokes = {};  // of the pen, where it was drawn (reg::strokesText)
    bool operator==(const Signature&) const = default;
};
struct Signatures {
    std::vector<Signature> signatures;
    bool operator==(const Signatures&) const = default;
};

/// What a person declares or answers, in ink of full size: "Safety defects: none found".
struct Statement {
    std::string caption;
    std::string text;                          // the answer
    std::optional<rulebook::Outcome> outcome;  // with its shape; none: no verdict is meant
    std::vector<std::string> details;          // below it
    bool operator==(const Statement&) const = default;
};
struct Statements {
    std::string title;
    std::vector<Statement> statements;
    bool operator==(const Statements&) const = default;
};

/// A warning that must be read from across a room, in a frame: "DANGER – DO NOT USE".
struct Alert {
    rulebook::Outcome outcome = rulebook::Outcome::Fail;
    std::string word;
    std::string grade;                // "Immediately Dangerous"
    std::string meaning;              // what that says, in a sentence
    std::vector<std::string> toTick;  // on a blank: grades to tick one of, instead of `grade`
    bool operator==(const Alert&) const = default;
};

/// Of a letter, instead of a record's title: who writes, to whom (where an envelope's window shows it), when
/// and about what.
struct LetterHead {
    std::vector<std::string> sender;  // the name first
    std::vector<std::string> recipient;
    std::string date;
    std::string subject;
    bool operator==(const LetterHead&) const = default;
};

/// A place to write on by pen: captioned lines, and answers to tick.
struct WriteField {
    std::string caption;
    std::vector<std::string> ticks;
    int lines = 1;      // over the whole width where more than one; none: only to tick
    bool wide = false;  // half the width at least
    bool operator==(const WriteField&) const = default;
};
struct WriteIn {
    std::string title;
    std::vector<WriteField> fields;
    bool operator==(const WriteIn&) const = default;
};

/// A photograph with what it shows. A snapshot holds its digest and type; the bytes lie in the store, which
/// puts them in when it reads a record. Without them its place stays empty.
struct Picture {
    std::string of;       // what it is of: "condensing boiler (kitchen)"
    std::string caption;  // what it shows
    std::string digest;   // SHA-256 of the bytes, hexadecimal
    std::string mediaType;
    std::string bytes;
    bool operator==(const Picture&) const = default;
};
struct Pictures {
    std::string title;
    std::vector<Picture> pictures;
    bool operator==(const Pictures&) const = default;
};

using Block = std::variant<Headline, FieldGrid, Table, FindingList, Paragraph, Signatures, Statements, Alert,
                           LetterHead, WriteIn, Plots, Pictures, Diagram>;

/// The firm's picture at the head of the first page. A snapshot holds its digest and type; the bytes lie once
/// in the store, which puts them in when it reads a record. Without its bytes the page is the same without
/// the picture: it proves nothing.
struct Logo {
    std::string digest;     // SHA-256 of the bytes, hexadecimal
    std::string mediaType;  // "image/png", "image/jpeg"
    std::string bytes;
    bool operator==(const Logo&) const = default;
};

/// What it is laid out for. A record stays on the paper that it was issued on.
enum class Paper { A4, Letter };

struct Document {
    std::string kind;  // kindCode
    std::string language = "en";
    std::string title;     // "Gas tightness and purge record"
    std::string subtitle;  // what it follows: the standard and its edition
    std::string firm;      // who issues it, one line
    std::optional<Logo> logo = {};
    std::string number;  // "A-000017"; empty on a draft
    int revision = 1;
    std::string issued;        // "25 November 2026", worded
    std::string banner;        // "Demonstration: not a real record", "Draft"; empty: none
    std::string caution;       // one line at the foot of each page
    std::string pageWord;      // "page %1 of %2"
    std::string revisionWord;  // "revision %1"
    std::string digestWord;    // "digest"
    std::string supersedes;    // worded line: "replaces A-000016 revision 1: …"; empty: none
    Paper paper = Paper::A4;
    std::vector<Block> blocks;
    bool operator==(const Document&) const = default;
};

/// The digests of the pictures that it shows, each once, in rising order.
[[nodiscard]] std::vector<std::string> pictureDigests(const Document& document);

}  // namespace hearth::record
