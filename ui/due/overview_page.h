// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/due/action_page.h"

namespace hearth::ui::shell {
class LineList;
}

namespace hearth::ui::due {

/// Deadlines by month: how many are overdue, due, and of these booked. Each bar has its figure.
class MonthBars : public QWidget {
    Q_OBJECT
  public:
    explicit MonthBars(QWidget* parent);
    void show(const std::vector<store::DueMonth>& months);

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    void drawBar(QPainter& painter, const QRectF& slot, const store::DueMonth& month, bool isOverdue,
                 int most) const;
    std::vector<store::DueMonth> m_months;
};

/// The whole of what is due: by month, how deadlines were kept, by landlord. Enter on a landlord shows only
/// theirs.
class OverviewPage : public ActionPage {
    Q_OBJECT
  public:
    OverviewPage(const DueContext& context, QWidget* parent);
    void show();
    void takeFocus() override;

  Q_SIGNALS:
    void landlordChosen(reg::PartyId landlord);

  private:
    void print();
    store::DueOverview m_overview;
    MonthBars* m_bars = nullptr;
    shell::Text* m_kept = nullptr;
    shell::LineList* m_landlords = nullptr;
};

/// An engineer's day: the bookings in an order that makes sense, to be printed.
class DayPage : public ActionPage {
    Q_OBJECT
  public:
    DayPage(const DueContext& context, QWidget* parent);
    void show();
    void takeFocus() override;

  private:
    void look();
    void print();
    [[nodiscard]] calendar::Date day() const;

    std::vector<store::DayStop> m_stops;
    input::Editor* m_date = nullptr;
    input::Editor* m_engineer = nullptr;
    std::vector<input::ChoiceItem> m_engineers;
    shell::LineList* m_list = nullptr;
    shell::KeyButton* m_print = nullptr;
};

}  // namespace hearth::ui::due
