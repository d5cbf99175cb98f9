// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window.h"

#include "app/closing_backup.h"
#include "app/demo.h"
#include "app/run_window.h"
#include "tests/support/files.h"
#include "tests/support/fixed_clock.h"
#include "tests/ui/support/answers.h"
#include "ui/visit/sheet.h"
#include "ui/visit/sheet_paper.h"
#include "ui/visit/visits_place.h"

#include <QApplication>
#include <QLineEdit>
#include <QScrollArea>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

/// The program's window as it is wired, without a person.
namespace {

using namespace hearth;
using namespace hearth::app;
using ::testing::HasSubstr;

class NoPrinter final : public ui::paper::Printing {
  public:
    Result<bool> print(const record::Document&, const ui::paper::PageOptions&, record::Paper) override {
        return false;
    }
    ui::paper::PrintedParts printMany(const ui::paper::PrintJob&) override { return {false, 0, {}}; }
};

class WindowTest : public ::testing::Test {
  protected:
    void SetUp() override { ASSERT_TRUE(makeDemonstration(m_path, Records::None)); }

    [[nodiscard]] CommandLine line() const {
        CommandLine line;
        line.store = QString::fromStdString(m_path.string());
        return line;
    }
    [[nodiscard]] Surroundings surroundings() { return {m_clock, m_words, m_dialogs, m_printer}; }

