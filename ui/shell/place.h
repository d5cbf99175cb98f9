// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/store/store.h"
#include "ui/look/look.h"
#include "ui/paper/paper.h"
#include "ui/shell/dialogs.h"
#include "ui/shell/mail.h"
#include "ui/words/words.h"

#include <QString>
#include <QWidget>

#include <filesystem>
#include <functional>
#include <optional>
#include <utility>

/// What a place may know of the window around it. Places never know each other: they ask the Navigator.
namespace hearth::ui::shell {

/// Going somewhere else in the window.
class Navigator {
  public:
    virtual ~Navigator() = default;
    virtual void openPremises(reg::PremisesId id) = 0;
    /// Starts a visit there (today, first engineer) and opens it.
    virtual void startVisit(reg::PremisesId id) = 0;
    virtual void openVisit(reg::VisitId id) = 0;
    virtual void openRecord(store::RecordId id) = 0;
    /// Opens the rule book at an entry.
    virtual void openRule(const rulebook::RuleKey& key) = 0;
    /// Opens the firm's own pages at what a record lacks; `of`: the engineer's or instrument's id, else
    /// empty.
    virtual void openFirm(record::Field field, const std::string& of) = 0;
    /// Opens what to do first (F12), with the gas of what is on screen.
    virtual void openEmergency(rulebook::Gas gas) = 0;
    /// A line at the foot of the window for some seconds ("Saved as …"); also told to screen readers.
    virtual void say(const QString& sentence) = 0;
};

/// Issues a record of a visit: words it, has the store number and keep it, gives its id. One road for window
/// and command line. (app makes it; see app/issue.h)
class Issue {
  public:
    using Road = std::function<Result<store::RecordId>(
        reg::VisitId visit, std::optional<store::RecordId> supersedes, const QString& reason,
        std::optional<record::RecordKind> kind, const QString& language)>;
    explicit Issue(Road road) : m_road(std::move(road)) {}

    /// `kind`: which of those that the visit can issue; nothing: that of the record that is superseded, else
    /// the visit's first. `language`: one of record::recordLanguages(); empty: that of the record that is
    /// superseded, else what whoever receives it prefers.
    [[nodiscard]] Result<store::RecordId> operator()(reg::VisitId visit,
                                                     std::optional<store::RecordId> supersedes,
                                                     const QString& reason,
                                                     std::optional<record::RecordKind> kind = std::nullopt,
                                                     const QString& language = {}) const {
        return m_road(visit, supersedes, reason, kind, language);
    }

  private:
    Road m_road;
};

/// Puts a backup in the place of the open store: the window is closed, the store too, and what stands then is
/// opened anew. (app makes it)
using Restore = std::function<void(const std::filesystem::path& backup, const std::string& passphrase)>;

class BackupRunner;

struct Context {
    store::Store& store;
    const Clock& clock;
    const words::Words& words;
    Dialogs& dialogs;
    Navigator& navigator;
    paper::Printing& printing;
    Issue issue;
    look::Scheme scheme = look::Scheme::Light;
    Restore restore = {};
    BackupRunner* backups = nullptr;  // the window's
    BeginMail mail = beginMail;
};

/// One place of the window: Visits, Premises, Records, Rule book, Firm, Workings. Its constructor makes no
/// widgets: it builds them on the first refresh(), so that the window's first paint costs one place.
class Place : public QWidget {
    Q_OBJECT
  public:
    explicit Place(QWidget* parent = nullptr) : QWidget(parent) {}
    [[nodiscard]] virtual QString title() const = 0;
    /// Reads again what it shows; called when the place comes into view and after undo.
    virtual void refresh() = 0;
    /// Commits the field under the cursor; called before leaving, closing or undoing.
    virtual void commit() {}
    /// Takes back the newest change that only the place itself knows; false: there is none, and the store's
    /// newest is meant.
    virtual bool takeBack() { return false; }
    /// Where the keyboard starts.
    virtual void takeFocus() = 0;
    /// The gas of what is on screen, for what to do first.
    [[nodiscard]] virtual rulebook::Gas gas() const { return rulebook::Gas::NaturalGas; }
    /// The country of the premises on screen, for whom to ring; nothing: the firm's own.
    [[nodiscard]] virtual std::optional<reg::Country> country() const { return std::nullopt; }
    /// The window's search (Ctrl+F) was used here: comes with every letter typed.
    virtual void search(const QString& text) = 0;
    /// What the search field says while it is empty ("Find premises").
    [[nodiscard]] virtual QString searchHint() const { return {}; }
    /// Whether the search field also finds people, premises, visits and records while this place is in view.
    [[nodiscard]] virtual bool findsEverything() const { return true; }
    /// Down or Enter in the search field: the keyboard goes to what was found.
    virtual void takeFound() { takeFocus(); }
};

}  // namespace hearth::ui::shell
