// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/main_window.h"

#include "ui/shell/about_panel.h"
#include "ui/shell/backup_runner.h"
#include "ui/shell/backup_words.h"
#include "ui/shell/band.h"
#include "ui/shell/change_words.h"
#include "ui/shell/emergency_panel.h"
#include "ui/shell/keeping_due.h"
#include "ui/shell/keys_panel.h"
#include "ui/shell/kit.h"
#include "ui/shell/news_bar.h"
#include "ui/shell/openers.h"
#include "ui/shell/place_bar.h"
#include "ui/shell/screen_fit.h"
#include "ui/shell/search_field.h"
#include "ui/shell/status_line.h"
#include "ui/shell/text_size.h"
#include "ui/shell/window_body.h"

#include <QApplication>
#include <QCloseEvent>
#include <QGuiApplication>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QScreen>
#include <QShortcut>
#include <QTextEdit>
#include <QTimer>
#include <QVBoxLayout>

namespace hearth::ui::shell {

namespace {

constexpr QSize kFirstSize{1280, 800};
constexpr QSize kRoomForFrame{16, 48};

/// A long text that was changed has lines of its own: its beginning says which it was.
QString inOneLine(const QString& text) {
    constexpr int kMost = 100;
    const QString line = text.simplified();
    return line.size() <= kMost ? line : line.left(kMost - 1) + QChar(0x2026);
}

/// What stands in a field where text can be typed; nothing for other widgets and for fields that can't be
/// changed.
std::optional<QString> typedText(const QWidget* widget) {
    if (const auto* line = qobject_cast<const QLineEdit*>(widget); line != nullptr && !line->isReadOnly()) {
        return line->text();
    }
    if (const auto* plain = qobject_cast<const QPlainTextEdit*>(widget);
        plain != nullptr && !plain->isReadOnly()) {
        return plain->toPlainText();
    }
    return std::nullopt;
}

}  // namespace

MainWindow::MainWindow(const Parts& parts, QWidget* parent)
    : QWidget(parent),
      m_parts(parts),
      m_backups(new BackupRunner(parts.store, this)),
      m_context{parts.store, parts.clock,  parts.words,   parts.dialogs, *this,     parts.printing,
                parts.issue, parts.scheme, parts.restore, m_backups,     parts.mail},
      m_bar(new PlaceBar(this)),
      m_news(new NewsBar(this)),
      m_body(new WindowBody(this)),
      m_stack(new QStackedWidget(this)),
      m_status(new StatusLine(this)) {
    setObjectName(QStringLiteral("mainWindow"));
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(0);
    lines->addWidget(m_bar);
    addBands(lines);
    lines->addWidget(m_news);
    lines->addWidget(m_body, 1);
    lines->addWidget(m_status);
    m_body->addWidget(m_stack);
    addShortcuts();
    connect(m_bar, &PlaceBar::chosen, this, &MainWindow::showPlace);
    connect(m_news, &NewsBar::shown, this, &MainWindow::showOverdueNews);
    connect(m_news, &NewsBar::putAway, this, &MainWindow::putNewsAway);
    connect(m_status, &StatusLine::undoPressed, this, &MainWindow::undo);
    connect(m_status, &StatusLine::keysPressed, this, &MainWindow::showKeys);
    connect(m_status, &StatusLine::aboutPressed, this, &MainWindow::showAbout);
    connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) { watchField(now); });
    connect(m_backups, &BackupRunner::done, this, &MainWindow::showBackupTrouble);
    m_backups->keepUp();
    QTimer::singleShot(0, this, [this] {  // after the first paint
        m_waiting = keepingDueText(m_parts.store, m_parts.clock);
        showBackupTrouble();
        watchDay();
    });
    restorePlaceOnScreen();
    if (const auto backup = m_parts.store.migrationBackup(); !backup.empty()) {
        say(tr("The store was brought up to this program's version. A copy of the old one is kept: %1")
                .arg(QString::fromStdString(backup.string())));
    }
}

MainWindow::~MainWindow() {
    disconnect(m_backups, nullptr, this, nullptr);
    // The focus still wanders while the places are being deleted, and the members that follow it are gone by
    // then.
    disconnect(qApp, nullptr, this, nullptr);
}

