// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/conclude.h"
#include "tests/core/judging/asked.h"
#include "tests/support/agreement.h"

#include <gtest/gtest.h>

namespace hearth::judging {
namespace {

using quantity::UnitCode;
using reg::Item;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Say;
namespace choice = reg::choice;

asked::Sheet ventAppliance(int row, std::string_view kind, const char* kilowatt = "",
                           std::string_view flue = "") {
    return asked::inRow(Group::Appliance, row,
                        {{Item::ApplianceKind, kind},
                         {Item::ApplianceFlue, flue},
                         {Item::ApplianceInput, kilowatt, UnitCode::Kilowatt},
                         {Item::ApplianceInputBasis, choice::kNet}});
}

asked::Sheet boiler(const char* kilowatt, int row = 0, std::string_view flue = choice::kOpenFlued) {
    return ventAppliance(row, choice::kCondensingBoiler, kilowatt, flue);
}

asked::Sheet ventTyped(int row, const char* area, std::string_view leadsTo = choice::kOutside,
                       std::string_view level = "", std::string_view sound = choice::kYes) {
    return asked::inRow(Group::Vent, row,
                        {{Item::VentArea, area, UnitCode::SquareCentimetre},
                         {Item::VentTo, leadsTo},
                         {Item::VentLevel, level},
                         {Item::VentSound, sound}});
}

asked::Sheet spaceOf(std::string_view space, const char* volume = "30.0") {
    return {{Item::RoomSpace, space},
            {Item::RoomVolume, volume, UnitCode::CubicMetre},
            {Item::RoomOpening, choice::kYes},
            {Item::RoomTight, choice::kNo},
            {Item::RoomBedSitting, choice::kNo},
            {Item::RoomBasement, choice::kNo}};
}

asked::Sheet together(std::initializer_list<asked::Sheet> parts) {
    asked::Sheet all;
    for (const auto& part : parts) {
        all = asked::with(std::move(all), part);
    }
    return all;
}

Answer ventAnswer(const asked::Sheet& sheet, const rulebook::RuleBook& book = asked::confirmedBook()) {
    return asked::answerTo(Question::Ventilation, sheet, book);
}

double ventNeed(const asked::Sheet& sheet) {
    return asked::valueOf(ventAnswer(sheet, asked::shippedBook()), Derived::VentNeed);
}

// Areas are shown to 0.1 cm2.
constexpr double kShownArea = 0.05;

TEST(AnswerVentilation, OpenFluedAsThePublishedExamples) {
    testing::Agreement agreement("Vent for open-flued appliances, typed into the question",
                                 "gas-safety page on BS 5440-2 (17 kW; 25 and 8 kW)", "cm2", kShownArea);
    const auto room = spaceOf(choice::kRoom);
    agreement.hold("17 kW", ventNeed(asked::with(room, boiler("17"))), 50);
    agreement.hold("25 and 8 kW", ventNeed(together({room, boiler("25"), boiler("8", 1)})), 130);
}

TEST(AnswerVentilation, CookersAsPublished) {
    struct Case {
        const char* volume;
        std::string_view opening;
        double area;
    };
    const Case cases[] = {
        {"4.0", choice::kYes, 100}, {"4.9", choice::kDoor, 100}, {"7.0", choice::kYes, 50},
        {"9.9", choice::kYes, 50},  {"7.0", choice::kDoor, 0},   {"10.2", choice::kYes, 0},
        {"15.0", choice::kYes, 0},  {"25.0", choice::kYes, 0},
    };
    testing::Agreement agreement("Vent for cookers by room volume, typed into the question",
                                 "BS 5440-2:2000 (six cooker makers' pages)", "cm2", kShownArea);
    for (const auto& c : cases) {
        for (const auto kind : {choice::kOven, choice::kGrill, choice::kHotplate}) {
            const auto sheet = together(
                {spaceOf(choice::kRoom, c.volume), {{Item::RoomOpening, c.opening}}, ventAppliance(0, kind)});
            agreement.hold(std::string(c.volume) + " m3 " + std::string(c.opening), ventNeed(sheet), c.area);
        }
    }
    const auto small = together({spaceOf(choice::kRoom, "4.0"), ventAppliance(0, choice::kOven)});
    EXPECT_TRUE(asked::saysOf(ventAnswer(small), FindingKind::VentFreeArea, Say::VentStepCooker))
        << "how the area came about is told";
}

// Worked by hand from the rows of an exam revision page (2013): 100 + 55 (P - 2.7), 100 + 27.5 (P - 5.4).
TEST(AnswerVentilation, FluelessHeatersByTheirRoom) {
    const auto heater = [](const char* kilowatt) {
        return ventAppliance(0, choice::kFluelessSpaceHeater, kilowatt);
    };
    EXPECT_NEAR(ventNeed(asked::with(spaceOf(choice::kRoom, "70.0"), heater("2.7"))), 100.0, kShownArea);
    EXPECT_NEAR(ventNeed(asked::with(spaceOf(choice::kRoom, "95.0"), heater("4"))), 171.5, kShownArea);
    EXPECT_NEAR(ventNeed(asked::with(spaceOf(choice::kInternalSpace, "95.0"), heater("6.4"))), 127.5,
                kShownArea);
    // 45 W/m3: 2.7 kW want 60 m3.
    const auto allowed = [&](const char* volume, std::string_view space) {
        return asked::outcomeOf(ventAnswer(asked::with(spaceOf(space, volume), heater("2.7"))),
                                FindingKind::VentAllowed);
    };
    EXPECT_EQ(allowed("61.0", choice::kRoom), Outcome::Pass);
    EXPECT_EQ(allowed("59.0", choice::kRoom), Outcome::Fail);
    EXPECT_EQ(allowed("60.0", choice::kRoom), Outcome::LookAgain);
    EXPECT_EQ(allowed("31.0", choice::kInternalSpace), Outcome::Pass) << "90 W/m3";
    EXPECT_EQ(allowed("29.0", choice::kInternalSpace), Outcome::Fail);
}

TEST(AnswerVentilation, FluelessWaterHeaterByRoomVolume) {
    const auto sheet = [](const char* volume) {
        return asked::with(spaceOf(choice::kRoom, volume),
                           ventAppliance(0, choice::kFluelessWaterHeater, "10.0"));
    };
    // BS 5440-2, from memory: not below 5 m3; 100, 50, none.
    EXPECT_EQ(asked::outcomeOf(ventAnswer(sheet("4.5")), FindingKind::VentAllowed), Outcome::Fail);
    EXPECT_NEAR(ventNeed(sheet("7.0")), 100, kShownArea);
    EXPECT_NEAR(ventNeed(sheet("15.0")), 50, kShownArea);
    EXPECT_NEAR(ventNeed(sheet("25.0")), 0, kShownArea);
    const auto noWindow = asked::with(sheet("25.0"), {{Item::RoomOpening, choice::kNo}});
    EXPECT_EQ(asked::outcomeOf(ventAnswer(noWindow), FindingKind::VentOpening), Outcome::Fail);
}

TEST(AnswerVentilation, CompartmentsByTheKilowatt) {
    struct Case {
        std::string_view space;
        std::string_view flue;
        double high;
        double low;
    };
    const Case cases[] = {
        {choice::kCompartmentToRoom, choice::kOpenFlued, 240, 480},
        {choice::kCompartmentToRoom, choice::kRoomSealed, 240, 240},
        {choice::kCompartmentToOutside, choice::kOpenFlued, 120, 240},
        {choice::kCompartmentToOutside, choice::kRoomSealed, 120, 120},
    };
    testing::Agreement agreement("Vents of a compartment with 24 kW, typed into the question",
                                 "BS 5440-2 (suppliers' quick guides): cm2/kW times 24", "cm2", kShownArea);
    for (const auto& c : cases) {
        const auto sheet = asked::with({{Item::RoomSpace, c.space}}, boiler("24", 0, c.flue));
        const auto found = ventAnswer(sheet, asked::shippedBook());
        agreement.hold(std::string(c.space) + ' ' + std::string(c.flue) + " high",
                       asked::valueOf(found, Derived::VentNeedHigh), c.high);
        agreement.hold(std::string(c.space) + ' ' + std::string(c.flue) + " low",
                       asked::valueOf(found, Derived::VentNeedLow), c.low);
        EXPECT_EQ(asked::outcomeOf(found, FindingKind::VentLowLevel), Outcome::NoVerdict) << "no vents said";
        EXPECT_TRUE(asked::saysOf(found, FindingKind::VentLowLevel, Say::VentStepPerKilowatt));
    }
}

TEST(AnswerVentilation, ACompartmentsVentsAgainstTheNeed) {
    const auto sheet = together({{{Item::RoomSpace, choice::kCompartmentToRoom}},
                                 boiler("24"),
                                 ventTyped(0, "250", "", choice::kHigh),
                                 ventTyped(1, "470", "", choice::kLow)});
    const auto found = ventAnswer(sheet);
    EXPECT_EQ(asked::outcomeOf(found, FindingKind::VentHighLevel), Outcome::Pass)
        << "they lead where the space says";
    EXPECT_EQ(asked::outcomeOf(found, FindingKind::VentLowLevel), Outcome::Fail);
    EXPECT_TRUE(asked::saysOf(found, FindingKind::VentFreeArea, Say::VentCompartmentRoom)) << "open-flued";
    const auto mixed = asked::with(sheet, asked::inRow(Group::Vent, 1, {{Item::VentTo, choice::kOutside}}));
    EXPECT_EQ(asked::outcomeOf(ventAnswer(mixed), FindingKind::VentHighLevel), Outcome::Fail);
    const auto none = together(
        {{{Item::RoomSpace, choice::kCompartmentToOutside}, {Item::RoomVents, choice::kNo}}, boiler("24")});
    EXPECT_EQ(asked::outcomeOf(ventAnswer(none), FindingKind::VentHighLevel), Outcome::Fail);
}

// By hand: (18 + 6.9 - 7) * 5 = 89.5; the cooker in 25 m3 asks for nothing.
TEST(AnswerVentilation, SeveralAppliancesInOneRoom) {
    const auto sheet = together({spaceOf(choice::kRoom, "25.0"), boiler("18"),
                                 ventAppliance(1, choice::kGasFire, "6.9", choice::kOpenFlued),
                                 ventAppliance(2, choice::kHotplate, "5"), ventTyped(0, "95")});
    const auto found = ventAnswer(sheet);
    EXPECT_NEAR(asked::valueOf(found, Derived::VentNeed), 89.5, kShownArea);
    EXPECT_NEAR(asked::valueOf(found, Derived::VentInput), 29.9, 1e-9);
    EXPECT_EQ(asked::outcomeOf(found, FindingKind::VentFreeArea), Outcome::Pass);
    EXPECT_TRUE(asked::saysOf(found, FindingKind::VentFreeArea, Say::VentStepSeveral));
    EXPECT_EQ(asked::outcomeOf(ventAnswer(sheet, asked::shippedBook()), FindingKind::VentFreeArea),
              Outcome::LookAgain)
        << "how several count is from memory";
}

TEST(AnswerVentilation, VentsThereAgainstTheNeed) {
    struct Case {
        const char* area;
        std::string_view leadsTo;
        Outcome outcome;
    };
    const Case cases[] = {
        {"85.0", choice::kOutside, Outcome::LookAgain}, {"86.0", choice::kOutside, Outcome::Pass},
        {"84.0", choice::kOutside, Outcome::Fail},      {"129", choice::kOneWall, Outcome::Pass},
        {"126", choice::kOneWall, Outcome::Fail},       {"126", choice::kMoreWalls, Outcome::Fail},
        {"0", choice::kOutside, Outcome::Fail},         {"-90", choice::kOutside, Outcome::NoVerdict},
        {"9o", choice::kOutside, Outcome::NoVerdict},   {"90", "", Outcome::NoVerdict},
    };
    for (const auto& c : cases) {
        const auto sheet = together({spaceOf(choice::kRoom), boiler("24"), ventTyped(0, c.area, c.leadsTo)});
        EXPECT_EQ(asked::outcomeOf(ventAnswer(sheet), FindingKind::VentFreeArea), c.outcome)
            << c.area << c.leadsTo;
    }
    const auto room = asked::with(spaceOf(choice::kRoom), boiler("24"));
    EXPECT_EQ(asked::outcomeOf(ventAnswer(room), FindingKind::VentFreeArea), Outcome::NoVerdict)
        << "not looked";
    EXPECT_EQ(asked::outcomeOf(ventAnswer(asked::with(room, {{Item::RoomVents, choice::kNo}})),
                               FindingKind::VentFreeArea),
              Outcome::Fail);
    const auto two = together({room, ventTyped(0, "40"), ventTyped(1, "50")});
    EXPECT_NEAR(asked::valueOf(ventAnswer(two), Derived::VentThere), 90, 1e-9);
    EXPECT_EQ(asked::outcomeOf(ventAnswer(two), FindingKind::VentFreeArea), Outcome::Pass);
}

TEST(AnswerVentilation, TheStateOfTheVents) {
    const auto room = asked::with(spaceOf(choice::kRoom), boiler("24"));
    const auto sound = [&](std::string_view said, std::string_view sleeved) {
        const auto more = asked::inRow(Group::Vent, 0, {{Item::VentSleeved, sleeved}});
        return asked::outcomeOf(
            ventAnswer(together({room, ventTyped(0, "95", choice::kOutside, "", said), more})),
            FindingKind::VentSound);
    };
    EXPECT_EQ(sound(choice::kYes, ""), Outcome::Pass);
    EXPECT_EQ(sound(choice::kYes, choice::kYes), Outcome::Pass);
    EXPECT_EQ(sound(choice::kYes, choice::kNo), Outcome::LookAgain);
    EXPECT_EQ(sound(choice::kNo, ""), Outcome::Fail);
    EXPECT_EQ(sound("", ""), Outcome::NoVerdict);
}

// Approved Document J: 70 kW net is 77.7 kW gross, of natural gas.
TEST(AnswerVentilation, AGrossInputBecomesNetByTheGasThatWasSaid) {
    const auto gross = asked::inRow(Group::Appliance, 0, {{Item::ApplianceInputBasis, choice::kGross}});
    const auto unsaid = together({spaceOf(choice::kRoom), boiler("22.20"), gross});
    EXPECT_FALSE(asked::figureOf(ventAnswer(unsaid), Derived::VentNeed));
    EXPECT_EQ(ventAnswer(unsaid).notes.front().say, Say::VentGasMissing);
    const auto said = asked::with(unsaid, {{Item::GasFamily, choice::kNaturalGas}});
    testing::Agreement agreement("Gross heat input as net, natural gas (a third of 77.7 kW gross)",
                                 "Approved Document J: 70 kW net is 77.7 kW gross", "kW", 0.05);
    const auto found = ventAnswer(said);
    agreement.hold("22.2 kW", asked::valueOf(found, Derived::VentInput), 20.0);
    EXPECT_TRUE(asked::saysOf(found, FindingKind::VentFreeArea, Say::VentStepGross));
    const auto noBasis =
        asked::with(said, asked::inRow(Group::Appliance, 0, {{Item::ApplianceInputBasis, ""}}));
    EXPECT_FALSE(asked::figureOf(ventAnswer(noBasis), Derived::VentNeed));
    EXPECT_EQ(ventAnswer(noBasis).notes.front().say, Say::HeatInputPlateKindNotSaid);
}

TEST(AnswerVentilation, TheMakersVentComesFirst) {
    const auto makers = [](const char* area) {
        return asked::inRow(Group::Appliance, 0,
                            {{Item::ApplianceVentArea, area, UnitCode::SquareCentimetre}});
    };
    const auto room = together({spaceOf(choice::kRoom), boiler("24"), ventTyped(0, "95")});
    EXPECT_NEAR(asked::valueOf(ventAnswer(asked::with(room, makers("100"))), Derived::VentNeed), 100, 1e-9);
    EXPECT_EQ(asked::outcomeOf(ventAnswer(asked::with(room, makers("100"))), FindingKind::VentFreeArea),
              Outcome::Fail);
    EXPECT_EQ(asked::outcomeOf(ventAnswer(asked::with(room, makers("90"))), FindingKind::VentFreeArea),
              Outcome::Pass);
    for (const char* unclear : {"1oo", "-100"}) {
        const auto found = ventAnswer(asked::with(room, makers(unclear)));
        EXPECT_EQ(asked::outcomeOf(found, FindingKind::VentFreeArea), Outcome::NoVerdict) << unclear;
        EXPECT_TRUE(asked::saysOf(found, FindingKind::VentFreeArea, Say::MakersFigureUnclear)) << unclear;
        EXPECT_FALSE(asked::figureOf(found, Derived::VentNeed)) << unclear;
    }
}

TEST(AnswerVentilation, AFlueAgainstItsKindIsNoKind) {
    const auto why = [](std::string_view kind, std::string_view flue) {
        const auto sheet =
            together({spaceOf(choice::kRoom), ventAppliance(0, kind, "5", flue), ventTyped(0, "300")});
        return asked::findingOf(ventAnswer(sheet), FindingKind::VentFreeArea)->why.say;
    };
    EXPECT_EQ(why(choice::kFluelessSpaceHeater, choice::kOpenFlued), Say::VentKindMissing);
    EXPECT_EQ(why(choice::kOven, choice::kRoomSealed), Say::VentKindMissing);
    EXPECT_EQ(why(choice::kRangeCooker, choice::kOpenFlued), Say::VentKindMissing) << "no row of its own";
    EXPECT_EQ(why("", choice::kOpenFlued), Say::VentKindMissing);
    EXPECT_EQ(why(choice::kCondensingBoiler, ""), Say::VentKindMissing);
    EXPECT_NE(why(choice::kOven, choice::kFlueless), Say::VentKindMissing);
    EXPECT_NE(why(choice::kOven, ""), Say::VentKindMissing);
}

TEST(AnswerVentilation, ATightDwellingIsNoOrdinaryOne) {
    const auto sheet = [](std::string_view tight) {
        return together(
            {spaceOf(choice::kRoom), boiler("24"), ventTyped(0, "95"), {{Item::RoomTight, tight}}});
    };
    EXPECT_EQ(asked::outcomeOf(ventAnswer(sheet(choice::kNo)), FindingKind::VentFreeArea), Outcome::Pass);
    for (const auto tight : {choice::kYes, choice::kUnknown, std::string_view()}) {
        EXPECT_EQ(asked::outcomeOf(ventAnswer(sheet(tight)), FindingKind::VentFreeArea), Outcome::NoVerdict)
            << tight;
    }
}

// BS 6644 (boiler makers' pages): 4 and 2 cm2/kW in a boiler room.
TEST(AnswerVentilation, BoilerRooms) {
    const auto summer =
        asked::Sheet{{Item::RoomSpace, choice::kBoilerRoom}, {Item::PlantSummer, choice::kSummerHalf}};
    const auto sheet = together(
        {summer,
         boiler("150"),
         boiler("50", 1),
         ventTyped(0, "410", choice::kOutside, choice::kHigh),
         ventTyped(1, "790", choice::kOutside, choice::kLow),
         {{Item::PlantMiddle, "31", UnitCode::Celsius}, {Item::PlantCeiling, "43", UnitCode::Celsius}}});
    const auto found = ventAnswer(sheet);
    EXPECT_NEAR(asked::valueOf(found, Derived::VentNeedHigh), 400, 1e-9);
    EXPECT_NEAR(asked::valueOf(found, Derived::VentNeedLow), 800, 1e-9);
    EXPECT_EQ(asked::outcomeOf(found, FindingKind::VentHighLevel), Outcome::Pass);
    EXPECT_EQ(asked::outcomeOf(found, FindingKind::VentLowLevel), Outcome::Fail);
    std::vector<std::pair<Item, Outcome>> read;
    for (const auto& judged : found.findings) {
        if (judged.finding.kind == FindingKind::PlantTemperature) {
            read.emplace_back(judged.about.front(), judged.finding.outcome);
        }
    }
    const std::vector<std::pair<Item, Outcome>> expected{{Item::PlantMiddle, Outcome::Pass},
                                                         {Item::PlantCeiling, Outcome::Fail}};
    EXPECT_EQ(read, expected);
    const auto sealed =
        asked::with(sheet, asked::inRow(Group::Appliance, 1, {{Item::ApplianceFlue, choice::kRoomSealed}}));
    EXPECT_EQ(asked::outcomeOf(ventAnswer(sealed), FindingKind::VentHighLevel), Outcome::NoVerdict);
    EXPECT_FALSE(asked::figureOf(ventAnswer(sealed), Derived::VentNeedHigh));
    const auto makers = asked::with(
        sheet,
        asked::inRow(Group::Appliance, 0, {{Item::ApplianceVentArea, "10", UnitCode::SquareCentimetre}}));
    EXPECT_EQ(asked::outcomeOf(ventAnswer(makers), FindingKind::VentHighLevel), Outcome::NoVerdict);
    const auto enclosure = asked::with(sheet, {{Item::RoomSpace, choice::kBoilerEnclosure}});
    EXPECT_NEAR(asked::valueOf(ventAnswer(enclosure), Derived::VentNeedLow), 2000, 1e-9) << "10 cm2/kW";
}

TEST(AnswerVentilation, BeyondSeventyKilowattAnotherStandardJudges) {
    const auto found =
        ventAnswer(together({spaceOf(choice::kRoom), boiler("40"), boiler("31", 1), ventTyped(0, "900")}));
    EXPECT_TRUE(asked::saysOf(found, FindingKind::VentScope, Say::VentBeyondScope));
    EXPECT_EQ(asked::findingOf(found, FindingKind::VentFreeArea), nullptr);
}

// Everything that the finding rests on: take any one away, or make it unreadable, and it must not pass.
TEST(AnswerVentilation, NothingPassesWithoutAnyOneOfItsReadings) {
    const auto whole = together({spaceOf(choice::kRoom, "70.0"), boiler("18"),
                                 ventAppliance(1, choice::kFluelessSpaceHeater, "2.7"), ventTyped(0, "150")});
    const auto kinds = {FindingKind::VentFreeArea, FindingKind::VentOpening, FindingKind::VentAllowed,
                        FindingKind::VentSound};
    for (const auto kind : kinds) {
        ASSERT_EQ(asked::outcomeOf(ventAnswer(whole), kind), Outcome::Pass) << rulebook::kindText(kind);
    }
    const auto passes = [&](const asked::Sheet& sheet, FindingKind kind) {
        return asked::outcomeOf(ventAnswer(sheet), kind) == Outcome::Pass;
    };
    const std::pair<Item, FindingKind> needed[] = {
        {Item::RoomSpace, FindingKind::VentFreeArea},
        {Item::RoomTight, FindingKind::VentFreeArea},
        {Item::ApplianceKind, FindingKind::VentFreeArea},
        {Item::ApplianceInput, FindingKind::VentFreeArea},
        {Item::ApplianceInputBasis, FindingKind::VentFreeArea},
        {Item::VentArea, FindingKind::VentFreeArea},
        {Item::VentTo, FindingKind::VentFreeArea},
        {Item::VentSound, FindingKind::VentSound},
        {Item::RoomOpening, FindingKind::VentOpening},
        {Item::RoomVolume, FindingKind::VentAllowed},
        {Item::ApplianceInput, FindingKind::VentAllowed},
    };
    for (const auto& [item, kind] : needed) {
        EXPECT_FALSE(passes(asked::without(whole, item), kind)) << reg::infoOf(item).code;
        auto unread = whole;
        for (auto& typed : unread) {
            typed.text = typed.item == item ? "2..5 or so" : typed.text;
        }
        EXPECT_FALSE(passes(unread, kind)) << reg::infoOf(item).code;
    }
}

TEST(AnswerVentilation, AsksOnlyWhatTheSpaceNeeds) {
    Worksheet sheet(Question::Ventilation, calendar::fromIso("2026-11-25").value());
    const auto put = [&](Item item, std::string_view code) {
        sheet.put(Group::Once, 0, item, std::string(code));
    };
    EXPECT_FALSE(sheet.isAsked(Group::Once, 0, Item::PlantSummer));
    EXPECT_TRUE(sheet.isAsked(Group::Once, 0, Item::RoomVolume));
    put(Item::RoomSpace, choice::kCompartmentToRoom);
    EXPECT_FALSE(sheet.isAsked(Group::Once, 0, Item::RoomVolume));
    EXPECT_FALSE(sheet.isAsked(Group::Once, 0, Item::PlantSummer));
    put(Item::RoomSpace, choice::kBoilerRoom);
    EXPECT_TRUE(sheet.isAsked(Group::Once, 0, Item::PlantSummer));
    EXPECT_FALSE(sheet.isAsked(Group::Appliance, 0, Item::ApplianceVentArea));
    put(Item::RoomVents, choice::kNo);
    EXPECT_FALSE(sheet.isAsked(Group::Vent, 0, Item::VentArea));
    EXPECT_TRUE(sheet.isAsked(Group::Appliance, 0, Item::ApplianceFlue));
    sheet.put(Group::Appliance, 0, Item::ApplianceKind, std::string(choice::kHotplate));
    EXPECT_FALSE(sheet.isAsked(Group::Appliance, 0, Item::ApplianceFlue));
    EXPECT_TRUE(sheet.isAsked(Group::Appliance, 1, Item::ApplianceFlue)) << "another row";
}

}  // namespace
}  // namespace hearth::judging
