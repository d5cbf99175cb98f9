// SPDX-License-Identifier: GPL-3.0-or-later
// What has to hold in every field of the sheet.
#include "tests/ui/visit/sheet_bench.h"
#include "ui/visit/pipe_table.h"
#include "ui/visit/spine.h"
#include "ui/visit/wanted.h"

#include <QLineEdit>
#include <QScrollBar>

#include <gtest/gtest.h>

namespace hearth::ui::visit {
namespace {

using reg::Item;
using reg::ItemKind;
using rulebook::FindingKind;
using testing::need;
using testing::SheetBench;

TEST(SheetFields, EveryItemHasItsFieldOnce) {
    SheetBench bench;
    std::map<Item, int> fields;
    for (auto* part : bench.sheet().paper()->parts()) {
        for (auto* field : part->fields()) {
            if (field->key().item) {
                ++fields[*field->key().item];
            }
        }
    }
    for (const reg::ItemInfo& info : reg::sheetItems()) {
        EXPECT_EQ(fields[info.item], 1) << info.code;
    }
}

TEST(SheetFields, TheSheetIsWalkable) {
    SheetBench bench;
    const auto state = [&] {
        const auto file = need(bench.firm.store->visitFile(bench.visit));
        std::string text = bench.firm.state();
        for (const auto& entry : file.entries) {
            text += std::string(reg::infoOf(entry.item).code) + '=' + entry.text + '\n';
        }
        return text + std::to_string(file.pipes.size());
    };
    testing::expectWalkable(bench.place.get(), state);
}

TEST(SheetFields, TheFilledSheetIsWalkableToo) {
    SheetBench bench;
    bench.fillIn();
    testing::expectEveryStopOnce(bench.place.get());
    testing::expectUniqueNames(bench.place.get());
    testing::expectWheelChangesNothing(bench.place.get());
}

TEST(SheetFields, TabGoesInReadingOrder) {
    SheetBench bench;
    bench.fillIn();
    const auto stops = testing::tabStops(bench.sheet().paper());
    const auto order = testing::walk(bench.place.get(), stops.front());
    int before = -1;
    for (QWidget* widget : order) {
        if (!bench.sheet().paper()->isAncestorOf(widget)) {
            continue;
        }
        const int y = widget->mapTo(bench.sheet().paper(), QPoint(0, widget->height() / 2)).y();
        EXPECT_GE(y, before - 60) << testing::described(widget);  // within a row the heights differ a little
        before = y;
    }
}

/// Fields that take any text: numbers, times, texts.
bool takesText(const reg::ItemInfo& info) {
    return info.kind == ItemKind::Number || info.kind == ItemKind::Time || info.kind == ItemKind::Text ||
           info.kind == ItemKind::LongText;
}

class Garbage : public ::testing::TestWithParam<Item> {};

TEST_P(Garbage, IsKeptMarkedAndThereAfterAnotherStart) {
    const Item item = GetParam();
    const auto& info = reg::infoOf(item);
    SheetBench bench;
    bench.enter(item, "1");  // so that the field is in view
    const QString garbage = QStringLiteral("12..3 x; <b>\"'%1");
    auto* field = bench.field(item);
    field->editor()->focusTarget()->setFocus();
    SheetBench::press(Qt::Key_A, Qt::ControlModifier);
    SheetBench::keys(garbage);
    SheetBench::press(Qt::Key_Tab);
    const bool mustBeMarked = info.kind == ItemKind::Number || info.kind == ItemKind::Time;
    for (int start = 0; start < 2; ++start) {
        EXPECT_EQ(bench.editor(item).text(), garbage) << info.code;
        const auto* target = bench.editor(item).focusTarget();
        EXPECT_EQ(target->property("problem").toBool(), mustBeMarked) << info.code;
        if (mustBeMarked) {
            EXPECT_FALSE(target->accessibleDescription().isEmpty()) << info.code;
        }
        const auto file = need(bench.firm.store->visitFile(bench.visit));
        ASSERT_NE(file.find(bench.subjectOf(item), item), nullptr);
        EXPECT_EQ(file.find(bench.subjectOf(item), item)->text, garbage.toStdString());
        bench.open();
    }
}

TEST(SheetFields, ADateThatIsNoneIsKeptMarkedAndWanted) {
    SheetBench bench;
    bench.fillIn();
    for (int start = 0; start < 2; ++start) {
        auto* part = bench.sheet().paper()->part({PartKind::WhoAndWhere});
        auto* date = part->editorFor({std::nullopt, record::Field::VisitDate, reg::subject(bench.visit)});
        ASSERT_NE(date, nullptr);
        if (start == 0) {
            date->focusTarget()->setFocus();
            SheetBench::press(Qt::Key_A, Qt::ControlModifier);
            SheetBench::keys(QStringLiteral("last Tuesday"));
            SheetBench::press(Qt::Key_Return);
        }
        EXPECT_EQ(date->text(), QStringLiteral("last Tuesday"));
        EXPECT_TRUE(date->focusTarget()->property("problem").toBool());
        const auto missing = bench.model().missing();
        EXPECT_TRUE(std::any_of(missing.begin(), missing.end(), [](const record::Missing& one) {
            return one.field == record::Field::VisitDate && one.unreadable;
        }));
        bench.open();
    }
}

TEST(SheetFields, APipeThatGoesOnFromNowhereIsKeptMarkedAndWanted) {
    SheetBench bench;
    bench.fillIn();
    auto pipes = [&] { return bench.sheet().paper()->findChild<PipeTable*>(); };
    constexpr int kGoesOnFrom = 4;
    pipes()->editorAt(0, kGoesOnFrom)->focusTarget()->setFocus();
    SheetBench::press(Qt::Key_A, Qt::ControlModifier);
    SheetBench::keys(QStringLiteral("99"));
    SheetBench::press(Qt::Key_Return);
    for (int start = 0; start < 2; ++start) {
        auto* field = pipes()->editorAt(0, kGoesOnFrom);
        EXPECT_EQ(field->text(), QStringLiteral("99"));
        EXPECT_TRUE(field->focusTarget()->property("problem").toBool());
        const auto missing = bench.model().missing();
        EXPECT_TRUE(std::any_of(missing.begin(), missing.end(), [](const record::Missing& one) {
            return one.field == record::Field::PipeOrder;
        }));
        bench.open();
    }
}

std::vector<Item> textItems() {
    std::vector<Item> items;
    for (const auto& info : reg::sheetItems()) {
        if (takesText(info)) {
            items.push_back(info.item);
        }
    }
    return items;
}

INSTANTIATE_TEST_SUITE_P(InEveryField, Garbage, ::testing::ValuesIn(textItems()), [](const auto& one) {
    std::string name(reg::infoOf(one.param).code);
    std::replace_if(
        name.begin(), name.end(), [](char c) { return std::isalnum(static_cast<unsigned char>(c)) == 0; },
        '_');
    return name;
});

TEST(SheetFields, NoFindingPassesOnGarbage) {
    SheetBench bench;
    bench.fillIn();
    ASSERT_EQ(bench.outcome(FindingKind::Tightness), rulebook::Outcome::Pass);
    bench.enter(Item::TightEnd, "20.46 or so");
    EXPECT_NE(bench.outcome(FindingKind::Tightness), rulebook::Outcome::Pass);
}

TEST(SheetFields, EveryMissingThingOfTheSheetLeadsToItsField) {
    SheetBench bench;
    const auto missing = bench.model().missing();
    ASSERT_GT(missing.size(), 10U);
    for (std::size_t index = 0; index < missing.size(); ++index) {
        auto* list = bench.sheet().recordsPart()->missingList();
        list->setFocus();
        list->setCurrentRow(static_cast<int>(index));
        SheetBench::press(Qt::Key_Return);
        const auto& one = missing[index];
        const std::string name = bench.firm.words.missing(one).toStdString();
        if (one.item == Item::TestEdition) {
            // The only one allowed is kept with the first entry, without asking: the keyboard goes to its
            // part.
            ASSERT_TRUE(bench.editor(*one.item).isHidden());
            EXPECT_TRUE(bench.sheet()
                            .paper()
                            ->part({PartKind::Tightness})
                            ->isAncestorOf(QApplication::focusWidget()));
        } else if (one.item) {
            EXPECT_EQ(QApplication::focusWidget(), bench.editor(*one.item).focusTarget()) << name;
        } else if (one.field == record::Field::PipeOrVolume) {
            EXPECT_EQ(testing::spokenName(QApplication::focusWidget()).substr(0, 4), "Pipe") << name;
        } else {
            EXPECT_NE(QApplication::focusWidget(), list) << name;
        }
        const QWidget* focus = QApplication::focusWidget();
        const QRect view(QPoint(0, 0), bench.sheet().scroll()->viewport()->size());
        const QPoint at = focus->mapTo(bench.sheet().scroll()->viewport(), focus->rect().center());
        EXPECT_TRUE(view.contains(at)) << name << " is not in view";
    }
}

TEST(SheetFields, IssuingWithSomethingMissingSaysSoAndIssuesNothing) {
    SheetBench bench;
    bench.at(Item::VisitReference);
    SheetBench::press(Qt::Key_I, Qt::ControlModifier);
    auto* list = bench.sheet().recordsPart()->missingList();
    EXPECT_TRUE(QTest::qWaitFor([&] { return QApplication::focusWidget() == list; }, 20000));
    EXPECT_TRUE(need(bench.firm.store->records("")).empty());
}

TEST(SheetFields, AfterARecordChangesGoIntoARevisionWithItsReason) {
    SheetBench bench;
    bench.fillIn();
    bench.sheet().recordsPart()->issue();
    ASSERT_EQ(bench.model().records().size(), 1U);
    bench.enter(Item::VisitRemarks, "meter number corrected");
    EXPECT_FALSE(bench.model().isReadOnly());
    bench.firm.dialogs.texts.push_back(QStringLiteral("meter number was wrong"));
    bench.sheet().recordsPart()->issue();
    const auto& records = bench.model().records();
    ASSERT_EQ(records.size(), 2U);
    const auto* current = bench.model().currentRecord();
    ASSERT_NE(current, nullptr);
    EXPECT_EQ(current->header.revision, 2);
    EXPECT_EQ(current->reason, "meter number was wrong");
}

TEST(SheetFields, ClosedMeansReadOnlyUntilItIsOpenedAgain) {
    SheetBench bench;
    bench.fillIn();
    auto* close = bench.sheet().findChild<QPushButton*>(QStringLiteral("closeVisitButton"));
    close->click();
    SheetBench::settle();
    const auto* line = qobject_cast<QLineEdit*>(bench.editor(Item::TightEnd).focusTarget());
    ASSERT_NE(line, nullptr);
    EXPECT_TRUE(line->isReadOnly());
    bench.at(Item::TightEnd);
    SheetBench::line(QStringLiteral("99"));
    EXPECT_EQ(bench.model().textOf(bench.test(), Item::TightEnd), QStringLiteral("20.46"));
    close->click();
    SheetBench::settle();
    EXPECT_FALSE(line->isReadOnly());
}

TEST(SheetFields, AnotherTestHasItsOwnPartsAndNames) {
    SheetBench bench;
    bench.firm.dialogs.texts.push_back(QStringLiteral("after the work"));
    bench.sheet().findChild<QPushButton*>(QStringLiteral("addTestButton"))->click();
    SheetBench::settle();
    EXPECT_EQ(bench.sheet().spine()->lines().size(), 10U);
    testing::expectUniqueNames(bench.place.get());
    testing::expectEveryStopOnce(bench.place.get());
}

TEST(SheetFields, AnUndoIsSeen) {
    SheetBench bench;
    bench.type(Item::VisitReference, QStringLiteral("PO 1"));
    need(bench.firm.store->undo());
    bench.place->refresh();
    EXPECT_TRUE(bench.editor(Item::VisitReference).text().isEmpty());
}

}  // namespace
}  // namespace hearth::ui::visit
