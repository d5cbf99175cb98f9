// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/privacy.h"
#include "core/store/session.h"

#include <string_view>

/// Letting go what was kept for long enough. A record goes by the event kErasedEvent, which empties its
/// payloads (resources/sql, "letting go"); the sealed change log gets a line of table kErasedTable, field
/// kErasedField, whose new value is the event's detail. So the record's premises and visit, which no digest
/// covers any more, are still vouched for. Everything throws Failure.
namespace hearth::store {

inline constexpr std::string_view kErasedEvent = "payload erased";
inline constexpr std::string_view kHeldEvent = "hold set";
inline constexpr std::string_view kLiftedEvent = "hold lifted";
inline constexpr std::string_view kErasedTable = "record_headers";
inline constexpr std::string_view kErasedField = "payload";
/// Whether only this file may append such an event.
[[nodiscard]] bool isReservedEvent(std::string_view event);

/// Throws RecordErased for one that was let go.
void refuseLetGo(const RecordLine& line);

/// The last day of the keeping, and its rule: "2032-11-25 six_years", and back.
[[nodiscard]] std::string erasedDetail(calendar::Date keptUntil, record::KeepRule rule);
[[nodiscard]] bool readErasedDetail(std::string_view detail, LetGo& out);

/// The civil day, for a keeping that is counted in years.
[[nodiscard]] calendar::Date civilDay(Instant at);
/// A kind that this program does not know is kept as long as any.
[[nodiscard]] calendar::Date keptUntil(const record::ChainHeader& header);
[[nodiscard]] calendar::Date keptUntil(const reg::Letter& letter);
[[nodiscard]] bool isOver(const Session& session, const reg::Letter& letter);
/// Without what `letter` said and where it went; that it was sent, when and of what kind stays.
[[nodiscard]] reg::Letter withoutTexts(reg::Letter letter);

[[nodiscard]] std::vector<MayGo> recordsPastKeeping(const Connection& db, calendar::Date today, int limit);
[[nodiscard]] std::vector<LetterMayGo> lettersPastKeeping(const Connection& db, calendar::Date today,
                                                          int limit);
void letGo(Session& session, const LettingGo& what);

[[nodiscard]] std::optional<Hold> holdOn(const Connection& db, const std::string& number);
void holdRecord(Session& session, RecordId id, const std::string& reason);
void liftHold(Session& session, RecordId id);

}  // namespace hearth::store
