// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/session.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

/// Series of record numbers. A series is three letters drawn by lot when a store issues its first record: no
/// vowels, so that no word comes out, and nothing that reads like 0 or 1. Numbers run without a gap within
/// it. A store that finds itself in another place than where its series began (a backup that was restored, a
/// copy, a file carried to another machine) begins a new series, which names the head of the old one: two
/// copies of one store never give out one number twice.
namespace hearth::store {

struct Series {
    std::string letters;
    std::string followsSeries;
    std::string followsHead;  // digest of the header that it follows; empty for a store's first
    std::string place;
    int lastNumber = 0;  // of the chain
    int lastRecord = 0;  // of new records; revisions keep their record's number
    std::string head;    // digest of the last header; followsHead while there is none
};

/// A digest of where a file is: machine, path, inode and time of birth. Nothing else has the same, and it
/// tells nobody anything.
[[nodiscard]] std::string placeOf(const std::filesystem::path& path);
/// In a backup, so that it never equals a place.
inline constexpr std::string_view kPlaceOfCopy = "copy";

/// All series, the oldest first.
[[nodiscard]] std::vector<Series> allSeries(const Connection& db);

/// The series to issue in, begun when needed; within the caller's transaction.
[[nodiscard]] Series seriesToIssueIn(Session& session);

/// Notes what has been given out.
void advance(Connection& db, const Series& series);

}  // namespace hearth::store
