// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/main_window.h"

#include "tests/ui/support/firm_bench.h"
#include "tests/ui/support/keys.h"
#include "tests/ui/support/walker.h"
#include "ui/shell/band.h"
#include "ui/shell/emergency_panel.h"
#include "ui/shell/kit.h"
#include "ui/shell/openers.h"
#include "ui/words/pseudo_translator.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScreen>
#include <QTemporaryDir>
#include <QVBoxLayout>

#include <gtest/gtest.h>
#include <memory>

namespace hearth::ui::shell {
namespace {

using hearth::testing::child;
using hearth::testing::FirmBench;
using hearth::testing::focus;
using hearth::testing::need;
using hearth::testing::press;
using hearth::testing::type;
using hearth::testing::typeLine;

/// A place with two fields that keep the firm's name and telephone: enough of a place for the window's sake.
class FirmNamePlace : public Place, public PremisesOpener, public VisitOpener {
  public:
    FirmNamePlace(const Context& context, const QString& title, rulebook::Gas gas = rulebook::Gas::NaturalGas)
        : m_context(context), m_title(title), m_gas(gas) {}

    [[nodiscard]] QString title() const override { return m_title; }
    void refresh() override {
        ++refreshed;
        if (name == nullptr) {
            build();
        }
        name->setText(words::qstring(need(m_context.store.firm()).name));
    }
    void commit() override { commitField(this); }
    void takeFocus() override { focusOn(name); }
    [[nodiscard]] rulebook::Gas gas() const override { return m_gas; }
    [[nodiscard]] std::optional<reg::Country> country() const override { return inCountry; }
    void search(const QString& text) override { searched << text; }
    void openPremises(reg::PremisesId id) override { opened = id.text(); }
    void openVisit(reg::VisitId id) override { opened = id.text(); }

    std::optional<reg::Country> inCountry;
    int refreshed = 0;
    QStringList searched;
    std::string opened;
    input::Editor* name = nullptr;

  private:
    void build() {
        auto* lines = new QVBoxLayout(this);
        name = input::makeTextEditor(this);
        name->setLabel(m_title + QStringLiteral(" name"));
        lines->addWidget(name);
        auto* other = input::makeTextEditor(this);
        other->setLabel(m_title + QStringLiteral(" other"));
        lines->addWidget(other);
        keepOnCommit(name, m_context.words, [this](const QString& text) {
            auto firm = need(m_context.store.firm());
            firm.name = text.toStdString();
            return m_context.store.saveFirm(firm);
        });
    }

    Context m_context;
    QString m_title;
    rulebook::Gas m_gas;
};

class MainWindowTest : public ::testing::Test {
  protected:
    void start(bool demonstration = false) {
        bench = std::make_unique<FirmBench>("2026-11-25", demonstration);
        show();
    }
    void show() {
        window = std::make_unique<MainWindow>(bench->parts());
        places = {new FirmNamePlace(window->context(), QStringLiteral("First")),
                  new FirmNamePlace(window->context(), QStringLiteral("Second"), rulebook::Gas::Propane)};
        window->setPlaces({places[0], places[1]});
        hearth::testing::activate(window.get());
    }
    [[nodiscard]] QString said() const { return child<QLabel>(window.get(), "statusText")->text(); }
    [[nodiscard]] EmergencyPanel* panel() const { return window->findChild<EmergencyPanel*>(); }