void MainWindow::addBands(QVBoxLayout* lines) {
    const auto firm = m_parts.store.firm();
    if (firm && firm->demonstration) {
        auto* band = new Band(tr("Demonstration firm: nothing here is real"), look::Role::DemoBand,
                              look::Role::OnDemoBand, this);
        band->setObjectName(QStringLiteral("demonstrationBand"));
        lines->addWidget(band);
    }
    if (m_parts.store.isReadOnly()) {
        const QString why = m_parts.words.error(m_parts.store.whyReadOnly());
        auto* band = new Band(tr("Only for reading. %1").arg(why), look::Role::LookAgainGround,
                              look::Role::LookAgain, this);
        band->setObjectName(QStringLiteral("readOnlyBand"));
        lines->addWidget(band);
    }
    const QString name = firm ? words::qstring(firm->name) : QString();
    setWindowTitle(name.isEmpty() ? QStringLiteral("Hearthledger")
                                  : name + QStringLiteral(" – Hearthledger"));
}

void MainWindow::addSearch() {
    m_search = new SearchField(m_bar);
    m_bar->addAtRight(m_search);
    connectSearch();
    auto* first = new KeyButton(tr("What to do first"), ButtonKind::Danger, m_bar);
    first->setObjectName(QStringLiteral("emergencyButton"));
    first->showKey(QStringLiteral("F12"));
    first->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    m_bar->addAtRight(first);
    connect(first, &QPushButton::clicked, this, &MainWindow::toggleEmergency);
}

void MainWindow::addShortcut(const QKeySequence& key, const std::function<void()>& act) {
    auto* shortcut = new QShortcut(key, this);
    shortcut->setAutoRepeat(false);
    connect(shortcut, &QShortcut::activated, this, act);
}

void MainWindow::addShortcuts() {
    addShortcut(Qt::Key_F12, [this] { toggleEmergency(); });
    addShortcut(Qt::CTRL | Qt::Key_F, [this] {
        closePanel();
        m_search->setFocus(Qt::ShortcutFocusReason);
        m_search->selectAll();
    });
    addShortcut(Qt::CTRL | Qt::Key_Z, [this] { undo(); });
    addShortcut(Qt::CTRL | Qt::Key_Q, [this] { close(); });
    for (const auto& [key, by] : {std::pair{Qt::Key_Plus, 1}, std::pair{Qt::Key_Equal, 1},
                                  std::pair{Qt::Key_Minus, -1}, std::pair{Qt::Key_0, 0}}) {
        addShortcut(Qt::CTRL | key, [this, by = by] { say(changeTextPercent(m_parts.settings, by)); });
    }
}

void MainWindow::setPlaces(const std::vector<Place*>& places) {
    m_places = places;
    for (std::size_t i = 0; i < places.size(); ++i) {
        m_bar->addPlace(places[i]->title());
        m_stack->addWidget(places[i]);
        const int index = static_cast<int>(i);
        addShortcut(QKeySequence(QStringLiteral("Ctrl+%1").arg(index + 1)),
                    [this, index] { showPlace(index); });
    }
    addSearch();  // after the tabs, so that Tab comes to it after them
    showPlace(0);
}

Place* MainWindow::placeInView() const {
    const int index = m_stack->currentIndex();
    return index < 0 ? nullptr : m_places[static_cast<std::size_t>(index)];
}

void MainWindow::showPlace(int index) {
    if (!m_waiting.isEmpty()) {  // it may have been looked through where one comes from
        m_waiting = keepingDueText(m_parts.store, m_parts.clock);
        showBackupTrouble();
    }
    bringIntoView(index);
    if (Place* place = placeInView()) {
        place->takeFocus();
    }
}

void MainWindow::bringIntoView(int index) {
    if (index < 0 || index >= static_cast<int>(m_places.size())) {
        return;
    }
    closePanel();
    if (Place* old = placeInView()) {
        old->commit();
        m_searches[old] = m_search->text();
    }
    hideHits();
    Place* place = m_places[static_cast<std::size_t>(index)];
    m_search->setHint(place->searchHint());
    m_search->setText(m_searches.value(place));
    place->refresh();  // before it is shown: what is made later is not in view yet when the focus is wanted
    m_stack->setCurrentIndex(index);
    m_bar->setCurrent(index);
}

void MainWindow::openPremises(reg::PremisesId id) {
    if (auto* opener = bringOpener<PremisesOpener>()) {
        opener->openPremises(id);
    }
}

void MainWindow::openVisit(reg::VisitId id) {
    if (auto* opener = bringOpener<VisitOpener>()) {
        opener->openVisit(id);
    }
}

