// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/error_code.h"

#include <array>
#include <cassert>
#include <cstddef>

namespace hearth {
namespace {

struct CodeRow {
    ErrorCode code;
    std::string_view text;
};

// In the order of the enumeration, so that a code is its own index; the static_assert below holds it.
constexpr std::array kRows{
    CodeRow{ErrorCode::NumberMissing, "number_missing"},
    CodeRow{ErrorCode::NumberUnreadable, "number_unreadable"},
    CodeRow{ErrorCode::NumberAmbiguous, "number_ambiguous"},
    CodeRow{ErrorCode::NumberTooLong, "number_too_long"},
    CodeRow{ErrorCode::UnitUnknown, "unit_unknown"},
    CodeRow{ErrorCode::DateUnreadable, "date_unreadable"},
    CodeRow{ErrorCode::DateImpossible, "date_impossible"},
    CodeRow{ErrorCode::TimeUnreadable, "time_unreadable"},
    CodeRow{ErrorCode::ChoiceUnknown, "choice_unknown"},
    CodeRow{ErrorCode::OutOfRange, "out_of_range"},
    CodeRow{ErrorCode::RuleUnknown, "rule_unknown"},
    CodeRow{ErrorCode::RuleValueUnusable, "rule_value_unusable"},
    CodeRow{ErrorCode::TubeUnknown, "tube_unknown"},
    CodeRow{ErrorCode::PipeFeederMissing, "pipe_feeder_missing"},
    CodeRow{ErrorCode::PipeLoop, "pipe_loop"},
    CodeRow{ErrorCode::StoreMissing, "store_missing"},
    CodeRow{ErrorCode::StoreMoved, "store_moved"},
    CodeRow{ErrorCode::StoreNotOurs, "store_not_ours"},
    CodeRow{ErrorCode::StoreNewer, "store_newer"},
    CodeRow{ErrorCode::StoreDamaged, "store_damaged"},
    CodeRow{ErrorCode::StoreLocked, "store_locked"},
    CodeRow{ErrorCode::StoreReadOnly, "store_read_only"},
    CodeRow{ErrorCode::StoreOlder, "store_older"},
    CodeRow{ErrorCode::StoreFull, "store_full"},
    CodeRow{ErrorCode::StoreFailed, "store_failed"},
    CodeRow{ErrorCode::StoreFolderUnusable, "store_folder_unusable"},
    CodeRow{ErrorCode::MigrationChanged, "migration_changed"},
    CodeRow{ErrorCode::BackupFailed, "backup_failed"},
    CodeRow{ErrorCode::BackupSourceDamaged, "backup_source_damaged"},
    CodeRow{ErrorCode::BackupFolderMissing, "backup_folder_missing"},
    CodeRow{ErrorCode::BackupFolderFull, "backup_folder_full"},
    CodeRow{ErrorCode::BackupFolderReadOnly, "backup_folder_read_only"},
    CodeRow{ErrorCode::BackupNotCopied, "backup_not_copied"},
    CodeRow{ErrorCode::BackupDamaged, "backup_damaged"},
    CodeRow{ErrorCode::BackupNewer, "backup_newer"},
    CodeRow{ErrorCode::PassphraseMissing, "passphrase_missing"},
    CodeRow{ErrorCode::PassphraseWrong, "passphrase_wrong"},
    CodeRow{ErrorCode::PassphraseShort, "passphrase_short"},
    CodeRow{ErrorCode::RestoreFailed, "restore_failed"},
    CodeRow{ErrorCode::NotFound, "not_found"},
    CodeRow{ErrorCode::InBin, "in_bin"},
    CodeRow{ErrorCode::BinKeepsRecords, "bin_keeps_records"},
    CodeRow{ErrorCode::BinHoldsRole, "bin_holds_role"},
    CodeRow{ErrorCode::BinOpenSituation, "bin_open_situation"},
    CodeRow{ErrorCode::BinHasReadings, "bin_has_readings"},
    CodeRow{ErrorCode::BinLogo, "bin_logo"},
    CodeRow{ErrorCode::BinStillUsed, "bin_still_used"},
    CodeRow{ErrorCode::RoleOverlaps, "role_overlaps"},
    CodeRow{ErrorCode::EventStays, "event_stays"},
    CodeRow{ErrorCode::EmergencyNumberUnusable, "emergency_number_unusable"},
    CodeRow{ErrorCode::EmergencyContactTaken, "emergency_contact_taken"},
    CodeRow{ErrorCode::PlaceholderUnknown, "placeholder_unknown"},
    CodeRow{ErrorCode::PlaceholderOpen, "placeholder_open"},
    CodeRow{ErrorCode::LetterLacks, "letter_lacks"},
    CodeRow{ErrorCode::NumberFormUnusable, "number_form_unusable"},
    CodeRow{ErrorCode::ChangeLogBroken, "change_log_broken"},
    CodeRow{ErrorCode::StrokesUnreadable, "strokes_unreadable"},
    CodeRow{ErrorCode::AttachmentTooLarge, "attachment_too_large"},
    CodeRow{ErrorCode::AttachmentUnknown, "attachment_unknown"},
    CodeRow{ErrorCode::LogoUnknown, "logo_unknown"},
    CodeRow{ErrorCode::AttachmentDamaged, "attachment_damaged"},
    CodeRow{ErrorCode::AttachmentAltered, "attachment_altered"},
    CodeRow{ErrorCode::TraceUnusable, "trace_unusable"},
    CodeRow{ErrorCode::TraceTooLong, "trace_too_long"},
    CodeRow{ErrorCode::TraceAltered, "trace_altered"},
    CodeRow{ErrorCode::TraceInRecord, "trace_in_record"},
    CodeRow{ErrorCode::TraceSimulated, "trace_simulated"},
    CodeRow{ErrorCode::ErasureHoldsRole, "erasure_holds_role"},
    CodeRow{ErrorCode::RecordIncomplete, "record_incomplete"},
    CodeRow{ErrorCode::RecordChainBroken, "record_chain_broken"},
    CodeRow{ErrorCode::RecordAltered, "record_altered"},
    CodeRow{ErrorCode::RecordSuperseded, "record_superseded"},
    CodeRow{ErrorCode::RecordErased, "record_erased"},
    CodeRow{ErrorCode::KeepingNotOver, "keeping_not_over"},
    CodeRow{ErrorCode::KeptForSituation, "kept_for_situation"},
    CodeRow{ErrorCode::KeptOnHold, "kept_on_hold"},
    CodeRow{ErrorCode::HoldWithoutReason, "hold_without_reason"},
    CodeRow{ErrorCode::RecordVoid, "record_void"},
    CodeRow{ErrorCode::ReasonMissing, "reason_missing"},
    CodeRow{ErrorCode::SigningKeyMissing, "signing_key_missing"},
    CodeRow{ErrorCode::SigningLocked, "signing_locked"},
    CodeRow{ErrorCode::KeyPassphraseWrong, "key_passphrase_wrong"},
    CodeRow{ErrorCode::LetterMissingInFont, "letter_missing_in_font"},
    CodeRow{ErrorCode::PdfNotWritten, "pdf_not_written"},
    CodeRow{ErrorCode::PrinterFailed, "printer_failed"},
    CodeRow{ErrorCode::FileUnreadable, "file_unreadable"},
    CodeRow{ErrorCode::FileUnwritable, "file_unwritable"},
    CodeRow{ErrorCode::PatternUnknown, "pattern_unknown"},
    CodeRow{ErrorCode::MailFailed, "mail_failed"},
    CodeRow{ErrorCode::ScenarioInvalid, "scenario_invalid"},
    CodeRow{ErrorCode::ImportStopped, "import_stopped"},
    CodeRow{ErrorCode::ImportRefused, "import_refused"},
    CodeRow{ErrorCode::ExportInvalid, "export_invalid"},
    CodeRow{ErrorCode::ExportNewer, "export_newer"},
    CodeRow{ErrorCode::UsageWrong, "usage_wrong"},
};

constexpr std::array<ErrorCode, kRows.size()> codesInOrder() {
    std::array<ErrorCode, kRows.size()> codes{};
    for (std::size_t i = 0; i < kRows.size(); ++i) {
        codes[i] = kRows[i].code;
    }
    return codes;
}

constexpr std::array kCodes = codesInOrder();

constexpr bool isEveryCodeItsIndex() {
    for (std::size_t i = 0; i < kCodes.size(); ++i) {
        if (static_cast<std::size_t>(kCodes[i]) != i) {
            return false;
        }
    }
    return true;
}
static_assert(isEveryCodeItsIndex());

}  // namespace

std::string_view codeText(ErrorCode code) {
    const auto index = static_cast<std::size_t>(code);
    assert(index < kRows.size());
    return kRows[index].text;
}

std::span<const ErrorCode> allErrorCodes() {
    return kCodes;
}

}  // namespace hearth
