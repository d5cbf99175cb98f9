// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/line_pattern.h"
#include "ui/gauge/syncing.h"
#include "ui/gauge/taken.h"

#include <QByteArray>
#include <QFile>
#include <QLockFile>
#include <QString>

#include <memory>
#include <vector>

/// A recording on the disk while it goes on, so that a machine that fails leaves it to within a second.
namespace hearth::ui::gauge {

/// Lines of text, each whole or not counted:
///
///     hearthledger gauge journal 1
///     name N  kind K  began I  unit U  resolution T
///     r MILLISECONDS VALUE UNIT [VALUE UNIT]    a reading, as the gauge gave it
///     g MILLISECONDS                            the connection was lost
///     e MILLISECONDS EVENT                      something happened
///     p MILLISECONDS PLACE                      where a probe for carbon monoxide is from then on
///     z VALUE UNIT STEP UNIT AT yes|no          open to the air it read that; whether that is nought
///     beside FILE                               of a second gauge: the first one's journal
///     end                                       it was stopped by a person
class Journal {
  public:
    /// A new file in `folder`, which is made where it is missing. Nothing when it can't be written.
    /// `beside`: the name of the journal whose recording this one goes with. `sync`: see Syncing.
    [[nodiscard]] static std::unique_ptr<Journal> begin(const QString& folder, const TraceOrigin& origin,
                                                        const QString& beside = {}, Syncing::Sync sync = {});
    Journal(const Journal&) = delete;
    Journal& operator=(const Journal&) = delete;
    ~Journal();

    void reading(std::chrono::milliseconds at, const exchange::LineReading& line);
    void gap(std::chrono::milliseconds at);
    void mark(const GaugeMark& mark);
    void place(std::chrono::milliseconds at, air::CoPlace place);
    void zero(const reg::TraceZero& zero);
    void end();
    /// Hands what was noted since the last time to the system, and asks it to put that onto the disk without
    /// waiting. False when it can't be written, or could not be put there the last time; it is tried again
    /// with the next.
    bool flush();
    /// What is on the disk.
    [[nodiscard]] const Syncing& syncing() const { return *m_syncing; }
    [[nodiscard]] QString path() const { return m_file.fileName(); }
    /// Takes the file away: what it holds is kept elsewhere, or is not wanted.
    void discard();

  private:
    explicit Journal(const QString& path);

    QFile m_file;
    QLockFile m_lock;
    QByteArray m_pending;
    std::unique_ptr<Syncing> m_syncing;
};

/// What a journal holds.
struct JournalRead {
    TakenTrace taken;
    bool isEnded = false;  // by a person
    QString beside;        // the name of the journal whose recording it goes with
};

/// Nothing for a file that is no journal or holds no reading. Lines that can't be read are left out; so is a
/// last one without its end.
[[nodiscard]] std::optional<JournalRead> readJournal(const QString& path);

/// The journals of a folder that nobody is writing, the newest first.
[[nodiscard]] std::vector<QString> leftJournals(const QString& folder);

/// A recording that was left, with what a second gauge saw beside it.
struct LeftRecording {
    std::vector<QString> paths;  // its journal, and that of the second gauge
    TakenTrace taken;
};

/// The recordings of a folder that nobody is writing, the newest first, `most` at most: of pressures, or of
/// carbon monoxide. A second gauge's whose first has none stands by itself.
[[nodiscard]] std::vector<LeftRecording> leftRecordings(const QString& folder, bool ofAir, std::size_t most);

/// Takes away a journal that was left.
void discardJournal(const QString& path);

}  // namespace hearth::ui::gauge
