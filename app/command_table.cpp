// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command_table.h"

#include "app/due_table.h"
#include "app/trace_command.h"
#include "core/record/language.h"
#include "ui/words/blank_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <utility>

namespace hearth::app {
namespace {

std::function<bool(CommandLine&, const QString&)> text(std::optional<QString> CommandLine::*field) {
    return [field](CommandLine& line, const QString& value) {
        line.*field = value;
        return !value.isEmpty();
    };
}

std::function<bool(CommandLine&, const QString&)> mark(bool CommandLine::*field) {
    return [field](CommandLine& line, const QString&) {
        line.*field = true;
        return true;
    };
}

bool keepScheme(CommandLine& line, const QString& value) {
    using ui::look::Scheme;
    const std::array<std::pair<QLatin1String, Scheme>, 3> schemes{
        {{QLatin1String("light"), Scheme::Light},
         {QLatin1String("dark"), Scheme::Dark},
         {QLatin1String("contrast"), Scheme::HighContrast}}};
    for (const auto& [name, scheme] : schemes) {
        if (value == name) {
            line.scheme = scheme;
        }
    }
    return line.scheme.has_value();
}

constexpr int kAnyNumber = 1000;

/// Which records are meant, where there are many.
std::vector<Option> choiceOptions() {
    return {
        {QLatin1String("from"), QLatin1String("DATE"),
         QT_TRANSLATE_NOOP("CommandLine", "issued on that day or later"), text(&CommandLine::from)},
        {QLatin1String("until"), QLatin1String("DATE"),
         QT_TRANSLATE_NOOP("CommandLine", "issued on that day or before"), text(&CommandLine::until)},
        {QLatin1String("of"), QLatin1String("PERSON"),
         QT_TRANSLATE_NOOP("CommandLine", "of the premises of that landlord, customer or agent"),
         text(&CommandLine::of)},
        {QLatin1String("all"),
         {},
         QT_TRANSLATE_NOOP("CommandLine", "also those that are superseded or void"),
         mark(&CommandLine::all)},
    };
}

}  // namespace

bool keepRevision(CommandLine& line, const QString& value) {
    bool isNumber = false;
    line.revision = value.toInt(&isNumber);
    return isNumber && line.revision > 0;
}

namespace {

bool keepCopies(CommandLine& line, const QString& value) {
    constexpr int kMost = 200;
    bool isNumber = false;
    line.copies = value.toInt(&isNumber);
    return isNumber && line.copies > 0 && line.copies <= kMost;
}

bool keepRecordLanguage(CommandLine& line, const QString& value) {
    line.recordLanguage = value;
    return record::isRecordLanguage(value.toStdString());
}

/// How a record is issued.
std::vector<Option> issueOptions() {
    return {
        {QLatin1String("revises"), QLatin1String("NUMBER"),
         QT_TRANSLATE_NOOP("CommandLine",
                           "issue a new revision of this record; it stays readable, marked as replaced"),
         text(&CommandLine::revises)},
        {QLatin1String("reason"), QLatin1String("TEXT"),
         QT_TRANSLATE_NOOP("CommandLine", "why there is a new revision; printed on it"),
         text(&CommandLine::reason)},
        {QLatin1String("wording"), QLatin1String("CODE"),
         QT_TRANSLATE_NOOP("CommandLine",
                           "language of the record: en, cy, pl, en+cy or en+pl; without it what whoever "
                           "receives it prefers"),
         keepRecordLanguage},
    };
}

bool keepBlocks(CommandLine& line, const QString& value) {
    bool isNumber = false;
    line.blocks = value.toInt(&isNumber);
    return isNumber && *line.blocks > 0 && *line.blocks <= ui::words::kMostOnBlank;
}

std::vector<Option> usualOptions() {
    return {
        {QLatin1String("store"), QLatin1String("FILE"),
         QT_TRANSLATE_NOOP("CommandLine", "use this store instead of your own"), text(&CommandLine::store)},
        {QLatin1String("demonstration"),
         {},
         QT_TRANSLATE_NOOP("CommandLine", "use the demonstration firm's store"),
         mark(&CommandLine::demonstration)},
        {QLatin1String("to"), QLatin1String("FILE"), QT_TRANSLATE_NOOP("CommandLine", "the file to write"),
         text(&CommandLine::to)},
        {QLatin1String("into"), QLatin1String("FOLDER"),
         QT_TRANSLATE_NOOP("CommandLine", "the folder to write into"), text(&CommandLine::into)},
        {QLatin1String("revision"), QLatin1String("N"),
         QT_TRANSLATE_NOOP("CommandLine", "an older revision of the record; without it the newest"),
         keepRevision},
        {QLatin1String("copies"), QLatin1String("N"),
         QT_TRANSLATE_NOOP("CommandLine", "so many blanks, each with a number of its own (200 at most)"),
         keepCopies},
        {QLatin1String("blocks"), QLatin1String("N"),
         QT_TRANSLATE_NOOP("CommandLine",
                           "places for so many appliances and rooms, or situations of a notice, on each "
                           "blank (6 at most); without "
                           "it two, and one situation"),
         keepBlocks},
        {QLatin1String("look"),
         {},
         QT_TRANSLATE_NOOP("CommandLine", "only look inside: change nothing"),
         mark(&CommandLine::look)},
        {QLatin1String("passphrase"), QLatin1String("FILE"),
         QT_TRANSLATE_NOOP("CommandLine",
                           "a file whose first line is the passphrase of the sealed backup or the firm's "
                           "key; - for standard "
                           "input"),
         text(&CommandLine::passphrase)},
        {QLatin1String("replace"),
         {},
         QT_TRANSLATE_NOOP("CommandLine", "write over a file that holds something else"),
         mark(&CommandLine::replace)},
        {QLatin1String("dry-run"),
         {},
         QT_TRANSLATE_NOOP("CommandLine", "only say what would be done"),
         mark(&CommandLine::dryRun)},
        {QLatin1String("unconfirmed"),
         {},
         QT_TRANSLATE_NOOP("CommandLine", "only what waits to be confirmed or entered from your own copy"),
         mark(&CommandLine::unconfirmed)},
        {QLatin1String("scheme"), QLatin1String("NAME"),
         QT_TRANSLATE_NOOP("CommandLine",
                           "light, dark or contrast; without it the desktop's palette decides"),
         keepScheme},
        {QLatin1String("language"), QLatin1String("CODE"),
         QT_TRANSLATE_NOOP("CommandLine", "language of the window and of what is printed here"),
         text(&CommandLine::language)},
        {QLatin1String("help"),
         {},
         QT_TRANSLATE_NOOP("CommandLine", "this text, or that of one command"),
         [](CommandLine&, const QString&) { return true; }},  // the reader sees to it
    };
}

}  // namespace

const std::vector<Option>& options() {
    static const std::vector<Option> kOptions = [] {
        std::vector<Option> all = usualOptions();
        const auto issuing = issueOptions();
        all.insert(all.end() - 1, issuing.begin(), issuing.end());
        const auto choice = choiceOptions();
        const auto due = dueOptions();
        all.insert(all.end() - 1, choice.begin(), choice.end());  // help comes last
        all.insert(all.end() - 1, due.begin(), due.end());
        const auto trace = traceOptions();
        all.insert(all.end() - 1, trace.begin(), trace.end());
        return all;
    }();
    return kOptions;
}

namespace {

/// Looking at visits.
std::vector<Command> visitCommands() {
    const QLatin1String store("store");
    const QLatin1String demonstration("demonstration");
    return {{Verb::Window,
             {},
             {},
             0,
             0,
             {store, demonstration, QLatin1String("scheme")},
             QT_TRANSLATE_NOOP("CommandLine", "opens the window")},
            {Verb::Visits,
             QLatin1String("visits"),
             QLatin1String("[WORD...]"),
             0,
             kAnyNumber,
             {store, demonstration},
             QT_TRANSLATE_NOOP("CommandLine",
                               "lists visits; words narrow the list by address, name or reference")},
            {Verb::Judge,
             QLatin1String("judge"),
             QLatin1String("VISIT"),
             1,
             kAnyNumber,
             {store, demonstration},
             QT_TRANSLATE_NOOP(
                 "CommandLine",
                 "judges a visit: each finding with its limit, its reason and the source of the limit")}};
}

/// Issuing records and handing them out.
std::vector<Command> recordCommands() {
    const QLatin1String store("store");
    const QLatin1String demonstration("demonstration");
    return {
        {Verb::Issue,
         QLatin1String("issue"),
         QLatin1String("VISIT"),
         1,
         kAnyNumber,
         {store, demonstration, QLatin1String("to"), QLatin1String("replace"), QLatin1String("revises"),
          QLatin1String("reason"), QLatin1String("wording")},
         QT_TRANSLATE_NOOP("CommandLine", "issues the record of a visit, or says what is missing")},
        {Verb::Records,
         QLatin1String("records"),
         QLatin1String("[WORD...]"),
         0,
         kAnyNumber,
         {store, demonstration},
         QT_TRANSLATE_NOOP("CommandLine", "lists issued records; words narrow the list")},
        {Verb::Pdf,
         QLatin1String("pdf"),
         QLatin1String("NUMBER --to FILE"),
         1,
         1,
         {store, demonstration, QLatin1String("to"), QLatin1String("replace"), QLatin1String("revision")},
         QT_TRANSLATE_NOOP("CommandLine", "writes a record's PDF, byte for byte as it was issued")},
        {Verb::Blank,
         QLatin1String("blank"),
         QLatin1String("KIND --into FOLDER"),
         1,
         1,
         {store, demonstration, QLatin1String("into"), QLatin1String("copies"), QLatin1String("blocks"),
          QLatin1String("wording")},
         QT_TRANSLATE_NOOP("CommandLine",
                           "writes numbered blanks to print and fill in by pen: warning_notice, "
                           "landlord_safety and so on; an unknown KIND lists them all")},
        {Verb::Collect,
         QLatin1String("collect"),
         QLatin1String("[WORD...]"),
         0,
         kAnyNumber,
         {store, demonstration, QLatin1String("to"), QLatin1String("into"), QLatin1String("replace"),
          QLatin1String("from"), QLatin1String("until"), QLatin1String("of"), QLatin1String("all")},
         QT_TRANSLATE_NOOP("CommandLine",
                           "writes many records: with --to as one PDF with bookmarks, with --into as files "
                           "with their signatures")},
        {Verb::Verify,
         QLatin1String("verify"),
         QLatin1String("FILE|NUMBER|CODE"),
         1,
         kAnyNumber,
         {store, demonstration, QLatin1String("revision")},
         QT_TRANSLATE_NOOP("CommandLine",
                           "says whether a PDF, a number or the text of a page's code is a record of "
                           "this store's, unchanged, and still the one that counts")}};
}

/// The firm's own key.
std::vector<Command> keyCommands() {
    const QLatin1String store("store");
    const QLatin1String demonstration("demonstration");
    const QLatin1String passphrase("passphrase");
    return {
        {Verb::Key,
         QLatin1String("key"),
         QLatin1String("[--to FILE]"),
         0,
         0,
         {store, demonstration, QLatin1String("to"), QLatin1String("replace")},
         QT_TRANSLATE_NOOP("CommandLine",
                           "lists the keys that records are signed with; with --to writes the public one, "
                           "as PEM or, to a .pdf, as a page to hand out")},
        {Verb::NewKey,
         QLatin1String("new-key"),
         QLatin1String("--passphrase FILE"),
         0,
         0,
         {store, demonstration, passphrase},
         QT_TRANSLATE_NOOP("CommandLine",
                           "makes the key that records are signed with, or renews it; what older ones "
                           "signed holds on")},
        {Verb::Sign,
         QLatin1String("sign"),
         QLatin1String("--passphrase FILE"),
         0,
         0,
         {store, demonstration, passphrase},
         QT_TRANSLATE_NOOP("CommandLine", "signs every record that waits for the firm's signature")}};
}

/// What visits are judged by.
std::vector<Command> ruleCommands() {
    return {{Verb::Rules,
             QLatin1String("rules"),
             QLatin1String("[WORD...]"),
             0,
             kAnyNumber,
             {QLatin1String("store"), QLatin1String("demonstration"), QLatin1String("unconfirmed")},
             QT_TRANSLATE_NOOP("CommandLine",
                               "lists the rule book: each value with its provenance and source; "
                               "words narrow the list")}};
}

/// Files in and out.
std::vector<Command> exchangeCommands() {
    const QLatin1String store("store");
    const QLatin1String demonstration("demonstration");
    return {{Verb::Import,
             QLatin1String("import"),
             QLatin1String("FILE"),
             1,
             1,
             {store, demonstration, QLatin1String("dry-run")},
             QT_TRANSLATE_NOOP(
                 "CommandLine",
                 "takes over a spreadsheet (CSV) of premises, people and appliances, and says what is "
                 "doubtful about each row; doubtful rows are left out")},
            {Verb::Export,
             QLatin1String("export"),
             QLatin1String("LIST FILE"),
             2,
             2,
             {store, demonstration, QLatin1String("replace")},
             QT_TRANSLATE_NOOP(
                 "CommandLine",
                 "writes a list as CSV: premises, people, appliances, engineers, instruments, visits, "
                 "records or changes; people as vCards: cards; the whole store as JSON: everything")},
            {Verb::MakeFrom,
             QLatin1String("make-from"),
             QLatin1String("FILE --to STORE"),
             1,
             1,
             {QLatin1String("to")},
             QT_TRANSLATE_NOOP("CommandLine", "makes a new store of what \"export everything\" wrote")}};
}

/// Stores as a whole, and help.
std::vector<Command> storeCommands() {
    const QLatin1String store("store");
    const QLatin1String demonstration("demonstration");
    return {
        {Verb::Health,
         QLatin1String("health"),
         QLatin1String("[STORE...]"),
         0,
         kAnyNumber,
         {},
         QT_TRANSLATE_NOOP(
             "CommandLine",
             "checks stores without changing a byte: the file, the chain of records, every digest")},
        {Verb::BackUp,
         QLatin1String("backup"),
         QLatin1String("[--to FILE]"),
         0,
         0,
         {store, demonstration, QLatin1String("to")},
         QT_TRANSLATE_NOOP("CommandLine",
                           "makes a checked backup beside the store and in its second folder; with --to a "
                           "checked copy in that file")},
        {Verb::Restore,
         QLatin1String("restore"),
         QLatin1String("BACKUP"),
         1,
         1,
         {store, demonstration, QLatin1String("look"), QLatin1String("passphrase")},
         QT_TRANSLATE_NOOP(
             "CommandLine",
             "checks a backup and puts it in the place of the store; what stood there is kept")},
        {Verb::Demonstration,
         QLatin1String("demonstration"),
         QLatin1String("--into FOLDER"),
         0,
         0,
         {QLatin1String("into")},
         QT_TRANSLATE_NOOP("CommandLine", "makes the demonstration firm's store in a folder")},
        {Verb::Help,
         QLatin1String("help"),
         QLatin1String("[COMMAND]"),
         0,
         1,
         {},
         QT_TRANSLATE_NOOP("CommandLine", "explains a command")},
        {Verb::Version,
         QLatin1String("version"),
         {},
         0,
         0,
         {},
         QT_TRANSLATE_NOOP("CommandLine", "says which version this is")}};
}

}  // namespace

const std::vector<Command>& commands() {
    static const std::vector<Command> kCommands = [] {
        auto all = visitCommands();
        for (const auto& more : {recordCommands(), dueCommands(), traceCommands(), keyCommands(),
                                 ruleCommands(), exchangeCommands(), storeCommands()}) {
            all.insert(all.end(), more.begin(), more.end());
        }
        return all;
    }();
    return kCommands;
}

const Command* commandOf(const QString& word) {
    for (const auto& command : commands()) {
        if (!command.word.isEmpty() && command.word == word) {
            return &command;
        }
    }
    return nullptr;
}

const Command& infoOf(Verb verb) {
    for (const auto& command : commands()) {
        if (command.verb == verb) {
            return command;
        }
    }
    Q_UNREACHABLE();
}

const Option* optionOf(const QString& name) {
    for (const auto& option : options()) {
        if (option.name == name) {
            return &option;
        }
    }
    return nullptr;
}

bool isKnownTo(const Command& command, const Option& option) {
    const bool everywhere = option.name == QLatin1String("help") || option.name == QLatin1String("language");
    return everywhere ||
           std::find(command.knows.begin(), command.knows.end(), option.name) != command.knows.end();
}

}  // namespace hearth::app
