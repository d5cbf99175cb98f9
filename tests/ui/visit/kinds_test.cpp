// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet beyond the tightness test: what follows from the kinds of visit.
#include "tests/ui/visit/sheet_bench.h"
#include "ui/shell/kit.h"
#include "ui/visit/part_lists.h"
#include "ui/visit/part_situation.h"
#include "ui/visit/subject_name.h"
#include "ui/visit/wanted.h"

#include <gtest/gtest.h>

namespace hearth::ui::visit {
namespace {

using record::RecordKind;
using reg::Item;
using testing::need;
using testing::SheetBench;

/// A visit with two appliances, one room and one unsafe situation.
class KindsBench : public SheetBench {
  public:
    KindsBench() {
        boiler = addAppliance(reg::choice::kCondensingBoiler, "kitchen", reg::FlueType::RoomSealed);
        cooker = addAppliance(reg::choice::kRangeCooker, "annexe", reg::FlueType::Flueless);
        need(model().reload());
        settle();
    }
    reg::ApplianceId addAppliance(std::string_view kind, const std::string& place, reg::FlueType flue) {
        reg::Appliance appliance;
        appliance.id = {firm.store->newId()};
        appliance.installation = file().installation.id;
        appliance.kind = std::string(kind);
        appliance.make = "Invented";
        appliance.model = "Thirty";
        appliance.place = place;
        appliance.flue = flue;
        need(firm.store->save(appliance));
        return appliance.id;
    }
    void say(const reg::SubjectRef& subject, Item item, std::string_view code) const {
        need(model().enter(subject, item, shell::coded(code)));
        settle();
    }
    void be(std::initializer_list<Item> kinds) const {
        for (const Item kind : kinds) {
            say(reg::subject(visit), kind, reg::choice::kYes);
        }
    }
    reg::SituationId findUnsafe() {
        const auto made = need(model().addSituation(boiler, firm.clock.now()));
        settle();
        return made;
    }
    [[nodiscard]] PartView* part(PartKind kind, const reg::SubjectRef& subject = {}) const {
        return sheet().paper()->part(partAt(kind, subject, file()));
    }
    [[nodiscard]] SheetField* fieldOf(const reg::SubjectRef& subject, Item item) const {
        for (auto* part : sheet().paper()->parts()) {
            if (auto* found = part->find({item, std::nullopt, subject})) {
                return found;
            }
        }
        return nullptr;
    }
    [[nodiscard]] bool isInView(const reg::SubjectRef& subject, Item item) const {
        const auto* found = fieldOf(subject, item);
        return found != nullptr && !found->editor()->isHidden();
    }

