// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/record/plot.h"
#include "ui/gauge/watch.h"
#include "ui/words/words.h"

#include <QTimer>
#include <QWidget>

#include <optional>
#include <vector>

class QVBoxLayout;

namespace hearth::ui::input {
class Editor;
}
namespace hearth::ui::shell {
class KeyButton;
class PlotView;
class Text;
}  // namespace hearth::ui::shell

namespace hearth::ui::gauge {

class LeftRecordings;
class LiveFigure;

/// What the rule book says of levels: never a number of the panel's own.
struct AirLevels {
    quantity::Share dangerFrom;             // from here on everybody leaves
    std::vector<record::PlotLimit> limits;  // worded, for the plot
    bool operator==(const AirLevels&) const = default;
};

/// A reading that somebody took at a chosen moment.
struct AirTaken {
    TraceOrigin origin;  // of the watch that it belongs to
    quantity::Decimal ppm;
    air::CoPlace place = air::CoPlace::Room;
    Instant at{};
};

/// The highest dangerous level that was seen, of rooms and of practice apart: practice takes back, and adds
/// to, nothing that was seen in a room.
struct AirDanger {
    std::optional<quantity::Share> seen = {};
    std::optional<quantity::Share> practice = {};
    bool operator==(const AirDanger&) const = default;
    [[nodiscard]] bool isThere() const { return seen || practice; }
    [[nodiscard]] std::optional<quantity::Share>& of(bool isSimulated) {
        return isSimulated ? practice : seen;
    }
};

/// Carbon monoxide in a room, watched from outside of it: the level and how old that is, its plot against the
/// rule book's levels. Ctrl+Enter begins and ends the watch; one key takes a reading. Once a level was
/// dangerous it says so, whatever comes after, until another watch begins at a level that is not.
class AirPanel : public QWidget {
    Q_OBJECT
    Q_DISABLE_COPY_MOVE(AirPanel)
  public:
    /// `profiles` are the firm's; practice rooms stand behind them. Journals are kept in `folder`.
    AirPanel(std::vector<GaugeProfile> profiles, AirLevels levels, const QString& folder, const Clock& clock,
             const words::Words& words, QWidget* parent);
    ~AirPanel() override;

    /// Ctrl+Enter.
    void toggle();
    void takeReading();
    /// Whoever heard watched() has kept it: its journal goes.
    void kept();
    /// Connects to that one of the profiles, practice rooms counted on; -1: to none.
    void choose(int profile);
    /// The rule book's, or the day's, have changed.
    void setLevels(AirLevels levels);
    void takeFocus();
    [[nodiscard]] const Watch& watch() const { return m_watch; }
    [[nodiscard]] const std::vector<GaugeProfile>& profiles() const { return m_profiles; }
    /// A level since the watch began was dangerous.
    [[nodiscard]] bool isDanger() const { return m_danger.isThere(); }
    [[nodiscard]] const AirDanger& danger() const { return m_danger; }
    /// What a panel before this one saw.
    void setDanger(const AirDanger& danger);
    /// Looks at the clock and shows what there is; by a timer.
    void tick();

  Q_SIGNALS:
    void taken(const hearth::ui::gauge::AirTaken& reading);
    /// A watch was ended with at least one reading, or one that was left is taken.
    void watched(const hearth::ui::gauge::TakenTrace& taken);
    void recordingChanged(bool isRecording);
    void dangerChanged(bool isDanger);

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void addChoices(QVBoxLayout* lines);
    void addTexts(QVBoxLayout* lines);
    void addButtons(QVBoxLayout* lines);
    [[nodiscard]] std::optional<air::CoPlace> placeSaid();
    /// The level that came last; nothing for none, or one in another unit.
    [[nodiscard]] std::optional<quantity::Share> level() const;
    bool begin();
    void hear();
    [[nodiscard]] bool isPractice() const;
    void setDangerOf(bool isSimulated, std::optional<quantity::Share> highest);
    void say(const QString& sentence);
    void showFigure();
    void showState();
    void showDanger();
    void showCounts();
    void showPlot();
    [[nodiscard]] QString ppm(quantity::Share share) const;

    std::vector<GaugeProfile> m_profiles;
    AirLevels m_levels;
    QString m_folder;
    const Clock& m_clock;
    const words::Words& m_words;
    Watch m_watch;
    AirDanger m_danger;
    QTimer m_ticks;
    int m_tickCount = 0;

    input::Editor* m_gauge = nullptr;
    input::Editor* m_place = nullptr;
    QWidget* m_simulated = nullptr;
    LiveFigure* m_figure = nullptr;
    shell::Text* m_dangerText = nullptr;
    shell::Text* m_state = nullptr;
    shell::Text* m_said = nullptr;
    shell::Text* m_counts = nullptr;
    shell::KeyButton* m_record = nullptr;
    shell::KeyButton* m_take = nullptr;
    shell::PlotView* m_plot = nullptr;
    LeftRecordings* m_left = nullptr;
};

}  // namespace hearth::ui::gauge