void MainWindow::openRecord(store::RecordId id) {
    if (auto* opener = bringOpener<RecordOpener>()) {
        opener->openRecord(id);
    }
}

void MainWindow::openRule(const rulebook::RuleKey& key) {
    if (auto* opener = bringOpener<RuleOpener>()) {
        opener->openRule(key);
    }
}

void MainWindow::openFirm(record::Field field, const std::string& of) {
    if (auto* opener = bringOpener<FirmOpener>()) {
        opener->openFirm(field, of);
    }
}

void MainWindow::showBackupTrouble() {
    const auto state = m_parts.store.backupState();
    const QString trouble = state ? backupTroubleText(m_parts.words, *state) : QString();
    if (trouble.isEmpty()) {
        m_status->setStanding(m_waiting, StatusLine::Standing::Reminder);
    } else {
        m_status->setStanding(trouble);
    }
}

void MainWindow::tellError(const QString& title, const Error& error) {
    m_parts.dialogs.tell(this, title, m_parts.words.error(error));
}

std::optional<reg::Installation> MainWindow::installationToVisit(reg::PremisesId id) {
    const auto installations = m_parts.store.installations(id);
    if (!installations) {
        tellError(tr("The visit was not started"), installations.error());
        return std::nullopt;
    }
    if (installations->empty()) {
        m_parts.dialogs.tell(
            this, tr("The visit was not started"),
            tr("These premises have no gas installation yet. Add one under Premises first."));
        return std::nullopt;
    }
    int chosen = 0;
    if (installations->size() > 1) {
        QStringList answers;
        for (const auto& installation : *installations) {
            answers << QStringLiteral("%1 · %2").arg(m_parts.words.gas(installation.gas),
                                                     words::qstring(installation.meterPlace));
        }
        chosen = m_parts.dialogs.ask(this, tr("Which installation?"),
                                     tr("These premises have more than one. The visit is for:"), answers, 0);
    }
    return chosen < 0 ? std::nullopt : std::optional((*installations)[static_cast<std::size_t>(chosen)]);
}

void MainWindow::startVisit(reg::PremisesId id) {
    const auto installation = installationToVisit(id);
    if (!installation) {
        return;
    }
    reg::Visit visit;
    visit.id = reg::VisitId{m_parts.store.newId()};
    visit.premises = id;
    visit.installation = installation->id;
    visit.date = m_parts.clock.today();
    visit.startedAt = m_parts.clock.now();
    if (const auto engineers = m_parts.store.engineers(); engineers && !engineers->empty()) {
        visit.engineer = engineers->front().id;
    }
    const auto started = m_parts.store.startVisit(visit);
    if (!started) {
        tellError(tr("The visit was not started"), started.error());
        return;
    }
    openVisit(*started);
}

void MainWindow::say(const QString& sentence) {
    m_status->say(sentence);
}

void MainWindow::undo() {
    Place* place = placeInView();
    if (place != nullptr) {
        place->commit();
        if (place->takeBack()) {
            watchField(QApplication::focusWidget());
            return;
        }
    }
    const auto undone = m_parts.store.undo();
    if (!undone) {
        say(m_parts.words.error(undone.error()));
        return;
    }
    if (!*undone) {
        say(tr("Nothing to take back since the window was opened."));
        return;
    }
    if (place != nullptr) {
        place->refresh();
        watchField(QApplication::focusWidget());
    }
    say(tr("Taken back. %1").arg(inOneLine(changeSentence(m_parts.words, **undone))));
}

void MainWindow::showPanel(Panel* panel) {
    if (m_body->currentWidget() == m_stack) {
        m_focusBefore = QApplication::focusWidget();
    }
    if (m_body->indexOf(panel) < 0) {
        m_body->addWidget(panel);
        connect(panel, &Panel::closed, this, &MainWindow::closePanel);
    }
    m_body->setCurrentWidget(panel);
    panel->takeFocus();
}

void MainWindow::closePanel() {
    if (m_body->currentWidget() == m_stack) {
        return;
    }
    m_body->setCurrentWidget(m_stack);
    if (m_focusBefore != nullptr && m_focusBefore->isVisible()) {
        m_focusBefore->setFocus(Qt::OtherFocusReason);
    } else if (Place* place = placeInView()) {
        place->takeFocus();
    }
}

reg::Country MainWindow::firmCountry() const {
    const auto firm = m_parts.store.firm();
    return firm ? firm->country : reg::Country::England;
}

