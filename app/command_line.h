// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/units.h"
#include "ui/look/look.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <tl/expected.hpp>
#include <utility>

/// What the program was asked on its command line. Parsing is pure: it touches no file and needs no
/// application object, since the platform (window or none) is chosen by what was asked.
namespace hearth::app {

enum class Verb {
    Window,
    Judge,
    Issue,
    Pdf,
    Verify,
    Collect,
    Key,
    NewKey,
    Sign,
    Visits,
    Records,
    Rules,
    Health,
    Demonstration,
    BackUp,
    Restore,
    Import,
    Export,
    MakeFrom,
    Blank,
    Due,
    Calendar,
    Trace,
    Help,
    Version
};

struct CommandLine {
    Verb verb = Verb::Window;
    QStringList words;                ///< operands after the verb
    std::optional<QString> store;     ///< --store FILE: another store than the user's own
    std::optional<QString> to;        ///< --to FILE
    std::optional<QString> into;      ///< --into FOLDER
    std::optional<QString> revises;   ///< --revises NUMBER
    std::optional<QString> reason;    ///< --reason TEXT
    std::optional<QString> language;  ///< --language CODE
    QString recordLanguage;           ///< --wording CODE; empty: what whoever receives it prefers
    std::optional<ui::look::Scheme> scheme;
    std::optional<QString> passphrase;  ///< --passphrase FILE: its first line; "-": of what comes in
    std::optional<QString> from;        ///< --from DATE
    std::optional<QString> until;       ///< --until DATE
    std::optional<QString> of;          ///< --of PERSON
    QStringList states;                 ///< --state STATE, as often as wanted
    QString format;                     ///< --format text|csv|json; empty: text
    double litres = 0.0;                ///< --volume LITRES; 0: not said
    double volumeOff = 0.0;             ///< --volume-off PERCENT, either way; 0: taken as exact
    double drift = 0.0;                 ///< --drift MBAR in a minute, either way; 0: not said
    std::optional<quantity::UnitCode> pressureUnit;    ///< --unit UNIT
    std::optional<std::pair<double, double>> stretch;  ///< --stretch FROM:TO, seconds
    bool all = false;                                  ///< --all: superseded and void records too
    int copies = 1;                                    ///< --copies N: of a blank, each with its own number
    std::optional<int> blocks;   ///< --blocks N: appliances, rooms or situations on a blank
    int revision = 0;            ///< --revision N: 0 is the newest
    bool demonstration = false;  ///< --demonstration: the demonstration firm's store
    bool unconfirmed = false;    ///< --unconfirmed: only rules that wait for the firm's own copy
    std::optional<int> turned;   ///< --turned DAYS: of `due`, only what turned overdue within these
    bool duties = false;         ///< --duties: of `due`, in place of the checks
    bool dryRun = false;         ///< --dry-run: only say what an import would do
    bool look = false;           ///< --look: only look inside
    bool replace = false;        ///< --replace: write over a file that holds something else
};

/// How the program ends; the numbers are a promise to scripts.
enum class Exit : int {
    Done = 0,     ///< done; for `judge`: the verdict is pass; for `health`: every store is sound
    Refused = 1,  ///< the answer is no: not a pass, a record that may not be issued, nothing of that name
    Usage = 2,    ///< the command line was not understood
    Trouble = 3,  ///< a store or a file could not be read or written, or is damaged
    // for `verify`, beside Done (ours, unchanged, and it counts) and Refused (not ours)
    Superseded = 4,
    Void = 5,
    Changed = 6,
};

enum class UsageFault {
    WordUnknown,
    OptionUnknown,
    OptionNotHere,
    ValueMissing,
    ValueWrong,
    WordsMissing,
    WordsTooMany
};

/// What is wrong with a command line: the word, and the verb that it was said to.
struct UsageProblem {
    UsageFault fault;
    QString word;
    Verb verb = Verb::Window;
};

/// `arguments` without the program's name.
[[nodiscard]] tl::expected<CommandLine, UsageProblem> parseCommandLine(const QStringList& arguments);

/// One sentence on what is wrong, and the usage line of the verb.
[[nodiscard]] QString usageText(const UsageProblem& problem);

/// The whole of --help, or that of one verb ("help judge").
[[nodiscard]] QString helpText(const QString& verb = {});

}  // namespace hearth::app
