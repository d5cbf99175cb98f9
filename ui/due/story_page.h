// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/due/action_bar.h"
#include "ui/due/action_page.h"
#include "ui/due/strip.h"

namespace hearth::ui::shell {
class LineList;
}

namespace hearth::ui::due {

/// What happened and is to happen at premises, on one line. Left and Right move it, + and - zoom; the event
/// that is chosen in the list below is named on it.
class StoryLine : public QWidget {
    Q_OBJECT
  public:
    explicit StoryLine(const words::Words& words, QWidget* parent);
    void show(const std::vector<store::StoryEvent>& events, const store::DueLine& line, calendar::Date today);
    void point(std::optional<std::size_t> event);
    [[nodiscard]] const TimeScale& scale() const { return m_scale; }
    [[nodiscard]] QSize sizeHint() const override { return {600, 92}; }

  protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

  private:
    void drawEvents(QPainter& painter, const QRectF& band, const TimeScale& scale) const;
    void drawPointed(QPainter& painter, const QRectF& band, const TimeScale& scale) const;
    [[nodiscard]] TimeScale placed() const;

    const words::Words& m_words;
    std::vector<store::StoryEvent> m_events;
    store::DueLine m_line;
    calendar::Date m_today{};
    TimeScale m_scale;
    std::optional<std::size_t> m_pointed;
};

/// One premises: its story, why the deadline is what it is, and the next step.
class StoryPage : public ActionPage {
    Q_OBJECT
  public:
    StoryPage(const DueContext& context, QWidget* parent);
    /// False: it is not there any more, and that was told.
    bool show(reg::PremisesId premises);
    void takeFocus() override;
    [[nodiscard]] reg::PremisesId premises() const { return m_premises; }

  Q_SIGNALS:
    void asked(Action action);

  private:
    void fillStory();
    void fillReasons(const store::DueFile& file);
    void openEvent(int row);
    [[nodiscard]] QString itemReason(const store::DueItem& item, bool first) const;

    reg::PremisesId m_premises;
    std::vector<store::StoryEvent> m_events;
    shell::KeyButton* m_next = nullptr;
    Action m_nextAction = Action::Book;
    StoryLine* m_line = nullptr;
    shell::LineList* m_list = nullptr;
    shell::Text* m_reasons = nullptr;
};

/// What the next step is done with.
[[nodiscard]] Action actionOf(calendar::NextStep step);

}  // namespace hearth::ui::due
