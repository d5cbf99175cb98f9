// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/overdue_news.h"
#include "ui/shell/place.h"

#include <QHash>
#include <QPointer>
#include <QSettings>
#include <QStackedWidget>
#include <QWidget>

#include <memory>
#include <vector>

class QVBoxLayout;

namespace hearth::ui::shell {

class EmergencyPanel;
class HitsPanel;
class KeysPanel;
class NewsBar;
class Notifying;
class AboutPanel;
class Panel;
class PlaceBar;
class SearchField;
class StatusLine;
class WindowBody;

/// What `app` hands to the window; the window adds itself as Navigator and gives the places a Context.
struct Parts {
    store::Store& store;
    const Clock& clock;
    const words::Words& words;
    Dialogs& dialogs;
    paper::Printing& printing;
    Issue issue;
    look::Scheme scheme = look::Scheme::Light;
    /// Where the window's place on the screen is remembered; none: it is not.
    QSettings* settings = nullptr;
    Restore restore = {};
    BeginMail mail = beginMail;
    Notifying* notifying = nullptr;  // none: the desktop is told nothing
};

/// The window: the bar of places, the bands, the place in view, the line at the foot; what to do first over
/// all of it.
///
///     MainWindow window(parts);
///     window.setPlaces({new VisitsPlace(window.context()), new PremisesPlace(window.context()), …});
///     window.show();
///
/// Not to be shown before setPlaces(). A place's constructor makes no widgets; it builds them on its first
/// refresh(), so that the first paint costs one place.
class MainWindow : public QWidget, public Navigator {
    Q_OBJECT
    Q_DISABLE_COPY_MOVE(MainWindow)
  public:
    explicit MainWindow(const Parts& parts, QWidget* parent = nullptr);
    ~MainWindow() override;

    [[nodiscard]] const Context& context() const { return m_context; }
    /// Takes the places in the order of the bar and shows the first. Called once.
    void setPlaces(const std::vector<Place*>& places);
    [[nodiscard]] Place* placeInView() const;
    void showPlace(int index);
    void showKeys();
    void showAbout();
    /// Commits the field under the cursor, then takes the newest change back.
    void undo();
    /// What turned overdue since somebody last looked; by itself at the start and when a day begins.
    void tellOverdueNews();

    void openPremises(reg::PremisesId id) override;
    void startVisit(reg::PremisesId id) override;
    void openVisit(reg::VisitId id) override;
    void openRecord(store::RecordId id) override;
    void openRule(const rulebook::RuleKey& key) override;
    void openFirm(record::Field field, const std::string& of) override;
    void openEmergency(rulebook::Gas gas) override;
    void say(const QString& sentence) override;

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void closeEvent(QCloseEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void addBands(QVBoxLayout* lines);
    void addSearch();
    void addShortcuts();
    void addShortcut(const QKeySequence& key, const std::function<void()>& act);
    void watchField(QWidget* now);
    void toggleEmergency();
    [[nodiscard]] reg::Country firmCountry() const;
    [[nodiscard]] std::vector<reg::EmergencyContact> emergencyContacts() const;
    void showPanel(Panel* panel);
    void closePanel();
    void searchTyped(const QString& text);
    void findEverything(const QString& text);
    void hideHits();
    void openHit(const store::Hit& hit);
    void connectSearch();
    void bringIntoView(int index);
    void rememberPlaceOnScreen() const;
    void restorePlaceOnScreen();
    /// The place that can open such things, in view; nothing when there is none.
    template <class Opener>
    [[nodiscard]] Opener* bringOpener();
    [[nodiscard]] std::optional<reg::Installation> installationToVisit(reg::PremisesId id);
    /// What is wrong with the backups stands at the foot until it is good again.
    void showBackupTrouble();
    void watchDay();
    void beginDay();
    [[nodiscard]] calendar::Date today() const;
    void hideNews();
    void showOverdueNews();
    void putNewsAway();
    void tellError(const QString& title, const Error& error);

    Parts m_parts;
    BackupRunner* m_backups;
    Context m_context;
    std::vector<Place*> m_places;
    QHash<Place*, QString> m_searches;
    PlaceBar* m_bar = nullptr;
    NewsBar* m_news = nullptr;
    std::optional<OverdueNews> m_overdue;
    calendar::Date m_newsDay = {};  // of which it was told what turned overdue
    SearchField* m_search = nullptr;
    HitsPanel* m_hits = nullptr;
    WindowBody* m_body = nullptr;       // the places in view, or a panel over them
    QStackedWidget* m_stack = nullptr;  // the places
    EmergencyPanel* m_emergency = nullptr;
    KeysPanel* m_keys = nullptr;
    AboutPanel* m_about = nullptr;
    StatusLine* m_status = nullptr;
    QPointer<QWidget> m_focusBefore;
    QPointer<QWidget> m_focusField;  // the text field with the focus, and what stood in it then
    QString m_textBefore;
    QString m_waiting;  // what may go has not been looked through for a year
};

template <class Opener>
Opener* MainWindow::bringOpener() {
    for (std::size_t i = 0; i < m_places.size(); ++i) {
        if (auto* opener = dynamic_cast<Opener*>(m_places[i])) {
            bringIntoView(static_cast<int>(i));
            return opener;
        }
    }
    return nullptr;
}

}  // namespace hearth::ui::shell