std::vector<reg::EmergencyContact> MainWindow::emergencyContacts() const {
    // What to do first is shown whatever the store says.
    return m_parts.store.emergencyContacts().value_or(std::vector<reg::EmergencyContact>());
}

void MainWindow::openEmergency(rulebook::Gas gas) {
    if (m_emergency == nullptr) {
        m_emergency = new EmergencyPanel(m_parts.words, this);
    }
    const Place* place = placeInView();
    const auto country = place != nullptr ? place->country() : std::nullopt;
    m_emergency->open(gas, country.value_or(firmCountry()), emergencyContacts());
    showPanel(m_emergency);
}

void MainWindow::toggleEmergency() {
    if (m_emergency != nullptr && m_body->currentWidget() == m_emergency) {
        closePanel();
        return;
    }
    const Place* place = placeInView();
    openEmergency(place != nullptr ? place->gas() : rulebook::Gas::NaturalGas);
}

void MainWindow::showKeys() {
    if (m_keys == nullptr) {
        QStringList titles;
        for (const Place* place : m_places) {
            titles << place->title();
        }
        m_keys = new KeysPanel(titles, this);
    }
    showPanel(m_keys);
}

void MainWindow::showAbout() {
    if (m_about == nullptr) {
        m_about = new AboutPanel(QString::fromStdString(m_parts.store.path().string()), this);
    }
    m_about->showCaution(
        m_parts.words.caution(rulebook::Gas::NaturalGas, firmCountry(), emergencyContacts()));
    showPanel(m_about);
}

void MainWindow::keyPressEvent(QKeyEvent* event) {
    // Here, and not as a shortcut: a finding's own F1 comes first.
    if (event->key() == Qt::Key_F1) {
        showKeys();
        return;
    }
    // From the foot or the bar of places back to the page, where a second one does what it does there.
    const auto* focus = QApplication::focusWidget();
    auto* place = placeInView();
    if (event->key() == Qt::Key_Escape && place != nullptr && focus != nullptr && isAncestorOf(focus) &&
        !place->isAncestorOf(focus)) {
        closePanel();
        place->takeFocus();
        return;
    }
    QWidget::keyPressEvent(event);
}

void MainWindow::watchField(QWidget* now) {
    if (m_focusField != nullptr) {
        m_focusField->removeEventFilter(this);
    }
    const auto text = now != nullptr && isAncestorOf(now) ? typedText(now) : std::nullopt;
    m_focusField = text ? now : nullptr;
    m_textBefore = text.value_or(QString());
    if (m_focusField != nullptr) {
        m_focusField->installEventFilter(this);
    }
}

bool MainWindow::eventFilter(QObject* watched, QEvent* event) {
    // A field takes Ctrl+Z for itself even when nothing was typed in it since it was entered. Then it is the
    // window's.
    if (watched == m_focusField && event->type() == QEvent::ShortcutOverride) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->matches(QKeySequence::Undo) && typedText(m_focusField) == m_textBefore) {
            event->ignore();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

void MainWindow::closeEvent(QCloseEvent* event) {
    if (Place* place = placeInView()) {
        place->commit();
    }
    rememberPlaceOnScreen();
    event->accept();
}

void MainWindow::rememberPlaceOnScreen() const {
    if (m_parts.settings == nullptr) {
        return;
    }
    m_parts.settings->setValue(QStringLiteral("window/geometry"), normalGeometry());
    m_parts.settings->setValue(QStringLiteral("window/maximized"), isMaximized());
}

void MainWindow::restorePlaceOnScreen() {
    QList<QRect> screens;
    for (const QScreen* screen : QGuiApplication::screens()) {
        screens << screen->availableGeometry();
    }
    const QRect remembered = m_parts.settings == nullptr
                                 ? QRect()
                                 : m_parts.settings->value(QStringLiteral("window/geometry")).toRect();
    if (!remembered.isValid()) {
        // The frame that the desktop puts round the window is not known yet.
        resize(screens.isEmpty() ? kFirstSize : kFirstSize.boundedTo(screens.first().size() - kRoomForFrame));
        return;
    }
    setGeometry(onScreens(remembered, screens));
    if (m_parts.settings->value(QStringLiteral("window/maximized")).toBool()) {
        setWindowState(windowState() | Qt::WindowMaximized);
    }
}

}  // namespace hearth::ui::shell