    std::unique_ptr<FirmBench> bench;
    std::unique_ptr<MainWindow> window;
    std::vector<FirmNamePlace*> places;
};

TEST_F(MainWindowTest, showsTheFirstPlaceAndBuildsNoOther) {
    start();
    EXPECT_EQ(window->placeInView(), places[0]);
    EXPECT_EQ(places[0]->refreshed, 1);
    EXPECT_EQ(places[1]->refreshed, 0);
    EXPECT_TRUE(places[1]->children().isEmpty()) << "a place that was never shown has made widgets";
}

TEST_F(MainWindowTest, controlAndANumberGoToAPlaceAndCommitTheFieldLeft) {
    start();
    ASSERT_EQ(focus(), places[0]->name->focusTarget());
    press(Qt::Key_End);
    type(QStringLiteral(" Ltd"));
    press(Qt::Key_2, Qt::ControlModifier);
    EXPECT_EQ(window->placeInView(), places[1]);
    EXPECT_EQ(focus(), places[1]->name->focusTarget());
    EXPECT_EQ(need(bench->store->firm()).name, "Ashdown & Pike Heating Ltd");
    press(Qt::Key_1, Qt::ControlModifier);
    EXPECT_EQ(window->placeInView(), places[0]);
}

TEST_F(MainWindowTest, whomToRingFollowsTheCountryOnScreen) {
    start();
    ASSERT_EQ(places[0]->gas(), rulebook::Gas::NaturalGas);  // whose network has a number per country
    places[0]->inCountry = reg::Country::NorthernIreland;
    press(Qt::Key_F12);
    ASSERT_NE(panel(), nullptr);
    const auto stepsIn = [&](reg::Country country) {
        return bench->words.emergencySteps(words::Words::Emergency::SmellOrEscape, places[0]->gas(), country,
                                           {});
    };
    EXPECT_EQ(panel()->steps(), stepsIn(reg::Country::NorthernIreland));
    EXPECT_NE(stepsIn(reg::Country::NorthernIreland), stepsIn(reg::Country::England));
}

TEST_F(MainWindowTest, whatToDoFirstIsOneKeyAwayFromEveryPlace) {
    start();
    for (std::size_t i = 0; i < places.size(); ++i) {
        window->showPlace(static_cast<int>(i));
        QWidget* before = focus();
        press(Qt::Key_F12);
        ASSERT_NE(panel(), nullptr);
        EXPECT_TRUE(panel()->isVisible()) << "place " << i;
        EXPECT_EQ(panel()->gas(), places[i]->gas());
        EXPECT_EQ(panel()->steps(), bench->words.emergencySteps(words::Words::Emergency::SmellOrEscape,
                                                                places[i]->gas(), reg::Country::England, {}));
        EXPECT_FALSE(panel()->steps().isEmpty());
        press(Qt::Key_Escape);
        EXPECT_FALSE(panel()->isVisible());
        EXPECT_EQ(focus(), before) << "Escape goes back to where one was";
    }
}

TEST_F(MainWindowTest, theEventChangesWhatToDoFirst) {
    start();
    press(Qt::Key_F12);
    const QStringList smell = panel()->steps();
    press(Qt::Key_3);
    EXPECT_EQ(panel()->event(), words::Words::Emergency::CarbonMonoxide);
    EXPECT_NE(panel()->steps(), smell);
    press(Qt::Key_2);
    EXPECT_EQ(panel()->event(), words::Words::Emergency::FailedTest);
    press(Qt::Key_1);
    EXPECT_EQ(panel()->steps(), smell);
    press(Qt::Key_F12);
    EXPECT_FALSE(panel()->isVisible()) << "the key that opens it also closes it";
}

TEST_F(MainWindowTest, whatToDoFirstIsAtHandInTheSearchToo) {
    start();
    press(Qt::Key_F, Qt::ControlModifier);
    press(Qt::Key_F12);
    EXPECT_TRUE(panel()->isVisible());
    press(Qt::Key_Escape);
    EXPECT_EQ(focus()->objectName(), QStringLiteral("searchField"));
}

TEST_F(MainWindowTest, searchesThePlaceInViewWithEveryLetterAndRemembersPerPlace) {
    start();
    press(Qt::Key_F, Qt::ControlModifier);
    type(QStringLiteral("ab"));
    EXPECT_EQ(places[0]->searched, QStringList({QStringLiteral("a"), QStringLiteral("ab")}));
    press(Qt::Key_2, Qt::ControlModifier);
    auto* field = child<QLineEdit>(window.get(), "searchField");
    EXPECT_TRUE(field->text().isEmpty());
    press(Qt::Key_1, Qt::ControlModifier);
    EXPECT_EQ(field->text(), QStringLiteral("ab"));
    press(Qt::Key_F, Qt::ControlModifier);
    press(Qt::Key_Escape);
    EXPECT_TRUE(field->text().isEmpty());
    EXPECT_EQ(places[0]->searched.last(), QString());
    EXPECT_EQ(focus(), places[0]->name->focusTarget());
}

TEST_F(MainWindowTest, controlZTakesARegisterFieldBack) {
    start();
    press(Qt::Key_End);
    typeLine(QStringLiteral(" Ltd"));
    ASSERT_EQ(need(bench->store->firm()).name, "Ashdown & Pike Heating Ltd");
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(need(bench->store->firm()).name, "Ashdown & Pike Heating");
    EXPECT_EQ(places[0]->name->text(), QStringLiteral("Ashdown & Pike Heating"))
        << "the place shows what is there now";
    EXPECT_TRUE(said().contains(QStringLiteral("Ashdown & Pike Heating Ltd"))) << said().toStdString();
}

TEST_F(MainWindowTest, controlZInAFieldTakesBackWhatWasJustTyped) {
    start();
    press(Qt::Key_End);
    type(QStringLiteral(" Ltd"));
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(places[0]->name->text(), QStringLiteral("Ashdown & Pike Heating"));
    EXPECT_EQ(need(bench->store->firm()).name, "Ashdown & Pike Heating");
    EXPECT_TRUE(said().isEmpty()) << "the store was asked: " << said().toStdString();
}

TEST_F(MainWindowTest, controlZWithNothingToTakeBackSaysSo) {
    start();
    // The bench itself has made changes in this session; they are taken back one by one, then there is
    // nothing left.
    for (int i = 0; i < 50 && !said().startsWith(QStringLiteral("Nothing")); ++i) {
        window->undo();
    }
    EXPECT_TRUE(said().startsWith(QStringLiteral("Nothing to take back"))) << said().toStdString();
}

TEST_F(MainWindowTest, helpOnKeysAndAboutOpenAndClose) {
    start();
    press(Qt::Key_F1);
    auto* keys = child<QWidget>(window.get(), "keysPanel");
    EXPECT_TRUE(keys->isVisible());
    press(Qt::Key_Escape);
    EXPECT_FALSE(keys->isVisible());
    child<QPushButton>(window.get(), "aboutButton")->setFocus();
    press(Qt::Key_Return);
    auto* about = child<QWidget>(window.get(), "aboutPanel");
    EXPECT_TRUE(about->isVisible());
    QStringList texts;
    for (const auto* label : about->findChildren<QLabel*>()) {
        texts << label->text();
    }
    EXPECT_TRUE(texts.contains(bench->words.caution(rulebook::Gas::NaturalGas, reg::Country::England, {})));
    press(Qt::Key_Escape);
    EXPECT_FALSE(about->isVisible());
}

TEST_F(MainWindowTest, onlyTheDemonstrationFirmHasItsBand) {
    start();
    EXPECT_EQ(window->findChild<QWidget*>(QStringLiteral("demonstrationBand")), nullptr);
    window.reset();
    start(true);
    auto* band = dynamic_cast<Band*>(child<QWidget>(window.get(), "demonstrationBand"));
    ASSERT_NE(band, nullptr);
    EXPECT_EQ(band->text(), QStringLiteral("Demonstration firm: nothing here is real"));
    for (int i = 0; i < 2; ++i) {
        window->showPlace(i);
        EXPECT_TRUE(band->isVisible());
    }
    press(Qt::Key_F12);
    EXPECT_TRUE(band->isVisible()) << "on every screen";
}

TEST_F(MainWindowTest, aStoreHeldByAnotherWindowIsReadOnlyAndSaysWhoHasIt) {
    bench = std::make_unique<FirmBench>();
    const auto second = need(store::Store::open(bench->path(), store::Access::WriteOrRead, bench->clock));
    ASSERT_TRUE(second->isReadOnly());
    auto parts = bench->parts();
    MainWindow other({*second, parts.clock, parts.words, parts.dialogs, parts.printing, parts.issue,
                      parts.scheme, nullptr});
    auto* band = dynamic_cast<Band*>(child<QWidget>(&other, "readOnlyBand"));
    ASSERT_NE(band, nullptr);
    EXPECT_TRUE(band->text().contains(bench->words.error(second->whyReadOnly())));
}

TEST_F(MainWindowTest, startsAVisitTodayWithTheFirstEngineer) {
    start();
    const auto premises = bench->addPremises("4 Millrace");
    window->startVisit(premises);
    const auto visits = need(bench->store->visitsOf(premises));
    ASSERT_EQ(visits.size(), 1U);
    EXPECT_EQ(visits[0].visit.date, bench->clock.today("Europe/London"));
    EXPECT_EQ(visits[0].visit.engineer, bench->engineer.id);
    EXPECT_EQ(places[0]->opened, visits[0].visit.id.text());
}

TEST_F(MainWindowTest, asksWhichInstallationAVisitIsFor) {
    start();
    const auto premises = bench->addPremises("4 Millrace");
    reg::Installation second;
    second.id = {bench->store->newId()};
    second.premises = premises;
    second.gas = rulebook::Gas::Propane;
    need(bench->store->save(second));
    const auto installations = need(bench->store->installations(premises));
    bench->dialogs.answers = {1};
    window->startVisit(premises);
    EXPECT_EQ(need(bench->store->visitsOf(premises)).at(0).visit.installation, installations[1].id);
    bench->dialogs.answers = {-1};
    window->startVisit(premises);
    EXPECT_EQ(need(bench->store->visitsOf(premises)).size(), 1U) << "stepping back starts nothing";
}

TEST_F(MainWindowTest, saysALineThatScreenReadersHear) {
    start();
    window->say(QStringLiteral("Saved as x.pdf"));
    EXPECT_EQ(said(), QStringLiteral("Saved as x.pdf"));
    EXPECT_EQ(child<QLabel>(window.get(), "statusText")->accessibleName(), QStringLiteral("Saved as x.pdf"));
}

TEST_F(MainWindowTest, remembersItsPlaceOnTheScreen) {
    bench = std::make_unique<FirmBench>();
    QSettings settings(QString::fromStdString((bench->folder() / "window.ini").string()),
                       QSettings::IniFormat);
    auto parts = bench->parts();
    parts.settings = &settings;
    const QRect screen = QGuiApplication::primaryScreen()->availableGeometry();
    const QRect somewhere(screen.topLeft() + QPoint(20, 60), QSize(700, 500));
    {
        MainWindow first(parts);
        first.setPlaces({new FirmNamePlace(first.context(), QStringLiteral("First"))});
        first.show();
        first.setGeometry(somewhere);
        QApplication::processEvents();
        first.close();
    }
    MainWindow second(parts);
    EXPECT_EQ(second.geometry(), somewhere);
    settings.setValue(QStringLiteral("window/geometry"), QRect(9000, 9000, 700, 500));
    MainWindow third(parts);
    EXPECT_TRUE(screen.contains(third.geometry().center())) << "a screen that is gone";
}

TEST_F(MainWindowTest, canBeWalkedThroughWithItsPanels) {
    start(true);
    const auto state = [this] { return bench->state(); };
    hearth::testing::expectWalkable(window.get(), state);
    press(Qt::Key_F12);
    hearth::testing::expectWalkable(window.get(), state);
    press(Qt::Key_Escape);
    window->showKeys();
    hearth::testing::expectWalkable(window.get(), state);
    window->showAbout();
    hearth::testing::expectWalkable(window.get(), state);
}

TEST_F(MainWindowTest, fitsASmallScreenInTheLongestLanguage) {
    words::PseudoTranslator pseudo;
    QCoreApplication::installTranslator(&pseudo);
    start(true);
    window->openEmergency(rulebook::Gas::Propane);
    hearth::testing::expectFits(window.get(), {1024, 600});
    window->showKeys();
    hearth::testing::expectFits(window.get(), {1024, 600});
    QCoreApplication::removeTranslator(&pseudo);
}

}  // namespace
}  // namespace hearth::ui::shell
