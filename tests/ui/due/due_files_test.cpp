// SPDX-License-Identifier: GPL-3.0-or-later
// What leaves the place as files. Published source of the calendar: RFC 5545, read back by python3-icalendar.
#include "ui/due/due_files.h"

#include "tests/support/files.h"
#include "tests/ui/due/due_window.h"
#include "ui/due/evidence_file.h"
#include "ui/paper/paper.h"

#include <QDir>
#include <QImage>

#include <algorithm>
#include <map>

namespace hearth::ui::due {
namespace {

using hearth::testing::need;
using hearth::testing::press;

/// What the other library reads of a calendar, a list of fields an entry, by its UID.
std::map<std::string, QStringList> entriesOf(const QString& path) {
    const auto said = hearth::testing::runCommand("LC_ALL=C.UTF-8 /usr/bin/python3 '" HEARTH_SOURCE_DIR
                                                  "/tests/core/exchange/read_calendar.py' '" +
                                                  path.toStdString() + "'");
    EXPECT_EQ(said.exitCode, 0) << said.text;
    std::map<std::string, QStringList> entries;
    const QString text = QString::fromStdString(said.text);
    for (const auto& line : text.split(u'\n', Qt::SkipEmptyParts)) {
        const QStringList fields = line.split(u'\t');
        entries[fields.front().toStdString()] = fields;
    }
    return entries;
}

constexpr int kSequence = 1;
constexpr int kStart = 2;
constexpr int kStatus = 4;
constexpr int kAlarms = 5;
constexpr int kSummary = 6;

class DueFilesTest : public DueWindowTest {
  protected:
    std::map<std::string, QStringList> calendar() {
        const QString path = fileNamed("checks.ics");
        bench.dialogs.answers = {0};
        bench.dialogs.files = {path};
        press(Qt::Key_E, Qt::ControlModifier | Qt::ShiftModifier);
        return entriesOf(path);
    }
};

TEST_F(DueFilesTest, theCalendarHoldsDeadlinesAndBookings) {
    reg::Booking booking;
    booking.premises = soon;
    booking.date = on("2026-11-30");
    booking.from = "10:00";
    const auto id = need(bench.store->book({booking})).front();
    const auto entries = calendar();
    ASSERT_EQ(entries.size(), 4U) << "three deadlines and a booking";
    const auto deadline = entries.at("due-" + overdue.text() + "@hearthledger");
    EXPECT_EQ(deadline[kStart], QStringLiteral("2026-11-11"));
    EXPECT_EQ(deadline[kAlarms], QStringLiteral("40320,10080")) << "four weeks and a week before";
    EXPECT_TRUE(deadline[kSummary].contains(QStringLiteral("9 Tanner's Row")));
    const auto booked = entries.at("booking-" + id.text() + "@hearthledger");
    EXPECT_EQ(booked[kStart], QStringLiteral("2026-11-30T10:00:00+00:00"));
}

TEST_F(DueFilesTest, whatIsImportedAgainFollows) {
    reg::Booking booking;
    booking.premises = soon;
    booking.date = on("2026-11-30");
    const auto id = need(bench.store->book({booking})).front();
    const std::string uid = "booking-" + id.text() + "@hearthledger";
    const auto before = calendar().at(uid);
    need(bench.store->moveBooking(id, on("2026-12-01"), "09:00", "10:00", {}));
    const auto moved = calendar().at(uid);
    EXPECT_EQ(moved[kStart], QStringLiteral("2026-12-01T09:00:00+00:00"));
    EXPECT_GT(moved[kSequence].toInt(), before[kSequence].toInt());
    need(bench.store->cancelBooking(id, "tenant away"));
    const auto gone = calendar().at(uid);
    EXPECT_EQ(gone[kStatus], QStringLiteral("CANCELLED")) << "so that it is taken out there";
    EXPECT_GT(gone[kSequence].toInt(), moved[kSequence].toInt());
}

TEST_F(DueFilesTest, aFolderGetsAFileForEachEntryAndThatIsSaid) {
    const QDir folder(fileNamed("calendar"));
    ASSERT_TRUE(folder.mkpath(QStringLiteral(".")));
    for (int i = 0; i < 2; ++i) {  // again: the same names
        bench.dialogs.answers = {1};
        bench.dialogs.files = {folder.path()};
        press(Qt::Key_E, Qt::ControlModifier | Qt::ShiftModifier);
        EXPECT_EQ(hearth::testing::child<QLabel>(window.get(), "statusText")->text(),
                  QStringLiteral("3 entries written to %1, each a file.").arg(folder.path()));
        const auto names = folder.entryList(QDir::Files);
        ASSERT_EQ(names.size(), 3);
        EXPECT_TRUE(names.contains(QString::fromStdString("due-" + overdue.text() + ".ics")));
    }
    const auto entries = entriesOf(folder.filePath(QString::fromStdString("due-" + soon.text() + ".ics")));
    ASSERT_EQ(entries.size(), 1U);
    EXPECT_EQ(entries.begin()->second[kStart], QStringLiteral("2026-12-04"));
    bench.dialogs.answers = {1};
    bench.dialogs.files = {fileNamed("nowhere")};
    press(Qt::Key_E, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_FALSE(bench.dialogs.told.isEmpty()) << "a folder that is not there";
}

TEST_F(DueFilesTest, theCalendarIsThatOfTheListAsItIsNarrowed) {
    press(Qt::Key_1, Qt::AltModifier);  // the overdue alone
    ASSERT_EQ(list()->count(), 1);
    const auto entries = calendar();
    ASSERT_EQ(entries.size(), 1U);
    EXPECT_EQ(entries.begin()->first, "due-" + overdue.text() + "@hearthledger");
}

/// By hand: five of six is 83 in a hundred.
TEST(OverviewPaper, comparesLandlordsAndSaysHowOftenTheDoorWasOpened) {
    store::DueOverview overview;
    overview.months.resize(13);
    overview.kept = {6, 4, 1, 1, 6, 5};
    store::DueOverview::OfLandlord fenn;
    fenn.name = "Fenn Estate";
    fenn.premises = 300;
    fenn.overdue = 17;
    overview.landlords = {fenn};
    const auto documentOf = [&] {
        return overviewDocument({}, overview, on("2026-11-25"), record::Paper::A4, words::Words());
    };
    const auto chartNamed = [](const record::Document& page, const char* title) {
        return std::find_if(page.blocks.begin(), page.blocks.end(), [title](const record::Block& block) {
            const auto* plots = std::get_if<record::Plots>(&block);
            return plots != nullptr && plots->title == title;
        });
    };
    auto page = documentOf();
    EXPECT_EQ(chartNamed(page, "By landlord"), page.blocks.end()) << "one is not compared";
    EXPECT_EQ(std::get<record::Table>(page.blocks.back()).title, "By landlord");
    EXPECT_TRUE(keptText(overview.kept).endsWith(QStringLiteral("at the first call: 5 of 6 (83 %).")))
        << keptText(overview.kept).toStdString();
    auto ash = fenn;
    ash.name = "The Thornmere and District Housing Association";
    ash.premises = 40;
    ash.overdue = 2;
    overview.landlords.push_back(ash);
    page = documentOf();
    const auto chart = chartNamed(page, "By landlord");
    ASSERT_NE(chart, page.blocks.end());
    const auto& series = std::get<record::Plots>(*chart).plots.front().series;
    ASSERT_EQ(series.size(), 2U);
    EXPECT_EQ(series[0].points[1].label, "40");
    const auto& names = std::get<record::Plots>(*chart).plots.front().x.ticks;
    EXPECT_EQ(names[0].text, "Fenn Estate");
    EXPECT_EQ(names[1].text, "The Thornmere…") << "whole in the table";
    EXPECT_EQ(series[1].points[0].y, (quantity::Decimal{17, 0}));
    const auto pdf = paper::toPdf(page, {});
    ASSERT_TRUE(pdf);
}

/// The words of a PDF in the order of reading, by a program that knows nothing of ours.
QString pagesText(const QString& path) {
    const auto said = hearth::testing::runCommand("pdftotext -layout '" + path.toStdString() + "' -");
    EXPECT_EQ(said.exitCode, 0) << said.text;
    return QString::fromStdString(said.text).simplified();
}

/// Three attempts (one with a photograph), a letter and a call, on days of their own.
class EvidenceTest : public DueFilesTest {
  protected:
    void SetUp() override {
        DueFilesTest::SetUp();
        say("2026-11-03T09:14:00.000Z", reg::Channel::Letter, "Dear Fenn Estate,\nplease choose a day.", {});
        refused("2026-11-05T14:10:00.000Z", "card no. 1", true);
        refused("2026-11-12T10:00:00.000Z", "card no. 2", false);
        say("2026-11-13T11:30:00.000Z", reg::Channel::Telephone, "Asked for a Saturday.", "will ring back");
        refused("2026-11-19T16:45:00.000Z", "card no. 3", false);
        place->refresh();
    }
    [[nodiscard]] static Instant at(const char* text) {
        Instant instant{};
        EXPECT_TRUE(parseInstant(text, instant));
        return instant;
    }
    void say(const char* when, reg::Channel channel, const char* text, const char* result) {
        reg::Letter letter;
        letter.id = {bench.store->newId()};
        letter.premises = overdue;
        letter.party = landlord.id;
        letter.kind = "no_access";
        letter.channel = channel;
        letter.sentTo = channel == reg::Channel::Letter ? "1 Estate Office" : "01632 960111";
        letter.text = text;
        letter.at = at(when);
        letter.result = result == nullptr ? "" : result;
        need(bench.store->save(letter));
    }
    void refused(const char* when, const char* left, bool photographed) {
        store::NoAccess what;
        what.attempt.premises = overdue;
        what.attempt.at = at(when);
        what.attempt.who = "R. Ashdown";
        what.attempt.left = left;
        if (photographed) {
            QImage door(40, 60, QImage::Format_RGB32);
            door.fill(0xff884422);
            const QString path = fileNamed("door.png");
            ASSERT_TRUE(door.save(path));
            store::NewAttachment picture;
            picture.name = "door.png";
            picture.mediaType = "image/png";
            picture.bytes = hearth::testing::readFile(path.toStdString());
            picture.note = "the card in the door";
            what.photograph = picture;
        }
        need(bench.store->logNoAccess(what));
    }
    QString evidence() {
        const QString path = fileNamed("evidence.pdf");
        bench.dialogs.files = {path};
        chooseFirst(1);
        press(Qt::Key_Return);
        press(Qt::Key_E, Qt::ControlModifier);
        return pagesText(path);
    }
};

TEST_F(EvidenceTest, everythingStandsInOrderOfTime) {
    const QString text = evidence();
    qsizetype from = text.indexOf(QStringLiteral("in order of time"));
    ASSERT_GE(from, 0) << text.toStdString();
    for (const char* next :
         {"11 Nov 2025", "3 Nov 2026 09:14 Letter sent", "5 Nov 2026 14:10 No access", "11 Nov 2026",
          "12 Nov 2026 10:00 No access", "13 Nov 2026 11:30 Telephone call", "19 Nov 2026 16:45 No access"}) {
        const qsizetype found = text.indexOf(QLatin1String(next), from);
        EXPECT_GE(found, from) << next << " is not there, or not in order: " << text.toStdString();
        from = std::max(from, found);
    }
    for (const char* said :
         {"left: card no. 2", "by letter, to 1 Estate Office", "will ring back", "Fenn Estate"}) {
        EXPECT_TRUE(text.contains(QLatin1String(said))) << said << " in " << text.toStdString();
    }
}

TEST_F(EvidenceTest, lettersAndCallsStandWordForWord) {
    const QString text = evidence();
    const auto below = text.indexOf(QStringLiteral("word for word: Letter sent, 3 Nov 2026 at 09:14"));
    ASSERT_GE(below, 0) << text.toStdString();
    EXPECT_GE(text.indexOf(QStringLiteral("Dear Fenn Estate, please choose a day."), below), below);
    EXPECT_GE(text.indexOf(QStringLiteral("Asked for a Saturday."), below), below);
}

TEST_F(EvidenceTest, threeAttemptsAreNoSafeHarbour) {
    const QString text = evidence();
    EXPECT_TRUE(text.contains(QStringLiteral("At least three attempts are what inspectors look for")));
    EXPECT_TRUE(text.contains(QStringLiteral("no safe harbour")));
    EXPECT_TRUE(text.contains(QStringLiteral("try again and tell the landlord"))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("Try again and tell the landlord"))) << text.toStdString();
}

TEST_F(EvidenceTest, fromTheStoryLeadsBackNowhereLater) {
    evidence();
    press(Qt::Key_Escape);
    ASSERT_EQ(hearth::testing::focus(), list());
    press(Qt::Key_G, Qt::ControlModifier);
    ASSERT_TRUE(hearth::testing::child<QWidget>(place, "overviewPage")->isVisible());
    press(Qt::Key_Return);  // the landlord's premises
    EXPECT_EQ(hearth::testing::focus(), list()) << "and not the story of before";
}

/// The landlord's own, where they prefer one: "Yr hyn a wnaed" is the catalogue's Welsh of the heading.
TEST_F(EvidenceTest, itSpeaksTheLanguageOfTheLandlord) {
    const auto english = evidence();
    EXPECT_TRUE(english.contains(QStringLiteral("What was done, in order of time")));
    press(Qt::Key_Escape);
    landlord.language = "cy";
    need(bench.store->save(landlord));
    const auto welsh = evidence();
    EXPECT_TRUE(welsh.contains(QStringLiteral("Yr hyn a wnaed, yn nhrefn amser"))) << welsh.toStdString();
    EXPECT_FALSE(welsh.contains(QStringLiteral("in order of time"))) << welsh.toStdString();
    EXPECT_TRUE(welsh.contains(QStringLiteral("Dear Fenn Estate"))) << "what was sent stays word for word";
    press(Qt::Key_Escape);
    landlord.language = "en+pl";
    need(bench.store->save(landlord));
    const auto both = evidence();
    EXPECT_TRUE(both.contains(QStringLiteral("What was done, in order of time"))) << both.toStdString();
    EXPECT_TRUE(both.contains(QStringLiteral("Co zrobiono, w kolejności czasu"))) << both.toStdString();
}

TEST_F(EvidenceTest, thePhotographIsShownWithWhatItIsOf) {
    const auto whole = need(gatherEvidence(*bench.store, overdue, today));
    const auto page = words::evidenceDocument(bench.words, whole);
    const auto* pictures = std::get_if<record::Pictures>(&page.blocks.back());
    ASSERT_NE(pictures, nullptr);
    ASSERT_EQ(pictures->pictures.size(), 1U);
    EXPECT_NE(pictures->pictures[0].of.find("5 Nov 2026 at 14:10"), std::string::npos)
        << pictures->pictures[0].of;
    EXPECT_EQ(pictures->pictures[0].caption, "the card in the door");
    EXPECT_FALSE(pictures->pictures[0].bytes.empty());
    EXPECT_TRUE(evidence().contains(QStringLiteral("the card in the door")));
}

TEST_F(EvidenceTest, whatIsNoDutyOfALandlordHasNoLandlordsAdvice) {
    need(bench.store->save(
        reg::CheckPlan{{bench.store->newId()}, overdue, calendar::CheckDuty::OwnInterval, 12}));
    const auto whole = need(gatherEvidence(*bench.store, overdue, today));
    const auto page = words::evidenceDocument(bench.words, whole);
    const auto& said = std::get<record::Statements>(page.blocks[1]);
    EXPECT_EQ(said.statements.size(), 1U) << "regulation 36 alone asks for reasonable steps";
}

}  // namespace
}  // namespace hearth::ui::due
