// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/due.h"
#include "tests/ui/support/firm_bench.h"

#include <algorithm>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace hearth::testing {

/// Due without a store: lines that a test makes up, worked out for one page alone, so that a list of 100,000
/// costs no more than what is asked for; and everything that was asked to be done.
class ScriptedDue : public store::Due {
  public:
    std::function<store::DueLine(int)> line = [](int) { return store::DueLine(); };
    int count = 0;
    store::DueCounts counts;
    std::map<store::DueBy, std::vector<store::DueChoice>> choices;
    mutable std::vector<store::DueBy> choicesAsked;
    mutable std::vector<store::DueFilter> asked;
    mutable std::vector<std::pair<int, int>> pages;
    mutable store::DueSort sorted = store::DueSort::Need;

    Result<store::DueCounts> dueCounts(const store::DueFilter& filter, calendar::Date) const override {
        asked.push_back(filter);
        return counts;
    }
    Result<std::vector<store::DueLine>> duePage(const store::DueFilter&, store::DueSort sort, calendar::Date,
                                                int first, int many,
                                                const std::optional<store::DueCounts>&) const override {
        pages.emplace_back(first, many);
        sorted = sort;
        std::vector<store::DueLine> lines;
        for (int row = first; row < std::min(first + many, count); ++row) {
            lines.push_back(line(row));
        }
        return lines;
    }
    Result<std::vector<store::DueChoice>> dueChoices(store::DueBy by, calendar::Date) const override {
        choicesAsked.push_back(by);
        const auto found = choices.find(by);
        return found == choices.end() ? std::vector<store::DueChoice>() : found->second;
    }

    // Not for lists: tests of what is done use a real store.
    Result<std::vector<store::DueLine>> overdueSince(calendar::Date, calendar::Date) const override {
        return fail(ErrorCode::NotFound);
    }
    Result<store::DueFile> dueFile(reg::PremisesId, calendar::Date) const override {
        return fail(ErrorCode::NotFound);
    }
    Result<std::vector<store::StoryEvent>> storyOf(reg::PremisesId, calendar::Date) const override {
        return fail(ErrorCode::NotFound);
    }
    Result<std::vector<std::string>> newestRecords(const std::vector<reg::PremisesId>&) const override {
        return fail(ErrorCode::NotFound);
    }
    Result<std::vector<store::DueIfChecked>> dueIfChecked(const std::vector<reg::PremisesId>&,
                                                          calendar::Date) const override {
        return fail(ErrorCode::NotFound);
    }
    Result<std::vector<record::CheckHistory>> checksBefore(reg::VisitId) const override {
        return fail(ErrorCode::NotFound);
    }
    Result<void> save(const reg::CheckPlan&) override { return fail(ErrorCode::NotFound); }
    Result<std::vector<reg::EarlierCheck>> earlierChecks(reg::PremisesId) const override {
        return fail(ErrorCode::NotFound);
    }
    Result<void> save(const reg::EarlierCheck&) override { return fail(ErrorCode::NotFound); }
    Result<void> save(const reg::EarlierCheck&, const store::NewAttachment&) override {
        return fail(ErrorCode::NotFound);
    }
    Result<void> removeEarlierCheck(reg::EarlierCheckId) override { return fail(ErrorCode::NotFound); }
    Result<void> save(const reg::CheckExtension&) override { return fail(ErrorCode::NotFound); }
    Result<std::vector<store::Clash>> clashesOf(const reg::Booking&, calendar::Date) const override {
        return fail(ErrorCode::NotFound);
    }
    Result<std::vector<reg::BookingId>> book(const std::vector<reg::Booking>&) override {
        return fail(ErrorCode::NotFound);
    }
    Result<void> moveBooking(reg::BookingId, calendar::Date, const std::string&, const std::string&,
                             std::optional<reg::EngineerId>) override {
        return fail(ErrorCode::NotFound);
    }
    Result<void> cancelBooking(reg::BookingId, const std::string&) override {
        return fail(ErrorCode::NotFound);
    }
    Result<reg::LetterId> logCall(const store::Call&) override { return fail(ErrorCode::NotFound); }
    Result<std::vector<reg::LetterId>> keepSent(const std::vector<store::SentLetter>&) override {
        return fail(ErrorCode::NotFound);
    }
    Result<reg::AccessAttemptId> logNoAccess(const store::NoAccess&) override {
        return fail(ErrorCode::NotFound);
    }
    Result<std::vector<reg::PremisesId>> copyPremises(reg::PremisesId,
                                                      const std::vector<store::AlikePremises>&) override {
        return fail(ErrorCode::NotFound);
    }
    Result<calendar::BankHolidays> bankHolidays() const override { return fail(ErrorCode::NotFound); }
    Result<void> saveBankHolidays(const std::optional<calendar::BankHolidays>&) override {
        return fail(ErrorCode::NotFound);
    }
    Result<calendar::Cadence> cadence() const override { return fail(ErrorCode::NotFound); }
    Result<void> saveCadence(const calendar::Cadence&) override { return fail(ErrorCode::NotFound); }
    Result<int> ownInterval() const override { return fail(ErrorCode::NotFound); }
    Result<void> saveOwnInterval(int) override { return fail(ErrorCode::NotFound); }
    Result<std::vector<store::Reminder>> remindersDue(const store::DueFilter&,
                                                      calendar::Date) const override {
        return fail(ErrorCode::NotFound);
    }
    Result<std::vector<store::Reminder>> remindersFor(const std::vector<reg::PremisesId>&,
                                                      calendar::Date) const override {
        return fail(ErrorCode::NotFound);
    }
    Result<std::vector<store::DayStop>> dayRound(std::optional<reg::EngineerId>,
                                                 calendar::Date) const override {
        return fail(ErrorCode::NotFound);
    }
    Result<store::DueOverview> dueOverview(calendar::Date) const override {
        return fail(ErrorCode::NotFound);
    }
    Result<int> staleInDue() const override { return fail(ErrorCode::NotFound); }
    Result<void> mendDue() override { return fail(ErrorCode::NotFound); }
};

}  // namespace hearth::testing
