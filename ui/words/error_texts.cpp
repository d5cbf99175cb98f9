// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/error_texts.h"

#include "ui/words/text_table.h"

namespace hearth::ui::words {

namespace {

using ErrorText = Text<ErrorCode>;

// What happened, what was kept, what to do. %1, %2 … are Error::details in the order of
// core/base/error_code.h.
constexpr std::array kErrors{
    // typed text
    ErrorText{ErrorCode::NumberMissing,
              QT_TRANSLATE_NOOP("Words", "There is no number here yet. Type one, or leave the field empty.")},
    ErrorText{
        ErrorCode::NumberUnreadable,
        QT_TRANSLATE_NOOP(
            "Words",
            "“%1” can't be read as a number. It is kept as typed; type digits with one point or comma.")},
    ErrorText{
        ErrorCode::NumberAmbiguous,
        QT_TRANSLATE_NOOP(
            "Words",
            "“%1” could be read in two ways. It is kept as typed; leave out any separator of thousands.")},
    ErrorText{ErrorCode::NumberTooLong, QT_TRANSLATE_NOOP("Words",
                                                          "“%1” has more digits than can be kept exactly. It "
                                                          "is kept as typed; use fifteen digits or fewer.")},
    ErrorText{ErrorCode::UnitUnknown,
              QT_TRANSLATE_NOOP(
                  "Words",
                  "“%1” is not a unit that fits here. What was typed is kept; choose a unit from the list.")},
    ErrorText{
        ErrorCode::DateUnreadable,
        QT_TRANSLATE_NOOP(
            "Words",
            "“%1” can't be read as a date. It is kept as typed; type it like 25/11/2026 or 25 Nov 2026.")},
    ErrorText{ErrorCode::DateImpossible,
              QT_TRANSLATE_NOOP("Words",
                                "There is no such day as “%1”. It is kept as typed; check day and month.")},
    ErrorText{
        ErrorCode::TimeUnreadable,
        QT_TRANSLATE_NOOP(
            "Words", "“%1” can't be read as a time of day. It is kept as typed; type it like 9:46 or 0946.")},
    ErrorText{
        ErrorCode::ChoiceUnknown,
        QT_TRANSLATE_NOOP("Words",
                          "“%1” is not one of the choices. It is kept as typed; choose one of those shown.")},
    ErrorText{
        ErrorCode::OutOfRange,
        QT_TRANSLATE_NOOP(
            "Words",
            "“%1” lies outside %2 to %3. It is kept as typed; check it against the gauge and the unit.")},
    // rule book
    ErrorText{ErrorCode::RuleUnknown,
              QT_TRANSLATE_NOOP("Words",
                                "This program knows no rule “%1”. Nothing was changed. It may come from a "
                                "newer version: use that one.")},
    ErrorText{ErrorCode::RuleValueUnusable,
              QT_TRANSLATE_NOOP("Words",
                                "The value for “%1” can't be used: %2. The rule book is as it was; correct "
                                "the value and save again.")},
    // pipework
    ErrorText{ErrorCode::TubeUnknown,
              QT_TRANSLATE_NOOP(
                  "Words",
                  "This program knows no tube “%1”. The section is kept; choose a tube or type its volume.")},
    ErrorText{ErrorCode::PipeFeederMissing,
              QT_TRANSLATE_NOOP(
                  "Words",
                  "Pipe %1 goes on from a pipe that is not in the list. It is kept; choose what feeds it.")},
    ErrorText{ErrorCode::PipeLoop,
              QT_TRANSLATE_NOOP("Words",
                                "Pipe %1 would feed itself. It is kept; choose another pipe that feeds it.")},
    // store
    ErrorText{
        ErrorCode::StoreMissing,
        QT_TRANSLATE_NOOP(
            "Words",
            "There is no store at %1. Nothing was changed. Check the name, or make a new store there.")},
    ErrorText{ErrorCode::StoreMoved,
              QT_TRANSLATE_NOOP(
                  "Words",
                  "%1 was moved, deleted or replaced while it was open. The last change was not kept. "
                  "Back up from this window to another place now, then close it and see which file "
                  "is yours.")},
    ErrorText{ErrorCode::StoreNotOurs,
              QT_TRANSLATE_NOOP(
                  "Words", "%1 is not a store of this program. It was left as it is; choose another file.")},
    ErrorText{ErrorCode::StoreNewer, QT_TRANSLATE_NOOP("Words",
                                                       "%1 was written by a newer version (store %2; this "
                                                       "program reads up to %3). It was left as it is; "
                                                       "open it with the newer version.")},
    ErrorText{
        ErrorCode::StoreDamaged,
        QT_TRANSLATE_NOOP(
            "Words",
            "%1 is damaged: %2. It was left as it is. Copy it away safely, then open your newest backup.")},
    ErrorText{
        ErrorCode::StoreLocked,
        QT_TRANSLATE_NOOP(
            "Words",
            "%1 is in use by %2. Nothing was changed. Close the other window, or look at it read-only.")},
    ErrorText{
        ErrorCode::StoreReadOnly,
        QT_TRANSLATE_NOOP(
            "Words",
            "%1 can only be read, so this was not kept. Close the other window that has it open, or make the "
            "file writable; then enter it again.")},
    ErrorText{
        ErrorCode::StoreOlder,
        QT_TRANSLATE_NOOP("Words",
                          "%1 was written by an older version of this program. It was left as it is; open "
                          "it once in the window, which makes a backup and brings it up to date.")},
    ErrorText{
        ErrorCode::StoreFull,
        QT_TRANSLATE_NOOP(
            "Words",
            "The disk with %1 is full. The last change was not kept; everything before it is. Free some room "
            "and enter it again.")},
    ErrorText{ErrorCode::StoreFailed,
              QT_TRANSLATE_NOOP("Words",
                                "%1 could not be read or written (%2). The last change was not kept; "
                                "everything before it is. Try "
                                "again; if it stays so, make a backup and check the disk.")},
    ErrorText{ErrorCode::StoreFolderUnusable,
              QT_TRANSLATE_NOOP("Words",
                                "The folder of %1 can't be made or written to. Nothing was changed. Choose "
                                "another folder, or allow "
                                "writing there.")},
    ErrorText{ErrorCode::MigrationChanged,
              QT_TRANSLATE_NOOP("Words",
                                "Step %1 of this store's history is not the one that this program knows. The "
                                "store was left as it "
                                "is; open it with the version that wrote it.")},
    ErrorText{ErrorCode::BackupFailed, QT_TRANSLATE_NOOP("Words",
                                                         "No backup was written to %1: %2. The store itself "
                                                         "is unharmed; choose another place and try again.")},
    ErrorText{
        ErrorCode::BackupSourceDamaged,
        QT_TRANSLATE_NOOP("Words",
                          "No backup was made, because the store %1 itself is damaged (%2). The earlier "
                          "backups were all kept: look inside the newest and restore it.")},
    ErrorText{ErrorCode::BackupFolderMissing,
              QT_TRANSLATE_NOOP("Words",
                                "The folder %1 is not there. Nothing else was touched; plug the stick in or "
                                "choose another folder, then make a backup.")},
    ErrorText{
        ErrorCode::BackupFolderFull,
        QT_TRANSLATE_NOOP("Words",
                          "There is no room left in %1 for a backup. Everything there was kept; make room "
                          "or choose another folder, then make a backup.")},
    ErrorText{
        ErrorCode::BackupFolderReadOnly,
        QT_TRANSLATE_NOOP("Words",
                          "Nothing can be written into %1, so no backup was made there. What is there was "
                          "kept; allow writing or choose another folder, then make a backup.")},
    ErrorText{ErrorCode::BackupNotCopied,
              QT_TRANSLATE_NOOP("Words",
                                "No copy of the backup was written to %1: %2. The backup beside the store is "
                                "unharmed; try again or choose another folder.")},
    ErrorText{ErrorCode::BackupDamaged,
              QT_TRANSLATE_NOOP("Words",
                                "The backup %1 is damaged (%2) and can't be used. Nothing was changed; take "
                                "another one from the list.")},
    ErrorText{
        ErrorCode::BackupNewer,
        QT_TRANSLATE_NOOP("Words",
                          "The backup %1 was sealed by a newer version of this program (form %2). Nothing "
                          "was changed; bring this program up to date to open it.")},
    ErrorText{
        ErrorCode::PassphraseMissing,
        QT_TRANSLATE_NOOP("Words",
                          "The backup %1 is sealed. Nothing was opened; type the passphrase that it was "
                          "sealed with.")},
    ErrorText{ErrorCode::PassphraseWrong,
              QT_TRANSLATE_NOOP("Words",
                                "That is not the passphrase that the backup %1 was sealed with. Nothing was "
                                "changed; look at capitals and spaces and type it again.")},
    ErrorText{ErrorCode::PassphraseShort,
              QT_TRANSLATE_NOOP("Words",
                                "The passphrase is too short: it needs %1 characters at least. Nothing was "
                                "changed; four words that don't belong together are a good one.")},
    ErrorText{
        ErrorCode::RestoreFailed,
        QT_TRANSLATE_NOOP("Words",
                          "The backup was not restored: %2. The store %1 is as it was before; try again "
                          "or take another backup.")},
    ErrorText{
        ErrorCode::NotFound,
        QT_TRANSLATE_NOOP("Words",
                          "The %1 %2 is not in this store. Nothing was changed; search for it in its list.")},
    // what is kept
    ErrorText{ErrorCode::InBin,
              QT_TRANSLATE_NOOP("Words",
                                "“%1” lies in the bin, so it was not used here. Nothing was changed; bring "
                                "it back from the bin, or choose another.")},
    ErrorText{ErrorCode::BinKeepsRecords,
              QT_TRANSLATE_NOOP("Words",
                                "“%1” has issued records (%2), and those must be kept. It was not put into "
                                "the bin; it stays where it is.")},
    ErrorText{ErrorCode::BinHoldsRole,
              QT_TRANSLATE_NOOP("Words",
                                "“%1” holds roles at premises (%2), so it was not put into the bin. Say "
                                "there who holds them now, or end them, and try again.")},
    ErrorText{ErrorCode::BinOpenSituation,
              QT_TRANSLATE_NOOP("Words",
                                "“%1” has unsafe situations that are not closed (%2), so it was not put into "
                                "the bin. Close them first.")},
    ErrorText{ErrorCode::BinHasReadings,
              QT_TRANSLATE_NOOP("Words",
                                "“%1” has readings (%2), so it was not put into the bin. If it was taken "
                                "out, enter the day when it was removed.")},
    ErrorText{
        ErrorCode::BinLogo,
        QT_TRANSLATE_NOOP(
            "Words", "“%1” is the firm's logo, so it was not put into the bin. Choose another logo first.")},
    ErrorText{ErrorCode::BinStillUsed,
              QT_TRANSLATE_NOOP("Words",
                                "“%1” is still named elsewhere (%2 times), so it was not removed. It stays "
                                "in the bin, hidden from every list.")},
    ErrorText{ErrorCode::RoleOverlaps,
              QT_TRANSLATE_NOOP("Words",
                                "%1 holds this role in that time, and only one can at once. Nothing was "
                                "changed; correct the first or the last day.")},
    ErrorText{
        ErrorCode::EventStays,
        QT_TRANSLATE_NOOP(
            "Words",
            "“%1” has happened and is not changed. What was kept stays as it is; add what happened next.")},
    ErrorText{ErrorCode::EmergencyNumberUnusable,
              QT_TRANSLATE_NOOP("Words",
                                "“%1” can't be dialled, so it was not kept. Enter 3 to 15 digits; beside "
                                "them only blanks, brackets, hyphens and a + in front.")},
    ErrorText{ErrorCode::EmergencyContactTaken,
              QT_TRANSLATE_NOOP("Words",
                                "A contact for that country and gas is there already, so nothing was "
                                "changed. Change that one, or take it away first.")},
    ErrorText{ErrorCode::PlaceholderUnknown,
              QT_TRANSLATE_NOOP("Words",
                                "There is no placeholder “%1”, so the text was not kept. Use one of the "
                                "names listed beside it.")},
    ErrorText{ErrorCode::PlaceholderOpen,
              QT_TRANSLATE_NOOP("Words",
                                "A brace stands alone at “%1”, so the text was not kept. Write a placeholder "
                                "as {firm}; the text itself holds no braces.")},
    ErrorText{ErrorCode::LetterLacks,
              QT_TRANSLATE_NOOP("Words",
                                "Nothing is known for the placeholder “%1”, so no letter was made. Enter it "
                                "where it belongs, or change the firm's text.")},
    ErrorText{ErrorCode::NumberFormUnusable,
              QT_TRANSLATE_NOOP("Words",
                                "“%1” can't stand in a record's number, so nothing was changed. Take at most "
                                "8 capital letters, numerals, hyphens and points, and 4 to 8 digits.")},
    ErrorText{
        ErrorCode::ChangeLogBroken,
        QT_TRANSLATE_NOOP(
            "Words",
            "The history of changes is not what was written: line %1 of %2 was altered, or lines about it "
            "were taken out. What is kept now was left as it is; compare it with your newest backup.")},
    // pictures and papers
    ErrorText{
        ErrorCode::StrokesUnreadable,
        QT_TRANSLATE_NOOP("Words",
                          "This signature can't be kept: its strokes are not those of the pad. Clear it "
                          "and sign again, or choose “signed on paper”.")},
    ErrorText{ErrorCode::AttachmentTooLarge,
              QT_TRANSLATE_NOOP("Words",
                                "“%1” was not attached: it has %2 MB, and at most %3 MB are kept of "
                                "one. Nothing was changed; make the picture smaller and add it again.")},
    ErrorText{ErrorCode::AttachmentUnknown,
              QT_TRANSLATE_NOOP("Words",
                                "“%1” was not attached: it is neither a JPEG or PNG picture nor a "
                                "PDF. Nothing was changed; save it as one of these and add it again.")},
    ErrorText{ErrorCode::LogoUnknown,
              QT_TRANSLATE_NOOP("Words",
                                "“%1” is neither a PNG nor a JPEG picture, so the logo was left as it was. "
                                "Save it as one of these and choose it again.")},
    ErrorText{ErrorCode::AttachmentDamaged,
              QT_TRANSLATE_NOOP("Words",
                                "“%1” was not attached: it begins like a picture but can't be read "
                                "as one. Nothing was changed; copy it from the camera again.")},
    ErrorText{ErrorCode::AttachmentAltered,
              QT_TRANSLATE_NOOP("Words",
                                "The kept copy of “%1” is not what was attached: it was altered or "
                                "damaged. It is left as it is; take it from a backup.")},
    // traces of gauges
    ErrorText{ErrorCode::TraceUnusable,
              QT_TRANSLATE_NOOP("Words",
                                "The trace “%1” was not kept: it has no readings, or its times go back. "
                                "Nothing was changed; cut the file there and take it in again.")},
    ErrorText{ErrorCode::TraceTooLong,
              QT_TRANSLATE_NOOP("Words",
                                "The trace “%1” was not kept: it has %2 readings, and at most %3 are kept of "
                                "one. Nothing was changed; cut out the test and take that in.")},
    ErrorText{ErrorCode::TraceAltered,
              QT_TRANSLATE_NOOP("Words",
                                "The kept readings of the trace “%1” are not those that were taken in: they "
                                "were altered or damaged. They are left as they are; take them from a "
                                "backup, or take the logger's file in again.")},
    ErrorText{ErrorCode::TraceInRecord,
              QT_TRANSLATE_NOOP("Words",
                                "The trace “%1” stands in record %2 and stays as it is. Nothing was changed; "
                                "take in another trace and revise the record.")},
    ErrorText{ErrorCode::TraceSimulated,
              QT_TRANSLATE_NOOP("Words",
                                "No record was issued: the trace “%1” is a simulation, for practice. The "
                                "visit is kept as it is; take the trace away, and test the pipe itself.")},
    // data protection
    ErrorText{ErrorCode::ErasureHoldsRole,
              QT_TRANSLATE_NOOP("Words",
                                "%1 still has to do with %2, so what is needed for that is kept. "
                                "Nothing was changed; end that there first, then erase.")},
    // records
    ErrorText{
        ErrorCode::RecordIncomplete,
        QT_TRANSLATE_NOOP(
            "Words",
            "The record was not issued: something that it needs is missing. The visit is kept as it is. "
            "Enter: %1.")},
    ErrorText{ErrorCode::RecordChainBroken,
              QT_TRANSLATE_NOOP("Words",
                                "Record %1 does not follow from the one before it: a record was changed or "
                                "removed outside this program. "
                                "Nothing was changed now. Compare with a backup.")},
    ErrorText{ErrorCode::RecordAltered,
              QT_TRANSLATE_NOOP("Words",
                                "Record %1 is not as it was issued (%2): it was changed outside this "
                                "program. Nothing was changed now. "
                                "Don't hand it out; compare with a backup.")},
    ErrorText{
        ErrorCode::RecordSuperseded,
        QT_TRANSLATE_NOOP(
            "Words",
            "Record %1 has already been replaced by %2. Nothing was issued; correct the newer one instead.")},
    ErrorText{ErrorCode::RecordErased,
              QT_TRANSLATE_NOOP("Words",
                                "Record %1 was erased on %2: it had been kept until %3, and its keeping was "
                                "over. Its number, dates and digests stay, and the chain of records is "
                                "whole.")},
    ErrorText{ErrorCode::KeepingNotOver,
              QT_TRANSLATE_NOOP("Words",
                                "%1 is kept until the end of %2. Nothing was erased; it may go after that.")},
    ErrorText{ErrorCode::KeptForSituation,
              QT_TRANSLATE_NOOP("Words",
                                "%1 stays: an unsafe situation is open at its premises. Nothing was erased; "
                                "see to that and close it first.")},
    ErrorText{ErrorCode::KeptOnHold,
              QT_TRANSLATE_NOOP("Words", "Record %1 is held: %2. Nothing was erased; lift the hold first.")},
    ErrorText{ErrorCode::HoldWithoutReason,
              QT_TRANSLATE_NOOP("Words",
                                "Record %1 was not held: a hold needs its reason. Nothing was changed; say "
                                "why it is kept.")},
    ErrorText{ErrorCode::RecordVoid,
              QT_TRANSLATE_NOOP("Words",
                                "Record %1 is void, and stays so with its number. Nothing was changed; issue "
                                "a new record of the visit.")},
    ErrorText{ErrorCode::ReasonMissing,
              QT_TRANSLATE_NOOP("Words",
                                "A reason is needed, since it is kept with the record. Nothing was changed; "
                                "say in a few words why.")},
    ErrorText{ErrorCode::SigningKeyMissing,
              QT_TRANSLATE_NOOP("Words",
                                "The firm has no key to sign with yet. Nothing was signed; make one under "
                                "Firm, Signing.")},
    ErrorText{ErrorCode::SigningLocked,
              QT_TRANSLATE_NOOP("Words",
                                "The firm's key is locked. Nothing was signed, and the records wait; unlock "
                                "it with its passphrase and sign again.")},
    ErrorText{ErrorCode::KeyPassphraseWrong,
              QT_TRANSLATE_NOOP("Words",
                                "That is not the passphrase of the firm's key. Nothing was changed; look at "
                                "capitals and spaces and type it again. If nobody knows it any more, make a "
                                "new key: the old one's signatures still hold.")},
    ErrorText{ErrorCode::LetterMissingInFont,
              QT_TRANSLATE_NOOP("Words",
                                "No font on this machine has these letters: %1. Nothing was issued. Install "
                                "a font that has them, "
                                "or write them otherwise.")},
    ErrorText{ErrorCode::PdfNotWritten,
              QT_TRANSLATE_NOOP("Words",
                                "The PDF could not be written to %1: %2. The record itself is kept; save its "
                                "PDF again elsewhere.")},
    ErrorText{
        ErrorCode::PrinterFailed,
        QT_TRANSLATE_NOOP(
            "Words", "%1 did not print: %2. The record itself is kept; check the printer, or save the PDF.")},
    // files in and out
    ErrorText{
        ErrorCode::FileUnreadable,
        QT_TRANSLATE_NOOP(
            "Words",
            "%1 could not be read: %2. Nothing was changed; check that the file is there and may be read.")},
    ErrorText{
        ErrorCode::FileUnwritable,
        QT_TRANSLATE_NOOP(
            "Words", "%1 could not be written: %2. Nothing in the store was changed; choose another place.")},
    ErrorText{ErrorCode::PatternUnknown,
              QT_TRANSLATE_NOOP("Words",
                                "“%1” is no placeholder for names of files. The pattern was not kept; use "
                                "those that are named below the field.")},
    ErrorText{ErrorCode::MailFailed,
              QT_TRANSLATE_NOOP("Words",
                                "No mail was begun: %1. The record is kept; save its PDF and attach it to a "
                                "mail of your own.")},
    ErrorText{
        ErrorCode::ScenarioInvalid,
        QT_TRANSLATE_NOOP(
            "Words",
            "The scenario %1 can't be used at %2: %3. Nothing was loaded; correct the file and try again.")},
    ErrorText{ErrorCode::ImportStopped,
              QT_TRANSLATE_NOOP(
                  "Words", "The import was stopped. Nothing of it was kept; start it again when you want.")},
    ErrorText{ErrorCode::ImportRefused,
              QT_TRANSLATE_NOOP(
                  "Words",
                  "%1 can't be taken over (line %2: %3). Nothing was kept; correct the file and try again.")},
    ErrorText{
        ErrorCode::ExportInvalid,
        QT_TRANSLATE_NOOP(
            "Words",
            "%1 can't be read at %2: %3. Nothing of it was kept; use the file as this program wrote it.")},
    ErrorText{ErrorCode::ExportNewer,
              QT_TRANSLATE_NOOP("Words",
                                "%1 was written by a newer version (format %2; this program reads up to %3). "
                                "Nothing was kept; read it with the newer version.")},
    // command line
    ErrorText{ErrorCode::UsageWrong,
              QT_TRANSLATE_NOOP("Words",
                                "“%1” was not understood. Nothing was done; --help shows what can be said.")},
};

}  // namespace

const char* errorText(ErrorCode code) {
    return textOf(kErrors, code);
}

}  // namespace hearth::ui::words
