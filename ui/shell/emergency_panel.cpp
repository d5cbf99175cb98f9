// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/emergency_panel.h"

#include "ui/shell/kit.h"

#include <QKeyEvent>

#include <array>
#include <utility>

namespace hearth::ui::shell {

using Emergency = words::Words::Emergency;

namespace {

constexpr std::array kEvents{Emergency::SmellOrEscape, Emergency::FailedTest, Emergency::CarbonMonoxide};
constexpr std::array kGases{rulebook::Gas::NaturalGas, rulebook::Gas::Propane, rulebook::Gas::Butane,
                            rulebook::Gas::LpgAir};
constexpr int kStepWidth = 760;

std::vector<input::ChoiceItem> eventChoices(const words::Words& words) {
    std::vector<input::ChoiceItem> choices;
    for (std::size_t i = 0; i < kEvents.size(); ++i) {
        const QString number = QString::number(i + 1);
        choices.push_back({number, number + QStringLiteral("  ") + words.emergencyTitle(kEvents[i])});
    }
    return choices;
}

std::vector<input::ChoiceItem> gasChoices(const words::Words& words) {
    std::vector<input::ChoiceItem> choices;
    for (const auto gas : kGases) {
        choices.push_back({coded(rulebook::gasText(gas)), words.gas(gas)});
    }
    return choices;
}

}  // namespace

EmergencyPanel::EmergencyPanel(const words::Words& words, QWidget* parent) : Panel(parent), m_words(words) {
    setObjectName(QStringLiteral("emergencyPanel"));
    setAccessibleName(tr("What to do first"));
    auto* title = titleText(tr("What to do first"), this);
    title->setInk(look::Role::Fail);
    lines()->addWidget(title);

    m_events = input::makeChoiceEditor(this, eventChoices(words));
    m_events->setLabel(tr("What has happened"));
    m_events->setObjectName(QStringLiteral("emergencyEvent"));
    lines()->addWidget(m_events);
    connect(m_events, &input::Editor::committed, this, [this](const QString& code) {
        const int number = code.toInt();
        if (number >= 1 && number <= static_cast<int>(kEvents.size())) {
            choose(kEvents[static_cast<std::size_t>(number - 1)]);
        }
    });

    m_list = new QWidget(this);
    m_listLines = new QVBoxLayout(m_list);
    m_listLines->setContentsMargins(0, look::kGap, 0, look::kGap);
    m_listLines->setSpacing(look::kGap + look::kGap / 2);
    m_list->setMaximumWidth(kStepWidth);
    lines()->addWidget(m_list);

    m_gases = input::makeChoiceEditor(this, gasChoices(words));
    m_gases->setLabel(tr("Gas"), tr("What to do first"));
    m_gases->setObjectName(QStringLiteral("emergencyGas"));
    lines()->addWidget(m_gases);
    connect(m_gases, &input::Editor::committed, this, [this](const QString& code) {
        m_gas = rulebook::gasFromText(code.toStdString()).value_or(m_gas);
        showSteps();
    });
    lines()->addWidget(closeButton(), 0, Qt::AlignLeft);
    lines()->addStretch(1);
}

void EmergencyPanel::open(rulebook::Gas gas, reg::Country country,
                          std::vector<reg::EmergencyContact> contacts) {
    m_gas = gas;
    m_country = country;
    m_contacts = std::move(contacts);
    m_event = Emergency::SmellOrEscape;
    fill();
}

void EmergencyPanel::takeFocus() {
    focusOn(m_events);
}

void EmergencyPanel::keyPressEvent(QKeyEvent* event) {
    const int number = event->key() - Qt::Key_0;
    if (number >= 1 && number <= static_cast<int>(kEvents.size())) {
        choose(kEvents[static_cast<std::size_t>(number - 1)]);
        return;
    }
    Panel::keyPressEvent(event);
}

void EmergencyPanel::choose(Emergency event) {
    m_event = event;
    fill();
}

void EmergencyPanel::fill() {
    for (std::size_t i = 0; i < kEvents.size(); ++i) {
        if (kEvents[i] == m_event) {
            m_events->setText(QString::number(i + 1));
        }
    }
    m_gases->setText(coded(rulebook::gasText(m_gas)));
    showSteps();
}

void EmergencyPanel::showSteps() {
    while (QLayoutItem* item = m_listLines->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    m_steps = m_words.emergencySteps(m_event, m_gas, m_country, m_contacts);
    int number = 0;
    for (const QString& step : m_steps) {
        auto* row = new QWidget(m_list);
        auto* columns = new QHBoxLayout(row);
        columns->setContentsMargins(0, 0, 0, 0);
        columns->setSpacing(look::kGap);
        auto* figure = new Text(QString::number(++number), look::TypeRole::Heading, look::Role::Fail, row);
        figure->setFixedWidth(3 * look::kGap);
        columns->addWidget(figure, 0, Qt::AlignTop);
        auto* text = new Text(step, look::TypeRole::Heading, look::Role::Ink, row);
        text->setWordWrap(true);
        text->setTextInteractionFlags(Qt::TextSelectableByMouse);
        columns->addWidget(text, 1);
        m_listLines->addWidget(row);
    }
    m_list->setAccessibleName(m_steps.join(QStringLiteral(". ")));
}

}  // namespace hearth::ui::shell
