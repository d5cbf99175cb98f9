// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "ui/shell/kit.h"
#include "ui/shell/set_up.h"

#include <QWidget>

namespace hearth::ui::shell {

class RuleAnswer;

/// One page of the set-up of a firm.
class SetUpPage : public QWidget {
    Q_OBJECT
  public:
    explicit SetUpPage(QWidget* parent) : QWidget(parent) {}
    virtual void takeFocus() = 0;
    /// False when something on the page has to be put right first: it is said there, and has the focus.
    [[nodiscard]] virtual bool isUsable() = 0;
    virtual void addTo(SetUp& setUp) = 0;
};

/// The firm: name, address, registration, telephone, country.
class FirmPage : public SetUpPage {
    Q_OBJECT
  public:
    FirmPage(const words::Words& words, QWidget* parent);
    void takeFocus() override;
    [[nodiscard]] bool isUsable() override;
    void addTo(SetUp& setUp) override;

  private:
    input::Editor* add(const QString& label, const char* name);
    Fields* m_fields;
    input::Editor* m_name;
    input::Editor* m_registration;
    input::Editor* m_telephone;
    input::Editor* m_line1;
    input::Editor* m_line2;
    input::Editor* m_town;
    input::Editor* m_postcode;
    input::Editor* m_country;
};

/// The first engineer and the first gauge.
class EngineerAndGaugePage : public SetUpPage {
    Q_OBJECT
  public:
    EngineerAndGaugePage(const words::Words& words, const Clock& clock, QWidget* parent);
    void takeFocus() override;
    [[nodiscard]] bool isUsable() override;
    void addTo(SetUp& setUp) override;

  private:
    input::Editor* add(Fields* fields, input::Editor* editor, const QString& label, const char* name);
    void sayReadable(input::Editor* editor);

    const words::Words& m_words;
    const Clock& m_clock;
    input::Editor* m_name;
    input::Editor* m_card;
    input::Editor* m_kind;
    input::Editor* m_gaugeName;
    input::Editor* m_serial;
    input::Editor* m_resolution;
    input::Editor* m_accuracy;
    input::Editor* m_due;
};

/// The entries of the rule book that decide daily work, each to be held against one's own copy.
class ConfirmPage : public SetUpPage {
    Q_OBJECT
  public:
    ConfirmPage(const words::Words& words, const Clock& clock, const rulebook::RuleBook& book,
                QWidget* parent);
    void takeFocus() override;
    [[nodiscard]] bool isUsable() override;
    /// Confirmed in the name of the engineer, or of the firm where there is none.
    void addTo(SetUp& setUp) override;
    [[nodiscard]] const std::vector<RuleAnswer*>& answers() const { return m_answers; }

  private:
    const Clock& m_clock;
    std::vector<RuleAnswer*> m_answers;
};

}  // namespace hearth::ui::shell
