// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/input/text_editors.h"

#include <optional>

namespace hearth::ui::input {

/// A civil date. Shown with the month in letters and four digits of the year, so that nobody wonders which is
/// the month; kept as ISO. What can't be read stays as typed. Alt+Down opens a calendar.
class DateEditor : public LineEditor {
    Q_OBJECT
  public:
    DateEditor(QWidget* parent, Today today);
    [[nodiscard]] QString text() const override;
    void setText(const QString& text) override;

  protected:
    void settle() override;
    void showText(const QString& text) override;
    [[nodiscard]] QString hint() const override;
    [[nodiscard]] QString shownAs(const QString& text) const override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void offerCalendar();

    Today m_today;
    QString m_iso;    // of what is shown; empty when that can't be read
    QString m_shown;  // the text that m_iso belongs to
};

/// A time of day, "09:46"; "946" and "9.46" are understood, "n" is now.
class TimeEditor : public LineEditor {
    Q_OBJECT
  public:
    TimeEditor(QWidget* parent, Now now);

  protected:
    void settle() override;
    [[nodiscard]] QString hint() const override;

  private:
    Now m_now;
};

/// "946", "9:46", "09.46", "n" to "09:46"; seconds are kept where they were typed. Nothing when it can't be
/// read.
[[nodiscard]] std::optional<QString> timeText(const QString& typed, const Now& now);

}  // namespace hearth::ui::input
