// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/session.h"
#include "core/store/store.h"

#include <optional>
#include <string>
#include <vector>

/// Reading issued records. Everything throws Failure.
namespace hearth::store {

/// Newest first.
[[nodiscard]] std::vector<RecordLine> findRecords(const Connection& db, const std::string& search, int limit);
[[nodiscard]] std::vector<RecordLine> recordsOf(const Connection& db, reg::VisitId visit);
/// Oldest first.
[[nodiscard]] std::vector<RecordLine> chosenRecords(const Connection& db, const RecordChoice& choice);
[[nodiscard]] std::optional<RecordLine> findRecord(const Connection& db, RecordId id);
[[nodiscard]] std::optional<RecordId> newestOfNumber(const Connection& db, const std::string& number);

/// With its payload, verified on the way.
[[nodiscard]] IssuedRecord readRecord(Connection& db, RecordId id);

[[nodiscard]] std::vector<RecordEvent> eventsOfRecord(const Connection& db, RecordId id);
/// Within the caller's transaction.
void appendEvent(Session& session, RecordId id, const std::string& event, const std::string& detail);
/// Not the events that mean something to the store (letting_go.h).
void noteEvent(Session& session, RecordId id, const std::string& event, const std::string& detail);
[[nodiscard]] std::vector<record::Sending> sendingsOf(const Connection& db, RecordId id);
void noteSending(Session& session, RecordId id, const record::Sending& sending);
/// Who was given an earlier revision, and not yet this one.
[[nodiscard]] std::vector<record::CopyHolder> holdersOfEarlier(const Connection& db, RecordId id);
/// The event that makes a record void; its detail is the reason.
inline constexpr std::string_view kVoidEvent = "void";
/// Errors: NotFound, ReasonMissing, RecordVoid, RecordSuperseded, RecordChainBroken.
void voidRecord(Session& session, RecordId id, const std::string& why);
/// Throws RecordSuperseded when another revision has taken its place.
void refuseSuperseded(const Connection& db, const RecordLine& line);

/// The header's columns in the order that headerOf() reads, for the alias h.
inline constexpr std::string_view kHeaderColumns =
    "h.series, h.number, h.record, h.revision, h.kind, h.issued_at, h.snapshot_digest, h.pdf_digest, "
    "h.previous";
inline constexpr int kHeaderColumnCount = 9;
[[nodiscard]] record::ChainHeader headerOf(const Columns& columns, int first = 0);

}  // namespace hearth::store
