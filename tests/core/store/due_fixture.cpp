// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/due_fixture.h"

#include "core/register/choices.h"

namespace hearth::store {
namespace {

template <class Value>
Result<void> valueLess(const Result<Value>& result) {
    return result ? Result<void>() : Result<void>(tl::unexpected<Error>(result.error()));
}

NewAttachment scanned(const std::string& bytes) {
    NewAttachment scan;
    scan.name = "record.pdf";
    scan.mediaType = "application/pdf";
    scan.bytes = bytes;
    return scan;
}

reg::Booking bookingAt(const Sample& sample, calendar::Date date) {
    reg::Booking booking;
    booking.premises = sample.premises.id;
    booking.engineer = sample.engineer.id;
    booking.date = date;
    booking.from = "09:30";
    booking.until = "10:30";
    return booking;
}

Result<void> sayLet(Store& store, const Sample& sample) {
    return store.save(reg::CheckPlan{{}, sample.premises.id, calendar::CheckDuty::Let, 0, day(2025, 2, 1)});
}
Result<void> sayWorkplace(Store& store, const Sample& sample) {
    return store.save(reg::CheckPlan{{}, sample.premises.id, calendar::CheckDuty::OwnInterval, 6, {}});
}
Result<void> keepEarlier(Store& store, const Sample& sample) {
    return store.save(reg::EarlierCheck{{}, sample.premises.id, {}, day(2025, 12, 1), "Pike Gas", "", {}});
}
Result<void> keepEarlierWithScan(Store& store, const Sample& sample) {
    return store.save(reg::EarlierCheck{{}, sample.premises.id, {}, day(2025, 12, 2), "Pike Gas", "", {}},
                      scanned("%PDF another firm's"));
}
Result<void> dropEarlier(Store& store, const Sample& sample) {
    return store.removeEarlierCheck(valueOf(store.earlierChecks(sample.premises.id)).front().id);
}
Result<void> someAppliance(Store& store, const Sample& sample) {
    return store.save(fullAppliance(store, sample.installation.id));
}
Result<void> putOff(Store& store, const Sample& sample) {
    const auto appliances = store.appliances(sample.installation.id);
    return appliances ? store.save(reg::CheckExtension{
                            {}, sample.premises.id, appliances->front().id, day(2027, 6, 1)})
                      : valueLess(appliances);
}
Result<void> bookTwo(Store& store, const Sample& sample) {
    return valueLess(store.book({bookingAt(sample, day(2026, 12, 1)), bookingAt(sample, day(2026, 12, 8))}));
}
reg::BookingId aBooking(Store& store, const Sample& sample) {
    return valueOf(store.bookings(sample.premises.id)).front().id;
}
Result<void> moveOne(Store& store, const Sample& sample) {
    const int sequence = valueOf(store.bookings(sample.premises.id)).front().sequence;
    return store.moveBooking(aBooking(store, sample), day(2026, 12, 2),
                             "1" + std::to_string(sequence % 10) + ":00", "", {});
}
Result<void> cancelOne(Store& store, const Sample& sample) {
    return store.cancelBooking(aBooking(store, sample), "rang to say no");
}
Result<void> ring(Store& store, const Sample& sample) {
    return valueLess(store.logCall(
        {sample.premises.id, sample.customer.id, "01632 960000", "asked for a day", "will ring back", {}}));
}
Result<void> sendTwo(Store& store, const Sample& sample) {
    const SentLetter letter{sample.premises.id, sample.customer.id,      "reminder", reg::Channel::Letter,
                            "1 Mill Lane",      "Dear Nell Harrow, ...", {}};
    return valueLess(store.keepSent({letter, letter}));
}
Result<void> nobodyOpened(Store& store, const Sample& sample) {
    NoAccess what;
    what.attempt.premises = sample.premises.id;
    what.attempt.who = "Tamsin Ember";
    what.attempt.left = "card through the door";
    what.booking = aBooking(store, sample);
    what.photograph = scanned("door");
    return valueLess(store.logNoAccess(what));
}
Result<void> copyTwice(Store& store, const Sample& sample) {
    return valueLess(
        store.copyPremises(sample.premises.id, {{{"Flat 2", "1 Mill Lane", "Ashby", "QA1 1AA"}, ""},
                                                {{"Flat 3", "1 Mill Lane", "Ashby", "QA1 1AA"}, ""}}));
}
/// Another one each time, so that something changes.
Result<void> sayCadence(Store& store, const Sample& /*sample*/) {
    auto cadence = valueOf(store.cadence());
    cadence.front() += 1;
    return store.saveCadence(cadence);
}
Result<void> sayInterval(Store& store, const Sample& /*sample*/) {
    return store.saveOwnInterval(valueOf(store.ownInterval()) + 1);
}
Result<void> sayHolidays(Store& store, const Sample& /*sample*/) {
    auto table = valueOf(store.bankHolidays());
    table.source = "a file of the firm's";
    table.lastYear += 1;
    return store.saveBankHolidays(table);
}
}  // namespace

const std::vector<KeptAction>& dueActions() {
    static const std::vector<KeptAction> kActions{
        {"plan", "save reg::CheckPlan", sayLet},
        {"plan_again", "save reg::CheckPlan", sayWorkplace, sayLet},
        {"earlier_check", "save reg::EarlierCheck", keepEarlier},
        {"earlier_check_with_scan", "save reg::EarlierCheck", keepEarlierWithScan},
        {"drop_earlier_check", "removeEarlierCheck", dropEarlier, keepEarlierWithScan},
        {"extension", "save reg::CheckExtension", putOff, someAppliance},
        {"book", "book", bookTwo},
        {"move_booking", "moveBooking", moveOne, bookTwo},
        {"cancel_booking", "cancelBooking", cancelOne, bookTwo},
        {"call", "logCall", ring},
        {"send", "keepSent", sendTwo},
        {"no_access", "logNoAccess", nobodyOpened, bookTwo},
        {"alike", "copyPremises", copyTwice, someAppliance},
        {"cadence", "saveCadence", sayCadence, {}, false},
        {"own_interval", "saveOwnInterval", sayInterval, {}, false},
        {"bank_holidays", "saveBankHolidays", sayHolidays, {}, false},
    };
    return kActions;
}

void DueTest::SetUp() {
    KeptTest::SetUp();
    landlord.id = {store->newId()};
    landlord.name = "Orla Quill";
    landlord.address = {"7 Weir Bank", "", "Ashby", "QA9 9ZZ"};
    landlord.email = "orla@quill.example";
    valueOf(store->save(landlord));
}

LetFlat DueTest::letFlat(const std::string& line1, const std::string& postcode) {
    LetFlat flat;
    reg::Premises premises;
    premises.id = flat.premises = {store->newId()};
    premises.address = {line1, "", "Ashby", postcode};
    valueOf(store->save(premises));
    valueOf(store->save(reg::Role{{}, premises.id, landlord.id, reg::RoleKind::Landlord}));
    reg::Installation installation;
    installation.id = flat.installation = {store->newId()};
    installation.premises = premises.id;
    valueOf(store->save(installation));
    reg::Appliance boiler;
    boiler.id = flat.boiler = {store->newId()};
    boiler.installation = installation.id;
    boiler.kind = "condensing_boiler";
    boiler.place = "kitchen";
    valueOf(store->save(boiler));
    return flat;
}

void DueTest::checkedBefore(const LetFlat& flat, calendar::Date date) {
    valueOf(store->save(reg::EarlierCheck{{}, flat.premises, {}, date, "Pike Gas", "", {}}));
}

RecordId DueTest::recordOf(const LetFlat& flat, calendar::Date date, record::RecordKind kind,
                           const std::vector<std::pair<reg::Item, std::string>>& typed) {
    reg::Visit visit;
    visit.premises = flat.premises;
    visit.installation = flat.installation;
    visit.date = date;
    visit.engineer = sample.engineer.id;
    visit.id = valueOf(store->startVisit(visit));
    for (const auto& [item, text] : typed) {
        reg::Entry entry;
        entry.visit = visit.id;
        entry.subject = reg::subject(flat.boiler);
        entry.item = item;
        entry.text = text;
        valueOf(store->saveEntry(entry));
    }
    auto request = requestFor(*store, visit.id);
    request.kind = kind;
    return valueOf(store->issue(request, pdfOf));
}

RecordId DueTest::checkedByUs(const LetFlat& flat, calendar::Date date, const std::string& countedFrom) {
    std::vector<std::pair<reg::Item, std::string>> typed{
        {reg::Item::ApplianceInspected, std::string(reg::choice::kInspected)}};
    if (!countedFrom.empty()) {
        typed.emplace_back(reg::Item::LastCheckCounted, countedFrom);
    }
    return recordOf(flat, date, record::RecordKind::LandlordSafety, typed);
}

RecordId DueTest::servicedByUs(const LetFlat& flat, calendar::Date date) {
    return recordOf(flat, date, record::RecordKind::Service, {{reg::Item::ServiceTasks, "burner cleaned"}});
}

reg::BookingId DueTest::bookedOn(const LetFlat& flat, calendar::Date date, const std::string& from,
                                 const std::string& until) {
    reg::Booking booking;
    booking.premises = flat.premises;
    booking.engineer = sample.engineer.id;
    booking.date = date;
    booking.from = from;
    booking.until = until;
    return valueOf(store->book({booking})).front();
}

DueLine DueTest::lineOf(const LetFlat& flat) const {
    return valueOf(store->dueFile(flat.premises, today)).line;
}

std::vector<std::string> DueTest::listed(const DueFilter& filter, DueSort sort) const {
    std::vector<std::string> lines;
    for (const auto& line : valueOf(store->duePage(filter, sort, today, 0, 1000))) {
        lines.push_back(line.address.line1);
    }
    return lines;
}

}  // namespace hearth::store