    reg::ApplianceId boiler;
    reg::ApplianceId cooker;
};

constexpr std::initializer_list<Item> kAllKinds{
    Item::VisitLandlordCheck, Item::VisitOwnerCheck, Item::VisitInstallation, Item::VisitService,
    Item::VisitPipework,      Item::VisitLarger,     Item::VisitRoomCo,       Item::VisitUnsafe};

TEST(Kinds, AreChosenByLettersAndTakenAwayAgain) {
    KindsBench bench;
    auto* who = bench.sheet().paper()->part({PartKind::WhoAndWhere});
    who->takeFocus();
    SheetBench::keys(QStringLiteral("ls"));
    SheetBench::settle();
    const auto kinds = record::kindsOf(bench.file());
    EXPECT_EQ(kinds, (std::vector{RecordKind::LandlordSafety, RecordKind::Service}));
    SheetBench::keys(QStringLiteral("s"));
    SheetBench::settle();
    EXPECT_EQ(record::kindsOf(bench.file()), std::vector{RecordKind::LandlordSafety});
    EXPECT_TRUE(who->isAncestorOf(QApplication::focusWidget()));
    EXPECT_EQ(bench.model().textOf(reg::subject(bench.visit), Item::VisitService), QString());
}

TEST(Kinds, DecideWhichPartsThereAre) {
    KindsBench bench;
    EXPECT_EQ(bench.part(PartKind::Rooms), nullptr);
    EXPECT_EQ(bench.part(PartKind::Appliance, reg::subject(bench.boiler)), nullptr);
    bench.be({Item::VisitLandlordCheck});
    EXPECT_NE(bench.part(PartKind::Rooms), nullptr);
    EXPECT_NE(bench.part(PartKind::Appliance, reg::subject(bench.boiler)), nullptr);
    EXPECT_NE(bench.part(PartKind::Appliance, reg::subject(bench.cooker)), nullptr);
    EXPECT_EQ(bench.part(PartKind::Investigation), nullptr);
    EXPECT_EQ(bench.part(PartKind::Larger), nullptr);
    bench.say(reg::subject(bench.visit), Item::VisitLandlordCheck, "");
    EXPECT_EQ(bench.part(PartKind::Rooms), nullptr);
    bench.be({Item::VisitRoomCo});
    EXPECT_NE(bench.part(PartKind::Investigation), nullptr);
    EXPECT_EQ(bench.part(PartKind::Tightness), nullptr);
}

TEST(Kinds, WhatWasEnteredStaysInView) {
    KindsBench bench;
    bench.enter(Item::TightStart, "20.5");
    bench.be({Item::VisitRoomCo});
    EXPECT_NE(bench.part(PartKind::Tightness), nullptr);
}

/// Every item that any record asks about has one field on each of its subjects, so that each lack has a place
/// to go to.
TEST(Kinds, EveryItemThatIsAskedHasItsFieldOnce) {
    KindsBench bench;
    bench.be(kAllKinds);
    const auto situation = bench.findUnsafe();
    const reg::SubjectRef room{reg::SubjectKind::Room, bench.firm.store->newId()};
    bench.say(room, Item::RoomName, "kitchen");
    const reg::SubjectRef reading{reg::SubjectKind::Room, bench.firm.store->newId()};
    bench.say(reading, Item::RoomCo, "4");
    std::map<std::pair<Item, UuidBytes>, int> fields;
    for (auto* part : bench.sheet().paper()->parts()) {
        for (auto* field : part->fields()) {
            if (field->key().item) {
                ++fields[{*field->key().item, field->key().subject.id}];
            }
        }
    }
    const std::map<reg::SubjectKind, reg::SubjectRef> subjects{
        {reg::SubjectKind::Visit, reg::subject(bench.visit)},
        {reg::SubjectKind::Installation, reg::subject(bench.file().installation.id)},
        {reg::SubjectKind::Test, bench.test()},
        {reg::SubjectKind::Appliance, reg::subject(bench.boiler)},
        {reg::SubjectKind::Situation, reg::subject(situation)},
        {reg::SubjectKind::Room, room}};
    for (const auto kind : record::allKinds()) {
        for (const auto& wanted : record::requirementsOf(kind)) {
            if (!wanted.item) {
                continue;
            }
            const bool isReading = *wanted.item == Item::RoomCo || *wanted.item == Item::RoomCoAt ||
                                   *wanted.item == Item::RoomCoPlace;
            const auto& on = isReading ? reading : subjects.at(reg::infoOf(*wanted.item).subject);
            EXPECT_EQ((fields[{*wanted.item, on.id}]), 1) << reg::infoOf(*wanted.item).code;
        }
    }
}

/// Whatever a record lacks goes somewhere: to its field, or to where it is kept.
TEST(Kinds, EveryLackLeadsToItsFieldOrToWhereItIsKept) {
    KindsBench bench;
    bench.be(kAllKinds);
    bench.findUnsafe();
    bench.say(reg::subject(bench.boiler), Item::ApplianceInspected, reg::choice::kInspected);
    bench.say(reg::subject(bench.boiler), Item::NewOrReplacement, reg::choice::kNew);
    bench.say(reg::subject(bench.boiler), Item::ServiceKind, reg::choice::kAnnual);
    ASSERT_GT(bench.model().missing().size(), 50U);
    for (const auto& missing : bench.model().missing()) {
        // The only edition allowed is kept with a test's first entry, without asking.
        if (isKeptElsewhere(missing) || missing.item == Item::TestEdition) {
            continue;
        }
        auto* part = bench.sheet().paper()->part(partOf(missing, bench.file()));
        const std::string what = bench.firm.words.missing(missing).toStdString();
        ASSERT_NE(part, nullptr) << what;
        const auto* editor = part->editorFor({missing.item, missing.field, missing.subject});
        const bool isList = part->ref().kind == PartKind::Appliances || part->ref().kind == PartKind::Rooms ||
                            part->ref().kind == PartKind::Pipework ||
                            part->ref().kind == PartKind::Investigation;
        if (editor == nullptr) {
            EXPECT_TRUE(isList) << what << " has no field";
        } else {
            EXPECT_FALSE(editor->isHidden()) << what << " is asked for out of view";
        }
    }
}

TEST(Kinds, EachRecordSaysWhatItLacksAndIsIssuedByItself) {
    KindsBench bench;
    bench.fillIn();
    bench.be({Item::VisitPipework, Item::VisitLandlordCheck});
    auto* records = bench.sheet().recordsPart();
    ASSERT_EQ(records->kindList()->count(), 2);
    records->issue(RecordKind::LandlordSafety);
    EXPECT_TRUE(bench.model().records().empty());
    EXPECT_GT(records->missingList()->count(), 0);
    records->issue(RecordKind::TightnessAndPurge);
    ASSERT_EQ(bench.model().records().size(), 1U);
    EXPECT_EQ(bench.model().records().front().header.kind, "tightness_and_purge");
    EXPECT_EQ(bench.model().currentRecord(RecordKind::LandlordSafety), nullptr);
}

/// Nothing is said of an appliance's safety before its engineer says it, whatever else was entered; a visual
/// check asks for less than an inspection.
TEST(Kinds, SafeToUseIsAskedAndNeverPreset) {
    KindsBench bench;
    bench.be({Item::VisitLandlordCheck});
    const auto boiler = reg::subject(bench.boiler);
    EXPECT_TRUE(bench.isInView(boiler, Item::ApplianceInspected));
    EXPECT_FALSE(bench.isInView(boiler, Item::SafeToUse));
    bench.say(boiler, Item::ApplianceInspected, reg::choice::kInspected);
    bench.say(boiler, Item::DefectsFound, reg::choice::kNoneFound);
    bench.say(boiler, Item::ExaminedFlue, reg::choice::kGood);
    EXPECT_TRUE(bench.isInView(boiler, Item::SafeToUse));
    EXPECT_EQ(bench.fieldOf(boiler, Item::SafeToUse)->editor()->text(), QString());
    EXPECT_TRUE(bench.isInView(boiler, Item::FlueSeen));
    EXPECT_FALSE(bench.isInView(boiler, Item::NotInspectedWhy));
    const auto cooker = reg::subject(bench.cooker);
    bench.say(cooker, Item::ApplianceInspected, reg::choice::kVisualOnly);
    EXPECT_FALSE(bench.isInView(cooker, Item::FlueSeen));
    EXPECT_TRUE(bench.isInView(cooker, Item::SafeToUse));
    bench.say(cooker, Item::ApplianceInspected, reg::choice::kNotInspected);
    EXPECT_TRUE(bench.isInView(cooker, Item::NotInspectedWhy));
    EXPECT_FALSE(bench.isInView(cooker, Item::SafeToUse));
}

TEST(Kinds, FindingsOfAnApplianceStandBesideIt) {
    KindsBench bench;
    bench.be({Item::VisitLandlordCheck});
    const auto boiler = reg::subject(bench.boiler);
    bench.say(boiler, Item::ApplianceInspected, reg::choice::kInspected);
    bench.say(boiler, Item::ExaminedFlue, reg::choice::kWrong);
    auto* note = bench.note(rulebook::FindingKind::Regulation26);
    ASSERT_NE(note, nullptr);
    auto* part = bench.part(PartKind::Appliance, boiler);
    EXPECT_TRUE(part->isAncestorOf(bench.sheet().paper()->anchorOf(note->judged())));
    EXPECT_EQ(note->judged().finding.outcome, rulebook::Outcome::Fail);
}

TEST(Kinds, MoreIsEnteredWithOneKeyAndOtherwiseNotAsked) {
    KindsBench bench;
    bench.be({Item::VisitLandlordCheck});
    const auto boiler = reg::subject(bench.boiler);
    bench.say(boiler, Item::ApplianceInspected, reg::choice::kInspected);
    EXPECT_FALSE(bench.isInView(boiler, Item::FlueCoLow));
    bench.part(PartKind::Appliance, boiler)->takeFocus();
    SheetBench::press(Qt::Key_E, Qt::ControlModifier);
    EXPECT_TRUE(bench.isInView(boiler, Item::FlueCoLow));
    SheetBench::press(Qt::Key_E, Qt::ControlModifier);
    EXPECT_FALSE(bench.isInView(boiler, Item::FlueCoLow));
}

/// What a finding lacks can be entered beside it, though no record asks for it.
TEST(Kinds, WhatAFindingLacksComesIntoView) {
    KindsBench bench;
    bench.be({Item::VisitLandlordCheck});
    const auto boiler = reg::subject(bench.boiler);
    bench.say(boiler, Item::ApplianceInspected, reg::choice::kInspected);
    bench.say(boiler, Item::HotWaterFlow, "9");  // taken over from the workings
    int lacking = 0;
    for (const auto& judged : bench.model().findings()) {
        if (!(judged.subject == boiler) || !isWorthShowing(judged, bench.file())) {
            continue;
        }
        for (const Item item : judged.lacking) {
            lacking += 1;
            EXPECT_TRUE(bench.isInView(boiler, item)) << reg::infoOf(item).code;
        }
    }
    EXPECT_GT(lacking, 0);
}

/// A part that asks nothing now does not hold the keyboard up; smell is asked on every visit.
TEST(Kinds, PageDownComesThroughEveryPart) {
    KindsBench bench;
    bench.be({Item::VisitRoomCo});
    EXPECT_TRUE(bench.isInView(reg::subject(bench.visit), Item::SmellOnArrival));
    bench.sheet().goTo(PartRef{PartKind::WhoAndWhere});
    for (std::size_t step = 0; step < bench.sheet().paper()->parts().size(); ++step) {
        SheetBench::press(Qt::Key_PageDown);
    }
    EXPECT_TRUE(bench.part(PartKind::Records)->isAncestorOf(QApplication::focusWidget()));
}

TEST(Kinds, AServiceSpeaksOfTheApplianceThatIsTakenUp) {
    KindsBench bench;
    bench.be({Item::VisitService});
    EXPECT_EQ(bench.part(PartKind::Appliance, reg::subject(bench.cooker)), nullptr);
    auto* list = qobject_cast<ListPart*>(bench.part(PartKind::Appliances));
    ASSERT_NE(list, nullptr);
    list->takeFocus();
    SheetBench::press(Qt::Key_Return);
    auto* part = bench.part(PartKind::Appliance, reg::subject(bench.boiler));
    ASSERT_NE(part, nullptr);
    EXPECT_TRUE(part->isAncestorOf(QApplication::focusWidget()));
    EXPECT_FALSE(bench.isInView(reg::subject(bench.boiler), Item::ServiceTasks));
    bench.say(reg::subject(bench.boiler), Item::ServiceKind, reg::choice::kAnnual);
    EXPECT_TRUE(bench.isInView(reg::subject(bench.boiler), Item::ServiceTasks));
}

TEST(Kinds, WhatWasTakenUpIsThereWhenTheVisitIsOpenedAgain) {
    KindsBench bench;
    bench.be({Item::VisitService});
    qobject_cast<ListPart*>(bench.part(PartKind::Appliances))->takeFocus();
    SheetBench::press(Qt::Key_Return);
    bench.open();
    EXPECT_NE(bench.part(PartKind::Appliance, reg::subject(bench.boiler)), nullptr);
    EXPECT_EQ(bench.part(PartKind::Appliance, reg::subject(bench.cooker)), nullptr);
}

TEST(Kinds, ANewApplianceIsMadeOnTheSheetAndCanBeUndone) {
    KindsBench bench;
    bench.be({Item::VisitLandlordCheck});
    const auto before = bench.file().appliances.size();
    bench.sheet().findChild<QPushButton*>(QStringLiteral("addApplianceButton"))->click();
    SheetBench::settle();
    ASSERT_EQ(bench.file().appliances.size(), before + 1);
    const auto made = reg::subject(bench.file().appliances.back().id);
    auto* part = bench.part(PartKind::Appliance, made);
    ASSERT_NE(part, nullptr);
    EXPECT_TRUE(part->isAncestorOf(QApplication::focusWidget()));
    auto* make = part->editorFor({std::nullopt, record::Field::ApplianceMake, made});
    ASSERT_NE(make, nullptr);
    make->focusTarget()->setFocus();
    SheetBench::line(QStringLiteral("Invented"));
    EXPECT_EQ(need(bench.firm.store->appliance({made.id})).make, "Invented");
    need(bench.firm.store->undo());
    need(bench.firm.store->undo());
    bench.place->refresh();
    SheetBench::settle();
    EXPECT_EQ(bench.file().appliances.size(), before);
}

TEST(Kinds, AnUnsafeSituationIsFoundAtTheApplianceWithOneKey) {
    KindsBench bench;
    bench.be({Item::VisitLandlordCheck});
    bench.part(PartKind::Appliance, reg::subject(bench.boiler))->takeFocus();
    SheetBench::press(Qt::Key_U, Qt::ControlModifier);
    ASSERT_EQ(bench.file().situations.size(), 1U);
    const reg::Situation situation = bench.file().situations.front();
    EXPECT_EQ(situation.appliance, bench.boiler);
    EXPECT_EQ(situation.danger, reg::Danger::NotSaid);
    auto* part = bench.part(PartKind::Situation, reg::subject(situation.id));
    ASSERT_NE(part, nullptr);
    EXPECT_TRUE(part->isAncestorOf(QApplication::focusWidget()));
    auto* danger =
        part->editorFor({std::nullopt, record::Field::SituationDanger, reg::subject(situation.id)});
    EXPECT_EQ(danger->text(), QString());
    // The notice says what it lacks at once.
    part->findChild<QPushButton*>(QStringLiteral("noticeButton"))->click();
    SheetBench::settle();
    EXPECT_EQ(bench.sheet().recordsPart()->kind(), RecordKind::WarningNotice);
    EXPECT_GT(bench.sheet().recordsPart()->missingList()->count(), 0);
    EXPECT_TRUE(bench.model().records().empty());
}

/// A notice goes out before anything else of the visit is filled in.
TEST(Kinds, AWarningNoticeIsIssuedAtOnce) {
    KindsBench bench;
    bench.be({Item::VisitLandlordCheck});
    const auto id = bench.findUnsafe();
    const auto on = reg::subject(id);
    auto situation = bench.file().situations.front();
    situation.danger = reg::Danger::ImmediatelyDangerous;
    situation.what = "fire spills its products";
    situation.where = "lounge";
    need(bench.model().save(situation));
    const std::initializer_list<std::pair<Item, const char*>> answers{
        {Item::SituationGasEscape, "no"},       {Item::SituationPerson, "M. Okafor, owner"},
        {Item::SituationPermission, "refused"}, {Item::SituationMadeSafe, "not_made_safe"},
        {Item::SituationLabel, "yes"},          {Item::SituationRefusedBy, "M. Okafor"},
        {Item::SituationRefusalWords, "no"},    {Item::SituationSupplyLeft, "gas_on"},
        {Item::SituationTold, "the owner"},     {Item::SituationWorkNeeded, "flue to be rebuilt"},
        {Item::SituationReceipt, "copy_left"},  {Item::SituationCopyLeft, "on the table"},
        {Item::SituationReportable, "no"}};
    for (const auto& [item, text] : answers) {
        bench.say(on, item, text);
    }
    bench.enter(Item::SignedByEngineer, "R. Ashdown");
    for (const auto& owed : bench.model().owed()) {
        for (const auto& missing : owed.missing) {
            if (owed.kind == RecordKind::WarningNotice) {
                ADD_FAILURE() << bench.firm.words.missing(missing).toStdString();
            }
        }
    }
    bench.part(PartKind::Situation, on)->findChild<QPushButton*>(QStringLiteral("noticeButton"))->click();
    SheetBench::settle();
    ASSERT_EQ(bench.model().records().size(), 1U);
    EXPECT_EQ(bench.model().records().front().header.kind, "warning_notice");
    // The landlord's record is owed still.
    EXPECT_EQ(bench.model().currentRecord(RecordKind::LandlordSafety), nullptr);
}

TEST(Kinds, EnterGoesPastTheButtonsOfTheSheetAndSpacePressesThem) {
    KindsBench bench;
    bench.be({Item::VisitLandlordCheck});
    for (const char* name : {"addSituationButton", "addApplianceButton", "moreButton"}) {
        auto* button = bench.sheet().findChild<QPushButton*>(QString::fromLatin1(name));
        ASSERT_NE(button, nullptr) << name;
        button->setFocus();
        SheetBench::press(Qt::Key_Return);
        EXPECT_NE(QApplication::focusWidget(), button) << name;
    }
    EXPECT_TRUE(bench.file().situations.empty());
    EXPECT_EQ(bench.file().appliances.size(), 2U);
    bench.sheet().findChild<QPushButton*>(QStringLiteral("addSituationButton"))->setFocus();
    SheetBench::press(Qt::Key_Space);
    EXPECT_EQ(bench.file().situations.size(), 1U);
}

TEST(Kinds, ARoomBeginsWithItsNameAndAnotherWaits) {
    KindsBench bench;
    bench.be({Item::VisitLandlordCheck});
    bench.part(PartKind::Rooms)->takeFocus();
    SheetBench::line(QStringLiteral("Kitchen"));
    ASSERT_EQ(bench.file().rooms().size(), 1U);
    const auto kitchen = bench.file().rooms().front();
    EXPECT_TRUE(bench.isInView(kitchen, Item::RoomCoAlarm));
    EXPECT_EQ(QApplication::focusWidget(),
              bench.fieldOf(kitchen, Item::RoomCoAlarm)->editor()->focusTarget());
    int names = 0;
    for (auto* field : bench.part(PartKind::Rooms)->fields()) {
        names += field->key().item == Item::RoomName && !field->editor()->isHidden() ? 1 : 0;
    }
    EXPECT_EQ(names, 2);
}

TEST(Kinds, TheWholeSheetIsWalkableWithUniqueNames) {
    KindsBench bench;
    bench.be(kAllKinds);
    bench.findUnsafe();
    for (const auto& on : {reg::subject(bench.boiler), reg::subject(bench.cooker)}) {
        bench.say(on, Item::ApplianceInspected, reg::choice::kInspected);
        bench.say(on, Item::NewOrReplacement, reg::choice::kNew);
        bench.say(on, Item::ServiceKind, reg::choice::kAnnual);
    }
    bench.say({reg::SubjectKind::Room, bench.firm.store->newId()}, Item::RoomName, "kitchen");
    bench.say({reg::SubjectKind::Room, bench.firm.store->newId()}, Item::RoomCo, "4");
    bench.place->resize(1024, 600);
    SheetBench::settle();
    testing::expectEveryStopOnce(bench.place.get());
    testing::expectUniqueNames(bench.place.get());
    testing::expectWheelChangesNothing(bench.place.get());
}

/// What can't be used is kept as typed and marked, in fields of an appliance, a room and a situation too.
TEST(Kinds, GarbageIsKeptAndMarked) {
    KindsBench bench;
    bench.be({Item::VisitLandlordCheck, Item::VisitRoomCo});
    const auto boiler = reg::subject(bench.boiler);
    bench.say(boiler, Item::ApplianceInspected, reg::choice::kInspected);
    const auto situation = reg::subject(bench.findUnsafe());
    const reg::SubjectRef room{reg::SubjectKind::Room, bench.firm.store->newId()};
    bench.say(room, Item::RoomCoAlarmExpiry, "1");
    const auto visit = reg::subject(bench.visit);
    const std::vector<std::pair<reg::SubjectRef, Item>> fields{{boiler, Item::FlueCoHigh},
                                                               {boiler, Item::BurnerPressure},
                                                               {boiler, Item::FlueRoute},
                                                               {room, Item::RoomCoAlarmExpiry},
                                                               {visit, Item::AlarmPeak},
                                                               {visit, Item::Symptoms},
                                                               {situation, Item::SituationKnownOn},
                                                               {situation, Item::SituationToldAt},
                                                               {situation, Item::SituationWorkNeeded}};
    const QString garbage = QStringLiteral("12..3 x; <b>\"'%1");
    for (const auto& [subject, item] : fields) {
        bench.say(subject, item, "1");  // so that the field is in view
    }
    for (const auto& [subject, item] : fields) {
        auto* field = bench.fieldOf(subject, item);
        ASSERT_NE(field, nullptr) << reg::infoOf(item).code;
        field->editor()->focusTarget()->setFocus();
        SheetBench::press(Qt::Key_A, Qt::ControlModifier);
        SheetBench::keys(garbage);
        SheetBench::press(Qt::Key_Tab);
        EXPECT_EQ(bench.model().textOf(subject, item), garbage) << reg::infoOf(item).code;
        const auto kind = reg::infoOf(item).kind;
        const bool isText = kind == reg::ItemKind::Text || kind == reg::ItemKind::LongText;
        EXPECT_EQ(field->editor()->focusTarget()->property("problem").toBool(), !isText)
            << reg::infoOf(item).code;
    }
    bench.open();
    for (const auto& [subject, item] : fields) {
        EXPECT_EQ(bench.fieldOf(subject, item)->editor()->text(), garbage) << reg::infoOf(item).code;
    }
}

}  // namespace
}  // namespace hearth::ui::visit
