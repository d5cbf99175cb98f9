// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/duties.h"
#include "ui/due/action_page.h"
#include "ui/shell/beside.h"

namespace hearth::ui::shell {
class LineList;
}

namespace hearth::ui::due {

/// What is to be done beside the checks, or runs out: each with its day, why, and where that is written. A
/// large firm has many: they are read beside the work. What is handed over is logged here, to whom, when and
/// how; for the rest Enter leads to where it is entered.
class DutiesPage : public ActionPage {
    Q_OBJECT
  public:
    DutiesPage(const DueContext& context, QWidget* parent);
    void show();
    void takeFocus() override;
    [[nodiscard]] bool isReading() const { return m_reading.isBusy(); }
    [[nodiscard]] const std::vector<store::DutyLine>& duties() const { return m_duties; }

  private:
    void read();
    void take(const Result<std::vector<store::DutyLine>>& open);
    void fill(const QString& head, const QString& below);
    void pointAt(int row);
    void offerWhom(const store::DutyLine& line);
    void open(int row);
    void keep();
    [[nodiscard]] const store::DutyLine* chosen() const;
    [[nodiscard]] std::optional<Instant> handedAt();

    std::vector<store::DutyLine> m_duties;
    shell::Beside<std::vector<store::DutyLine>> m_reading;
    shell::LineList* m_list;
    shell::Text* m_why;
    QWidget* m_log = nullptr;
    QVBoxLayout* m_whomBox = nullptr;
    input::Editor* m_whom = nullptr;
    input::Editor* m_how = nullptr;
    input::Editor* m_on = nullptr;
    input::Editor* m_note = nullptr;
    shell::KeyButton* m_keep = nullptr;
};

}  // namespace hearth::ui::due
