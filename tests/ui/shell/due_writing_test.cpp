// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/due_writing.h"

#include "tests/support/files.h"
#include "tests/support/fixed_clock.h"

#include <gmock/gmock.h>
#include <stdexcept>

namespace hearth::ui::shell {
namespace {

using ::testing::SizeIs;

template <class Value>
Value needs(Result<Value> result) {
    if (!result) {
        throw std::runtime_error(std::string(codeText(result.error().code)));
    }
    if constexpr (!std::is_void_v<Value>) {
        return std::move(*result);
    }
}

calendar::Date onDay(const char* iso) {
    return calendar::fromIso(iso).value();
}

/// Two flats of one landlord and one of another, all checked on 20 December 2025.
class DueWriting : public ::testing::Test {
  protected:
    void SetUp() override {
        reg::Firm firm;
        firm.name = "Ember & Daughter";
        firm.address = {"3 Smithy Lane", "", "Ashby", "QA1 1AA"};
        firm.telephone = "01632 960000";
        firm.email = "office@ember.example";
        store = needs(store::Store::create(m_folder / "firm.hearth", firm, clock));
        quill = landlord("Orla Quill", {"7 Weir Bank", "", "Zelby", "QZ9 9ZZ"});
        ash = landlord("Ned Ash", {"1 Ash Row", "", "Ashby", "QA2 2BB"});
        flat("1 Mill Lane", quill);
        flat("2 Mill Lane", quill);
        flat("3 Mill Lane", ash);
    }
    reg::PartyId landlord(const std::string& name, const reg::Address& address) {
        reg::Party party;
        party.id = {store->newId()};
        party.name = name;
        party.address = address;
        needs(store->save(party));
        return party.id;
    }
    void flat(const std::string& line1, reg::PartyId of) {
        reg::Premises premises;
        premises.id = {store->newId()};
        premises.address = {line1, "", "Ashby", "QA1 1AA"};
        needs(store->save(premises));
        needs(store->save(reg::Role{{}, premises.id, of, reg::RoleKind::Landlord}));
        needs(store->save(reg::EarlierCheck{{}, premises.id, {}, onDay("2025-12-20"), "", "", {}}));
        flats.push_back(premises.id);
    }

  private:
    hearth::testing::TempDir m_folder;

  protected:
    FixedClock clock = hearth::testing::fixedClock("2026-11-25", "09:46");
    std::unique_ptr<store::Store> store;
    words::Words english;
    reg::PartyId quill;
    reg::PartyId ash;
    std::vector<reg::PremisesId> flats;
    calendar::Date today = onDay("2026-11-25");
};

TEST_F(DueWriting, aCalendarHasDeadlinesAndBookings) {
    reg::Booking booking;
    booking.premises = flats.front();
    booking.date = onDay("2026-12-01");
    booking.from = "09:30";
    booking.until = "10:30";
    const auto id = needs(store->book({booking})).front();
    auto events = needs(dueEvents(*store, {}, clock, english));
    ASSERT_THAT(events, SizeIs(4));
    EXPECT_EQ(events.back().uid, "booking-" + id.text() + "@hearthledger");
    EXPECT_EQ(events.back().sequence, 0);
    EXPECT_EQ(events.back().from, "09:30");
    EXPECT_EQ(events.front().date, onDay("2026-12-20"));
    const auto before = events.front().sequence;
    clock.advance(std::chrono::minutes(5));
    needs(store->cancelBooking(id, "rang to say no"));
    events = needs(dueEvents(*store, {}, clock, english));
    EXPECT_TRUE(events.back().cancelled);
    EXPECT_EQ(events.back().sequence, 1);
    EXPECT_EQ(events.front().sequence, before + 5);
    store::DueFilter filter;
    filter.landlord = ash;
    EXPECT_THAT(needs(dueEvents(*store, filter, clock, english)), SizeIs(1));
}

TEST_F(DueWriting, aSummarySpeaksTheLanguageThatAllOfThemPrefer) {
    const auto in = [this](const store::DueFilter& filter, const char* windows = "pl") {
        return summaryLanguage(*store, filter, needs(allDue(*store, filter, today)),
                               QString::fromLatin1(windows));
    };
    const auto prefers = [this](reg::PartyId who, const char* code) {
        for (auto party : needs(store->parties({}, 10))) {
            if (party.id == who) {
                party.language = code;
                needs(store->save(party));
            }
        }
    };
    EXPECT_EQ(in({}).language, QStringLiteral("en")) << "nobody said, and the firm's is English";
    EXPECT_FALSE(in({}).differ);
    prefers(quill, "cy");
    EXPECT_TRUE(in({}).differ);
    EXPECT_EQ(in({}).language, QStringLiteral("pl")) << "the window's, where they differ";
    EXPECT_EQ(in({}, "en_XA").language, QStringLiteral("en")) << "no record is issued in that one";
    store::DueFilter hers;
    hers.landlord = quill;
    EXPECT_EQ(in(hers).language, QStringLiteral("cy"));
    EXPECT_FALSE(in(hers).differ);
    hers.landlord = ash;
    EXPECT_EQ(in(hers).language, QStringLiteral("en"));
    prefers(ash, "cy");
    EXPECT_EQ(in({}).language, QStringLiteral("cy")) << "they agree";
    EXPECT_FALSE(in({}).differ);
    EXPECT_EQ(languageOfHolder(*store, needs(allDue(*store, {}, today)).front()), QStringLiteral("cy"));
    EXPECT_EQ(in({{calendar::DueState::NoDuty}, {}, {}, {}, {}, {}}).language, QStringLiteral("en"))
        << "an empty list: the firm's";
}

TEST_F(DueWriting, aListIsForOtherPrograms) {
    const auto rows = dueRows(needs(allDue(*store, {}, today)));
    ASSERT_THAT(rows, SizeIs(3));
    EXPECT_EQ(rows.front().state, calendar::DueState::WindowOpen);
    EXPECT_EQ(rows.front().deadline, onDay("2026-12-20"));
    EXPECT_EQ(rows.front().lastCheck, onDay("2025-12-20"));
    const auto pdf = needs(
        summaryPdf(*store, needs(allDue(*store, {}, today)), "Orla Quill", today, QStringLiteral("en")));
    EXPECT_EQ(pdf.substr(0, 5), "%PDF-");
}

}  // namespace
}  // namespace hearth::ui::shell
