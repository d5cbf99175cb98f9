// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/register/doings.h"
#include "core/store/kept.h"
#include "core/store/lines.h"

#include <optional>
#include <string>
#include <vector>

namespace hearth::store {

/// Everything that is held about one person or organisation. Other people's data stays out of it.
struct PersonFile {
    reg::Party party;
    std::vector<RoleLine> roles;
    std::vector<reg::Letter> letters;
    std::vector<RecordLine> records;  // issued ones that name the person
    std::vector<reg::Attachment> attachments;
    std::vector<Change> changes;  // of the person's own fields, oldest first
    Instant madeAt{};
};
/// The same as JSON: sorted keys, two blanks of indentation, text as UTF-8.
[[nodiscard]] std::string personJson(const PersonFile& file);

/// Something that stays after an erasure, and until when.
struct Stays {
    enum class What { Record, Letter };
    What what = What::Record;
    std::string name;      // record number; the letter's kind
    calendar::Date until;  // the last day of its keeping
};
/// What erasing a person takes away and what stays: looked at before, and given as the answer after.
struct Erasure {
    reg::Party party;
    int fields = 0;       // of the person's own that say something
    int letters = 0;      // whose text and address go
    int attachments = 0;  // that go
    int logLines = 0;     // of the change log whose texts go
    std::vector<Stays> stays;
};

/// Why a record is kept longer than its rule says (a dispute, a claim). It holds for all revisions of a
/// number.
struct Hold {
    std::string reason;
    std::string by;
    Instant at{};
};

/// A record whose keeping is over.
struct MayGo {
    RecordLine record;
    calendar::Date keptUntil{};
    record::KeepRule rule = record::KeepRule::SixYears;
    std::optional<Hold> hold = {};  // then it does not go
};
/// A letter whose keeping is over.
struct LetterMayGo {
    reg::Letter letter;
    std::string to;  // the person's name
    reg::Address address;
    calendar::Date keptUntil;
};

/// What is let go at once.
struct LettingGo {
    std::vector<RecordId> records;
    std::vector<reg::LetterId> letters;
};

/// Data protection: access, erasure, and letting go what was kept for long enough.
class Privacy {
  public:
    Privacy() = default;
    Privacy(const Privacy&) = delete;
    Privacy& operator=(const Privacy&) = delete;
    virtual ~Privacy() = default;

    /// Errors: NotFound.
    [[nodiscard]] virtual Result<PersonFile> heldAbout(reg::PartyId id) const = 0;
    /// Changes nothing. Errors: NotFound; ErasureHoldsRole while the person holds a role on premises.
    [[nodiscard]] virtual Result<Erasure> erasureOf(reg::PartyId id) const = 0;
    /// Takes name, addresses, numbers and notes out of the person's row, which stays for the roles that it
    /// had; attachments; letters whose keeping is over; and all of that out of the change log. Issued records
    /// stay as they are. No step of undo. Copies in backups stay until those are gone. Errors: as
    /// erasureOf().
    [[nodiscard]] virtual Result<Erasure> erase(reg::PartyId id) = 0;
    /// Records whose keeping is over on that day, the oldest first, held ones too: for looking through once a
    /// year. Not those of premises where an unsafe situation is open.
    [[nodiscard]] virtual Result<std::vector<MayGo>> mayGo(calendar::Date today, int limit = 500) const = 0;
    /// The same of letters that still say something.
    [[nodiscard]] virtual Result<std::vector<LetterMayGo>> lettersMayGo(calendar::Date today,
                                                                        int limit = 500) const = 0;
    /// Erases what records say and their pages, and what letters say and where they went, in one transaction.
    /// A record's header (number, dates, digests) stays, and the chain; that it went, when, by whom and until
    /// when it had been kept stands in its events and in the change log. No step of undo. Copies in backups
    /// stay until those are gone. Errors: NotFound, RecordErased, KeepingNotOver, KeptForSituation,
    /// KeptOnHold; RecordAltered and RecordChainBroken, so that nobody gets rid of what was tampered with.
    [[nodiscard]] virtual Result<void> letGo(const LettingGo& what) = 0;
    /// Keeps all revisions of a record until liftHold(); once more changes the reason. Both stand in the
    /// record's events. Errors: NotFound, RecordErased, HoldWithoutReason.
    [[nodiscard]] virtual Result<void> hold(RecordId id, const std::string& reason) = 0;
    /// Nothing when it is not held. Errors: NotFound.
    [[nodiscard]] virtual Result<void> liftHold(RecordId id) = 0;
};

}  // namespace hearth::store
