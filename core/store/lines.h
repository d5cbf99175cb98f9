// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/record/keeping.h"
#include "core/record/proof.h"
#include "core/record/snapshot.h"
#include "core/register/model.h"
#include "core/rulebook/rule_book.h"

#include <optional>
#include <string>
#include <vector>

/// The lines of the store's lists.
namespace hearth::store {

using RecordId = Id<struct RecordTag>;
using ChangeId = Id<struct ChangeTag>;

/// A line of the premises list.
struct PremisesLine {
    reg::Premises premises;
    std::string customer;  // name of the first customer, landlord or home owner
    std::optional<calendar::Date> lastVisit;
    int drafts = 0;  // visits that are open
};

/// A line of the visits list.
struct VisitLine {
    reg::Visit visit;
    reg::Address address;
    std::string customer;
    std::string engineer;
    int records = 0;
};

/// When a record was let go, by whom, and until when it had been kept.
struct LetGo {
    Instant at{};
    std::string by;
    calendar::Date keptUntil;
    record::KeepRule rule = record::KeepRule::SixYears;
};

/// A line of the records list; also what is known of a record without its payload.
struct RecordLine {
    RecordId id;
    record::ChainHeader header;
    reg::VisitId visit;
    reg::PremisesId premises;
    std::string address;
    std::string customer;
    rulebook::Outcome outcome = rulebook::Outcome::NoVerdict;
    std::optional<RecordId> supersedes;
    std::optional<RecordId> supersededBy;
    std::string reason;  // of a revision
    /// Then its header, premises and visit stay, and all else is gone: no address, customer, reason or
    /// outcome.
    std::optional<LetGo> letGo = {};
    std::optional<record::VoidMark> voided;
};

/// Which records are meant, where many are written or printed at once. What is left empty asks for nothing.
struct RecordChoice {
    std::string search;                  // words, as in the list
    std::optional<calendar::Date> from;  // issued on that day or later, where the firm works
    std::optional<calendar::Date> until;
    std::optional<reg::PartyId> of;  // who held a role on the premises when it was issued
    bool onlyThatCount = true;       // neither superseded nor void
};

/// One line of the change log.
struct Change {
    ChangeId id;
    std::string table;
    std::string row;    // id as text
    std::string field;  // column, or an item's code
    std::optional<std::string> before;
    std::optional<std::string> after;
    std::string by;
    Instant at{};
};

/// A part of a change log, newest first.
struct ChangePage {
    std::vector<Change> lines;
    std::optional<ChangeId> next;  // to ask for what is older; none: that was all
};

/// What happened to an issued record: "printed", "saved as PDF".
struct RecordEvent {
    std::string event;
    std::string detail;
    std::string by;
    Instant at{};
    std::string sentTo = {};  // whom it went to, where it did
};

}  // namespace hearth::store