    hearth::testing::TempDir m_folder;
    std::filesystem::path m_path = m_folder / "demonstration.hearth";
    FixedClock m_clock = hearth::testing::fixedClock("2026-11-26");
    ui::words::Words m_words;
    hearth::testing::ScriptedDialogs m_dialogs;
    NoPrinter m_printer;
};

/// All texts that a window shows.
QString textsOf(const QWidget& window) {
    QString texts;
    for (const auto* widget : window.findChildren<QWidget*>()) {
        if (widget->isVisible()) {
            texts += widget->property("text").toString() + widget->accessibleName() + QLatin1Char('\n');
        }
    }
    return texts;
}

TEST_F(WindowTest, HasAllItsPlaces) {
    const auto store = storeForWindow(line(), surroundings());
    ASSERT_TRUE(store && *store);
    const auto window = makeMainWindow(***store, surroundings());
    window->show();
    QStringList titles;
    for (int i = 0; i < 6; ++i) {
        window->showPlace(i);
        titles << window->placeInView()->title();
    }
    EXPECT_EQ(titles,
              (QStringList{QStringLiteral("Visits"), QStringLiteral("Premises"), QStringLiteral("Checks due"),
                           QStringLiteral("Records"), QStringLiteral("Rule book"), QStringLiteral("Firm")}));
    EXPECT_THAT(textsOf(*window).toStdString(), HasSubstr("nothing here is real"));
}

TEST_F(WindowTest, ASecondCopyIsReadOnlyAndSaysSo) {
    const auto first = storeForWindow(line(), surroundings());
    ASSERT_TRUE(first && *first);
    const auto second = storeForWindow(line(), surroundings());
    ASSERT_TRUE(second && *second);
    EXPECT_FALSE((**first)->isReadOnly());
    ASSERT_TRUE((**second)->isReadOnly());
    EXPECT_EQ((**second)->whyReadOnly().code, ErrorCode::StoreLocked);
    const auto window = makeMainWindow(***second, surroundings());
    window->show();
    EXPECT_THAT(textsOf(*window).toStdString(),
                HasSubstr(m_words.error((**second)->whyReadOnly()).toStdString()));
}

TEST_F(WindowTest, AStoreThatWasNamedIsNeverMade) {
    CommandLine other;
    other.store = QString::fromStdString((m_folder / "other.hearth").string());
    const auto store = storeForWindow(other, surroundings());
    ASSERT_FALSE(store);
    EXPECT_EQ(store.error().code, ErrorCode::StoreMissing);
    EXPECT_FALSE(std::filesystem::exists(m_folder / "other.hearth"));
}

TEST_F(WindowTest, ClosingMakesTheDaysBackupOfRealWork) {
    const auto demonstration = storeForWindow(line(), surroundings());
    ASSERT_TRUE(demonstration && *demonstration);
    backUpOnClosing(***demonstration, surroundings());
    EXPECT_FALSE(std::filesystem::exists(store::backupFolderOf(m_path))) << "a demonstration is no work";

    const auto own = m_folder / "firm.hearth";
    reg::Firm firm;
    firm.name = "Ashdown & Pike Heating";
    const auto store = store::Store::create(own, firm, m_clock);
    ASSERT_TRUE(store);
    backUpOnClosing(**store, surroundings());
    EXPECT_EQ(store::findBackups(own).size(), 1U);
    EXPECT_TRUE(m_dialogs.told.isEmpty());
    backUpOnClosing(**store, surroundings());
    EXPECT_EQ(store::findBackups(own).size(), 1U) << "nothing has changed";
}

TEST_F(WindowTest, ABackupThatFailsOnClosingIsTold) {
    const auto own = m_folder / "firm.hearth";
    const auto store = store::Store::create(own, reg::Firm(), m_clock);
    ASSERT_TRUE(store);
    hearth::testing::writeFile(store::backupFolderOf(own), "a file stands where the folder should be");
    backUpOnClosing(**store, surroundings());
    ASSERT_EQ(m_dialogs.told.size(), 1);
    EXPECT_TRUE((*store)->backupState()->failure);
}

TEST_F(WindowTest, ADamagedStoreOffersABackup) {
    std::string bytes = hearth::testing::readFile(m_path);
    std::fill(bytes.begin() + 100, bytes.begin() + 400, '\xa5');
    hearth::testing::writeFile(m_path, bytes);
    m_dialogs.answers = {0};
    const auto store = storeForWindow(line(), surroundings());
    ASSERT_FALSE(store);
    EXPECT_EQ(store.error().code, ErrorCode::StoreDamaged);
    EXPECT_EQ(m_dialogs.asked.size(), 1);
}

/// Letters a third larger, for as long as it lives.
class LargeLetters {
  public:
    LargeLetters() { ui::look::useTextPercent(130); }
    ~LargeLetters() { ui::look::useTextPercent(100); }
    Q_DISABLE_COPY_MOVE(LargeLetters)
};

/// The widgets of a page that ask for most of its width.
std::string widestOf(const QWidget& page) {
    std::string told;
    for (const auto* widget : page.findChildren<QWidget*>()) {
        const int least = widget->isVisible() ? widget->minimumSizeHint().width() : 0;
        if (least > page.minimumSizeHint().width() / 2) {
            told += std::string(widget->metaObject()->className()) + ' ' +
                    widget->objectName().toStdString() + ' ' + widget->accessibleName().toStdString() + ": " +
                    std::to_string(least) + '\n';
        }
    }
    return told;
}

TEST_F(WindowTest, FitsASmallScreenWithLargeLetters) {
    const LargeLetters large;
    const auto store = std::move(store::Store::open(m_path, store::Access::Write, m_clock)).value();
    const auto window = makeMainWindow(*store, surroundings());
    window->resize(1024, 600);
    window->show();
    for (int place = 0; place < 7; ++place) {
        window->showPlace(place);
        QApplication::processEvents();
        EXPECT_LE(window->minimumSizeHint().width(), 1024) << place;
        EXPECT_LE(window->minimumSizeHint().height(), 600) << place;
    }
    const auto visits = std::move(store->visits({}, 1000)).value();
    ASSERT_FALSE(visits.empty());
    for (const auto& line : visits) {
        window->openVisit(line.visit.id);
        QApplication::processEvents();
        const auto* sheet = dynamic_cast<ui::visit::VisitsPlace*>(window->placeInView())->sheet();
        EXPECT_LE(sheet->paper()->minimumSizeHint().width(), sheet->scroll()->viewport()->width())
            << line.address.line1 << '\n'
            << widestOf(*sheet->paper());
    }
}

TEST_F(WindowTest, SpeaksThePseudoLocale) {
    const auto store = storeForWindow(line(), surroundings());
    ASSERT_TRUE(store && *store);
    const WindowLanguage language(QStringLiteral("en_XA"));
    const auto window = makeMainWindow(***store, surroundings());
    window->show();
    EXPECT_NE(window->placeInView()->title(), QStringLiteral("Visits"));
}

}  // namespace
