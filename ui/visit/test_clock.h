// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/visit/sheet_field.h"
#include "ui/visit/stage_strip.h"
#include "ui/visit/stage_timer.h"

#include <QTimer>
#include <QWidget>

#include <functional>
#include <set>

namespace hearth::ui::shell {
class KeyButton;
class Text;
}  // namespace hearth::ui::shell

namespace hearth::ui::visit {

class ClockFace;

/// The timed test: stages as a strip, the time left as a large figure, one key that starts and stops. Writes
/// the times of day into the sheet's entries, so that a test goes on after the program was ended in its
/// middle.
class TestClock : public QWidget {
    Q_OBJECT
  public:
    TestClock(const SheetContext& context, std::size_t test, QWidget* parent);

    /// After judging: what is done, what comes next.
    void refresh();
    /// After the file was read: takes up a stage that was left running.
    void takeUp();
    /// Ctrl+Enter: ends the running stage, or starts the one that comes next.
    void toggle();
    /// While the stage's time is up, the first key in its end reading ends it: that is when the gauge was
    /// read.
    void endReadingBegun(Stage stage);

    [[nodiscard]] std::optional<Stage> running() const { return m_timer.running(); }
    [[nodiscard]] bool isDue() const { return m_timer.isDue(); }
    /// The stage that the key starts; nothing while one runs, or when let-by forbids to go on.
    [[nodiscard]] std::optional<Stage> next() const;
    /// Looks at the clock; by a timer while a stage runs.
    void tick();
    /// Rings; the machine's own bell unless a test listens.
    void setBell(std::function<void()> bell) { m_bell = std::move(bell); }
    [[nodiscard]] QString figure() const;

  Q_SIGNALS:
    /// A stage began or ended, or its time is up: where the keyboard goes now.
    void readingWanted(hearth::reg::Item item);
    /// All stages are done: on to purge and restore.
    void restoreWanted();
    void runningChanged();
    /// A sentence for the line at the foot of the window.
    void said(const QString& sentence);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    /// The reading that a digit typed beside the fields is meant for: the next that is not there yet.
    [[nodiscard]] std::optional<reg::Item> nextReading() const;
    void start(Stage stage);
    void stop();
    [[nodiscard]] bool mayStartAgain(Stage stage);
    void keepTime(reg::Item item, Instant at);
    [[nodiscard]] bool isDone(Stage stage) const;
    [[nodiscard]] bool has(reg::Item item) const;
    [[nodiscard]] std::vector<Stage> stages() const;
    [[nodiscard]] bool isLetByFound() const;
    [[nodiscard]] const reg::Test& test() const;
    void showFace();
    void showIdleFace(std::optional<Stage> stage);
    void showReading();
    void showButton();
    void showStrip();
    [[nodiscard]] QString adviceFor(Stage stage) const;
    [[nodiscard]] QString band(rulebook::Rule rule) const;

    SheetContext m_context;
    std::size_t m_test;
    StageTimer m_timer;
    QTimer m_ticks;
    std::function<void()> m_bell;
    std::optional<Stage> m_chosen;  // by a person, in place of what comes next
    bool m_isRaised = false;        // the raise of this session was ended
    StageStrip* m_strip;
    ClockFace* m_face;
    ClockFace* m_reading;
    shell::KeyButton* m_button;
    shell::Text* m_advice;
    shell::Text* m_refused;
};

}  // namespace hearth::ui::visit
