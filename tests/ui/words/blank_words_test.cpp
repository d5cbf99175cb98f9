// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/blank_words.h"

#include "tests/core/record/sample_visit.h"
#include "tests/ui/words/document_text.h"
#include "tests/ui/words/languages.h"
#include "ui/words/document_page.h"

#include <algorithm>
#include <gmock/gmock.h>

namespace hearth::ui::words {
namespace {

using hearth::testing::blocksOf;
using record::RecordKind;
using record::WriteField;
using record::WriteIn;
using reg::Item;

record::Document blankOfKind(RecordKind kind, const QString& language = QStringLiteral("en")) {
    return blankFor({kind, hearth::testing::sampleVisit().firm, "B-KTM-000012"}, Words(language));
}

std::vector<WriteField> placesIn(const record::Document& document) {
    std::vector<WriteField> places;
    for (const auto& block : blocksOf<WriteIn>(document)) {
        places.insert(places.end(), block.fields.begin(), block.fields.end());
    }
    return places;
}

bool hasCaption(const std::vector<WriteField>& places, const QString& caption) {
    return std::any_of(places.begin(), places.end(), [&](const WriteField& place) {
        return QString::fromStdString(place.caption).startsWith(caption);
    });
}

std::vector<std::string> titlesOf(const record::Document& document) {
    std::vector<std::string> titles;
    for (const auto& section : blocksOf<WriteIn>(document)) {
        titles.push_back(section.title);
    }
    return titles;
}

class Blank : public ::testing::TestWithParam<RecordKind> {};

/// Whatever its record asks for can be written on it.
TEST_P(Blank, HasAPlaceForEverythingThatItsRecordAsksFor) {
    const Words words;
    const auto document = blankOfKind(GetParam());
    const auto places = placesIn(document);
    for (const auto& wanted : record::requirementsOf(GetParam())) {
        if (!wanted.item) {
            continue;
        }
        switch (*wanted.item) {
            case Item::SignedByEngineer:
            case Item::ReceivedBy:
            case Item::SituationReceipt:
            case Item::SituationReceivedBy:
            case Item::SituationCopyLeft:
                EXPECT_EQ(blocksOf<record::Signatures>(document).front().signatures.size(), 2U);
                break;
            case Item::RoomCoPlace:
            case Item::RoomCoAt:
            case Item::RoomCo:
                EXPECT_FALSE(blocksOf<record::Table>(document).empty());
                break;
            case Item::VisitRemarks:
                EXPECT_TRUE(hasCaption(places, QStringLiteral("Remarks")));
                break;
            default:
                EXPECT_TRUE(hasCaption(places, recordCaption(words, *wanted.item)) ||
                            hasCaption(places, words.item(*wanted.item)))
                    << reg::infoOf(*wanted.item).code;
        }
    }
}

/// Of vehicles and boats, kitchens, cylinders and what is capped, once each however many appliances there
/// are.
TEST_P(Blank, HasAPlaceForWhatItsRecordAsksOfSomeKindsOnly) {
    const Words words;
    const auto places = placesIn(blankOfKind(GetParam()));
    for (const auto& wanted : record::requirementsOfSomeKinds(GetParam())) {
        const QString caption = recordCaption(words, *wanted.item);
        const auto times = std::count_if(places.begin(), places.end(), [&](const WriteField& place) {
            const QString there = QString::fromStdString(place.caption);
            return there == caption || there.startsWith(caption + QStringLiteral(" ("));
        });
        EXPECT_EQ(times, 1) << reg::infoOf(*wanted.item).code;
    }
}

TEST(BlankOfSomeKinds, NamesThemBehindTheAppliances) {
    const auto titles = titlesOf(blankOfKind(RecordKind::LandlordSafety));
    const auto at = [&](const char* title) {
        return std::find(titles.begin(), titles.end(), title) - titles.begin();
    };
    EXPECT_LT(at("Appliance 2 of 2"), at("The LPG system"));
    EXPECT_LT(at("The LPG system"), at("The kitchen"));
    EXPECT_LT(at("Unvented cylinder: noted only, no judgement of the gas work"),
              at("Decommissioned and capped"));
    EXPECT_LT(at("Decommissioned and capped"), static_cast<std::ptrdiff_t>(titles.size()));
    const auto notice = titlesOf(blankOfKind(RecordKind::WarningNotice));
    EXPECT_EQ(std::count(notice.begin(), notice.end(), "The kitchen"), 0) << "it asks for none of them";
}

TEST_P(Blank, CarriesItsNumberAndNoOutcome) {
    const auto document = blankOfKind(GetParam());
    EXPECT_EQ(document.number, "B-KTM-000012");
    EXPECT_EQ(document.revisionWord, "");
    EXPECT_EQ(document.issued, "");
    EXPECT_TRUE(blocksOf<record::Headline>(document).empty());
    EXPECT_TRUE(blocksOf<record::FindingList>(document).empty());
    for (const auto& place : placesIn(document)) {
        EXPECT_TRUE(place.lines > 0 || place.ticks.size() > 1) << place.caption;
    }
}

TEST_P(Blank, IsTranslated) {
    for (const auto& language : hearth::testing::languages()) {
        const Words words(language);
        for (const auto& place : placesIn(blankOfKind(GetParam(), language))) {
            QString caption = QString::fromStdString(place.caption);
            if (const auto end = caption.lastIndexOf(u']'); end >= 0) {
                caption.truncate(end + 1);  // a unit stands behind it
            }
            EXPECT_TRUE(hearth::testing::isTranslated(caption, words)) << place.caption;
        }
    }
}

const std::vector<RecordKind> kBlanks = blankKinds();
INSTANTIATE_TEST_SUITE_P(Kinds, Blank, ::testing::ValuesIn(kBlanks),
                         [](const auto& kind) { return std::string(record::kindCode(kind.param)); });

TEST(BlankOfSeveral, HasAPlaceForEachOfThem) {
    const reg::Firm firm;
    const Words words;
    const auto titles = [&](RecordKind kind, std::optional<int> subjects) {
        return titlesOf(blankFor({kind, firm, "B-KTM-000012", {}, subjects}, words));
    };
    EXPECT_THAT(titles(RecordKind::LandlordSafety, {}),
                ::testing::IsSupersetOf({"Appliance 1 of 2", "Appliance 2 of 2"}));
    const auto one = titles(RecordKind::LandlordSafety, 1);
    EXPECT_EQ(std::count(one.begin(), one.end(), "Appliance"), 1);
    const auto four = titles(RecordKind::LandlordSafety, 4);
    EXPECT_EQ(std::count(four.begin(), four.end(), "Appliance 4 of 4"), 1);
    EXPECT_EQ(std::count(four.begin(), four.end(), "Room 4 of 4"), 1);
    EXPECT_EQ(four.size(), one.size() + 6);
    EXPECT_EQ(titles(RecordKind::WarningNotice, {}), titles(RecordKind::WarningNotice, 1));
    const auto notice = titles(RecordKind::WarningNotice, 2);
    EXPECT_EQ(std::count(notice.begin(), notice.end(), "Unsafe situation 2 of 2"), 1);
    EXPECT_EQ(notice.back(), "Who and where");
    EXPECT_EQ(titles(RecordKind::TightnessAndPurge, 3), titles(RecordKind::TightnessAndPurge, 1))
        << "nothing of it comes in several";
}

TEST(BlankNotice, HasTheDangerInItsFrameAndBothClassesToCross) {
    const auto document = blankOfKind(RecordKind::WarningNotice);
    const auto* alert = std::get_if<record::Alert>(&document.blocks.front());
    ASSERT_NE(alert, nullptr);
    EXPECT_EQ(alert->word, "DANGER – DO NOT USE");
    EXPECT_EQ(alert->toTick, (std::vector<std::string>{"Immediately Dangerous", "At Risk"}));
    EXPECT_NE(blocksOf<record::Signatures>(document)[0].signatures[1].caption.find("copy left"),
              std::string::npos);
}

TEST(BlankKinds, AreThoseFilledInOnSite) {
    const auto kinds = blankKinds();
    EXPECT_EQ(std::count(kinds.begin(), kinds.end(), RecordKind::WarningNotice), 1);
    EXPECT_EQ(std::count(kinds.begin(), kinds.end(), RecordKind::LandlordSafety), 1);
    EXPECT_EQ(std::count(kinds.begin(), kinds.end(), RecordKind::ReminderLetter), 0);
}

}  // namespace
}  // namespace hearth::ui::words
