// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/calendar/civil_date.h"
#include "core/register/model.h"
#include "core/rulebook/finding.h"
#include "core/store/lines.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

/// One field that finds everything.
namespace hearth::store {

/// What was found, in the order in which kinds are shown where nothing else decides.
enum class HitKind { Premises, Party, Visit, Record };

/// By what it was found.
enum class HitField {
    Address,
    Postcode,
    Name,    // its own, or a record's customer
    Holder,  // somebody who holds a role on the premises
    Telephone,
    Email,
    Uprn,
    Mprn,
    MeterSerial,
    ApplianceSerial,
    GcNumber,
    RecordNumber,
    OrderReference,
};

struct Hit {
    HitKind kind = HitKind::Premises;
    UuidBytes row{};     // of the premises, party, visit or record: where to go
    std::string title;   // a street, a name, a record's number
    std::string detail;  // what else tells it from its like: town and postcode, customer
    HitField field = HitField::Address;
    std::string found;  // the field's value, where title and detail do not show it
    std::string of;     // what that value belongs to: an appliance's make and model
    std::optional<reg::PremisesId> premises = {};   // of a party: where it holds a role, or held the last
    int revision = 0;                               // of a record
    std::optional<calendar::Date> date = {};        // of a visit, or of a record's issue
    std::optional<rulebook::Outcome> outcome = {};  // of a record that was not let go
};

struct Hits {
    std::vector<Hit> hits;  // one kind after the other, the best kind and the best of each first
    bool more = false;      // there are others
};

class Finding {
  public:
    virtual ~Finding() = default;

    /// What all words of `typed` are found in: people, premises, visits by order number, records; by words
    /// begun, in any order, small or capital, with accents or without; numbers with blanks or without,
    /// telephone numbers with the country's code or without. Whole words come before words begun, rarer
    /// fields before common ones, newer before older, among the newest some dozens of each kind that match: a
    /// short beginning of a word never costs more. At most `most` of each kind; nothing for no words.
    [[nodiscard]] virtual Result<Hits> find(const std::string& typed, std::size_t most = 8) const = 0;

    /// All premises by town and address, as premises("") gives them, a page at a time: a list of whatever
    /// length is shown at once. `first` counts from 0. `all`: how many there are, where they were counted.
    [[nodiscard]] virtual Result<int> premisesCount() const = 0;
    [[nodiscard]] virtual Result<std::vector<PremisesLine>> premisesPage(
        int first, int count, std::optional<int> all = {}) const = 0;
    /// Where in that order they stand; nothing for those in the bin.
    [[nodiscard]] virtual Result<std::optional<int>> premisesRow(reg::PremisesId id) const = 0;

    /// How many things the index of words holds otherwise than it should; 0 for a sound one. Reads
    /// everything.
    [[nodiscard]] virtual Result<int> staleInSearch() const = 0;
    /// Makes the index of words anew, all of it. For an index that is not sound.
    [[nodiscard]] virtual Result<void> mendSearch() = 0;
};

}  // namespace hearth::store
