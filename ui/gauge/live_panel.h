// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/gauge/watch.h"
#include "ui/words/words.h"

#include <QTimer>
#include <QWidget>

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

/// A gauge, live: its figure and how old that is, its plot, what happens while it is watched. Ctrl+Enter
/// begins and ends a recording; a second gauge may be held against the first, and is recorded with it.
class LivePanel : public QWidget {
    Q_OBJECT
    Q_DISABLE_COPY_MOVE(LivePanel)
  public:
    /// `profiles` are the firm's; practice pipes stand behind them. Journals of recordings are kept in
    /// `folder`.
    LivePanel(std::vector<GaugeProfile> profiles, const QString& folder, const Clock& clock,
              const words::Words& words, QWidget* parent);
    ~LivePanel() override;

    /// Ctrl+Enter.
    void toggle();
    /// Whoever heard traceTaken() has kept the trace: its journal goes.
    void traceKept();
    /// Connects to that one of the profiles, practice pipes counted on; -1: to none.
    void choose(int profile);
    void compareWith(int profile);
    void takeFocus();
    [[nodiscard]] const Watch& watch() const { return m_first; }
    [[nodiscard]] const Watch& secondWatch() const { return m_second; }
    [[nodiscard]] const std::vector<GaugeProfile>& profiles() const { return m_profiles; }
    /// Looks at the clock and shows what there is; by a timer.
    void tick();

  Q_SIGNALS:
    /// A recording was ended with at least one reading, or one that was left is taken.
    void traceTaken(const hearth::ui::gauge::TakenTrace& taken);
    void recordingChanged(bool isRecording);

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void addChoices(QVBoxLayout* lines);
    void addFigures(QVBoxLayout* lines);
    void addButtons(QVBoxLayout* lines);
    void begin(Watch& watch, int profile);
    void checkZero();
    /// What is said of that gauge's zero; nothing where it has no reading. It is kept with what is recorded.
    [[nodiscard]] std::optional<tightness::ZeroCheck> lookAtZero(Watch& watch);
    [[nodiscard]] QString zeroText(const Watch& watch,
                                   const std::optional<tightness::ZeroCheck>& check) const;
    void beginRecording();
    void endRecording();
    void discardJournals();
    void showFigure(LiveFigure* shown, const Watch& watch) const;
    void showState();
    void showCompared();
    void showCounts();
    void showPlot();
    [[nodiscard]] QString pressureText(quantity::PressureChange pressure,
                                       quantity::PressureChange step) const;

    std::vector<GaugeProfile> m_profiles;
    QString m_folder;
    const Clock& m_clock;
    const words::Words& m_words;
    Watch m_first;
    Watch m_second;
    QTimer m_ticks;
    int m_tickCount = 0;

    input::Editor* m_gauge = nullptr;
    input::Editor* m_other = nullptr;
    QWidget* m_simulated = nullptr;
    LiveFigure* m_figure = nullptr;
    LiveFigure* m_otherFigure = nullptr;
    shell::Text* m_state = nullptr;
    shell::Text* m_zero = nullptr;
    shell::Text* m_compared = nullptr;
    shell::Text* m_counts = nullptr;
    shell::KeyButton* m_record = nullptr;
    shell::KeyButton* m_zeroButton = nullptr;
    std::vector<shell::KeyButton*> m_marks;
    shell::PlotView* m_plot = nullptr;
    LeftRecordings* m_left = nullptr;
};

}  // namespace hearth::ui::gauge
