// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/record/sample_kinds.h"
#include "tests/ui/words/document_of_kind.h"
#include "tests/ui/words/document_text.h"
#include "tests/ui/words/languages.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace hearth::ui::words {
namespace {

using hearth::testing::blocksOf;
using hearth::testing::documentOfKind;
using hearth::testing::enter;
using hearth::testing::shows;
using record::RecordKind;
using reg::Item;
namespace choice = reg::choice;

/// A record whose only appliance is of that kind, with everything answered that is asked of the kind.
reg::VisitFile fileOfAppliance(RecordKind kind, std::string_view applianceKind, std::string_view seen) {
    auto file = hearth::testing::visitOfKind(kind);
    file.appliances[0].kind = std::string(applianceKind);
    const auto on = reg::subject(file.appliances[0].id);
    std::erase_if(file.entries, [&](const reg::Entry& entry) {
        return entry.subject == on && entry.item != Item::NewOrReplacement && entry.item != Item::ServiceKind;
    });
    enter(file, on, Item::ApplianceInspected, std::string(seen));
    return file;
}

std::vector<std::string> captionsOf(const record::Document& document, const QString& title) {
    std::vector<std::string> captions;
    for (const auto& grid : blocksOf<record::FieldGrid>(document)) {
        if (qstring(grid.title) == title) {
            for (const auto& field : grid.fields) {
                captions.push_back(field.caption);
            }
        }
    }
    return captions;
}

bool hasMatters(const record::Document& document) {
    const auto tables = blocksOf<record::Table>(document);
    return std::any_of(tables.begin(), tables.end(), [](const record::Table& table) {
        return !table.columns.empty() &&
               table.columns[0].title.find("Matters of regulation 26(9)") != std::string::npos;
    });
}

constexpr std::array kOfAppliances{RecordKind::LandlordSafety, RecordKind::OwnerSafety,
                                   RecordKind::Commissioning, RecordKind::Service};

TEST(DocumentOfItsKind, PrintsWhatOnlyThatKindIsAskedAndNoMattersOfAFlame) {
    for (const auto kind : kOfAppliances) {
        auto file = fileOfAppliance(kind, choice::kBoat, choice::kInspected);
        const auto on = reg::subject(file.appliances[0].id);
        enter(file, on, Item::LpgCylinders, "two of 6 kg propane");
        enter(file, on, Item::LpgBubbleTester, std::string(choice::kNoBubbles));
        enter(file, on, Item::LpgLockUp, "43.5");
        const auto document = documentOfKind(kind, file);
        const auto captions = captionsOf(document, QStringLiteral("The LPG system"));
        EXPECT_GE(captions.size(), 9U) << record::kindCode(kind);
        EXPECT_TRUE(shows(document, "two of 6 kg propane"));
        EXPECT_TRUE(shows(document, "no bubbles"));
        EXPECT_TRUE(shows(document, "43.5"));
        EXPECT_FALSE(shows(document, "bubbles: it leaks"));
        EXPECT_FALSE(hasMatters(document)) << record::kindCode(kind);
    }
}

TEST(DocumentOfItsKind, AKitchenHasItsInterlockBesideTheMattersOfItsFlame) {
    auto file = fileOfAppliance(RecordKind::LandlordSafety, choice::kCatering, choice::kInspected);
    enter(file, reg::subject(file.appliances[0].id), Item::CateringInterlock, std::string(choice::kByFlow));
    const auto document = documentOfKind(RecordKind::LandlordSafety, file);
    EXPECT_TRUE(shows(document, "by air flow"));
    EXPECT_EQ(captionsOf(document, QStringLiteral("The kitchen")).size(), 4U) << "what is asked of it";
    EXPECT_TRUE(hasMatters(document));
}

TEST(DocumentOfItsKind, AnUnventedCylinderIsNotedAndNothingIsDeclaredOfIt) {
    auto file = fileOfAppliance(RecordKind::LandlordSafety, choice::kUnventedCylinder, choice::kInspected);
    enter(file, reg::subject(file.appliances[0].id), Item::UnventedCapacity, "0.21");
    const auto document = documentOfKind(RecordKind::LandlordSafety, file);
    EXPECT_TRUE(shows(document, "noted only, no judgement of the gas work"));
    EXPECT_TRUE(shows(document, "0.21"));
    for (const auto& statements : blocksOf<record::Statements>(document)) {
        for (const auto& one : statements.statements) {
            EXPECT_NE(one.caption, "Declared by the engineer");
        }
    }
    EXPECT_FALSE(hasMatters(document));
}

TEST(DocumentOfItsKind, WhatIsCappedSaysHowItIsSealedAndThatNothingWasMeasured) {
    for (const auto kind : kOfAppliances) {
        auto file = fileOfAppliance(kind, choice::kGasFire, choice::kDecommissioned);
        enter(file, reg::subject(file.appliances[0].id), Item::CappedHow, std::string(choice::kValveOnly));
        enter(file, reg::subject(file.appliances[0].id), Item::CappedWhere, "behind the skirting");
        const auto document = documentOfKind(kind, file);
        EXPECT_EQ(captionsOf(document, QStringLiteral("Decommissioned and capped")).size(), 4U);
        EXPECT_TRUE(shows(document, "shut at a valve only"));
        EXPECT_TRUE(shows(document, "behind the skirting"));
        EXPECT_TRUE(shows(document, "nothing was measured of it"));
        EXPECT_TRUE(shows(document, "— not declared"));
        EXPECT_FALSE(hasMatters(document)) << record::kindCode(kind);
        EXPECT_NE(blocksOf<record::Headline>(document)[0].outcome, rulebook::Outcome::Fail);
    }
}

TEST(DocumentOfItsKind, IsSaidInEveryLanguage) {
    for (const auto& language : hearth::testing::languages()) {
        const Words words(language);
        for (const auto* kind : {"boat", "catering", "unvented_cylinder"}) {
            const auto file = fileOfAppliance(RecordKind::LandlordSafety, kind, choice::kInspected);
            for (const auto& grid :
                 blocksOf<record::FieldGrid>(documentOfKind(RecordKind::LandlordSafety, file, language))) {
                for (const auto& field : grid.fields) {
                    QString caption = qstring(field.caption);
                    caption.remove(0, std::max<qsizetype>(caption.indexOf(u'['), 0));
                    EXPECT_TRUE(hearth::testing::isTranslated(caption, words)) << field.caption;
                }
            }
        }
    }
}

}  // namespace
}  // namespace hearth::ui::words
