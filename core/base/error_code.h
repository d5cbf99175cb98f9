// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string_view>

namespace hearth {

/// Every expected failure of the program. Each has a sentence in ui/words in every language (a test holds
/// it): what happened, what was kept, what to do. The comment gives Error::details in order.
enum class ErrorCode {
    // typed text
    NumberMissing,     // -
    NumberUnreadable,  // typed text
    NumberAmbiguous,   // typed text (a thousands separator, or two decimal marks)
    NumberTooLong,     // typed text
    UnitUnknown,       // typed unit
    DateUnreadable,    // typed text
    DateImpossible,    // typed text (31 February)
    TimeUnreadable,    // typed text
    ChoiceUnknown,     // typed text
    OutOfRange,        // typed text, least, greatest
    // rule book
    RuleUnknown,        // rule code
    RuleValueUnusable,  // rule code, what is wrong (a slip code)
    // pipework
    TubeUnknown,        // tube code
    PipeFeederMissing,  // section's number from 1
    PipeLoop,           // section's number from 1
    // store
    StoreMissing,          // path
    StoreMoved,            // path; while it was open
    StoreNotOurs,          // path
    StoreNewer,            // path, the store's version, this program's version
    StoreDamaged,          // path, what was found
    StoreLocked,           // path, who holds it
    StoreReadOnly,         // path
    StoreOlder,            // path
    StoreFull,             // path
    StoreFailed,           // path, SQLite's message
    StoreFolderUnusable,   // path
    MigrationChanged,      // number of the migration whose text differs from what was applied
    BackupFailed,          // path, reason
    BackupSourceDamaged,   // path of the store, what was found
    BackupFolderMissing,   // path
    BackupFolderFull,      // path
    BackupFolderReadOnly,  // path
    BackupNotCopied,       // path, reason
    BackupDamaged,         // path, what was found
    BackupNewer,           // path, the version of its form
    PassphraseMissing,     // path
    PassphraseWrong,       // path
    PassphraseShort,       // least number of characters
    RestoreFailed,         // path of the store, reason
    NotFound,              // kind, id
    // what is kept
    InBin,                    // what it was called
    BinKeepsRecords,          // what it is called, how many issued records
    BinHoldsRole,             // name, how many roles
    BinOpenSituation,         // what it is called, how many unsafe situations that are not closed
    BinHasReadings,           // what it is called, how many readings
    BinLogo,                  // name
    BinStillUsed,             // what it was called, by how many things
    RoleOverlaps,             // who holds it then
    EventStays,               // its text
    EmergencyNumberUnusable,  // typed text
    EmergencyContactTaken,    // -
    PlaceholderUnknown,       // its name
    PlaceholderOpen,          // what follows the brace
    LetterLacks,              // name of the placeholder
    NumberFormUnusable,       // the form as typed
    ChangeLogBroken,  // number of the first line that is not as it was sealed, when it was written (instant)
    StrokesUnreadable,  // -
    // pictures and papers
    AttachmentTooLarge,  // name, its size in MB, the greatest in MB
    AttachmentUnknown,   // name (neither a picture nor a paper that can be kept)
    LogoUnknown,         // name (neither PNG nor JPEG)
    AttachmentDamaged,   // name (it says that it is a picture and can't be read as one)
    AttachmentAltered,   // name (the bytes kept are not those that came)
    // traces of gauges
    TraceUnusable,   // source (no readings, or their times go back)
    TraceTooLong,    // source, how many readings, the most
    TraceAltered,    // source (the readings kept are not those that came)
    TraceInRecord,   // source, record number
    TraceSimulated,  // source
    // data protection
    ErasureHoldsRole,  // name, address of the premises
    // records
    RecordIncomplete,     // codes of the missing items, one a detail
    RecordChainBroken,    // record number
    RecordAltered,        // record number, "snapshot" or "pdf"
    RecordSuperseded,     // record number, number of the one that supersedes it
    RecordErased,         // record number, day on which it was let go, last day of its keeping
    KeepingNotOver,       // record number or a letter's kind, last day of its keeping
    KeptForSituation,     // record number or a letter's kind
    KeptOnHold,           // record number, why it is held
    HoldWithoutReason,    // record number
    RecordVoid,           // record number
    ReasonMissing,        // -
    SigningKeyMissing,    // -
    SigningLocked,        // -
    KeyPassphraseWrong,   // -
    LetterMissingInFont,  // the letters
    PdfNotWritten,        // path, reason
    PrinterFailed,        // printer, reason
    // files in and out
    FileUnreadable,   // path, reason
    FileUnwritable,   // path, reason
    PatternUnknown,   // the placeholder
    MailFailed,       // reason
    ScenarioInvalid,  // path, where, what
    ImportStopped,    // -
    ImportRefused,    // path, line (0: the file as a whole), the problem's code
    ExportInvalid,    // path, where, what
    ExportNewer,      // path, its format, the format that this program reads
    // command line
    UsageWrong,  // the word that was not understood
};

/// Stable text of a code, for logs, exit messages and tests: "store_locked".
[[nodiscard]] std::string_view codeText(ErrorCode code);

/// All codes, in order; for the test that every code has its sentence.
[[nodiscard]] std::span<const ErrorCode> allErrorCodes();

}  // namespace hearth
