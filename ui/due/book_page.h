// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/due/action_page.h"
#include "ui/shell/line_list.h"

namespace hearth::ui::due {

/// Books one premises, or several one after the other: day, times, engineer. Says at once what stands against
/// it, whether the engineer's card and categories reach that far, and what a check on that day would do to
/// the deadlines.
class BookPage : public ActionPage {
    Q_OBJECT
  public:
    BookPage(const DueContext& context, QWidget* parent);
    void show(const std::vector<reg::PremisesId>& premises);
    void takeFocus() override;

  private:
    void addFields();
    void look();
    void book();
    void move();
    void cancelBooking();
    /// What the fields say, for each premises; nothing, and the field says why, where they can't be read.
    [[nodiscard]] std::optional<std::vector<reg::Booking>> bookings();
    [[nodiscard]] std::optional<calendar::Date> day() const;
    [[nodiscard]] std::optional<int> minutesEach();
    void showDoubts(const std::vector<reg::Booking>& bookings);
    [[nodiscard]] QString clashesOf(const std::vector<reg::Booking>& bookings) const;
    [[nodiscard]] QString whatIf(calendar::Date day) const;

    std::vector<reg::PremisesId> m_premises;
    std::optional<store::DueBooking> m_there;
    input::Editor* m_date = nullptr;
    input::Editor* m_from = nullptr;
    input::Editor* m_until = nullptr;
    input::Editor* m_each = nullptr;
    input::Editor* m_engineer = nullptr;
    input::Editor* m_note = nullptr;
    shell::Text* m_whatIf = nullptr;
    shell::Text* m_clashes = nullptr;
    shell::Text* m_doubtsHead = nullptr;
    shell::LineList* m_doubts = nullptr;
    shell::KeyButton* m_book = nullptr;
    shell::KeyButton* m_cancel = nullptr;
};

/// A time as kept: "9" and "9:30" are "09:00" and "09:30", nothing typed is empty; nothing for what is none.
[[nodiscard]] std::optional<std::string> timeTyped(const QString& text);
/// "09:30" and so many minutes: "10:15"; nothing beyond the day, or where the time can't be read.
[[nodiscard]] std::optional<std::string> timeAfter(const std::string& from, int minutes);

}  // namespace hearth::ui::due
