// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/due/action_page.h"
#include "ui/due/reminder_letter.h"

namespace hearth::ui::shell {
class LineList;
}

namespace hearth::ui::due {

/// Reminders that fall due by the firm's cadence, or for premises that were chosen: as letters in one PDF or
/// on paper, in the order of the addresses, and as mails in the desktop's mail program. Those that nobody can
/// or may be sent are shown, with why. Where a visit is booked nobody is reminded, unless that is asked for.
/// What goes out is kept word for word.
class RemindPage : public ActionPage {
    Q_OBJECT
  public:
    RemindPage(const DueContext& context, QWidget* parent);
    /// Of these, whatever the cadence says.
    void showFor(const std::vector<reg::PremisesId>& premises);
    /// Of all that the filter finds, as far as they fall due today.
    void showDue(const store::DueFilter& filter);
    void takeFocus() override;

  private:
    void take(const Result<std::vector<store::Reminder>>& found, const QString& below);
    void fill();
    void setCadence();
    void writePdf();
    void print();
    void mail();
    [[nodiscard]] std::vector<store::Reminder> going(reg::Channel channel) const;
    /// In words, each; nothing, and that was told, where one can't be.
    [[nodiscard]] std::optional<std::vector<WordedReminder>> worded(
        const std::vector<store::Reminder>& reminders);
    [[nodiscard]] Result<void> keep(const std::vector<store::Reminder>& sent,
                                    const std::vector<WordedReminder>& texts);
    void keepLetters(const std::vector<store::Reminder>& letters, const std::vector<WordedReminder>& texts,
                     const QString& how);

    std::vector<store::Reminder> m_found;
    std::vector<store::Reminder> m_reminders;  // of those found: without the booked, unless asked for
    QString m_below;
    bool m_withBooked = false;
    store::DueFilter m_filter;
    bool m_byCadence = false;
    shell::LineList* m_list = nullptr;
    input::Editor* m_cadence = nullptr;
    shell::KeyButton* m_pdf = nullptr;
    shell::KeyButton* m_print = nullptr;
    shell::KeyButton* m_mail = nullptr;
    shell::KeyButton* m_booked = nullptr;
};

}  // namespace hearth::ui::due
