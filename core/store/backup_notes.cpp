// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/backup_notes.h"

namespace hearth::store {
namespace {

constexpr std::string_view kAt = "backup.at";
constexpr std::string_view kFile = "backup.file";
constexpr std::string_view kMark = "backup.mark";
constexpr std::string_view kFailedAt = "backup.failed_at";
constexpr std::string_view kFailure = "backup.failure";
constexpr std::string_view kSecond = "backup.second";
constexpr std::string_view kSecondAt = "backup.second_at";
constexpr std::string_view kSecondFile = "backup.second_file";
constexpr std::string_view kSecondFailure = "backup.second_failure";
constexpr std::string_view kSealing = "backup.sealing";
constexpr std::string_view kRestoredFrom = "backup.restored_from";
constexpr std::string_view kRestoredAt = "backup.restored_at";

std::string note(const Connection& db, std::string_view name) {
    return db.text("SELECT value FROM settings WHERE name = ?", {std::string(name)});
}

/// An empty one is none.
void putNote(Connection& db, std::string_view name, const std::string& value) {
    if (value.empty()) {
        db.run("DELETE FROM settings WHERE name = ?", {std::string(name)});
    } else {
        db.run(
            "INSERT INTO settings (name, value) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = "
            "excluded.value",
            {std::string(name), value});
    }
}

std::optional<Instant> instantNote(const Connection& db, std::string_view name) {
    Instant instant{};
    return parseInstant(note(db, name), instant) ? std::optional(instant) : std::nullopt;
}

// Between an error's code and its particulars; it can stand in no path that a person made.
constexpr char kBetween = '\x1f';

std::string textOfError(const Error& error) {
    std::string text(codeText(error.code));
    for (const auto& detail : error.details) {
        text.append(1, kBetween).append(detail);
    }
    return text;
}

std::optional<Error> errorOfText(const std::string& text) {
    std::vector<std::string> parts(1);
    for (const char c : text) {
        if (c == kBetween) {
            parts.emplace_back();
        } else {
            parts.back() += c;
        }
    }
    for (const auto code : allErrorCodes()) {
        if (codeText(code) == parts.front()) {
            return Error{code, {parts.begin() + 1, parts.end()}};
        }
    }
    return text.empty() ? std::nullopt : std::optional(Error{ErrorCode::BackupFailed, {std::string(), text}});
}

}  // namespace

std::string markOf(const Connection& db) {
    return db.text(
        "SELECT (SELECT coalesce(max(position), 0) FROM changes) || '/' || "
        "(SELECT coalesce(sum(last_number), 0) FROM series) || '/' || "
        "(SELECT coalesce(max(position), 0) FROM record_events) || '/' || "
        "(SELECT coalesce(max(position), 0) FROM signing_keys) || '/' || "
        "(SELECT count(*) FROM record_signatures) || '/' || "
        "(SELECT coalesce(max(position), 0) FROM firm_entries)");
}

BackupState readBackupState(const Connection& db) {
    BackupState state;
    state.lastAt = instantNote(db, kAt);
    state.last = note(db, kFile);
    std::error_code unknown;
    state.hasChanged = note(db, kMark) != markOf(db) || !std::filesystem::exists(state.last, unknown);
    state.failure = errorOfText(note(db, kFailure));
    state.failedAt = instantNote(db, kFailedAt);
    state.secondFolder = note(db, kSecond);
    state.secondAt = instantNote(db, kSecondAt);
    state.secondFailure = errorOfText(note(db, kSecondFailure));
    state.secondHasLast = note(db, kSecondFile) == state.last.filename().string();
    state.isSealed = !readSealing(db).empty();
    state.restoredFrom = note(db, kRestoredFrom);
    state.restoredAt = instantNote(db, kRestoredAt);
    return state;
}

void noteOutcome(Connection& db, const BackupOutcome& outcome) {
    Transaction transaction(db);
    const std::string at = instantText(outcome.at);
    if (!outcome.made.empty()) {
        putNote(db, kAt, at);
        putNote(db, kFile, outcome.made.string());
        putNote(db, kMark, outcome.mark);
    }
    if (!outcome.made.empty() || outcome.failure) {
        putNote(db, kFailure, outcome.failure ? textOfError(*outcome.failure) : std::string());
        putNote(db, kFailedAt, outcome.failure ? at : std::string());
    }
    if (!outcome.copied.empty()) {
        putNote(db, kSecondAt, at);
        putNote(db, kSecondFile, outcome.copied.filename().string());
    }
    if (!outcome.copied.empty() || outcome.secondFailure) {
        putNote(db, kSecondFailure,
                outcome.secondFailure ? textOfError(*outcome.secondFailure) : std::string());
    }
    transaction.commit();
}

void noteSecondFolder(Connection& db, const std::string& folder) {
    Transaction transaction(db);
    putNote(db, kSecond, folder);
    for (const auto name : {kSecondAt, kSecondFile, kSecondFailure}) {
        putNote(db, name, {});
    }
    transaction.commit();
}

std::string readSealing(const Connection& db) {
    return note(db, kSealing);
}

void noteSealing(Connection& db, const std::string& sealing) {
    putNote(db, kSealing, sealing);
}

void noteRestored(Connection& db, const std::string& from, Instant at) {
    Transaction transaction(db);
    for (const auto name : {kAt, kFile, kMark, kFailedAt, kFailure, kSecondAt, kSecondFile, kSecondFailure}) {
        putNote(db, name, {});
    }
    putNote(db, kRestoredFrom, from);
    putNote(db, kRestoredAt, instantText(at));
    transaction.commit();
}

}  // namespace hearth::store
