// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/due/action_page.h"

namespace hearth::ui::due {

/// Keeps a telephone call: with whom, what was said, what came of it.
class CallPage : public ActionPage {
    Q_OBJECT
  public:
    CallPage(const DueContext& context, QWidget* parent);
    void show(const std::vector<reg::PremisesId>& premises);
    void takeFocus() override;

  private:
    void keep();
    [[nodiscard]] Result<void> log(reg::PartyId party);
    [[nodiscard]] reg::Channel channel() const;
    void showNumber();

    std::vector<reg::PremisesId> m_premises;
    std::vector<Reachable> m_people;
    shell::Fields* m_fields = nullptr;
    input::Editor* m_who = nullptr;
    input::Editor* m_how = nullptr;
    input::Editor* m_number = nullptr;
    input::Editor* m_text = nullptr;
    input::Editor* m_result = nullptr;
    QVBoxLayout* m_whoBox = nullptr;
};

/// Keeps that somebody went and was not let in: who, when, how, what was left, with a photograph.
class NoAccessPage : public ActionPage {
    Q_OBJECT
  public:
    NoAccessPage(const DueContext& context, QWidget* parent);
    void show(const std::vector<reg::PremisesId>& premises);
    void takeFocus() override;

  private:
    void addFields();
    void keep();
    void choosePhotograph();
    [[nodiscard]] std::optional<Instant> when();
    [[nodiscard]] Result<void> keepFor(reg::PremisesId premises, Instant at);

    std::vector<reg::PremisesId> m_premises;
    input::Editor* m_date = nullptr;
    input::Editor* m_time = nullptr;
    input::Editor* m_who = nullptr;
    input::Editor* m_how = nullptr;
    input::Editor* m_left = nullptr;
    input::Editor* m_response = nullptr;
    input::Editor* m_next = nullptr;
    input::Editor* m_nextOn = nullptr;
    shell::Text* m_photographText = nullptr;
    std::optional<store::NewAttachment> m_photograph;
};

/// A picture or paper from a file, made fit to be kept: where it was taken is taken out. Errors:
/// FileUnreadable; those of exchange::readPicture().
[[nodiscard]] Result<store::NewAttachment> paperFrom(const QString& path);

}  // namespace hearth::ui::due
